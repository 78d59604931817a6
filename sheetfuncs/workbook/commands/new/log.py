"""A collection log from a CSV file: date, volume and °Brix of each run, headings first."""

from __future__ import annotations

import csv
import datetime
import math
from pathlib import Path
from typing import Any

from sheetfuncs.files import Refused

HEADINGS = ("date", "volume", "brix")
STRONGEST_SAP = 85.0
LARGEST = 1000000.0


def read_log(path: Path) -> dict[str, list[Any]]:
    """The typed cells of Collection from a log; the first bad line is named, and nothing is taken."""
    try:
        text = path.read_text(encoding="utf-8-sig")
    except FileNotFoundError:
        raise Refused(f"{path}: there is no such file; give the path of a CSV file") from None
    except (OSError, UnicodeDecodeError) as error:
        raise Refused(f"{path}: cannot be read as text ({error}); save the log as CSV, UTF-8") from error
    if "\0" in text:
        raise Refused(f"{path}: this is not a CSV file; save the log as CSV, UTF-8")
    try:
        lines = [(reader_line, row) for reader_line, row in _numbered(text) if any(cell.strip() for cell in row)]
    except csv.Error as error:
        raise Refused(f"{path}: this is not a CSV file ({error}); save the log as CSV, UTF-8") from error
    if not lines:
        raise Refused(f"{path}: the file is empty; the first line is date,volume,brix, then a line for each run")
    columns = _columns(path, *lines[0])
    if len(lines) == 1:
        raise Refused(f"{path}: there is no run below the headings; add a line for each")
    found: dict[str, list[Any]] = {"collection.date": [], "collection.sap": [], "collection.brix": []}
    for number, row in lines[1:]:
        cells = [row[column].strip() if column < len(row) else "" for column in columns]
        found["collection.date"].append(_date(path, number, cells[0]))
        found["collection.sap"].append(_number(path, number, "volume", cells[1], LARGEST))
        found["collection.brix"].append(_number(path, number, "brix", cells[2], STRONGEST_SAP))
    return found


def _numbered(text: str) -> list[tuple[int, list[str]]]:
    """Each row with the number of its line."""
    reader = csv.reader(text.splitlines(), strict=True)
    return [(reader.line_num, row) for row in reader]


def _columns(path: Path, number: int, headings: list[str]) -> list[int]:
    """Where the three headings stand; others are passed over."""
    words = [heading.strip().casefold() for heading in headings]
    missing = [heading for heading in HEADINGS if heading not in words]
    if missing:
        raise Refused(
            f"{path}, line {number}: no heading {', '.join(missing)}; the first line names date, volume, brix"
        )
    return [words.index(heading) for heading in HEADINGS]


def _date(path: Path, number: int, text: str) -> datetime.date:
    try:
        return datetime.date.fromisoformat(text)
    except ValueError:
        raise Refused(f"{path}, line {number}: date is {text!r}; write it as 2026-03-14") from None


def _number(path: Path, number: int, word: str, text: str, most: float) -> float:
    try:
        value = float(text)
    except ValueError:
        raise Refused(f"{path}, line {number}: {word} is {text!r}; write the number alone, without its unit") from None
    if not math.isfinite(value) or not 0 <= value <= most:
        raise Refused(f"{path}, line {number}: {word} is {text}; it must be 0 to {most:,.0f}")
    return value
