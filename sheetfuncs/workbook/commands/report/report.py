"""A season told in a page: as text, or as one HTML page with its charts; several seasons side by side."""

from __future__ import annotations

import argparse
from collections.abc import Iterator, Sequence
from pathlib import Path

from sheetfuncs.files import Refused, ends, new_file, writable
from sheetfuncs.workbook.commands.check.check import check_filled, to_mend
from sheetfuncs.workbook.commands.renew.story import words
from sheetfuncs.workbook.commands.report import page
from sheetfuncs.workbook.commands.report import told as told_in_order
from sheetfuncs.workbook.commands.report.records import Section, Told
from sheetfuncs.workbook.commands.target import refuse_source
from sheetfuncs.workbook.model.kinds import counted
from sheetfuncs.workbook.model.measures import all_converted
from sheetfuncs.workbook.model.parts import Column, Fields, Sheet, Table
from sheetfuncs.workbook.read.filled import Filled
from sheetfuncs.workbook.read.filled import read as read_file
from sheetfuncs.workbook.season import Season

SHELF = ("batch", "date", "jar", "filled", "taste", "given", "cold", "grade", "until")  # of Bottles
TOLD = "Season"  # the sheet that a report tells
WORDS = "words"  # its table of words; those of the logs join them
AT_ONCE = 12  # seasons side by side


def report(options: argparse.Namespace) -> int:
    """Tell the seasons of workbooks, and write the page if one is wanted."""
    if len(options.files) > AT_ONCE:
        raise Refused(f"report: {len(options.files)} workbooks; at most {AT_ONCE} stand side by side")
    out = None if options.html is None else ends(Path(options.html), "the page", ".html", ".htm")
    if out:
        refuse_source(out, *options.files)
        writable(out, options.replace)
    told = read(options.files)
    found = sections(told)
    text = as_text(told, found)
    if out:
        with new_file(out, options.replace) as part:
            # a file's name may hold bytes that are no letters
            part.write(page.html(told, found, warnings(told)).encode(errors="backslashreplace"))
        text += f"\n\nwritten: {out}"
    print(text)
    return 0


def read(files: Sequence[str]) -> list[Told]:
    """The seasons of workbooks, recomputed, in the units of the first."""
    told: list[Told] = []
    for file in files:
        filled = read_file(Path(file))
        mend = to_mend(check_filled(filled))
        season = filled.season
        if told and (system := told[0].season.units.system) != filled.system:
            season = Season(system, all_converted(filled.cells, season.inputs, filled.system, system), filled.rows)
            season.compute()
        told.append(Told(_name(filled, {one.name for one in told}), season, mend))
    return told


def _name(filled: Filled, taken: set[str]) -> str:
    """What a season is called: its yard and year, or its file."""
    yard, year = filled.season.inputs.get("yard.name"), filled.season.inputs.get("yard.year")
    parts = [str(yard)] if yard else []
    parts += [f"{year:.0f}"] if isinstance(year, float) else []
    name = " ".join(parts) or Path(filled.file).stem
    names = (name, f"{name} ({Path(filled.file).stem})", f"{name} ({filled.file})")
    numbered = (f"{name} ({filled.file}, {number})" for number in range(2, AT_ONCE + 1))
    return next(one for one in (*names, *numbered) if one not in taken)


def sections(told: Sequence[Told]) -> list[Section]:
    """What there is to tell: of one season all of its sheet, of several what can be compared."""
    sheet = next(sheet for sheet in told[0].season.sheets if sheet.title == TOLD)
    found = _side_by_side(told, sheet) if len(told) > 1 else [*_whole(told[0].season), *_alone(told[0].season, sheet)]
    return [section for section in found if section.rows]


def _whole(season: Season) -> Iterator[Section]:
    """The season in order, and what stands on the shelf."""
    yield Section("The season in order", ["Day", "What happened"], [True, True], told_in_order.story(season))
    bottles = next(block for sheet in season.sheets for block in sheet.blocks if getattr(block, "key", "") == "bottles")
    assert isinstance(bottles, Table)
    columns = [column for column in bottles.columns if column.key in SHELF]
    rows = [
        [column.kind.show(season.shown(f"bottles.{column.key}", row), season.units) for column in columns]
        for row in range(bottles.rows)
        if season.shown("bottles.filled", row)
    ]
    left = [column.kind.wordy for column in columns]
    yield Section("On the shelf", [column.title(season.units) for column in columns], left, rows)


def _alone(season: Season, sheet: Sheet) -> Iterator[Section]:
    units = season.units
    for block in sheet.blocks:
        if isinstance(block, Fields):
            yield _totals([season], block, ["", ""])
        elif block is sheet.block(WORDS):
            yield Section("Words to the next keeper", [""], [True], [[line] for line in words(season)])
        elif isinstance(block, Table):
            columns = [column for column in block.columns if not column.hidden]
            rows = [
                [column.kind.show(season.shown(f"{block.key}.{column.key}", row), units) for column in columns]
                for row in range(block.rows)
            ]
            told = [row for row in rows if any(_says(column, text) for column, text in zip(columns, row, strict=True))]
            left = [column.kind.wordy for column in columns]
            yield Section(block.title, [column.title(units) for column in columns], left, told)


def _says(column: Column, text: str) -> bool:
    return bool(text) and not column.fixed


def _side_by_side(told: Sequence[Told], sheet: Sheet) -> Iterator[Section]:
    """The totals, and the first number of each table whose rows are the same every year."""
    seasons = [one.season for one in told]
    for block in sheet.blocks:
        if isinstance(block, Fields):
            yield _totals(seasons, block, ["", *(one.name for one in told)])
        elif isinstance(block, Table) and block.columns[0].fixed and block.columns[0].kind.wordy:
            names, number = block.columns[:2]
            rows = [
                [
                    str(text),
                    *(number.kind.show(one.shown(f"{block.key}.{number.key}", row), one.units) for one in seasons),
                ]
                for row, text in enumerate(names.fixed)
            ]
            title = f"{block.title}, {number.title(seasons[0].units)}"
            yield Section(title, [names.heading, *(one.name for one in told)], [True] + [False] * len(told), rows)


def _totals(seasons: Sequence[Season], block: Fields, headings: Sequence[str]) -> Section:
    """Labelled cells, a column a season; what a number is counted in stands last."""
    rows = []
    for field in block.fields:
        texts = [field.kind.show(season.shown(f"{block.key}.{field.key}"), season.units) for season in seasons]
        note = field.full_note(seasons[0].units)
        if field.beside:
            note = str(seasons[0].shown(f"{block.key}.{field.beside.key}") or "")
        if any(texts):
            rows.append([field.label, *texts, note])
    return Section(block.title, [*headings, ""], [True, *[False] * len(seasons), True], rows)


def as_text(told: Sequence[Told], found: Sequence[Section]) -> str:
    """The report as a page of text."""
    lines = [", ".join(one.name for one in told), *warnings(told)]
    for section in found:
        table = [list(section.headings), *section.rows] if any(section.headings) else list(section.rows)
        widths = [max(len(row[column]) for row in table) for column in range(len(section.headings))]
        lines += ["", section.title]
        for row in table:
            cells = zip(row, widths, section.left, strict=True)
            lines.append(
                "  " + "  ".join(f"{text:<{width}}" if left else f"{text:>{width}}" for text, width, left in cells)
            )
    return "\n".join(line.rstrip() for line in lines)


def warnings(told: Sequence[Told]) -> list[str]:
    """A sentence for each season whose numbers rest on something that must be mended."""
    mend = {one.name: counted(one.to_mend, "thing") for one in told if one.to_mend}
    return [f"{name}: {things} must be mended first, see `sheetfuncs check`." for name, things in mend.items()]
