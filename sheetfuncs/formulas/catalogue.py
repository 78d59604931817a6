"""The catalogue: every function, in the order of the season.  Each host is a loop over it."""

from __future__ import annotations

from types import ModuleType

from sheetfuncs.formulas import air, boil, finish, jars, sap, syrup, taps
from sheetfuncs.formulas.define import Function

STAGES: tuple[ModuleType, ...] = (air, taps, sap, boil, finish, syrup, jars)


def functions_of(stage: ModuleType) -> dict[str, Function]:
    """The functions that a stage defines, by name."""
    return {name: function for name, function in vars(stage).items() if hasattr(function, "card")}


CATALOGUE: dict[str, Function] = {name: each for stage in STAGES for name, each in functions_of(stage).items()}
