"""What became of the computed cells: formulas typed over, values that are not what the sheets give, damaged names."""

from __future__ import annotations

import datetime
import math
import re
from collections.abc import Iterator, Mapping
from typing import Any, NamedTuple

from sheetfuncs import __version__
from sheetfuncs.formulas.catalogue import CATALOGUE
from sheetfuncs.hosts import trace
from sheetfuncs.workbook.commands.check.typed import Remark, without_value
from sheetfuncs.workbook.model.days import serial
from sheetfuncs.workbook.model.editions import EDITIONS
from sheetfuncs.workbook.model.kinds import DATE
from sheetfuncs.workbook.model.parts import ASK, MEND, TELL, Column, Field
from sheetfuncs.workbook.read.contents import At, Cell
from sheetfuncs.workbook.read.filled import Filled, address
from sheetfuncs.workbook.read.places import Place
from sheetfuncs.workbook.season import FORMAT, STAMP_EDITION, STAMP_VERSION, TODAY
from sheetfuncs.workbook.sheets.weekend import UNANSWERED

CLOSE = 1e-6  # two programs' last digits, and a time stored to the second
NUMBER = re.compile(r"\d+(?:[.,]\d+)?")
PROBE = "behind.probe"  # 1 where the functions work
WORKS = "behind.works"  # and 0 where that was not asked yet
WRITTEN_BY_CALC = "_xlfn.lambda("  # LibreOffice writes the carried functions so; others write capitals

Values = Mapping[str, Mapping[At, Any]]


class Computed(NamedTuple):
    """A cell that our sheets compute: its name, where it stands, what is in it and what should be."""

    name: str
    offset: int
    place: Place
    cell: Cell
    fresh: Any


def saved_on(filled: Filled) -> datetime.date | None:
    """The day for which the workbook's values were stored, if it follows the calendar."""
    value = DATE.parse(filled.cell(TODAY).value)
    return value if TODAY not in filled.season.inputs and isinstance(value, datetime.date) else None


def of_formulas(filled: Filled) -> Iterator[Remark]:
    """Cells that should compute and do not."""
    logs = _logs(filled)
    for name, what in filled.cells.items():
        if not what.formula or name == TODAY:
            continue
        over, gone, broken = [], [], []
        for one in _cells(filled, name, {}):
            if "#REF!" in one.cell.formula:
                broken.append(one.place)
            elif not one.cell.formula and one.cell.value is not None:
                over.append(one.place)
            elif not one.cell.formula and _is_used(logs.get(name.partition(".")[0]), one.offset):
                gone.append(one.place)
        mended = "copy it from another row" if filled.is_table(name) else "`sheetfuncs convert` brings it back"
        for places, sentence in (
            (over, f"was typed over its formula: undo, or {mended}."),
            (gone, f"has lost its formula: undo, or {mended}."),
            (broken, "refers to cells that were deleted: undo, or `sheetfuncs convert` writes it anew."),
        ):
            if places:
                more = f" ({len(places)} cells)" if len(places) > 1 else ""
                yield Remark(
                    MEND, places[0].sheet, address(places[0].at), f"{what.words or 'This number'} {sentence}{more}"
                )


def _cells(filled: Filled, name: str, values: Values) -> Iterator[Computed]:
    spot = filled.layout.spots[name]
    for offset, place in enumerate(filled.spots(name)):
        if place is not None:
            fresh = values.get(spot.sheet, {}).get((spot.row + offset, spot.column))
            yield Computed(name, offset, place, filled.cell(name, offset), fresh)


def _logs(filled: Filled) -> dict[str, list[list[Any]]]:
    """What is typed in the columns of each table where anything may be typed."""
    found: dict[str, list[list[Any]]] = {}
    for name, what in filled.cells.items():
        if what.typed and filled.is_table(name):
            found.setdefault(name.partition(".")[0], []).append(filled.season.inputs.get(name) or [])
    return found


def _is_used(columns: list[list[Any]] | None, offset: int) -> bool:
    """Whether something is typed in a row; a labelled cell is always in use, as is a table where nothing is typed."""
    return columns is None or any(offset < len(given) and given[offset] is not None for given in columns)


def of_typed_formulas(filled: Filled) -> Iterator[Remark]:
    """Formulas where something is to be typed."""
    for name, what in filled.cells.items():
        if not what.typed:
            continue
        for offset in range(len(filled.spots(name))):
            cell = filled.cell(name, offset)
            if cell.formula and cell.value is None:
                yield Remark(MEND, *filled.place(name, offset), without_value(what))
            elif cell.formula:
                yield Remark(TELL, *filled.place(name, offset), f"{what.words} holds a formula; its value is taken.")


def of_values(filled: Filled, values: Values) -> Iterator[Remark]:
    """Stored values that differ from what the sheets give; `values` are those of the day of saving."""
    if filled.made_anew:
        return  # its sheets computed other cells
    if not filled.has_values():
        yield Remark(TELL, "", "", "No values are stored: previews show empty cells until a spreadsheet saves it.")
        return
    probe = filled.cell(PROBE)
    if probe.formula and probe.value != 1:
        sentence = (
            "The program that saved this workbook does not compute its functions: take the edition made for it; "
            "`sheetfuncs convert --edition` writes it."
        )
        yield Remark(ASK, *filled.place(PROBE), sentence)
        return
    unanswered = UNANSWERED if filled.cell(WORKS).value == 0 else {}  # as it was written, and not computed since
    earlier = filled.contents.properties.get(STAMP_VERSION, __version__) != __version__
    for sheet in filled.season.sheets:
        names = [name for name in filled.cells if filled.layout.spots[name].sheet == sheet.title]
        answered = [name for name in names if _is_shown(filled.cells[name]) and name not in unanswered]
        computed = [one for name in answered for one in _cells(filled, name, values)]
        differ = [one for one in computed if one.cell.formula and not agree(one.cell.value, one.fresh)]
        if differ:
            first = differ[0]
            what = filled.cells[first.name].words or "this number"
            shown, due = (_shown(value) for value in (first.cell.value, first.fresh))
            many = f"{len(differ)} stored values differ" if len(differ) > 1 else "A stored value differs"
            sentence = f"{many} from what the sheet gives: {what} shows {shown}, should be {due}."
            yield Remark(TELL if earlier else ASK, first.place.sheet, address(first.place.at), sentence)


def _is_shown(what: Column | Field) -> bool:
    """Whether a cell is computed, and no working that nobody sees: rows put in may change the order of those."""
    return bool(what.formula) and not (isinstance(what, Column) and what.hidden)


def of_errors(filled: Filled) -> Iterator[Remark]:
    """Computed cells that come out as errors."""
    for name, what in filled.cells.items():
        wrong = [
            one
            for one in _cells(filled, name, filled.season.values)
            if what.formula and isinstance(one.fresh, str) and one.fresh.startswith("#")
        ]
        if wrong:
            sentence = f"{what.words or 'This number'} comes out as {wrong[0].fresh}: look at what it is made from."
            yield Remark(MEND, *filled.place(name, wrong[0].offset), sentence)


def agree(stored: Any, fresh: Any) -> bool:
    """Whether a stored value is the computed one, to the last digits and whatever the language's decimal mark."""
    if isinstance(fresh, str) and isinstance(stored, str):
        if fresh.startswith("#"):
            return stored.startswith("#")
        if NUMBER.sub("0", stored) != NUMBER.sub("0", fresh):
            return False
        both = zip(NUMBER.findall(stored), NUMBER.findall(fresh), strict=True)
        return all(_rounded_alike(one.replace(",", "."), other) for one, other in both)
    if stored is None or isinstance(stored, str) or isinstance(fresh, str):
        return bool((stored or "") == fresh)
    return fresh is not None and math.isclose(serial(stored), fresh, rel_tol=CLOSE, abs_tol=CLOSE)


def _rounded_alike(one: str, other: str) -> bool:
    """Numbers in words: rounded from the same, they are at most one apart in the last place."""
    decimals = len(other.partition(".")[2])
    return abs(float(one) - float(other)) <= 1.01 * 10.0**-decimals if decimals else one == other


def _shown(value: Any) -> str:
    value = serial(value)
    return f"{value:.6g}" if isinstance(value, (int, float)) else repr(value or "")


def of_names(filled: Filled) -> Iterator[Remark]:
    """The functions that a workbook brings along as names."""
    edition = EDITIONS[filled.edition]
    if filled.edition == "linked" and STAMP_EDITION not in filled.contents.properties:
        sentence = (
            "The program that saved this workbook dropped its names: if cells show #NAME?, its functions were among "
            "them; `sheetfuncs convert --edition carried` brings them back."
        )
        yield Remark(ASK, "", "", sentence)
    if not edition.named or (edition.inline and not any(name in filled.contents.names for name in CATALOGUE)):
        return
    mend, ask = (TELL, TELL) if edition.inline else (MEND, ASK)  # inline, the sheets do not need them
    version = filled.contents.properties.get(STAMP_VERSION, __version__)
    earlier = version != __version__ or filled.format < FORMAT
    if filled.file.lower().endswith(".xlsx") and any(
        WRITTEN_BY_CALC in body for body in filled.contents.names.values()
    ):
        sentence = (
            "LibreOffice saved this workbook and wrote the functions that it carries in small letters, "
            "which other programs may not read; convert writes them anew."
        )
        yield Remark(ask, "", "", sentence)
    other = []
    for name, function in CATALOGUE.items():
        body = filled.contents.names.get(name)
        if body is None and earlier:
            other.append(name)
        elif body is None:
            yield Remark(
                mend, "", "", f"The function {name} is gone from the workbook's names; convert writes it anew."
            )
        elif not _same_body(body, trace.lambda_body(function.card)):
            other.append(name)
    if other and earlier:
        words = "1 of its functions is" if len(other) == 1 else f"{len(other)} of its functions are"
        yield Remark(TELL, "", "", f"{words} older or not there yet, from version {version}; convert renews them.")
    else:
        for name in other:
            yield Remark(mend, "", "", f"The function {name} was damaged in the workbook's names; convert mends it.")


def _same_body(found: str, due: str) -> bool:
    """Whether a LAMBDA is ours; programs write prefixes, capitals, separators and numbers in their own ways."""
    one, other = (
        re.sub(r"_xl\w\w\.|com\.microsoft\.|\s", "", text.casefold()).replace(";", ",") for text in (found, due)
    )
    one = one.removeprefix("=")
    if one == other:
        return True
    pieces = [re.split(r"((?<![a-z_\d.])\d+(?:\.\d+)?(?:e[-+]?\d+)?)", text) for text in (one, other)]
    if len(pieces[0]) != len(pieces[1]) or pieces[0][::2] != pieces[1][::2]:
        return False
    numbers = zip(pieces[0][1::2], pieces[1][1::2], strict=True)
    return all(math.isclose(float(number), float(same), rel_tol=1e-14) for number, same in numbers)
