"""The functions in plain VBA: the module's text, its limits, its grammar, and ranges, run in LibreOffice.

That every function gives what Python gives, for every row of the reference tables and thousands of
other calls, `test_reference` and `test_agreement` show.  Excel is not here: nothing was run in it.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

import pytest

from sheetfuncs.formulas.catalogue import CATALOGUE
from sheetfuncs.hosts.script.vba import module_text
from tests.tools import office
from tests.tools.calc_office import Calc, Office, own_folder
from tests.tools.scripts import basic_module
from tests.tools.vba import grammar_errors, longest_continuation

TEXT = module_text()
LINES = TEXT.split("\r\n")
PROCEDURES = re.split(r"\r\nEnd (?:Sub|Function)\r\n", TEXT)


def test_every_line_ends_as_windows_ends_it_and_fits() -> None:
    """VBA takes 1,023 characters a line and 24 continuations of one; ours stay far below.

    Source: Microsoft, Office VBA reference, "Line too long" and "Too many line continuations".
    """
    assert TEXT.isascii()
    assert TEXT.count("\r\n") == TEXT.count("\n") == TEXT.count("\r")
    assert max(map(len, LINES)) <= 200
    assert 0 < longest_continuation(LINES) <= 24


def test_no_procedure_is_too_large() -> None:
    """64 KB once compiled (the same, "Procedure too large"): the text of the longest is a third of that."""
    assert len(PROCEDURES) > 2 * len(CATALOGUE)
    assert max(map(len, PROCEDURES)) < 22_000


def test_no_expression_is_too_deep() -> None:
    """VBA's "expression too complex" has no published limit: ours stay at a few brackets."""
    assert max(_depth(line) for line in LINES) <= 8


def _depth(line: str) -> int:
    deepest = depth = 0
    for character in re.sub(r'"[^"]*"', "", line.partition("' ")[0]):
        depth += (character == "(") - (character == ")")
        deepest = max(deepest, depth)
    return deepest


def test_each_function_is_public_and_nothing_else_but_the_help() -> None:
    declared = re.findall(r"^Public (Function|Sub) (\w+)\((.*)\)\r$", TEXT, re.M)
    assert [name for _, name, _ in declared] == [*CATALOGUE, "sheetfuncs_help"]
    for _, name, arguments in declared[:-1]:
        assert arguments.replace("Optional ", "").split(", ") == list(CATALOGUE[name].card.parameters)


def test_no_argument_has_the_name_of_a_procedure_or_of_a_variable() -> None:
    """VBA knows no capitals; a parameter of such a name would hide the procedure."""
    procedures = {name.lower() for name in re.findall(r"(?:Function|Sub) (\w+)\(", TEXT)}
    arguments = {name for function in CATALOGUE.values() for name in function.card.parameters}
    assert not procedures & arguments
    assert not [name for name in arguments if re.fullmatch(r"v\d+", name)]


def test_each_helps_text_stands_there() -> None:
    joined = TEXT.replace(" _\r\n", " ")
    assert len(re.findall(r'^    Describe "', joined, re.M)) == len(CATALOGUE)
    assert "Application.MacroOptions" in TEXT


def test_whole_numbers_are_written_as_doubles() -> None:
    """A whole number of VBA overflows at 32,767."""
    sums = TEXT[TEXT.index("Private Function One_") :]
    code = re.sub(r'"[^"]*"|CVErr\(\d+\)', "", sums)
    assert not re.findall(r"(?<![\w.])\d+(?![\d.#])", code)


def test_the_module_is_vba() -> None:
    assert grammar_errors(TEXT) == []
    helpers = TEXT[: TEXT.index("Public Function")] + TEXT[TEXT.index("Private Function Block") :]
    helpers = helpers[: helpers.index("Private Function One(")]
    assert grammar_errors(helpers) == []
    assert grammar_errors(helpers.replace(" Then\r\n", "\r\n", 1)) != []


@pytest.fixture(scope="module")
def calc() -> Iterator[Calc]:
    office.needed()
    with own_folder() as folder, Office(folder).calc() as running:
        running.open(None, True)
        running.basic({"sheetfuncs": basic_module(TEXT), "Doors": DOORS})
        yield running


# What only a macro hands over: a row of constants as Excel does, dates, amounts of money, whole numbers.
DOORS = """\
Option VBASupport 1
Public Function OF_A_ROW(ByVal place)
    Dim answer As Variant
    answer = SYRUP_GRAVITY(Array(60#, CVErr(2007), "maple", Empty))
    OF_A_ROW = answer(1, place)
End Function
Public Function OF_ODD_KINDS(ByVal kind)
    Select Case kind
        Case 1: OF_ODD_KINDS = SYRUP_GRAVITY(DateSerial(1900, 2, 13))
        Case 2: OF_ODD_KINDS = SYRUP_GRAVITY(CCur(66.9))
        Case 3: OF_ODD_KINDS = SYRUP_GRAVITY(66)
        Case 4: OF_ODD_KINDS = SYRUP_GRAVITY(True)
        Case 5: OF_ODD_KINDS = SYRUP_GRAVITY("66")
    End Select
End Function
"""


def test_a_column_keeps_each_answer(calc: Calc) -> None:
    """A number, a blank, a text, a number outside the limits; LibreOffice shows CVErr(2042) as "Error 2042"."""
    calc.fill({"A1": 66.9, "A3": "maple", "A4": 99.0})
    calc.fill_array("B1:B4", "=SYRUP_GRAVITY(A1:A4)")
    gravity = CATALOGUE["SYRUP_GRAVITY"]
    assert calc.read("B1:B4") == [[gravity(66.9)], [gravity(0.0)], ["Error 2015"], ["Error 2036"]]


def test_a_row_and_a_column_make_a_table_and_a_missing_cell_is_not_available(calc: Calc) -> None:
    finish = CATALOGUE["FINISH_TEMP"]
    calc.data("D1:E1", [[60.0, 66.9]])
    calc.data("C2:C4", [[29.0], [30.0], [30.5]])
    calc.fill_array("D2:E4", "=FINISH_TEMP(D1:E1;C2:C4)")
    assert calc.read("D2:E4") == [[finish(b, p) for b in (60.0, 66.9)] for p in (29.0, 30.0, 30.5)]
    calc.data("G1:G2", [[60.0], [66.9]])
    calc.fill_array("H1:H3", "=FINISH_TEMP(G1:G2;C2:C4)")
    assert calc.read("H1:H3") == [[finish(60.0, 29.0)], [finish(66.9, 30.0)], ["Error 2042"]]


def test_a_row_of_constants(calc: Calc) -> None:
    gravity = CATALOGUE["SYRUP_GRAVITY"]
    calc.formulas("J1:M1", [[f"=OF_A_ROW({place})" for place in (1, 2, 3, 4)]])
    assert calc.read("J1:M1") == [[gravity(60.0), "Error 2007", "Error 2015", gravity(0.0)]]


def test_dates_money_and_truth_are_numbers(calc: Calc) -> None:
    """Day 45 is 13 February 1900 for VBA, whose day 0 is 30 December 1899; text is no number."""
    gravity = CATALOGUE["SYRUP_GRAVITY"]
    calc.formulas("J2:N2", [[f"=OF_ODD_KINDS({kind})" for kind in (1, 2, 3, 4, 5)]])
    assert calc.read("J2:N2") == [[gravity(45.0), gravity(66.9), gravity(66.0), gravity(1.0), "Error 2015"]]
