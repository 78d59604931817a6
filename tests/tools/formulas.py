"""Every distinct formula of the workbook as text, so that a change of a formula is a readable change.

    python -m tests.tools.formulas

writes tests/golden/formulas-us.txt and formulas-metric.txt anew; a test compares.
"""

from __future__ import annotations

from pathlib import Path

from sheetfuncs.workbook.model.parts import named
from sheetfuncs.workbook.model.rows import Rows
from sheetfuncs.workbook.model.systems import Units
from sheetfuncs.workbook.sheets import all_sheets

FOLDER = Path(__file__).parents[1] / "golden"


def text(system: str) -> str:
    """A line a formula: its cell, and what stands there with names in place of addresses."""
    lines = []
    for name, what in named(all_sheets(Units(system), Rows())).items():
        formulas = (what.formula,) if isinstance(what.formula, str) else what.formula
        for formula in dict.fromkeys(filter(None, formulas)):
            lines.append(f"{name} = {formula}")
    return "\n".join(lines) + "\n"


def path(system: str) -> Path:
    return FOLDER / f"formulas-{system.lower()}.txt"


def main() -> None:
    for system in ("US", "metric"):
        path(system).write_text(text(system), encoding="utf-8")
        print(path(system).name)


if __name__ == "__main__":
    main()
