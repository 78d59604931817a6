"""What can be said of what was typed into a season: sentences with sheet, cell and weight.

Most come from the Look cells of the recomputed workbook; the rest is what no Look cell can see.
"""

from __future__ import annotations

import datetime
from collections import Counter
from collections.abc import Iterator, Sequence
from typing import Any, NamedTuple

from sheetfuncs.workbook.model.kinds import is_date
from sheetfuncs.workbook.model.parts import ASK, MEND, TELL, WEIGHTS, Column, Field
from sheetfuncs.workbook.read.contents import At
from sheetfuncs.workbook.read.filled import Filled, address
from sheetfuncs.workbook.read.page import as_a_sheet_has_it, same
from sheetfuncs.workbook.sheets import newcomer

# A season runs from the autumn before it to the summer; bottling may go on to the end of the year.
FIRST_DAY, LAST_DAY, YEAR_END = (-1, 11, 1), (0, 6, 30), (0, 12, 31)
ONE_DAY = datetime.timedelta(days=1)
MOST_HOLES = 3  # in the log of weather that are told one by one
NO_LOG = ("weekend", "thermometers", "past", "words")  # where other days belong


class Remark(NamedTuple):
    """Something to say of a cell, or of a sheet or the whole workbook where the cell or the sheet is ""."""

    weight: str
    sheet: str
    cell: str
    sentence: str


def of_typed(filled: Filled) -> Iterator[Remark]:
    """What the rows say of themselves, and what is wrong with single cells; of a cell that both see, the graver."""
    single = dict(_single(filled))
    for name, what in filled.cells.items():
        for offset in range(filled.layout.spots[name].height if what.findings else 0):
            block = name.partition(".")[0]
            number = filled.season.value(f"{block}.{what.number}", offset)
            if not isinstance(number, float) or not number:
                continue
            found = what.findings[int(number) - 1]
            cell = f"{block}.{found.cell}" if found.cell else name
            if found.of_kind and (cell, offset) in single:
                continue  # said of the cell itself, with what stands in it
            known = single.get((cell, offset))
            if known is None or WEIGHTS.index(found.weight) <= WEIGHTS.index(known[0]):
                single.pop((cell, offset), None)
                yield Remark(found.weight, *filled.place(cell, offset), str(filled.season.value(name, offset)))
    for (name, offset), (weight, sentence) in single.items():
        yield Remark(weight, *filled.place(name, offset), sentence)


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
            said = _wrong(filled, what, value, choices)
            if said is None and what.kind.amount and is_date(filled.cell(name, offset).value):
                said = MEND, f"{what.words} shows a date or a time: did a fraction such as 3/4 turn into one?"
            if said is None and window and isinstance(value, datetime.date) and name.split(".")[0] not in NO_LOG:
                said = _outside(window, value)
            if said:
                yield (name, offset), said


def not_understood(filled: Filled) -> Iterator[Remark]:
    """Typed cells of which nothing can be made: formulas without a value, text where a number belongs, odd words."""
    for name, what in filled.cells.items():
        if not what.typed and name not in filled.season.inputs:
            continue
        given = filled.season.inputs.get(name)
        for offset, place in enumerate(filled.spots(name)):
            if place is None:
                continue
            cell = filled.cell(name, offset)
            value = given if not isinstance(given, list) else given[offset] if offset < len(given) else None
            if cell.formula and cell.value is None:
                said = without_value(what)
            elif value is None:
                continue
            elif what.choices and not isinstance(what.choices, str):
                said = (_wrong(filled, what, value, what.choices) or ("", ""))[1]
            else:
                odd = not what.choices and not what.kind.fits(value)
                said = what.kind.wrong(what.words, value, what.limits, filled.season.units) if odd else ""
            if said:
                yield Remark(MEND, *filled.place(name, offset), said)


def without_value(what: Column | Field) -> str:
    """What is said of a formula that no program has computed."""
    return f"{what.words} holds a formula without its value: save the workbook in a spreadsheet first."


def _choices(filled: Filled, what: Column | Field) -> list[Any]:
    """What may be typed into a cell with a list."""
    listed = filled.season.inputs.get(what.choices[1:], ()) if isinstance(what.choices, str) else what.choices
    return [choice for choice in listed if choice is not None]


def _wrong(filled: Filled, what: Column | Field, value: Any, choices: Sequence[Any]) -> tuple[str, str] | None:
    if what.choices:
        if as_a_sheet_has_it(value) in map(as_a_sheet_has_it, choices):
            return None
        if like := [choice for choice in choices if same(choice) == same(value)]:
            sentence = f"{what.words}: a space in it is not that of {like[0]!r} in the list: choose it there."
            return MEND, sentence
        if isinstance(what.choices, str):  # a list of the user's own, that may just lack an entry
            return ASK, f"{what.words}: {value!r} is not in the list it should come from."
        return MEND, f"{what.words}: {value!r} is none of {', '.join(what.choices)}."
    said = what.kind.wrong(what.words, value, what.limits, filled.season.units)
    return (MEND, said) if said else None


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


def of_weather(filled: Filled) -> Iterator[Remark]:
    """Days that the log of weather leaves out; what of the rest is forecast still, a log cannot tell."""
    rows = {
        day: row
        for row, day in enumerate(filled.season.inputs.get("weather.date", ()))
        if isinstance(day, datetime.date)
    }
    known = sorted(rows)
    holes = [(last, this) for last, this in zip(known, known[1:], strict=False) if (this - last).days > 1]
    kind, units = filled.cells["weather.date"].kind, filled.season.units
    for last, this in holes[:MOST_HOLES]:
        first, days = kind.show(last + ONE_DAY, units), (this - last).days - 1
        missing = f"No weather of {first}" if days == 1 else f"No weather of {days} days from {first} on"
        sentence = f"{missing}: frosts and warmth of that time are not known."
        yield Remark(ASK, *filled.place("weather.date", rows[this]), sentence)
    if len(holes) > MOST_HOLES:
        sheet, _ = filled.place("weather.date")
        yield Remark(ASK, sheet, "", f"The days have {len(holes) - MOST_HOLES} more holes.")


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
    for words in filled.besides():
        yield Remark(TELL, "", "", f"The workbook holds {words}: not read, and not copied.")
