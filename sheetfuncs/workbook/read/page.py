"""A sheet of a file with an index of its words, and the marks that a new workbook carries for its blocks."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from typing import Any, NamedTuple

from sheetfuncs.workbook.model.editions import EDITIONS
from sheetfuncs.workbook.model.layout import MARK, WAYS
from sheetfuncs.workbook.model.parts import Column, Field, Fields, Sheet, Table, Text
from sheetfuncs.workbook.model.systems import Units
from sheetfuncs.workbook.read.contents import At, Cells, Contents

RANGE = re.compile(
    r"(?:'((?:[^']|'')+)'|([^'!.]+))[!.]\$?([A-Z]{1,3})\$?(\d+)(?::(?:[^:]*[!.])?\$?([A-Z]{1,3})\$?(\d+))?"
)


class Mark(NamedTuple):
    """The range of a table, headings first, or of labels and their cells."""

    sheet: str
    top: int
    left: int
    bottom: int
    right: int

    def covers(self, place: At) -> bool:
        return self.top <= place[0] <= self.bottom and self.left <= place[1] <= self.right

    def heads(self, place: At) -> bool:
        """Whether a cell stands in its first row, that of a table's headings."""
        return place[0] == self.top and self.covers(place)


class Page:
    """The cells of a sheet, with an index of its words."""

    def __init__(self, cells: Cells) -> None:
        self.cells = cells
        self.rows = max((row for row, _ in cells), default=0) + 1
        self.words: dict[str, list[At]] = {}
        self._columns: dict[int, list[int]] = {}
        self._rows: dict[int, set[int]] = {}
        for spot, cell in cells.items():
            self._columns.setdefault(spot[0], []).append(spot[1])
            self._rows.setdefault(spot[1], set()).add(spot[0])
            if isinstance(cell.value, str) and not cell.formula:
                self.words.setdefault(same(cell.value), []).append(spot)

    def where(self, words: str) -> list[At]:
        """The cells that say this, however spaced."""
        return self.words.get(same(words), []) if words.strip() else []

    def columns(self, row: int) -> list[int]:
        """The filled columns of a row."""
        return self._columns.get(row, [])

    def filled_rows(self, columns: Iterable[int]) -> set[int]:
        """The rows with anything in one of these columns."""
        return set().union(*(self._rows.get(column, ()) for column in columns))

    def value(self, spot: At) -> Any:
        return self.cells[spot].value if spot in self.cells else None

    def has_formula(self, spot: At) -> bool:
        return spot in self.cells and bool(self.cells[spot].formula)


def marks(contents: Contents) -> dict[str, Mark]:
    """The marks that are still there and still refer to cells, by the key of their block."""
    found = {}
    for name, refers in contents.names.items():
        if name.startswith(MARK) and (range_ := RANGE.fullmatch(refers.lstrip("=$"))):
            sheet = (range_[1] or range_[2] or "").replace("''", "'")
            rows = [int(row) - 1 for row in (range_[4], range_[6] or range_[4])]
            columns = [number(letters) for letters in (range_[3], range_[5] or range_[3])]
            if sheet in contents.sheets:
                found[name.removeprefix(MARK)] = Mark(sheet, min(rows), min(columns), max(rows), max(columns))
    return found


def number(letters: str) -> int:
    """A column's number: A is 0."""
    found = 0
    for letter in letters:
        found = found * 26 + ord(letter) - 64
    return found - 1


def same(value: Any) -> str:
    """Words as they compare: a number as Python writes it, spaces of any kind and capitals aside."""
    return " ".join(_text(value).split()).casefold()


def as_a_sheet_has_it(value: Any) -> str:
    """Words as our sheets compare them: TRIM takes ordinary spaces away, and no other."""
    return " ".join(filter(None, _text(value).split(" "))).casefold()


def _text(value: Any) -> str:
    return f"{value:g}" if isinstance(value, (int, float)) else str(value)


def referred(contents: Contents) -> dict[str, int]:
    """How many formulas of other sheets name each sheet: a copy kept as a backup is named by none."""
    counted = dict.fromkeys(contents.sheets, 0)
    for title, cells in contents.sheets.items():
        formulas = [cell.formula for cell in cells.values() if cell.formula]
        for other in contents.sheets:
            if other != title:
                counted[other] += sum(f"{other}!" in text or f"{other}'!" in text for text in formulas)
    return counted


def labels_of(field: Field) -> set[str]:
    """The labels that a cell has or had, as they compare; a cell without a label has none."""
    return {same(words) for words in (field.label, *field.was) if words.strip()}


def words_of(column: Column, units: Units) -> set[str]:
    """The headings that a column has or had, as they compare."""
    return {same(column.kind.heading(words, units)) for words in (column.heading, *column.was)}


def known_words(sheet: Sheet, units: Units) -> Iterator[str]:
    """Everything of a sheet that is there to read, as it compares."""
    yield from (same(sheet.title), same(sheet.purpose), *map(same, WAYS))
    for block in sheet.blocks:
        yield same(block.title)
        if isinstance(block, Fields):
            for field in block.fields:
                yield from (*labels_of(field), same(field.full_note(units)))
        elif isinstance(block, Table):
            yield from (words for column in block.columns for words in words_of(column, units))
        elif isinstance(block, Text):
            yield from (same(line) for line in block.lines)


# What sheets of this format had to read before: no words of the user's.
FORMER = (
    "What stays the same all season. The first list is enough to begin with.",
    "Type only in the tinted cells; the darkest is the next row of a log. The others compute; "
    "they are locked without a password.",
    "Red and bold must be mended, amber wants a look, blue is for your information. Slanted numbers rest on a guess.",
)


def all_known(sheets: Iterable[Sheet], units: Units) -> set[str]:
    openings = {same(edition.opening) for edition in EDITIONS.values()}
    return openings.union(map(same, FORMER), *(known_words(sheet, units) for sheet in sheets))
