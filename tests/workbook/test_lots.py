"""Lots write themselves: nothing is lost and nothing is said twice, whatever is typed and in whatever order."""

from __future__ import annotations

import datetime
import random
import re
from typing import Any

import pytest

from sheetfuncs.workbook.model.parts import Table
from sheetfuncs.workbook.model.rows import Rows
from sheetfuncs.workbook.season import Season

ROWS = Rows(collections=10, boils=6, happenings=4, waiting=20, batches=2, readings=4, bottlings=2, days=4, trees=2,
            past=2, words=2)  # fmt: skip
TODAY = datetime.date(2026, 4, 1)
SHEETS = ("Collection", "Boil", "Storage")
# What no sentence may hold: an error, a nothing that is called a number, a number that only a machine writes.
NEVER = re.compile(r"#|\b0\.00? |\b0 °Brix|e\+|-0\.0|  ")
ODD_NAMES = (
    "b1 , B2",
    "B1;b2",
    "B1 and all sap",
    "All Sap",
    "tub",
    "R1 + B2",
    "b9",
    "S1, s1",
    "all",
    "12",
    ",",
    "tub;b1",
)


def test_one_fact_alone_makes_no_sum_and_no_false_sentence() -> None:
    """Each cell of each log alone in a workbook where nothing else is typed."""
    given = {"date": datetime.date(2026, 3, 7), "start": datetime.time(20), "end": datetime.time(1)}
    words = {"took": "B1", "into": "tub", "each": "quart", "what": "frozen", "lot": "B1"}
    sheets = Season("US", {}, ROWS).sheets
    for sheet in sheets:
        for table in sheet.blocks:
            if not isinstance(table, Table) or table.key not in ("collection", "boil", "happenings"):
                continue
            for column in (one for one in table.columns if one.typed):
                value: Any = words.get(column.key, "x") if column.kind.wordy else given.get(column.key, 2.0)
                season = _computed({f"{table.key}.{column.key}": [value]})
                alone = f"{table.key}.{column.key}"
                assert season.value("store.volume") == (2.0 if alone == "collection.sap" else 0), alone
                assert season.value("boil.rate") == "" and season.value("boil.lost") == "", alone
                assert (season.value("boil.volume_in"), season.value("boil.out_volume")) == ("", ""), alone


@pytest.mark.parametrize("seed", range(12))
def test_sugar_goes_nowhere(seed: int) -> None:
    """Where no strength out is measured, all syrup collected is in store, however lots were named.

    By definition: sugar stays when water leaves.
    """
    draw = random.Random(seed)  # noqa: S311 (the same every time)
    inputs = _season(draw)
    season = _computed(inputs)
    for row in range(ROWS.boils):
        if _number(season.value("boil.syrups", row)) < _number(season.value("boil.taken", row)):
            assert "It took a boil" in season.value("boil.do", row) or season.value("boil.trouble", row), inputs
            return  # it took what nobody knows, and says so
    collected = sum(_number(season.value("collection.syrup", row)) for row in range(ROWS.collections))
    lots = season.layout.spots["lots.name"].height
    waits = sum(_number(season.value("lots.syrup", row)) for row in range(lots) if season.value("lots.open", row) == 1)
    assert waits == pytest.approx(collected, abs=1e-9), inputs
    assert season.value("store.syrup") == pytest.approx(collected, abs=1e-9)


@pytest.mark.parametrize("seed", range(5))
def test_what_is_typed_bit_by_bit_is_never_false(seed: int) -> None:
    """The facts of a weekend in any order: after each there is no error and no sentence with a nothing in it."""
    draw = random.Random(100 + seed)  # noqa: S311 (the same every time)
    facts = [(name, row, value) for name, column in _season(draw, measured=True).items() if isinstance(column, list)
             for row, value in enumerate(column) if value is not None]  # fmt: skip
    draw.shuffle(facts)
    typed: dict[str, Any] = {}
    for number, (name, row, value) in enumerate(facts, 1):
        column = typed.setdefault(name, [])
        column.extend([None] * (row + 1 - len(column)))
        column[row] = value
        if number % 12 == 0 or number == len(facts):
            _computed(typed)


def _season(draw: random.Random, measured: bool = False) -> dict[str, Any]:
    """Collections and boils as somebody might type them, with blanks and odd names among them."""

    def maybe(value: Any, share: float = 0.7) -> Any:
        return value if draw.random() < share else None

    days = sorted(draw.randrange(28) for _ in range(8))
    boils = sorted(draw.randrange(28) for _ in range(5))
    found: dict[str, Any] = {
        "places.name": ["tub"],
        "places.where": ["cellar"],
        "collection.date": [datetime.date(2026, 3, 1) + datetime.timedelta(day) for day in days],
        "collection.sap": [maybe(round(draw.uniform(1, 12), 1), 0.9) for _ in days],
        "collection.into": [maybe("tub", 0.5) for _ in days],
        "collection.brix": [maybe(round(draw.uniform(1.5, 3), 1), 0.5) for _ in days],
        "boil.date": [datetime.date(2026, 3, 1) + datetime.timedelta(day) for day in boils],
        "boil.took": [maybe(draw.choice(ODD_NAMES), 0.6) for _ in boils],
        "boil.jars_out": [maybe(draw.randrange(1, 4)) for _ in boils],
        "boil.rest": [maybe(0.1, 0.4) for _ in boils],
        "boil.hours": [maybe(4, 0.6) for _ in boils],
    }
    if measured:
        found |= {
            "boil.over": [maybe(0.1, 0.3) for _ in boils],
            "boil.reading": [maybe(216, 0.5) for _ in boils],
            "boil.water": [maybe(211, 0.5) for _ in boils],
            "boil.left_brix": [maybe(30, 0.3) for _ in boils],
            "happenings.lot": [maybe(draw.choice(("B1", "S2", "b3", "R1", "x"))) for _ in range(4)],
            "happenings.what": [maybe(draw.choice(("frozen", "some used", "thrown out", "moved"))) for _ in range(4)],
            "happenings.date": [maybe(datetime.date(2026, 3, 20)) for _ in range(4)],
            "happenings.jars": [maybe(1, 0.4) for _ in range(4)],
        }
    return found


def _computed(inputs: dict[str, Any]) -> Season:
    """A season computed, with no error in it and no sentence that calls a nothing a number."""
    season = Season("US", {"weekend.today": TODAY, "yard.elevation": 700} | inputs, ROWS)
    season.compute()
    for title in SHEETS:
        for cell, value in season.values[title].items():
            assert not (isinstance(value, str) and NEVER.search(value)), (title, cell, value, inputs)
    return season


def _number(value: Any) -> float:
    return value if isinstance(value, float) else 0.0
