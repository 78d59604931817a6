"""The boil: strength, water, hours, heat and fuel, and the pan."""

from __future__ import annotations

from sheetfuncs.formulas.define import define
from sheetfuncs.formulas.quantities import (
    ANY_VOLUME,
    FUEL,
    FUEL_AMOUNT,
    HEAT,
    HOURS,
    LENGTH,
    RATE,
    SHARE,
    SUGAR,
    TEMPERATURE,
    measured,
    number,
    one_of,
)
from sheetfuncs.formulas.vocabulary import PACE, PAN_AREA, SAP_VOLUME, SOME_VOLUME, STRENGTH, TARGET
from sheetfuncs.science import heat as heat_of
from sheetfuncs.science import sucrose
from sheetfuncs.science.maths import Value, lookup, require
from sheetfuncs.science.water import DENSITY_20

VOLUME_LEFT = number("volume left, cold, in the unit of `volume`", ANY_VOLUME, 0.0, 10000000.0)
HEAT_NEEDED = measured("heat that must reach the sap", HEAT, (0.0, 1e12), (0.0, 1.055e9))
SAP_TEMPERATURE = measured("temperature of the sap at the start", TEMPERATURE, (20.0, 212.0), (-6.5, 100.0))
EFFICIENCY = number("share of the fuel's heat that reaches the sap (0.3 open fire, 0.5 evaporator)", SHARE, 0.01, 1.0)

CORD = 3.624556363776  # m³: 128 cubic feet, stacked
GALLON = 3.785411784  # L
CUBIC_FOOT = 0.028316846592  # m³
BTU = 1055.05585262  # J


# Heat in one unit of each fuel, Btu: Bartok, UConn Extension (2013); for wood the middle of
# its range (hardwood 18 to 24, softwood 10 to 15 million Btu a cord).
HEATING_VALUE = {
    "hardwood": 21000000.0,  # cord
    "softwood": 12500000.0,  # cord
    "propane": 92500.0,  # gal
    "fuel oil": 138500.0,  # gal
    "natural gas": 1030.0,  # ft³
    "electricity": 3412.0,  # kWh
}
METRIC_UNITS = {  # m³, L, m³ or kWh in one unit of the above
    "hardwood": CORD,
    "softwood": CORD,
    "propane": GALLON,
    "fuel oil": GALLON,
    "natural gas": CUBIC_FOOT,
    "electricity": 1.0,
}
US_UNITS = dict.fromkeys(METRIC_UNITS, 1.0)
BURNT = one_of("fuel", FUEL, tuple(HEATING_VALUE))

SQUARE_FOOT, CUBIC_GALLON = 0.09290304, 0.003785411784  # m², m³


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
    source="specific heat: Bubnik et al. (1995), attribution from memory; latent heat: fitted to "
    "IAPWS-IF97. Within 2 % of the 400,000 Btu per gallon of syrup that Ohio State Extension gives",
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
    "amount of fuel: wood in cords or m³ stacked, propane and fuel oil in gal or L, natural gas in "
    "ft³ or m³, electricity in kWh",
    FUEL_AMOUNT,
    source="heating values: Bartok, UConn Extension (2013); dry wood, middle of its range",
    example=((373000.0, "propane", 0.5, "US"), 8.06),
    heat=HEAT_NEEDED,
    fuel=BURNT,
    efficiency=EFFICIENCY,
)
def BOIL_FUEL(heat: Value, fuel: Value, efficiency: Value, units: Value) -> Value:
    """Fuel that brings a heat to the sap; efficiency is the share of its heat that gets there."""
    amount = heat / (lookup(fuel, HEATING_VALUE) * BTU) / efficiency
    return amount * lookup(units, {"US": lookup(fuel, US_UNITS), "metric": lookup(fuel, METRIC_UNITS)})


@define(
    "volume of water an hour",
    RATE,
    source="common practice, no source: a flat pan loses 1 gal an hour from each square foot (0.7 to "
    "1.2 measured by hobbyists)",
    example=((6.0, "US"), 6.0),
    area=PAN_AREA,
)
def PAN_RATE(area: Value) -> Value:
    """How fast a flat pan boils water off. A guess to start with: measure your own."""
    return area / SQUARE_FOOT * CUBIC_GALLON


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
