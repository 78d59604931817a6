"""Functions as spreadsheet text: sizes, constants, and that tracing keeps each step as it was."""

from __future__ import annotations

import random
import re
from pathlib import Path

import pytest
import xlsxwriter

from sheetfuncs.formulas.catalogue import CATALOGUE
from sheetfuncs.hosts.embedded import Model
from sheetfuncs.hosts.expression import Expression, constant
from sheetfuncs.hosts.trace import MOST_CHARACTERS, MOST_NAMES, TooLong, inline, lambda_body, written_let
from sheetfuncs.science.maths import choose, fifteen
from tests.tools.arguments import FACES


def _written(card, system):
    cells = [f"$A${row}" for row, _ in enumerate(card.arguments, 1)]
    return inline(card, cells + [f'"{system}"'] * card.units)


TEXTS = {f"{name}-LAMBDA": lambda_body(function.card) for name, function in CATALOGUE.items()}
TEXTS |= {f"{card.name}-LET-{system}": _written(card, system) for card, system in FACES}
EACH = pytest.mark.parametrize("text", TEXTS.values(), ids=TEXTS)
QUOTED = re.compile(r'"[^"]*"')
NUMBER = re.compile(r"(?<![\w.$])\d+(?:\.\d+)?(?![\w.])")


@EACH
def test_a_body_fits_a_spreadsheet(text):
    assert len(text) <= MOST_CHARACTERS == 8000
    names = set(re.findall(r"_xlpm\.\w+(?=,)", text))
    assert len(names) <= MOST_NAMES == 120


@EACH
def test_constants_are_plain_decimals_of_15_digits_at_most(text):
    bare = QUOTED.sub("", text)
    assert not re.search(r"\d[eE][+-]?\d", bare)
    for number in NUMBER.findall(bare):
        assert len(number.replace(".", "").strip("0")) <= 15, number


@EACH
def test_only_functions_that_every_spreadsheet_knows(text):
    called = set(re.findall(r"([A-Za-z_.]+)\(", QUOTED.sub("", text)))
    known = {
        "IF",
        "FIND",
        "POWER",
        "SQRT",
        "EXP",
        "LN",
        "INT",
        "ISTEXT",
        "_xlfn.LET",
        "_xlfn.LAMBDA",
        "_xlfn.ISOMITTED",
    }
    assert called <= known


def test_the_unit_system_of_a_let():
    card = CATALOGUE["WATER_BOILS"].card
    assert inline(card, ["A1", '"furlongs"']) == 'FIND("?","")'
    assert inline(card, ["A1", '"METRIC"']) == inline(card, ["A1", '"metric"']) != inline(card, ["A1", '"US"'])
    assert inline(card, ["A1"]) == inline(card, ["A1", '"US"'])


def test_a_traced_value_is_no_condition_of_an_if():
    with pytest.raises(TypeError, match="choose"):
        bool(Expression("A1") < 1.0)


def test_a_constant_of_more_than_15_digits_is_refused():
    with pytest.raises(ValueError, match="fifteen"):
        constant(1.0 / 3.0)
    assert constant(fifteen(1.0 / 3.0)).head == "0.333333333333333"
    assert constant(1e-7).head == "0.0000001"
    assert constant(5.0).head == "5"
    assert constant('a "b"').head == '"a ""b"""'


def test_a_body_over_the_limit_is_refused():
    value = Expression("A1")
    for _ in range(MOST_NAMES + 2):
        value = value * value
    with pytest.raises(TooLong):
        written_let(value)


def _random_expression(draw: random.Random, depth: int, leaves: list):
    """Nested arithmetic on the leaves, as an expression or as a number: whatever the leaves are."""
    if depth == 0:
        return draw.choice(leaves)
    one, other = (_random_expression(draw, draw.randrange(depth), leaves) for _ in range(2))
    step = draw.randrange(6)
    if step == 0:
        return one + other
    if step == 1:
        return one - other
    if step == 2:
        return one * other
    if step == 3:
        return one / (other * other + 1.0)
    if step == 4:
        return -one
    return choose(one < other, one - other, other)


def test_nested_steps_give_the_same_double_in_the_embedded_engine(tmp_path: Path):
    draw = random.Random(7)  # noqa: S311 (the same every time)
    rows = [[fifteen(draw.uniform(-10.0, 10.0)) for _ in range(3)] for _ in range(300)]
    path = tmp_path / "nested.xlsx"
    expected = []
    with xlsxwriter.Workbook(path) as book:
        sheet = book.add_worksheet("Nested")
        for row, values in enumerate(rows):
            sheet.write_row(row, 0, values)
            names = [Expression(f"{column}{row + 1}") for column in "ABC"]
            sheet.write_formula(row, 3, "=" + written_let(_random_expression(random.Random(row), 5, names)))  # noqa: S311
            expected.append(_random_expression(random.Random(row), 5, values))  # noqa: S311
    got = Model(path).values({"Nested": [(row, 3) for row in range(len(rows))]})["Nested"]
    assert [got[row, 3] for row in range(len(rows))] == expected
