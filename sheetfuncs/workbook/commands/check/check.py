"""What looks wrong in a season workbook, by sheet and cell, in plain words."""

from __future__ import annotations

import argparse
import datetime
import json
import tempfile
from collections.abc import Sequence
from pathlib import Path

from sheetfuncs.files import Refused
from sheetfuncs.workbook.commands.check import stored
from sheetfuncs.workbook.commands.check import typed as remarks
from sheetfuncs.workbook.commands.check.typed import Remark
from sheetfuncs.workbook.model.parts import ASK, MEND, TELL, WEIGHTS
from sheetfuncs.workbook.read.filled import Filled, address, read
from sheetfuncs.workbook.season import FORMAT

OLDER = "This workbook is of an older make; all is read. `sheetfuncs convert` writes it anew, with what is new."


def check(options: argparse.Namespace) -> int:
    """Check a workbook and print what was found; 1 if something must be mended."""
    if (options.file is None) is not options.open:
        raise Refused("check: give the file of a workbook, or --open for the one that is open in Excel")
    filled = _open_in_excel() if options.open else read(Path(options.file))
    found = check_filled(filled)
    print(as_json(filled, found) if options.json else as_text(found))
    return 1 if to_mend(found) else 0


def _open_in_excel() -> Filled:
    from sheetfuncs.hosts.excel.live import open_workbook_copy

    with tempfile.TemporaryDirectory() as folder:
        return read(open_workbook_copy(Path(folder)))


def check_file(path: Path, today: datetime.date | None = None) -> list[Remark]:
    """What can be said of a workbook file, the gravest first; the file is only read."""
    return check_filled(read(path, today))


def to_mend(found: Sequence[Remark]) -> int:
    """How many of the remarks ask for something to be mended."""
    return sum(one.weight == MEND for one in found)


def check_filled(filled: Filled) -> list[Remark]:
    """What can be said of a workbook, the gravest first, then in the order of its sheets."""
    day = stored.saved_on(filled)
    values = [*filled.season.compute(*([day] if day else [])), filled.season.values][0]
    found = [
        Remark(ASK if gone.doubtful else MEND, gone.sheet, address(gone.at) if gone.at else "", gone.sentence)
        for gone in filled.gone()
    ]
    found += [Remark(ASK, odd.sheet, address(odd.at) if odd.at else "", odd.sentence) for odd in filled.contents.odd]
    if filled.format < FORMAT:
        found.append(Remark(TELL, "", "", OLDER))
    found += [*remarks.of_typed(filled), *remarks.of_weather(filled)]
    found += [*stored.of_formulas(filled), *stored.of_typed_formulas(filled), *stored.of_names(filled)]
    found += [*stored.of_errors(filled), *stored.of_values(filled, values), *remarks.of_own(filled)]
    sheets = {title: number for number, title in enumerate(filled.contents.sheets)}
    return sorted(found, key=lambda one: (WEIGHTS.index(one.weight), sheets.get(one.sheet, -1)))


def as_text(found: Sequence[Remark]) -> str:
    """The remarks under their weights, each with its place."""
    lines = []
    for weight in WEIGHTS:
        said = [(place(one), one.sentence) for one in found if one.weight == weight]
        if said:
            width = max(len(where) for where, _ in said)
            lines += [weight.capitalize(), *(f"  {where:{width}}  {sentence}".rstrip() for where, sentence in said), ""]
    counted = [
        f"{sum(one.weight == weight for one in found)} {words}"
        for weight, words in zip(WEIGHTS, ("to mend", "to look at", "to know"), strict=True)
    ]
    return "\n".join([*lines, ", ".join(counted) + "." if found else "Nothing to mend, nothing to look at."])


def place(one: Remark) -> str:
    """Where a remark belongs, as a spreadsheet writes it."""
    return "!".join(part for part in (one.sheet, one.cell) if part) or "workbook"


def as_json(filled: Filled, found: Sequence[Remark]) -> str:
    """The remarks for programs."""
    whole = {
        "file": filled.file,
        "units": filled.system,
        "edition": filled.edition,
        "remarks": [one._asdict() for one in found],
    }
    return json.dumps(whole, indent=1)  # ASCII: valid whatever the terminal writes
