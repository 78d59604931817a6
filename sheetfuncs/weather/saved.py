"""A saved file, told by what is in it, read into days; whatever is wrong becomes one line."""

from __future__ import annotations

import codecs
import csv
import json
from collections.abc import Callable
from pathlib import Path
from typing import Any
from xml.etree.ElementTree import ParseError

from defusedxml.common import DefusedXmlException
from defusedxml.ElementTree import fromstring

from sheetfuncs.files import Refused, to_read
from sheetfuncs.weather import city_page, daily_summaries, dwml, national, open_meteo, table
from sheetfuncs.weather.days import Found, Odd

LARGEST = 4_000_000  # bytes; a forecast has some tens of thousands, hours of a whole season under a million
DEEPEST = 60  # brackets within brackets; a forecast has ten
EXPECTED = (
    "expected a saved forecast of the U.S. National Weather Service, Environment Canada or Open-Meteo, NOAA's daily "
    "summaries, or a table of dates, lows and highs"
)
SAVE = "`sheetfuncs forecast` alone says what to open and save"
NAMESAKES = (b"<!doctype html", b"<html")


def read(path: Path, system: str | None = None, night_after: bool = False) -> Found:
    """What a saved file tells; `system` is that of its degrees where the file does not say."""
    with to_read(path, LARGEST, "a saved forecast", SAVE) as file:
        content = file.read(LARGEST)
    if not content.strip():
        raise Refused(f"{path}: the file is empty; {EXPECTED}; {SAVE}")
    start = content[:2000].lstrip(codecs.BOM_UTF8 + b" \t\r\n")
    if any(name in start.lower() for name in NAMESAKES):
        raise Refused(f"{path}: this is a web page; {EXPECTED}; {SAVE}")
    if start[:1] in (b"{", b"["):
        return _json(path, content)
    if start[:1] == b"<":
        return _xml(path, content)
    return _text(path, _decoded(path, content), system, night_after)


def _decoded(path: Path, content: bytes) -> str:
    """Text in UTF-8, UTF-16 with its mark, or what older Windows programs write."""
    for encoding in (
        ("utf-16",) if content[:2] in (codecs.BOM_UTF16_LE, codecs.BOM_UTF16_BE) else ("utf-8-sig", "cp1252")
    ):
        try:
            text = content.decode(encoding)
        except UnicodeDecodeError:
            continue
        if "\0" not in text:
            return text
    raise Refused(f"{path}: this is not text; {EXPECTED}; {SAVE}")


def _told(path: Path, service: str, how: str, reading: Callable[[], Found]) -> Found:
    """What a format reads, or one line that names the file, the service, what is wrong and how to save it."""
    try:
        found = reading()
        if not found.days():
            raise Odd("no whole day or night can be told from it")
    except Odd as odd:
        raise Refused(f"{path}: read as {service}: {odd}; {how}") from None
    except (AttributeError, IndexError, KeyError, OverflowError, TypeError, ValueError, csv.Error) as error:
        raise Refused(
            f"{path}: read as {service}: not as the service writes it ({type(error).__name__}); {how}"
        ) from None
    return found


def _json(path: Path, content: bytes) -> Found:
    text = _decoded(path, content)
    try:
        if _depth(text) > DEEPEST:
            raise Refused(f"{path}: brackets stand in brackets more than {DEEPEST} deep; {EXPECTED}; {SAVE}")
        value: Any = json.loads(text)
    except (ValueError, RecursionError) as error:
        raise Refused(f"{path}: damaged or cut short, not JSON ({_line(error)}); {EXPECTED}; {SAVE}") from None
    if open_meteo.recognised(value):
        return _told(path, open_meteo.SERVICE, open_meteo.HOW, lambda: open_meteo.read_json(value))
    if city_page.recognised(value):
        return _told(path, city_page.SERVICE, city_page.HOW, lambda: city_page.read_json(value))
    if national.recognised(value):
        return _told(path, national.SERVICE, national.HOW, lambda: national.read(value))
    raise Refused(f"{path}: JSON, but of no service known here; {EXPECTED}; {SAVE}")


def _depth(text: str) -> int:
    """How deep brackets stand at most, those inside text counted too: a bound, told without parsing."""
    depth = deepest = 0
    for letter in text:
        if letter in "[{":
            depth += 1
            deepest = max(deepest, depth)
        elif letter in "]}":
            depth -= 1
    return deepest


def _xml(path: Path, content: bytes) -> Found:
    try:
        root = fromstring(content, forbid_dtd=True)
    except DefusedXmlException:
        raise Refused(f"{path}: the XML defines entities, which no forecast does; {EXPECTED}; {SAVE}") from None
    except (ParseError, ValueError, LookupError) as error:
        raise Refused(f"{path}: damaged or cut short, not XML ({_line(error)}); {EXPECTED}; {SAVE}") from None
    if root.tag == "dwml":
        return _told(path, dwml.SERVICE, dwml.HOW, lambda: dwml.read(root))
    if root.tag == "siteData":
        return _told(path, city_page.SERVICE, city_page.HOW, lambda: city_page.read_xml(root))
    raise Refused(f"{path}: XML, but of no service known here; {EXPECTED}; {SAVE}")


def _text(path: Path, text: str, system: str | None, night_after: bool) -> Found:
    first = text.lstrip().partition("\n")[0]
    if {"latitude", "longitude", "utc_offset_seconds"} <= {*first.strip().split(",")}:
        return _told(path, open_meteo.SERVICE, open_meteo.HOW, lambda: open_meteo.read_csv(text))
    if daily_summaries.recognised(first.replace('"', "").split(",")):
        return _told(path, daily_summaries.SERVICE, daily_summaries.HOW, lambda: daily_summaries.read(text, system))
    return _told(path, table.SERVICE, table.HOW, lambda: table.read(text, system, night_after))


def _line(error: Exception) -> str:
    return " ".join(str(error).split())[:80]
