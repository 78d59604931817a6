"""What a typed cell holds, by the kind of the cell."""

from __future__ import annotations

import datetime
import math
from collections.abc import Sequence
from typing import Any

from sheetfuncs.workbook.model import parts
from sheetfuncs.workbook.model.layout import cells_of
from sheetfuncs.workbook.model.parts import Column, Field, Fields, Sheet, Table, Units
from sheetfuncs.workbook.read.contents import DAY_ZERO, ONE_DAY, serial
from sheetfuncs.workbook.sheets.phrases import MONTHS
from sheetfuncs.workbook.write.styles import style

WORDY = (parts.TEXT, parts.WORDS)
LONGEST = 32767  # characters in a cell
FIRST_DAY, LAST_DAY = 61, 2958465  # 1 March 1900, from when all spreadsheets agree, to the end of 9999


def named(sheets: Sequence[Sheet]) -> dict[str, Column | Field]:
    """Every labelled cell and every column of a workbook by its name."""
    found: dict[str, Column | Field] = {}
    for sheet in sheets:
        for block in sheet.blocks:
            if isinstance(block, Fields):
                found |= {f"{block.key}.{cell.key}": cell for field in block.fields for cell in cells_of(field)}
            elif isinstance(block, Table):
                found |= {f"{block.key}.{column.key}": column for column in block.columns}
    return found


def typed(kind: str, value: Any) -> Any:
    """A value found in a cell as its kind has it; what does not fit stays as a spreadsheet would take it."""
    if value is None or value == "":
        return None
    if isinstance(value, str):
        return value[:LONGEST]
    if isinstance(value, bool):
        return str(value).upper()  # no number to a spreadsheet's sums
    if kind in WORDY and isinstance(value, datetime.datetime) and value.time() == datetime.time():
        return value.date().isoformat()
    if kind in WORDY and not isinstance(value, (int, float)):
        return str(value)
    try:
        number = float(serial(value))
    except OverflowError:
        return str(value)
    if not math.isfinite(number):
        return str(value)
    if kind == parts.DATE and number.is_integer() and FIRST_DAY <= number <= LAST_DAY:
        return (DAY_ZERO + ONE_DAY * number).date()
    if kind == parts.TIME and 0 <= number < 1:
        return (DAY_ZERO + ONE_DAY * number).time()
    return number


def is_date(value: Any) -> bool:
    """Whether a cell shows a date or a time."""
    return isinstance(value, (datetime.date, datetime.time, datetime.timedelta))


def show(kind: str, value: Any, units: Units) -> str:
    """A cell's value as the workbook shows it, for a page of text."""
    if value is None or isinstance(value, str):
        return value or ""
    if kind == parts.DATE and isinstance(day := typed(kind, value), datetime.date):
        return f"{day.day} {MONTHS[day.month - 1]} {day.year}"
    if kind == parts.TIME and isinstance(time := typed(kind, value), datetime.time):
        return f"{time:%H:%M}"
    number = serial(value)
    form = style(kind, units).number
    if form == "General" or kind in WORDY:
        return f"{number:g}"
    decimals = len(form.rstrip("%").partition(".")[2])
    text = f"{number * 100 if form.endswith('%') else number:{',' if ',' in form else ''}.{decimals}f}"
    if "#" in form.partition(".")[2]:
        text = text.rstrip("0").rstrip(".")
    return text + " %" if form.endswith("%") else text
