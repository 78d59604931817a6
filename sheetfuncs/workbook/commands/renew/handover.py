"""Next season's workbook: what stays is carried, the logs are empty, and a page tells a newcomer what is known."""

from __future__ import annotations

import argparse
import datetime
from collections.abc import Iterator, Sequence
from pathlib import Path
from typing import Any

from sheetfuncs.files import Refused
from sheetfuncs.formulas.air import WATER_BOILS
from sheetfuncs.workbook.commands.renew.carried import Carried
from sheetfuncs.workbook.commands.renew.convert import target, told, write
from sheetfuncs.workbook.model.kinds import typed
from sheetfuncs.workbook.model.parts import DATE, FUEL, Rows
from sheetfuncs.workbook.read.filled import Filled
from sheetfuncs.workbook.season import Season
from sheetfuncs.workbook.sheets import newcomer
from sheetfuncs.workbook.sheets.phrases import MONTHS

# What stays from year to year; of the settings all but the year, the day of late sap and the taps.
STAYS = {
    "thermometers": ("name", "error"),
    "pans": ("name", "length", "width", "depth"),
    "containers": ("name", "holds", "place", "kept"),
    "jars": ("name", "size", "have"),
    "trees": ("name", "species", "girth"),
}
ANEW = ("yard.year", "yard.split", "yard.typed_taps")
DECIMALS = 2
SEASON = ("taps", "sap", "syrup", "brix", "days", "hours", "first", "last")  # what is told of each season


def handover(options: argparse.Namespace) -> int:
    """Write next season's workbook and print what was carried."""
    source, path = Path(options.file), target(options)
    filled = Filled(source)
    filled.season.compute()
    year = _year(filled)
    following = options.season or (year + 1 if year else datetime.date.today().year)
    if not 1900 <= following <= 2200:
        raise Refused(f"--season {following}: give a year from 1900 to 2200")
    inputs = _inputs(filled, year) | {"yard.year": float(following)}
    rows = _rows(filled, inputs)
    carried = Carried(filled, f"Carried from {year or 'before'}", anew=(newcomer.TITLE,))
    page = list(_page(filled, inputs, following))
    season = Season(filled.system, inputs, rows, newcomer=page, plains=carried.sheets)
    write(season, path, filled.edition, options.replace)
    print("\n".join([*_summary(inputs), *told(filled, carried), f"written: {path}, for {following}"]))
    return 0


def _year(filled: Filled) -> int | None:
    """The year of the season that ends: as typed, else of its last run."""
    given = filled.season.inputs.get("yard.year")
    if isinstance(given, float) and 1900 <= given <= 2200:
        return int(given)
    last = typed(DATE, filled.season.value("season.last"))
    return last.year if isinstance(last, datetime.date) else None


def _inputs(filled: Filled, year: int | None) -> dict[str, Any]:
    """What is typed into next season's workbook already."""
    old = filled.season.inputs
    found = {name: value for name, value in old.items() if name.startswith("yard.") and name not in ANEW}
    for table, keys in STAYS.items():
        found |= {f"{table}.{key}": old[f"{table}.{key}"] for key in keys if f"{table}.{key}" in old}
    past = {name: list(value) for name, value in old.items() if name.startswith("past.")}
    lines = max((len(column) for column in past.values()), default=0)
    for name, column in past.items():
        column.extend([None] * (lines - len(column)))
        if filled.season.value("season.sap") or filled.season.value("season.bottled"):
            column.append(_this_season(filled, name.partition(".")[2], year))
    return found | past


def _this_season(filled: Filled, key: str, year: int | None) -> Any:
    """The season that ends, as a line under the earlier ones."""
    if key == "season":
        return str(year) if year else None
    value = None if key == "note" else typed(filled.cells[f"past.{key}"].kind, filled.season.value(f"this.{key}"))
    if isinstance(value, float):
        return round(value, DECIMALS + (filled.cells[f"past.{key}"].kind == FUEL))
    return value


def _rows(filled: Filled, inputs: dict[str, Any]) -> Rows:
    """As many rows as the old workbook had; one more for the seasons where they were full."""
    lines = max((len(value) for name, value in inputs.items() if name.startswith("past.")), default=0)
    return filled.rows._replace(past=max(filled.rows.past, lines))


def _summary(inputs: dict[str, Any]) -> Iterator[str]:
    counted = {table: sum(one is not None for one in inputs.get(f"{table}.name", ())) for table in STAYS}
    yield "carried: the yard's settings, " + ", ".join(f"{number} {table}" for table, number in counted.items())
    yield f"carried: {sum(one is not None for one in inputs.get('past.season', ()))} seasons"
    yield "empty: the logs, the taps of each tree, what thermometers show in boiling water"


def _page(filled: Filled, inputs: dict[str, Any], following: int) -> Iterator[tuple[str, Sequence[str]]]:
    """Who, where, how many taps, and what this yard has given so far."""
    yield "This yard", list(_yard(filled, following))
    history = list(_history(filled, inputs))
    yield "What it has given", history or ["No season of this yard is on record yet."]
    yield (
        "Before the first run",
        (
            "Choose the taps anew: in Yard, fill in Taps for each tree you tap. Keep away from old holes.",
            "Hang each thermometer into water that boils hard and write what it shows into Yard, the day you use it.",
            "Wash everything that touches sap with hot water, without soap. Count the jars.",
            "The logs are empty; the old workbook keeps last season's. Earlier seasons stand at the foot of Season.",
        ),
    )


def _yard(filled: Filled, following: int) -> Iterator[str]:
    season, old = filled.season, filled.season.inputs
    yield f"Season {following} of {old.get('yard.name') or 'a yard without a name yet'}."
    if old.get("yard.keeper"):
        yield f"Kept until now by {old['yard.keeper']}: ask there first."
    if isinstance(old.get("yard.elevation"), float):
        yield f"It lies {old['yard.elevation']:g} {season.units.elevation} above the sea."
    standard = season.value("weekend.standard")
    if isinstance(standard, float):
        boils = WATER_BOILS(standard, filled.system)
        yield f"On a standard day water boils there at {boils:.1f} {season.units.temperature}."
    trees = sum(one is not None for one in old.get("trees.name", ()))
    taps = season.value("yard.taps")
    if isinstance(taps, float) and taps:
        yield f"Last season it had {taps:g} taps" + (f" in {trees} trees." if trees else ".")
    rate = season.value("yard.rate")
    if isinstance(rate, float) and rate:
        yield f"The pan boiled off about {rate:.1f} {season.units.volume} of water an hour."


def _history(filled: Filled, inputs: dict[str, Any]) -> Iterator[str]:
    """Each measure over the seasons on record: the mean, and the least and most."""
    units = filled.season.units
    columns = {key: inputs.get(f"past.{key}", []) for key in SEASON}
    each = [dict(zip(SEASON, line, strict=True)) for line in zip(*columns.values(), strict=False)]
    measures = (
        ("Sap per tap", [_over(one["sap"], one["taps"]) for one in each], units.volume, 1),
        ("Syrup per tap", [_over(one["syrup"], one["taps"]) for one in each], units.volume, 2),
        ("Sap for one of syrup", [_over(one["sap"], one["syrup"]) for one in each], "", 0),
        ("Sugar of the sap", columns["brix"], "°Brix", 1),
        ("Days it ran", columns["days"], "", 0),
        ("Hours at the pan", columns["hours"], "", 0),
    )
    for words, values, unit, decimals in measures:
        numbers = [value for value in values if isinstance(value, float)]
        if numbers:
            mean, least, most = (
                f"{one:.{decimals}f}" for one in (sum(numbers) / len(numbers), min(numbers), max(numbers))
            )
            spread = f", from {least} to {most} over {len(numbers)} seasons" if len(numbers) > 1 else ", in one season"
            yield f"{words}: {mean} {unit}".rstrip() + f"{spread}."
    for words, key in (("First run", "first"), ("Last run", "last")):
        days = sorted((day for day in columns[key] if isinstance(day, datetime.date)), key=_in_winter)
        if days:
            yield f"{words}: {_day(days[0])}" + (f" to {_day(days[-1])}." if _day(days[0]) != _day(days[-1]) else ".")


def _over(one: Any, other: Any) -> float | None:
    return one / other if isinstance(one, float) and isinstance(other, float) and other > 0 else None


def _in_winter(day: datetime.date) -> tuple[int, int]:
    """Where a day stands in a winter, whatever the year: November comes before January."""
    return (day.month - 11) % 12, day.day


def _day(day: datetime.date) -> str:
    return f"{day.day} {MONTHS[day.month - 1]}"
