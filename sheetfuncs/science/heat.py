"""Heat to boil sap down."""

from __future__ import annotations

from sheetfuncs.science.maths import Value
from sheetfuncs.science.sucrose import density_20, specific_heat
from sheetfuncs.science.water import latent_heat

BOIL = 100.0  # °C: a degree more or less changes the heat by a thousandth


def water_to_boil_off(brix: Value, to_brix: Value) -> Value:
    """Mass of water that leaves a mass of sap, kg/kg: the sugar stays."""
    return 1.0 - brix / to_brix


def heat_to_boil_off(volume: Value, brix: Value, to_brix: Value, celsius: Value) -> Value:
    """Heat to warm a volume of sap and boil it down, J.

    The sap warms to 100 °C with the specific heat of its strength at the mean temperature; the
    water then leaves with the latent heat at 100 °C.  No loss to the air or up the stack.
    """
    mass = volume * density_20(brix)
    warming = specific_heat(brix, (celsius + BOIL) / 2.0) * (BOIL - celsius)
    return mass * (warming + water_to_boil_off(brix, to_brix) * latent_heat(BOIL))
