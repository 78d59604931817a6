"""The finish: what the thermometer must read, how long still, and how strong it is now."""

from __future__ import annotations

from sheetfuncs.formulas.define import define
from sheetfuncs.formulas.quantities import (
    ANY_WEIGHT,
    DIFFERENCE,
    GRAVITY,
    MINUTES,
    ORIGIN,
    SUGAR,
    TEMPERATURE,
    measured,
    number,
    standing_for,
)
from sheetfuncs.formulas.vocabulary import (
    AIR,
    CUP_TEMPERATURE,
    PACE,
    SOME_VOLUME,
    STRENGTH,
    TARGET,
    WATER_READING,
)
from sheetfuncs.science import boiling, heat, instruments, sucrose, water
from sheetfuncs.science.maths import TINY, Value, choose, fifteen, require, sqrt
from sheetfuncs.science.sucrose import STRONGEST

PAN_READING = measured("what the thermometer shows in the boiling pan", TEMPERATURE, (150.0, 300.0), (65.0, 149.0))
FLOATING = number("what the hydrometer shows, °Brix scale marked at 60 °F", SUGAR, 0.0, 85.0)
COLD_FLOATING = number("what the hydrometer shows, °Brix", SUGAR, 0.0, 85.0)
MARKED_AT = measured(
    "temperature its scale was marked for (38 °F on most sap hydrometers)", TEMPERATURE, (32.0, 70.0), (0.0, 21.0)
)
WEIGHT_EMPTY = number("weight of the empty container", ANY_WEIGHT, 0.0, 1000000.0)
WEIGHT_OF_WATER = number("its weight full of water to a mark, in the same unit", ANY_WEIGHT, 0.0, 1000000.0)
WEIGHT_FULL = number("its weight full of the liquid to the same mark", ANY_WEIGHT, 0.0, 1000000.0)
BOTH_TEMPERATURES = measured("temperature of the liquid and of the water", TEMPERATURE, (32.0, 212.0), (0.0, 100.0))
GIVE_OR_TAKE = measured("how far off a reading of this thermometer may be", DIFFERENCE, (0.0, 10.0), (0.0, 5.5))
SCREEN = number("what the refractometer shows, no temperature compensation, marked at 20 °C", SUGAR, 0.0, 75.0)
PRISM = measured("temperature of the instrument and the drop", TEMPERATURE, (50.0, 86.0), (10.0, 30.0))
TRUE_GRAVITY = number("true specific gravity 20/20 °C", GRAVITY, 1.0, 1.45)

BOILING_SOURCE = (
    "water activity: Starzak & Peacock, Zuckerindustrie 122 (1997) 380-387 (constants read in its abstract, "
    "form from memory), with IAPWS-IF97 for water; about 0.1 °C to 70 °Brix"
)

FAR_TOO_LIGHT, FAR_TOO_HEAVY = 0.9, 1.6  # of water: beyond, the density relation has no root

RELATION = fifteen(0.1**2)  # square of 0.1 °C: how far published relations stand apart at syrup

# How much further off the water reading may be than the thermometer, °C: half an inch of mercury of
# weather (0.85 °F), and the thermometer's own offset (1.5 °F), which a reading of its own would hold.
WEATHER, OFFSET = 0.47, 0.83
WATER_FROM = {
    "today": 0.0,
    "another day": WEATHER,
    "barometer": OFFSET,
    "elevation": fifteen(sqrt(WEATHER * WEATHER + OFFSET * OFFSET)),
}
FROM = standing_for("where the water reading is from", ORIGIN, WATER_FROM, WATER_FROM)

# What a boiling point's last step may leave, as a share of the activity: 85 °Brix itself has an answer.
NEARLY = 1.0000001

COLDER = "it cannot boil colder than water: read both again"
HOTTER = "that is hotter than 85 °Brix boils: read both again"


def _within(brix: Value) -> Value:
    """A strength whose last digits fell outside 0 to 85 °Brix, brought back inside."""
    return choose(brix > 0.0, choose(brix < STRONGEST, brix, STRONGEST), 0.0)


@define(
    "degrees above boiling water",
    DIFFERENCE,
    source=BOILING_SOURCE,
    example=((66.9, 29.92, "US"), 7.56),
    brix=STRENGTH,
    pressure=AIR,
)
def FINISH_RISE(brix: Value, pressure: Value) -> Value:
    """How much hotter than water sap or syrup boils, at its strength and the air pressure."""
    return boiling.boiling_rise(brix, pressure)


@define(
    "boiling temperature",
    TEMPERATURE,
    source=BOILING_SOURCE,
    example=((66.9, 29.92, "US"), 219.51),
    brix=STRENGTH,
    pressure=AIR,
)
def FINISH_TEMP(brix: Value, pressure: Value) -> Value:
    """Temperature at which sap or syrup of a strength boils, at the air pressure of the day."""
    return boiling.boiling_point(brix, pressure)


@define(
    "what the thermometer shows",
    TEMPERATURE,
    source=BOILING_SOURCE,
    example=((66.9, 210.5, "US"), 218.02),
    brix=STRENGTH,
    water_reading=WATER_READING,
)
def FINISH_READING(brix: Value, water_reading: Value) -> Value:
    """What this thermometer shows when the strength is reached, from what it shows in boiling water.

    Its own error and the day's weather are in the water reading already. Take that reading each
    day, and again when a front goes through.
    """
    return water_reading + boiling.boiling_rise(brix, water.saturation_pressure(water_reading))


@define(
    "minutes",
    MINUTES,
    source="water to boil away over the rate",
    example=((1.5, 60.0, 66.9, 3.0), 4.0),
    volume=SOME_VOLUME,
    brix=STRENGTH,
    syrup_brix=TARGET,
    rate=PACE,
)
def FINISH_MINUTES(volume: Value, brix: Value, syrup_brix: Value, rate: Value) -> Value:
    """Minutes until the strength is reached at a rate of boiling; 0 when it is reached or passed."""
    mass = volume * sucrose.density_20(brix)
    water_left = mass * heat.water_to_boil_off(brix, syrup_brix) / water.DENSITY_20
    return choose(brix < syrup_brix, 60.0 * water_left / rate, 0.0)


@define(
    "strength of what is boiling",
    SUGAR,
    source=BOILING_SOURCE,
    example=((217.0, 210.5, "US"), 64.1),
    reading=PAN_READING,
    water_reading=WATER_READING,
)
def BRIX_BY_BOIL(reading: Value, water_reading: Value) -> Value:
    """Strength of sap or syrup from what one thermometer shows in it and in water, both boiling.

    #NUM! where it boils colder than the water, or hotter than 85 °Brix does.
    """
    reading = require(reading >= water_reading - TINY, reading, COLDER)
    activity = water.saturation_pressure(water_reading) / water.saturation_pressure(reading)
    activity = require(boiling.least_activity(reading) <= activity * NEARLY, activity, HOTTER)
    return _within(boiling.brix_from_activity(activity, reading))


def _strongest_at(reading: Value, pressure: Value) -> Value:
    """Strength of what boils at a temperature, at most 85 °Brix and at least none."""
    activity, least = pressure / water.saturation_pressure(reading), boiling.least_activity(reading)
    activity = choose(activity > least, choose(activity < 1.0, activity, 1.0), least)
    return _within(boiling.brix_from_activity(activity, reading))


@define(
    "°Brix either way",
    SUGAR,
    source="JCGM 100:2008 5.1: both readings' errors, 0.1 °C of the relation (published ones stand that far "
    "apart at syrup) and that of the water's origin, as squares; the origins are a judgement: weather of half "
    "an inch of mercury, a thermometer 1.5 °F (0.8 °C) off",
    example=((218.0, 210.5, 0.5, "today", "US"), 1.92),
    reading=PAN_READING,
    water_reading=WATER_READING,
    give_or_take=GIVE_OR_TAKE,
    water_from=FROM,
)
def BRIX_BY_BOIL_SPREAD(reading: Value, water_reading: Value, give_or_take: Value, water_from: Value) -> Value:
    """How far off BRIX_BY_BOIL may be, the larger side: by the thermometer and by its water reading.

    The water reading is from this thermometer in boiling water today, or another day, or it is what
    water should boil at by the barometer, or by the elevation alone. Sugar that has turned to invert
    sugar comes on top: with a tenth of it turned, syrup is 1.1 to 1.5 °Brix thinner than it seems.
    """
    pressure = water.saturation_pressure(water_reading)
    activity = pressure / water.saturation_pressure(reading)
    brix = _strongest_at(reading, pressure)
    either_way = sqrt(2.0 * give_or_take * give_or_take + RELATION + water_from * water_from)
    colder = reading - either_way
    below = brix - _strongest_at(choose(colder > water_reading, colder, water_reading), pressure)
    above = _strongest_at(reading + either_way, pressure) - brix
    spread = choose(above > below, above, below)
    spread = require(boiling.least_activity(reading) <= activity * NEARLY, spread, HOTTER)
    return require(reading >= water_reading - TINY, spread, COLDER)


@define(
    "true strength",
    SUGAR,
    source="buoyancy with ICUMSA SPS-4 densities, glass 25e-6 per K (ISO 1768:1975); "
    "within 0.33 °Brix of the printed chart for 66.9 °Brix syrup",
    example=((59.2, 209.0, "US"), 66.97),
    reading=FLOATING,
    temperature=CUP_TEMPERATURE,
)
def BRIX_BY_HYDROMETER(reading: Value, temperature: Value) -> Value:
    """True strength from a hydrometer marked at 60 °F, floating in syrup at a temperature.

    #NUM! where that is over 85 °Brix.
    """
    brix = instruments.brix_from_hydrometer(reading, temperature)
    return _within(require(brix <= STRONGEST + TINY, brix, "that is over 85 °Brix: read both again"))


@define(
    "true strength",
    SUGAR,
    source="buoyancy with ICUMSA SPS-4 densities, glass 25e-6 per K (ISO 1768:1975)",
    example=((2.0, 50.0, 38.0, "US"), 2.05),
    reading=COLD_FLOATING,
    temperature=CUP_TEMPERATURE,
    marked_at=MARKED_AT,
)
def BRIX_BY_SAP_HYDROMETER(reading: Value, temperature: Value, marked_at: Value) -> Value:
    """True strength from a hydrometer marked at another temperature, as sap hydrometers are.

    #NUM! where that is over 85 °Brix.
    """
    brix = instruments.brix_from_hydrometer(reading, temperature, marked_at)
    return _within(require(brix <= STRONGEST + TINY, brix, "that is over 85 °Brix: read both again"))


@define(
    "true strength",
    SUGAR,
    source="weights in air of 1.2 kg/m³ (OIML D 28:2004) with ICUMSA SPS-4 densities, solved by Newton's method",
    example=((12.4, 44.9, 55.6, 68.0, "US"), 66.62),
    empty_weight=WEIGHT_EMPTY,
    water_weight=WEIGHT_OF_WATER,
    full_weight=WEIGHT_FULL,
    temperature=BOTH_TEMPERATURES,
)
def BRIX_BY_WEIGHT(empty_weight: Value, water_weight: Value, full_weight: Value, temperature: Value) -> Value:
    """Strength from a kitchen scale: a container weighed empty, full of water, and full of sap or syrup.

    Fill to the same mark, a narrow neck is best, with water as warm as the liquid. A scale that reads
    to 1 g tells sap in a gallon jug to 0.1 °Brix and syrup in a pint jar to 0.6. #NUM! where the
    liquid weighs less than water, or more than 85 °Brix does.
    """
    filled = water_weight - empty_weight
    filled = require(filled > 0.0, filled, "the water weighs nothing: weigh the container empty first")
    ratio = (full_weight - empty_weight) / filled
    light = "the liquid weighs less than the water: fill both to the same mark"
    heavy = "that is over 85 °Brix: weigh all three again"
    ratio = require(ratio <= FAR_TOO_HEAVY, require(ratio >= FAR_TOO_LIGHT, ratio, light), heavy)
    brix = instruments.brix_from_weights(ratio, temperature)
    return _within(require(brix <= STRONGEST + TINY, require(brix >= -1.0, brix, light), heavy))


@define(
    "true strength",
    SUGAR,
    source="the surface nearest to every row of OIV-MA-AS2-02 Table I and of the 1936 international table (GOST "
    "copy; from 23 °C, 73 °F on from memory): within 0.021 °Brix of each",
    example=((2.0, 59.0, "US"), 1.7),
    reading=SCREEN,
    temperature=PRISM,
)
def BRIX_BY_REFRACTOMETER(reading: Value, temperature: Value) -> Value:
    """True strength from a refractometer that does not correct for temperature itself; not under 0."""
    brix = reading + instruments.refractometer_correction(reading, temperature)
    return choose(brix > 0.0, brix, 0.0)


@define(
    "true strength",
    SUGAR,
    source="ICUMSA SPS-4 density at 20 °C, solved by Newton's method",
    example=((1.33058,), 66.9),
    gravity=TRUE_GRAVITY,
)
def BRIX_BY_GRAVITY(gravity: Value) -> Value:
    """Strength from true specific gravity 20/20 °C, that is density over that of water at 20 °C."""
    return sucrose.brix_from_density_20(gravity * water.DENSITY_20)
