"""What a workbook file holds, whichever its format: cells by sheet, names, properties, notes."""

from __future__ import annotations

import datetime
from collections.abc import Mapping
from typing import Any, NamedTuple

from sheetfuncs.files import Refused

MOST_CELLS = 400_000  # a season of 5,000 collections has about 200,000

At = tuple[int, int]  # row and column, from 0


class Cell(NamedTuple):
    """What was typed; or a formula, without its equals sign, and the value stored with it, None for none or no text."""

    value: Any
    formula: str = ""


Cells = Mapping[At, Cell]


class Contents(NamedTuple):
    """One workbook.  `besides` says in words what it holds that is no cell: pictures, macros."""

    file: str
    sheets: Mapping[str, Cells]
    properties: Mapping[str, str]
    names: Mapping[str, str]
    notes: Mapping[tuple[str, At], str]
    besides: tuple[str, ...] = ()


class Counted:
    """Stops a reader at a workbook that is too large for a season."""

    def __init__(self, file: str) -> None:
        self.file, self.left = file, MOST_CELLS

    def one(self) -> None:
        self.left -= 1
        if self.left < 0:
            raise Refused(
                f"{self.file}: more than {MOST_CELLS:,} filled cells, too many for a season; "
                "move what is not the season to a workbook of its own"
            )


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


DAY_ZERO = datetime.datetime(1899, 12, 30)
ONE_DAY = datetime.timedelta(days=1)
