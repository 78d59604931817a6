"""Workbooks read back: what was typed comes back, whoever saved the file and whatever was moved in it."""

from __future__ import annotations

import datetime
import re
import shutil
from pathlib import Path
from typing import Any

import openpyxl
import pytest

from sheetfuncs.workbook.commands.check.check import check_file
from sheetfuncs.workbook.model.kinds import named
from sheetfuncs.workbook.model.kinds import typed as as_typed
from sheetfuncs.workbook.model.parts import ASK, MEND, Rows
from sheetfuncs.workbook.read.filled import Filled
from tests.tools import office
from tests.tools.calc_office import Office, own_folder
from tests.tools.edits import SMALL, address, example, typed, with_openpyxl, with_xml

EDITIONS = ("carried", "inline", "linked")


def trimmed(inputs: dict[str, Any]) -> dict[str, Any]:
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
        name: cell.start for name, cell in named(season.sheets).items() if getattr(cell, "start", None) is not None
    }
    return trimmed(starts | season.inputs)


@pytest.fixture(scope="module")
def files(tmp_path_factory: pytest.TempPathFactory) -> dict[tuple[str, str], Path]:
    folder = tmp_path_factory.mktemp("whole")
    found = {}
    for system in ("US", "metric"):
        season = example(system)
        for edition in EDITIONS:
            found[system, edition] = folder / f"{system}-{edition}.xlsx"
            season.write(found[system, edition], edition)
    return found


@pytest.mark.parametrize("system", ["US", "metric"])
@pytest.mark.parametrize("edition", EDITIONS)
def test_everything_typed_comes_back(files: dict[tuple[str, str], Path], system: str, edition: str) -> None:
    filled = Filled(files[system, edition])
    assert (filled.system, filled.edition, filled.rows) == (system, edition, SMALL)
    assert trimmed(filled.season.inputs) == expected(system)
    assert [*filled.gone(), *filled.own_cells(), *filled.own_sheets()] == []


@pytest.mark.parametrize("system", ["US", "metric"])
def test_without_its_stamps_a_workbook_still_says_its_units(
    files: dict[tuple[str, str], Path], system: str, tmp_path: Path
) -> None:
    """A file exported by Google Sheets has no custom properties (from memory; it was not run)."""
    for edition in EDITIONS:
        path = with_xml(
            files[system, edition],
            tmp_path / "a.xlsx",
            {
                "docProps/custom.xml": lambda text: None,
                "[Content_Types].xml": lambda text: re.sub(
                    rb'<Override PartName="/docProps/custom.xml"[^>]*/>', b"", text
                ),
                "_rels/.rels": lambda text: re.sub(rb'<Relationship [^>]*custom.xml"/>', b"", text),
            },
        )
        filled = Filled(path)
        assert (filled.system, filled.edition) == (system, edition)
        assert trimmed(filled.season.inputs) == expected(system)


@pytest.fixture(scope="module")
def saved_by_calc(files: dict[tuple[str, str], Path], tmp_path_factory: pytest.TempPathFactory) -> dict[str, Path]:
    """The inline edition of both systems and the carried one, loaded and saved by LibreOffice."""
    office.needed()
    folder = tmp_path_factory.mktemp("calc")
    profile = office.new_profile(folder)
    found = {}
    for system, edition in (("US", "inline"), ("metric", "inline"), ("US", "carried")):
        copy = Path(shutil.copy(files[system, edition], folder / f"{system}-{edition}.xlsx"))
        for ending in ("xlsx", "ods"):
            found[f"{system}-{edition}-{ending}"] = office.convert(copy, ending, profile)
    return found


@pytest.mark.parametrize("name", ["US-inline-xlsx", "US-inline-ods", "metric-inline-xlsx", "metric-inline-ods"])
def test_saved_by_libreoffice_it_is_read_and_clean(saved_by_calc: dict[str, Path], name: str) -> None:
    """LibreOffice computed every stored value anew; check compares each with ours."""
    filled = Filled(saved_by_calc[name])
    system = name.partition("-")[0]
    assert (filled.system, filled.edition, filled.rows) == (system, "inline", SMALL)
    assert trimmed(filled.season.inputs) == expected(system)
    assert filled.has_values()
    assert check_file(saved_by_calc[name]) == []


@pytest.mark.parametrize("name", ["US-carried-xlsx", "US-carried-ods"])
def test_saved_where_its_functions_are_not_known(saved_by_calc: dict[str, Path], name: str) -> None:
    """Without our add-in LibreOffice does not compute the carried edition, and an .xlsx it writes in small letters."""
    assert trimmed(Filled(saved_by_calc[name]).season.inputs) == expected("US")
    said = check_file(saved_by_calc[name])
    due = ["in small letters"] * name.endswith("xlsx") + ["does not compute its functions"]
    assert [one.weight for one in said] == [ASK] * len(due)
    assert all(words in one.sentence for one, words in zip(said, due, strict=True))


def moved(book: openpyxl.Workbook) -> None:
    """Sheets in another order and one more; rows and columns put in, as a user does in a spreadsheet.

    openpyxl moves the cells without adjusting formulas: only what is read from the cells counts here.
    """
    book.move_sheet("Guide", -10)
    book.move_sheet("Collection", 5)
    book.create_sheet("Bees", 3)["B2"] = "hives"
    book["Collection"].insert_cols(3)
    book["Collection"]["C4"] = "Weather"
    book["Collection"]["C6"] = "snow"
    book["Collection"].insert_rows(1, 2)
    book["Collection"].insert_rows(10)
    book["Storage"].insert_cols(1)
    book["Yard"].insert_rows(8, 3)
    book["Yard"].insert_cols(2)
    book["Finish"].insert_rows(30)
    book["Weekend"].insert_cols(1, 2)
    book["Boil"].title = "Boil 2026"


def test_moved_rows_columns_and_sheets_do_no_harm(files: dict[tuple[str, str], Path], tmp_path: Path) -> None:
    path = with_openpyxl(files["US", "linked"], tmp_path / "a.xlsx", moved)
    filled = Filled(path)
    assert list(filled.gone()) == []
    assert trimmed(filled.season.inputs) == expected("US")
    own = {(one.sheet, one.value) for one in filled.own_cells()}
    assert own == {("Collection", "Weather"), ("Collection", "snow")}
    assert filled.own_sheets() == ["Bees"]


@pytest.mark.parametrize(("kind", "ending"), [("Calc MS Excel 2007 XML", "xlsx"), ("calc8", "ods")])
def test_moved_in_libreoffice_everything_still_agrees(
    files: dict[tuple[str, str], Path], kind: str, ending: str
) -> None:
    """LibreOffice adjusts the formulas when rows and columns are put in: what it computes is what we compute."""
    office.needed()
    with own_folder() as folder:
        host = Office(folder)
        source = Path(shutil.copy(files["metric", "inline"], folder / "a.xlsx"))
        source.chmod(0o644)
        with host.calc() as calc:
            calc.open(str(source))
            numbers = {title: number for number, title in enumerate(sheet.title for sheet in example().sheets)}
            calc.insert("Rows", 8, 1, numbers["Collection"])  # inside the log
            calc.insert("Columns", 2, 1, numbers["Collection"])
            calc.insert("Rows", 1, 2, numbers["Storage"])  # above everything
            calc.insert("Columns", 0, 1, numbers["Boil"])
            calc.insert("Rows", 10, 1, numbers["Yard"])  # among the labels
            calc.insert("Columns", 1, 1, numbers["Yard"])  # between labels and cells
            calc.insert("Columns", 1, 2, numbers["Season"])
            calc.insert("Sheet", 3, 1)
            calc.recalculate()
            calc.save(str(folder / f"b.{ending}"), kind)
        filled = Filled(folder / f"b.{ending}")
        assert list(filled.gone()) == []
        assert trimmed(filled.season.inputs) == expected("metric")
        assert filled.rows == SMALL
        assert check_file(folder / f"b.{ending}") == []


def test_a_log_may_grow(files: dict[tuple[str, str], Path], tmp_path: Path) -> None:
    """Rows filled in below the last formulas are read, and check asks for their formulas."""

    def edit(book: openpyxl.Workbook) -> None:
        for extra in range(3):
            row = SMALL.collections + 5 + extra
            book["Collection"].cell(row, 1, datetime.date(2026, 3, 28))
            book["Collection"].cell(row, 3, 2.0)
            book["Collection"].cell(row, 4, 1.7)
        book["Collection"].cell(SMALL.collections + 12, 2, "All in all a good year.")

    filled = Filled(with_openpyxl(files["US", "linked"], tmp_path / "a.xlsx", edit))
    assert filled.rows.collections == SMALL.collections + 3
    assert filled.season.inputs["collection.sap"][-3:] == [2.0, 2.0, 2.0]
    assert [one.value for one in filled.own_cells()] == ["All in all a good year."]


def test_text_that_looks_like_a_formula_stays_text(files: dict[tuple[str, str], Path], tmp_path: Path) -> None:
    words = ["=1+1", "+sap", "-5 at night", "@T3", "=cmd|' /C calc'!A0"]
    season = typed(example(), {("collection.note", row): text for row, text in enumerate(words, 1)})
    season.write(tmp_path / "a.xlsx", "linked")
    assert Filled(tmp_path / "a.xlsx").season.inputs["collection.note"][: len(words)] == words
    sheet, cell = address(season, "collection.note", 1)
    assert openpyxl.load_workbook(tmp_path / "a.xlsx")[sheet][cell].data_type == "s"


def test_dates_and_times_as_programs_store_them() -> None:
    assert as_typed("date", datetime.datetime(2026, 3, 14)) == datetime.date(2026, 3, 14)
    assert as_typed("date", 46095) == datetime.date(2026, 3, 14)  # days since 30 December 1899
    assert as_typed("date", 46095.5) == 46095.5  # a time with it: no plain day
    assert as_typed("time", 0.6041666666666666) == datetime.time(14, 30)
    assert as_typed("time", datetime.timedelta(hours=14, minutes=30)) == datetime.time(14, 30)
    assert as_typed("time", datetime.timedelta(hours=25)) == pytest.approx(25 / 24)
    assert as_typed("volume", datetime.datetime(2026, 3, 4)) == 46085
    assert as_typed("volume", True) == "TRUE"
    assert as_typed("text", datetime.datetime(2026, 3, 4)) == "2026-03-04"
    assert as_typed("volume", float("inf")) == "inf"


def test_the_first_days_of_1900_are_those_that_a_spreadsheet_shows(tmp_path: Path) -> None:
    """A cell with 13.25 in it and a time's format: spreadsheets count a 29 February 1900 that never was."""
    typed(example(), {("boil.end", 1): 13.25}).write(tmp_path / "a.xlsx", "linked")
    assert Filled(tmp_path / "a.xlsx").season.inputs["boil.end"][0] == 13.25


def test_the_fixture_is_what_it_should_be(files: dict[tuple[str, str], Path]) -> None:
    assert not [one for one in check_file(files["US", "inline"]) if one.weight in (MEND, ASK)]
