"""The functions in a workbook of their own: to learn from, and to copy into one's own sheets."""

from __future__ import annotations

from io import BytesIO
from pathlib import Path

from sheetfuncs.files import Refused, new_file
from sheetfuncs.workbook.model.editions import INLINE
from sheetfuncs.workbook.model.layout import Layout
from sheetfuncs.workbook.model.systems import Units
from sheetfuncs.workbook.sheets import functions
from sheetfuncs.workbook.write.bare import Bare
from sheetfuncs.workbook.write.writer import Writer


def write_functions(path: Path, system: str, replace: bool = False) -> None:
    """Write the sheet Functions as a workbook.

    Each answer is written out in its cell, so that it computes wherever LET does and can be copied
    into any workbook; the functions are defined as names as well, for calls of one's own.
    """
    if path.suffix.lower() != ".xlsx":
        raise Refused(f"{path}: the workbook of the functions is an .xlsx file; end the name with .xlsx")
    with new_file(path, replace) as part:
        write(part, system)


def write(path: Path | BytesIO, system: str) -> None:
    """The same, to a path that may be written over, or into memory."""
    units = Units(system)
    sheets = [functions.sheet(units)]
    layout = Layout(sheets)
    bare = Bare(sheets, layout, units, {})
    values = bare.model().values(bare.formulas)
    Writer(path, sheets, layout, units, INLINE).write({}, values, {"title": "Functions for sugaring"})
