"""The few mathematical steps a relation may use.

They work on numbers and on traced expressions alike.  A traced expression is any object
that answers the method of the same name (see `sheetfuncs.hosts.trace`); trying the number
first keeps a plain call as cheap as `math` itself.
"""

from __future__ import annotations

import math
from collections.abc import Mapping
from typing import Any

from sheetfuncs.science.errors import NoSolution

# A number when computing, a traced expression when writing spreadsheet text.
Value = Any

# Slack for comparing a converted reading with a mark: 12 in is 0.3048 m only to the last bit.
TINY = 1e-9


def fifteen(x: float) -> float:
    """A constant rounded to the 15 digits that a spreadsheet keeps of a number in a formula."""
    return float(f"{x:.15g}")


def sqrt(x: Value) -> Value:
    """Square root."""
    try:
        return math.sqrt(x)
    except TypeError:
        return x.sqrt()


def exp(x: Value) -> Value:
    """Natural exponential."""
    try:
        return math.exp(x)
    except TypeError:
        return x.exp()


def log(x: Value) -> Value:
    """Natural logarithm."""
    try:
        return math.log(x)
    except TypeError:
        return x.log()


def floor(x: Value) -> Value:
    """The whole number at or below x."""
    try:
        return math.floor(x)
    except TypeError:
        return x.floor()


def choose(condition: Value, yes: Value, no: Value) -> Value:
    """`yes` where the condition holds, else `no`; both are computed."""
    if condition is True or condition is False:
        return yes if condition else no
    return condition.choose(yes, no)


def lookup(word: Value, table: Mapping[str, Value]) -> Value:
    """The value that stands beside a word; the caller has checked that the word is known."""
    if word.__class__ is str:
        return table[word]
    return word.lookup(table)


def require(condition: Value, value: Value, why: str) -> Value:
    """`value`, where the condition for a solution holds; else there is none, for this reason."""
    if condition is True:
        return value
    if condition is False:
        raise NoSolution(why)
    return condition.require(value)
