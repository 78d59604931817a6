"""The sheets of a season workbook, each a module that turns units and row counts into data."""

from __future__ import annotations

from collections.abc import Sequence

from sheetfuncs.workbook.model.parts import Sheet
from sheetfuncs.workbook.model.rows import Rows
from sheetfuncs.workbook.model.systems import Units
from sheetfuncs.workbook.sheets import (
    batch_card,
    batches,
    boil,
    bottles,
    charts,
    collection,
    finish,
    guide,
    labels,
    newcomer,
    pencil,
    season,
    storage,
    wall_card,
    weather,
    weekend,
    yard,
)

IN_ORDER = (
    *(weekend, yard, weather, collection, boil, storage, batches, finish, bottles, season, charts),
    *(wall_card, batch_card, pencil, labels, guide),
)


def all_sheets(units: Units, rows: Rows, newcomer_page: Sequence[tuple[str, Sequence[str]]] = ()) -> list[Sheet]:
    """Every sheet of a workbook, in order; with a page for a newcomer, that and the Guide come first."""
    found = [module.sheet(units, rows) for module in IN_ORDER]
    if newcomer_page:
        found = [newcomer.sheet(newcomer_page), found.pop(), *found]
    return found
