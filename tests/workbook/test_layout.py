"""Where things stand on the sheets: each in a place of its own, under words of its own."""

from __future__ import annotations

import re
from collections import Counter, defaultdict

import pytest

from sheetfuncs.workbook.model.layout import MARK
from sheetfuncs.workbook.model.parts import Fields, Table
from sheetfuncs.workbook.model.rows import Rows
from sheetfuncs.workbook.read.page import same
from sheetfuncs.workbook.season import Season
from sheetfuncs.workbook.sheets.phrases import LOOK
from tests.tools.edits import SMALL

SYSTEMS = ("US", "metric")
SIZES = {"small": SMALL, "usual": Rows()}
PHONE = 390  # pixels of a phone's screen
# What an ordinary row of each log needs typed.
ORDINARY = {
    "collection": ("date", "sap", "into"),
    "boil": ("date", "took", "hours", "jars_out"),
    "happenings": ("lot", "what", "date"),
    "batches": ("date", "goes_in", "thermometer"),
    "run": ("time", "reading"),
    "bottles": ("batch", "date", "jar", "filled"),
    "weather": ("date", "low", "high"),
    "waiting": (),
}


@pytest.mark.parametrize("rows", SIZES.values(), ids=SIZES)
@pytest.mark.parametrize("system", SYSTEMS)
def test_no_two_cells_stand_in_one_place(system: str, rows: Rows) -> None:
    taken: dict[tuple[str, int, int], list[str]] = defaultdict(list)
    season = Season(system, {}, rows)
    for name, spot in season.layout.spots.items():
        for row in range(spot.row, spot.row + spot.height):
            taken[spot.sheet, row, spot.column].append(name)
    for sheet in season.sheets:
        for block in sheet.blocks:
            if isinstance(block, Table):
                for name in (f"{block.key}.{column.key}" for column in block.columns):
                    spot = season.layout.spots[name]
                    taken[spot.sheet, spot.row - 1, spot.column].append(f"heading of {name}")
    assert {place: names for place, names in taken.items() if len(names) > 1} == {}


@pytest.mark.parametrize("system", SYSTEMS)
def test_headings_are_told_apart_and_carry_their_unit(system: str) -> None:
    season = Season(system, {}, SMALL)
    for sheet in season.sheets:
        for block in sheet.blocks:
            words = [one.title(season.units) for one in block.columns] if isinstance(block, Table) else []
            words = [one.label for one in block.fields if one.label] if isinstance(block, Fields) else words
            twice = [text for text, times in Counter(map(same, words)).items() if times > 1]
            assert not twice, f"{sheet.title}, {getattr(block, 'key', '')}"
            assert all(words), f"{sheet.title}, {getattr(block, 'key', '')}"


@pytest.mark.parametrize("system", SYSTEMS)
def test_headings_of_tables_side_by_side_are_told_apart(system: str) -> None:
    season = Season(system, {}, SMALL)
    for sheet in season.sheets:
        rows: dict[tuple[int, str], list[str]] = defaultdict(list)
        for block in sheet.blocks:
            if isinstance(block, Table):
                for column in block.columns:
                    name = f"{block.key}.{column.key}"
                    rows[season.layout.spots[name].row, same(column.title(season.units))].append(name)
        assert {words: names for words, names in rows.items() if len(names) > 1} == {}


@pytest.mark.parametrize("system", SYSTEMS)
def test_no_word_of_a_heading_is_broken(system: str) -> None:
    """A width counts digits; letters are as wide, by and large."""
    season = Season(system, {})
    broken = []
    for sheet in season.sheets:
        widths = season.layout.widths(sheet)
        for table in (block for block in sheet.blocks if isinstance(block, Table)):
            for column in (column for column in table.columns if not column.hidden):
                width = widths[season.layout.spots[f"{table.key}.{column.key}"].column][0]
                words = re.split(r"(?<=-)| ", column.title(season.units))
                broken += [(sheet.title, column.key, word, width) for word in words if len(word) > width]
    assert broken == []


def test_every_block_has_a_mark() -> None:
    season = Season("US", {}, SMALL)
    blocks = [block for sheet in season.pages for block in sheet.blocks]
    keys = [block.key for block in blocks if isinstance(block, Fields | Table)]
    assert [name for name, _ in season.layout.marks()] == [MARK + key for key in keys]
    assert len(set(keys)) == len(keys)


@pytest.mark.parametrize("table", ORDINARY)
@pytest.mark.parametrize("system", SYSTEMS)
def test_what_an_ordinary_row_needs_and_its_answer_fit_a_phone(table: str, system: str) -> None:
    """At 7 pixels a character and 5 a column, as wide as they are written."""
    season = Season(system, {}, Rows())
    answer = season.layout.spots[f"{table}.{_answer(season, table)}"]
    sheet = next(one for one in season.sheets if one.title == answer.sheet)
    widths = season.layout.widths(sheet)
    needed = [season.layout.spots[f"{table}.{key}"].column for key in ORDINARY[table]]
    shown = range(max([*needed, answer.column]) + 1)
    assert sum(7 * widths[column][0] + 5 for column in shown) <= PHONE
    assert not any(widths[column][1] for column in shown)


def _answer(season: Season, table: str) -> str:
    """The column that answers a row."""
    return next(key for key in (LOOK, "do", "say") if f"{table}.{key}" in season.cells)
