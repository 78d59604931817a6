"""Which rows of a page are the lines of a table, and which number each has."""

from __future__ import annotations

import re
from collections.abc import Mapping

from sheetfuncs.files import Refused
from sheetfuncs.workbook.model.parts import Column, Table
from sheetfuncs.workbook.model.rows import MOST_LOTS, MOST_ROWS
from sheetfuncs.workbook.read.contents import At
from sheetfuncs.workbook.read.page import Page, same

# The number that a line was given when the workbook was written: 3, or the 3 of "B3" in its formula.
NUMBER = re.compile(r'(\d+)|[A-Z](\d+)|.*"[A-Z](\d+)".*', re.DOTALL)


class Lines:
    """The lines of one table below its headings; `end` is where what follows begins, `due` its last row by its mark.

    `doubts` are sentences about rows, each with its place.
    """

    def __init__(
        self, page: Page, table: Table, columns: Mapping[str, int], headings: int, end: int, due: int | None
    ) -> None:
        self.page, self.table, self.columns = page, table, columns
        self.first, self.end, self.due = headings + 1, end, due
        self.doubts: list[tuple[At, str]] = []
        self.there = [column for column in table.columns if column.key in columns]

    def rows(self, where: str) -> list[int | None]:
        """The row of each line, in their order; None where a line is not there."""
        if not any(column.typed for column in self.there) and (
            fixed := next((column for column in self.there if column.fixed), None)
        ):
            stand = {same(self._value(row, fixed)): row for row in range(self.end - 1, self.first - 1, -1)}
            return [stand.get(same(value)) for value in fixed.fixed]
        last = self._last()
        most = MOST_ROWS if any(column.typed for column in self.there) else MOST_LOTS
        if last - self.first >= most:
            raise Refused(f"{where}: filled down to row {last + 1:,}; a table can have {most:,} rows")
        filled = self.page.filled_rows(self.columns.values())
        kept = any(column.formula for column in self.there)  # else an empty row is a row like any other
        rows = [at for at in range(self.first, last + 1) if at in filled or not kept]
        numbered = next((column for column in self.there if column.numbers), None)
        return self._by_number(rows, numbered) if numbered else list(rows)

    def _value(self, row: int, column: Column) -> object:
        return self.page.value((row, self.columns[column.key]))

    def _last(self) -> int:
        """The last row with formulas, or the one that the mark knows; below, the last filled in like a row."""
        computed = [self.columns[column.key] for column in self.there if column.formula]
        typed = [self.columns[column.key] for column in self.there if column.typed]
        last = self.first - 1
        if self.due is not None:
            last = min(max(last, self.due), self.end - 1)
        elif not computed:
            last = min(last + self.table.rows, self.end - 1)
        for at in sorted(row for row in self.page.filled_rows(self.columns.values()) if self.first <= row < self.end):
            filled = [self.page.cells[at, column] for column in typed if (at, column) in self.page.cells]
            like_a_row = (
                len(filled) > 1 and not any(cell.formula for cell in filled) and (at, typed[0]) in self.page.cells
            )
            if like_a_row or any(self.page.has_formula((at, column)) for column in computed):
                last = max(last, at)
        return last

    def _by_number(self, rows: list[int], numbered: Column) -> list[int | None]:
        """Each row where its number says, as other rows call it by that number, whatever was sorted or deleted.

        A row that was put in has no number: it gets one of its own, behind the last.
        """
        places: dict[int, int] = {}
        others: list[int] = []
        for at in rows:
            number = self._number(at, numbered)
            if number is None or number in places:
                others.append(at)
                if number is not None and self._is_filled(at):
                    sentence = (
                        f"Rows {places[number] + 1} and {at + 1} have the same number, {number}: this one gets another."
                    )
                    self.doubts.append(((at, self.columns[numbered.key]), sentence))
            else:
                places[number] = at
        put_in = [at for at in others if self._is_filled(at)]
        places |= dict(enumerate(put_in, max(places, default=0) + 1))
        return [places.get(number) for number in range(1, max(places, default=0) + 1)]

    def _number(self, at: int, numbered: Column) -> int | None:
        cell = self.page.cells.get((at, self.columns[numbered.key]))
        if cell is None:
            return None
        text = cell.formula or (f"{cell.value:g}" if isinstance(cell.value, (int, float)) else str(cell.value))
        found = NUMBER.fullmatch(text)
        number = int(next(filter(None, found.groups()))) if found else 0
        return number if 1 <= number <= MOST_ROWS else None

    def _is_filled(self, at: int) -> bool:
        """Whether something is typed in the row."""
        cells = [self.page.cells.get((at, self.columns[column.key])) for column in self.there if column.typed]
        return any(cell is not None and (cell.formula or cell.value not in (None, "")) for cell in cells)
