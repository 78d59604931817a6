"""Expressions: what a relation builds when its arguments are names instead of numbers.

An `Expression` takes part in arithmetic and comparison like a number and answers the
functions of `sheetfuncs.science.maths`; what comes out is a tree that `trace` writes as
spreadsheet text.
"""

from __future__ import annotations

from collections.abc import Mapping
from decimal import Decimal
from typing import Any, Union

from sheetfuncs.science.maths import Traced

Operand = Union["Expression", float, int, str]

# How tightly an operator holds its operands, as a spreadsheet reads it.
COMPARISONS = ("=", "<>", "<", "<=", ">", ">=")
BINDING = {**dict.fromkeys(COMPARISONS, 1), "+": 2, "-": 2, "*": 3, "/": 3, "^": 4}


class Expression(Traced):
    """One step: an operator or function and its operands.

    `head` is an operator of `BINDING`, a function's name with its bracket (`SQRT(`), or, where
    there are no operands, the text of a name or a constant.
    """

    __slots__ = ("head", "operands")

    def __init__(self, head: str, *operands: Operand) -> None:
        self.head = head
        self.operands = tuple(constant(operand) for operand in operands)

    def __add__(self, other: Operand) -> Expression:
        return Expression("+", self, other)

    def __radd__(self, other: Operand) -> Expression:
        return Expression("+", other, self)

    def __sub__(self, other: Operand) -> Expression:
        return Expression("-", self, other)

    def __rsub__(self, other: Operand) -> Expression:
        return Expression("-", other, self)

    def __mul__(self, other: Operand) -> Expression:
        return Expression("*", self, other)

    def __rmul__(self, other: Operand) -> Expression:
        return Expression("*", other, self)

    def __truediv__(self, other: Operand) -> Expression:
        return Expression("/", self, other)

    def __rtruediv__(self, other: Operand) -> Expression:
        return Expression("/", other, self)

    def __pow__(self, other: Operand) -> Expression:
        return Expression("^", self, other)

    def __neg__(self) -> Expression:
        return Expression("-", 0, self)  # a leading minus would bind before ^

    def __lt__(self, other: Operand) -> Expression:
        return Expression("<", self, other)

    def __le__(self, other: Operand) -> Expression:
        return Expression("<=", self, other)

    def __gt__(self, other: Operand) -> Expression:
        return Expression(">", self, other)

    def __ge__(self, other: Operand) -> Expression:
        return Expression(">=", self, other)

    def sqrt(self) -> Expression:
        return Expression("SQRT(", self)

    def exp(self) -> Expression:
        return Expression("EXP(", self)

    def log(self) -> Expression:
        return Expression("LN(", self)

    def floor(self) -> Expression:
        return Expression("INT(", self)

    def is_not(self, word: str) -> Expression:
        """Whether this is another word; capitals do not count, as ever in a spreadsheet."""
        return Expression("<>", self, word)

    def choose(self, yes: Operand, no: Operand) -> Expression:
        return Expression("IF(", self, yes, no)

    def require(self, value: Operand, why: str) -> Expression:
        return Expression("IF(", self, value, NUM)

    def lookup(self, table: Mapping[str, Operand]) -> Operand:
        """The value beside a word.  The last word is not asked for: guards refuse unknown ones."""
        *others, (_, value) = table.items()
        for word, other in reversed(others):
            if _same(other, value):
                continue
            value = Expression("IF(", Expression("=", self, word), other, value)
        return value


def _same(one: Operand, other: Operand) -> bool:
    return not isinstance(one, Expression) and not isinstance(other, Expression) and one == other


def constant(value: Operand) -> Expression:
    """A constant as a spreadsheet reads it: plain decimals, at most 15 digits, text quoted."""
    if isinstance(value, Expression):
        return value
    if isinstance(value, str):
        return Expression('"' + value.replace('"', '""') + '"')
    digits = Decimal(repr(float(value)))
    if len(digits.normalize().as_tuple().digits) > 15:
        raise ValueError(f"a spreadsheet keeps 15 digits of a number, {value!r} has more: round it with fifteen()")
    text = f"{digits:f}"
    return Expression(text[:-2] if text.endswith(".0") else text)


def total(terms: list[Expression]) -> Expression:
    """The sum of at least one term; for conditions it counts how many hold, cell by cell."""
    result = terms[0]
    for term in terms[1:]:
        result = result + term
    return result


NUM, VALUE, NA = Expression("#NUM!"), Expression("#VALUE!"), Expression("#N/A")


def written(expression: Expression, child_texts: list[str]) -> str:
    """The text of one step, from the texts of its operands."""
    if not expression.operands:
        return expression.head
    if expression.head in BINDING:
        return expression.head.join(child_texts)
    return f"{expression.head}{','.join(child_texts)})"


def needs_brackets(parent: Expression, child: Any, position: int) -> bool:
    """Whether an operand must stand in brackets.  Never regroups: a+(b+c) keeps its brackets,
    since the last bit of a double depends on them."""
    if parent.head not in BINDING:
        return False
    if child.head in BINDING and child.operands:
        inner, outer = BINDING[child.head], BINDING[parent.head]
        return inner < outer or (inner == outer and (position > 0 or inner in (1, 4)))
    return not child.operands and child.head.startswith("-")
