"""Next season's workbook: what stays is carried, the logs are empty, and a page tells a newcomer what is known."""

from __future__ import annotations

import argparse
import datetime
from collections.abc import Iterator
from pathlib import Path
from typing import Any

from sheetfuncs.files import Refused
from sheetfuncs.workbook.commands.renew.carried import Carried
from sheetfuncs.workbook.commands.renew.story import story
from sheetfuncs.workbook.commands.renew.told import exit_code, told
from sheetfuncs.workbook.commands.target import target, write
from sheetfuncs.workbook.commands.weather import weather_inputs
from sheetfuncs.workbook.model.kinds import DATE, FUEL
from sheetfuncs.workbook.model.rows import Rows
from sheetfuncs.workbook.read.filled import Filled, read
from sheetfuncs.workbook.season import Season
from sheetfuncs.workbook.sheets import newcomer

# What stays from year to year; of the settings all but the year, the day of late sap and the taps.
STAYS = {
    "thermometers": ("name", "error"),
    "pans": ("name", "length", "width", "depth"),
    "places": ("name", "holds", "where", "kept"),
    "jars": ("name", "size", "have"),
    "trees": ("name", "species", "girth"),
}
ANEW = ("yard.year", "know.split", "yard.typed_taps")
DECIMALS = 2


def handover(options: argparse.Namespace) -> int:
    """Write next season's workbook and print what was carried."""
    path = target(options.new, options.replace, options.file)
    filled = read(Path(options.file))
    filled.season.compute()
    year = _year(filled)
    following = options.season if options.season is not None else year + 1 if year else datetime.date.today().year
    if not 1900 <= following <= 2200:
        given = f"--season {following}" if options.season is not None else f"the season after {year}"
        raise Refused(f"{given}: give a year from 1900 to 2200 with --season")
    inputs = _inputs(filled, year) | {"yard.year": float(following)} | weather_inputs(options, filled.system)
    rows = _rows(filled, inputs)
    carried = Carried(filled, f"Carried from {year or 'before'}", anew=(newcomer.TITLE,))
    page = list(story(filled, inputs, following))
    season = Season(filled.system, inputs, rows, newcomer=page, plains=carried.sheets)
    lines = [*_summary(inputs), *told(filled, carried)]
    kept = write(season, path, filled.edition, options.replace)
    print("\n".join([*lines, *kept, f"written: {path}, for {following}"]))
    return exit_code(filled)


def _year(filled: Filled) -> int | None:
    """The year of the season that ends: as typed, else of its last run."""
    given = filled.season.inputs.get("yard.year")
    if isinstance(given, float) and 1900 <= given <= 2200:
        return int(given)
    last = DATE.parse(filled.season.value("season.last"))
    return last.year if isinstance(last, datetime.date) else None


def _inputs(filled: Filled, year: int | None) -> dict[str, Any]:
    """What is typed into next season's workbook already."""
    old = filled.season.inputs
    found = {name: value for name, value in old.items() if name.startswith(("yard.", "know.")) and name not in ANEW}
    for table, keys in STAYS.items():
        found |= {f"{table}.{key}": old[f"{table}.{key}"] for key in keys if f"{table}.{key}" in old}
    past = {name: list(value) for name, value in old.items() if name.startswith("past.")}
    lines = max((len(column) for column in past.values()), default=0)
    known = year is not None and str(year) in {str(one).strip() for one in past.get("past.season", ())}
    for name, column in past.items():
        column.extend([None] * (lines - len(column)))
        if not known and (filled.season.value("season.sap") or filled.season.value("season.bottled")):
            column.append(_this_season(filled, name.partition(".")[2], year))
    return found | past


def _this_season(filled: Filled, key: str, year: int | None) -> Any:
    """The season that ends, as a line under the earlier ones."""
    if key == "season":
        return str(year) if year else None
    value = None if key == "note" else filled.cells[f"past.{key}"].kind.parse(filled.season.value(f"this.{key}"))
    if isinstance(value, float):
        return round(value, DECIMALS + (filled.cells[f"past.{key}"].kind == FUEL))
    return value


def _rows(filled: Filled, inputs: dict[str, Any]) -> Rows:
    """As many rows as the old workbook had; more where the seasons or a saved record of weather need them."""
    lines = max((len(value) for name, value in inputs.items() if name.startswith("past.")), default=0)
    days = len(inputs.get("weather.date", ()))
    return filled.rows._replace(past=max(filled.rows.past, lines), days=max(filled.rows.days, days))


def _summary(inputs: dict[str, Any]) -> Iterator[str]:
    counted = {table: sum(one is not None for one in inputs.get(f"{table}.name", ())) for table in STAYS}
    yield "carried: the yard's settings, " + ", ".join(f"{number} {table}" for table, number in counted.items())
    yield f"carried: {sum(one is not None for one in inputs.get('past.season', ()))} seasons"
    yield "empty: the logs, the taps of each tree, what thermometers show in boiling water"
