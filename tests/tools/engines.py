"""Two independent engines that recompute a workbook: what is stored in it, they must find again.

Neither is asked for anything else.  What one of them gets wrong is listed in `test_engines`, each with
the smallest case that shows it: a fault that is mended must leave the list.
"""

from __future__ import annotations

import datetime
import io
import re
import zipfile
from collections.abc import Iterable, Iterator, Mapping
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


class Formulon:
    """A workbook in formulon; `today` is the day that TODAY gives."""

    def __init__(self, content: bytes, today: datetime.date | None = None) -> None:
        book = formulon.Workbook.load(_as_formulon_reads_it(content))
        numbers = {book.sheet_name(number): number for number in range(book.sheet_count())}
        if today:
            book.set_pinned_now(today.year, today.month, today.day)
        book.recalc()
        # all of a sheet in one go: each question costs more than its answer
        self.cells = {
            title: {(cell.row, cell.col): (cell.formula or "", cell.value) for cell in book.iter_cells(number)}
            for title, number in numbers.items()
        }

    def shown(self) -> Iterator[str]:
        """Every formula as formulon shows it."""
        for cells in self.cells.values():
            yield from (formula for formula, _ in cells.values() if formula)

    def values(self, wanted: Wanted) -> Computed:
        """The wanted cells, computed."""
        return {title: {at: _of_formulon(self.cells[title][at][1]) for at in cells} for title, cells in wanted.items()}


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


# A cell with ranges of conditions: as the formula of a dynamic array formulon reads it right.
_CONDITIONS = re.compile(rb'<c r="(\w+)"([^>]*)><f>([^<]*_xlfn\.(?:MIN|MAX)IFS\([^<]*)</f>')


def _as_formulon_reads_it(content: bytes) -> bytes:
    """Optional parameters in brackets, and what holds its fault with ranges of conditions as it has none."""
    out = io.BytesIO()
    with zipfile.ZipFile(io.BytesIO(content)) as source, zipfile.ZipFile(out, "w") as target:
        for entry in source.infolist():
            part = source.read(entry)
            if entry.filename == "xl/workbook.xml":
                part = re.sub(rb"_xlop\.(\w+)", rb"[_xlpm.\1]", part)
            elif entry.filename.startswith("xl/worksheets/sheet"):
                part = _CONDITIONS.sub(rb'<c r="\1"\2 cm="1"><f t="array" ref="\1">\3</f>', part)
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
