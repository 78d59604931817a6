"""The generated files of the project: what a user downloads, and the filled examples.

    python -m tests.tools.templates

makes them anew; a test makes them elsewhere and compares byte for byte.
"""

from __future__ import annotations

import datetime
from collections.abc import Callable
from functools import partial
from pathlib import Path

from sheetfuncs.formulas.quantities import SYSTEMS
from sheetfuncs.hosts.calc.builder import write_addin
from sheetfuncs.hosts.script.sheets import script_text
from sheetfuncs.hosts.script.vba import module_text
from sheetfuncs.workbook.commands.functions_book import write_functions
from sheetfuncs.workbook.commands.new.new import season_of
from sheetfuncs.workbook.model.editions import CARRIED, DEFAULT, INLINE
from sheetfuncs.workbook.model.rows import Rows
from sheetfuncs.workbook.season import Season

ROOT = Path(__file__).parents[2]
DAY = datetime.date(2026, 1, 1)  # the day whose values an empty workbook stores


def empty(path: Path, system: str, edition: str) -> None:
    Season(system, {}, today=DAY).write(path, edition)


def filled(path: Path, system: str, edition: str, mistakes: bool = False) -> None:
    season_of(system, Rows(), {}, with_example=True, mistakes=mistakes).write(path, edition)


GENERATED: dict[str, Callable[[Path], object]] = {
    "templates/sheetfuncs.oxt": lambda path: write_addin(path, replace=True),
    "templates/sheetfuncs.bas": lambda path: path.write_bytes(module_text().encode("ascii")),
    "templates/sheetfuncs.gs": lambda path: path.write_bytes(script_text().encode()),
    "templates/functions.xlsx": partial(write_functions, system="US", replace=True),
    "examples/season-with-mistakes.xlsx": partial(filled, system="US", edition=DEFAULT.name, mistakes=True),
}
for system in SYSTEMS:
    for edition in (INLINE, CARRIED):
        name = f"season-{system.lower()}{edition.suffix}.xlsx"
        GENERATED[f"templates/{name}"] = partial(empty, system=system, edition=edition.name)
        GENERATED[f"examples/{name}"] = partial(filled, system=system, edition=edition.name)


def main() -> None:
    for name, write in GENERATED.items():
        write(ROOT / name)
        print(name)


if __name__ == "__main__":
    main()
