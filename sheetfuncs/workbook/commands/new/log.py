"""A collection log from a CSV file: date, volume and, where it was read, °Brix of each run, headings first.

Fields stand apart by commas, semicolons or tabs.  With the last two a decimal comma is read too.
"""

from __future__ import annotations

import csv
import datetime
import io
import itertools
import math
import re
from collections.abc import Iterator
from pathlib import Path
from typing import Any, TextIO

from sheetfuncs.files import Refused, to_read
from sheetfuncs.workbook.model.days import FIRST_DAY, serial
from sheetfuncs.workbook.model.rows import MOST_ROWS

HEADINGS = ("date", "volume", "brix")
NEEDED = HEADINGS[:2]  # sugar that was never read is a guess of Yard
STRONGEST_SAP = 85.0
LARGEST = 1000000.0
LONGEST_LINE = 10_000  # letters
MOST_BYTES = 64_000_000
SEPARATORS = (";", "\t", ",")


def read_log(path: Path) -> dict[str, list[Any]]:
    """The typed cells of Collection from a log; the first bad line is named, and nothing is taken."""
    try:
        with (
            to_read(path, MOST_BYTES, "the CSV file of a log") as file,
            io.TextIOWrapper(file, encoding="utf-8-sig", newline="") as text,
        ):
            return _read(path, text)
    except UnicodeDecodeError as error:
        raise Refused(f"{path}: cannot be read as text ({error.reason}); save the log as CSV, UTF-8") from error
    except csv.Error as error:
        raise Refused(f"{path}: this is not a CSV file ({error}); save the log as CSV, UTF-8") from error


def _read(path: Path, stream: TextIO) -> dict[str, list[Any]]:
    found: dict[str, list[Any]] = {"collection.date": [], "collection.sap": [], "collection.brix": []}
    columns: list[int | None] = []
    decimal = "."
    for number, row, separator in _rows(path, stream):
        if not columns:
            columns, decimal = _columns(path, number, row), "." if separator == "," else ","
            continue
        if len(found["collection.date"]) == MOST_ROWS:
            raise Refused(f"{path}: more than {MOST_ROWS:,} runs; is this the right file?")
        cells = [row[column].strip() if column is not None and column < len(row) else "" for column in columns]
        found["collection.date"].append(_date(path, number, cells[0]))
        found["collection.sap"].append(_number(path, number, "volume", cells[1], LARGEST, decimal))
        brix = _number(path, number, "brix", cells[2], STRONGEST_SAP, decimal) if cells[2] else None
        found["collection.brix"].append(brix)
    if not columns:
        raise Refused(f"{path}: the file is empty; the first line is date,volume,brix, then a line for each run")
    if not found["collection.date"]:
        raise Refused(f"{path}: there is no run below the headings; add a line for each")
    return found


def _rows(path: Path, stream: TextIO) -> Iterator[tuple[int, list[str], str]]:
    """Each filled row with the number of its line, and what parts its fields: what the headings have most of."""
    lines = _lines(path, stream)
    blank, first = 0, next(lines, "")
    while first and not first.strip():
        blank, first = blank + 1, next(lines, "")
    separator = max(SEPARATORS, key=first.count)
    reader = csv.reader(itertools.chain([first], lines), strict=True, delimiter=separator)
    for row in reader:
        if any(cell.strip() for cell in row):
            yield blank + reader.line_num, row, separator


def _lines(path: Path, stream: TextIO) -> Iterator[str]:
    """One line after the other, so that a file that is no log is not read whole."""
    while line := stream.readline(LONGEST_LINE + 1):
        if len(line) > LONGEST_LINE or "\0" in line:
            raise Refused(f"{path}: this is not a CSV file; save the log as CSV, UTF-8")
        yield line


def _columns(path: Path, number: int, headings: list[str]) -> list[int | None]:
    """Where our headings stand; others are passed over."""
    words = [heading.strip().casefold() for heading in headings]
    missing = [heading for heading in NEEDED if heading not in words]
    if missing:
        raise Refused(
            f"{path}, line {number}: no heading {', '.join(missing)}; the first line names date, volume, perhaps brix"
        )
    twice = [heading for heading in HEADINGS if words.count(heading) > 1]
    if twice:
        raise Refused(f"{path}, line {number}: two columns are headed {', '.join(twice)}; name the one to take")
    return [words.index(heading) if heading in words else None for heading in HEADINGS]


def _date(path: Path, number: int, text: str) -> datetime.date:
    try:
        day = datetime.date.fromisoformat(text)
    except ValueError:
        raise Refused(f"{path}, line {number}: date is {text!r}; write it as 2026-03-14") from None
    if serial(day) < FIRST_DAY:
        raise Refused(f"{path}, line {number}: date is {text}; spreadsheets know days from March 1900 on")
    return day


def _number(path: Path, number: int, word: str, text: str, most: float, decimal: str) -> float:
    form = rf"[-+]?(\d+([.{decimal}]\d*)?|[.{decimal}]\d+)([eE][-+]?\d+)?"
    if not re.fullmatch(form, text, re.ASCII):
        raise Refused(f"{path}, line {number}: {word} is {text!r}; write the number alone, without its unit")
    value = float(text.replace(",", "."))
    if not math.isfinite(value) or not 0 <= value <= most:
        raise Refused(f"{path}, line {number}: {word} is {text}; it must be 0 to {most:,.0f}")
    return value
