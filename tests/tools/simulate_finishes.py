"""Finishing boils at random, through the workbook's own formulas: how often the announced minutes were late.

    python -m tests.tools.simulate_finishes [BATCHES] [SEED]

Each boil has a strength and a pace of its own; its volume and sugar are typed with an error, its pace is
not the usual one.  A thermometer reads in steps, with noise and an offset, in water as in syrup; some boils
swap to another one on the way.  A row is late where it is syrup before the earliest minute it announced.
"""

from __future__ import annotations

import datetime
import math
import random
import statistics
import sys
from collections import defaultdict
from collections.abc import Iterator
from typing import Any, NamedTuple

from sheetfuncs import BOIL_WATER, FINISH_READING, SAP_SUGAR, SYRUP_DENSITY, SYRUP_FROM_SAP
from sheetfuncs.workbook.model.rows import Rows
from sheetfuncs.workbook.season import Season

STEPS = (0.1, 0.2, 0.5, 1.0, 2.0)  # F°, what a thermometer reads to within
TARGET = 66.9
USUAL = 1.0  # gal/h, what the workbook takes as the usual pace
LAST = 12  # minutes before the end, in which it matters most
TOGETHER = 25  # batches in one workbook
MOST = 24  # readings in one boil
DAY = datetime.date(2027, 3, 20)
SHARE_LATE = 0.05  # of rows, at most, for thermometers of half a degree or better


class Thermometer(NamedTuple):
    step: float
    offset: float
    water: float  # what it shows in boiling water

    def shows(self, degrees: float, chance: random.Random) -> float:
        noisy = degrees + self.offset + chance.gauss(0.0, self.step / 4)
        return round(round(noisy / self.step) * self.step, 6)


class Boil(NamedTuple):
    """A simulated boil: what is typed of it, and the minute of the run when it was syrup."""

    step: float
    volume: float
    brix: float
    thermometers: tuple[Thermometer, ...]
    readings: tuple[tuple[float, float, int], ...]  # minute, reading, thermometer
    end: float


class Row(NamedTuple):
    """What a row announced, and what was true."""

    step: float
    left: float  # minutes that were really left
    announced: float | None


def boil(step: float, chance: random.Random) -> Boil:
    water = chance.uniform(208.0, 212.5)
    volume, brix = chance.uniform(0.5, 4.0), chance.uniform(22.0, 40.0)
    pace = USUAL * math.exp(chance.gauss(0.0, 0.3))  # the usual pace is a third off, now and then
    left = BOIL_WATER(volume, brix, TARGET)
    end = 60 * left / pace
    syrup = SYRUP_FROM_SAP(volume, brix, TARGET)
    sugar, water_weighs = SAP_SUGAR(syrup, TARGET), SYRUP_DENSITY(0, 68)
    both = []
    for _ in range(2):
        made = Thermometer(step, chance.uniform(-2.0, 2.0), 0.0)
        both.append(made._replace(water=made.shows(water, chance)))
    swap = chance.uniform(0.3, 0.9) * end if chance.random() < 0.3 else math.inf
    readings: list[tuple[float, float, int]] = []
    minute = chance.uniform(0.0, 0.6) * end
    while minute < end and len(readings) < MOST:
        now = 100 * sugar / (sugar / (TARGET / 100) + (left - pace * minute / 60) * water_weighs)
        which = int(minute > swap)
        readings.append((minute, both[which].shows(FINISH_READING(now, water), chance), which))
        minute += chance.choice((1, 2, 2, 3)) if end - minute < 20 else chance.uniform(4, 15)
        minute = round(minute)
    typed = round(volume * (1 + chance.gauss(0.0, 0.03)), 2), round(brix + chance.gauss(0.0, 0.4), 1)
    return Boil(step, *typed, tuple(both), tuple(readings), end)


def typed(boils: list[Boil]) -> dict[str, Any]:
    """The boils as a person would type them into one workbook."""
    meters = [
        (f"t{number}-{which}", made) for number, one in enumerate(boils) for which, made in enumerate(one.thermometers)
    ]
    run = [(number, *reading) for number, one in enumerate(boils) for reading in one.readings]
    noon = datetime.datetime.combine(DAY, datetime.time(10, 0))
    return {
        "yard.rate": USUAL,
        "thermometers.name": [name for name, _ in meters],
        "thermometers.error": [made.step for _, made in meters],
        "thermometers.water": [made.water for _, made in meters],
        "thermometers.read_on": [DAY] * len(meters),
        "batches.date": [DAY] * len(boils),
        "batches.thermometer": [f"t{number}-0" for number in range(len(boils))],
        "batches.volume_typed": [one.volume for one in boils],
        "batches.brix_typed": [one.brix for one in boils],
        "run.batch": [number + 1 for number, *_ in run],
        "run.time": [(noon + datetime.timedelta(minutes=round(minute))).time() for _, minute, _, _ in run],
        "run.reading": [reading for _, _, reading, _ in run],
        "run.thermometer": [f"t{number}-{which}" for number, _, _, which in run],
    }  # fmt: skip


def announced(boils: list[Boil]) -> Iterator[Row]:
    """What the workbook says in every row of these boils."""
    count = sum(len(one.readings) for one in boils)
    rows = Rows(batches=len(boils), readings=count, thermometers=2 * len(boils), collections=1, boils=1, happenings=1,
                waiting=1, bottlings=1, days=1, places=1, trees=1, past=1)  # fmt: skip
    season = Season("US", typed(boils), rows, today=DAY)
    season.compute()
    offset = 0
    for one in boils:
        for minute, _, _ in one.readings:
            said = season.value("run.minutes", offset)
            yield Row(one.step, one.end - round(minute), said if isinstance(said, (int, float)) else None)
            offset += 1


def simulated(batches: int, seed: int, steps: tuple[float, ...] = STEPS) -> list[Row]:
    """Every row of so many boils."""
    chance = random.Random(seed)  # noqa: S311 (the same boils for a seed)
    boils = [boil(steps[number % len(steps)], chance) for number in range(batches)]
    found: list[Row] = []
    for start in range(0, batches, TOGETHER):
        found += announced(boils[start : start + TOGETHER])
    return found


def late(rows: list[Row], within: float = LAST) -> float:
    """The share of the rows that announced minutes, near the end, and were late."""
    near = [row for row in rows if row.left <= within and row.announced is not None]
    return sum((row.announced or 0.0) > row.left for row in near) / len(near) if near else 0.0


def main() -> None:
    batches, seed = (int(text) for text in (sys.argv[1:] + ["1000", "1"][len(sys.argv) - 1 :])[:2])
    by_step: dict[float, list[Row]] = defaultdict(list)
    for row in simulated(batches, seed):
        by_step[row.step].append(row)
    print(f"{batches} boils; rows of the last {LAST} minutes, and of the half hour before them")
    print("  F°   rows  timed   late  | before: timed   late  announced of what was left (median)")
    for step, rows in sorted(by_step.items()):
        near = [row for row in rows if row.left <= LAST]
        far = [row for row in rows if LAST < row.left <= LAST + 30]
        timed = [row for row in far if row.announced is not None]
        share = statistics.median((row.announced or 0.0) / row.left for row in timed) if timed else math.nan
        of_near = sum(row.announced is not None for row in near) / len(near)
        of_far, late_far = len(timed) / max(1, len(far)), late(far, LAST + 30)
        print(
            f"{step:4}  {len(near):5}  {of_near:5.0%}  {late(near):5.1%}"
            f"  |        {of_far:5.0%}  {late_far:5.1%}  {share:5.0%}"
        )


if __name__ == "__main__":
    main()
