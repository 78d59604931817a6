"""A short run of the fuzzer, the same on every machine; longer ones by hand: python -m tests.tools.fuzz MINUTES"""

from __future__ import annotations

import math

from tests.tools.fuzz import fuzz


def test_no_round_fails() -> None:
    counted, failed, _ = fuzz(seconds=math.inf, rounds=60, seed=2026)
    assert failed == []
    assert counted.total() == 60
    assert len(counted) > 8  # kinds of rounds, and how they ended
