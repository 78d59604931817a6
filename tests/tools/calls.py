"""Calls of functions in one workbook, and what every host makes of them.

The arguments of a call stand in cells and the call refers to them, as in a sheet of the yard.
All calls share one workbook: starting a spreadsheet program takes longer than its sums.
"""

from __future__ import annotations

from collections.abc import Sequence
from contextlib import closing
from pathlib import Path
from typing import Any, NamedTuple

import openpyxl
import xlsxwriter
from xlsxwriter.utility import xl_rowcol_to_cell

from sheetfuncs import arrays
from sheetfuncs.formulas.catalogue import CATALOGUE
from sheetfuncs.hosts import cells
from sheetfuncs.hosts.embedded import Model
from sheetfuncs.hosts.trace import inline, lambda_body
from sheetfuncs.science.errors import FormulaError
from tests.tools import engines, office, scripts, windows
from tests.tools.calc_office import with_addin

PYTHON, LAMBDA, LET, CALC, EXCEL = "Python", "LAMBDA", "LET", "LET in LibreOffice", "xlwings"
ADDIN = "add-in in LibreOffice"
ARRAYS = "arrays"
PLAIN, SHEETS, OFFICE = "plain VBA in LibreOffice", "Sheets' script in node", "Office's script in node"
# Two engines of other people: a LAMBDA that has a name is known to one of them.
FORMULON_LAMBDA, FORMULON_LET = f"LAMBDA in {engines.FORMULON}", f"LET in {engines.FORMULON}"
BETTEROFFICE_LET = f"LET in {engines.BETTEROFFICE}"
HOSTS = (
    *(PYTHON, LAMBDA, LET, CALC, EXCEL, ADDIN, ARRAYS, PLAIN, SHEETS, OFFICE),
    *(FORMULON_LAMBDA, FORMULON_LET, BETTEROFFICE_LET),
)
SCRIPTS = {PLAIN: scripts.by_basic, SHEETS: scripts.by_sheets, OFFICE: scripts.by_office}
SAME_DOUBLE = (PYTHON, LAMBDA, LET, EXCEL, ADDIN, PLAIN)  # the others have an exponential and a logarithm of their own

BLANK = windows.BLANK  # an empty cell, which every host takes for 0
ANSWER = 8  # the column of the answers; arguments stand to the left of it
SHEET = "Calls"


class Call(NamedTuple):
    """A function and its arguments: numbers, words, `BLANK`, the text of an error, or None for one left out."""

    name: str
    given: tuple[Any, ...]

    def runs_in(self, host: str) -> bool:
        """Python and a LAMBDA know of arguments left out; a LET is always written with all but `units`.

        Calc does not call an add-in for want of a required argument, and takes a text that reads as
        a number for that number, as its user has set it for all functions.
        """
        arguments = CATALOGUE[self.name].card.arguments
        if host == ARRAYS:
            return not any(value in cells.ERRORS for value in self.given)  # errors of cells are no arrays'
        if host in (PYTHON, LAMBDA, EXCEL, PLAIN, SHEETS, OFFICE, FORMULON_LAMBDA):
            return True
        if len(self.given) < len(arguments) or None in self.given[: len(arguments)]:
            return False
        numbers = [v for v, argument in zip(self.given, arguments.values(), strict=False) if not argument.allowed]
        return host != ADDIN or not any(isinstance(value, str) and value.isdecimal() for value in numbers)


class Answers:
    """What each host gives for some calls, computed when the host is first asked."""

    def __init__(self, calls: Sequence[Call], folder: Path) -> None:
        self._calls = list(dict.fromkeys(calls))
        self._folder = folder
        self._known: dict[str, dict[Call, Any]] = {}

    def of(self, call: Call, host: str) -> Any:
        """A number, a text, or the text of an error."""
        if host not in self._known:
            asked = [call for call in self._calls if call.runs_in(host)]
            self._known[host] = dict(zip(asked, _answers(asked, host, self._folder), strict=True))
        return self._known[host][call]


def _answers(calls: Sequence[Call], host: str, folder: Path) -> list[Any]:
    if host == PYTHON:
        return [
            cells.answer(CATALOGUE[name], [0.0 if value == BLANK else value for value in given])
            for name, given in calls
        ]
    if host == ARRAYS:
        return _by_arrays(calls)
    if host == EXCEL:
        with windows.excel() as python:
            return [windows.by_wrapper(python, name, given) for name, given in calls]
    if host in SCRIPTS:
        return SCRIPTS[host](calls, BLANK)
    if host == ADDIN:
        with with_addin() as made, made.calc() as calc:
            return calc.answers(calls, BLANK, cells.ERRORS)
    book = folder / f"{host}.xlsx"
    if host in (FORMULON_LAMBDA, FORMULON_LET, BETTEROFFICE_LET):
        _write(book, calls, host)
        by = engines.by_betteroffice if host == BETTEROFFICE_LET else engines.by_formulon
        values = by(book.read_bytes(), {SHEET: [(row, ANSWER) for row in range(len(calls))]})[SHEET]
        return [values[row, ANSWER] for row in range(len(calls))]
    if host != CALC:
        _write(book, calls, host)
        values = Model(book).values({SHEET: [(row, ANSWER) for row in range(len(calls))]})[SHEET]
        return [values[row, ANSWER] for row in range(len(calls))]
    office.needed()
    _write(book, calls, host)
    computed = office.convert(book, "xlsx", office.new_profile(folder))
    with closing(openpyxl.load_workbook(computed, data_only=True, read_only=True)) as made:
        rows = made[SHEET].iter_rows(1, len(calls), ANSWER + 1, ANSWER + 1, values_only=True)
        return [row[0] for row in rows]


def _by_arrays(calls: Sequence[Call]) -> list[Any]:
    """All calls of a function at once; of an element without a result, the error that it raises alone."""
    answers: dict[int, Any] = {}
    for name in dict.fromkeys(call.name for call in calls):
        places = [place for place, call in enumerate(calls) if call.name == name]
        card = CATALOGUE[name].card
        function = getattr(arrays, name)
        rows = [[0.0 if value == BLANK else value for value in calls[place].given] for place in places]
        rows = [row + [None] * (len(card.parameters) - len(row)) for row in rows]
        columns = [list(column) for column in zip(*rows, strict=True)]
        got = function(*columns)
        assert got.shape == (len(rows),)
        for place, row, value in zip(places, rows, got.tolist(), strict=True):
            answers[place] = value
            if value is None or value != value:
                try:
                    solved = function(*([one] for one in row), errors="raise")
                    raise AssertionError(f"{name}{row}: {value} among others, {solved} alone")
                except FormulaError as error:
                    answers[place] = error.cell
    return [answers[place] for place in range(len(calls))]


def _write(path: Path, calls: Sequence[Call], host: str) -> None:
    with xlsxwriter.Workbook(path) as book:
        if host in (LAMBDA, FORMULON_LAMBDA):
            for name in dict.fromkeys(call.name for call in calls):
                book.define_name(name, f"={lambda_body(CATALOGUE[name].card)}")
        sheet = book.add_worksheet(SHEET)
        for row, call in enumerate(calls):
            places = [_put(sheet, row, column, value) for column, value in enumerate(call.given)]
            if host in (LAMBDA, FORMULON_LAMBDA):
                sheet.write_dynamic_array_formula(row, ANSWER, row, ANSWER, f"={call.name}({','.join(places)})")
                continue
            card = CATALOGUE[call.name].card
            units = [f'"{word}"' for word in call.given[len(card.arguments) :] if word is not None]
            sheet.write_formula(row, ANSWER, f"={inline(card, places[: len(card.arguments)] + units)}")


def _put(sheet: Any, row: int, column: int, value: Any) -> str:
    """Write an argument into its cell and give the text that refers to it."""
    if value is None:
        return ""
    if isinstance(value, bool):
        sheet.write_boolean(row, column, value)
    elif value in cells.ERRORS:
        sheet.write_formula(row, column, f"={value}")
    elif isinstance(value, str) and value != BLANK:
        sheet.write_string(row, column, value)
    elif value != BLANK:
        sheet.write_number(row, column, value)
    return xl_rowcol_to_cell(row, column)
