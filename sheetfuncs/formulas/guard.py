"""What one argument of a call must be: given, of its kind, inside its limits; each refusal in one sentence."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from sheetfuncs.formulas.card import Card
from sheetfuncs.science.errors import LeftOut, OutOfLimits, WrongKind

INFINITY, NAN = float("inf"), float("nan")


def _real(value: Any) -> float | None:
    """The float of one real number of any kind; None for anything else, such as a text, an array, a time."""
    try:
        if isinstance(value, (int, float)):
            return float(value)
        kind = getattr(getattr(value, "dtype", None), "kind", "f")  # a scalar of NumPy's
        if hasattr(value, "__float__") and not hasattr(value, "__len__") and kind in "biuf":
            return float(value)
    except OverflowError:  # a whole number beyond any limit
        return INFINITY if value > 0 else -INFINITY
    except (TypeError, ValueError):
        pass
    return None


def as_float(value: Any) -> float:
    """A number as its float.  What is none is NaN, which no limits let pass: `define._slowly` looks at it."""
    number = _real(value)
    return NAN if number is None else number


def check_given(card: Card, given: Sequence[Any]) -> None:
    """Refuse a call that leaves out a required argument."""
    for name, value in zip(card.arguments, given):
        if value is None:
            raise LeftOut(f"{card.name}: {name} is left out; give {card.arguments[name].words}")


def word_of(card: Card, name: str, value: Any, allowed: tuple[str, ...]) -> str:
    """The allowed word that was meant: capitals do not count, as in a spreadsheet."""
    if isinstance(value, str):
        for word in allowed:
            if word.casefold() == value.casefold():
                return word
    raise _wrong_kind(card, name, value, f"give one of {', '.join(allowed)}")


def number_of(card: Card, name: str, value: Any, system: str) -> float:
    """The float of a number of any kind."""
    number = _real(value)
    if number is None:
        raise _wrong_kind(card, name, value, f"give one number, {card.arguments[name].range_words(system)}")
    return number


def _wrong_kind(card: Card, name: str, value: Any, give: str) -> WrongKind:
    said = repr(value)
    if hasattr(value, "__len__") and not isinstance(value, (str, bytes)):  # its own text may be a page long
        said = f"a whole {type(value).__name__}"
        give += f"; for many values at once call sheetfuncs.arrays.{card.name}"
    return WrongKind(f"{card.name}: {name} is {said}; {give}")


def check_limits(card: Card, name: str, value: Any, system: str) -> None:
    """Refuse a number outside its limits; a word has none."""
    argument = card.arguments[name]
    low, high = argument.limits(system)
    if not argument.allowed and not low <= value <= high:
        raise OutOfLimits(f"{card.name}: {name} is {value!r}; {argument.words} is {argument.range_words(system)}")
