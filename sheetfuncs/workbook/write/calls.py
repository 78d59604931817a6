"""Calls of our functions inside a cell's formula, for each edition of the workbook."""

from __future__ import annotations

import functools
import re

from sheetfuncs.formulas.catalogue import CATALOGUE
from sheetfuncs.hosts import trace
from sheetfuncs.workbook.model import formula as formulas
from sheetfuncs.workbook.model.editions import Edition
from sheetfuncs.workbook.model.formula import LATER, Sort, Token

# Excel shows an @ before a function that may give a range where a cell does not say that it takes one.
WHOLE = re.compile(r"\d+\.0")
RANGES = frozenset(("INDEX", "OFFSET", "INDIRECT"))


@functools.cache
def has_calls(formula: str) -> bool:
    """Whether a formula calls a function of the catalogue."""
    return bool(formulas.calls(formula))


@functools.cache
def is_dynamic(formula: str, edition: Edition) -> bool:
    """Whether Excel itself would store the formula as that of a dynamic array, of one cell.

    It does for a call of a LAMBDA name, and for what gives a range when no @ stands before it.
    """
    if edition.by_name and has_calls(formula):
        return True
    return any(token.sort is Sort.CALL and token.name in RANGES for token in formulas.tokens(formula))


@functools.cache
def as_stored(formula: str, edition: Edition, system: str) -> str:
    """A formula as it stands in the file: UNITS filled in and, inline, each call written out.

    Names of cells may still stand in it: a column's formula is written out once, not in every row.
    """
    found = tuple(
        Token(Sort.TEXT, f'"{system}"') if token.sort is Sort.SYSTEM else token for token in formulas.tokens(formula)
    )
    return _written(found, edition.inline)


def _written(found: tuple[Token, ...], inline: bool) -> str:
    ours = [place for place, token in enumerate(found) if token.sort is Sort.CALL and token.name in CATALOGUE]
    if not inline or not ours:
        return "".join(map(_stored, found))
    if len(ours) > 1:
        text = "".join(token.text for token in found)
        raise ValueError(f"{text}: Calc computes one LET in a formula, no second; give that call a cell of its own")
    name = found[ours[0]].name
    arguments, end = formulas.arguments(found, ours[0] + 1)
    given = len(CATALOGUE[name].card.arguments)
    call = _template(name, tuple(arguments[given:])).format(*arguments)
    return "".join(map(_stored, found[: ours[0]])) + call + "".join(map(_stored, found[end:]))


def _stored(token: Token) -> str:
    if token.sort is Sort.CALL and token.name in LATER:
        return f"_xlfn.{token.text}"
    # a whole number with a nought behind its point is text to some programs
    return token.text[:-2] if token.sort is Sort.OTHER and WHOLE.fullmatch(token.text) else token.text


@functools.cache
def _template(name: str, units: tuple[str, ...]) -> str:
    """A function written out for numbered arguments; a workbook asks for the same few thousands of times."""
    card = CATALOGUE[name].card
    return trace.inline(card, [*(f"{{{number}}}" for number in range(len(card.arguments))), *units])
