"""The minutes that Finish announces: seldom later than the end, and none where a thermometer cannot tell."""

from __future__ import annotations

import pytest

from tests.tools.simulate_finishes import SHARE_LATE, Row, late, simulated

GOOD, COARSE = 0.5, 1.0  # F°


@pytest.fixture(scope="module")
def rows() -> list[Row]:
    return simulated(150, seed=7)


def test_the_end_seldom_comes_before_the_earliest_minute(rows: list[Row]) -> None:
    good = [row for row in rows if row.step <= GOOD]
    assert sum(row.announced is not None for row in good) > 300
    assert late(good) <= SHARE_LATE


def test_every_good_thermometer_is_timed_and_no_coarse_one(rows: list[Row]) -> None:
    assert all(row.announced is not None for row in rows if row.step <= GOOD)
    assert all(row.announced is None for row in rows if row.step >= COARSE)


def test_the_minutes_are_of_use(rows: list[Row]) -> None:
    """They are no mere zero: far from the end at least a third of what is left is announced, mostly."""
    far = [(row.announced or 0.0) / row.left for row in rows if row.step <= GOOD and 15 <= row.left <= 45]
    assert sum(share > 1 / 3 for share in far) > 0.9 * len(far)
