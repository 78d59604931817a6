"""The U.S. National Weather Service's forecast as JSON, by half days or by hours.

Shape: the OpenAPI schema of api.weather.gov, GridpointForecast (weather-gov/api, assets/openapi.yaml).
"""

from __future__ import annotations

import datetime
from collections.abc import Iterator
from typing import Any

from sheetfuncs.weather.days import Found, Odd, from_hours, moment, near, number, shown, system_of

SERVICE = "U.S. National Weather Service"
HOW = "open api.weather.gov/points/LATITUDE,LONGITUDE, follow its `forecast` address and save that page"
LONGEST_HOUR = datetime.timedelta(hours=1)
LONGEST_HALF_DAY = datetime.timedelta(hours=15)
LATEST_MORNING = 12  # a night's forecast ends in the morning


def recognised(content: Any) -> bool:
    """Whether JSON is of this service."""
    properties = content.get("properties", content) if isinstance(content, dict) else None
    return isinstance(properties, dict) and bool({"periods", "forecastHourly", "gridId"} & {*properties})


def read(content: Any) -> Found:
    """The days of a forecast."""
    properties = content.get("properties", content)
    if "periods" not in properties:
        raise Odd("this page leads to the forecast but holds none")
    periods = properties["periods"]
    if not isinstance(periods, list) or not periods or not all(isinstance(one, dict) for one in periods):
        raise Odd("its list of periods is empty or is no list")
    times = list(_times(periods))
    systems = {_system(one) for one in periods if _degrees(one) is not None}
    if len(systems) != 1:
        raise Odd("its periods mix °F and °C" if systems else "no period has a temperature")
    found = Found(SERVICE, _place(content), systems.pop())
    found.hours = f"{times[0][0]:%Y-%m-%d %H:%M} to {times[-1][1]:%Y-%m-%d %H:%M}"
    values = [_degrees(one) for one in periods]
    if all(end - start <= LONGEST_HOUR for start, end in times):
        from_hours(
            found, [(start, value) for (start, _), value in zip(times, values, strict=True) if value is not None]
        )
        return found
    for place, (one, (start, end), value) in enumerate(zip(periods, times, values, strict=True), 1):
        daytime = one.get("isDaytime")
        if not isinstance(daytime, bool):
            raise Odd(f"period {place} does not say whether it is day or night")
        if end - start > LONGEST_HALF_DAY or (daytime and start.date() != end.date()):
            raise Odd(f"period {place} runs from {start} to {end}, not half a day")
        if not daytime and end.hour > LATEST_MORNING:
            raise Odd(f"period {place} is a night and ends at {end}")
        if value is not None:
            (found.high if daytime else found.low)(end.date(), value)
    return found


def _times(periods: list[dict[str, Any]]) -> Iterator[tuple[datetime.datetime, datetime.datetime]]:
    """Start and end of each period; each must begin where the one before ends."""
    before = None
    for place, one in enumerate(periods, 1):
        start, end = (moment(one.get(key), f"{key} of period {place}") for key in ("startTime", "endTime"))
        if start.tzinfo is None or end.tzinfo is None:
            raise Odd(f"period {place} does not say its time zone")
        if end <= start:
            raise Odd(f"period {place} ends before it starts")
        if before is not None and start != before:
            raise Odd(
                f"periods are missing or out of order: period {place} starts at {start}, the last ends at {before}"
            )
        before = end
        yield start, end


def _degrees(one: dict[str, Any]) -> float | None:
    """A period's temperature: a number, or a value beside its unit code."""
    value = one.get("temperature")
    if isinstance(value, dict):
        value = value.get("value")
    return None if value is None else number(value, f"the temperature of {shown(one.get('startTime'))}")


def _system(one: dict[str, Any]) -> str:
    value = one.get("temperature")
    return system_of(value.get("unitCode") if isinstance(value, dict) else one.get("temperatureUnit"))


def _place(content: dict[str, Any]) -> str:
    """The middle of the square of the grid: the file holds no name."""
    points: list[Any] = []
    stack = [content.get("geometry")]
    while stack and len(points) < 100:
        one = stack.pop()
        if isinstance(one, dict):
            stack += [one.get("coordinates"), *(one.get("geometries") or ())]
        elif isinstance(one, list) and len(one) == 2 and all(isinstance(part, (int, float)) for part in one):
            points.append(one)
        elif isinstance(one, list):
            stack += one
    if not points:
        return near(None, None)
    return near(sum(point[1] for point in points) / len(points), sum(point[0] for point in points) / len(points))
