"""An OpenDocument spreadsheet read into plain records, piece by piece.

OpenDocument 1.3, part 3.  Only what a workbook of ours needs: values, formulas, notes, names, properties.
"""

from __future__ import annotations

import datetime
import re
import zipfile
from collections.abc import Iterator
from typing import Any
from xml.etree.ElementTree import Element  # for its type: defusedxml parses

from defusedxml import ElementTree

from sheetfuncs.workbook.read.contents import At, Cell, Contents, Counted

_TABLE = "{urn:oasis:names:tc:opendocument:xmlns:table:1.0}"
_OFFICE = "{urn:oasis:names:tc:opendocument:xmlns:office:1.0}"
_TEXT = "{urn:oasis:names:tc:opendocument:xmlns:text:1.0}"
_META = "{urn:oasis:names:tc:opendocument:xmlns:meta:1.0}"
_SHOWN_TYPE = "{urn:org:documentfoundation:names:experimental:calc:xmlns:calcext:1.0}value-type"

_NOTE = f"{_OFFICE}annotation"
_DURATION = re.compile(r"(-?)P(?:(\d+)D)?T?(?:(\d+)H)?(?:(\d+)M)?(?:([\d.,]+)S)?$")
ERRORS = {"Err:502": "#VALUE!", "Err:503": "#NUM!", "Err:504": "#VALUE!", "Err:508": "#NAME?", "Err:511": "#N/A"}


def read(archive: zipfile.ZipFile, file: str) -> Contents:
    """The workbook in an .ods file."""
    reader = _Reader(Counted(file))
    with archive.open("content.xml") as stream:
        reader.read(stream)
    pictures = sum(name.startswith("Pictures/") for name in archive.namelist())
    besides = (f"{pictures} picture{'s' if pictures > 1 else ''}",) if pictures else ()
    return Contents(file, reader.sheets, _properties(archive), reader.names, reader.notes, besides)


def _properties(archive: zipfile.ZipFile) -> dict[str, str]:
    if "meta.xml" not in archive.namelist():
        return {}
    found = ElementTree.fromstring(archive.read("meta.xml")).iter(f"{_META}user-defined")
    return {one.get(f"{_META}name", ""): one.text or "" for one in found}


class _Reader:
    """Goes through content.xml once, keeping its place."""

    def __init__(self, counted: Counted) -> None:
        self.sheets: dict[str, dict[At, Cell]] = {}
        self.names: dict[str, str] = {}
        self.notes: dict[tuple[str, At], str] = {}
        self.counted = counted
        self.title = ""
        self.row = self.column = 0

    def read(self, stream: Any) -> None:
        depth = 0  # tables may stand inside cells; only the outer ones are sheets
        for event, element in ElementTree.iterparse(stream, ("start", "end")):
            if element.tag == f"{_TABLE}table":
                depth += 1 if event == "start" else -1
                if event == "start" and depth == 1:
                    self.title, self.row = element.get(f"{_TABLE}name", ""), 0
                    self.sheets.setdefault(self.title, {})
            elif event == "end" and element.tag == f"{_TABLE}table-row" and depth == 1:
                self._row(element)
                element.clear()
            elif event == "end" and element.tag in (f"{_TABLE}named-expression", f"{_TABLE}named-range"):
                text = element.get(f"{_TABLE}expression") or element.get(f"{_TABLE}cell-range-address", "")
                self.names[element.get(f"{_TABLE}name", "")] = text

    def _row(self, row: Element) -> None:
        repeated = int(row.get(f"{_TABLE}number-rows-repeated", 1))
        found = list(self._cells(row))
        for number in range(self.row, self.row + repeated if found else self.row):
            for column, cell in found:
                self.counted.one()
                self.sheets[self.title][number, column] = cell
        self.row += repeated

    def _cells(self, row: Element) -> Iterator[tuple[int, Cell]]:
        column = 0
        for element in row:
            if element.tag not in (f"{_TABLE}table-cell", f"{_TABLE}covered-table-cell"):
                continue
            repeated = int(element.get(f"{_TABLE}number-columns-repeated", 1))
            note = element.find(_NOTE)
            if note is not None:
                self.notes[self.title, (self.row, column)] = _words(note)
            formula = element.get(f"{_TABLE}formula", "").removeprefix("of:").removeprefix("=")
            value = _value(element)
            if formula or value is not None:
                for number in range(column, column + repeated):
                    self.counted.one()
                    yield number, Cell(value, formula)
            column += repeated


def _value(cell: Element) -> Any:
    """A cell's value; the text of an error."""
    kind = cell.get(f"{_OFFICE}value-type")
    if cell.get(_SHOWN_TYPE) == "error":
        words = _words(cell)
        return ERRORS.get(words, words if words.startswith("#") else "#VALUE!")
    if kind in ("float", "percentage", "currency"):
        return float(cell.get(f"{_OFFICE}value", "nan"))
    if kind == "date":
        return datetime.datetime.fromisoformat(cell.get(f"{_OFFICE}date-value", ""))
    if kind == "time":
        return _time(cell.get(f"{_OFFICE}time-value", ""))
    if kind == "boolean":
        return cell.get(f"{_OFFICE}boolean-value") == "true"
    if kind == "string":
        return cell.get(f"{_OFFICE}string-value") or _words(cell) or None
    return None


def _time(text: str) -> datetime.timedelta:
    found = _DURATION.match(text)
    if not found:
        raise ValueError(f"{text!r} is no time")
    days, hours, minutes = (int(part or 0) for part in found.groups()[1:4])
    seconds = float((found[5] or "0").replace(",", "."))
    length = datetime.timedelta(days=days, hours=hours, minutes=minutes, seconds=seconds)
    return -length if found[1] else length


def _words(element: Element) -> str:
    """The text of a cell or a note, a line a paragraph; a cell's note is no part of its text."""
    paragraphs = [child for child in element if child.tag in (f"{_TEXT}p", f"{_TEXT}h")]
    return "\n".join("".join(_pieces(paragraph)) for paragraph in paragraphs)


def _pieces(element: Element) -> Iterator[str]:
    yield element.text or ""
    for child in element:
        if child.tag == f"{_TEXT}s":
            yield " " * min(int(child.get(f"{_TEXT}c", 1)), 1000)
        elif child.tag == f"{_TEXT}tab":
            yield "\t"
        elif child.tag == f"{_TEXT}line-break":
            yield "\n"
        elif child.tag != _NOTE:
            yield from _pieces(child)
        yield child.tail or ""
