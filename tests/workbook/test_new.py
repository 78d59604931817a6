"""The command that writes a season: what it prints, and what it refuses."""

from __future__ import annotations

import re
import zipfile
from pathlib import Path

import openpyxl
import pytest

from sheetfuncs import cli
from sheetfuncs.workbook.commands.new.new import elevation, season_of
from sheetfuncs.workbook.model.editions import EDITIONS
from sheetfuncs.workbook.model.rows import Rows
from sheetfuncs.workbook.read.filled import read
from sheetfuncs.workbook.season import Season
from sheetfuncs.workbook.sheets.weekend import UNANSWERED
from tests.tools.edits import address

GOOD = "date,volume,brix\n2026-03-01,10,2\n"


def test_the_example_is_written_and_summed_up(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    path = tmp_path / "season.xlsx"
    assert cli.main(["new", str(path), "--example"]) == 0
    printed = capsys.readouterr().out.splitlines()
    assert printed[-2:] == [f"written: {path}", f"Next: open {path}; the sheet Weekend says what to type first."]
    assert any(line.startswith("sap collected") and "117.0 gal" in line for line in printed)
    assert openpyxl.load_workbook(path).sheetnames == [sheet.title for sheet in Season("US", {}).pages]


def test_editions_hold_the_same_values(tmp_path: Path) -> None:
    """But for the line on top, and what says whether this program computes."""
    found, season = [], season_of("US", Rows(), {}, with_example=True)
    for edition in EDITIONS:
        path = tmp_path / f"{edition}.xlsx"
        assert cli.main(["new", str(path), "--example", "--edition", edition]) == 0
        book = openpyxl.load_workbook(path, data_only=True)
        silent = {("Weekend", "A2")} | {address(season, name) for name in UNANSWERED}
        cells = {(sheet.title, cell.coordinate): cell.value for sheet in book for row in sheet for cell in row}
        found.append({place: value for place, value in cells.items() if place not in silent})
    assert found[0] == found[1] == found[2]


@pytest.mark.parametrize("edition", EDITIONS)
def test_no_macros_in_an_xlsx(edition: str, tmp_path: Path) -> None:
    assert cli.main(["new", str(tmp_path / "a.xlsx"), "--edition", edition]) == 0
    with zipfile.ZipFile(tmp_path / "a.xlsx") as archive:
        assert not [name for name in archive.namelist() if "vba" in name.lower() or name.endswith(".bin")]


BAD_LOGS = [
    ("", "the file is empty"),
    ("date,volume,brix\n", "there is no run below the headings"),
    ("when,volume,brix\n2026-03-01,10,2\n", "line 1: no heading date"),
    (GOOD + "2026-03-02,ten,2\n", "line 3: volume is 'ten'"),
    (GOOD + "2026-03-02,-1,2\n", "line 3: volume is -1"),
    (GOOD + "2026-03-02,nan,2\n", "line 3: volume is 'nan'"),
    (GOOD + "2026-03-02,10,86\n", "line 3: brix is 86"),
    (GOOD + "03/02/2026,10,2\n", "line 3: date is '03/02/2026'"),
    (GOOD + "\n\n2026-13-02,10,2\n", "line 5: date is '2026-13-02'"),
    (GOOD + '2026-03-02,"10,2\n', "not a CSV file"),
    ("PK\x03\x04\0\0", "not a CSV file"),
]


@pytest.mark.parametrize(("text", "words"), BAD_LOGS, ids=[words for _, words in BAD_LOGS])
def test_a_bad_log_is_named_by_line_and_nothing_is_written(
    text: str, words: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    log = tmp_path / "log.csv"
    log.write_text(text)
    assert cli.main(["new", str(tmp_path / "a.xlsx"), "--collection", str(log)]) == 2
    printed = capsys.readouterr()
    assert words in printed.err
    assert str(log) in printed.err
    assert printed.err.count("\n") == 1
    assert [path.name for path in tmp_path.iterdir()] == ["log.csv"]


@pytest.mark.parametrize(
    ("arguments", "words"),
    [
        (["--collection", "no-such.csv"], "no-such.csv: there is no such file"),
        (["--units", "imperial"], "--units imperial: there is no such unit system"),
        (["--elevation", "high"], "--elevation 'high': not a length"),
        (["--elevation", "20 kg"], "--elevation '20 kg': not a length"),
        (["--elevation", "90000 ft"], "it must be -1,400 to 16,000 ft"),
        (["--rows", "0"], "--rows 0"),
        (["--rows", "1000000"], "--rows 1000000"),
        (["--season", "12"], "--season 12"),
    ],
)
def test_bad_options_are_refused(
    arguments: list[str], words: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert cli.main(["new", str(tmp_path / "a.xlsx"), *arguments]) == 2
    assert words in capsys.readouterr().err
    assert not list(tmp_path.iterdir())


def test_bytes_that_are_no_text_are_refused(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    log = tmp_path / "log.csv"
    log.write_bytes(b"date,volume,brix\n2026-03-01,1\xff0,2\n")
    assert cli.main(["new", str(tmp_path / "a.xlsx"), "--collection", str(log)]) == 2
    assert "cannot be read as text" in capsys.readouterr().err


def test_a_file_is_never_written_over_without_being_told(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    path = tmp_path / "a.xlsx"
    path.write_text("mine")
    assert cli.main(["new", str(path)]) == 2
    assert "--replace" in capsys.readouterr().err
    assert path.read_text() == "mine"
    assert cli.main(["new", str(path), "--replace"]) == 0
    assert zipfile.is_zipfile(path)


def test_a_missing_folder_and_another_ending_are_refused(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert cli.main(["new", str(tmp_path / "none" / "a.xlsx")]) == 2
    assert "there is no folder" in capsys.readouterr().err
    assert cli.main(["new", str(tmp_path / "a.ods")]) == 2
    assert "end the name with .xlsx" in capsys.readouterr().err


@pytest.mark.parametrize(
    ("text", "system", "wanted"),
    [("650 ft", "US", 650.0), ("200 m", "US", 656.2), ("650 ft", "metric", 198.1), ("650", "US", 650.0)],
)
def test_an_elevation_is_read_with_its_unit(text: str, system: str, wanted: float) -> None:
    assert elevation(text, system) == wanted


def test_a_thousand_collections_fit(tmp_path: Path) -> None:
    log = tmp_path / "log.csv"
    lines = [f"2026-03-{1 + number % 28:02},5,2" for number in range(1000)]
    log.write_text("date,volume,brix\n" + "\n".join(lines))
    assert cli.main(["new", str(tmp_path / "a.xlsx"), "--collection", str(log)]) == 0
    assert read(tmp_path / "a.xlsx").season.inputs["collection.sap"] == [5.0] * 1000


def test_a_log_has_room_whatever_the_rows(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    log = tmp_path / "log.csv"
    log.write_text("date,volume,brix\n" + "2026-03-01,5,2\n" * 200)
    assert cli.main(["new", str(tmp_path / "a.xlsx"), "--collection", str(log), "--rows", "10"]) == 0
    assert re.search("sap collected +1,000.0 gal", capsys.readouterr().out)
    assert read(tmp_path / "a.xlsx").season.inputs["collection.sap"] == [5.0] * 200


def test_more_input_than_a_table_holds_is_refused() -> None:
    with pytest.raises(ValueError, match=r"collection\.sap: 3 rows for a table of 2"):
        Season("US", {"collection.sap": [1.0, 2.0, 3.0]}, Rows(collections=2))
