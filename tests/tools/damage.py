"""Workbooks damaged in their cells, their attributes, their XML and their bytes."""

from __future__ import annotations

import datetime
import io
import random
import re
import zipfile
from pathlib import Path
from xml.sax.saxutils import escape, quoteattr

from sheetfuncs.workbook.model.days import serial
from sheetfuncs.workbook.read import file, ods
from sheetfuncs.workbook.read.contents import Cell
from tests.tools.edits import example

CELL = re.compile(rb'<c r="[A-Z]+\d+"[^>]*?(?:/>|>.*?</c>)|<table:table-cell [^>]*?(?:/>|>.*?</table:table-cell>)')
ODS_CELLS = (
    b"<table:table-cell/>",
    b'<table:table-cell office:value-type="date" office:date-value="20266-03-01"/>',
    b'<table:table-cell office:value-type="time" office:time-value="PT99999999H"/>',
    b'<table:table-cell office:value-type="float" office:value="1e308"/>',
    b'<table:table-cell office:value-type="float"/>',
    b'<table:table-cell table:formula="of:=1/0" office:value-type="string" calcext:value-type="error"/>',
    b'<table:table-cell table:number-columns-repeated="9999" office:value-type="boolean" office:boolean-value="9"/>',
    b'<table:table-cell office:value-type="string"><text:p>9 <text:s text:c="x"/><text:a>gal</text:a></text:p>'
    b"<office:annotation><text:p>a note</text:p></office:annotation></table:table-cell>",
)
VALUES = (
    b"<v>-1</v>", b"<v>1e308</v>", b"<v>1e999</v>", b"<v>nan</v>", b"<v>99999999</v>", b"<v>-0.5</v>", b"<v></v>",
    b"", b"<f>1/0</f><v>0</v>", b"<f>NOW()</f>", b"<f>#REF!+1</f><v>3</v>", b'<f t="shared" si="7"/><v>2</v>',
    b"<v>9 gal</v>", b"<is><t>9 1/2 gal</t></is>", b"<is><t>_xD800_ _xFFFE_ _x0000_ _x000B_</t></is>",
    b"<is><t>=1+1</t></is>", b"<is><t>  </t></is>",
    "<is><t>é€🍁</t></is>".encode(),
)  # fmt: skip
ATTRIBUTE = re.compile(rb'[\w:]="([^"<]*)"')
ODD = (
    b"", b"-1", b"0", b"99999999999", b"1e400", b"nan", b"a", b"\xc3\xa9", b"20266-03-01", b"../../x", b"&#9;",
    b"A" * 300,
)  # fmt: skip
TYPES = (b"", b' t="s"', b' t="str"', b' t="inlineStr"', b' t="b"', b' t="e"', b' t="d"', b' t="n"', b' t="zz"')
WORDS = (
    b"Collection",
    b"Storage",
    b"Batch 1",
    b"Date",
    b"Look",
    b"US",
    b"metric",
    b"sheetfuncs",
    b"SAP_SUGAR",
    b"0",
    b"1",
    b"<",
    b'"',
)


def workbook(folder: Path) -> bytes:
    """A small season of the example."""
    path = folder / "whole.xlsx"
    example().write(path, "carried")
    return path.read_bytes()


def as_ods(path: Path) -> bytes:
    """A workbook's cells as the simplest OpenDocument spreadsheet that holds them."""
    contents, out = file.read(path), io.BytesIO()
    tables = []
    for title, cells in contents.sheets.items():
        rows = []
        for row in range(max((at[0] for at in cells), default=-1) + 1):
            line = [cells.get((row, column), Cell(None)) for column in range(40)]
            rows.append(f"<table:table-row>{''.join(map(_ods_cell, line))}</table:table-row>")
        tables.append(f"<table:table table:name={quoteattr(title)}>{''.join(rows)}</table:table>")
    spaces = " ".join(f'xmlns:{prefix[:-1]}="{uri}"' for uri, prefix in ods.PREFIXES.items())
    with zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED, compresslevel=1) as archive:
        archive.writestr("mimetype", file.SPREADSHEET)
        content = f"<?xml version='1.0'?><office:document-content {spaces}>{''.join(tables)}</office:document-content>"
        archive.writestr("content.xml", content)
    return out.getvalue()


def _ods_cell(cell: Cell) -> str:
    value, formula = cell.value, f" table:formula={quoteattr('of:=' + cell.formula)}" if cell.formula else ""
    if value is None:
        return f"<table:table-cell{formula}/>"
    if isinstance(value, datetime.datetime):
        return f'<table:table-cell{formula} office:value-type="date" office:date-value="{value.isoformat()}"/>'
    if isinstance(value, str):
        words = f"<text:p>{escape(value)}</text:p>"
        return f'<table:table-cell{formula} office:value-type="string">{words}</table:table-cell>'
    return f'<table:table-cell{formula} office:value-type="float" office:value="{serial(value)}"/>'


def damaged(content: bytes, dice: random.Random) -> bytes:
    """The workbook with some damage, drawn anew each time."""
    often = (_cells, _cells, _cells, _attributes, _attributes)
    return dice.choice((*often, _words, _chunks, _parts, _bytes, _cut))(content, dice)


def _edited(content: bytes, dice: random.Random, edit, pattern: str) -> bytes:
    out = io.BytesIO()
    with (
        zipfile.ZipFile(io.BytesIO(content)) as old,
        zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED, compresslevel=1) as new,
    ):
        chosen = dice.choice([name for name in old.namelist() if re.search(pattern, name)])
        for name in old.namelist():
            new.writestr(name, edit(old.read(name)) if name == chosen else old.read(name))
    return out.getvalue()


def _cells(content: bytes, dice: random.Random) -> bytes:
    def edit(text: bytes) -> bytes:
        share = dice.choice((0.002, 0.02, 0.2, 1.0))

        def other(found: re.Match[bytes]) -> bytes:
            if dice.random() > share:
                return found[0]
            if found[0].startswith(b"<table:"):
                return dice.choice(ODS_CELLS)
            address = found[0].split(b'"')[1]
            return b'<c r="' + address + b'"' + dice.choice(TYPES) + b">" + dice.choice(VALUES) + b"</c>"

        return CELL.sub(other, text)

    return _edited(content, dice, edit, r"worksheets/sheet\d+\.xml$|content\.xml$")


def _attributes(content: bytes, dice: random.Random) -> bytes:
    """One to a hundred attributes with another value."""

    def edit(text: bytes) -> bytes:
        found = list(ATTRIBUTE.finditer(text))
        some = dice.sample(found, min(len(found), dice.choice((1, 1, 5, 100))))
        for one in sorted(some, key=lambda it: -it.start()):
            text = text[: one.start(1)] + dice.choice(ODD) + text[one.end(1) :]
        return text

    return _edited(content, dice, edit, r"\.xml$|\.rels$")


def _words(content: bytes, dice: random.Random) -> bytes:
    def edit(text: bytes) -> bytes:
        return text.replace(dice.choice(WORDS), dice.choice(WORDS), dice.choice((1, 3, -1)))

    return _edited(content, dice, edit, r"\.xml$|\.rels$")


def _chunks(content: bytes, dice: random.Random) -> bytes:
    """A piece of a part left out, doubled, or moved: mostly between tags, so that it stays XML now and then."""

    def edit(text: bytes) -> bytes:
        marks = [found.start() for found in re.finditer(rb"<", text)] or [0]
        first, second = sorted((dice.choice(marks), dice.choice(marks)))
        piece = text[first:second]
        return dice.choice((text[:first] + text[second:], text[:second] + piece + text[second:], piece + text))

    return _edited(content, dice, edit, r"\.xml$|\.rels$")


def _parts(content: bytes, dice: random.Random) -> bytes:
    """A part left out, emptied, or given another's content."""
    out = io.BytesIO()
    with (
        zipfile.ZipFile(io.BytesIO(content)) as old,
        zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED, compresslevel=1) as new,
    ):
        names = old.namelist()
        chosen, how = dice.choice(names), dice.randrange(3)
        for name in names:
            if name != chosen:
                new.writestr(name, old.read(name))
            elif how:
                new.writestr(name, b"" if how == 1 else old.read(dice.choice(names)))
    return out.getvalue()


def _bytes(content: bytes, dice: random.Random) -> bytes:
    found = bytearray(content)
    for _ in range(dice.choice((1, 10, 1000))):
        found[dice.randrange(len(found))] = dice.randrange(256)
    return bytes(found)


def _cut(content: bytes, dice: random.Random) -> bytes:
    first, second = sorted((dice.randrange(len(content)), dice.randrange(len(content))))
    return dice.choice((content[:first], content[second:], content[:first] + content[second:]))
