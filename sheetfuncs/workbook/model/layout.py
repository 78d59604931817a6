"""Where everything stands: names of cells and columns become addresses.

Blocks without a row of their own stand under each other with a line between.  Every table
has a heading row; every block with a title has it on the line above.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from typing import NamedTuple

from sheetfuncs.workbook.model.parts import Block, Chart, Field, Fields, Sheet, Table, Text

FIRST_ROW = 3  # below the title, the purpose and a line


class Spot(NamedTuple):
    """A cell, or a column of `height` cells, of a sheet; rows and columns from 0."""

    sheet: str
    row: int
    column: int
    height: int = 1

    def address(self, seen_from: str, fixed: bool = True) -> str:
        mark = "$" if fixed else ""
        first = f"{mark}{letters(self.column)}{mark}{self.row + 1}"
        if self.height > 1:
            first += f":{mark}{letters(self.column)}{mark}{self.row + self.height}"
        return first if seen_from == self.sheet else f"{quoted(self.sheet)}!{first}"


def letters(column: int) -> str:
    """A column's letters: 0 is A."""
    text = ""
    column += 1
    while column:
        column, rest = divmod(column - 1, 26)
        text = chr(65 + rest) + text
    return text


def quoted(title: str) -> str:
    return f"'{title}'" if " " in title else title


class Layout:
    """The places of every block, labelled cell and column of a workbook."""

    def __init__(self, sheets: Sequence[Sheet]) -> None:
        self.starts: dict[tuple[str, int], int] = {}  # (sheet, number of the block) -> its first row
        self.spots: dict[str, Spot] = {}  # "table.column" or "fields.label" -> place
        self.pieces: dict[tuple[str, str, str], list[str | InRow]] = {}  # formulas taken apart
        for sheet in sheets:
            row = FIRST_ROW
            for number, block in enumerate(sheet.blocks):
                start = row if block.row is None else block.row
                self.starts[sheet.title, number] = start
                self._note(sheet.title, block, start)
                if not isinstance(block, Chart):
                    row = max(row, start + height(block) + 1)

    def _note(self, sheet: str, block: Block, start: int) -> None:
        row = first_row(block, start)
        if isinstance(block, Fields):
            for number, field in enumerate(block.fields):
                column = block.column + block.span
                self.spots[f"{block.key}.{field.key}"] = Spot(sheet, row + number, column)
                if field.beside:
                    self.spots[f"{block.key}.{field.beside.key}"] = Spot(sheet, row + number, column + 1)
        elif isinstance(block, Table):
            for number, column_of in enumerate(block.columns):
                self.spots[f"{block.key}.{column_of.key}"] = Spot(sheet, row, block.column + number, block.rows)

    def resolve(self, formula: str, sheet: str, table: Table | None = None, offset: int = 0) -> str:
        """A formula with its names replaced by addresses, as it stands in row `offset` of its table."""
        key = formula, sheet, table.key if table else ""
        if key not in self.pieces:  # taken apart once: a column has the same formula in every row
            self.pieces[key] = list(self._taken_apart(formula, sheet, table))
        return "".join(piece if isinstance(piece, str) else piece.address(offset) for piece in self.pieces[key])

    def _taken_apart(self, formula: str, sheet: str, table: Table | None) -> Iterator[str | InRow]:
        """The text of a formula, with the addresses that are the same in all rows, and the others as they follow."""
        for number, quoted_or_not in enumerate(re.split(r'("(?:[^"]|"")*")', formula)):
            if number % 2:  # text in quotes stays as it is
                yield quoted_or_not
                continue
            text = re.sub(r"@(\w+\.\w+)", lambda found: self.spots[found[1]].address(sheet), quoted_or_not)
            end = 0
            for found in re.finditer(r"\[(\w+?)([-^~]?)(\d*)\]", text):
                assert table is not None, f"{formula}: [{found[1]}] stands outside a table"
                spot = self.spots[f"{table.key}.{found[1]}"]
                yield text[end : found.start()]
                yield InRow(letters(spot.column), spot.row, found[2], int(found[3] or 1))
                end = found.end()
            yield text[end:]


class InRow(NamedTuple):
    """A column of the same table, seen from one of its rows; `mark` and `step` as in parts.py."""

    column: str
    top: int
    mark: str
    step: int

    def address(self, offset: int) -> str:
        row, column = self.top + offset + 1, self.column
        if not self.mark:
            return f"{column}{row}"
        if self.mark == "-":
            return '""' if offset < self.step else f"{column}{row - self.step}"
        if self.mark == "^":
            return f"{column}${self.top + 1}:{column}{row}"
        return f"{column}{max(self.top + 1, row - self.step)}:{column}{row}"


def first_row(block: Block, start: int) -> int:
    """The row of a block's first cell, below its title and headings."""
    title = 1 if getattr(block, "title", "") and not isinstance(block, Chart) else 0
    return start + title + (1 if isinstance(block, Table) else 0)


def height(block: Block) -> int:
    """How many rows a block takes, title included."""
    if isinstance(block, Fields):
        return first_row(block, 0) + len(block.fields)
    if isinstance(block, Table):
        return first_row(block, 0) + block.rows
    if isinstance(block, Text):
        return first_row(block, 0) + len(block.lines)
    return 0


def cells_of(field: Field) -> list[Field]:
    """A labelled cell and the one beside it, if any."""
    return [field] if field.beside is None else [field, field.beside]
