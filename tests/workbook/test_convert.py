"""Workbooks in other units and editions: every input in its right unit, nothing drifts, nothing is lost."""

from __future__ import annotations

import datetime
import hashlib
from pathlib import Path
from typing import Any

import openpyxl
import pint
import pytest
from hypothesis import given
from hypothesis import strategies as st
from openpyxl.comments import Comment

from sheetfuncs import cli
from sheetfuncs.workbook.commands.check.check import check_file
from sheetfuncs.workbook.model import parts
from sheetfuncs.workbook.model.measures import DECIMALS, QUANTITY, converted
from sheetfuncs.workbook.model.parts import ASK, MEND
from sheetfuncs.workbook.read.filled import Filled
from tests.tools.edits import example, typed, with_openpyxl
from tests.workbook.test_reader import trimmed

EDITIONS = ("carried", "inline", "linked")
REGISTRY: pint.UnitRegistry[Any] = pint.UnitRegistry()

# What is typed somewhere in a season, from the least to the most, in US units.
RANGES = {
    parts.VOLUME: (0, 500),
    parts.SMALL: (0, 1000),
    parts.LENGTH: (0, 370),
    parts.TEMPERATURE: (-40, 300),
    parts.DIFFERENCE: (0, 20),
    parts.PRESSURE: (26, 32),
    parts.ELEVATION: (-1400, 16000),
    parts.FUEL: (0, 50),
    parts.FUEL_PRICE: (0, 1000),
}


def test_every_kind_that_is_typed_with_a_unit_is_converted() -> None:
    kinds = {cell.kind for cell in example().cells.values() if cell.typed}
    without = {parts.DATE, parts.TIME, parts.TEXT, parts.WORDS, parts.BRIX, parts.SHARE, parts.COUNT, parts.NUMBER}
    assert kinds - without - {parts.DAYS, parts.HOURS, parts.MONEY} == set(DECIMALS)


@pytest.mark.parametrize("kind", QUANTITY)
def test_factors_are_those_of_pint(kind: str) -> None:
    """pint's own definitions: NIST SP 811 and the international yard and pound."""
    quantity, value = QUANTITY[kind], RANGES[kind][1] / 3
    there = REGISTRY.Quantity(value, quantity.us.pint).to(quantity.metric.pint).magnitude
    assert converted(kind, value, "US", "metric") == pytest.approx(there, abs=0.51 * 10.0 ** -DECIMALS[kind]["metric"])


def test_fuel_is_counted_in_the_units_of_its_trade() -> None:
    """A cord is 128 ft³ and a ft³ 0.028316846592 m³ (NIST SP 811); propane is sold in gallons and liters."""
    assert converted(parts.FUEL, 1.0, "US", "metric", "hardwood") == pytest.approx(128 * 0.028316846592, abs=0.005)
    assert converted(parts.FUEL_PRICE, 362.46, "US", "metric", "hardwood") == pytest.approx(100, abs=0.01)
    assert converted(parts.FUEL, 10.0, "US", "metric", "propane") == pytest.approx(37.85411784, abs=0.05)
    assert converted(parts.FUEL, 10.0, "US", "metric", "electricity") == 10.0


@pytest.mark.parametrize(("kind", "us", "metric"), [
    (parts.VOLUME, 12.5, 47.3),
    (parts.VOLUME, 0.075, 0.284),
    (parts.TEMPERATURE, 212.0, 100.0),
    (parts.TEMPERATURE, 211.5, 99.7),
    (parts.ELEVATION, 650.0, 198.0),
    (parts.PRESSURE, 29.85, 1011.0),
    (parts.LENGTH, 62.0, 157.5),
    (parts.SMALL, 16.0, 473.0),
])  # fmt: skip
def test_numbers_are_those_that_a_person_reads_off(kind: str, us: float, metric: float) -> None:
    assert converted(kind, us, "US", "metric") == metric
    assert converted(kind, metric, "metric", "US") == us


@pytest.mark.parametrize("source", ["US", "metric"])
@pytest.mark.parametrize("kind", DECIMALS)
@given(data=st.data())
def test_there_and_back_is_where_it_began(kind: str, source: str, data: st.DataObject) -> None:
    """For every number with the decimals that an instrument shows."""
    target = "metric" if source == "US" else "US"
    low, high = (converted(kind, float(end), "US", source) for end in RANGES[kind])
    value = round(data.draw(st.floats(low, high)), DECIMALS[kind][source])
    assert converted(kind, converted(kind, value, source, target), target, source) == value


@pytest.mark.parametrize("kind", [parts.TEMPERATURE, parts.LENGTH])
def test_quarters_of_a_degree_and_of_an_inch_come_back(kind: str) -> None:
    for quarters in range(100, 1000):
        value = quarters / 4
        assert converted(kind, converted(kind, value, "US", "metric"), "metric", "US") == value


def test_text_and_blanks_stay() -> None:
    assert converted(parts.VOLUME, "9 1/2 gal", "US", "metric") == "9 1/2 gal"
    assert converted(parts.VOLUME, None, "US", "metric") is None
    assert converted(parts.BRIX, 2.1, "US", "metric") == 2.1
    assert converted(parts.VOLUME, 1e308, "US", "metric") == 1e308


@pytest.mark.parametrize("edition", EDITIONS)
@pytest.mark.parametrize("source", ["US", "metric"])
def test_a_workbook_there_and_back_twice(source: str, edition: str, tmp_path: Path) -> None:
    target = {"US": "metric", "metric": "US"}[source]
    example(source).write(tmp_path / "0.xlsx", edition)
    before = hashlib.sha256((tmp_path / "0.xlsx").read_bytes()).digest()
    for step, system in enumerate((target, source, target, source)):
        command = ["convert", str(tmp_path / f"{step}.xlsx"), str(tmp_path / f"{step + 1}.xlsx")]
        assert cli.main([*command, "--units", system.lower()]) == 0
    first, there, back, again, last = (Filled(tmp_path / f"{step}.xlsx") for step in range(5))
    assert trimmed(back.season.inputs) == trimmed(last.season.inputs) == trimmed(first.season.inputs)
    assert trimmed(there.season.inputs) == trimmed(again.season.inputs)
    assert (there.system, there.edition, there.rows) == (target, edition, first.rows)
    assert not [one for one in check_file(tmp_path / "1.xlsx") if one.weight in (MEND, ASK)]
    assert hashlib.sha256((tmp_path / "0.xlsx").read_bytes()).digest() == before


def test_the_season_is_the_same_in_other_units(tmp_path: Path) -> None:
    example("US").write(tmp_path / "a.xlsx")
    assert cli.main(["convert", str(tmp_path / "a.xlsx"), str(tmp_path / "b.xlsx"), "--units", "metric"]) == 0
    us, metric = (Filled(tmp_path / name).season for name in ("a.xlsx", "b.xlsx"))
    us.compute()
    metric.compute()
    for name in ("season.sap", "season.expected", "season.bottled"):
        liters = REGISTRY.Quantity(us.value(name), "gallon").to("liter").magnitude
        assert metric.value(name) == pytest.approx(liters, rel=2e-3)
    assert metric.value("season.brix") == pytest.approx(us.value("season.brix"), abs=0.01)


def test_another_edition_in_the_same_units(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    example("US").write(tmp_path / "a.xlsx", "carried")
    assert cli.main(["convert", str(tmp_path / "a.xlsx"), str(tmp_path / "b.xlsx"), "--edition", "inline"]) == 0
    assert capsys.readouterr().out == f"written: {tmp_path / 'b.xlsx'} (US units, inline edition)\n"
    assert Filled(tmp_path / "b.xlsx").edition == "inline"
    assert check_file(tmp_path / "b.xlsx") == []


def with_own_things(book: openpyxl.Workbook) -> None:
    """What a user adds: a sheet, a column, remarks, a note on a cell, a number over a formula."""
    own = book.create_sheet("Bees", 2)
    own["A1"], own["B1"] = "hives", 3
    own["A2"], own["B2"] = "since", datetime.datetime(2024, 5, 1)
    own["A3"] = "=1+1"
    own["A4"], own["A4"].data_type = "=not a formula", "s"
    book["Collection"]["AA4"] = "Weather"
    book["Collection"]["AA6"] = "snow"
    book["Yard"]["L4"] = "+ ask Ada"
    book["Yard"]["L4"].data_type = "s"
    book["Collection"]["C5"].comment = Comment("spilled a little", "me")
    book["Collection"]["K6"] = 1.25


def test_what_has_no_place_is_copied_and_listed(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    example("US").write(tmp_path / "whole.xlsx", "linked")
    source = with_openpyxl(tmp_path / "whole.xlsx", tmp_path / "a.xlsx", with_own_things)
    assert cli.main(["convert", str(source), str(tmp_path / "b.xlsx"), "--units", "metric"]) == 0
    printed = capsys.readouterr().out
    assert "copied as plain values: your sheet 'Bees', as 'Bees'" in printed
    assert "listed on the sheet 'Carried over': 5 cells" in printed
    book = openpyxl.load_workbook(tmp_path / "b.xlsx")
    bees = book["Bees"]
    assert [cell.value for cell in bees["A"]] == ["hives", "since", "=1+1", "=not a formula"]
    assert {cell.data_type for cell in bees["A"]} == {"s"}
    assert bees["B2"].value == datetime.datetime(2024, 5, 1)
    lines = {tuple(row)[:5] for row in book["Carried over"].iter_rows(min_row=2, values_only=True)}
    assert ("Collection", "AA6", datetime.datetime(2026, 2, 26), "Weather", "snow") in lines
    assert ("Yard", "L4", "The season", None, "+ ask Ada") in lines
    assert any(line[:2] == ("Collection", "C5") and line[4] == "spilled a little" for line in lines)
    assert any(line[:2] == ("Collection", "K6") and line[4] == 1.25 for line in lines)
    assert all(cell.data_type != "f" for row in book["Carried over"] for cell in row)
    # and once more: what was carried is carried again
    assert cli.main(["convert", str(tmp_path / "b.xlsx"), str(tmp_path / "c.xlsx"), "--units", "us"]) == 0
    again = openpyxl.load_workbook(tmp_path / "c.xlsx")
    assert {"Bees", "Carried over"} <= set(again.sheetnames)


def test_text_in_number_cells_is_kept(tmp_path: Path) -> None:
    season = typed(example(), {("collection.sap", 2): "7 1/2 gal", ("boil.left", 1): "=2*3"})
    season.write(tmp_path / "a.xlsx", "inline")
    assert cli.main(["convert", str(tmp_path / "a.xlsx"), str(tmp_path / "b.xlsx"), "--units", "metric"]) == 0
    inputs = Filled(tmp_path / "b.xlsx").season.inputs
    assert (inputs["collection.sap"][1], inputs["boil.left"][0]) == ("7 1/2 gal", "=2*3")


def test_an_unknown_unit_system(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    example().write(tmp_path / "a.xlsx", "linked")
    assert cli.main(["convert", str(tmp_path / "a.xlsx"), str(tmp_path / "b.xlsx"), "--units", "stone"]) == 2
    assert "there is no such unit system" in capsys.readouterr().err
    assert not (tmp_path / "b.xlsx").exists()
