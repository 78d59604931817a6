"""Random seasons, misread by instruments that are wrong the same way all season, through the workbook's ledger.

    python -m tests.tools.simulate_seasons [HOW MANY] [SEED]

One refractometer, one set of marks on the pails, jars, one hydrometer, one thermometer, a guess where nothing
was read: each has one error, normal, its standard deviation half of what Yard says it is good to.  No sugar is
lost.  Printed is how often each line of the ledger is within the ± beside it: about 95 of 100 is what that
should mean (JCGM 100:2008, 6.2 and G.1: a coverage factor of 2).
"""

from __future__ import annotations

import datetime
import random
import sys
from collections import Counter
from collections.abc import Iterator
from typing import Any, NamedTuple

from sheetfuncs import FINISH_READING, SAP_SUGAR, SYRUP_FLOATS, SYRUP_FROM_SAP
from sheetfuncs.workbook.model.rows import Rows
from sheetfuncs.workbook.season import Season
from sheetfuncs.workbook.sheets.ledger import LINES, row

HOW_MANY, SEED = 200, 1
ROWS = Rows(collections=16, boils=6, happenings=2, waiting=12, batches=3, readings=2, bottlings=4, days=2, trees=1,
            past=1, words=1)  # fmt: skip
TOLD = ("trees", "ice", "store", "bottled", "missing")
BRIX, GUESS, VOLUME, HYDROMETER, THERMOMETER = 0.2, 0.6, 0.03, 0.3, 0.5  # good to, as Yard says
EYE = 0.25  # of the share of ice
FIRST = datetime.date(2026, 2, 21)  # a Saturday
WATER, CUP = 211.0, 190.0


class Errors(NamedTuple):
    """By how much each instrument is wrong, all season."""

    brix: float
    guess: float
    marks: float
    jars: float
    hydrometer: float
    noise: float  # of a thermometer and of the eye, fresh each time: so many times what is usual


class Made(NamedTuple):
    """What is typed, and the sugar that there was in each line of the ledger."""

    inputs: dict[str, Any]
    sugar: dict[str, float]


def made(rng: random.Random, times: float) -> Made:
    """A season of four to six weekends, some of it still waiting; errors so many times what Yard says."""
    brix, guess, marks, jars, cup = (
        times * rng.gauss(0, good / 2) for good in (BRIX, GUESS, VOLUME, VOLUME, HYDROMETER)
    )
    errors = Errors(brix, guess, marks, jars, cup, times)
    unread = rng.choice((0.0, 0.0, 0.3, 1.0))
    inputs: dict[str, Any] = {
        "yard.elevation": 700,
        "thermometers.name": ["dial"],
        "thermometers.error": [THERMOMETER],
        "know.sap_brix": 2.0,
    }
    sugar = dict.fromkeys(TOLD, 0.0)
    weekends = rng.randint(4, 6)
    waiting_boils, sap_waits = rng.randint(0, 2), rng.random() < 0.7
    boiled: list[float] = []

    def put(key: str, value: Any) -> None:
        inputs.setdefault(key, []).append(value)

    for weekend in range(weekends):
        kept = 0.0
        for _ in range(rng.randint(2, 3) if weekend < 4 else 2):
            kept += collected(
                rng, errors, unread, FIRST + datetime.timedelta(7 * weekend - rng.randint(0, 4)), put, sugar
            )
        if weekend == weekends - 1 and sap_waits:
            sugar["store"] += kept
            break
        boiled.append(kept)
        boil(rng, errors, kept, FIRST + datetime.timedelta(7 * weekend), put)
    last = FIRST + datetime.timedelta(7 * weekends - 7)
    finished = len(boiled) - waiting_boils
    sugar["store"] += sum(boiled[finished:])
    for number, names in enumerate((range(finished // 2), range(finished // 2, finished)), 1):
        batch(rng, errors, number, [name + 1 for name in names], sum(boiled[name] for name in names), last, put, sugar)
    inputs["weekend.today"] = last
    sugar["trees"] += sugar["ice"]
    return Made(inputs, sugar)


def collected(rng: random.Random, errors: Errors, unread: float, day: Any, put: Any, sugar: dict[str, float]) -> float:
    """A row of Collection; returned is the sugar that was kept."""
    read = rng.random() >= unread
    volume, brix = rng.uniform(4, 11), rng.uniform(1.6, 2.6) if read else 2.0 - errors.guess
    ice, ice_brix = (rng.uniform(0.1, 0.3), rng.uniform(0.3, 0.6)) if read and rng.random() < 0.2 else (0.0, 0.0)
    put("collection.date", day)
    put("collection.sap", round(volume * (1 + errors.marks), 2))
    put("collection.brix", round(brix + errors.brix, 1) if read else None)
    put("collection.ice", ice * (1 + errors.noise * rng.gauss(0, EYE / 2)) if ice else None)
    put("collection.ice_brix", round(ice_brix + errors.brix, 2) if ice and ice_brix + errors.brix > 0 else None)
    kept = SAP_SUGAR(volume, brix)
    sugar["trees"] += kept
    sugar["ice"] += SAP_SUGAR(volume * ice / (1 - ice), ice_brix) if ice else 0
    return kept


def boil(rng: random.Random, errors: Errors, sugar: float, day: Any, put: Any) -> None:
    """A row of Boil, whose strength is read, told by the boiling reading, or not known."""
    brix = rng.uniform(22, 45)
    how = rng.choice(("read", "reading", "not"))
    put("boil.date", day)
    put("boil.rest", round(sugar / SAP_SUGAR(1, brix) * (1 + errors.jars), 3))
    put("boil.left_brix", round(brix + errors.brix, 1) if how == "read" else None)
    put(
        "boil.reading",
        FINISH_READING(brix, WATER) + errors.noise * rng.gauss(0, THERMOMETER / 2) if how == "reading" else None,
    )
    put("boil.water", WATER + errors.noise * rng.gauss(0, THERMOMETER / 2) if how == "reading" else None)


def batch(
    rng: random.Random,
    errors: Errors,
    number: int,
    names: list[int],
    held: float,
    day: Any,
    put: Any,
    sugar: dict[str, float],
) -> None:
    """A row of Batches and one of Bottles; its strength by the cup or by the thermometer."""
    if not names:
        return
    brix, cup = rng.gauss(66.9, 0.5), rng.random() < 0.7
    put("batches.date", day)
    put("batches.goes_in", ",".join(f"B{name}" for name in names))
    put("batches.thermometer", "dial")
    put("batches.water", WATER + errors.noise * rng.gauss(0, THERMOMETER / 2))
    put("batches.off_at", FINISH_READING(brix, WATER) + errors.noise * rng.gauss(0, THERMOMETER / 2))
    put("batches.cup_shows", round(SYRUP_FLOATS(brix, CUP) + errors.hydrometer, 1) if cup else None)
    put("batches.cup_at", CUP if cup else None)
    put("bottles.batch", number)
    put("bottles.date", day)
    put("bottles.volume", SYRUP_FROM_SAP(held / SAP_SUGAR(1, 66.9), 66.9, brix) * (1 + errors.jars))
    put("bottles.at", 68)
    sugar["bottled"] += held


def inside(rng: random.Random, times: float) -> Iterator[tuple[str, bool]]:
    """Of a season: each line of the ledger that holds anything, and whether its ± holds what there was."""
    given, sugar = made(rng, times)
    season = Season("US", given, ROWS)
    season.compute()
    for key in TOLD:
        mass, error = (season.value(f"ledger.{column}", row(key)) for column in ("mass", "error"))
        if key == "missing" or (sugar[key] > 0 and mass > 0):
            yield key, abs(mass - sugar[key]) <= error


def shares(count: int, seed: int, times: float = 1) -> dict[str, tuple[int, int]]:
    """Of so many seasons: how many were inside, and how many there were, line by line."""
    rng = random.Random(seed)  # noqa: S311 (no secret)
    good, all_of_them = Counter[str](), Counter[str]()
    for _ in range(count):
        for key, held in inside(rng, times):
            all_of_them[key] += 1
            good[key] += held
    return {key: (good[key], all_of_them[key]) for key in TOLD}


def main() -> None:
    count = int(sys.argv[1]) if len(sys.argv) > 1 else HOW_MANY
    for key, (good, seasons) in shares(count, int(sys.argv[2]) if len(sys.argv) > 2 else SEED).items():
        print(f"{LINES[key]:32} {good:4} of {seasons:4} inside, {good / seasons:.1%}")


if __name__ == "__main__":
    main()
