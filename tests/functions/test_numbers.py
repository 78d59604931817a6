"""Any kind of real number counts as its float, in every function; an array is sent to `sheetfuncs.arrays`."""

from __future__ import annotations

import array
import datetime
from decimal import Decimal
from fractions import Fraction
from typing import Any

import numpy as np
import pandas as pd
import pytest

from sheetfuncs import FormulaError, OutOfLimits, WrongKind
from sheetfuncs.formulas.catalogue import CATALOGUE
from sheetfuncs.science import maths
from tests.tools.arguments import FACES, example

KINDS = (int, bool, Decimal, Fraction, np.float64, np.float32, np.float16, np.int64, np.int8, np.int16, np.bool_)
MOST = {np.int8: 127, np.int16: 32767, np.float16: 65504}  # what the small ones can hold
CALLS = pytest.mark.parametrize(("card", "system"), FACES, ids=[f"{card.name}-{system}" for card, system in FACES])


def answer(name: str, given: Any) -> Any:
    try:
        return CATALOGUE[name](*given)
    except FormulaError as error:
        return type(error)


@CALLS
@pytest.mark.parametrize("kind", KINDS, ids=lambda kind: f"{kind.__module__}.{kind.__name__}")
def test_a_number_of_any_kind_gives_what_its_float_gives(kind, card, system):
    """The example, rounded where the kind keeps fewer digits: one argument of this kind, then all."""
    arguments = list(card.arguments.values())
    whole = not isinstance(kind("0.5") if kind is Decimal else kind(0.5), (float, Decimal, Fraction, np.floating))

    def of_kind(value: float) -> Any:
        return kind(min(round(value) if whole else value, MOST.get(kind, value)))

    given = example(card, system)
    made = [value if arg.allowed else of_kind(value) for value, arg in zip(given, arguments, strict=False)]
    units = given[len(arguments) :]
    floats = [value if isinstance(value, str) else float(value) for value in made]
    for place, arg in enumerate(arguments):
        if not arg.allowed:
            one, other = ([*given[:place], some[place], *given[place + 1 :]] for some in (made, floats))
            assert answer(card.name, one) == answer(card.name, other)
    expected = answer(card.name, [*floats, *units])
    assert answer(card.name, [*made, *units]) == expected
    assert type(answer(card.name, [*made, *units])) is type(expected)


@CALLS
def test_an_array_is_refused_in_one_sentence_that_names_the_way(card, system):
    given = example(card, system)
    for place, name in enumerate(card.parameters):
        value = given[place]
        many = [[value], (value,), [value, value], np.array([value]), np.array(value), pd.Series([value, value]), []]
        if not isinstance(value, str):
            many.append(array.array("d", [value]))
        for some in many:
            with pytest.raises(WrongKind) as refused:
                CATALOGUE[card.name](*given[:place], some, *given[place + 1 :])
            said = str(refused.value)
            assert said.startswith(f"{card.name}: {name} is a whole {type(some).__name__}; give one ")
            assert said.endswith(f"for many values at once call sheetfuncs.arrays.{card.name}")
            assert "\n" not in said


@pytest.mark.parametrize(
    "value",
    [
        1j,
        np.complex64(1.0),
        np.timedelta64(5, "ns"),
        np.datetime64(5, "ns"),
        np.str_("5"),
        np.bytes_(b"5"),
        datetime.timedelta(5),
        pd.NA,
        Decimal("sNaN"),
    ],
    ids=repr,
)
def test_what_only_looks_like_a_number_is_refused(value):
    with pytest.raises(WrongKind, match="give one number"):
        CATALOGUE["SYRUP_GRAVITY"](value)


def test_a_nan_of_any_kind_is_outside():
    for value in (float("nan"), np.float32("nan"), Decimal("nan")):
        with pytest.raises(OutOfLimits):
            CATALOGUE["SYRUP_GRAVITY"](value)


def test_the_steps_take_any_number_and_any_condition():
    for kind in (float, np.float64, np.float32, Decimal, Fraction):
        assert maths.sqrt(kind(4)) == 2.0
        assert maths.exp(kind(0)) == 1.0
        assert maths.log(kind(1)) == 0.0
        assert maths.floor(kind(2.5)) == 2
        assert maths.choose(kind(3) > kind(2), "yes", "no") == "yes"
        assert maths.choose(kind(1) > kind(2), "yes", "no") == "no"
        assert maths.require(kind(3) > kind(2), 5.0, "why") == 5.0
        with pytest.raises(FormulaError, match="why"):
            maths.require(kind(1) > kind(2), 5.0, "why")
    assert maths.lookup(np.str_("propane"), {"propane": 1.0}) == 1.0
    for step in (maths.sqrt, maths.exp, maths.log, maths.floor):
        with pytest.raises(TypeError):
            step("4")
