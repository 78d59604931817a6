"""Next season's workbook: what stays is carried, the rest is empty, told or copied; nothing is lost in silence."""

from __future__ import annotations

import datetime
import hashlib
from pathlib import Path
from typing import Any

import openpyxl
import pytest

from sheetfuncs import FINISH_READING, cli
from sheetfuncs.workbook.commands.renew.handover import ANEW, STAYS
from sheetfuncs.workbook.read.filled import Filled, read
from tests.tools.edits import SMALL, Written, example, faults, typed, with_openpyxl, with_own_things

CARRIED_TABLES = ("thermometers", "pans", "places", "jars", "trees")


@pytest.fixture(scope="module")
def handed(written: Written, tmp_path_factory: pytest.TempPathFactory) -> tuple[Filled, Filled]:
    """The example, and the workbook for the season after it."""
    source, path = written("US", "inline"), tmp_path_factory.mktemp("handed") / "new.xlsx"
    before = hashlib.sha256(source.read_bytes()).digest(), source.stat().st_mtime_ns
    assert cli.main(["handover", str(source), str(path)]) == 0
    assert (hashlib.sha256(source.read_bytes()).digest(), source.stat().st_mtime_ns) == before
    old, new = read(source), read(path)
    old.season.compute()
    return old, new


def test_what_stays_is_carried_and_the_rest_is_empty(handed: tuple[Filled, Filled]) -> None:
    old, new = (filled.season.inputs for filled in handed)
    starts = {name: getattr(cell, "start", None) for name, cell in handed[1].season.cells.items()}
    stays = {f"{table}.{key}" for table, keys in STAYS.items() for key in keys}
    for name, value in new.items():
        if name in stays or (name.startswith(("yard.", "know.")) and name not in ANEW):
            assert value == old[name], name
        elif not name.startswith("past.") and name != "yard.year":
            assert value in (None, [], starts[name]), name
    assert new["yard.year"] == 2027
    assert {name.partition(".")[0] for name in new if new[name] not in (None, [])} >= set(CARRIED_TABLES)
    assert new.get("trees.taps", []) == []


def test_every_typed_cell_is_either_carried_or_emptied_on_purpose() -> None:
    """A new column of the yard must be decided on: this list is the decision."""
    emptied = {
        "thermometers.water", "thermometers.read_on", "trees.taps", "trees.tapped", "trees.pulled",
    }  # fmt: skip
    stays = {f"{table}.{key}" for table, keys in STAYS.items() for key in keys}
    cells = {name for name, cell in example().cells.items() if cell.typed}
    assert {name for name in cells if name.partition(".")[0] in CARRIED_TABLES} == stays | emptied
    assert set(ANEW) <= cells


def test_the_season_becomes_a_line_under_the_earlier_ones(handed: tuple[Filled, Filled]) -> None:
    old, new = handed
    for key in ("season", "taps", "sap", "brix", "syrup", "first", "last", "days", "hours", "fuel", "note"):
        before = old.season.inputs[f"past.{key}"]
        assert new.season.inputs[f"past.{key}"][: len(before)] == before
    line = {
        key: new.season.inputs[f"past.{key}"][2] for key in ("season", "taps", "sap", "first", "last", "days", "fuel")
    }
    assert line == {
        "season": "2026",
        "taps": 12,
        "sap": 117,
        "first": datetime.date(2026, 2, 24),
        "last": datetime.date(2026, 3, 27),
        "days": 15,
        "fuel": 0.45,
    }
    assert new.season.inputs["past.syrup"][2] == pytest.approx(old.season.value("season.bottled"), abs=0.005)


def test_the_newcomer_is_told_what_the_yard_gave(handed: tuple[Filled, Filled]) -> None:
    """Means, least and most over the three seasons of the example, worked out here from its numbers."""
    _, new = handed
    book = openpyxl.load_workbook(new.file)
    assert book.sheetnames[:3] == ["Newcomer", "Guide", "Weekend"]
    lines = [row[0] for row in book["Newcomer"].iter_rows(values_only=True) if row[0]]
    taps, sap, days = (8, 10, 12), (64, 88, 117), (11, 13, 15)
    each = [one / other for one, other in zip(sap, taps, strict=True)]
    assert f"Sap per tap: {sum(each) / 3:.1f} gal, from {min(each):.1f} to {max(each):.1f} over 3 seasons." in lines
    assert f"Days it ran: {sum(days) / 3:.0f}, from 11 to 15 over 3 seasons." in lines
    assert "First run: Feb 20 to Mar 1." in lines
    assert "Last run: Mar 24 to Apr 2." in lines
    assert "Kept until now by the Quarry Lane household: ask there first." in lines
    assert "Last season it had 12 taps in 9 trees." in lines
    rise = FINISH_READING(66.9, 210.8) - 210.8  # IAPWS-IF97 at the standard pressure of 650 ft
    assert f"Syrup is {rise:.1f} F° above what a thermometer shows in boiling water there." in lines


def test_the_new_workbook_is_clean(handed: tuple[Filled, Filled]) -> None:
    old, new = handed
    assert faults(Path(new.file)) == []
    assert (new.edition, new.system) == (old.edition, old.system)
    assert new.rows == SMALL._replace(past=3)


def test_own_things_are_copied_and_listed(written: Written, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    source = with_openpyxl(written(), tmp_path / "a.xlsx", with_own_things)
    assert cli.main(["handover", str(source), str(tmp_path / "b.xlsx"), "--season", "2030"]) == 0
    printed = capsys.readouterr().out.splitlines()
    assert printed == [
        "carried: the yard's settings, 2 thermometers, 2 pans, 6 places, 3 jars, 9 trees",
        "carried: 3 seasons",
        "empty: the logs, the taps of each tree, what thermometers show in boiling water",
        "copied as plain values: your sheet 'Bees', as 'Bees'",
        "listed on the sheet 'Carried from 2026': 5 cells that belong to no column of ours",
        f"written: {tmp_path / 'b.xlsx'}, for 2030",
        f"Next: read the first page of {tmp_path / 'b.xlsx'}, then fill in Yard.",
    ]
    book = openpyxl.load_workbook(tmp_path / "b.xlsx")
    assert book["Bees"]["A1"].value == "hives"
    assert {"snow", "+ ask Ada", "spilled a little", 1.25} <= {row[4].value for row in book["Carried from 2026"]}


def test_a_third_season_and_a_full_list(written: Written, tmp_path: Path) -> None:
    """Handed over again: the page for the newcomer is made anew, the list of seasons grows."""
    (tmp_path / "0.xlsx").write_bytes(written().read_bytes())
    for step in range(2):
        assert cli.main(["handover", str(tmp_path / f"{step}.xlsx"), str(tmp_path / f"{step + 1}.xlsx")]) == 0
    last = read(tmp_path / "2.xlsx")
    assert last.season.inputs["yard.year"] == 2028
    assert last.season.inputs["past.season"] == ["2024", "2025", "2026"]  # nothing was collected in 2027
    assert last.own_sheets() == ["Newcomer"]
    sap: dict[Any, Any] = {
        ("collection.date", 1): datetime.date(2028, 3, 1),
        ("collection.sap", 1): 5.0,
        ("collection.brix", 1): 2.0,
    }
    season = typed(last.season, sap)
    season.write(tmp_path / "3.xlsx", "linked")
    assert cli.main(["handover", str(tmp_path / "3.xlsx"), str(tmp_path / "4.xlsx")]) == 0
    grown = read(tmp_path / "4.xlsx")
    assert grown.rows.past == 4
    assert grown.season.inputs["past.season"] == ["2024", "2025", "2026", "2028"]


def test_an_empty_workbook_can_be_handed_over(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert cli.main(["new", str(tmp_path / "a.xlsx"), "--season", "2026"]) == 0
    assert cli.main(["handover", str(tmp_path / "a.xlsx"), str(tmp_path / "b.xlsx")]) == 0
    assert f"written: {tmp_path / 'b.xlsx'}, for 2027" in capsys.readouterr().out
    assert faults(tmp_path / "b.xlsx") == []


def test_an_odd_year_is_refused(whole: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert cli.main(["handover", str(whole), str(tmp_path / "b.xlsx"), "--season", "20"]) == 2
    assert "give a year from 1900 to 2200" in capsys.readouterr().err
