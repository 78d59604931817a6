"""Water, steam and air against general-purpose libraries, and solutions against a solver of theirs.

The libraries compute here, when the tests run: nothing is typed in.
"""

from __future__ import annotations

import math

import fluids
import pytest
from CoolProp.CoolProp import PropsSI
from iapws import IAPWS97
from iapws.iapws97 import _PSat_T, _TSat_P
from pytest import approx
from scipy.integrate import quad
from scipy.optimize import brentq

from sheetfuncs import (
    AIR_PRESSURE,
    AIR_PRESSURE_BY_SEA_LEVEL,
    AIR_PRESSURE_HERE,
    BOIL_HEAT,
    BOIL_RATE,
    BRIX_BY_BOIL,
    BRIX_BY_GRAVITY,
    BRIX_BY_HYDROMETER,
    BRIX_BY_SAP_HYDROMETER,
    BRIX_BY_WEIGHT,
    FINISH_RISE,
    FINISH_TEMP,
    SYRUP_COLD,
    SYRUP_DENSITY,
    WATER_BOILS,
)
from sheetfuncs.science import sucrose, water

ATMOSPHERE = 101325.0
INCH = 3386.38864034  # Pa in an inch of mercury
FOOT = 0.3048
GLASS = 25e-6  # per K


def spread(low: float, high: float, count: int) -> list[float]:
    return [low + (high - low) * step / (count - 1) for step in range(count)]


@pytest.mark.parametrize("hectopascals", spread(508.0, 1084.0, 13))
def test_boiling_water(hectopascals):
    celsius = WATER_BOILS(hectopascals, "metric")
    assert celsius + 273.15 == approx(_TSat_P(hectopascals / 1e4), abs=1e-7)  # IF97 by iapws
    # IAPWS-95 by CoolProp: the industrial formulation is allowed 0.003 K from it
    assert celsius + 273.15 == approx(PropsSI("T", "P", hectopascals * 100.0, "Q", 0, "Water"), abs=0.003)


@pytest.mark.parametrize("inches", spread(15.0, 32.0, 13))
def test_boiling_water_in_us_units(inches):
    kelvin = (WATER_BOILS(inches) - 32.0) / 1.8 + 273.15
    assert kelvin == approx(_TSat_P(inches * INCH / 1e6), abs=1e-7)


@pytest.mark.parametrize("celsius", spread(60.0, 120.0, 13))
def test_saturation_pressure(celsius):
    assert water.saturation_pressure(celsius) == approx(1e6 * _PSat_T(celsius + 273.15), rel=1e-9)


@pytest.mark.parametrize("celsius", [1.0, 4.0, 15.5, 20.0, 25.0, 40.0, 60.0, 80.0, 95.0, 99.9])
def test_density_of_water(celsius):
    kelvin = celsius + 273.15
    # Kell's equation of 1975 stands 0.006 kg/m³ under IAPWS-95 at 20 °C and 0.01 at 100 °C
    here = SYRUP_DENSITY(0.0, celsius, "metric") * 1000.0
    assert here == approx(PropsSI("D", "T", kelvin, "P", ATMOSPHERE, "Water"), abs=0.012)
    assert here == approx(IAPWS97(T=kelvin, P=ATMOSPHERE / 1e6).rho, abs=0.02)  # IF97 region 1


@pytest.mark.parametrize("celsius", [40.0, 60.0, 80.0, 95.0])
def test_hot_water_shrinks(celsius):
    cold, hot = (PropsSI("D", "T", t + 273.15, "P", ATMOSPHERE, "Water") for t in (20.0, celsius))
    assert SYRUP_COLD(1.0, 0.0, celsius, "metric") == approx(hot / cold, abs=2e-5)


@pytest.mark.parametrize("celsius", [80.0, 90.0, 95.0, 100.0, 105.0, 110.0])
def test_latent_heat(celsius):
    kelvin = celsius + 273.15
    steam, liquid = IAPWS97(T=kelvin, x=1).h, IAPWS97(T=kelvin, x=0).h
    assert water.latent_heat(celsius) == approx(1000.0 * (steam - liquid), abs=60.0)  # J/kg, as its docstring says


@pytest.mark.parametrize("celsius", [0.5, 4.4444, 10.0, 15.5, 40.0, 80.0])
def test_heat_to_boil_water_away(celsius):
    # a litre measured cold (20 °C), warmed and turned into steam of 1 atm
    kilograms = PropsSI("D", "T", 293.15, "P", ATMOSPHERE, "Water") / 1000.0
    steam = PropsSI("H", "P", ATMOSPHERE, "Q", 1, "Water")
    liquid = PropsSI("H", "T", celsius + 273.15, "P", ATMOSPHERE, "Water")
    expected = kilograms * (steam - liquid) / 1e6
    assert BOIL_HEAT(1.0, 0.0, 66.9, celsius, "metric") == approx(expected, rel=0.001)


@pytest.mark.parametrize("feet", [-1400, 0, 250, 650, 1000, 2000, 5000, 10000, 16000])
def test_standard_atmosphere(feet):
    expected = fluids.ATMOSPHERE_1976(feet * FOOT).P
    assert AIR_PRESSURE(feet) * INCH == approx(expected, rel=1e-6)
    if -425 <= feet * FOOT <= 4900:
        assert AIR_PRESSURE(feet * FOOT, "metric") * 100.0 == approx(expected, rel=1e-6)


@pytest.mark.parametrize("feet", [0.0, 650.0, 2000.0, 5000.0])
@pytest.mark.parametrize("inches", [28.5, 29.92, 30.6])
def test_altimeter_setting(inches, feet):
    # Automated Surface Observing System User's Guide (NOAA, 1998) 3.4: the setting from the station pressure
    setting = (AIR_PRESSURE_HERE(inches, feet) ** 0.1903 + 1.313e-5 * feet) ** 5.255
    assert setting == approx(inches, abs=0.01)  # both are reported to 0.01 inHg


def activity(brix: float, kelvin: float) -> float:
    """Starzak & Peacock (1997), written down a second time."""
    x = brix / 342.2965 / (brix / 342.2965 + (100.0 - brix) / 18.015268)
    return (1.0 - x) * math.exp(-17638.0 / (8.314462618 * kelvin) * (1.0 - 1.0038 * x - 0.24653 * x**2) * x**2)


def boils_at(brix: float, pascals: float) -> float:
    """The boiling point in K, by a general root finder and the vapour pressure of iapws."""
    return brentq(lambda kelvin: activity(brix, kelvin) * 1e6 * _PSat_T(kelvin) - pascals, 350.0, 420.0, xtol=1e-11)


@pytest.mark.parametrize("brix", [0.0, 2.0, 20.0, 50.0, 60.0, 66.0, 66.9, 68.9, 75.0, 85.0])
@pytest.mark.parametrize("hectopascals", [508.0, 850.0, 1013.25, 1084.0])
def test_boiling_syrup(brix, hectopascals):
    expected = boils_at(brix, hectopascals * 100.0) - 273.15
    assert FINISH_TEMP(brix, hectopascals, "metric") == approx(expected, abs=1e-6)
    rise = expected - (_TSat_P(hectopascals / 1e4) - 273.15)
    assert FINISH_RISE(brix, hectopascals, "metric") == approx(rise, abs=1e-6)


@pytest.mark.parametrize("rise", [0.05, 0.5, 2.0, 4.2, 8.0, 11.0])
@pytest.mark.parametrize("celsius", [80.0, 93.0, 100.0, 105.0])
def test_strength_from_the_boil(rise, celsius):
    pascals = 1e6 * _PSat_T(celsius + 273.15)
    expected = brentq(lambda brix: boils_at(brix, pascals) - 273.15 - celsius - rise, 0.0, 86.0, xtol=1e-10)
    assert BRIX_BY_BOIL(celsius + rise, celsius, "metric") == approx(expected, abs=1e-6)


@pytest.mark.parametrize("gravity", spread(1.0, 1.45, 10))
def test_strength_from_gravity(gravity):
    wanted = gravity * sucrose.density(0.0, 20.0)
    expected = brentq(lambda brix: sucrose.density(brix, 20.0) - wanted, -1.0, 90.0, xtol=1e-11)
    assert BRIX_BY_GRAVITY(gravity) == approx(expected, abs=1e-6)


@pytest.mark.parametrize("shown", [0.5, 10.0, 40.0, 59.0, 66.9, 75.0])
@pytest.mark.parametrize("celsius", [0.0, 20.0, 60.0, 98.0, 105.0])
def test_strength_from_the_hydrometer(shown, celsius):
    marked = (60.0 - 32.0) / 1.8
    floats = sucrose.density(shown, marked) / (1.0 + GLASS * (celsius - marked))
    expected = brentq(lambda brix: sucrose.density(brix, celsius) - floats, -5.0, 95.0, xtol=1e-11)
    assert expected < 0.0 or BRIX_BY_HYDROMETER(shown, celsius, "metric") == approx(expected, abs=1e-6)


@pytest.mark.parametrize("celsius", [-25.0, -10.0, 0.0, 15.0])
@pytest.mark.parametrize("metres", [-300.0, 0.0, 200.0, 400.0, 1000.0, 3000.0])
def test_pressure_of_air_as_cold_as_it_is(celsius, metres):
    # the weight of the air below, by quadrature: g M / (R T), with 6.5 K a kilometre from the pan down
    height = 6356766.0 * metres / (6356766.0 + metres)
    layer, _ = quad(lambda z: 9.80665 * 0.0289644 / 8.31432 / (celsius + 273.15 + 0.0065 * (height - z)), 0.0, height)
    expected = 1013.25 * math.exp(-layer)
    assert AIR_PRESSURE_BY_SEA_LEVEL(1013.25, metres, celsius, "metric") == approx(expected, rel=1e-9)


def test_what_the_wrong_barometer_costs():
    # the card of AIR_PRESSURE_HERE, at -10 °C
    for metres, fahrenheit in ((400.0, 0.2), (1000.0, 0.4)):
        readings = (
            AIR_PRESSURE_HERE(1013.25, metres, "metric"),
            AIR_PRESSURE_BY_SEA_LEVEL(1013.25, metres, -10.0, "metric"),
        )
        there, true = (_TSat_P(reading / 1e4) for reading in readings)
        assert (there - true) * 1.8 == approx(fahrenheit, abs=0.05)


@pytest.mark.parametrize("shown", [0.5, 2.0, 8.0, 40.0])
@pytest.mark.parametrize("celsius", [0.0, 3.3, 10.0, 25.0])
@pytest.mark.parametrize("marked", [3.3333, 15.0, 20.0])
def test_strength_from_a_hydrometer_marked_at_another_temperature(shown, celsius, marked):
    floats = sucrose.density(shown, marked) / (1.0 + GLASS * (celsius - marked))
    expected = brentq(lambda brix: sucrose.density(brix, celsius) - floats, -5.0, 95.0, xtol=1e-11)
    assert expected < 0.0 or BRIX_BY_SAP_HYDROMETER(shown, celsius, marked, "metric") == approx(expected, abs=1e-6)


@pytest.mark.parametrize("ratio", [1.0, 1.0077, 1.04, 1.18, 1.33, 1.4])
@pytest.mark.parametrize("celsius", [0.0, 4.0, 20.0, 60.0, 100.0])
def test_strength_from_weights(ratio, celsius):
    def weight(brix: float) -> float:
        return sucrose.density(brix, celsius) - 1.2  # kg/m³, less the air that buoys it up

    expected = brentq(lambda brix: weight(brix) - ratio * weight(0.0), -5.0, 95.0, xtol=1e-11)
    assert BRIX_BY_WEIGHT(0.0, 1.0, ratio, celsius, "metric") == approx(max(expected, 0.0), abs=1e-6)


@pytest.mark.parametrize("kilowatts", [0.5, 1.5, 10.0])
def test_water_boiled_off_by_a_heat(kilowatts):
    kilograms = 3600.0 * kilowatts * 1000.0 * 0.75
    kilograms /= PropsSI("H", "P", ATMOSPHERE, "Q", 1, "Water") - PropsSI("H", "P", ATMOSPHERE, "Q", 0, "Water")
    litres = kilograms / PropsSI("D", "T", 293.15, "P", ATMOSPHERE, "Water") * 1000.0
    assert BOIL_RATE(kilowatts, 0.75, "metric") == approx(litres, rel=1e-4)
