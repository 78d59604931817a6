"""The typed cells that differ between two workbooks, by sheet and cell."""

from __future__ import annotations

import argparse
from collections.abc import Iterator, Sequence
from pathlib import Path
from typing import Any

from sheetfuncs.workbook.commands.two import readings
from sheetfuncs.workbook.commands.two.alike import Row, of_one_day
from sheetfuncs.workbook.commands.two.copies import Both, Copy, Log
from sheetfuncs.workbook.model.systems import Units
from sheetfuncs.workbook.read.filled import Filled, address, read

NOTHING = "blank"
SAME = "no typed cell differs"


def compare(options: argparse.Namespace) -> int:
    """Print what differs; the second workbook is shown in the units of the first."""
    one, other = read(Path(options.one)), read(Path(options.other))
    if one.system != other.system:
        print(f"{Path(other.file).name} is shown in the units of {Path(one.file).name}")
    print("\n".join(differences(one, other)) or SAME)
    return 0


def differences(one: Filled, other: Filled) -> Iterator[str]:
    """A line for each cell or row that differs, in the order of the sheets; then what belongs to no column of ours."""
    both = Both(one, other)
    for name in both.fields():
        mine, theirs = (copy.column(name)[0] for copy in both.copies)
        if both.comparable(0, name, mine) != both.comparable(1, name, theirs):
            yield f"{_where(both, name)}: {_said(both, name, mine)} | {_said(both, name, theirs)}"
    for log in both.logs.values():
        for pair in of_one_day(both.pairs(log), lambda row, log=log: both.key(log, row)):  # type: ignore[misc]
            if pair.one and pair.other:
                yield from _called(both, log, pair.one, pair.other)
                yield from _cells(both, log, pair.one, pair.other)
            else:
                yield from _alone(both, log, *pair)
    yield from _own(one, other)
    yield from _own(other, one)


def _called(both: Both, log: Log, one: Row, other: Row) -> Iterator[str]:
    """A lot that has one name in the first workbook and another in the second."""
    letter = {"collection": "S", "boil": "B", "batches": "batch "}.get(log.key)
    if letter and one.offset != other.offset and not one.blank:
        first, second = (f"{letter}{row.offset + 1}" for row in (one, other))
        where = _where(both, f"{log.key}.date", one.offset, other.offset)
        yield f"{where}: what is {first} in {_file(both.one)} is {second} in {_file(both.other)}"


def _cells(both: Both, log: Log, one: Row, other: Row) -> Iterator[str]:
    rows = zip(both.one.typed(log, one.offset), both.other.typed(log, other.offset), strict=True)
    batch = f"{readings.KEY}.batch"  # it may stand in the row, or above
    for name, (mine, theirs) in zip(log.columns, rows, strict=True):
        differs = both.comparable(0, name, mine) != both.comparable(1, name, theirs)
        if differs and not (name == batch and None in (mine, theirs)):
            at = _where(both, name, one.offset, other.offset)
            yield f"{at}: {_said(both, name, mine)} | {_said(both, name, theirs)}"


def _where(both: Both, name: str, offset: int = 0, theirs: int = 0) -> str:
    """Sheet and address of a cell, in both files where they differ, and what it is called."""
    places = [both.one.place(name, offset), both.other.place(name, theirs)]
    known = list(dict.fromkeys(place for place in places if place))
    return f"{' | '.join(known)}, {both.cells[name].words}"


def _alone(both: Both, log: Log, one: Row | None, other: Row | None) -> Iterator[str]:
    """A row that one of the two has."""
    side, row = (0, one) if one else (1, other)
    if row is None or row.blank:
        return
    copy = both.copies[side]
    typed = copy.typed(log, row.offset)
    first = next((name for name, value in zip(log.columns, typed, strict=True) if value is not None), log.columns[0])
    yield f"{copy.place(first, row.offset)}: only in {_file(copy)}: {words(both, log, typed)}"


def _file(copy: Copy) -> str:
    return Path(copy.filled.file).name


def words(both: Both, log: Log, values: Sequence[Any]) -> str:
    """What is filled in in a row, with its headings."""
    return ", ".join(
        f"{both.cells[name].words} {_said(both, name, value)}"
        for name, value in zip(log.columns, values, strict=True)
        if value is not None
    )


def _said(both: Both, name: str, value: Any) -> str:
    if value is None:
        return NOTHING
    text = both.cells[name].kind.show(value, Units(both.system))
    exact = repr(value).removesuffix(".0") if isinstance(value, float) else text
    return exact if isinstance(value, float) and _loses(text, value) else text


def _loses(text: str, value: float) -> bool:
    """Whether a number shown rounded no longer says what was typed."""
    try:
        return float(text.replace(",", "")) != value
    except ValueError:
        return False


def _own(one: Filled, other: Filled) -> Iterator[str]:
    """Cells of one's own, on our sheets and on added ones, that the other workbook does not have."""
    there = {(own.sheet, str(own.value)) for own in other.own_cells()}
    for own in one.own_cells():
        if (own.sheet, str(own.value)) not in there:
            yield f"{own.sheet} {address(own.at)}: only in {Path(one.file).name}, of your own: {str(own.value)[:80]}"
    for title in one.own_sheets():
        if title not in other.contents.sheets:
            yield f"{title}: only in {Path(one.file).name}, a sheet of your own"
            continue
        cells = {at: cell.value for at, cell in one.contents.sheets[title].items()}
        theirs = {at: cell.value for at, cell in other.contents.sheets[title].items()}
        for at in sorted(at for at, value in cells.items() if value is not None and theirs.get(at) != value):
            yield f"{title} {address(at)}: only in {Path(one.file).name}, of your own: {str(cells[at])[:80]}"
