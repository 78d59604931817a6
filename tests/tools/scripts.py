"""The functions as program text, run: plain VBA in LibreOffice, JavaScript in node."""

from __future__ import annotations

import json
import shutil
import subprocess
from collections.abc import Sequence
from typing import Any

from sheetfuncs.hosts import cells
from sheetfuncs.hosts.excel import ERROR_NUMBERS
from sheetfuncs.hosts.script import office as office_script
from sheetfuncs.hosts.script import sheets
from sheetfuncs.hosts.script.vba import module_text
from tests.tools import office
from tests.tools.calc_office import Office, own_folder

Calls = Sequence[tuple[str, Sequence[Any]]]


def basic_module(text: str) -> str:
    """A VBA module as LibreOffice takes it: it knows no Attribute line, and must be told that this is VBA."""
    body = text.partition("\r\n")[2].replace("\r\n", "\n")
    return f"Option VBASupport 1\n{body}"


def by_basic(calls: Calls, blank: Any) -> list[Any]:
    """What the plain VBA gives in cells of LibreOffice, which shows VBA's CVErr(2042) as "Error 2042".

    LibreOffice hands neither an argument left out before others nor an error over to Basic, as Excel
    does: calls with these are made from Basic itself.
    """
    office.needed()
    shown = {f"Error {number}": text for text, number in ERROR_NUMBERS.items()}
    asked = [place for place, (_, given) in enumerate(calls) if any(v is None or v in cells.ERRORS for v in given)]
    modules = {"sheetfuncs": basic_module(module_text()), "Asked": _asked([calls[place] for place in asked], blank)}
    from_cells = list(calls)
    for number, place in enumerate(asked):
        from_cells[place] = ("ASK", [float(number)])
    with own_folder() as folder, Office(folder).calc() as calc:
        answers = calc.answers(from_cells, blank, cells.ERRORS, modules)
    return [shown.get(answer, answer) for answer in answers]


def _asked(calls: Calls, blank: Any) -> str:
    """A module whose ASK(number) makes one of these calls.

    An error goes in as a row of one cell: LibreOffice takes an error alone for an argument left out.
    """

    def argument(value: Any) -> str:
        if value is None:
            return ""
        if value in cells.ERRORS:
            return f"Array(CVErr({ERROR_NUMBERS[value]}))"
        if value == blank:
            return "Empty"
        if isinstance(value, bool):
            return str(value)
        return f'"{value}"' if isinstance(value, str) else f"CDbl({value!r})"

    lines = ["Option VBASupport 1", "Public Function ASK(ByVal number As Long)", "    Select Case number"]
    for number, (name, given) in enumerate(calls):
        lines.append(f"        Case {number}: ASK = Alone({name}({', '.join(map(argument, given))}))")
    return "\n".join([*lines, "    End Select", "End Function", ALONE])


ALONE = """\
Private Function Alone(ByVal answer As Variant) As Variant
    If IsArray(answer) Then
        Alone = answer(1, 1)
    Else
        Alone = answer
    End If
End Function"""


def node(program: str, given: Any = None) -> Any:
    """Run a JavaScript program; `given` is there as `given`, and what it passes to `tell` comes back."""
    if shutil.which("node") is None:
        office.missing("needs node")
    text = f"const given = JSON.parse(require('fs').readFileSync(0, 'utf8'));\n{program}"
    done = subprocess.run(
        ["node", "-e", "const tell = (what) => console.log(JSON.stringify(what));\n" + text],
        input=json.dumps(given),
        capture_output=True,
        text=True,
        timeout=300,
    )
    assert done.returncode == 0, done.stderr
    return json.loads(done.stdout)


# As Sheets hands arguments over: an empty cell as an empty text, an argument left out as undefined.
SHEETS = """
tell(given.map(([name, values]) => {
  try { return eval(name)(...values.map((value) => (value === null ? undefined : value))); }
  catch (error) { return error.message; }
}));
"""


def by_sheets(calls: Calls, blank: Any) -> list[Any]:
    """What the script for Google Sheets gives."""
    sent = [(name, ["" if value == blank else value for value in given]) for name, given in calls]
    return list(node(sheets.script_text() + SHEETS, sent))


# Stands in for Excel's runtime, after its documents: functions by their id, errors as objects with a code.
RUNTIME = """
const associated = {};
const CustomFunctions = {
  associate: (id, called) => { associated[id] = called; },
  ErrorCode: {
    invalidValue: "#VALUE!", notAvailable: "#N/A", divisionByZero: "#DIV/0!", invalidNumber: "#NUM!",
    nullReference: "#NULL!", invalidName: "#NAME?", invalidReference: "#REF!",
  },
  Error: class { constructor(code) { this.code = code; } },
};
"""
# As Excel hands arguments over: rows of cells, null for one that is left out; and what called it, last.
OFFICE = """
const cell = (value) => (errors.includes(value) ? new CustomFunctions.Error(value) : value);
const shown = (value) => (value instanceof CustomFunctions.Error ? value.code : value);
tell(given.calls.map(([id, values]) =>
  associated[id](...values.map((value) => value && value.map((row) => row.map(cell))), {})
    .map((row) => row.map(shown))));
"""


def by_office_rows(calls: Calls) -> list[Any]:
    """What the custom functions give for arguments that are rows of cells, None for one left out."""
    metadata = json.loads(office_script.files("https://maple.example")["functions.json"])
    ids = {one["name"]: (one["id"], len(one["parameters"])) for one in metadata["functions"]}
    sent = []
    for name, given in calls:
        identity, count = ids[name]
        sent.append((identity, [*given, *[None] * (count - len(given))]))
    script = office_script.files("https://maple.example")["functions.js"]
    program = f"{RUNTIME}{script}\nconst errors = {json.dumps(cells.ERRORS)};\n{OFFICE}"
    return list(node(program, {"calls": sent}))


def by_office(calls: Calls, blank: Any) -> list[Any]:
    """What the custom functions give for single cells."""
    sent = [
        (name, [value if value is None else [[0 if value == blank else value]] for value in given])
        for name, given in calls
    ]
    answers = by_office_rows(sent)
    assert all(len(rows) == len(rows[0]) == 1 for rows in answers)
    return [rows[0][0] for rows in answers]
