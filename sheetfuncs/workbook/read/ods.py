"""An OpenDocument spreadsheet read into plain records, piece by piece.

OpenDocument 1.3, part 3.  Only what a workbook of ours needs: values, formulas, notes, names, properties.
One odd attribute costs its cell, which is told, and not the workbook.
"""

from __future__ import annotations

import datetime
import re
import zipfile
import zlib
from collections.abc import Iterator, Mapping
from typing import Any, NamedTuple
from xml.parsers.expat import ExpatError

from sheetfuncs.workbook.read import besides
from sheetfuncs.workbook.read.contents import LAST_COLUMN, LAST_ROW, LONGEST, At, Cell, Contents, Limits
from sheetfuncs.workbook.read.xml import End, Event, Start, events

_ODF = "urn:oasis:names:tc:opendocument:xmlns:"
PREFIXES = {
    f"{_ODF}table:1.0": "table:",
    f"{_ODF}office:1.0": "office:",
    f"{_ODF}text:1.0": "text:",
    f"{_ODF}meta:1.0": "meta:",
    f"{_ODF}drawing:1.0": "draw:",
    f"{_ODF}style:1.0": "style:",
    "http://www.w3.org/1999/xlink": "xlink:",
    "http://purl.org/dc/elements/1.1/": "dc:",
    "urn:org:documentfoundation:names:experimental:calc:xmlns:calcext:1.0": "calcext:",
}
CELLS = ("table:table-cell", "table:covered-table-cell")
PARAGRAPHS = ("text:p", "text:h")
MOST_SPACES = 1000
_DURATION = re.compile(r"(-?)P(?:(\d+)D)?T?(?:(\d+)H)?(?:(\d+)M)?(?:([\d.,]+)S)?$")
ERRORS = {"Err:502": "#VALUE!", "Err:503": "#NUM!", "Err:504": "#VALUE!", "Err:508": "#NAME?", "Err:511": "#N/A"}


class Repeated(NamedTuple):
    """A cell as it is written once, for so many columns."""

    column: int
    times: int
    cell: Cell


def read(archive: zipfile.ZipFile, file: str) -> Contents:
    """The workbook in an .ods file."""
    limits = Limits(file)
    reader = _Reader(limits)
    with archive.open("content.xml") as stream:
        for event in events(stream, PREFIXES, limits):
            reader.take(event)
    properties, described = _properties(archive, limits)
    reader.seen.rest((), (), described)
    _footers(archive, limits, reader)
    told = tuple(reader.seen.told())
    return Contents(
        file, reader.sheets, properties, reader.names, reader.notes, told, reader.seen.charts, tuple(limits.odd)
    )


class _Reader:
    """Goes through content.xml once, keeping its place."""

    def __init__(self, limits: Limits) -> None:
        self.sheets: dict[str, dict[At, Cell]] = {}
        self.names: dict[str, str] = {}
        self.notes: dict[tuple[str, At], str] = {}
        self.pages: dict[str, str] = {}  # what each style of a sheet calls its printed page
        self.printed: dict[str, str] = {}  # the last sheet that is printed so
        self.seen = besides.Seen()
        self.limits = limits
        self.title = ""
        self.row = self.column = 0
        self.rows = 1  # that the row in hand stands for
        self.tables = 0  # that we are in; tables may stand inside cells, and only the outer ones are sheets
        self.cell: Mapping[str, str] | None = None
        self.line: list[Repeated] = []
        self.words: list[str] = []  # of the cell
        self.noted: list[str] | None = None  # of the note, while we are in one
        self.inside: list[str] = []  # the elements that we are in, within a cell
        self.length = 0

    def take(self, event: Event) -> None:
        if isinstance(event, str):
            if self.cell is not None and any(name in PARAGRAPHS for name in self.inside):
                self._say(event)
        elif isinstance(event, Start):
            self._start(event.name, event.attributes)
        else:
            self._end(event.name)

    def _start(self, name: str, given: Mapping[str, str]) -> None:
        if name == "style:style" and "style:master-page-name" in given:
            self.pages[given.get("style:name", "")] = given["style:master-page-name"]
        elif name == "table:table":
            self.tables += 1
            if self.tables == 1:
                self.title, self.row = given.get("table:name", ""), 0
                self.sheets.setdefault(self.title, {})
                self.printed[self.pages.get(given.get("table:style-name", ""), "")] = self.title
        elif name in ("table:named-expression", "table:named-range"):
            text = given.get("table:expression") or given.get("table:cell-range-address", "")
            self.names[given.get("table:name", "")] = text
        if self.cell is not None:
            self._inside(name, given)
        elif self.tables == 1 and name == "table:table-row":
            self.rows, self.column = self._times(given, "table:number-rows-repeated", LAST_ROW), 0
            self.line = []
        elif self.tables == 1 and name in CELLS:
            self.cell, self.words, self.noted, self.inside, self.length = given, [], None, [], 0
        self.seen.floating(self.title, name, self.inside, given.get("xlink:href", ""))

    def _inside(self, name: str, given: Mapping[str, str]) -> None:
        """Something within a cell."""
        if name == "office:annotation":
            self.noted = []
        elif name in PARAGRAPHS:
            if (pieces := self.noted if self.noted is not None else self.words) and self._counts():
                pieces.append("\n")
        elif name == "text:s":
            text = given.get("text:c", "1")
            self._say(" " * min(int(text) if text.isascii() and text.isdecimal() else 1, MOST_SPACES))
        elif name == "text:tab":
            self._say("\t")
        elif name == "text:line-break":
            self._say("\n")
        self.inside.append(name)

    def _counts(self) -> bool:
        """Whether what is said here belongs to the cell or its note, and not to a drawing or a table within."""
        return not any(name.startswith(("draw:", "table:")) for name in self.inside)

    def _say(self, text: str) -> None:
        if not self._counts():
            return
        self.length += len(text)
        if self.length <= LONGEST + MOST_SPACES:
            (self.noted if self.noted is not None else self.words).append(text)

    def _end(self, name: str) -> None:
        if self.cell is not None and self.inside:
            self.inside.pop()
            if name == "office:annotation" and self.noted is not None:
                text = "".join(self.noted)
                self.limits.cell(text)
                self.notes[self.title, (self.row, self.column)] = self.limits.text(self.title, None, text)
                self.noted = None
        elif self.cell is not None and name in CELLS:
            self._finish(self.cell)
            self.cell = None
        elif name == "table:table-row" and self.tables == 1:
            self._row()
        if name == "table:table":
            self.tables -= 1

    def _finish(self, given: Mapping[str, str]) -> None:
        """The cell in hand, whole."""
        times = self._times(given, "table:number-columns-repeated", LAST_COLUMN)
        formula = given.get("table:formula", "").removeprefix("of:").removeprefix("=")
        value = self._value(given, "".join(self.words))
        if formula or value is not None:
            self.line.append(Repeated(self.column, times, Cell(value, formula)))
        self.column += times

    def _row(self) -> None:
        for row in range(self.row, min(self.row + self.rows, LAST_ROW) if self.line else self.row):
            for column, times, cell in self.line:
                for number in range(column, min(column + times, LAST_COLUMN)):
                    self.limits.cell(cell.value)
                    self.sheets[self.title][row, number] = cell
        self.row += self.rows

    def _times(self, given: Mapping[str, str], name: str, most: int) -> int:
        text = given.get(name, "1")
        if text.isascii() and text.isdecimal() and len(text) < 8 and 1 <= int(text) <= most:
            return int(text)
        self.limits.strange(
            self.title, (self.row, self.column), f"Here something is repeated {text[:20]!r} times: read once."
        )
        return 1

    def _value(self, given: Mapping[str, str], words: str) -> Any:
        """A cell's value; the text of an error.  What does not fit stays as it is written."""
        kind = given.get("office:value-type")
        at = self.row, self.column
        if given.get("calcext:value-type") == "error":
            return ERRORS.get(words, words if words.startswith("#") else "#VALUE!")
        if kind in ("float", "percentage", "currency"):
            return self._read(float, given.get("office:value", ""), "a number")
        if kind == "date":
            return self._read(datetime.datetime.fromisoformat, given.get("office:date-value", ""), "a date")
        if kind == "time":
            return self._read(_time, given.get("office:time-value", ""), "a time")
        if kind == "boolean":
            return given.get("office:boolean-value") == "true"
        if kind == "string":
            return self.limits.text(self.title, at, given.get("office:string-value") or words) or None
        return None

    def _read(self, how: Any, text: str, what: str) -> Any:
        try:
            value = how(text)
        except (ValueError, OverflowError):
            sentence = f"{text[:40]!r} is stored as {what} and is none: type it again."
            self.limits.strange(self.title, (self.row, self.column), sentence)
            return text[:LONGEST] or None
        return value.replace(tzinfo=None) if isinstance(value, datetime.datetime) else value


def _time(text: str) -> datetime.timedelta:
    found = _DURATION.match(text)
    if not found:
        raise ValueError(f"{text!r} is no time")
    days, hours, minutes = (int(part or 0) for part in found.groups()[1:4])
    seconds = float((found[5] or "0").replace(",", "."))
    length = datetime.timedelta(days=days, hours=hours, minutes=minutes, seconds=seconds)
    return -length if found[1] else length


def _properties(archive: zipfile.ZipFile, limits: Limits) -> tuple[dict[str, str], str]:
    """What the workbook says of itself, and which fields of its description are filled."""
    described = {"dc:description": "comments", "dc:subject": "subject", "meta:keyword": "keywords"}
    found: dict[str, str] = {}
    filled: dict[str, None] = {}
    name, pieces = "", [""]
    for event in _events(archive, "meta.xml", limits):
        if isinstance(event, Start):
            name = event.attributes.get("meta:name", "") if event.name == "meta:user-defined" else ""
            pieces = []
        elif isinstance(event, End):
            if event.name == "meta:user-defined":
                found[name] = "".join(pieces)
            elif event.name in described and "".join(pieces).strip():
                filled[described[event.name]] = None
        else:
            pieces.append(event)
    return found, ", ".join(filled)


def _footers(archive: zipfile.ZipFile, limits: Limits, reader: _Reader) -> None:
    """What is printed above and below pages: the fields of ours are a sheet's title, a page and their number."""
    title = None
    fields = {"text:sheet-name": "&A", "text:page-number": "&P", "text:page-count": "&N"}
    pieces: list[str] = []
    inside = field = False
    for event in _events(archive, "styles.xml", limits):
        if isinstance(event, str):
            if inside and not field:
                pieces.append(event)
        elif event.name == "style:master-page":
            title = reader.printed.get(event.attributes.get("style:name", "")) if isinstance(event, Start) else None
        elif event.name in ("style:header", "style:footer"):
            inside = isinstance(event, Start) and event.attributes.get("style:display") != "false"
            if isinstance(event, End) and title is not None:
                reader.seen.footer(title, "".join(pieces))
            pieces = []
        elif event.name in fields:
            field = isinstance(event, Start)
            if field:
                pieces.append(fields[event.name])


def _events(archive: zipfile.ZipFile, part: str, limits: Limits) -> Iterator[Event]:
    """What a part says that holds no cells, if it is there: where it is damaged, that is told."""
    if part not in archive.NameToInfo:
        return
    try:
        with archive.open(part) as stream:
            yield from events(stream, PREFIXES, limits)
    except (ExpatError, zipfile.BadZipFile, zlib.error, EOFError):
        limits.strange("", None, f"The part {part} is damaged: what it holds is not read.")
