"""What a workbook file holds, whichever its format: cells by sheet, names, properties, notes."""

from __future__ import annotations

import time
from collections.abc import Mapping
from typing import Any, NamedTuple

from sheetfuncs.files import Refused

MOST_CELLS = 400_000  # a season of 1,000 collections has 120,000
MOST_ELEMENTS = 3_000_000  # of XML; a season of 1,000 collections has 420,000
MOST_TEXT = 40_000_000  # letters in all cells, each as often as it is shown
MOST_SECONDS = 12  # of computing, until everything is read
MOST_ODD = 200  # sentences about cells that could not be read
LONGEST = 32_767  # letters in a cell, in every spreadsheet
LAST_ROW, LAST_COLUMN = 1_048_576, 16_384
OFTEN = 1_000  # elements from one look at the clock to the next

At = tuple[int, int]  # row and column, from 0


class Cell(NamedTuple):
    """What was typed; or a formula, without its equals sign, and the value stored with it, None for none or no text."""

    value: Any
    formula: str = ""


Cells = Mapping[At, Cell]


class Odd(NamedTuple):
    """A place in the file, and a sentence about what of it could not be read as it stands; None is the whole sheet."""

    sheet: str
    at: At | None
    sentence: str


class Contents(NamedTuple):
    """One workbook.

    `besides` says in words what it holds that is no cell: pictures, macros.  `charts` counts those of
    each sheet, ours among them; `odd` tells of cells that could not be read as they stand.
    """

    file: str
    sheets: Mapping[str, Cells]
    properties: Mapping[str, str]
    names: Mapping[str, str]
    notes: Mapping[tuple[str, At], str]
    besides: tuple[str, ...] = ()
    charts: Mapping[str, int] = {}
    odd: tuple[Odd, ...] = ()


class Limits:
    """Stops a reader at a file that is too much for a season, before anything is built from it; and notes odd cells."""

    def __init__(self, file: str) -> None:
        self.file = file
        self.cells, self.elements, self.letters = MOST_CELLS, MOST_ELEMENTS, MOST_TEXT
        self.until = time.process_time() + MOST_SECONDS
        self.odd: list[Odd] = []

    def cell(self, value: Any = None) -> None:
        """One more filled cell."""
        self.cells -= 1
        if self.cells < 0:
            raise self.too_much(f"more than {MOST_CELLS:,} filled cells")
        if isinstance(value, str):
            self.words(value)

    def words(self, text: str) -> None:
        """One more text, of a cell or for cells to share."""
        self.letters -= len(text)
        if self.letters < 0:
            raise self.too_much(f"more than {MOST_TEXT:,} letters in its cells")

    def element(self) -> None:
        """One more element of XML."""
        self.elements -= 1
        if self.elements % OFTEN == 0:
            self.clock()
            if self.elements <= 0:
                raise self.too_much(f"more than {MOST_ELEMENTS:,} elements")

    def clock(self) -> None:
        """Whether there is time left."""
        if time.process_time() > self.until:
            raise self.too_much(f"it takes over {MOST_SECONDS} seconds to read")

    def strange(self, sheet: str, at: At | None, sentence: str) -> None:
        """A cell that could not be read as it stands."""
        if len(self.odd) < MOST_ODD:
            self.odd.append(Odd(sheet, at, sentence))

    def text(self, sheet: str, at: At | None, text: str) -> str:
        """A cell's text, cut where no spreadsheet goes on."""
        if len(text) <= LONGEST:
            return text
        self.strange(sheet, at, f"The text is longer than {LONGEST:,} letters: the rest is not read.")
        return text[:LONGEST]

    def too_much(self, what: str) -> Refused:
        return Refused(
            f"{self.file}: {what}, too many for a season; move what is not the season to a workbook of its own"
            if what.startswith("more")
            else f"{self.file}: {what}; too much for a season workbook"
        )
