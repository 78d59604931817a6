"""The functions of the catalogue for many values at once.  Made by tests/tools/stubs.py.

A result is an array, a Series where one was given, and of single values that of the plain function.
"""

from typing import Any, Literal, Protocol, TypeAlias

from sheetfuncs.formulas.card import Number

class Array(Protocol):
    """An array or a Series."""

    def __array__(self) -> Any: ...
    def __len__(self) -> int: ...

Many: TypeAlias = list[Any] | tuple[Any, ...] | range | Array

__all__ = [
    "AIR_PRESSURE",
    "AIR_PRESSURE_BY_SEA_LEVEL",
    "AIR_PRESSURE_HERE",
    "BOIL_BRIX",
    "BOIL_FUEL",
    "BOIL_HEAT",
    "BOIL_HOURS",
    "BOIL_RATE",
    "BOIL_WATER",
    "BRIX_BY_BOIL",
    "BRIX_BY_BOIL_SPREAD",
    "BRIX_BY_GRAVITY",
    "BRIX_BY_HYDROMETER",
    "BRIX_BY_REFRACTOMETER",
    "BRIX_BY_SAP_HYDROMETER",
    "BRIX_BY_WEIGHT",
    "FINISH_MINUTES",
    "FINISH_READING",
    "FINISH_RISE",
    "FINISH_TEMP",
    "FUEL_EFFICIENCY",
    "JAR_COUNT",
    "JAR_REST",
    "JAR_WEIGHT",
    "PAN_DEPTH",
    "PAN_RATE",
    "SAP_AFTER_ICE",
    "SAP_FREEZES",
    "SAP_ICE_LOSS",
    "SAP_KEEPS",
    "SAP_PER_SYRUP",
    "SAP_RUNS",
    "SAP_SUGAR",
    "SEASON_GOES_ON",
    "SEASON_WARMTH",
    "SYRUP_ADJUST",
    "SYRUP_BAUME",
    "SYRUP_BLEND",
    "SYRUP_BLEND_SHARE",
    "SYRUP_COLD",
    "SYRUP_DENSITY",
    "SYRUP_FLOATS",
    "SYRUP_FROM_SAP",
    "SYRUP_GRADE",
    "SYRUP_GRAVITY",
    "SYRUP_STATE",
    "TAP_COUNT",
    "WATER_BOILS",
]

def AIR_PRESSURE(
    elevation: Number | Many,
    units: Literal["US", "metric"] | Many = "US",
    *,
    errors: Literal["nan", "raise"] = "nan",
) -> Any:
    """Air pressure at an elevation on a standard day."""

def AIR_PRESSURE_HERE(
    barometer: Number | Many,
    elevation: Number | Many,
    units: Literal["US", "metric"] | Many = "US",
    *,
    errors: Literal["nan", "raise"] = "nan",
) -> Any:
    """Air pressure at the pan today, from the altimeter setting and the elevation."""

def AIR_PRESSURE_BY_SEA_LEVEL(
    sea_level: Number | Many,
    elevation: Number | Many,
    temperature: Number | Many,
    units: Literal["US", "metric"] | Many = "US",
    *,
    errors: Literal["nan", "raise"] = "nan",
) -> Any:
    """Air pressure at the pan today, from sea-level pressure, the elevation and the cold outdoors."""

def WATER_BOILS(
    pressure: Number | Many,
    units: Literal["US", "metric"] | Many = "US",
    *,
    errors: Literal["nan", "raise"] = "nan",
) -> Any:
    """Boiling point of pure water at an air pressure."""

def TAP_COUNT(
    trunk_diameter: Number | Many,
    units: Literal["US", "metric"] | Many = "US",
    *,
    errors: Literal["nan", "raise"] = "nan",
) -> Any:
    """How many taps a maple can bear: under 12 in none, 12 to 18 in one, over 18 in two."""

def SAP_RUNS(
    night_low: Number | Many,
    recent_low: Number | Many,
    day_high: Number | Many,
    units: Literal["US", "metric"] | Many = "US",
    *,
    errors: Literal["nan", "raise"] = "nan",
) -> Any:
    """Whether sap will run on the day after a night: 0 no, 1 maybe, 2 likely."""

def SEASON_WARMTH(
    low: Number | Many,
    high: Number | Many,
    units: Literal["US", "metric"] | Many = "US",
    *,
    errors: Literal["nan", "raise"] = "nan",
) -> Any:
    """Warmth of a day that brings the buds on. Added up from 1 January it tells how far spring is."""

def SEASON_GOES_ON(
    freeze_thaws: Number | Many,
    warmth: Number | Many,
    units: Literal["US", "metric"] | Many = "US",
    *,
    errors: Literal["nan", "raise"] = "nan",
) -> Any:
    """How likely a week is still one of the season, by its frosts and warmth since 1 January."""

def SAP_SUGAR(
    volume: Number | Many,
    brix: Number | Many,
    units: Literal["US", "metric"] | Many = "US",
    *,
    errors: Literal["nan", "raise"] = "nan",
) -> Any:
    """Mass of sugar in a volume of sap or syrup. It stays when the water leaves."""

def SAP_PER_SYRUP(
    brix: Number | Many,
    syrup_brix: Number | Many,
    *,
    errors: Literal["nan", "raise"] = "nan",
) -> Any:
    """How many volumes of sap boil down to one volume of syrup."""

def SYRUP_FROM_SAP(
    volume: Number | Many,
    brix: Number | Many,
    syrup_brix: Number | Many,
    *,
    errors: Literal["nan", "raise"] = "nan",
) -> Any:
    """Volume that is left when sap is boiled to a strength; from any strength to any other."""

def SAP_AFTER_ICE(
    brix: Number | Many,
    ice_share: Number | Many,
    ice_brix: Number | Many,
    *,
    errors: Literal["nan", "raise"] = "nan",
) -> Any:
    """Strength of the liquid when ice is lifted out of freezing sap and thrown away."""

def SAP_ICE_LOSS(
    brix: Number | Many,
    ice_share: Number | Many,
    ice_brix: Number | Many,
    *,
    errors: Literal["nan", "raise"] = "nan",
) -> Any:
    """Share of the sugar that goes out with the ice."""

def SAP_FREEZES(
    brix: Number | Many,
    units: Literal["US", "metric"] | Many = "US",
    *,
    errors: Literal["nan", "raise"] = "nan",
) -> Any:
    """Freezing point of sap."""

def SAP_KEEPS(
    brix: Number | Many,
    temperature: Number | Many,
    units: Literal["US", "metric"] | Many = "US",
    *,
    errors: Literal["nan", "raise"] = "nan",
) -> Any:
    """Days that sap or part-boiled sap keeps. A judgement: smell and look before you boil."""

def BOIL_BRIX(
    volume: Number | Many,
    brix: Number | Many,
    volume_left: Number | Many,
    *,
    errors: Literal["nan", "raise"] = "nan",
) -> Any:
    """Strength after boiling to a measured volume; both volumes cold, no sugar lost."""

def BOIL_WATER(
    volume: Number | Many,
    brix: Number | Many,
    to_brix: Number | Many,
    *,
    errors: Literal["nan", "raise"] = "nan",
) -> Any:
    """Water to boil away to bring sap to a strength."""

def BOIL_HOURS(
    volume: Number | Many,
    brix: Number | Many,
    to_brix: Number | Many,
    rate: Number | Many,
    *,
    errors: Literal["nan", "raise"] = "nan",
) -> Any:
    """Hours to bring sap to a strength at a rate of boiling, without heating up or rests."""

def BOIL_HEAT(
    volume: Number | Many,
    brix: Number | Many,
    to_brix: Number | Many,
    sap_temperature: Number | Many,
    units: Literal["US", "metric"] | Many = "US",
    *,
    errors: Literal["nan", "raise"] = "nan",
) -> Any:
    """Heat to warm sap and boil its water off, all of it reaching the sap."""

def BOIL_FUEL(
    heat: Number | Many,
    fuel: Literal[
        "hardwood",
        "softwood",
        "propane",
        "propane bottle",
        "fuel oil",
        "natural gas",
        "natural gas by therm",
        "electricity",
    ]
    | Many,
    efficiency: Number | Many,
    units: Literal["US", "metric"] | Many = "US",
    *,
    errors: Literal["nan", "raise"] = "nan",
) -> Any:
    """Fuel that brings a heat to the sap; efficiency is the share of its heat that gets there."""

def FUEL_EFFICIENCY(
    fuel: Literal[
        "hardwood",
        "softwood",
        "propane",
        "propane bottle",
        "fuel oil",
        "natural gas",
        "natural gas by therm",
        "electricity",
    ]
    | Many,
    *,
    errors: Literal["nan", "raise"] = "nan",
) -> Any:
    """Share of a fuel's heat that reaches the sap, to start with: your own log knows better."""

def PAN_RATE(
    area: Number | Many,
    units: Literal["US", "metric"] | Many = "US",
    *,
    errors: Literal["nan", "raise"] = "nan",
) -> Any:
    """How fast a flat pan over a fire boils water off. A guess to start with: measure your own."""

def BOIL_RATE(
    power: Number | Many,
    efficiency: Number | Many,
    units: Literal["US", "metric"] | Many = "US",
    *,
    errors: Literal["nan", "raise"] = "nan",
) -> Any:
    """How fast a heat boils water off, once it boils; efficiency is the share that reaches the sap."""

def PAN_DEPTH(
    volume: Number | Many,
    area: Number | Many,
    units: Literal["US", "metric"] | Many = "US",
    *,
    errors: Literal["nan", "raise"] = "nan",
) -> Any:
    """Depth of a volume in a pan with upright sides."""

def FINISH_RISE(
    brix: Number | Many,
    pressure: Number | Many,
    units: Literal["US", "metric"] | Many = "US",
    *,
    errors: Literal["nan", "raise"] = "nan",
) -> Any:
    """How much hotter than water sap or syrup boils, at its strength and the air pressure."""

def FINISH_TEMP(
    brix: Number | Many,
    pressure: Number | Many,
    units: Literal["US", "metric"] | Many = "US",
    *,
    errors: Literal["nan", "raise"] = "nan",
) -> Any:
    """Temperature at which sap or syrup of a strength boils, at the air pressure of the day."""

def FINISH_READING(
    brix: Number | Many,
    water_reading: Number | Many,
    units: Literal["US", "metric"] | Many = "US",
    *,
    errors: Literal["nan", "raise"] = "nan",
) -> Any:
    """What this thermometer shows when the strength is reached, from what it shows in boiling water."""

def FINISH_MINUTES(
    volume: Number | Many,
    brix: Number | Many,
    syrup_brix: Number | Many,
    rate: Number | Many,
    *,
    errors: Literal["nan", "raise"] = "nan",
) -> Any:
    """Minutes until the strength is reached at a rate of boiling; 0 when it is reached or passed."""

def BRIX_BY_BOIL(
    reading: Number | Many,
    water_reading: Number | Many,
    units: Literal["US", "metric"] | Many = "US",
    *,
    errors: Literal["nan", "raise"] = "nan",
) -> Any:
    """Strength of sap or syrup from what one thermometer shows in it and in water, both boiling."""

def BRIX_BY_BOIL_SPREAD(
    reading: Number | Many,
    water_reading: Number | Many,
    give_or_take: Number | Many,
    water_from: Literal["today", "another day", "barometer", "elevation"] | Many,
    units: Literal["US", "metric"] | Many = "US",
    *,
    errors: Literal["nan", "raise"] = "nan",
) -> Any:
    """How far off BRIX_BY_BOIL may be, the larger side: by the thermometer and by its water reading."""

def BRIX_BY_HYDROMETER(
    reading: Number | Many,
    temperature: Number | Many,
    units: Literal["US", "metric"] | Many = "US",
    *,
    errors: Literal["nan", "raise"] = "nan",
) -> Any:
    """True strength from a hydrometer marked at 60 °F, floating in syrup at a temperature."""

def BRIX_BY_SAP_HYDROMETER(
    reading: Number | Many,
    temperature: Number | Many,
    marked_at: Number | Many,
    units: Literal["US", "metric"] | Many = "US",
    *,
    errors: Literal["nan", "raise"] = "nan",
) -> Any:
    """True strength from a hydrometer marked at another temperature, as sap hydrometers are."""

def BRIX_BY_WEIGHT(
    empty_weight: Number | Many,
    water_weight: Number | Many,
    full_weight: Number | Many,
    temperature: Number | Many,
    units: Literal["US", "metric"] | Many = "US",
    *,
    errors: Literal["nan", "raise"] = "nan",
) -> Any:
    """Strength from a kitchen scale: a container weighed empty, full of water, and full of sap or syrup."""

def BRIX_BY_REFRACTOMETER(
    reading: Number | Many,
    temperature: Number | Many,
    units: Literal["US", "metric"] | Many = "US",
    *,
    errors: Literal["nan", "raise"] = "nan",
) -> Any:
    """True strength from a refractometer that does not correct for temperature itself; not under 0."""

def BRIX_BY_GRAVITY(
    gravity: Number | Many,
    *,
    errors: Literal["nan", "raise"] = "nan",
) -> Any:
    """Strength from true specific gravity 20/20 °C, that is density over that of water at 20 °C."""

def SYRUP_FLOATS(
    brix: Number | Many,
    temperature: Number | Many,
    units: Literal["US", "metric"] | Many = "US",
    *,
    errors: Literal["nan", "raise"] = "nan",
) -> Any:
    """What a hydrometer marked in °Brix at 60 °F shows in syrup of a strength, that hot."""

def SYRUP_GRAVITY(
    brix: Number | Many,
    *,
    errors: Literal["nan", "raise"] = "nan",
) -> Any:
    """True specific gravity 20/20 °C: density over that of water, both at 20 °C."""

def SYRUP_BAUME(
    brix: Number | Many,
    *,
    errors: Literal["nan", "raise"] = "nan",
) -> Any:
    """Degrees Baumé of a strength, modulus 145, on the 20/20 °C gravity."""

def SYRUP_DENSITY(
    brix: Number | Many,
    temperature: Number | Many,
    units: Literal["US", "metric"] | Many = "US",
    *,
    errors: Literal["nan", "raise"] = "nan",
) -> Any:
    """Density at a temperature. True mass; weighed in air a gallon reads 0.01 lb less."""

def SYRUP_COLD(
    volume: Number | Many,
    brix: Number | Many,
    temperature: Number | Many,
    units: Literal["US", "metric"] | Many = "US",
    *,
    errors: Literal["nan", "raise"] = "nan",
) -> Any:
    """Volume of hot sap or syrup once it has cooled to 68 °F (20 °C)."""

def SYRUP_ADJUST(
    volume: Number | Many,
    brix: Number | Many,
    syrup_brix: Number | Many,
    units: Literal["US", "metric"] | Many = "US",
    *,
    errors: Literal["nan", "raise"] = "nan",
) -> Any:
    """Water to stir in (positive) or to boil off (negative) to bring syrup to a strength. Cold volumes."""

def SYRUP_BLEND(
    volume: Number | Many,
    brix: Number | Many,
    other_volume: Number | Many,
    other_brix: Number | Many,
    *,
    errors: Literal["nan", "raise"] = "nan",
) -> Any:
    """Strength of two lots poured together, cold volumes."""

def SYRUP_BLEND_SHARE(
    thin_brix: Number | Many,
    thick_brix: Number | Many,
    syrup_brix: Number | Many,
    *,
    errors: Literal["nan", "raise"] = "nan",
) -> Any:
    """Share of thick syrup, by cold volume, that brings thin syrup to a strength."""

def SYRUP_STATE(
    brix: Number | Many,
    *,
    errors: Literal["nan", "raise"] = "nan",
) -> Any:
    """Whether syrup is thin (it spoils), in range, or thick (it crystallises): against 66.0 to 68.9 °Brix."""

def SYRUP_GRADE(
    transmittance: Number | Many,
    *,
    errors: Literal["nan", "raise"] = "nan",
) -> Any:
    """Colour class from the light that passes: Golden, Amber, Dark or Very Dark."""

def JAR_COUNT(
    volume: Number | Many,
    jar_size: Number | Many,
    units: Literal["US", "metric"] | Many = "US",
    *,
    errors: Literal["nan", "raise"] = "nan",
) -> Any:
    """Whole jars that a volume fills. Both hot or both cold: SYRUP_COLD turns one into the other."""

def JAR_REST(
    volume: Number | Many,
    jar_size: Number | Many,
    units: Literal["US", "metric"] | Many = "US",
    *,
    errors: Literal["nan", "raise"] = "nan",
) -> Any:
    """What is left over after the whole jars: for the taster."""

def JAR_WEIGHT(
    jar_size: Number | Many,
    brix: Number | Many,
    units: Literal["US", "metric"] | Many = "US",
    *,
    errors: Literal["nan", "raise"] = "nan",
) -> Any:
    """Weight of what a full jar holds, cold: for a label, or to see on a scale that it is full."""
