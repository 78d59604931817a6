"""A call from a cell: ranges element by element, errors passed on, errors out as text."""

from __future__ import annotations

import pytest

from sheetfuncs.formulas.boil import BOIL_FUEL
from sheetfuncs.formulas.finish import FINISH_TEMP
from sheetfuncs.formulas.syrup import SYRUP_BLEND, SYRUP_GRADE, SYRUP_GRAVITY
from sheetfuncs.hosts.cells import ERRORS, answer


def test_single_values_give_one_answer():
    assert answer(FINISH_TEMP, (66.9, 29.92, "US")) == FINISH_TEMP(66.9, 29.92)
    assert answer(FINISH_TEMP, (66.9, 29.92, None)) == FINISH_TEMP(66.9, 29.92)
    assert answer(SYRUP_GRADE, (58.0,)) == "Amber"


def test_every_kind_of_error_comes_out_as_the_text_a_cell_shows():
    assert answer(FINISH_TEMP, (90.0, 29.92, "US")) == "#NUM!"
    assert answer(SYRUP_BLEND, (0.0, 64.0, 0.0, 70.0)) == "#NUM!"
    assert answer(FINISH_TEMP, ("maple", 29.92, "US")) == "#VALUE!"
    assert answer(FINISH_TEMP, (66.9, 29.92, "furlongs")) == "#VALUE!"
    assert answer(FINISH_TEMP, (None, 29.92, "US")) == "#N/A"
    assert answer(FINISH_TEMP, ()) == "#N/A"


@pytest.mark.parametrize("error", ERRORS)
def test_an_error_in_is_that_error_out(error):
    assert answer(FINISH_TEMP, (error, 29.92, "US")) == error
    assert answer(FINISH_TEMP, (66.9, error, "US")) == error
    assert answer(BOIL_FUEL, (1000.0, error, 0.5, "US")) == error
    assert answer(FINISH_TEMP, (66.9, 29.92, error)) == error


def test_the_first_error_in_comes_out():
    assert answer(FINISH_TEMP, ("#DIV/0!", "#REF!", "US")) == "#DIV/0!"
    assert answer(FINISH_TEMP, (90.0, "#REF!", "US")) == "#REF!"


def test_a_blank_cell_is_the_zero_that_its_host_hands_over():
    assert answer(SYRUP_GRAVITY, (0.0,)) == 1.0
    assert answer(FINISH_TEMP, (66.9, 0.0, "US")) == "#NUM!"
    assert answer(BOIL_FUEL, (1000.0, 0.0, 0.5, "US")) == "#VALUE!"  # a word belongs here


def test_a_column_gives_a_column():
    strengths = ((2.0,), (66.9,), (85.0,))
    assert answer(SYRUP_GRAVITY, (strengths,)) == tuple((SYRUP_GRAVITY(brix),) for (brix,) in strengths)


def test_a_row_gives_a_row_and_a_single_value_goes_with_each():
    assert answer(FINISH_TEMP, (((66.0, 66.9),), 29.0, "US")) == ((FINISH_TEMP(66.0, 29.0), FINISH_TEMP(66.9, 29.0)),)


def test_a_column_and_a_row_give_a_table():
    table = answer(FINISH_TEMP, (((66.0,), (66.9,)), ((28.0, 29.0, 30.0),), "US"))
    assert table == tuple(tuple(FINISH_TEMP(brix, air) for air in (28.0, 29.0, 30.0)) for brix in (66.0, 66.9))


def test_where_another_range_has_no_cell_the_answer_is_missing():
    two, three = ((2.0,), (3.0,)), ((66.0,), (66.9,), (67.0,))
    assert answer(SYRUP_BLEND, (1.0, two, 1.0, three)) == (
        (SYRUP_BLEND(1.0, 2.0, 1.0, 66.0),),
        (SYRUP_BLEND(1.0, 3.0, 1.0, 66.9),),
        ("#N/A",),
    )


def test_an_error_stays_in_its_own_cell_of_a_range():
    got = answer(SYRUP_GRAVITY, (((66.9,), ("maple",), (90.0,), ("#DIV/0!",), (None,)),))
    assert got == ((SYRUP_GRAVITY(66.9),), ("#VALUE!",), ("#NUM!",), ("#DIV/0!",), ("#N/A",))


def test_units_may_be_a_range_too():
    got = answer(FINISH_TEMP, (66.9, ((29.92, 1013.25),), (("US", "metric"),)))
    assert got == ((FINISH_TEMP(66.9, 29.92, "US"), FINISH_TEMP(66.9, 1013.25, "metric")),)
