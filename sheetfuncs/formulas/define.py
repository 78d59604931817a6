"""One definition per function: `define` turns a relation in SI into a function of the catalogue.

A function is called thousands of times in a sheet, so its checks and conversions are written
out as a few lines of Python for each and compiled once, as namedtuple does: no loop, no
dictionary and no unit parsing is left in a call.
"""

from __future__ import annotations

from collections.abc import Mapping
from inspect import signature
from textwrap import fill
from typing import Any, Callable, NamedTuple, Protocol

from sheetfuncs.formulas.quantities import SYSTEMS, Argument, Quantity
from sheetfuncs.science.errors import LeftOut, NoSolution, OutOfLimits, WrongKind

UNITS_WORDS = 'unit system, "US" or "metric"; left out: "US"'


class Card(NamedTuple):
    """Everything that is known of a function."""

    name: str
    summary: str
    notes: str
    arguments: Mapping[str, Argument]
    returns: str
    result: Quantity
    source: str
    example: tuple[tuple[Any, ...], Any]
    relation: Callable[..., Any]

    @property
    def units(self) -> bool:
        """Whether the function takes `units` last."""
        return self.result.units or any(argument.units for argument in self.arguments.values())

    @property
    def parameters(self) -> tuple[str, ...]:
        """The names of the arguments in a cell, in order."""
        return (*self.arguments, "units") if self.units else tuple(self.arguments)

    @property
    def parameter_help(self) -> dict[str, str]:
        """What each argument in a cell means and how far it may go, as cards and wizards say it."""
        words = {name: f"{argument.words}; {argument.limit_words}" for name, argument in self.arguments.items()}
        return {**words, "units": UNITS_WORDS} if self.units else words

    @property
    def sentence(self) -> str:
        """What the function is for and what it gives, as function wizards say it."""
        unit = "" if self.result.symbol in self.returns else f", {self.result.symbol}"
        return f"{self.summary} Returns {self.returns}{unit}."

    @property
    def call(self) -> str:
        """The call as a person writes it: `WATER_BOILS(pressure, units)`."""
        return f"{self.name}({', '.join(self.parameters)})"


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
    heading = [f"{name}=None" for name in card.arguments] + ['units="US"'] * card.units
    lines = [f"def {card.name}({', '.join(heading)}):", "    try:"]
    if card.units:
        for system in SYSTEMS:
            or_left_out = " or units is None" * (system == SYSTEMS[0])  # a cell's way to leave it out
            lines += [f"        if units == {system!r}{or_left_out}:", *_branch(card, system, " " * 12)]
    else:
        lines += _branch(card, SYSTEMS[0], " " * 8)
    given = "".join(f"{name}, " for name in card.arguments)
    lines += ["    except TypeError:", "        pass"]
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
    scope: dict[str, Any] = {"relation": card.relation, "card": card, "slowly": _slowly}
    scope.update(NoSolution=NoSolution, unsolved=_unsolved, **allowed)
    exec(compile("\n".join(lines), f"<sheetfuncs {card.name}>", "exec"), scope)  # noqa: S102 (our own text, above)
    function = scope[card.name]
    function.card = card
    function.__doc__ = card_text(card)
    function.__module__ = card.relation.__module__
    return function  # type: ignore[no-any-return]


def _branch(card: Card, system: str, indent: str) -> list[str]:
    """The lines that check and compute in one system."""
    checks, given = [], []
    for name, argument in card.arguments.items():
        if argument.allowed:
            checks.append(f"{name} in {name}_words")
            given.append(f"{name}_{system}[{name}]" if argument.meanings else name)
        else:
            low, high = argument.limits(system)
            checks.append(f"{low!r} <= {name} <= {high!r}")
            given.append(_inline(argument.quantity.unit(system).to_si, name))
    result = _inline(card.result.unit(system).from_si, f"relation({', '.join(given)})")
    return [f"{indent}if {' and '.join(checks)}:", f"{indent}    return {result}"]


def _inline(arithmetic: str, operand: str) -> str:
    return arithmetic.replace("x", operand)


def _slowly(card: Card, given: tuple[Any, ...], units: Any) -> Any:
    """Say what is wrong with a call; where nothing is, compute it all the same."""
    for name, value in zip(card.arguments, given):
        if value is None:
            raise LeftOut(f"{card.name}: {name} is left out; give {card.arguments[name].words}")
    system = _word(card, "units", SYSTEMS[0] if units is None else units, SYSTEMS)
    values: list[Any] = [
        _word(card, name, value, argument.allowed) if argument.allowed else _number(card, name, value, system)
        for (name, argument), value in zip(card.arguments.items(), given)
    ]
    for (name, argument), value in zip(card.arguments.items(), values):
        low, high = argument.limits(system)
        if not argument.allowed and not low <= value <= high:
            raise OutOfLimits(f"{card.name}: {name} is {value!r}; {argument.words} is {argument.range_words(system)}")
    try:
        return compute(card, values, system)
    except NoSolution as why:
        raise _unsolved(card, given, why) from why


def _unsolved(card: Card, given: tuple[Any, ...], why: NoSolution) -> NoSolution:
    """The reason of a relation, with the function and what it was given."""
    said = ", ".join(f"{name} is {value!r}" for name, value in zip(card.arguments, given))
    return NoSolution(f"{card.name}: {said}: {why}")


def _word(card: Card, name: str, value: Any, allowed: tuple[str, ...]) -> str:
    """The allowed word that was meant: capitals do not count, as in a spreadsheet."""
    if isinstance(value, str):
        for word in allowed:
            if word.casefold() == value.casefold():
                return word
    raise WrongKind(f"{card.name}: {name} is {value!r}; it is one of {', '.join(allowed)}")


def _number(card: Card, name: str, value: Any, system: str) -> float:
    if isinstance(value, (str, bytes)) or not hasattr(value, "__float__"):
        words = card.arguments[name]
        raise WrongKind(f"{card.name}: {name} is {value!r}; give a number, {words.range_words(system)}")
    try:
        return float(value)
    except OverflowError:  # a whole number beyond any limit
        return float("inf") if value > 0 else float("-inf")


def compute(card: Card, values: list[Any], system: str) -> Any:
    """Convert, relate, convert back; without checks, on numbers or traced values."""
    given = [argument.into_si(system, value) for argument, value in zip(card.arguments.values(), values)]
    return card.result.unit(system).out_of_si(card.relation(*given))


def card_text(card: Card) -> str:
    """The card as text: what `help` and the command line show."""
    width = 92

    def item(name: str, words: str) -> str:
        return fill(f"{name}: {words}", width, initial_indent="    ", subsequent_indent="        ")

    lines = [card.summary, ""]
    if card.notes:
        lines += [fill(card.notes, width), ""]
    lines += ["Arguments:"]
    lines += [item(name, words) for name, words in card.parameter_help.items()]
    lines += ["", "Returns:", f"    {card.returns}, {card.result.symbol}", "", "Errors (in a cell):"]
    lines += [
        "    #NUM! (OutOfLimits): an argument outside its limits, or no solution",
        "    #VALUE! (WrongKind): text where a number belongs, or an unknown word",
        "    #N/A (LeftOut): an argument left out",
        "",
        "Source:",
        fill(card.source, width, initial_indent="    ", subsequent_indent="    "),
        "",
        "Example:",
        *_example_lines(card),
    ]
    return "\n".join(lines)


def _example_lines(card: Card) -> list[str]:
    given, expected = card.example
    call = f"{card.name}({', '.join(repr(value) for value in given)})"
    if isinstance(expected, float):
        call = f"round({call}, {len(repr(expected).partition('.')[2])})"
    return [f"    >>> from sheetfuncs import {card.name}", f"    >>> {call}", f"    {expected!r}"]
