"""Each fact typed alone, and all of them in several orders: no sentence and no sum says what is not so."""

from __future__ import annotations

import random

import pytest

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
