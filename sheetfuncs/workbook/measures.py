"""Typed values in another unit system: by the kind of their cell."""

from __future__ import annotations

from typing import Any

from sheetfuncs.formulas import quantities
from sheetfuncs.formulas.boil import METRIC_UNITS
from sheetfuncs.workbook import parts

QUANTITY = {
    parts.VOLUME: quantities.VOLUME,
    parts.SMALL: quantities.SMALL_VOLUME,
    parts.MASS: quantities.MASS,
    parts.LENGTH: quantities.LENGTH,
    parts.AREA: quantities.AREA,
    parts.TEMPERATURE: quantities.TEMPERATURE,
    parts.DIFFERENCE: quantities.DIFFERENCE,
    parts.PRESSURE: quantities.PRESSURE,
    parts.ELEVATION: quantities.ELEVATION,
}

# Decimals kept: as fine as anyone reads, and fine enough that there and back again ends where it began.
DECIMALS = {
    parts.VOLUME: {"US": 3, "metric": 2},
    parts.SMALL: {"US": 2, "metric": 1},
    parts.LENGTH: {"US": 2, "metric": 1},
    parts.TEMPERATURE: {"US": 1, "metric": 2},
    parts.DIFFERENCE: {"US": 2, "metric": 2},
    parts.PRESSURE: {"US": 3, "metric": 1},
    parts.ELEVATION: {"US": 0, "metric": 1},
}


def converted(kind: str, value: Any, source: str, target: str, fuel: str = "hardwood") -> Any:
    """A typed value of a workbook in one unit system, as it reads in another."""
    if source == target or isinstance(value, (bool, str)) or not isinstance(value, (int, float)):
        return value
    decimals = DECIMALS.get(kind, {}).get(target, 4)
    if kind in (parts.FUEL, parts.FUEL_PRICE):
        metric_in_us = METRIC_UNITS.get(fuel, 1.0)
        larger = (kind == parts.FUEL) == (target == "metric")
        return round(value * metric_in_us if larger else value / metric_in_us, decimals)
    if kind not in QUANTITY:
        return value
    quantity = QUANTITY[kind]
    return round(quantity.unit(target).out_of_si(quantity.unit(source).into_si(value)), decimals)
