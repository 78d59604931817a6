"""What SAP_RUNS and SEASON_GOES_ON would have said in seasons that are on record.

    python -m tests.tools.real_seasons

prints it; a test keeps the figures.  One orchard and three seasons of weather: of the 32 days that
can be judged 28 had sap, so a rule that always says yes would score 28 hits.
"""

from __future__ import annotations

import csv
from collections.abc import Iterator, Mapping
from datetime import date, timedelta
from pathlib import Path
from statistics import mean
from typing import NamedTuple

from sheetfuncs import SAP_RUNS, SEASON_GOES_ON, SEASON_WARMTH

DATA = Path(__file__).parents[1] / "data"
DAY = timedelta(days=1)
RAN = 5.0  # gal from 50 buckets: a tenth of a gallon a tap
THAW = 3.0  # °C: a freeze-thaw day has a low under it and a high over it
STILL = 0.51  # the authors' cut
PULLED = (date(2013, 4, 5), date(2014, 4, 3), date(2015, 4, 3))

Weather = Mapping[date, tuple[float, float]]  # low and high of a day, °C


class Score(NamedTuple):
    hits: int
    misses: int
    false_alarms: int
    dry: int


def _rows(name: str) -> Iterator[dict[str, str]]:
    with (DATA / name).open(encoding="utf-8", newline="") as file:
        yield from csv.DictReader(file)


def collections() -> list[tuple[date, float]]:
    """Each collection and its gallons."""
    return [(date.fromisoformat(row["date"]), float(row["volume_gal"])) for row in _rows("sap_log_macleish.csv")]


def one_day_after_another() -> list[tuple[date, float]]:
    """The collections that followed a day after the last: what one day gave."""
    log = collections()
    return [this for last, this in zip(log, log[1:], strict=False) if this[0] - last[0] == DAY]


def weather(place: str) -> Weather:
    rows = (row for row in _rows("sap_weather.csv") if row["place"] == place)
    return {date.fromisoformat(row["date"]): (float(row["tmin_c"]), float(row["tmax_c"])) for row in rows}


def at_the_orchard() -> Weather:
    """The orchard's own weather; where there is none the forest's, warmer by what they differ in the mean."""
    own, forest = weather("orchard"), weather("harvard forest")
    both = own.keys() & forest.keys()
    low, high = (mean(own[day][i] - forest[day][i] for day in both) for i in (0, 1))
    return {day: (there[0] + low, there[1] + high) for day, there in forest.items()} | dict(own)


PLACES = {"the forest's weather": weather("harvard forest"), "the orchard's": at_the_orchard()}


def runs(day: date, known: Weather) -> int:
    """What SAP_RUNS says of a day."""
    lows = [known[day - back * DAY][0] for back in range(3)]
    low, high = known[day]
    return int(SAP_RUNS(low, min(lows), high, "metric"))


def score(known: Weather, least: int, credited: int) -> Score:
    """How often SAP_RUNS, at `least` this class, was right of the day so many days before the collection."""
    said = [
        (runs(day - credited * DAY, known) >= least, gallons >= RAN)
        for day, gallons in one_day_after_another()
        if day - (credited + 2) * DAY in known
    ]
    return Score(
        said.count((True, True)), said.count((False, True)), said.count((True, False)), sum(not ran for _, ran in said)
    )


def still_in_season(year: int, known: Weather) -> list[tuple[date, float]]:
    """Each day of a year and SEASON_GOES_ON by the weather since 1 January."""
    freeze_thaws, warmth = 0, 0.0
    told = []
    day = date(year, 1, 1)
    while day in known:
        low, high = known[day]
        freeze_thaws += low < THAW < high
        warmth += SEASON_WARMTH(low, high, "metric")
        told.append((day, SEASON_GOES_ON(freeze_thaws, warmth, "metric")))
        day += DAY
    return told


def season_ends(year: int, known: Weather) -> date:
    """The last day on which the season is said to go on."""
    return max(day for day, likely in still_in_season(year, known) if likely >= STILL)


def weeks_right(known: Weather) -> tuple[int, int, int, int]:
    """Weeks of the season that were called so, and how many there were; other weeks that were not, and how many.

    A week is of the season from the first collection of the year to the last.
    """
    within: list[bool] = []
    without: list[bool] = []
    for pulled in PULLED:
        days = [day for day, _ in collections() if day.year == pulled.year]
        told = still_in_season(pulled.year, known)
        for start in range(0, len(told) - 6, 7):
            day, likely = told[start + 6]
            season = day >= min(days) and told[start][0] <= max(days)
            (within if season else without).append((likely >= STILL) == season)
    return sum(within), len(within), sum(without), len(without)


def main() -> None:
    print("SAP_RUNS: collections one day after the last, sap from 0.1 gal a tap on")
    for place, known in PLACES.items():
        for least, words in ((1, "maybe or likely"), (2, "likely")):
            for credited, when in enumerate(("that day", "the day before")):
                told = score(known, least, credited)
                print(
                    f"  by {place}, {words}, of {when}: {told.hits} hits, {told.misses} misses, "
                    f"{told.false_alarms} false alarms of {told.dry} dry days"
                )
    print("SEASON_GOES_ON: the last day it says so, and the day the taps were pulled")
    for place, known in PLACES.items():
        for pulled in PULLED:
            ends = season_ends(pulled.year, known)
            print(f"  by {place}: {ends}, pulled {pulled}: {(ends - pulled).days:+d} days")
        right, of_season, not_season, others = weeks_right(known)
        print(f"    weeks: {right} of {of_season} in the season, {not_season} of {others} out (published: 83, 95 %)")


if __name__ == "__main__":
    main()
