"""Every function in a real LibreOffice Calc, through the add-in, against the same function in Python."""

from __future__ import annotations

import random
from collections.abc import Iterator
from typing import Any

import office
import pytest
import xlsxwriter
from calc_office import Calc, Office, own_folder
from calls import BLANK, Call

from sheetfuncs.formulas.catalogue import CATALOGUE
from sheetfuncs.formulas.define import UNITS_WORDS, Card
from sheetfuncs.formulas.quantities import SYSTEMS, Argument
from sheetfuncs.hosts.calc.builder import write_addin
from sheetfuncs.hosts.cells import ERRORS, answer

# Calc's numbers of errors: LibreOffice Help, "Error Codes in LibreOffice Calc".
NUM, VALUE, DIV, NA, NAME = ({"error": number} for number in (503, 519, 532, 32767, 525))
BY_TEXT = {"#NUM!": NUM, "#VALUE!": VALUE, "#DIV/0!": DIV, "#N/A": NA}
# What Calc itself says of a required argument that is missing; it does not call the function then.
LEFT_OUT = ({"error": 502}, {"error": 504}, {"error": 511})


@pytest.fixture(scope="module")
def installed() -> Iterator[Office]:
    office.needed()
    with own_folder() as folder:
        made = Office(folder)
        write_addin(folder / "sheetfuncs.oxt")
        done = made.unopkg("add", folder / "sheetfuncs.oxt")
        assert done.returncode == 0, done.stderr
        yield made


@pytest.fixture(scope="module")
def calc(installed: Office) -> Iterator[Calc]:
    with installed.calc() as running:
        yield running


def in_calc(calc: Calc, calls: list[Call]) -> list[Any]:
    """What Calc gives for each call, its arguments standing in cells."""
    width = max(len(call.given) for call in calls)
    assert width < len("ABCDEFG")
    plain = [["" if v == BLANK or v is None or v in ERRORS else v for v in call.given] for call in calls]
    calc.open()
    calc.data(f"A1:{'ABCDEFG'[width - 1]}{len(calls)}", [row + [""] * (width - len(row)) for row in plain])
    errors = {
        f"{column}{row}": f"={value}"
        for row, call in enumerate(calls, 1)
        for column, value in zip("ABCDEFG", call.given, strict=False)
        if value in ERRORS
    }
    calc.fill(errors)
    formulas = []
    for row, call in enumerate(calls, 1):
        places = [f"{c}{row}" if value is not None else "" for c, value in zip("ABCDEFG", call.given, strict=False)]
        formulas.append([f"={call.name}({';'.join(places)})"])
    calc.formulas(f"H1:H{len(calls)}", formulas)
    return [row[0] for row in calc.read(f"H1:H{len(calls)}")]


def in_python(call: Call) -> Any:
    """What Python gives for a call, as Calc shows it."""
    given = answer(CATALOGUE[call.name], [0.0 if value == BLANK else value for value in call.given])
    return BY_TEXT.get(given, given) if isinstance(given, str) else float(given)


def check(calc: Calc, calls: list[Call]) -> None:
    wrong = [
        (call, got, wanted)
        for call, got, wanted in zip(calls, in_calc(calc, calls), map(in_python, calls), strict=True)
        if got != wanted
    ]
    assert not wrong, f"{len(wrong)} of {len(calls)}: {wrong[:5]}"


def inside(argument: Argument, system: str, chance: random.Random) -> Any:
    if argument.allowed:
        return chance.choice(argument.allowed)
    low, high = argument.limits(system)
    return chance.choice((low, high, chance.uniform(low, high), chance.uniform(low, high)))


def random_calls(times: int, seed: int = 1) -> list[Call]:
    chance = random.Random(seed)  # noqa: S311 (the same numbers in each run)
    return [
        Call(
            name, (*(inside(argument, system, chance) for argument in card.arguments.values()), *[system] * card.units)
        )
        for name, card in CARDS.items()
        for system in (SYSTEMS if card.units else SYSTEMS[:1])
        for _ in range(times)
    ]


CARDS: dict[str, Card] = {name: function.card for name, function in CATALOGUE.items()}
NUMBERS = {name: [i for i, a in enumerate(card.arguments.values()) if not a.allowed] for name, card in CARDS.items()}


def with_argument(name: str, position: int, value: Any) -> Call:
    given = list(CARDS[name].example[0])
    given[position] = value
    return Call(name, tuple(given))


def test_the_examples_and_a_thousand_random_calls_give_the_same_double(calc: Calc) -> None:
    examples = [Call(name, card.example[0]) for name, card in CARDS.items()]
    check(calc, examples + random_calls(15))


def test_units_left_out_means_us(calc: Calc) -> None:
    calls = [Call(call.name, call.given[:-1]) for call in random_calls(2, seed=2) if call.given[-1] == "US"]
    assert len(calls) > 40
    check(calc, calls)
    assert in_calc(calc, [Call(c.name, (*c.given, None)) for c in calls]) == in_calc(calc, calls)


def test_capitals_do_not_count(calc: Calc) -> None:
    upper, lower = calc.computed('=WATER_BOILS(1000;"METRIC")', '=water_boils(1000;"metric")')
    assert upper == lower == CATALOGUE["WATER_BOILS"](1000, "metric")


def test_outside_the_limits_is_num(calc: Calc) -> None:
    calls = [
        with_argument(name, position, beyond)
        for name, card in CARDS.items()
        for position in NUMBERS[name]
        for low, high in [list(card.arguments.values())[position].limits(card.example[0][-1] if card.units else "US")]
        for beyond in (low - 0.001, high * 1.001)
    ]
    assert in_calc(calc, calls) == [NUM] * len(calls)


def test_text_is_value(calc: Calc) -> None:
    """Text for a number; an unknown word, a number or a blank for a word; the same for `units`."""
    calls = [with_argument(name, position, "a lot") for name in CARDS for position in NUMBERS[name]]
    for name, card in CARDS.items():
        words = [i for i, argument in enumerate(card.arguments.values()) if argument.allowed]
        words += [len(card.arguments)] * card.units
        calls += [with_argument(name, position, wrong) for position in words for wrong in ("cubits", 3.0, BLANK)]
    assert len(calls) > 100
    assert in_calc(calc, calls) == [VALUE] * len(calls)


def test_an_error_in_is_that_error_out(calc: Calc) -> None:
    calls = [
        with_argument(n, i, error)
        for n, card in CARDS.items()
        for i in range(len(card.parameters))
        for error in BY_TEXT
    ]
    assert in_calc(calc, calls) == [BY_TEXT[error] for _ in range(len(calls) // len(BY_TEXT)) for error in BY_TEXT]


def test_a_blank_cell_is_nought(calc: Calc) -> None:
    check(calc, [with_argument(name, position, BLANK) for name in CARDS for position in NUMBERS[name]])


def test_a_required_argument_left_out_is_refused_by_calc(calc: Calc) -> None:
    """Not the #N/A of other hosts: Calc knows that the argument is required, and does not call the function."""
    calls = [with_argument(n, i, None) for n, card in CARDS.items() for i in range(len(card.arguments))]
    calls += [Call(name, (card.example[0][0],)) for name, card in CARDS.items() if len(card.arguments) > 1]
    assert all(answer in LEFT_OUT for answer in in_calc(calc, calls))


def test_text_that_reads_as_a_number_is_that_number_as_for_every_function_of_calc(calc: Calc) -> None:
    calc.open()
    calc.fill({"A1": "'66.9", "B1": "=FINISH_TEMP(A1;29.92)", "B2": "=SQRT(A1)", "B3": "=ISTEXT(A1)"})
    values = [row[0] for row in calc.read("B1:B3")]
    assert values == [CATALOGUE["FINISH_TEMP"](66.9, 29.92), 66.9**0.5, 1.0]


def test_a_range_is_computed_element_by_element(calc: Calc) -> None:
    """For each function a column of its first number, among them a blank, a text and errors: each keeps its own."""
    for name, card in CARDS.items():
        if not NUMBERS[name]:
            continue
        at = NUMBERS[name][0]
        low, high = list(card.arguments.values())[at].limits("US")
        column = [low, (low + high) / 2, BLANK, "a lot", "", "#DIV/0!", "#N/A", high * 1.01, high]
        calc.open()
        cells = {f"A{row}": v for row, v in enumerate(column, 1) if v != BLANK and v != ""}
        calc.fill({place: f"={v}" if v in BY_TEXT else v for place, v in cells.items()} | {"A5": '=""'})
        given = [f'"{v}"' if isinstance(v, str) else repr(v) for v in card.example[0][: len(card.arguments)]]
        given[at] = "A1:A9"
        calc.fill_array("C1:C9", f"={name}({';'.join(given)})")
        singles = [Call(name, with_argument(name, at, v).given[: len(card.arguments)]) for v in column]
        expected = [[in_python(call)] for call in singles]
        assert calc.read("C1:C9") == expected, name


def test_ranges_beside_each_other(calc: Calc) -> None:
    """A column and a row make a table; where one range ends before the other there is an error."""
    calc.open()
    calc.data("A1:A3", [[60.0], [66.9], [70.0]])
    calc.data("C1:D1", [[29.0, 30.0]])
    finish = CATALOGUE["FINISH_TEMP"]
    calc.fill_array("F1:G3", "=FINISH_TEMP(A1:A3;C1:D1)")
    assert calc.read("F1:G3") == [[finish(brix, pressure) for pressure in (29.0, 30.0)] for brix in (60.0, 66.9, 70.0)]
    calc.fill_array("I1:I3", "=FINISH_TEMP(A1:A3;{29|30})")
    assert calc.read("I1:I3") == [[finish(60.0, 29.0)], [finish(66.9, 30.0)], [VALUE]]
    calc.fill_array("K1:K1", "=SUM(FINISH_TEMP(A1:A3;29))")
    assert calc.read("K1") == [[pytest.approx(sum(finish(brix, 29.0) for brix in (60.0, 66.9, 70.0)), rel=1e-15)]]


def test_a_result_takes_part_in_a_formula_like_any_other(calc: Calc) -> None:
    finish = CATALOGUE["FINISH_TEMP"](66.9, 29.92)
    assert calc.computed(
        '=ROUND(FINISH_TEMP(66.9;29.92);1)&" °F"',
        '=IF(TAP_COUNT(13)=1;"one";"not one")',
        '=IFERROR(FINISH_TEMP(99;29.92);"no")',
        "=ISNUMBER(JAR_COUNT(1;16))",
        "=SUM(FINISH_TEMP(99;29.92);1)",
        '=SYRUP_STATE(66.9)="in range"',
    ) == [f"{finish:.1f} °F", "one", "no", 1.0, NUM, 1.0]


def test_the_wizard_tells_each_argument(calc: Calc) -> None:
    for name, card in CARDS.items():
        told = calc.describe(name)
        assert told["Name"] == name
        assert told["Description"].startswith(card.summary)
        assert card.returns in told["Description"] and card.result.symbol in told["Description"]
        arguments = told["Arguments"]
        assert [argument[0] for argument in arguments] == list(card.parameters)
        assert [argument[2] for argument in arguments] == [False] * len(card.arguments) + [True] * card.units
        for (_, words, _), argument in zip(arguments, card.arguments.values(), strict=False):
            assert argument.words in words and argument.limit_words in words
        if card.units:
            assert arguments[-1][1] == UNITS_WORDS


def test_a_call_without_a_sheet(calc: Calc) -> None:
    assert calc.call("SHEETFUNCS.FUNCTIONS.FINISH_TEMP", [66.9, 29.92, "US"]) == CATALOGUE["FINISH_TEMP"](66.9, 29.92)


def test_twenty_thousand_calls(calc: Calc) -> None:
    chance = random.Random(3)  # noqa: S311
    given = [[chance.uniform(0, 85), chance.uniform(25, 31)] for _ in range(20000)]
    calc.open()
    calc.data("A1:B20000", given)
    calc.fill_down("C1:C20000", "=FINISH_TEMP(A1;B1)")
    finish = CATALOGUE["FINISH_TEMP"]
    assert calc.read("C1:C20000") == [[finish(*pair)] for pair in given]


def test_a_workbook_that_carries_its_functions_is_computed_by_the_addin(installed: Office, calc: Calc) -> None:
    """The carried names are given another meaning here, to see which of the two Calc runs."""
    path = installed.folder / "carried.xlsx"
    with xlsxwriter.Workbook(path) as book:
        sheet = book.add_worksheet()
        for row, (name, card) in enumerate(CARDS.items()):
            book.define_name(name, f"=_xlfn.LAMBDA({','.join(f'_xlop.{p}' for p in card.parameters)},-1)")
            given = ",".join(f'"{v}"' if isinstance(v, str) else repr(v) for v in card.example[0])
            sheet.write_dynamic_array_formula(row, 0, row, 0, f"={name}({given})", None, -2)
    calc.open(path)
    calc.recalculate()
    expected = [[in_python(Call(name, card.example[0]))] for name, card in CARDS.items()]
    assert calc.read(f"A1:A{len(CARDS)}") == expected
