"""How quick a season workbook is made and computed: a script to run by hand, not a test.

python -m tests.tools.benchmark_workbook
"""

from __future__ import annotations

import subprocess
import sys
import tempfile
import time
from pathlib import Path

from sheetfuncs.hosts import embedded
from sheetfuncs.workbook.commands.new.new import season_of
from sheetfuncs.workbook.model.rows import Rows


def seconds(*command: str) -> float:
    start = time.perf_counter()
    subprocess.run([sys.executable, "-m", "sheetfuncs.cli", *command], check=True, capture_output=True)
    return time.perf_counter() - start


def recomputed(path: Path, rows: Rows) -> float:
    """The time of the embedded engine alone, loading included."""
    season = season_of("US", rows, {}, with_example=True)
    season.compute()
    wanted = {title: list(cells) for title, cells in season.values.items()}
    start = time.perf_counter()
    embedded.Model(path).values(wanted)
    return time.perf_counter() - start


def main() -> None:
    with tempfile.TemporaryDirectory() as name:
        path = Path(name) / "season.xlsx"
        for words, rows in (("default size", Rows()), ("1,000 collections", Rows().scaled(1000))):
            size = ["--rows", str(rows.collections)]
            took = seconds("new", str(path), "--example", "--replace", *size)
            print(
                f"{words}: new {took:.1f} s (at most {3 if rows == Rows() else 15}), "
                f"{path.stat().st_size / 1000:.0f} kB, computed anew in {recomputed(path, rows):.2f} s"
            )


if __name__ == "__main__":
    main()
