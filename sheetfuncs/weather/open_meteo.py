"""Open-Meteo's forecast or record, JSON or CSV, by days or by hours.

Shape: open-meteo/open-meteo, openapi/forecast.yml and its CSV writer; the data is under CC BY 4.0.
"""

from __future__ import annotations

import csv
import datetime
import re
from typing import Any

from sheetfuncs.weather.days import Found, Odd, day, from_hours, moment, near, number, shown, system_of
from sheetfuncs.weather.names import in_a_row

SERVICE = "Open-Meteo"
HOW = (
    "save api.open-meteo.com/v1/forecast?latitude=..&longitude=..&timezone=auto"
    "&daily=temperature_2m_min,temperature_2m_max (past_days=92 adds days that are over)"
)
LOW, HIGH, HOURLY = "temperature_2m_min", "temperature_2m_max", "temperature_2m"
FARTHEST = 3.5  # hours by which a clock may differ from the sun's
CALENDAR = "its lows are of the calendar day, midnight to midnight: mostly of its dawn"


def recognised(content: Any) -> bool:
    """Whether JSON is of this service."""
    if isinstance(content, list) and content:
        content = content[0]
    if not isinstance(content, dict):
        return False
    return "utc_offset_seconds" in content or (content.get("error") is True and "reason" in content)


def read_json(content: Any) -> Found:
    """The days of a JSON answer."""
    if isinstance(content, list):
        if len(content) != 1 or not isinstance(content[0], dict):
            raise Odd("it holds more than one place")
        content = content[0]
    if content.get("error") is True:
        raise Odd(f"the service answered with an error: {shown(content['reason'])}")
    blocks = {}
    for name in ("daily", "hourly"):
        block, units = content.get(name), content.get(f"{name}_units")
        if block is None:
            continue
        if not isinstance(block, dict) or not isinstance(units, dict):
            raise Odd(f"its {name} block or the units of it are missing")
        blocks[name] = {key: (units.get(key), values) for key, values in block.items()}
    return _found(content, blocks)


def read_csv(text: str) -> Found:
    """The days of a CSV answer: the place, then a block each for hours and days, blank lines between."""
    parts = [part.splitlines() for part in re.split(r"\n\s*\n", text.replace("\r\n", "\n").strip())]
    tables = [list(csv.reader(part)) for part in parts]
    if any(len(table) < 2 or any(len(row) != len(table[0]) for row in table) for table in tables):
        raise Odd("its lines do not have as many values as their headings")
    place = tables[0]
    if len(place) != 2 or "location_id" in place[0]:
        raise Odd("it holds more than one place")
    blocks = {}
    for headings, *rows in tables[1:]:
        named = [re.fullmatch(r"\s*(\w+)(?:\s*\((.*)\))?\s*", heading) for heading in headings]
        columns = {
            one[1]: (one[2], [row[column].strip() or None for row in rows]) for column, one in enumerate(named) if one
        }
        blocks["daily" if {LOW, HIGH} & {*columns} else "hourly"] = columns
    return _found(dict(zip(place[0], place[1], strict=True)), blocks)


def _found(place: dict[str, Any], blocks: dict[str, dict[str, tuple[Any, Any]]]) -> Found:
    daily, hourly = blocks.get("daily", {}), blocks.get("hourly", {})
    units = [
        unit
        for block, keys in ((daily, (LOW, HIGH)), (hourly, (HOURLY,)))
        for key in keys
        if key in block
        for unit in [block[key][0]]
    ]
    if not units:
        raise Odd(f"it holds no {LOW}, {HIGH} or {HOURLY}")
    systems = {system_of(unit) for unit in units}
    if len(systems) > 1:
        raise Odd("it mixes °F and °C")
    offset = number(place.get("utc_offset_seconds"), "utc_offset_seconds")
    if abs(offset / 3600 - number(place.get("longitude"), "longitude") / 15) > FARTHEST:
        raise Odd("its days are not those of the place: add timezone=auto to its address")
    found = Found(SERVICE, near(place.get("latitude"), place.get("longitude")), systems.pop())
    if {LOW, HIGH} & {*daily}:
        days = [_time(daily["time"][0], one, offset).date() for one in _column(daily, "time")]
        in_a_row([(one, False) for one in days])
        for key, put in ((LOW, found.low), (HIGH, found.high)):
            for one, value in zip(days, _column(daily, key), strict=True) if key in daily else ():
                if value is not None:
                    put(one, number(value, f"{key} of {one}"))
        found.notes += [CALENDAR] if LOW in daily else []
        found.hours = f"days {days[0]} to {days[-1]}"
    else:
        times = [_time(hourly["time"][0], one, offset) for one in _column(hourly, "time")]
        values = _column(hourly, HOURLY)
        from_hours(
            found,
            [
                (time, number(value, f"{HOURLY} of {time}"))
                for time, value in zip(times, values, strict=True)
                if value is not None
            ],
        )
        found.hours = f"{times[0]:%Y-%m-%d %H:%M} to {times[-1]:%Y-%m-%d %H:%M}"
    return found


def _column(block: dict[str, tuple[Any, Any]], key: str) -> list[Any]:
    """A list of the block, as long as its times."""
    values, times = (block.get(one, (None, None))[1] for one in (key, "time"))
    if not isinstance(values, list) or not isinstance(times, list) or not times:
        raise Odd(f"its list {key} or its times are missing")
    if len(values) != len(times):
        raise Odd(f"it has {len(values)} values of {key} for {len(times)} times")
    return values


def _time(unit: Any, value: Any, offset: float) -> datetime.datetime:
    """A time of the place: text, or seconds since 1970 in UTC."""
    if unit == "unixtime" or not isinstance(value, str) or value.isdecimal():
        seconds = number(value if not isinstance(value, str) else float(value[:12]), "a time")
        if not 0 < seconds < 1e10:
            raise Odd(f"a time is {shown(value)}, neither a day nor seconds since 1970")
        return datetime.datetime.fromtimestamp(seconds + offset, datetime.UTC).replace(tzinfo=None)
    if len(value) == len("2026-03-07"):
        return datetime.datetime.combine(day(value, "a day"), datetime.time())
    return moment(value, "a time").replace(tzinfo=None)
