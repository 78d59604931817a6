"""The command `forecast`: rows to paste into a workbook, and on stderr what was found."""

from __future__ import annotations

import argparse
import datetime
import sys
from collections.abc import Iterator
from pathlib import Path

from sheetfuncs.weather import city_page, daily_summaries, dwml, national, open_meteo, saved, table
from sheetfuncs.weather.days import Found

DEGREES = {"F": "US", "C": "metric"}
MOST_NOTES = 5
SERVICES = (national, dwml, city_page, open_meteo, daily_summaries, table)
HELP = "What can be read, and how to get it:\n\n" + "\n\n".join(f"{one.SERVICE}: {one.HOW}" for one in SERVICES)


def forecast(options: argparse.Namespace, system: str) -> int:
    """Print a saved forecast as rows: day, low of the night before, high; tab between.

    Without a file: how to get one.
    """
    if options.saved is None:
        print(HELP)
        return 0
    found = found_in(options.saved, options)
    for day, low, high in found.rows(system):
        print(day, _cell(low), _cell(high), sep="\t")
    say(found)
    return 0


def found_in(path: str, options: argparse.Namespace) -> Found:
    """What a saved file tells, with the options that say what it leaves open."""
    return saved.read(Path(path), DEGREES.get(options.degrees or ""), options.night_after)


def say(found: Found) -> None:
    """Tell on stderr what was found, without what a terminal would take for a command."""
    for line in told(found):
        print("".join(letter if letter.isprintable() else " " for letter in line), file=sys.stderr)


def told(found: Found) -> Iterator[str]:
    """Which service, place and hours were found, and what is not known."""
    yield f"from {found.service}, {found.place}: {found.hours}"
    yield from found.notes[:MOST_NOTES]
    if len(found.notes) > MOST_NOTES:
        yield f"and {len(found.notes) - MOST_NOTES} more such notes"
    days = found.days()
    for word, values in (("low of the night before", found.lows), ("high", found.highs)):
        missing = [day for day in days if day not in values]
        if missing:
            yield f"no {word} for {_days(missing)}"


def _cell(value: float | None) -> str:
    return "" if value is None else f"{value:g}"


def _days(days: list[datetime.date]) -> str:
    if len(days) <= 3:
        return ", ".join(map(str, days))
    return f"{len(days)} days, the first {days[0]}"
