"""The U.S. National Weather Service's forecast as DWML, its XML, by days or by hours.

Shape: the service's Digital Weather Markup Language schema (DWML.xsd), as its National Digital
Forecast Database and its forecast pages (FcstType=dwml, FcstType=digitalDWML) write it.
"""

from __future__ import annotations

import datetime
from typing import NamedTuple
from xml.etree.ElementTree import Element

from sheetfuncs.weather.days import ONE_DAY, Found, Odd, from_hours, moment, near, number, shown, system_of

SERVICE = "U.S. National Weather Service, DWML"
HOW = (
    "open the forecast page of your place on forecast.weather.gov and save its XML (the address ends in FcstType=dwml)"
)
NIL = "{http://www.w3.org/2001/XMLSchema-instance}nil"
EARLY = 6  # a night that is said to start before this hour began on the evening before
EVENING = 12
LONGEST_DAY, LONGEST_STEP = datetime.timedelta(hours=25), datetime.timedelta(hours=36)


class Layout(NamedTuple):
    """The times of one list of values."""

    starts: list[datetime.datetime]
    ends: list[datetime.datetime]


def read(root: Element) -> Found:
    """The days of a forecast."""
    series = [
        (data, one)
        for data in root.iter("data")
        if data.get("type") != "current observations"
        for one in data.iter("temperature")
        if one.get("type") in ("minimum", "maximum", "hourly")
    ]
    if not series:
        raise Odd("it holds no minimum, maximum or hourly temperature")
    data = series[0][0]
    kinds = [one.get("type") for _, one in series]
    if len(set(kinds)) != len(kinds) or any(other is not data for other, _ in series):
        raise Odd("it holds more than one place or forecast")
    systems = {system_of(one.get("units")) for _, one in series}
    if len(systems) > 1:
        raise Odd("it mixes °F and °C")
    found = Found(SERVICE, _place(data), systems.pop())
    layouts = {one.findtext("layout-key", "").strip(): _layout(one) for one in data.iter("time-layout")}
    first: list[datetime.datetime] = []
    hourly = "minimum" not in kinds and "maximum" not in kinds
    for _, one in series:
        kind, key = str(one.get("type")), one.get("time-layout", "")
        if key not in layouts:
            raise Odd(f"the {kind} temperatures name times that are not there: {shown(key)}")
        layout, values = layouts[key], one.findall("value")
        if len(values) != len(layout.starts):
            raise Odd(f"it has {len(values)} {kind} temperatures for {len(layout.starts)} times")
        known = [
            (place, number((value.text or "").strip(), f"{kind} temperature {place + 1}"))
            for place, value in enumerate(values)
            if value.get(NIL) not in ("true", "1") and (value.text or "").strip()
        ]
        first += layout.starts + layout.ends
        if kind != "hourly":
            _in_steps(layout, kind)
        if kind == "hourly" and hourly:
            from_hours(found, [(layout.starts[place], value) for place, value in known])
        for place, value in known if kind != "hourly" else ():
            if kind == "maximum":
                found.high(layout.starts[place].date(), value)
            else:
                found.low(_morning(layout, place), value)
    found.hours = f"{min(first):%Y-%m-%d %H:%M} to {max(first):%Y-%m-%d %H:%M}"
    return found


def _layout(one: Element) -> Layout:
    starts, ends = (
        [moment((time.text or "").strip(), tag) for time in one.iter(tag)]
        for tag in ("start-valid-time", "end-valid-time")
    )
    if any(time.tzinfo is None for time in starts + ends):
        raise Odd("its times do not say their time zone")
    for before, after in zip(starts, starts[1:], strict=False):
        if after <= before:
            raise Odd(f"its times are out of order: {after} comes after {before}")
    if ends and (len(ends) != len(starts) or any(end <= start for start, end in zip(starts, ends, strict=True))):
        raise Odd("its times do not end after they start")
    return Layout(starts, ends)


def _in_steps(layout: Layout, kind: str) -> None:
    """Refuse days that are missing between two, or a day longer than one."""
    for before, after in zip(layout.starts, layout.starts[1:], strict=False):
        if after - before > LONGEST_STEP:
            raise Odd(f"no {kind} temperature is there between {before} and {after}")
    for start, end in zip(layout.starts, layout.ends, strict=False):
        if end - start > LONGEST_DAY:
            raise Odd(f"its time from {start} to {end} is longer than a day")


def _morning(layout: Layout, place: int) -> datetime.date:
    """The day whose morning ends a night."""
    start = layout.starts[place]
    if layout.ends:
        return layout.ends[place].date()
    if EARLY <= start.hour < EVENING:
        raise Odd(f"a night starts at {start}: which one it is cannot be told")
    return start.date() + (ONE_DAY if start.hour >= EVENING else 0 * ONE_DAY)


def _place(data: Element) -> str:
    for tag in ("area-description", "description", "city"):
        name = data.findtext(f"location/{tag}", "").strip()
        if name:
            return name
    point = data.find("location/point")
    return near(None, None) if point is None else near(point.get("latitude"), point.get("longitude"))
