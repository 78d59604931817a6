"""Where everything stands: names of cells and columns become addresses.

Blocks without a row of their own stand under each other with a line between.  Every table
has a heading row; every block with a title has it on the line above.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import chain
from typing import NamedTuple

from sheetfuncs.workbook.model import formula as formulas
from sheetfuncs.workbook.model.formula import Sort
from sheetfuncs.workbook.model.parts import Block, Chart, Fields, Sheet, Table, Text, cells_of

CHART_COLUMNS = 8  # that a chart may lie over
FIRST_ROW = 3  # below the title, the purpose and a line
WAYS = ("Weekend", "Guide")  # what every sheet leads to
MARK = "place_"  # before the names that tell where each block stands, whatever is put in or moved around it


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
        self.sheets = sheets
        self.starts: dict[tuple[str, int], int] = {}  # (sheet, number of the block) -> its first row
        self.spots: dict[str, Spot] = {}  # "table.column" or "fields.label" -> place
        self.pieces: dict[tuple[str, str, str], tuple[list[str], list[InRow]]] = {}  # formulas taken apart
        for sheet in sheets:
            row, first = FIRST_ROW, first_hidden(sheet)
            asides: list[tuple[int, int, int]] = []  # where workings stand: first row, row and column behind the last
            for number, block in enumerate(sheet.blocks):
                start = row if block.row is None else block.row
                end = start + height(block)
                aside = max([first, *(right for top, foot, right in asides if top < end and start < foot)])
                self.starts[sheet.title, number] = start
                self._note(sheet.title, block, start, aside)
                if isinstance(block, Table):
                    asides.append((start, end, aside + sum(column.hidden for column in block.columns)))
                if not isinstance(block, Chart):
                    row = max(row, end + 1)
        for sheet in sheets:
            self._check(sheet)

    def _check(self, sheet: Sheet) -> None:
        """Every formula can be read, and names only what is there."""
        for block in sheet.blocks:
            if isinstance(block, Fields):
                for field in (cell for one in block.fields for cell in cells_of(one)):
                    formulas.check(field.formula, f"{sheet.title}, {block.key}.{field.key}", self.spots)
            elif isinstance(block, Table):
                for column in block.columns:
                    where = f"{sheet.title}, {block.key}.{column.key}"
                    for text in (column.formula,) if isinstance(column.formula, str) else column.formula:
                        formulas.check(text, where, self.spots, block.key)

    def _note(self, sheet: str, block: Block, start: int, aside: int) -> None:
        row = first_row(block, start)
        if isinstance(block, Fields):
            for number, field in enumerate(block.fields):
                down, right = block.place(number)
                spot = Spot(sheet, row + down, block.column + right)
                self.spots[f"{block.key}.{field.key}"] = spot
                if field.beside:
                    self.spots[f"{block.key}.{field.beside.key}"] = spot._replace(column=spot.column + 1)
        elif isinstance(block, Table):
            shown, hidden = block.column, aside
            for column in block.columns:
                self.spots[f"{block.key}.{column.key}"] = Spot(
                    sheet, row, hidden if column.hidden else shown, block.rows
                )
                shown, hidden = shown + (not column.hidden), hidden + column.hidden

    def marks(self) -> Iterator[tuple[str, str]]:
        """A name for each block and the range it stands for: a table's headings and rows, labels with their cells."""
        for sheet in self.sheets:
            for number, block in enumerate(sheet.blocks):
                if isinstance(block, (Fields, Table)):
                    top = first_row(block, self.starts[sheet.title, number])
                    if isinstance(block, Table):
                        columns = [self.spots[f"{block.key}.{column.key}"].column for column in block.columns]
                        corners = top - 1, min(columns), top + block.rows - 1, max(columns)
                    else:
                        right = block.column + block.place(0)[1]
                        corners = top, block.column, top + block.height - 1, right
                    ends = f"${letters(corners[1])}${corners[0] + 1}:${letters(corners[3])}${corners[2] + 1}"
                    yield f"{MARK}{block.key}", f"={quoted(sheet.title)}!{ends}"

    def widths(self, sheet: Sheet) -> dict[int, tuple[float, bool]]:
        """The width of each column and whether it is hidden: the widest that a table asks for, or the sheet's list."""
        found: dict[int, tuple[float, bool]] = {}
        for block in (block for block in sheet.blocks if isinstance(block, Table)):
            for column in block.columns:
                place = self.spots[f"{block.key}.{column.key}"].column
                known, _ = found.get(place, (0, False))
                found[place] = (max(known, column.width or column.kind.width), column.hidden)
        return found | {number: (width, False) for number, width in enumerate(sheet.widths) if width}

    def resolve(self, formula: str, sheet: str, table: Table | None = None, offset: int = 0) -> str:
        """A formula with its names replaced by addresses, as it stands in row `offset` of its table."""
        texts, in_rows = self._pieces(formula, sheet, table)
        both = chain.from_iterable(zip(texts, [one.address(offset) for one in in_rows], strict=False))
        return "".join(both) + texts[-1]

    def settled(self, formula: str, table: Table) -> int:
        """The first row from which a formula is the same in every row, seen from there."""
        return max((one.settled for one in self._pieces(formula, "", table)[1]), default=0)

    def _pieces(self, formula: str, sheet: str, table: Table | None) -> tuple[list[str], list[InRow]]:
        """A formula taken apart, once: a column has the same one in every row."""
        key = formula, sheet, table.key if table else ""
        if key not in self.pieces:
            self.pieces[key] = self._taken_apart(formula, sheet, table)
        return self.pieces[key]

    def _taken_apart(self, formula: str, sheet: str, table: Table | None) -> tuple[list[str], list[InRow]]:
        """The addresses that follow the row, and the texts around them: one more, the same in every row."""
        texts, in_rows = [""], []
        for token in formulas.tokens(formula):
            if token.sort is Sort.IN_ROW:
                assert table is not None, f"{formula}: {token.text} stands outside a table"
                key, mark, step = formulas.in_row(token.text)
                spot = self.spots[f"{table.key}.{key}"]
                in_rows.append(InRow(letters(spot.column), spot.row, mark, step))
                texts.append("")
            else:
                texts[-1] += self.spots[token.name].address(sheet) if token.sort is Sort.CELL else token.text
        return texts, in_rows


class InRow(NamedTuple):
    """A column of the same table, seen from one of its rows; `mark` and `step` as in `formula`."""

    column: str
    top: int
    mark: str
    step: int

    @property
    def settled(self) -> int:
        """The first row that sees as many rows above it as every later one, or all of them."""
        return self.step if self.mark in ("-", "~") else 0

    def address(self, offset: int) -> str:
        row, column = self.top + offset + 1, self.column
        if not self.mark:
            return f"{column}{row}"
        if self.mark == "-":
            return '""' if offset < self.step else f"{column}{row - self.step}"
        if self.mark == "^":
            return f"{column}${self.top + 1}:{column}{row}"
        if self.mark == "<":
            return f"{column}${self.top}:{column}{row - 1}"
        return f"{column}{max(self.top + 1, row - self.step)}:{column}{row}"


def first_hidden(sheet: Sheet) -> int:
    """The column from which workings that are not shown stand: right of everything that is."""
    ends = [0]
    for block in sheet.blocks:
        if isinstance(block, Table):
            shown = sum(not column.hidden for column in block.columns)
            ends.append(block.column + shown if shown else 0)
        elif isinstance(block, Fields):
            ends.append(block.column + block.place(0)[1] + 3)
        else:
            ends.append(block.column + (block.across if isinstance(block, Text) else CHART_COLUMNS))
    return max(ends)


def first_row(block: Block, start: int) -> int:
    """The row of a block's first cell, below its title and headings."""
    title = 1 if getattr(block, "title", "") and not isinstance(block, Chart) else 0
    return start + title + (1 if isinstance(block, Table) else 0)


def height(block: Block) -> int:
    """How many rows a block takes, title included."""
    if isinstance(block, Fields):
        return first_row(block, 0) + block.height
    if isinstance(block, Table):
        return first_row(block, 0) + block.rows
    if isinstance(block, Text):
        return first_row(block, 0) + len(block.lines)
    return 0
