"""A formula of a sheet, read once: its tokens, what is wrong with it, and sentences built whole.

Formulas name what they use instead of where it stands:

    [volume]            the cell of that column in the same row
    [volume-1]          the cell one row up; "" in the first row
    [volume^]           from the first row down to this one
    [volume<]           the rows above this one, from the heading down: never empty
    [volume~3]          this row and the three above it, as far as there are any
    @yard.elevation     a labelled cell
    @storage.volume     a whole column of a table
    UNITS               the workbook's unit system, as the functions take it
"""

from __future__ import annotations

import functools
import re
from collections.abc import Iterator
from enum import Enum
from string import Formatter
from typing import NamedTuple

from sheetfuncs.formulas.catalogue import CATALOGUE


class Sort(Enum):
    """What a piece of a formula is."""

    TEXT = r'"(?:[^"]|"")*"'
    IN_ROW = r"\[\w+?[-^~<]?\d*\]"
    CELL = r"@\w+\.\w+"
    CALL = r"[A-Z][A-Z0-9_.]*\("
    SYSTEM = r"\bUNITS\b"
    OPEN = r"[({]"
    CLOSE = r"[)}]"
    COMMA = r","
    COMPARE = r"<=|>=|<>|[=<>]"
    OTHER = r'[A-Za-z_][\w.]*|\d+\.?\d*(?:E[-+]?\d+)?|\.\d+|[^"\[@]'


class Token(NamedTuple):
    sort: Sort
    text: str

    @property
    def name(self) -> str:
        """The function that a call calls, or the name that a reference names."""
        return self.text.strip("([@])")


class InRow(NamedTuple):
    """A reference to a column of the same table, as `[key]` with a mark says it."""

    key: str
    mark: str
    step: int


SORTS = (None, *Sort)  # by the number of their group
TOKEN = re.compile("|".join(f"({sort.value})" for sort in Sort))
PLACEHOLDER = re.compile(r"\[(\w+?)([-^~<]?)(\d*)\]")

# What every spreadsheet of the last ten years has.  Those of LATER are stored with a prefix.
LATER = frozenset(("IFS", "MAXIFS", "MINIFS", "TEXTJOIN", "CONCAT", "XLOOKUP", "SWITCH"))
KNOWN = LATER | frozenset(
    "ABS AND AVEDEV AVERAGE AVERAGEIF AVERAGEIFS CHAR CHOOSE COLUMN COUNT COUNTA COUNTBLANK COUNTIF COUNTIFS DATE "
    "DAY EXACT EXP FALSE FIND FIXED FREQUENCY HOUR HYPERLINK IF IFERROR INDEX INT INTERCEPT ISBLANK ISERROR "
    "ISNUMBER ISTEXT LARGE LEFT LEN LN LOOKUP LOWER MATCH MAX MEDIAN MID MIN MINUTE MOD MONTH N NA NOT OR PI RANK "
    "REPT RIGHT ROUND ROUNDDOWN ROUNDUP ROW ROWS SEARCH SIGN SLOPE SMALL SQRT STDEV SUBSTITUTE SUM SUMIF SUMIFS "
    "SUMPRODUCT SUMSQ T TEXT TIME TODAY TRIM TRUE UPPER VALUE WEEKDAY YEAR".split()
)

NOTHING = '""'


class WrongFormula(ValueError):
    """A formula that no spreadsheet could compute; the message names its cell."""


@functools.cache
def tokens(formula: str) -> tuple[Token, ...]:
    """The pieces of a formula, in order; together they are the formula."""
    found, end = [], 0
    for match in TOKEN.finditer(formula):
        if match.start() != end:
            raise WrongFormula(f"cannot be read from {formula[end : match.start() + 10]!r}")
        sort = SORTS[match.lastindex or 0]
        assert sort
        found.append(Token(sort, match[0]))
        end = match.end()
    if end != len(formula):
        raise WrongFormula(f"cannot be read from {formula[end : end + 20]!r}")
    return tuple(found)


def in_row(text: str) -> InRow:
    """The parts of `[key]`, `[key-1]`, `[key^]` or `[key~3]`."""
    found = PLACEHOLDER.fullmatch(text)
    assert found, text
    return InRow(found[1], found[2], int(found[3] or 1))


def keys(formula: str) -> Iterator[str]:
    """The columns of its own row that a formula names."""
    for token in tokens(formula):
        if token.sort is Sort.IN_ROW:
            yield in_row(token.text).key


def calls(formula: str) -> list[str]:
    """The functions of the catalogue that a formula calls."""
    return [token.name for token in tokens(formula) if token.sort is Sort.CALL and token.name in CATALOGUE]


def check(formula: str, where: str, names: object = None, table: str = "") -> None:
    """Refuse a formula with brackets that do not match, or names that nobody knows.

    `names` are those of all cells and columns, as "block.key"; `table` is the formula's own.
    """
    try:
        _named(formula)
        _check(formula, names, table)
    except WrongFormula as error:
        raise WrongFormula(f"{where}: {error}\n  {formula}") from None


def _check(formula: str, names: object, table: str) -> None:
    for cell, key in _named(formula) if names is not None else ():
        name = cell or f"{table}.{key}"
        if name not in names:  # type: ignore[operator]
            raise WrongFormula(f"there is no {name}")


@functools.cache
def _named(formula: str) -> tuple[tuple[str, str], ...]:
    """What a formula names: a cell, or a column of its own row; refused where its brackets or functions are wrong."""
    opened = []
    found: dict[tuple[str, str], None] = {}
    for token in tokens(formula):
        if token.sort in (Sort.CALL, Sort.OPEN):
            opened.append("}" if token.text == "{" else ")")
        elif token.sort is Sort.CLOSE and (not opened or opened.pop() != token.text):
            raise WrongFormula(f"a {token.text} closes what was not opened")
        if token.sort is Sort.CALL and token.name not in CATALOGUE and token.name not in KNOWN:
            raise WrongFormula(f"there is no function {token.name}")
        if token.sort is Sort.CELL:
            found[token.name, ""] = None
        elif token.sort is Sort.IN_ROW:
            found["", in_row(token.text).key] = None
    if opened:
        raise WrongFormula(f"a bracket is not closed: {opened[-1]} is missing")
    return tuple(found)


def arguments(found: tuple[Token, ...], start: int) -> tuple[list[str], int]:
    """The arguments of the call whose token stands just before `start`, and the place behind its bracket."""
    given, depth, first = [], 0, start
    for place in range(start, len(found)):
        sort = found[place].sort
        if sort in (Sort.CALL, Sort.OPEN):
            depth += 1
        elif sort is Sort.CLOSE and depth:
            depth -= 1
        elif not depth and sort in (Sort.COMMA, Sort.CLOSE):
            given.append("".join(token.text for token in found[first:place]).strip())
            first = place + 1
            if sort is Sort.CLOSE:
                return given, place + 1
    raise WrongFormula("a bracket is not closed")


def text(words: str) -> str:
    """Words as a formula has them, in quotes."""
    return '"' + words.replace('"', '""') + '"'


def say(sentence: str, **parts: str) -> str:
    """A sentence whole, with the formulas of its parts: `say("Lot {lot}: boil it.", lot="[lot]")`."""
    pieces, used = [], set()
    for words, part, _, _ in Formatter().parse(sentence):
        if words:
            pieces.append(text(words))
        if part is not None:
            used.add(part)
            pieces.append(_operand(parts[part]))
    if used != set(parts):
        raise WrongFormula(f"{sentence!r} has no place for {', '.join(sorted(set(parts) - used))}")
    return "&".join(pieces) or NOTHING


def cases(*each: tuple[str, str], otherwise: str = NOTHING) -> str:
    """The value of the first condition that holds, or another."""
    formula = otherwise
    for condition, value in reversed(each):
        formula = f"IF({condition},{value},{formula})"
    return formula


def _operand(formula: str) -> str:
    """A formula as a part of a longer text: in brackets where a comparison would take its neighbours along."""
    depth = 0
    for token in tokens(formula):
        depth += (token.sort in (Sort.CALL, Sort.OPEN)) - (token.sort is Sort.CLOSE)
        if not depth and token.sort is Sort.COMPARE:
            return f"({formula})"
    return formula
