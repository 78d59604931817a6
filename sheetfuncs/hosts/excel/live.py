"""The workbook that is open in Excel, read without saving it or changing anything in it."""

from __future__ import annotations

import shutil
import sys
from pathlib import Path
from typing import Any

from sheetfuncs.files import Refused
from sheetfuncs.hosts.excel.installed import INSTALL

INSTEAD = "save the workbook, and give the file's name"


def open_workbook_copy(folder: Path) -> Path:
    """Put a copy of the workbook in front in Excel into a folder, as it stands there, and give its path.

    Excel for Windows writes such a copy itself, with what is not saved yet.  Excel for Mac does
    not: there the file is copied, if nothing in the workbook waits to be saved.
    """
    if sys.platform not in ("win32", "darwin"):
        raise Refused(f"--open: there is no Excel on this machine; {INSTEAD}")
    book = _in_front()
    copy = folder / (book.name if "." in book.name else f"{book.name}.xlsx")  # a new workbook has no ending yet
    try:
        if sys.platform == "win32":
            book.api.SaveCopyAs(str(copy))
        elif book.api.saved.get():
            shutil.copyfile(book.fullname, copy)
        else:
            raise Refused(f"{book.name}: it has changes that are not saved, and Excel for Mac gives no copy; {INSTEAD}")
    except Refused:
        raise
    except Exception as error:  # whatever Excel says no with: each system has errors of its own
        raise Refused(
            f"{book.name}: Excel gives no copy ({error}); close any window it asks in, or {INSTEAD}"
        ) from error
    return copy


def _in_front() -> Any:
    """The workbook in front in Excel, as xlwings gives it."""
    try:
        import xlwings
    except ModuleNotFoundError as error:
        raise Refused(f"--open: this Python has no xlwings; install it: {INSTALL}") from error
    try:
        book = xlwings.books.active
        book.name  # noqa: B018 (where no workbook is open, xlwings notices only now)
    except Exception as error:  # xlwings has no error of its own for an Excel that is not there
        raise Refused(f"--open: no workbook is open in Excel ({error}); open it there, or {INSTEAD}") from error
    return book
