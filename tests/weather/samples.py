"""The saved forecasts of tests/data, what each must give, and ways to spoil one."""

from __future__ import annotations

import csv
import random
import re
from collections.abc import Callable
from pathlib import Path

FOLDER = Path(__file__).parent.parent / "data" / "forecasts"
NAMES = sorted(path.name for path in FOLDER.iterdir() if path.name not in ("expected.csv", "SOURCES.md"))
DEGREES = {"daily-summaries.csv": "F", "daily-summaries-morning.csv": "C"}  # these do not say
SYSTEMS = {"F": "US", "C": "metric", None: None}

Row = tuple[str, float | None, float | None]


def expected() -> dict[str, list[Row]]:
    """The rows of each file: day, low of the night before, high, in the unit of the file."""
    rows: dict[str, list[Row]] = {}
    with (FOLDER / "expected.csv").open(encoding="utf-8") as lines:
        for line in csv.DictReader(lines):
            row = line["day"], *(float(line[key]) if line[key] else None for key in ("low", "high"))
            rows.setdefault(line["file"], []).append(row)  # type: ignore[arg-type]
    return rows


def _line_gone(lines: list[bytes], die: random.Random) -> list[bytes]:
    place = die.randrange(len(lines))
    return lines[:place] + lines[place + 1 :]


def _lines_gone(lines: list[bytes], die: random.Random) -> list[bytes]:
    """Fewer than five: what is left of a list of six lines a day could be true of no day and look whole."""
    place = die.randrange(len(lines))
    return lines[:place] + lines[place + die.randint(2, 4) :]


def _line_twice(lines: list[bytes], die: random.Random) -> list[bytes]:
    place = die.randrange(len(lines))
    return lines[: place + 1] + lines[place:]


def _cut_short(lines: list[bytes], die: random.Random) -> list[bytes]:
    whole = b"".join(lines)
    return [whole[: die.randrange(len(whole))]]


def _a_piece_gone(lines: list[bytes], die: random.Random) -> list[bytes]:
    """Within a line: of what spans two lines of a table, a true line can be left with the values of two days."""
    number = die.randrange(len(lines))
    place = die.randrange(len(lines[number]))
    lines[number] = (lines[number][:place] + lines[number][place + die.randint(1, 40) :]).rstrip() + b"\n"
    return lines


def _another_letter(lines: list[bytes], die: random.Random) -> list[bytes]:
    whole = b"".join(lines)
    place = die.randrange(len(whole))
    return [
        whole[:place] + die.choice([b"x", b"{", b"<", b",", b"\n", b'"', b"\xff", b"\0", b" "]) + whole[place + 1 :]
    ]


def _another_digit_in_a_date(lines: list[bytes], die: random.Random) -> list[bytes]:
    """Not the only date of a file that names its days, nor that of a record, which may have holes: both stay true."""
    whole = b"".join(lines)
    dates = [*re.finditer(rb"2026-?\d\d-?\d\d|mars 2026|Mar 6|\d\d? mars", whole)]
    if len(dates) < 2 or b"STATION" in whole:
        return lines
    one = die.choice(dates)
    digits = [place for place in range(one.start(), one.end()) if whole[place : place + 1].isdigit()]
    place = die.choice(digits)
    return [whole[:place] + str(die.randrange(10)).encode() + whole[place + 1 :]]


def _another_name_of_a_day(lines: list[bytes], die: random.Random) -> list[bytes]:
    whole = b"".join(lines)
    names = rb"Monday|Tuesday|Wednesday|Thursday|Friday|Saturday|Sunday|lundi|mardi|jeudi|samedi|Tonight|Sat|Sun|Mon"
    found = [*re.finditer(names, whole)]
    if not found:
        return lines
    one = die.choice(found)
    other = die.choice([b"Monday", b"Thursday", b"dimanche", b"Tonight", b"Washington's Birthday", b""])
    return [whole[: one.start()] + other + whole[one.end() :]]


def _another_unit(lines: list[bytes], die: random.Random) -> list[bytes]:
    whole = b"".join(lines)
    found = [*re.finditer(rb'degF|degC|Fahrenheit|units="C"|"F"|"C"|\xc2\xb0[CF]', whole)]
    if not found:
        return lines
    one = die.choice(found)
    return [whole[: one.start()] + b'"K"' + whole[one.end() :]]


def _records_swapped(lines: list[bytes], die: random.Random) -> list[bytes]:
    """Two lines, or two blocks between lines that look alike, change places."""
    dated = [place for place, line in enumerate(lines) if re.search(rb"2026-03-\d\d|mars :|\d\xc2\xb0/", line)]
    if len(dated) < 2:
        return lines
    one, other = sorted(die.sample(dated, 2))
    lines[one], lines[other] = lines[other], lines[one]
    return lines


WAYS: tuple[Callable[[list[bytes], random.Random], list[bytes]], ...] = (
    _line_gone, _lines_gone, _line_twice, _cut_short, _a_piece_gone, _another_letter,
    _another_digit_in_a_date, _another_name_of_a_day, _another_unit, _records_swapped,
)  # fmt: skip


def spoiled(content: bytes, number: int) -> bytes:
    """The content spoiled in the way of that number; the same number spoils alike."""
    die = random.Random(number)  # noqa: S311 (a die)
    return b"".join(WAYS[number % len(WAYS)](content.splitlines(keepends=True), die))
