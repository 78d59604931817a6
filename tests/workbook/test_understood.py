"""What is typed in other ways than meant: understood by sheet, check and convert alike, or told."""

from __future__ import annotations

import datetime
from pathlib import Path
from typing import Any

import openpyxl
import pytest

from sheetfuncs import cli
from sheetfuncs.workbook.commands.check.check import check_file
from sheetfuncs.workbook.model.parts import ASK, MEND
from sheetfuncs.workbook.read.filled import read
from sheetfuncs.workbook.season import Season
from tests.tools.edits import (
    Name,
    Written,
    address,
    example,
    faults,
    in_cell,
    part_of,
    quickly,
    typed,
    with_openpyxl,
    with_own_things,
    with_xml,
)

# A word of each list that the example takes one from.
LISTED: dict[Name, str] = {
    "yard.fuel": "hardwood",
    "know.finish_pan": "small pan",
    "know.atc": "yes",
    "signs.buds": "no",
    ("places.where", 1): "snow bank",
    ("trees.species", 1): "sugar maple",
    ("collection.into", 1): "snow bin 1",
    ("boil.pan", 1): "big pan",
    ("happenings.what", 1): "frozen",
    ("happenings.where", 1): "freezer jars",
    ("batches.thermometer", 1): "dial",
    ("batches.pan", 1): "small pan",
    ("batches.colour", 1): "Golden",
    ("run.thermometer", 35): "digital",
    ("bottles.jar", 1): "pint",
}
WRITTEN = {
    "capitals": str.upper,
    "a space behind": lambda word: word + " ",
    "a space before": lambda word: " " + word,
    "two spaces": lambda word: word.replace(" ", "  "),
}


@pytest.fixture(scope="module")
def computed() -> Season:
    season = example()
    season.compute()
    return season


@pytest.mark.parametrize("way", WRITTEN)
def test_capitals_and_spaces_around_a_listed_word_change_nothing(way: str, computed: Season, tmp_path: Path) -> None:
    """All of them at once, in the sheets themselves and in what check says."""
    words: dict[Name, Any] = {name: WRITTEN[way](word) for name, word in LISTED.items()}
    season = typed(example(), words)
    season.compute()
    differ = {
        name: (computed.value(name, row), season.value(name, row))
        for name, spot in season.layout.spots.items()
        for row in range(spot.height)
        if same(computed.value(name, row)) != same(season.value(name, row))
    }
    assert differ == {}
    assert faults(quickly(season, tmp_path / "a.xlsx")) == []


def same(value: Any) -> Any:
    return " ".join(value.split()).casefold() if isinstance(value, str) else value


@pytest.mark.parametrize("name", LISTED, ids=str)
def test_a_space_of_another_kind_is_said(name: Name, tmp_path: Path) -> None:
    """As a phone or a web page puts it in: no sheet trims it."""
    word = LISTED[name] + "\N{NO-BREAK SPACE}"
    season = typed(example(), {name: word})
    said = [
        one for one in faults(quickly(season, tmp_path / "a.xlsx")) if "a space in it is not that of" in one.sentence
    ]
    where = address(season, *((name,) if isinstance(name, str) else name))
    assert [(one.weight, one.sheet, one.cell) for one in said] == [(MEND, *where)]


def without_values(book: openpyxl.Workbook) -> None:
    season = example()
    for name, row, text in (
        ("collection.sap", 1, "=2.5+3"), ("collection.note", 2, '="a "&"note"'), ("yard.elevation", 1, "=600+50"),
    ):  # fmt: skip
        sheet, cell = address(season, name, row)
        book[sheet][cell] = text


@pytest.mark.parametrize("command", ["convert", "handover"])
def test_formulas_without_a_value_are_listed_and_told(
    command: str, written: Written, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    source = with_openpyxl(written(), tmp_path / "a.xlsx", without_values)
    assert cli.main([command, str(source), str(tmp_path / "b.xlsx")]) == 1
    told = capsys.readouterr().out
    assert told.count("holds a formula without its value") == 3
    book = openpyxl.load_workbook(tmp_path / "b.xlsx")
    listed = {row[4] for row in book[book.sheetnames[-1]].iter_rows(values_only=True)}
    assert {"=2.5+3", '="a "&"note"', "=600+50"} <= listed


def test_formulas_with_a_value_are_taken_as_that_and_told(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    season = example()
    sheet, cell = address(season, "collection.sap", 1)
    path = quickly(season, tmp_path / "a.xlsx")
    path = with_xml(path, tmp_path / "b.xlsx", {part_of(season, sheet): in_cell(cell, rb"<v>", rb"<f>2.5+3</f><v>")})
    assert cli.main(["convert", str(path), str(tmp_path / "c.xlsx")]) == 0
    assert (
        f"taken as values: a formula where something is typed, the first in {sheet}!{cell}" in capsys.readouterr().out
    )
    assert read(tmp_path / "c.xlsx").season.inputs["collection.sap"][0] == 5.5


def test_numbers_typed_as_text_are_told_and_stay(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    edits: dict[Name, Any] = {("collection.sap", 2): "3,5", ("collection.sap", 3): "5.5", "yard.elevation": "650"}
    edits[("collection.date", 4)] = "last Friday"
    season = typed(example(), edits)
    path = quickly(season, tmp_path / "a.xlsx")
    assert cli.main(["convert", str(path), str(tmp_path / "b.xlsx"), "--units", "metric"]) == 1
    told = [line for line in capsys.readouterr().out.splitlines() if line.startswith("not understood: ")]
    places = {"!".join(address(season, *((name,) if isinstance(name, str) else name))) for name in edits}
    assert {line.removeprefix("not understood: ").partition(": ")[0] for line in told} == places
    inputs = read(tmp_path / "b.xlsx").season.inputs
    assert (inputs["collection.sap"][1:3], inputs["yard.elevation"]) == (["3,5", "5.5"], "650")


def test_a_fuel_that_nobody_knows_is_told(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    path = quickly(typed(example(), {"yard.fuel": "hay"}), tmp_path / "a.xlsx")
    assert cli.main(["convert", str(path), str(tmp_path / "b.xlsx"), "--units", "metric"]) == 1
    assert "'hay' is none of hardwood" in capsys.readouterr().out


@pytest.mark.parametrize("text", ["28.03.2026", "tomorrow"])
def test_today_typed_as_text_is_said_first(text: str, tmp_path: Path) -> None:
    season = typed(example(), {"weekend.today": text})
    season.compute()
    assert "Today" in season.value("now.first")
    found = faults(quickly(season, tmp_path / "a.xlsx"))
    assert (MEND, *address(season, "weekend.today")) in [one[:3] for one in found]
    assert not [one for one in season.values["Weekend"].values() if isinstance(one, str) and one.startswith("#")]


def test_without_names_and_stamps_the_edition_is_not_known(written: Written, tmp_path: Path) -> None:
    """As web programs save it: the functions that it carried are gone, and it does not say that it had any."""

    def drop(book: openpyxl.Workbook) -> None:
        for name in list(book.defined_names):
            del book.defined_names[name]
        for one in list(book.custom_doc_props.names):
            del book.custom_doc_props[one]

    path = with_openpyxl(written("US", "carried"), tmp_path / "a.xlsx", drop)
    said = [one for one in check_file(path) if "dropped its names" in one.sentence]
    assert [one.weight for one in said] == [ASK]


def test_a_season_that_is_among_the_earlier_ones_is_not_added_again(tmp_path: Path) -> None:
    season = typed(example(), {("past.season", 3): "2026", ("past.sap", 3): 117.0})
    assert cli.main(["handover", str(quickly(season, tmp_path / "a.xlsx")), str(tmp_path / "b.xlsx")]) == 0
    assert read(tmp_path / "b.xlsx").season.inputs["past.season"] == ["2024", "2025", "2026"]


def test_three_workbooks_of_one_name_are_told_apart(
    written: Written, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    paths = []
    for folder in ("a", "b", "c"):
        (tmp_path / folder).mkdir()
        paths.append(tmp_path / folder / "season.xlsx")
        paths[-1].write_bytes(written().read_bytes())
    assert cli.main(["report", *map(str, paths), str(paths[2])]) == 0
    names = capsys.readouterr().out.splitlines()[0].split(", Quarry")
    assert len(set(names)) == 4


def test_nothing_odd_is_told_of_what_is_plain(
    written: Written, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert cli.main(["convert", str(written()), str(tmp_path / "b.xlsx"), "--units", "metric"]) == 0
    told = capsys.readouterr().out.splitlines()
    assert told[0] == f"written: {tmp_path / 'b.xlsx'} (metric units, linked edition)"
    assert not [line for line in told if line.startswith(("not ", "look at", "taken", "listed"))]
    source = with_openpyxl(written(), tmp_path / "own.xlsx", with_own_things)
    assert cli.main(["convert", str(source), str(tmp_path / "c.xlsx")]) == 0


def test_dates_of_any_year_come_back(tmp_path: Path) -> None:
    days = [datetime.date(1900, 3, 1), datetime.date(2199, 12, 31), datetime.date(9999, 12, 31)]
    season = typed(example(), {("bottles.date", row): day for row, day in enumerate(days, 1)})
    assert cli.main(["convert", str(quickly(season, tmp_path / "a.xlsx")), str(tmp_path / "b.xlsx")]) == 0
    assert read(tmp_path / "b.xlsx").season.inputs["bottles.date"] == days


def test_cups_below_those_of_the_blind_tasting_are_cells_of_ones_own(written: Written, tmp_path: Path) -> None:
    """There is a cup for each batch; rows copied down below them are carried, not counted."""

    def copied_down(book: Any) -> None:
        season = example()
        sheet, first = address(season, "blind.batch", 1)
        _, points = address(season, "blind.points", 1)
        top, cups = book[sheet][first].row, season.layout.spots["blind.batch"].height
        for row in range(top + cups, top + cups + 3):
            book[sheet].cell(row, book[sheet][first].column).value = book[sheet][first].value
            book[sheet].cell(row, book[sheet][points].column).value = 70 + row

    source, out = with_openpyxl(written(), tmp_path / "a.xlsx", copied_down), tmp_path / "b.xlsx"
    assert cli.main(["check", str(source)]) == 0
    assert cli.main(["convert", str(source), str(out)]) == 0
    kept = {cell.value for sheet in openpyxl.load_workbook(out) for row in sheet.iter_rows() for cell in row}
    _, points = address(example(), "blind.points", 1)
    below = int(points.lstrip("ABCDEFGH")) + example().layout.spots["blind.batch"].height
    assert {70 + below, 71 + below, 72 + below} <= kept
