"""The example season computed anew by Calc: every formula of every sheet gives what is stored in the file."""

from __future__ import annotations

import datetime
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import office
import openpyxl
import pytest
from calc_office import Office, own_folder
from openpyxl.utils.datetime import to_excel

from sheetfuncs import cli
from sheetfuncs.hosts.calc.builder import write_addin

ERRORS = {"#NUM!": 503, "#VALUE!": 519, "#DIV/0!": 532, "#N/A": 32767, "#REF!": 524, "#NAME?": 525}
UNITS = ("us", "metric")


@pytest.fixture(scope="module")
def plain() -> Iterator[Office]:
    office.needed()
    with own_folder() as folder:
        yield Office(folder)


@pytest.fixture(scope="module")
def with_addin() -> Iterator[Office]:
    office.needed()
    with own_folder() as folder:
        made = Office(folder)
        write_addin(folder / "sheetfuncs.oxt")
        assert made.unopkg("add", folder / "sheetfuncs.oxt").returncode == 0
        yield made


def example(where: Office, edition: str, units: str) -> Path:
    path = where.folder / f"{edition}-{units}.xlsx"
    assert cli.main(["new", str(path), "--example", "--edition", edition, "--units", units]) == 0
    return path


def stored(path: Path) -> dict[str, dict[str, Any]]:
    """The value stored beside each formula."""
    texts, values = openpyxl.load_workbook(path), openpyxl.load_workbook(path, data_only=True)
    return {
        sheet.title: {
            cell.coordinate: as_calc_tells(values[sheet.title][cell.coordinate].value)
            for row in sheet.iter_rows()
            for cell in row
            if cell.data_type == "f"
        }
        for sheet in texts.worksheets
    }


def as_calc_tells(value: Any) -> Any:
    if isinstance(value, str):
        return {"error": ERRORS[value]} if value in ERRORS else value
    if isinstance(value, (datetime.datetime, datetime.date, datetime.time)):
        return to_excel(value)
    return "" if value is None else float(value)


def same(one: Any, other: Any) -> bool:
    if isinstance(one, float) and isinstance(other, float):
        return abs(one - other) <= 1e-9 * max(1.0, abs(one))
    return bool(one == other)


def differing(where: Office, path: Path) -> list[tuple[Any, ...]]:
    with where.calc() as calc:
        calc.open(path)
        calc.recalculate()
        computed = calc.sheets()
    wanted = stored(path)
    assert sum(map(len, wanted.values())) > 1000
    assert list(computed) == list(wanted)
    return [
        (sheet, address, value, computed[sheet].get(address))
        for sheet, cells in wanted.items()
        for address, value in cells.items()
        if not same(value, computed[sheet].get(address))
    ]


@pytest.mark.parametrize("units", UNITS)
@pytest.mark.parametrize("edition", ["carried", "linked"])
def test_the_addin_computes_the_season(with_addin: Office, edition: str, units: str) -> None:
    assert differing(with_addin, example(with_addin, edition, units)) == []


@pytest.mark.parametrize("units", UNITS)
def test_the_inline_edition_needs_no_addin(plain: Office, units: str) -> None:
    assert differing(plain, example(plain, "inline", units)) == []
