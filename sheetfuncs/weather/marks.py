"""The words of a line that tell its day: a date, a day of the week, today or tonight."""

from __future__ import annotations

import datetime
import re
from typing import NamedTuple

from sheetfuncs.weather.days import Odd, shown
from sheetfuncs.weather.names import NIGHTS, TODAY, month, weekdays

DAY_WORDS = r"\b(date|day|days|jour|jours|time)\b"
ISSUE_WORDS = r"\b(issued|updated?|as of|copied|forecast|emis|emise|mise a jour|prevu|prevision|previsions)\b"
_ISO = re.compile(r"\b(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})\b")
_NUMBERS = re.compile(r"\b(\d{1,2})[/.](\d{1,2})[/.](\d{4})\b")
_DAY_MONTH = re.compile(r"\b(\d{1,2})(?:st|nd|rd|th|er)?\s+(?:de\s+)?([a-z]{3,9})\b\.?,?(?:\s+(\d{4})\b)?")
_MONTH_DAY = re.compile(r"\b([a-z]{3,9})\.?\s+(\d{1,2})(?:st|nd|rd|th)?\b(?!\d)(?:,?\s+(\d{4})\b)?")


class Mark(NamedTuple):
    """The day of a line as far as its words go, and what is left of the line without them."""

    text: str
    rest: str
    date: datetime.date | None = None
    month_day: tuple[int, int] | None = None
    numbers: tuple[int, int, int] | None = None
    weekday: int | None = None
    night: bool = False
    issue: bool = False


def marked(line: str) -> Mark | None:
    """The mark of a folded line, or None."""
    issue = bool(re.search(ISSUE_WORDS, line))
    rest, date, month_day, numbers = line, None, None, None
    if found := _ISO.search(line):
        date = _date(int(found[1]), int(found[2]), int(found[3]), found[0])
    elif found := _NUMBERS.search(line):
        numbers = (int(found[1]), int(found[2]), int(found[3]))
    elif (found := _DAY_MONTH.search(line)) and month(found[2]):
        month_day, year = (month(found[2]) or 0, int(found[1])), found[3]
        date = _date(int(year), *month_day, found[0]) if year else None
    elif (found := _MONTH_DAY.search(line)) and month(found[1]):
        month_day, year = (month(found[1]) or 0, int(found[2])), found[3]
        date = _date(int(year), *month_day, found[0]) if year else None
    else:
        found = None
    if found:
        rest = line[: found.start()] + " " + line[found.end() :]
        if issue and not date:
            raise Odd(f"its date {shown(found[0])} is not clear; write it as 2026-03-06")
    named = set(weekdays(rest))
    night = bool(re.search(NIGHTS, rest))
    if not found and (len(named) > 1 or (issue and not named)):
        return None
    if not found and not named and not night and not re.search(TODAY, rest):
        return None
    if not found and not _heading(rest):
        return None
    if len(named) > 1:
        raise Odd(f"the line {shown(line)} names several days")
    text = line.strip()
    return Mark(text, rest, date, month_day, numbers, min(named, default=None), night, issue and date is not None)


def _heading(rest: str) -> bool:
    """Whether a line that only names a day is a heading and not a sentence that mentions one."""
    words = re.findall(r"[a-z']+", rest)
    return bool(weekdays(" ".join(words[:2])) or re.search(f"{TODAY}|{NIGHTS}", " ".join(words[:2])))


def _date(year: int, month_number: int, day: int, text: str) -> datetime.date:
    try:
        return datetime.date(year, month_number, day)
    except ValueError:
        raise Odd(f"there is no day {shown(text)}") from None


def day_of_numbers(marks: list[Mark]) -> list[datetime.date]:
    """Dates such as 3/7/2026 in the one order, month or day first, that makes them all days in a row."""
    if not all(mark.numbers for mark in marks):
        raise Odd("its dates are written in several ways")
    orders = []
    for month_at, day_at in ((0, 1), (1, 0)):
        try:
            days = [
                datetime.date(mark.numbers[2], mark.numbers[month_at], mark.numbers[day_at])
                for mark in marks
                if mark.numbers
            ]
        except ValueError:
            continue
        gaps = {(after - before).days for before, after in zip(days, days[1:], strict=False)}
        fits = all(mark.weekday in (None, one.weekday()) for mark, one in zip(marks, days, strict=True))
        if gaps <= {0, 1} and fits:
            orders.append(days)
    if len(orders) != 1:
        raise Odd(f"whether {shown(marks[0].text)} begins with the day or the month cannot be told; write 2026-03-06")
    return orders[0]
