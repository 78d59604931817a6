"""What the xlwings of this machine brings: its VBA project, and its VBA module as a text file.

They are taken from the installed package and not kept here, since a version of xlwings works
with its own VBA alone.
"""

from __future__ import annotations

import sys
import zipfile
from pathlib import Path
from typing import NamedTuple

from sheetfuncs.files import Refused
from sheetfuncs.hosts.excel import MODULE
from sheetfuncs.hosts.excel.wrapper import XLWINGS

INSTALL = f'python -m pip install "xlwings=={XLWINGS}.*"'
WORKBOOK = "quickstart_standalone.xlsm"  # an empty workbook whose project needs no Excel add-in
MODULE_FILE = "xlwings.bas"  # the module of that project, for a workbook of the user's own


class Installed(NamedTuple):
    """xlwings as it stands on this machine."""

    version: str
    project: bytes
    module: bytes


def installed() -> Installed:
    """The installed xlwings, if it is one that the wrapper was written for."""
    try:
        import xlwings
    except ModuleNotFoundError as error:
        raise Refused(f"xlwings: this Python has no xlwings; install it: {INSTALL}") from error
    version: str = xlwings.__version__
    if not version.startswith(f"{XLWINGS}."):
        raise Refused(f"xlwings {version}: the functions are written for xlwings {XLWINGS}; install that: {INSTALL}")
    folder = Path(xlwings.__file__).parent
    project, module = _project(folder / WORKBOOK), _bytes(folder / MODULE_FILE)
    if f'XLWINGS_VERSION As String = "{version}"'.encode() not in module:
        raise _broken(folder / MODULE_FILE, f"it does not belong to xlwings {version}")
    return Installed(version, project, module)


def settings() -> dict[str, str]:
    """What the sheet xlwings.conf of a workbook says; a row left out is the user's own setting.

    An empty row would take the place of that setting, so that only what is known has a row: the
    Python that runs now is the one that has sheetfuncs, if Excel is on the same machine.
    """
    known = {"UDF Modules": MODULE}
    return {"Interpreter_Win": sys.executable, **known} if sys.platform == "win32" else known


def _project(path: Path) -> bytes:
    try:
        with zipfile.ZipFile(path) as archive:
            return archive.read("xl/vbaProject.bin")
    except (OSError, KeyError, zipfile.BadZipFile) as error:
        raise _broken(path, "xlwings should bring this file, with a VBA project in it") from error


def _bytes(path: Path) -> bytes:
    try:
        return path.read_bytes()
    except OSError as error:
        raise _broken(path, "xlwings should bring this file") from error


def _broken(path: Path, what: str) -> Refused:
    return Refused(f"{path}: {what}; install it anew: {INSTALL} --force-reinstall")
