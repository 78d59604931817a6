"""A workbook as the embedded engine needs it: what is typed and every formula, and no looks.

A formula that is alike from row to row stands once in its column, as a shared formula of ISO/IEC 29500-1, 18.3.1.40:
the engine reads it once, and a season in a third of the time.  A file to hand out has each formula in its own cell,
since not every program takes a shared one apart as it should.
"""

from __future__ import annotations

import zipfile
from collections.abc import Iterable, Mapping, Sequence
from io import BytesIO
from typing import Any
from xml.sax.saxutils import escape, quoteattr

from sheetfuncs.files import for_reading
from sheetfuncs.hosts.embedded import Cell, Model
from sheetfuncs.workbook.model.days import serial
from sheetfuncs.workbook.model.editions import CARRIED
from sheetfuncs.workbook.model.layout import Layout, letters
from sheetfuncs.workbook.model.parts import Fields, Sheet, Table, cells_of, given
from sheetfuncs.workbook.model.systems import Units
from sheetfuncs.workbook.write import calls
from sheetfuncs.workbook.write.book import storable
from sheetfuncs.workbook.write.names import definitions

MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main"
OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships"
PACKAGE = "http://schemas.openxmlformats.org/package/2006"
CONTENT = "application/vnd.openxmlformats-officedocument.spreadsheetml"
HEAD = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n'
NOTHING = (
    '<fonts count="1"><font/></fonts><fills count="1"><fill/></fills><borders count="1"><border/></borders>'
    '<cellStyleXfs count="1"><xf/></cellStyleXfs><cellXfs count="1"><xf/></cellXfs>'
    '<cellStyles count="1"><cellStyle name="Normal" xfId="0" builtinId="0"/></cellStyles>'
)  # of styles, the least that a workbook has


class Bare:
    """The cells of a workbook; `formulas` are those that compute, by sheet title."""

    def __init__(self, sheets: Sequence[Sheet], layout: Layout, units: Units, inputs: Mapping[str, Any]) -> None:
        self.layout, self.system, self.inputs = layout, units.system, inputs
        self.formulas: dict[str, list[Cell]] = {sheet.title: [] for sheet in sheets}
        self.cells: dict[str, dict[Cell, str]] = {sheet.title: {} for sheet in sheets}
        self.shared = 0
        for sheet in sheets:
            for block in sheet.blocks:
                if isinstance(block, Fields):
                    self._fields(sheet.title, block)
                elif isinstance(block, Table):
                    self._table(sheet.title, block)

    def _fields(self, title: str, block: Fields) -> None:
        for field in (cell for one in block.fields for cell in cells_of(one)):
            name = f"{block.key}.{field.key}"
            spot = self.layout.spots[name]
            if field.formula and name not in self.inputs:
                self._formula(title, (spot.row, spot.column), self._text(field.formula, title))
            else:
                self._value(title, (spot.row, spot.column), given(field, name, self.inputs))

    def _table(self, title: str, table: Table) -> None:
        for column in table.columns:
            name = f"{table.key}.{column.key}"
            top, place = self.layout.spots[name][1:3]
            if not column.formula:
                for offset, value in enumerate(given(column, name, self.inputs)):
                    self._value(title, (top + offset, place), value)
                continue
            alike = self.layout.settled(column.formula, table) if isinstance(column.formula, str) else table.rows
            for offset in range(table.rows):
                shared, text = "", ""
                if offset <= alike:
                    text = self._text(column.at(offset), title, table, offset)
                if offset == alike:
                    self.shared += 1
                    ends = f"{letters(place)}{top + offset + 1}:{letters(place)}{top + table.rows}"
                    shared = f' t="shared" ref="{ends}" si="{self.shared}"'
                elif offset > alike:
                    shared = f' t="shared" si="{self.shared}"'
                self._formula(title, (top + offset, place), text, shared)

    def _text(self, formula: str, title: str, table: Table | None = None, offset: int = 0) -> str:
        return self.layout.resolve(calls.as_stored(formula, CARRIED, self.system), title, table, offset)

    def _formula(self, title: str, cell: Cell, text: str, attributes: str = "") -> None:
        self.formulas[title].append(cell)
        self.cells[title][cell] = f"><f{attributes}>{escape(text)}</f><v>0</v></c>"

    def _value(self, title: str, cell: Cell, value: Any) -> None:
        if isinstance(value, str):
            self.cells[title][cell] = f' t="str"><v>{escape(storable(value))}</v></c>' if value else ""
        elif value is not None:
            self.cells[title][cell] = f"><v>{float(serial(value))!r}</v></c>"

    def model(self) -> Model:
        """The workbook in the embedded engine."""
        with for_reading(self.file(), ".xlsx") as path:
            return Model(path)

    def file(self) -> bytes:
        """The workbook as an .xlsx file, not compressed."""
        content = BytesIO()
        with zipfile.ZipFile(content, "w") as archive:
            for name, text in self._parts():
                archive.writestr(name, HEAD + text)
        return content.getvalue()

    def _parts(self) -> Iterable[tuple[str, str]]:
        parts = [("worksheet", f"worksheets/sheet{number}.xml") for number, _ in enumerate(self.cells, 1)]
        parts.append(("styles", "styles.xml"))
        types = "".join(
            f'<Override PartName="/xl/{name}" ContentType="{CONTENT}.{kind}+xml"/>'
            for kind, name in (("sheet.main", "workbook.xml"), *parts)
        )
        yield (
            "[Content_Types].xml",
            f'<Types xmlns="{PACKAGE}/content-types"><Default Extension="rels" '
            f'ContentType="application/vnd.openxmlformats-package.relationships+xml"/>{types}</Types>',
        )
        yield "_rels/.rels", _relations([("officeDocument", "xl/workbook.xml")])
        yield "xl/_rels/workbook.xml.rels", _relations(parts)
        yield "xl/styles.xml", f'<styleSheet xmlns="{MAIN}">{NOTHING}</styleSheet>'
        sheets = "".join(
            f'<sheet name={quoteattr(title)} sheetId="{number}" r:id="rId{number}"/>'
            for number, title in enumerate(self.cells, 1)
        )
        defined = "".join(
            f'<definedName name="{one.name}">{escape(one.formula)}</definedName>' for one in definitions()
        )
        yield (
            "xl/workbook.xml",
            f'<workbook xmlns="{MAIN}" xmlns:r="{OFFICE}"><sheets>{sheets}</sheets>'
            f"<definedNames>{defined}</definedNames></workbook>",
        )
        for (_, name), cells in zip(parts, self.cells.values(), strict=False):
            yield f"xl/{name}", f'<worksheet xmlns="{MAIN}"><sheetData>{_rows(cells)}</sheetData></worksheet>'


def _relations(kept: Iterable[tuple[str, str]]) -> str:
    each = "".join(
        f'<Relationship Id="rId{number}" Type="{OFFICE}/{kind}" Target="{target}"/>'
        for number, (kind, target) in enumerate(kept, 1)
    )
    return f'<Relationships xmlns="{PACKAGE}/relationships">{each}</Relationships>'


def _rows(cells: Mapping[Cell, str]) -> str:
    """The cells row by row, as a sheet has them."""
    rows: dict[int, list[str]] = {}
    for (row, column), rest in sorted(cells.items()):
        if rest:
            rows.setdefault(row, []).append(f'<c r="{letters(column)}{row + 1}"{rest}')
    return "".join(f'<row r="{row + 1}">{"".join(each)}</row>' for row, each in rows.items())
