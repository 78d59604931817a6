"""Typed values in another unit system: by the kind of their cell."""

from __future__ import annotations

import math
from collections.abc import Mapping
from decimal import Decimal
from typing import Any

from sheetfuncs.formulas.fuels import FUELS
from sheetfuncs.formulas.quantities import SYSTEMS
from sheetfuncs.workbook.model.kinds import FUEL, FUEL_PRICE, Kind
from sheetfuncs.workbook.model.parts import Column, Field

MOST_DECIMALS = 8


def converted(kind: Kind, value: Any, source: str, target: str, fuel: str = "hardwood") -> Any:
    """A typed value of a workbook in one unit system, as it reads in another.

    It has the fewest decimals, from what an instrument shows on, that lead back to the value: so
    nothing drifts, however often a workbook is converted.
    """
    if source == target or isinstance(value, (bool, str)) or not isinstance(value, (int, float)):
        return value
    if kind.decimals is None or not math.isfinite(there := _exactly(kind, value, source, target, fuel)):
        return value
    shows = dict(zip(SYSTEMS, kind.decimals, strict=True))
    own = max(shows[source], min(_decimals(value), MOST_DECIMALS))
    for decimals in range(shows[target], MOST_DECIMALS):
        shown = round(there, decimals)
        if round(_exactly(kind, shown, target, source, fuel), own) == round(value, own):
            return shown
    return round(there, MOST_DECIMALS)


def all_converted(
    cells: Mapping[str, Column | Field], inputs: Mapping[str, Any], source: str, target: str
) -> dict[str, Any]:
    """All typed cells of a workbook, by name, in another unit system."""
    if source == target:
        return dict(inputs)
    fuel = str(inputs.get("yard.fuel") or "hardwood")

    def one(name: str, value: Any) -> Any:
        if isinstance(value, list):
            return [one(name, each) for each in value]
        return converted(cells[name].kind, value, source, target, fuel)

    return {name: one(name, value) for name, value in inputs.items()}


def _exactly(kind: Kind, value: float, source: str, target: str, fuel: str) -> float:
    if kind is FUEL_PRICE:
        source, target = target, source  # of a larger unit there is less, and one costs more
    fuel = " ".join(fuel.split()).casefold()
    quantity = (FUELS[fuel].counted_in if fuel in FUELS else None) if kind in (FUEL, FUEL_PRICE) else kind.quantity
    if quantity is None:
        return value
    return float(quantity.unit(target).out_of_si(quantity.unit(source).into_si(value)))


def _decimals(value: float) -> int:
    exponent = Decimal(repr(value)).normalize().as_tuple().exponent
    return max(0, -exponent) if isinstance(exponent, int) else 0
