"""The vocabulary: every quantity's unit in each system, and what each argument means.

Units convert with a few characters of arithmetic, kept as text: `define` writes it into the
functions and the tracer runs it, so that Python and spreadsheets do the same steps.
The factors are those of pint; a test compares them.
"""

from __future__ import annotations

from typing import NamedTuple

from sheetfuncs.science.maths import Value

SYSTEMS = ("US", "metric")  # the first is what a call means that names none


class Unit(NamedTuple):
    """A unit: its symbol, pint's name for it, and arithmetic to and from SI, of a name `x`."""

    symbol: str
    pint: str
    to_si: str = "x"
    from_si: str = "x"

    def into_si(self, x: Value) -> Value:
        return eval(self.to_si, {"x": x})  # noqa: S307 (our own text, a few lines below)

    def out_of_si(self, x: Value) -> Value:
        return eval(self.from_si, {"x": x})  # noqa: S307


class Quantity(NamedTuple):
    """A kind of measure; `units` says whether the unit system changes it."""

    us: Unit
    metric: Unit
    si: str = ""

    def unit(self, system: str) -> Unit:
        return self.us if system == "US" else self.metric

    @property
    def units(self) -> bool:
        return self.us != self.metric

    @property
    def symbol(self) -> str:
        """Both symbols, as in `°F or °C`; one where they are the same."""
        return f"{self.us.symbol} or {self.metric.symbol}" if self.units else self.us.symbol


def scaled(symbol: str, pint: str, factor: float) -> Unit:
    """A unit that is a number of SI units."""
    return Unit(symbol, pint, f"x * {factor!r}", f"x / {factor!r}")


def plain(symbol: str) -> Quantity:
    """A quantity without a unit system."""
    return Quantity(Unit(symbol, ""), Unit(symbol, ""))


# The gallon is 231 cubic inches; inches, pounds and the Btu (International Table) are exact.
VOLUME = Quantity(scaled("gal", "gallon", 0.003785411784), scaled("L", "liter", 0.001), "m^3")
SMALL_VOLUME = Quantity(scaled("fl oz", "fluid_ounce", 0.0000295735295625), scaled("mL", "milliliter", 0.000001), "m^3")
MASS = Quantity(scaled("lb", "pound", 0.45359237), Unit("kg", "kilogram"), "kg")
TEMPERATURE = Quantity(Unit("°F", "degF", "(x - 32.0) / 1.8", "x * 1.8 + 32.0"), Unit("°C", "degC"), "degC")
DIFFERENCE = Quantity(Unit("F°", "delta_degF", "x / 1.8", "x * 1.8"), Unit("C°", "delta_degC"), "delta_degC")
PRESSURE = Quantity(scaled("inHg", "inch_Hg", 3386.38864034), scaled("hPa", "hectopascal", 100.0), "Pa")
ELEVATION = Quantity(scaled("ft", "foot", 0.3048), Unit("m", "meter"), "m")
LENGTH = Quantity(scaled("in", "inch", 0.0254), scaled("cm", "centimeter", 0.01), "m")
AREA = Quantity(scaled("sq ft", "foot^2", 0.09290304), Unit("m²", "meter^2"), "m^2")
HEAT = Quantity(scaled("Btu", "Btu_it", 1055.05585262), scaled("MJ", "megajoule", 1000000.0), "J")
# 0.45359237 kg / 0.003785411784 m³, to fifteen digits
DENSITY = Quantity(scaled("lb/gal", "pound/gallon", 119.826427316897), scaled("kg/L", "kg/liter", 1000.0), "kg/m^3")
RATE = Quantity(scaled("gal/h", "gallon/hour", 0.003785411784), scaled("L/h", "liter/hour", 0.001), "m^3/hour")

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
STATE = plain("thin, in range or thick")
GRADE = plain("Golden, Amber, Dark or Very Dark")
FUEL_AMOUNT = plain("the fuel's unit")
FUEL = plain("word")

Limits = tuple[float, float]


class Argument(NamedTuple):
    """What one argument means, and how far it may go in each system.  Ends are inside.

    An argument with `allowed` words is text; its limits do not count.
    """

    words: str
    quantity: Quantity
    us: Limits = (0.0, 0.0)
    metric: Limits = (0.0, 0.0)
    allowed: tuple[str, ...] = ()

    def limits(self, system: str) -> Limits:
        return self.us if system == "US" else self.metric

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


def measured(words: str, quantity: Quantity, us: Limits, metric: Limits) -> Argument:
    """An argument whose unit depends on the system."""
    return Argument(words, quantity, us, metric)


def number(words: str, quantity: Quantity, low: float, high: float) -> Argument:
    """An argument that is the same number in both systems."""
    return Argument(words, quantity, (low, high), (low, high))


def one_of(words: str, quantity: Quantity, allowed: tuple[str, ...]) -> Argument:
    """An argument that is one of a few words."""
    return Argument(words, quantity, allowed=allowed)
