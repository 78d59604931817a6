"""A call from a cell: ranges taken element by element, every error as the text a cell shows.

The hosts that call our Python (Calc, Excel) share this.  Each first turns its own idea of a
blank cell into 0.0 and of an argument left out into None, and afterwards turns error texts
into its own error values.  Runs on Python 3.9 without packages: it enters the Calc add-in.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from sheetfuncs.formulas.define import Function
from sheetfuncs.science.errors import FormulaError

NEWER_ERRORS = ("#GETTING_DATA", "#SPILL!", "#CONNECT!", "#BLOCKED!", "#UNKNOWN!", "#FIELD!", "#CALC!")  # of Excel
ERRORS = ("#N/A", "#NUM!", "#VALUE!", "#DIV/0!", "#REF!", "#NAME?", "#NULL!", *NEWER_ERRORS)

Rows = tuple[tuple[Any, ...], ...]


def answer(function: Function, given: Sequence[Any]) -> Any:
    """What the function gives for these arguments: one value, or rows of them for ranges.

    A range is a tuple of rows.  Ranges are laid beside each other as in an array formula: one
    row or column is repeated, and where another range has no cell the answer is #N/A.
    """
    ranges = [argument for argument in given if isinstance(argument, tuple)]
    if not ranges:
        return _one(function, given)
    height = max(len(rows) for rows in ranges)
    width = max(len(rows[0]) for rows in ranges)
    return tuple(
        tuple(_one(function, [_cell(argument, row, column) for argument in given]) for column in range(width))
        for row in range(height)
    )


def _cell(argument: Any, row: int, column: int) -> Any:
    """The element of an argument that belongs to a cell of the answer."""
    if not isinstance(argument, tuple):
        return argument
    row = 0 if len(argument) == 1 else row
    column = 0 if len(argument[0]) == 1 else column
    if row >= len(argument) or column >= len(argument[0]):
        return "#N/A"
    return argument[row][column]


def _one(function: Function, values: Sequence[Any]) -> Any:
    for value in values:
        if isinstance(value, str) and value in ERRORS:
            return value  # an error in is that error out
    try:
        return function(*values)
    except FormulaError as error:
        return error.cell
