"""The cells of one sheet of an Office Open XML workbook: ECMA-376 part 1, 18.3.1.4.

A cell that cannot be read as it stands keeps what is written, and is told.
"""

from __future__ import annotations

import datetime
import re
from collections.abc import Iterator, Mapping, Sequence
from typing import NamedTuple

from openpyxl.formula.translate import Translator
from openpyxl.styles.numbers import BUILTIN_FORMATS, is_date_format, is_timedelta_format

from sheetfuncs.workbook.model.days import DAY_ZERO, ONE_DAY
from sheetfuncs.workbook.model.layout import letters
from sheetfuncs.workbook.read import besides
from sheetfuncs.workbook.read.contents import LAST_COLUMN, LAST_ROW, LONGEST, At, Cell, Limits
from sheetfuncs.workbook.read.xml import Event, Start

DAYS_TO_1904 = 1462
LONGEST_FORMAT = 255  # letters of a number format, in Excel
REFERENCE = re.compile(r"\$?([A-Z]{1,3})\$?([1-9]\d{0,6})$")
_WHOLE = re.compile(r"-?\d{1,15}$")
_NUMBER = re.compile(r"[-+]?(\d+\.?\d*|\.\d+)([eE][-+]?\d+)?$")
_ESCAPED = re.compile(r"_x([0-9A-Fa-f]{4})_")


class Styles(NamedTuple):
    """Which of a workbook's cell styles show dates, and which lengths of time."""

    dates: frozenset[int]
    lengths: frozenset[int]


def styles_of(formats: Mapping[str, str], used: Sequence[str]) -> Styles:
    """The styles in the order that cells number them, by the letters of their number formats."""
    known = {**{str(number): code for number, code in BUILTIN_FORMATS.items()}, **formats}
    codes = {number: known.get(number, "")[:LONGEST_FORMAT] for number in set(used)}
    dates = {number for number, code in codes.items() if is_date_format(code)}
    lengths = {number for number in dates if is_timedelta_format(codes[number])}
    return Styles(
        frozenset(place for place, number in enumerate(used) if number in dates),
        frozenset(place for place, number in enumerate(used) if number in lengths),
    )


class SheetReader:
    """The cells of one sheet."""

    def __init__(
        self, title: str, limits: Limits, shared: list[str], styles: Styles, from_1904: bool, seen: besides.Seen
    ) -> None:
        self.title, self.limits, self.shared, self.styles, self.seen = title, limits, shared, styles, seen
        self.later = DAYS_TO_1904 if from_1904 else 0
        self.cells: dict[At, Cell] = {}
        self.formulas: dict[str, Translator] = {}  # those that cells share

    def read(self, found: Iterator[Event]) -> None:
        """Every filled cell, from the events of the sheet's part."""
        row, column, in_rows = -1, -1, False
        cell: Mapping[str, str] = {}
        formula: Mapping[str, str] | None = None
        pieces: list[str] = []
        texts = {"v": "", "f": "", "t": ""}
        spelled = False
        for event in found:
            if isinstance(event, str):
                pieces.append(event)
            elif event.name == "sheetData":
                in_rows = isinstance(event, Start)
            elif not in_rows:
                self.seen.sheet(self.title, event, pieces)
                pieces.clear()
            elif isinstance(event, Start):
                if event.name == "row":
                    row, column = self._row(event.attributes.get("r"), row), -1
                elif event.name == "c":
                    cell, formula, texts, spelled = event.attributes, None, {"v": "", "f": "", "t": ""}, False
                elif event.name == "f":
                    formula = event.attributes
                elif event.name == "rPh":
                    spelled = True
                pieces.clear()
            else:
                if event.name in texts and not spelled:
                    texts[event.name] += "".join(pieces)
                elif event.name == "rPh":
                    spelled = False
                elif event.name == "c":
                    at = self._at(cell.get("r"), row, column)
                    if at:
                        column = at[1]
                        self._cell(at, cell, formula, texts)
                pieces.clear()

    def _row(self, given: str | None, last: int) -> int:
        if given is None:
            return last + 1
        if given.isascii() and given.isdecimal() and 1 <= len(given) <= 7 and 1 <= int(given) <= LAST_ROW:
            return int(given) - 1
        self.limits.strange(self.title, None, f"A row is numbered {given[:20]!r}, which no sheet has: take it as lost.")
        return last + 1

    def _at(self, given: str | None, row: int, column: int) -> At | None:
        """Where a cell stands; without a reference, behind the last one."""
        if given is None:
            return row, column + 1
        found = REFERENCE.match(given)
        if found and int(found[2]) <= LAST_ROW and (number := column_of(found[1])) < LAST_COLUMN:
            return int(found[2]) - 1, number
        self.limits.strange(self.title, None, f"A cell is named {given[:20]!r}, which no sheet has: it is not read.")
        return None

    def _cell(
        self, at: At, given: Mapping[str, str], formula: Mapping[str, str] | None, texts: Mapping[str, str]
    ) -> None:
        value = self._value(at, given, texts)
        words = "" if formula is None else self._formula(at, formula, texts["f"])
        if value is None and not words:
            return
        self.limits.cell(value)
        if isinstance(value, str):
            value = self.limits.text(self.title, at, value)
        self.cells[at] = Cell(value if value != "" or not words else None, words)

    def _value(self, at: At, given: Mapping[str, str], texts: Mapping[str, str]) -> object:
        """A cell's value by its type; what does not fit stays as it is written, and is told."""
        kind, text = given.get("t", "n"), texts["v"]
        if kind == "inlineStr":
            return unescaped(texts["t"]) or None
        if text == "":
            return None
        if kind == "s":
            if text.isascii() and text.isdecimal() and len(text) < 8 and int(text) < len(self.shared):
                return self.shared[int(text)] or None
            self.limits.strange(self.title, at, "Its text is not in the file: type it again.")
            return None
        if kind == "b":
            return text.strip() in ("1", "true")
        if kind == "d":
            try:
                return _plain_time(datetime.datetime.fromisoformat(text))
            except ValueError:
                return text
        if kind in ("str", "e"):
            return unescaped(text)
        text = text.strip()
        if not _NUMBER.match(text):
            self.limits.strange(self.title, at, f"{text[:40]!r} is stored as a number and is none: type it again.")
            return text
        number = int(text) if _WHOLE.match(text) else float(text)
        style = given.get("s", "0")
        place = int(style) if style.isascii() and style.isdecimal() and len(style) < 7 else 0
        return self._time(number, place in self.styles.lengths) if place in self.styles.dates else number

    def _time(self, number: float, length: bool) -> object:
        """A day or a time from a number; one that no calendar has stays the number that was typed."""
        whole = number == int(number) if abs(number) < 1e9 else True
        number = number + (0 if length or 0 <= number < 1 else self.later)
        try:
            if length:
                return datetime.timedelta(milliseconds=round(number * 86_400_000))
            if 0 <= number < 1 and (seconds := round(number * 86_400_000)) < 86_400_000:
                return (DAY_ZERO + datetime.timedelta(milliseconds=seconds)).time()
            if number < 0:
                return number
            day = DAY_ZERO + ONE_DAY * int(number)
            return day if whole else day + datetime.timedelta(milliseconds=round(number % 1 * 86_400_000))
        except OverflowError:
            return number

    def _formula(self, at: At, given: Mapping[str, str], text: str) -> str:
        """The text of a formula without its equals sign."""
        text = text.removeprefix("=")
        if given.get("t") == "dataTable":
            return "TABLE()"
        if given.get("t") == "shared":
            here = f"{letters(at[1])}{at[0] + 1}"
            number = given.get("si", "")
            if number in self.formulas:
                try:
                    return str(self.formulas[number].translate_formula(here)).removeprefix("=")
                except Exception:  # a formula that openpyxl's tokenizer cannot take apart
                    return text or "="
            if text and len(text) <= LONGEST:
                self.formulas[number] = Translator(f"={text}", here)
        return text or "="


def _plain_time(value: datetime.datetime) -> object:
    """A time of day where the day is the first that is counted."""
    value = value.replace(tzinfo=None)
    return value.time() if value.date() == DAY_ZERO.date() else value


def unescaped(text: str) -> str:
    """_x000D_ and its like stand for letters that XML does not take; lines end as everywhere."""
    if "_x" in text:
        text = _ESCAPED.sub(_letter, text)
    return text.replace("\r\n", "\n").replace("\r", "\n") if "\r" in text else text


def _letter(found: re.Match[str]) -> str:
    """What an escape stands for; as it is written, where that is no letter anywhere."""
    number = int(found[1], 16)
    return found[0] if 0xD800 <= number < 0xE000 or number in (0, 0xFFFE, 0xFFFF) else chr(number)


def column_of(letters: str) -> int:
    """A column's number from its letters: A is 0."""
    number = 0
    for letter in letters:
        number = number * 26 + ord(letter) - 64
    return number - 1
