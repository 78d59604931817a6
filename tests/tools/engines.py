"""Two independent engines that recompute a workbook: what is stored in it, they must find again.

Neither is asked for anything else.  What one of them gets wrong is listed in `test_engines`, each with
the smallest case that shows it: a fault that is mended must leave the list.
"""

from __future__ import annotations

import datetime
import io
import re
import zipfile
from collections.abc import Iterable, Mapping
from typing import Any

import betteroffice_xlsx
import formulon

from sheetfuncs.workbook.model.days import serial
from sheetfuncs.workbook.model.layout import letters

FORMULON, BETTEROFFICE = "formulon", "betteroffice-xlsx"

# The errors of a cell by the numbers that formulon gives them.
_ERRORS = {
    formulon.ErrorCode.DIV0: "#DIV/0!",
    formulon.ErrorCode.NA: "#N/A",
    formulon.ErrorCode.NAME: "#NAME?",
    formulon.ErrorCode.NULL: "#NULL!",
    formulon.ErrorCode.NUM: "#NUM!",
    formulon.ErrorCode.REF: "#REF!",
    formulon.ErrorCode.VALUE: "#VALUE!",
}

Wanted = Mapping[str, Iterable[tuple[int, int]]]  # by sheet, then row and column from 0
Computed = dict[str, dict[tuple[int, int], Any]]


# formulon intersects the ranges of MINIFS and MAXIFS from the second condition on, as if each were one cell.
_INTERSECTED = re.compile(r"(?<=,)@(?=[^,()@]*\$?[A-Z]+\$?\d+:\$?[A-Z]+\$?\d+,)")


class Formulon:
    """A workbook in formulon; `today` is the day that TODAY gives.

    A formula with its fault (see `_INTERSECTED`) is typed anew without the signs of it; the rest is as loaded.
    `shown` are the formulas as it then shows them.
    """

    def __init__(self, content: bytes, today: datetime.date | None = None) -> None:
        self.book = formulon.Workbook.load(_with_brackets(content))
        self.numbers = {self.book.sheet_name(number): number for number in range(self.book.sheet_count())}
        if today:
            self.book.set_pinned_now(today.year, today.month, today.day)
        self.shown: dict[str, dict[tuple[int, int], str]] = {}
        for title, number in self.numbers.items():
            cells = {(cell.row, cell.col): cell.formula for cell in self.book.iter_cells(number) if cell.formula}
            for at, formula in cells.items():
                if re.search("(MIN|MAX)IFS", formula):
                    cells[at] = _INTERSECTED.sub("", formula)
                    if cells[at] != formula:
                        self.book.set_formula(number, *at, cells[at])
            self.shown[title] = cells
        self.book.recalc()

    def values(self, wanted: Wanted) -> Computed:
        """The wanted cells, computed."""
        found = {}
        for title, cells in wanted.items():  # all of a sheet in one go: each question costs more than its answer
            values = {(cell.row, cell.col): cell.value for cell in self.book.iter_cells(self.numbers[title])}
            found[title] = {at: _of_formulon(values[at]) for at in cells}
        return found


def by_formulon(content: bytes, wanted: Wanted, today: datetime.date | None = None) -> Computed:
    """The wanted cells, computed by formulon."""
    return Formulon(content, today).values(wanted)


def by_betteroffice(content: bytes, wanted: Wanted, today: datetime.date | None = None) -> Computed:
    """The wanted cells, computed by betteroffice-xlsx, which knows LET and no LAMBDA that has a name."""
    book = betteroffice_xlsx.Workbook.open(content)
    calculation = book.recalculate(now_serial=serial(today))
    assert (calculation.cycles, calculation.limited) == (0, 0)
    return {
        title: {(row, column): _plain(book.value(title, f"{letters(column)}{row + 1}")) for row, column in cells}
        for title, cells in wanted.items()
    }


def _with_brackets(content: bytes) -> bytes:
    """Optional parameters in the form that formulon reads."""
    out = io.BytesIO()
    with zipfile.ZipFile(io.BytesIO(content)) as source, zipfile.ZipFile(out, "w") as target:
        for entry in source.infolist():
            part = source.read(entry)
            if entry.filename == "xl/workbook.xml":
                part = re.sub(rb"_xlop\.(\w+)", rb"[_xlpm.\1]", part)
            target.writestr(entry.filename, part)
    return out.getvalue()


def _of_formulon(value: formulon.Value) -> Any:
    if value.kind == formulon.ValueKind.ERROR:
        return _ERRORS[formulon.ErrorCode(value.error_code or 0)]
    return _plain(value.to_python())


def _plain(value: Any) -> Any:
    """Numbers as floats, an error as its text, nothing as a text that is empty."""
    if isinstance(value, betteroffice_xlsx.CellError):
        return value.code
    if value is None:
        return ""
    return float(value) if isinstance(value, (bool, int)) else value
