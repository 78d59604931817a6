"""The functions as defined names: what a workbook of ours carries, and what `carry` puts into another."""

from __future__ import annotations

import functools
from typing import NamedTuple

from sheetfuncs.formulas.catalogue import CATALOGUE
from sheetfuncs.hosts import trace


class Definition(NamedTuple):
    """A name, the formula it stands for as a file holds it, and the words shown beside it."""

    name: str
    formula: str
    comment: str


@functools.cache
def definitions() -> tuple[Definition, ...]:
    """Every function of the catalogue, in its order."""
    return tuple(
        Definition(name, trace.lambda_body(function.card), function.card.sentence)
        for name, function in CATALOGUE.items()
    )
