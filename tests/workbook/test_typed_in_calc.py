"""A whole season typed into the empty inline template, in real LibreOffice, as a user would: weekend by weekend."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

import pytest

from sheetfuncs.workbook.model.days import serial
from sheetfuncs.workbook.model.parts import Column
from sheetfuncs.workbook.season import TODAY, Season
from sheetfuncs.workbook.sheets.phrases import LOOK
from tests.tools import lived, office
from tests.tools.calc_office import Calc, Office, own_folder
from tests.tools.lived import STEPS, Step
from tests.tools.templates import empty


class Typist:
    """Types into cells by their names, and reads them."""

    def __init__(self, calc: Calc, season: Season) -> None:
        self.calc, self.season = calc, season
        self.numbers = {sheet.title: number for number, sheet in enumerate(season.sheets)}

    def type(self, name: str, value: Any, row: int = 1) -> None:
        sheet, address = self._place(name, row)
        self.calc.fill({address: serial(value)}, sheet)

    def read(self, name: str, row: int = 1) -> Any:
        sheet, address = self._place(name, row)
        return self.calc.read(address, sheet)[0][0]

    def column(self, name: str) -> list[Any]:
        """All cells of a table's column."""
        spot = self.season.layout.spots[name]
        return [row[0] for row in self.calc.read(spot.address(spot.sheet, fixed=False), self.numbers[spot.sheet])]

    def _place(self, name: str, row: int) -> tuple[int, str]:
        spot = self.season.layout.spots[name]
        cell = spot._replace(row=spot.row + row - 1, height=1)
        return self.numbers[spot.sheet], cell.address(spot.sheet, fixed=False)


@pytest.fixture(scope="module")
def typist() -> Iterator[Typist]:
    office.needed()
    with own_folder() as folder:
        made = Office(folder)
        path = folder / "season.xlsx"
        empty(path, "US", "inline")
        with made.calc() as calc:
            calc.open(path)
            yield Typist(calc, Season("US", {}))


@pytest.mark.parametrize("step", STEPS, ids=lambda step: step.title)
def test_a_sitting_needs_few_cells(step: Step) -> None:
    assert lived.count(step) <= step.most


def test_a_season_from_the_first_pail_to_the_last_jar(typist: Typist) -> None:
    for step in STEPS:
        typist.type(TODAY, step.today)
        for (name, row), value in {**step.pasted, **step.typed, **step.readings}.items():
            typist.type(name, value, row)
        found = {key: typist.read(*key) for key in step.said}
        assert found == step.said, step.title
        assert nothing_to_look_at(typist) == {}, step.title
    assert typist.read("sugar.said").startswith("Nothing is missing:")


def nothing_to_look_at(typist: Typist) -> dict[str, list[Any]]:
    """What the rows ask to look at, by their column."""
    looks = [
        name for name, cell in typist.season.cells.items() if isinstance(cell, Column) and name.endswith(f".{LOOK}")
    ]
    said = {name: [text for text in typist.column(name) if text] for name in looks}
    return {name: texts for name, texts in said.items() if texts}


def test_a_mistake_is_said_and_mended(typist: Typist) -> None:
    typist.type("collection.sap", "nine", 1)
    assert typist.read("collection.look", 1) == "Sap kept is text, not a number: type the number alone."
    assert typist.read("season.sap") == pytest.approx(6 * 0 + 8 + 9 + 7 + 10 + 9 + 8 + 6)
    typist.type("collection.sap", 6, 1)
    assert typist.read("collection.look", 1) == ""
