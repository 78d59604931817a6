"""The vocabulary: every quantity's unit in each system, and what each argument means.

Units convert in a few steps of arithmetic, the same whether `define` writes them into a function,
the tracer into a spreadsheet, or NumPy takes them for a million elements.
The factors are those of pint; a test compares them.
"""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType
from typing import NamedTuple

from sheetfuncs.science.maths import Traced, Value, choose, lookup

SYSTEMS = ("US", "metric")  # the first is what a call means that names none


class Unit(NamedTuple):
    """A unit: its symbol, pint's name for it, and how its numbers become those of SI.

    SI is (number - offset) * scale / parts.  `scale` is one unit in SI, `parts` how many of the unit
    make one of SI: the one that has few digits is given, so that every host divides or multiplies
    by the same constant, and the other stays 1.
    """

    symbol: str
    pint: str
    scale: float = 1.0
    parts: float = 1.0
    offset: float = 0.0

    def into_si(self, x: Value) -> Value:
        x = x - self.offset if self.offset else x
        x = x * self.scale if self.scale != 1.0 else x
        return x / self.parts if self.parts != 1.0 else x

    def out_of_si(self, x: Value) -> Value:
        x = x * self.parts if self.parts != 1.0 else x
        x = x / self.scale if self.scale != 1.0 else x
        return x + self.offset if self.offset else x


class Quantity(NamedTuple):
    """A kind of measure; `units` says whether the unit system changes it.  One of `words` is no number."""

    us: Unit
    metric: Unit
    si: str = ""
    words: tuple[str, ...] = ()

    def unit(self, system: str) -> Unit:
        return self.us if system == "US" else self.metric

    @property
    def units(self) -> bool:
        return self.us != self.metric

    @property
    def symbol(self) -> str:
        """Both symbols, as in `°F or °C`; one where they are the same."""
        return f"{self.us.symbol} or {self.metric.symbol}" if self.units else self.us.symbol


def plain(symbol: str) -> Quantity:
    """A quantity without a unit system."""
    return Quantity(Unit(symbol, ""), Unit(symbol, ""))


def wording(*words: str) -> Quantity:
    """What is not measured, but one of a few words."""
    return plain(", ".join(words[:-1]) + " or " + words[-1])._replace(words=words)


# The gallon is 231 cubic inches; inches, pounds and the Btu (International Table) are exact.
VOLUME = Quantity(Unit("gal", "gallon", 0.003785411784), Unit("L", "liter", 0.001), "m^3")
SMALL_VOLUME = Quantity(Unit("fl oz", "fluid_ounce", 0.0000295735295625), Unit("mL", "milliliter", 0.000001), "m^3")
MASS = Quantity(Unit("lb", "pound", 0.45359237), Unit("kg", "kilogram"), "kg")
SMALL_MASS = Quantity(Unit("oz", "ounce", 0.028349523125), Unit("g", "gram", 0.001), "kg")
TEMPERATURE = Quantity(Unit("°F", "degF", parts=1.8, offset=32.0), Unit("°C", "degC"), "degC")
DIFFERENCE = Quantity(Unit("F°", "delta_degF", parts=1.8), Unit("C°", "delta_degC"), "delta_degC")
PRESSURE = Quantity(Unit("inHg", "inch_Hg", 3386.38864034), Unit("hPa", "hectopascal", 100.0), "Pa")
ELEVATION = Quantity(Unit("ft", "foot", 0.3048), Unit("m", "meter"), "m")
LENGTH = Quantity(Unit("in", "inch", 0.0254), Unit("cm", "centimeter", 0.01), "m")
AREA = Quantity(Unit("sq ft", "foot^2", 0.09290304), Unit("m²", "meter^2"), "m^2")
POWER = Quantity(Unit("Btu/h", "Btu_it/hour", 0.293071070172222), Unit("kW", "kilowatt", 1000.0), "W")
DEGREE_DAYS = Quantity(
    Unit("F°·days", "delta_degF*day", parts=1.8), Unit("C°·days", "delta_degC*day"), "delta_degC*day"
)
HEAT = Quantity(Unit("Btu", "Btu_it", 1055.05585262), Unit("MJ", "megajoule", 1000000.0), "J")
# 0.45359237 kg / 0.003785411784 m³, to fifteen digits
DENSITY = Quantity(Unit("lb/gal", "pound/gallon", 119.826427316897), Unit("kg/L", "kg/liter", 1000.0), "kg/m^3")
RATE = Quantity(Unit("gal/h", "gallon/hour", 0.003785411784), Unit("L/h", "liter/hour", 0.001), "m^3/hour")

# What fuels are counted in.  A cord is 128 cubic feet, stacked; a bottle 20 pounds of propane.
STACKED = Quantity(Unit("cord", "cord", 3.624556363776), Unit("m³ stacked", "meter^3"), "m^3")
GAS_VOLUME = Quantity(Unit("ft³", "foot^3", 0.028316846592), Unit("m³", "meter^3"), "m^3")


def in_both(unit: Unit, si: str) -> Quantity:
    """A quantity that is counted in one unit everywhere."""
    return Quantity(unit, unit, si)


BOTTLES = in_both(Unit("20-lb bottle", "bottle", 9.0718474), "kg")
THERMS = in_both(Unit("therm", "therm", 105505600.0), "J")
KILOWATT_HOURS = in_both(Unit("kWh", "kilowatt_hour", 3600000.0), "J")

SUGAR = plain("°Brix")
SHARE = plain("share")
COUNT = plain("count")
DAYS = plain("days")
HOURS = plain("hours")
MINUTES = plain("minutes")
GRAVITY = plain("SG 20/20 °C")
BAUME = plain("°Baumé")
PERCENT = plain("percent")
ANY_VOLUME = plain("any one unit of volume")
ANY_RATE = plain("the same unit an hour")
TIMES = plain("volumes")
STATE = wording("thin", "in range", "thick")
GRADE = wording("Golden", "Amber", "Dark", "Very Dark")
FUEL_AMOUNT = plain("the fuel's unit")
FUEL = plain("word")
ORIGIN = plain("word")
ANY_WEIGHT = plain("any one unit of weight")
PROBABILITY = plain("probability")

Limits = tuple[float, float]


class Argument(NamedTuple):
    """What one argument means, and how far it may go in each system.  Ends are inside.

    An argument with `allowed` words is text; its limits do not count.  Its words may stand for
    numbers in SI, which the relation takes instead: `meanings`, by unit system.
    """

    words: str
    quantity: Quantity
    us: Limits = (0.0, 0.0)
    metric: Limits = (0.0, 0.0)
    allowed: tuple[str, ...] = ()
    meanings: Mapping[str, Mapping[str, float]] = MappingProxyType({})

    def limits(self, system: str) -> Limits:
        return self.us if system == "US" else self.metric

    @property
    def units(self) -> bool:
        """Whether the unit system changes what a value of it means."""
        return self.quantity.units or any(words != self.meanings[SYSTEMS[0]] for words in self.meanings.values())

    def into_si(self, system: str, value: Value) -> Value:
        """A value as the relation takes it: in SI; a word as it is, or as the number it stands for."""
        if self.meanings:
            return lookup(value, self.meanings[system])
        return value if self.allowed else self.quantity.unit(system).into_si(value)

    def range_words(self, system: str) -> str:
        """The limits as a person writes them: `32 to 221 °F`."""
        if self.allowed:
            return "one of " + ", ".join(self.allowed)
        low, high = self.limits(system)
        return f"{low:,.10g} to {high:,.10g} {self.quantity.unit(system).symbol}"

    @property
    def limit_words(self) -> str:
        """The limits in both systems, where they differ."""
        us, metric = (self.range_words(system) for system in SYSTEMS)
        return us if us == metric else f"{us}, or {metric}"


class System:
    """The unit system of a call: known now by its name, or traced, and known only where a cell or element computes."""

    def __init__(self, units: Value) -> None:
        self.units = units
        self.later = isinstance(units, Traced)
        self.is_metric = units.is_not(SYSTEMS[0]) if self.later else units == SYSTEMS[1]

    def pick(self, us_value: Value, metric_value: Value) -> Value:
        """One of two values, numbers or traced ones."""
        both_numbers = not isinstance(us_value, Traced) and not isinstance(metric_value, Traced)
        if self.later and both_numbers and us_value == metric_value:
            return us_value
        return choose(self.is_metric, metric_value, us_value)

    def into_si(self, argument: Argument, value: Value) -> Value:
        """An argument as the relation takes it."""
        if not self.later or not argument.units:
            return argument.into_si(SYSTEMS[0] if self.later else self.units, value)
        return self.pick(*(argument.into_si(system, value) for system in SYSTEMS))

    def out_of_si(self, quantity: Quantity, value: Value) -> Value:
        """A result in its unit."""
        if not self.later or not quantity.units:
            return quantity.unit(SYSTEMS[0] if self.later else self.units).out_of_si(value)
        return self.pick(quantity.us.out_of_si(value), quantity.metric.out_of_si(value))


def measured(words: str, quantity: Quantity, us: Limits, metric: Limits) -> Argument:
    """An argument whose unit depends on the system."""
    return Argument(words, quantity, us, metric)


def number(words: str, quantity: Quantity, low: float, high: float) -> Argument:
    """An argument that is the same number in both systems."""
    return Argument(words, quantity, (low, high), (low, high))


def one_of(words: str, quantity: Quantity, allowed: tuple[str, ...]) -> Argument:
    """An argument that is one of a few words."""
    return Argument(words, quantity, allowed=allowed)


def standing_for(words: str, quantity: Quantity, us: Mapping[str, float], metric: Mapping[str, float]) -> Argument:
    """An argument that is one of a few words, each a number in SI."""
    return Argument(words, quantity, allowed=tuple(us), meanings=dict(zip(SYSTEMS, (us, metric))))
