"""The VBA module for Excel: its text, its limits, its grammar, and its one helper run in LibreOffice's VBA mode.

Excel is not here: nothing of this was run in it.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest

from sheetfuncs.formulas.catalogue import CATALOGUE
from sheetfuncs.hosts.excel import ERROR_NUMBERS, LEFT_OUT, MODULE
from sheetfuncs.hosts.excel.wrapper import TooLong, described, literal, module_text
from tests.tools import office
from tests.tools.calc_office import Calc, Office, own_folder
from tests.tools.scripts import basic_module
from tests.tools.vba import grammar_errors, longest_continuation

GOLDEN = Path(__file__).parents[1] / "golden" / "sheetfuncs.bas"
TEXT = module_text()
LINES = TEXT.split("\r\n")


def test_the_module_is_the_one_that_was_looked_at() -> None:
    assert GOLDEN.read_bytes() == TEXT.encode("ascii"), "if meant: python -m tests.hosts.test_excel_wrapper"


def test_every_line_ends_as_windows_ends_it_and_fits() -> None:
    """VBA takes 1,023 characters a line and 24 continuations of one; ours stay far below the first.

    Source: Microsoft, Office VBA reference, "Line too long" and "Too many line continuations".
    """
    assert TEXT.count("\r\n") == TEXT.count("\n") == TEXT.count("\r")
    assert max(map(len, LINES)) <= 160
    assert 0 < longest_continuation(LINES) <= 24


def test_no_procedure_is_too_large() -> None:
    """64 KB once compiled (the same, "Procedure too large"): the text of the longest is a sixth of that."""
    procedures = re.split(r"\r\nEnd (?:Sub|Function)\r\n", TEXT)
    assert len(procedures) > len(CATALOGUE)
    assert max(map(len, procedures)) < 12_000


def test_one_wrapper_for_each_function() -> None:
    declared = re.findall(r"^Public Function (\w+)\((.*)\)\r$", TEXT, re.M)
    assert [name for name, _ in declared] == list(CATALOGUE)
    for name, arguments in declared:
        assert arguments.replace("Optional ", "").split(", ") == list(CATALOGUE[name].card.parameters)
        assert f'    {name} = Answer("{name}", Array({arguments.replace("Optional ", "")}))' in LINES


def test_each_helps_text_stands_there_as_it_is() -> None:
    """Put together as VBA would, the statement of each function holds its own texts."""
    joined = TEXT.replace(" _\r\n", " ")
    for function in CATALOGUE.values():
        card = function.card
        (statement,) = re.findall(rf'^    Describe "{card.name}", (.*)\r$', joined, re.M)
        pieces = re.findall(r'"((?:[^"]|"")*)"|ChrW\((\d+)\)|(,)', statement)
        read = "".join("\0" if comma else chr(int(code)) if code else text for text, code, comma in pieces)
        assert read.replace('""', '"').split("\0") == [card.sentence, *card.parameter_help.values()]


@pytest.mark.parametrize(
    ("text", "written"),
    [
        ("plain", ['"plain"']),
        ('left out: "US"', ['"left out: ""US"""']),
        ("32 °F", ['"32 " &', "ChrW(176) &", '"F"']),
        ("m²", ['"m" &', "ChrW(178)"]),
        ("a" * 70, ['"' + "a" * 60 + '" &', '"' + "a" * 10 + '"']),
        ('"' * 61, ['"' + '""' * 60 + '" &', '""""']),
    ],
)
def test_a_text_as_vba_writes_it(text: str, written: list[str]) -> None:
    assert literal(text) == written


def test_a_help_text_over_255_characters_is_refused() -> None:
    card = CATALOGUE["TAP_COUNT"].card._replace(summary="maple " * 43)
    with pytest.raises(TooLong, match=r"TAP_COUNT.*255"):
        described(card)


def test_the_module_is_vba() -> None:
    assert grammar_errors(TEXT) == []


@pytest.mark.parametrize(
    ("right", "wrong"),
    [
        ("End Function", "End Fuction"),
        ("    Next i\r\n", ""),
        ('"AIR_PRESSURE", ', '"AIR_PRESSURE, '),
        ("units))", "units)"),
        (" _\r\n", "\r\n"),
        ("As Long", "As"),
        ("Optional elevation", "Optional Next"),
    ],
)
def test_the_grammar_sees_a_slip(right: str, wrong: str) -> None:
    """So that the test above can fail: in the first function and the helper, each of these is found."""
    start, helper = TEXT.index("Public Function WATER"), TEXT.index("Private Sub Describe")
    small = TEXT[:start] + TEXT[helper:]
    assert grammar_errors(small) == []
    assert right in small
    assert grammar_errors(small.replace(right, wrong, 1)) != []


# Stands in for xlwings' XLPy in LibreOffice: what it answers depends on the function's name.
PYTHON = """\
Option VBASupport 1
Option ClassModule
Public Function CallUDF(module, name, sent)
    Dim i As Long
    CountOne
    Select Case name
        Case "SYRUP_GRAVITY" ' what it was given, to see how an answer is shown
            CallUDF = sent(0)
        Case "SYRUP_BAUME"
            CallUDF = Array(1, "#N/A", "maple", "#NUM!")
        Case "SYRUP_GRADE"
            Err.Raise 1000, , "Python is not there"
        Case Else ' in words, how it was called
            CallUDF = module & " " & name
            For i = LBound(sent) To UBound(sent)
                If IsArray(sent(i)) Then
                    CallUDF = CallUDF & " | " & UBound(sent(i), 1) & " by " & UBound(sent(i), 2)
                Else
                    CallUDF = CallUDF & " | " & TypeName(sent(i)) & " " & sent(i)
                End If
            Next i
    End Select
End Function
Public Function Module(name)
    If Dead() Then Err.Raise 1000, , "Python is still not there"
    Module = name
End Function
Public Function GetAttr(thing, name)
    GetAttr = thing & name
End Function
Public Function Str(thing)
    Str = "9.9"
End Function
"""
# What the stand-in has at hand, and doors for a cell to what is private in our module.
XLPY = """\
Option VBASupport 1
Dim counted As Long
Dim isDead As Boolean
Public Function XLPy()
    Set XLPy = New Python
End Function
Public Sub CountOne()
    counted = counted + 1
End Sub
Public Function Dead()
    Dead = isDead
End Function
Public Function COUNTED_CALLS(ByVal again)
    COUNTED_CALLS = counted
End Function
Public Function PYTHON_DIES(ByVal dies)
    isDead = (dies <> 0)
    PYTHON_DIES = 0
End Function
"""
DOOR = """
Public Function ASK_ANEW(ByVal again)
    ASK_ANEW = Asked()
End Function
"""


@pytest.fixture(scope="module")
def calc() -> Iterator[Calc]:
    office.needed()
    with own_folder() as folder, Office(folder).calc() as running:
        running.open(None, True)
        running.basic({"sheetfuncs": basic_module(TEXT) + DOOR, "Python": PYTHON, "Start": XLPY})
        yield running


def test_what_the_helper_sends(calc: Calc) -> None:
    """Ranges go as their values, a blank as nothing, and what is left out as our word for it."""
    calc.fill({"A1": 66.9, "A2": "metric", "B1": 1.0, "B2": 2.0})
    calc.fill(
        {
            "D1": "=FINISH_TEMP(A1;29.92;A2)",
            "D2": "=FINISH_TEMP(A1)",
            "D3": "=FINISH_TEMP(A5;29.92)",
            "D4": "=FINISH_TEMP(A1:B2;29.92)",
            "D5": '=FINISH_TEMP("maple";29.92)',
        }
    )
    start = f"{MODULE} FINISH_TEMP | "
    assert [row[0].removeprefix(start) for row in calc.read("D1:D5")] == [
        "Double 66.9 | Double 29.92 | String metric",
        f"Double 66.9 | String {LEFT_OUT} | String {LEFT_OUT}",
        f"Empty  | Double 29.92 | String {LEFT_OUT}",
        f"2 by 2 | Double 29.92 | String {LEFT_OUT}",
        f"String maple | Double 29.92 | String {LEFT_OUT}",
    ]


def test_error_texts_come_back_as_errors(calc: Calc) -> None:
    """One by one, in a column and in a row; LibreOffice shows VBA's CVErr(2042) as "Error 2042"."""
    given = [*ERROR_NUMBERS, "maple", 66.9]
    shown = [*(f"Error {number}" for number in ERROR_NUMBERS.values()), "maple", 66.9]
    last = len(given)
    calc.data(f"F1:F{last}", [[value] for value in given])
    calc.formulas(f"G1:G{last}", [[f"=SYRUP_GRAVITY(F{row})"] for row in range(1, last + 1)])
    calc.fill_array(f"H1:H{last}", f"=SYRUP_GRAVITY(F1:F{last})")
    calc.fill_array("J1:M1", "=SYRUP_BAUME(66.9)")
    assert calc.read(f"G1:H{last}") == [[value, value] for value in shown]
    assert calc.read("J1:M1") == [[1.0, "Error 2042", "maple", "Error 2036"]]


def test_a_python_that_does_not_answer_is_asked_once(calc: Calc) -> None:
    """Excel waits a minute or two for it: so all cells say #VALUE! at once, until the user asks anew."""

    def computed(formula: str) -> Any:
        calc.fill({"N1": formula})
        return calc.read("N1")[0][0]

    computed("=PYTHON_DIES(1)")
    assert computed("=SYRUP_GRADE(50)") == "Error 2015"
    before = computed("=COUNTED_CALLS(1)")
    assert computed("=SYRUP_GRAVITY(66.9)") == "Error 2015"
    assert computed("=COUNTED_CALLS(2)") == before
    assert str(computed("=ASK_ANEW(1)")).startswith("Python does not answer: Python is still not there")
    assert computed("=SYRUP_GRAVITY(66.9)") == "Error 2015"
    computed("=PYTHON_DIES(0)")
    answer = str(computed("=ASK_ANEW(2)"))
    assert answer.startswith("Python answers: sheetfuncs 9.9 is at work.")
    assert answer.endswith("Before, it did not answer: Python is still not there")
    assert computed("=SYRUP_GRAVITY(66.9)") == 66.9
    assert computed("=COUNTED_CALLS(3)") == before + 1


if __name__ == "__main__":
    GOLDEN.write_bytes(TEXT.encode("ascii"))
