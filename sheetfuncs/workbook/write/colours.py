"""Colours that mean something: conditional formats, one for a column, told apart in grey by weight and slant."""

from __future__ import annotations

from xlsxwriter import Workbook
from xlsxwriter.worksheet import Worksheet

from sheetfuncs.workbook.model.layout import Layout, letters
from sheetfuncs.workbook.model.parts import WEIGHTS, Field, Sheet, Table
from sheetfuncs.workbook.write import styles


def of_table(book: Workbook, page: Worksheet, table: Table, layout: Layout, top: int) -> None:
    """What a row says of itself and its first cell in the colour of the weight; numbers that rest on a guess in
    italics; the next cell to type in."""
    columns = {column.key: layout.spots[f"{table.key}.{column.key}"].column for column in table.columns}
    last = top + table.rows - 1

    def rule(criteria: str, place: int, look: dict[str, object], ends: bool = False) -> None:
        options = {"type": "formula", "criteria": criteria, "format": book.add_format(look)}
        page.conditional_format(top, place, last, place, options | ({"stop_if_true": True} if ends else {}))

    for column in table.columns:
        place = columns[column.key]
        if column.findings:
            head = min(columns[one.key] for one in table.columns if not one.hidden)  # where a row is looked up
            which = f"${letters(columns[column.number])}{top + 1}"
            end = 0
            for weight in WEIGHTS:
                first, end = end, end + sum(finding.weight == weight for finding in column.findings)
                for of_row in (place, head):
                    rule(f"=AND({which}>{first},{which}<={end})", of_row, styles.OF_WEIGHT[weight], ends=True)
        if column.guess:
            rule(f"=N(${letters(columns[column.guess])}{top + 1})=1", place, styles.GUESS)
    begins = next((column.key for column in table.columns if column.typed and not column.hidden), None)
    if begins and any(column.findings for column in table.columns):
        here = letters(columns[begins])
        rule(f'=AND(${here}{top + 1}="",OR(ROW()={top + 1},${here}{top}<>""))', columns[begins], styles.NEXT)


def of_cell(
    book: Workbook, page: Worksheet, sheet: Sheet, field: Field, layout: Layout, place: tuple[int, int]
) -> None:
    """The colours that a labelled cell takes, the gravest first."""
    for condition, weight in field.states:
        criteria = "=" + layout.resolve(condition, sheet.title)
        look = book.add_format(styles.OF_WEIGHT[weight])
        options = {"type": "formula", "criteria": criteria, "format": look, "stop_if_true": True}
        page.conditional_format(*place, *place, options)
