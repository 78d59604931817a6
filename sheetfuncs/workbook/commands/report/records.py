"""What a report is made of, whatever it is written as."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from sheetfuncs.workbook.season import Season


class Told(NamedTuple):
    """A workbook's season: its name, computed, and how many things in it must be mended."""

    name: str
    season: Season
    to_mend: int


class Section(NamedTuple):
    """A part of a report: a title, headings, and rows of words; `left` says which columns are words."""

    title: str
    headings: Sequence[str]
    left: Sequence[bool]
    rows: Sequence[Sequence[str]]
