"""What the command line takes: each command with its arguments, its help and an example."""

from __future__ import annotations

import argparse
from pathlib import Path
from typing import Any, NoReturn

from sheetfuncs import __version__
from sheetfuncs.files import Refused
from sheetfuncs.workbook.model.editions import DEFAULT, EDITIONS

EDITION = "how the functions come along. " + ". ".join(f"{one.name}: {one.words}" for one in EDITIONS.values())

EXAMPLES = {
    "new": "my-season.xlsx --season 2027 --elevation '650 ft'",
    "check": "my-season.xlsx",
    "report": "my-season.xlsx --html report.html",
    "convert": "my-season.xlsx litres.xlsx --units metric",
    "handover": "my-season.xlsx next-season.xlsx",
    "compare": "my-season.xlsx copy.xlsx",
    "merge": "my-season.xlsx phone.xlsx both.xlsx",
    "forecast": "saved.json",
    "carry": "own.xlsx own-with-functions.xlsx",
    "functions": "FINISH_TEMP",
    "calc-addin": "sheetfuncs.oxt",
    "excel-addin": "addin",
    "script-addin": "scripts",
}


class Parser(argparse.ArgumentParser):
    """A parser that says what is wrong in one line."""

    def error(self, message: str) -> NoReturn:
        raise Refused(f"{message}; see `{self.prog} --help`")

    def _print_message(self, message: str, file: Any = None) -> None:
        """As its own, but that a full disk is not passed over."""
        print(message, end="", file=file)


def parser() -> argparse.ArgumentParser:
    """The parser of the command line; `command` of what it gives is the name of the command."""
    whole = Parser(prog="sheetfuncs", description="Maple sugaring functions and season workbooks.")
    whole.add_argument("--version", action="version", version=f"sheetfuncs {__version__}")
    commands = whole.add_subparsers(title="commands", metavar="COMMAND", required=True)

    command = commands.add_parser("new", help="write a season workbook and print its sums")
    command.add_argument("file", metavar="FILE", help="the workbook to write, an .xlsx file")
    command.add_argument("--units", default="us", metavar="us|metric", help="unit system; us if left out")
    command.add_argument("--edition", default=DEFAULT.name, choices=EDITIONS, help=EDITION)
    command.add_argument("--season", type=int, metavar="YEAR", help="the year of the season")
    command.add_argument("--elevation", metavar="HEIGHT", help="height above the sea, for instance '650 ft'")
    command.add_argument("--example", action="store_true", help="fill it with an example season")
    command.add_argument("--collection", metavar="LOG.csv", help="fill Collection from a log: date,volume,brix")
    command.add_argument("--weather", metavar="SAVED", help="fill in a saved forecast: what `forecast` reads")
    _of_saved_weather(command)
    command.add_argument("--rows", type=int, metavar="N", help="room for that many collections, and the rest to match")
    _replace(command, "FILE if it exists")

    command = commands.add_parser("check", help="say what looks wrong in a season workbook; it is only read")
    command.add_argument("file", metavar="FILE", nargs="?", help="the workbook: .xlsx, .xlsm or .ods")
    command.add_argument("--open", action="store_true", help="the workbook that is open in Excel, in place of FILE")
    command.add_argument("--json", action="store_true", help="for programs")

    command = commands.add_parser("report", help="tell a season in a page; several workbooks side by side")
    command.add_argument(
        "files", metavar="FILE", nargs="+", help="a workbook, .xlsx, .xlsm or .ods; or a folder of them"
    )
    command.add_argument("--html", metavar="OUT", help="write a page, to read in a browser or to print")
    command.add_argument("--csv", metavar="OUT", help="of a folder: write a line for each season, for a spreadsheet")
    _replace(command, "OUT if it exists")

    command = commands.add_parser("convert", help="write a season workbook anew in other units or another edition")
    _anew(command)
    command.add_argument("--units", metavar="us|metric", help="unit system; as it is if left out")
    command.add_argument("--edition", choices=EDITIONS, help="as it is if left out")
    _replace(command, "NEW if it exists")

    command = commands.add_parser("handover", help="write next season's workbook for whoever keeps it then")
    _anew(command)
    command.add_argument("--season", type=int, metavar="YEAR", help="its year; the next one if left out")
    command.add_argument("--weather", metavar="SAVED", help="fill in a saved forecast: what `forecast` reads")
    _of_saved_weather(command)
    _replace(command, "NEW if it exists")

    command = commands.add_parser("compare", help="say which typed cells differ between two workbooks")
    command.add_argument("one", metavar="ONE", help="a workbook: .xlsx, .xlsm or .ods")
    command.add_argument("other", metavar="OTHER", help="another")

    command = commands.add_parser("merge", help="make two copies of a workbook one")
    command.add_argument("one", metavar="ONE", help="a copy: .xlsx, .xlsm or .ods")
    command.add_argument("other", metavar="OTHER", help="the other copy")
    command.add_argument("new", metavar="NEW", help="the workbook to write, an .xlsx file, in the units of ONE")
    _replace(command, "NEW if it exists")

    command = commands.add_parser(
        "forecast", help="a saved forecast or weather record as rows to paste into a workbook"
    )
    command.add_argument(
        "saved", metavar="SAVED", nargs="?", help="the file; left out: what can be read and how to get it"
    )
    command.add_argument("--units", default="us", metavar="us|metric", help="unit system of the rows; us if left out")
    _of_saved_weather(command)

    command = commands.add_parser(
        "carry", help="define the functions in a workbook of your own; the rest stays as it is"
    )
    command.add_argument("file", metavar="OWN", help="your workbook, .xlsx or .xlsm; it is only read")
    command.add_argument("new", metavar="NEW", help="the workbook to write, of the same kind")
    command.add_argument("--replace-names", action="store_true", help="define anew what has a function's name there")
    _replace(command, "NEW if it exists")

    command = commands.add_parser("functions", help="list the functions, or show one function's card")
    command.add_argument("name", nargs="?", metavar="NAME", help="a function, for instance FINISH_TEMP")
    command.add_argument("--workbook", type=Path, metavar="NEW", help="write them all into a workbook, each to try")
    command.add_argument(
        "--units", default="us", metavar="us|metric", help="unit system of the workbook; us if left out"
    )
    _replace(command, "NEW if it exists")

    command = commands.add_parser("calc-addin", help="write the add-in that brings the functions to LibreOffice Calc")
    command.add_argument("out", type=Path, metavar="OUT.oxt", help="the file to write")
    _replace(command, "a file of this name")

    command = commands.add_parser("excel-addin", help="write what Excel needs to call the functions")
    command.add_argument("folder", type=Path, metavar="FOLDER", help="the folder to write to; it is made if need be")
    command.add_argument("--plain", action="store_true", help="a VBA module alone: no Python, for Windows and Mac")
    command.add_argument("--units", default="us", metavar="us|metric", help="unit system of the season; us if left out")
    _replace(command, "files of these names, but not the workbook")

    command = commands.add_parser(
        "script-addin", help="write the functions for Google Sheets and for Office on the web"
    )
    command.add_argument("folder", type=Path, metavar="FOLDER", help="the folder to write to; it is made if need be")
    command.add_argument("--site", metavar="ADDRESS", help="where Office will find the files, as https://...")
    _replace(command, "files of these names")

    for name, each in commands.choices.items():
        each.epilog = f"example: sheetfuncs {name} {EXAMPLES[name]}"
        each.set_defaults(command=name)
    return whole


def _anew(command: argparse.ArgumentParser) -> None:
    """A workbook that is read, and one that is written."""
    command.add_argument("file", metavar="FILE", help="the workbook: .xlsx, .xlsm or .ods")
    command.add_argument("new", metavar="NEW", help="the workbook to write, an .xlsx file")


def _replace(command: argparse.ArgumentParser, what: str) -> None:
    command.add_argument("--replace", action="store_true", help=f"write over {what}")


def _of_saved_weather(command: argparse.ArgumentParser) -> None:
    """What a saved file of weather may leave open."""
    command.add_argument("--degrees", choices=("F", "C"), help="of the saved weather, where the file does not say")
    command.add_argument("--night-after", action="store_true", help="the lows of a copied table are of the night after")
