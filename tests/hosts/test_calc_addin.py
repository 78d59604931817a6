"""What is Calc's own about the add-in, in a real LibreOffice; that the functions give what they must give,
`test_reference` and `test_agreement` show for this host as for the others."""

from __future__ import annotations

import random
from collections.abc import Iterator
from typing import Any

import pytest
import xlsxwriter

from sheetfuncs import FINISH_TEMP
from sheetfuncs.formulas.card import UNITS_WORDS, Card
from sheetfuncs.formulas.catalogue import CATALOGUE
from sheetfuncs.hosts.cells import ERRORS, answer
from tests.tools import office
from tests.tools.arguments import FACES, example, replaced
from tests.tools.calc_office import Calc, Office
from tests.tools.calls import BLANK

CARDS = [card for card, system in FACES if system == "US"]
EACH = pytest.mark.parametrize("card", CARDS, ids=lambda card: card.name)


pytestmark = pytest.mark.xdist_group("LibreOffice with the add-in")


@pytest.fixture(scope="module")
def calc(addin_office: Office) -> Iterator[Calc]:
    with addin_office.calc() as running:
        yield running


def in_python(name: str, given: tuple[Any, ...]) -> Any:
    value = answer(CATALOGUE[name], [0.0 if one == BLANK else one for one in given])
    return value if isinstance(value, str) else float(value)


def written(value: Any) -> str:
    return f'"{value}"' if isinstance(value, str) else repr(value)


def first_number(card: Card) -> int:
    """The place of the first argument that is a number; of the first of all, where none is."""
    return next((place for place, argument in enumerate(card.arguments.values()) if not argument.allowed), 0)


@EACH
def test_the_wizard_tells_each_argument(calc: Calc, card: Card) -> None:
    told = calc.describe(card.name)
    assert told["Name"] == card.name
    assert told["Description"].startswith(card.summary)
    assert card.returns in told["Description"] and card.result.symbol in told["Description"]
    names, words, optional = zip(*told["Arguments"], strict=True)
    assert names == card.parameters
    assert optional == (False,) * len(card.arguments) + (True,) * card.units
    for said, argument in zip(words, card.arguments.values(), strict=False):
        assert argument.words in said and argument.limit_words in said
    assert not card.units or words[-1] == UNITS_WORDS


@EACH
def test_a_range_is_computed_element_by_element(calc: Calc, card: Card) -> None:
    """A column of the first number, or word: a blank, a text and errors among it keep their places."""
    at = first_number(card)
    given = example(card, "US")
    argument = list(card.arguments.values())[at]
    low, high = argument.limits("US")
    good = argument.allowed[:4] or (low, (low + high) / 2, high * 1.01, high)
    column = [*good[:2], BLANK, "a lot", "#DIV/0!", "#N/A", *good[2:], ""]
    calc.open()
    calc.fill({f"A{row}": f"={value}" if value in ERRORS else value for row, value in enumerate(column, 1) if value})
    calc.fill({"A3": "", "A9": '=""'})
    texts = [written(value) for value in replaced(given, at, "")]
    texts[at] = "A1:A9"
    calc.fill_array("C1:C9", f"={card.name}({';'.join(texts)})")
    assert calc.read("C1:C9") == [[in_python(card.name, replaced(given, at, value))] for value in column]


def test_ranges_beside_each_other(calc: Calc) -> None:
    """A column and a row make a table; where one range ends before the other there is an error."""
    calc.open()
    calc.data("A1:A3", [[60.0], [66.9], [70.0]])
    calc.data("C1:D1", [[29.0, 30.0]])
    calc.fill_array("F1:G3", "=FINISH_TEMP(A1:A3;C1:D1)")
    assert calc.read("F1:G3") == [[FINISH_TEMP(brix, inches) for inches in (29.0, 30.0)] for brix in (60.0, 66.9, 70.0)]
    calc.fill_array("I1:I3", "=FINISH_TEMP(A1:A3;{29|30})")
    assert calc.read("I1:I3") == [[FINISH_TEMP(60.0, 29.0)], [FINISH_TEMP(66.9, 30.0)], ["#VALUE!"]]
    calc.fill_array("K1:K1", "=SUM(FINISH_TEMP(A1:A3;29))")
    assert calc.read("K1")[0][0] == pytest.approx(sum(FINISH_TEMP(brix, 29.0) for brix in (60.0, 66.9, 70.0)))


def test_in_a_plain_cell_a_range_is_never_taken_for_its_first_cell(calc: Calc) -> None:
    """As for Calc's own functions it is the cell of the same row, and beyond the range an error."""
    calc.open()
    calc.data("A1:A3", [[60.0], [66.9], [70.0]])
    calc.fill({"B2": "=FINISH_TEMP(A1:A3;29.92)", "B9": "=FINISH_TEMP(A1:A3;29.92)", "C2": "=SQRT(A1:A3)"})
    assert calc.read("B2:C2") == [[FINISH_TEMP(66.9, 29.92), 66.9**0.5]]
    assert calc.read("B9") == [["#VALUE!"]]


def test_a_result_takes_part_in_a_formula_like_any_other(calc: Calc) -> None:
    assert calc.computed(
        '=ROUND(FINISH_TEMP(66.9;29.92);1)&" °F"',
        '=IF(TAP_COUNT(13)=1;"one";"not one")',
        '=IFERROR(FINISH_TEMP(99;29.92);"no")',
        "=ISNUMBER(JAR_COUNT(1;16))",
        "=SUM(FINISH_TEMP(99;29.92);1)",
        '=SYRUP_STATE(66.9)="in range"',
        "=finish_temp(66.9;29.92)",
    ) == [f"{FINISH_TEMP(66.9, 29.92):.1f} °F", "one", "no", 1.0, "#NUM!", 1.0, FINISH_TEMP(66.9, 29.92)]


@EACH
def test_calc_itself_refuses_when_a_required_argument_is_left_out(calc: Calc, card: Card) -> None:
    """Not with the #N/A of other hosts: the function is not even called."""
    given = example(card, "US")
    required = [written(value) for value in given[: len(card.arguments)]]
    for place in range(len(required)):
        emptied = calc.computed(f"={card.name}({';'.join(replaced(tuple(required), place, ''))})")
        ended = calc.computed(f"={card.name}({';'.join(required[:place])})")
        assert {*emptied, *ended} <= {"Err:502", "Err:504", "Err:511"}, card.name


def test_a_range_for_units_is_refused_at_once(calc: Calc) -> None:
    """Nothing is computed for its cells, were they a whole column; one cell is no range."""
    calc.open()
    calc.fill({"A1": "metric", "A2": "US", "B1": "=FINISH_TEMP(66.9;1013.25;A1)", "B2": "=FINISH_TEMP(66.9;30;A1:A2)"})
    assert calc.read("B1:B2") == [[FINISH_TEMP(66.9, 1013.25, "metric")], ["#VALUE!"]]
    calc.fill({"B2": "=FINISH_TEMP(66.9;30;A:A)", "B3": "=COUNTA(A:A)"})
    assert calc.read("B2:B3") == [["#VALUE!"], [2.0]]
    assert calc.recalculate() < 4.0
    calc.fill_array("C1:C2", "=FINISH_TEMP(66.9;30;A1:A2)")
    assert calc.read("C1:C2") == [["#VALUE!"], ["#VALUE!"]]


def test_text_that_reads_as_a_number_is_that_number_as_for_every_function_of_calc(calc: Calc) -> None:
    calc.open()
    calc.fill({"A1": "'66.9", "B1": "=FINISH_TEMP(A1;29.92)", "B2": "=SQRT(A1)", "B3": "=ISTEXT(A1)"})
    assert calc.read("B1:B3") == [[FINISH_TEMP(66.9, 29.92)], [66.9**0.5], [1.0]]


def test_a_call_without_a_sheet(calc: Calc) -> None:
    assert calc.call("SHEETFUNCS.FUNCTIONS.FINISH_TEMP", [66.9, 29.92, "US"]) == FINISH_TEMP(66.9, 29.92)


def test_twenty_thousand_calls(calc: Calc) -> None:
    chance = random.Random(3)  # noqa: S311 (the same numbers in each run)
    given = [[chance.uniform(0, 85), chance.uniform(25, 31)] for _ in range(20000)]
    calc.open()
    calc.data("A1:B20000", given)
    calc.fill_down("C1:C20000", "=FINISH_TEMP(A1;B1)")
    assert calc.read("C1:C20000") == [[FINISH_TEMP(brix, pressure)] for brix, pressure in given]


def test_a_workbook_that_carries_its_functions_is_computed_by_the_addin(addin_office: Office, calc: Calc) -> None:
    """The carried names are given another meaning here, to see which of the two Calc runs."""
    office.needed()  # LibreOffice 7.4 does not find an add-in's functions in an .xlsx
    path = addin_office.folder / "carried.xlsx"
    with xlsxwriter.Workbook(path) as book:
        sheet = book.add_worksheet()
        for row, card in enumerate(CARDS):
            book.define_name(card.name, f"=_xlfn.LAMBDA({','.join(f'_xlop.{p}' for p in card.parameters)},-1)")
            given = ",".join(map(written, card.example[0]))
            sheet.write_dynamic_array_formula(row, 0, row, 0, f"={card.name}({given})", None, -2)
    calc.open(path)
    calc.recalculate()
    assert calc.read(f"A1:A{len(CARDS)}") == [[in_python(card.name, card.example[0])] for card in CARDS]
