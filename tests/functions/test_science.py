"""Relations where no function of the catalogue reaches: published check values of the relation itself."""

from __future__ import annotations

import pytest
from pytest import approx

from sheetfuncs.science import boiling, heat, sucrose, water
from sheetfuncs.science.maths import fifteen


# IAPWS R7-97(2012), Table 35: K and MPa, nine digits.
@pytest.mark.parametrize(("kelvin", "mpa"), [(300.0, 0.353658941e-2), (500.0, 0.263889776e1), (600.0, 0.123443146e2)])
def test_saturation_pressure(kelvin, mpa):
    assert water.saturation_pressure(kelvin - 273.15) / 1e6 == approx(mpa, rel=2e-9)


# IAPWS R7-97(2012), Table 36.
@pytest.mark.parametrize(("mpa", "kelvin"), [(0.1, 0.372755919e3), (1.0, 0.453035632e3), (10.0, 0.584149488e3)])
def test_saturation_temperature(mpa, kelvin):
    assert water.saturation_temperature(mpa * 1e6) + 273.15 == approx(kelvin, rel=2e-9)


# Robinson & Stokes, Electrolyte Solutions (1965), water activity of sucrose solutions at 25 °C, from memory;
# stated agreement of Starzak & Peacock: 0.0012.
@pytest.mark.parametrize(
    ("molality", "activity"), [(1, 0.9806), (2, 0.9582), (3, 0.9328), (4, 0.9057), (5, 0.8777), (6, 0.8493)]
)
def test_water_activity(molality, activity):
    sucrose_mass = molality * sucrose.MOLAR_MASS_SUCROSE / 1000.0
    brix = 100.0 * sucrose_mass / (1.0 + sucrose_mass)
    assert sucrose.molality(brix) == approx(molality, rel=1e-12)
    assert boiling.water_activity(brix, 25.0) == approx(activity, abs=0.0012)


# CRC Handbook, 102nd ed. (2021): molality of sucrose by mass percent, three decimals.
@pytest.mark.parametrize(("brix", "molality"), [(5, 0.154), (20, 0.730), (40, 1.948), (50, 2.921), (70, 6.817)])
def test_molality(brix, molality):
    assert sucrose.molality(brix) == approx(molality, abs=0.0005)


# Ebullioscopic constant of water, 0.513 K kg/mol (CRC Handbook): the limit for thin solutions.  The
# relation takes steam for an ideal gas, which makes it 1.5 percent less.
def test_boiling_rise_of_thin_sap():
    brix = 0.1
    assert boiling.boiling_rise(brix, 101325.0) / sucrose.molality(brix) == approx(0.513, rel=0.02)


@pytest.mark.parametrize("brix", [0.0, 1.0, 40.0, 66.9, 85.0])
def test_mole_fraction_and_back(brix):
    assert sucrose.brix_from_mole_fraction(sucrose.mole_fraction(brix)) == approx(brix, abs=1e-10)


@pytest.mark.parametrize("celsius", [0.0, 15.5555555555556, 40.0, 105.0])
def test_without_sugar_density_is_that_of_water(celsius):
    assert sucrose.density(0.0, celsius) == water.density(celsius)


# Bubnik et al. (1995), coefficients read in a public source: 4.1868 - 0.0297 B + 4.6e-5 B P + 7.5e-5 B t.
@pytest.mark.parametrize("brix", [0.0, 2.0, 30.0, 66.0])
@pytest.mark.parametrize("celsius", [20.0, 60.0, 100.0])
def test_specific_heat(brix, celsius):
    printed = 4.1868 - 0.0297 * brix + 4.6e-5 * brix * 100.0 + 7.5e-5 * brix * celsius
    assert sucrose.specific_heat(brix, celsius) == approx(1000.0 * printed, rel=1e-9)


def test_water_to_boil_off_is_what_the_sugar_does_not_keep():
    assert heat.water_to_boil_off(2.0, 66.9) == approx(1.0 - 2.0 / 66.9, rel=1e-15)


def test_fifteen_digits():
    assert fifteen(1.0 / 3.0) == 0.333333333333333
    assert fifteen(2.0) == 2.0


# A mole of sucrose becomes two when it is inverted: the water activity of the moles that come on top, as if ideal.
def test_a_tenth_inverted_looks_like_syrup_over_one_brix_stronger():
    sugar, around = 66.9 / sucrose.MOLAR_MASS_SUCROSE, 33.1 / sucrose.MOLAR_MASS_WATER
    before, after = (around / (around + share * sugar) for share in (1.0, 1.1))
    boils = boiling.boiling_point(66.9, 101325.0)
    activity = boiling.water_activity(66.9, boils) * after / before
    assert 1.1 < boiling.brix_from_activity(activity, boils) - 66.9 < 1.5  # README, and the card of the spread
