"""A season workbook: its sheets laid out, filled, computed by the embedded engine, and written."""

from __future__ import annotations

import datetime
import tempfile
from collections.abc import Mapping, Sequence
from pathlib import Path
from typing import Any

from sheetfuncs import __version__
from sheetfuncs.files import Refused
from sheetfuncs.hosts import embedded
from sheetfuncs.workbook import sheets
from sheetfuncs.workbook.model.kinds import named
from sheetfuncs.workbook.model.layout import Layout
from sheetfuncs.workbook.model.parts import Field, Macros, Plain, Rows, Units
from sheetfuncs.workbook.read.contents import serial
from sheetfuncs.workbook.write.writer import Writer

FORMAT = "1"  # goes up when sheets or headings change, so that older workbooks can be told

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
        self.layout, self.cells = Layout(self.sheets), named(self.sheets)
        self.today = today or datetime.date.today()
        unknown = [name for name in self.inputs if name not in self.layout.spots]
        if unknown:
            raise KeyError(f"the workbook has no cells named {', '.join(unknown)}")
        self.values: dict[str, dict[tuple[int, int], Any]] = {}

    def write(self, path: Path, edition: str = "carried", macros: Macros | None = None) -> None:
        """Compute everything and write the workbook, each formula with its value.  With macros it is an .xlsm."""
        if not self.values:
            self.compute()
        self._written(path, edition, self.inputs, macros, self.plains)

    def compute(self, *other_days: datetime.date) -> list[dict[str, dict[tuple[int, int], Any]]]:
        """Let the embedded engine compute the carried edition; returned is what it gives on other days."""
        today = self.layout.spots[TODAY]
        try:
            with tempfile.TemporaryDirectory() as folder:
                path = Path(folder) / "season.xlsx"
                formulas = self._written(path, "carried", {TODAY: self.today} | self.inputs)
                model = embedded.Model(path)
        except OSError as error:
            raise Refused(
                f"{tempfile.gettempdir()}: no file can be written here ({error.strerror or error})"
            ) from error
        days = []
        for day in (self.today, *other_days):
            if TODAY not in self.inputs:
                model.put(today.sheet, (today.row, today.column), serial(day))
            days.append(model.values(formulas))
            if TODAY not in self.inputs:
                days[-1][today.sheet][today.row, today.column] = serial(day)
        self.values = days[0]
        return days[1:]

    def _written(
        self,
        path: Path,
        edition: str,
        inputs: Mapping[str, Any],
        macros: Macros | None = None,
        plains: Sequence[Plain] = (),
    ) -> dict[str, list[tuple[int, int]]]:
        writer = Writer(path, self.sheets, self.layout, self.units, edition)
        stamp = {
            STAMP_FORMAT: FORMAT,
            STAMP_VERSION: __version__,
            STAMP_UNITS: self.units.system,
            STAMP_EDITION: edition,
        }
        writer.write(inputs, self.values, stamp, macros, plains)
        return writer.formulas

    def value(self, name: str, offset: int = 0) -> Any:
        """The computed value of a labelled cell, or of a table's column at a row."""
        spot = self.layout.spots[name]
        return self.values[spot.sheet].get((spot.row + offset, spot.column))

    def shown(self, name: str, offset: int = 0) -> Any:
        """What a cell shows: computed, typed or fixed."""
        value, what = self.value(name, offset), self.cells[name]
        if value is not None:
            return value
        if isinstance(what, Field):
            return self.inputs.get(name, what.start)
        given = what.fixed or self.inputs.get(name, ())
        return given[offset] if offset < len(given) else None
