"""What hydrometers and refractometers read, and what that means."""

from __future__ import annotations

from sheetfuncs.science.maths import Value, fifteen
from sheetfuncs.science.sucrose import density, density_20, density_factors, gravity, horner, share_near, with_slope
from sheetfuncs.science.water import DENSITY_20

GLASS = 0.000025  # cubic expansion of hydrometer glass, 1/K: ISO 1768:1975, section 3
HYDROMETER_MARKED_AT = fifteen((60.0 - 32.0) / 1.8)  # °C: the 60 °F scale of syrup hydrometers
MARKED_FACTORS = tuple(fifteen(factor) for factor in density_factors(HYDROMETER_MARKED_AT))
AIR, STEEL = 1.2, 8000.0  # kg/m³: of the air and the weights that a scale is set for (OIML D 28:2004)

BAUME_MODULUS = 145.0  # American modulus for liquids heavier than water

# Brix per °C for each step that a floating hydrometer is off its mark; only starts the solution.
DRIFT = 0.1


def _brix_where(factors: tuple[Value, ...], wanted: Value, start: Value) -> Value:
    """°Brix at which a density polynomial takes a value: three Newton steps from a start
    that is within 4 °Brix end within 1e-9 °Brix."""
    w = start * 0.01
    for _ in range(3):
        rho, steepness = with_slope(factors, w)
        w = w - (rho - wanted) / steepness
    return 100.0 * w


def _swelling(celsius: Value, marked_at: Value) -> Value:
    return 1.0 + GLASS * (celsius - marked_at)


def hydrometer_reading(brix: Value, celsius: Value) -> Value:
    """What a hydrometer marked in °Brix at 60 °F shows in a solution at a temperature.

    It floats where the density of the scale at 60 °F equals that of the liquid, times the
    swelling of the warm glass.  Source: buoyancy, with ICUMSA SPS-4 densities; within 0.33
    °Brix of the printed chart for 66.9 °Brix syrup (209 to 50 °F).
    """
    floating = density(brix, celsius) * _swelling(celsius, HYDROMETER_MARKED_AT)
    return _brix_where(MARKED_FACTORS, floating, brix - DRIFT * (celsius - HYDROMETER_MARKED_AT))


def brix_from_hydrometer(reading: Value, celsius: Value, marked_at: Value = HYDROMETER_MARKED_AT) -> Value:
    """True °Brix from what a hydrometer shows at a temperature; see `hydrometer_reading`."""
    scale = MARKED_FACTORS if marked_at is HYDROMETER_MARKED_AT else density_factors(marked_at)
    floating = horner(scale, reading * 0.01) / _swelling(celsius, marked_at)
    return _brix_where(density_factors(celsius), floating, reading + DRIFT * (celsius - marked_at))


def brix_from_weights(ratio: Value, celsius: Value) -> Value:
    """True °Brix from how much heavier than water the liquid in one container is on a scale.

    Both are buoyed up by the air: the ratio of the weights is that of the densities less the air's.
    Source: that balance, with ICUMSA SPS-4 densities at the temperature of both.
    """
    factors = density_factors(celsius)
    weighed = ratio * (factors[0] - AIR) + AIR
    return _brix_where(factors, weighed, 100.0 * share_near(weighed * DENSITY_20 / factors[0]))


def weighed_in_air(brix: Value) -> Value:
    """What a scale shows for a cubic metre of a solution at 20 °C, kg."""
    return (density_20(brix) - AIR) / (1.0 - AIR / STEEL)


def refractometer_correction(reading: Value, celsius: Value) -> Value:
    """°Brix to add to a refractometer without temperature compensation, marked at 20 °C.

    Source: the surface nearest to every row of OIV-MA-AS2-02 Table I (10 to 17 °C) and of the
    International Temperature Correction Table of 1936 (10 to 22 °C as printed in the GOST standard
    for refractometry of soluble solids, Table A.1; 23 to 30 °C from memory): within 0.021 °Brix of
    each, 0 to 75 °Brix.  The two tables stand up to 0.04 apart.
    """
    off = celsius - 20.0
    w = reading * 0.01
    return off * (0.06098 + (0.06408 - 0.05691 * w) * w + off * (0.001024 - 0.00132 * w))


def baume(brix: Value) -> Value:
    """Degrees Baumé, modulus 145, from the specific gravity 20/20 °C."""
    return BAUME_MODULUS - BAUME_MODULUS / gravity(brix)
