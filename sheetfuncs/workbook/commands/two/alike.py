"""Rows of two copies that belong together."""

from __future__ import annotations

from collections import defaultdict, deque
from collections.abc import Callable, Iterator, Sequence
from typing import Any, NamedTuple

from sheetfuncs.workbook.read.page import same

MOST_COMPARED = 50  # rows of one day that are looked at for one that a row belongs to


class Row(NamedTuple):
    """A row of a table, and how far down it stands; names of lots in it are made comparable between copies."""

    offset: int
    values: tuple[Any, ...]

    @property
    def blank(self) -> bool:
        """Whether nothing stands in it: it is there because its number is named elsewhere."""
        return all(value is None for value in self.values)


class Pair(NamedTuple):
    """A row of each copy that belong together, or a row of one alone."""

    one: Row | None
    other: Row | None


Key = Callable[[Row], Any]  # what tells a row: its day, its name, its batch and time


def by_name(ones: Sequence[Row], others: Sequence[Row], key: Key) -> list[Pair]:
    """By what tells them; rows of one name on one side in their order."""
    by_key: dict[Any, deque[Row]] = defaultdict(deque)
    for row in others:
        by_key[key(row)].append(row)
    pairs = []
    for row in ones:
        found = by_key[key(row)]
        pairs.append(Pair(row, found.popleft() if found else None))
    return pairs + _left(pairs, others)


def replaced(pairs: Sequence[Pair], gives_way: Callable[[int, Row], bool]) -> list[Pair]:
    """A row that stands as in a new workbook, beside one that somebody wrote into its place: these are one row."""
    ones = {pair.one.offset: pair.one for pair in pairs if pair.one and not pair.other}
    others = {pair.other.offset: pair.other for pair in pairs if pair.other and not pair.one}
    both = {at: others[at] for at in ones if at in others and (gives_way(0, ones[at]) or gives_way(1, others[at]))}
    return [
        pair._replace(other=both.get(pair.one.offset)) if pair.one and not pair.other else pair
        for pair in pairs
        if pair.one or (pair.other and both.get(pair.other.offset) is not pair.other)
    ]


def by_likeness(ones: Sequence[Row], others: Sequence[Row], key: Key, told_by: int) -> list[Pair]:
    """Rows that are the same, then rows of one day of which one only adds to the other; blank ones by their place."""
    match: dict[int, Row] = {}
    alike: dict[tuple[Any, ...], deque[Row]] = defaultdict(deque)
    for row in others:
        if not row.blank:
            alike[row.values].append(row)
    for row in ones:
        if alike[row.values]:
            match[row.offset] = alike[row.values].popleft()
    taken = {row.offset for row in match.values()}
    days: dict[Any, list[Row]] = defaultdict(list)
    for row in others:
        if row.offset not in taken and not row.blank:
            days[key(row)].append(row)
    for row in ones:
        left = days[key(row)]
        near = [other for other in left[:MOST_COMPARED] if adds(row, other, told_by)]
        if row.offset not in match and near and not row.blank:
            match[row.offset] = max(near, key=lambda other: common(row, other))
            left.remove(match[row.offset])
            taken.add(match[row.offset].offset)
    free = {row.offset: row for row in others if row.offset not in taken}
    for row in ones:
        there = free.get(row.offset)
        if row.offset not in match and there and (row.blank or there.blank):
            match[row.offset] = there
    pairs = [Pair(row, match.get(row.offset)) for row in ones]
    return pairs + _left(pairs, others)


def _left(pairs: Sequence[Pair], others: Sequence[Row]) -> list[Pair]:
    taken = {pair.other.offset for pair in pairs if pair.other}
    return [Pair(None, row) for row in others if row.offset not in taken]


def of_one_day(pairs: Sequence[Pair], key: Key) -> Iterator[Pair]:
    """The pairs, and rows that stand alone beside one of the same day that also does: those most alike first."""
    days: dict[Any, list[Row]] = defaultdict(list)
    for pair in pairs:
        if pair.other and not pair.one:
            days[key(pair.other)].append(pair.other)
    beside: dict[int, Row] = {}
    for pair in pairs:
        left = days[key(pair.one)][:MOST_COMPARED] if pair.one and not pair.other else []
        if pair.one and left:
            one = pair.one
            beside[one.offset] = max(left, key=lambda other: common(one, other))
            days[key(one)].remove(beside[one.offset])
    taken = {row.offset for row in beside.values()}
    for pair in pairs:
        if pair.one:
            yield pair._replace(other=beside.get(pair.one.offset, pair.other))
        elif pair.other and pair.other.offset not in taken:
            yield pair


def adds(one: Row, other: Row, told_by: int) -> bool:
    """Whether nothing differs in two rows but blanks, and something besides the day is in common or blank."""
    rest = [
        (mine, theirs)
        for number, (mine, theirs) in enumerate(zip(one.values, other.values, strict=True))
        if number != told_by
    ]
    if any(mine is not None and theirs is not None and mine != theirs for mine, theirs in rest):
        return False
    within = all(mine is None for mine, theirs in rest if theirs is None) or all(
        theirs is None for mine, theirs in rest if mine is None
    )
    return within or any(mine is not None and mine == theirs for mine, theirs in rest)


def common(one: Row, other: Row) -> int:
    """In how many cells two rows say the same."""
    return sum(mine is not None and mine == theirs for mine, theirs in zip(one.values, other.values, strict=True))


def as_name(value: Any) -> Any:
    """A name as names compare."""
    return same(value) if isinstance(value, str) else value
