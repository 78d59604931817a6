"""The catalogue: every function, in the order of the season.  Each host is a loop over it."""

from __future__ import annotations

from types import ModuleType

from sheetfuncs.formulas import air, boil, finish, jars, sap, syrup, taps
from sheetfuncs.formulas.define import Function

STAGES: tuple[ModuleType, ...] = (air, taps, sap, boil, finish, syrup, jars)

CATALOGUE: dict[str, Function] = {
    name: function for stage in STAGES for name, function in vars(stage).items() if hasattr(function, "card")
}
