"""What runs inside LibreOffice: each call from a cell goes to the catalogue.

LibreOffice loads this file with its own Python when a sheet first calls a function.  It knows
every function's arguments from the type library, so numbers come as floats (a blank cell as
0.0), words as text, and `units` left out as None.  Calc itself takes ranges element by element
and passes errors on without a call.
"""

from __future__ import annotations

import struct
import sys
from pathlib import Path
from typing import Any

import uno
import unohelper

# In front: another sheetfuncs on this machine may be of another version.
sys.path.insert(0, str(Path(__file__).parents[3]))

from sheetfuncs.formulas.catalogue import CATALOGUE
from sheetfuncs.formulas.define import Function
from sheetfuncs.hosts.calc import INTERFACE, SERVICE
from sheetfuncs.hosts.cells import answer


def _error(number: int) -> float:
    """An error as Calc keeps it in a cell: a double that is not a number, with the error's own number."""
    bits: float = struct.unpack("<d", struct.pack("<Q", 0x7FF8 << 48 | number))[0]
    return bits


ERRORS = {"#NUM!": _error(503), "#VALUE!": _error(519), "#N/A": _error(32767)}


def _method(function: Function) -> Any:
    """A function as a method of the add-in.  An exception that nobody foresaw passes through: Calc shows #VALUE!."""

    def call(self: Any, *given: Any) -> Any:
        if given[-1].__class__ is tuple:  # only `units` can come as a range, perhaps a whole column: one word is meant
            return ERRORS["#VALUE!"]
        value = answer(function, given)
        if value.__class__ is str:
            return ERRORS.get(value, value)
        return float(value)

    return call


Functions = type(
    "Functions",
    (unohelper.Base, uno.getClass(INTERFACE)),
    {
        "__init__": lambda self, context: None,
        **{name: _method(function) for name, function in CATALOGUE.items()},
    },
)

g_ImplementationHelper = unohelper.ImplementationHelper()  # noqa: N816 (LibreOffice looks for this name)
g_ImplementationHelper.addImplementation(Functions, SERVICE, (SERVICE, "com.sun.star.sheet.AddIn"))
