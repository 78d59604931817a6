"""An Office Open XML workbook read into plain records, piece by piece.

ECMA-376 part 1, both as most programs write it and in its strict form, whose names differ alone.  One
odd attribute costs its cell, which is told, and not the workbook.
"""

from __future__ import annotations

import posixpath
import zipfile
import zlib
from collections.abc import Iterator, Mapping
from typing import NamedTuple
from xml.parsers.expat import ExpatError

from sheetfuncs.workbook.read import besides
from sheetfuncs.workbook.read.cells import REFERENCE, SheetReader, Styles, column_of, styles_of, unescaped
from sheetfuncs.workbook.read.contents import LONGEST, At, Cell, Contents, Limits
from sheetfuncs.workbook.read.xml import End, Event, Start, events

_STRICT, _LOOSE = "http://purl.oclc.org/ooxml/", "http://schemas.openxmlformats.org/"
PREFIXES = {
    f"{_LOOSE}spreadsheetml/2006/main": "",
    f"{_STRICT}spreadsheetml/main": "",
    f"{_LOOSE}officeDocument/2006/relationships": "r:",
    f"{_STRICT}officeDocument/relationships": "r:",
    f"{_LOOSE}package/2006/relationships": "link:",
    f"{_LOOSE}officeDocument/2006/custom-properties": "own:",
    f"{_STRICT}officeDocument/customProperties": "own:",
    f"{_LOOSE}package/2006/metadata/core-properties": "core:",
    "http://purl.org/dc/elements/1.1/": "dc:",
    f"{_LOOSE}drawingml/2006/spreadsheetDrawing": "draw:",
    f"{_STRICT}drawingml/spreadsheetDrawing": "draw:",
    f"{_LOOSE}drawingml/2006/chart": "chart:",
    f"{_STRICT}drawingml/chart": "chart:",
}


class Link(NamedTuple):
    """What a part of the file points to."""

    name: str
    kind: str
    target: str


class Package:
    """The parts of a workbook, as far as they are there."""

    def __init__(self, archive: zipfile.ZipFile, limits: Limits) -> None:
        self.archive, self.limits = archive, limits
        self.parts = set(archive.namelist())

    def events(self, part: str) -> Iterator[Event]:
        """What a part says; nothing where it is not there."""
        if part in self.parts:
            with self.archive.open(part) as stream:
                yield from events(stream, PREFIXES, self.limits)

    def spare(self, part: str) -> Iterator[Event]:
        """What a part says that holds no cells: where it is damaged, that is told, and the rest is read."""
        try:
            yield from self.events(part)
        except (ExpatError, zipfile.BadZipFile, zlib.error, EOFError):
            self.limits.strange("", None, f"The part {part} is damaged: what it holds is not read.")

    def links(self, part: str) -> list[Link]:
        """What a part points to."""
        folder, _, name = part.rpartition("/")
        found = []
        for event in self.events(f"{folder}/_rels/{name}.rels".removeprefix("/")):
            if isinstance(event, Start) and event.name == "link:Relationship":
                target = event.attributes.get("Target", "")
                absolute = target.removeprefix("/") if target.startswith("/") else f"{folder}/{target}"
                kind = event.attributes.get("Type", "").rpartition("/")[2]
                absolute = posixpath.normpath(absolute).lstrip("/")
                found.append(Link(event.attributes.get("Id", ""), kind, absolute))
        return found

    def texts(self, part: str, names: Mapping[str, str]) -> Iterator[tuple[str, str]]:
        """The texts of elements of these names, each with what it is called."""
        name, pieces = "", [""]
        for event in self.spare(part):
            if isinstance(event, Start) and event.name in names:
                name, pieces = event.name, []
            elif isinstance(event, End) and event.name == name:
                yield names[name], "".join(pieces)
                name = ""
            elif isinstance(event, str) and name:
                pieces.append(event)


class Book:
    """What the workbook part says: its sheets with their parts, its names, and how it counts days."""

    def __init__(self, package: Package) -> None:
        self.package = package
        self.part = next((one.target for one in package.links("") if one.kind == "officeDocument"), "xl/workbook.xml")
        links = {one.name: one for one in package.links(self.part)}
        self.linked = {one.kind: one.target for one in links.values()}
        self.sheets: dict[str, str] = {}
        self.chart_sheets: list[str] = []
        self.names: dict[str, str] = {}
        self.from_1904 = False
        name, pieces = "", [""]
        for event in package.events(self.part):
            if isinstance(event, Start):
                given = event.attributes
                if event.name == "sheet":
                    link = links.get(given.get("r:id", ""))
                    if link and link.kind == "worksheet":
                        self.sheets[given.get("name", "")] = link.target
                    elif link:
                        self.chart_sheets.append(given.get("name", ""))
                elif event.name == "workbookPr":
                    self.from_1904 = given.get("date1904", "0").lower() in ("1", "true", "on")
                elif event.name == "definedName":
                    name, pieces = given.get("name", ""), []
            elif isinstance(event, str):
                pieces.append(event)
            elif event.name == "definedName":
                self.names.setdefault(name, "".join(pieces))


def read(archive: zipfile.ZipFile, file: str) -> Contents:
    """The workbook in an .xlsx file."""
    limits = Limits(file)
    package = Package(archive, limits)
    book = Book(package)
    if not book.sheets:
        raise ValueError("it names no sheet")
    shared = _shared_texts(package, book.linked.get("sharedStrings", "xl/sharedStrings.xml"))
    styles = _styles(package, book.linked.get("styles", "xl/styles.xml"))
    sheets: dict[str, dict[At, Cell]] = {}
    notes: dict[tuple[str, At], str] = {}
    seen = besides.Seen()
    for title, part in book.sheets.items():
        sheet = SheetReader(title, limits, shared, styles, book.from_1904, seen)
        sheet.read(package.events(part))
        sheets[title] = sheet.cells
        for link in package.links(part):
            if link.kind == "comments":
                notes |= {(title, at): text for at, text in _notes(package, link.target)}
            elif link.kind == "drawing":
                seen.drawing(title, package.spare(link.target))
    properties = dict(_properties(package))
    seen.rest(archive.namelist(), book.chart_sheets, _described(package))
    told = tuple(seen.told())
    return Contents(file, sheets, properties, book.names, notes, told, seen.charts, tuple(limits.odd))


def _shared_texts(package: Package, part: str) -> list[str]:
    """The texts that cells share; letters beyond what a cell can hold are cut where they are used."""
    found: list[str] = []
    pieces: list[str] = []
    spelled = text = 0
    for event in package.events(part):
        if isinstance(event, str):
            if text and not spelled:
                pieces.append(event)
        elif event.name == "t":
            text = isinstance(event, Start)
        elif event.name == "rPh":  # how the words are read aloud
            spelled = isinstance(event, Start)
        elif event.name == "si":
            if isinstance(event, End):
                whole = "".join(pieces)
                package.limits.words(whole)
                found.append(unescaped(whole[: LONGEST + 1]))
            pieces = []
    return found


def _styles(package: Package, part: str) -> Styles:
    """The styles of cells that are dates or times."""
    formats: dict[str, str] = {}
    used: list[str] = []
    inside = False
    for event in package.spare(part):
        if isinstance(event, str):
            continue
        if event.name == "cellXfs":
            inside = isinstance(event, Start)
        elif isinstance(event, Start) and event.name == "numFmt":
            formats[event.attributes.get("numFmtId", "")] = event.attributes.get("formatCode", "")
        elif isinstance(event, Start) and event.name == "xf" and inside:
            used.append(event.attributes.get("numFmtId", "0"))
    return styles_of(formats, used)


def _notes(package: Package, part: str) -> Iterator[tuple[At, str]]:
    """Notes on cells."""
    at: At | None = None
    pieces: list[str] = []
    text = False
    for event in package.spare(part):
        if isinstance(event, str):
            if text:
                pieces.append(event)
        elif event.name == "t":
            text = isinstance(event, Start)
        elif event.name == "comment":
            if isinstance(event, Start):
                found = REFERENCE.match(event.attributes.get("ref", ""))
                at, pieces = (int(found[2]) - 1, column_of(found[1])) if found else None, []
            elif at:
                package.limits.cell("".join(pieces))
                yield at, package.limits.text("", None, unescaped("".join(pieces)))


def _properties(package: Package) -> Iterator[tuple[str, str]]:
    """What the workbook says of itself in properties of its own."""
    name, pieces = "", [""]
    for event in package.spare("docProps/custom.xml"):
        if isinstance(event, Start) and event.name == "own:property":
            name, pieces = event.attributes.get("name", ""), []
        elif isinstance(event, End) and event.name == "own:property" and name:
            yield name, "".join(pieces).strip()
        elif isinstance(event, str):
            pieces.append(event)


def _described(package: Package) -> str:
    """What was written about the workbook in its properties."""
    names = {"dc:description": "comments", "dc:subject": "subject", "core:keywords": "keywords"}
    return ", ".join(word for word, text in package.texts("docProps/core.xml", names) if text.strip())
