"""xlwings as Excel for Windows calls it, on any machine: what belongs to Windows is stood in for.

The stand-ins hand values over as pywin32 does (its documentation, and xlwings' own use of it):
a number as a float, a blank as None, an error as a whole number, a date as a datetime, a block
of cells as a tuple of rows, and an object of Excel behind a pointer that is unwrapped first.
Everything from `CallUDF` inward is xlwings' own code.
"""

from __future__ import annotations

import ctypes
import datetime
import importlib
import sys
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from types import ModuleType, SimpleNamespace
from typing import Any
from unittest import mock

from sheetfuncs.formulas.catalogue import CATALOGUE
from sheetfuncs.hosts.excel import LEFT_OUT

BLANK = "(blank)"  # an empty cell
MISSING = -2147352572  # an argument left out: DISP_E_PARAMNOTFOUND, 80020004 in hexadecimal
RANGE = "{00020846-0000-0000-C000-000000000046}"  # the interface of Excel's ranges
ERRORS = {  # VBA's CVErr as COM hands it over: 800A0000 in hexadecimal and Excel's number
    text: number - 0x80000000 + 0xA0000
    for text, number in {
        "#NULL!": 2000,
        "#DIV/0!": 2007,
        "#VALUE!": 2015,
        "#REF!": 2023,
        "#NAME?": 2029,
        "#NUM!": 2036,
        "#N/A": 2042,
        "#SPILL!": 2045,
        "#CALC!": 2050,
    }.items()
}


class Pointer:
    """An object of Excel as it arrives, before pywin32 makes it one of Python."""

    def __init__(self, target: Any) -> None:
        self.target = target

    def GetTypeInfo(self) -> Any:
        attributes = SimpleNamespace(iid=RANGE)
        return SimpleNamespace(GetDocumentation=lambda _: ["Range"], GetTypeAttr=lambda: attributes)


def excel_range(value: Any) -> Pointer:
    """A range of Excel that holds a value, or rows of values: what xlwings asks of one."""
    rows = value if isinstance(value, tuple) else ((value,),)
    sheet = SimpleNamespace(Parent=SimpleNamespace(Application=SimpleNamespace(Hwnd=1)))
    found = SimpleNamespace(
        Value=value,
        Worksheet=sheet,
        Row=1,
        Column=1,
        Rows=SimpleNamespace(Count=len(rows)),
        Columns=SimpleNamespace(Count=len(rows[0])),
    )
    found._oleobj_ = Pointer(found)
    return Pointer(found)


class Time(datetime.datetime):
    """A date as pywin32 hands it over."""


class _Part(ModuleType):
    """A module of Windows: any name in it is a class that does nothing."""

    def __getattr__(self, name: str) -> Any:
        if name.startswith("__"):
            raise AttributeError(name)
        made = type(name, (), {"__init__": lambda self, *given, **named: None})
        setattr(self, name, made)
        return made


def _parts() -> dict[str, Any]:
    names = [
        "pywintypes",
        "pythoncom",
        "win32api",
        "win32con",
        "win32event",
        "win32gui",
        "win32process",
        "win32timezone",
    ]
    names += ["win32timezone", "win32com", "win32com.client", "win32com.server", "win32com.server.dispatcher"]
    names += ["win32com.server.policy", "win32com.server.util"]
    parts: dict[str, Any] = {name: _Part(name) for name in names}
    for name, part in parts.items():
        package, _, inner = name.rpartition(".")
        if package:
            setattr(parts[package], inner, part)
    parts["pywintypes"].TimeType = Time
    parts["pywintypes"].IID = str
    parts["pywintypes"].com_error = OSError
    parts["pythoncom"].__file__ = "pythoncom"
    parts["pythoncom"].IID_IDispatch = "IDispatch"
    parts["pythoncom"].TypeIIDs = {"IDispatch": Pointer}
    parts["win32com.client"].Dispatch = lambda thing, **_: thing.target if isinstance(thing, Pointer) else thing
    parts["win32process"].GetWindowThreadProcessId = lambda window: (window, window)
    util = parts["win32com.server.util"]
    util.wrap = lambda thing, *_: SimpleNamespace(wrapped=thing)
    util.unwrap = lambda thing: thing.wrapped
    return parts


@contextmanager
def excel() -> Iterator[Any]:
    """xlwings' server as Excel sees it, with `sheetfuncs.hosts.excel` loaded as on Windows."""
    dll = mock.MagicMock()
    with mock.patch.dict(sys.modules, _parts()):
        for name in [name for name in sys.modules if name.partition(".")[0] == "xlwings" or ".hosts.excel" in name]:
            del sys.modules[name]
        xlwings: Any = importlib.import_module("xlwings")
        with mock.patch.multiple(ctypes, create=True, windll=dll, oledll=dll, PyDLL=dll):
            windows = importlib.import_module("xlwings._xlwindows")
        udfs = importlib.import_module("xlwings.udfs")
        server = importlib.import_module("xlwings.com_server")
        # What xlwings/__init__.py does on Windows:
        xlwings.engines.add(xlwings.Engine(impl=windows.engine))
        xlwings.func, xlwings.arg, xlwings.ret = udfs.xlfunc, udfs.xlarg, udfs.xlret
        try:
            yield server.XLPython()
        finally:
            server.loop.close()


def by_wrapper(python: Any, name: str, given: Sequence[Any]) -> Any:
    """A call as our VBA sends it: ranges as their values, a text for what is left out."""
    sent = [LEFT_OUT if value is None else _value(value) for value in _all(name, given)]
    return python.CallUDF("sheetfuncs.hosts.excel", name, tuple(sent))


def by_import(python: Any, name: str, given: Sequence[Any]) -> Any:
    """A call as xlwings' own VBA sends it: each argument that stands in cells as a range."""
    sent = [MISSING if value is None else excel_range(_value(value)) for value in _all(name, given)]
    book = Pointer(SimpleNamespace(sheets=[], Sheets=SimpleNamespace(Count=0)))
    return python.CallUDF("sheetfuncs.hosts.excel", name, tuple(sent), book, excel_range(None))


def _all(name: str, given: Sequence[Any]) -> list[Any]:
    """The arguments, with None for those that are not there at the end."""
    return [*given, *[None] * (len(CATALOGUE[name].card.parameters) - len(given))]


def _value(value: Any) -> Any:
    """What a cell, or rows of cells, are for COM."""
    if isinstance(value, tuple):
        return tuple(_value(item) for item in value)
    if value == BLANK:
        return None
    return ERRORS.get(value, float(value) if type(value) is int else value)
