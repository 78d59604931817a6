"""The VBA module between Excel and xlwings: one function for each of the catalogue.

xlwings can write such wrappers itself, but its own show an error as text in the cell.
The text is plain ASCII, since the VBA editor reads a file in the code page of its Windows.
"""

from __future__ import annotations

import re

from sheetfuncs.formulas.card import Card
from sheetfuncs.formulas.catalogue import CATALOGUE, STAGES, functions_of
from sheetfuncs.hosts.excel import CATEGORY, ERROR_NUMBERS, LEFT_OUT, MODULE

XLWINGS = "0.37"  # whose `XLPy.CallUDF` the text below calls
NAME = "sheetfuncs"  # of the module

WIDTH = 110  # a line of VBA takes 1,023 characters (Microsoft, Office VBA reference, "Line too long")
MOST_LINES = 25  # 24 continuations (the same, "Too many line continuations")
MOST_HELP = 255  # characters of a description: [MS-XLSB] 2.5.3, ArgDesc


class TooLong(ValueError):
    """A text over the limits of VBA or of Excel's function help: shorten it."""


def module_text() -> str:
    """The whole module, as the VBA editor imports it."""
    lines = HEAD.format(name=NAME, xlwings=XLWINGS, module=MODULE, category=CATEGORY, left_out=LEFT_OUT).splitlines()
    for function in CATALOGUE.values():
        lines += ["", *public_function(function.card)]
    lines += ["", *help_lines(), *DESCRIBE.splitlines(), *TAIL.splitlines()]
    lines += [f'        Case "{text}": Shown = CVErr({number})' for text, number in ERROR_NUMBERS.items()]
    lines += ["    End Select", "End Function"]
    return "".join(f"{line}\r\n" for line in lines)


HEAD = """\
Attribute VB_Name = "{name}"
Option Explicit

' Maple sugaring functions, computed by Python through xlwings {xlwings}.
' Written by `sheetfuncs excel-addin`: do not edit, but write it anew.

Private Const PYTHON_MODULE As String = "{module}"
Private Const FUNCTION_CATEGORY As String = "{category}"
Private Const LEFT_OUT As String = "{left_out}"

' Why Python last did not answer. Waiting for a Python that is not there takes a minute or two: while
' this holds a reason no cell asks again. sheetfuncs_check does, and so does opening the workbook anew.
Private silence As String\
"""

HELP = """\
' Run this once: it puts what each function and each argument means into Excel's function help.
Public Sub sheetfuncs_help()"""

DESCRIBE = """
Private Sub Describe(ByVal called As String, ByVal words As String, ParamArray arguments() As Variant)
    Dim helps As Variant
    helps = arguments
    Application.MacroOptions _
        Macro:="'" & Replace(ThisWorkbook.Name, "'", "''") & "'!" & called, _
        Description:=words, Category:=FUNCTION_CATEGORY, ArgumentDescriptions:=helps
End Sub\
"""

TAIL = """
' Run this when every cell shows #VALUE!: it asks Python anew, and says whether it answers and if not, why.
Public Sub sheetfuncs_check()
    Dim words As String
    words = Asked()
    If silence = "" Then Application.CalculateFull
    MsgBox words, IIf(silence = "", vbInformation, vbExclamation)
End Sub

Private Function Asked() As String
    Dim before As String
    before = silence
    On Error GoTo failed
    Asked = "Python answers: sheetfuncs " & XLPy.Str(XLPy.GetAttr(XLPy.Module("sheetfuncs"), "__version__")) & _
        " is at work. All cells are computed anew."
    silence = ""
    If before <> "" Then Asked = Asked & vbCrLf & "Before, it did not answer: " & before
    Exit Function
failed:
    Remember Err.Description
    Asked = "Python does not answer: " & silence & vbCrLf & _
        "Until it does every cell says #VALUE! at once. Mend the cause and run this again."
End Function

Private Sub Remember(ByVal reason As String)
    silence = reason
    If silence = "" Then silence = "no reason was given"
End Sub

' One call: ranges go to Python as their values, and error texts come back as errors.
Private Function Answer(ByVal called As String, ByVal given As Variant) As Variant
    Dim sent() As Variant, result As Variant
    Dim i As Long, j As Long, last As Long
    If silence <> "" Then
        Answer = CVErr(2015)
        Exit Function
    End If
    On Error GoTo failed
    ReDim sent(LBound(given) To UBound(given))
    For i = LBound(given) To UBound(given)
        If IsMissing(given(i)) Then
            sent(i) = LEFT_OUT
        ElseIf IsObject(given(i)) Then
            sent(i) = given(i).Value2
        Else
            sent(i) = given(i)
        End If
    Next i
    On Error GoTo silent
    result = XLPy.CallUDF(PYTHON_MODULE, called, sent)
    On Error GoTo failed
    If Not IsArray(result) Then
        Answer = Shown(result)
        Exit Function
    End If
    last = -1 ' a single row comes without a second dimension
    On Error Resume Next
    last = UBound(result, 2)
    On Error GoTo failed
    For i = LBound(result) To UBound(result)
        If last < 0 Then
            result(i) = Shown(result(i))
        Else
            For j = LBound(result, 2) To last
                result(i, j) = Shown(result(i, j))
            Next j
        End If
    Next i
    Answer = result
    Exit Function
silent:
    Remember Err.Description
failed:
    Answer = CVErr(2015)
End Function

Private Function Shown(ByVal value As Variant) As Variant
    Shown = value
    If VarType(value) <> vbString Then Exit Function
    Select Case value"""


def public_function(card: Card) -> list[str]:
    """What a cell calls.  Every argument may be left out: then the answer is ours, #N/A, not Excel's."""
    names = card.parameters
    return [
        f"Public Function {card.name}({', '.join(f'Optional {name}' for name in names)})",
        f'    {card.name} = Answer("{card.name}", Array({", ".join(names)}))',
        "End Function",
    ]


def help_lines() -> list[str]:
    """The macro that puts the texts of the cards into Excel's function help, a procedure for each stage."""
    stages = {stage.__name__.rpartition(".")[2]: stage for stage in STAGES}
    lines = [*HELP.splitlines(), *(f"    help_on_{name}" for name in stages), "End Sub"]
    for name, stage in stages.items():  # VBA takes 64 KB of a procedure
        lines += ["", f"Private Sub help_on_{name}()"]
        for function in functions_of(stage).values():
            lines += described(function.card)
        lines += ["End Sub"]
    return lines


def described(card: Card) -> list[str]:
    """The statement that tells Excel what a function and its arguments mean."""
    words = [f'Describe "{card.name}"']
    for text in (card.sentence, *card.parameter_help.values()):
        if len(text) > MOST_HELP:
            raise TooLong(f"{card.name}: a help text has {len(text)} characters, Excel takes {MOST_HELP}: {text}")
        words[-1] += ","
        words += literal(text)
    return _wrapped(card, words, "    ")


def literal(text: str) -> list[str]:
    """A text as VBA writes it, in pieces that a line may end after."""
    parts = re.findall(r"[ -~]{1,60}(?![!-~])|[ -~]{1,60}|[^ -~]", text)
    written = ['"' + part.replace('"', '""') + '"' if part.isascii() else f"ChrW({ord(part)})" for part in parts]
    return [f"{part} &" for part in written[:-1]] + written[-1:]


def _wrapped(card: Card, pieces: list[str], indent: str) -> list[str]:
    """A statement from pieces with a blank between them, continued on further lines where it is long."""
    lines = [indent + pieces[0]]
    for piece in pieces[1:]:
        if len(lines[-1]) + len(piece) > WIDTH:
            lines[-1] += " _"
            lines.append(f"{indent}        {piece}")
        else:
            lines[-1] += f" {piece}"
    if len(lines) > MOST_LINES:
        raise TooLong(f"{card.name}: a statement of {len(lines)} lines, VBA takes {MOST_LINES}")
    return lines
