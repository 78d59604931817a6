"""The command line: `sheetfuncs COMMAND`.  Each command is one function that returns an exit code.

Exit codes: 0 done; 1 done, and something must be mended; 2 refused, with one line on stderr.
"""

from __future__ import annotations

import argparse
import sys
from collections.abc import Callable, Sequence
from pathlib import Path

from sheetfuncs import __version__
from sheetfuncs.files import Refused

EDITIONS = ("carried", "inline", "linked")

Command = Callable[[argparse.Namespace], int]


def main(arguments: Sequence[str] | None = None) -> int:
    """Run one command and return its exit code."""
    options = _parser().parse_args(arguments)
    try:
        command: Command = options.run
        return command(options)
    except Refused as refused:
        print(f"sheetfuncs: {refused}", file=sys.stderr)
        return 2


def functions(options: argparse.Namespace) -> int:
    """The catalogue, a line a function, or one function's card."""
    from sheetfuncs.formulas.catalogue import CATALOGUE

    if options.name is None:
        width = max(map(len, CATALOGUE))
        for name, function in CATALOGUE.items():
            print(f"{name:{width}}  {function.card.summary}")
        return 0
    name = options.name.upper()
    if name not in CATALOGUE:
        raise Refused(f"{options.name}: there is no such function; `sheetfuncs functions` lists them all")
    card = CATALOGUE[name].card
    print(f"{card.call}\n\n{CATALOGUE[name].__doc__}")
    return 0


def new(options: argparse.Namespace) -> int:
    """A season workbook."""
    from sheetfuncs.workbook.commands.new.new import new as write_new

    return write_new(options)


def check(options: argparse.Namespace) -> int:
    """What looks wrong in a season workbook."""
    from sheetfuncs.workbook.commands.check.check import check as check_workbook

    return check_workbook(options)


def report(options: argparse.Namespace) -> int:
    """The season in a page."""
    from sheetfuncs.workbook.commands.report.report import report as report_workbooks

    return report_workbooks(options)


def convert(options: argparse.Namespace) -> int:
    """A season workbook in other units or another edition."""
    from sheetfuncs.workbook.commands.renew.convert import convert as convert_workbook

    return convert_workbook(options)


def handover(options: argparse.Namespace) -> int:
    """Next season's workbook."""
    from sheetfuncs.workbook.commands.renew.handover import handover as hand_over

    return hand_over(options)


def calc_addin(options: argparse.Namespace) -> int:
    """The LibreOffice add-in, in one file to double-click."""
    from sheetfuncs.hosts.calc.builder import write_addin

    write_addin(options.out, options.replace)
    print(f"{options.out}: open it with LibreOffice to install the functions")
    return 0


def excel_addin(options: argparse.Namespace) -> int:
    """The folder that Excel for Windows needs."""
    from sheetfuncs.workbook.commands.excel_folder import write_folder
    from sheetfuncs.workbook.commands.new.new import unit_system

    print("\n".join(write_folder(options.folder, unit_system(options.units), options.replace)))
    return 0


def _parser() -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser(prog="sheetfuncs", description="Maple sugaring functions and season workbooks.")
    parser.add_argument("--version", action="version", version=f"sheetfuncs {__version__}")
    commands = parser.add_subparsers(title="commands", metavar="COMMAND", required=True)

    command = commands.add_parser("new", help="write a season workbook and print its sums")
    command.add_argument("file", metavar="FILE", help="the workbook to write, an .xlsx file")
    command.add_argument("--units", default="us", metavar="us|metric", help="unit system; us if left out")
    command.add_argument("--edition", default="carried", choices=EDITIONS, help="how the functions come along")
    command.add_argument("--season", type=int, metavar="YEAR", help="the year of the season")
    command.add_argument("--elevation", metavar="HEIGHT", help="height above the sea, for instance '650 ft'")
    command.add_argument("--example", action="store_true", help="fill it with an example season")
    command.add_argument("--collection", metavar="LOG.csv", help="fill Collection from a log: date,volume,brix")
    command.add_argument("--rows", type=int, metavar="N", help="room for that many collections, and the rest to match")
    command.add_argument("--replace", action="store_true", help="write over FILE if it exists")
    command.set_defaults(run=new)

    command = commands.add_parser("check", help="say what looks wrong in a season workbook; it is only read")
    command.add_argument("file", metavar="FILE", nargs="?", help="the workbook: .xlsx, .xlsm or .ods")
    command.add_argument("--open", action="store_true", help="the workbook that is open in Excel, in place of FILE")
    command.add_argument("--json", action="store_true", help="for programs")
    command.set_defaults(run=check)

    command = commands.add_parser("report", help="tell a season in a page; several workbooks side by side")
    command.add_argument("files", metavar="FILE", nargs="+", help="a workbook: .xlsx, .xlsm or .ods")
    command.add_argument("--html", metavar="OUT", help="write a page with charts, to read in a browser or to print")
    command.add_argument("--replace", action="store_true", help="write over OUT if it exists")
    command.set_defaults(run=report)

    command = commands.add_parser("convert", help="write a season workbook anew in other units or another edition")
    command.add_argument("file", metavar="FILE", help="the workbook: .xlsx, .xlsm or .ods")
    command.add_argument("new", metavar="NEW", help="the workbook to write, an .xlsx file")
    command.add_argument("--units", metavar="us|metric", help="unit system; as it is if left out")
    command.add_argument("--edition", choices=EDITIONS, help="how the functions come along; as it is if left out")
    command.add_argument("--replace", action="store_true", help="write over NEW if it exists")
    command.set_defaults(run=convert)

    command = commands.add_parser("handover", help="write next season's workbook for whoever keeps it then")
    command.add_argument("file", metavar="FILE", help="the workbook: .xlsx, .xlsm or .ods")
    command.add_argument("new", metavar="NEW", help="the workbook to write, an .xlsx file")
    command.add_argument("--season", type=int, metavar="YEAR", help="its year; the next one if left out")
    command.add_argument("--replace", action="store_true", help="write over NEW if it exists")
    command.set_defaults(run=handover)

    command = commands.add_parser("functions", help="list the functions, or show one function's card")
    command.add_argument("name", nargs="?", metavar="NAME", help="a function, for instance FINISH_TEMP")
    command.set_defaults(run=functions)

    command = commands.add_parser("calc-addin", help="write the add-in that brings the functions to LibreOffice Calc")
    command.add_argument("out", type=Path, metavar="OUT.oxt", help="the file to write")
    command.add_argument("--replace", action="store_true", help="write over a file of this name")
    command.set_defaults(run=calc_addin)

    command = commands.add_parser("excel-addin", help="write what Excel for Windows needs to call the functions")
    command.add_argument("folder", type=Path, metavar="FOLDER", help="the folder to write to; it is made if need be")
    command.add_argument("--units", default="us", metavar="us|metric", help="unit system of the season; us if left out")
    command.add_argument("--replace", action="store_true", help="write over files of these names, but not the workbook")
    command.set_defaults(run=excel_addin)

    return parser


if __name__ == "__main__":
    sys.exit(main())
