"""A function of the catalogue as spreadsheet text: a LAMBDA to carry in a workbook, or an inline LET.

The function's own relation runs once with names for arguments.  Steps that are used more than
once become names of a LET, and what Python checks before computing is written in front.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from sheetfuncs.formulas.card import Card
from sheetfuncs.formulas.define import compute
from sheetfuncs.formulas.quantities import SYSTEMS, System
from sheetfuncs.hosts.expression import NA, NUM, VALUE, Expression, constant, needs_brackets, total, written

MOST_CHARACTERS = 8000  # Excel takes 8,192
MOST_NAMES = 120  # Excel takes 126 in a LET, LibreOffice 127

LET = "_xlfn.LET("
# Errors that a formula makes, not names: not every program reads the name of an error within a formula.
# SQRT(-1) and VALUE("?") are errors of other kinds in LibreOffice, EXP(999) is none in the embedded engine,
# and POWER has the name of an argument.
ERRORS = {NUM.head: "(-1)^0.5", VALUE.head: 'FIND("?","")'}


class TooLong(ValueError):
    """A body over the limits of a spreadsheet: shorten the relation."""


def lambda_body(card: Card) -> str:
    """The LAMBDA of a function, as it stands in a workbook file: any number of arguments left out."""
    names = {name: Expression(f"_xlpm.{name}") for name in card.parameters}
    left_out = total([Expression("_xlfn.ISOMITTED(", names[name]) for name in card.arguments])
    given = {}
    if card.units:
        omitted = Expression("_xlfn.ISOMITTED(", names["units"])
        given["_xlpm.u"] = written_let(omitted.choose(SYSTEMS[0], names["units"]))
        names["units"] = Expression("_xlpm.u")
    answer = guarded(card, [names[name] for name in card.arguments], names.get("units", SYSTEMS[0]))
    text = written_let(left_out.choose(NA, answer), given)
    parameters = ",".join(f"_xlop.{name}" for name in card.parameters)
    return _within_limits(card, f"_xlfn.LAMBDA({parameters},{text})")


def inline(card: Card, arguments: Sequence[str]) -> str:
    """The formula of one call: `arguments` are spreadsheet text; `units`, if the function takes
    them, is a quoted word.  Names of the LET are told from any other by their prefix `_xlpm.`"""
    given, names = {}, []
    for name, text in zip(card.arguments, arguments):
        given[f"_xlpm.{name}"] = text
        names.append(Expression(f"_xlpm.{name}"))
    system = arguments[len(card.arguments)].strip('"') if len(arguments) > len(card.arguments) else SYSTEMS[0]
    known = {word.casefold(): word for word in SYSTEMS}
    if system.casefold() not in known:
        return ERRORS[VALUE.head]
    return _within_limits(card, written_let(guarded(card, names, known[system.casefold()]), given))


def _within_limits(card: Card, text: str) -> str:
    if len(text) > MOST_CHARACTERS:
        raise TooLong(f"{card.name}: its text has {len(text):,} characters, a spreadsheet takes {MOST_CHARACTERS:,}")
    return text


def guarded(card: Card, names: list[Expression], units: Any) -> Expression:
    """The relation behind its checks; `units` is a system's name, or a traced one."""
    system = System(units)
    wrong_kind, outside, values = [], [], []
    if system.later:
        wrong_kind.append(Expression("*", *(units.is_not(word) for word in SYSTEMS)))
    for name, argument in zip(names, card.arguments.values()):
        if argument.allowed:
            unknown = name.is_not(argument.allowed[0])
            for word in argument.allowed[1:]:
                unknown = unknown * name.is_not(word)
            wrong_kind.append(unknown)
            values.append(name)
        else:
            wrong_kind.append(Expression("ISTEXT(", name))
            value = name * 1.0  # TRUE counts as 1: Excel compares it as more than any number
            low, high = (system.pick(*ends) for ends in zip(argument.us, argument.metric))
            outside += [value < low, value > high]
            values.append(value)
    answer = constant(compute(card, values, system))
    if outside:
        answer = total(outside).choose(NUM, answer)
    return total(wrong_kind).choose(VALUE, answer)


def written_let(answer: Expression, given: dict[str, str] | None = None) -> str:
    """An expression as text: a LET where names are given or a step gets one."""
    steps, uses = distinct(answer)
    named = _named(steps, uses)
    pairs = [f"{name},{text}" for name, text in (given or {}).items()]
    texts: list[str] = []
    names = 0
    for step, children in steps:
        operands = []
        for position, child in enumerate(children):
            text = texts[child]
            if child not in named and needs_brackets(step, steps[child][0], position):
                text = f"({text})"
            operands.append(text)
        text = ERRORS.get(step.head) or written(step, operands)
        if len(texts) in named:
            names += 1
            pairs.append(f"_xlpm.v_{names},{text}")
            text = f"_xlpm.v_{names}"
        texts.append(text)
    if len(pairs) > MOST_NAMES:
        raise TooLong(f"a LET of {len(pairs)} names: a spreadsheet takes {MOST_NAMES}")
    return f"{LET}{','.join(pairs)},{texts[-1]})" if pairs else texts[-1]


Step = tuple[Expression, tuple[int, ...]]


def _named(steps: list[Step], uses: list[int]) -> set[int]:
    """The steps that get a name of the LET: those used twice, and a sum on the right of a plus.

    The latter because the embedded engine reads a+(b+c) as a+b+c, another double.
    """
    twice = {number for number, times in enumerate(uses) if times > 1}
    right = {children[1] for step, children in steps if step.head == "+" and steps[children[1]][0].head in ("+", "-")}
    return {number for number in twice | right if steps[number][0].operands}


def distinct(answer: Expression) -> tuple[list[Step], list[int]]:
    """The distinct steps, operands first, each with the numbers of its operands; and how often each is used."""
    steps: list[Step] = []
    uses: list[int] = []
    numbers: dict[tuple[str, tuple[int, ...]], int] = {}
    seen: dict[int, int] = {}

    def number(expression: Expression) -> int:
        if id(expression) not in seen:
            children = tuple([number(operand) for operand in expression.operands])
            key = (expression.head, children)
            if key not in numbers:
                numbers[key] = len(steps)
                steps.append((expression, children))
                uses.append(0)
                for child in children:
                    uses[child] += 1
            seen[id(expression)] = numbers[key]
        return seen[id(expression)]

    number(answer)
    return steps, uses
