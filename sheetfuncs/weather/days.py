"""What every format is read into: lows and highs by day, and where they are from.

The low of a day is that of the night before it: tonight's low belongs to tomorrow.
"""

from __future__ import annotations

import datetime
import math
import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field
from typing import Any

from sheetfuncs.formulas.quantities import TEMPERATURE
from sheetfuncs.formulas.taps import DAY, NIGHT

MOST_DAYS = 800
FIRST_YEAR, LAST_YEAR = 1900, 2200  # as in the workbook
ONE_DAY = datetime.timedelta(days=1)
A_NUMBER = re.compile(r"[+-]?\d{1,12}(\.\d{1,15})?")
UNIT_NAMES = {"f": "US", "degf": "US", "fahrenheit": "US", "c": "metric", "degc": "metric", "celsius": "metric"}

# When a night's low and a day's high fall, by the clock: National Weather Service, "Observed maximum and
# minimum temperature" (weather.gov/fgf/gfeobsmaximin): from 7 p.m. to 8 a.m. and from 7 a.m. to 7 p.m.
NIGHT_STARTS, NIGHT_ENDS, DAY_STARTS, DAY_ENDS = 19, 8, 7, 19
# An hourly record that lacks these hours cannot tell the low or the high.
LOW_FALLS, HIGH_FALLS = (0, 7), (11, 17)
LONGEST_GAP = datetime.timedelta(hours=3)


class Odd(Exception):
    """Something in the file that is not as its format has it; the words become part of one line."""


@dataclass
class Found:
    """What a file holds.  `system` is that of its degrees: US for °F, metric for °C."""

    service: str
    place: str
    system: str
    lows: dict[datetime.date, float] = field(default_factory=dict)
    highs: dict[datetime.date, float] = field(default_factory=dict)
    hours: str = ""
    notes: list[str] = field(default_factory=list)

    def low(self, day: datetime.date, value: float) -> None:
        """The low of the night before a day."""
        self._put(self.lows, day, value, "low", NIGHT.limits(self.system))

    def high(self, day: datetime.date, value: float) -> None:
        """The high of a day."""
        self._put(self.highs, day, value, "high", DAY.limits(self.system))

    def _put(
        self, into: dict[datetime.date, float], day: datetime.date, value: float, word: str, limits: tuple[float, float]
    ) -> None:
        symbol = TEMPERATURE.unit(self.system).symbol
        if not limits[0] <= value <= limits[1]:
            raise Odd(f"the {word} of {day} is {value:g} {symbol}, outside {limits[0]:g} to {limits[1]:g} {symbol}")
        if not FIRST_YEAR <= day.year <= LAST_YEAR:
            raise Odd(f"{day} is not of this age; is the year right?")
        if day in into:
            raise Odd(f"{day} has two {word}s")
        into[day] = value

    def days(self) -> list[datetime.date]:
        """Every day from the first to the last that is known, gaps and all."""
        known = {*self.lows, *self.highs}
        if not known:
            return []
        first, last = min(known), max(known)
        if (last - first).days >= MOST_DAYS:
            raise Odd(f"it runs from {first} to {last}, longer than {MOST_DAYS} days")
        return [first + number * ONE_DAY for number in range((last - first).days + 1)]

    def rows(self, system: str) -> Iterator[tuple[datetime.date, float | None, float | None]]:
        """Day, low of the night before and high, in a unit system."""
        for day in self.days():
            yield day, self._in(system, self.lows.get(day)), self._in(system, self.highs.get(day))

    def _in(self, system: str, value: float | None) -> float | None:
        if value is None or system == self.system:
            return value
        si = TEMPERATURE.unit(self.system).into_si(value)
        return round(float(TEMPERATURE.unit(system).out_of_si(si)), 1)


def shown(value: Any) -> str:
    """A piece of the file as an error line can hold it."""
    text = value if isinstance(value, str) else repr(value)
    return repr(text if len(text) <= 40 else text[:37] + "...")


def number(value: Any, what: str) -> float:
    """A number, or text that is nothing but one."""
    if isinstance(value, str) and A_NUMBER.fullmatch(value.strip()):
        return float(value)
    if isinstance(value, bool) or not isinstance(value, (int, float)) or not math.isfinite(value):
        raise Odd(f"{what} is {shown(value)}, not a number")
    return float(value)


def system_of(unit: Any, what: str = "its temperatures") -> str:
    """The unit system of a unit's name, as `F`, `°C`, `wmoUnit:degC` or `Fahrenheit`."""
    name = str(unit).rpartition(":")[2].strip(" °").casefold()
    if name not in UNIT_NAMES:
        raise Odd(f"the unit of {what} is {shown(unit)}, neither °F nor °C")
    return UNIT_NAMES[name]


def moment(text: Any, what: str) -> datetime.datetime:
    """A time such as 2026-03-07T18:00:00-05:00."""
    try:
        if not isinstance(text, str) or len(text) < len("2026-03-07T18:00"):
            raise ValueError
        return datetime.datetime.fromisoformat(text)
    except ValueError:
        raise Odd(f"{what} is {shown(text)}, not a time like 2026-03-07T18:00:00-05:00") from None


def day(text: Any, what: str) -> datetime.date:
    """A day such as 2026-03-07."""
    try:
        if not isinstance(text, str) or not re.fullmatch(r"\d{4}-\d\d-\d\d", text.strip()):
            raise ValueError
        return datetime.date.fromisoformat(text.strip())
    except ValueError:
        raise Odd(f"{what} is {shown(text)}, not a day like 2026-03-07") from None


def in_order(days: Iterable[datetime.date]) -> None:
    """Refuse days that do not rise."""
    before = None
    for one in days:
        if before is not None and one <= before:
            raise Odd(f"the days are out of order: {one} comes after {before}")
        before = one


def from_hours(found: Found, hours: list[tuple[datetime.datetime, float]]) -> None:
    """Lows and highs out of hourly temperatures, for the nights and days that are there in full.

    The times are those of the place; hours that do not rise are refused.
    """
    for (before, _), (after, _) in zip(hours, hours[1:], strict=False):
        if after <= before:
            raise Odd(f"the hours are out of order: {after} comes after {before}")
    local = [(time.replace(tzinfo=None), value) for time, value in hours]
    for one in sorted({time.date() for time, _ in local}):
        midnight = datetime.datetime.combine(one, datetime.time())
        night = _within(local, midnight, NIGHT_STARTS - 24, NIGHT_ENDS, LOW_FALLS)
        if night:
            found.low(one, min(night))
        high = _within(local, midnight, DAY_STARTS, DAY_ENDS, HIGH_FALLS)
        if high:
            found.high(one, max(high))


def _within(
    hours: list[tuple[datetime.datetime, float]],
    midnight: datetime.datetime,
    start: int,
    end: int,
    needed: tuple[int, int],
) -> list[float]:
    """The temperatures between two hours of a day; none if the needed hours are not all covered."""

    def at(hour: int) -> datetime.datetime:
        return midnight + datetime.timedelta(hours=hour)

    inside = [(time, value) for time, value in hours if at(start) <= time <= at(end)]
    times = [time for time, _ in inside]
    if not times or times[0] > at(needed[0]) or times[-1] < at(needed[1]):
        return []
    if any(after - before > LONGEST_GAP for before, after in zip(times, times[1:], strict=False)):
        return []
    return [value for _, value in inside]


def near(latitude: Any, longitude: Any) -> str:
    """A place by its coordinates."""
    try:
        north, east = float(latitude), float(longitude)
    except (TypeError, ValueError):
        return "a place it does not name"
    return f"{abs(north):.2f}° {'N' if north >= 0 else 'S'}, {abs(east):.2f}° {'E' if east >= 0 else 'W'}"
