"""What a sheet is made of.  A sheet is data: frozen records, no spreadsheet library in sight.

Formulas name what they use instead of where it stands:

    [volume]            the cell of that column in the same row
    [volume-1]          the cell one row up; "" in the first row
    [volume^]           from the first row down to this one
    [volume~3]          this row and the three above it, as far as there are any
    @yard.elevation     a labelled cell
    @storage.volume     a whole column of a table
    UNITS               the workbook's unit system, as the functions take it
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any, NamedTuple

from sheetfuncs.formulas import quantities
from sheetfuncs.formulas.quantities import Argument, Limits, Quantity

# What a cell holds; the writer gives each a number format, a width and a check on input.
DATE, TIME, TEXT, WORDS = "date", "time", "text", "words"
VOLUME, SMALL, MASS, LENGTH, AREA = "volume", "small volume", "mass", "length", "area"
BRIX, SHARE, COUNT, NUMBER, MONEY = "sugar", "share", "count", "number", "money"
TEMPERATURE, DIFFERENCE, PRESSURE = "temperature", "difference", "pressure"
DAYS, HOURS, MINUTES, RATIO = "days", "hours", "minutes", "ratio"
ELEVATION, FUEL, FUEL_PRICE = "elevation", "fuel", "fuel price"

ANY_AMOUNT: Limits = (0, 1000000)  # what a number cell takes that names no limits

# How much a finding weighs.
WEIGHTS = MEND, ASK, TELL = "must be mended", "look at it", "for your information"


class Finding(NamedTuple):
    """A condition, the sentence that a cell says where it holds, and how much it weighs."""

    condition: str
    sentence: str
    weight: str


class Column(NamedTuple):
    """A column of a table.  Without a formula and fixed values it is for typing in.

    `formula` is the same text for every row, or a tuple with one for each.  `findings` are the
    sentences of a formula that say what is wrong with its row.
    """

    key: str
    heading: str
    kind: str
    formula: str | tuple[str, ...] = ""
    choices: Sequence[str] | str = ()
    limits: Limits = ANY_AMOUNT
    fixed: Sequence[Any] = ()
    width: float | None = None
    hint: str = ""
    hidden: bool = False
    findings: Sequence[Finding] = ()

    @property
    def typed(self) -> bool:
        return not self.formula and not self.fixed


class Field(NamedTuple):
    """A labelled cell; `beside` is a second cell to its right, the number an answer rests on."""

    key: str
    label: str
    kind: str
    formula: str = ""
    start: Any = None
    note: str = ""
    choices: Sequence[str] | str = ()
    limits: Limits = ANY_AMOUNT
    strong: bool = False
    findings: Sequence[Finding] = ()
    beside: Field | None = None

    @property
    def typed(self) -> bool:
        return not self.formula


class Fields(NamedTuple):
    """Labelled cells under each other; labels start at `column`, values stand `span` columns on."""

    key: str
    title: str
    fields: Sequence[Field]
    row: int | None = None
    column: int = 0
    span: int = 3


class Table(NamedTuple):
    """Rows alike, under headings."""

    key: str
    title: str
    columns: Sequence[Column]
    rows: int
    row: int | None = None
    column: int = 0


class Text(NamedTuple):
    """Lines to read, each across `across` columns."""

    title: str
    lines: Sequence[str]
    row: int | None = None
    column: int = 0
    across: int = 9
    caution: bool = False


class Series(NamedTuple):
    """One line or set of bars of a chart: its name and where its numbers stand.

    `rows` is how many cells to take from a labelled cell down; a table's column has its own.
    """

    name: str
    x: str
    y: str
    rows: int = 1


class Chart(NamedTuple):
    """A chart: `kind` is column, line or scatter."""

    title: str
    kind: str
    series: Sequence[Series]
    x_title: str
    y_title: str
    row: int
    column: int
    x_kind: str = COUNT
    width: int = 560
    height: int = 300


Block = Fields | Table | Text | Chart


class Sheet(NamedTuple):
    """A sheet: title on its tab, one sentence of what it is for, and its blocks from top to bottom."""

    title: str
    purpose: str
    blocks: Sequence[Block]
    freeze: tuple[int, int] = (2, 0)
    widths: Sequence[float] = ()
    portrait: bool = False
    breaks: Sequence[int] = ()

    def block(self, key: str) -> Fields | Table:
        for block in self.blocks:
            if isinstance(block, (Fields, Table)) and block.key == key:
                return block
        raise KeyError(key)


class Plain(NamedTuple):
    """A sheet of values alone, copied from elsewhere: by row and column, from 0."""

    title: str
    cells: Mapping[tuple[int, int], Any]


MOST_ROWS = 5000  # of a table: far more than one season fills


class Rows(NamedTuple):
    """How many rows each log has, and each list of the yard."""

    collections: int = 120
    lots: int = 80
    boils: int = 40
    batches: int = 6
    readings: int = 60
    bottlings: int = 60
    thermometers: int = 4
    pans: int = 4
    containers: int = 16
    jars: int = 6
    trees: int = 40
    past: int = 10

    def scaled(self, collections: int) -> Rows:
        """The same proportions for another number of collections; never fewer than by default."""
        factor = max(1.0, collections / self.collections)
        return self._replace(
            collections=round(self.collections * factor),
            lots=round(self.lots * factor),
            boils=round(self.boils * factor),
            bottlings=round(self.bottlings * factor),
        )


class Macros(NamedTuple):
    """What a macro-enabled workbook holds besides its sheets: the VBA project of xlwings, and xlwings' settings."""

    project: bytes
    settings: Mapping[str, str]


class Units:
    """The unit symbols of a workbook, and numbers that differ with them."""

    def __init__(self, system: str) -> None:
        self.system = system
        self.volume = self._symbol(quantities.VOLUME)
        self.small = self._symbol(quantities.SMALL_VOLUME)
        self.mass = self._symbol(quantities.MASS)
        self.temperature = self._symbol(quantities.TEMPERATURE)
        self.difference = self._symbol(quantities.DIFFERENCE)
        self.pressure = self._symbol(quantities.PRESSURE)
        self.elevation = self._symbol(quantities.ELEVATION)
        self.length = self._symbol(quantities.LENGTH)
        self.area = self._symbol(quantities.AREA)
        self.small_in_volume = f"{self.one(quantities.VOLUME) / self.one(quantities.SMALL_VOLUME):.15g}"

    def _symbol(self, quantity: Quantity) -> str:
        return quantity.unit(self.system).symbol

    def one(self, quantity: Quantity) -> float:
        """One unit of a quantity in SI: what its others are made of."""
        return float(quantity.unit(self.system).into_si(1.0))

    def limits(self, argument: Argument) -> Limits:
        """What a cell takes that a function will be given: one range for both."""
        return argument.limits(self.system)

    def pick(self, us: Any, metric: Any) -> Any:
        """One of two: a number or a word that is round in each system."""
        return us if self.system == "US" else metric
