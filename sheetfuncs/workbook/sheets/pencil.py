"""Pencil log: a blank sheet of paper for the woods and the pan, with the headings of the logs; typed in later."""

from __future__ import annotations

from sheetfuncs.workbook.model.parts import Sheet, Table
from sheetfuncs.workbook.model.rows import Rows
from sheetfuncs.workbook.model.systems import Units
from sheetfuncs.workbook.sheets import boil, collection, run

LINES = {"collection": 11, "boil": 4, "run": 11}  # blank rows of each
COLUMNS = {
    "collection": ("date", "sap", "into", "brix", "note"),
    "boil": ("date", "took", "hours", "jars_out", "rest"),
    "run": ("time", "reading", "thermometer", "batch"),
}
WIDTHS = (14, 16, 18, 14, 34)


def sheet(units: Units, rows: Rows) -> Sheet:
    """What an ordinary row needs, of each log that is kept away from the computer."""
    logs = {"collection": collection.sheet(units, rows), "boil": boil.sheet(units, rows)}
    tables = {key: sheet.block(key) for key, sheet in logs.items()} | {"run": run.log(units, rows)}
    titles = {"collection": "Sap brought in", "boil": "Boils", "run": "Finishing"}
    return Sheet(
        "Pencil log",
        "Print it and hang it where the pencil is; type it into the logs at the weekend.",
        tuple(_blank(key, titles[key], table) for key, table in tables.items() if isinstance(table, Table)),
        tab="paper",
        freeze=(3, 0),
        widths=WIDTHS,
        portrait=True,
        pages=1,
        since=2,
    )


def _blank(key: str, title: str, table: Table) -> Table:
    """Some columns of a log, with rows to write on."""
    typed = {column.key: column for column in table.columns}
    columns = tuple(
        typed[name]._replace(
            formula="", choices=(), findings=(), number="", hint="", guess="", fixed=("",) * LINES[key]
        )
        for name in COLUMNS[key]
    )
    return Table(f"pencil_{key}", title, columns, LINES[key], lines=2, since=2)
