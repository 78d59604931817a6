"""An example season: a small yard in a scenario of our own, typed as its keeper would."""

from __future__ import annotations

import csv
import datetime
from importlib import resources
from typing import Any

from sheetfuncs.workbook import measures, parts
from sheetfuncs.workbook.parts import Fields, Sheet, Table

SYSTEM = "US"  # the example's own units


def inputs(sheets: list[Sheet], system: str, mistakes: bool = False) -> dict[str, Any]:
    """The example's typed cells in a unit system, by name; with mistakes, a few rows are wrong."""
    kinds = _kinds(sheets)
    found: dict[str, Any] = {}
    for row in _read("cells.csv"):
        found[row["cell"]] = _value(kinds[row["cell"]], row["value"])
    for path in sorted(resources.files(__package__).iterdir(), key=lambda path: path.name):
        table = path.name.removesuffix(".csv")
        if path.name.endswith(".csv") and table not in ("cells", "mistakes"):
            rows = _read(path.name)
            for key in rows[0]:
                name = f"{table}.{key}"
                found[name] = [_value(kinds[name], row[key]) for row in rows]
    if mistakes:
        for row in _read("mistakes.csv"):
            name, offset = row["cell"], int(row["row"])
            column = found.setdefault(name, [])
            column.extend([None] * (offset - len(column)))
            column[offset - 1] = row["value"] if row["as_text"] else _value(kinds[name], row["value"])
    return {name: _in_system(kinds[name], value, system, found) for name, value in found.items()}


def _in_system(kind: str, value: Any, system: str, found: dict[str, Any]) -> Any:
    if isinstance(value, list):
        return [_in_system(kind, one, system, found) for one in value]
    return measures.converted(kind, value, SYSTEM, system, found.get("yard.fuel", "hardwood"))


def _kinds(sheets: list[Sheet]) -> dict[str, str]:
    """The kind of every cell and column that has a name."""
    kinds: dict[str, str] = {}
    for sheet in sheets:
        for block in sheet.blocks:
            if isinstance(block, Fields):
                kinds |= {f"{block.key}.{field.key}": field.kind for field in block.fields}
            elif isinstance(block, Table):
                kinds |= {f"{block.key}.{column.key}": column.kind for column in block.columns}
    return kinds


def _read(name: str) -> list[dict[str, str]]:
    text = resources.files(__package__).joinpath(name).read_text(encoding="utf-8")
    return list(csv.DictReader(text.splitlines()))


def _value(kind: str, text: str) -> Any:
    """A cell of the example's files as its kind wants it."""
    if text == "":
        return None
    if kind == parts.DATE:
        return datetime.date.fromisoformat(text)
    if kind == parts.TIME:
        return datetime.time.fromisoformat(text)
    if kind in (parts.TEXT, parts.WORDS):
        return text
    return float(text)
