"""Where the rows of two copies stand when they are one log: by the day, and no lower than their number needs."""

from __future__ import annotations

import datetime
from bisect import bisect_right
from collections import defaultdict
from collections.abc import Sequence
from itertools import accumulate
from operator import itemgetter
from typing import Any

from sheetfuncs.workbook.commands.two.alike import Pair, Row


def by_day(pairs: Sequence[Pair], others: Sequence[Row], told_by: int) -> list[Pair]:
    """The rows of the second copy alone put between those of the first: by the day, else after what they followed."""

    def day(*rows: Row | None) -> tuple[Any, ...]:
        """The day of a row, in a tuple that sorts; empty where it has none."""
        value = next((row.values[told_by] for row in rows if row and row.values[told_by] is not None), None)
        return (value.isoformat(),) if isinstance(value, datetime.date) else ()

    placed = [pair for pair in pairs if pair.one]
    if not placed:  # nothing to put them between: in the order they were typed
        return list(pairs)
    alone = {pair.other.offset: pair for pair in pairs if pair.other and not pair.one}
    days = sorted((day(*pair), number) for number, pair in enumerate(placed) if day(*pair))
    last = list(accumulate((number for _, number in days), max))  # of the rows up to that day, the lowest down
    match = {pair.other.offset: number for number, pair in enumerate(placed) if pair.other}
    before: dict[int, int] = {}  # a row of the second alone -> the row of its day that it stood above
    follower: tuple[Any, int] | None = None
    for row in reversed(others):
        if row.offset in match:
            follower = day(row), match[row.offset]
        elif follower and day(row) and follower[0] == day(row):
            before[row.offset] = follower[1]
    slots: dict[int, list[tuple[Any, Pair]]] = defaultdict(list)  # before which row of the first
    slot, now = len(placed), ()
    for row in others:
        if row.offset in match:
            slot, now = match[row.offset] + 1, ()
            continue
        if day(row):
            now = day(row)
            earlier = bisect_right(days, (now, len(placed)))
            slot = last[earlier - 1] + 1 if earlier else (days[0][1] if days else len(placed))
            slot = min(slot, before.get(row.offset, slot))
        slots[slot].append((now, alone[row.offset]))
    return [
        pair
        for number in range(len(placed) + 1)
        for pair in (*(pair for _, pair in sorted(slots[number], key=itemgetter(0))), *placed[number : number + 1])
    ]


def numbered(pairs: Sequence[Pair]) -> list[int]:
    """A row for each pair, from 0: as in the first copy, or as little further down as what was put in asks for.

    Rows left blank stay, as far as nothing needs them: a lot keeps the name that is on its jars.
    """
    last = max((number for number, pair in enumerate(pairs) if pair.one), default=-1)
    stands = [pair.one or (pair.other if number > last else None) for number, pair in enumerate(pairs)]
    wanted = [row.offset if row else 0 for row in stands]
    lowest = list(accumulate(reversed(wanted[last + 1 :]), min))[::-1]  # what comes after needs room too
    found: list[int] = []
    for place in [*wanted[: last + 1], *lowest]:
        found.append(max(found[-1] + 1 if found else 0, place))
    return found
