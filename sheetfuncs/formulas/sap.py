"""Sap in store: its sugar, the syrup in it, ice, freezing and keeping."""

from __future__ import annotations

from sheetfuncs.formulas.define import define
from sheetfuncs.formulas.quantities import ANY_VOLUME, DAYS, MASS, SHARE, SUGAR, TEMPERATURE, TIMES, measured, number
from sheetfuncs.formulas.vocabulary import ICE_BRIX, ICE_SHARE, SAP_VOLUME, SOME_VOLUME, STRENGTH, SUGARED, TARGET
from sheetfuncs.science import freezing, sucrose
from sheetfuncs.science.maths import TINY, Value, choose, exp, fifteen, log, require

FREEZING_STRENGTH = number("sugar in the sap, percent by mass", SUGAR, 0.0, 42.0)
KEPT_AT = measured("temperature the lot is kept at", TEMPERATURE, (-40.0, 100.0), (-40.0, 38.0))

# SAP_KEEPS, in °C and days: 38 °F (3.33 °C) still is a cold store, every 10 °F warmer halves; the last ice of a lot
# forms 5 °C below its freezing point, and at -14 °C all of it can freeze (the eutectic, from memory).
COLD_STORE, HALVING, SOLID, EUTECTIC = 3.34, 5.55555555555556, 5.0, -13.95
RAW, PART_BOILED, FROZEN = 7.0, 8.0, 90.0
SWEETEST_SAP = 8.0  # °Brix: no tree gives more; what has more was boiled
LN_2 = 0.693147180559945
LN_FROZEN = fifteen(log(FROZEN))
LN_RAW, LN_PART_BOILED = fifteen(log(RAW)), fifteen(log(PART_BOILED))


@define(
    "mass of sugar",
    MASS,
    source="ICUMSA SPS-4 density at 20 °C times °Brix",
    example=((40.0, 2.0, "US"), 6.716),
    volume=SAP_VOLUME,
    brix=STRENGTH,
)
def SAP_SUGAR(volume: Value, brix: Value) -> Value:
    """Mass of sugar in a volume of sap or syrup. It stays when the water leaves."""
    return volume * sucrose.sugar_per_volume(brix)


@define(
    "volumes of sap for one of syrup",
    TIMES,
    source="sugar balance with ICUMSA SPS-4 densities at 20 °C. The rule of 86 is this for 65.5 °Brix; "
    "87.1 and 88.2 (Perkins & Isselhardt, University of Vermont) for 66.0 and 66.9 are within 1 %",
    example=((2.0, 66.9), 44.16),
    brix=SUGARED,
    syrup_brix=TARGET,
)
def SAP_PER_SYRUP(brix: Value, syrup_brix: Value) -> Value:
    """How many volumes of sap boil down to one volume of syrup."""
    return sucrose.sugar_per_volume(syrup_brix) / sucrose.sugar_per_volume(brix)


@define(
    "volume left, in the unit of `volume`",
    ANY_VOLUME,
    source="sugar balance with ICUMSA SPS-4 densities at 20 °C",
    example=((100.0, 2.0, 66.9), 2.264),
    volume=SOME_VOLUME,
    brix=STRENGTH,
    syrup_brix=TARGET,
)
def SYRUP_FROM_SAP(volume: Value, brix: Value, syrup_brix: Value) -> Value:
    """Volume that is left when sap is boiled to a strength; from any strength to any other.

    Both volumes are cold: hot syrup takes 3 to 4 percent more room (SYRUP_COLD).
    """
    return volume * sucrose.sugar_per_volume(brix) / sucrose.sugar_per_volume(syrup_brix)


@define(
    "strength of the liquid left",
    SUGAR,
    source="sugar balance",
    example=((2.4, 0.2, 0.0), 3.0),
    brix=STRENGTH,
    ice_share=ICE_SHARE,
    ice_brix=ICE_BRIX,
)
def SAP_AFTER_ICE(brix: Value, ice_share: Value, ice_brix: Value) -> Value:
    """Strength of the liquid when ice is lifted out of freezing sap and thrown away.

    #NUM! where the ice would hold more sugar than the sap had.
    """
    left = (brix - ice_share * ice_brix) / (1.0 - ice_share)
    left = require(left >= -TINY, left, "the ice would hold more sugar than the sap had")
    left = require(left <= 85.0 + TINY, left, "that leaves over 85 °Brix: is the share of ice right?")
    return choose(left > 0.0, left, 0.0)


@define(
    "share of the sugar, 0.1 for a tenth",
    SHARE,
    source="sugar balance",
    example=((2.5, 0.5, 1.0), 0.2),
    brix=SUGARED,
    ice_share=ICE_SHARE,
    ice_brix=ICE_BRIX,
)
def SAP_ICE_LOSS(brix: Value, ice_share: Value, ice_brix: Value) -> Value:
    """Share of the sugar that goes out with the ice.

    #NUM! where the ice would hold more sugar than the sap had.
    """
    lost = ice_share * ice_brix / brix
    return require(lost <= 1.0 + TINY, lost, "the ice would hold more sugar than the sap had")


@define(
    "temperature at which ice begins to form",
    TEMPERATURE,
    source="the freezing constant of water with two terms fitted to the CRC Handbook, 102nd ed. (2021), "
    "sucrose, 0.5 to 42 %: within 0.01 °C of each row",
    example=((2.0, "US"), 31.8),
    brix=FREEZING_STRENGTH,
)
def SAP_FREEZES(brix: Value) -> Value:
    """Freezing point of sap."""
    return freezing.freezing_point(brix)


@define(
    "days, from when it was collected or last brought to a boil",
    DAYS,
    source="a judgement on common practice, no source: sap keeps about like milk, and part-boiled sap is "
    "opened again a week later",
    example=((2.0, 48.0, "US"), 3.5),
    brix=STRENGTH,
    temperature=KEPT_AT,
)
def SAP_KEEPS(brix: Value, temperature: Value) -> Value:
    """Days that sap or part-boiled sap keeps. A judgement: smell and look before you boil.

    At 38 °F (3.3 °C) 7 days for sap as it comes, and a week and a day for sap of 8 °Brix and more that
    was jarred boiling and closed; half for every 10 °F (5.6 °C) warmer, double for as much colder; 90
    days once frozen, 9 °F (5 °C) below its freezing point. Poured cold or left open it keeps as sap
    does; concentrate of a membrane was never heated: boil it the same day. Bringing a lot back to a
    boil (180 °F, 82 °C or more) starts its clock again. Cloudy, ropy or off-smelling sap is thrown out,
    whatever its age.
    """
    freezes = freezing.freezing_point(brix)
    freezes = choose(freezes > EUTECTIC, freezes, EUTECTIC)
    liquid = choose(temperature > freezes, temperature, freezes)
    days = choose(brix < SWEETEST_SAP, LN_RAW, LN_PART_BOILED) + (COLD_STORE - liquid) * LN_2 / HALVING
    frozen = (liquid - temperature) / SOLID
    return choose(frozen < 1.0, exp(days + frozen * (LN_FROZEN - days)), FROZEN)
