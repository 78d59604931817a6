"""A new season workbook from the command line: its inputs gathered, its sums told."""

from __future__ import annotations

import argparse
from pathlib import Path
from typing import Any

from sheetfuncs.files import Refused
from sheetfuncs.formulas.vocabulary import PLACE
from sheetfuncs.workbook import example
from sheetfuncs.workbook.commands.new.length import metres
from sheetfuncs.workbook.commands.new.log import read_log
from sheetfuncs.workbook.commands.target import target, write
from sheetfuncs.workbook.commands.weather import weather_inputs
from sheetfuncs.workbook.model.kinds import DATE
from sheetfuncs.workbook.model.rows import MOST_ROWS, Rows
from sheetfuncs.workbook.model.systems import Units, unit_system
from sheetfuncs.workbook.season import Season


def new(options: argparse.Namespace) -> int:
    """Write a season workbook and print its sums."""
    path = target(options.file, options.replace)
    system = unit_system(options.units)
    typed: dict[str, Any] = {}
    if options.season is not None:
        if not 1900 <= options.season <= 2200:
            raise Refused(f"--season {options.season}: give a year from 1900 to 2200")
        typed["yard.year"] = options.season
    if options.elevation is not None:
        typed["yard.elevation"] = elevation(options.elevation, system)
    typed |= weather_inputs(options, system)
    rows = Rows()
    if options.collection is not None:
        log = read_log(Path(options.collection))
        if len(log["collection.date"]) > MOST_ROWS:
            raise Refused(f"{options.collection}: more than {MOST_ROWS:,} runs; is this the right file?")
        rows = rows.scaled(len(log["collection.date"]))
        typed |= log
    if options.rows is not None:
        if not 1 <= options.rows <= MOST_ROWS:
            raise Refused(f"--rows {options.rows}: give a number from 1 to {MOST_ROWS:,}")
        rows = Rows().scaled(max(options.rows, len(typed.get("collection.date", ()))))
    rows = rows._replace(days=max(rows.days, len(typed.get("weather.date", ()))))
    season = season_of(system, rows, typed, options.example)
    season.compute()
    lines = sums(season)
    kept = write(season, path, options.edition, options.replace)
    print("\n".join([*lines, *kept, f"written: {path}"]))
    return 0


def season_of(system: str, rows: Rows, typed: dict[str, Any], with_example: bool, mistakes: bool = False) -> Season:
    """A season with what was typed, over the example if asked for."""
    if not with_example:
        return Season(system, typed, rows)
    empty = Season(system, {}, rows)
    return Season(system, example.inputs(empty.sheets, system, mistakes) | typed, rows)


def elevation(text: str, system: str) -> float:
    """An elevation such as "650 ft" or "200 m" in the workbook's unit; a bare number is in it already."""
    unit = PLACE.quantity.unit(system)
    value = unit.out_of_si(metres("--elevation", text, unit.symbol))
    low, high = PLACE.limits(system)
    if not low <= value <= high:
        raise Refused(f"--elevation {text[:60]!r}: it must be {PLACE.range_words(system)}")
    return float(round(value, 1))


def sums(season: Season) -> list[str]:
    """The season in a dozen lines."""
    units: Units = season.units
    v = units.volume

    def number(name: str, unit: str = "", digits: int = 1) -> str:
        value = season.value(name)
        if value is None or isinstance(value, str):
            return value or "not known yet"
        return f"{value:,.{digits}f} {unit}".rstrip()

    first, last = _day(season.value("season.first")), _day(season.value("season.last"))
    lines = [
        ("runs", f"{number('season.days', 'days', 0)}, {first} to {last}" if first else "none yet"),
        ("sap collected", f"{number('season.sap', v)} at {number('season.brix', '°Brix', 2)}"),
        ("syrup in that sap", f"{number('season.expected', v, 2)} at the target"),
        ("syrup bottled", number("season.bottled", v, 2)),
        ("syrup waiting in store", number("store.syrup", v, 2)),
        ("sugar", season.value("sugar.said")),
        ("next", season.value("now.next")),
        ("boil first", season.value("now.first")),
        ("finishing reading", season.value("now.reading")),
        ("hours", season.value("now.boil")),
        ("fuel", season.value("now.fuel")),
        ("will it run", season.value("now.run")),
        ("taps", season.value("now.pull")),
    ]
    width = max(len(label) for label, _ in lines)
    return [f"{label:{width}}  {text}" for label, text in lines]


def _day(serial: Any) -> str:
    """A spreadsheet's day as a date."""
    return str(DATE.parse(serial) or "")
