"""Functions: every function with a call to change.  A sheet to learn from, with nothing of the season on it."""

from __future__ import annotations

from collections.abc import Iterator

from sheetfuncs.formulas.card import Card
from sheetfuncs.formulas.catalogue import CATALOGUE
from sheetfuncs.workbook.model.kinds import ANY, TEXT
from sheetfuncs.workbook.model.layout import FIRST_ROW, height
from sheetfuncs.workbook.model.parts import Block, Field, Fields, Sheet, Text
from sheetfuncs.workbook.model.systems import Units

TITLE = "Functions"
PURPOSE = "Change a tinted cell and see what the function gives. Nothing here belongs to the season, or is kept by it."
WIDTHS = (22, 14, 90)


def sheet(units: Units) -> Sheet:
    """The catalogue as cards under each other, in its order."""
    return Sheet(TITLE, PURPOSE, tuple(_cards(units)), widths=WIDTHS, portrait=True, tab="once")


def _cards(units: Units) -> Iterator[Block]:
    row = FIRST_ROW
    for function in CATALOGUE.values():
        words = _words(function.card, row)
        call = _call(function.card, units, row + height(words))
        row += height(words) + height(call) + 1
        yield from (words, call)


def _words(card: Card, row: int) -> Text:
    lines = [card.summary, *([card.notes] if card.notes else []), f"Source: {card.source}."]
    return Text(card.call, [line.replace("..", ".") for line in lines], row=row, across=len(WIDTHS))


def _call(card: Card, units: Units, row: int) -> Fields:
    """The arguments, in cells of their own, and the answer."""
    fields = [
        Field(
            name,
            name,
            TEXT if argument.allowed else ANY,
            start=value if argument.allowed else float(f"{value:.4g}"),
            note=f"{argument.words}; {argument.range_words(units.system)}",
            choices=argument.allowed,
            limits=argument.limits(units.system),
        )
        for (name, argument), value in zip(card.arguments.items(), card.example_in(units.system), strict=True)
    ]
    # addresses that are not fixed, unlike those of other sheets: a card copied elsewhere keeps its own arguments
    cells = [f"B{row + number + 1}" for number in range(len(card.arguments))]
    given = ",".join([*cells, *["UNITS"] * card.units])
    typed = given.replace("UNITS", f'"{units.system}"')
    answer = Field(
        "answer",
        "gives",
        TEXT if isinstance(card.example[1], str) else ANY,
        f"{card.name}({given})",
        note=f"{card.returns}, {card.result.unit(units.system).symbol}. In a cell: ={card.name}({typed})",
        strong=True,
    )
    return Fields(f"try_{card.name.lower()}", "", [*fields, answer], row=row, span=1)
