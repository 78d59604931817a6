"""How long LibreOffice takes to answer an edit in a workbook of the default size: a script, not a test.

    python -m tests.tools.benchmark_typing

A cell is typed, then what is seen is read: the sheet's first rows, and the answers of Weekend.
"""

from __future__ import annotations

import statistics
import time
from typing import Any

from sheetfuncs.workbook.model.rows import Rows
from sheetfuncs.workbook.season import Season
from tests.tools.calc_office import Office, own_folder
from tests.tools.templates import filled

TIMES = 5
MOST = 50  # milliseconds
SEEN = "A1:K40"
EDITS: tuple[tuple[str, int, tuple[float, float]], ...] = (
    ("collection.sap", 16, (5, 6)),
    ("collection.sap", 2, (7, 7.5)),
    ("boil.jars_out", 5, (2, 3)),
    ("run.reading", 40, (218.8, 219)),
    ("batches.cup_shows", 2, (60.3, 60)),
    ("bottles.filled", 2, (7, 6)),
    ("weather.high", 90, (44, 45)),
    ("yard.elevation", 1, (650, 700)),
)


def main() -> None:
    season = Season("US", {}, Rows())
    numbers = {sheet.title: number for number, sheet in enumerate(season.sheets)}
    weekend = numbers["Weekend"]
    with own_folder() as folder:
        made = Office(folder)
        filled(folder / "season.xlsx", "US", "inline")
        with made.calc() as calc:
            calc.open(folder / "season.xlsx")
            calc.recalculate()
            for name, row, values in EDITS:
                took = statistics.median(
                    _edit(calc, season, numbers, weekend, name, row, values[n % 2]) for n in range(TIMES)
                )
                print(f"{name:20} row {row:3}  {took:5.0f} ms (at most {MOST})")


def _edit(calc: Any, season: Season, numbers: dict[str, int], weekend: int, name: str, row: int, value: float) -> float:
    spot = season.layout.spots[name]
    address = spot._replace(row=spot.row + row - 1, height=1).address(spot.sheet, fixed=False)
    start = time.perf_counter()
    calc.fill({address: value}, numbers[spot.sheet])
    calc.read(SEEN, numbers[spot.sheet])
    calc.read(SEEN, weekend)
    return 1000 * (time.perf_counter() - start)


if __name__ == "__main__":
    main()
