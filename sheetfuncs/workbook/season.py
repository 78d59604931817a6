"""A season workbook: its sheets laid out, filled, computed by the embedded engine, and written."""

from __future__ import annotations

import datetime
from collections.abc import Mapping, Sequence
from io import BytesIO
from pathlib import Path
from typing import Any

from sheetfuncs import __version__
from sheetfuncs.workbook import sheets
from sheetfuncs.workbook.model.days import serial
from sheetfuncs.workbook.model.editions import DEFAULT, EDITIONS, LINKED, Edition
from sheetfuncs.workbook.model.layout import Layout
from sheetfuncs.workbook.model.parts import Field, Macros, Plain, given, named
from sheetfuncs.workbook.model.rows import Rows
from sheetfuncs.workbook.model.systems import Units
from sheetfuncs.workbook.sheets import functions
from sheetfuncs.workbook.sheets.weekend import UNANSWERED
from sheetfuncs.workbook.write.bare import Bare
from sheetfuncs.workbook.write.writer import Writer

FORMAT = 2  # goes up when sheets or headings change, so that older workbooks can be told

# What a workbook says of itself, in its custom properties.
STAMP_FORMAT, STAMP_VERSION = "sheetfuncs format", "sheetfuncs version"
STAMP_UNITS, STAMP_EDITION = "sheetfuncs units", "sheetfuncs edition"

TODAY = "weekend.today"


class Season:
    """A season workbook before it is a file; after `write`, `value` gives any computed cell.

    `today` is the day whose values are stored where Today is a formula; left out: today.
    `newcomer` has the titles and lines of a first page; `plains` are sheets of values that come last.
    """

    def __init__(
        self,
        system: str,
        inputs: Mapping[str, Any],
        rows: Rows | None = None,
        today: datetime.date | None = None,
        newcomer: Sequence[tuple[str, Sequence[str]]] = (),
        plains: Sequence[Plain] = (),
    ) -> None:
        self.units = Units(system)
        self.inputs = dict(inputs)
        self.sheets = sheets.all_sheets(self.units, rows or Rows(), newcomer)
        self.plains = plains
        self.pages = [*self.sheets, functions.sheet(self.units)]  # as written; what is read back is the sheets alone
        self.layout, self.cells = Layout(self.pages), named(self.sheets)
        self.today = today or datetime.date.today()
        unknown = [name for name in self.inputs if name not in self.layout.spots]
        if unknown:
            raise KeyError(f"the workbook has no cells named {', '.join(unknown)}")
        for name, value in self.inputs.items():
            if isinstance(value, list) and len(value) > self.layout.spots[name].height:
                raise ValueError(f"{name}: {len(value)} rows for a table of {self.layout.spots[name].height}")
        self.values: dict[str, dict[tuple[int, int], Any]] = {}

    def write(self, path: Path | BytesIO, edition: str = DEFAULT.name, macros: Macros | None = None) -> None:
        """Compute everything and write the workbook, each formula with its value.  With macros it is an .xlsm."""
        if not self.values:
            self.compute()
        self._written(path, edition, self.inputs, macros, self.plains)

    def write_uncomputed(self, path: Path | BytesIO, edition: str = LINKED.name) -> None:
        """Write the workbook with a nought for each formula, as a program does that knows none of ours."""
        self._written(path, edition, self.inputs)

    def compute(self, *other_days: datetime.date) -> list[dict[str, dict[tuple[int, int], Any]]]:
        """Let the embedded engine compute it; returned is what it gives on other days."""
        today = self.layout.spots[TODAY]
        bare = Bare(self.pages, self.layout, self.units, {TODAY: self.today} | self.inputs)
        model = bare.model()
        days = []
        for day in (self.today, *other_days):
            if TODAY not in self.inputs:
                model.put(today.sheet, (today.row, today.column), serial(day))
            days.append(model.values(bare.formulas))
            if TODAY not in self.inputs:
                days[-1][today.sheet][today.row, today.column] = serial(day)
        self.values = days[0]
        return days[1:]

    def _written(
        self,
        path: Path | BytesIO,
        edition: str,
        inputs: Mapping[str, Any],
        macros: Macros | None = None,
        plains: Sequence[Plain] = (),
    ) -> None:
        writer = Writer(path, self.pages, self.layout, self.units, EDITIONS[edition])
        stamp = {
            STAMP_FORMAT: str(FORMAT),
            STAMP_VERSION: __version__,
            STAMP_UNITS: self.units.system,
            STAMP_EDITION: edition,
        }
        writer.write(inputs, self._stored(EDITIONS[edition]), stamp, macros, plains)

    def _stored(self, edition: Edition) -> dict[str, dict[tuple[int, int], Any]]:
        """The values to store: where a program may not know the functions, no answer until it computes one."""
        if edition.inline or not self.values:
            return self.values
        stored = {title: dict(values) for title, values in self.values.items()}
        for name, value in UNANSWERED.items():
            spot = self.layout.spots[name]
            stored[spot.sheet][spot.row, spot.column] = value
        return stored

    def value(self, name: str, offset: int = 0) -> Any:
        """The computed value of a labelled cell, or of a table's column at a row."""
        spot = self.layout.spots[name]
        return self.values[spot.sheet].get((spot.row + offset, spot.column))

    def shown(self, name: str, offset: int = 0) -> Any:
        """What a cell shows: computed, typed or fixed."""
        value, what = self.value(name, offset), self.cells[name]
        if value is not None:
            return value
        found = given(what, name, self.inputs)
        if isinstance(what, Field):
            return found
        return found[offset] if offset < len(found) else None

    def number(self, name: str, offset: int = 0) -> Any:
        """What a cell shows, a day and a count as the number that a spreadsheet keeps; another value as it is."""
        value = serial(self.shown(name, offset))
        return float(value) if isinstance(value, int) and not isinstance(value, bool) else value
