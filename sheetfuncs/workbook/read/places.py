"""Where the blocks of our sheets stand in a workbook that was changed by hand.

A new workbook carries a mark for each block: a defined name, which every spreadsheet moves along with its
cells.  Where a program has dropped the marks or left them behind, sheets are found by their titles, tables by
several headings together and labelled cells by their labels.  Nothing that is typed into a cell decides.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from sheetfuncs.workbook.model.layout import Layout, height
from sheetfuncs.workbook.model.parts import Chart, Column, Fields, Sheet, Table, Text
from sheetfuncs.workbook.model.systems import Units
from sheetfuncs.workbook.read import lines
from sheetfuncs.workbook.read.contents import At, Cell, Contents
from sheetfuncs.workbook.read.headings import NO_HEADINGS, Headings, Labels, headings_on, labels_on
from sheetfuncs.workbook.read.page import Mark, Page, marks, referred, same, words_of

FURTHER = 6  # how many columns may have come between a label and its cell
ENOUGH = 3  # a third of the headings tell a table


class Place(NamedTuple):
    """A cell of the file."""

    sheet: str
    at: At


class Gone(NamedTuple):
    """Something of ours that is not where it belongs, in words; doubtful things are only to be looked at."""

    sheet: str
    at: At | None
    sentence: str
    doubtful: bool = False


class Window(NamedTuple):
    """The rows in which a block may stand."""

    top: int
    end: int

    def has(self, place: At) -> bool:
        return self.top <= place[0] < self.end


class Area(NamedTuple):
    """The first row of a block, its first and its last column."""

    top: int
    left: int
    right: int


class Found:
    """The places of one workbook, whose sheets are of a format: what is younger is not missed."""

    def __init__(self, contents: Contents, sheets: Sequence[Sheet], layout: Layout, units: Units, written: int) -> None:
        self.titles: dict[str, str] = {}  # of our sheets -> of the workbook's
        self.cells: dict[str, list[Place | None]] = {}  # "table.column" or "fields.label" -> its cells, row by row
        self.gone: list[Gone] = []
        self.contents, self.layout, self.units, self.written = contents, layout, units, written
        self.marks = marks(contents)
        for sheet in sheets:
            title = self._title(sheet)
            if title is None:
                self._miss(sheet.since, sheet.title, "This sheet is not there: was it renamed or deleted?")
                continue
            self.titles[sheet.title] = title
            _Sheet(self, sheet, title).find()

    def _miss(self, since: int, sheet: str, sentence: str, at: At | None = None, doubtful: bool = False) -> None:
        """Something is not there; nothing is said of what the workbook's format did not have."""
        if since <= self.written:
            self.gone.append(Gone(sheet, at, sentence, doubtful))

    def _title(self, sheet: Sheet) -> str | None:
        """The sheet that holds our marks; else, of those with its title or whose first cell says it, the one that
        other sheets reckon with: a copy kept as a backup is named by none."""
        free = [title for title in self.contents.sheets if title not in self.titles.values()]
        words = {same(one) for one in (sheet.title, *sheet.was)}
        keys = [getattr(block, "key", "") for block in sheet.blocks]
        marked = [mark.sheet for key in keys if (mark := self.marks.get(key))]
        named = [title for title in free if same(title) in words]
        headed = [title for title in free if same(self.contents.sheets[title].get((0, 0), Cell("")).value) in words]
        alike = dict.fromkeys((*(title for title in marked if title in free), *named, *headed))
        if not alike:
            return None
        times = referred(self.contents) if len(alike) > 1 else {}
        found = max(alike, key=lambda title: (marked.count(title), times.get(title, 0), title in named))
        for other in alike:
            if other != found:
                sentence = (
                    f"This sheet looks like {sheet.title!r}, which is read from {found!r}: delete one of the two."
                )
                self.gone.append(Gone(other, None, sentence, doubtful=True))
        return found


class _Sheet:
    """The blocks of one sheet, found on its page."""

    def __init__(self, found: Found, sheet: Sheet, title: str) -> None:
        self.found, self.sheet, self.title = found, sheet, title
        self.page = Page(found.contents.sheets[title])
        self.starts = {number: found.layout.starts[sheet.title, number] for number in range(len(sheet.blocks))}
        self.tops: dict[int, int] = {}  # number of a block -> the row of its title
        self.areas: dict[int, Area] = {}
        self.shifts: dict[tuple[int, int], int] = {}  # labels' column and span -> columns put in behind the labels

    def find(self) -> None:
        blocks = list(enumerate(self.sheet.blocks))
        for number, block in blocks:
            if not isinstance(block, Chart) and (top := self._top(number, block)) is not None:
                self.tops[number] = top
        tables: list[tuple[Table, Headings]] = []
        for number, block in blocks:
            if isinstance(block, Table) and (headings := self._headings(number, block)).columns:
                tables.append((block, headings))
                columns = [column for places in headings.columns.values() for column in places]
                self.areas[number] = Area(self.tops.get(number, headings.row), min(columns), max(columns))
            elif isinstance(block, Text) and number in self.tops:
                self.areas[number] = Area(self.tops[number], block.column, block.column + block.across - 1)
        of_tables = [
            self.areas[number] for number, block in blocks if isinstance(block, Table) and number in self.areas
        ]
        fields = [(number, block) for number, block in blocks if isinstance(block, Fields)]
        for number, block in sorted(fields, key=lambda one: not any(field.formula for field in one[1].fields)):
            self._fields(number, block, of_tables)
        for block, headings in tables:
            self._rows(block, headings)

    def _mark(self, block: Fields | Table) -> Mark | None:
        mark = self.found.marks.get(block.key)
        return mark if mark and mark.sheet == self.title else None

    def _miss(self, since: int, sentence: str, at: At | None = None, doubtful: bool = False) -> None:
        self.found._miss(since, self.sheet.title, sentence, at, doubtful)

    def _top(self, number: int, block: Fields | Table | Text) -> int | None:
        """The row of a block's title: of several cells that say it, the one whose headings or labels follow it."""
        due = self.starts[number]

        def follow(place: At) -> tuple[int, bool, int]:
            row, column = place
            if isinstance(block, Table):
                beside = {same(self.page.value((row + 1, one))) for one in self.page.columns(row + 1)}
                known = sum(bool(beside & words_of(one, self.found.units)) for one in block.columns)
            else:
                texts = block.lines if isinstance(block, Text) else [field.label for field in block.fields]
                below = {same(self.page.value((row + step, column))) for step in range(1, 2 * len(texts) + 4)}
                known = sum(same(text) in below for text in texts)
            return known, column == block.column, -abs(row - due)

        titles = (block.title, *getattr(block, "was", ()))
        places = {place for words in titles for place in self.page.where(words)}
        if not isinstance(block, Text) and (mark := self._mark(block)):
            above = [place for place in places if place[0] == mark.top - 1 and place[1] == mark.left]
            if above:
                return above[0][0]
        return max(places, key=follow)[0] if places else None

    def _window(self, number: int) -> Window:
        """The rows where a block must stand, between the titles above and below it."""
        start = self.starts[number]
        end = start + height(self.sheet.blocks[number])
        above = [other for other in self.tops if self.starts[other] <= start]
        below = [self.tops[other] for other in self.tops if self.starts[other] >= end]
        top = self.tops[max(above, key=lambda other: self.starts[other])] if above else 0
        return Window(top, min((row for row in below if row > top), default=self.page.rows))

    def _fields(self, number: int, block: Fields, tables: Sequence[Area]) -> None:
        """Labelled cells: their column of labels, then how far to the right the cells stand."""
        mark, window, title = self._mark(block), self._window(number), self.tops.get(number, -1)
        labels = labels_on(self.page, block, lambda at: window.has(at) and at[0] > title)
        if mark and (marked := labels_on(self.page, block, mark.covers)) and len(marked.rows) >= len(labels.rows):
            labels = marked
        else:
            mark = None
        if not labels.rows:
            since = max(block.since, min(field.since for field in block.fields))
            self._miss(since, f"The cells of {block.title or block.fields[0].label} are not there.")
            return
        down, step = (1, 0) if block.stacked else (0, self._step(block, labels, mark, tables))
        for field in block.fields:
            if field.key not in labels.rows:
                self._miss(field.since, f"The label {field.label!r} is not there: its cell cannot be found.")
                continue
            at = labels.rows[field.key] + down, labels.column + step
            self.found.cells[f"{block.key}.{field.key}"] = [Place(self.title, at)]
            if field.beside:
                self.found.cells[f"{block.key}.{field.beside.key}"] = [Place(self.title, (at[0], at[1] + 1))]
        top = self.tops.get(number, min(labels.rows.values()))
        self.areas[number] = Area(top, labels.column, labels.column + step + 1)

    def _step(self, block: Fields, labels: Labels, mark: Mark | None, tables: Sequence[Area]) -> int:
        """How many columns right of their labels the cells stand: as the mark or a new workbook has it, unless none
        of the block's formulas is there and several are elsewhere, outside of any table."""
        like = labels.column, block.span
        due = mark.right - labels.column if mark else block.span + self.shifts.get(like, 0)
        computed = [labels.rows[field.key] for field in block.fields if field.formula and field.key in labels.rows]
        beside = [one for one in tables if not one.left <= labels.column <= one.right]  # others are above or below

        def formulas(step: int) -> int:
            column = labels.column + step
            return sum(
                self.page.has_formula((row, column))
                for row in computed
                if not any(one.top <= row and one.left <= column <= one.right for one in beside)
            )

        few = max(1, sum(field.beside is not None for field in block.fields))  # formulas beside others are no sign
        steps = range(1, block.span + FURTHER)
        best = max(steps, key=lambda step: (formulas(step), -abs(step - due)))
        step = best if due < 1 or (not formulas(due) and formulas(best) > few) else due
        if formulas(step):
            self.shifts[like] = step - block.span
        return step

    def _headings(self, number: int, block: Table) -> Headings:
        """The row of a table's headings, and the columns of each."""
        mark, window = self._mark(block), self._window(number)
        found = headings_on(self.page, block, self.found.units, window.has)
        if mark:
            marked = headings_on(self.page, block, self.found.units, mark.heads)
            found = marked if len(marked.columns) >= len(found.columns) else found
        expected = [column for column in block.columns if column.since <= self.found.written]
        if not found.columns or len(found.columns) * ENOUGH < len(expected):
            self._miss(block.since, f"The headings of {block.title or self.sheet.title} are not there.")
            return NO_HEADINGS
        for column in block.columns:
            places = found.columns.get(column.key, ())
            if len(places) > 1:
                sentence = (
                    f"Two columns have the heading {column.title(self.found.units)!r}: the first of them is read."
                )
                self._miss(1, sentence, (found.row, places[1]), doubtful=True)
            elif not places:
                self._other_heading(column, found)
        return found

    def _other_heading(self, column: Column, found: Headings) -> None:
        """A heading that was changed: its words may still be there with another unit."""
        words = {same(one) for one in (column.heading, *column.was)}
        taken = {place for places in found.columns.values() for place in places}
        near = [
            place
            for place in self.page.columns(found.row)
            if place not in taken and same(self.page.value((found.row, place))).rpartition(", ")[0] in words
        ]
        due = column.title(self.found.units)
        if len(near) == 1 and column.kind.quantity:
            found.columns[column.key] = near
            heading = self.page.value((found.row, near[0]))
            sentence = f"This heading was {due!r}, now {heading!r}: are its numbers in the workbook's units?"
            self._miss(1, sentence, (found.row, near[0]))
        else:
            self._miss(column.since, f"The heading {due!r} is not there: its column is not read.")

    def _rows(self, block: Table, headings: Headings) -> None:
        columns = {key: places[0] for key, places in headings.columns.items()}
        left, right = min(columns.values()), max(columns.values())
        below = [one.top for one in self.areas.values() if one.left <= right and one.right >= left]
        mark = self._mark(block)
        table = lines.Lines(
            self.page,
            block,
            columns,
            headings.row,
            min((top for top in below if top > headings.row), default=self.page.rows),
            mark.bottom if mark and mark.top == headings.row else None,
        )
        rows = table.rows(f"{self.found.contents.file}: {self.title}")
        self.found.gone += [Gone(self.sheet.title, at, sentence, doubtful=True) for at, sentence in table.doubts]
        for key, column in columns.items():
            self.found.cells[f"{block.key}.{key}"] = [
                None if at is None else Place(self.title, (at, column)) for at in rows
            ]
