"""Random workbooks, edited at random as people do, through convert twice and handover: nothing typed is lost.

    python -m tests.tools.edited_at_random [MINUTES] [FIRST NUMBER]

Every typed value is in the workbook that comes out, or on its list of what was carried, or told in a sentence.
Numbers count up; one that fails is printed and its files are kept.
"""

from __future__ import annotations

import contextlib
import datetime
import io
import random
import re
import shutil
import sys
import tempfile
import time
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import openpyxl
from openpyxl.comments import Comment

from sheetfuncs import cli
from sheetfuncs.workbook.model.days import serial
from sheetfuncs.workbook.model.measures import converted
from sheetfuncs.workbook.model.parts import Column, Field
from sheetfuncs.workbook.read.filled import Filled, address, read
from tests.tools.edits import SMALL, example

SYSTEMS = {"US": "metric", "metric": "US"}
WORDS = (
    "sap", "3,5", "9 1/2 gal", "=1+1", "+5", "@home", " snow bin 1 ", "Snow Bin 1", "small\N{NO-BREAK SPACE}pan", "B2",
    "Jars", "Date", "Sap kept, gal", "Collection", "Look", "zoë 糖 🍁", "a\nline more", "<b>&amp;</b>", "'quoted'", "0",
)  # fmt: skip


class Lost(AssertionError):
    """A typed value that is nowhere."""


class Edits:
    """One workbook with edits; `typed` are the values that must not be lost, each with its place."""

    def __init__(self, dice: random.Random, whole: Path) -> None:
        self.dice = dice
        self.book = openpyxl.load_workbook(whole)
        self.filled = read(whole)
        self.count = 0

    def word(self) -> str:
        """A text that is found nowhere else."""
        self.count += 1
        return f"{self.dice.choice(WORDS)} №{self.count}"

    def edit(self) -> int:
        """Some edits, each of any kind; how many."""
        kinds = (self._typed, self._typed, self._typed, self._own_sheet, self._remark, self._note, self._hidden,
                 self._below, self._formula, self._over)  # fmt: skip
        many = self.dice.randint(3, 25)
        for _ in range(many):
            self.dice.choice(kinds)()
        if self.dice.random() < 0.3:
            self._column()
        if self.dice.random() < 0.3:
            self._marks_dropped()
        return many

    def _names(self) -> list[str]:
        return [name for name, what in self.filled.cells.items() if what.typed and self.filled.at(name)]

    def _cell(self, name: str, row: int) -> Any:
        place = self.filled.at(name, row)
        assert place
        return self.book[place.sheet][address(place.at)]

    def _value(self, what: Column | Field) -> Any:
        dice = self.dice
        if dice.random() < 0.2:
            return self.word()
        if what.choices and dice.random() < 0.8:
            return dice.choice(list(what.choices)) if not isinstance(what.choices, str) else "snow bin 1"
        if what.kind.name == "date":
            return datetime.date(2026, 2, 1) + datetime.timedelta(days=dice.randint(0, 90))
        if what.kind.name == "time":
            return datetime.time(dice.randint(0, 23), dice.randint(0, 59))
        if what.kind.wordy:
            return self.word()
        return round(dice.uniform(0, 100), dice.randint(0, self._finest(what)))

    def _finest(self, what: Column | Field) -> int:
        """The decimals that an instrument shows: those go there and back.  A finer one may lose its last digit, since
        76.1 and 76.11 °C are both 169.0 °F with the fewest decimals that lead back to each."""
        shown = what.kind.decimals
        return dict(zip(SYSTEMS, shown, strict=True))[self.filled.system] if shown else 3

    def _typed(self) -> None:
        name = self.dice.choice(self._names())
        rows = len(self.filled.spots(name))
        cell = self._cell(name, self.dice.randrange(rows))
        cell.value = self._value(self.filled.cells[name])
        if isinstance(cell.value, str) and cell.value.startswith("="):
            cell.data_type = "s"

    def _own_sheet(self) -> None:
        sheet = self.book.create_sheet(f"Mine {self.count}")
        for _ in range(self.dice.randint(1, 9)):
            sheet.cell(self.dice.randint(1, 20), self.dice.randint(1, 9)).value = self.word()
            sheet.cell(self.dice.randint(1, 20), 12).value = self.dice.random()
        self._as_text(sheet)

    def _remark(self) -> None:
        """Words beside or between what is ours."""
        sheet = self.book[self.dice.choice([one.title for one in self.filled.season.sheets])]
        for _ in range(20):
            cell = sheet.cell(self.dice.randint(1, sheet.max_row), self.dice.randint(1, sheet.max_column + 3))
            if cell.value is None and not isinstance(cell, openpyxl.cell.MergedCell):
                taken = {place for spots in self.filled.places.values() for place in spots if place}
                if (sheet.title, (cell.row - 1, cell.column - 1)) not in taken:
                    cell.value, cell.data_type = self.word(), "s"
                    return

    def _note(self) -> None:
        name = self.dice.choice(self._names())
        self._cell(name, 0).comment = Comment(self.word(), "me")

    def _hidden(self) -> None:
        sheet = self.book[self.dice.choice(["Collection", "Boil", "Bottles"])]
        sheet.row_dimensions[self.dice.randint(4, 12)].hidden = True
        sheet.column_dimensions["B"].hidden = True

    def _below(self) -> None:
        """A line or a word under a log."""
        name = self.dice.choice(["collection.date", "boil.date", "bottles.date"])
        last = next(place for place in reversed(self.filled.spots(name)) if place)
        table = name.partition(".")[0]
        row = last.at[0] + 2 + self.dice.randint(0, 2)
        columns = [one for one in self._names() if one.startswith(f"{table}.")]
        for one in self.dice.sample(columns, self.dice.randint(1, 4)):
            place = self.filled.at(one)
            assert place
            self.book[place.sheet].cell(row, place.at[1] + 1).value = self._value(self.filled.cells[one])
        self._as_text(self.book[last.sheet])

    def _formula(self) -> None:
        """A formula where something is typed; openpyxl stores no value with it."""
        name = self.dice.choice(self._names())
        self.count += 1
        self._cell(name, 0).value = f"=2.5+{self.count}"

    def _over(self) -> None:
        """A number or a word over a formula."""
        names = [name for name, what in self.filled.cells.items() if what.formula and self.filled.at(name)]
        name = self.dice.choice(names)
        cell = self._cell(name, self.dice.randrange(len(self.filled.spots(name))))
        if not isinstance(cell, openpyxl.cell.MergedCell):
            cell.value = self.dice.choice([self.word(), round(self.dice.uniform(1000, 9000), 3)])
            cell.data_type = "s" if isinstance(cell.value, str) else cell.data_type

    def _column(self) -> None:
        """A column of one's own at the right of a log."""
        sheet = self.book[self.dice.choice(["Collection", "Boil", "Storage", "Bottles"])]
        column = sheet.max_column + 1
        for row in range(4, self.dice.randint(5, 12)):
            sheet.cell(row, column).value = self.word()
        self._as_text(sheet)

    def _marks_dropped(self) -> None:
        for name in list(self.book.defined_names):
            if name.startswith("place_"):
                del self.book.defined_names[name]

    def _as_text(self, sheet: Any) -> None:
        """Words that begin like a formula are words here."""
        for row in sheet.iter_rows():
            for cell in row:
                if isinstance(cell.value, str) and cell.value.startswith("=") and "№" in cell.value:
                    cell.data_type = "s"


def values(path: Path) -> Iterator[tuple[str, str, Any]]:
    """Everything typed in a file that is not as it was written: sheet, address, value; notes too."""
    book = openpyxl.load_workbook(path)
    for sheet in book.worksheets:
        for row in sheet.iter_rows():
            for cell in row:
                if cell.comment:
                    yield sheet.title, cell.coordinate, cell.comment.text
                if cell.value is not None:
                    yield sheet.title, cell.coordinate, cell.value


def run(number: int, folder: Path, whole: dict[str, Path]) -> int:
    """One workbook through everything, and how many edits it had; raises where something is lost."""
    dice = random.Random(number)  # noqa: S311 (a die)
    system = dice.choice(list(SYSTEMS))
    edits = Edits(dice, whole[system])
    many = edits.edit()
    source = folder / "edited.xlsx"
    edits.book.save(source)
    filled = read(source)
    other, back, next_year = (folder / f"{name}.xlsx" for name in ("other", "back", "next"))
    told = said("convert", source, other, "--units", SYSTEMS[system].lower())
    _all_there(source, filled, other, told, system)
    between = read(other)
    _all_there(other, between, back, said("convert", other, back, "--units", system.lower()), SYSTEMS[system])
    _nothing_new(filled, read(back))
    told = said("handover", source, next_year)
    _own_there(source, filled, next_year, told)
    return many


def said(command: str, source: Path, target: Path, *options: str) -> str:
    """What a command prints; it must not refuse."""
    target.unlink(missing_ok=True)
    out = io.StringIO()
    with contextlib.redirect_stdout(out), contextlib.redirect_stderr(out):
        code = cli.main([command, str(source), str(target), *options])
    if code not in (0, 1):
        raise Lost(f"{command} refused: {out.getvalue()}")
    if (code == 1) is not ("not understood" in out.getvalue() or "not read" in out.getvalue()):
        raise Lost(f"{command} ended with {code}: {out.getvalue()}")
    return out.getvalue()


def _all_there(source: Path, filled: Filled, target: Path, told: str, system: str) -> None:
    """Each input at its name, in its unit; each other text anywhere in the target, or told."""
    _own_there(source, filled, target, told, inputs=True)
    after = read(target)
    fuel = str(filled.season.inputs.get("yard.fuel") or "hardwood")
    for name, given in filled.season.inputs.items():
        found = after.season.inputs.get(name)
        kind = filled.cells[name].kind
        pairs = (
            zip(given, [*(found or []), *[None] * len(given)], strict=False)
            if isinstance(given, list)
            else [(given, found)]
        )
        for row, (one, other) in enumerate(pairs, 1):
            due = converted(kind, one, system, after.system, fuel) if system != after.system else one
            if serial(due) != serial(other) and not (due in (None, "") and other in (None, "")):
                raise Lost(f"{name} in row {row}: {one!r} came out as {other!r}")


def _own_there(source: Path, filled: Filled, target: Path, told: str, inputs: bool = False) -> None:
    """Every text that was made for this run is in the target or told; in a handover those of the logs aside."""
    there = {str(value) for *_, value in values(target)}
    emptied = set() if inputs else {place for name in _emptied(filled) for place in filled.spots(name) if place}
    for sheet, cell, value in values(source):
        ours = (isinstance(value, str) and "№" in value) or (isinstance(value, str) and value.startswith("=2.5+"))
        if not ours:
            continue
        row, column = openpyxl.utils.cell.coordinate_to_tuple(cell)
        if (sheet, (row - 1, column - 1)) in emptied:
            continue
        text = str(value).removesuffix("\n")
        if not any(text in one for one in there) and text not in told:
            raise Lost(f"{sheet}!{cell}: {value!r} is nowhere in {target.name}")


def _emptied(filled: Filled) -> Iterator[str]:
    """The typed cells that a handover empties, as it says."""
    from sheetfuncs.workbook.commands.renew.handover import ANEW, STAYS

    stays = {f"{table}.{key}" for table, keys in STAYS.items() for key in keys}
    for name, what in filled.cells.items():
        kept = name in stays or name.startswith("past.") or (name.startswith(("yard.", "know.")) and name not in ANEW)
        if what.typed and not kept:
            yield name


def _nothing_new(first: Filled, last: Filled) -> None:
    """There and back, every input is what it was."""
    for name, given in first.season.inputs.items():
        found = last.season.inputs.get(name)
        both = [(given, found)] if not isinstance(given, list) else list(zip(given, found or [], strict=False))
        for one, other in both:
            if one not in (None, "") and serial(one) != serial(other):
                raise Lost(f"{name}: {one!r} came back as {other!r}")


def written(folder: Path) -> dict[str, Path]:
    """The example in both systems."""
    found = {}
    for system in SYSTEMS:
        found[system] = folder / f"{system}.xlsx"
        example(system, SMALL).write(found[system], "linked")
    return found


def main() -> None:
    minutes = float(sys.argv[1]) if len(sys.argv) > 1 else 1.0
    number = int(sys.argv[2]) if len(sys.argv) > 2 else 0
    until, failed, first, edits = time.monotonic() + 60 * minutes, 0, number, 0
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        whole = written(folder)
        while time.monotonic() < until:
            try:
                edits += run(number, folder, whole)
            except Exception as error:
                failed += 1
                kept = Path(f"failed-{number}.xlsx")
                shutil.copy(folder / "edited.xlsx", kept)
                print(
                    f"number {number}: {type(error).__name__}: {re.sub(chr(10), ' ', str(error))[:300]}; kept: {kept}"
                )
            number += 1
    print(f"{number - first} workbooks with {edits:,} edits, {failed} failed")


if __name__ == "__main__":
    main()
