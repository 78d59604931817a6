"""An example season: a small yard in a scenario of our own, typed as its keeper would."""

from __future__ import annotations

import csv
from importlib import resources
from typing import Any

from sheetfuncs.workbook.model import measures
from sheetfuncs.workbook.model.kinds import Kind
from sheetfuncs.workbook.model.parts import Sheet, named

SYSTEM = "US"  # the example's own units


def inputs(sheets: list[Sheet], system: str, mistakes: bool = False) -> dict[str, Any]:
    """The example's typed cells in a unit system, by name; with mistakes, a few rows are wrong."""
    cells = named(sheets)
    found: dict[str, Any] = {}
    for row in _read("cells.csv"):
        found[row["cell"]] = _value(cells[row["cell"]].kind, row["value"])
    for path in sorted(resources.files(__package__).iterdir(), key=lambda path: path.name):
        table = path.name.removesuffix(".csv")
        if path.name.endswith(".csv") and table not in ("cells", "mistakes"):
            rows = _read(path.name)
            for key in rows[0]:
                name = f"{table}.{key}"
                found[name] = [_value(cells[name].kind, row[key]) for row in rows]
    if mistakes:
        for row in _read("mistakes.csv"):
            name, offset = row["cell"], int(row["row"])
            column = found.setdefault(name, [])
            column.extend([None] * (offset - len(column)))
            column[offset - 1] = row["value"] if row["as_text"] else _value(cells[name].kind, row["value"])
    return measures.all_converted(cells, found, SYSTEM, system)


def _read(name: str) -> list[dict[str, str]]:
    text = resources.files(__package__).joinpath(name).read_text(encoding="utf-8")
    return list(csv.DictReader(text.splitlines()))


def _value(kind: Kind, text: str) -> Any:
    """A cell of the example's files as its kind wants it."""
    return kind.from_text(text) if text else None
