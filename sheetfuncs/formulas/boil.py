"""The boil: strength, water, hours, heat and fuel, and the pan."""

from __future__ import annotations

from sheetfuncs.formulas.define import define
from sheetfuncs.formulas.fuels import FUELS
from sheetfuncs.formulas.quantities import (
    ANY_VOLUME,
    AREA,
    FUEL,
    FUEL_AMOUNT,
    HEAT,
    HOURS,
    LENGTH,
    POWER,
    RATE,
    SHARE,
    SUGAR,
    SYSTEMS,
    TEMPERATURE,
    VOLUME,
    measured,
    number,
    one_of,
    standing_for,
)
from sheetfuncs.formulas.vocabulary import PACE, PAN_AREA, SAP_VOLUME, SOME_VOLUME, STRENGTH, TARGET
from sheetfuncs.science import heat as heat_of
from sheetfuncs.science import sucrose
from sheetfuncs.science.maths import Value, choose, fifteen, lookup, require
from sheetfuncs.science.water import DENSITY_20, latent_heat

VOLUME_LEFT = number("volume left, cold, in the unit of `volume`", ANY_VOLUME, 0.0, 10000000.0)
HEAT_NEEDED = measured("heat that must reach the sap", HEAT, (0.0, 1e12), (0.0, 1.055e9))
SAP_TEMPERATURE = measured("temperature of the sap at the start", TEMPERATURE, (20.0, 212.0), (-6.5, 100.0))
EFFICIENCY = number(
    "share of the fuel's heat that reaches the sap (FUEL_EFFICIENCY has one to start with)", SHARE, 0.01, 1.0
)

BURNT = standing_for(
    "fuel", FUEL, *({name: fuel.heat_of_one(system) for name, fuel in FUELS.items()} for system in SYSTEMS)
)
FUEL_NAME = one_of("fuel", FUEL, tuple(FUELS))
STOVE = measured("power of the stove, hot plate or burner", POWER, (1.0, 10000000.0), (0.0003, 2930.0))

# A flat pan, in metres: a gallon an hour from a square foot of a large one, 0.6 of a small one.
SMALL_PAN, LARGE_PAN = fifteen(AREA.us.into_si(4.75)), fifteen(AREA.us.into_si(6.0))
QUICK = fifteen(VOLUME.us.into_si(1.0) / AREA.us.into_si(1.0))
SLOW = fifteen(0.6 * QUICK)
GROWING = fifteen((QUICK - SLOW) * LARGE_PAN / (LARGE_PAN - SMALL_PAN))


def _must_thicken(brix: Value, to_brix: Value, value: Value) -> Value:
    return require(brix <= to_brix, value, "it is stronger than that already: boiling only thickens")


def _water(volume: Value, brix: Value, to_brix: Value) -> Value:
    """Cold volume of the water that must leave."""
    return volume * sucrose.density_20(brix) * heat_of.water_to_boil_off(brix, to_brix) / DENSITY_20


@define(
    "strength after boiling",
    SUGAR,
    source="sugar balance with ICUMSA SPS-4 densities at 20 °C, solved by Newton's method",
    example=((40.0, 2.0, 4.0), 18.71),
    volume=SOME_VOLUME,
    brix=STRENGTH,
    volume_left=VOLUME_LEFT,
)
def BOIL_BRIX(volume: Value, brix: Value, volume_left: Value) -> Value:
    """Strength after boiling to a measured volume; both volumes cold, no sugar lost.

    #NUM! where nothing is left, or where more sugar would be left than 85 °Brix holds.
    """
    sugar = require(volume_left > 0.0, volume * sucrose.sugar_per_volume(brix), "no volume is left")
    left = sugar / volume_left
    left = require(left <= sucrose.MOST_SUGAR, left, "that would be over 85 °Brix: measure the volume left again")
    return sucrose.brix_from_sugar_per_volume(left)


@define(
    "cold volume of water, in the unit of `volume`",
    ANY_VOLUME,
    source="sugar balance with ICUMSA SPS-4 densities at 20 °C",
    example=((40.0, 2.0, 66.9), 39.11),
    volume=SOME_VOLUME,
    brix=STRENGTH,
    to_brix=TARGET,
)
def BOIL_WATER(volume: Value, brix: Value, to_brix: Value) -> Value:
    """Water to boil away to bring sap to a strength.

    #NUM! where it is stronger already.
    """
    return _must_thicken(brix, to_brix, _water(volume, brix, to_brix))


@define(
    "hours",
    HOURS,
    source="water to boil away over the measured rate",
    example=((40.0, 2.0, 66.9, 6.0), 6.52),
    volume=SOME_VOLUME,
    brix=STRENGTH,
    to_brix=TARGET,
    rate=PACE,
)
def BOIL_HOURS(volume: Value, brix: Value, to_brix: Value, rate: Value) -> Value:
    """Hours to bring sap to a strength at a rate of boiling, without heating up or rests.

    #NUM! where it is stronger already.
    """
    return _must_thicken(brix, to_brix, _water(volume, brix, to_brix) / rate)


@define(
    "heat",
    HEAT,
    source="specific heat: Bubnik, Kadlec, Urban & Bruhns, Sugar Technologists Manual (1995); latent heat: "
    "fitted to IAPWS-IF97. Within 2 % of the 400,000 Btu per gallon of syrup that Ohio State Extension gives",
    example=((40.0, 2.0, 66.9, 40.0, "US"), 373203.7),
    volume=SAP_VOLUME,
    brix=STRENGTH,
    to_brix=TARGET,
    sap_temperature=SAP_TEMPERATURE,
)
def BOIL_HEAT(volume: Value, brix: Value, to_brix: Value, sap_temperature: Value) -> Value:
    """Heat to warm sap and boil its water off, all of it reaching the sap.

    #NUM! where it is stronger already. BOIL_FUEL reckons the losses.
    """
    return _must_thicken(brix, to_brix, heat_of.heat_to_boil_off(volume, brix, to_brix, sap_temperature))


@define(
    "amount of fuel: wood in cords or m³ stacked, propane and fuel oil in gal or L, gas in ft³ or m³, "
    "else 20-lb bottles, therms or kWh",
    FUEL_AMOUNT,
    source="heating values: Bartok, UConn Extension (2013); dry wood, middle of its range; a 20-lb bottle "
    "of propane holds 4.72 gal (cylinder makers' table)",
    example=((373000.0, "propane", 0.5, "US"), 8.06),
    heat=HEAT_NEEDED,
    fuel=BURNT,
    efficiency=EFFICIENCY,
)
def BOIL_FUEL(heat: Value, fuel: Value, efficiency: Value) -> Value:
    """Fuel that brings a heat to the sap; efficiency is the share of its heat that gets there."""
    return heat / fuel / efficiency


@define(
    "share of the fuel's heat",
    SHARE,
    source="a judgement: records of wood fires run from 16 to 42 percent; gas 0.35 to 0.5 and an electric "
    "element in the pan 0.7 to 0.9, from memory",
    example=(("hardwood",), 0.25),
    fuel=FUEL_NAME,
)
def FUEL_EFFICIENCY(fuel: Value) -> Value:
    """Share of a fuel's heat that reaches the sap, to start with: your own log knows better."""
    return lookup(fuel, {name: each.efficiency for name, each in FUELS.items()})


@define(
    "volume of water an hour",
    RATE,
    source="common practice, no source: a flat pan of 6 square feet or more loses 1 gal an hour from each "
    "(0.7 to 1.2 measured by hobbyists), one under 5 square feet about 0.6 (a dealer's sizing chart)",
    example=((6.0, "US"), 6.0),
    area=PAN_AREA,
)
def PAN_RATE(area: Value) -> Value:
    """How fast a flat pan over a fire boils water off. A guess to start with: measure your own.

    On a stove or a hot plate the heat decides and not the pan: BOIL_RATE.
    """
    slow = SLOW * area
    middle = slow + GROWING * (area - SMALL_PAN)
    return choose(area <= SMALL_PAN, slow, choose(area < LARGE_PAN, middle, QUICK * area))


@define(
    "volume of water an hour",
    RATE,
    source="latent heat at 100 °C, fitted to IAPWS-IF97",
    example=((5118.0, 0.75, "US"), 0.475),
    power=STOVE,
    efficiency=EFFICIENCY,
)
def BOIL_RATE(power: Value, efficiency: Value) -> Value:
    """How fast a heat boils water off, once it boils; efficiency is the share that reaches the sap.

    A hot plate of 1,500 W has 5,118 Btu/h. Cold sap poured in takes up to a sixth of the heat to
    warm: BOIL_HEAT reckons it.
    """
    return 3600.0 * power * efficiency / latent_heat(heat_of.BOIL) / DENSITY_20


@define(
    "depth of the liquid",
    LENGTH,
    source="geometry: volume over area",
    example=((2.0, 4.0, "US"), 0.8),
    volume=SAP_VOLUME,
    area=PAN_AREA,
)
def PAN_DEPTH(volume: Value, area: Value) -> Value:
    """Depth of a volume in a pan with upright sides."""
    return volume / area
