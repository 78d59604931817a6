"""The functions in JavaScript, for Google Sheets and for Office, run in node.

That every function gives what Python gives, for every row of the reference tables and thousands of
other calls, `test_reference` and `test_agreement` show.  Neither Sheets nor Excel is here.
"""

from __future__ import annotations

import json
import re
from typing import Any

import pytest

from sheetfuncs.formulas.catalogue import CATALOGUE
from sheetfuncs.formulas.define import define
from sheetfuncs.formulas.quantities import SUGAR, number
from sheetfuncs.hosts.script import office
from sheetfuncs.hosts.script.javascript import SHARED, function_text
from sheetfuncs.hosts.script.sheets import script_text
from sheetfuncs.science.maths import choose, exp, log, require, sqrt
from tests.tools.scripts import by_office_rows, node

FILES = office.files("https://maple.example/sugar/")
METADATA = json.loads(FILES["functions.json"])["functions"]
GRAVITY, FINISH = CATALOGUE["SYRUP_GRAVITY"], CATALOGUE["FINISH_TEMP"]


def in_sheets(expression: str) -> Any:
    """What an expression gives in the script for Sheets; what is thrown comes as {"thrown": text}."""
    caught = f"try {{ tell({expression}); }} catch (error) {{ tell({{ thrown: error.message }}); }}"
    return node(f"{script_text()}\n{caught}")


# Sheets


def test_each_function_is_global_and_nothing_else_is_public() -> None:
    declared = re.findall(r"^function (\w+)\((.*?)\)", script_text(), re.M)
    public = {name: arguments for name, arguments in declared if not name.endswith("_")}
    assert list(public) == list(CATALOGUE)
    for name, arguments in public.items():
        assert arguments.split(", ") == list(CATALOGUE[name].card.parameters)


def test_each_function_says_in_its_comment_what_it_is_for() -> None:
    """JSDoc with @customfunction: Sheets shows it while a formula is typed."""
    comments = dict(re.findall(r"/\*\*\n((?: \*.*\n)+?) \*/\nfunction (\w+)\(", script_text()))
    said = {name: text for text, name in comments.items()}
    assert list(said) == list(CATALOGUE)
    for name, text in said.items():
        card = CATALOGUE[name].card
        assert text.startswith(f" * {card.sentence}\n")
        assert text.endswith(" * @customfunction\n")
        for parameter, words in card.parameter_help.items():
            assert re.search(rf" \* @param {{.*}} \[?{parameter}\]? {re.escape(words)}\n", text)


def test_a_lone_cell_throws_the_errors_text() -> None:
    assert in_sheets("SYRUP_GRAVITY(99)") == {"thrown": "#NUM!"}
    assert in_sheets('SYRUP_GRAVITY("maple")') == {"thrown": "#VALUE!"}
    assert in_sheets("FINISH_TEMP(66.9)") == {"thrown": "#N/A"}
    assert in_sheets('SYRUP_GRAVITY("#DIV/0!")') == {"thrown": "#DIV/0!"}
    assert in_sheets('SYRUP_GRAVITY(new Error("#REF!"))') == {"thrown": "#REF!"}
    assert in_sheets('SYRUP_GRAVITY(new Error("what nobody foresaw"))') == {"thrown": "#VALUE!"}


def test_a_column_keeps_each_answer() -> None:
    """A number, an empty cell, a text, an error, a number outside the limits."""
    column = '[[66.9], [""], ["maple"], ["#DIV/0!"], [99]]'
    expected = [[GRAVITY(66.9)], [GRAVITY(0.0)], ["#VALUE!"], ["#DIV/0!"], ["#NUM!"]]
    assert in_sheets(f"SYRUP_GRAVITY({column})") == expected


def test_a_row_and_a_column_make_a_table_and_a_missing_cell_is_not_available() -> None:
    table = in_sheets("FINISH_TEMP([[60, 66.9]], [[29], [30], [30.5]])")
    assert table == [[FINISH(brix, pressure) for brix in (60.0, 66.9)] for pressure in (29.0, 30.0, 30.5)]
    assert in_sheets("FINISH_TEMP([[60], [66.9]], [[29], [30], [30.5]])")[2] == ["#N/A"]
    assert in_sheets("FINISH_TEMP([[60, 66.9]], [[29, 30, 30.5]])")[0][2] == "#N/A"
    assert in_sheets("FINISH_TEMP([[66.9]], 29)") == [[FINISH(66.9, 29.0)]]


def test_dates_and_truth_are_numbers() -> None:
    """Day 45 is 13 February 1900, whose day 0 is 30 December 1899; 18:00 is three quarters of a day."""
    assert in_sheets("SYRUP_GRAVITY(new Date(1900, 1, 13, 18))") == GRAVITY(45.75)
    assert in_sheets("SYRUP_GRAVITY(true)") == GRAVITY(1.0)
    assert in_sheets("SYRUP_GRAVITY(false)") == GRAVITY(0.0)


# Office


def test_the_metadata_is_of_the_cards() -> None:
    """Ids are letters and digits, each once; names and arguments are those of the catalogue."""
    assert [one["name"] for one in METADATA] == list(CATALOGUE)
    ids = [one["id"] for one in METADATA]
    assert len(set(ids)) == len(ids)
    for one in METADATA:
        card = CATALOGUE[one["name"]].card
        assert re.fullmatch(r"[A-Z0-9]+", one["id"])
        assert one["description"] == card.sentence
        assert {part["name"]: part["description"] for part in one["parameters"]} == card.parameter_help
        assert all(part["optional"] and part["dimensionality"] == "matrix" for part in one["parameters"])
        assert one["result"] == {"type": "any", "dimensionality": "matrix"}


def test_each_function_is_tied_to_its_id() -> None:
    tied = re.findall(
        r'^CustomFunctions\.associate\("(\w+)", \((.*)\) => cell_\((\w+)_, \[(.*)\]\)\);$', FILES["functions.js"], re.M
    )
    assert [(identity, name) for identity, _, name, _ in tied] == [(one["id"], one["name"]) for one in METADATA]
    for _, arguments, name, passed in tied:
        assert arguments == passed == ", ".join(CATALOGUE[name].card.parameters)


def test_rows_of_cells_go_in_and_out() -> None:
    """Empty cells come as null or 0; a text that is empty is a text."""
    column = [[66.9], [None], [0], [""], ["#DIV/0!"], ["#SPILL!"], [99]]
    (answer,) = by_office_rows([("SYRUP_GRAVITY", [column])])
    assert answer == [[GRAVITY(66.9)], [GRAVITY(0.0)], [GRAVITY(0.0)], ["#VALUE!"], ["#DIV/0!"], ["#VALUE!"], ["#NUM!"]]
    (answer,) = by_office_rows([("FINISH_TEMP", [[[60, 66.9]], [[29], [30]]])])
    assert answer == [[FINISH(brix, pressure) for brix in (60.0, 66.9)] for pressure in (29.0, 30.0)]


# From the trace to statements


def run(relation: Any, *given: float) -> Any:
    """A relation of two numbers as JavaScript, for these arguments; an error is its text."""
    wide = number("a number", SUGAR, -100.0, 100.0)
    made = define("what comes out", SUGAR, "none", ((1.0, 1.0), 1.0), a=wide, b=wide)(relation)
    text = function_text(made.card)
    call = f"try {{ tell(TRIED_({', '.join(map(repr, given))})); }} catch (error) {{ tell(error.message); }}"
    return node(f"{SHARED}\n{text}\n{call}")


def test_a_check_stands_before_what_it_guards_and_takes_its_brackets() -> None:
    """A difference behind a check is still a factor; only the side that is taken is computed."""

    def TRIED(a: Any, b: Any) -> Any:
        """Tried."""
        return require(a <= b, b - a, "no") * 3.0

    assert run(TRIED, 1.0, 5.0) == 12.0
    assert run(TRIED, 5.0, 1.0) == "#NUM!"


def test_a_step_on_one_side_alone_is_computed_there() -> None:
    def TRIED(a: Any, b: Any) -> Any:
        """Tried."""
        inner = require(b > 0.0, choose(b > 10.0, log(b), sqrt(b)), "no")
        return choose(a > 0.0, exp(a) + inner, a - b)

    assert run(TRIED, -1.0, -2.0) == 1.0
    assert run(TRIED, 1.0, -2.0) == "#NUM!"
    assert run(TRIED, 0.5, 4.0) == pytest.approx(3.6487212707001282, rel=1e-15)


def test_counts_of_conditions_are_numbers_and_conditions() -> None:
    def TRIED(a: Any, b: Any) -> Any:
        """Tried."""
        count = (a > 0.0) + (b > 0.0)
        return count * 10.0 + choose((a > 5.0) * (b > 5.0), 1.0, 0.0) + choose(count - 1.0, 0.5, 0.0)

    assert run(TRIED, 1.0, -1.0) == 10.0
    assert run(TRIED, 6.0, 7.0) == 21.5
    assert run(TRIED, -1.0, -1.0) == 0.5


def test_the_same_double_where_sums_and_powers_are_bracketed() -> None:
    def TRIED(a: Any, b: Any) -> Any:
        """Tried."""
        return (a + (b + 0.1)) - (a - (b - 0.3)) / (a / (b / 7.0)) - (a * a + 1.0) ** 0.5

    assert run(TRIED, 0.3, 0.7) == TRIED(0.3, 0.7)
    assert run(TRIED, -33.3, 17.77) == TRIED(-33.3, 17.77)
