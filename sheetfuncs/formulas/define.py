"""One definition per function: `define` turns a relation in SI into a function of the catalogue.

A function is called thousands of times in a sheet, so its checks and conversions are written
out as a few lines of Python for each and compiled once, as namedtuple does: no loop, no
dictionary and no unit parsing is left in a call.

The guard of a call (what is refused, and which error comes first: left out, wrong kind, outside
the limits, no solution) stands four times: `_branch` lets pass what is in order, `_slowly` says
what is not, `hosts.trace` writes it for a spreadsheet and `sheetfuncs.arrays` asks it of every
element at once.  Who changes one changes all; the agreement tests compare them.
"""

from __future__ import annotations

import linecache
from collections.abc import Sequence
from inspect import signature
from typing import Any, Callable, Protocol

from sheetfuncs.formulas.card import Card, card_text
from sheetfuncs.formulas.guard import as_float, check_given, check_limits, number_of, word_of
from sheetfuncs.formulas.quantities import SYSTEMS, Argument, Quantity, System
from sheetfuncs.science.errors import NoSolution
from sheetfuncs.science.maths import Traced


class Function(Protocol):
    """A function of the catalogue: call it, or read its card."""

    card: Card
    __name__: str

    def __call__(self, *args: Any, **kwargs: Any) -> Any: ...


def define(
    returns: str, result: Quantity, source: str, example: tuple[tuple[Any, ...], Any], **arguments: Argument
) -> Callable[[Callable[..., Any]], Function]:
    """Make a function of the catalogue from a relation in SI.

    returns, result: what comes out, in words and as a quantity
    source: where the relation is published, or "common practice, no source"
    example: arguments and what they give, rounded as written
    arguments: what each argument of the relation means, in the same order
    """

    def wrap(relation: Callable[..., Any]) -> Function:
        taken = list(signature(relation).parameters)
        if taken != list(arguments):
            raise TypeError(f"{relation.__name__} takes {taken}, its definition names {list(arguments)}")
        summary, _, notes = (relation.__doc__ or "").strip().partition("\n\n")
        card = Card(
            relation.__name__,
            " ".join(summary.split()),
            " ".join(notes.split()),
            arguments,
            returns,
            result,
            " ".join(source.split()),
            example,
            relation,
        )
        return _compiled(card)

    return wrap


def _compiled(card: Card) -> Function:
    """The function itself: limits and conversions inline, anything unusual left to `_slowly`."""
    heading = [f"{name}=None" for name in card.arguments] + [f"units={SYSTEMS[0]!r}"] * card.units
    numbers = [name for name, argument in card.arguments.items() if not argument.allowed]
    lines = [f"def {card.name}({', '.join(heading)}):"]
    lines += [f"    {name}_ = {name} if {name}.__class__ is float else as_float({name})" for name in numbers]
    lines += ["    try:"]
    if card.units:
        for system in SYSTEMS:
            left_out = "units is None or " * (system == SYSTEMS[0])  # a cell's way to leave it out
            lines += [f"        if {left_out}units.__class__ is str and units == {system!r}:"]
            lines += _branch(card, system, " " * 12)
    else:
        lines += _branch(card, SYSTEMS[0], " " * 8)
    given = "".join(f"{name}, " for name in card.arguments)
    lines += ["    except NoSolution as why:", f"        raise unsolved(card, ({given}), why) from why"]
    lines += [f"    return slowly(card, ({given}), {'units' if card.units else repr(SYSTEMS[0])})"]
    allowed: dict[str, Any] = {
        f"{name}_words": frozenset(argument.allowed) for name, argument in card.arguments.items()
    }
    allowed |= {
        f"{name}_{system}": meanings
        for name, argument in card.arguments.items()
        for system, meanings in argument.meanings.items()
    }
    scope: dict[str, Any] = {"relation": card.relation, "card": card, "as_float": as_float, "slowly": _slowly}
    scope.update(NoSolution=NoSolution, unsolved=_unsolved, **allowed)
    text, place = "\n".join(lines) + "\n", f"<sheetfuncs {card.name}>"
    exec(compile(text, place, "exec"), scope)  # noqa: S102 (our own text, above)
    linecache.cache[place] = (len(text), None, text.splitlines(True), place)  # tracebacks and debuggers show the lines
    function = scope[card.name]
    function.card = card
    function.__doc__ = card_text(card)
    function.__module__ = card.relation.__module__
    function.__wrapped__ = card.relation
    function.__signature__ = card.signature
    function.__annotations__ = {name: one.annotation for name, one in card.signature.parameters.items()}
    function.__annotations__["return"] = card.signature.return_annotation
    return function  # type: ignore[no-any-return]


def _branch(card: Card, system: str, indent: str) -> list[str]:
    """The lines that check and compute in one system."""
    checks, given = [], []
    for name, argument in card.arguments.items():
        if argument.allowed:
            checks.append(f"{name}.__class__ is str and {name} in {name}_words")
            given.append(f"{name}_{system}[{name}]" if argument.meanings else name)
        else:
            low, high = argument.limits(system)
            checks.append(f"{low!r} <= {name}_ <= {high!r}")
            given.append(argument.quantity.unit(system).into_si(Arithmetic(f"{name}_")).text)
    result = card.result.unit(system).out_of_si(Arithmetic(f"relation({', '.join(given)})"))
    return [f"{indent}if {' and '.join(checks)}:", f"{indent}    return {result.text}"]


class Arithmetic(Traced):
    """What a unit does to a number, as Python text."""

    __slots__ = ("text",)

    def __init__(self, text: str) -> None:
        self.text = text

    def __add__(self, other: float) -> Arithmetic:
        return Arithmetic(f"({self.text} + {other!r})")

    def __sub__(self, other: float) -> Arithmetic:
        return Arithmetic(f"({self.text} - {other!r})")

    def __mul__(self, other: float) -> Arithmetic:
        return Arithmetic(f"({self.text} * {other!r})")

    def __truediv__(self, other: float) -> Arithmetic:
        return Arithmetic(f"({self.text} / {other!r})")


def _slowly(card: Card, given: tuple[Any, ...], units: Any) -> Any:
    """Say what is wrong with a call; where nothing is, compute it all the same."""
    check_given(card, given)
    system = word_of(card, "units", SYSTEMS[0] if units is None else units, SYSTEMS)
    values: list[Any] = [
        word_of(card, name, value, argument.allowed) if argument.allowed else number_of(card, name, value, system)
        for (name, argument), value in zip(card.arguments.items(), given)
    ]
    for name, value in zip(card.arguments, values):
        check_limits(card, name, value, system)
    try:
        return compute(card, values, System(system))
    except NoSolution as why:
        raise _unsolved(card, given, why) from why


def _unsolved(card: Card, given: tuple[Any, ...], why: NoSolution) -> NoSolution:
    """The reason of a relation, with the function and what it was given."""
    said = ", ".join(f"{name} is {value!r}" for name, value in zip(card.arguments, given))
    return NoSolution(f"{card.name}: {said}: {why}")


def compute(card: Card, values: Sequence[Any], system: System) -> Any:
    """Convert, relate, convert back; without checks, on numbers or traced values."""
    given = [system.into_si(argument, value) for argument, value in zip(card.arguments.values(), values)]
    return system.out_of_si(card.result, card.relation(*given))
