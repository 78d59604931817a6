"""The headings and labels of a format, a line each, as they were when it was released.

    python -m tests.tools.headings

writes the list of today's format, for a format that is not released yet; that of a released one stays.
"""

from __future__ import annotations

from pathlib import Path

from sheetfuncs.workbook.model.parts import Column, Field, named
from sheetfuncs.workbook.model.rows import Rows
from sheetfuncs.workbook.model.systems import Units
from sheetfuncs.workbook.season import FORMAT
from sheetfuncs.workbook.sheets import all_sheets

FOLDER = Path(__file__).parents[1] / "kept"


def today() -> dict[str, Column | Field]:
    return named(all_sheets(Units("US"), Rows()))


def listed(written: int) -> dict[str, str]:
    """The words of every cell of a format by its name."""
    lines = (FOLDER / f"headings-{written}.txt").read_text(encoding="utf-8").splitlines()
    return dict(line.split("\t", 1) for line in lines)


def main() -> None:
    lines = [f"{name}\t{what.words}" for name, what in today().items() if what.since <= FORMAT]
    (FOLDER / f"headings-{FORMAT}.txt").write_text("\n".join(lines) + "\n", encoding="utf-8")


if __name__ == "__main__":
    main()
