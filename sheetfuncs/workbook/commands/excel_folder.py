"""The folder for Excel for Windows: a season workbook with xlwings' macros, our functions, and the steps."""

from __future__ import annotations

from io import BytesIO
from pathlib import Path

from sheetfuncs.files import New, write_all
from sheetfuncs.folders import STEPS, free, made, steps
from sheetfuncs.hosts.excel import CATEGORY
from sheetfuncs.hosts.excel.installed import Installed, installed, settings
from sheetfuncs.hosts.excel.wrapper import module_text
from sheetfuncs.workbook.model.editions import LINKED
from sheetfuncs.workbook.model.parts import Macros
from sheetfuncs.workbook.season import Season

WORKBOOK, WRAPPER, MODULE = "season.xlsm", "sheetfuncs.bas", "xlwings.bas"


def write_folder(folder: Path, system: str, replace: bool = False) -> list[str]:
    """Write the folder and tell what was done, a line a file.

    A workbook that is there already stays, even if the rest is replaced: a season may be in it.
    """
    xlwings = installed()
    texts = {WRAPPER: module_text().encode("ascii"), MODULE: xlwings.module, STEPS: _steps(xlwings)}
    with made(folder):
        there = free(folder, [*texts, WORKBOOK], replace)
        wanted = [New(folder / name, content, replace) for name, content in texts.items()]
        if WORKBOOK not in there:
            season = BytesIO()
            Season(system, {}).write(season, LINKED.name, Macros(xlwings.project, settings()))
            wanted.append(New(folder / WORKBOOK, season.getvalue()))
        write_all(wanted)
    told = [f"written: {folder / name}" for name in (*texts, WORKBOOK) if not (name == WORKBOOK and name in there)]
    if WORKBOOK in there:
        told.append(f"left as it was: {folder / WORKBOOK}; for an empty season, move it away and run this again")
    return [*told, f"next: open {folder / STEPS} on a machine with Excel for Windows, and go step by step"]


def _steps(xlwings: Installed) -> bytes:
    return steps(
        "sheetfuncs.hosts.excel",
        "steps.html",
        xlwings=xlwings.version,
        category=CATEGORY,
        workbook=WORKBOOK,
        wrapper=WRAPPER,
        module=MODULE,
    )
