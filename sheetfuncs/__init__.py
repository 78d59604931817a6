"""Maple sugaring functions for Python and for spreadsheets."""

from __future__ import annotations

from sheetfuncs.formulas.air import AIR_PRESSURE, AIR_PRESSURE_HERE, WATER_BOILS
from sheetfuncs.formulas.boil import BOIL_BRIX, BOIL_FUEL, BOIL_HEAT, BOIL_HOURS, BOIL_WATER, PAN_DEPTH, PAN_RATE
from sheetfuncs.formulas.finish import (
    BRIX_BY_BOIL,
    BRIX_BY_GRAVITY,
    BRIX_BY_HYDROMETER,
    BRIX_BY_REFRACTOMETER,
    FINISH_MINUTES,
    FINISH_READING,
    FINISH_RISE,
    FINISH_TEMP,
)
from sheetfuncs.formulas.jars import JAR_COUNT, JAR_REST
from sheetfuncs.formulas.sap import (
    SAP_AFTER_ICE,
    SAP_FREEZES,
    SAP_ICE_LOSS,
    SAP_KEEPS,
    SAP_PER_SYRUP,
    SAP_SUGAR,
    SYRUP_FROM_SAP,
)
from sheetfuncs.formulas.syrup import (
    SYRUP_ADJUST,
    SYRUP_BAUME,
    SYRUP_BLEND,
    SYRUP_BLEND_SHARE,
    SYRUP_COLD,
    SYRUP_DENSITY,
    SYRUP_FLOATS,
    SYRUP_GRADE,
    SYRUP_GRAVITY,
    SYRUP_STATE,
)
from sheetfuncs.formulas.taps import SAP_RUNS, TAP_COUNT
from sheetfuncs.science.errors import FormulaError, LeftOut, NoSolution, OutOfLimits, WrongKind

__version__ = "0.1.0"

__all__ = [
    "AIR_PRESSURE",
    "AIR_PRESSURE_HERE",
    "BOIL_BRIX",
    "BOIL_FUEL",
    "BOIL_HEAT",
    "BOIL_HOURS",
    "BOIL_WATER",
    "BRIX_BY_BOIL",
    "BRIX_BY_GRAVITY",
    "BRIX_BY_HYDROMETER",
    "BRIX_BY_REFRACTOMETER",
    "FINISH_MINUTES",
    "FINISH_READING",
    "FINISH_RISE",
    "FINISH_TEMP",
    "JAR_COUNT",
    "JAR_REST",
    "PAN_DEPTH",
    "PAN_RATE",
    "SAP_AFTER_ICE",
    "SAP_FREEZES",
    "SAP_ICE_LOSS",
    "SAP_KEEPS",
    "SAP_PER_SYRUP",
    "SAP_RUNS",
    "SAP_SUGAR",
    "SYRUP_ADJUST",
    "SYRUP_BAUME",
    "SYRUP_BLEND",
    "SYRUP_BLEND_SHARE",
    "SYRUP_COLD",
    "SYRUP_DENSITY",
    "SYRUP_FLOATS",
    "SYRUP_FROM_SAP",
    "SYRUP_GRADE",
    "SYRUP_GRAVITY",
    "SYRUP_STATE",
    "TAP_COUNT",
    "WATER_BOILS",
    "FormulaError",
    "LeftOut",
    "NoSolution",
    "OutOfLimits",
    "WrongKind",
]
