"""No cell depends on itself, by whatever way: engines differ in what they do with a circle."""

from __future__ import annotations

import re
from collections.abc import Iterator

import pytest

from sheetfuncs.workbook.model.layout import letters
from sheetfuncs.workbook.model.parts import Fields, Table, cells_of
from sheetfuncs.workbook.model.rows import Rows
from sheetfuncs.workbook.read.page import number
from sheetfuncs.workbook.season import Season

ROWS = Rows(collections=3, boils=3, happenings=3, waiting=4, batches=3, readings=4, bottlings=2, days=3, trees=2,
            places=2, past=2, words=2)  # fmt: skip
TEXT = re.compile(r'"(?:[^"]|"")*"')
REFERENCE = re.compile(r"(?:'([^']+)'!|(\w+)!)?\$?([A-Z]{1,3})\$?(\d+)(?::\$?([A-Z]{1,3})\$?(\d+))?(?![\w(])")
Cell = tuple[str, int, int]


def formulas(season: Season) -> Iterator[tuple[Cell, str]]:
    """Every computed cell with its formula, in addresses."""
    for sheet in season.sheets:
        for block in sheet.blocks:
            if isinstance(block, Fields):
                for field in (cell for one in block.fields for cell in cells_of(one) if cell.formula):
                    spot = season.layout.spots[f"{block.key}.{field.key}"]
                    yield (sheet.title, spot.row, spot.column), season.layout.resolve(field.formula, sheet.title)
            elif isinstance(block, Table):
                for column in (one for one in block.columns if one.formula):
                    spot = season.layout.spots[f"{block.key}.{column.key}"]
                    for row in range(block.rows):
                        text = column.formula if isinstance(column.formula, str) else column.formula[row]
                        resolved = season.layout.resolve(text, sheet.title, block, row)
                        yield (sheet.title, spot.row + row, spot.column), resolved


def referred(text: str, sheet: str) -> Iterator[Cell]:
    """The cells that a formula names."""
    for found in REFERENCE.finditer(TEXT.sub('""', text)):
        title = found[1] or found[2] or sheet
        rows = int(found[4]) - 1, int(found[6] or found[4]) - 1
        columns = number(found[3]), number(found[5] or found[3])
        for row in range(rows[0], rows[1] + 1):
            for column in range(columns[0], columns[1] + 1):
                yield title, row, column


@pytest.mark.parametrize("system", ["US", "metric"])
def test_no_cell_depends_on_itself(system: str) -> None:
    season = Season(system, {}, ROWS)
    names = {
        (spot.sheet, spot.row + offset, spot.column): name
        for name, spot in season.layout.spots.items()
        for offset in range(spot.height)
    }
    needs = {cell: set(referred(text, cell[0])) for cell, text in formulas(season)}
    assert len(needs) > 1000
    assert circle(needs, names) == []


def circle(needs: dict[Cell, set[Cell]], names: dict[Cell, str]) -> list[str]:
    """The names along the first circle that is found."""
    done: set[Cell] = set()
    for start in needs:
        path: list[Cell] = []
        on_path: set[Cell] = set()
        stack: list[tuple[Cell, Iterator[Cell]]] = [(start, iter(needs[start]))] if start not in done else []
        while stack:
            cell, rest = stack[-1]
            if cell not in on_path:
                path.append(cell)
                on_path.add(cell)
            following = next((one for one in rest if one in needs and one not in done), None)
            if following is None:
                stack.pop()
                done.add(path.pop())
                on_path.discard(cell)
            elif following in on_path:
                return [
                    f"{names[one]} ({one[0]}!{letters(one[2])}{one[1] + 1})" for one in path[path.index(following) :]
                ]
            else:
                stack.append((following, iter(needs[following])))
    return []


def test_a_circle_is_found() -> None:
    one, two = ("S", 0, 0), ("S", 0, 1)
    assert len(circle({one: {two}, two: {one}}, {one: "a", two: "b"})) == 2
