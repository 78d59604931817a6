"""The functions of the catalogue for many values at once: NumPy arrays, pandas Series, lists.

    >>> from sheetfuncs.arrays import FINISH_TEMP
    >>> FINISH_TEMP([60.0, 66.9, 99.0], 29.92).round(1)
    array([217.2, 219.5,   nan])

Each has the name, the arguments and the units of the function of `sheetfuncs`.  Any argument may be
many values, words and `units` too.  They broadcast as in NumPy; where a Series is among them the
result is a Series with its index, and several must share one.  The sums are NumPy's, one relation
for all elements; they agree with the plain function to the last digits.

An element without a result is NaN where the result is a number and None where it is a word: then
`numpy.isnan`, or `pandas.isna`, of the result is the mask of what failed.  This is `errors="nan"`.
With `errors="raise"` the first such element raises what the plain function raises, and the message
names the element.  A single value that is wrong is wrong for all and raised in either case.  With
single values only, a call is the plain call.

Numbers are float64, counts too.  True is 1.  A masked or missing element (None, NaN, pandas.NA) has
no result.  It needs NumPy: `pip install 'sheetfuncs[arrays]'`.
"""

from __future__ import annotations

from inspect import Parameter, Signature
from typing import Any

from sheetfuncs.formulas.card import Card, card_text
from sheetfuncs.formulas.catalogue import CATALOGUE
from sheetfuncs.formulas.define import Function

try:
    from sheetfuncs.hosts.elements import Errors, answer
except ModuleNotFoundError as missing:
    raise ModuleNotFoundError(f"sheetfuncs.arrays needs {missing.name}: pip install 'sheetfuncs[arrays]'") from None


def _for_arrays(function: Function) -> Any:
    """A function of the catalogue for arrays."""
    card = function.card

    def called(*given: Any, errors: Errors = "nan", **named: Any) -> Any:
        return answer(function, given, named, errors)

    called.__name__ = called.__qualname__ = card.name
    called.__doc__ = _text(card)
    choice = Parameter("errors", Parameter.KEYWORD_ONLY, default="nan", annotation=Errors)
    taken = [parameter.replace(annotation=Any) for parameter in card.signature.parameters.values()]
    called.__signature__ = Signature([*taken, choice], return_annotation=Any)  # type: ignore[attr-defined]
    return called


def _text(card: Card) -> str:
    """The card, with an example of its own."""
    values, expected = card.example
    first, *others = map(repr, values)
    call = ", ".join([f"[{first}]", *others])
    answer = f"{card.name}({call})[0]"
    if not card.result.words:
        answer = f"round(float({answer}), {len(repr(float(expected)).partition('.')[2])})"
        expected = float(expected)
    lines = ["Any argument may be an array, a Series or a list: see sheetfuncs.arrays.", "", "Example:"]
    lines += [f"    >>> from sheetfuncs.arrays import {card.name}", f"    >>> {answer}", f"    {expected!r}"]
    return card_text(card).partition("Example:")[0] + "\n".join(lines)


FUNCTIONS = {name: _for_arrays(function) for name, function in CATALOGUE.items()}
globals().update(FUNCTIONS)
__all__ = sorted(FUNCTIONS)
