"""A report over a folder: many seasons of many yards, a line each; what cannot be read is named and passed over."""

from __future__ import annotations

import csv
import datetime
from pathlib import Path
from typing import Any

import pytest

from sheetfuncs import cli
from sheetfuncs.workbook.commands.report import folder as of_folder
from sheetfuncs.workbook.read.filled import read as read_file
from sheetfuncs.workbook.season import Season
from tests.tools.edits import SMALL


def a_yard(path: Path, name: str, year: float, gallons: float, system: str = "US", **more: Any) -> None:
    inputs = {
        "yard.name": name,
        "yard.year": year,
        "yard.typed_taps": 10.0,
        "collection.date": [datetime.date(int(year), 3, 1), datetime.date(int(year), 3, 8)],
        "collection.sap": [gallons, gallons],
        "collection.brix": [2.0, 2.0],
    }
    path.parent.mkdir(exist_ok=True)
    Season(system, inputs | more, SMALL).write(path, "linked")


@pytest.fixture(scope="module")
def club(tmp_path_factory: pytest.TempPathFactory) -> Path:
    club = tmp_path_factory.mktemp("club")
    past: dict[str, Any] = {"past.season": ["2024", "2025"], "past.taps": [8.0, 9.0], "past.sap": [70.0, 80.0]}
    a_yard(club / "hill.xlsx", "Hill <b>", 2026.0, 50.0, **past)
    a_yard(club / "older" / "hill.xlsx", "Hill <b>", 2025.0, 40.0)
    a_yard(club / "brook.xlsx", "=Brook", 2026.0, 100.0, "metric")
    (club / "notes.txt").write_text("no workbook")
    (club / "~$hill.xlsx").write_text("a lock")
    return club


def test_each_season_is_a_line_with_its_source(club: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    page, table = tmp_path / "a.html", tmp_path / "a.csv"
    assert cli.main(["report", str(club), "--html", str(page), "--csv", str(table)]) == 0
    lines = list(csv.DictReader(table.read_text(encoding="utf-8").splitlines()))
    assert [(line["Yard"], line["Season"], line["From"]) for line in lines] == [
        ("'=Brook", "2026", "brook.xlsx"),
        ("Hill <b>", "2024", "hill.xlsx, earlier seasons"),
        ("Hill <b>", "2025", "older/hill.xlsx"),  # not the line typed into the later workbook
        ("Hill <b>", "2026", "hill.xlsx"),
    ]
    assert [line["Sap collected, L"] for line in lines] == ["200", "264.979", "302.833", "378.541"]  # 3.785411784 L
    assert lines[0]["First run"] == "2026-03-01"
    assert [line["Taps"] for line in lines] == ["10", "8", "10", "10"]
    text = page.read_text(encoding="utf-8")
    assert "<title>4 seasons of 2 yards</title>" in text
    assert "<td class=left>Hill &lt;b&gt;</td>" in text and "older/hill.xlsx" in text
    said = capsys.readouterr().out.splitlines()
    assert said[1].startswith("Hill <b> 2024: 265.0 L of sap, ") and said[1].endswith("(hill.xlsx, earlier seasons)")
    assert said[-4:-1] == ["4 seasons from 3 workbooks", f"written: {page}", f"written: {table}"]
    assert said[-1].startswith(f"Next: open {page} in a browser")


def test_a_broken_one_is_named_and_passed_over(
    club: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    (tmp_path / "bad").mkdir()
    for name in ("cut.xlsx", "hangs.xlsx", "whole.xlsx"):
        content = (club / "hill.xlsx").read_bytes()
        (tmp_path / "bad" / name).write_bytes(content[: 4000 if name == "cut.xlsx" else None])

    def read(path: Path) -> object:
        while path.name == "hangs.xlsx":
            pass
        return read_file(path)

    def limit() -> None:
        import resource

        resource.setrlimit(resource.RLIMIT_CPU, (6, 7))

    monkeypatch.setattr(of_folder, "read", read)
    monkeypatch.setattr(of_folder, "limit", limit)
    assert cli.main(["report", str(tmp_path / "bad")]) == 1
    said = capsys.readouterr().out
    assert "passed over: " in said
    assert f"{tmp_path / 'bad' / 'cut.xlsx'}: " in said
    assert f"{tmp_path / 'bad' / 'hangs.xlsx'}: takes too much time or memory" in said
    assert "(whole.xlsx)" in said


def test_it_tells_on_a_terminal_how_far_it_is(
    club: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    assert cli.main(["report", str(club)]) == 0
    assert capsys.readouterr().err == ""  # nobody sits there
    monkeypatch.setattr("sys.stderr.isatty", lambda: True)
    assert cli.main(["report", str(club)]) == 0
    told = capsys.readouterr().err.split("\r")
    assert [line.strip() for line in told if line.strip()] == ["1 of 3 read", "2 of 3 read"]
    assert told[-2:] == [" " * 40, ""]  # and wiped


def test_what_cannot_be_told(club: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    (tmp_path / "empty").mkdir()
    for arguments, words in (
        ([str(tmp_path / "empty")], "there is no workbook in this folder"),
        ([str(club), "--csv", str(tmp_path / "a.xlsx")], "the table is an .csv file"),
        ([str(club), "--html", str(club / "hill.xlsx")], "the page is an .html file"),
    ):
        assert cli.main(["report", *arguments]) == 2
        assert words in capsys.readouterr().err
    assert not (tmp_path / "a.xlsx").exists()
