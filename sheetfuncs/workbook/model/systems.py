"""The unit system of a workbook: its symbols, and numbers and words that differ with it."""

from __future__ import annotations

from typing import Any

from sheetfuncs.files import Refused
from sheetfuncs.formulas import quantities
from sheetfuncs.formulas.quantities import Argument, Limits, Quantity


def unit_system(word: str) -> str:
    """The system that `--units` names."""
    known = {"us": "US", "metric": "metric"}
    if word.casefold() not in known:
        raise Refused(f"--units {word}: there is no such unit system; choose us or metric")
    return known[word.casefold()]


class Units:
    """The unit symbols of a workbook, and numbers that differ with them."""

    def __init__(self, system: str) -> None:
        self.system = system
        self.volume = self.symbol(quantities.VOLUME)
        self.small = self.symbol(quantities.SMALL_VOLUME)
        self.mass = self.symbol(quantities.MASS)
        self.temperature = self.symbol(quantities.TEMPERATURE)
        self.difference = self.symbol(quantities.DIFFERENCE)
        self.pressure = self.symbol(quantities.PRESSURE)
        self.elevation = self.symbol(quantities.ELEVATION)
        self.length = self.symbol(quantities.LENGTH)
        self.area = self.symbol(quantities.AREA)
        self.small_in_volume = self._in(quantities.SMALL_VOLUME, quantities.VOLUME)
        self.area_in_lengths = self._in(quantities.LENGTH, quantities.AREA, power=2)
        self.volume_in_lengths = self._in(quantities.LENGTH, quantities.VOLUME, power=3)

    def symbol(self, quantity: Quantity) -> str:
        """A quantity's unit in this system."""
        return quantity.unit(self.system).symbol

    def _in(self, small: Quantity, large: Quantity, power: int = 1) -> float:
        """How many of a small unit make a large one: inches to the second power in a square foot."""
        one, other = (quantity.unit(self.system).into_si(1.0) for quantity in (small, large))
        return float(f"{other / one**power:.12g}")

    def limits(self, argument: Argument) -> Limits:
        """What a cell takes that a function will be given: one range for both."""
        return argument.limits(self.system)

    def pick(self, us: Any, metric: Any) -> Any:
        """One of two: a number or a word that is round in each system."""
        return us if self.system == "US" else metric
