"""A workbook file from sheets: the only module that knows XlsxWriter.

Deterministic: the same sheets and inputs give the same bytes.
"""

from __future__ import annotations

import datetime
from collections.abc import Mapping, Sequence
from functools import partial
from io import BytesIO
from pathlib import Path
from typing import Any

from xlsxwriter.format import Format
from xlsxwriter.worksheet import Worksheet

from sheetfuncs.workbook.model import kinds
from sheetfuncs.workbook.model.editions import Edition
from sheetfuncs.workbook.model.kinds import Kind
from sheetfuncs.workbook.model.layout import WAYS, Layout, first_row, letters, quoted
from sheetfuncs.workbook.model.parts import (
    Field,
    Fields,
    Macros,
    Plain,
    Sheet,
    Table,
    Text,
    cells_of,
    given,
)
from sheetfuncs.workbook.model.systems import Units
from sheetfuncs.workbook.write import calls, charts, colours, limits, paper, styles
from sheetfuncs.workbook.write.book import Book, Page, storable
from sheetfuncs.workbook.write.names import definitions
from sheetfuncs.workbook.write.validation import validate

# What a user may still do on a protected sheet; there is no password.
FREE = dict.fromkeys(("format_cells", "format_columns", "format_rows", "select_locked_cells"), True)
OPENING_HEIGHT = 50  # three lines of the opening
WAY_WIDTH = 8  # of a link to a sheet, in letters
SPARE_ROWS = 4  # of a log, on paper

Values = Mapping[str, Mapping[tuple[int, int], Any]]


class Writer:
    """Writes one workbook; `values` are the computed values to store, by sheet and cell."""

    def __init__(
        self,
        path: Path | BytesIO,
        sheets: Sequence[Sheet],
        layout: Layout,
        units: Units,
        edition: Edition,
    ) -> None:
        self.book, self.path = Book(), path
        self.sheets, self.layout, self.units, self.edition = sheets, layout, units, edition
        self.formats: dict[tuple[str, Kind | None], Format] = {}
        self.stored: dict[str, tuple[str, bool]] = {}
        self.heights: dict[tuple[str, int], float] = {}
        self.values: Values = {}
        self.inputs: Mapping[str, Any] = {}

    def write(
        self,
        inputs: Mapping[str, Any],
        values: Values,
        properties: Mapping[str, str],
        macros: Macros | None = None,
        plains: Sequence[Plain] = (),
    ) -> None:
        """Write every sheet and close the file.  `inputs` go by the names of their cells."""
        self.inputs, self.values = inputs, values
        self.book.stamp(properties)
        for sheet in self.sheets:
            page = self.book.add_worksheet(sheet.title, Page)
            self._set_up(page, sheet)
            for number, block in enumerate(sheet.blocks):
                start = self.layout.starts[sheet.title, number]
                if isinstance(block, Fields):
                    self._fields(page, sheet, block, start)
                elif isinstance(block, Table):
                    self._table(page, sheet, block, start)
                elif isinstance(block, Text):
                    self._text(page, sheet, block, start)
                else:
                    charts.insert(self.book, page, block, self.layout, self.units)
        for plain in plains:
            self._plain(plain)
        for name, refers in self.layout.marks():
            self.book.define_name(name, refers)
        if self.edition.named:
            for definition in definitions():
                self.book.define(definition)
        if macros:
            self.book.bring(macros)
        self.book.finish(self.path)

    def _plain(self, plain: Plain) -> None:
        """A sheet of values alone: dates and times as such, everything else as it is."""
        page = self.book.add_worksheet(plain.title)
        page.set_column(0, max((column for _, column in plain.cells), default=0), 18)
        for (row, column), value in plain.cells.items():
            if isinstance(value, datetime.date):
                self._typed(page, row, column, value, kinds.DATE, "computed")
            elif isinstance(value, datetime.time):
                self._typed(page, row, column, value, kinds.TIME, "computed")
            else:
                self._typed(page, row, column, value, None, "label")

    def _format(self, role: str, kind: Kind | None = None) -> Format:
        """One format per look, made when first asked for."""
        if (role, kind) not in self.formats:
            look = styles.cell_format(kind, role, self.units) if kind else styles.plain_format(role)
            self.formats[role, kind] = self.book.add_format(look)
        return self.formats[role, kind]

    def _set_up(self, page: Worksheet, sheet: Sheet) -> None:
        """Title, widths, frozen headings, print settings, protection."""
        page.hide_gridlines(2)
        if sheet.tab:
            page.set_tab_color(styles.TABS[sheet.tab])
        page.write_string(0, 0, sheet.title, self._format("title"))
        page.set_row(0, 26)
        if sheet is self.sheets[0] and self.edition.opening:
            page.write_string(1, 0, self.edition.opening, self._format("opening"))
            page.set_row(1, OPENING_HEIGHT)
        else:
            page.write_string(1, 0, sheet.purpose, self._format("purpose"))
        widths, place = self.layout.widths(sheet), 0
        for title in (one.title for one in self.sheets if one.title in WAYS and one is not sheet):
            self._link(page, 2, place, title, title, "way")
            room = 0.0
            while room < WAY_WIDTH:  # a narrow column does not hold it
                room, place = room + widths.get(place, (paper.PLAIN_WIDTH, False))[0], place + 1
        for column, (width, hidden) in widths.items():
            page.set_column(column, column, width, None, {"hidden": True} if hidden else {})
        page.freeze_panes(*sheet.freeze)
        paper.set_up(self.book, page, sheet, self.layout, self.units, partial(self._filled, sheet))
        page.protect("", FREE)

    def _high(self, page: Worksheet, row: int, points: float) -> None:
        """A row at least so high: blocks that stand beside each other share it."""
        self.heights[page.name, row] = max(points, self.heights.get((page.name, row), 0))
        page.set_row(row, self.heights[page.name, row])

    def _link(self, page: Worksheet, row: int, column: int, words: str, to: str, role: str) -> None:
        """Words that lead to a sheet, or to a named cell."""
        if any(sheet.title == to for sheet in self.sheets):
            place = f"{quoted(to)}!A1"
        else:
            spot = self.layout.spots[to]
            place = f"{quoted(spot.sheet)}!{letters(spot.column)}{spot.row + 1}"
        page.write_url(row, column, f"internal:{place}", self._format(role), words)

    def _filled(self, sheet: Sheet, table: Table) -> int:
        """How many rows have something typed, and a few to write on; of a table without typing, something to show."""
        typed = [column.key for column in table.columns if column.typed]
        if typed:
            return SPARE_ROWS + max(len(self.inputs.get(f"{table.key}.{key}", ())) for key in typed)
        first = self.layout.spots[f"{table.key}.{table.columns[0].key}"]
        shown = self.values.get(sheet.title, {})
        rows = [row for row in range(table.rows) if shown.get((first.row + row, first.column)) not in (None, "")]
        return max(rows, default=-1) + 1

    def _block_title(self, page: Worksheet, block: Any, start: int, across: int) -> None:
        if block.title:
            page.write_string(start, block.column, block.title, self._format("block"))
            for column in range(block.column + 1, block.column + across):
                page.write_blank(start, column, None, self._format("block"))

    def _fields(self, page: Worksheet, sheet: Sheet, block: Fields, start: int) -> None:
        self._block_title(page, block, start, block.span + 1)
        top = first_row(block, start)
        for number, field in enumerate(block.fields):
            spot = self.layout.spots[f"{block.key}.{field.key}"]
            row = top + 2 * number if block.stacked else spot.row
            role = "question" if block.stacked else "label"
            if field.to:
                self._link(page, row, block.column, field.label, field.to, f"{role} way")
            else:
                page.write_string(row, block.column, field.label, self._format(role))
            for beside, cell in enumerate(cells_of(field)):
                self._cell(page, sheet, cell, f"{block.key}.{cell.key}", spot.row, spot.column + beside, block.stacked)
                colours.of_cell(self.book, page, sheet, cell, self.layout, (spot.row, spot.column + beside))
            if (note := field.full_note(self.units)) and field.across == 1:
                page.write_string(spot.row, spot.column + len(cells_of(field)), note, self._format("note"))

    def _cell(
        self, page: Worksheet, sheet: Sheet, field: Field, name: str, row: int, column: int, stacked: bool
    ) -> None:
        if field.formula and name not in self.inputs:
            role = "strong" if field.strong else "computed"
            if field.across > 1:
                role = "huge"
                self._high(page, row, styles.high(1, styles.HUGE))
                page.merge_range(row, column, row, column + field.across - 1, "", self._format(role, field.kind))
            if field.kind is kinds.WORDS:  # beside a number it has its column's width, else it may run on
                role = "sentence" if field.lines > 1 or stacked else "answer"
                self._high(page, row, styles.high(field.lines, styles.SENTENCE))
            self._formula(page, sheet, row, column, field.formula, self._look(role, field.kind))
            return
        self._typed(page, row, column, given(field, name, self.inputs), field.kind)
        validate(page, self.layout, self.units, sheet, field, row, column, row)

    def _table(self, page: Worksheet, sheet: Sheet, table: Table, start: int) -> None:
        self._block_title(page, table, start, len([column for column in table.columns if not column.hidden]))
        top = first_row(table, start)
        if not all(column.hidden for column in table.columns):
            self._high(page, top - 1, styles.heading_height(table, self.units))
        if table.lines > 1:
            for row in range(top, top + table.rows):
                self._high(page, row, styles.high(table.lines, styles.SAID))
        for column in table.columns:
            place = self.layout.spots[f"{table.key}.{column.key}"].column
            page.write_string(top - 1, place, column.title(self.units), self._format("heading"))
            if column.formula:
                look = self._look("look" if column.number else "computed", column.kind)
                for offset in range(table.rows):
                    self._formula(page, sheet, top + offset, place, column.at(offset), look, table, offset)
            else:
                values = given(column, f"{table.key}.{column.key}", self.inputs)
                role = "computed" if column.fixed else "noted" if table.lines > 1 else "typed"
                for offset in range(table.rows):
                    value = values[offset] if offset < len(values) else None
                    self._typed(page, top + offset, place, value, column.kind, role)
            if column.typed:
                validate(page, self.layout, self.units, sheet, column, top, place, top + table.rows - 1)
        colours.of_table(self.book, page, table, self.layout, top)

    def _look(self, role: str, kind: Kind) -> Format:
        """The look of a computed cell: what is said of a row has one, of whatever kind."""
        return self._format("look") if role == "look" else self._format(role, kind)

    def _formula(
        self,
        page: Worksheet,
        sheet: Sheet,
        row: int,
        column: int,
        formula: str,
        look: Format,
        table: Table | None = None,
        offset: int = 0,
    ) -> None:
        """One computed cell, with its value where it is known."""
        stored, dynamic = self._stored(formula)
        text = "=" + self.layout.resolve(stored, sheet.title, table, offset)
        limits.at_most(limits.FORMULA, len(text), f"{sheet.title}: the formula of row {row + 1}, column {column + 1}")
        value = storable(self.values.get(sheet.title, {}).get((row, column), 0))
        if dynamic:
            page.write_dynamic_array_formula(row, column, row, column, text, look, value)
        else:
            page.write_formula(row, column, text, look, value)

    def _stored(self, formula: str) -> tuple[str, bool]:
        """A formula as it stands in the file, and whether as that of a dynamic array; asked once for a column."""
        if formula not in self.stored:
            stored = calls.as_stored(formula, self.edition, self.units.system)
            limits.shape(stored)
            self.stored[formula] = stored, calls.is_dynamic(formula, self.edition)
        return self.stored[formula]

    def _typed(
        self, page: Worksheet, row: int, column: int, value: Any, kind: Kind | None, role: str = "typed"
    ) -> None:
        """One cell for typing, empty or filled; text stays text, whatever it begins with."""
        look = self._format(role, kind)
        if value is None or value == "":
            page.write_blank(row, column, None, look)
        elif isinstance(value, (datetime.date, datetime.time)):
            page.write_datetime(row, column, value, look)
        elif isinstance(value, str):
            limits.at_most(limits.CELL, len(value), f"{page.name}: the text of row {row + 1}, column {column + 1}")
            page.write_string(row, column, value, look)
        else:
            page.write_number(row, column, value, look)

    def _text(self, page: Worksheet, sheet: Sheet, block: Text, start: int) -> None:
        self._block_title(page, block, start, block.across)
        looks = block.looks or ["caution" if block.caution else "line"] * len(block.lines)
        top = first_row(block, start)
        widths = self.layout.widths(sheet)
        columns = range(block.column, block.column + block.across)
        letters = int(sum(widths.get(column, (paper.PLAIN_WIDTH, False))[0] for column in columns) * 1.2)
        for number, (line, role) in enumerate(zip(block.lines, looks, strict=True)):
            look, end = self._format(role), block.column + block.across - 1
            page.merge_range(top + number, block.column, top + number, end, line, look)
            if block.leads and any(sheet.title == line.partition(":")[0] for sheet in self.sheets):
                self._link(page, top + number, block.column, line, line.partition(":")[0], "line way")
            self._high(page, top + number, 13.5 * -(-len(line) // letters) + 3)
