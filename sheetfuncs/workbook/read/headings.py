"""What tells a block on a page: the labels of cells in a column, the headings of a table in a row."""

from __future__ import annotations

from collections.abc import Callable
from typing import NamedTuple

from sheetfuncs.workbook.model.parts import Fields, Table
from sheetfuncs.workbook.model.systems import Units
from sheetfuncs.workbook.read.contents import At
from sheetfuncs.workbook.read.page import Page, labels_of, words_of


class Labels(NamedTuple):
    """Where a block's labels stand: their column, and the row of each that is there."""

    column: int
    rows: dict[str, int]


class Headings(NamedTuple):
    """Where a table's headings stand: their row, and the columns of each that is there."""

    row: int
    columns: dict[str, list[int]]


NO_LABELS, NO_HEADINGS = Labels(0, {}), Headings(0, {})


def labels_on(page: Page, block: Fields, covered: Callable[[At], bool]) -> Labels:
    """The labels of a block in a part of the page: those of the column that has most."""
    places = {
        field.key: [place for words in labels_of(field) for place in page.words.get(words, ()) if covered(place)]
        for field in block.fields
    }
    columns = {place[1] for found in places.values() for place in found}
    found = []
    for column in columns:
        rows = {key: [row for row, at in each if at == column] for key, each in places.items()}
        found.append(Labels(column, {key: min(each) for key, each in rows.items() if each}))
    return max(found, key=lambda one: (len(one.rows), -abs(one.column - block.column)), default=NO_LABELS)


def headings_on(page: Page, block: Table, units: Units, covered: Callable[[At], bool]) -> Headings:
    """The row with most of a table's headings in a part of the page."""
    rows: dict[int, dict[str, list[int]]] = {}
    for column in block.columns:
        for words in words_of(column, units):
            for place in page.words.get(words, ()):
                if covered(place):
                    rows.setdefault(place[0], {}).setdefault(column.key, []).append(place[1])
    row = max(rows, key=lambda row: (len(rows[row]), -row), default=0)
    return Headings(row, {key: sorted(places) for key, places in rows.get(row, {}).items()})
