"""The ± of the ledger: it holds what there was in nineteen seasons of twenty, and is no wider than it must be.

tests/tools/simulate_seasons.py has the seasons, and prints the shares of many.
"""

from __future__ import annotations

import pytest

from tests.tools.simulate_seasons import TOLD, shares

SEASONS = 40


@pytest.fixture(scope="module")
def usual() -> dict[str, tuple[int, int]]:
    return shares(SEASONS, seed=11)


@pytest.fixture(scope="module")
def worse() -> dict[str, tuple[int, int]]:
    """Instruments three times as wrong as Yard says."""
    return shares(SEASONS, seed=12, times=3)


@pytest.mark.parametrize("line", TOLD)
def test_what_there_was_is_within_the_plus_or_minus(line: str, usual: dict[str, tuple[int, int]]) -> None:
    good, seasons = usual[line]
    assert seasons > SEASONS / 3
    assert good / seasons >= 0.9


@pytest.mark.parametrize("line", TOLD)
def test_it_is_no_wider_than_it_must_be(line: str, worse: dict[str, tuple[int, int]]) -> None:
    """Three times as large, an error stays within it as often as a usual one within a third of it: in half."""
    good, seasons = worse[line]
    assert 0.25 <= good / seasons <= 0.75
