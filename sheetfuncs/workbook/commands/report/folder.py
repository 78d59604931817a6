"""Many seasons of many yards, as a club has them in a folder: a line for each, with the file it is from.

Each workbook is read in a process of its own, as many at once as there are cores, and what is kept of it
is its line; so a thousand need no more memory than a few, and one that cannot be read stops nothing.
"""

from __future__ import annotations

import argparse
import csv
import datetime
import io
import os
import signal
import sys
from collections.abc import Iterator, Sequence
from html import escape
from multiprocessing import get_all_start_methods, get_context
from multiprocessing.connection import Connection, wait
from multiprocessing.process import BaseProcess
from pathlib import Path
from typing import Any, NamedTuple

from sheetfuncs.bounded import SIGNALS, limit
from sheetfuncs.files import Refused, ends, new_file, one_line, writable
from sheetfuncs.workbook.commands.check.check import check_filled, to_mend
from sheetfuncs.workbook.commands.report.page import document
from sheetfuncs.workbook.commands.target import refuse_source
from sheetfuncs.workbook.model.kinds import COUNT, NUMBER, TEXT, Kind, counted
from sheetfuncs.workbook.model.parts import Field
from sheetfuncs.workbook.model.systems import Units
from sheetfuncs.workbook.read.filled import Filled, read
from sheetfuncs.workbook.season import Season

ENDINGS = (".xlsx", ".xlsm", ".ods")
TOTALS = (
    "taps first last days sap brix guessed expected bottled waiting sap_per_tap syrup_per_tap ratio water hours fuel"
).split()
# Of earlier seasons, typed at the foot of Season: what they have under the same heading.
EARLIER = {"taps": "taps", "first": "first", "last": "last", "days": "days", "sap": "sap", "brix": "brix",
           "bottled": "syrup", "hours": "hours", "fuel": "fuel"}  # fmt: skip
DIGITS = 6  # of a number in the CSV file: more than any of them is good to
START: Any = get_context("fork" if "fork" in get_all_start_methods() else None)
TOO_MUCH = "takes too much time or memory, or a library fell over it; look at it with `sheetfuncs check`"


class Line(NamedTuple):
    """A season: the file, the yard, the year, the totals as computed, in the file's own units."""

    source: str
    yard: str
    year: str
    to_mend: int | None
    system: str
    values: dict[str, Any]
    fuel_in: str


class Read(NamedTuple):
    """What became of a file: its seasons, its own first, or why it could not be read."""

    file: Path
    lines: Sequence[Line] = ()
    refused: str = ""


class Column(NamedTuple):
    """A column of the table: its words, and how it shows a value."""

    key: str
    words: str
    kind: Kind


def report(options: argparse.Namespace) -> int:
    """Tell all the seasons in folders and files; 1 where a workbook could not be read."""
    page = None if options.html is None else ends(Path(options.html), "the page", ".html", ".htm")
    table = None if options.csv is None else ends(Path(options.csv), "the table", ".csv")
    files = list(_files(options.files))
    for out in (page, table):
        if out:
            refuse_source(out, *map(str, files))
            writable(out, options.replace)
    found = read_all(files, os.path.commonpath([file.parent for file in files]))
    lines = list(_once(found))
    refused = [one.refused for one in found if one.refused]
    if not lines:
        raise Refused(f"{options.files[0]}: none of {counted(len(files), 'workbook', ',')} can be read: {refused[0]}")
    system = lines[0].system
    columns = list(_columns(Units(system)))
    rows = [[_shown(column, line, system) for column in columns] for line in lines]
    if page:
        with new_file(page, options.replace) as part:
            part.write(html(columns, rows, refused).encode(errors="backslashreplace"))
    if table:
        with new_file(table, options.replace) as part:
            part.write(_csv(columns, lines, system).encode(errors="backslashreplace"))
    print("\n".join(_text(columns, rows, Units(system))))
    print(f"\n{counted(len(lines), 'season', ',')} from {counted(len(files), 'workbook', ',')}")
    for out in (page, table):
        if out:
            print(f"written: {out}")
    for why in refused:
        print(f"passed over: {why}")
    return 1 if refused else 0


def _files(given: Sequence[str]) -> Iterator[Path]:
    """The workbooks, those of a folder and of folders in it in the order of their names."""
    seen: set[Path] = set()
    for one in map(Path, given):
        inside = sorted(path for path in one.rglob("*") if path.suffix.lower() in ENDINGS) if one.is_dir() else [one]
        inside = [path for path in inside if not path.name.startswith((".", "~$"))]  # what programs leave
        if not inside:
            raise Refused(f"{one}: there is no workbook in this folder; give one with .xlsx, .xlsm or .ods files")
        yield from (path for path in inside if path not in seen)
        seen.update(inside)


def read_all(files: Sequence[Path], folder: str) -> list[Read]:
    """The seasons of all files, in their order; each file in a process of its own, one for each core at a time."""
    found: dict[Path, Read] = {}
    running: dict[Connection, tuple[Path, BaseProcess]] = {}
    waiting = list(reversed(files))
    while waiting or running:
        while waiting and len(running) < (os.cpu_count() or 1):
            file = waiting.pop()
            ours, theirs = START.Pipe(duplex=False)
            process = START.Process(target=_in_process, args=(file, folder, theirs), daemon=True)
            process.start()
            theirs.close()
            running[ours] = file, process
        ended = wait(list(running))
        for ready in [pipe for pipe in running if pipe in ended]:
            file, process = running.pop(ready)
            try:
                found[file] = ready.recv()
            except (EOFError, OSError):  # it ended without a word
                found[file] = Read(file, refused=f"{file}: {TOO_MUCH}")
            process.join()
            _tell(len(found), len(files))
    return [found[file] for file in files]


def _in_process(file: Path, folder: str, pipe: Connection) -> None:
    for number in SIGNALS:  # stopped, it says nothing: the one that waits for it does
        signal.signal(number, signal.SIG_DFL)
    limit()
    try:
        filled = read(file)
        mend = to_mend(check_filled(filled))
        pipe.send(Read(file, list(_lines(filled, os.path.relpath(file, folder), mend))))
    except Refused as refused:
        pipe.send(Read(file, refused=str(refused)))
    except Exception as error:
        pipe.send(Read(file, refused=one_line(f"{file}: {type(error).__name__}; look at it with `sheetfuncs check`")))


def _lines(filled: Filled, source: str, mend: int) -> Iterator[Line]:
    """The season of a workbook, then the earlier ones that were typed into it."""
    season: Season = filled.season
    yard, year = season.inputs.get("yard.name"), season.inputs.get("yard.year")
    yard = one_line(str(yard)) if yard else Path(source).stem
    last = season.value("season.last")
    values = {key: season.value(f"season.{key}") for key in TOTALS}
    fuel = str(season.value("yard.fuel_unit") or "")
    of_run = season.cells["season.last"].kind.parse(last)
    told = f"{year:.0f}" if isinstance(year, float) else str(getattr(of_run, "year", ""))
    yield Line(source, yard, told, mend, filled.system, values, fuel)
    for row, name in enumerate(season.inputs.get("past.season", ())):
        columns = {key: season.inputs.get(f"past.{past}", ()) for key, past in EARLIER.items()}
        values = {key: column[row] for key, column in columns.items() if row < len(column)}
        if name is not None and any(value is not None for value in values.values()):
            yield Line(f"{source}, earlier seasons", yard, one_line(str(name)), None, filled.system, values, fuel)


def _tell(done: int, files: int) -> None:
    """How far it is, for whoever sits before a terminal; the line is wiped at the end."""
    if sys.stderr is not None and sys.stderr.isatty():
        words = f"{done} of {files} read" if done < files else ""
        print(f"\r{words:<40}\r", end="", file=sys.stderr, flush=True)


def _once(found: Sequence[Read]) -> Iterator[Line]:
    """By yard and year; an earlier season only where no workbook of its own, and no other, tells of it."""
    own = [line for one in found for line in one.lines[:1]]
    known = {(line.yard.casefold(), line.year) for line in own}
    lines = list(own)
    for line in (line for one in reversed(found) for line in one.lines[1:]):
        if (line.yard.casefold(), line.year) not in known:
            known.add((line.yard.casefold(), line.year))
            lines.append(line)
    yield from sorted(lines, key=lambda line: (line.yard.casefold(), line.year, line.source))


def _columns(units: Units) -> Iterator[Column]:
    cells = Season(units.system, {}).cells
    yield from (Column("yard", "Yard", TEXT), Column("year", "Season", TEXT))
    for key in TOTALS:
        field = cells[f"season.{key}"]
        assert isinstance(field, Field)
        yield Column(key, field.kind.heading(field.label.strip(), units), field.kind)
    yield from (Column("fuel_in", "of", TEXT), Column("to_mend", "To mend", COUNT), Column("source", "From", TEXT))


def _value(column: Column, line: Line, system: str) -> Any:
    """What a line has in a column, in the units of the table."""
    if column.key not in TOTALS:
        return getattr(line, column.key)
    value, quantity = line.values.get(column.key), column.kind.quantity
    if quantity and isinstance(value, float) and line.system != system:
        value = quantity.unit(system).out_of_si(quantity.unit(line.system).into_si(value))
    return None if value == "" else value


def _shown(column: Column, line: Line, system: str) -> str:
    value = _value(column, line, system)
    return column.kind.show(value, Units(system)) if not isinstance(value, str) else value


def _csv(columns: Sequence[Column], lines: Sequence[Line], system: str) -> str:
    """A line a season; dates as ISO 8601 writes them, numbers plain."""

    def plain(column: Column, value: Any) -> Any:
        day = column.kind.parse(value) if column.kind not in (TEXT, NUMBER) else value
        if isinstance(day, datetime.date):
            return day.isoformat()
        if isinstance(value, str) and value[:1] in tuple("=+-@\t"):
            return f"'{value}"  # a name, not a formula
        return f"{value:.{DIGITS}g}" if isinstance(value, float) else value

    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\n")
    writer.writerow(column.words for column in columns)
    for line in lines:
        writer.writerow(plain(column, _value(column, line, system)) for column in columns)
    return out.getvalue()


def _text(columns: Sequence[Column], rows: Sequence[Sequence[str]], units: Units) -> Iterator[str]:
    """The table with the file first in each row, its columns one below the other: as wide as a terminal."""
    for row in rows:
        told = dict(zip((column.key for column in columns), row, strict=True))
        sap = f"{told['sap']} {units.volume} of sap, " if told["sap"] else ""
        syrup = f"{told['bottled']} {units.volume} of syrup" if told["bottled"] else "no syrup"
        yield f"{told['yard']} {told['year']}: {sap}{syrup} ({told['source']})"


def html(columns: Sequence[Column], rows: Sequence[Sequence[str]], refused: Sequence[str]) -> str:
    """One page with one table, and what was passed over."""
    title = f"{counted(len(rows), 'season', ',')} of {counted(len({row[0] for row in rows}), 'yard', ',')}"
    left = [" class=left" if column.kind.wordy else "" for column in columns]
    heads = "".join(f"<th{side}>{escape(column.words)}</th>" for column, side in zip(columns, left, strict=True))
    body = (
        "<tr>" + "".join(f"<td{side}>{escape(text)}</td>" for text, side in zip(row, left, strict=True)) + "</tr>"
        for row in rows
    )
    table = [f'<div class="wide"><table><tr>{heads}</tr>', *body, "</table></div>"]
    wide = " body { max-width: none; } @page { size: landscape; }"
    return document(title, [f"Passed over: {why}" for why in refused], table, wide)
