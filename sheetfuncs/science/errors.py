"""What can be wrong with a call; each kind is one error value of a spreadsheet cell."""

from __future__ import annotations


class FormulaError(ValueError):
    """A call that has no result; `cell` is what a spreadsheet shows instead."""

    cell = "#VALUE!"


class OutOfLimits(FormulaError):
    """An argument lies outside its limits: give a reading inside the limits named."""

    cell = "#NUM!"


class NoSolution(OutOfLimits):
    """Each argument is allowed, but together they describe nothing possible."""


class WrongKind(FormulaError):
    """Text where a number belongs, or a word that is not one of those allowed."""

    cell = "#VALUE!"


class LeftOut(FormulaError):
    """A required argument is missing: give all but `units`."""

    cell = "#N/A"
