"""The embedded engine: ironcalc computes a whole workbook without a spreadsheet program."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from pathlib import Path
from typing import Any

Cell = tuple[int, int]  # row and column, from 0


class Model:
    """A workbook in the engine: computed as often as asked, with other numbers in its cells."""

    def __init__(self, path: Path) -> None:
        import ironcalc  # half a dozen megabytes: loaded when a workbook is computed, not before

        self.model = ironcalc.load_from_xlsx(str(path), "en", "UTC", "en")
        self.numbers = {sheet["name"]: number for number, sheet in enumerate(self.model.get_worksheets_properties())}

    def put(self, title: str, cell: Cell, number: float) -> None:
        """Another number in a cell."""
        self.model.update_cell_with_number(self.numbers[title], cell[0] + 1, cell[1] + 1, number)

    def values(self, wanted: Mapping[str, Iterable[Cell]]) -> dict[str, dict[Cell, Any]]:
        """The values that cells have once everything is computed, by sheet title.

        Numbers are floats, an error is its text, and a formula that gives no text is "".
        """
        self.model.evaluate()
        value = self.model.get_cell_value
        return {
            title: {cell: _plain(value(self.numbers[title], cell[0] + 1, cell[1] + 1)) for cell in cells}
            for title, cells in wanted.items()
        }


def _plain(value: Any) -> Any:
    return "" if value is None else value
