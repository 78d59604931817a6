"""The finish: what the thermometer must read, how long still, and how strong it is now."""

from __future__ import annotations

from sheetfuncs.formulas.define import define
from sheetfuncs.formulas.quantities import DIFFERENCE, GRAVITY, MINUTES, SUGAR, TEMPERATURE, measured, number
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
from sheetfuncs.science.maths import TINY, Value, choose, require
from sheetfuncs.science.sucrose import STRONGEST

PAN_READING = measured("what the thermometer shows in the boiling pan", TEMPERATURE, (150.0, 300.0), (65.0, 149.0))
FLOATING = number("what the hydrometer shows, °Brix scale marked at 60 °F", SUGAR, 0.0, 85.0)
SCREEN = number("what the refractometer shows, no temperature compensation, marked at 20 °C", SUGAR, 0.0, 75.0)
PRISM = measured("temperature of the instrument and the drop", TEMPERATURE, (50.0, 86.0), (10.0, 30.0))
TRUE_GRAVITY = number("true specific gravity 20/20 °C", GRAVITY, 1.0, 1.45)

BOILING_SOURCE = (
    "water activity: Starzak & Peacock, Zuckerindustrie 122 (1997) 380-387 (constants read in its abstract, "
    "form from memory), with IAPWS-IF97 for water; about 0.1 °C to 70 °Brix"
)

# What a boiling point's last step may leave, as a share of the activity: 85 °Brix itself has an answer.
NEARLY = 1.0000001


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
    reading = require(reading >= water_reading - TINY, reading, "it cannot boil colder than water: read both again")
    activity = water.saturation_pressure(water_reading) / water.saturation_pressure(reading)
    possible = boiling.least_activity(reading) <= activity * NEARLY
    activity = require(possible, activity, "that is hotter than 85 °Brix boils: read both again")
    return _within(boiling.brix_from_activity(activity, reading))


@define(
    "true strength",
    SUGAR,
    source="buoyancy with ICUMSA SPS-4 densities, glass 25e-6 per K (ISO 387, ASTM E126; from memory); "
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
    source="a surface fitted to OIV-MA-AS2-02 Table I and, above 20 °C, the 1936 international table "
    "(AOAC 990.35, ISO 2173; from memory): within 0.021 °Brix of every row",
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
