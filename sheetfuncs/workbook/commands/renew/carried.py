"""What of a workbook has no place in a new one: own sheets and cells, notes; copied as plain values and listed."""

from __future__ import annotations

import datetime
import math
import re
from collections.abc import Iterator
from typing import Any, NamedTuple

from sheetfuncs.workbook.model.days import FIRST_DAY, serial
from sheetfuncs.workbook.model.kinds import LONGEST
from sheetfuncs.workbook.model.parts import Plain
from sheetfuncs.workbook.read.contents import At
from sheetfuncs.workbook.read.filled import Filled, address, plain

HEADINGS = ("From the sheet", "Cell", "In the row of", "Under the heading", "What stood there", "Because")
LONGEST_TITLE = 31
OLDER = "an older make of the workbook asked for it"
OWN, NOTE, OVER = "a cell of your own", "a note on the cell", "typed over a formula, which is back"
NO_VALUE = "a formula without its value, which no program has computed"


class Line(NamedTuple):
    """One cell that is carried in a list."""

    sheet: str
    at: At
    row: Any
    heading: Any
    value: Any
    because: str


class Carried:
    """What is carried from a workbook; the list stands on a sheet of this title, and some sheets are made anew.

    What is carried `besides`, from another copy of the workbook, is not carried twice.
    """

    def __init__(self, filled: Filled, title: str, anew: tuple[str, ...] = (), besides: Carried | None = None) -> None:
        self.filled = filled
        self.frames: dict[str, tuple[dict[int, int], dict[int, int]]] = {}
        self.lines = [*self._older(), *self._own(), *self._typed_over(), *self._without_value(), *self._notes()]
        self.own = [sheet for sheet in filled.own_sheets() if sheet not in anew]
        titles = {sheet.title.casefold() for sheet in filled.season.sheets} | {one.casefold() for one in anew}
        if besides:
            titles |= {sheet.title.casefold() for sheet in besides.sheets}
            there = {(line.sheet, line.row, line.heading, line.value) for line in besides.lines}
            self.lines = [line for line in self.lines if (line.sheet, line.row, line.heading, line.value) not in there]
            theirs = besides.filled.contents.sheets
            self.own = [own for own in self.own if own not in besides.own or filled.contents.sheets[own] != theirs[own]]
        self.sheets: list[Plain] = [
            Plain(free(own, titles), {at: plain_value(plain(cell)) for at, cell in filled.contents.sheets[own].items()})
            for own in self.own
        ]
        if self.lines:
            rows = [HEADINGS, *((one.sheet, address(one.at), *one[2:]) for one in self.lines)]
            cells = {
                (row, column): plain_value(value) for row, line in enumerate(rows) for column, value in enumerate(line)
            }
            self.sheets.append(Plain(free(title, titles), cells))

    def told(self) -> Iterator[str]:
        """What was carried and what could not be, a line each."""
        for number, own in enumerate(self.own):
            yield f"copied as plain values: your sheet {own!r}, as {self.sheets[number].title!r}"
        if self.lines:
            words = "1 cell" if len(self.lines) == 1 else f"{len(self.lines)} cells"
            yield f"listed on the sheet {self.sheets[-1].title!r}: {words} that belong to no column of ours"
        for what in self.filled.besides():
            yield f"not copied: {what}"

    def _older(self) -> Iterator[Line]:
        for left in self.filled.left:
            if left.place:
                yield self._line(left.place.sheet, left.place.at, left.value, OLDER)

    def _own(self) -> Iterator[Line]:
        for own in self.filled.own_cells():
            yield self._line(own.sheet, own.at, own.value, OWN)

    def _typed_over(self) -> Iterator[Line]:
        for name, what in self.filled.cells.items():
            for offset, place in enumerate(self.filled.spots(name) if what.formula else ()):
                cell = self.filled.cell(name, offset)
                if place and not cell.formula and cell.value is not None and name not in self.filled.season.inputs:
                    yield self._line(*place, cell.value, OVER)._replace(heading=what.words)

    def _without_value(self) -> Iterator[Line]:
        for name, what in self.filled.cells.items():
            for offset, place in enumerate(self.filled.spots(name) if what.typed else ()):
                cell = self.filled.cell(name, offset)
                if place and cell.formula and cell.value is None:
                    yield self._line(*place, plain(cell), NO_VALUE)._replace(heading=what.words)

    def _notes(self) -> Iterator[Line]:
        for (sheet, at), text in self.filled.contents.notes.items():
            yield self._line(sheet, at, text, NOTE)

    def _line(self, sheet: str, at: At, value: Any, because: str) -> Line:
        """A cell with what tells a reader where it belongs: the start of its row, the words above it."""
        starts, words = self._frame(sheet)
        start = starts.get(at[0], at[1])
        heading = words.get(at[1], at[0])
        cells = self.filled.contents.sheets.get(sheet, {})
        return Line(
            sheet,
            at,
            plain(cells[at[0], start]) if start < at[1] else None,
            cells[heading, at[1]].value if heading < at[0] else None,
            value,
            because,
        )

    def _frame(self, sheet: str) -> tuple[dict[int, int], dict[int, int]]:
        """The first filled column of each row of a sheet, and the first row of each column that has words."""
        if sheet not in self.frames:
            starts: dict[int, int] = {}
            words: dict[int, int] = {}
            for (row, column), cell in sorted(self.filled.contents.sheets.get(sheet, {}).items()):
                starts.setdefault(row, column)
                if isinstance(cell.value, str):
                    words.setdefault(column, row)
            self.frames[sheet] = starts, words
        return self.frames[sheet]


def plain_value(value: Any) -> Any:
    """A value as any workbook can hold it."""
    if isinstance(value, datetime.datetime) and value.time() == datetime.time():
        value = value.date()
    if isinstance(value, datetime.datetime) or (isinstance(value, datetime.date) and serial(value) < FIRST_DAY):
        return value.isoformat(" ") if isinstance(value, datetime.datetime) else value.isoformat()
    if isinstance(value, datetime.timedelta):
        return serial(value)
    if isinstance(value, bool):
        return str(value).upper()
    if isinstance(value, (int, float)) and not (abs(value) < 1e300 and math.isfinite(value)):
        return str(value)
    return value[:LONGEST] if isinstance(value, str) else value


def free(title: str, taken: set[str]) -> str:
    """A title that a sheet may have and no other has."""
    wanted = re.sub(r"[\[\]:*?/\\\x00-\x1f]", " ", title).strip(" '")[:LONGEST_TITLE] or "Sheet"
    number, found = 2, wanted
    while found.casefold() in taken:
        found = f"{wanted[: LONGEST_TITLE - 4]} {number}"
        number += 1
    taken.add(found.casefold())
    return found
