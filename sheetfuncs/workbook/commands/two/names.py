"""Names of lots in cells: which rows they mean, and the same cell when those rows have other numbers.

A lot is called by the row that made it: S3 is the third row of Collection, B2 the second of Boil and R2 what
was left over of it, K1 what batch 1 left over; a batch is its row.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from typing import Any

TABLES = {"S": "collection", "B": "boil", "R": "boil", "K": "batches"}
NUMBERED = ("collection", "boil", "batches")  # each names rows of its own and of those before it
IN_WORDS = ("boil.took", "batches.goes_in", "happenings.lot")
BY_NUMBER = ("bottles.batch", "run.batch", "panel.batch", "side.one", "side.other")
OF_BATCHES = "batches"

# As the sheets take such a cell apart (`sheets.naming.listed`); their place is kept.
_APART = re.compile(r"([,;+&\n]|(?<=\s)and(?=\s))", re.IGNORECASE)
_NAME = re.compile(r"([\s*?~]*)([SBRK])([1-9]\d{0,3})([\s*?~]*)", re.IGNORECASE)

Renumber = Callable[[str, int], Any]  # a table and a row of it, from 0 -> what stands for the number then


def meant(name: str, value: Any) -> Iterator[tuple[str, int]]:
    """The tables and rows that a cell of a column or label names."""
    found: list[tuple[str, int]] = []
    renumbered(name, value, lambda table, row: found.append((table, row)))
    yield from found


def renumbered(name: str, value: Any, number: Renumber) -> Any:
    """A cell with other numbers for the rows that it names; everything else of it as it was typed."""
    if name in BY_NUMBER and isinstance(value, float) and 1 <= value < 1e6:
        return number(OF_BATCHES, int(value) - 1)
    if name in IN_WORDS and isinstance(value, str):
        return "".join(_one(part, number) for part in _APART.split(value))
    return value


def _one(text: str, number: Renumber) -> str:
    """One name of a list, where it is that of a lot."""
    found = _NAME.fullmatch(text)
    if not found:
        return text
    before, letter, digits, after = found.groups()
    return f"{before}{letter}{number(TABLES[letter.upper()], int(digits) - 1)}{after}"
