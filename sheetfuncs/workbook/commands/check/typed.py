"""What can be said of what was typed into a season: sentences with sheet, cell and weight.

Most come from the Look cells of the recomputed workbook; the rest is what no Look cell can see.
"""

from __future__ import annotations

import datetime
import re
from collections import Counter
from collections.abc import Iterator
from typing import Any, NamedTuple

from sheetfuncs.workbook.model import parts
from sheetfuncs.workbook.model.kinds import WORDY, is_date
from sheetfuncs.workbook.model.parts import ASK, MEND, TELL, WEIGHTS, Column, Field, Finding
from sheetfuncs.workbook.read.contents import At
from sheetfuncs.workbook.read.filled import Filled, address
from sheetfuncs.workbook.read.places import same
from sheetfuncs.workbook.sheets import newcomer
from sheetfuncs.workbook.sheets.phrases import not_a_date, not_a_number, not_a_time

KEY = re.compile(r"\[(\w+)\]")  # a column in a condition

# A season runs from the autumn before it to the summer; bottling may go on to the end of the year.
FIRST_DAY, LAST_DAY, YEAR_END = (-1, 11, 1), (0, 6, 30), (0, 12, 31)
NO_LOG = ("weekend", "thermometers", "past")  # where other days belong
NO_NUMBER = (*WORDY, parts.DATE, parts.TIME)
APART = 1.5  # °Brix beyond what the instruments leave open: what boils off while a batch is taken off


class Remark(NamedTuple):
    """Something to say of a cell, or of a sheet or the whole workbook where the cell or the sheet is ""."""

    weight: str
    sheet: str
    cell: str
    sentence: str


def label(what: Column | Field) -> str:
    """What a cell is called on its sheet."""
    return what.heading if isinstance(what, Column) else what.label


def of_typed(filled: Filled) -> Iterator[Remark]:
    """Look sentences, and what is wrong with single cells; of a cell that both see, the graver."""
    single = dict(_single(filled))
    for name, what in filled.cells.items():
        for offset in range(filled.layout.spots[name].height if what.findings else 0):
            said = filled.season.value(name, offset)
            found = next((one for one in what.findings if said and one.sentence == said), None)
            if found is None:
                continue
            cell = _culprit(filled, name, offset, found, single)
            known = single.get((cell, offset))
            if known is None or WEIGHTS.index(found.weight) <= WEIGHTS.index(known[0]):
                single.pop((cell, offset), None)
                yield Remark(found.weight, *filled.place(cell, offset), found.sentence)
    for (name, offset), (weight, sentence) in single.items():
        yield Remark(weight, *filled.place(name, offset), sentence)


def _culprit(
    filled: Filled, name: str, offset: int, found: Finding, single: dict[tuple[str, int], tuple[str, str]]
) -> str:
    """The cell that a sentence is about: of the typed ones in its condition, one that is wrong, or the first."""
    table = name.partition(".")[0]
    named = [f"{table}.{key}" for key in KEY.findall(found.condition)]
    typed = [other for other in named if other in filled.cells and filled.cells[other].typed]
    return next((other for other in typed if (other, offset) in single), next(iter(typed), name))


def _single(filled: Filled) -> Iterator[tuple[tuple[str, int], tuple[str, str]]]:
    """What is wrong with a typed cell, whatever stands beside it."""
    window = _window(filled)
    for name, what in filled.cells.items():
        if name not in filled.season.inputs:
            continue
        given = filled.season.inputs[name]
        choices = _choices(filled, what)
        for offset, value in enumerate(given if filled.is_table(name) else [given]):
            if value is None:
                continue
            said = _wrong(what, value, choices)
            if said is None and what.kind not in NO_NUMBER and is_date(filled.cell(name, offset).value):
                said = MEND, f"{label(what)} shows a date or a time: did a fraction such as 3/4 turn into one?"
            if said is None and window and isinstance(value, datetime.date) and name.split(".")[0] not in NO_LOG:
                said = _outside(window, value)
            if said:
                yield (name, offset), said


def _choices(filled: Filled, what: Column | Field) -> set[str]:
    """What may be typed into a cell with a list, as it compares."""
    listed = filled.season.inputs.get(what.choices[1:], ()) if isinstance(what.choices, str) else what.choices
    return {same(choice) for choice in listed if choice is not None}


def _wrong(what: Column | Field, value: Any, choices: set[str]) -> tuple[str, str] | None:
    words = label(what)
    if what.choices:
        if same(value) in choices:
            return None
        if isinstance(what.choices, str):  # a list of the user's own, that may just lack an entry
            return ASK, f"{words}: {value!r} is not in the list it should come from."
        return MEND, f"{words}: {value!r} is none of {', '.join(what.choices)}."
    if what.kind == parts.DATE:
        if not isinstance(value, datetime.date):
            return MEND, not_a_date("").sentence if isinstance(value, str) else f"{value:g} is no day: type a date."
    elif what.kind == parts.TIME:
        if not isinstance(value, datetime.time):
            return MEND, not_a_time("").sentence if isinstance(value, str) else f"{value:g} is no time of day."
    elif what.kind not in WORDY:
        low, high = what.limits
        if isinstance(value, str):
            return MEND, not_a_number("", words).sentence
        if not low <= value <= high:
            return MEND, f"{words} is {value:g}; it must be {low:g} to {high:g}."
    return None


def _window(filled: Filled) -> tuple[datetime.date, datetime.date, datetime.date] | None:
    """First and last day of the season, and the end of its year."""
    year = filled.season.inputs.get("yard.year")
    if not isinstance(year, float) or not 1900 <= year <= 2200:
        years = Counter(
            day.year for day in filled.season.inputs.get("collection.date", ()) if isinstance(day, datetime.date)
        )
        year = max(years, key=lambda one: (years[one], one), default=None)
    if year is None:
        return None
    first, last, end = (
        datetime.date(int(year) + step, month, day) for step, month, day in (FIRST_DAY, LAST_DAY, YEAR_END)
    )
    return first, last, end


def _outside(window: tuple[datetime.date, ...], day: datetime.date) -> tuple[str, str] | None:
    first, last, end = window
    if first <= day <= last:
        return None
    weight = ASK if last < day <= end else MEND
    return weight, f"{day.isoformat()} is outside the season {last.year}: is the date right?"


def of_batches(filled: Filled) -> Iterator[Remark]:
    """Two instruments that disagree, syrup to mend."""
    for batch in range(1, filled.rows.batches + 1):
        yield from _instruments(filled, batch)
        yield from _not_bottled(filled, batch)


def _instruments(filled: Filled, batch: int) -> Iterator[Remark]:
    season = filled.season
    readings = filled.layout.spots[f"readings{batch}.brix"].height
    read = [[season.value(f"readings{batch}.{key}", row) for key in ("brix", "error")] for row in range(readings)]
    last = next((one for one in reversed(read) if all(isinstance(number, float) for number in one)), None)
    true, own = season.value(f"check{batch}.true"), season.inputs.get("yard.hydrometer_error")
    if last is None or not isinstance(true, float):
        return
    brix, error = last
    if abs(brix - true) > abs(error) + (own if isinstance(own, float) else 0) + APART:
        sentence = (
            f"The thermometer said {brix:.1f} °Brix at the end of the batch, the hydrometer {true:.1f}: "
            "is one of them, or the reading in boiling water, wrong?"
        )
        yield Remark(ASK, *filled.place(f"check{batch}.shows"), sentence)


def _not_bottled(filled: Filled, batch: int) -> Iterator[Remark]:
    state = filled.season.value(f"check{batch}.state")
    if state in ("thin", "thick") and batch not in filled.season.inputs.get("bottles.batch", []):
        sentence = f"It was {state} in the cup, and this batch is not bottled yet: mend it first."
        yield Remark(ASK, *filled.place(f"check{batch}.state"), sentence)


def of_own(filled: Filled) -> Iterator[Remark]:
    """What is none of ours, so that nobody wonders where it went."""
    cells: dict[str, list[At]] = {}
    for own in filled.own_cells():
        cells.setdefault(own.sheet, []).append(own.at)
    for sheet, spots in cells.items():
        words = "1 cell" if len(spots) == 1 else f"{len(spots)} cells"
        sentence = f"{words} of your own: not reckoned with; convert and handover copy what they say."
        yield Remark(TELL, sheet, address(spots[0]), sentence)
    for sheet in filled.own_sheets():
        if sheet == newcomer.TITLE:
            continue
        yield Remark(TELL, sheet, "", "A sheet of your own: not reckoned with; convert and handover copy what it says.")
    for words in filled.contents.besides:
        yield Remark(TELL, "", "", f"The workbook holds {words}: not read, and not copied.")
