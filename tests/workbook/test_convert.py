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

from sheetfuncs import cli
from sheetfuncs.workbook.model import kinds
from sheetfuncs.workbook.model.kinds import Kind
from sheetfuncs.workbook.model.measures import converted
from sheetfuncs.workbook.read.filled import read
from tests.tools.edits import Written, address, example, faults, trimmed, typed, with_openpyxl, with_own_things

REGISTRY: pint.UnitRegistry[Any] = pint.UnitRegistry()

# What is typed somewhere in a season, from the least to the most, in US units.
RANGES = {
    kinds.VOLUME: (0, 500),
    kinds.SMALL: (0, 1000),
    kinds.LENGTH: (0, 370),
    kinds.TEMPERATURE: (-40, 300),
    kinds.DIFFERENCE: (0, 20),
    kinds.PRESSURE: (26, 32),
    kinds.ELEVATION: (-1400, 16000),
    kinds.RATE: (0, 100),
    kinds.FUEL: (0, 50),
    kinds.FUEL_PRICE: (0, 1000),
}
MEASURED = [kind for kind in RANGES if kind.quantity]
SYSTEMS = ("US", "metric")


def decimals(kind: Kind, system: str) -> int:
    assert kind.decimals
    return kind.decimals[SYSTEMS.index(system)]


def test_every_kind_that_is_typed_with_a_unit_is_converted() -> None:
    """A mass is typed into scales that show what they show: it has its range too, once it converts."""
    typed_kinds = {cell.kind for cell in example().cells.values() if cell.typed}
    with_units = {kind for kind in typed_kinds if kind.quantity and kind is not kinds.BRIX}
    assert {kind for kind in typed_kinds if kind.decimals} == with_units | {kinds.FUEL, kinds.FUEL_PRICE}
    assert {kind for kind in typed_kinds if kind.decimals} <= set(RANGES)


@pytest.mark.parametrize("kind", MEASURED, ids=lambda kind: kind.name)
def test_factors_are_those_of_pint(kind: Kind) -> None:
    """pint's own definitions: NIST SP 811 and the international yard and pound."""
    quantity, value = kind.quantity, RANGES[kind][1] / 3
    assert quantity
    there = REGISTRY.Quantity(value, quantity.us.pint).to(quantity.metric.pint).magnitude
    assert converted(kind, value, "US", "metric") == pytest.approx(there, abs=0.51 * 10.0 ** -decimals(kind, "metric"))


def test_fuel_is_counted_in_the_units_of_its_trade() -> None:
    """A cord is 128 ft³ and a ft³ 0.028316846592 m³ (NIST SP 811); propane is sold in gallons and liters."""
    assert converted(kinds.FUEL, 1.0, "US", "metric", "hardwood") == pytest.approx(128 * 0.028316846592, abs=0.005)
    assert converted(kinds.FUEL_PRICE, 362.46, "US", "metric", "hardwood") == pytest.approx(100, abs=0.01)
    assert converted(kinds.FUEL, 10.0, "US", "metric", "propane") == pytest.approx(37.85411784, abs=0.05)
    assert converted(kinds.FUEL, 10.0, "US", "metric", "electricity") == 10.0


@pytest.mark.parametrize("word", ["Hardwood", "hardwood ", " HARDWOOD", "hardwood\N{NO-BREAK SPACE}"])
def test_a_fuel_is_the_same_fuel_however_it_is_typed(word: str, tmp_path: Path) -> None:
    typed(example(), {"yard.fuel": word}).write(tmp_path / "a.xlsx", "linked")
    assert cli.main(["convert", str(tmp_path / "a.xlsx"), str(tmp_path / "b.xlsx"), "--units", "metric"]) == (
        not word.isascii()
    )  # told
    inputs = read(tmp_path / "b.xlsx").season.inputs
    assert inputs["boil.fuel"][:3] == [0.272, 0.38, 0.4]
    assert inputs["know.fuel_price"] == 77.25


@pytest.mark.parametrize(("kind", "us", "metric"), [
    (kinds.VOLUME, 12.5, 47.3),
    (kinds.VOLUME, 0.075, 0.284),
    (kinds.TEMPERATURE, 212.0, 100.0),
    (kinds.TEMPERATURE, 211.5, 99.7),
    (kinds.ELEVATION, 650.0, 198.0),
    (kinds.PRESSURE, 29.85, 1011.0),
    (kinds.LENGTH, 62.0, 157.5),
    (kinds.SMALL, 16.0, 473.0),
])  # fmt: skip
def test_numbers_are_those_that_a_person_reads_off(kind: Kind, us: float, metric: float) -> None:
    assert converted(kind, us, "US", "metric") == metric
    assert converted(kind, metric, "metric", "US") == us


@pytest.mark.parametrize("source", ["US", "metric"])
@pytest.mark.parametrize("kind", RANGES, ids=lambda kind: kind.name)
@given(data=st.data())
def test_there_and_back_is_where_it_began(kind: Kind, source: str, data: st.DataObject) -> None:
    """For every number with the decimals that an instrument shows."""
    target = "metric" if source == "US" else "US"
    low, high = (converted(kind, float(end), "US", source) for end in RANGES[kind])
    value = round(data.draw(st.floats(low, high)), decimals(kind, source))
    assert converted(kind, converted(kind, value, source, target), target, source) == value


@pytest.mark.parametrize("kind", [kinds.TEMPERATURE, kinds.LENGTH])
def test_quarters_of_a_degree_and_of_an_inch_come_back(kind: Kind) -> None:
    for quarters in range(100, 1000):
        value = quarters / 4
        assert converted(kind, converted(kind, value, "US", "metric"), "metric", "US") == value


def test_text_and_blanks_stay() -> None:
    assert converted(kinds.VOLUME, "9 1/2 gal", "US", "metric") == "9 1/2 gal"
    assert converted(kinds.VOLUME, None, "US", "metric") is None
    assert converted(kinds.BRIX, 2.1, "US", "metric") == 2.1
    assert converted(kinds.VOLUME, 1e308, "US", "metric") == 1e308


@pytest.mark.parametrize(
    ("source", "edition"), [("US", "carried"), ("metric", "carried"), ("US", "inline"), ("metric", "linked")]
)
def test_a_workbook_there_and_back_twice(source: str, edition: str, written: Written, tmp_path: Path) -> None:
    target = {"US": "metric", "metric": "US"}[source]
    steps = [written(source, edition), *(tmp_path / f"{step}.xlsx" for step in range(1, 5))]
    before = hashlib.sha256(steps[0].read_bytes()).digest()
    for step, system in enumerate((target, source, target, source)):
        assert cli.main(["convert", str(steps[step]), str(steps[step + 1]), "--units", system.lower()]) == 0
    first, there, back, again, last = map(read, steps)
    assert trimmed(back.season.inputs) == trimmed(last.season.inputs) == trimmed(first.season.inputs)
    assert trimmed(there.season.inputs) == trimmed(again.season.inputs)
    assert (there.system, there.edition, there.rows) == (target, edition, first.rows)
    assert faults(steps[1]) == []
    assert hashlib.sha256(steps[0].read_bytes()).digest() == before


def test_the_season_is_the_same_in_other_units(whole: Path, tmp_path: Path) -> None:
    assert cli.main(["convert", str(whole), str(tmp_path / "b.xlsx"), "--units", "metric"]) == 0
    us, metric = (read(path).season for path in (whole, tmp_path / "b.xlsx"))
    us.compute()
    metric.compute()
    for name in ("season.sap", "season.expected", "season.bottled"):
        liters = REGISTRY.Quantity(us.value(name), "gallon").to("liter").magnitude
        assert metric.value(name) == pytest.approx(liters, rel=2e-3)
    assert metric.value("season.brix") == pytest.approx(us.value("season.brix"), abs=0.01)


def test_another_edition_in_the_same_units(whole: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert cli.main(["convert", str(whole), str(tmp_path / "b.xlsx"), "--edition", "inline"]) == 0
    told = capsys.readouterr().out.splitlines()
    assert told[0] == f"written: {tmp_path / 'b.xlsx'} (US units, inline edition)"
    assert len(told) == 2
    assert told[1].startswith(f"Next: open {tmp_path / 'b.xlsx'}; `sheetfuncs compare ")
    assert read(tmp_path / "b.xlsx").edition == "inline"
    assert faults(tmp_path / "b.xlsx") == []


def test_what_has_no_place_is_copied_and_listed(
    written: Written, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    source = with_openpyxl(written(), tmp_path / "a.xlsx", with_own_things)
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
    assert ("Collection", "DA6", datetime.datetime(2026, 2, 26), "Weather", "snow") in lines
    assert ("Yard", "Z4", "To start", None, "+ ask Ada") in lines
    season = example()
    assert any(line[:2] == address(season, "collection.sap") and line[4] == "spilled a little" for line in lines)
    assert any(line[:2] == address(season, "collection.syrup", 2) and line[4] == 1.25 for line in lines)
    assert all(cell.data_type != "f" for row in book["Carried over"] for cell in row)
    # and once more: what was carried is carried again
    assert cli.main(["convert", str(tmp_path / "b.xlsx"), str(tmp_path / "c.xlsx"), "--units", "us"]) == 0
    again = openpyxl.load_workbook(tmp_path / "c.xlsx")
    assert {"Bees", "Carried over"} <= set(again.sheetnames)


def test_text_in_number_cells_is_kept(tmp_path: Path) -> None:
    season = typed(example(), {("collection.sap", 2): "7 1/2 gal", ("boil.rest", 1): "=2*3"})
    season.write(tmp_path / "a.xlsx", "inline")
    assert cli.main(["convert", str(tmp_path / "a.xlsx"), str(tmp_path / "b.xlsx"), "--units", "metric"]) == 1
    inputs = read(tmp_path / "b.xlsx").season.inputs
    assert (inputs["collection.sap"][1], inputs["boil.rest"][0]) == ("7 1/2 gal", "=2*3")


def test_an_unknown_unit_system(whole: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert cli.main(["convert", str(whole), str(tmp_path / "b.xlsx"), "--units", "stone"]) == 2
    assert "there is no such unit system" in capsys.readouterr().err
    assert not (tmp_path / "b.xlsx").exists()
