"""A real orchard's collections and weather, taken in as a user would: 50 buckets, 74 collections, taps pulled in April.

Source: the macleish package and Harvard Forest HF001, see tests/data/SOURCES.md; the days on which the taps
were pulled are notes in the same log.
"""

from __future__ import annotations

import datetime
from pathlib import Path

import pytest

from sheetfuncs import SAP_RUNS, cli
from sheetfuncs.workbook.read.filled import read
from tests.tools import real_seasons
from tests.tools.real_seasons import DAY, PULLED

FOREST = real_seasons.weather("harvard forest")
NIGHTS = 6  # of forecast that are known on the day


def a_season(pulled: datetime.date, folder: Path) -> Path:
    """A workbook of one year's log and weather up to a day's forecast, as the command writes it."""
    year, last = pulled.year, pulled + NIGHTS * DAY
    log = [f"{day},{gallons:g}" for day, gallons in real_seasons.collections() if day.year == year]
    (folder / "log.csv").write_text("\n".join(["date,volume", *log]) + "\n")
    days = [f"{day},{low:g},{high:g}" for day, (low, high) in FOREST.items() if day.year == year and day <= last]
    (folder / "weather.csv").write_text("\n".join(["date,low °C,high °C", *days]) + "\n", encoding="utf-8")
    path = folder / f"{year}.xlsx"
    words = ["new", str(path), "--season", str(year), "--edition", "linked", "--collection", str(folder / "log.csv")]
    assert cli.main([*words, "--weather", str(folder / "weather.csv")]) == 0
    return path


@pytest.mark.parametrize(("pulled", "frosts"), list(zip(PULLED, (2, 4, 5), strict=True)), ids=lambda one: str(one))
def test_a_season_on_record(pulled: datetime.date, frosts: int, tmp_path: Path) -> None:
    """On the day the taps were really pulled the verdict was to leave them in: frost was ahead, and by the gauge
    the season went on (72 to 97 percent).  Nobody wrote down why they were pulled, nor whether sap would have run.
    """
    season = read(a_season(pulled, tmp_path), pulled).season
    season.compute()
    log = [(day, gallons) for day, gallons in real_seasons.collections() if day.year == pulled.year]
    assert season.value("season.sap") == pytest.approx(sum(gallons for _, gallons in log))
    assert season.value("season.days") == len({day for day, gallons in log if gallons > 0})
    known = dict(zip(*(season.inputs[f"weather.{key}"] for key in ("date", "low")), strict=True))
    highs = dict(zip(*(season.inputs[f"weather.{key}"] for key in ("date", "high")), strict=True))
    other = 0
    for row, day in enumerate(known):
        if day - 2 * DAY in known:
            recent = min(known[day - back * DAY] for back in range(3))
            runs = SAP_RUNS(known[day], recent, highs[day], "US")
            assert season.value("weather.run", row) == runs, day
            other += runs != real_seasons.runs(day, FOREST)
    assert other <= 2  # °C in tenths are °F in tenths, nearly
    assert season.value("signs.pull") == f"Leave the taps in: {frosts} nights of frost are ahead."
    assert 0.72 < season.value("signs.goes_on") < 0.97


def test_the_whole_log_in_one_workbook(tmp_path: Path) -> None:
    lines = [f"{day},{gallons:g}" for day, gallons in real_seasons.collections()]
    (tmp_path / "log.csv").write_text("\n".join(["date,volume", *lines]) + "\n")
    path = tmp_path / "all.xlsx"
    assert cli.main(["new", str(path), "--edition", "linked", "--collection", str(tmp_path / "log.csv")]) == 0
    season = read(path).season
    season.compute()
    assert len([day for day in season.inputs["collection.date"] if day]) == 74
    assert season.value("season.sap") == pytest.approx(1538.5)
    assert season.value("collection.guess") == 1  # sugar was not read: it is the guess of Yard
