"""NOAA's daily summaries of a station, CSV: days that are over.

Shape: NCEI, Access Data Service, dataset daily-summaries; the attributes are those of GHCN-Daily
(measurement, quality and source flag, hour of reading; an empty quality flag is a value that passed).
"""

from __future__ import annotations

import csv
import datetime

from sheetfuncs.weather.days import ONE_DAY, Found, Odd, day, in_order, number, shown

SERVICE = "NOAA, daily summaries"
HOW = (
    "save ncei.noaa.gov/access/services/data/v1?dataset=daily-summaries&stations=..&startDate=..&endDate=.."
    "&dataTypes=TMAX,TMIN&units=standard&format=csv"
)
NEEDED = ("STATION", "DATE")
MIDNIGHT = 2400
NOON = 1200
MORNING = "this station is read in the morning: its highs are given to the day before the reading"


def recognised(headings: list[str]) -> bool:
    """Whether the first line of a table is of this service."""
    words = {heading.strip().upper() for heading in headings}
    return {*NEEDED} <= words and bool({"TMAX", "TMIN"} & words)


def read(text: str, system: str | None) -> Found:
    """The days of a record.  The file does not say its unit: it must be told."""
    headings, *rows = csv.reader(text.strip().splitlines())
    names = [heading.strip().upper() for heading in headings]
    if system is None:
        raise Odd(
            "it does not say its unit; add --degrees F if it was saved with units=standard, or --degrees C if metric"
        )
    flagged = any(name.endswith("_ATTRIBUTES") for name in names)
    if flagged and any(name in names and f"{name}_ATTRIBUTES" not in names for name in ("TMAX", "TMIN")):
        raise Odd("its headings lack TMAX_ATTRIBUTES or TMIN_ATTRIBUTES")
    if any(len(row) != len(names) for row in rows):
        raise Odd("its lines do not have as many values as their headings")
    table = [{name: cell.strip() for name, cell in zip(names, row, strict=True)} for row in rows]
    stations = {row["STATION"] for row in table}
    if len(stations) != 1:
        raise Odd("it holds more than one station" if stations else "it holds no day")
    found = Found(SERVICE, table[0].get("NAME") or f"station {stations.pop()}", system)
    days = [day(row["DATE"], "DATE") for row in table]
    in_order(days)
    hours = [_hour(row, one) for one, row in zip(days, table, strict=True)]
    morning = any(hour is not None and 0 < hour <= NOON for hour in hours)
    found.notes += [MORNING] if morning else []
    for one, row, hour in zip(days, table, hours, strict=True):
        low, high = (_value(found, one, row, name) for name in ("TMIN", "TMAX"))
        if low is not None:
            found.low(one, low)
        if high is not None and hour is None and morning:
            found.notes.append(f"left out: TMAX of {one}, which does not say when it was read")
        elif high is not None:
            found.high(one - ONE_DAY if hour is not None and 0 < hour <= NOON else one, high)
    found.hours = f"days {days[0]} to {days[-1]}"
    return found


def _value(found: Found, one: datetime.date, row: dict[str, str], name: str) -> float | None:
    """A temperature, if it is there and passed the service's check."""
    text = row.get(name, "")
    failed = _flags(row, name)[1]
    if text and failed:
        found.notes.append(f"left out: {name} of {one}, which failed NOAA's check ({shown(failed)})")
    return number(text, f"{name} of {one}") if text and not failed else None


def _flags(row: dict[str, str], name: str) -> list[str]:
    """Measurement, quality and source flag, and the hour of reading; blank where they are not there."""
    flags = [flag.strip() for flag in row.get(f"{name}_ATTRIBUTES", "").split(",")]
    return flags + [""] * (4 - len(flags))


def _hour(row: dict[str, str], one: datetime.date) -> int | None:
    """The hour at which the high was read, as 700 for seven in the morning."""
    hour = _flags(row, "TMAX")[3]
    if not hour:
        return None
    if len(hour) != 4 or not hour.isdecimal() or int(hour) > MIDNIGHT:
        raise Odd(f"the hour of reading of {one} is {shown(hour)}, not like 0700")
    return int(hour)
