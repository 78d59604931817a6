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
from sheetfuncs.workbook.commands.check.typed import Remark
from sheetfuncs.workbook.model.parts import ASK, MEND, TELL, Rows
from sheetfuncs.workbook.season import Season
from tests.tools.edits import SMALL, Name, address, example, in_cell, part_of, quickly, typed, with_openpyxl, with_xml

EDITIONS = ("carried", "inline", "linked")
day = datetime.date
clock = datetime.time

# Edits, and what must be said of them: weight, the cell it is said of, and words of the sentence.
EDITS: list[tuple[dict[Name, Any], str, Name, str]] = [
    ({("thermometers.water", 1): "211 F"}, MEND, ("thermometers.water", 1), "The water reading is text"),
    ({("thermometers.read_on", 1): "today"}, MEND, ("thermometers.read_on", 1), "The date is text"),
    ({("thermometers.water", 1): 202.0}, ASK, ("thermometers.look", 1), "Far from where water boils"),
    ({("thermometers.read_on", 1): day(2026, 3, 1)}, TELL, ("thermometers.water", 1), "Not from today"),
    ({("containers.holds", 1): "20 gal"}, MEND, ("containers.holds", 1), "What it holds is text"),
    ({("containers.name", 2): "snow bin 1"}, MEND, ("containers.name", 1), "Two containers have this name."),
    ({("containers.holds", 2): 9.0}, ASK, ("containers.holds", 2), "Holds more than it can."),
    ({("trees.girth", 1): "62 in"}, MEND, ("trees.girth", 1), "Girth is text"),
    ({("trees.taps", 1): "two"}, MEND, ("trees.taps", 1), "Taps is text"),
    ({("trees.taps", 6): 3.0}, ASK, ("trees.taps", 6), "More taps than it can bear."),
    ({("trees.pulled", 1): day(2026, 1, 5)}, MEND, ("trees.pulled", 1), "Pulled before it was tapped."),
    ({("forecast.low", 1): "26 F"}, MEND, ("forecast.low", 1), "The low is text"),
    ({("forecast.high", 1): "44 F"}, MEND, ("forecast.high", 1), "The high is text"),
    ({("forecast.low", 1): 50.0}, MEND, ("forecast.low", 1), "swapped?"),
    ({("collection.date", 3): "last Friday"}, MEND, ("collection.date", 3), "The date is text"),
    ({("collection.sap", 3): "9 1/2 gal"}, MEND, ("collection.sap", 3), "Sap is text"),
    ({("collection.brix", 3): "2,1 %"}, MEND, ("collection.brix", 3), "Sugar is text"),
    ({("collection.warmth", 3): "cold"}, MEND, ("collection.warmth", 3), "refractometer's temperature is text"),
    ({("collection.ice", 3): "a quarter"}, MEND, ("collection.ice", 3), "The share of ice is text"),
    ({("collection.date", 3): None}, MEND, ("collection.date", 3), "When was it collected?"),
    ({("collection.sap", 3): -4.0}, MEND, ("collection.sap", 3), "less than nothing"),
    ({("collection.brix", 3): 99.0}, MEND, ("collection.brix", 3), "°Brix must be 0 to 85."),
    ({("collection.brix", 3): None}, ASK, ("collection.sap", 3), "counted without its sugar"),
    ({("collection.sap", 3): None}, MEND, ("collection.brix", 3), "How much was it?"),
    ({("collection.brix", 3): 24.0}, ASK, ("collection.brix", 3), "Sugar over 10 °Brix: is this sap?"),
    ({("collection.brix", 3): 0.2}, ASK, ("collection.brix", 3), "Hardly any sugar"),
    ({("collection.date", 15): day(2026, 4, 7)}, ASK, ("collection.date", 15), "still to come"),
    ({("collection.date", 3): day(2026, 2, 25)}, ASK, ("collection.date", 3), "Earlier than the row above."),
    ({("collection.sap", 3): 9.0}, ASK, ("collection.container", 3), "More than this container holds."),
    ({"yard.atc": "no"}, ASK, ("collection.brix", 3), "the reading is not corrected"),
    ({"yard.atc": "no", ("collection.warmth", 3): 30.0}, MEND, ("collection.brix", 3), "too cold or too warm"),
    ({("collection.ice", 3): 0.6}, TELL, ("collection.ice", 3), "Over half thrown out as ice"),
    ({("collection.ice_brix", 3): None}, TELL, ("collection.ice", 3), "Sugar in the ice is not known"),
    ({("storage.put", 3): "Monday"}, MEND, ("storage.put", 3), "The date is text"),
    ({("storage.used", 3): "Monday"}, MEND, ("storage.used", 3), "The date is text"),
    ({("storage.heated", 3): "Monday"}, MEND, ("storage.heated", 3), "The date is text"),
    ({("storage.volume", 18): "10 gal"}, MEND, ("storage.volume", 18), "Volume is text"),
    ({("storage.brix", 18): "sweet"}, MEND, ("storage.brix", 18), "Sugar is text"),
    ({("storage.lot", 18): None}, MEND, ("storage.lot", 18), "Give this lot a name."),
    ({("storage.lot", 19): "S12"}, MEND, ("storage.lot", 18), "Two lots have this name."),
    ({("storage.volume", 18): -1.0}, MEND, ("storage.volume", 18), "less than nothing"),
    ({("storage.brix", 18): 86.0}, MEND, ("storage.brix", 18), "°Brix must be 0 to 85."),
    ({("storage.brix", 18): None}, ASK, ("storage.volume", 18), "its sugar is not counted"),
    ({("boil.lot_c", 4): "S5"}, MEND, ("storage.lot", 7), "This lot went into two boils."),
    ({("storage.meant", 4): 3.0}, MEND, ("storage.lot", 4), "it can only be used once"),
    ({("storage.used", 4): day(2026, 3, 1)}, MEND, ("storage.used", 4), "Used before it was put in."),
    ({("storage.used", 4): None}, ASK, ("storage.lot", 4), "write the day under Used on."),
    ({("storage.used", 3): None}, ASK, ("storage.meant", 3), "Its batch is bottled"),
    ({("storage.meant", 3): None}, ASK, ("storage.lot", 3), "no boil names it and it has no batch"),
    ({("storage.volume", 18): 40.0}, ASK, ("storage.container", 18), "This container holds more than it can."),
    ({("storage.brix", 18): 30.0}, ASK, ("storage.what", 18), "is this part-boiled?"),
    ({("storage.put", 18): day(2026, 3, 10)}, ASK, ("storage.look", 18), "Past its time"),
    ({("storage.put", 18): day(2026, 3, 19)}, ASK, ("storage.look", 18), "Boil it today"),
    ({("boil.date", 1): "Saturday"}, MEND, ("boil.date", 1), "The date is text"),
    ({("boil.left", 1): "a jar"}, MEND, ("boil.left", 1), "Volume at the end is text"),
    ({("boil.sap", 1): "some"}, MEND, ("boil.sap", 1), "Fresh sap is text"),
    ({("boil.reading", 1): "hot"}, MEND, ("boil.reading", 1), "The boiling reading is text"),
    ({("boil.date", 1): None}, MEND, ("boil.date", 1), "When was it?"),
    ({("boil.lot_b", 1): "S44"}, MEND, ("boil.lot_b", 1), "A lot here is not in Storage"),
    ({("boil.lot_c", 1): "S2"}, MEND, ("boil.lot_a", 1), "A lot is named twice in this row."),
    ({("boil.sap", 1): 1.0, ("boil.sap_brix", 1): 90.0}, MEND, ("boil.sap_brix", 1), "must be 0 to 85"),
    ({("boil.left_brix", 1): 90.0}, MEND, ("boil.left_brix", 1), "must be 0 to 85"),
    ({("boil.sap", 1): 1.0}, ASK, ("boil.sap", 1), "No °Brix for the fresh sap"),
    ({("boil.end", 1): clock(7, 20)}, MEND, ("boil.start", 1), "It ends before it starts"),
    ({("boil.reading", 1): 209.0}, MEND, ("boil.reading", 1), "It cannot boil colder than water"),
    ({("boil.left", 1): 40.0}, MEND, ("boil.left", 1), "More came out than went in"),
    ({("boil.left", 1): 1.6}, ASK, ("boil.look", 1), "Sugar was gained"),
    ({("boil.left", 1): 0.7}, ASK, ("boil.look", 1), "Over a tenth of the sugar is gone"),
    ({("boil.reading", 1): 214.0}, ASK, ("boil.look", 1), "Strength by reading and by volume disagree"),
    ({("boil.left", 1): None}, ASK, ("boil.left", 1), "How much was left at the end?"),
    ({("pans.depth", 2): 0.2}, ASK, "batch1.fits", "Over the rim"),
    ({"batch2.pan": "big pan"}, ASK, "batch2.fits", "Too shallow at the end"),
    ({("readings1.time", 5): "ten to four"}, MEND, ("readings1.time", 5), "Time is text"),
    ({("readings1.reading", 5): "214 F"}, MEND, ("readings1.reading", 5), "The reading is text"),
    ({("readings1.time", 5): clock(9, 0)}, MEND, ("readings1.time", 5), "Time runs backwards"),
    ({("readings1.reading", 5): 200.0}, ASK, ("readings1.reading", 5), "Not boiling yet"),
    ({("bottles.date", 1): "Sunday"}, MEND, ("bottles.date", 1), "The date is text"),
    ({("bottles.volume", 1): "1 gal"}, MEND, ("bottles.volume", 1), "Volume is text"),
    ({("bottles.brix", 1): "67 B"}, MEND, ("bottles.brix", 1), "Sugar is text"),
    ({("bottles.filled", 1): "eight"}, MEND, ("bottles.filled", 1), "Jars filled is text"),
    ({("bottles.brix", 1): 670.0}, MEND, ("bottles.brix", 1), "°Brix must be 0 to 85."),
    ({("bottles.brix", 1): None}, ASK, ("bottles.volume", 1), "its sugar is not counted"),
    ({("bottles.brix", 1): 64.0}, ASK, ("bottles.brix", 1), "Thin: it can ferment"),
    ({("bottles.brix", 1): 70.0}, ASK, ("bottles.brix", 1), "Thick: it will crystallise"),
    ({("bottles.at", 1): 150.0}, ASK, ("bottles.at", 1), "too cool to seal safely"),
    ({("bottles.at", 1): 205.0}, ASK, ("bottles.at", 1), "new sugar sand clouds it"),
    ({("bottles.filled", 1): 12.0}, ASK, ("bottles.filled", 1), "More jars than the volume fills."),
    ({("bottles.volume", 2): 1.3}, ASK, ("bottles.look", 2), "Over a tenth more than the batch held"),
    # What no Look cell can see.
    ({("readings1.reading", 5): 40.0}, MEND, ("readings1.reading", 5), "Thermometer, °F is 40; it must be 150 to 300."),
    ({"yard.elevation": "650 ft"}, MEND, "yard.elevation", "Elevation above the sea is text"),
    ({"yard.target": 20.0}, MEND, "yard.target", "Syrup target is 20; it must be 60 to 72."),
    ({"yard.fuel": "hay"}, MEND, "yard.fuel", "Fuel: 'hay' is none of hardwood"),
    ({("storage.meant", 3): 9.0}, MEND, ("storage.meant", 3), "For batch: 9.0 is none of 1, 2, 3."),
    ({("collection.container", 3): "bin 9"}, ASK, ("collection.container", 3), "'bin 9' is not in the list"),
    ({("boil.start", 1): "noon"}, MEND, ("boil.start", 1), "Time is text"),
    ({("boil.end", 1): 13.25}, MEND, ("boil.end", 1), "13.25 is no time of day."),
    ({("collection.date", 3): -3.0}, MEND, ("collection.date", 3), "-3 is no day: type a date."),
    ({("collection.date", 3): day(1926, 2, 27)}, MEND, ("collection.date", 3), "outside the season 2026"),
    ({("boil.date", 1): day(2025, 2, 28)}, MEND, ("boil.date", 1), "outside the season 2026"),
    ({("bottles.date", 3): day(2026, 9, 30)}, ASK, ("bottles.date", 3), "outside the season 2026"),
    ({"check1.shows": 50.0}, ASK, "check1.shows", "the hydrometer"),
    ({("bottles.batch", 2): None, ("bottles.batch", 3): None}, ASK, "check2.state", "not bottled yet: mend it first"),
]  # fmt: skip


@pytest.mark.parametrize(("edits", "weight", "place", "words"), EDITS, ids=[words for _, _, _, words in EDITS])
def test_an_edit_is_noticed(edits: dict[Name, Any], weight: str, place: Name, words: str, tmp_path: Path) -> None:
    season = typed(example(), edits)
    remarks = check_file(quickly(season, tmp_path / "season.xlsx"))
    where = address(season, *((place,) if isinstance(place, str) else place))
    found = [one for one in remarks if (one.sheet, one.cell) == where and words in one.sentence]
    assert [one.weight for one in found] == [weight], remarks


def test_every_sentence_of_the_sheets_is_provoked_above() -> None:
    cells = example().cells
    sentences = {
        (name.rpartition(".")[0].rstrip("123"), finding.sentence)
        for name, what in cells.items()
        for finding in what.findings
    }
    provoked = {
        (table, sentence)
        for _, _, place, words in EDITS
        for table, sentence in sentences
        if words in sentence and (place if isinstance(place, str) else place[0]).startswith(table)
    }
    assert sentences - provoked == set()


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
    assert check_file(path) == []


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


def test_a_formula_that_was_cleared(whole: Path, tmp_path: Path) -> None:
    sheet, cell = address(example(), "storage.syrup", 4)
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
    assert [one.sentence for one in late if one.sentence.startswith("Past its time")]


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
    assert one_remark(path, "are those of version 0.0.9").weight == TELL


def test_a_date_in_a_number_cell(whole: Path, tmp_path: Path) -> None:
    sheet, cell = address(example(), "collection.sap", 3)

    def edit(book: openpyxl.Workbook) -> None:
        book[sheet][cell] = datetime.datetime(2026, 3, 4)

    path = with_openpyxl(whole, tmp_path / "a.xlsx", edit)
    assert one_remark(path, "did a fraction such as 3/4 turn into one?")[:3] == (MEND, sheet, cell)


def test_no_stored_values_is_worth_knowing(whole: Path, tmp_path: Path) -> None:
    path = with_openpyxl(whole, tmp_path / "a.xlsx", lambda book: None)
    assert [(one.weight, one.sentence[:23]) for one in check_file(path)] == [(TELL, "No values are stored: p")]


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
        book["Collection"]["C4"] = "How much"
        book["Yard"]["A6"] = "Who"

    said = check_file(with_openpyxl(whole, tmp_path / "a.xlsx", edit))
    mend = [(one.sheet, one.sentence) for one in said if one.weight == MEND]
    assert ("Bottles", "This sheet is not there: was it renamed or deleted?") in mend
    assert ("Collection", "The heading 'Sap kept, gal' is not there: its column is not read.") in mend
    assert any(sheet == "Yard" and sentence.startswith("The label") for sheet, sentence in mend)


def test_a_heading_with_another_unit(whole: Path, tmp_path: Path) -> None:
    def edit(book: openpyxl.Workbook) -> None:
        book["Collection"]["C4"] = "Sap kept, L"

    path = with_openpyxl(whole, tmp_path / "a.xlsx", edit)
    assert one_remark(path, "are its numbers in the workbook's units?")[:3] == (MEND, "Collection", "C4")


def test_own_cells_and_sheets_are_told(whole: Path, tmp_path: Path) -> None:
    def edit(book: openpyxl.Workbook) -> None:
        book.create_sheet("Bees")["A1"] = "hives"
        book["Collection"]["AA4"] = "Weather"
        book["Collection"]["AA5"] = "snow"

    said = check_file(with_openpyxl(whole, tmp_path / "a.xlsx", edit))
    told = {(one.sheet, one.cell): one.sentence for one in said if one.weight == TELL}
    assert told["Collection", "AA4"].startswith("2 cells of your own")
    assert told["Bees", ""].startswith("A sheet of your own")


def test_a_program_that_does_not_compute_the_functions(whole: Path, tmp_path: Path) -> None:
    sheet, cell = address(example(), "now.probe")
    edit = in_cell(cell, rb"<v>.*?</v>", b"<v>0</v>")
    path = with_xml(whole, tmp_path / "a.xlsx", {part_of(example(), sheet): edit})
    assert one_remark(path, "does not compute its functions")[:3] == (ASK, sheet, cell)


def test_the_command_prints_and_returns(whole: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert cli.main(["check", str(whole)]) == 0
    assert capsys.readouterr().out == "Nothing to mend, nothing to look at.\n"
    season = typed(example(), {("collection.sap", 3): "9 1/2 gal", ("collection.brix", 4): 24.0})
    season.write(tmp_path / "a.xlsx", "inline")
    assert cli.main(["check", str(tmp_path / "a.xlsx")]) == 1
    assert capsys.readouterr().out.splitlines() == [
        "Must be mended",
        "  Collection!C7  Sap is text, not a number: type the number alone.",
        "",
        "Look at it",
        "  Collection!D8  Sugar over 10 °Brix: is this sap?",
        "",
        "1 to mend, 1 to look at, 0 to know.",
    ]
    assert cli.main(["check", str(tmp_path / "a.xlsx"), "--json"]) == 1
    told = json.loads(capsys.readouterr().out)
    assert (told["units"], told["edition"]) == ("US", "inline")
    assert told["remarks"][0] == {
        "weight": "must be mended",
        "sheet": "Collection",
        "cell": "C7",
        "sentence": "Sap is text, not a number: type the number alone.",
    }


def test_doubts_alone_do_not_fail(tmp_path: Path) -> None:
    typed(example(), {("collection.brix", 4): 24.0}).write(tmp_path / "a.xlsx", "inline")
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
    assert capsys.readouterr().out == "Nothing to mend, nothing to look at.\n"
