"""The command line: `sheetfuncs COMMAND`.  Each command is one function that returns an exit code (see `ending`)."""

from __future__ import annotations

import argparse
import sys
from collections.abc import Callable, Sequence
from pathlib import Path

from sheetfuncs.arguments import parser
from sheetfuncs.ending import ended_well_or_told, open_streams
from sheetfuncs.files import Refused, one_line

READING = ("check", "report", "convert", "handover", "compare", "merge")

NEXT = {
    "new": "Next: open {file}; the sheet Weekend says what to type first.",
    "report": "Next: open {html} in a browser, print it, or send it.",
    "convert": "Next: open {new}; `sheetfuncs compare {file} {new}` shows that nothing typed was lost.",
    "handover": "Next: read the first page of {new}, then fill in Yard.",
    "merge": "Next: `sheetfuncs check {new}` says what looks wrong in it.",
    "carry": "Next: open {new} and type =FINISH_TEMP(66.9,29.92) into a cell.",
}


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
        options = parser().parse_args(arguments)
        code = COMMANDS[options.command](options)
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


COMMANDS: dict[str, Callable[[argparse.Namespace], int]] = {
    "new": new,
    "check": check,
    "report": report,
    "convert": convert,
    "handover": handover,
    "compare": compare,
    "merge": merge,
    "forecast": forecast,
    "carry": carry,
    "functions": functions,
    "calc-addin": calc_addin,
    "excel-addin": excel_addin,
    "script-addin": script_addin,
}


def _next(options: argparse.Namespace) -> str:
    """The next step in a sentence, where a command has written something to go on with."""
    words = NEXT.get(options.command, "")
    return "" if "{html}" in words and options.html is None else words.format(**vars(options))


if __name__ == "__main__":
    sys.exit(main())
