"""Workbooks with something edited in them, as a user or a program would."""

from __future__ import annotations

import datetime
import io
import re
import zipfile
from collections.abc import Callable, Mapping
from pathlib import Path
from typing import Any

import openpyxl
from openpyxl.comments import Comment

from sheetfuncs.workbook.commands.check.check import check_file
from sheetfuncs.workbook.commands.check.typed import Remark
from sheetfuncs.workbook.commands.new.new import season_of
from sheetfuncs.workbook.model.layout import letters
from sheetfuncs.workbook.model.parts import ASK, MEND
from sheetfuncs.workbook.model.rows import Rows
from sheetfuncs.workbook.season import Season

# The example with no more rows than it needs, so that a check is quick.
SMALL = Rows(
    collections=20,
    boils=8,
    happenings=4,
    waiting=12,
    batches=4,
    readings=48,
    bottlings=6,
    days=100,
    trees=12,
    past=3,
    words=4,
)

Name = str | tuple[str, int]  # a labelled cell, or a column and a row from 1


def example(system: str = "US", rows: Rows = SMALL) -> Season:
    return season_of(system, rows, {}, with_example=True)


class Written:
    """The example in every system and edition, each computed and written when it is first asked for."""

    def __init__(self, folder: Path) -> None:
        self.folder = folder
        self.seasons: dict[str, Season] = {}

    def __call__(self, system: str = "US", edition: str = "linked") -> Path:
        path = self.folder / f"{system}-{edition}.xlsx"
        if not path.exists():
            if system not in self.seasons:
                self.seasons[system] = example(system)
            self.seasons[system].write(path, edition)
            path.chmod(0o444)
        return path


def trimmed(inputs: Mapping[str, Any]) -> dict[str, Any]:
    """Typed cells without the empty ones at the ends of columns, and without empty labelled cells."""
    found = {}
    for name, value in inputs.items():
        if isinstance(value, list):
            value = list(value)
            while value and value[-1] is None:
                value.pop()
        if value not in (None, [], ""):
            found[name] = value
    return found


def expected(system: str, rows: Rows = SMALL) -> dict[str, Any]:
    """The example as it is typed, and what every workbook starts with."""
    season = example(system, rows)
    starts = {
        name: getattr(cell, "start", None) or list(getattr(cell, "starts", ())) or None
        for name, cell in season.cells.items()
    }
    return trimmed(starts | season.inputs)


def typed(season: Season, edits: Mapping[Name, Any]) -> Season:
    """The season with other things typed into its cells."""
    for name, value in edits.items():
        if isinstance(name, str):
            season.inputs[name] = value
            continue
        column = list(season.inputs.get(name[0], []))
        column += [None] * (name[1] - len(column))
        column[name[1] - 1] = value
        season.inputs[name[0]] = column
    return season


def quickly(season: Season, path: Path) -> Path:
    """Written without computing: every formula is stored with a nought, as by a program that knows none of ours."""
    season._written(path, "linked", season.inputs)
    return path


def address(season: Season, name: str, row: int = 1) -> tuple[str, str]:
    """Sheet and address of a cell in a workbook as it is written."""
    spot = season.layout.spots[name]
    return spot.sheet, f"{letters(spot.column)}{spot.row + row}"


def faults(path: Path) -> list[Remark]:
    """What check finds to mend or to look at; what is only worth knowing aside."""
    return [one for one in check_file(path) if one.weight in (MEND, ASK)]


def with_openpyxl(source: Path, target: Path, edit: Callable[[openpyxl.Workbook], None]) -> Path:
    """A copy edited and saved by openpyxl; it drops all stored values, and charts."""
    book = openpyxl.load_workbook(source)
    edit(book)
    book.save(target)
    return target


def with_own_things(book: openpyxl.Workbook) -> None:
    """What a user adds: a sheet, a column, remarks, a note on a cell, a number over a formula."""
    season = example()
    own = book.create_sheet("Bees", 2)
    own["A1"], own["B1"] = "hives", 3
    own["A2"], own["B2"] = "since", datetime.datetime(2024, 5, 1)
    own["A3"] = "=1+1"
    own["A4"], own["A4"].data_type = "=not a formula", "s"
    book["Collection"]["DA4"] = "Weather"
    book["Collection"]["DA6"] = "snow"
    book["Yard"]["Z4"] = "+ ask Ada"
    book["Yard"]["Z4"].data_type = "s"
    book["Collection"][address(season, "collection.sap")[1]].comment = Comment("spilled a little", "me")
    book["Collection"][address(season, "collection.syrup", 2)[1]] = 1.25


def with_xml(source: Path, target: Path, edits: Mapping[str, Callable[[bytes], bytes | None]]) -> Path:
    """A copy with some of its parts edited; a part that becomes None is left out."""
    out = io.BytesIO()
    with zipfile.ZipFile(source) as old, zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as new:
        for name in old.namelist():
            content = edits[name](old.read(name)) if name in edits else old.read(name)
            if content is not None:
                new.writestr(name, content)
    target.write_bytes(out.getvalue())
    return target


def part_of(season: Season, sheet: str) -> str:
    """The part of an .xlsx file that holds a sheet."""
    titles = [one.title for one in season.sheets]
    return f"xl/worksheets/sheet{titles.index(sheet) + 1}.xml"


def in_cell(address: str, pattern: bytes, replacement: bytes) -> Callable[[bytes], bytes]:
    """Something replaced inside one cell of a sheet's part; it must be there."""

    def edit(text: bytes) -> bytes:
        cell = re.search(rb'<c r="' + address.encode() + rb'"[^>]*?(?:/>|>.*?</c>)', text)
        assert cell, f"{address} is not there"
        other, count = re.subn(pattern, replacement, cell[0])
        assert count, f"{address}: {cell[0]!r} has nothing like {pattern!r}"
        return text[: cell.start()] + other + text[cell.end() :]

    return edit
