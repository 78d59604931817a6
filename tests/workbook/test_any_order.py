"""Each fact typed alone, and all of them in several orders: no sentence and no sum says what is not so."""

from __future__ import annotations

import random

import pytest

from sheetfuncs.workbook.model.parts import MEND, Finding, Table
from tests.tools.typed_into import Sheets

ORDERS = 4


@pytest.fixture(scope="module", params=["US", "metric"])
def sheets(request: pytest.FixtureRequest) -> Sheets:
    return Sheets(request.param)


def test_each_fact_alone(sheets: Sheets) -> None:
    wrong = {}
    for fact in sheets.facts():
        sheets.type(fact)
        if said := sheets.false():
            wrong[fact] = said
        sheets.put(fact, sheets.starts[fact])
    assert wrong == {}
    assert sheets.false() == []


@pytest.mark.parametrize("order", range(ORDERS))
def test_all_facts_in_any_order(sheets: Sheets, order: int) -> None:
    facts = list(sheets.facts())
    random.Random(order).shuffle(facts)  # noqa: S311 (no secret)
    wrong = {}
    for count, fact in enumerate(facts):
        sheets.type(fact)
        if count % 2 and (said := sheets.false()):
            wrong[fact] = said[:3]
            if len(wrong) > 3:
                break
    for fact in facts:
        sheets.put(fact, sheets.starts[fact])
    assert wrong == {}


WRONG = {"text": ("about 3",), "limits": (-5e6, 1e7)}  # no number, day or time; and far beyond any limit


def test_what_cannot_be_is_said_by_its_row(sheets: Sheets) -> None:
    """Of every column with a kind or with limits: text in its place, and a number below and one above."""
    tables = [block for sheet in sheets.season.sheets for block in sheet.blocks if isinstance(block, Table)]
    said = {table.key: next((column for column in table.columns if column.number), None) for table in tables}
    due = [
        (table, finding, value)
        for table, column in said.items()
        for finding in (column.findings if column else ())
        if finding.of_kind
        for value in WRONG[finding.key.partition(" ")[0]]
    ]
    assert len(due) > 150
    wrong = []
    for table, finding, value in due:
        column = said[table]
        assert column
        sheets.put((f"{table}.{finding.cell}", 0), value)
        spot = sheets.season.layout.spots[f"{table}.{column.number}"]
        number = sheets.model.values({spot.sheet: [(spot.row, spot.column)]})[spot.sheet][spot.row, spot.column]
        found: Finding | None = column.findings[int(number) - 1] if number else None
        if found is None or (found.cell, found.weight) != (finding.cell, MEND):
            wrong.append((table, finding.key, value, found and found.key))
        sheets.put((f"{table}.{finding.cell}", 0), sheets.starts[f"{table}.{finding.cell}", 0])
    assert wrong == []
