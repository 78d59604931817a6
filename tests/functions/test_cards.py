"""Each function's card: complete, true, and shown alike by `help` and the command line."""

from __future__ import annotations

import doctest

import pytest

import sheetfuncs
from sheetfuncs import cli
from sheetfuncs.formulas.catalogue import CATALOGUE, STAGES
from sheetfuncs.formulas.define import define
from sheetfuncs.formulas.quantities import SUGAR, number
from sheetfuncs.science.errors import FormulaError

EACH = pytest.mark.parametrize("function", CATALOGUE.values(), ids=CATALOGUE)


@EACH
def test_the_example_runs_and_is_true(function):
    parsed = doctest.DocTestParser().get_doctest(function.__doc__, {}, function.__name__, None, 0)
    assert parsed.examples
    said: list[str] = []
    doctest.DocTestRunner().run(parsed, out=said.append)
    assert not said, "".join(said)


@EACH
def test_the_card_tells_every_argument_its_meaning_limits_and_unit(function):
    said = " ".join(function.__doc__.split())
    for name, argument in function.card.arguments.items():
        assert f"{name}: {argument.words}; {argument.limit_words}" in said
    assert ("units: " in said) == function.card.units


@EACH
def test_the_card_tells_result_errors_and_source(function):
    card, said = function.card, " ".join(function.__doc__.split())
    assert f"Returns: {card.returns}, {card.result.symbol}" in said
    for error in ("#NUM! (OutOfLimits)", "#VALUE! (WrongKind)", "#N/A (LeftOut)"):
        assert error in said
    assert f"Source: {card.source} Example:" in said
    assert card.summary.endswith(".") or ": " in card.summary
    assert card.notes in said


@EACH
def test_the_example_is_one_a_cell_can_hold(function):
    given, expected = function.card.example
    assert len(given) == len(function.card.parameters)
    assert not isinstance(expected, str) or not expected.startswith("#")


@EACH
def test_the_command_line_shows_the_card(function, capsys):
    assert cli.main(["functions", function.__name__.lower()]) == 0
    shown = capsys.readouterr().out
    assert function.card.call in shown
    assert function.__doc__ in shown


def test_the_command_line_lists_every_function(capsys):
    assert cli.main(["functions"]) == 0
    lines = capsys.readouterr().out.splitlines()
    assert [line.split()[0] for line in lines] == list(CATALOGUE)


def test_an_unknown_function_is_refused_in_one_line(capsys):
    assert cli.main(["functions", "MAPLE_MAGIC"]) == 2
    shown = capsys.readouterr()
    assert shown.out == ""
    assert shown.err.startswith("sheetfuncs: MAPLE_MAGIC: ") and shown.err.count("\n") == 1


def test_the_package_gives_every_function_and_error_by_name():
    named = {name: getattr(sheetfuncs, name) for name in sheetfuncs.__all__}
    assert len(named) == len(sheetfuncs.__all__)
    errors = {name for name, value in named.items() if isinstance(value, type) and issubclass(value, FormulaError)}
    assert errors == {"FormulaError", "LeftOut", "NoSolution", "OutOfLimits", "WrongKind"}
    assert {name: value for name, value in named.items() if name not in errors} == CATALOGUE


def test_no_two_stages_define_the_same_function():
    defined = [name for stage in STAGES for name, value in vars(stage).items() if hasattr(value, "card")]
    assert sorted(defined) == sorted(CATALOGUE)


@EACH
def test_a_function_has_one_name(function):
    assert function.__name__ == function.card.name
    assert CATALOGUE[function.__name__] is function


def test_a_definition_that_names_other_arguments_is_refused():
    def relation(brix):
        return brix

    with pytest.raises(TypeError, match="brix"):
        define("strength", SUGAR, source="none", example=((1.0,), 1.0), sugar=number("sugar", SUGAR, 0.0, 1.0))(
            relation
        )
