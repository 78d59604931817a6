"""A season as it is lived, without an instrument for sugar: what is typed, in the order of its weekends.

What is pasted counts as one; Today is a formula in a workbook of a user's and does not count.
"""

from __future__ import annotations

import datetime
from collections.abc import Mapping
from types import MappingProxyType
from typing import Any, NamedTuple

Cells = Mapping[tuple[str, int], Any]
NOTHING: Mapping[Any, Any] = MappingProxyType({})


class Step(NamedTuple):
    """A sitting at the workbook: what is typed and pasted, and how many cells that may be."""

    title: str
    today: datetime.date
    typed: Cells
    most: int
    pasted: Cells = NOTHING
    readings: Cells = NOTHING  # of the race: they do not count
    said: Mapping[tuple[str, int], str] = NOTHING  # what the workbook must then say


def march(day: int) -> datetime.date:
    return datetime.date(2026, 2, 28) + datetime.timedelta(day)


def rows(table: str, start: int, **columns: tuple[Any, ...]) -> Cells:
    """Rows of a table, from a row on: a column's values one below the other; None is left blank."""
    return {
        (f"{table}.{key}", start + number): value
        for key, values in columns.items()
        for number, value in enumerate(values)
        if value is not None
    }


def weather(first: int, start: int, *days: tuple[float, float]) -> Cells:
    return rows("weather", start, date=tuple(march(first + number) for number in range(len(days))),
                low=tuple(low for low, _ in days), high=tuple(high for _, high in days))  # fmt: skip


def clock(hour: int, *minutes: int) -> tuple[datetime.time, ...]:
    return tuple(datetime.time(hour + minute // 60, minute % 60) for minute in minutes)


STEPS = (
    Step(
        "to start",
        march(-3),
        {
            ("yard.elevation", 1): 650,
            ("yard.typed_taps", 1): 12,
            ("taps.tapped", 1): march(-5),
            **rows("thermometers", 1, name=("dial", "electronic")),
            **rows("pans", 1, name=("big pan", "pot"), length=(20, 10), width=(12, None), depth=(4, 6)),
        },
        12,
        said={
            ("now.next", 1): "Each time you bring sap in: a row in Collection, with its date and volume.",
            ("now.first", 1): "Nothing is written down yet.",
            ("now.syrup", 1): "None.",
            ("now.boil", 1): "Nothing to boil.",
            ("now.pull", 1): "Too little weather to say: no night is known from today on, 6 are wanted. "
            "Type a forecast.",
            ("panel.do", 1): "Give the batch a line in Batches first: date and thermometer.",
        },
    ),
    Step(
        "the first weekend",
        march(0),
        {
            **rows("collection", 1, date=(march(-3), march(-2), march(-1)), sap=(6, 8, 9)),
            **rows("boil", 1, date=(march(0),), hours=(8,), jars_out=(4,)),
        },
        15,
        pasted=weather(-2, 1, (25, 41), (24, 43), (26, 42), (22, 39), (20, 38), (24, 44), (27, 45), (26, 44), (25, 42)),
        said={
            ("now.next", 1): "Before you finish: name your thermometer in Yard and read it in boiling water.",
            ("now.first", 1): "B1: Finish it or boil it up again by Sun Mar 8.",
            ("now.syrup", 1): "About 0.52 gal of syrup, in 1.00 gal of part-boiled sap.",
            ("now.run", 1): "Likely on Feb 28, and on 6 days after it.",
            ("now.pull", 1): "Leave the taps in: 7 nights of frost are ahead.",
            ("boil.do", 1): "Write B1 on 4 quart jars: about 39 °Brix, 0.52 gal of syrup. Go on by Sun Mar 8.",
            ("waiting.lot", 1): "B1",
            ("waiting.say", 1): "Finish it or boil it up again by Sun Mar 8.",
            ("waiting.say", 2): "",
            ("sugar.said", 1): "Nothing is bottled yet, and nothing is missing.",
        },
    ),
    Step(
        "the second weekend, with a reading at the end",
        march(7),
        {
            **rows("collection", 4, date=(march(3), march(5)), sap=(7, 10)),
            **rows("boil", 2, date=(march(7),), hours=(6,), jars_out=(3,), reading=(213.5,), water=(211.0,)),
            **rows("happenings", 1, lot=("B1",), what=("boiled up again",), date=(march(7),)),
        },
        15,
        pasted=weather(7, 10, (25, 40), (23, 42), (28, 45), (26, 44), (24, 41), (25, 43), (27, 46)),
        said={
            ("now.first", 1): "B1: Finish it or boil it up again by Sun Mar 15.",
            ("now.syrup", 1): "About 0.97 gal of syrup, in 1.75 gal of part-boiled sap.",
            ("boil.do", 1): "Write B1 on 4 quart jars: about 39 °Brix, 0.52 gal of syrup. Go on by Sun Mar 15.",
            ("boil.do", 2): "Write B2 on 3 quart jars: about 44 °Brix, 0.45 gal of syrup. Go on by Sun Mar 15.",
            ("waiting.lot", 1): "B1",
            ("waiting.lot", 2): "B2",
            ("learned.said", 1): "About 2.7 gal an hour, from 2 boils.",
        },
    ),
    Step(
        "the third weekend, the oldest jars in again",
        march(14),
        {
            **rows("collection", 6, date=(march(10), march(12), march(13)), sap=(9, 8, 6)),
            **rows("boil", 3, date=(march(14),), took=("all sap, B1",), hours=(8.5,), jars_out=(7,)),
            **rows("happenings", 2, lot=("B2",), what=("boiled up again",), date=(march(14),)),
        },
        15,
        pasted=weather(14, 17, (30, 47), (31, 50), (34, 52), (35, 55), (36, 54), (37, 56), (38, 57)),
        said={
            ("now.first", 1): "B2: Finish it or boil it up again by Sun Mar 22.",
            ("now.syrup", 1): "About 1.49 gal of syrup, in 2.50 gal of part-boiled sap.",
            ("now.run", 1): "Maybe, on Mar 14.",
            ("now.pull", 1): "Leave the taps in: 2 nights of frost are ahead.",
            ("boil.do", 1): "B1 went into B3 on Mar 14.",
            ("boil.do", 3): "Write B3 on 7 quart jars: about 44 °Brix, 1.04 gal of syrup. Go on by Sun Mar 22.",
            ("waiting.lot", 1): "B2",
            ("waiting.lot", 2): "B3",
            ("waiting.lot", 3): "",
        },
    ),
    Step(
        "the last day: two pots",
        march(21),
        {
            ("taps.pulled", 1): march(20),
            **rows("thermometers", 1, water=(210.5, 211.8), read_on=(march(21), march(21))),
            **rows("batches", 1, date=(march(21), march(21)), goes_in=("B2", "B3"),
                   thermometer=("electronic", "electronic")),
            **rows("bottles", 1, batch=(1, 2), date=(march(21), march(21)), jar=("pint", "pint"), filled=(3, 8)),
            **rows("words", 1, date=(march(21),), words=("Two pots in a day is plenty.",)),
        },
        30,
        readings={
            **rows("run", 1, time=clock(9, 0, 10, 20, 30, 40, 46), reading=(213.9, 214.6, 215.6, 217.1, 218.6, 219.3)),
            **rows("run", 7, time=clock(11, 0, 15, 30, 45, 60, 70), reading=(214.6, 215.3, 216.2, 217.4, 218.7, 219.4)),
            ("run.batch", 7): 2,
        },
        said={
            ("now.next", 1): "The taps are out and nothing waits. Write words to the next keeper in Season, "
            "then hand the workbook over.",
            ("now.first", 1): "Nothing is waiting in store.",
            ("now.reading", 1): "Syrup at 218.0 °F on dial; 219.4 °F on electronic, by boiling water read today.",
            ("now.syrup", 1): "None.",
            ("now.pull", 1): "The taps are out since Mar 20.",
            ("boil.do", 2): "B2 went into batch 1 on Mar 21.",
            ("batches.do", 1): "In range: about 66.8 °Brix. Filter and bottle it hot.",
            ("batches.do", 2): "In range: about 67.0 °Brix. Filter and bottle it hot.",
            ("run.do", 1): "14 minutes at the earliest.",
            ("run.do", 4): "Stay with it: about 2 minutes.",
            ("run.do", 12): "Take it off: it is syrup.",
            ("panel.do", 1): "Take it off: it is syrup.",
            ("waiting.lot", 1): "",
        },
    ),
)  # fmt: skip


def count(step: Step) -> int:
    """Cells to type, a paste counting as one."""
    return len(step.typed) + bool(step.pasted)
