"""Workbooks with something edited in them, as a user or a program would."""

from __future__ import annotations

import io
import re
import zipfile
from collections.abc import Callable, Mapping
from pathlib import Path
from typing import Any

import openpyxl

from sheetfuncs.workbook.commands.new.new import season_of
from sheetfuncs.workbook.model.layout import letters
from sheetfuncs.workbook.model.parts import Rows
from sheetfuncs.workbook.season import Season

# The example with no more rows than it needs, so that a check is quick.
SMALL = Rows(collections=20, lots=22, boils=8, batches=3, readings=24, bottlings=6, trees=12, past=3)

Name = str | tuple[str, int]  # a labelled cell, or a column and a row from 1


def example(system: str = "US", rows: Rows = SMALL) -> Season:
    return season_of(system, rows, {}, with_example=True)


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


def with_openpyxl(source: Path, target: Path, edit: Callable[[openpyxl.Workbook], None]) -> Path:
    """A copy edited and saved by openpyxl; it drops all stored values, and charts."""
    book = openpyxl.load_workbook(source)
    edit(book)
    book.save(target)
    return target


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
