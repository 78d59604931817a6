"""What a call says that has no result: which argument, its value, its limits and their unit."""

from __future__ import annotations

import math
from contextlib import suppress
from decimal import Decimal
from typing import Any

import pytest

from sheetfuncs import FormulaError, LeftOut, NoSolution, OutOfLimits, WrongKind
from sheetfuncs.formulas.catalogue import CATALOGUE
from tests.tools.arguments import FACES, example, replaced

NAMES = [f"{card.name}-{system}" for card, system in FACES]
# Each number of each function in each unit system, and each word.
NUMBERS, WORDS = (
    [
        pytest.param(card, system, place, name, argument, id=f"{card.name}-{name}-{system}")
        for card, system in FACES
        for place, (name, argument) in enumerate(card.arguments.items())
        if bool(argument.allowed) == words
    ]
    for words in (False, True)
)
EACH_NUMBER = pytest.mark.parametrize(("card", "system", "place", "name", "argument"), NUMBERS)
EACH_WORD = pytest.mark.parametrize(("card", "system", "place", "name", "argument"), WORDS)


def refusal(card: Any, given: tuple[Any, ...]) -> FormulaError:
    with pytest.raises(FormulaError) as refused:
        CATALOGUE[card.name](*given)
    return refused.value


@EACH_NUMBER
def test_the_ends_of_the_limits_are_inside(card, system, place, name, argument):
    for end in argument.limits(system):
        with suppress(NoSolution):  # it is allowed; with the rest of the example there may be no solution
            CATALOGUE[card.name](*replaced(example(card, system), place, end))


@EACH_NUMBER
def test_the_next_number_outside_is_refused_and_named(card, system, place, name, argument):
    low, high = argument.limits(system)
    for value in (math.nextafter(low, -math.inf), math.nextafter(high, math.inf), -math.inf, math.inf, math.nan):
        error = refusal(card, replaced(example(card, system), place, value))
        assert type(error) is OutOfLimits
        assert error.cell == "#NUM!"
        for part in (card.name, name, repr(value), argument.words, argument.range_words(system)):
            assert part in str(error)
        unit = argument.quantity.unit(system).symbol
        assert str(error).endswith(unit)


@EACH_NUMBER
def test_a_whole_number_beyond_any_float_is_outside_too(card, system, place, name, argument):
    for value in (10**400, -(10**400)):
        assert type(refusal(card, replaced(example(card, system), place, value))) is OutOfLimits


@EACH_NUMBER
def test_what_is_no_number_is_refused_and_named(card, system, place, name, argument):
    for value in ("maple", "5", "", b"5", 1j, object()):
        error = refusal(card, replaced(example(card, system), place, value))
        assert type(error) is WrongKind
        assert error.cell == "#VALUE!"
        for part in (card.name, name, repr(value), argument.range_words(system)):
            assert part in str(error)


@EACH_WORD
def test_an_unknown_word_is_refused_with_the_known_ones(card, system, place, name, argument):
    for value in ("coal", "", 5.0, True, b"propane"):
        error = refusal(card, replaced(example(card, system), place, value))
        assert type(error) is WrongKind
        for part in (card.name, name, repr(value), *argument.allowed):
            assert part in str(error)


@pytest.mark.parametrize(("card", "system"), FACES, ids=NAMES)
def test_an_argument_left_out_is_named_with_its_meaning(card, system):
    for place, (name, argument) in enumerate(card.arguments.items()):
        for given in (replaced(example(card, system), place, None), example(card, system)[:place]):
            error = refusal(card, given)
            assert type(error) is LeftOut
            assert error.cell == "#N/A"
            for part in (card.name, name, argument.words):
                assert part in str(error)


@pytest.mark.parametrize("card", [card for card, system in FACES if card.units and system == "US"])
def test_units(card):
    given = example(card, "US")
    function = CATALOGUE[card.name]
    assert function(*given[:-1]) == function(*given)  # left out: US
    assert function(*given[:-1], None) == function(*given)
    assert function(*given[:-1], "us") == function(*given)
    assert function(*example(card, "metric")[:-1], "METRIC") == function(*example(card, "metric"))
    for value in ("furlongs", "", 1.0, True, b"US"):
        error = refusal(card, (*given[:-1], value))
        assert type(error) is WrongKind
        for part in (card.name, "units", repr(value), "US", "metric"):
            assert part in str(error)


@pytest.mark.parametrize(
    ("name", "given", "words"),
    [
        ("BOIL_WATER", (40.0, 70.0, 66.9), "stronger"),
        ("BOIL_BRIX", (40.0, 2.0, 0.0), "no volume"),
        ("BOIL_BRIX", (40.0, 2.0, 0.5), "85 °Brix"),
        ("BRIX_BY_BOIL", (210.0, 211.0), "colder than water"),
        ("BRIX_BY_BOIL", (300.0, 175.0), "hotter than 85 °Brix"),
        ("BRIX_BY_HYDROMETER", (85.0, 221.0), "over 85 °Brix"),
        ("SAP_AFTER_ICE", (2.0, 0.5, 5.0), "more sugar than the sap"),
        ("BRIX_BY_BOIL_SPREAD", (210.0, 211.0, 0.5, "today"), "colder than water"),
        ("BRIX_BY_SAP_HYDROMETER", (85.0, 221.0, 38.0), "over 85 °Brix"),
        ("BRIX_BY_WEIGHT", (10.0, 10.0, 20.0, 50.0), "water weighs nothing"),
        ("BRIX_BY_WEIGHT", (1.0, 10.0, 9.75, 50.0), "less than the water"),
        ("BRIX_BY_WEIGHT", (1.0, 10.0, 2.0, 50.0), "less than the water"),
        ("BRIX_BY_WEIGHT", (1.0, 10.0, 14.5, 50.0), "over 85 °Brix"),
        ("BRIX_BY_WEIGHT", (1.0, 10.0, 100.0, 50.0), "over 85 °Brix"),
        ("SAP_RUNS", (45.0, 45.0, 30.0), "swapped"),
        ("SAP_RUNS", (24.0, 26.0, 43.0), "lowest of three nights"),
        ("SEASON_WARMTH", (45.0, 30.0), "swapped"),
        ("SYRUP_BLEND", (0.0, 64.0, 0.0, 70.0), "both volumes are 0"),
        ("SYRUP_BLEND_SHARE", (64.0, 70.0, 63.0), "not between"),
        ("SYRUP_FLOATS", (1.0, 150.0), "below the 0 mark"),
    ],
)
def test_no_solution_says_why_and_of_what(name, given, words):
    function = CATALOGUE[name]
    ways = (float, lambda value: int(value) if value == int(value) else value, Decimal)  # not every call takes the same
    for way in ways:
        values = [value if isinstance(value, str) else way(value) for value in given]
        with pytest.raises(NoSolution, match=words) as refused:
            function(*values)
        assert refused.value.cell == "#NUM!"
        assert str(refused.value).startswith(f"{name}: ")
        for argument, value in zip(function.card.arguments, values, strict=True):
            assert f"{argument} is {value!r}" in str(refused.value)


def test_each_kind_of_error_is_one_error_of_a_cell():
    assert (OutOfLimits.cell, NoSolution.cell, WrongKind.cell, LeftOut.cell) == ("#NUM!", "#NUM!", "#VALUE!", "#N/A")
    assert issubclass(FormulaError, ValueError)
