"""The generated files of the project: what a user downloads, and the filled examples.

    python -m tests.tools.templates

makes them anew; a test makes them elsewhere and compares byte for byte.
"""

from __future__ import annotations

import datetime
from collections.abc import Callable
from functools import partial
from pathlib import Path

from sheetfuncs.hosts.calc.builder import write_addin
from sheetfuncs.workbook.commands.new.new import season_of
from sheetfuncs.workbook.model.parts import Rows
from sheetfuncs.workbook.season import Season

ROOT = Path(__file__).parents[2]
DAY = datetime.date(2026, 1, 1)  # the day whose values an empty workbook stores


def empty(path: Path, system: str, edition: str) -> None:
    Season(system, {}, today=DAY).write(path, edition)


def filled(path: Path, system: str, edition: str, mistakes: bool = False) -> None:
    season_of(system, Rows(), {}, with_example=True, mistakes=mistakes).write(path, edition)


GENERATED: dict[str, Callable[[Path], None]] = {
    "templates/sheetfuncs.oxt": lambda path: write_addin(path, replace=True),
    "templates/season-us.xlsx": partial(empty, system="US", edition="carried"),
    "templates/season-us-inline.xlsx": partial(empty, system="US", edition="inline"),
    "templates/season-metric.xlsx": partial(empty, system="metric", edition="carried"),
    "templates/season-metric-inline.xlsx": partial(empty, system="metric", edition="inline"),
    "examples/season-us.xlsx": partial(filled, system="US", edition="carried"),
    "examples/season-us-inline.xlsx": partial(filled, system="US", edition="inline"),
    "examples/season-metric.xlsx": partial(filled, system="metric", edition="carried"),
    "examples/season-metric-inline.xlsx": partial(filled, system="metric", edition="inline"),
    "examples/season-with-mistakes.xlsx": partial(filled, system="US", edition="carried", mistakes=True),
}


def main() -> None:
    for name, write in GENERATED.items():
        write(ROOT / name)
        print(name)


if __name__ == "__main__":
    main()
