"""A weekend typed into the empty inline template, in real LibreOffice, as a user would."""

from __future__ import annotations

import datetime
from collections.abc import Iterator
from typing import Any

import pytest

from sheetfuncs import FINISH_READING, SAP_SUGAR, SYRUP_FROM_SAP
from sheetfuncs.workbook.read.contents import serial
from sheetfuncs.workbook.season import Season
from tests.tools import office
from tests.tools.calc_office import Calc, Office, own_folder
from tests.tools.templates import empty


class Typist:
    """Types into cells by their names, and reads them."""

    def __init__(self, calc: Calc, season: Season) -> None:
        self.calc, self.layout = calc, season.layout
        self.numbers = {sheet.title: number for number, sheet in enumerate(season.sheets)}

    def type(self, name: str, value: Any, row: int = 1) -> None:
        sheet, address = self._place(name, row)
        self.calc.fill({address: serial(value)}, sheet)

    def read(self, name: str, row: int = 1) -> Any:
        sheet, address = self._place(name, row)
        return self.calc.read(address, sheet)[0][0]

    def _place(self, name: str, row: int) -> tuple[int, str]:
        spot = self.layout.spots[name]
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


SATURDAY = datetime.date(2026, 3, 7)


def test_a_weekend_from_the_pails_to_the_jar(typist: Typist) -> None:
    # Yard, once
    typist.type("weekend.today", SATURDAY)
    typist.type("yard.elevation", 650)
    typist.type("containers.name", "bin")
    typist.type("containers.holds", 30)
    typist.type("jars.name", "pint")
    typist.type("jars.size", 16)
    assert typist.read("now.first") == "Nothing is waiting in store."

    # Collection and Storage
    typist.type("collection.date", datetime.date(2026, 3, 5))
    typist.type("collection.sap", 20)
    typist.type("collection.brix", 2.5)
    assert typist.read("collection.sugar") == pytest.approx(SAP_SUGAR(20, 2.5))
    typist.type("storage.lot", "A")
    typist.type("storage.put", datetime.date(2026, 3, 5))
    typist.type("storage.container", "bin")
    typist.type("storage.volume", 20)
    typist.type("storage.brix", 2.5)
    assert typist.read("now.first") == "Lot A, 20.0 gal of sap: boil it by 12 Mar."
    assert typist.read("now.syrup_number") == pytest.approx(SYRUP_FROM_SAP(20, 2.5, 66.9))
    assert typist.read("now.room_number") == pytest.approx(10)
    assert typist.read("ledger.mass", 3) == pytest.approx(SAP_SUGAR(20, 2.5))

    # A mistake is said, and mended
    typist.type("storage.volume", 40)
    assert typist.read("storage.look") == "This container holds more than it can."
    typist.type("storage.volume", 20)
    assert typist.read("storage.look") == ""

    # Boil: the lot is used, what is left becomes a new lot
    typist.type("boil.date", SATURDAY)
    typist.type("boil.lot_a", "A")
    typist.type("boil.start", datetime.time(9))
    typist.type("boil.end", datetime.time(13))
    typist.type("boil.left", 1.5)
    typist.type("boil.left_brix", 30)
    typist.type("storage.used", SATURDAY)
    typist.type("storage.lot", "B", 2)
    typist.type("storage.put", SATURDAY, 2)
    typist.type("storage.volume", 1.5, 2)
    typist.type("storage.brix", 30, 2)
    typist.type("storage.meant", 1, 2)
    assert typist.read("boil.rate") == pytest.approx(18.5 / 4, abs=0.05)
    assert typist.read("boil.look") == ""
    assert typist.read("storage.look") == ""

    # Finish: the goal, the race, the cup
    typist.type("batch1.date", SATURDAY)
    typist.type("batch1.water_typed", 210.5)
    goal = FINISH_READING(66.9, 210.5)
    assert typist.read("batch1.goal") == pytest.approx(goal, abs=0.05)
    typist.type("readings1.time", datetime.time(14))
    typist.type("readings1.reading", 213)
    assert "minutes still" in typist.read("batch1.now")
    typist.type("readings1.time", datetime.time(14, 30), 2)
    typist.type("readings1.reading", goal + 0.1, 2)
    assert typist.read("batch1.now") == "TAKE IT OFF"
    typist.type("check1.shows", 58)
    typist.type("check1.cup", 200)
    assert typist.read("check1.state") == "thin"
    assert typist.read("check1.words").startswith("Boil off ")

    # Bottles and Season
    syrup = SYRUP_FROM_SAP(1.5, 30, 66.9)
    typist.type("bottles.batch", 1)
    typist.type("bottles.date", SATURDAY)
    typist.type("bottles.volume", syrup)
    typist.type("bottles.brix", 66.9)
    typist.type("storage.used", SATURDAY, 2)
    assert typist.read("season.bottled") == pytest.approx(syrup)
    assert typist.read("bottles.against") == pytest.approx(1)
    lost = SAP_SUGAR(20, 2.5) - SAP_SUGAR(1.5, 30)
    assert typist.read("ledger.mass", 5) == pytest.approx(lost, rel=1e-6)
    assert typist.read("now.first") == "Nothing is waiting in store."


def test_text_and_blanks_do_no_harm(typist: Typist) -> None:
    typist.type("collection.sap", "nine", 2)
    assert typist.read("collection.look", 2) == "Sap is text, not a number: type the number alone."
    assert typist.read("season.sap") == pytest.approx(20)
    assert typist.read("collection.sugar", 3) == ""
