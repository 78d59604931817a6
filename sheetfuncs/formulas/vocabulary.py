"""Arguments that several functions share: one meaning, one pair of limits each."""

from __future__ import annotations

from sheetfuncs.formulas.quantities import (
    ANY_RATE,
    ANY_VOLUME,
    AREA,
    ELEVATION,
    PRESSURE,
    SHARE,
    SMALL_VOLUME,
    SUGAR,
    TEMPERATURE,
    VOLUME,
    measured,
    number,
)

# Limits of °Brix: the density and boiling relations were checked to about 85 °Brix.
STRENGTH = number("sugar in the liquid, percent by mass", SUGAR, 0.0, 85.0)
SUGARED = number("sugar in the liquid, percent by mass, more than none", SUGAR, 0.1, 85.0)
TARGET = number("sugar in the syrup wanted, percent by mass (66.9 is usual)", SUGAR, 0.1, 85.0)

SAP_VOLUME = measured("volume of sap or syrup, cold", VOLUME, (0.0, 1000000.0), (0.0, 3800000.0))
SYRUP_VOLUME = measured("volume of syrup", VOLUME, (0.0, 1000000.0), (0.0, 3800000.0))
SOME_VOLUME = number("volume of the liquid, cold", ANY_VOLUME, 0.0, 10000000.0)
PACE = number("volume of water that boils off in an hour", ANY_RATE, 0.001, 1000000.0)
JAR = measured("volume of one jar, filled", SMALL_VOLUME, (0.1, 1000.0), (3.0, 30000.0))
PAN_AREA = measured("area of the pan's bottom", AREA, (0.05, 1000.0), (0.005, 93.0))

PLACE = measured("height above the sea", ELEVATION, (-1400.0, 16000.0), (-425.0, 4900.0))
AIR = measured(
    "air pressure at the pan, not reduced to sea level (AIR_PRESSURE or AIR_PRESSURE_HERE gives it)",
    PRESSURE,
    (15.0, 32.0),
    (508.0, 1084.0),
)

CUP_TEMPERATURE = measured("temperature of the liquid", TEMPERATURE, (32.0, 221.0), (0.0, 105.0))
WATER_READING = measured(
    "what the thermometer shows in water boiling hard, today", TEMPERATURE, (175.0, 222.0), (79.5, 105.5)
)
ICE_SHARE = number("share of the mass that is thrown out as ice, 0.25 for a quarter", SHARE, 0.0, 0.95)
ICE_BRIX = number("sugar left in the ice, percent by mass (often 0.2 to 1)", SUGAR, 0.0, 85.0)
