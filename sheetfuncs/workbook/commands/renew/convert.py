"""A workbook in another unit system or edition, written anew."""

from __future__ import annotations

import argparse
from pathlib import Path

from sheetfuncs.workbook.commands.renew.carried import Carried
from sheetfuncs.workbook.commands.renew.told import exit_code, told
from sheetfuncs.workbook.commands.target import target, write
from sheetfuncs.workbook.model.measures import all_converted
from sheetfuncs.workbook.model.systems import unit_system
from sheetfuncs.workbook.read.filled import read
from sheetfuncs.workbook.season import Season


def convert(options: argparse.Namespace) -> int:
    """Write a workbook anew and print what became of it."""
    path = target(options.new, options.replace, options.file)
    filled = read(Path(options.file))
    system = filled.system if options.units is None else unit_system(options.units)
    edition = options.edition or filled.edition
    inputs = all_converted(filled.cells, filled.season.inputs, filled.system, system)
    carried = Carried(filled, "Carried over")
    lines = told(filled, carried)
    kept = write(Season(system, inputs, filled.rows, plains=carried.sheets), path, edition, options.replace)
    print("\n".join([*lines, *kept, f"written: {path} ({system} units, {edition} edition)"]))
    return exit_code(filled)
