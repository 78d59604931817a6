"""A season workbook that was filled in by hand, read back: its inputs, and what in it is not ours."""

from __future__ import annotations

import datetime
from collections.abc import Iterator
from pathlib import Path
from typing import Any, NamedTuple

from sheetfuncs.files import Refused
from sheetfuncs.formulas.catalogue import CATALOGUE
from sheetfuncs.formulas.quantities import SYSTEMS
from sheetfuncs.workbook.model.editions import CARRIED, EDITIONS, INLINE, LINKED
from sheetfuncs.workbook.model.layout import MARK, Layout, letters
from sheetfuncs.workbook.model.parts import Chart, named
from sheetfuncs.workbook.model.rows import Rows
from sheetfuncs.workbook.model.systems import Units
from sheetfuncs.workbook.read import file, formats
from sheetfuncs.workbook.read.contents import At, Cell, Contents
from sheetfuncs.workbook.read.page import all_known, same
from sheetfuncs.workbook.read.places import Found, Gone, Place
from sheetfuncs.workbook.read.upgrade import Left
from sheetfuncs.workbook.season import FORMAT, STAMP_EDITION, STAMP_FORMAT, STAMP_UNITS, TODAY, Season
from sheetfuncs.workbook.sheets import functions

EMPTY = Cell(None)
NAMED = 5  # names of cells that a sentence lists
PROGRAMS = {"xlwings.conf": ("UDF Modules", "Interpreter_Win")}  # sheets of programs, and what such a one says

# The tables that each number of rows belongs to.
TABLES = {
    "collections": "collection",
    "boils": "boil",
    "happenings": "happenings",
    "waiting": "waiting",
    "batches": "batches",
    "readings": "run",
    "bottlings": "bottles",
    "days": "weather",
    "thermometers": "thermometers",
    "pans": "pans",
    "places": "places",
    "jars": "jars",
    "trees": "trees",
    "past": "past",
    "words": "words",
}
AS_LONG_AS = {"blind": "batches"}  # a cup for each batch


class Own(NamedTuple):
    """A filled cell that is none of ours."""

    sheet: str
    at: At
    value: Any


class Filled:
    """A workbook read back; `season` holds its inputs in today's format, not yet computed.

    `left` is what an older format had and today's has no place for.
    """

    def __init__(self, contents: Contents, today: datetime.date | None = None) -> None:
        self.contents, self.file = contents, contents.file
        self.format = _format(contents)
        self.edition = _edition(contents)
        self.system = _system(contents, self.format)
        units = Units(self.system)
        written = formats.sheets(self.format, units, contents)
        self.written = written
        self.found = Found(contents, written, Layout(written), units, self.format)
        if len(self.found.cells) * 4 < len(self.found.layout.spots):
            raise Refused(f"{self.file}: not a season workbook; give one that `sheetfuncs new` wrote")
        self._cut_to_length()
        inputs = self._inputs()
        self.left: list[Left] = []
        self.made_anew = self.format in formats.MADE_ANEW
        if self.made_anew:
            inputs, self.places, self.left = formats.upgraded(self.format, inputs, self.found.cells, units)
        else:
            self.places = self.found.cells
        self.rows = self._rows(inputs)
        self.season = Season(self.system, inputs, self.rows, today)
        self.cells, self.layout = self.season.cells, self.season.layout

    def _cut_to_length(self) -> None:
        """Rows below a table that is as long as another are cells of the user's own."""
        cells = self.found.cells
        for table, other in AS_LONG_AS.items():
            rows = max((len(spots) for name, spots in cells.items() if name.startswith(f"{other}.")), default=0)
            for name in [name for name in cells if name.startswith(f"{table}.")]:
                cells[name] = cells[name][: rows or getattr(Rows(), other)]

    def _rows(self, inputs: dict[str, Any]) -> Rows:
        lengths: dict[str, int] = {}
        for name, cells in (*self.places.items(), *inputs.items()):
            if isinstance(cells, list):
                table = name.partition(".")[0]
                lengths[table] = max(len(cells), lengths.get(table, 0))
        rows = Rows()
        if self.made_anew:  # another format had other tables: at least as many rows as a new one
            return rows._replace(
                **{key: max(getattr(rows, key), lengths.get(table, 0)) for key, table in TABLES.items()}
            )
        return rows._replace(**{key: lengths[table] for key, table in TABLES.items() if lengths.get(table)})

    def _inputs(self) -> dict[str, Any]:
        """What is typed, by the names of the workbook's own format."""
        found: dict[str, Any] = {}
        for name, what in named(self.written).items():
            spots = self.found.cells.get(name)
            if not spots or not (what.typed or name == TODAY):
                continue
            values = [what.kind.parse(self._at(place).value) for place in spots]
            if name == TODAY:
                if values[0] is not None and not self._at(spots[0]).formula:
                    found[name] = values[0]
            elif hasattr(what, "heading"):
                while values and values[-1] is None:
                    values.pop()
                found[name] = values
            else:
                found[name] = values[0]
        return found

    def _at(self, place: Place | None) -> Cell:
        return self.contents.sheets[place.sheet].get(place.at, EMPTY) if place else EMPTY

    def is_table(self, name: str) -> bool:
        """Whether a name is a column's."""
        return hasattr(self.cells[name], "heading")

    def spots(self, name: str) -> list[Place | None]:
        """The cells of a name in the file, as many as the season has."""
        return self.places.get(name, [])[: self.layout.spots[name].height]

    def at(self, name: str, offset: int = 0) -> Place | None:
        """Where a cell stands in the file, if it is there."""
        spots = self.spots(name)
        return spots[offset] if offset < len(spots) else None

    def sheet_of(self, name: str) -> str:
        """The title in the file of the sheet that a cell is on."""
        place = next((one for one in self.spots(name) if one), None)
        title = self.layout.spots[name].sheet
        return place.sheet if place else self.found.titles.get(title, title)

    def cell(self, name: str, offset: int = 0) -> Cell:
        """A cell as it stands in the file."""
        return self._at(self.at(name, offset))

    def place(self, name: str, offset: int = 0) -> tuple[str, str]:
        """Where a cell stands in the file: sheet and address."""
        place = self.at(name, offset)
        return (place.sheet, address(place.at)) if place else (self.sheet_of(name), "")

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
        ours = {*self.found.titles.values(), functions.TITLE}
        return [
            title
            for title, cells in self.contents.sheets.items()
            if cells and title not in ours and not any(cell.value in PROGRAMS.get(title, ()) for cell in cells.values())
        ]

    def besides(self) -> Iterator[str]:
        """In words, what the workbook holds that is no cell and has no place in a new one."""
        yield from self.contents.besides
        ours = {self.found.titles.get(sheet.title): sheet for sheet in self.written}
        for title, count in self.contents.charts.items():
            drawn = sum(isinstance(block, Chart) for block in ours[title].blocks) if title in ours else 0
            if count > drawn and not self.made_anew:
                own = count - drawn
                yield f"{own} chart{'s' if own > 1 else ''} of your own on the sheet {title!r}"
        names = [name for name in self.contents.names if name not in CATALOGUE and not name.startswith(("_", MARK))]
        if names:
            more = f" and {len(names) - NAMED} more" if len(names) > NAMED else ""
            yield f"names of your own ({', '.join(names[:NAMED])}{more})"

    def own_cells(self) -> Iterator[Own]:
        """Cells on our sheets that hold nothing of ours: added columns, remarks beside or below."""
        taken = {place for spots in self.found.cells.values() for place in spots if place}
        units = self.season.units
        for sheet in self.written:
            title = self.found.titles.get(sheet.title)
            if title is None:
                continue
            words = all_known([sheet], units)
            for at, cell in sorted(self.contents.sheets[title].items()):
                ours = Place(title, at) in taken or (not cell.formula and same(cell.value) in words)
                if not ours and (value := plain(cell)) not in (None, ""):
                    yield Own(title, at, value)


def plain(cell: Cell) -> Any:
    """A cell as a plain value: what a formula gave when it was stored, else its text."""
    return f"={cell.formula}" if cell.formula and cell.value is None else cell.value


def address(at: At) -> str:
    """A cell's address: (0, 0) is A1."""
    return f"{letters(at[1])}{at[0] + 1}"


def read(path: Path, today: datetime.date | None = None) -> Filled:
    """A workbook file read back; the file is only read."""
    return Filled(file.read(path), today)


def _format(contents: Contents) -> int:
    """The format that the workbook was written in; without a stamp: today's, if it has a sheet that came with it."""
    stamp = contents.properties.get(STAMP_FORMAT, "")
    if stamp.isdecimal() and int(stamp) > FORMAT:
        raise Refused(
            f"{contents.file}: made by a newer sheetfuncs (format {stamp}, this one knows {FORMAT}); update it"
        )
    return int(stamp) if stamp.isdecimal() and int(stamp) > 0 else formats.guessed(contents)


def _system(contents: Contents, written: int) -> str:
    """The workbook's unit system: its own stamp, else the symbols in its headings."""
    stamp = contents.properties.get(STAMP_UNITS, "")
    if stamp in SYSTEMS:
        return stamp
    said = {same(cell.value) for cells in contents.sheets.values() for cell in cells.values() if not cell.formula}
    known = {system: all_known(formats.sheets(written, Units(system), contents), Units(system)) for system in SYSTEMS}
    return max(SYSTEMS, key=lambda system: len(known[system] & said))


def _edition(contents: Contents) -> str:
    """The workbook's edition: its own stamp, else what its formulas are made of."""
    stamp = contents.properties.get(STAMP_EDITION, "")
    if stamp in EDITIONS:
        return stamp
    formulas = (cell.formula for cells in contents.sheets.values() for cell in cells.values() if cell.formula)
    if any("LET(" in formula for formula in formulas):
        return INLINE.name
    return CARRIED.name if any(name in contents.names for name in CATALOGUE) else LINKED.name
