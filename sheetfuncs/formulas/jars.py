"""Jars to have ready."""

from __future__ import annotations

from sheetfuncs.formulas.define import define
from sheetfuncs.formulas.quantities import COUNT, SMALL_MASS, SMALL_VOLUME
from sheetfuncs.formulas.vocabulary import JAR, STRENGTH, SYRUP_VOLUME
from sheetfuncs.science import instruments
from sheetfuncs.science.maths import Value, choose, floor

DUST = 1e-12  # of the volume: what conversions may leave, and no jar lacks


def _jars(volume: Value, jar_size: Value) -> Value:
    return floor((volume + DUST * volume) / jar_size)


@define(
    "jars filled",
    COUNT,
    source="whole jars in the volume",
    example=((1.0, 16.0, "US"), 8),
    volume=SYRUP_VOLUME,
    jar_size=JAR,
)
def JAR_COUNT(volume: Value, jar_size: Value) -> Value:
    """Whole jars that a volume fills. Both hot or both cold: SYRUP_COLD turns one into the other."""
    return _jars(volume, jar_size)


@define(
    "what is left over",
    SMALL_VOLUME,
    source="the volume less the whole jars in it",
    example=((1.06, 16.0, "US"), 7.68),
    volume=SYRUP_VOLUME,
    jar_size=JAR,
)
def JAR_REST(volume: Value, jar_size: Value) -> Value:
    """What is left over after the whole jars: for the taster."""
    rest = volume - jar_size * _jars(volume, jar_size)
    return choose(rest > DUST * volume, rest, 0.0)


@define(
    "what a scale shows, less the jar",
    SMALL_MASS,
    source="ICUMSA SPS-4 density at 20 °C, weighed in air of 1.2 kg/m³ against steel of 8,000 (OIML D 28:2004)",
    example=((16.0, 66.9, "US"), 22.15),
    jar_size=JAR,
    brix=STRENGTH,
)
def JAR_WEIGHT(jar_size: Value, brix: Value) -> Value:
    """Weight of what a full jar holds, cold: for a label, or to see on a scale that it is full."""
    return jar_size * instruments.weighed_in_air(brix)
