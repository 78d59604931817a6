"""A workbook of every format that was released stays readable: tests/kept holds them, and they never change.

When `season.FORMAT` goes up, the workbook of the new format is added with

    python -m tests.workbook.test_earlier_versions
"""

from __future__ import annotations

import csv
import hashlib
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest

from sheetfuncs import cli
from sheetfuncs.formulas import catalogue
from sheetfuncs.workbook import season as seasons
from sheetfuncs.workbook.commands.check import stored
from sheetfuncs.workbook.commands.check.check import check_filled
from sheetfuncs.workbook.commands.renew.carried import Carried
from sheetfuncs.workbook.model.days import serial
from sheetfuncs.workbook.model.kinds import COUNT, TEXT
from sheetfuncs.workbook.model.parts import MEND, Column, Sheet, Table, named
from sheetfuncs.workbook.model.rows import Rows
from sheetfuncs.workbook.model.systems import Units
from sheetfuncs.workbook.read import filled as reading
from sheetfuncs.workbook.read.filled import Filled, read
from sheetfuncs.workbook.season import FORMAT, STAMP_FORMAT
from sheetfuncs.workbook.sheets import collection
from tests.tools import headings
from tests.tools.edits import example
from tests.tools.headings import FOLDER

with (FOLDER / "kept.csv").open(encoding="utf-8") as file:
    HASHES = {row["file"]: row["sha256"] for row in csv.DictReader(file)}
KEPT = sorted(FOLDER.glob("*.xlsx"))
JARS = {1: [8, 7, 1], 2: [8, 7, 3]}  # filled in the example of a format


def test_no_kept_workbook_was_changed() -> None:
    assert {path.name: hashlib.sha256(path.read_bytes()).hexdigest() for path in KEPT} == HASHES


def test_the_format_of_today_is_kept() -> None:
    assert f"format-{FORMAT}.xlsx" in HASHES


def test_words_that_a_sheet_had_to_read_are_not_the_users() -> None:
    """A line of the workbook that is worded anew: its old words go into FORMER, of `read.page`."""
    filled = read(FOLDER / f"format-{FORMAT}.xlsx")
    assert [one.value for one in filled.own_cells()] == []


def missing(filled: Filled) -> list[str]:
    return [one.sentence for one in filled.gone()]


@pytest.mark.parametrize("path", KEPT, ids=lambda path: path.stem)
def test_it_is_read_whole_and_nothing_is_missed_that_it_could_not_have(path: Path) -> None:
    """The sums are those of the example's logs, by hand: 15 runs, 117 gal, 5 boils, and the jars."""
    filled = read(path)
    inputs = filled.season.inputs
    assert filled.contents.properties[STAMP_FORMAT] == path.stem.split("-")[1]
    assert missing(filled) == []
    assert sum(inputs["collection.sap"]) == 117
    assert [len(inputs[name]) for name in ("collection.date", "boil.date")] == [15, 5]
    assert inputs["bottles.filled"] == JARS[filled.format]
    assert len([one for one in inputs["run.reading"] if one is not None]) == 40
    said = check_filled(filled)
    assert not [one for one in said if one.weight == MEND and one.cell == ""], said


@pytest.mark.parametrize("path", KEPT, ids=lambda path: path.stem)
@pytest.mark.parametrize("system", ["US", "metric"])
def test_convert_loses_nothing_that_was_typed(path: Path, system: str, tmp_path: Path) -> None:
    """Each typed cell of the file is an input of the new workbook, or stands on the list with its place."""
    filled = read(path)
    typed = [
        (place, cell.value)
        for sheet, cells in filled.contents.sheets.items()
        for at, cell in cells.items()
        if not cell.formula and (place := (sheet, at)) in typed_places(filled)
    ]
    assert len(typed) > 250
    kept = {(place.sheet, place.at) for spots in filled.places.values() for place in spots if place}
    listed = {(line.sheet, line.at) for line in Carried(filled, "x").lines}
    assert [(place, value) for place, value in typed if place not in kept | listed] == []
    new = tmp_path / "new.xlsx"
    assert cli.main(["convert", str(path), str(new), "--units", "us" if system == "US" else "metric"]) == 0
    again = read(new)
    assert missing(again) == [] and again.format == FORMAT
    if system == filled.system:
        now, then = plain(again.season.inputs), plain(filled.season.inputs)
        assert {name: now.get(name) for name in then} == then
        # a cell that the old format has not comes with what a new workbook starts with
        starts = {name for name, what in named(again.written).items() if getattr(what, "start", None) is not None}
        assert now.keys() - then <= starts


def typed_places(filled: Filled) -> set[tuple[str, Any]]:
    """Where the file's own format has cells to type in."""
    names = [name for name, what in named(filled.written).items() if what.typed]
    return {(place.sheet, place.at) for name in names for place in filled.found.cells.get(name, ()) if place}


def plain(inputs: dict[str, Any]) -> dict[str, Any]:
    """Inputs without what is empty."""
    found = {}
    for name, value in inputs.items():
        if isinstance(value, list):
            value = [None if one is None else serial(one) for one in value]
            while value and value[-1] is None:
                value.pop()
            if value:
                found[name] = value
        elif value is not None:
            found[name] = serial(value)
    return found


@pytest.mark.parametrize("path", KEPT, ids=lambda path: path.stem)
def test_every_command_reads_it(path: Path, tmp_path: Path) -> None:
    for command in (
        ["check", str(path)],
        ["report", str(path), "--html", str(tmp_path / "a.html")],
        ["handover", str(path), str(tmp_path / "b.xlsx")],
    ):
        assert cli.main(command) == 0, command


def test_a_cell_of_today_is_called_as_when_its_format_was_released() -> None:
    """A released heading is an interface: when this fails, write what it says into the sheet."""
    words = headings.listed(FORMAT)
    today = headings.today()
    said = []
    for name, was in words.items():
        what = today.get(name)
        if what is None:
            said.append(f"{name} is gone: leave it, hidden, or begin a format ({FORMAT + 1}) that says where it went")
        elif was != what.words and was not in what.was:
            said.append(f"{name} is called otherwise: write was=({was!r},)")
    for name, what in today.items():
        if name not in words and what.since <= FORMAT:
            said.append(f"{name} is new: write since={FORMAT + 1} and raise season.FORMAT, once {FORMAT} is released")
    assert not said, "\n".join(said)


@pytest.fixture
def changed(monkeypatch: pytest.MonkeyPatch) -> None:
    """The next release: a heading reworded, a column and a hidden cell added, a function more."""
    sheet_of_today: Callable[[Units, Rows], Sheet] = collection.sheet

    def sheet(units: Units, rows: Rows) -> Sheet:
        old = sheet_of_today(units, rows)
        table = old.block("collection")
        assert isinstance(table, Table)
        columns = [
            column._replace(heading="Sap brought home", was=(*column.was, column.heading))
            if column.key == "sap"
            else column
            for column in table.columns
        ]
        columns.insert(3, Column("sky", "What the sky was like", TEXT, since=FORMAT + 1))
        columns.append(Column("helper", "A step", COUNT, "N([sap])", hidden=True, since=FORMAT + 1))
        blocks = [table._replace(columns=tuple(columns)) if block is table else block for block in old.blocks]
        return old._replace(blocks=blocks)

    monkeypatch.setattr(collection, "sheet", sheet)
    for module in (seasons, reading, stored):
        monkeypatch.setattr(module, "FORMAT", FORMAT + 1)
    monkeypatch.setitem(catalogue.CATALOGUE, "SAP_OF_TOMORROW", catalogue.CATALOGUE["SAP_SUGAR"])


@pytest.mark.usefixtures("changed")
@pytest.mark.parametrize("path", KEPT, ids=lambda path: path.stem)
def test_sheets_may_change(path: Path, tmp_path: Path) -> None:
    filled = read(path)
    assert missing(filled) == []
    assert sum(filled.season.inputs["collection.sap"]) == 117
    assert not [one for one in check_filled(filled) if one.weight == MEND and "SAP_OF" in one.sentence]
    assert cli.main(["convert", str(path), str(tmp_path / "new.xlsx")]) == 0
    again = read(tmp_path / "new.xlsx")
    assert sum(again.season.inputs["collection.sap"]) == 117
    assert missing(again) == []


if __name__ == "__main__":
    example().write(FOLDER / f"format-{FORMAT}.xlsx", "carried")
