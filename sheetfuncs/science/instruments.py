"""What hydrometers and refractometers read, and what that means."""

from __future__ import annotations

from sheetfuncs.science.maths import Value, fifteen
from sheetfuncs.science.sucrose import density, density_factors, gravity, horner, with_slope

GLASS = 0.000025  # cubic expansion of hydrometer glass, 1/K (ISO 387 and ASTM E126, from memory)
HYDROMETER_MARKED_AT = fifteen((60.0 - 32.0) / 1.8)  # °C: the 60 °F scale of syrup hydrometers
MARKED_FACTORS = tuple(fifteen(factor) for factor in density_factors(HYDROMETER_MARKED_AT))

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


def _swelling(celsius: Value) -> Value:
    return 1.0 + GLASS * (celsius - HYDROMETER_MARKED_AT)


def hydrometer_reading(brix: Value, celsius: Value) -> Value:
    """What a hydrometer marked in °Brix at 60 °F shows in a solution at a temperature.

    It floats where the density of the scale at 60 °F equals that of the liquid, times the
    swelling of the warm glass.  Source: buoyancy, with ICUMSA SPS-4 densities; within 0.33
    °Brix of the printed chart for 66.9 °Brix syrup (209 to 50 °F).
    """
    floating = density(brix, celsius) * _swelling(celsius)
    return _brix_where(MARKED_FACTORS, floating, brix - DRIFT * (celsius - HYDROMETER_MARKED_AT))


def brix_from_hydrometer(reading: Value, celsius: Value) -> Value:
    """True °Brix from what a 60 °F hydrometer shows at a temperature; see `hydrometer_reading`."""
    floating = horner(MARKED_FACTORS, reading * 0.01) / _swelling(celsius)
    return _brix_where(density_factors(celsius), floating, reading + DRIFT * (celsius - HYDROMETER_MARKED_AT))


def refractometer_correction(reading: Value, celsius: Value) -> Value:
    """°Brix to add to a refractometer without temperature compensation, marked at 20 °C.

    Source: a smooth surface fitted to OIV-MA-AS2-02 Table I (10 to 16 °C, read) and to the
    International Temperature Correction Table of 1936, AOAC 990.35 / ISO 2173 (15 to 30 °C,
    from memory); within 0.021 °Brix of all 191 rows, 0 to 75 °Brix.
    """
    off = celsius - 20.0
    w = reading * 0.01
    return off * (0.06262 + (0.05471 - 0.04754 * w) * w + off * (0.00091 - 0.0009953 * w))


def baume(brix: Value) -> Value:
    """Degrees Baumé, modulus 145, from the specific gravity 20/20 °C."""
    return BAUME_MODULUS - BAUME_MODULUS / gravity(brix)
