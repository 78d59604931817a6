"""The functions as Excel for Windows calls them: xlwings' own code with stand-ins for what is Windows'.

Excel itself is not here.  That every function gives what Python gives, for every row of the
reference tables and thousands of other calls, `test_reference` and `test_agreement` show.
"""

from __future__ import annotations

import datetime
import logging
import math
from collections.abc import Iterator
from decimal import Decimal
from pathlib import Path
from typing import Any
from unittest import mock

import pytest

import sheetfuncs
from sheetfuncs.formulas.catalogue import CATALOGUE
from sheetfuncs.hosts import cells, excel
from tests.tools import windows
from tests.tools.arguments import FACES, example, replaced
from tests.tools.windows import BLANK, MISSING, by_import, by_wrapper, excel_range

MODULE = "sheetfuncs.hosts.excel"
FINISH = CATALOGUE["FINISH_TEMP"]


@pytest.fixture(scope="module")
def python() -> Iterator[Any]:
    with windows.excel() as server:
        yield server


@pytest.mark.parametrize(("card", "system"), FACES, ids=[f"{card.name}-{system}" for card, system in FACES])
def test_both_ways_of_calling_give_what_python_gives(python: Any, card: Any, system: str) -> None:
    """Our VBA sends values, xlwings' own sends ranges: the example, each argument blank, text, an error, left out."""
    given = example(card, system)
    cases = [given, given[: len(card.arguments)]]
    odd = (BLANK, "maple", "5", "", "#DIV/0!", "#N/A", None)
    cases += [replaced(given, place, value) for place in range(len(given)) for value in odd]
    for case in cases:
        expected = cells.answer(CATALOGUE[card.name], [0.0 if value == BLANK else value for value in case])
        assert by_wrapper(python, card.name, case) == expected, case
        assert by_import(python, card.name, case) == expected, case


@pytest.mark.parametrize("call", [by_wrapper, by_import])
def test_a_column_in_one_call(python: Any, call: Any) -> None:
    """Each cell keeps its own answer: a number, a blank, a text, an empty text, errors, a cell outside the limits."""
    column = ((66.9,), (BLANK,), ("maple",), ("",), ("#DIV/0!",), ("#SPILL!",), (99.0,))
    expected = [FINISH(66.9, 29.92), FINISH(0.0, 29.92), "#VALUE!", "#VALUE!", "#DIV/0!", "#SPILL!", "#NUM!"]
    assert call(python, "FINISH_TEMP", (column, 29.92)) == [[value] for value in expected]


@pytest.mark.parametrize("call", [by_wrapper, by_import])
def test_a_row_a_table_and_ranges_that_do_not_match(python: Any, call: Any) -> None:
    row, column = ((60.0, 66.9),), ((29.0,), (30.0,))
    assert call(python, "FINISH_TEMP", (row, 29.0)) == [FINISH(60.0, 29.0), FINISH(66.9, 29.0)]
    assert call(python, "FINISH_TEMP", (row, column)) == [[FINISH(b, p) for b in row[0]] for (p,) in column]
    three = ((29.0,), (30.0,), (30.5,))
    assert call(python, "FINISH_TEMP", (((66.9,), (66.9,)), three))[2] == ["#N/A"]
    assert call(python, "FINISH_TEMP", (((66.9,),), 29.0)) == FINISH(66.9, 29.0)


def test_a_row_that_comes_without_a_second_dimension(python: Any) -> None:
    """As VBA hands over the row of an array constant."""
    assert python.CallUDF(MODULE, "SYRUP_GRAVITY", ((60.0, 66.9),)) == [
        CATALOGUE["SYRUP_GRAVITY"](brix) for brix in (60.0, 66.9)
    ]


def test_a_date_and_an_amount_of_money_are_numbers(python: Any) -> None:
    """Day 45 is 13 February 1900 for VBA and COM, whose day 0 is 30 December 1899; 18:00 is three quarters of a day."""
    for moment, brix in ((windows.Time(1900, 2, 13), 45.0), (windows.Time(1899, 12, 30, 18), 0.75)):
        moment = moment.replace(tzinfo=datetime.timezone.utc)
        assert python.CallUDF(MODULE, "FINISH_TEMP", (excel_range(moment), 29.92, MISSING)) == FINISH(brix, 29.92)
    money = excel_range(((Decimal("66.9"),), (Decimal("45"),)))
    assert python.CallUDF(MODULE, "FINISH_TEMP", (money, 29.92, MISSING)) == [
        [FINISH(66.9, 29.92)],
        [FINISH(45.0, 29.92)],
    ]


def test_an_error_that_is_not_known_yet_is_value(python: Any) -> None:
    assert python.CallUDF(MODULE, "FINISH_TEMP", (2999 - 0x80000000 + 0xA0000, 29.92, MISSING)) == "#VALUE!"


def test_whole_numbers_from_a_macro_are_numbers(python: Any) -> None:
    assert python.CallUDF(MODULE, "FINISH_TEMP", (66, 30, MISSING)) == FINISH(66.0, 30.0)


def test_excels_numbers_of_errors_are_those_that_xlwings_knows(python: Any) -> None:
    """xlwings.constants.CVError is Excel's own enumeration; what COM makes of it is in xlwings' table."""
    from xlwings import _xlwindows
    from xlwings.constants import CVError

    known = {value for name, value in vars(CVError).items() if name.startswith("xlErr")}
    assert known == {excel.ERROR_NUMBERS[text] for text in _xlwindows.cell_errors.values()}
    for com, text in _xlwindows.cell_errors.items():
        assert windows.ERRORS[text] == com
        assert python.CallUDF(MODULE, "FINISH_TEMP", (com, 29.92, MISSING)) == text
    assert set(excel.ERROR_NUMBERS) == set(cells.ERRORS)


def test_what_nobody_foresaw_is_value_and_goes_to_the_log(caplog: pytest.LogCaptureFixture) -> None:
    def broken(*given: Any) -> Any:
        return 1 / 0

    broken.__name__ = "BROKEN"
    with caplog.at_level(logging.ERROR):
        assert excel._safe(broken)(1.0) == "#VALUE!"  # type: ignore[arg-type]
    assert "BROKEN(1.0,)" in caplog.text
    assert "ZeroDivisionError" in caplog.text


@pytest.mark.parametrize("value", [math.nan, math.inf, -math.inf])
def test_what_is_no_number_is_num(value: float) -> None:
    assert excel._safe(lambda: value)() == "#NUM!"  # type: ignore[arg-type]


def test_the_module_loads_where_there_is_no_excel() -> None:
    assert list(excel.FUNCTIONS) == list(CATALOGUE)
    for name, function in excel.FUNCTIONS.items():
        assert getattr(excel, name) is function
        given = CATALOGUE[name].card.example[0]
        assert function(*given) == CATALOGUE[name](*given)


def test_the_record_for_xlwings_own_import(python: Any) -> None:
    """Every argument by its name, optional, as Excel keeps it, with its help; our own category."""
    module = python.Module(MODULE).wrapped.obj
    for name, function in CATALOGUE.items():
        record = getattr(module, name).__xlfunc__
        card = function.card
        assert record["name"] == name
        assert record["category"] == excel.CATEGORY
        assert record["ret"]["doc"] == card.sentence
        assert not record["volatile"]
        arguments = {argument["name"]: argument["doc"] for argument in record["args"]}
        assert arguments == card.parameter_help
        assert all("optional" in argument for argument in record["args"])
        assert all(argument["options"] == {"convert": "raw"} for argument in record["args"])


def test_xlwings_own_import(python: Any) -> None:
    """What xlwings' button does, with a workbook that keeps what it is told: the wrappers, and the function help."""
    from xlwings import udfs

    text, book = [], mock.MagicMock()
    book.Name, book.Application.Version = "season.xlsm", "16.0"
    book.VBProject.VBComponents.Import = lambda path: text.append(Path(path).read_text())
    udfs.import_udfs(MODULE, book)
    told = {call.args[0]: call.kwargs for call in book.Application.MacroOptions.call_args_list}
    for name, function in CATALOGUE.items():
        card = function.card
        assert f"\nFunction {name}({', '.join(f'Optional {argument}' for argument in card.parameters)})\n" in text[0]
        assert f'XLPy.CallUDF("{MODULE}", "{name}", Array({", ".join(card.parameters)}), ' in text[0]
        described = told[f"'season.xlsm'!{name}"]
        assert described["Category"] == excel.CATEGORY
        assert described["Description"] == card.sentence
        assert described["ArgumentDescriptions"] == list(card.parameter_help.values())
    assert text[0].count("\nFunction ") == len(told) == len(CATALOGUE)


def test_the_check_macro_gets_our_version(python: Any) -> None:
    """The calls of sheetfuncs_check, one inside the other."""
    assert python.Str(python.GetAttr(python.Module("sheetfuncs"), "__version__")) == sheetfuncs.__version__
