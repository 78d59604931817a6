"""Workbooks read back: what was typed comes back, whoever saved the file and whatever was moved in it."""

from __future__ import annotations

import datetime
import re
from pathlib import Path

import openpyxl
import pytest

from sheetfuncs.workbook.model.editions import EDITIONS
from sheetfuncs.workbook.model.kinds import DATE, TEXT, TIME, VOLUME
from sheetfuncs.workbook.model.parts import ASK
from sheetfuncs.workbook.read.filled import read
from tests.tools import office
from tests.tools.calc_office import Office
from tests.tools.edits import (
    SMALL,
    Written,
    address,
    example,
    expected,
    faults,
    trimmed,
    typed,
    with_openpyxl,
    with_xml,
)

pytestmark = pytest.mark.xdist_group("LibreOffice")


@pytest.mark.parametrize("system", ["US", "metric"])
@pytest.mark.parametrize("edition", EDITIONS)
def test_everything_typed_comes_back(written: Written, system: str, edition: str) -> None:
    filled = read(written(system, edition))
    assert (filled.system, filled.edition, filled.rows) == (system, edition, SMALL)
    assert trimmed(filled.season.inputs) == expected(system)
    assert [*filled.gone(), *filled.own_cells(), *filled.own_sheets()] == []


@pytest.mark.parametrize("system", ["US", "metric"])
def test_without_its_stamps_a_workbook_still_says_its_units(written: Written, system: str, tmp_path: Path) -> None:
    """A file exported by Google Sheets has no custom properties (from memory; it was not run)."""
    for edition in EDITIONS:
        path = with_xml(
            written(system, edition),
            tmp_path / "a.xlsx",
            {
                "docProps/custom.xml": lambda text: None,
                "[Content_Types].xml": lambda text: re.sub(
                    rb'<Override PartName="/docProps/custom.xml"[^>]*/>', b"", text
                ),
                "_rels/.rels": lambda text: re.sub(rb'<Relationship [^>]*custom.xml"/>', b"", text),
            },
        )
        filled = read(path)
        assert (filled.system, filled.edition) == (system, edition)
        assert trimmed(filled.season.inputs) == expected(system)


@pytest.fixture(scope="module")
def saved_by_calc(written: Written, plain_office: Office) -> dict[str, Path]:
    """The inline edition of both systems and the carried one, loaded and saved by LibreOffice."""
    office.needed()
    found = {}
    for system, edition in (("US", "inline"), ("metric", "inline"), ("US", "carried")):
        copy = plain_office.takes(written(system, edition), f"{system}-{edition}.xlsx")
        for ending in ("xlsx", "ods"):
            found[f"{system}-{edition}-{ending}"] = plain_office.convert(copy, ending)
    return found


@pytest.mark.parametrize("name", ["US-inline-xlsx", "US-inline-ods", "metric-inline-xlsx", "metric-inline-ods"])
def test_saved_by_libreoffice_it_is_read_and_clean(saved_by_calc: dict[str, Path], name: str) -> None:
    """LibreOffice computed every stored value anew; check compares each with ours."""
    filled = read(saved_by_calc[name])
    system = name.partition("-")[0]
    assert (filled.system, filled.edition, filled.rows) == (system, "inline", SMALL)
    assert trimmed(filled.season.inputs) == expected(system)
    assert filled.has_values()
    assert faults(saved_by_calc[name]) == []


@pytest.mark.parametrize("name", ["US-carried-xlsx", "US-carried-ods"])
def test_saved_where_its_functions_are_not_known(saved_by_calc: dict[str, Path], name: str) -> None:
    """Without our add-in LibreOffice does not compute the carried edition, and an .xlsx it writes in small letters."""
    assert trimmed(read(saved_by_calc[name]).season.inputs) == expected("US")
    said = faults(saved_by_calc[name])
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


def test_moved_rows_columns_and_sheets_do_no_harm(written: Written, tmp_path: Path) -> None:
    path = with_openpyxl(written("US", "linked"), tmp_path / "a.xlsx", moved)
    filled = read(path)
    assert list(filled.gone()) == []
    assert trimmed(filled.season.inputs) == expected("US")
    own = {(one.sheet, one.value) for one in filled.own_cells()}
    assert own == {("Collection", "Weather"), ("Collection", "snow")}
    assert filled.own_sheets() == ["Bees"]


@pytest.mark.parametrize(("kind", "ending"), [("Calc MS Excel 2007 XML", "xlsx"), ("calc8", "ods")])
def test_moved_in_libreoffice_everything_still_agrees(
    written: Written, plain_office: Office, kind: str, ending: str
) -> None:
    """LibreOffice adjusts the formulas when rows and columns are put in: what it computes is what we compute."""
    office.needed()
    source = plain_office.takes(written("metric", "inline"), "moved.xlsx")
    made = plain_office.folder / f"was-moved.{ending}"
    with plain_office.calc() as calc:
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
        calc.save(str(made), kind)
    filled = read(made)
    assert list(filled.gone()) == []
    assert trimmed(filled.season.inputs) == expected("metric")
    assert filled.rows == SMALL
    assert faults(made) == []


def test_a_log_may_grow(written: Written, tmp_path: Path) -> None:
    """Rows filled in below the last formulas are read, and check asks for their formulas."""
    season = example()
    last = SMALL.collections

    def edit(book: openpyxl.Workbook) -> None:
        day = {"collection.date": datetime.date(2026, 3, 28), "collection.sap": 2.0, "collection.brix": 1.7}
        for extra in range(1, 4):
            for name, value in day.items():
                book["Collection"][address(season, name, last + extra)[1]] = value
        book["Collection"][address(season, "collection.sap", last + 8)[1]] = "All in all a good year."

    path = with_openpyxl(written("US", "linked"), tmp_path / "a.xlsx", edit)
    filled = read(path)
    assert filled.rows.collections == last + 3
    assert filled.season.inputs["collection.sap"][last:] == [2.0, 2.0, 2.0]
    assert [one.value for one in filled.own_cells()] == ["All in all a good year."]
    lost = [one.cell for one in faults(path) if "lost its formula" in one.sentence and one.sheet == "Collection"]
    assert address(season, "collection.look", last + 1)[1] in lost


def test_text_that_looks_like_a_formula_stays_text(written: Written, tmp_path: Path) -> None:
    words = ["=1+1", "+sap", "-5 at night", "@T3", "=cmd|' /C calc'!A0"]
    season = typed(example(), {("collection.note", row): text for row, text in enumerate(words, 1)})
    season.write(tmp_path / "a.xlsx", "linked")
    assert read(tmp_path / "a.xlsx").season.inputs["collection.note"][: len(words)] == words
    sheet, cell = address(season, "collection.note", 1)
    assert openpyxl.load_workbook(tmp_path / "a.xlsx")[sheet][cell].data_type == "s"


def test_dates_and_times_as_programs_store_them() -> None:
    assert DATE.parse(datetime.datetime(2026, 3, 14)) == datetime.date(2026, 3, 14)
    assert DATE.parse(46095) == datetime.date(2026, 3, 14)  # days since 30 December 1899
    assert DATE.parse(46095.5) == 46095.5  # a time with it: no plain day
    assert TIME.parse(0.6041666666666666) == datetime.time(14, 30)
    assert TIME.parse(datetime.timedelta(hours=14, minutes=30)) == datetime.time(14, 30)
    assert TIME.parse(datetime.timedelta(hours=25)) == pytest.approx(25 / 24)
    assert VOLUME.parse(datetime.datetime(2026, 3, 4)) == 46085
    assert VOLUME.parse(True) == "TRUE"
    assert TEXT.parse(datetime.datetime(2026, 3, 4)) == "2026-03-04"
    assert VOLUME.parse(float("inf")) == "inf"


def test_the_first_days_of_1900_are_those_that_a_spreadsheet_shows(tmp_path: Path) -> None:
    """A cell with 13.25 in it and a time's format: spreadsheets count a 29 February 1900 that never was."""
    typed(example(), {("boil.end", 1): 13.25}).write(tmp_path / "a.xlsx", "linked")
    assert read(tmp_path / "a.xlsx").season.inputs["boil.end"][0] == 13.25


def test_the_fixture_is_what_it_should_be(written: Written) -> None:
    assert faults(written("US", "inline")) == []
