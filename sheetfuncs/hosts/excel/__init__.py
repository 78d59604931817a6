"""The functions in Excel for Windows, which calls this module through xlwings.

xlwings sends each argument as Excel keeps it (`raw`), since its own clean-up makes one thing of
a blank cell, an error and an empty text.  What comes back is a number, a word or the text of an
error; `wrapper` writes the VBA that turns such a text into the error itself.

Off Windows xlwings leaves functions as they are, so that this module can be imported anywhere.
"""

from __future__ import annotations

import logging
import math
from collections.abc import Callable
from datetime import datetime
from decimal import Decimal
from functools import wraps
from inspect import Parameter, Signature
from typing import Any

from sheetfuncs.formulas.catalogue import CATALOGUE
from sheetfuncs.formulas.define import Function
from sheetfuncs.hosts.cells import answer
from sheetfuncs.science.errors import FormulaError

try:
    import xlwings
except ModuleNotFoundError:  # on Linux it is no dependency, and nothing there calls these functions
    xlwings = None  # type: ignore[assignment]

MODULE = __name__
CATEGORY = "Maple sugaring"  # of the functions, in Excel's list of them

# Excel's number of each error: its enumeration XlCVError (Microsoft, Excel VBA reference), which leaves out
# #GETTING_DATA and the five after #SPILL!: these six are from memory.
ERROR_NUMBERS = {
    "#NULL!": 2000,
    "#DIV/0!": 2007,
    "#VALUE!": 2015,
    "#REF!": 2023,
    "#NAME?": 2029,
    "#NUM!": 2036,
    "#N/A": 2042,
    "#GETTING_DATA": 2043,
    "#SPILL!": 2045,
    "#CONNECT!": 2046,
    "#BLOCKED!": 2047,
    "#UNKNOWN!": 2048,
    "#FIELD!": 2049,
    "#CALC!": 2050,
}
# COM hands an error over as a negative whole number: 800A, then Excel's number, in hexadecimal.
COM_ERROR = 0x800A - 0x10000
ERROR_TEXTS = {number: text for text, number in ERROR_NUMBERS.items()}
FIRST_DAY = datetime(1899, 12, 30)  # day 0 of a date as COM hands it over

LEFT_OUT = "(left out)"  # what stands for an argument that a cell's formula leaves out


def _exposed(function: Function) -> Callable[..., Any]:
    """A function of the catalogue as xlwings calls it, with a record of its arguments for xlwings."""
    card = function.card
    safe = _safe(function)

    @wraps(function)
    def called(*given: Any) -> Any:
        return answer(safe, [_argument(value) for value in given])

    optional = Parameter.POSITIONAL_OR_KEYWORD
    called.__signature__ = Signature([Parameter(name, optional, default=LEFT_OUT) for name in card.parameters])  # type: ignore[attr-defined]
    called.__annotations__ = {}  # xlwings would convert by them: a cell's value goes to the function as it is
    called.__doc__ = card.sentence
    if xlwings is None:
        return called
    for name, words in card.parameter_help.items():
        called = xlwings.arg(name, "raw", doc=words)(called)
    return xlwings.func(category=CATEGORY)(called)


def _safe(function: Function) -> Any:
    """The function for one cell: whatever happens, a value that Excel can show.

    What nobody foresaw is #VALUE!, as in LibreOffice, and goes to the log: xlwings would write
    the traceback into the cell.
    """

    def called(*given: Any) -> Any:
        try:
            value = function(*given)
        except FormulaError:
            raise
        except Exception:
            logging.getLogger(__name__).exception("%s%r", function.__name__, given)
            return "#VALUE!"
        return "#NUM!" if isinstance(value, float) and not math.isfinite(value) else value

    return called


def _argument(value: Any) -> Any:
    """An argument as `answer` takes it: a range as a tuple of rows, None for one left out."""
    if value == LEFT_OUT:
        return None
    if not isinstance(value, (list, tuple)):
        return _cell(value)
    rows = value if isinstance(value[0], (list, tuple)) else (value,)  # one row comes flat
    return tuple(tuple(_cell(item) for item in row) for row in rows)


def _cell(value: Any) -> Any:
    """What a cell holds: a number, a text, or the text of an error.  A date is a number of days."""
    kind = type(value)
    if kind is float or kind is str:
        return value
    if value is None:
        return 0.0
    if isinstance(value, Decimal):  # a cell in a currency's format
        return float(value)
    if isinstance(value, datetime):
        return (value.replace(tzinfo=None) - FIRST_DAY).total_seconds() / 86400.0
    if kind is int and value >> 16 == COM_ERROR:
        return ERROR_TEXTS.get(value & 0xFFFF, "#VALUE!")
    return value


FUNCTIONS = {name: _exposed(function) for name, function in CATALOGUE.items()}
globals().update(FUNCTIONS)
