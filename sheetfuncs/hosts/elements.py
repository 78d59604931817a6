"""A call for many values at once: the relation runs with NumPy arrays in the place of numbers.

Arguments are laid beside each other as NumPy broadcasts them.  A step of the relation is a step for
all elements: `choose` takes from either side, `require` marks those without a solution.
"""

from __future__ import annotations

import sys
from collections.abc import Mapping, Sequence, Set
from typing import Any, Literal, NamedTuple, get_args

import numpy as np

from sheetfuncs.formulas.card import Card
from sheetfuncs.formulas.define import Function, compute
from sheetfuncs.formulas.guard import as_float, check_given, check_limits, number_of, word_of
from sheetfuncs.formulas.quantities import SYSTEMS, System
from sheetfuncs.science.errors import FormulaError, WrongKind
from sheetfuncs.science.maths import Traced

BLOCK = 8192  # elements computed together: few enough that all steps of a relation stay in the processor's cache
Errors = Literal["nan", "raise"]


class Elements(Traced):
    """Numbers or conditions, one an element, where a relation takes one number.

    All that come of one call share `solved`: an element that fails a `require` is taken out of it.
    """

    __slots__ = ("solved", "values")

    def __init__(self, values: Any, solved: Any) -> None:
        self.values = values
        self.solved = solved

    def _of(self, values: Any) -> Elements:
        return Elements(values, self.solved)

    def __add__(self, other: Any) -> Elements:
        return self._of(self.values + _plain(other))

    def __radd__(self, other: Any) -> Elements:
        return self._of(_plain(other) + self.values)

    def __sub__(self, other: Any) -> Elements:
        return self._of(self.values - _plain(other))

    def __rsub__(self, other: Any) -> Elements:
        return self._of(_plain(other) - self.values)

    def __mul__(self, other: Any) -> Elements:
        return self._of(self.values * _plain(other))

    def __rmul__(self, other: Any) -> Elements:
        return self._of(_plain(other) * self.values)

    def __truediv__(self, other: Any) -> Elements:
        return self._of(self.values / _plain(other))

    def __rtruediv__(self, other: Any) -> Elements:
        return self._of(_plain(other) / self.values)

    def __pow__(self, other: Any) -> Elements:
        return self._of(self.values ** _plain(other))

    def __neg__(self) -> Elements:
        return self._of(-self.values)

    def __lt__(self, other: Any) -> Elements:
        return self._of(self.values < _plain(other))

    def __le__(self, other: Any) -> Elements:
        return self._of(self.values <= _plain(other))

    def __gt__(self, other: Any) -> Elements:
        return self._of(self.values > _plain(other))

    def __ge__(self, other: Any) -> Elements:
        return self._of(self.values >= _plain(other))

    def sqrt(self) -> Elements:
        return self._of(np.sqrt(self.values))

    def exp(self) -> Elements:
        return self._of(np.exp(self.values))

    def log(self) -> Elements:
        return self._of(np.log(self.values))

    def floor(self) -> Elements:
        return self._of(np.floor(self.values))

    def choose(self, yes: Any, no: Any) -> Elements:
        return self._of(np.where(self.values, _plain(yes), _plain(no)))

    def require(self, value: Any, why: str) -> Any:
        self.solved &= self.values
        return value


class Words(Traced):
    """Words, one an element, each as its place among those allowed; an unknown word is at -1."""

    __slots__ = ("allowed", "places", "solved")

    def __init__(self, places: Any, allowed: Sequence[str], solved: Any) -> None:
        self.places = places
        self.allowed = allowed
        self.solved = solved

    def lookup(self, table: Mapping[str, Any]) -> Elements:
        beside = [_plain(table[word]) for word in self.allowed]
        if any(isinstance(value, np.ndarray) for value in beside):
            return Elements(np.choose(self.places, beside, mode="clip"), self.solved)
        return Elements(np.array(beside)[self.places], self.solved)

    def is_not(self, word: str) -> Elements:
        return Elements(self.places != self.allowed.index(word), self.solved)


def _plain(value: Any) -> Any:
    """What NumPy computes with; a word as an object, so that no array of letters is made of it."""
    if isinstance(value, Elements):
        return value.values
    return np.array(value, dtype=object) if isinstance(value, str) else value


class _Given(NamedTuple):
    """An argument of a call: one value, checked, or many as an array."""

    name: str
    allowed: tuple[str, ...]  # words; none for a number
    value: Any
    many: bool

    def block(self, part: slice, solved: Any) -> Any:
        """What the relation takes for some of the elements."""
        if not self.many:  # NumPy's own float: one 0 divides by another without an exception
            return self.value if self.allowed else Elements(np.float64(self.value), solved)
        if not self.allowed:
            return Elements(_numbers(self.value[part]), solved)
        places = _places(self.value[part], self.allowed)
        solved &= places >= 0
        return Words(places, self.allowed, solved)

    def alone(self, position: int) -> Any:
        """What the plain function takes for one element."""
        return self.value[position] if self.many else self.value


def answer(function: Function, given: Sequence[Any], named: Mapping[str, Any], errors: Errors) -> Any:
    """A call: the arguments laid beside each other, their elements computed in blocks."""
    card = function.card
    if errors not in get_args(Errors):
        raise WrongKind(f"{card.name}: errors is {errors!r}; give one of {', '.join(get_args(Errors))}")
    bound = card.signature.bind_partial(*given, **named).arguments
    values = {name: _unwrapped(bound.get(name)) for name in card.parameters}
    arrays = {name: _array(card, name, value) for name, value in values.items() if _is_many(value)}
    if not arrays:
        return function(**values)
    series = _series(card, values)
    try:
        shape = np.broadcast_shapes(*(array.shape for array in arrays.values()))
    except ValueError:
        shapes = ", ".join(f"{name} has {array.shape}" for name, array in arrays.items())
        raise WrongKind(f"{card.name}: the shapes do not go together: {shapes}") from None
    taken, units = _checked(card, values, {name: _flat(array, shape) for name, array in arrays.items()})

    size = int(np.prod(shape))
    result = np.empty(size, dtype=object if card.result.words else np.float64)
    failed = np.zeros(size, dtype=bool)
    with np.errstate(all="ignore"):  # elements that fail are computed like the others
        for start in range(0, size, BLOCK):
            part = slice(start, min(start + BLOCK, size))
            result[part], failed[part] = _block(card, taken, units, part)
    if errors == "raise":
        for position in np.flatnonzero(failed).tolist():
            result[position] = _alone(function, [*taken, units], position, shape)
    shaped = result.reshape(shape)
    if series is None:
        return shaped
    if shape != series.shape:
        raise WrongKind(f"{card.name}: a result of the shape {shape} has no place in a Series of {len(series)}")
    return type(series)(shaped, index=series.index)


def _checked(card: Card, values: Mapping[str, Any], flat: Mapping[str, Any]) -> tuple[list[_Given], _Given]:
    """All arguments but `units`, and `units`; single values that are wrong for every element are refused."""
    check_given(card, [values[name] for name in card.arguments])
    if "units" in flat:
        units, system = _Given("units", SYSTEMS, flat["units"], True), ""
    else:
        system = word_of(card, "units", SYSTEMS[0] if values.get("units") is None else values["units"], SYSTEMS)
        units = _Given("units", SYSTEMS, system, False)
    taken = []
    for name, argument in card.arguments.items():
        if name in flat:
            taken.append(_Given(name, argument.allowed, flat[name], True))
            continue
        if argument.allowed:
            value: Any = word_of(card, name, values[name], argument.allowed)
        else:
            value = number_of(card, name, values[name], system or SYSTEMS[0])
        if system:
            check_limits(card, name, value, system)
        taken.append(_Given(name, argument.allowed, value, False))
    return taken, units


def _block(card: Card, taken: Sequence[_Given], units: _Given, part: slice) -> tuple[Any, Any]:
    """The results of some of the elements, and which of them failed."""
    solved = np.ones(part.stop - part.start, dtype=bool)
    system = System(units.block(part, solved))
    values = [given.block(part, solved) for given in taken]
    for value, argument in zip(values, card.arguments.values(), strict=True):
        if not argument.allowed:
            low, high = (_plain(system.pick(*ends)) for ends in zip(argument.us, argument.metric, strict=True))
            number = _plain(value)
            solved &= (low <= number) & (number <= high)  # NaN is not inside
    result = np.where(solved, _plain(compute(card, values, system)), None if card.result.words else np.nan)
    return result, ~solved


def _alone(function: Function, taken: Sequence[_Given], position: int, shape: tuple[int, ...]) -> Any:
    """What the plain function says of one element."""
    given = {one.name: one.alone(position) for one in taken if one.name in function.card.parameters}
    try:
        return function(**given)
    except FormulaError as error:
        place = np.unravel_index(position, shape)
        raise type(error)(f"element {', '.join(map(str, place))} (counted from 0): {error}") from error


def _is_many(value: Any) -> bool:
    return hasattr(value, "__len__") and not isinstance(value, (str, bytes, Mapping, Set))


def _unwrapped(value: Any) -> Any:
    """A value; an array without dimensions is the one value in it."""
    return value[()] if isinstance(value, np.ndarray) and value.ndim == 0 else value


def _array(card: Card, name: str, value: Any) -> Any:
    """Many values as an array, in which numbers stay what they were and nothing else becomes one."""
    if isinstance(value, np.ma.MaskedArray):
        return np.ma.filled(value.astype(object), None)
    try:
        array = np.asarray(value)
        return array if array.dtype.kind in "biuf" or hasattr(value, "dtype") else np.array(value, dtype=object)
    except ValueError:  # a list of lists
        raise WrongKind(f"{card.name}: {name} is a list of lists that are not of one length") from None


def _flat(array: Any, shape: tuple[int, ...]) -> Any:
    return np.broadcast_to(array, shape).reshape(-1)


def _numbers(array: Any) -> Any:
    """Elements as floats; what is no number is NaN."""
    if array.dtype.kind in "biuf":
        return array.astype(np.float64, copy=False)
    return np.fromiter(map(as_float, array), np.float64, array.size)


class _Places(dict[Any, int]):
    """Where each word stands among those allowed, -1 for any other; how it is written is looked at once."""

    def __init__(self, allowed: Sequence[str]) -> None:
        super().__init__((word.casefold(), place) for place, word in enumerate(allowed))
        self[None] = 0 if allowed is SYSTEMS else -1  # `units` left out

    def __missing__(self, word: str) -> int:
        self[word] = place = self.get(word.casefold(), -1)
        return place


def _places(array: Any, allowed: Sequence[str]) -> Any:
    """Elements as the places of words among those allowed."""
    places = _Places(allowed)
    found = (places[word] if isinstance(word, str) or word is None else -1 for word in array)
    return np.fromiter(found, np.intp, array.size)


def _series(card: Card, values: Mapping[str, Any]) -> Any:
    """The first Series among the arguments, whose index the result gets."""
    pandas = sys.modules.get("pandas")  # who has made a Series has imported it
    found = {name: value for name, value in values.items() if pandas and isinstance(value, pandas.Series)}
    for name, series in found.items():
        if not series.index.equals(next(iter(found.values())).index):
            raise WrongKind(f"{card.name}: {name} has another index than {next(iter(found))}: align the Series first")
    return next(iter(found.values()), None)
