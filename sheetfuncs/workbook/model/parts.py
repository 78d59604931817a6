"""What a sheet is made of.  A sheet is data: frozen records, no spreadsheet library in sight.

How formulas name what they use stands in `formula`.

`since` is the format of workbooks that first had a thing, `was` the words it had before: so older workbooks
are read without a complaint about what they could not know.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any, NamedTuple

from sheetfuncs.formulas.quantities import Limits
from sheetfuncs.workbook.model.kinds import ANY_AMOUNT, COUNT, Kind
from sheetfuncs.workbook.model.systems import Units

# How much a finding weighs.
WEIGHTS = MEND, ASK, TELL = "must be mended", "look at it", "for your information"


class Finding(NamedTuple):
    """What a cell says where a condition holds, and how much it weighs.

    `key` tells it from its neighbours, `cell` is the column it is about; `said` is a formula.
    """

    key: str
    cell: str
    condition: str
    said: str
    weight: str
    of_kind: bool = False  # derived from the kind of its cell, not written by hand


class Column(NamedTuple):
    """A column of a table.  Without a formula and fixed values it is for typing in.

    `formula` is the same text for every row, or a tuple with one for each.  `findings` are what the
    cell may say of its row; the column `number` holds which of them it says, 0 for none.  `heading`
    goes without its unit, which the kind knows.  `starts` are typed in already in a new workbook;
    `guess` is the column that is 1 where this one rests on a guess.  `numbers`: other rows call the row by the
    number that this column's formula gives it, whatever its place.  `called` is what a sentence calls it, where its
    heading is no beginning of one.
    """

    key: str
    heading: str
    kind: Kind
    formula: str | tuple[str, ...] = ""
    choices: Sequence[str] | str = ()
    limits: Limits = ANY_AMOUNT
    fixed: Sequence[Any] = ()
    starts: Sequence[Any] = ()
    width: float | None = None
    hint: str = ""
    hidden: bool = False
    findings: Sequence[Finding] = ()
    number: str = ""
    guess: str = ""
    numbers: bool = False
    since: int = 1
    was: tuple[str, ...] = ()
    called: str = ""

    @property
    def typed(self) -> bool:
        return not self.formula and not self.fixed

    @property
    def words(self) -> str:
        """What a sentence calls it."""
        return self.called or self.heading

    def title(self, units: Units) -> str:
        """Its heading, with the unit."""
        return self.kind.heading(self.heading, units)

    def at(self, offset: int) -> str:
        """The formula of a row, from 0."""
        return self.formula if isinstance(self.formula, str) else self.formula[offset]


class Field(NamedTuple):
    """A labelled cell; `beside` is a second cell to its right, the number an answer rests on.

    `to` names what its label leads to, where the answer is typed.  `states` are conditions under which the cell
    takes the colour of a weight, the gravest first.  `lines` is how many lines of words have room.  A strong number
    that lies across several columns is as large as they are, to be read from afar.
    """

    key: str
    label: str
    kind: Kind
    formula: str = ""
    start: Any = None
    note: str = ""
    choices: Sequence[str] | str = ()
    limits: Limits = ANY_AMOUNT
    strong: bool = False
    across: int = 1
    findings: Sequence[Finding] = ()
    beside: Field | None = None
    number: str = ""
    to: str = ""
    states: Sequence[tuple[str, str]] = ()
    lines: int = 1
    since: int = 1
    was: tuple[str, ...] = ()
    called: str = ""

    @property
    def typed(self) -> bool:
        return not self.formula

    @property
    def words(self) -> str:
        """What a sentence calls it."""
        return self.called or self.label.strip()

    def full_note(self, units: Units) -> str:
        """The note beside it, with its unit."""
        return "; ".join(part for part in (self.kind.unit(units), self.note) if part)


class Fields(NamedTuple):
    """Labelled cells under each other; labels start at `column`, values stand `span` columns on.

    Stacked, each value stands under its label: a question, and its answer below.
    """

    key: str
    title: str
    fields: Sequence[Field]
    row: int | None = None
    column: int = 0
    span: int = 3
    stacked: bool = False
    since: int = 1
    was: tuple[str, ...] = ()

    def place(self, number: int) -> tuple[int, int]:
        """Rows and columns from the first label to the cell of a field, by its number."""
        return (2 * number + 1, 0) if self.stacked else (number, self.span)

    @property
    def height(self) -> int:
        """Rows from the first label to the last."""
        return len(self.fields) * (2 if self.stacked else 1)


class Table(NamedTuple):
    """Rows alike, under headings; each as high as `lines` lines of words."""

    key: str
    title: str
    columns: Sequence[Column]
    rows: int
    row: int | None = None
    column: int = 0
    lines: int = 1
    since: int = 1
    was: tuple[str, ...] = ()


class Text(NamedTuple):
    """Lines to read, each across `across` columns; with `leads` each begins with the sheet that it leads to.

    `looks` are the looks of the lines, where they have some of their own.
    """

    title: str
    lines: Sequence[str]
    row: int | None = None
    column: int = 0
    across: int = 9
    caution: bool = False
    leads: bool = False
    looks: Sequence[str] = ()


class Series(NamedTuple):
    """One line or set of bars of a chart: its name and where its numbers stand.

    `rows` is how many cells to take from a labelled cell down; a table's column has its own.  `colour` where it
    means something.
    """

    name: str
    x: str
    y: str
    rows: int = 1
    colour: str = ""


class Chart(NamedTuple):
    """A chart: `kind` is column, bar or scatter.

    `titled` is a cell with its title, which says so while there is nothing to draw.  `lines` are drawn over columns,
    on an axis of their own at the right.  Of columns that are `stacked` each place has one.
    """

    title: str
    kind: str
    series: Sequence[Series]
    x_title: str
    y_title: str
    row: int
    column: int
    x_kind: Kind = COUNT
    width: int = 560
    height: int = 300
    titled: str = ""
    lines: Sequence[Series] = ()
    lines_title: str = ""
    stacked: bool = False


Block = Fields | Table | Text | Chart


class Sheet(NamedTuple):
    """A sheet: title on its tab, one sentence of what it is for, and its blocks from top to bottom.

    `pages` is how many pages of paper it may take downwards; 0 for as many as it needs.
    """

    title: str
    purpose: str
    blocks: Sequence[Block]
    freeze: tuple[int, int] = (3, 0)
    widths: Sequence[float] = ()
    portrait: bool = False
    breaks: Sequence[int] = ()
    pages: int = 0
    tab: str = ""
    since: int = 1
    was: tuple[str, ...] = ()

    def block(self, key: str) -> Fields | Table:
        for block in self.blocks:
            if isinstance(block, (Fields, Table)) and block.key == key:
                return block
        raise KeyError(key)


class Plain(NamedTuple):
    """A sheet of values alone, copied from elsewhere: by row and column, from 0."""

    title: str
    cells: Mapping[tuple[int, int], Any]


class Macros(NamedTuple):
    """What a macro-enabled workbook holds besides its sheets: the VBA project of xlwings, and xlwings' settings."""

    project: bytes
    settings: Mapping[str, str]


def cells_of(field: Field) -> list[Field]:
    """A labelled cell and the one beside it, if any."""
    return [field] if field.beside is None else [field, field.beside]


def given(what: Column | Field, name: str, inputs: Mapping[str, Any]) -> Any:
    """What stands in a cell, or in the first ones of a column, uncomputed: typed, fixed or to start with."""
    if isinstance(what, Field):
        return inputs.get(name, what.start)
    return what.fixed or inputs.get(name, what.starts)


def named(sheets: Sequence[Sheet]) -> dict[str, Column | Field]:
    """Every labelled cell and every column of a workbook by its name."""
    found: dict[str, Column | Field] = {}
    for sheet in sheets:
        for block in sheet.blocks:
            if isinstance(block, Fields):
                found |= {f"{block.key}.{cell.key}": cell for field in block.fields for cell in cells_of(field)}
            elif isinstance(block, Table):
                found |= {f"{block.key}.{column.key}": column for column in block.columns}
    return found
