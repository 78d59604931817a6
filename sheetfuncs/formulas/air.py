"""Air pressure, and water boiling in it."""

from __future__ import annotations

from sheetfuncs.formulas.define import define
from sheetfuncs.formulas.quantities import PRESSURE, TEMPERATURE, measured
from sheetfuncs.formulas.vocabulary import AIR, PLACE
from sheetfuncs.science import atmosphere, water
from sheetfuncs.science.maths import Value

BAROMETER = measured("barometer of a forecast, reduced to sea level", PRESSURE, (26.0, 32.0), (880.0, 1084.0))


@define(
    "air pressure at the pan",
    PRESSURE,
    source="U.S. Standard Atmosphere, 1976, eq. 18 and 33a",
    example=((650.0, "US"), 29.2251),
    elevation=PLACE,
)
def AIR_PRESSURE(elevation: Value) -> Value:
    """Air pressure at an elevation on a standard day.

    The weather moves it by an inch of mercury either way: AIR_PRESSURE_HERE knows the day.
    """
    return atmosphere.standard_pressure(elevation)


@define(
    "air pressure at the pan",
    PRESSURE,
    source="the altimeter-setting relation: Smithsonian Meteorological Tables (1951), Table 64, "
    "with the constants of the U.S. Standard Atmosphere, 1976",
    example=((30.1, 650.0, "US"), 29.4005),
    barometer=BAROMETER,
    elevation=PLACE,
)
def AIR_PRESSURE_HERE(barometer: Value, elevation: Value) -> Value:
    """Air pressure at the pan today, from the barometer of a forecast and the elevation.

    A forecast's barometer is reduced to sea level, so that it reads about the same at every height.
    """
    return atmosphere.station_pressure(barometer, elevation)


@define(
    "boiling point of water",
    TEMPERATURE,
    source="IAPWS-IF97 (R7-97, 2012), region 4, eq. 31",
    example=((29.92, "US"), 211.95),
    pressure=AIR,
)
def WATER_BOILS(pressure: Value) -> Value:
    """Boiling point of pure water at an air pressure."""
    return water.saturation_temperature(pressure)
