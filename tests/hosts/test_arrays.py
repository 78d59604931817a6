"""Many values at once: what is of arrays only.

That every function gives in arrays what it gives alone, for every row of the reference tables and
thousands of other calls, `test_reference` and `test_agreement` show.
"""

from __future__ import annotations

import doctest
import inspect
import subprocess
import sys
import time
from decimal import Decimal
from fractions import Fraction

import numpy as np
import pandas as pd
import pytest

import sheetfuncs
from sheetfuncs import FormulaError, LeftOut, NoSolution, OutOfLimits, WrongKind, arrays
from sheetfuncs.formulas.catalogue import CATALOGUE
from sheetfuncs.hosts.elements import BLOCK
from tests.tools.arguments import FACES, example

EACH = pytest.mark.parametrize(("card", "system"), FACES, ids=[f"{card.name}-{system}" for card, system in FACES])
NAN = float("nan")
WORDS = ["SYRUP_STATE", "SYRUP_GRADE"]


def alone(name, *given):
    """The plain call of each element, in a loop."""

    def one(*values):
        try:
            return CATALOGUE[name](*values)
        except FormulaError:
            return None if CATALOGUE[name].card.result.words else NAN

    return [one(*values) for values in zip(*given, strict=True)]


def columns(card, system, count):
    """Arguments inside the limits and a little beyond them, drawn the same on every run."""
    chance = np.random.default_rng(11)
    for argument in card.arguments.values():
        if argument.allowed:
            yield chance.choice(argument.allowed, count)
        else:
            low, high = argument.limits(system)
            yield chance.uniform(low - 0.01 * (high - low), high, count)
    if card.units:
        yield np.full(count, system)


def same(got, expected, card):
    if card.result.words:
        return list(got) == expected
    return np.allclose(got, np.array(expected, dtype=float), rtol=1e-12, atol=1e-12, equal_nan=True)


@EACH
def test_more_elements_than_one_block(card, system):
    given = list(columns(card, system, 2 * BLOCK + 5))
    got = getattr(arrays, card.name)(*given)
    assert got.shape == (2 * BLOCK + 5,)
    assert got.dtype == (object if card.result.words else np.float64)
    at = [0, 1, BLOCK - 1, BLOCK, 2 * BLOCK - 1, 2 * BLOCK, 2 * BLOCK + 4, *range(5, 2 * BLOCK, 97)]
    expected = alone(card.name, *([column.tolist()[place] for place in at] for column in given))
    assert same(got[at], expected, card)


@EACH
def test_every_kind_of_many_values(card, system):
    given = example(card, system)
    function = getattr(arrays, card.name)
    expected = [CATALOGUE[card.name](*given)] * 3
    place = next((place for place, argument in enumerate(card.arguments.values()) if not argument.allowed), None)
    if place is None:
        assert same(function([given[0]] * 3, *given[1:]), expected, card)
        return
    value = given[place]
    for many in (
        [value] * 3,
        (value,) * 3,
        np.array([value] * 3),
        np.array([value] * 3, dtype=object),
        [Decimal(value)] * 3,
        [value, Fraction(value), np.float64(value)],
        np.ma.masked_array([value] * 3, mask=False),
        np.array([value, 0, value, 0, value, 0])[::2],
    ):
        got = function(*given[:place], many, *given[place + 1 :])
        assert type(got) is np.ndarray
        assert same(got, expected, card)


@EACH
def test_an_array_beside_single_values(card, system):
    """Each argument in turn many; the others at either end of their limits, where much has no solution."""
    numbers = [name for name, argument in card.arguments.items() if not argument.allowed]
    given = dict(zip(card.parameters, example(card, system), strict=True))
    for many in numbers:
        low, high = card.arguments[many].limits(system)
        column = [low, given[many], (low + high) / 2, high]
        for end in (0, 1, None):
            single = {n: card.arguments[n].limits(system)[end] if end is not None else given[n] for n in numbers}
            named = {**given, **single, many: column}
            rows = [[named[name] if name != many else value for name in card.parameters] for value in column]
            got = getattr(arrays, card.name)(**named)
            assert same(got, alone(card.name, *zip(*rows, strict=True)), card), named


@EACH
def test_single_values_only_are_the_plain_call(card, system):
    given = example(card, system)
    got, expected = getattr(arrays, card.name)(*given), CATALOGUE[card.name](*given)
    assert got == expected and type(got) is type(expected)
    named = dict(zip(card.parameters, given, strict=True))
    for kind in (np.array, lambda value: np.array(value)[()]):
        assert getattr(arrays, card.name)(**{name: kind(value) for name, value in named.items()}) == expected


@EACH
def test_an_argument_left_out_or_unknown_is_refused(card, system):
    given, function = example(card, system), getattr(arrays, card.name)
    for name in card.arguments:
        rest = {other: [value] for other, value in zip(card.parameters, given, strict=True) if other != name}
        with pytest.raises(LeftOut, match=f"{card.name}: {name} is left out"):
            function(**rest)
    with pytest.raises(TypeError, match="bogus"):
        function(*([value] for value in given), bogus=3)
    with pytest.raises(WrongKind, match="nan, raise"):
        function(*([value] for value in given), errors="ignore")


def test_they_broadcast():
    brix, air = np.array([[60.0], [66.9]]), np.array([28.0, 29.0, 30.0])
    got = arrays.FINISH_TEMP(brix, air)
    assert got.tolist() == [[pytest.approx(sheetfuncs.FINISH_TEMP(b, a)) for a in air] for b in brix[:, 0]]
    assert arrays.SYRUP_STATE([[60.0, 66.9], [70.0, 99.0]]).tolist() == [["thin", "in range"], ["thick", None]]
    assert arrays.FINISH_TEMP([], 29.92).shape == (0,)
    with pytest.raises(WrongKind, match=r"brix has \(2,\), pressure has \(3,\)"):
        arrays.FINISH_TEMP([60.0, 66.9], [28.0, 29.0, 30.0])
    with pytest.raises(WrongKind, match="not of one length"):
        arrays.FINISH_TEMP([[60.0], [66.9, 67.0]], 29.92)


def test_units_and_words_may_be_many_too():
    given = ([29.92, 1013.25, 29.92, 29.92], ["US", "METRIC", "furlongs", None])
    got = arrays.WATER_BOILS(*given)
    us = sheetfuncs.WATER_BOILS(29.92)
    assert got == pytest.approx([us, sheetfuncs.WATER_BOILS(1013.25, "metric"), NAN, us], nan_ok=True)
    fuels = pd.Series(["propane", "Hardwood", "coal"], dtype="category")
    got = arrays.BOIL_FUEL(373000.0, fuels, 0.5, ["US", "metric", "US"])
    expected = alone("BOIL_FUEL", [373000.0] * 3, list(fuels), [0.5] * 3, ["US", "metric", "US"])
    assert got.tolist() == pytest.approx(expected, nan_ok=True)


def test_a_series_keeps_its_index():
    brix = pd.Series([60.0, None, 99.0], index=["early", "lost", "wrong"])
    got = arrays.FINISH_TEMP(brix, 29.92)
    assert isinstance(got, pd.Series)
    assert list(got.index) == list(brix.index)
    assert got.isna().tolist() == [False, True, True]
    assert got["early"] == pytest.approx(sheetfuncs.FINISH_TEMP(60.0, 29.92))
    both = arrays.FINISH_TEMP(brix, pd.Series([29.92] * 3, index=brix.index))
    assert both.equals(got)
    assert arrays.SYRUP_STATE(brix).isna().tolist() == [False, True, True]
    with pytest.raises(WrongKind, match="pressure has another index than brix"):
        arrays.FINISH_TEMP(brix, pd.Series([29.92] * 3))
    with pytest.raises(WrongKind, match=r"shape \(2,\) has no place in a Series of 1"):
        arrays.FINISH_TEMP(pd.Series([60.0]), [29.92, 30.0])
    nullable = pd.Series([60.0, pd.NA, 99.0], dtype="Float64", index=brix.index)
    assert arrays.FINISH_TEMP(nullable, 29.92).equals(got)


def test_an_element_without_a_result_is_nan_or_none():
    odd = [66.9, "66.9", None, NAN, True, [1.0], 1j, 10**400, b"5", np.datetime64(5, "D"), pd.NA]
    got = arrays.SYRUP_GRAVITY(np.array([*odd, None], dtype=object)[:-1])
    assert np.isnan(got).tolist() == [place not in (0, 4) for place in range(len(odd))]
    assert got[4] == sheetfuncs.SYRUP_GRAVITY(1.0)
    for text in (["66.9"], np.array(["66.9"]), np.array([b"66.9"]), np.array([5], dtype="M8[D]"), np.array([1j])):
        assert np.isnan(arrays.SYRUP_GRAVITY(text)).all()
    masked = np.ma.masked_array([66.9, 66.9], mask=[False, True])
    assert np.isnan(arrays.SYRUP_GRAVITY(masked)).tolist() == [False, True]
    assert arrays.SYRUP_STATE(masked).tolist() == ["in range", None]


def test_an_error_can_be_raised_and_names_the_element():
    with pytest.raises(OutOfLimits, match=r"^element 1 \(counted from 0\): FINISH_TEMP: brix is 99\.0; .* 0 to 85"):
        arrays.FINISH_TEMP([66.9, 99.0, 98.0], 29.92, errors="raise")
    with pytest.raises(OutOfLimits, match=r"^element 1, 0 "):
        arrays.FINISH_TEMP([[66.9], [99.0]], 29.92, errors="raise")
    with pytest.raises(NoSolution, match=r"^element 2 .*stronger"):
        arrays.BOIL_WATER(40.0, [2.0, 3.0, 70.0], 66.9, errors="raise")
    with pytest.raises(WrongKind, match=r"^element 0 .*one of US, metric"):
        arrays.WATER_BOILS(29.92, ["furlongs"], errors="raise")
    assert arrays.FINISH_TEMP([66.9], 29.92, errors="raise") == [pytest.approx(sheetfuncs.FINISH_TEMP(66.9, 29.92))]


def test_a_single_value_that_is_wrong_is_wrong_for_all():
    for given, error in (
        (([66.9], 3.0), OutOfLimits),
        (([66.9], "maple"), WrongKind),
        (([66.9], 29.92, "furlongs"), WrongKind),
        (([66.9], 29.92, ""), WrongKind),
        (([66.9], None), LeftOut),
    ):
        with pytest.raises(error, match=r"^FINISH_TEMP: "):
            arrays.FINISH_TEMP(*given)
    assert np.isnan(arrays.FINISH_TEMP([66.9], 1013.25, ["US"]))  # its limits are known of each element only


def test_what_is_given_stays_as_it_was():
    brix = np.array([99.0, 66.9])
    arrays.FINISH_TEMP(brix, 29.92)
    assert brix.tolist() == [99.0, 66.9]


@EACH
def test_the_card_and_the_example_are_true(card, system):
    function = getattr(arrays, card.name)
    assert inspect.signature(function).parameters.keys() == {*card.parameters, "errors"}
    assert card.summary in function.__doc__
    run_examples(function.__doc__)


def test_the_example_of_the_module_is_true():
    run_examples(arrays.__doc__)
    assert sorted(arrays.__all__) == sorted(CATALOGUE)


def run_examples(text):
    parsed = doctest.DocTestParser().get_doctest(text, {}, "arrays", None, 0)
    assert parsed.examples
    said: list[str] = []
    doctest.DocTestRunner().run(parsed, out=said.append)
    assert not said, "".join(said)


def test_without_numpy_the_plain_functions_run_and_arrays_says_what_it_needs():
    code = "import sys; sys.modules['numpy'] = None; import sheetfuncs; print(sheetfuncs.SYRUP_STATE(66.9))\n"
    code += "try: import sheetfuncs.arrays\nexcept ImportError as error: print(error)"
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert done.stdout.splitlines() == ["in range", "sheetfuncs.arrays needs numpy: pip install 'sheetfuncs[arrays]'"]


def test_a_list_needs_no_pandas():
    code = (
        "import sys; from sheetfuncs.arrays import SYRUP_STATE; print(SYRUP_STATE([66.9])[0], 'pandas' in sys.modules)"
    )
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert done.stdout == "in range False\n"


def test_a_hundred_thousand_elements_are_ten_times_faster_than_a_loop():
    """Of processor time, so that other work on the machine does not count."""
    chance = np.random.default_rng(3)
    brix, air = chance.uniform(0.0, 85.0, 100000), chance.uniform(25.0, 31.0, 100000)
    pairs = list(zip(brix.tolist(), air.tolist(), strict=True))
    times = []
    for work in (lambda: arrays.FINISH_TEMP(brix, air), lambda: [sheetfuncs.FINISH_TEMP(b, p) for b, p in pairs]):
        best = min(_seconds(work) for _ in range(3))
        times.append(best)
    assert times[1] >= 10.0 * times[0], times


def _seconds(work):
    start = time.process_time()
    work()
    return time.process_time() - start
