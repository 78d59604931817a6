"""The boiling point of sap and syrup, and strength from it."""

from __future__ import annotations

from sheetfuncs.science.maths import Value, exp, fifteen, log, sqrt
from sheetfuncs.science.sucrose import STRONGEST, brix_from_mole_fraction, mole_fraction
from sheetfuncs.science.water import KELVIN, saturation_temperature

# Starzak & Peacock, Zuckerindustrie 122 (1997) 380-387.  The constants were read in the
# article's abstract; the form of the equation and the citation are from memory.
Q, A, B = -17638.0, -1.0038, -0.24653
GAS_CONSTANT = 8.314462618  # J/(mol K)


def water_activity(brix: Value, celsius: Value) -> Value:
    """Activity of the water in a sucrose solution, 0 to 1.

    Source: Starzak & Peacock (1997): ln gamma = Q/(R T) (1 + a x + b x²) x².  0 to 85 °Brix.
    """
    x = mole_fraction(brix)
    return _activity(x, _margules(x), celsius)


def _margules(x: Value) -> Value:
    return (1.0 + (A + B * x) * x) * x * x * Q / GAS_CONSTANT


def _activity(x: Value, margules: Value, celsius: Value) -> Value:
    return (1.0 - x) * exp(margules / (celsius + KELVIN))


STRONGEST_WATER = fifteen(1.0 - mole_fraction(STRONGEST))
STRONGEST_MARGULES = fifteen(_margules(mole_fraction(STRONGEST)))


def least_activity(celsius: Value) -> Value:
    """Water activity of the strongest solution: `brix_from_activity` has no answer to less."""
    return STRONGEST_WATER * exp(STRONGEST_MARGULES / (celsius + KELVIN))


def boiling_point(brix: Value, pressure: Value) -> Value:
    """Temperature at which a sucrose solution boils, °C.

    Water boils out of it where activity times the pressure of pure water (IAPWS-IF97) equals
    the air pressure.  Activity hardly changes with temperature, so that boiling pure water at
    pressure / activity, with the activity of the last temperature, closes in on it: each step
    leaves at most a sixtieth of the error (at 85 °Brix; a thousandth at 50).  Five steps from
    105 °C end within 1e-6 °C up to 85 °Brix, 500 to 1,085 hPa.
    """
    x = mole_fraction(brix)
    margules = _margules(x)
    celsius = 105.0
    for _ in range(5):
        celsius = saturation_temperature(pressure / _activity(x, margules, celsius))
    return celsius


def boiling_rise(brix: Value, pressure: Value) -> Value:
    """Degrees by which a sucrose solution boils hotter than water at the same pressure, K."""
    return boiling_point(brix, pressure) - saturation_temperature(pressure)


def brix_from_activity(activity: Value, celsius: Value) -> Value:
    """Strength of the solution whose water has an activity at a temperature, °Brix.

    What boils at this temperature has the activity pressure / pressure of pure water.  One
    equation in the mole fraction is left: ln(1 - x) + margules(x) / T = ln(activity).  Its leading
    terms are a quadratic, the start; three Newton steps end within 1e-6 °Brix up to 85 °Brix.
    """
    logarithm = log(activity)
    scale = Q / (GAS_CONSTANT * (celsius + KELVIN))
    x = -2.0 * logarithm / (1.0 + sqrt(1.0 - (2.0 - 4.0 * scale) * logarithm))
    for _ in range(3):
        error = log(1.0 - x) + scale * (1.0 + (A + B * x) * x) * x * x - logarithm
        steepness = scale * (2.0 + (3.0 * A + 4.0 * B * x) * x) * x - 1.0 / (1.0 - x)
        x = x - error / steepness
    return brix_from_mole_fraction(x)
