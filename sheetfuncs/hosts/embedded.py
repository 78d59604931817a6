"""The embedded engine: ironcalc computes a whole workbook without a spreadsheet program."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from pathlib import Path
from typing import Any

Cell = tuple[int, int]  # row and column, from 0


def evaluate(path: Path, wanted: Mapping[str, Iterable[Cell]]) -> dict[str, dict[Cell, Any]]:
    """The values that cells of a workbook have once everything is computed, by sheet title.

    Numbers are floats, an error is its text, and a formula that gives no text is "".
    """
    import ironcalc  # half a dozen megabytes: loaded when a workbook is computed, not before

    model = ironcalc.load_from_xlsx(str(path), "en", "UTC", "en")
    model.evaluate()
    numbers = {sheet["name"]: number for number, sheet in enumerate(model.get_worksheets_properties())}
    return {
        title: {cell: _plain(model.get_cell_value(numbers[title], cell[0] + 1, cell[1] + 1)) for cell in cells}
        for title, cells in wanted.items()
    }


def _plain(value: Any) -> Any:
    return "" if value is None else value
