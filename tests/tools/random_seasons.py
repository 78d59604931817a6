"""Random seasons, typed into the embedded engine: believable ones and odd ones, and every sentence they bring.

    python -m tests.tools.random_seasons [HOW MANY] [SEED]

prints each distinct sentence once, its numbers as they came first.
"""

from __future__ import annotations

import datetime
import random
import re
import sys
from collections.abc import Iterator
from typing import Any

from sheetfuncs import FINISH_TEMP, SYRUP_FLOATS, WATER_BOILS
from sheetfuncs.workbook.season import TODAY
from tests.tools.typed_into import Sheets

HOW_MANY, SEED = 300, 1
YEAR = 2026
ODD = 0.12  # of the cells of an odd season
ODD_VALUES = (0, -1, 1, 0.001, 0.04, 0.06, 0.5, 0.95, 1.04, 2.5, 59.6, 99.96, 1e6, 3e7, "text", "B9", "B1,B1", None)
WORDS = ("light, vanilla", "went cloudy", "two to a neighbor", "ice on the pails")
Fact = tuple[str, int]


def season(rng: random.Random, sheets: Sheets, odd: bool) -> dict[Fact, Any]:
    """What is typed in a season, the day it is opened on among it."""
    typed = {fact: value for fact, value in _season(rng, sheets) if value is not None}
    if odd:
        for fact in sheets.facts():
            if rng.random() < (ODD if fact in typed else ODD / 8):
                typed[fact] = rng.choice(ODD_VALUES)
    return typed


def _season(rng: random.Random, sheets: Sheets) -> Iterator[tuple[Fact, Any]]:
    """A small yard's season as far as it has come: each cell filled in more or less often."""
    us = sheets.season.units.system == "US"
    care = rng.choice((0.3, 0.6, 0.9, 1.0))  # how much of what may be left out is filled in
    start = datetime.date(YEAR, 2, rng.randint(1, 28))
    length = rng.choice((3, 10, 30, 60))
    today = start + datetime.timedelta(rng.choice((-10, length, rng.randint(0, length), length + 20)))
    pressure = rng.uniform(25.5, 30.6)
    water = WATER_BOILS(pressure)
    rows = {name.partition(".")[0]: sheets.height(name) for name in sheets.season.cells}

    def degrees(fahrenheit: float) -> float:
        return round(fahrenheit if us else (fahrenheit - 32) / 1.8, rng.choice((0, 1, 1, 2)))

    def gallons(amount: float) -> float:
        return round(amount if us else amount * 3.785, rng.choice((1, 2)))

    def maybe(value: Any, often: float = 1.0) -> Any:
        return value if rng.random() < care * often else None

    def day(upto: int = length) -> datetime.date:
        return start + datetime.timedelta(rng.randint(0, max(1, upto)))

    def table(name: str, most: int | None = None) -> int:
        return rng.randint(0, min(rows[name], most or rows[name]))

    yield (TODAY, 0), today
    yield ("yard.name", 0), maybe("Quarry Lane")
    yield ("yard.year", 0), maybe(YEAR)
    yield ("yard.elevation", 0), maybe(round(rng.uniform(0, 3000) * (1 if us else 0.3)))
    yield ("yard.typed_taps", 0), maybe(rng.choice((1, 2, 8, 25, 300)), 0.7)
    yield ("yard.fuel", 0), maybe(rng.choice(sheets.season.cells["yard.fuel"].choices))
    yield ("weekend.barometer", 0), maybe(round(pressure if us else pressure * 33.864, 1), 0.5)
    yield ("weekend.done_by", 0), maybe(datetime.time(rng.randint(0, 23), rng.choice((0, 30))), 0.6)
    yield ("know.target", 0), maybe(rng.choice((66.0, 66.9, 67.5)), 0.5)
    yield ("know.finish_pan", 0), maybe("pan a", 0.6)
    yield ("know.fuel_price", 0), maybe(round(rng.uniform(0, 400), 2), 0.4)
    yield ("know.typed_rate", 0), maybe(gallons(rng.uniform(0.5, 12)), 0.3)
    yield ("know.split", 0), maybe(day(), 0.3)
    yield ("taps.tapped", 0), maybe(start - datetime.timedelta(rng.randint(0, 20)))
    yield ("taps.pulled", 0), maybe(day(length + 10), 0.2)
    for row in range(rows["thermometers"]):
        name = f"dial {'ab'[row % 2]}"
        yield ("thermometers.name", row), maybe(name)
        yield ("thermometers.water", row), maybe(degrees(water + rng.gauss(0, 1)), 0.7)
        yield ("thermometers.read_on", row), maybe(day(), 0.7)
        yield ("thermometers.error", row), maybe(rng.choice((0.2, 0.5, 1, 2)), 0.4)
    for row in range(rows["pans"]):
        yield ("pans.name", row), maybe(f"pan {'ab'[row % 2]}")
        for key, low, high in (("length", 6, 48), ("width", 6, 30), ("depth", 2, 12)):
            yield (f"pans.{key}", row), maybe(round(rng.uniform(low, high) * (1 if us else 2.54)), 0.8)
    for row in range(rows["places"]):
        yield ("places.name", row), maybe(f"bucket {'abcde'[row % 5]}")
        yield ("places.holds", row), maybe(gallons(rng.uniform(1, 60)), 0.8)
        yield ("places.where", row), maybe(rng.choice(sheets.season.cells["places.where"].choices), 0.8)
        yield ("places.kept", row), maybe(degrees(rng.uniform(20, 55)), 0.3)
    for row, (name, size) in enumerate((("quart", 32), ("pint", 16), ("half pint", 8), ("taster", 1.7))):
        if row < rows["jars"]:
            yield ("jars.name", row), maybe(name)
            yield ("jars.size", row), maybe(size if us else round(size * 29.57), 0.9)
            yield ("jars.have", row), maybe(rng.choice((0, 1, 2, 12, 40)), 0.7)
    for row in range(table("trees")):
        yield ("trees.name", row), f"T{row + 1}"
        yield ("trees.species", row), maybe(rng.choice(sheets.season.cells["trees.species"].choices))
        yield ("trees.girth", row), maybe(round(rng.uniform(20, 120) * (1 if us else 2.54)))
        yield ("trees.taps", row), maybe(rng.randint(0, 4))
        yield ("trees.tapped", row), maybe(start - datetime.timedelta(rng.randint(0, 9)), 0.6)
        yield ("trees.pulled", row), maybe(day(length + 10), 0.1)
    ahead = rng.choice((start, today, today - datetime.timedelta(3)))
    for row in range(table("weather")):
        night = rng.gauss(27, 7)
        yield ("weather.date", row), ahead + datetime.timedelta(row)
        yield ("weather.low", row), degrees(night)
        yield ("weather.high", row), degrees(night + abs(rng.gauss(16, 7)))
    for key in ("buds", "cloudy", "smell"):
        yield (f"signs.{key}", 0), maybe(rng.choice(("no", "no", "yes")), 0.4)
    dates = sorted(day() for _ in range(rows["collection"]))
    for row in range(table("collection")):
        yield ("collection.date", row), dates[row]
        yield ("collection.sap", row), gallons(rng.choice((0.3, 1, rng.uniform(1, 30), rng.uniform(20, 200))))
        yield ("collection.into", row), maybe(f"bucket {rng.choice('abcde')}", 0.9)
        how = rng.random()
        yield ("collection.brix", row), maybe(round(rng.gauss(2.1, 0.4), 1)) if how < 0.6 else None
        yield ("collection.warmth", row), maybe(degrees(rng.uniform(51, 80)), 0.2)
        yield ("collection.floats", row), maybe(round(rng.gauss(2.1, 0.4), 1)) if 0.6 < how < 0.8 else None
        yield ("collection.floats_at", row), maybe(degrees(rng.uniform(33, 60))) if 0.6 < how < 0.8 else None
        yield ("collection.ice", row), maybe(round(rng.uniform(0, 0.6), 2), 0.2)
        yield ("collection.ice_brix", row), maybe(round(rng.uniform(0, 1), 1), 0.1)
        yield ("collection.from_tree", row), maybe("T1", 0.1)
        yield ("collection.note", row), maybe(rng.choice(WORDS), 0.2)
    lots = [row + 1 for row in range(table("boil"))]
    dates = sorted(day() for _ in lots)
    for row, _ in enumerate(lots):
        brix = rng.uniform(8, 60)
        yield ("boil.date", row), dates[row]
        yield ("boil.took", row), maybe(rng.choice(("all sap", f"{rng.randint(1, 20)}")), 0.4)
        yield ("boil.hours", row), maybe(round(rng.uniform(0.5, 9), 2))
        yield ("boil.jar", row), maybe("quart", 0.7)
        yield ("boil.jars_out", row), maybe(rng.randint(0, 9), 0.8)
        yield ("boil.rest", row), maybe(gallons(rng.uniform(0.1, 1)), 0.6)
        yield ("boil.pan", row), maybe("pan a", 0.8)
        yield ("boil.thermometer", row), maybe("dial a", 0.7)
        yield ("boil.water", row), maybe(degrees(water), 0.7)
        yield ("boil.reading", row), maybe(degrees(FINISH_TEMP(brix, pressure) + rng.gauss(0, 0.3)))
        yield ("boil.left_brix", row), maybe(round(brix, 1), 0.4)
        yield ("boil.left_at", row), maybe(degrees(rng.uniform(50, 150)), 0.2)
        yield ("boil.fuel", row), maybe(round(rng.uniform(0, 0.3), 3), 0.7)
        yield ("boil.over", row), maybe(gallons(rng.uniform(0, 6)), 0.2)
    for row in range(table("happenings")):
        yield ("happenings.lot", row), f"{rng.choice('BBS')}{rng.randint(1, max(1, len(lots)))}"
        yield ("happenings.what", row), rng.choice(sheets.season.cells["happenings.what"].choices)
        yield ("happenings.date", row), maybe(day())
        yield ("happenings.where", row), maybe(f"bucket {rng.choice('abcde')}", 0.6)
        yield ("happenings.jars", row), maybe(rng.randint(1, 4), 0.3)
        yield ("happenings.volume", row), maybe(gallons(rng.uniform(0.1, 2)), 0.3)
    batches = table("batches")
    for row in range(batches):
        brix, cup = rng.gauss(66.9, 1), rng.uniform(60, 211)
        yield ("batches.date", row), maybe(day())
        yield ("batches.goes_in", row), maybe(",".join(f"B{one}" for one in lots[row::2]) or None)
        yield ("batches.pan", row), maybe("pan b", 0.7)
        yield ("batches.thermometer", row), maybe("dial a")
        yield ("batches.water", row), maybe(degrees(water), 0.8)
        yield ("batches.volume_typed", row), maybe(gallons(rng.uniform(0.2, 5)), 0.3)
        yield ("batches.brix_typed", row), maybe(round(rng.uniform(15, 55), 1), 0.2)
        yield ("batches.off_at", row), maybe(degrees(FINISH_TEMP(min(max(brix, 60), 72), pressure)))
        yield ("batches.cup_shows", row), maybe(round(SYRUP_FLOATS(min(max(brix, 60), 72), cup), 1), 0.7)
        yield ("batches.cup_at", row), maybe(degrees(cup), 0.7)
        yield ("batches.pan_volume", row), maybe(gallons(rng.uniform(0.1, 3)), 0.3)
        yield ("batches.over", row), maybe(gallons(rng.uniform(0, 0.4)), 0.2)
        for key in ("fat", "colour"):
            yield (f"batches.{key}", row), maybe(rng.choice(sheets.season.cells[f"batches.{key}"].choices), 0.6)
        yield ("batches.light", row), maybe(rng.randint(5, 90), 0.3)
        yield ("batches.taste", row), maybe(rng.choice(WORDS), 0.3)
    time = rng.uniform(0.3, 0.99)
    reading = water + rng.uniform(0, 4)
    for row in range(table("run")):
        yield ("run.time", row), _time(time)
        yield ("run.reading", row), maybe(degrees(reading), 1 / care)
        yield ("run.batch", row), maybe(rng.randint(1, 2), 0.2)
        yield ("run.thermometer", row), maybe("dial a", 0.3)
        time, reading = time + rng.choice((1, 3, 10)) / 1440, reading + abs(rng.gauss(0.4, 0.4))
    for row in range(table("bottles")):
        yield ("bottles.batch", row), rng.randint(1, max(1, batches))
        yield ("bottles.date", row), maybe(day(length + 5))
        yield ("bottles.jar", row), maybe(rng.choice(("quart", "pint", "half pint")))
        yield ("bottles.filled", row), maybe(rng.randint(1, 12))
        yield ("bottles.sealed", row), maybe(rng.choice(("yes", "no")), 0.3)
        yield ("bottles.volume", row), maybe(gallons(rng.uniform(0.1, 2)), 0.3)
        yield ("bottles.at", row), maybe(degrees(rng.uniform(150, 200)), 0.8)
        yield ("bottles.brix", row), maybe(round(rng.gauss(66.9, 0.8), 1), 0.4)
        yield ("bottles.light", row), maybe(rng.randint(5, 90), 0.3)
    for row in range(table("past")):
        yield ("past.season", row), str(YEAR - 1 - row)
        yield ("past.taps", row), maybe(rng.randint(1, 40))
        yield ("past.sap", row), maybe(gallons(rng.uniform(5, 400)))
        yield ("past.brix", row), maybe(round(rng.gauss(2.1, 0.3), 1))
        yield ("past.syrup", row), maybe(gallons(rng.uniform(0.1, 9)))
        yield ("past.first", row), maybe(start.replace(year=YEAR - 1 - row, day=min(start.day, 28)))
        yield ("past.last", row), maybe(datetime.date(YEAR - 1 - row, 4, rng.randint(1, 20)))
        yield ("past.days", row), maybe(rng.randint(1, 30))
        yield ("past.hours", row), maybe(rng.randint(1, 90))
    for name in ("side.one", "side.other", "panel.batch", "one.batch"):
        yield (name, 0), maybe(rng.randint(1, max(1, batches)), 0.5)


def _time(share: float) -> datetime.time:
    minutes = round(share * 1440) % 1440
    return datetime.time(minutes // 60, minutes % 60)


def sentences(sheets: Sheets, typed: dict[Fact, Any]) -> dict[str, str]:
    """What the computed cells say of a season, by the cell that says it first; the sheets are left as they were."""
    for fact, value in typed.items():
        sheets.put(fact, value)
    names = {(spot.sheet, spot.row, spot.column): name for name, spot in sheets.season.layout.spots.items()}
    found: dict[str, str] = {}
    for title, cells in sheets.model.values(sheets.wanted).items():
        for (row, column), value in cells.items():
            if isinstance(value, str) and value and value not in found:
                found[value] = names.get((title, row, column), f"{title} {row + 1},{column + 1}")
    for fact in typed:
        sheets.put(fact, sheets.starts.get(fact))
    return found


def main() -> None:
    count = int(sys.argv[1]) if len(sys.argv) > 1 else HOW_MANY
    rng = random.Random(int(sys.argv[2]) if len(sys.argv) > 2 else SEED)  # noqa: S311 (no secret)
    shown: dict[str, str] = {}
    for system in ("US", "metric"):
        sheets = Sheets(system)
        for number in range(count // 2):
            for said, where in sentences(sheets, season(rng, sheets, odd=number % 3 == 0)).items():
                shown.setdefault(re.sub(r"[\d.,]*\d", "#", said), f"{where:24} {said}")
    print("\n".join(sorted(shown.values())))


if __name__ == "__main__":
    main()
