"""The sheets of a season workbook, each a module that turns units and row counts into data."""

from __future__ import annotations

from sheetfuncs.workbook.parts import Rows, Sheet, Units
from sheetfuncs.workbook.sheets import (
    boil,
    bottles,
    collection,
    finish,
    forecast,
    guide,
    season,
    storage,
    wall_card,
    weekend,
    yard,
)

IN_ORDER = (weekend, yard, forecast, collection, storage, boil, finish, bottles, season, wall_card, guide)


def all_sheets(units: Units, rows: Rows) -> list[Sheet]:
    """Every sheet of a workbook, in order."""
    return [module.sheet(units, rows) for module in IN_ORDER]
