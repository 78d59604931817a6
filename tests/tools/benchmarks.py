"""How quick the functions are: a script to run by hand, not a test.

    python -m tests.tools.benchmarks

For each function the median time of a call in US units, limits and units included, and how many
times that is of the bare relation: called directly with arguments converted already, its answer
left in SI.  `by hand` is the same again of the arithmetic that a person would write in US units
without limits, the relation and its conversions: at most 2.5.  Then what `import sheetfuncs` adds to starting
Python, and the longest text that a spreadsheet has to carry.
"""

from __future__ import annotations

import subprocess
import sys
import time
import timeit
from collections.abc import Callable
from statistics import median
from typing import Any

from sheetfuncs.formulas.card import Card
from sheetfuncs.formulas.catalogue import CATALOGUE
from sheetfuncs.formulas.define import Arithmetic
from sheetfuncs.hosts.trace import inline, lambda_body
from tests.tools.arguments import example

MOST_TIMES, MOST_SECONDS = 2.5, 0.12
CALLS, ROUNDS = 3000, 31


def microseconds(function: Callable[..., Any], given: tuple[Any, ...]) -> float:
    """The median time of a call with these arguments."""
    names = {f"a{place}": value for place, value in enumerate(given)}
    timer = timeit.Timer(f"function({', '.join(names)})", globals={"function": function, **names})
    return median(timer.repeat(ROUNDS, CALLS)) / CALLS * 1e6


def converted(card: Card) -> tuple[Any, ...]:
    """The example's arguments as the relation takes them."""
    given = zip(card.arguments.values(), example(card, "US"), strict=False)
    return tuple(argument.into_si("US", value) for argument, value in given)


def by_hand(card: Card) -> Callable[..., Any]:
    """The relation with its conversions written around it, and nothing else."""
    names = list(card.arguments)
    terms = [
        f"{dict(argument.meanings['US'])}[{name}]"
        if argument.meanings
        else argument.into_si("US", Arithmetic(name)).text
        for name, argument in card.arguments.items()
    ]
    text = card.result.us.out_of_si(Arithmetic(f"relation({', '.join(terms)})")).text
    return eval(f"lambda {', '.join(names)}: {text}", {"relation": card.relation})  # noqa: S307 (our own text)


def seconds_to_start(code: str) -> float:
    """The median time of a Python that runs this and ends."""
    times = []
    for _ in range(15):
        start = time.perf_counter()
        subprocess.run([sys.executable, "-c", code], check=True)
        times.append(time.perf_counter() - start)
    return median(times)


def main() -> None:
    print(f"{'function':22} {'call µs':>8} {'bare µs':>8} {'times':>6} {'by hand':>8}")
    for name, function in CATALOGUE.items():
        card = function.card
        call, bare = microseconds(function, example(card, "US")), microseconds(card.relation, converted(card))
        hand = microseconds(by_hand(card), example(card, "US")[: len(card.arguments)])
        over = f"  over {MOST_TIMES}" if call > MOST_TIMES * hand else ""
        print(f"{name:22} {call:8.2f} {bare:8.2f} {call / bare:6.2f} {call / hand:8.2f}{over}")

    added = seconds_to_start("import sheetfuncs") - seconds_to_start("pass")
    print(f"\nimport sheetfuncs adds {added:.3f} s to a bare Python start (at most {MOST_SECONDS})")

    places = {name: [f"$AA${row}" for row, _ in enumerate(f.card.arguments, 1000)] for name, f in CATALOGUE.items()}
    for kind, texts in (
        ("LAMBDA", {name: lambda_body(function.card) for name, function in CATALOGUE.items()}),
        ("LET", {name: inline(function.card, places[name]) for name, function in CATALOGUE.items()}),
    ):
        longest = max(texts, key=lambda name: len(texts[name]))
        print(f"longest {kind}: {longest}, {len(texts[longest]):,} characters (at most 8,000)")


if __name__ == "__main__":
    main()
