"""What a cell holds: one record a kind, with its unit, its looks, and how it is read, shown and judged."""

from __future__ import annotations

import datetime
import math
from dataclasses import dataclass
from typing import Any

from sheetfuncs.formulas import quantities
from sheetfuncs.formulas.quantities import Limits, Quantity
from sheetfuncs.workbook.model.days import MONTHS, date_of, serial, time_of
from sheetfuncs.workbook.model.systems import Units

ANY_AMOUNT: Limits = (0, 1000000)  # what a number cell takes that names no limits
LONGEST = 32767  # characters in a cell
OLDEST, LATEST = datetime.date(2000, 1, 1), datetime.date(2099, 12, 31)  # a day of a season
MIDNIGHT = 0.999999  # the last moment of a day, as a part of it


@dataclass(frozen=True)
class Kind:
    """A number.  `us` and `metric` are its formats; `decimals` what an instrument shows, in both systems:
    a number that has them converts.  Headings end in the unit of `quantity`."""

    name: str
    us: str
    width: float = 10
    align: str = "right"
    metric: str = ""
    quantity: Quantity | None = None
    decimals: tuple[int, int] | None = None

    wordy = False
    amount = True  # a number with limits

    def format(self, units: Units) -> str:
        """The number format of a spreadsheet."""
        return str(units.pick(self.us, self.metric or self.us))

    def unit(self, units: Units) -> str:
        """The symbol of its unit; "" where it has none."""
        return units.symbol(self.quantity) if self.quantity else ""

    def heading(self, words: str, units: Units) -> str:
        """Words with the unit behind them, as a heading has it."""
        return ", ".join(part for part in (words, self.unit(units)) if part)

    def parse(self, value: Any) -> Any:
        """A value found in a cell; what does not fit stays as a spreadsheet would take it."""
        if value is None or value == "":
            return None
        if isinstance(value, str):
            return value[:LONGEST]
        if isinstance(value, bool):
            return str(value).upper()  # no number to a spreadsheet's sums
        try:
            number = float(serial(value))
        except OverflowError:
            return str(value)
        return self.from_number(number) if math.isfinite(number) else str(value)

    def from_number(self, number: float) -> Any:
        """A number of a cell as this kind has it."""
        return number

    def from_text(self, text: str) -> Any:
        """A value written in a file of ours: numbers plain, dates and times as ISO 8601 writes them."""
        return float(text)

    def show(self, value: Any, units: Units) -> str:
        """A value as the workbook shows it, for a page of text."""
        if value is None or isinstance(value, str):
            return value or ""
        number, form = serial(value), self.format(units)
        if form == "General":
            return f"{number:g}"
        decimals = len(form.rstrip("%").partition(".")[2])
        text = f"{number * 100 if form.endswith('%') else number:{',' if ',' in form else ''}.{decimals}f}"
        if "#" in form.partition(".")[2]:
            text = text.rstrip("0").rstrip(".")
        return text + " %" if form.endswith("%") else text

    def is_text(self, words: str, units: Units) -> str:
        """What is said where text stands."""
        return f"{words} is text, not a number: type the number alone."

    def outside(self, words: str, limits: Limits, units: Units) -> str:
        """What is said where a number is beyond its limits."""
        low, high = (_plain(limit) for limit in limits)
        return f"{words} must be {low} to {high} {self.unit(units)}".rstrip() + "."

    def ends(self, limits: Limits) -> Limits | None:
        """The least and the greatest number of a cell with these limits; None where any will do."""
        return limits if self.amount and (limits != ANY_AMOUNT or self.quantity) else None

    def fits(self, value: Any) -> bool:
        """Whether a typed value is of this kind, within its limits or not."""
        return not isinstance(value, str)

    def wrong(self, words: str, value: Any, limits: Limits, units: Units) -> str:
        """What is wrong with a typed value; "" for nothing."""
        if isinstance(value, str):
            return self.is_text(words, units)
        low, high = self.ends(limits) or limits
        return "" if self.fits(value) and low <= serial(value) <= high else self.outside(words, limits, units)

    def rule(self, words: str, limits: Limits, units: Units) -> dict[str, Any]:
        """What a spreadsheet lets into the cell, and what it says to anything else."""
        low, high = (_plain(limit) for limit in limits)
        unit = self.unit(units)
        said = f"{words}: type a number from {low} to {high}" + (f" ({unit})" if unit else "") + ", without its unit."
        rule = {"validate": "decimal", "criteria": "between", "minimum": limits[0], "maximum": limits[1]}
        return rule | {"error_message": said}


@dataclass(frozen=True)
class Day(Kind):
    """A date."""

    amount = False

    def from_number(self, number: float) -> Any:
        return date_of(number) or number

    def from_text(self, text: str) -> Any:
        return datetime.date.fromisoformat(text)

    def show(self, value: Any, units: Units) -> str:
        day = self.parse(value)
        if not isinstance(day, datetime.date):
            return str(value or "")
        return f"{self.brief(day, units)}{units.pick(',', '')} {day.year}"

    def brief(self, day: datetime.date, units: Units) -> str:
        """A day without its year, as sentences have it."""
        month = MONTHS[day.month - 1]
        return str(units.pick(f"{month} {day.day}", f"{day.day} {month}"))

    def is_text(self, words: str, units: Units) -> str:
        return f"{words} is text: type it again as a date."

    def fits(self, value: Any) -> bool:
        return isinstance(value, datetime.date)

    def ends(self, limits: Limits) -> Limits | None:
        return int(serial(OLDEST)), int(serial(LATEST))

    def outside(self, words: str, limits: Limits, units: Units) -> str:
        return f"{words} is no day from {OLDEST.year} to {LATEST.year}: type a date."

    def rule(self, words: str, limits: Limits, units: Units) -> dict[str, Any]:
        ends = {"minimum": OLDEST, "maximum": LATEST}
        return {"validate": "date", "criteria": "between", **ends, "error_message": f"{words}: type a date."}


@dataclass(frozen=True)
class Clock(Kind):
    """A time of day."""

    amount = False

    def from_number(self, number: float) -> Any:
        found = time_of(number)
        return number if found is None else found

    def from_text(self, text: str) -> Any:
        return datetime.time.fromisoformat(text)

    def show(self, value: Any, units: Units) -> str:
        time = self.parse(value)
        if not isinstance(time, datetime.time):
            return "" if value is None else str(value)
        hour = time.hour % 12 or 12
        return str(units.pick(f"{hour}:{time:%M} {'PM' if time.hour > 11 else 'AM'}", f"{time:%H:%M}"))

    def is_text(self, words: str, units: Units) -> str:
        return f"{words} is text: type it as {self._model(units)}."

    def fits(self, value: Any) -> bool:
        return isinstance(value, datetime.time)

    def ends(self, limits: Limits) -> Limits | None:
        return 0, MIDNIGHT

    def outside(self, words: str, limits: Limits, units: Units) -> str:
        return f"{words} is no time of day: type it as {self._model(units)}."

    def rule(self, words: str, limits: Limits, units: Units) -> dict[str, Any]:
        rule = {"validate": "time", "criteria": "between", "minimum": datetime.time(0), "maximum": MIDNIGHT}
        return rule | {"error_message": f"{words}: type a time of day, for instance {self._model(units)}."}

    @staticmethod
    def _model(units: Units) -> str:
        return str(units.pick("2:30 PM", "14:30"))


@dataclass(frozen=True)
class Words(Kind):
    """Text."""

    wordy = True
    amount = False

    def parse(self, value: Any) -> Any:
        if isinstance(value, datetime.datetime) and value.time() == datetime.time():
            return value.date().isoformat()
        if value is None or isinstance(value, (int, float, str)):
            return super().parse(value)
        return str(value)

    def from_text(self, text: str) -> Any:
        return text

    def show(self, value: Any, units: Units) -> str:
        return str(value or "") if value is None or isinstance(value, str) else f"{serial(value):g}"

    def fits(self, value: Any) -> bool:
        return True

    def wrong(self, words: str, value: Any, limits: Limits, units: Units) -> str:
        return ""

    def rule(self, words: str, limits: Limits, units: Units) -> dict[str, Any]:
        return {}


def _plain(number: float) -> str:
    """A limit as a person writes it: 1,000,000 and never 1e+06."""
    return f"{number:,.10g}" if abs(number) >= 10000 else f"{number:.10g}"


def counted(number: float, word: str, form: str = "g") -> str:
    """So many of something: 1 jar, 2 jars."""
    return f"{number:{form}} {word}" + ("" if number == 1 else "s")


def is_date(value: Any) -> bool:
    """Whether a cell shows a date or a time."""
    return isinstance(value, (datetime.date, datetime.time, datetime.timedelta))


def _measure(name: str, quantity: Quantity, us: str, metric: str, width: float, decimals: Any = None) -> Kind:
    return Kind(name, us, width, metric=metric, quantity=quantity, decimals=decimals)


DATE = Day("date", "mmm d, yyyy", 13, "center", "d mmm yyyy")
TIME = Clock("time", "h:mm AM/PM", 10, "center", "hh:mm")
TEXT = Words("text", "@", 15, "left")
WORDS = Words("words", "@", 40, "left")

VOLUME = _measure("volume", quantities.VOLUME, "#,##0.00", "#,##0.0", 9, (2, 1))
SMALL = _measure("small volume", quantities.SMALL_VOLUME, "#,##0.0", "#,##0", 10, (1, 0))
MASS = _measure("mass", quantities.MASS, "#,##0.00", "#,##0.00", 9)
LENGTH = _measure("length", quantities.LENGTH, "0.0", "0.0", 9, (1, 1))
AREA = _measure("area", quantities.AREA, "0.0", "0.00", 9)
TEMPERATURE = _measure("temperature", quantities.TEMPERATURE, "0.0", "0.0", 9, (1, 1))
DIFFERENCE = _measure("difference", quantities.DIFFERENCE, "0.0", "0.0", 9, (1, 1))
PRESSURE = _measure("pressure", quantities.PRESSURE, "0.00", "0", 10, (2, 0))
ELEVATION = _measure("elevation", quantities.ELEVATION, "#,##0", "#,##0", 10, (0, 0))
RATE = _measure("rate", quantities.RATE, "#,##0.00", "#,##0.0", 9, (2, 1))
HEAT = _measure("heat", quantities.HEAT, "#,##0", "#,##0", 10)
BRIX = _measure("sugar", quantities.SUGAR, "0.0", "0.0", 8)

SHARE = Kind("share", "0%", 8)
COUNT = Kind("count", "0", 8)
NUMBER = Kind("number", "0")
ANY = Kind("any", "General")  # a number in a unit that its note names
MONEY = Kind("money", "#,##0.00")
DAYS = Kind("days", "0", 8)
HOURS = Kind("hours", "0.0", 8)
MINUTES = Kind("minutes", "0", 9)
RATIO = Kind("ratio", "0.0", 9)
FUEL = Kind("fuel", "0.###", decimals=(2, 2))
FUEL_PRICE = Kind("fuel price", "#,##0.00", decimals=(2, 2))
