"""The readings of Finish: they have times and no days, so they stay with their batch, in the order they were taken."""

from __future__ import annotations

import datetime
from collections.abc import Callable, Iterator, Sequence
from difflib import SequenceMatcher
from typing import Any

from sheetfuncs.workbook.commands.two.alike import Pair, Row, adds
from sheetfuncs.workbook.sheets.run import BACK, HALF_DAY

KEY = "run"
DAY = 2 * HALF_DAY  # minutes
PLANNED_BY = ("date", "goes_in", "thermometer", "volume_typed", "off_at", "cup_shows")

Column = Callable[[str], Sequence[Any]]


def first_batch(column: Column) -> int:
    """The batch of readings that name none, from 0: the first with anything of it in Batches."""
    columns = [column(f"batches.{key}") for key in PLANNED_BY]
    filled = (row for values in columns for row, value in enumerate(values) if value is not None)
    return min(filled, default=0)


def of_batch(typed: Sequence[Any], first: int, most: int) -> Iterator[int]:
    """The batch of each reading, from 0: as typed, else as above."""
    number = first
    for value in typed:
        if isinstance(value, float) and 1 <= value <= most:
            number = int(value) - 1
        yield number


def pairs(ones: Sequence[Row], others: Sequence[Row], batch: int) -> list[Pair]:
    """The readings of both copies in one order; `batch` is where in a row its batch stands, the time stands first."""
    runs = [_runs(rows, batch) for rows in (ones, others)]
    merged = {number: list(_of_run(runs[0].get(number, []), runs[1].get(number, []))) for run in runs for number in run}
    found: list[Pair] = []
    for row in ones:  # pots that took turns in the log of the first still do
        rest = merged[row.values[batch]]
        at = next(place for place, pair in enumerate(rest) if pair.one is row)
        later = any(pair.one for pair in rest[at + 1 :])
        end = at + 1 if later else len(rest)
        found += rest[:end]
        del rest[:end]
    return found + [pair for rest in merged.values() for pair in rest]


def _runs(rows: Sequence[Row], batch: int) -> dict[Any, list[Row]]:
    runs: dict[Any, list[Row]] = {}
    for row in rows:
        runs.setdefault(row.values[batch], []).append(row)
    return runs


def _of_run(ones: Sequence[Row], others: Sequence[Row]) -> Iterator[Pair]:
    """The readings of one batch: those that both copies have, and between them the others by the clock."""
    match = SequenceMatcher(None, [row.values for row in ones], [row.values for row in others], autojunk=False)
    pairs: list[tuple[Any, Any]] = []
    for what, one, one_end, other, other_end in match.get_opcodes():
        if what == "equal":
            pairs += list(zip(ones[one:one_end], others[other:other_end], strict=True))
            continue
        free = list(others[other:other_end])
        for row in ones[one:one_end]:
            near = next(
                (n for n, there in enumerate(free) if there.values[0] == row.values[0] and adds(row, there, 0)), -1
            )
            if near >= 0:
                pairs.append((row, free[near]))
                del free[: near + 1]
    mine, theirs = _minutes(ones), _minutes(others)
    shift = mine[pairs[0][0].offset] - theirs[pairs[0][1].offset] if pairs else _shift(ones, others)
    one = other = 0
    for row, there in [*pairs, (None, None)]:
        until = ones.index(row, one) if row else len(ones)
        others_until = others.index(there, other) if there else len(others)
        while one < until or other < others_until:
            first = other == others_until or (
                one < until and mine[ones[one].offset] <= theirs[others[other].offset] + shift
            )
            yield Pair(ones[one], None) if first else Pair(None, others[other])
            one, other = one + first, other + (not first)
        if row and there:
            yield Pair(row, there)
            one, other = one + 1, other + 1


def _minutes(rows: Sequence[Row]) -> dict[int, float]:
    """The minute of each reading by the clock of its first day, on through midnight, as the sheet counts."""
    found: dict[int, float] = {}
    now: float | None = None
    for row in rows:
        clock = _clock(row)
        if clock is not None and now is not None:
            gap = (clock - now) % HALF_DAY
            now += gap - HALF_DAY * (gap > BACK)
        elif clock is not None:
            now = clock
        found[row.offset] = now or 0
    return found


def _clock(row: Row) -> float | None:
    time = row.values[0]
    return time.hour * 60 + time.minute + time.second / 60 if isinstance(time, datetime.time) else None


def _shift(ones: Sequence[Row], others: Sequence[Row]) -> float:
    """What the minutes of two runs with no reading in common differ by: midnight may lie between their starts."""
    one, other = (next((clock for row in rows if (clock := _clock(row)) is not None), 0.0) for rows in (ones, others))
    return (other - one + HALF_DAY) % DAY - HALF_DAY - (other - one)
