"""A season workbook that was filled in by hand, read back: its inputs, and what in it is not ours."""

from __future__ import annotations

import datetime
from collections.abc import Iterator
from pathlib import Path
from typing import Any, NamedTuple

from sheetfuncs.files import Refused
from sheetfuncs.formulas.catalogue import CATALOGUE
from sheetfuncs.formulas.quantities import SYSTEMS
from sheetfuncs.workbook.model.kinds import named, typed
from sheetfuncs.workbook.model.layout import Layout, letters
from sheetfuncs.workbook.model.parts import Rows, Units
from sheetfuncs.workbook.read import xlsx as reader
from sheetfuncs.workbook.read.contents import At, Cell, Contents
from sheetfuncs.workbook.read.places import Found, Gone, known_words, same
from sheetfuncs.workbook.season import FORMAT, STAMP_EDITION, STAMP_FORMAT, STAMP_UNITS, TODAY, Season
from sheetfuncs.workbook.sheets import all_sheets

MOST_BATCHES = 40
EMPTY = Cell(None)
PASSED_OVER = ("xlwings.conf",)  # sheets of programs, with nothing of the season

# The tables that each number of rows belongs to; those of the readings end in the number of their batch.
TABLES = {
    "collections": "collection",
    "lots": "storage",
    "boils": "boil",
    "readings": "readings",
    "bottlings": "bottles",
    "thermometers": "thermometers",
    "pans": "pans",
    "containers": "containers",
    "jars": "jars",
    "trees": "trees",
    "past": "past",
}


class Own(NamedTuple):
    """A filled cell that is none of ours."""

    sheet: str
    at: At
    value: Any


class Filled:
    """A workbook read back; `season` holds its inputs, not yet computed."""

    def __init__(self, path: Path, today: datetime.date | None = None) -> None:
        self.path = path
        self.contents = reader.read(path)
        _refuse_newer(path, self.contents)
        self.system = _system(self.contents)
        self.edition = _edition(self.contents)
        units = Units(self.system)
        rows = Rows(batches=_batches(self.contents, units))
        sheets = all_sheets(units, rows)
        self.found = Found(self.contents, sheets, Layout(sheets))
        if len(self.found.cells) * 4 < len(self.found.layout.spots):
            raise Refused(f"{path}: not a season workbook; give one that `sheetfuncs new` wrote")
        self.rows = self._rows(rows)
        sheets = all_sheets(units, self.rows)
        self.cells, self.layout = named(sheets), Layout(sheets)
        self.season = Season(self.system, self._inputs(), self.rows, today)

    def _rows(self, rows: Rows) -> Rows:
        lengths: dict[str, int] = {}
        for name, spots in self.found.cells.items():
            table = name.partition(".")[0].rstrip("0123456789")
            lengths[table] = max(len(spots), lengths.get(table, 0))
        return rows._replace(**{key: lengths[table] for key, table in TABLES.items() if lengths.get(table)})

    def _inputs(self) -> dict[str, Any]:
        found: dict[str, Any] = {}
        for name, what in self.cells.items():
            spots = self.spots(name)
            if not spots or not (what.typed or name == TODAY):
                continue
            values = [typed(what.kind, self.cell(name, offset).value) for offset in range(len(spots))]
            if name == TODAY:
                if values[0] is not None and not self.cell(name).formula:
                    found[name] = values[0]
            elif self.is_table(name):
                while values and values[-1] is None:
                    values.pop()
                found[name] = values
            else:
                found[name] = values[0]
        return found

    def is_table(self, name: str) -> bool:
        """Whether a name is a column's."""
        return hasattr(self.cells[name], "heading")

    def spots(self, name: str) -> list[At | None]:
        """The cells of a name in the file, as many as the season has."""
        return self.found.cells.get(name, [])[: self.layout.spots[name].height]

    def at(self, name: str, offset: int = 0) -> At | None:
        """Where a cell stands in the file, if it is there."""
        spots = self.found.cells.get(name, ())
        return spots[offset] if offset < min(len(spots), self.layout.spots[name].height) else None

    def sheet_of(self, name: str) -> str:
        """The title in the file of the sheet that a cell is on."""
        title = self.layout.spots[name].sheet
        return self.found.titles.get(title, title)

    def cell(self, name: str, offset: int = 0) -> Cell:
        """A cell as it stands in the file."""
        at = self.at(name, offset)
        return self.contents.sheets[self.sheet_of(name)].get(at, EMPTY) if at else EMPTY

    def place(self, name: str, offset: int = 0) -> tuple[str, str]:
        """Where a cell stands in the file: sheet and address."""
        at = self.at(name, offset)
        return self.sheet_of(name), address(at) if at else ""

    def gone(self) -> Iterator[Gone]:
        """What of ours is not where it belongs."""
        for one in self.found.gone:
            yield one._replace(sheet=self.found.titles.get(one.sheet, one.sheet))

    def has_values(self) -> bool:
        """Whether formulas have their values stored with them."""
        return any(
            cell.formula and cell.value is not None
            for cells in self.contents.sheets.values()
            for cell in cells.values()
        )

    def own_sheets(self) -> list[str]:
        """Sheets that are none of ours."""
        ours = {*self.found.titles.values(), *PASSED_OVER}
        return [title for title, cells in self.contents.sheets.items() if title not in ours and cells]

    def own_cells(self) -> Iterator[Own]:
        """Cells on our sheets that hold nothing of ours: added columns, remarks beside or below."""
        taken: dict[str, set[At | None]] = {title: set() for title in self.found.titles}
        for name in self.found.cells:
            taken[self.layout.spots[name].sheet].update(self.spots(name))
        for sheet in self.season.sheets:
            title = self.found.titles.get(sheet.title)
            if title is None:
                continue
            words = set(known_words(sheet))
            for at, cell in sorted(self.contents.sheets[title].items()):
                ours = at in taken[sheet.title] or (not cell.formula and same(cell.value) in words)
                if not ours and (value := plain(cell)) not in (None, ""):
                    yield Own(title, at, value)


def plain(cell: Cell) -> Any:
    """A cell as a plain value: what a formula gave when it was stored, else its text."""
    return f"={cell.formula}" if cell.formula and cell.value is None else cell.value


def address(at: At) -> str:
    """A cell's address: (0, 0) is A1."""
    return f"{letters(at[1])}{at[0] + 1}"


def _system(contents: Contents) -> str:
    """The workbook's unit system: its own stamp, else the symbols in its headings."""
    stamp = contents.properties.get(STAMP_UNITS, "")
    if stamp in SYSTEMS:
        return stamp
    said = {same(cell.value) for cells in contents.sheets.values() for cell in cells.values() if not cell.formula}
    words = {system: {*_all_words(system)} for system in SYSTEMS}
    return max(SYSTEMS, key=lambda system: len(words[system] & said))


def _all_words(system: str) -> Iterator[str]:
    for sheet in all_sheets(Units(system), Rows()):
        yield from known_words(sheet)


def _batches(contents: Contents, units: Units) -> int:
    """How many batches the workbook has room for: the last whose title it says."""
    said = {same(cell.value) for cells in contents.sheets.values() for cell in cells.values() if not cell.formula}
    blocks = [block for sheet in all_sheets(units, Rows(batches=MOST_BATCHES)) for block in sheet.blocks]
    titles = {getattr(block, "key", ""): same(block.title) for block in blocks}
    there = [number for number in range(1, MOST_BATCHES + 1) if titles[f"batch{number}"] in said]
    return max(there, default=Rows().batches)


def _edition(contents: Contents) -> str:
    """The workbook's edition: its own stamp, else what its formulas are made of."""
    stamp = contents.properties.get(STAMP_EDITION, "")
    if stamp in ("carried", "inline", "linked"):
        return stamp
    if any(name in contents.names for name in CATALOGUE):
        return "carried"
    formulas = (cell.formula for cells in contents.sheets.values() for cell in cells.values() if cell.formula)
    return "inline" if any("LET(" in formula for formula in formulas) else "linked"


def _refuse_newer(path: Path, contents: Contents) -> None:
    stamp = contents.properties.get(STAMP_FORMAT, "")
    if stamp.isdecimal() and int(stamp) > int(FORMAT):
        raise Refused(f"{path}: made by a newer sheetfuncs (format {stamp}, this one knows {FORMAT}); update it")
