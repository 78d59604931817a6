"""The sheets of a season workbook, each a module that turns units and row counts into data."""

from __future__ import annotations

from collections.abc import Sequence

from sheetfuncs.workbook.model.parts import Rows, Sheet, Units
from sheetfuncs.workbook.sheets import (
    boil,
    bottles,
    collection,
    finish,
    forecast,
    guide,
    newcomer,
    season,
    storage,
    wall_card,
    weekend,
    yard,
)

IN_ORDER = (weekend, yard, forecast, collection, storage, boil, finish, bottles, season, wall_card, guide)


def all_sheets(units: Units, rows: Rows, newcomer_page: Sequence[tuple[str, Sequence[str]]] = ()) -> list[Sheet]:
    """Every sheet of a workbook, in order; with a page for a newcomer, that and the Guide come first."""
    found = [module.sheet(units, rows) for module in IN_ORDER]
    if newcomer_page:
        found = [newcomer.sheet(newcomer_page), found.pop(), *found]
    return found
