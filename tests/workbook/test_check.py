"""What `sheetfuncs check` says of a season: each sentence provoked by one edit of the example."""

from __future__ import annotations

import datetime
import hashlib
import json
import shutil
from pathlib import Path
from typing import Any

import openpyxl
import pytest

from sheetfuncs import __version__, cli
from sheetfuncs.hosts.excel import live
from sheetfuncs.workbook.commands.check.check import check_file
from sheetfuncs.workbook.commands.check.stored import PROBE
from sheetfuncs.workbook.commands.check.typed import Remark
from sheetfuncs.workbook.model.parts import ASK, MEND, TELL
from sheetfuncs.workbook.model.rows import Rows
from sheetfuncs.workbook.season import Season
from tests.tools import cases
from tests.tools.edits import SMALL, Name, address, example, in_cell, part_of, quickly, typed, with_openpyxl, with_xml

EDITIONS = ("carried", "inline", "linked")
day = datetime.date
clock = datetime.time

# Edits of what no row sees, or sees less well, and all that is said of each: weight, cell and words.
EDITS: list[tuple[dict[Name, Any], list[tuple[str, Name, str]]]] = [
    ({("run.reading", 5): 40.0}, [(MEND, ("run.reading", 5), "Reading must be")]),
    ({"yard.elevation": "650 ft"}, [(MEND, "yard.elevation", "Elevation above the sea is text")]),
    ({"know.target": 20.0}, [(MEND, "know.target", "Syrup target must be 60 to 72 °Brix.")]),
    ({"yard.fuel": "hay"}, [(MEND, "yard.fuel", "Fuel: 'hay' is none of hardwood")]),
    ({("collection.into", 3): "bin 9"}, [(ASK, ("collection.into", 3), "Yard has no place of this name")]),
    ({("boil.start", 1): "noon"}, [(MEND, ("boil.start", 1), "is text: type it as 2:30 PM.")]),
    ({("boil.end", 1): 13.25}, [(MEND, ("boil.end", 1), "is no time of day: type it as 2:30 PM.")]),
    ({("collection.date", 3): -3.0}, [(MEND, ("collection.date", 3), "is no day from 2000 to 2099")]),
    ({("collection.date", 1): day(1926, 2, 24)}, [(MEND, ("collection.date", 1), "is no day from 2000 to 2099")]),
    ({("bottles.date", 3): day(2026, 9, 30)}, [(ASK, ("bottles.date", 3), "outside the season 2026")]),
    ({("collection.sap", 14): -4.0}, [(MEND, ("collection.sap", 14), "must be 0 to")]),
    ({("collection.brix", 3): 99.0}, [(MEND, ("collection.brix", 3), "must be 0 to 85 °Brix.")]),
    ({("collection.date", 14): "last Friday"}, [(MEND, ("collection.date", 14), "Date is text")]),
    ({("trees.girth", 1): "62 in"}, [(MEND, ("trees.girth", 1), "Girth at breast height is text")]),
    ({("weather.low", 1): 50.0}, [(MEND, ("weather.low", 1), "swapped?")]),
    ({("bottles.at", 1): 150.0}, [(ASK, ("bottles.at", 1), "too cool to seal safely")]),
]  # fmt: skip


@pytest.fixture(scope="module")
def unedited(tmp_path_factory: pytest.TempPathFactory) -> list[Remark]:
    return check_file(quickly(example(), tmp_path_factory.mktemp("unedited") / "season.xlsx"))


@pytest.mark.parametrize(("edits", "due"), EDITS, ids=[due[0][2] for _, due in EDITS])
def test_an_edit_is_noticed(
    edits: dict[Name, Any], due: list[tuple[str, Name, str]], unedited: list[Remark], tmp_path: Path
) -> None:
    """What must be mended, or looked at, is said once, of its cell; nothing is said of another."""
    season = typed(example(), edits)
    remarks = check_file(quickly(season, tmp_path / "season.xlsx"))
    new = [one for one in remarks if one not in unedited and one.weight != TELL]
    places = [(weight, *address(season, *((place,) if isinstance(place, str) else place))) for weight, place, _ in due]
    assert [one[:3] for one in new] == places, new
    assert all(words in one.sentence for one, (_, _, words) in zip(new, due, strict=True)), new


@pytest.mark.parametrize("one", cases.provoked()[::7], ids=lambda one: one.sentence[:40])
def test_check_says_what_a_row_says(one: cases.Provoked, tmp_path: Path) -> None:
    """A sample: that each row says its sentence is tested with the sheets."""
    season = Season(one.units, cases.inputs(one.case, one.units, one.typed), cases.ROWS)
    remarks = check_file(quickly(season, tmp_path / "season.xlsx"), season.today)
    where = address(season, one.cell, one.row)
    said = [remark.sentence for remark in remarks if (remark.weight, remark.sheet, remark.cell) == (one.weight, *where)]
    assert any(one.sentence in sentence for sentence in said), (said, remarks)


@pytest.fixture(scope="module")
def whole(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The example, small, in the carried edition."""
    path = tmp_path_factory.mktemp("whole") / "season.xlsx"
    example().write(path, "carried")
    return path


@pytest.mark.parametrize("system", ["US", "metric"])
@pytest.mark.parametrize("edition", EDITIONS)
def test_the_example_is_clean(edition: str, system: str, tmp_path: Path) -> None:
    path = tmp_path / "season.xlsx"
    example(system, Rows()).write(path, edition)
    assert {one.weight for one in check_file(path)} <= {TELL}


@pytest.mark.parametrize("system", ["US", "metric"])
def test_an_empty_workbook_is_clean(system: str, tmp_path: Path) -> None:
    path = tmp_path / "season.xlsx"
    Season(system, {}, today=day(2026, 1, 1)).write(path)
    assert check_file(path) == []


def one_remark(path: Path, words: str) -> Remark:
    found = [one for one in check_file(path) if words in one.sentence]
    assert len(found) == 1, check_file(path)
    return found[0]


def test_a_number_typed_over_a_formula(whole: Path, tmp_path: Path) -> None:
    sheet, cell = address(example(), "collection.syrup", 4)
    edit = in_cell(cell, rb"<f.*?</f><v>.*?</v>", b"<v>0.5</v>")
    path = with_xml(whole, tmp_path / "a.xlsx", {part_of(example(), sheet): edit})
    assert one_remark(path, "was typed over")[:3] == (MEND, sheet, cell)


@pytest.mark.parametrize(("name", "row"), [("collection.syrup", 4), ("waiting.lot", 9)])
def test_a_formula_that_was_cleared(name: str, row: int, whole: Path, tmp_path: Path) -> None:
    """In a row of a log that is used, and in any row of a table where nothing is typed."""
    sheet, cell = address(example(), name, row)
    edit = in_cell(cell, rb"<f.*?</f><v>.*?</v>", b"")
    path = with_xml(whole, tmp_path / "a.xlsx", {part_of(example(), sheet): edit})
    assert one_remark(path, "has lost its formula")[:3] == (MEND, sheet, cell)


def test_a_formula_whose_cells_were_deleted(whole: Path, tmp_path: Path) -> None:
    sheet, cell = address(example(), "season.sap")
    edit = in_cell(cell, rb"<f>.*?</f>", b"<f>SUM(#REF!)</f>")
    path = with_xml(whole, tmp_path / "a.xlsx", {part_of(example(), sheet): edit})
    assert one_remark(path, "were deleted")[:3] == (MEND, sheet, cell)


def test_a_stored_value_that_differs(whole: Path, tmp_path: Path) -> None:
    sheet, cell = address(example(), "season.sap")
    edit = in_cell(cell, rb"<v>.*?</v>", b"<v>116</v>")
    path = with_xml(whole, tmp_path / "a.xlsx", {part_of(example(), sheet): edit})
    assert one_remark(path, "Sap collected shows 116, should be 117") == (
        ASK, sheet, cell, "A stored value differs from what the sheet gives: Sap collected shows 116, should be 117."
    )  # fmt: skip


def test_stored_values_are_those_of_the_day_of_saving(tmp_path: Path) -> None:
    """Where Today follows the calendar, ages differ on another day, and nobody is to blame."""
    season = example()
    del season.inputs["weekend.today"]
    season.today = day(2026, 3, 28)
    season.write(tmp_path / "a.xlsx")
    said = check_file(tmp_path / "a.xlsx", today=day(2026, 3, 29))
    assert not [one for one in said if "stored value" in one.sentence]
    late = check_file(tmp_path / "a.xlsx", today=day(2026, 7, 1))
    assert not [one for one in late if "stored value" in one.sentence]


def test_a_damaged_function_is_named(whole: Path, tmp_path: Path) -> None:
    edits = {"xl/workbook.xml": lambda text: text.replace(b"0.304799999", b"0.404799999")}
    path = with_xml(whole, tmp_path / "a.xlsx", edits)
    assert one_remark(path, "TAP_COUNT was damaged").weight == MEND


def test_a_lost_function_is_named(whole: Path, tmp_path: Path) -> None:
    def edit(book: openpyxl.Workbook) -> None:
        del book.defined_names["JAR_REST"]

    path = with_openpyxl(whole, tmp_path / "a.xlsx", edit)
    assert one_remark(path, "JAR_REST is gone").weight == MEND


def test_functions_of_another_version_are_not_called_damaged(whole: Path, tmp_path: Path) -> None:
    edits = {
        "xl/workbook.xml": lambda text: text.replace(b"0.304799999", b"0.404799999"),
        "docProps/custom.xml": lambda text: text.replace(__version__.encode(), b"0.0.9"),
    }
    path = with_xml(whole, tmp_path / "a.xlsx", edits)
    assert one_remark(path, "is older or not there yet, from version 0.0.9").weight == TELL


def test_a_date_in_a_number_cell(whole: Path, tmp_path: Path) -> None:
    sheet, cell = address(example(), "collection.sap", 3)

    def edit(book: openpyxl.Workbook) -> None:
        book[sheet][cell] = datetime.datetime(2026, 3, 4)

    path = with_openpyxl(whole, tmp_path / "a.xlsx", edit)
    assert one_remark(path, "did a fraction such as 3/4 turn into one?")[:3] == (MEND, sheet, cell)


def test_no_stored_values_is_worth_knowing(whole: Path, tmp_path: Path) -> None:
    path = with_openpyxl(whole, tmp_path / "a.xlsx", lambda book: None)
    assert one_remark(path, "No values are stored: previews show empty cells").weight == TELL
    assert {one.weight for one in check_file(path)} == {TELL}


def test_formulas_in_typed_cells(whole: Path, tmp_path: Path) -> None:
    sheet, first = address(example(), "collection.sap", 3)
    _, second = address(example(), "collection.sap", 4)
    part = part_of(example(), sheet)
    with_value = in_cell(first, rb"<v>.*?</v>", b"<f>2+2</f><v>4</v>")
    without = in_cell(second, rb"<v>.*?</v>", b"<f>2+2</f>")
    path = with_xml(whole, tmp_path / "a.xlsx", {part: lambda text: without(with_value(text))})
    assert one_remark(path, "its value is taken")[:3] == (TELL, sheet, first)
    assert one_remark(path, "without its value")[:3] == (MEND, sheet, second)


def test_a_row_that_was_put_in_without_formulas(whole: Path, tmp_path: Path) -> None:
    def edit(book: openpyxl.Workbook) -> None:
        row = SMALL.collections + 5
        for column, value in enumerate((datetime.date(2026, 3, 28), None, 3.0, 1.8), 1):
            book["Collection"].cell(row, column, value)

    path = with_openpyxl(whole, tmp_path / "a.xlsx", edit)
    said = [one for one in check_file(path) if "has lost its formula" in one.sentence]
    assert {one.weight for one in said} == {MEND}
    assert {one.sheet for one in said} == {"Collection"}


def test_a_sheet_a_heading_and_a_label_that_are_gone(whole: Path, tmp_path: Path) -> None:
    def edit(book: openpyxl.Workbook) -> None:
        del book["Bottles"]
        book["Collection"]["B4"] = "How much"
        book["Yard"]["A6"] = "Who"

    said = check_file(with_openpyxl(whole, tmp_path / "a.xlsx", edit))
    mend = [(one.sheet, one.sentence) for one in said if one.weight == MEND]
    assert ("Bottles", "This sheet is not there: was it renamed or deleted?") in mend
    assert ("Collection", "The heading 'Sap kept, gal' is not there: its column is not read.") in mend
    assert any(sheet == "Yard" and sentence.startswith("The label") for sheet, sentence in mend)


def test_a_heading_with_another_unit(whole: Path, tmp_path: Path) -> None:
    def edit(book: openpyxl.Workbook) -> None:
        book["Collection"]["B4"] = "Sap kept, L"

    path = with_openpyxl(whole, tmp_path / "a.xlsx", edit)
    assert one_remark(path, "are its numbers in the workbook's units?")[:3] == (MEND, "Collection", "B4")


def test_own_cells_and_sheets_are_told(whole: Path, tmp_path: Path) -> None:
    def edit(book: openpyxl.Workbook) -> None:
        book.create_sheet("Bees")["A1"] = "hives"
        book["Collection"]["AT4"] = "Weather"
        book["Collection"]["AT5"] = "snow"

    said = check_file(with_openpyxl(whole, tmp_path / "a.xlsx", edit))
    told = {(one.sheet, one.cell): one.sentence for one in said if one.weight == TELL}
    assert told["Collection", "AT4"].startswith("2 cells of your own")
    assert told["Bees", ""].startswith("A sheet of your own")


def test_a_program_that_does_not_compute_the_functions(whole: Path, tmp_path: Path) -> None:
    sheet, cell = address(example(), PROBE)
    edit = in_cell(cell, rb"<v>.*?</v>", b"<v>0</v>")
    path = with_xml(whole, tmp_path / "a.xlsx", {part_of(example(), sheet): edit})
    assert one_remark(path, "does not compute its functions")[:3] == (ASK, sheet, cell)


def test_the_command_prints_and_returns(whole: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert cli.main(["check", str(whole)]) == 0
    out = capsys.readouterr().out
    assert out.startswith("For your information\n  Yard!B20 ")
    assert out.endswith("\n\n0 to mend, 0 to look at, 5 to know.\n")
    season = typed(example(), {("collection.sap", 3): "9 1/2 gal", ("collection.brix", 4): 24.0})
    season.write(tmp_path / "a.xlsx", "inline")
    assert cli.main(["check", str(tmp_path / "a.xlsx")]) == 1
    said = [" ".join(line.split()) for line in capsys.readouterr().out.splitlines()]
    assert said[:3] == [
        "Must be mended",
        "Collection!B7 Sap kept is text, not a number: type the number alone.",
        # what follows from a row that does not count: less went into that boil than came out
        "Boil!D6 So little cannot hold all that sugar: how much came out?",
    ]
    assert said[4:6] == ["Look at it", "Collection!E8 Over 10 °Brix: is this sap?"]
    assert said[-1] == "2 to mend, 2 to look at, 4 to know."
    assert cli.main(["check", str(tmp_path / "a.xlsx"), "--json"]) == 1
    told = json.loads(capsys.readouterr().out)
    assert (told["units"], told["edition"]) == ("US", "inline")
    assert told["remarks"][0] == {
        "weight": "must be mended",
        "sheet": "Collection",
        "cell": "B7",
        "sentence": "Sap kept is text, not a number: type the number alone.",
    }


def test_doubts_alone_do_not_fail(tmp_path: Path) -> None:
    typed(example(), {("collection.brix", 14): 12.0}).write(tmp_path / "a.xlsx", "inline")
    assert cli.main(["check", str(tmp_path / "a.xlsx")]) == 0


def test_the_file_is_only_read(whole: Path) -> None:
    before = hashlib.sha256(whole.read_bytes()).hexdigest(), whole.stat().st_mtime_ns
    whole.chmod(0o444)
    check_file(whole)
    assert (hashlib.sha256(whole.read_bytes()).hexdigest(), whole.stat().st_mtime_ns) == before


def test_a_file_or_the_open_workbook_but_not_both(whole: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert cli.main(["check"]) == cli.main(["check", str(whole), "--open"]) == 2
    assert capsys.readouterr().err.count("give the file of a workbook, or --open") == 2


def test_the_workbook_open_in_excel_is_checked_from_a_copy(
    whole: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    def copied(folder: Path) -> Path:
        return Path(shutil.copy(whole, folder / "copy.xlsx"))

    monkeypatch.setattr(live, "open_workbook_copy", copied)
    assert cli.main(["check", "--open"]) == 0
    assert capsys.readouterr().out.endswith("\n0 to mend, 0 to look at, 5 to know.\n")
