"""Two copies of a workbook that grew apart: their typed values, and which rows of theirs belong together.

There is no older file to say what each side changed.  So: what is blank, or as a new workbook has it,
on one side was changed on the other; what one side deleted comes back.  Rows of a log that are alike
belong together; so do two rows of one day when one only adds to the other.  Anything else that differs
may have been changed on both sides, or be two things of one day: it cannot be told, and both are kept.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator, Mapping, Sequence
from typing import Any, NamedTuple

from sheetfuncs.workbook.commands.two import alike, readings
from sheetfuncs.workbook.commands.two.alike import Pair, Row
from sheetfuncs.workbook.commands.two.names import BY_NUMBER, IN_WORDS, NUMBERED, OF_BATCHES, meant, renumbered
from sheetfuncs.workbook.model.kinds import DATE, TEXT, TIME
from sheetfuncs.workbook.model.measures import all_converted
from sheetfuncs.workbook.model.parts import Field, Sheet, Table, named
from sheetfuncs.workbook.model.rows import Rows
from sheetfuncs.workbook.model.systems import Units
from sheetfuncs.workbook.read.filled import TABLES, Filled
from sheetfuncs.workbook.season import TODAY
from sheetfuncs.workbook.sheets import all_sheets
from sheetfuncs.workbook.sheets.tasting import cups

BLIND = "blind"  # its rows are the batches, in an order that tells nothing
MOST_ROUNDS = 5  # in which boils that name boils are told apart


class Log(NamedTuple):
    """A table for typing in: its typed columns by name, and the place of the one that tells its rows apart.

    `told_by` is None where a row belongs to a batch.  In a list, and in a log with a row a day, it is
    `unique`; `listed` rows have no order of their own.
    """

    sheet: str
    key: str
    columns: tuple[str, ...]
    told_by: int | None
    unique: bool
    listed: bool


class Copy:
    """A copy of a workbook; its typed values are in the units asked for."""

    def __init__(self, filled: Filled, system: str, rows: Rows) -> None:
        self.filled, self.most = filled, rows
        self.cells = filled.cells
        self.inputs = self._in_units(filled.season.inputs, system)
        starts = {
            name: getattr(what, "start", None) or list(getattr(what, "starts", ()))
            for name, what in self.cells.items()
            if what.typed
        }
        self.starts = self._in_units({name: start for name, start in starts.items() if start != []}, system)
        self.cups = [batch - 1 for batch in cups(filled.rows.batches)]  # of each cup, its batch
        for name in (name for name in self.inputs if name.startswith(f"{BLIND}.")):
            of_cups = dict(zip(self.cups, self.inputs[name], strict=False))
            self.inputs[name] = [of_cups.get(batch) for batch in sorted(self.cups)]
        self.called: dict[str, set[int]] = defaultdict(set)  # rows that are named somewhere
        for name in (*IN_WORDS, *BY_NUMBER):
            for value in self.column(name):
                for table, row in meant(name, value):
                    if row < getattr(rows, SIZES[table]):
                        self.called[table].add(row)
        self.called[OF_BATCHES] |= {
            row for row, value in enumerate(self.column(f"{BLIND}.points")) if value is not None
        }
        self.called[OF_BATCHES] |= {row for row, value in enumerate(self.column(f"{BLIND}.said")) if value is not None}
        if any(value is not None for name in self.cells if name.startswith("run.") for value in self.column(name)):
            self.called[OF_BATCHES].add(readings.first_batch(self.column))

    def _in_units(self, inputs: Mapping[str, Any], system: str) -> dict[str, Any]:
        return all_converted(self.cells, inputs, self.filled.system, system)

    def column(self, name: str) -> Sequence[Any]:
        """What stands in a column, as in a new workbook where it was never touched; a labelled cell as one of one."""
        if name not in self.cells:
            return []
        value = self.inputs.get(name, self.starts.get(name))
        return [value] if isinstance(self.cells[name], Field) else value or []

    def start(self, name: str, offset: int = 0) -> Any:
        """What a new workbook has in a cell."""
        starts = self.starts.get(name)
        if isinstance(starts, list):
            return starts[offset] if offset < len(starts) else None
        return starts

    def typed(self, log: Log, offset: int) -> list[Any]:
        """A row as it was typed."""
        columns = [self.column(name) for name in log.columns]
        return [column[offset] if offset < len(column) else None for column in columns]

    def length(self, log: Log) -> int:
        """The rows of a table down to the last that is filled in, or named somewhere."""
        named_rows = max(self.called.get(log.key, ()), default=-1) + 1
        return max(named_rows, *(len(self.column(name)) for name in log.columns))

    def place(self, name: str, offset: int = 0) -> str:
        """Sheet and address of a cell in the file."""
        if name.startswith(f"{BLIND}."):
            offset = self.cups.index(offset)
        return " ".join(self.filled.place(name, offset)).strip()


SIZES = {table: size for size, table in TABLES.items()}


class Both:
    """Two copies and the tables and cells that either has; in the units of the first."""

    def __init__(self, one: Filled, other: Filled) -> None:
        self.system = one.system
        self.rows = Rows(*map(max, one.rows, other.rows))
        self.copies = Copy(one, one.system, self.rows), Copy(other, one.system, self.rows)
        self.one, self.other = self.copies
        self.sheets = all_sheets(Units(self.system), self.rows)
        self.cells = named(self.sheets)
        self.logs = {log.key: log for log in _logs(self.sheets)}
        self.same: dict[str, dict[int, int]] = {}  # of each numbered table: a row of the second -> the row of the first
        self._pairs: dict[str, list[Pair]] = {}
        for key in NUMBERED:
            self._pairs[key] = self._told_apart(self.logs[key])

    def fields(self) -> Iterator[str]:
        """The labelled cells for typing in, by name."""
        return (name for name, what in self.cells.items() if isinstance(what, Field) and (what.typed or name == TODAY))

    def comparable(self, side: int, name: str, value: Any) -> Any:
        """A cell with each row it names called alike in both copies."""
        return renumbered(name, value, lambda table, row: self._called(side, table, row))

    def _called(self, side: int, table: str, row: int) -> str:
        if table not in self.same:
            return "?"  # its rows are not told apart yet
        if row >= getattr(self.rows, SIZES[table]):
            return str(row)  # names nothing, in either
        if side == 1 and row in self.same[table]:
            side, row = 0, self.same[table][row]
        return f"{side}:{row}"

    def pairs(self, log: Log) -> list[Pair]:
        """The rows of a table side by side, in the order of the first copy; those of the second alone come last."""
        if log.key not in self._pairs:
            self._pairs[log.key] = self._side_by_side(log)
        return self._pairs[log.key]

    def of_second(self, log: Log) -> list[Row]:
        """The rows of the second copy in their order."""
        return sorted((pair.other for pair in self.pairs(log) if pair.other), key=lambda row: row.offset)

    def key(self, log: Log, row: Row) -> Any:
        """What tells a row: its day, its name as names compare, or its batch and time."""
        told = row.values[log.told_by or 0]
        if log.key == readings.KEY:
            return row.values[log.columns.index(f"{log.key}.batch")], told
        return alike.as_name(told)

    def untouched(self, side: int, log: Log, row: Row) -> bool:
        """Whether a row is as a new workbook has it."""
        copy = self.copies[side]
        starts = [copy.start(name, row.offset) for name in log.columns]
        return any(start is not None for start in starts) and copy.typed(log, row.offset) == starts

    def _gives_way(self, side: int, log: Log, row: Row) -> bool:
        """Whether a row may be written over: it is as a new workbook has it, and nothing names it."""
        name = log.columns[log.told_by or 0]
        copy = self.copies[side]
        choosing = [one for one, what in self.cells.items() if getattr(what, "choices", "") == f"@{name}"]
        said = {alike.as_name(value) for one in choosing for value in copy.column(one)}
        lists = ",".join(str(value).casefold() for one in IN_WORDS for value in copy.column(one))
        told = alike.as_name(row.values[log.told_by or 0])
        return self.untouched(side, log, row) and told not in said and str(told) not in lists

    def _told_apart(self, log: Log) -> list[Pair]:
        """The pairs of a table whose rows may name one another: again, until what they name is told apart too."""
        pairs = self._side_by_side(log)
        for _ in range(MOST_ROUNDS):
            before = self.same.get(log.key)
            self.same[log.key] = {pair.other.offset: pair.one.offset for pair in pairs if pair.one and pair.other}
            if self.same[log.key] == before:
                break
            pairs = self._side_by_side(log)
        return pairs

    def _side_by_side(self, log: Log) -> list[Pair]:
        ones, others = (list(self._rows(side, log)) for side in (0, 1))
        if log.key == readings.KEY:
            return readings.pairs(ones, others, log.columns.index(f"{log.key}.batch"))
        if log.key == BLIND:
            return self._of_batches(ones, others)
        if log.unique:
            pairs = alike.by_name(ones, others, lambda row: self.key(log, row))
            return alike.replaced(pairs, lambda side, row: self._gives_way(side, log, row))
        return alike.by_likeness(ones, others, lambda row: self.key(log, row), log.told_by or 0)

    def _of_batches(self, ones: Sequence[Row], others: Sequence[Row]) -> list[Pair]:
        one, other = ({row.offset: row for row in rows} for rows in (ones, others))
        pairs = [
            Pair(one.get(pair.one.offset) if pair.one else None, other.get(pair.other.offset) if pair.other else None)
            for pair in self._pairs[OF_BATCHES]
        ]
        return [pair for pair in pairs if pair.one or pair.other]

    def _rows(self, side: int, log: Log) -> Iterator[Row]:
        """The rows of a table that are filled in, or named somewhere."""
        copy = self.copies[side]
        length = copy.length(log)
        columns = [
            [self.comparable(side, name, value) for value in (*copy.column(name), *[None] * length)][:length]
            for name in log.columns
        ]
        if log.key == readings.KEY:
            batch = log.columns.index(f"{log.key}.batch")
            numbers = readings.of_batch(
                [*copy.column(log.columns[batch]), *[None] * length][:length],
                readings.first_batch(copy.column),
                self.rows.batches,
            )
            columns[batch] = [self._called(side, OF_BATCHES, number) for number in numbers]
        for row in range(length):
            values = tuple(column[row] for column in columns)
            if any(value is not None for value in copy.typed(log, row)) or row in copy.called.get(log.key, ()):
                yield Row(row, values)


def _logs(sheets: Sequence[Sheet]) -> Iterator[Log]:
    for sheet in sheets:
        for block in sheet.blocks:
            columns = [column for column in block.columns if column.typed] if isinstance(block, Table) else []
            if not isinstance(block, Table) or not columns:
                continue
            days = [number for number, column in enumerate(columns) if column.key == "date" or number == 0]
            told_by = next((number for number in days if columns[number].kind in (DATE, TIME)), None)
            listed = told_by is None and columns[0].kind == TEXT
            names = tuple(f"{block.key}.{column.key}" for column in columns)
            unique = listed or block.key == "weather"
            yield Log(sheet.title, block.key, names, 0 if listed else told_by, unique, listed)
