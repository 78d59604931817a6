"""Every computed cell of what a user downloads, by two engines of other people: the value that is stored in it.

What differs is a fault of the engine, listed here with the smallest case that shows it.
"""

from __future__ import annotations

import datetime
import functools
import io
import math
import re
from fractions import Fraction
from typing import Any

import formulon
import openpyxl
import pytest
import xlsxwriter

from sheetfuncs.workbook.model.days import serial
from sheetfuncs.workbook.model.editions import CARRIED
from sheetfuncs.workbook.sheets.weekend import UNANSWERED
from tests.tools import engines
from tests.tools.edits import example
from tests.tools.templates import DAY, ROOT

WORKBOOKS = [
    path.relative_to(ROOT).as_posix()
    for folder in ("templates", "examples")
    for path in sorted((ROOT / folder).glob("*.xlsx"))
]
# formulon takes a quarter of a minute for a season: it is asked of the filled ones whose cells call names, which the
# other engine does not know, and of one with whole formulas; the other engine of all that have those.
INLINE = [name for name in WORKBOOKS if CARRIED.suffix not in name]
CALLED = ["examples/season-us-carried.xlsx", "examples/season-metric-carried.xlsx", "examples/season-us.xlsx"]
CALLED += ["templates/functions.xlsx"]
CLOSE = 1e-9  # SLOPE and what hangs on it; all else is closer


_QUOTED = re.compile(r'"(?:[^"]|"")*"')


@functools.cache
def written(name: str) -> dict[str, dict[tuple[int, int], str]]:
    """The formulas of a workbook."""
    return {
        page.title: {
            (cell.row - 1, cell.column - 1): getattr(cell.value, "text", cell.value)
            for row in page.iter_rows()
            for cell in row
            if cell.data_type == "f"
        }
        for page in openpyxl.load_workbook(ROOT / name).worksheets
    }


@functools.cache
def stored(name: str) -> engines.Computed:
    """The values stored with the formulas; dates and times as a spreadsheet counts them."""
    pages = openpyxl.load_workbook(ROOT / name, data_only=True)
    return {
        title: {(row, column): _plain(pages[title].cell(row + 1, column + 1).value) for row, column in cells}
        for title, cells in written(name).items()
    }


def _plain(value: Any) -> Any:
    value = "" if value is None else serial(value)
    return float(value) if isinstance(value, (bool, int)) else value


def different(expected: engines.Computed, got: engines.Computed) -> list[str]:
    return [
        f"{title}, row {row + 1}, column {column + 1}: stored {value!r}, computed {got[title][row, column]!r}"
        for title, cells in expected.items()
        for (row, column), value in cells.items()
        if not _same(value, got[title][row, column])
    ]


def _same(one: Any, other: Any) -> bool:
    if isinstance(one, float) and isinstance(other, float):
        return math.isclose(one, other, rel_tol=CLOSE, abs_tol=CLOSE)
    return bool(one == other)


def today(name: str) -> datetime.date | None:
    return DAY if name.startswith("templates") else None


def answered(name: str) -> engines.Computed:
    """The values that a workbook must come to: the first screen of one whose cells call names is stored unanswered."""
    values = {title: dict(cells) for title, cells in stored(name).items()}
    if CARRIED.suffix in name:
        full = stored(name.replace(CARRIED.suffix, ""))
        season = example()
        for one in UNANSWERED:
            spot = season.layout.spots[one]
            at = (spot.row, spot.column)
            values[spot.sheet][at] = full[spot.sheet][at]
    return values


def test_every_download_has_its_engine() -> None:
    assert len(INLINE) == 6
    assert set(CALLED) <= set(WORKBOOKS)


@pytest.mark.parametrize("name", CALLED)
def test_formulon_computes_what_is_stored_and_shows_no_at(name: str) -> None:
    """An @ before a function is what Excel shows where a formula could give more cells than one."""
    expected = answered(name)
    assert sum(map(len, expected.values())) > 30
    book = engines.Formulon((ROOT / name).read_bytes(), today(name))
    wrong = different(expected, book.values(expected))
    assert not wrong, "\n".join(wrong[:20])
    shown = [formula for formula in book.shown() if "@" in _QUOTED.sub("", formula)]
    assert not shown, "\n".join(shown[:20])


@pytest.mark.parametrize("name", INLINE)
def test_betteroffice_computes_what_is_stored(name: str) -> None:
    expected = stored(name)
    computed = engines.by_betteroffice((ROOT / name).read_bytes(), expected, today(name))
    wrong = different(expected, computed)
    assert not wrong, "\n".join(wrong[:20])


def test_the_day_is_the_one_asked_for() -> None:
    """Or the templates, which hold TODAY, would agree by chance."""
    content = _book("TODAY()")
    day = datetime.date(2026, 1, 1)
    wanted = {"Sheet1": [(0, 3)]}
    assert engines.by_formulon(content, wanted, day)["Sheet1"][0, 3] == serial(day)
    assert engines.by_betteroffice(content, wanted, day)["Sheet1"][0, 3] == serial(day)


def _book(formula: str, dynamic: bool = False, **names: str) -> bytes:
    """A workbook with 2, 1, 0 in the first cells and a formula in the fourth."""
    out = io.BytesIO()
    with xlsxwriter.Workbook(out) as book:
        page = book.add_worksheet()
        page.write_row(0, 0, [2, 1, 0])
        for name, text in names.items():
            book.define_name(name, text)
        page.write_dynamic_array_formula(0, 3, 0, 3, formula) if dynamic else page.write_formula(0, 3, formula)
    return out.getvalue()


def _values(content: bytes) -> tuple[Any, Any]:
    """What the two engines make of the fourth cell."""
    wanted = {"Sheet1": [(0, 3)]}
    return tuple(by(content, wanted)["Sheet1"][0, 3] for by in (engines.by_formulon, engines.by_betteroffice))


def test_fault_optional_parameters_as_excel_writes_them() -> None:
    """formulon reads [x] for an optional parameter; Excel writes _xlop.x, and repairs a file with brackets."""
    body = "=_xlfn.LAMBDA(_xlop.x,_xlpm.x+1)"
    with formulon.Workbook.load(_book("ADD(A1)", dynamic=True, ADD=body)) as book:
        book.recalc()
        assert book.get_value(0, 0, 3).kind == formulon.ValueKind.ERROR
    assert _values(_book("ADD(A1)", dynamic=True, ADD=body))[0] == 3


def test_fault_a_lambda_that_has_a_name() -> None:
    """betteroffice-xlsx knows no function that a name stands for, and leaves the value that is stored."""
    body = "=_xlfn.LAMBDA(_xlpm.x,_xlpm.x+1)"
    assert _values(_book("ADD(A1)", dynamic=True, ADD=body)) == (3, 0)


def test_fault_a_product() -> None:
    """One product of formulon's is another than the double nearest to the true one."""
    one, other = 196471.563988065, 0.003785411784
    ours, theirs = (_values(_book(f"{one!r}*{other!r}"))[number] for number in (1, 0))
    assert ours == float(Fraction(one) * Fraction(other))
    assert theirs == math.nextafter(ours, math.inf)


def test_fault_the_second_range_of_conditions() -> None:
    """formulon intersects it with the row of the cell; where it is seen from below the range, that is an error."""
    content = _book('_xlfn.MINIFS(A1:C1,A1:C1,">0",A1:C1,">1")')
    with formulon.Workbook.load(content) as book:
        book.recalc()
        assert book.get_formula(0, 0, 3) == '=MINIFS(A1:C1,A1:C1,">0",@A1:C1,">1")'
        assert book.get_value(0, 0, 3).kind == formulon.ValueKind.ERROR
    assert _values(content)[1] == 2
    assert _values(_book('_xlfn.MINIFS(A1:C1,A1:C1,">0",A1:C1,">1")', dynamic=True)) == (2, 2)
