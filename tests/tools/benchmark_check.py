"""How long `sheetfuncs check` takes, and how much memory: a script to run by hand, not a test.

    python -m tests.tools.benchmark_check

Each workbook is checked by a Python of its own, start included; the quickest of three counts.
Wanted: a season of the default size in 2 s, one of 1,000 collections in 6 s, under 400 MB.
"""

from __future__ import annotations

import datetime
import re
import subprocess
import sys
import tempfile
from pathlib import Path
from typing import Any

from sheetfuncs.workbook.commands.new.new import season_of
from sheetfuncs.workbook.model.rows import Rows
from sheetfuncs.workbook.season import Season

MOST_MEGABYTES = 400
MEASURED = """
import resource, sys, time
start = time.perf_counter()
from sheetfuncs import cli
code = cli.main(["check", sys.argv[1]])
print(time.perf_counter() - start, resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024)
"""


def filled(runs: int) -> Season:
    """A season with every row of its logs filled in."""
    rows = Rows().scaled(runs)
    first = datetime.date(2026, 2, 1)

    def days(count: int, later: int = 0) -> list[datetime.date]:
        return [first + datetime.timedelta(days=later + number * 55 // count) for number in range(count)]

    inputs: dict[str, Any] = {
        "yard.year": 2026,
        "yard.elevation": 650,
        "places.name": ["bin"],
        "places.holds": [1000],
        "collection.date": days(runs),
        "collection.sap": [3 + number % 5 for number in range(runs)],
        "collection.brix": [2.0] * runs,
        "collection.into": ["bin"] * runs,
        "collection.note": [f"run {number}" for number in range(runs)],
        "boil.date": days(rows.boils, 1),
        "boil.hours": [3.0] * rows.boils,
        "boil.rest": [0.5] * rows.boils,
        "boil.left_brix": [23.0] * rows.boils,
    }
    return Season("US", inputs, rows, today=datetime.date(2026, 4, 1))


def measured(path: Path) -> tuple[float, float]:
    """Seconds and megabytes of one check."""
    runs = []
    for _ in range(3):
        answer = subprocess.run([sys.executable, "-c", MEASURED, str(path)], capture_output=True, text=True, check=True)
        runs.append(tuple(float(word) for word in re.findall(r"[\d.]+", answer.stdout.splitlines()[-1])))
    return min(seconds for seconds, _ in runs), max(megabytes for _, megabytes in runs)


def main() -> int:
    failed = 0
    with tempfile.TemporaryDirectory() as name:
        for words, season, most in (
            ("the example, default size", season_of("US", Rows(), {}, with_example=True), 2.0),
            ("1,000 collections, filled", filled(1000), 6.0),
        ):
            for edition in ("carried", "inline"):
                path = Path(name) / f"{edition}.xlsx"
                season.write(path, edition)
                seconds, megabytes = measured(path)
                failed += seconds > most or megabytes > MOST_MEGABYTES
                print(
                    f"{words}, {edition}: {seconds:.2f} s (wanted {most:g}), "
                    f"{megabytes:.0f} MB (wanted {MOST_MEGABYTES})"
                )
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main())
