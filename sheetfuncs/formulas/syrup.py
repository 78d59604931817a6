"""Syrup: gravity and density, too thin or too thick, blends, state and grade."""

from __future__ import annotations

from sheetfuncs.formulas.define import define
from sheetfuncs.formulas.quantities import (
    BAUME,
    DENSITY,
    GRADE,
    GRAVITY,
    PERCENT,
    SHARE,
    SMALL_VOLUME,
    STATE,
    SUGAR,
    VOLUME,
    number,
)
from sheetfuncs.formulas.vocabulary import CUP_TEMPERATURE, SOME_VOLUME, STRENGTH, SYRUP_VOLUME, TARGET
from sheetfuncs.science import instruments, sucrose
from sheetfuncs.science.maths import Value, choose, require
from sheetfuncs.science.water import DENSITY_20

LIGHT = number("light that passes, percent, 560 nm, 10 mm, glycerol 100", PERCENT, 0.0, 100.0)
THIN = number("sugar in the thin syrup, percent by mass", SUGAR, 0.0, 85.0)
THICK = number("sugar in the thick syrup, percent by mass", SUGAR, 0.0, 85.0)
SPS_4 = "ICUMSA SPS-4, in Bubnik et al., Sugar Technologists Manual (1995), p. 164"

THINNEST, THICKEST = 66.0, 68.9  # °Brix


@define(
    "what the hydrometer shows",
    SUGAR,
    source="buoyancy with ICUMSA SPS-4 densities, glass 25e-6 per K (ISO 1768:1975); "
    "within 0.33 °Brix of the printed chart for 66.9 °Brix syrup",
    example=((66.9, 209.0, "US"), 59.12),
    brix=STRENGTH,
    temperature=CUP_TEMPERATURE,
)
def SYRUP_FLOATS(brix: Value, temperature: Value) -> Value:
    """What a hydrometer marked in °Brix at 60 °F shows in syrup of a strength, that hot.

    #NUM! where it would sink below its 0 mark.
    """
    reading = instruments.hydrometer_reading(brix, temperature)
    reading = require(reading >= -0.000001, reading, "it sinks below the 0 mark: too thin and too hot to read")
    reading = require(reading <= 85.000001, reading, "it floats above the 85 mark")
    return choose(reading > 0.0, reading, 0.0)


@define(
    "true specific gravity",
    GRAVITY,
    source=SPS_4,
    example=((66.9,), 1.33058),
    brix=STRENGTH,
)
def SYRUP_GRAVITY(brix: Value) -> Value:
    """True specific gravity 20/20 °C: density over that of water, both at 20 °C."""
    return sucrose.gravity(brix)


@define(
    "degrees Baumé",
    BAUME,
    source="145 - 145 / gravity, the American modulus; 36 °Baumé is 66.9 °Brix in the Vermont rule",
    example=((66.9,), 36.03),
    brix=STRENGTH,
)
def SYRUP_BAUME(brix: Value) -> Value:
    """Degrees Baumé of a strength, modulus 145, on the 20/20 °C gravity."""
    return instruments.baume(brix)


@define(
    "density, true mass",
    DENSITY,
    source=SPS_4,
    example=((66.9, 68.0, "US"), 11.084),
    brix=STRENGTH,
    temperature=CUP_TEMPERATURE,
)
def SYRUP_DENSITY(brix: Value, temperature: Value) -> Value:
    """Density at a temperature. True mass; weighed in air a gallon reads 0.01 lb less."""
    return sucrose.density(brix, temperature)


@define(
    "cold volume",
    VOLUME,
    source=SPS_4,
    example=((1.0, 66.9, 185.0, "US"), 0.971),
    volume=SYRUP_VOLUME,
    brix=STRENGTH,
    temperature=CUP_TEMPERATURE,
)
def SYRUP_COLD(volume: Value, brix: Value, temperature: Value) -> Value:
    """Volume of hot sap or syrup once it has cooled to 68 °F (20 °C)."""
    return volume * sucrose.density(brix, temperature) / sucrose.density_20(brix)


@define(
    "water, positive to stir in, negative to boil off",
    SMALL_VOLUME,
    source="sugar balance with ICUMSA SPS-4 densities at 20 °C",
    example=((1.0, 70.0, 66.9, "US"), 8.01),
    volume=SYRUP_VOLUME,
    brix=STRENGTH,
    syrup_brix=TARGET,
)
def SYRUP_ADJUST(volume: Value, brix: Value, syrup_brix: Value) -> Value:
    """Water to stir in (positive) or to boil off (negative) to bring syrup to a strength. Cold volumes."""
    return volume * sucrose.density_20(brix) * (brix / syrup_brix - 1.0) / DENSITY_20


@define(
    "strength of the mix",
    SUGAR,
    source="sugar and mass balance with ICUMSA SPS-4 densities at 20 °C",
    example=((2.0, 64.0, 1.0, 70.0), 66.04),
    volume=SOME_VOLUME,
    brix=STRENGTH,
    other_volume=SOME_VOLUME,
    other_brix=STRENGTH,
)
def SYRUP_BLEND(volume: Value, brix: Value, other_volume: Value, other_brix: Value) -> Value:
    """Strength of two lots poured together, cold volumes.

    #NUM! where both are empty.
    """
    mass = volume * sucrose.density_20(brix)
    other_mass = other_volume * sucrose.density_20(other_brix)
    total = require(mass + other_mass > 0.0, mass + other_mass, "both volumes are 0")
    return (mass * brix + other_mass * other_brix) / total


@define(
    "share of the thick syrup by volume, 0.5 for half",
    SHARE,
    source="sugar and mass balance (Pearson's square is the same by mass)",
    example=((64.0, 70.0, 66.9), 0.4764),
    thin_brix=THIN,
    thick_brix=THICK,
    syrup_brix=TARGET,
)
def SYRUP_BLEND_SHARE(thin_brix: Value, thick_brix: Value, syrup_brix: Value) -> Value:
    """Share of thick syrup, by cold volume, that brings thin syrup to a strength.

    #NUM! where the strength wanted is not between the two.
    """
    outside = "the strength wanted is not between the thin and the thick"
    thick_part = require(thin_brix <= syrup_brix, syrup_brix - thin_brix, outside) * sucrose.density_20(thin_brix)
    thin_part = require(syrup_brix <= thick_brix, thick_brix - syrup_brix, outside) * sucrose.density_20(thick_brix)
    parts = thick_part + thin_part
    return thick_part / require(parts > 0.0, parts, "both syrups are alike")


@define(
    "thin, in range or thick",
    STATE,
    source="U.S. Standards for Grades of Maple Syrup, USDA AMS (2015) and 21 CFR 168.140: 66.0 to 68.9 °Brix; "
    "some states ask for more (Vermont 66.9)",
    example=((65.2,), "thin"),
    brix=STRENGTH,
)
def SYRUP_STATE(brix: Value) -> Value:
    """Whether syrup is thin (it spoils), in range, or thick (it crystallises): against 66.0 to 68.9 °Brix."""
    return choose(brix < THINNEST, "thin", choose(brix > THICKEST, "thick", "in range"))


@define(
    "grade by colour",
    GRADE,
    source="USDA AMS (2015); 1 NYCRR 270.1; Maple Products Regulations C.R.C. c. 289 Sch. III: 75, 50 and 25 percent",
    example=((58.0,), "Amber"),
    transmittance=LIGHT,
)
def SYRUP_GRADE(transmittance: Value) -> Value:
    """Colour class from the light that passes: Golden, Amber, Dark or Very Dark.

    A grade also asks for good flavour and clear syrup of 66.0 to 68.9 °Brix.
    """
    darker = choose(transmittance >= 25.0, "Dark", "Very Dark")
    return choose(transmittance >= 75.0, "Golden", choose(transmittance >= 50.0, "Amber", darker))
