"""The few mathematical steps a relation may use.

They work on numbers and on what is `Traced`: the expressions of a spreadsheet's text, or whole
arrays.  What is not traced is a number; asking for it last keeps a plain call as cheap as `math`.
"""

from __future__ import annotations

import math
from collections.abc import Mapping
from typing import Any

from sheetfuncs.science.errors import NoSolution

# A number when computing, something traced when writing spreadsheet text or computing arrays.
Value = Any

# Slack for comparing a converted reading with a mark: 12 in is 0.3048 m only to the last bit.
TINY = 1e-9


class Traced:
    """What may stand for a number in a relation: it knows arithmetic, comparisons and these steps.

    A comparison gives a traced condition, which `choose` and `require` are asked of; a word of the
    caller's is traced too, and knows `lookup` and `is_not`.
    """

    __slots__ = ()

    def __bool__(self) -> bool:
        raise TypeError("a traced value is neither true nor false: use choose() of sheetfuncs.science.maths, not `if`")

    def sqrt(self) -> Any:
        raise NotImplementedError

    def exp(self) -> Any:
        raise NotImplementedError

    def log(self) -> Any:
        raise NotImplementedError

    def floor(self) -> Any:
        raise NotImplementedError

    def choose(self, yes: Any, no: Any) -> Any:
        raise NotImplementedError

    def require(self, value: Any, why: str) -> Any:
        raise NotImplementedError

    def lookup(self, table: Mapping[str, Any]) -> Any:
        raise NotImplementedError

    def is_not(self, word: str) -> Any:
        raise NotImplementedError


def fifteen(x: float) -> float:
    """A constant rounded to the 15 digits that a spreadsheet keeps of a number in a formula."""
    return float(f"{x:.15g}")


def sqrt(x: Value) -> Value:
    """Square root."""
    try:
        return math.sqrt(x)
    except TypeError:
        if isinstance(x, Traced):
            return x.sqrt()
        raise


def exp(x: Value) -> Value:
    """Natural exponential."""
    try:
        return math.exp(x)
    except TypeError:
        if isinstance(x, Traced):
            return x.exp()
        raise


def log(x: Value) -> Value:
    """Natural logarithm."""
    try:
        return math.log(x)
    except TypeError:
        if isinstance(x, Traced):
            return x.log()
        raise


def floor(x: Value) -> Value:
    """The whole number at or below x."""
    try:
        return math.floor(x)
    except TypeError:
        if isinstance(x, Traced):
            return x.floor()
        raise


def choose(condition: Value, yes: Value, no: Value) -> Value:
    """`yes` where the condition holds, else `no`; both are computed."""
    if condition is True or condition is False or not isinstance(condition, Traced):
        return yes if condition else no
    return condition.choose(yes, no)


def lookup(word: Value, table: Mapping[str, Value]) -> Value:
    """The value that stands beside a word; the caller has checked that the word is known."""
    if word.__class__ is not str and isinstance(word, Traced):
        return word.lookup(table)
    return table[word]


def require(condition: Value, value: Value, why: str) -> Value:
    """`value`, where the condition for a solution holds; else there is none, for this reason."""
    if condition is not True and isinstance(condition, Traced):
        return condition.require(value, why)
    if not condition:
        raise NoSolution(why)
    return value
