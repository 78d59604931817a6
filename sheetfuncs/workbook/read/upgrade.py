"""Typed cells on their way from one format to the next; nothing is dropped without being named."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any, NamedTuple


class Left(NamedTuple):
    """A typed cell of an older format that today's has no place for."""

    name: str
    place: Any
    value: Any


class Upgrade:
    """Old cells by name; each is moved, or stays on the list of what is left."""

    def __init__(self, old: Mapping[str, Any], where: Mapping[str, Sequence[Any]]) -> None:
        self.old, self.where = old, where
        self.inputs: dict[str, Any] = {}
        self.places: dict[str, list[Any]] = {}
        self._done: set[tuple[str, int]] = set()

    def column(self, name: str) -> list[Any]:
        """The values of an old column, or of a labelled cell as a column of one."""
        value = self.old.get(name)
        return list(value) if isinstance(value, list) else [] if value is None else [value]

    def move(self, old: str, new: str) -> None:
        """A column or a labelled cell under another name, or the same."""
        for offset, value in enumerate(self.column(old)):
            self.put(new, offset, value, old, offset, isinstance(self.old.get(old), list))

    def put(self, new: str, row: int, value: Any, old: str = "", offset: int = 0, listed: bool = True) -> None:
        """One value into a new column's row, or into a labelled cell; `old` is where it came from."""
        if old:
            self._done.add((old, offset))
        place = self._place(old, offset)
        if not listed:
            self.inputs[new], self.places[new] = value, [place]
            return
        for store, one in ((self.inputs, value), (self.places, place)):
            column = store.setdefault(new, [])
            column.extend([None] * (row + 1 - len(column)))
            column[row] = one

    def _place(self, name: str, offset: int) -> Any:
        places = self.where.get(name, ())
        return places[offset] if offset < len(places) else None

    def left(self) -> list[Left]:
        """What was typed and has no place."""
        found = []
        for name in self.old:
            for offset, value in enumerate(self.column(name)):
                if value is not None and value != "" and (name, offset) not in self._done:
                    found.append(Left(name, self._place(name, offset), value))
        return found
