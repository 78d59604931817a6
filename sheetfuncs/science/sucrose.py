"""Sugar in water: density, strength and the mass of sugar in a volume.

Strengths are °Brix: percent sugar by mass.  Maple sugar is taken as sucrose.
"""

from __future__ import annotations

from sheetfuncs.science.maths import Value, fifteen, sqrt
from sheetfuncs.science.water import DENSITY_20
from sheetfuncs.science.water import density as water_density

MOLAR_MASS_SUCROSE = 342.2965  # g/mol
MOLAR_MASS_WATER = 18.015268
REFERENCE = 20.0  # °C: the temperature at which cold volumes and gravities are stated
STRONGEST = 85.0  # °Brix: beyond it the relations were not checked

# ICUMSA SPS-4 as printed in Bubnik, Kadlec, Urban & Bruhns, Sugar Technologists Manual (1995),
# p. 164: row j holds the factors of u^j w, u^j w^2, ... with w = °Brix / 100, u = (°C - 20) / 100.
SPS_4 = (
    (385.1761, 135.3705, 40.9299, -3.9643, 13.4853, -17.289),
    (-46.272, -7.172, 1.1597, 5.1126, 17.5254),
    (59.7712, 7.2491, 12.363, -35.4791),
    (-47.2207, -21.6977, 27.6301),
    (18.3184, 12.3081),
)


def horner(factors: tuple[Value, ...], x: Value) -> Value:
    """factors[0] + factors[1] x + factors[2] x^2 + ..."""
    total = factors[-1]
    for factor in factors[-2::-1]:
        total = total * x + factor
    return total


def with_slope(factors: tuple[Value, ...], x: Value) -> tuple[Value, Value]:
    """A polynomial and its derivative."""
    total = factors[-1] * x + factors[-2]
    steepness = factors[-1]
    for factor in factors[-3::-1]:
        steepness = steepness * x + total
        total = total * x + factor
    return total, steepness


def density_factors(celsius: Value) -> tuple[Value, ...]:
    """Density at a temperature as a polynomial in w = °Brix / 100."""
    u = (celsius - REFERENCE) * 0.01
    columns = [horner(tuple(row[i] for row in SPS_4 if i < len(row)), u) for i in range(len(SPS_4[0]))]
    return (water_density(celsius), *columns)


FACTORS_20 = (DENSITY_20, *SPS_4[0])  # density_factors at 20 °C


def density(brix: Value, celsius: Value) -> Value:
    """Density of a sucrose solution, kg/m³ (true mass, not weight in air).

    Source: ICUMSA SPS-4.  0 to 85 °Brix; checked against tables at 20 °C, formula only above 40 °C.
    """
    return horner(density_factors(celsius), brix * 0.01)


def density_20(brix: Value) -> Value:
    """Density at 20 °C, kg/m³; see `density`."""
    return horner(FACTORS_20, brix * 0.01)


def share_near(wanted: Value) -> Value:
    """Sugar in the liquid from density at 20 °C, a share of the mass, within 0.002 up to 0.85."""
    return (sqrt(1.0 + 0.00496 * (wanted - DENSITY_20)) - 1.0) * 1.0716


def brix_from_density_20(wanted: Value) -> Value:
    """Strength from density at 20 °C, °Brix: `density_20` solved for w by Newton's method.

    From `share_near` two steps end within 1e-9 °Brix.
    """
    w = share_near(wanted)
    for _ in range(2):
        rho, steepness = with_slope(FACTORS_20, w)
        w = w - (rho - wanted) / steepness
    return 100.0 * w


def sugar_per_volume(brix: Value) -> Value:
    """Mass of sugar in a cubic metre measured at 20 °C, kg/m³."""
    return density_20(brix) * brix * 0.01


MOST_SUGAR = fifteen(sugar_per_volume(STRONGEST))


def brix_from_sugar_per_volume(wanted: Value) -> Value:
    """Strength from the mass of sugar in a cubic metre at 20 °C, °Brix: Newton's method.

    The start is within 0.6 °Brix from 0 to 85 °Brix; three steps end within 1e-9 °Brix.
    """
    w = (sqrt(1.0 + 0.0025 * wanted) - 1.0) * 0.84
    for _ in range(3):
        rho, steepness = with_slope(FACTORS_20, w)
        w = w - (rho * w - wanted) / (rho + w * steepness)
    return 100.0 * w


def gravity(brix: Value) -> Value:
    """True specific gravity 20/20 °C."""
    return density_20(brix) / DENSITY_20


def mole_fraction(brix: Value) -> Value:
    """Moles of sucrose in a mole of solution."""
    sucrose = brix * MOLAR_MASS_WATER
    return sucrose / (sucrose + (100.0 - brix) * MOLAR_MASS_SUCROSE)


def brix_from_mole_fraction(x: Value) -> Value:
    """Strength from moles of sucrose in a mole of solution, °Brix."""
    sucrose = x * MOLAR_MASS_SUCROSE
    return 100.0 * sucrose / (sucrose + (1.0 - x) * MOLAR_MASS_WATER)


def molality(brix: Value) -> Value:
    """Moles of sucrose in a kilogram of water."""
    return 1000.0 * brix / ((100.0 - brix) * MOLAR_MASS_SUCROSE)


def specific_heat(brix: Value, celsius: Value) -> Value:
    """Specific heat of a pure sucrose solution, J/(kg K).

    Source: Bubnik, Kadlec, Urban & Bruhns, Sugar Technologists Manual, 8th ed. (1995), p. 341, at
    purity 100 %; expect 1 to 2 %.
    """
    return 4186.8 - (25.1 - 0.075 * celsius) * brix
