"""Air pressure, and water boiling in it."""

from __future__ import annotations

from sheetfuncs.formulas.define import define
from sheetfuncs.formulas.quantities import PRESSURE, TEMPERATURE, measured
from sheetfuncs.formulas.vocabulary import AIR, PLACE
from sheetfuncs.science import atmosphere, water
from sheetfuncs.science.maths import Value

BAROMETER = measured(
    "altimeter setting, as airports and the U.S. weather service report it", PRESSURE, (26.0, 32.0), (880.0, 1084.0)
)
SEA_LEVEL = measured(
    "sea-level pressure of a forecast, as telephones and weather maps show it", PRESSURE, (26.0, 32.0), (880.0, 1084.0)
)
OUTDOORS = measured(
    "air temperature outdoors, the mean of now and 12 hours ago", TEMPERATURE, (-60.0, 130.0), (-51.0, 54.5)
)


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
    """Air pressure at the pan today, from the altimeter setting and the elevation.

    A barometer is reported as if it stood at sea level. The altimeter setting takes the air below for
    a standard day's; most telephones show sea-level pressure, which asks for its true temperature:
    AIR_PRESSURE_BY_SEA_LEVEL. Typed here on a day of 14 °F (-10 °C) that makes the boiling point too
    high by 0.2 °F (0.1 °C) at 1,300 ft (400 m) and by 0.4 °F (0.2 °C) at 3,300 ft (1,000 m).
    """
    return atmosphere.station_pressure(barometer, elevation)


@define(
    "air pressure at the pan",
    PRESSURE,
    source="the hydrostatic equation with the air's own temperature and 6.5 K a kilometre, as stations reduce "
    "their pressure: WMO-No. 8, vol. I, ch. 3, for dry air",
    example=((30.1, 650.0, 25.0, "US"), 29.3546),
    sea_level=SEA_LEVEL,
    elevation=PLACE,
    temperature=OUTDOORS,
)
def AIR_PRESSURE_BY_SEA_LEVEL(sea_level: Value, elevation: Value, temperature: Value) -> Value:
    """Air pressure at the pan today, from sea-level pressure, the elevation and the cold outdoors."""
    return atmosphere.station_pressure_at(sea_level, elevation, temperature)


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
