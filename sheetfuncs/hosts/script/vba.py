"""The functions in plain VBA: one module for Excel, with no Python and no library behind it.

The text is plain ASCII, since the VBA editor reads a file in the code page of its machine.
"""

from __future__ import annotations

from sheetfuncs import __version__
from sheetfuncs.formulas.card import Card
from sheetfuncs.formulas.catalogue import CATALOGUE
from sheetfuncs.formulas.quantities import SYSTEMS
from sheetfuncs.hosts.excel import CATEGORY, ERROR_NUMBERS
from sheetfuncs.hosts.excel.wrapper import DESCRIBE, NAME, help_lines, public_function
from sheetfuncs.hosts.script.statements import NUMBER, TRUTH, WIDTH, WORD, Body, Language

TYPES = {NUMBER: "Double", TRUTH: "Boolean", WORD: "String"}
FUNCTIONS = {"SQRT(": "Sqr", "EXP(": "Exp", "LN(": "Log", "INT(": "Int"}


class Vba(Language):
    """VBA, in the body of the function `name`."""

    equals: dict[str, str] = {}  # noqa: RUF012 (as a spreadsheet writes them)
    every = " And "
    any_of = " Or "

    def __init__(self, name: str) -> None:
        self.name = name

    def number(self, digits: str) -> str:
        return digits if "." in digits else f"{digits}#"  # never a whole number, which overflows

    def word(self, quoted: str) -> str:
        return quoted

    def operation(self, head: str, operands: list[str]) -> str:
        return f"{FUNCTIONS[head]}({operands[0]})" if head in FUNCTIONS else f" {head} ".join(operands)

    def is_text(self, name: str) -> str:
        return f"VarType({name}) = vbString"

    def same_word(self, name: str, word: str, same: bool) -> str:
        return f"{'' if same else 'Not '}SameWord({name}, {word})"

    def negated(self, condition: str) -> str:
        return f"Not ({condition})"

    def as_number(self, condition: str) -> str:
        return f"OneIf({condition})"

    def either(self, condition: str, yes: str, no: str) -> str:
        return f"IIf({condition}, {yes}, {no})"

    def assign(self, name: str, value: str) -> str:
        return f"{name} = {value}"

    def leave(self, condition: str, error: str) -> list[str]:
        if len(condition) > WIDTH:
            condition = condition.replace(self.every, f"{self.every}_\n        ")
        left = [f"{self.name} = CVErr({ERROR_NUMBERS[error]})", "Exit Function"]
        return [*f"If {condition} Then".split("\n"), *_indented(left), "End If"]

    def branches(self, condition: str, yes: list[str], no: list[str]) -> list[str]:
        return [f"If {condition} Then", *_indented(yes), "Else", *_indented(no), "End If"]


def module_text() -> str:
    """The whole module, as the VBA editor imports it."""
    lines = HEAD.format(name=NAME, version=__version__, category=CATEGORY, units=SYSTEMS[0]).splitlines()
    for function in CATALOGUE.values():
        lines += ["", *public_function(function.card)]
    lines += ["", *help_lines(), *DESCRIBE.splitlines(), *ANSWER.splitlines()]
    for function in CATALOGUE.values():
        names = range(len(function.card.parameters))
        given = ", ".join(f"given({place})" for place in names)
        lines.append(f'        Case "{function.card.name}": One = One_{function.card.name}({given})')
    lines += TAIL.splitlines()
    for function in CATALOGUE.values():
        lines += ["", *_private(function.card)]
    return "".join(f"{line}\r\n" for line in lines)


def _private(card: Card) -> list[str]:
    """The sums of one cell."""
    name = f"One_{card.name}"
    language = Vba(name)
    body = Body(card, language)
    left_out = " Or ".join(f"IsNull({argument})" for argument in card.arguments)
    lines = _declared(body.variables)
    lines += language.leave(left_out, "#N/A")
    if card.units:
        lines.append(f'If IsNull(units) Then units = "{SYSTEMS[0]}"')
    lines += [*body.lines, f"{name} = {body.result}"]
    parameters = ", ".join(f"ByVal {parameter}" for parameter in card.parameters)
    return [f"Private Function {name}({parameters})", *_indented(lines), "End Function"]


def _declared(variables: dict[str, str]) -> list[str]:
    lines: list[str] = []
    for name, kind in variables.items():
        text = f"{name} As {TYPES[kind]}"
        if lines and len(lines[-1]) + len(text) < WIDTH:
            lines[-1] += f", {text}"
        else:
            lines.append(f"Dim {text}")
    return lines


def _indented(lines: list[str]) -> list[str]:
    return [f"    {line}" for line in lines]


HEAD = """\
Attribute VB_Name = "{name}"
Option Explicit

' Maple sugaring functions in plain VBA, of sheetfuncs {version}: nothing else is needed.
' Written by `sheetfuncs excel-addin --plain`: do not edit, but write it anew.

Private Const FUNCTION_CATEGORY As String = "{category}"\
"""

ANSWER = """
' One call: alone, or for each cell of its ranges. Ranges are laid beside each other as in an array
' formula: one row or column is repeated, and where another range has no cell the answer is #N/A.
Private Function Answer(ByVal called As String, ByVal given As Variant) As Variant
    Dim row As Long, column As Long, rows As Long, columns As Long, i As Long
    Dim sent() As Variant, cell() As Variant, answers() As Variant
    On Error GoTo failed
    ReDim sent(LBound(given) To UBound(given))
    ReDim cell(LBound(given) To UBound(given))
    For i = LBound(given) To UBound(given)
        If IsMissing(given(i)) Then
            sent(i) = Null
        Else
            sent(i) = Block(given(i))
        End If
        If IsArray(sent(i)) Then
            If UBound(sent(i), 1) > rows Then rows = UBound(sent(i), 1)
            If UBound(sent(i), 2) > columns Then columns = UBound(sent(i), 2)
        End If
    Next i
    If rows = 0 Then
        Answer = One(called, sent)
        Exit Function
    End If
    ReDim answers(1 To rows, 1 To columns)
    For row = 1 To rows
        For column = 1 To columns
            For i = LBound(sent) To UBound(sent)
                If IsArray(sent(i)) Then
                    cell(i) = Element(sent(i), row, column)
                Else
                    cell(i) = sent(i)
                End If
            Next i
            answers(row, column) = One(called, cell)
        Next column
    Next row
    Answer = answers
    Exit Function
failed:
    Answer = CVErr(2015)
End Function

' An argument: one value, or rows and columns of them, counted from 1.
Private Function Block(ByVal given As Variant) As Variant
    Dim found As Variant, flat As Long, last As Long, i As Long
    Dim made() As Variant
    If IsObject(given) Then
        found = given.Value2
    Else
        found = given
    End If
    If IsArray(found) Then
        last = -1 ' a single row of constants comes without a second dimension
        On Error Resume Next
        last = UBound(found, 2)
        On Error GoTo 0
        If last < 0 Then
            flat = LBound(found)
            ReDim made(1 To 1, 1 To UBound(found) - flat + 1)
            For i = flat To UBound(found)
                made(1, i - flat + 1) = found(i)
            Next i
            found = made
        End If
    End If
    Block = found
End Function

Private Function Element(ByRef values As Variant, ByVal row As Long, ByVal column As Long) As Variant
    If UBound(values, 1) = 1 Then row = 1
    If UBound(values, 2) = 1 Then column = 1
    If row > UBound(values, 1) Or column > UBound(values, 2) Then
        Element = CVErr(2042)
    Else
        Element = values(row, column)
    End If
End Function

Private Function SameWord(ByVal given As Variant, ByVal word As String) As Boolean
    If VarType(given) = vbString Then SameWord = (LCase(given) = LCase(word))
End Function

Private Function OneIf(ByVal holds As Boolean) As Double
    If holds Then OneIf = 1#
End Function

' The answer for one cell: an error that comes in goes out, a blank cell is 0, a date is its number.
Private Function One(ByVal called As String, ByRef given As Variant) As Variant
    Dim i As Long
    On Error GoTo failed
    For i = LBound(given) To UBound(given)
        If IsError(given(i)) Then
            One = given(i)
            Exit Function
        End If
    Next i
    For i = LBound(given) To UBound(given)
        Select Case VarType(given(i))
            Case vbNull, vbString, vbDouble
            Case vbBoolean
                given(i) = OneIf(given(i))
            Case Else
                given(i) = CDbl(given(i))
        End Select
    Next i
    Select Case called\
"""

TAIL = """\
    End Select
    Exit Function
failed: ' no such logarithm or root, or a number too large
    One = CVErr(2036)
End Function\
"""
