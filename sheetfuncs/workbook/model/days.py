"""Days and times as a spreadsheet counts them."""

from __future__ import annotations

import datetime
from typing import Any

MONTHS = ("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec")
DAY_ZERO = datetime.datetime(1899, 12, 30)
ONE_DAY = datetime.timedelta(days=1)
FIRST_DAY, LAST_DAY = 61, 2958465  # 1 March 1900, from when all spreadsheets agree, to the end of 9999


def serial(value: Any) -> Any:
    """Dates and times as a spreadsheet counts them, in days; anything else as it is."""
    if isinstance(value, datetime.datetime):
        return (value - DAY_ZERO) / ONE_DAY
    if isinstance(value, datetime.date):
        return float((value - DAY_ZERO.date()).days)
    if isinstance(value, datetime.time):
        return (datetime.datetime.combine(DAY_ZERO, value.replace(tzinfo=None)) - DAY_ZERO) / ONE_DAY
    if isinstance(value, datetime.timedelta):
        return value / ONE_DAY
    return value


def date_of(number: float) -> datetime.date | None:
    """The day that a whole number of days means, where all spreadsheets agree on it."""
    if float(number).is_integer() and FIRST_DAY <= number <= LAST_DAY:
        return (DAY_ZERO + ONE_DAY * number).date()
    return None


def time_of(number: float) -> datetime.time | None:
    """The time of day that a part of a day means."""
    return (DAY_ZERO + ONE_DAY * number).time() if 0 <= number < 1 else None
