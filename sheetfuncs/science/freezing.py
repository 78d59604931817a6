"""The freezing point of sap."""

from __future__ import annotations

from sheetfuncs.science.maths import Value
from sheetfuncs.science.sucrose import molality


def freezing_point(brix: Value) -> Value:
    """Temperature at which ice begins to form in a sucrose solution, °C.

    Source: the freezing constant of water, 1.86 K kg/mol, with two terms fitted to the sucrose
    rows of the CRC Handbook of Chemistry and Physics, 102nd ed. (2021), 0.5 to 42 °Brix; within
    0.01 °C of each.
    """
    m = molality(brix)
    return -1.86 * (1.0 + (0.0962763 + 0.0107968 * m) * m) * m
