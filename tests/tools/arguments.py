"""Arguments for any function of the catalogue, made from its card."""

from __future__ import annotations

from typing import Any

from sheetfuncs.formulas.card import Card
from sheetfuncs.formulas.catalogue import CATALOGUE
from sheetfuncs.formulas.quantities import SYSTEMS

# Every function with each unit system it knows.
FACES = [
    (function.card, system)
    for function in CATALOGUE.values()
    for system in (SYSTEMS if function.card.units else SYSTEMS[:1])
]


def example(card: Card, system: str) -> tuple[Any, ...]:
    """The arguments of the card's example, in a unit system; with `units` where the function takes it."""
    return with_units(card, list(card.example_in(system)), system)


def with_units(card: Card, values: list[Any], system: str) -> tuple[Any, ...]:
    return (*values, system) if card.units else tuple(values)


def replaced(given: tuple[Any, ...], position: int, value: Any) -> tuple[Any, ...]:
    return (*given[:position], value, *given[position + 1 :])
