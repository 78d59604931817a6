"""The command line: `sheetfuncs COMMAND`.  Each command is one function that returns an exit code (see `ending`)."""

from __future__ import annotations

import argparse
import sys
from collections.abc import Callable, Sequence
from pathlib import Path
from typing import Any, NoReturn

from sheetfuncs import __version__
from sheetfuncs.ending import ended_well_or_told, open_streams
from sheetfuncs.files import Refused, one_line
from sheetfuncs.workbook.model.editions import DEFAULT, EDITIONS

READING = ("check", "report", "convert", "handover", "compare", "merge")
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
NEXT = {
    "new": "Next: open {file}; the sheet Weekend says what to type first.",
    "report": "Next: open {html} in a browser, print it, or send it.",
    "convert": "Next: open {new}; `sheetfuncs compare {file} {new}` shows that nothing typed was lost.",
    "handover": "Next: read the first page of {new}, then fill in Yard.",
    "merge": "Next: `sheetfuncs check {new}` says what looks wrong in it.",
    "carry": "Next: open {new} and type =FINISH_TEMP(66.9,29.92) into a cell.",
}

Command = Callable[[argparse.Namespace], int]


class Parser(argparse.ArgumentParser):
    """A parser that says what is wrong in one line."""

    def error(self, message: str) -> NoReturn:
        raise Refused(f"{message}; see `{self.prog} --help`")

    def _print_message(self, message: str, file: Any = None) -> None:
        """As its own, but that a full disk is not passed over."""
        print(message, end="", file=file)


def main(arguments: Sequence[str] | None = None) -> int:
    """Run one command and return its exit code: whatever happens, at most one line on stderr.

    Without arguments it is the program: those of the command line count, and a command that reads
    workbooks has a net under it.
    """
    return _program(sys.argv[1:]) if arguments is None else _run(arguments)


def _program(arguments: Sequence[str]) -> int:
    open_streams()
    folder = any(Path(word).is_dir() for word in arguments[1:])  # its workbooks get a process each
    if arguments and arguments[0] in READING and "--open" not in arguments and not folder:
        from sheetfuncs.bounded import bounded

        words = one_line(" ".join(word for word in arguments if not word.startswith("-")))
        return bounded(lambda: _run(arguments), words)
    return _run(arguments)


def _run(arguments: Sequence[str]) -> int:
    def work() -> int:
        options = _parser().parse_args(arguments)
        command: Command = options.run
        code = command(options)
        if code == 0 and (next_step := _next(options)):
            print(next_step)
        return code

    return ended_well_or_told(work)


def functions(options: argparse.Namespace) -> int:
    """The catalogue, a line a function, or one function's card; or all of them in a workbook."""
    from sheetfuncs.formulas.catalogue import CATALOGUE

    if options.workbook:
        from sheetfuncs.workbook.commands.functions_book import write_functions
        from sheetfuncs.workbook.model.systems import unit_system

        write_functions(options.workbook, unit_system(options.units), options.replace)
        print(f"written: {options.workbook}")
        return 0

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
    from sheetfuncs.workbook.commands.report.folder import report as report_folder
    from sheetfuncs.workbook.commands.report.report import report as report_workbooks

    many = options.csv is not None or any(Path(file).is_dir() for file in options.files)
    return report_folder(options) if many else report_workbooks(options)


def convert(options: argparse.Namespace) -> int:
    """A season workbook in other units or another edition."""
    from sheetfuncs.workbook.commands.renew.convert import convert as convert_workbook

    return convert_workbook(options)


def compare(options: argparse.Namespace) -> int:
    """What differs between two workbooks."""
    from sheetfuncs.workbook.commands.two.compare import compare as compare_workbooks

    return compare_workbooks(options)


def merge(options: argparse.Namespace) -> int:
    """Two copies of a workbook made one."""
    from sheetfuncs.workbook.commands.two.merge import merge as merge_workbooks

    return merge_workbooks(options)


def handover(options: argparse.Namespace) -> int:
    """Next season's workbook."""
    from sheetfuncs.workbook.commands.renew.handover import handover as hand_over

    return hand_over(options)


def forecast(options: argparse.Namespace) -> int:
    """A saved forecast as rows to paste."""
    from sheetfuncs.weather.forecast import forecast as print_rows
    from sheetfuncs.workbook.model.systems import unit_system

    return print_rows(options, unit_system(options.units))


def carry(options: argparse.Namespace) -> int:
    """The functions in a workbook of one's own."""
    from sheetfuncs.workbook.commands.carry.carry import carry as carry_into

    return carry_into(options)


def calc_addin(options: argparse.Namespace) -> int:
    """The LibreOffice add-in, in one file to double-click."""
    from sheetfuncs.hosts.calc.builder import write_addin

    write_addin(options.out, options.replace)
    print(f"{options.out}: open it with LibreOffice to install the functions")
    return 0


def excel_addin(options: argparse.Namespace) -> int:
    """The folder that Excel for Windows needs, or the one for plain VBA."""
    if options.plain:
        from sheetfuncs.hosts.script.folder import write_plain

        print("\n".join(write_plain(options.folder, options.replace)))
        return 0
    from sheetfuncs.workbook.commands.excel_folder import write_folder
    from sheetfuncs.workbook.model.systems import unit_system

    print("\n".join(write_folder(options.folder, unit_system(options.units), options.replace)))
    return 0


def script_addin(options: argparse.Namespace) -> int:
    """The functions in JavaScript, for Google Sheets and for Office's custom functions."""
    from sheetfuncs.hosts.script.folder import write_scripts

    print("\n".join(write_scripts(options.folder, options.site, options.replace)))
    return 0


def _parser() -> argparse.ArgumentParser:
    parser = Parser(prog="sheetfuncs", description="Maple sugaring functions and season workbooks.")
    parser.add_argument("--version", action="version", version=f"sheetfuncs {__version__}")
    commands = parser.add_subparsers(title="commands", metavar="COMMAND", required=True)

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
    command.add_argument("--replace", action="store_true", help="write over FILE if it exists")
    command.set_defaults(run=new)

    command = commands.add_parser("check", help="say what looks wrong in a season workbook; it is only read")
    command.add_argument("file", metavar="FILE", nargs="?", help="the workbook: .xlsx, .xlsm or .ods")
    command.add_argument("--open", action="store_true", help="the workbook that is open in Excel, in place of FILE")
    command.add_argument("--json", action="store_true", help="for programs")
    command.set_defaults(run=check)

    command = commands.add_parser("report", help="tell a season in a page; several workbooks side by side")
    command.add_argument(
        "files", metavar="FILE", nargs="+", help="a workbook, .xlsx, .xlsm or .ods; or a folder of them"
    )
    command.add_argument("--html", metavar="OUT", help="write a page, to read in a browser or to print")
    command.add_argument("--csv", metavar="OUT", help="of a folder: write a line for each season, for a spreadsheet")
    command.add_argument("--replace", action="store_true", help="write over OUT if it exists")
    command.set_defaults(run=report)

    command = commands.add_parser("convert", help="write a season workbook anew in other units or another edition")
    command.add_argument("file", metavar="FILE", help="the workbook: .xlsx, .xlsm or .ods")
    command.add_argument("new", metavar="NEW", help="the workbook to write, an .xlsx file")
    command.add_argument("--units", metavar="us|metric", help="unit system; as it is if left out")
    command.add_argument("--edition", choices=EDITIONS, help="as it is if left out")
    command.add_argument("--replace", action="store_true", help="write over NEW if it exists")
    command.set_defaults(run=convert)

    command = commands.add_parser("handover", help="write next season's workbook for whoever keeps it then")
    command.add_argument("file", metavar="FILE", help="the workbook: .xlsx, .xlsm or .ods")
    command.add_argument("new", metavar="NEW", help="the workbook to write, an .xlsx file")
    command.add_argument("--season", type=int, metavar="YEAR", help="its year; the next one if left out")
    command.add_argument("--weather", metavar="SAVED", help="fill in a saved forecast: what `forecast` reads")
    _of_saved_weather(command)
    command.add_argument("--replace", action="store_true", help="write over NEW if it exists")
    command.set_defaults(run=handover)

    command = commands.add_parser("compare", help="say which typed cells differ between two workbooks")
    command.add_argument("one", metavar="ONE", help="a workbook: .xlsx, .xlsm or .ods")
    command.add_argument("other", metavar="OTHER", help="another")
    command.set_defaults(run=compare)

    command = commands.add_parser("merge", help="make two copies of a workbook one")
    command.add_argument("one", metavar="ONE", help="a copy: .xlsx, .xlsm or .ods")
    command.add_argument("other", metavar="OTHER", help="the other copy")
    command.add_argument("new", metavar="NEW", help="the workbook to write, an .xlsx file, in the units of ONE")
    command.add_argument("--replace", action="store_true", help="write over NEW if it exists")
    command.set_defaults(run=merge)

    command = commands.add_parser(
        "forecast", help="a saved forecast or weather record as rows to paste into a workbook"
    )
    command.add_argument(
        "saved", metavar="SAVED", nargs="?", help="the file; left out: what can be read and how to get it"
    )
    command.add_argument("--units", default="us", metavar="us|metric", help="unit system of the rows; us if left out")
    _of_saved_weather(command)
    command.set_defaults(run=forecast)

    command = commands.add_parser(
        "carry", help="define the functions in a workbook of your own; the rest stays as it is"
    )
    command.add_argument("file", metavar="OWN", help="your workbook, .xlsx or .xlsm; it is only read")
    command.add_argument("new", metavar="NEW", help="the workbook to write, of the same kind")
    command.add_argument("--replace-names", action="store_true", help="define anew what has a function's name there")
    command.add_argument("--replace", action="store_true", help="write over NEW if it exists")
    command.set_defaults(run=carry)

    command = commands.add_parser("functions", help="list the functions, or show one function's card")
    command.add_argument("name", nargs="?", metavar="NAME", help="a function, for instance FINISH_TEMP")
    command.add_argument("--workbook", type=Path, metavar="NEW", help="write them all into a workbook, each to try")
    command.add_argument(
        "--units", default="us", metavar="us|metric", help="unit system of the workbook; us if left out"
    )
    command.add_argument("--replace", action="store_true", help="write over NEW if it exists")
    command.set_defaults(run=functions)

    command = commands.add_parser("calc-addin", help="write the add-in that brings the functions to LibreOffice Calc")
    command.add_argument("out", type=Path, metavar="OUT.oxt", help="the file to write")
    command.add_argument("--replace", action="store_true", help="write over a file of this name")
    command.set_defaults(run=calc_addin)

    command = commands.add_parser("excel-addin", help="write what Excel needs to call the functions")
    command.add_argument("folder", type=Path, metavar="FOLDER", help="the folder to write to; it is made if need be")
    command.add_argument("--plain", action="store_true", help="a VBA module alone: no Python, for Windows and Mac")
    command.add_argument("--units", default="us", metavar="us|metric", help="unit system of the season; us if left out")
    command.add_argument("--replace", action="store_true", help="write over files of these names, but not the workbook")
    command.set_defaults(run=excel_addin)

    command = commands.add_parser(
        "script-addin", help="write the functions for Google Sheets and for Office on the web"
    )
    command.add_argument("folder", type=Path, metavar="FOLDER", help="the folder to write to; it is made if need be")
    command.add_argument("--site", metavar="ADDRESS", help="where Office will find the files, as https://...")
    command.add_argument("--replace", action="store_true", help="write over files of these names")
    command.set_defaults(run=script_addin)

    for name, each in commands.choices.items():
        each.epilog = f"example: sheetfuncs {name} {EXAMPLES[name]}"
        each.set_defaults(command=name)
    return parser


def _next(options: argparse.Namespace) -> str:
    """The next step in a sentence, where a command has written something to go on with."""
    words = NEXT.get(getattr(options, "command", ""), "")
    return "" if "{html}" in words and options.html is None else words.format(**vars(options))


def _of_saved_weather(command: argparse.ArgumentParser) -> None:
    """What a saved file of weather may leave open."""
    command.add_argument("--degrees", choices=("F", "C"), help="of the saved weather, where the file does not say")
    command.add_argument("--night-after", action="store_true", help="the lows of a copied table are of the night after")


if __name__ == "__main__":
    sys.exit(main())
