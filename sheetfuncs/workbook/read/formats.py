"""What each format of the workbook had: its sheets to read by, and its cells brought to today's.

A heading reworded or a column added is told by `was` and `since` of today's records.  Where the sheets were
made anew, the older format is described by data that never changes again (`format_N.json`), and a module
`format_N` says where its cells went.
"""

from __future__ import annotations

import dataclasses
import json
from collections.abc import Mapping, Sequence
from functools import cache
from importlib import resources
from typing import Any, NamedTuple

from sheetfuncs.workbook.model import kinds
from sheetfuncs.workbook.model.formula import NOTHING
from sheetfuncs.workbook.model.kinds import Kind
from sheetfuncs.workbook.model.parts import Block, Column, Field, Fields, Sheet, Table, Text
from sheetfuncs.workbook.model.rows import Rows
from sheetfuncs.workbook.model.systems import Units
from sheetfuncs.workbook.read import format_1
from sheetfuncs.workbook.read.contents import Contents
from sheetfuncs.workbook.read.page import same
from sheetfuncs.workbook.read.upgrade import Left, Upgrade
from sheetfuncs.workbook.season import FORMAT
from sheetfuncs.workbook.sheets import all_sheets

MADE_ANEW = {1: format_1}  # formats whose sheets are no longer those of today
KINDS = {kind.name: kind for kind in vars(kinds).values() if isinstance(kind, Kind)}


def sheets(written: int, units: Units, contents: Contents) -> list[Sheet]:
    """The sheets of a format, as many batches as the workbook has where they had blocks of their own."""
    if written not in MADE_ANEW:
        return all_sheets(units, Rows())
    said = {same(cell.value) for cells in contents.sheets.values() for cell in cells.values() if not cell.formula}
    return _described(written, units.system, format_1.batches(said))


def guessed(contents: Contents) -> int:
    """The format of a workbook that has lost its stamp: by the sheets that only an older one had."""
    titles = {same(title) for title in contents.sheets}
    return 1 if titles >= format_1.SHEETS and not format_1.NOT_YET & titles else FORMAT


def upgraded(
    written: int, inputs: Mapping[str, Any], places: Mapping[str, Sequence[Any]], units: Units
) -> tuple[dict[str, Any], dict[str, list[Any]], list[Left]]:
    """The typed cells of an older format in today's: by name, where each stands in the file, and what has no place."""
    upgrade = Upgrade(inputs, places)
    MADE_ANEW[written].bring(upgrade, units)
    return upgrade.inputs, upgrade.places, upgrade.left()


@cache
def _described(written: int, system: str, batches: int) -> list[Sheet]:
    text = resources.files(__package__).joinpath(f"format_{written}.json").read_text(encoding="utf-8")
    found = []
    for sheet in json.loads(text)[system]:
        blocks: list[Block] = []
        for number in range(1, batches + 1):
            for block in sheet["blocks"]:
                mine = format_1.of_batch(block, number)
                if mine:
                    blocks.append(_block(mine, Units(system)))
        found.append(Sheet(sheet["title"], sheet["purpose"], blocks))
    return found


class _Words(NamedTuple):
    """Words without the unit that their kind adds, and the kind, without its unit where the words have none."""

    words: str
    kind: Kind


def _words(text: str, kind: Kind, units: Units) -> _Words:
    unit = kind.unit(units)
    if unit and text.endswith(f", {unit}"):
        return _Words(text.removesuffix(f", {unit}"), kind)
    return _Words(text, dataclasses.replace(kind, quantity=None) if unit else kind)


def _block(block: Mapping[str, Any], units: Units) -> Block:
    if "fields" in block:
        fields = [_field(cell, units) for cell in block["cells"]]
        return Fields(block["fields"], block["title"], fields, block["row"], block["column"], block["span"])
    if "table" in block:
        columns = []
        for column in block["columns"]:
            words, kind = _words(column["heading"], KINDS[column["kind"]], units)
            formula = "" if column.get("typed") or column.get("fixed") else NOTHING
            columns.append(
                Column(column["key"], words, kind, formula, fixed=column.get("fixed", ()), since=column.get("since", 1))
            )
        return Table(block["table"], block["title"], columns, block["rows"], block["row"], block["column"])
    return Text(block["text"], block["lines"], block["row"], block["column"], block["across"])


def _field(cell: Mapping[str, Any], units: Units) -> Field:
    kind = dataclasses.replace(KINDS[cell["kind"]], quantity=None)  # labels have no units; their notes have
    formula = "" if cell.get("typed") else NOTHING
    beside = _field(cell["beside"], units) if "beside" in cell else None
    return Field(
        cell["key"], cell["label"], kind, formula, note=cell.get("note", ""), beside=beside, since=cell.get("since", 1)
    )
