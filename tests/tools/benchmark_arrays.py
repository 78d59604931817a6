"""How quick `sheetfuncs.arrays` is: a script to run by hand, not a test.

    python -m tests.tools.benchmark_arrays [ELEMENTS]

For each function the time of a million elements in one call and in a loop of plain calls, how many
times faster the one is, and by how much the two differ at most (relative, absolute under 1).
"""

from __future__ import annotations

import sys
import time
from collections.abc import Callable
from typing import Any

import numpy as np

from sheetfuncs import arrays
from sheetfuncs.formulas.card import Card
from sheetfuncs.formulas.catalogue import CATALOGUE
from sheetfuncs.science.errors import NoSolution
from tests.tools.arguments import example

TIMES = 10  # at least, for FINISH_TEMP
NAN = float("nan")


def around(card: Card, count: int) -> list[Any]:
    """Arguments drawn around those of the example, so that most have a solution."""
    chance = np.random.default_rng(5)
    drawn: list[Any] = []
    for argument, value in zip(card.arguments.values(), example(card, "US"), strict=False):
        if argument.allowed:
            drawn.append(chance.choice(np.array(argument.allowed, dtype=object), count))
        else:
            low, high = argument.us
            drawn.append(np.clip(chance.normal(value, 0.02 * abs(value) + 0.01, count), low, high))
    return drawn


def seconds(work: Callable[[], Any]) -> tuple[float, Any]:
    start = time.perf_counter()
    done = work()
    return time.perf_counter() - start, done


def looped(function: Callable[..., Any], columns: list[Any], failed: Any) -> list[Any]:
    results = []
    for values in zip(*columns, strict=True):
        try:
            results.append(function(*values))
        except NoSolution:
            results.append(failed)
    return results


def apart(one: Any, other: list[Any], words: bool) -> float:
    if words:
        return float(one.tolist() != other)
    plain = np.array(other, dtype=np.float64)
    if (np.isnan(one) != np.isnan(plain)).any():
        return float("inf")
    return float(np.nanmax(np.abs(one - plain) / np.maximum(np.abs(plain), 1.0)))


def main(count: int = 1000000) -> None:
    print(f"{count:,} elements")
    print(f"{'function':22} {'arrays s':>9} {'loop s':>8} {'times':>6} {'apart':>8}")
    for name, function in CATALOGUE.items():
        card = function.card
        columns = around(card, count)
        lists = [column.tolist() for column in columns]
        quick = min((seconds(lambda: getattr(arrays, name)(*columns)) for _ in range(3)), key=lambda pair: pair[0])  # noqa: B023
        slow = seconds(lambda: looped(function, lists, None if card.result.words else NAN))  # noqa: B023
        least = f"  under {TIMES}" if slow[0] < TIMES * quick[0] else ""
        difference = apart(quick[1], slow[1], bool(card.result.words))
        print(f"{name:22} {quick[0]:9.3f} {slow[0]:8.3f} {slow[0] / quick[0]:6.1f} {difference:8.1e}{least}")


if __name__ == "__main__":
    main(*map(int, sys.argv[1:]))
