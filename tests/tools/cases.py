"""Cases of the sheets: what is typed into a workbook, and what each computed cell must give.

    tests/reference/sheets/cases/NAME.csv    cell,row,value         what is typed; no row for a labelled cell
    tests/reference/sheets/SHEET.csv         case,units,cell,row,expected,tolerance,because,source
    tests/reference/sheets/findings.csv      case,units,typed,cell,row,weight,sentence

Dates are written as ISO 8601 has them; text that stands where a number belongs is written in quotes.
"""

from __future__ import annotations

import contextlib
import csv
import functools
from pathlib import Path
from typing import Any, NamedTuple

from sheetfuncs.workbook.model.days import serial
from sheetfuncs.workbook.model.parts import Column, Field, named
from sheetfuncs.workbook.model.rows import Rows
from sheetfuncs.workbook.model.systems import Units
from sheetfuncs.workbook.season import Season
from sheetfuncs.workbook.sheets import all_sheets

FOLDER = Path(__file__).parents[1] / "reference" / "sheets"
# As few rows as the cases need, so that they are quick.
ROWS = Rows(collections=16, boils=10, happenings=8, waiting=20, batches=6, readings=40, bottlings=8, days=30, trees=8,
            past=4, words=4)  # fmt: skip


class Expected(NamedTuple):
    """What a cell must give in a case; `place` names the line that says so."""

    place: str
    case: str
    units: str
    cell: str
    row: int
    expected: str
    tolerance: float
    because: str
    source: str


class Provoked(NamedTuple):
    """A finding that something typed into a case must bring."""

    place: str
    case: str
    units: str
    typed: dict[tuple[str, int], str]
    cell: str
    row: int
    weight: str
    sentence: str


def lines(path: Path) -> list[tuple[str, dict[str, str]]]:
    """The lines of a table, each with its place."""
    with path.open(encoding="utf-8", newline="") as file:
        reader = csv.DictReader(file)
        return [(f"{path.name}:{reader.line_num}", {key: text or "" for key, text in line.items()}) for line in reader]


def expected() -> list[Expected]:
    found = []
    for path in sorted(FOLDER.glob("*.csv")):
        for place, line in lines(path) if path.stem != "findings" else []:
            row, tolerance = int(line["row"] or 1), float(line["tolerance"] or 0)
            case = line["case"], line["units"] or "US", line["cell"], row, line["expected"], tolerance
            found.append(Expected(place, *case, line["because"], line.get("source", "")))
    return found


def provoked() -> list[Provoked]:
    path = FOLDER / "findings.csv"
    found = []
    for place, line in lines(path) if path.exists() else []:
        edits: dict[tuple[str, int], str] = {}
        for edit in filter(None, (one.strip() for one in line["typed"].split(";"))):
            where, _, value = edit.partition("=")
            cell, _, row = where.strip().rstrip("]").partition("[")
            edits[cell, int(row or 1)] = value.strip()
        due = line["cell"], int(line["row"] or 1), line["weight"], line["sentence"]
        found.append(Provoked(place, line["case"], line["units"] or "US", edits, *due))
    return found


@functools.cache
def cells(system: str) -> dict[str, Column | Field]:
    """Every cell and column of a workbook by its name."""
    return named(all_sheets(Units(system), ROWS))


def inputs(case: str, system: str, edits: dict[tuple[str, int], str] | None = None) -> dict[str, Any]:
    """What is typed in a case, with other things typed over it."""
    given = {
        (line["cell"], int(line["row"] or 1)): line["value"] for _, line in lines(FOLDER / "cases" / f"{case}.csv")
    }
    found: dict[str, Any] = {}
    for (name, row), text in {**given, **(edits or {})}.items():
        what = cells(system)[name]
        if isinstance(what, Field):
            found[name] = value(what, text)
            continue
        column = found.setdefault(name, list(what.starts))
        column.extend([None] * (row - len(column)))
        column[row - 1] = value(what, text)
    return found


def value(what: Column | Field, text: str) -> Any:
    """A typed value: as its kind has it; in quotes, or where it cannot be one, the text itself."""
    if text == "":
        return None
    if text.startswith('"'):
        return text.strip('"')
    try:
        return what.kind.from_text(text)
    except ValueError:
        return text


@functools.cache
def season(case: str, system: str) -> Season:
    """A case, computed."""
    made = Season(system, inputs(case, system), ROWS)
    made.compute()
    return made


def wrong(found: Any, one: Expected) -> str:
    """What is wrong with a value; "" for nothing."""
    found = "" if found is None else serial(found)
    kind = cells(one.units)[one.cell].kind
    due: Any = one.expected
    if due and not (kind.wordy and not _is_number(due)):
        with contextlib.suppress(ValueError):
            due = float(due) if kind.wordy else serial(kind.from_text(due))
    if str(found) == one.expected:
        return ""
    if isinstance(due, float) and isinstance(found, (int, float)):
        good = abs(found - due) <= one.tolerance + 1e-9
    else:
        good = str(found) == str(due)
    return (
        ""
        if good
        else f"{one.place}: {one.cell} in row {one.row} of {one.case}: {found!r}, due {due!r} ({one.because})"
    )


def _is_number(text: str) -> bool:
    try:
        float(text)
    except ValueError:
        return False
    return True
