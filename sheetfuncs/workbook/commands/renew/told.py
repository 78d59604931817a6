"""What a command says of the workbook that it renews: what was not found or not understood, and what was carried."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from sheetfuncs.workbook.commands.check.check import place
from sheetfuncs.workbook.commands.check.typed import Remark, not_understood
from sheetfuncs.workbook.commands.renew.carried import Carried
from sheetfuncs.workbook.read.filled import Filled, address


def told(filled: Filled, carried: Carried) -> Sequence[str]:
    """What was not found in the old workbook or not understood, and what was carried outside our columns."""
    said = [
        *((one.sheet, one.at, one.sentence, "look at" if one.doubtful else "not read") for one in filled.gone()),
        *((one.sheet, one.at, one.sentence, "look at") for one in filled.contents.odd),
    ]
    gone = [
        f"{how}: {place(Remark('', sheet, address(at) if at else '', ''))}: {sentence}"
        for sheet, at, sentence, how in said
    ]
    odd = [f"not understood: {place(one)}: {one.sentence}" for one in not_understood(filled)]
    return [*gone, *odd, *_formulas(filled), *carried.told()]


def exit_code(filled: Filled) -> int:
    """1 where something typed was not understood, or a part of our sheets is not there."""
    return int(any(not one.doubtful for one in filled.gone()) or any(not_understood(filled)))


def _formulas(filled: Filled) -> Iterator[str]:
    """Where something is typed, a formula gives way to its value."""
    found = [
        place(Remark("", *filled.place(name, offset), ""))
        for name, what in filled.cells.items()
        for offset in range(len(filled.spots(name)) if what.typed else 0)
        if (cell := filled.cell(name, offset)).formula and cell.value is not None
    ]
    if found:
        many = f"{len(found)} formulas" if len(found) > 1 else "a formula"
        yield f"taken as values: {many} where something is typed, the first in {found[0]}"
