"""What is known of a yard, told to whoever keeps it next: numbers, words, and where things are."""

from __future__ import annotations

import datetime
from collections.abc import Iterator, Mapping, Sequence
from typing import Any

from sheetfuncs.workbook.model.kinds import DATE, counted
from sheetfuncs.workbook.read.filled import Filled
from sheetfuncs.workbook.season import Season

SEASON = ("taps", "sap", "syrup", "brix", "days", "hours", "first", "last")  # what is told of each season
ENOUGH = 2  # rows of its own from which a figure is told


def story(filled: Filled, inputs: Mapping[str, Any], following: int) -> Iterator[tuple[str, Sequence[str]]]:
    """Titles, each with its lines; what nobody wrote down is left out."""
    season = filled.season
    yield "This yard", list(_yard(filled, following))
    for title, lines in (
        ("In the words of the last keeper", words(season)),
        ("What it has given", _history(filled, inputs)),
        ("What it has taught", _learned(season)),
        ("Where last year's holes are", _holes(season)),
        ("On the shelf", _shelf(season)),
    ):
        if found := list(lines):
            yield title, found
        elif title == "What it has given":
            yield title, ["No season of this yard is on record yet."]
    yield (
        "Before the first run",
        (
            "Choose the taps anew: in Yard, fill in Taps for each tree you tap. Keep away from old holes.",
            "Hang each thermometer into water that boils hard and write what it shows into Yard, the day you use it.",
            "Wash everything that touches sap with hot water, without soap. Count the jars.",
            "The logs are empty; the old workbook keeps last season's. Earlier seasons stand at the foot of Season.",
        ),
    )


def _rows(season: Season, table: str, *keys: str) -> Iterator[tuple[int, list[Any]]]:
    """The filled rows of a table's typed columns, by number."""
    columns = [season.inputs.get(f"{table}.{key}", []) for key in keys]
    for row in range(max(map(len, columns), default=0)):
        values = [column[row] if row < len(column) else None for column in columns]
        if any(value is not None for value in values):
            yield row, values


def _yard(filled: Filled, following: int) -> Iterator[str]:
    season, old = filled.season, filled.season.inputs
    yield f"Season {following} of {old.get('yard.name') or 'a yard without a name yet'}."
    if old.get("yard.keeper"):
        yield f"Kept until now by {old['yard.keeper']}: ask there first."
    if isinstance(old.get("yard.elevation"), float):
        yield f"It lies {old['yard.elevation']:g} {season.units.elevation} above the sea."
    rise = season.value("behind.rise")
    if isinstance(rise, float):
        yield f"Syrup is {rise:.1f} {season.units.difference} above what a thermometer shows in boiling water there."
    trees = sum(1 for _, (name,) in _rows(season, "trees", "name") if name)
    taps = season.value("yard.taps")
    if isinstance(taps, float) and taps:
        yield f"Last season it had {counted(taps, 'tap')}" + (f" in {counted(trees, 'tree')}." if trees else ".")


def words(season: Season) -> Iterator[str]:
    """What was written down along the way: in Season, and where one was typing anyway."""
    for _, (day, said) in _rows(season, "words", "date", "words"):
        if said:
            yield f"{DATE.brief(day, season.units)}: {said}" if isinstance(day, datetime.date) else str(said)
    for row, (day, note) in _rows(season, "boil", "date", "note"):
        if note:
            on = f", {DATE.brief(day, season.units)}" if isinstance(day, datetime.date) else ""
            yield f"Boil B{row + 1}{on}: {note}"
    for row, (taste, note) in _rows(season, "batches", "taste", "note"):
        said = "; ".join(str(one) for one in (taste, note) if one)
        if said:
            yield f"Batch {row + 1}: {said}."


def _learned(season: Season) -> Iterator[str]:
    units = season.units
    rate, rows = season.value("learned.rate"), season.value("learned.rate_rows")
    if isinstance(rate, float) and isinstance(rows, float) and rows:
        yield f"The pan boils off about {rate:.1f} {units.volume} of water an hour, from {counted(rows, 'boil')}."
    fuel, rows = season.value("learned.fuel_each"), season.value("learned.fuel_rows")
    if isinstance(fuel, float) and isinstance(rows, float) and rows:
        unit = season.value("yard.fuel_unit")
        yield f"Each {units.volume} of water took {fuel:.3g} {unit} of fuel, from {counted(rows, 'boil')}."
    tap, rows = season.value("learned.per_tap"), season.value("learned.per_tap_rows")
    if isinstance(tap, float) and isinstance(rows, float) and rows >= ENOUGH:
        yield f"A tap gives about {tap:.2f} {units.volume} on a likely day, from {counted(rows, 'day')}."
    for row, (name,) in _rows(season, "thermometers", "name"):
        offset = season.value("thermometers.offset", row)
        if name and isinstance(offset, float):
            yield f"{name}: the cup said {round(offset, 1) or 0:+.1f} °Brix against it, over its batches."


def _holes(season: Season) -> Iterator[str]:
    for _, (name, taps, species) in _rows(season, "trees", "name", "taps", "species"):
        if name and isinstance(taps, float) and taps:
            yield f"{name}" + (f", {species}" if species else "") + f": {counted(taps, 'hole')}."


def _shelf(season: Season) -> Iterator[str]:
    for row, (batch, jar, filled, given) in _rows(season, "bottles", "batch", "jar", "filled", "given"):
        if isinstance(filled, float) and filled:
            size = f" of size {jar}" if jar else ""
            first = ", eat first" if season.value("bottles.eat_first", row) == 1 else ""
            of = f" of batch {batch:g}" if isinstance(batch, float) else ""
            yield f"{counted(filled, 'jar')}{size}{of} filled{first}" + (f"; given: {given}." if given else ".")


def _history(filled: Filled, inputs: Mapping[str, Any]) -> Iterator[str]:
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
        ends = dict.fromkeys(DATE.brief(day, units) for day in (days[:1] + days[-1:]))
        if ends:
            yield f"{words}: {' to '.join(ends)}."


def _over(one: Any, other: Any) -> float | None:
    return one / other if isinstance(one, float) and isinstance(other, float) and other > 0 else None


def _in_winter(day: datetime.date) -> tuple[int, int]:
    """Where a day stands in a winter, whatever the year: November comes before January."""
    return (day.month - 11) % 12, day.day
