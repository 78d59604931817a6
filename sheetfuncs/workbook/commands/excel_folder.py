"""The folder for Excel for Windows: a season workbook with xlwings' macros, our functions, and the steps."""

from __future__ import annotations

from collections.abc import Mapping
from html import escape
from importlib.resources import files
from pathlib import Path
from string import Template

from sheetfuncs import __version__
from sheetfuncs.files import Refused, new_file
from sheetfuncs.hosts.excel import CATEGORY
from sheetfuncs.hosts.excel.installed import Installed, installed, settings
from sheetfuncs.hosts.excel.wrapper import module_text
from sheetfuncs.workbook.model.parts import Macros
from sheetfuncs.workbook.season import Season

WORKBOOK, WRAPPER, MODULE, STEPS = "season.xlsm", "sheetfuncs.bas", "xlwings.bas", "STEPS.html"


def write_folder(folder: Path, system: str, replace: bool = False) -> list[str]:
    """Write the folder and tell what was done, a line a file.

    A workbook that is there already stays, even if the rest is replaced: a season may be in it.
    """
    xlwings = installed()
    texts = {WRAPPER: module_text().encode("ascii"), MODULE: xlwings.module, STEPS: _steps(xlwings)}
    _make(folder)
    there = [name for name in (*texts, WORKBOOK) if (folder / name).exists()]
    if there and not replace:
        raise Refused(f"{folder / there[0]}: this file exists already; choose another folder, or add --replace")
    for name, content in texts.items():
        with new_file(folder / name, replace) as part:
            part.write_bytes(content)
    if WORKBOOK not in there:
        with new_file(folder / WORKBOOK) as part:
            Season(system, {}).write(part, "linked", Macros(xlwings.project, settings()))
    told = [f"written: {folder / name}" for name in (*texts, WORKBOOK) if not (name == WORKBOOK and name in there)]
    if WORKBOOK in there:
        told.append(f"left as it was: {folder / WORKBOOK}; for an empty season, move it away and run this again")
    return [*told, f"next: open {folder / STEPS} on a machine with Excel for Windows, and go step by step"]


def _make(folder: Path) -> None:
    try:
        folder.mkdir(parents=True, exist_ok=True)
    except OSError as error:
        raise Refused(f"{folder}: this folder cannot be made ({error.strerror}); choose another place") from error


def _steps(xlwings: Installed) -> bytes:
    page = Template((files("sheetfuncs.hosts.excel") / "steps.html").read_text("utf-8"))
    words: Mapping[str, str] = {
        "version": __version__,
        "xlwings": xlwings.version,
        "category": CATEGORY,
        "workbook": WORKBOOK,
        "wrapper": WRAPPER,
        "module": MODULE,
    }
    return page.substitute({name: escape(word) for name, word in words.items()}).encode()
