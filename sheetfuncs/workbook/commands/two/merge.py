"""Two copies of a workbook made one; what was changed on both sides is kept twice and listed."""

from __future__ import annotations

import argparse
from collections import defaultdict
from collections.abc import Iterator, Sequence
from pathlib import Path
from typing import Any, NamedTuple

from sheetfuncs.files import Refused
from sheetfuncs.workbook.commands.renew.carried import Carried, free, plain_value
from sheetfuncs.workbook.commands.renew.told import told
from sheetfuncs.workbook.commands.target import target, write
from sheetfuncs.workbook.commands.two import order, readings
from sheetfuncs.workbook.commands.two.alike import Pair, Row
from sheetfuncs.workbook.commands.two.compare import words
from sheetfuncs.workbook.commands.two.copies import BLIND, Both, Log
from sheetfuncs.workbook.commands.two.names import NUMBERED, OF_BATCHES, renumbered
from sheetfuncs.workbook.model.kinds import counted
from sheetfuncs.workbook.model.parts import Plain
from sheetfuncs.workbook.model.rows import MOST_ROWS, Rows
from sheetfuncs.workbook.read.filled import TABLES, Filled, address, read
from sheetfuncs.workbook.season import Season
from sheetfuncs.workbook.sheets.tasting import cups

TITLE = "After merging"
HEADINGS = ("Sheet", "Cell", "What", "In the first copy", "In the second copy", "What became of it")
FIRST_STAYS = "the first stands in the cell, the second only here"
FORECAST = "the first stands in the cell, the second only here: keep what it was, not what was forecast"
BOTH_KEPT = "both rows are in the log and both count; if they are one, delete a row"
NO_BATCH = "this is no number of a batch; the readings stay with those above"
SIDES = ("first", "second")

MOST_SAID = 3  # rows of one day that one line of the list repeats


class Clash(NamedTuple):
    """Something to look at: a difference that cannot be decided, a lot that has another name now."""

    name: str
    offset: int
    one: Any
    other: Any
    done: str


class Cell(NamedTuple):
    """A cell of one copy: as it compares, as it stands in the new workbook, and whether nobody changed it."""

    value: Any
    now: Any
    untouched: bool


NOTHING = Cell(None, None, True)


class Merged:
    """Two copies made one: the typed values, and the list of what is to be looked at."""

    def __init__(self, one: Filled, other: Filled) -> None:
        _refuse_two_seasons(one, other)
        self.both = Both(one, other)
        self.inputs: dict[str, Any] = {}
        self.clashes: list[Clash] = []
        self.added = self.filled_in = 0
        self.rows: dict[str, list[tuple[int, Pair]]] = {}  # of each table: where its rows stand
        self.now: dict[str, tuple[dict[int, int], dict[int, int]]] = {}  # of numbered tables: old rows -> new rows
        for key in NUMBERED:
            self.rows[key] = self._placed(self.both.logs[key])
            ones = {pair.one.offset: row for row, pair in self.rows[key] if pair.one}
            self.now[key] = ones, {pair.other.offset: row for row, pair in self.rows[key] if pair.other}
        for name in self.both.fields():
            mine, theirs = (self._cell(side, name, 0) for side in (0, 1))
            if any(name in copy.inputs for copy in self.both.copies):
                self.inputs[name] = self._settled(name, 0, mine, theirs)
        for log in self.both.logs.values():
            self._log(log)
        for key in NUMBERED[1:]:
            self._called_otherwise(key)
        self.season = self._season()

    def _placed(self, log: Log) -> list[tuple[int, Pair]]:
        """The rows of a table in their order, each with where it stands."""
        pairs = self.both.pairs(log)
        if log.key == BLIND:  # by its batch; the order of the cups comes last
            return sorted((self._of_batch(pair), pair) for pair in pairs)
        if not log.listed and log.key != readings.KEY:
            pairs = order.by_day(pairs, self.both.of_second(log), log.told_by or 0)
        rows = order.numbered(pairs) if log.key in NUMBERED else range(len(pairs))
        if len(pairs) > MOST_ROWS:
            raise Refused(f"{log.sheet}: together they have {len(pairs):,} rows; a table can have {MOST_ROWS:,}")
        return list(zip(rows, pairs, strict=True))

    def _of_batch(self, pair: Pair) -> int:
        """The batch of a cup in the new workbook, from 0."""
        side, row = (0, pair.one) if pair.one else (1, pair.other)
        assert row
        return self.now[OF_BATCHES][side][row.offset]

    def _cell(self, side: int, name: str, offset: int) -> Cell:
        copy = self.both.copies[side]
        column = copy.column(name)
        typed = column[offset] if offset < len(column) else None
        untouched = typed is None or typed == copy.start(name, offset)
        return Cell(self.both.comparable(side, name, typed), self._renamed(side, name, typed), untouched)

    def _renamed(self, side: int, name: str, typed: Any) -> Any:
        """A cell with the new numbers of the rows that it names."""

        def number(table: str, row: int) -> Any:
            new = self.now[table][side].get(row, row) + 1
            return float(new) if isinstance(typed, float) else str(new)

        return renumbered(name, typed, number)

    def _settled(self, name: str, offset: int, mine: Cell, theirs: Cell) -> Any:
        """What a cell gets: where one side is blank or as it was when new, what the other has."""
        if mine.value == theirs.value or theirs.untouched:
            return mine.now
        if mine.untouched:
            self.filled_in += 1
            return theirs.now
        done = FORECAST if name.startswith("weather.") else FIRST_STAYS
        self.clashes.append(Clash(name, offset, mine.now, theirs.now, done))
        return mine.now

    def _log(self, log: Log) -> None:
        if log.key not in self.rows:
            self.rows[log.key] = self._placed(log)
        placed = self.rows[log.key]
        length = max((row for row, _ in placed), default=-1) + 1
        columns: list[list[Any]] = [[None] * length for _ in log.columns]
        for row, pair in placed:
            for column, value in zip(columns, self._row(log, row, pair), strict=True):
                column[row] = value
        self.inputs |= dict(zip(log.columns, columns, strict=True))
        if log.key == readings.KEY:
            self._batch_of_each(log, placed)
        if log.told_by is not None and not log.unique:
            self._same_day(log, placed)

    def _row(self, log: Log, row: int, pair: Pair) -> Sequence[Any]:
        sides = [
            [self._cell(side, name, one.offset) for name in log.columns] if one else None
            for side, one in enumerate(pair)
        ]
        mine, theirs = sides
        if mine is None:
            self.added += any(cell.now is not None for cell in theirs or ())
            return [cell.now for cell in theirs or ()]
        if theirs is None:
            return [cell.now for cell in mine]
        return [self._settled(name, row, *cells) for name, *cells in zip(log.columns, mine, theirs, strict=True)]

    def _batch_of_each(self, log: Log, placed: Sequence[tuple[int, Pair]]) -> None:
        """Where readings of another batch stand above now, or none, a reading gets the number of its batch."""
        name = f"{log.key}.batch"
        numbers = [self._batch(pair, log.columns.index(name)) for _, pair in placed]
        above = readings.first_batch(lambda column: self.inputs.get(column, ()))
        for (row, _), number in zip(placed, numbers, strict=True):
            typed = self.inputs[name][row]
            if number != above:
                self.inputs[name][row] = number + 1.0
                if typed not in (None, number + 1.0):
                    self.clashes.append(Clash(name, row, typed, None, NO_BATCH))
            above = number

    def _batch(self, pair: Pair, at: int) -> int:
        """The batch of a reading in the new workbook, from 0."""
        side, row = (0, pair.one) if pair.one else (1, pair.other)
        assert row
        which, number = map(int, row.values[at].split(":"))
        assert which <= side
        return self.now[OF_BATCHES][which][number]

    def _same_day(self, log: Log, placed: Sequence[tuple[int, Pair]]) -> None:
        """Rows of one day, each on one side alone: two things, or one that was changed on both."""
        days: dict[Any, list[Row]] = defaultdict(list)
        for _, pair in placed:
            if pair.one and not pair.other and not pair.one.blank:
                days[self.both.key(log, pair.one)].append(pair.one)
        for row, pair in placed:
            mine = days.get(self.both.key(log, pair.other)) if pair.other and not pair.one else None
            if mine and pair.other and not pair.other.blank:
                said = "; ".join(self._words(0, log, one) for one in mine[:MOST_SAID])
                said += f"; and {len(mine) - MOST_SAID} more" if len(mine) > MOST_SAID else ""
                theirs = self._words(1, log, pair.other)
                self.clashes.append(Clash(log.columns[log.told_by or 0], row, said, theirs, BOTH_KEPT))

    def _words(self, side: int, log: Log, row: Row) -> str:
        return words(self.both, log, [self._cell(side, name, row.offset).now for name in log.columns])

    def _called_otherwise(self, key: str) -> None:
        """What has another name now, and stands under the old one on jars."""
        over = self.inputs[f"{key}.over"]
        for row, pair in self.rows[key]:
            for side, one in enumerate(pair):
                if one is None or one.blank or one.offset == row:
                    continue
                old, new = one.offset + 1, row + 1
                rest = row < len(over) and over[row] is not None
                if key == OF_BATCHES:
                    names = [("Batch {}", "batch {}"), *([("K{}", "K{}")] if rest else [])]
                else:
                    names = [("B{}", "B{}"), *([("R{}", "R{}")] if rest else [])]
                for was, now in names:
                    said = f"{was.format(old)} of the {SIDES[side]} copy is {now.format(new)} now: write it on its jars"
                    mine, theirs = (was.format(old) if side == number else None for number in (0, 1))
                    self.clashes.append(Clash(f"{key}.date", row, mine, theirs, said))

    def _season(self) -> Season:
        lengths: dict[str, int] = {}
        for log in self.both.logs.values():
            lengths[log.key] = max(len(self.inputs[name]) for name in log.columns)
        rows = self.both.rows
        rows = Rows(**{key: max(size, lengths.get(TABLES.get(key, ""), 0)) for key, size in rows._asdict().items()})
        self.cups = [batch - 1 for batch in cups(rows.batches)]
        for name in self.both.logs[BLIND].columns:
            of_batch = dict(enumerate(self.inputs[name]))
            self.inputs[name] = [of_batch.get(batch) for batch in self.cups]
        return Season(self.both.system, self.inputs, rows)

    def listed(self) -> Iterator[tuple[Any, ...]]:
        """The list, as it stands on a sheet of its own: where in the new workbook, and what."""
        for clash in self.clashes:
            spot = self.season.layout.spots[clash.name]
            row = self.cups.index(clash.offset) if clash.name.startswith(f"{BLIND}.") else clash.offset
            at = address((spot.row + row, spot.column))
            yield spot.sheet, at, self.both.cells[clash.name].words, clash.one, clash.other, clash.done


def merge(options: argparse.Namespace) -> int:
    """Write two copies as one workbook and print what became of them; 1 if something is to be looked at."""
    path = target(options.new, options.replace, options.one, options.other)
    one, other = read(Path(options.one)), read(Path(options.other))
    merged = Merged(one, other)
    lines = list(merged.listed())
    first = Carried(one, "Carried from the first")
    second = Carried(other, "Carried from the second", besides=first)
    plains = [*first.sheets, *second.sheets]
    if lines:
        rows = [HEADINGS, *lines]
        cells = {
            (row, column): plain_value(value) for row, line in enumerate(rows) for column, value in enumerate(line)
        }
        titles = {sheet.title.casefold() for sheet in merged.season.sheets} | {one.title.casefold() for one in plains}
        plains.insert(0, Plain(free(TITLE, titles), cells))
    merged.season.plains = plains
    kept = write(merged.season, path, one.edition, options.replace)
    print(f"from {options.other}: {counted(merged.added, 'row')} added, {counted(merged.filled_in, 'cell')} filled in")
    for line in (*told(one, first), *told(other, second), *kept):
        print(line)
    for sheet, at, what, mine, theirs, done in lines:
        print(
            f"{sheet} {at}, {what}: {mine} | {theirs}: {done}"
            if None not in (mine, theirs)
            else f"{sheet} {at}: {done}"
        )
    if lines:
        print(f"listed on the sheet {plains[0].title!r}: {counted(len(lines), 'line')} to look at")
    print(f"written: {path}")
    return 1 if lines else 0


def _refuse_two_seasons(one: Filled, other: Filled) -> None:
    years = [filled.season.inputs.get("yard.year") for filled in (one, other)]
    if None not in years and years[0] != years[1]:
        said = " and ".join(
            f"{filled.file} of {filled.cells['yard.year'].kind.show(year, filled.season.units)}"
            for filled, year in zip((one, other), years, strict=True)
        )
        raise Refused(f"{said}: two seasons, not two copies of one; give copies of one workbook")
