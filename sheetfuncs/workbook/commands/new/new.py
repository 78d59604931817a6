"""A new season workbook from the command line: its inputs gathered, its sums told."""

from __future__ import annotations

import argparse
from pathlib import Path
from typing import Any

from sheetfuncs.files import Refused, new_file
from sheetfuncs.formulas.vocabulary import PLACE
from sheetfuncs.workbook import example
from sheetfuncs.workbook.commands.new.log import read_log
from sheetfuncs.workbook.model.kinds import typed
from sheetfuncs.workbook.model.parts import DATE, MOST_ROWS, Rows, Units
from sheetfuncs.workbook.season import Season
from sheetfuncs.workbook.sheets.season import LEDGER

UNACCOUNTED = LEDGER.index("Not accounted for")


def new(options: argparse.Namespace) -> int:
    """Write a season workbook and print its sums."""
    path = Path(options.file)
    if path.suffix.lower() != ".xlsx":
        raise Refused(f"{path}: a season workbook is an .xlsx file; end the name with .xlsx")
    system = unit_system(options.units)
    typed: dict[str, Any] = {}
    if options.season is not None:
        if not 1900 <= options.season <= 2200:
            raise Refused(f"--season {options.season}: give a year from 1900 to 2200")
        typed["yard.year"] = options.season
    if options.elevation is not None:
        typed["yard.elevation"] = elevation(options.elevation, system)
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
        rows = Rows().scaled(options.rows)
    with new_file(path, options.replace) as part:
        season = season_of(system, rows, typed, options.example)
        season.write(part, options.edition)
    print("\n".join(sums(season)))
    print(f"written: {path}")
    return 0


def season_of(system: str, rows: Rows, typed: dict[str, Any], with_example: bool, mistakes: bool = False) -> Season:
    """A season with what was typed, over the example if asked for."""
    if not with_example:
        return Season(system, typed, rows)
    empty = Season(system, {}, rows)
    return Season(system, example.inputs(empty.sheets, system, mistakes) | typed, rows)


def unit_system(word: str) -> str:
    """The system that `--units` names."""
    known = {"us": "US", "metric": "metric"}
    if word.casefold() not in known:
        raise Refused(f"--units {word}: there is no such unit system; choose us or metric")
    return known[word.casefold()]


def elevation(text: str, system: str) -> float:
    """An elevation such as "650 ft" or "200 m" in the workbook's unit; a bare number is in it already."""
    import pint  # a third of a second: only where a unit is typed

    unit = PLACE.quantity.unit(system)
    registry: Any = pint.UnitRegistry()
    try:
        given = registry.Quantity(text)
        value = given.magnitude if given.dimensionless else given.to(unit.pint).magnitude
        value = float(value)
    except (pint.PintError, ValueError, TypeError, AttributeError, SyntaxError) as error:
        raise Refused(f"--elevation {text!r}: not a height ({error}); write it as '650 ft' or '200 m'") from None
    low, high = PLACE.limits(system)
    if not low <= value <= high:
        raise Refused(f"--elevation {text!r}: it must be {PLACE.range_words(system)}")
    return round(value, 1)


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
        ("syrup waiting in store", number("now.syrup_number", v, 2)),
        ("sugar unaccounted for", f"{season.value('ledger.mass', UNACCOUNTED):,.2f} {units.mass}"),
        ("boil first", season.value("now.first")),
        ("finishing reading", season.value("now.reading")),
        ("hours", season.value("now.boil")),
        ("fuel", season.value("now.fuel_words")),
        ("will it run", season.value("now.run")),
        ("taps", season.value("now.pull")),
    ]
    width = max(len(label) for label, _ in lines)
    return [f"{label:{width}}  {text}" for label, text in lines]


def _day(serial: Any) -> str:
    """A spreadsheet's day as a date."""
    return str(typed(DATE, serial) or "")
