"""Environment Canada's city page, JSON and XML, in English or French.

Shape: Meteorological Service of Canada, citypage_weather (schema site.xsd on dd.weather.gc.ca) and
the collection citypageweather-realtime of api.weather.gc.ca, in its bilingual and its older shape.
Its periods have names and no dates: the weekdays and the time of issue tell the days.
"""

from __future__ import annotations

import datetime
from collections.abc import Iterable
from typing import Any, NamedTuple
from xml.etree.ElementTree import Element

from sheetfuncs.weather.days import ONE_DAY, Found, Odd, moment, number, shown, system_of
from sheetfuncs.weather.names import dated, folded, period, weekdays

SERVICE = "Environment Canada, city page"
HOW = "save api.weather.gc.ca/collections/citypageweather-realtime/items/CITY?f=json, or the XML of dd.weather.gc.ca"
CLASSES = {"high": True, "low": False, "maximum": True, "minimum": False}
# Canada's clocks are 2.5 to 8 hours behind UTC.
ZERO, LATEST_UPDATE = datetime.timedelta(0), datetime.timedelta(days=2)
EAST, WEST = datetime.timedelta(hours=2.5), datetime.timedelta(hours=8)


class Piece(NamedTuple):
    """One period of the page: its names, and its temperatures as class and value."""

    names: tuple[str, ...]
    degrees: tuple[tuple[str, Any, Any], ...]


def recognised(content: Any) -> bool:
    """Whether JSON is of this service."""
    if isinstance(content, dict) and isinstance(content.get("features"), list):
        content = content["features"][0] if content["features"] else None
    properties = content.get("properties", content) if isinstance(content, dict) else None
    return isinstance(properties, dict) and "forecastGroup" in properties


def read_json(content: Any) -> Found:
    """The days of a page of api.weather.gc.ca."""
    if isinstance(content.get("features"), list):
        if len(content["features"]) != 1:
            raise Odd("it holds more than one place")
        content = content["features"][0]
    properties = content.get("properties", content)
    group = properties["forecastGroup"]
    if not isinstance(group, dict):
        raise Odd("its forecastGroup is empty")
    issued = moment(_said(group.get("timestamp") or properties.get("lastUpdated")), "the time of issue")
    updated = moment(_said(properties.get("lastUpdated") or group["timestamp"]), "the time of the last update")
    if issued.utcoffset() != ZERO or updated.utcoffset() != ZERO:
        raise Odd("its time of issue is not in UTC")
    if not ZERO <= updated - issued <= LATEST_UPDATE:
        raise Odd(f"it was issued on {issued:%Y-%m-%d} but updated on {updated:%Y-%m-%d}")
    forecasts = group.get("forecasts", group.get("forecast"))
    if not isinstance(forecasts, list) or not all(isinstance(one, dict) for one in forecasts):
        raise Odd("its list of forecasts is missing")
    name = _said(properties.get("name") or properties.get("location_en"))
    local = issued.replace(tzinfo=None)
    return _found(
        name,
        [_piece(one) for one in forecasts],
        (local - WEST).date(),
        (local - EAST).date(),
        f"{issued:%Y-%m-%d %H:%M} UTC",
    )


def _said(value: Any) -> str:
    """Text that is bilingual or not."""
    if isinstance(value, dict):
        value = value.get("en", value.get("fr"))
    return "" if value is None else str(value)


def _piece(one: dict[str, Any]) -> Piece:
    named = one.get("period")
    names = [named.get("value"), named.get("textForecastName")] if isinstance(named, dict) else [named]
    degrees = one.get("temperatures")
    degrees = degrees.get("temperature", []) if isinstance(degrees, dict) else []
    degrees = degrees if isinstance(degrees, list) else [degrees]
    if not all(isinstance(each, dict) for each in degrees):
        raise Odd(f"the temperatures of {shown(_said(names[0]))} cannot be read")
    return Piece(
        tuple(map(_said, names)),
        tuple(
            (_said(each.get("class")), _plain(each.get("value")), each.get("units") or each.get("unitType"))
            for each in degrees
        ),
    )


def _plain(value: Any) -> Any:
    return value.get("en", value.get("fr")) if isinstance(value, dict) else value


def read_xml(root: Element) -> Found:
    """The days of a page of dd.weather.gc.ca."""
    group = root.find("forecastGroup")
    if group is None:
        raise Odd("it holds no forecastGroup")
    issued, zone = _issued(group)
    pieces = []
    for one in group.findall("forecast"):
        named = one.find("period")
        names = ("",) if named is None else ((named.text or "").strip(), named.get("textForecastName", ""))
        degrees = (
            (each.get("class", ""), (each.text or "").strip(), each.get("units"))
            for each in one.findall("temperatures/temperature")
        )
        pieces.append(Piece(names, tuple(degrees)))
    name = root.findtext("location/name", "").strip()
    return _found(name, pieces, issued.date(), issued.date(), f"{issued:%Y-%m-%d %H:%M} {zone}")


def _issued(group: Element) -> tuple[datetime.datetime, str]:
    """When the forecast was issued, by the clock of the place; the file says it several times over."""
    stamps = {}
    for one in group.findall("dateTime"):
        text = one.findtext("timeStamp", "").strip()
        if one.get("name") != "forecastIssue":
            continue
        try:
            stamp = datetime.datetime.strptime(text, "%Y%m%d%H%M%S")
            utc = stamp - datetime.timedelta(hours=float(one.get("UTCOffset", "")))
        except (ValueError, OverflowError):
            raise Odd(f"its time of issue is {shown(text)}, not like 20260306154500") from None
        named = one.find("day")
        if named is not None and weekdays(folded(named.get("name", ""))) != [stamp.weekday()]:
            raise Odd(f"its time of issue is {shown(text)}, which is no {shown(named.get('name'))}")
        stamps[one.get("zone", "")] = stamp, utc
    local = [zone for zone in stamps if zone != "UTC"]
    if not local:
        raise Odd("it does not say when it was issued by the clock of the place")
    if len({utc for _, utc in stamps.values()}) > 1:
        raise Odd("it says several times of issue")
    return stamps[local[0]][0], local[0]


def _found(name: str, pieces: Iterable[Piece], earliest: datetime.date, latest: datetime.date, issued: str) -> Found:
    found = Found(SERVICE, name or "a city it does not name", "metric")
    told = [(piece, period(*piece.names)) for piece in pieces]
    if not told:
        raise Odd("it holds no forecast")
    for piece, one in told:
        if one is None:
            raise Odd(f"a period is named {shown(piece.names[0])}, which is no day")
    periods = [one for _, one in told if one is not None]
    days = dated(periods, earliest, latest)
    for (piece, _), one, start in zip(told, periods, days, strict=True):
        for word, value, unit in piece.degrees:
            if folded(word) not in CLASSES or value in (None, ""):
                continue
            if unit is not None and folded(_said(unit)) != "metric":
                system = system_of(_said(unit), f"the temperature of {shown(one.name)}")
                if system != "metric":
                    raise Odd(f"the temperature of {shown(one.name)} is in °F")
            if CLASSES[folded(word)] == one.night:
                found.notes.append(f"left out: the {'high' if one.night else 'low'} said for {one.name}")
            elif one.night:
                found.low(start + ONE_DAY, number(value, f"the low of {one.name}"))
            else:
                found.high(start, number(value, f"the high of {one.name}"))
    found.hours = f"{periods[0].name} to {periods[-1].name}, issued {issued}"
    return found
