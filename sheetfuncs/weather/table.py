"""A table or list copied from a page: days with lows and highs, in any order, in English or French.

Three shapes are read: columns under headings that say which is the low and which the high; lines of a
day and two temperatures; and a heading for each day and night with "Low 26 °F" or "High 44 °F" in it or
below.  What does not say its days, its unit or which is which is refused.
"""

from __future__ import annotations

import datetime
import re
from collections.abc import Iterator
from dataclasses import dataclass, field

from sheetfuncs.weather.days import ONE_DAY, Found, Odd, number, shown
from sheetfuncs.weather.marks import DAY_WORDS, Mark, day_of_numbers, marked
from sheetfuncs.weather.names import NIGHTS, Period, dated, folded, in_a_row

SERVICE = "a table"
HOW = "copy dates, lows and highs, with their °F or °C, from a page into a text file"
LOWS = r"low|lows|lo|min|mins|minimum|tmin|minima"
HIGHS = r"high|highs|hi|max|maxs|maximum|tmax|maxima"
_ROLE = re.compile(rf"\b({LOWS})\b|\b({HIGHS})\b")
_SAID = re.compile(
    rf"\b(?:({LOWS})|({HIGHS}))\b[\s:=.,]*"
    r"(?:(?:near|around|about|of|temperature|temp|plus|pres de|autour de|de)\b[\s:]*)*"
    r"([+-]?\d+(?:[.,]\d+)?(?!\d)|zero\b)(?!\s*(?:to|a|-)\s*[+-]?\d)"  # of a range, neither end
)
_UNIT = re.compile(r"[°º˚]\s*([cf])\b|(?<=\d)\s?([cf])\b|\b(fahrenheit|celsius)\b|\bdeg\s?([cf])\b")
_NUMBER = re.compile(r"(?<![\w.,])[+-]?\d+(?:[.,]\d+)?(?![\w]*[\w%])")
_NO_TEMPERATURE = re.compile(
    r"\d{1,2}[:h]\d{2}(\s?[ap]\.?m\b)?|\b\d{1,2}\s?[ap]\.?m\b|"
    r"\d+(?:[.,]\d+)?\s?(?:%|per ?cent|pour cent|mm|cm|inch(?:es)?|in\b|mph|km/h|kt|knots|kpa|hpa|mb\b)"
)
MOST_LINES, LONGEST_LINE = 5_000, 500
_REST_OF_A_NAME = re.compile(r"(night|afternoon|morning|evening)\s*")
_OF_OTHER_YEARS = re.compile(r"\b(normals?|normales?|averages?|moyennes?|records?)\b")
_SPLITS = (r"\t", ";", r"\|", r"\s{2,}", ",")
_BLANK = {"", "-", "--", "m", "n/a", "na", "nan"}
ASSUMED = "each low is taken as of the night before its day; if the page means the night after, add --night-after"


@dataclass
class Line:
    """What a line holds: a mark of its day, and its temperatures."""

    mark: Mark | None
    lows: list[float] = field(default_factory=list)
    highs: list[float] = field(default_factory=list)


def read(text: str, system: str | None, night_after: bool) -> Found:
    """The days of a table."""
    lines = list(_lines(text))
    if len(lines) > MOST_LINES or any(len(line) > LONGEST_LINE for line in lines):
        raise Odd(f"it has more than {MOST_LINES:,} lines, or one of more than {LONGEST_LINE:,} letters")
    if any(re.search(r'^"|"$|","', line.strip()) for line in lines):
        raise Odd("it looks like a data file without its first line")
    said = {letter[0] for line in lines for groups in _UNIT.findall(line) for letter in groups if letter}
    if len(said) > 1:
        raise Odd("it has both °F and °C; keep one of them")
    if not said and system is None:
        raise Odd("it does not say whether it is in °F or °C; add --degrees F or --degrees C")
    own = {"f": "US", "c": "metric"}[said.pop()] if said else system
    if system not in (None, own):
        raise Odd("its temperatures are not in the unit that --degrees says")
    found = Found(SERVICE, "a place it does not name", str(own))
    columns = _columns(lines)
    issued, told = _under_headings(lines, columns) if columns else _line_by_line(lines)
    after = night_after or bool(columns and columns.night)
    _put(found, told, issued, after)
    if not found.lows and not found.highs:
        raise Odd("it holds no day with a low or a high")
    days = found.days()
    found.hours = f"days {days[0]} to {days[-1]}"
    return found


def _lines(text: str) -> Iterator[str]:
    """The lines that count, a name such as "Saturday Night" in one; normals and records are of other years."""
    waiting = ""
    for line in filter(str.strip, text.splitlines()):
        line = _clean(line)
        if _REST_OF_A_NAME.fullmatch(line):
            waiting += f" {line}"
            continue
        if waiting:
            yield waiting
        waiting = "" if _OF_OTHER_YEARS.search(line) else line
    if waiting:
        yield waiting


def _clean(line: str) -> str:
    """Small letters, plain minus signs, no marks of fractions or spaces that only look like them."""
    line = folded(line.replace("\u00a0", " ").replace("\u202f", " ")).replace("\u2212", "-")
    line = re.sub(r"[\u2013\u2014](?=\d)", "-", line)
    return re.sub(r"\b(minus|moins)\s+(?=\d)", "-", line)


@dataclass
class Columns:
    """Where the day, the low and the high stand, and how lines are split."""

    line: int
    split: str
    day: int
    low: int
    high: int
    night: bool


def _columns(lines: list[str]) -> Columns | None:
    """The headings of a table, if a line has them."""
    for place, line in enumerate(lines):
        for split in _SPLITS:
            cells = re.split(split, line.strip())
            roles = ["".join("l" if one[0] else "h" for one in _ROLE.findall(cell)) for cell in cells]
            days = [column for column, cell in enumerate(cells) if re.search(DAY_WORDS, cell) and not roles[column]]
            if roles.count("l") == 1 and roles.count("h") == 1 and len(days) == 1:
                if marked(line) or _SAID.search(line):
                    continue
                low, high = roles.index("l"), roles.index("h")
                return Columns(place, split, days[0], low, high, bool(re.search(NIGHTS, cells[low])))
    return None


def _under_headings(lines: list[str], columns: Columns) -> tuple[datetime.date | None, list[Line]]:
    told = []
    for line in lines[columns.line + 1 :]:
        cells = [cell.strip() for cell in re.split(columns.split, line.strip())]
        if len(cells) <= max(columns.day, columns.low, columns.high):
            raise Odd(f"the line {shown(line)} has fewer values than the headings")
        mark = marked(cells[columns.day])
        if mark is None:
            raise Odd(f"the line {shown(line)} has no day where the heading says it")
        one = Line(mark)
        for column, into, word in ((columns.low, one.lows, "low"), (columns.high, one.highs, "high")):
            cell = _UNIT.sub("", cells[column]).strip(" °º˚")
            if cell not in _BLANK:
                into.append(number(cell.replace(",", "."), f"the {word} in the line {shown(line)}"))
        told.append(one)
    return _issue(lines[: columns.line]), told


def _issue(lines: list[str]) -> datetime.date | None:
    """The date that stands above the table."""
    for line in lines:
        mark = marked(line)
        if mark is not None and mark.date is not None:
            return mark.date
    return None


def _line_by_line(lines: list[str]) -> tuple[datetime.date | None, list[Line]]:
    told: list[Line] = []
    issued: datetime.date | None = None
    for line in lines:
        mark = marked(line)
        lows, highs = _degrees(line, mark)
        if mark is not None and mark.issue and not lows and not highs:
            if issued not in (None, mark.date):
                raise Odd(f"it says two days of issue: {issued} and {mark.date}")
            issued = mark.date
        elif mark is not None:
            if mark.date is not None and not told and issued is None and not lows and not highs:
                issued = mark.date
            told.append(Line(mark, lows, highs))
        elif lows or highs:
            if not told:
                raise Odd(f"the line {shown(line)} stands under no day")
            told[-1].lows += lows
            told[-1].highs += highs
    told = list(_without_empty(told))
    for one in told:
        if len(one.lows) > 1 or len(one.highs) > 1:
            raise Odd(f"there are several lows or highs for {shown(one.mark.text if one.mark else '')}")
    return issued, told


def _without_empty(told: list[Line]) -> Iterator[Line]:
    """The headings from the first with a value to the last; of one that is said twice, the one with values."""
    filled = [place for place, one in enumerate(told) if one.lows or one.highs]
    for place, one in enumerate(told[: max(filled, default=-1) + 1]):
        if place in filled or (place > filled[0] and not _again(one.mark, told[place + 1].mark)):
            yield one


def _again(mark: Mark | None, after: Mark | None) -> bool:
    """Whether the next heading names the same day or night."""
    return mark is not None and after is not None and mark[2:] == after[2:]


def _degrees(line: str, mark: Mark | None) -> tuple[list[float], list[float]]:
    """The lows and the highs of a line; two bare numbers beside a day are its low and its high."""
    rest = _NO_TEMPERATURE.sub(" ", mark.rest if mark else line)
    lows: list[float] = []
    highs: list[float] = []
    for low, _, value in _SAID.findall(rest):
        degrees = 0.0 if value == "zero" else float(value.replace(",", "."))
        (lows if low else highs).append(degrees)
    if lows or highs or mark is None or mark.issue:
        return lows, highs
    bare = [float(value.replace(",", ".")) for value in _NUMBER.findall(_UNIT.sub(" ", rest).replace("/", " "))]
    if len(bare) == 2:
        return [min(bare)], [max(bare)]
    if bare:
        raise Odd(f"which is the low and which the high cannot be told in {shown(line)}")
    return [], []


def _put(found: Found, told: list[Line], issued: datetime.date | None, night_after: bool) -> None:
    """Each low and high to its day."""
    marks = [one.mark for one in told if one.mark is not None]
    days = _days(marks, issued)
    nights = any(mark.night for mark in marks)
    for one, mark, start in zip(told, marks, days, strict=True):
        if nights and (one.highs if mark.night else one.lows):
            raise Odd(f"a {'high' if mark.night else 'low'} stands under {shown(mark.text)}: is a heading missing?")
        for value in one.lows:
            found.low(start + ONE_DAY if mark.night or night_after else start, value)
        for value in one.highs:
            found.high(start, value)
    if not nights and not night_after and found.lows:
        found.notes.append(ASSUMED)


def _days(marks: list[Mark], issued: datetime.date | None) -> list[datetime.date]:
    """The date of each mark, by its own words and the day of issue."""
    if not marks:
        return []
    if any(mark.numbers for mark in marks):
        days = day_of_numbers(marks)
    elif all(mark.date is not None for mark in marks):
        days = [mark.date for mark in marks if mark.date is not None]
    elif issued is None:
        raise Odd("it names its days but not its date; write the day it was copied in a first line, as 2026-03-06")
    elif all(mark.month_day for mark in marks):
        days = [_nearest(mark, issued) for mark in marks]
    elif any(mark.date or mark.month_day for mark in marks):
        raise Odd("it has dates on some lines and names of days on others")
    else:
        days = dated([Period(mark.text, mark.weekday, mark.night) for mark in marks], issued, issued)
    for mark, one in zip(marks, days, strict=True):
        if mark.weekday not in (None, one.weekday()):
            raise Odd(f"{one} is not the day of the week that {shown(mark.text)} says")
    in_a_row([(one, mark.night) for mark, one in zip(marks, days, strict=True)])
    return days


def _nearest(mark: Mark, issued: datetime.date) -> datetime.date:
    """A day and month in the year that brings it nearest to the day of issue."""
    month, day = mark.month_day or (0, 0)
    near = []
    for year in (issued.year - 1, issued.year, issued.year + 1):
        try:
            near.append(datetime.date(year, month, day))
        except ValueError:
            continue
    if not near:
        raise Odd(f"there is no day {shown(mark.text)}")
    return min(near, key=lambda one: abs((one - issued).days))
