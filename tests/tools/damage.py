"""Workbooks damaged in their cells, their XML and their bytes; 2,000 of them in a run by hand.

    python -m tests.tools.damage [HOW MANY]

Each must be checked, or refused in one line; the printed times are those of the slowest.
"""

from __future__ import annotations

import io
import random
import re
import sys
import tempfile
import time
import zipfile
from collections import Counter
from pathlib import Path

from sheetfuncs.files import Refused
from sheetfuncs.workbook.commands.check.check import check_file
from tests.tools.edits import example

CELL = re.compile(rb'<c r="[A-Z]+\d+"[^>]*?(?:/>|>.*?</c>)')
VALUES = (
    b"<v>-1</v>", b"<v>1e308</v>", b"<v>1e999</v>", b"<v>nan</v>", b"<v>99999999</v>", b"<v>-0.5</v>", b"<v></v>",
    b"", b"<f>1/0</f><v>0</v>", b"<f>NOW()</f>", b"<f>#REF!+1</f><v>3</v>", b'<f t="shared" si="7"/><v>2</v>',
    b"<v>9 gal</v>", b"<is><t>9 1/2 gal</t></is>", b"<is><t>=1+1</t></is>", b"<is><t>  </t></is>",
    "<is><t>é€🍁</t></is>".encode(),
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


def damaged(content: bytes, dice: random.Random) -> bytes:
    """The workbook with some damage, drawn anew each time."""
    return dice.choice((_cells, _cells, _cells, _words, _chunks, _parts, _bytes, _cut))(content, dice)


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
            address = found[0].split(b'"')[1]
            return b'<c r="' + address + b'"' + dice.choice(TYPES) + b">" + dice.choice(VALUES) + b"</c>"

        return CELL.sub(other, text)

    return _edited(content, dice, edit, r"worksheets/sheet\d+\.xml$")


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


def main() -> None:
    many = int(sys.argv[1]) if len(sys.argv) > 1 else 2000
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        content, counted, slowest = workbook(folder), Counter[str](), 0.0
        for number in range(many):
            path = folder / "damaged.xlsx"
            path.write_bytes(damaged(content, random.Random(number)))  # noqa: S311 (a die)
            start = time.perf_counter()
            try:
                counted["checked, with remarks" if check_file(path) else "checked, clean"] += 1
            except Refused as refused:
                assert "\n" not in str(refused)
                counted["refused"] += 1
            except BaseException:
                print(f"number {number}")
                raise
            slowest = max(slowest, time.perf_counter() - start)
        print(", ".join(f"{count} {words}" for words, count in counted.items()), f"slowest {slowest:.1f} s", sep="; ")


if __name__ == "__main__":
    main()
