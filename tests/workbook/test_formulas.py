"""Formulas are read when they are defined: tokens, brackets, names, sentences."""

from __future__ import annotations

import pytest

from sheetfuncs.workbook.model import formula
from sheetfuncs.workbook.model.editions import CARRIED, INLINE
from sheetfuncs.workbook.model.formula import NOTHING, Sort, WrongFormula, cases, check, say
from sheetfuncs.workbook.write import calls
from tests.tools import formulas


@pytest.mark.parametrize("system", ["US", "metric"])
def test_the_formulas_are_those_that_were_looked_at(system: str) -> None:
    known = formulas.path(system).read_text(encoding="utf-8")
    assert formulas.text(system) == known, "if meant: python -m tests.tools.formulas"


def sorts(text: str) -> list[tuple[str, str]]:
    return [(token.sort.name, token.text) for token in formula.tokens(text)]


def test_a_formula_is_read_into_tokens() -> None:
    assert sorts('IF([a^]>=1.5,@b.c,"x, UNITS")') == [
        ("CALL", "IF("), ("IN_ROW", "[a^]"), ("COMPARE", ">="), ("OTHER", "1.5"), ("COMMA", ","),
        ("CELL", "@b.c"), ("COMMA", ","), ("TEXT", '"x, UNITS"'), ("CLOSE", ")"),
    ]  # fmt: skip


def test_tokens_together_are_the_formula() -> None:
    for system in ("US", "metric"):
        for line in formulas.text(system).splitlines():
            text = line.partition(" = ")[2]
            assert "".join(token.text for token in formula.tokens(text)) == text


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("IF(1,2", "a bracket is not closed"),
        ("SUM(1))", "closes what was not opened"),
        ("SUM({1,2)", "closes what was not opened"),
        ("SUMM(1)", "there is no function SUMM"),
        ("SAP_PER_SYRUPP([a])", "there is no function SAP_PER_SYRUPP"),
        ("[nobody]+1", "there is no t.nobody"),
        ("@no.body", "there is no no.body"),
        ('"open', "cannot be read"),
    ],
)
def test_what_cannot_be_is_refused_with_its_place(text: str, words: str) -> None:
    with pytest.raises(WrongFormula, match="Sheet, cell") as caught:
        check(text, "Sheet, cell", {"t.a"}, "t")
    assert words in str(caught.value)


def test_names_and_calls_inside_quotes_are_words() -> None:
    text = '"Use SAP_SUGAR(1,2) and UNITS, ""so"""'
    check(text, "", set())
    assert calls.as_stored(text, INLINE, "US") == text
    assert not calls.has_calls(text)


def test_units_are_filled_in_and_later_functions_prefixed() -> None:
    assert calls.as_stored("WATER_BOILS([a],UNITS)", CARRIED, "metric") == 'WATER_BOILS([a],"metric")'
    assert calls.as_stored("MINIFS([a],[b],1)", CARRIED, "US") == "_xlfn.MINIFS([a],[b],1)"


def test_a_second_call_of_ours_is_refused_in_the_inline_edition() -> None:
    with pytest.raises(ValueError, match="a cell of its own"):
        calls.as_stored("WATER_BOILS(AIR_PRESSURE(1))", INLINE, "US")


def test_a_sentence_is_whole() -> None:
    said = say('Lot {lot}: is this "sap"?', lot="[lot]")
    assert said == '"Lot "&[lot]&": is this ""sap""?"'
    assert say("No parts.") == '"No parts."'
    assert say("{a}{b}", a="1", b="2") == "1&2"
    with pytest.raises(WrongFormula, match="no place for lot"):
        say("No parts.", lot="[lot]")
    with pytest.raises(KeyError):
        say("{lot}")


def test_a_part_that_compares_keeps_to_itself() -> None:
    assert say("It is {so}.", so="[a]>1") == '"It is "&([a]>1)&"."'
    assert say("It is {so}.", so="IF([a]>1,2,3)") == '"It is "&IF([a]>1,2,3)&"."'


def test_cases_are_asked_in_order() -> None:
    assert cases(("[a]=1", '"one"'), ("[a]=2", '"two"')) == 'IF([a]=1,"one",IF([a]=2,"two",""))'
    assert cases(otherwise="1") == "1"
    assert cases() == NOTHING


def test_every_sort_has_a_pattern() -> None:
    assert {token.sort for token in formula.tokens('a+SUM({1,2})<>UNITS&"x"&[a]&@b.c')} == set(Sort)
