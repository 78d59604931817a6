"""Saved weather in a workbook: `new --weather`, `handover --weather`, rows pasted from `forecast`, holes in the log."""

from __future__ import annotations

import datetime
from pathlib import Path
from typing import Any

import pytest

from sheetfuncs import cli
from sheetfuncs.workbook.commands.check.check import check_file
from sheetfuncs.workbook.model.kinds import DATE, TEMPERATURE
from sheetfuncs.workbook.read.filled import read
from sheetfuncs.workbook.season import Season
from tests.tools.edits import SMALL, quickly, typed
from tests.weather.samples import FOLDER

DAY = datetime.date
SAVED = str(FOLDER / "national-periods.json")
DAYS = [DAY(2026, 3, 6) + datetime.timedelta(days=number) for number in range(8)]
LOWS, HIGHS = [None, 26, 28, 31, 33, 30, 27, 25], [41, 44, 47, 50, 52, 46, 43]


def weather_of(path: Path) -> tuple[Any, ...]:
    inputs = read(path).season.inputs
    return tuple(inputs[f"weather.{key}"] for key in ("date", "low", "high"))


def test_a_new_workbook_takes_a_saved_forecast(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert cli.main(["new", str(tmp_path / "a.xlsx"), "--weather", SAVED]) == 0
    assert "from U.S. National Weather Service" in capsys.readouterr().err
    assert weather_of(tmp_path / "a.xlsx") == (DAYS, LOWS, HIGHS)
    assert cli.main(["check", str(tmp_path / "a.xlsx")]) == 0


def test_in_a_metric_workbook_it_is_metric(tmp_path: Path) -> None:
    assert cli.main(["new", str(tmp_path / "a.xlsx"), "--units", "metric", "--weather", SAVED]) == 0
    assert weather_of(tmp_path / "a.xlsx")[1][1] == -3.3


def test_next_season_takes_a_saved_forecast_and_last_season_s_weather_is_gone(tmp_path: Path) -> None:
    old = typed(
        Season("US", {"yard.year": 2025.0}, SMALL), {("weather.date", 1): DAY(2025, 3, 1), ("weather.low", 1): 20}
    )
    old.write(tmp_path / "a.xlsx", "linked")
    assert cli.main(["handover", str(tmp_path / "a.xlsx"), str(tmp_path / "b.xlsx"), "--weather", SAVED]) == 0
    assert read(tmp_path / "b.xlsx").season.inputs["yard.year"] == 2026
    assert weather_of(tmp_path / "b.xlsx") == (DAYS, LOWS, HIGHS)


def test_a_record_of_a_whole_year_has_room(tmp_path: Path) -> None:
    days = [DAY(2025, 1, 1) + datetime.timedelta(days=number) for number in range(365)]
    lines = "\n".join(f"{day},{20 + day.day / 4:g},{40 + day.day / 4:g}" for day in days)
    (tmp_path / "saved.csv").write_text(f"date,low °F,high °F\n{lines}\n", encoding="utf-8")
    assert cli.main(["new", str(tmp_path / "a.xlsx"), "--weather", str(tmp_path / "saved.csv")]) == 0
    assert weather_of(tmp_path / "a.xlsx")[0] == days


@pytest.mark.parametrize("system", ["US", "metric"])
def test_rows_of_forecast_are_pasted_as_they_are(
    system: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """Each cell as a spreadsheet takes it: an ISO date is a date, a number is a number, nothing is blank."""
    assert cli.main(["forecast", SAVED, "--units", system.lower()]) == 0
    pasted = [line.split("\t") for line in capsys.readouterr().out.splitlines()]
    kinds = (("date", DATE), ("low", TEMPERATURE), ("high", TEMPERATURE))
    inputs: dict[str, Any] = {
        f"weather.{key}": [kind.from_text(row[number]) if row[number] else None for row in pasted]
        for number, (key, kind) in enumerate(kinds)
    }
    by_hand = Season(system, inputs, SMALL, today=DAYS[0])
    by_hand.compute()
    assert cli.main(["new", str(tmp_path / "a.xlsx"), "--units", system.lower(), "--weather", SAVED]) == 0
    by_option = read(tmp_path / "a.xlsx", DAYS[0]).season
    by_option.compute()
    assert {key: by_option.inputs[key] for key in inputs} == {
        key: [*column][: len(by_option.inputs[key])] for key, column in inputs.items()
    }
    said = [by_hand.value("weather.words", row) for row in range(len(DAYS))]
    assert said == [by_option.value("weather.words", row) for row in range(len(DAYS))]
    # low 26 F then 44 F: SAP_RUNS says likely; the first day has no low and says nothing
    assert said[:2] == ["", "likely"]


def test_days_that_are_missing_are_told_and_a_forecast_that_is_over_is_not(tmp_path: Path) -> None:
    days = [DAY(2026, 2, day) for day in (1, 2, 4, 5, 9)]
    season = Season("US", {"weather.date": days, "weather.low": [20] * 5, "weather.high": [40] * 5}, SMALL)
    found = check_file(quickly(season, tmp_path / "a.xlsx"), DAY(2026, 3, 1))
    assert [(one.sheet, one.sentence) for one in found if one.sheet == "Weather"] == [
        ("Weather", "No weather of Feb 3, 2026: frosts and warmth of that time are not known."),
        ("Weather", "No weather of 3 days from Feb 6, 2026 on: frosts and warmth of that time are not known."),
    ]


def test_a_bad_file_writes_nothing(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    (tmp_path / "saved").write_text("<html>")
    assert cli.main(["new", str(tmp_path / "a.xlsx"), "--weather", str(tmp_path / "saved")]) == 2
    assert "this is a web page" in capsys.readouterr().err
    assert [path.name for path in tmp_path.iterdir()] == ["saved"]
