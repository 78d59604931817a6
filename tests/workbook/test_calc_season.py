"""The example season computed anew by Calc: every formula of every sheet gives what is stored in the file."""

from __future__ import annotations

import datetime
import functools
import zipfile
from pathlib import Path
from typing import Any

import openpyxl
import pytest
from openpyxl.utils.datetime import to_excel

from sheetfuncs import cli
from sheetfuncs.formulas.catalogue import CATALOGUE
from sheetfuncs.hosts.script.vba import module_text
from sheetfuncs.workbook.commands.check.check import check_file
from sheetfuncs.workbook.commands.new.new import season_of
from sheetfuncs.workbook.model.editions import EDITIONS
from sheetfuncs.workbook.model.parts import ASK, TELL
from sheetfuncs.workbook.model.rows import Rows
from sheetfuncs.workbook.season import Season
from tests.tools import office
from tests.tools.calc_office import Office
from tests.tools.edits import SMALL
from tests.tools.scripts import basic_module

UNITS = ("US", "metric")
WHOLE = Rows()


pytestmark = pytest.mark.xdist_group("LibreOffice with the add-in")


@pytest.fixture
def plain(plain_office: Office) -> Office:
    office.needed()
    return plain_office


@pytest.fixture
def installed(addin_office: Office) -> Office:
    office.needed()
    return addin_office


@functools.cache
def season(units: str, rows: Rows) -> Season:
    return season_of(units, rows, {}, with_example=True)


def example(where: Office, edition: str, units: str, rows: Rows = WHOLE) -> Path:
    path = where.folder / f"{edition}-{units}-{rows.collections}.xlsx"
    if not path.exists():
        season(units, rows).write(path, edition)
    return path


@functools.cache
def stored(where: Office, units: str, rows: Rows = WHOLE) -> dict[str, dict[str, Any]]:
    """The value stored beside each formula."""
    path = example(where, "inline", units, rows)
    texts, values = openpyxl.load_workbook(path), openpyxl.load_workbook(path, data_only=True)
    return {
        sheet.title: {
            cell.coordinate: as_calc_tells(values[sheet.title][cell.coordinate].value)
            for row in sheet.iter_rows()
            for cell in row
            if cell.data_type == "f"
        }
        for sheet in texts.worksheets
    }


def as_calc_tells(value: Any) -> Any:
    if isinstance(value, str):
        return value
    if isinstance(value, (datetime.datetime, datetime.date, datetime.time)):
        return to_excel(value)
    return "" if value is None else float(value)


def same(one: Any, other: Any) -> bool:
    if isinstance(one, float) and isinstance(other, float):
        return abs(one - other) <= 1e-9 * max(1.0, abs(one))
    return bool(one == other)


def differing(
    where: Office, path: Path, wanted: dict[str, dict[str, Any]], module: str | None = None
) -> list[tuple[Any, ...]]:
    """Where a file computed anew, perhaps with a module of VBA put in, gives something else."""
    with where.calc() as calc:
        calc.open(path, bool(module))
        if module:
            calc.basic({"sheetfuncs": module})
            calc.retype([f"{name}(" for name in CATALOGUE])
        calc.recalculate()
        computed = calc.sheets()
    assert sum(map(len, wanted.values())) > 5000
    assert list(computed) == list(wanted)
    return [
        (sheet, address, value, computed[sheet].get(address))
        for sheet, cells in wanted.items()
        for address, value in cells.items()
        if not same(value, computed[sheet].get(address))
    ]


@pytest.mark.parametrize("units", UNITS)
@pytest.mark.parametrize("edition", ["carried", "linked"])
def test_the_addin_computes_the_season(installed: Office, edition: str, units: str) -> None:
    path = example(installed, edition, units)
    assert differing(installed, path, stored(installed, units)) == []


@pytest.mark.parametrize("units", UNITS)
def test_the_inline_edition_needs_no_addin(plain: Office, units: str) -> None:
    assert differing(plain, example(plain, "inline", units), stored(plain, units)) == []


def test_without_the_addin_the_linked_edition_does_not_compute(plain: Office) -> None:
    found = differing(plain, example(plain, "linked", "US"), stored(plain, "US"))
    assert "#NAME?" in {computed for *_, computed in found}


@pytest.mark.parametrize("units", UNITS)
def test_plain_vba_computes_the_linked_edition(plain: Office, units: str) -> None:
    """Of as many rows as are filled: Basic takes its time, and an empty row is like another."""
    path = example(plain, "linked", units, SMALL)
    assert differing(plain, path, stored(plain, units, SMALL), basic_module(module_text())) == []


@pytest.mark.parametrize("edition", ["carried", "inline", "linked"])
def test_saved_from_calc_the_season_is_the_same(installed: Office, edition: str) -> None:
    """As .xlsx and as .ods.  It writes the carried functions in small letters: check says so, convert mends it."""
    path, wanted = example(installed, edition, "US"), stored(installed, "US")
    kinds = {"xlsx": "Calc MS Excel 2007 XML", "ods": "calc8"}
    saved = {kind: installed.folder / f"{edition}-saved.{kind}" for kind in kinds}
    with installed.calc() as calc:
        calc.open(path)
        for kind, filter_name in kinds.items():
            calc.save(saved[kind], filter_name)
    for file in saved.values():
        assert differing(installed, file, wanted) == []
    assert ("_xlfn.lambda(" in names(saved["xlsx"])) == EDITIONS[edition].named
    said = [remark for remark in check_file(saved["xlsx"]) if "small letters" in remark.sentence]
    assert [remark.weight for remark in said] == {"carried": [ASK], "inline": [TELL], "linked": []}[edition]
    for kind, file in saved.items():
        again = installed.folder / f"{edition}-from-{kind}.xlsx"
        assert cli.main(["convert", str(file), str(again)]) == 0
        assert names(again) == names(path)
        assert not [remark for remark in check_file(again) if remark.weight != TELL]


def names(path: Path) -> str:
    """The part of a workbook that defines its names."""
    with zipfile.ZipFile(path) as archive:
        return archive.read("xl/workbook.xml").decode()
