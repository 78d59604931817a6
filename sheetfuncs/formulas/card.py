"""What is known of a function: its card, which help, wizards, scripts and tests read."""

from __future__ import annotations

from collections.abc import Mapping
from inspect import Parameter, Signature
from textwrap import fill
from typing import Any, Callable, Literal, NamedTuple, Protocol

from sheetfuncs.formulas.quantities import COUNT, SYSTEMS, Argument, Quantity
from sheetfuncs.science.maths import fifteen

UNITS_WORDS = 'unit system, "US" or "metric"; left out: "US"'


class Number(Protocol):
    """Any one real number counts as its float: an int, a Decimal, a Fraction, a scalar of NumPy, True as 1.

    An array has a `__float__` too, but no hash.
    """

    def __float__(self) -> float: ...

    def __hash__(self) -> int: ...


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

    def example_in(self, system: str) -> tuple[Any, ...]:
        """The arguments of the example in a unit system, without `units`."""
        return tuple(
            value
            if argument.allowed
            else fifteen(argument.quantity.unit(system).out_of_si(argument.quantity.us.into_si(value)))
            for argument, value in zip(self.arguments.values(), self.example[0])
        )

    @property
    def sentence(self) -> str:
        """What the function is for and what it gives, as function wizards say it."""
        unit = "" if self.result.symbol in self.returns else f", {self.result.symbol}"
        return f"{self.summary} Returns {self.returns}{unit}."

    @property
    def signature(self) -> Signature:
        """The call with its types.  Only `units` may be left out; without another argument there is no TypeError,
        but the LeftOut that every host knows."""
        either, words = Parameter.POSITIONAL_OR_KEYWORD, self.result.words
        taken = [
            Parameter(name, either, annotation=Literal[argument.allowed] if argument.allowed else Number)
            for name, argument in self.arguments.items()
        ]
        if self.units:
            taken.append(Parameter("units", either, default=SYSTEMS[0], annotation=Literal[SYSTEMS]))
        number = int if self.result == COUNT else float
        return Signature(taken, return_annotation=Literal[words] if words else number)

    @property
    def call(self) -> str:
        """The call as a person writes it: `WATER_BOILS(pressure, units)`."""
        return f"{self.name}({', '.join(self.parameters)})"


def card_text(card: Card) -> str:
    """The card as text: what `help` and the command line show."""
    width = 92

    def item(words: str, hanging: str = "    ") -> str:
        return fill(words, width, initial_indent="    ", subsequent_indent="    " + hanging)

    lines = [card.summary, ""]
    if card.notes:
        lines += [fill(card.notes, width), ""]
    lines += ["Arguments:"]
    lines += [item(f"{name}: {words}") for name, words in card.parameter_help.items()]
    lines += ["", "Returns:", item(f"{card.returns}, {card.result.symbol}", ""), "", "Errors (in a cell):"]
    lines += [
        "    #NUM! (OutOfLimits): an argument outside its limits, or no solution",
        "    #VALUE! (WrongKind): text where a number belongs, or an unknown word",
        "    #N/A (LeftOut): an argument left out",
        "",
        "Source:",
        item(card.source, ""),
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
