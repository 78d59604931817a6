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
from sheetfuncs.workbook.commands.check.typed import Remark, label
from sheetfuncs.workbook.model.kinds import typed
from sheetfuncs.workbook.model.parts import ASK, DATE, MEND, TELL
from sheetfuncs.workbook.read.contents import At, Cell, serial
from sheetfuncs.workbook.read.filled import Filled, address
from sheetfuncs.workbook.season import STAMP_VERSION, TODAY

CLOSE = 1e-6  # two programs' last digits, and a time stored to the second
NUMBER = re.compile(r"\d+(?:[.,]\d+)?")
PROBE = "now.probe"  # 1 where the functions work
WRITTEN_BY_CALC = "_xlfn.lambda("  # LibreOffice writes the carried functions so; others write capitals

Values = Mapping[str, Mapping[At, Any]]


class Computed(NamedTuple):
    """A cell that our sheets compute: its name, where it stands, what is in it and what should be."""

    name: str
    offset: int
    at: At
    cell: Cell
    fresh: Any


def saved_on(filled: Filled) -> datetime.date | None:
    """The day for which the workbook's values were stored, if it follows the calendar."""
    value = typed(DATE, filled.cell(TODAY).value)
    return value if TODAY not in filled.season.inputs and isinstance(value, datetime.date) else None


def of_formulas(filled: Filled) -> Iterator[Remark]:
    """Cells that should compute and do not."""
    for name, what in filled.cells.items():
        if not what.formula or name == TODAY:
            continue
        over, gone, broken = [], [], []
        for one in _cells(filled, name, {}):
            if "#REF!" in one.cell.formula:
                broken.append(one.at)
            elif not one.cell.formula and one.cell.value is not None:
                over.append(one.at)
            elif not one.cell.formula and _row_is_used(filled, name, one.offset):
                gone.append(one.at)
        sheet = filled.sheet_of(name)
        for places, sentence in (
            (over, "was typed over its formula: copy the formula back from a row above, or undo."),
            (gone, "has lost its formula: copy it from a row above."),
            (broken, "refers to cells that were deleted: undo, or copy the formula from an earlier copy."),
        ):
            if places:
                more = f" ({len(places)} cells)" if len(places) > 1 else ""
                yield Remark(MEND, sheet, address(places[0]), f"{label(what) or 'This number'} {sentence}{more}")


def _cells(filled: Filled, name: str, values: Values) -> Iterator[Computed]:
    spot = filled.layout.spots[name]
    cells = filled.contents.sheets.get(filled.sheet_of(name), {})
    for offset, at in enumerate(filled.spots(name)):
        if at is not None:
            fresh = values.get(spot.sheet, {}).get((spot.row + offset, spot.column))
            yield Computed(name, offset, at, cells.get(at, Cell(None)), fresh)


def _row_is_used(filled: Filled, name: str, offset: int) -> bool:
    """Whether something is typed in the row; a labelled cell is always in use."""
    if not filled.is_table(name):
        return True
    table = name.partition(".")[0] + "."
    columns = [given for key, given in filled.season.inputs.items() if key.startswith(table)]
    return any(offset < len(given) and given[offset] is not None for given in columns)


def of_typed_formulas(filled: Filled) -> Iterator[Remark]:
    """Formulas where something is to be typed."""
    for name, what in filled.cells.items():
        if not what.typed:
            continue
        for offset in range(len(filled.spots(name))):
            cell = filled.cell(name, offset)
            if cell.formula and cell.value is None:
                sentence = f"{label(what)} holds a formula without its value: save the workbook in a spreadsheet first."
                yield Remark(MEND, *filled.place(name, offset), sentence)
            elif cell.formula:
                yield Remark(TELL, *filled.place(name, offset), f"{label(what)} holds a formula; its value is taken.")


def of_values(filled: Filled, values: Values) -> Iterator[Remark]:
    """Stored values that differ from what the sheets give; `values` are those of the day of saving."""
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
    earlier = filled.contents.properties.get(STAMP_VERSION, __version__) != __version__
    for sheet in filled.season.sheets:
        names = [name for name in filled.cells if filled.layout.spots[name].sheet == sheet.title]
        computed = [one for name in names if filled.cells[name].formula for one in _cells(filled, name, values)]
        differ = [one for one in computed if one.cell.formula and not agree(one.cell.value, one.fresh)]
        if differ:
            first = differ[0]
            what = label(filled.cells[first.name]) or "this number"
            shown, due = (_shown(value) for value in (first.cell.value, first.fresh))
            many = f"{len(differ)} stored values differ" if len(differ) > 1 else "A stored value differs"
            sentence = f"{many} from what the sheet gives: {what} shows {shown}, should be {due}."
            yield Remark(TELL if earlier else ASK, filled.sheet_of(first.name), address(first.at), sentence)


def of_errors(filled: Filled) -> Iterator[Remark]:
    """Computed cells that come out as errors."""
    for name, what in filled.cells.items():
        wrong = [
            one
            for one in _cells(filled, name, filled.season.values)
            if what.formula and isinstance(one.fresh, str) and one.fresh.startswith("#")
        ]
        if wrong:
            sentence = f"{label(what) or 'This number'} comes out as {wrong[0].fresh}: look at what it is made from."
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
    """The functions that a carried workbook brings along."""
    if filled.edition != "carried":
        return
    version = filled.contents.properties.get(STAMP_VERSION, __version__)
    if filled.path.suffix == ".xlsx" and any(WRITTEN_BY_CALC in body for body in filled.contents.names.values()):
        sentence = (
            "LibreOffice saved this workbook and wrote the functions that it carries in small letters, "
            "which other programs may not read; convert writes them anew."
        )
        yield Remark(ASK, "", "", sentence)
    other = []
    for name, function in CATALOGUE.items():
        body = filled.contents.names.get(name)
        if body is None:
            yield Remark(
                MEND, "", "", f"The function {name} is gone from the workbook's names; convert writes it anew."
            )
        elif not _same_body(body, trace.lambda_body(function.card)):
            other.append(name)
    if other and version != __version__:
        yield Remark(
            TELL, "", "", f"{len(other)} of its functions are those of version {version}; convert renews them."
        )
    else:
        for name in other:
            yield Remark(MEND, "", "", f"The function {name} was damaged in the workbook's names; convert mends it.")


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
