"""What a function must never do, whatever it is given: jump, turn round, or promise more than it can."""

from __future__ import annotations

from hypothesis import assume, given
from hypothesis import strategies as st
from pytest import approx

from sheetfuncs import (
    BRIX_BY_BOIL,
    BRIX_BY_BOIL_SPREAD,
    FINISH_READING,
    PAN_RATE,
    SAP_FREEZES,
    SAP_KEEPS,
    SAP_RUNS,
    SEASON_GOES_ON,
)

BRIX = st.floats(0.0, 85.0)
CELSIUS = st.floats(-40.0, 37.9)
WATER_FROM = ("today", "another day", "barometer", "elevation")


@given(BRIX, CELSIUS, st.floats(0.0, 0.1))
def test_warmer_sap_never_keeps_longer_and_never_jumps(brix, celsius, step):
    colder, warmer = SAP_KEEPS(brix, celsius, "metric"), SAP_KEEPS(brix, celsius + step, "metric")
    assert warmer <= colder + 1e-9
    # the steepest is between liquid and ice: from 10 days to 90 in 5 °C, 0.06 of it in a tenth of a degree
    assert colder - warmer <= 0.07 * colder + 1e-9
    assert 0.0 < warmer <= 90.0


@given(st.floats(0.0, 42.0))
def test_frozen_is_by_the_freezing_point_of_its_strength(brix):
    freezes = SAP_FREEZES(brix, "metric")
    assert SAP_KEEPS(brix, freezes - 5.01, "metric") == 90.0
    assert SAP_KEEPS(brix, freezes, "metric") < 40.0


def test_part_boiled_sap_lasts_from_one_weekend_to_the_next():
    for brix in (10.0, 25.0, 45.0, 60.0):
        assert 8.0 <= SAP_KEEPS(brix, 38.0) < 8.1


@given(st.floats(0.005, 92.0), st.floats(0.0, 0.01))
def test_a_larger_pan_is_never_slower_and_never_jumps(area, more):
    small, large = PAN_RATE(area, "metric"), PAN_RATE(area + more, "metric")
    assert -1e-9 <= large - small <= 120.0 * more + 1e-9  # L/h from a m²: 40.7 of the rule, 103 between the two


@given(BRIX, st.floats(85.0, 105.0), st.floats(0.0, 1.0), st.floats(0.0, 1.0))
def test_the_spread_grows_with_each_doubt(brix, water, error, more):
    reading = FINISH_READING(brix, water, "metric")
    assume(reading <= 148.0)
    spreads = [
        BRIX_BY_BOIL_SPREAD(reading, water, error, word, "metric")  # type: ignore[arg-type] # each is one of its words
        for word in WATER_FROM
    ]
    assert spreads == sorted(spreads)
    assert BRIX_BY_BOIL_SPREAD(reading, water, error + more, "today", "metric") >= spreads[0] - 1e-9


@given(st.floats(5.0, 80.0), st.floats(85.0, 105.0), st.floats(0.0, 1.0))
def test_the_spread_is_the_larger_side_of_both_errors_and_the_relation(brix, water, error):
    reading = FINISH_READING(brix, water, "metric")
    off = (2.0 * error**2 + 0.1**2) ** 0.5
    assume(reading - off >= water)
    sides = [abs(BRIX_BY_BOIL(reading + way * off, water, "metric") - brix) for way in (-1.0, 1.0)]
    assert BRIX_BY_BOIL_SPREAD(reading, water, error, "today", "metric") == approx(max(sides), abs=1e-5)


@given(st.floats(0.0, 120.0), st.floats(0.0, 1900.0), st.floats(0.0, 100.0))
def test_warmth_only_brings_the_end_nearer(freeze_thaws, warmth, more):
    now, later = (SEASON_GOES_ON(freeze_thaws, each, "metric") for each in (warmth, warmth + more))
    assert 0.0 <= later <= now <= 1.0


@given(st.floats(-50.0, 30.0), st.floats(0.0, 20.0), st.floats(0.0, 30.0))
def test_to_remember_a_frost_never_makes_a_run_less_likely(low, colder, thaw):
    recent = max(low - colder, -51.0)
    high = min(low + thaw, 54.5)
    assert SAP_RUNS(low, recent, high, "metric") >= SAP_RUNS(low, low, high, "metric")
