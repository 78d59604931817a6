"""Fuels, a record each: its heat, what it is counted in, and how much of the heat reaches the sap."""

from __future__ import annotations

from typing import NamedTuple

from sheetfuncs.formulas.quantities import (
    BOTTLES,
    GAS_VOLUME,
    HEAT,
    KILOWATT_HOURS,
    STACKED,
    SYSTEMS,
    THERMS,
    VOLUME,
    Quantity,
)
from sheetfuncs.science.maths import fifteen


class Fuel(NamedTuple):
    """A fuel.  `efficiency` is only where to start: a log of one's own knows better."""

    counted_in: Quantity
    joules: float  # heat in one unit of `counted_in`, in the first unit system
    efficiency: float  # share of the heat that reaches the sap

    def heat_of_one(self, system: str) -> float:
        """Heat in one unit of the fuel in a unit system, J."""
        unit, first = self.counted_in.unit(system), self.counted_in.unit(SYSTEMS[0])
        return fifteen(self.joules * unit.into_si(1.0) / first.into_si(1.0))


def _btu(heat: float) -> float:
    return float(HEAT.us.into_si(heat))


# Heating values: Bartok, UConn Extension (2013); for wood the middle of its range (hardwood 18 to 24,
# softwood 10 to 15 million Btu a cord, dry).  A 20-lb bottle holds 4.72 gal of propane (cylinder
# makers' table, with the head space).  A therm and a kilowatt-hour are their own heat.
# Efficiencies: a judgement.  Records of wood fires run from 16 to 42 percent: 25 for a backyard arch.
# Gas under an open pan, a burner made for it, and an element in the pan: from memory.
PROPANE, GALLONS_IN_A_BOTTLE = 92500.0, 4.72
FUELS = {
    "hardwood": Fuel(STACKED, _btu(21000000.0), 0.25),
    "softwood": Fuel(STACKED, _btu(12500000.0), 0.25),
    "propane": Fuel(VOLUME, _btu(PROPANE), 0.4),
    "propane bottle": Fuel(BOTTLES, _btu(PROPANE * GALLONS_IN_A_BOTTLE), 0.4),
    "fuel oil": Fuel(VOLUME, _btu(138500.0), 0.5),
    "natural gas": Fuel(GAS_VOLUME, _btu(1030.0), 0.4),
    "natural gas by therm": Fuel(THERMS, THERMS.us.into_si(1.0), 0.4),
    "electricity": Fuel(KILOWATT_HOURS, KILOWATT_HOURS.us.into_si(1.0), 0.75),
}
