"""Where things stand is certain: nothing that is typed, put in, copied or deleted moves a block, or it is said."""

from __future__ import annotations

import random
import subprocess
from collections.abc import Callable, Iterator, Mapping
from pathlib import Path
from typing import Any

import openpyxl
import pytest

from sheetfuncs.workbook.commands.check import stored
from sheetfuncs.workbook.model.layout import MARK, Layout, letters
from sheetfuncs.workbook.model.parts import Column, Field, Fields, Table, Text, named
from sheetfuncs.workbook.model.rows import Rows
from sheetfuncs.workbook.model.systems import Units
from sheetfuncs.workbook.read import file
from sheetfuncs.workbook.read.contents import At, Cell, Contents
from sheetfuncs.workbook.read.filled import Filled, address
from sheetfuncs.workbook.read.page import Mark, marks
from sheetfuncs.workbook.read.places import Found, Place
from sheetfuncs.workbook.season import FORMAT, TODAY
from sheetfuncs.workbook.sheets import all_sheets
from tests.tools import office
from tests.tools.calc_office import Office
from tests.tools.edits import Written, with_openpyxl

pytestmark = pytest.mark.xdist_group("LibreOffice")

US = Units("US")
SHEETS = all_sheets(US, Rows())
LAYOUT, CELLS = Layout(SHEETS), named(SHEETS)
TITLES = [sheet.title for sheet in SHEETS]
MARKED = pytest.mark.parametrize("marked", [True, False], ids=["with marks", "without marks"])
Cells = dict[str, dict[At, Cell]]


@pytest.fixture(scope="module")
def contents(written: Written) -> Contents:
    return file.read(written())


def without_marks(contents: Contents) -> Contents:
    return contents._replace(names={name: body for name, body in contents.names.items() if not name.startswith(MARK)})


def found(contents: Contents, title: str = "") -> Found:
    """Where things stand, on all sheets or on one: what is typed into one moves nothing on others."""
    return Found(contents, [sheet for sheet in SHEETS if title in ("", sheet.title)], LAYOUT, US, FORMAT)


def edited(contents: Contents, edits: Mapping[Place, Cell | None]) -> Contents:
    """Contents with some cells changed; None deletes one."""
    changed: Cells = {place.sheet: dict(contents.sheets[place.sheet]) for place in edits}
    for place, cell in edits.items():
        changed[place.sheet].pop(place.at, None)
        if cell is not None:
            changed[place.sheet][place.at] = cell
    return contents._replace(sheets={**contents.sheets, **changed})


def words_of(title: str) -> list[str]:
    """Every title, heading and label of a sheet."""
    sheet = next(sheet for sheet in SHEETS if sheet.title == title)
    words = [sheet.title]
    for block in sheet.blocks:
        words.append(block.title)
        if isinstance(block, Fields):
            words += [field.label for field in block.fields]
        elif isinstance(block, Table):
            words += [column.title(US) for column in block.columns]
        elif isinstance(block, Text):
            words += block.lines[:2]
    return [word for word in dict.fromkeys(words) if word.strip()]


def of_sheet(title: str) -> dict[str, Column | Field]:
    """The cells and columns of a sheet by their names."""
    return named([sheet for sheet in SHEETS if sheet.title == title])


def text_cells(title: str, at: Found) -> Iterator[list[Place]]:
    """The cells of a sheet where words may be typed, a column at a time."""
    for name, what in of_sheet(title).items():
        if what.typed:
            yield [place for place in at.cells[name] if place]


@MARKED
@pytest.mark.parametrize("title", TITLES)
def test_our_own_words_typed_into_any_cell_move_nothing(title: str, marked: bool, contents: Contents) -> None:
    """Every title, heading and label of the sheet in every cell for typing, many at once."""
    base = contents if marked else without_marks(contents)
    at = found(base, title)
    columns = list(text_cells(title, at))
    if not columns:
        return
    words, dice = words_of(title), random.Random(title)  # noqa: S311 (a die)
    for turn in range(len(words)):
        edits: dict[Place, Cell | None] = {}
        for number, places in enumerate(columns):
            some = places if len(places) == 1 else dice.sample(places, max(1, len(places) // 4))
            for step, place in enumerate(some):
                edits[place] = Cell(words[(turn + number + step) % len(words)])
        again = found(edited(base, edits), title)
        assert moved(at, again) == {}, [words[turn]]
        assert [one for one in again.gone if not one.doubtful] == []


def moved(before: Found, after: Found) -> dict[str, Any]:
    """What does not stand where it stood, but for rows that came into use."""
    return {
        name: places[:3] for name, places in before.cells.items() if after.cells.get(name, [])[: len(places)] != places
    }


@MARKED
@pytest.mark.parametrize("title", TITLES)
def test_each_computed_cell_typed_over_or_deleted_moves_nothing(title: str, marked: bool, contents: Contents) -> None:
    base = contents if marked else without_marks(contents)
    at = found(base, title)
    for number, places in enumerate(computed_cells(title, at)):
        for cell in (Cell(0.75), None) if len(places) == 1 else ((Cell(0.75), None)[number % 2],):
            again = found(edited(base, {places[min(1, len(places) - 1)]: cell}), title)
            assert moved(at, again) == {}
            assert again.gone == []


@MARKED
@pytest.mark.parametrize("title", TITLES)
def test_all_formulas_of_a_sheet_typed_over_or_deleted_move_nothing(
    title: str, marked: bool, contents: Contents
) -> None:
    base = contents if marked else without_marks(contents)
    at = found(base)
    formulas = [place for places in computed_cells(title, at) for place in places]
    labelled = [name for name, what in CELLS.items() if isinstance(what, Field) and LAYOUT.spots[name].sheet == title]
    for cell in (Cell(0.75), None):
        again = found(edited(base, dict.fromkeys(formulas, cell)))
        assert {name: again.cells[name] for name in labelled} == {name: at.cells[name] for name in labelled}
        assert again.gone == []
        for before, after in zip(text_cells(title, at), text_cells(title, again), strict=True):
            filled = [place for place in before if place.at in base.sheets[place.sheet]]
            assert [place for place in after if place.at in base.sheets[place.sheet]] == filled


def computed_cells(title: str, at: Found) -> Iterator[list[Place]]:
    """The computed cells of a sheet, a column at a time; not those that number their rows."""
    for name, what in of_sheet(title).items():
        if what.formula and not getattr(what, "numbers", False) and name != TODAY:
            yield [place for place in at.cells[name] if place]


@pytest.mark.parametrize("title", TITLES)
def test_a_formula_typed_over_is_named_and_only_it(title: str, contents: Contents) -> None:
    at = found(contents)
    for number, places in enumerate(computed_cells(title, at)):
        if number % 5 and len(places) > 1:  # a row of each fifth column; every labelled cell
            continue
        place = places[number % min(3, len(places))]
        filled = Filled(edited(contents, {place: Cell(0.75)}))
        said = [(one.sheet, one.cell) for one in stored.of_formulas(filled)]
        assert said == [(place.sheet, address(place.at))]


def test_a_backup_copy_never_wins(contents: Contents) -> None:
    """A sheet copied, the original renamed: the one that the others reckon with is read, and the copy is told."""
    for marked in (True, False):
        base = contents if marked else without_marks(contents)
        at = found(base)
        for title in ("Collection", "Boil", "Yard", "Storage"):
            for copied in (f"{title} old", title):
                again = found(with_copy(base, title, copied, f"{title} 2026"))
                assert again.titles[title] == f"{title} 2026"
                there = {name: [place and place.at for place in places] for name, places in again.cells.items()}
                assert there == {name: [place and place.at for place in places] for name, places in at.cells.items()}
                assert [(one.sheet, one.doubtful) for one in again.gone] == [(copied, True)]


def with_copy(contents: Contents, title: str, copied: str, renamed: str) -> Contents:
    """A sheet copied under one name and renamed itself, with what refers to it."""

    def refers(text: str) -> str:
        return text.replace(f"={title}!", f"='{renamed}'!").replace(f"{title}!", f"'{renamed}'!")

    sheets: Cells = {}
    for other, cells in contents.sheets.items():
        if other == title:
            sheets[copied] = dict(cells)
            sheets[renamed] = dict(cells)
        else:
            sheets[other] = {at: cell._replace(formula=refers(cell.formula)) for at, cell in cells.items()}
    names = {
        name: body.replace(f"{title}!", f"'{renamed}'!") if name.startswith(MARK) else body
        for name, body in contents.names.items()
    }
    return contents._replace(sheets=sheets, names=names)


@MARKED
def test_lines_put_in_above_and_our_words_as_names(marked: bool, contents: Contents) -> None:
    """Six lines at the top of Yard, and a place that is called like a block, a tree, a pan."""
    base = contents if marked else without_marks(contents)
    at = found(base)
    for words in ("Jars", "Trees", "Where sap and jars are kept", "Pans and pots", "Name", "Fuel"):
        for name in ("places.name", "trees.name", "jars.name", "pans.name", "yard.name"):
            place = at.cells[name][min(2, len(at.cells[name]) - 1)]
            assert place
            lowered = put_in(edited(base, {place: Cell(words)}), "Yard", 6)
            again = found(lowered)
            here = {
                name: [place and (place.at[0] + 6 * (place.sheet == "Yard"), place.at[1]) for place in places]
                for name, places in at.cells.items()
            }
            assert {name: [one and one.at for one in places] for name, places in again.cells.items()} == here
            assert again.gone == []


def put_in(contents: Contents, title: str, lines: int) -> Contents:
    """Lines put in at the top of a sheet; marks move along as in a spreadsheet."""
    sheets = dict(contents.sheets)
    sheets[title] = {(row + lines, column): cell for (row, column), cell in contents.sheets[title].items()}
    names = dict(contents.names)
    for key, mark in marks(contents).items():
        if mark.sheet == title:
            corners = [f"${column}${row + 1 + lines}" for column, row in _corners(mark)]
            names[MARK + key] = f"={title}!{':'.join(corners)}"
    return contents._replace(sheets=sheets, names=names)


def _corners(mark: Any) -> Iterator[tuple[str, int]]:
    yield letters(mark.left), mark.top
    yield letters(mark.right), mark.bottom


def test_two_columns_with_one_heading_are_told(contents: Contents) -> None:
    at = found(contents)
    note = at.cells["collection.note"][0]
    look = at.cells["collection.look"][0]
    assert note and look
    heading = contents.sheets["Collection"][note.at[0] - 1, note.at[1]]
    again = found(edited(contents, {Place("Collection", (look.at[0] - 1, look.at[1])): heading}))
    assert [one.doubtful for one in again.gone if "Two columns" in one.sentence] == [True]


def rows_edited(contents: Contents, title: str, order: Callable[[int], int | None]) -> Contents:
    """A sheet whose rows went elsewhere; None is deleted."""
    cells = {}
    for (row, column), cell in contents.sheets[title].items():
        if (to := order(row)) is not None:
            cells[to, column] = cell
    return contents._replace(sheets={**contents.sheets, title: cells})


@MARKED
def test_a_row_keeps_its_number_when_others_are_deleted_or_sorted(marked: bool, contents: Contents) -> None:
    """B3 stands on jars: it stays the third boil, whatever became of the second."""
    base = contents if marked else without_marks(contents)
    inputs = Filled(base).season.inputs
    first = found(base).cells["boil.date"][0]
    assert first
    top = first.at[0]
    gone = Filled(rows_edited(base, "Boil", lambda row: None if row == top + 1 else row - (row > top + 1)))
    for key in ("date", "jars_out"):
        column = list(inputs[f"boil.{key}"])
        column[1] = None
        assert gone.season.inputs[f"boil.{key}"] == column
    turned = Filled(rows_edited(base, "Boil", lambda row: 2 * top + 4 - row if top <= row <= top + 4 else row))
    assert turned.season.inputs["boil.date"] == inputs["boil.date"]
    put = Filled(rows_edited(base, "Boil", lambda row: row + (row > top + 1)))
    assert put.season.inputs["boil.date"] == inputs["boil.date"]


def test_a_row_put_in_gets_a_number_of_its_own(contents: Contents) -> None:
    lines = found(contents).cells["boil.date"]
    first = lines[0]
    assert first
    top, column = first.at
    made = rows_edited(contents, "Boil", lambda row: row + (row > top + 1))
    filled = Filled(edited(made, {Place("Boil", (top + 2, column)): Cell(46100.0)}))
    inputs = Filled(contents).season.inputs["boil.date"]
    assert filled.season.inputs["boil.date"][: len(inputs)] == inputs
    assert len(filled.season.inputs["boil.date"]) == len(lines) + 1


def here(contents: Contents) -> dict[str, Mark]:
    return marks(contents)


def test_every_block_is_where_its_mark_is(contents: Contents) -> None:
    keys = {block.key for sheet in SHEETS for block in sheet.blocks if isinstance(block, Fields | Table)}
    assert keys <= set(marks(contents))


def test_marks_survive_openpyxl(written: Written, contents: Contents, tmp_path: Path) -> None:
    saved = with_openpyxl(written(), tmp_path / "a.xlsx", lambda book: None)
    assert here(file.read(saved)) == here(contents)


@pytest.mark.parametrize("ending", ["xlsx", "ods"])
def test_marks_survive_libreoffice(ending: str, written: Written, contents: Contents, plain_office: Office) -> None:
    office.needed()
    saved = plain_office.convert(plain_office.takes(written("US", "inline"), f"marks-{ending}.xlsx"), ending)
    assert here(file.read(saved)) == here(contents)


@pytest.mark.parametrize("ending", ["xlsx", "ods"])
def test_marks_survive_gnumeric(ending: str, written: Written, contents: Contents, tmp_path: Path) -> None:
    office.program("ssconvert")
    saved = tmp_path / f"a.{ending}"
    subprocess.run(
        ["ssconvert", str(written("US", "linked")), str(saved)], check=True, capture_output=True, timeout=300
    )
    assert here(file.read(saved)) == here(contents)
    filled = Filled(file.read(saved))
    assert [one for one in filled.gone() if not one.doubtful] == []


def test_marks_that_were_left_behind_decide_nothing(written: Written, tmp_path: Path) -> None:
    """openpyxl puts lines in without moving names along."""

    def edit(book: openpyxl.Workbook) -> None:
        for title in TITLES:
            book[title].insert_rows(1, 2)
            book[title].insert_cols(1)

    filled = Filled(file.read(with_openpyxl(written(), tmp_path / "a.xlsx", edit)))
    plain = Filled(file.read(written()))
    assert list(filled.gone()) == []
    assert filled.season.inputs == plain.season.inputs
