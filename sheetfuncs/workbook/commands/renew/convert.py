"""A workbook in another unit system or edition, written anew."""

from __future__ import annotations

import argparse
from collections.abc import Sequence
from pathlib import Path

from sheetfuncs.files import Refused, new_file
from sheetfuncs.workbook.commands.new.new import unit_system
from sheetfuncs.workbook.commands.renew.carried import Carried
from sheetfuncs.workbook.model.measures import all_converted
from sheetfuncs.workbook.read.filled import Filled
from sheetfuncs.workbook.season import Season


def convert(options: argparse.Namespace) -> int:
    """Write a workbook anew and print what became of it."""
    source, path = Path(options.file), target(options)
    filled = Filled(source)
    system = filled.system if options.units is None else unit_system(options.units)
    edition = options.edition or filled.edition
    inputs = all_converted(filled.cells, filled.season.inputs, filled.system, system)
    carried = Carried(filled, "Carried over")
    write(Season(system, inputs, filled.rows, plains=carried.sheets), path, edition, options.replace)
    print("\n".join([*told(filled, carried), f"written: {path} ({system} units, {edition} edition)"]))
    return 0


def target(options: argparse.Namespace) -> Path:
    """The file to write: an .xlsx file, and never the one that is read."""
    path = Path(options.new)
    if path.suffix.lower() != ".xlsx":
        raise Refused(f"{path}: a season workbook is an .xlsx file; end the name with .xlsx")
    if path.exists() and Path(options.file).exists() and path.samefile(options.file):
        raise Refused(f"{path}: this is the workbook itself, which is never written to; choose another name")
    return path


def write(season: Season, path: Path, edition: str, replace: bool) -> None:
    """The new workbook, whole or not at all."""
    with new_file(path, replace) as part:
        season.write(part, edition)


def told(filled: Filled, carried: Carried) -> Sequence[str]:
    """What was not found in the old workbook, and what was carried outside our columns."""
    return [*(f"not read: {gone.sheet}: {gone.sentence}" for gone in filled.gone()), *carried.told()]
