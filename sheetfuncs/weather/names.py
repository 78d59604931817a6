"""Days by name, English and French: periods such as "Tonight", "Friday night" or "samedi soir et nuit"."""

from __future__ import annotations

import datetime
import re
import unicodedata
from typing import NamedTuple

from sheetfuncs.weather.days import ONE_DAY, Odd, shown

WEEKDAYS = (
    ("monday", "lundi"),
    ("tuesday", "mardi"),
    ("wednesday", "mercredi"),
    ("thursday", "jeudi"),
    ("friday", "vendredi"),
    ("saturday", "samedi"),
    ("sunday", "dimanche"),
)
SHORT_WEEKDAYS = (
    *("mon", "tue", "tues", "wed", "thu", "thur", "thurs", "fri", "sat", "sun"),
    *("lun", "mar", "mer", "jeu", "ven", "sam", "dim"),
)
MONTHS = (
    ("january", "janvier"),
    ("february", "fevrier"),
    ("march", "mars"),
    ("april", "avril"),
    ("may", "mai"),
    ("june", "juin"),
    ("july", "juillet"),
    ("august", "aout"),
    ("september", "septembre"),
    ("october", "octobre"),
    ("november", "novembre"),
    ("december", "decembre"),
)
TODAY = r"\b(today|this (morning|afternoon)|aujourd.?hui|ce matin|cet apres-midi)\b"
NIGHTS = r"\b(night|nights|overnight|tonight|this evening|evening|soir|nuit|nocturne)\b"
_FULL = {name: number for number, both in enumerate(WEEKDAYS) for name in both}
_NAMES = _FULL | {
    short: next(number for name, number in _FULL.items() if name.startswith(short)) for short in SHORT_WEEKDAYS
}
_WEEKDAY = re.compile(r"\b(" + "|".join(sorted(_NAMES, key=len, reverse=True)) + r")\b\.?")


class Period(NamedTuple):
    """A day or a night as a forecast names it; `weekday` is None for today and tonight."""

    name: str
    weekday: int | None
    night: bool


def folded(text: str) -> str:
    """Small letters without accents."""
    decomposed = unicodedata.normalize("NFKD", text.casefold())
    return "".join(letter for letter in decomposed if not unicodedata.combining(letter))


def weekdays(text: str) -> list[int]:
    """The days of the week that a folded text names, Monday 0."""
    return [_NAMES[found[1]] for found in _WEEKDAY.finditer(text)]


def period(*names: str) -> Period | None:
    """The period that one or several names of it tell; None when they tell none.

    Names that contradict each other are refused.
    """
    texts = [folded(name) for name in names if name]
    named = {one for text in texts for one in weekdays(text)}
    if len(named) > 1:
        raise Odd(f"one period is named {' and '.join(shown(name) for name in names if name)}")
    night = any(re.search(NIGHTS, text) for text in texts)
    if not named and not night and not any(re.search(TODAY, text) for text in texts):
        return None
    return Period(next(name for name in names if name).strip(), min(named, default=None), night)


def dated(periods: list[Period], earliest: datetime.date, latest: datetime.date) -> list[datetime.date]:
    """The date on which each period starts, when the forecast was issued between two dates.

    The weekdays decide; today and tonight, which can only come first, are counted back from the
    first weekday.  What does not follow upon what went before is refused.
    """
    named = next((place for place, one in enumerate(periods) if one.weekday is not None), None)
    if named is None:
        if earliest != latest or len(periods) > 2 or [one.night for one in periods] not in ([False], [False, True]):
            raise Odd(f"no day of the week is named beside {shown(periods[0].name)}: which day it is cannot be told")
        return [earliest] * len(periods)
    days = [_first_named(periods[named], earliest, latest)]
    for before, one in zip(periods[named:], periods[named + 1 :], strict=False):
        if one.weekday is None:
            raise Odd(f"{shown(one.name)} comes after {shown(before.name)}")
        days.append(days[-1] + (one.weekday - days[-1].weekday()) % 7 * ONE_DAY)
    for place in range(named - 1, -1, -1):
        after, one = periods[place + 1], periods[place]
        if one.night == after.night:
            raise Odd(f"{shown(after.name)} comes after {shown(one.name)}")
        days.insert(0, days[0] if not one.night else days[0] - ONE_DAY)
        if not one.night and not earliest <= days[0] <= latest:
            raise Odd(f"{shown(one.name)} would be {days[0]}, but the forecast is of {latest}")
    in_a_row([(one, each.night) for one, each in zip(days, periods, strict=True)])
    return days


def in_a_row(starts: list[tuple[datetime.date, bool]]) -> None:
    """Refuse days, or days and nights, that do not follow upon each other: date, and whether it is a night."""
    nights = any(night for _, night in starts)
    for (before, was_night), (after, night) in zip(starts, starts[1:], strict=False):
        if (after, night) <= (before, was_night):
            raise Odd(f"the days are out of order: {after} comes after {before}")
        half = (before, True) if nights and not was_night else (before + ONE_DAY, False)
        if (after, night) != half:
            raise Odd(f"the {'night' if half[1] else 'day'} of {half[0]} is missing")


def _first_named(first: Period, earliest: datetime.date, latest: datetime.date) -> datetime.date:
    """The first period with a weekday: at most a night ago, at most two days ahead."""
    start = earliest - ONE_DAY if first.night else earliest
    for number in range((latest - start).days + 3):
        one = start + number * ONE_DAY
        if one.weekday() == first.weekday:
            return one
    raise Odd(f"the forecast is of {latest}, but begins with {shown(first.name)}")


def month(name: str) -> int | None:
    """The number of a month from its folded name or its first three letters or more."""
    name = name.rstrip(".")
    for place, both in enumerate(MONTHS):
        if any(full == name or (len(name) >= 3 and full.startswith(name)) for full in both):
            return None if name in ("jui",) else place + 1
    return None
