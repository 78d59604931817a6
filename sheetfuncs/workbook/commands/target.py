"""The workbook that a command writes: where it may go, and a filled season that it takes the place of."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from io import BytesIO
from pathlib import Path
from typing import Any

from sheetfuncs.files import Refused, ends, for_reading, new_file, writable
from sheetfuncs.workbook.season import Season

SET_BY_NEW = ("yard.year", "yard.elevation")  # what options of `new` fill in


def target(file: str, replace: bool, *sources: str) -> Path:
    """The workbook to write, asked for before the work: an .xlsx file, and never one that is read."""
    path = ends(Path(file), "a season workbook", ".xlsx")
    refuse_source(path, *sources)
    writable(path, replace)
    return path


def refuse_source(path: Path, *sources: str) -> None:
    """A workbook that is read is never written to."""
    try:
        same = any(path.samefile(source) for source in sources if Path(source).exists())
    except (OSError, ValueError):  # not there, or it cannot be asked for: then nor can it be read
        return
    if same:
        raise Refused(f"{path}: this is the workbook itself, which is never written to; choose another name")


def write(season: Season, path: Path, edition: str, replace: bool) -> Sequence[str]:
    """Write the workbook, whole or not at all; told is where a filled one that it replaces is kept."""
    keep = _free(path) if replace and path.exists() and _filled_in(path) else None
    with new_file(path, replace, keep) as part:
        season.write(part, edition)
    return [f"kept: the season that was there, as {keep}"] if keep else []


def _filled_in(path: Path) -> bool:
    """Whether a workbook holds more than a new one does; what cannot be read may."""
    from sheetfuncs.workbook.read.filled import read  # a tenth of a second, which `new` as a rule has no need of

    try:
        old = read(path)
    except Refused:
        return True
    content = BytesIO()
    Season(old.system, {}, old.rows).write_uncomputed(content)
    with for_reading(content.getvalue(), ".xlsx") as fresh:
        new = read(fresh)
    own = any(old.own_cells()) or bool(old.own_sheets() or old.contents.notes)
    return own or _typed(old.season.inputs) != _typed(new.season.inputs)


def _typed(inputs: Mapping[str, Any]) -> dict[str, Any]:
    return {name: value for name, value in inputs.items() if name not in SET_BY_NEW and value}


def _free(path: Path) -> Path:
    """A name beside it that no file has."""
    number, found = 2, path.with_name(f"{path.stem} (before){path.suffix}")
    while found.is_symlink() or found.exists():
        found = path.with_name(f"{path.stem} (before {number}){path.suffix}")
        number += 1
    return found
