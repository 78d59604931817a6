"""A workbook file from sheets: the only module that knows XlsxWriter.

Deterministic: the same sheets and inputs give the same bytes.
"""

from __future__ import annotations

import datetime
from collections.abc import Mapping, Sequence
from io import BytesIO
from pathlib import Path
from typing import Any

import xlsxwriter
from xlsxwriter.exceptions import XlsxFileError
from xlsxwriter.format import Format
from xlsxwriter.worksheet import Worksheet

from sheetfuncs.formulas.catalogue import CATALOGUE
from sheetfuncs.hosts import trace
from sheetfuncs.workbook.model import parts
from sheetfuncs.workbook.model.layout import Layout, cells_of, first_row
from sheetfuncs.workbook.model.parts import (
    Chart,
    Column,
    Field,
    Fields,
    Macros,
    Plain,
    Series,
    Sheet,
    Table,
    Text,
    Units,
)
from sheetfuncs.workbook.write import calls, styles

# What a user may still do on a protected sheet; there is no password.
FREE = dict.fromkeys(
    ("format_cells", "format_columns", "format_rows", "sort", "autofilter", "select_locked_cells"), True
)
MADE = datetime.datetime(2026, 1, 1)  # a fixed stamp, so that the same season gives the same bytes

Values = Mapping[str, Mapping[tuple[int, int], Any]]


class Page(Worksheet):
    """A worksheet that takes formulas as they are: ours name later functions by their stored names
    already, and looking for each of XlsxWriter's list in every formula took half the time."""

    def _prepare_formula(self, formula: str, expand_future_functions: bool = False) -> str:
        return formula.removeprefix("=")


class Writer:
    """Writes one workbook; `values` are the computed values to store, by sheet and cell."""

    def __init__(self, path: Path, sheets: Sequence[Sheet], layout: Layout, units: Units, edition: str) -> None:
        self.book = xlsxwriter.Workbook(str(path), {"strings_to_formulas": False, "strings_to_urls": False})
        self.sheets, self.layout, self.units, self.edition = sheets, layout, units, edition
        self.formats: dict[tuple[str, str], Format] = {}
        self.formulas: dict[str, list[tuple[int, int]]] = {sheet.title: [] for sheet in sheets}
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
        self.book.set_properties({"title": properties.get("title", ""), "created": MADE})
        for name, text in properties.items():
            self.book.set_custom_property(name, text)
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
                    self._chart(page, sheet, block)
        for plain in plains:
            self._plain(plain)
        if self.edition == "carried":
            for name in CATALOGUE:
                self.book.define_name(name, "=" + trace.lambda_body(CATALOGUE[name].card))
        if macros:
            self._macros(macros)
        try:
            self.book.close()
        except XlsxFileError as error:  # its own word for a disk that is full, or a folder that is gone
            raise error.__context__ if isinstance(error.__context__, OSError) else OSError(str(error)) from error

    def _macros(self, macros: Macros) -> None:
        """The VBA project of xlwings, and the sheet where it looks for its settings."""
        self.book.add_vba_project(BytesIO(macros.project), is_stream=True)
        page = self.book.add_worksheet("xlwings.conf")
        page.set_column(0, 1, 20)
        for row, setting in enumerate(macros.settings.items()):
            page.write_row(row, 0, setting)

    def _plain(self, plain: Plain) -> None:
        """A sheet of values alone: dates and times as such, everything else as it is."""
        page = self.book.add_worksheet(plain.title)
        page.set_column(0, max((column for _, column in plain.cells), default=0), 18)
        for (row, column), value in plain.cells.items():
            if isinstance(value, datetime.date):
                self._typed(page, row, column, value, parts.DATE, "computed")
            elif isinstance(value, datetime.time):
                self._typed(page, row, column, value, parts.TIME, "computed")
            else:
                self._typed(page, row, column, value, "", "label")

    def _format(self, role: str, kind: str = "") -> Format:
        """One format per look, made when first asked for."""
        if (role, kind) not in self.formats:
            look = styles.cell_format(kind, role, self.units) if kind else styles.plain_format(role)
            self.formats[role, kind] = self.book.add_format(look)
        return self.formats[role, kind]

    def _set_up(self, page: Worksheet, sheet: Sheet) -> None:
        """Title, widths, frozen headings, print settings, protection."""
        page.hide_gridlines(2)
        page.write_string(0, 0, sheet.title, self._format("title"))
        page.set_row(0, 26)
        page.write_string(1, 0, sheet.purpose, self._format("purpose"))
        for column, (width, hidden) in self._widths(sheet).items():
            page.set_column(column, column, width, None, {"hidden": True} if hidden else {})
        page.freeze_panes(*sheet.freeze)
        page.set_portrait() if sheet.portrait else page.set_landscape()
        page.set_paper(self.units.pick(1, 9))
        page.fit_to_pages(1, 0)
        page.set_margins(0.4, 0.4, 0.5, 0.6)
        page.set_h_pagebreaks(list(sheet.breaks))
        page.repeat_rows(0, sheet.freeze[0] - 1)
        page.set_footer("&L&8&A&R&8page &P of &N")
        page.protect("", FREE)

    def _widths(self, sheet: Sheet) -> dict[int, tuple[float, bool]]:
        """The width of each column: the widest that a table asks for, or the sheet's own list."""
        widths: dict[int, tuple[float, bool]] = {}
        for block in sheet.blocks:
            for number, column in enumerate(block.columns if isinstance(block, Table) else ()):
                width = column.width or styles.style(column.kind, self.units).width
                known, _ = widths.get(block.column + number, (0, False))
                widths[block.column + number] = (max(known, width), column.hidden)
        widths |= {number: (width, False) for number, width in enumerate(sheet.widths) if width}
        return widths

    def _block_title(self, page: Worksheet, block: Any, start: int, across: int) -> None:
        if block.title:
            page.write_string(start, block.column, block.title, self._format("block"))
            for column in range(block.column + 1, block.column + across):
                page.write_blank(start, column, None, self._format("block"))

    def _fields(self, page: Worksheet, sheet: Sheet, block: Fields, start: int) -> None:
        self._block_title(page, block, start, block.span + 1)
        for field in block.fields:
            spot = self.layout.spots[f"{block.key}.{field.key}"]
            page.write_string(spot.row, block.column, field.label, self._format("label"))
            for number, cell in enumerate(cells_of(field)):
                self._cell(page, sheet, cell, f"{block.key}.{cell.key}", spot.row, spot.column + number)
            if field.note:
                page.write_string(spot.row, spot.column + len(cells_of(field)), field.note, self._format("note"))

    def _cell(self, page: Worksheet, sheet: Sheet, field: Field, name: str, row: int, column: int) -> None:
        if field.formula and name not in self.inputs:
            role = "strong" if field.strong else "computed"
            if field.kind == parts.WORDS:  # beside a number it has its column's width, else it may run on
                role = "sentence" if field.beside else "answer"
                page.set_row(row, 32 if field.beside else 20)
            self._formula(page, sheet, row, column, field.formula, field.kind, role)
            return
        self._typed(page, row, column, self.inputs.get(name, field.start), field.kind)
        self._validate(page, sheet, field, row, column, row)

    def _table(self, page: Worksheet, sheet: Sheet, table: Table, start: int) -> None:
        self._block_title(page, table, start, len([column for column in table.columns if not column.hidden]))
        top = first_row(table, start)
        page.set_row(top - 1, 44)
        for number, column in enumerate(table.columns):
            place = table.column + number
            page.write_string(top - 1, place, column.heading, self._format("heading"))
            given = column.fixed or self.inputs.get(f"{table.key}.{column.key}", ())
            for offset in range(table.rows):
                row = top + offset
                if column.formula:
                    formula = column.formula if isinstance(column.formula, str) else column.formula[offset]
                    role = "look" if column.key == "look" else "computed"
                    self._formula(page, sheet, row, place, formula, column.kind, role, table, offset)
                else:
                    value = given[offset] if offset < len(given) else None
                    self._typed(page, row, place, value, column.kind, "computed" if column.fixed else "typed")
            if column.typed:
                self._validate(page, sheet, column, top, place, top + table.rows - 1)

    def _formula(
        self,
        page: Worksheet,
        sheet: Sheet,
        row: int,
        column: int,
        formula: str,
        kind: str,
        role: str,
        table: Table | None = None,
        offset: int = 0,
    ) -> None:
        """One computed cell, with its value where it is known."""
        look = self._format("look") if role == "look" else self._format(role, kind)
        stored = calls.as_stored(formula, self.edition, self.units.system)
        text = "=" + self.layout.resolve(stored, sheet.title, table, offset)
        value = self.values.get(sheet.title, {}).get((row, column), 0)
        self.formulas[sheet.title].append((row, column))
        if self.edition == "carried" and calls.has_calls(formula):
            page.write_dynamic_array_formula(row, column, row, column, text, look, value)
        else:
            page.write_formula(row, column, text, look, value)

    def _typed(self, page: Worksheet, row: int, column: int, value: Any, kind: str, role: str = "typed") -> None:
        """One cell for typing, empty or filled; text stays text, whatever it begins with."""
        look = self._format(role, kind)
        if value is None or value == "":
            page.write_blank(row, column, None, look)
        elif isinstance(value, (datetime.date, datetime.time)):
            page.write_datetime(row, column, value, look)
        elif isinstance(value, str):
            page.write_string(row, column, value, look)
        else:
            page.write_number(row, column, value, look)

    def _validate(self, page: Worksheet, sheet: Sheet, what: Column | Field, row: int, column: int, last: int) -> None:
        """What a cell accepts, and what it says to anything else."""
        name = what.heading if isinstance(what, Column) else what.label
        rule: dict[str, Any] = {"ignore_blank": True, "error_title": "Not this"}
        hint = what.hint if isinstance(what, Column) else ""
        if hint:
            rule |= {"input_title": name[:32], "input_message": hint[:255]}
        if what.choices:
            listed = isinstance(what.choices, str)
            source = "=" + self.layout.resolve(str(what.choices), sheet.title) if listed else list(what.choices)
            rule |= {"validate": "list", "source": source}
            # a list of the yard's own may be behind: warn, and let the new word stand
            rule |= {"error_type": "warning"} if listed else {}
            rule |= {"error_message": f"{name}: choose from the list."}
        elif what.kind == parts.DATE:
            rule |= {"validate": "date", "criteria": "between", "minimum": datetime.date(2000, 1, 1)}
            rule |= {"maximum": datetime.date(2099, 12, 31), "error_message": f"{name}: type a date."}
        elif what.kind == parts.TIME:
            rule |= {"validate": "time", "criteria": "between", "minimum": datetime.time(0), "maximum": 0.999999}
            rule |= {"error_message": f"{name}: type a time of day, for instance 14:30."}
        elif what.kind in (parts.TEXT, parts.WORDS):
            if not hint:
                return
            rule |= {"validate": "any"}
        else:
            low, high = what.limits
            rule |= {"validate": "decimal", "criteria": "between", "minimum": low, "maximum": high}
            rule |= {"error_message": f"{name}: type a number from {low:g} to {high:g}, without its unit."}
        page.data_validation(row, column, last, column, rule)

    def _text(self, page: Worksheet, sheet: Sheet, block: Text, start: int) -> None:
        self._block_title(page, block, start, block.across)
        look = self._format("caution" if block.caution else "line")
        top = first_row(block, start)
        widths = self._widths(sheet)
        columns = range(block.column, block.column + block.across)
        letters = int(sum(widths.get(column, (8.43, False))[0] for column in columns) * 1.2)
        for number, line in enumerate(block.lines):
            page.merge_range(top + number, block.column, top + number, block.column + block.across - 1, line, look)
            page.set_row(top + number, 13.5 * -(-len(line) // letters) + 3)

    def _chart(self, page: Worksheet, sheet: Sheet, chart: Chart) -> None:
        """A chart of columns of tables, in ink and bark so that it prints in grey."""
        options = {"type": chart.kind} | ({"subtype": "straight_with_markers"} if chart.kind == "scatter" else {})
        picture: Any = self.book.add_chart(options)
        for number, series in enumerate(chart.series):
            picture.add_series(self._series(sheet, chart, series, number))
        picture.set_title({"name": chart.title, "name_font": {"size": 11, "name": styles.FONT}})
        x_axis: dict[str, Any] = {"name": chart.x_title}
        if chart.x_kind == parts.DATE:
            x_axis |= {"num_format": self.units.pick("mmm d", "d mmm")}
        elif chart.x_kind == parts.TIME:
            x_axis |= {"num_format": "hh:mm"}
        y_axis: dict[str, Any] = {
            "name": chart.y_title,
            "major_gridlines": {"visible": True, "line": {"color": "#DDDDDD"}},
        }
        if chart.kind == "column":
            y_axis["min"] = 0
        if chart.kind == "bar":  # lying down: its categories stand on the y axis, first one on top
            x_axis, y_axis = y_axis | {"min": 0}, x_axis | {"reverse": True}
        picture.set_x_axis(x_axis)
        picture.set_y_axis(y_axis)
        picture.set_legend({"position": "bottom"} if len(chart.series) > 1 else {"none": True})
        picture.set_size({"width": chart.width, "height": chart.height})
        picture.show_na_as_empty_cell()
        page.insert_chart(chart.row, chart.column, picture, {"description": chart.title})

    def _series(self, sheet: Sheet, chart: Chart, series: Series, number: int) -> dict[str, Any]:
        spots = [self.layout.spots[name] for name in (series.x, series.y)]
        x, y = ("=" + spot._replace(height=max(spot.height, series.rows)).address("") for spot in spots)
        colour = (styles.BAR, "#C8871E", "#6E8B8B")[number % 3]
        line = {"color": colour, "width": 1.75, "dash_type": ("solid", "dash", "round_dot")[number % 3]}
        look: dict[str, Any] = {"fill": {"color": colour}} if chart.kind in ("column", "bar") else {"line": line}
        if chart.kind == "scatter":
            look["marker"] = {"type": "none"} if number else {"type": "circle", "size": 4, "fill": {"color": colour}}
        return {"name": series.name, "categories": x, "values": y, **look}
