"""Air pressure by elevation and by barometer."""

from __future__ import annotations

from sheetfuncs.science.maths import Value, fifteen
from sheetfuncs.science.water import KELVIN

SEA_LEVEL_PRESSURE = 101325.0  # Pa; U.S. Standard Atmosphere, 1976
SEA_LEVEL_KELVIN = 288.15
LAPSE = 0.0065  # K per metre of geopotential height, up to 11 km
EARTH_RADIUS = 6356766.0  # m, for geopotential height

EXPONENT = fifteen(9.80665 * 0.0289644 / (8.31432 * 0.0065))  # g M / (R* lapse)
INVERSE_EXPONENT = fifteen(1.0 / EXPONENT)


def geopotential(elevation: Value) -> Value:
    """Geopotential height of an elevation, m.  Source: U.S. Standard Atmosphere, 1976, eq. 18."""
    return EARTH_RADIUS * elevation / (EARTH_RADIUS + elevation)


def standard_pressure(elevation: Value) -> Value:
    """Pressure of the standard atmosphere at an elevation in metres, Pa.

    Source: U.S. Standard Atmosphere, 1976, eq. 33a.  Up to 11,000 m.
    """
    return SEA_LEVEL_PRESSURE * (1.0 - LAPSE * geopotential(elevation) / SEA_LEVEL_KELVIN) ** EXPONENT


def station_pressure(altimeter: Value, elevation: Value) -> Value:
    """Pressure at the pan from an altimeter setting, Pa.

    Source: the altimeter-setting relation, Smithsonian Meteorological Tables (1951), Table 64,
    as used by the U.S. National Weather Service: the station pressure that the standard
    atmosphere would reduce to the sea-level reading.
    """
    ratio = (altimeter / SEA_LEVEL_PRESSURE) ** INVERSE_EXPONENT
    return SEA_LEVEL_PRESSURE * (ratio - LAPSE * geopotential(elevation) / SEA_LEVEL_KELVIN) ** EXPONENT


def station_pressure_at(sea_level: Value, elevation: Value, celsius: Value) -> Value:
    """Pressure at the pan from the true sea-level pressure and the air temperature there, Pa.

    Source: the hydrostatic equation for air that warms by 6.5 K a kilometre downwards, dry, as
    stations reduce their pressure: WMO-No. 8, Guide to Instruments and Methods of Observation,
    vol. I, ch. 3, without its term for damp air (0.1 hPa at 400 m).
    """
    kelvin = celsius + KELVIN
    return sea_level * (kelvin / (kelvin + LAPSE * geopotential(elevation))) ** EXPONENT
