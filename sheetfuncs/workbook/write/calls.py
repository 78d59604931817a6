"""Calls of our functions inside a cell's formula, for each edition of the workbook."""

from __future__ import annotations

import functools
import re

from sheetfuncs.formulas.catalogue import CATALOGUE
from sheetfuncs.hosts import trace

_OURS = re.compile(r"\b(" + "|".join(sorted(CATALOGUE, key=len, reverse=True)) + r")\(")
_LATER = re.compile(r"(?<![.\w])(MINIFS|MAXIFS|XLOOKUP|IFS|TEXTJOIN)\(")


@functools.cache
def has_calls(formula: str) -> bool:
    """Whether a formula calls a function of the catalogue."""
    return _OURS.search(formula) is not None


def as_stored(formula: str, edition: str, system: str) -> str:
    """A formula as it stands in the file: UNITS filled in and, inline, each call written out.

    Names of cells may still stand in it: a column's formula is written out once, not in every row.
    """
    text = re.sub(r"\bUNITS\b", f'"{system}"', formula)
    if edition == "inline":
        text = _written_out(text)
    return _LATER.sub(r"_xlfn.\1(", text)


def _written_out(text: str) -> str:
    found = _OURS.search(text)
    if not found:
        return text
    arguments, end = split_arguments(text, found.end())
    if _OURS.search(text, found.end()):
        raise ValueError(f"{text}: Calc computes one LET in a formula, no second; give that call a cell of its own")
    given = len(CATALOGUE[found[1]].card.arguments)
    return text[: found.start()] + _template(found[1], tuple(arguments[given:])).format(*arguments) + text[end:]


@functools.cache
def _template(name: str, units: tuple[str, ...]) -> str:
    """A function written out for numbered arguments; a workbook asks for the same few thousands of times."""
    card = CATALOGUE[name].card
    return trace.inline(card, [*(f"{{{number}}}" for number in range(len(card.arguments))), *units])


def split_arguments(text: str, start: int) -> tuple[list[str], int]:
    """The arguments of a call whose bracket has just opened, and where it ends."""
    arguments, depth, first, in_quotes = [], 0, start, False
    for position in range(start, len(text)):
        mark = text[position]
        if mark == '"':
            in_quotes = not in_quotes
        elif in_quotes:
            continue
        elif mark in "({":
            depth += 1
        elif mark in ")}" and depth:
            depth -= 1
        elif mark == "," and not depth:
            arguments.append(text[first:position].strip())
            first = position + 1
        elif mark == ")":
            arguments.append(text[first:position].strip())
            return arguments, position + 1
    raise ValueError(f"a bracket is not closed in {text}")
