"""What a cell for typing accepts, what it says when it is entered, and what it says to anything else."""

from __future__ import annotations

from typing import Any

from xlsxwriter.worksheet import Worksheet

from sheetfuncs.workbook.model.layout import Layout
from sheetfuncs.workbook.model.parts import Column, Field, Sheet
from sheetfuncs.workbook.model.systems import Units
from sheetfuncs.workbook.write import limits


def validate(
    page: Worksheet, layout: Layout, units: Units, sheet: Sheet, what: Column | Field, row: int, column: int, last: int
) -> None:
    """What a cell accepts, and what it says to anything else."""
    name = what.words
    rule: dict[str, Any] = {"ignore_blank": True, "error_title": "Not this"}
    hint = what.hint if isinstance(what, Column) else ""
    if hint:
        rule |= {"input_title": name[:32], "input_message": hint[:255]}
    if what.choices:
        listed = isinstance(what.choices, str)
        source = "=" + layout.resolve(str(what.choices), sheet.title) if listed else list(what.choices)
        rule |= {"validate": "list", "source": source}
        # a list of the yard's own may be behind: warn, and let the new word stand
        rule |= {"error_type": "warning"} if listed else {}
        rule |= {"error_message": f"{name}: choose from the list."}
    else:
        own = what.kind.rule(name, what.limits, units)
        if not own and not hint:
            return
        rule |= own or {"validate": "any"}
    limits.validation(rule, f"{sheet.title}: {name}")
    page.data_validation(row, column, last, column, rule)
