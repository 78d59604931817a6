"""Workbooks made to take all time or memory from a small file, and what each costs `check`.

    python -m tests.tools.hostile

prints a line for each; the limits are those of the README.
"""

from __future__ import annotations

import io
import subprocess
import sys
import tempfile
import zipfile
from collections.abc import Callable, Mapping
from pathlib import Path
from typing import NamedTuple

from tests.tools.edits import example, part_of, with_xml

SECONDS, MEGABYTES = 20, 600

Edit = Callable[[bytes], bytes]
ODS = b"""<?xml version="1.0"?><office:document-content xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0"
 xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0"
 xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0"><table:table table:name="Collection">%b</table:table>
</office:document-content>"""
LOG = part_of(example(), "Collection")
# A small program starts the command: a process begins with the memory of the one that starts it.
MEASURED = """
import os, subprocess, sys
process = subprocess.Popen(sys.argv[1:], stdout=subprocess.DEVNULL)
_, status, used = os.wait4(process.pid, 0)
process.returncode = os.waitstatus_to_exitcode(status)
print(process.returncode, used.ru_utime + used.ru_stime, used.ru_maxrss)
"""


class Cost(NamedTuple):
    """How a command ended, its one line, and what it took."""

    code: int
    line: str
    seconds: float
    megabytes: float


def rows(count: int, row: Callable[[int], bytes]) -> Edit:
    """More rows below a sheet's own."""

    def edit(text: bytes) -> bytes:
        more = b"".join(row(number) for number in range(1000, 1000 + count))
        return text.replace(b"</sheetData>", more + b"</sheetData>")

    return edit


def strings(more: Callable[[], bytes]) -> Edit:
    """More texts for cells to share; made when they are wanted, since some are large."""
    return lambda text: text.replace(b"</sst>", more() + b"</sst>")


def number_format(letters: bytes) -> Edit:
    """Every format of numbers that the workbook brings, as long."""

    def edit(text: bytes) -> bytes:
        head, mark, tail = text.partition(b'formatCode="')
        return head + mark + letters + tail[tail.index(b'"') :]

    return edit


def shared(text: bytes) -> bytes:
    """300,000 cells that share a long formula."""
    long = b"+".join(b"A%d" % number for number in range(1, 1500))
    first = b'<row r="1000"><c r="A1000"><f t="shared" ref="A1000:A301000" si="9">%b</f></c></row>' % long
    others = (b'<row r="%d"><c r="A%d"><f t="shared" si="9"/></c></row>' % (at, at) for at in range(1001, 301000))
    return text.replace(b"</sheetData>", first + b"".join(others) + b"</sheetData>")


def last_string(text: bytes) -> bytes:
    return b"%d" % (text.count(b"<si>") + text.count(b"<si/>"))


def megabyte_shown_often(whole: Path, path: Path) -> Path:
    with zipfile.ZipFile(whole) as archive:
        number = last_string(archive.read("xl/sharedStrings.xml"))
    cell = b'<row r="%d"><c r="A%d" t="s"><v>' + number + b"</v></c></row>"
    edits = {LOG: rows(100_000, lambda at: cell % (at, at))}
    return with_xml(
        whole, path, {**edits, "xl/sharedStrings.xml": strings(lambda: b"<si><t>%b</t></si>" % (b"a" * 1_000_000))}
    )


def ods(content: Callable[[], bytes]) -> Callable[[Path, Path], Path]:
    """A spreadsheet with this in its one sheet."""

    def make(whole: Path, path: Path) -> Path:
        out = io.BytesIO()
        with zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED, compresslevel=1) as archive:
            archive.writestr("mimetype", "application/vnd.oasis.opendocument.spreadsheet")
            archive.writestr("content.xml", ODS % content())
        path = path.with_suffix(".ods")
        path.write_bytes(out.getvalue())
        return path

    return make


def xlsx(edits: Mapping[str, Edit]) -> Callable[[Path, Path], Path]:
    """The season with parts edited."""
    return lambda whole, path: with_xml(whole, path, edits)


def many_parts(whole: Path, path: Path) -> Path:
    with_xml(whole, path, {})
    with zipfile.ZipFile(path, "a") as archive:
        for number in range(20_000):
            archive.writestr(f"xl/media/{number}", b"")
    return path


def words(inside: bytes) -> bytes:
    """A row with one cell that says this."""
    cell = b'<table:table-cell office:value-type="string"><text:p>%b</text:p></table:table-cell>' % inside
    return b"<table:table-row>%b</table:table-row>" % cell


FILES: dict[str, Callable[[Path, Path], Path]] = {
    "a row numbered 999,999,999": xlsx(
        {LOG: lambda text: text.replace(b"</sheetData>", b'<row r="999999999"><c><v>1</v></c></row></sheetData>')}
    ),
    "a number format of 200,000 letters": xlsx({"xl/styles.xml": number_format(b"[h" * 100_000)}),
    "one cell at the far right of 390,000 rows": xlsx(
        {LOG: rows(390_000, lambda at: b'<row r="%d"><c r="XFD%d"><v>1</v></c></row>' % (at, at))}
    ),
    "a megabyte of text in 100,000 cells": megabyte_shown_often,
    "7 million empty shared texts": xlsx({"xl/sharedStrings.xml": strings(lambda: b"<si/>" * 7_000_000)}),
    "2 million rich runs": xlsx(
        {"xl/sharedStrings.xml": strings(lambda: b"<si>" + b"<r><t>a</t></r>" * 2_000_000 + b"</si>")}
    ),
    "40 million empty rows": xlsx({LOG: lambda text: text.replace(b"</sheetData>", b"<row/>" * 40_000_000)}),
    "300,000 cells share a long formula": xlsx({LOG: shared}),
    "an attribute of 50 million letters": xlsx(
        {LOG: lambda text: text.replace(b"<sheetData", b'<row r="%b"/><sheetData' % (b"1" * 50_000_000), 1)}
    ),
    "a comment of 50 million letters": xlsx(
        {LOG: lambda text: text.replace(b"<sheetData", b"<!--%b--><sheetData" % (b"a" * 50_000_000), 1)}
    ),
    "a text of 50 million letters": xlsx(
        {"xl/sharedStrings.xml": strings(lambda: b"<si><t>%b</t></si>" % (b"a" * 50_000_000))}
    ),
    "elements 100,000 deep": xlsx(
        {LOG: lambda text: text.replace(b"<sheetData", b"<a>" * 100_000 + b"</a>" * 100_000 + b"<sheetData", 1)}
    ),
    "20,000 parts": many_parts,
    ".ods, a million times a thousand spaces": ods(lambda: words(b'<text:s text:c="1000"/>' * 1_000_000)),
    ".ods, 20 million empty elements": ods(lambda: words(b"<text:s/>" * 20_000_000)),
    ".ods, 300,000 cells of 32,000 letters": ods(
        lambda: (
            words(b"a" * 32_000).replace(b"<table:table-cell", b'<table:table-cell table:number-columns-repeated="300"')
            * 1000
        )
    ),
    ".ods, a row without end": ods(
        lambda: (
            b'<table:table-row table:number-rows-repeated="1048576"><table:table-cell office:value-type="float" '
            b'office:value="1" table:number-columns-repeated="16384"/></table:table-row>'
        )
    ),
}


def cost(*arguments: str) -> Cost:
    """One command as a user starts it."""
    program = [sys.executable, "-c", MEASURED, sys.executable, "-m", "sheetfuncs.cli", *arguments]
    run = subprocess.run(program, capture_output=True, text=True, check=True)
    code, seconds, kilobytes = run.stdout.split()
    return Cost(int(code), run.stderr, float(seconds), int(kilobytes) / 1024)


def main() -> int:
    failed = 0
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        whole = folder / "whole.xlsx"
        example().write(whole, "carried")
        for title, make in FILES.items():
            path = make(whole, folder / "hostile.xlsx")
            found = cost("check", str(path))
            bad = found.seconds > SECONDS or found.megabytes > MEGABYTES or found.code not in (0, 1, 2)
            failed += bad
            line = found.line.strip().replace(str(path), path.name) or "checked"
            print(
                f"{title}: {path.stat().st_size / 1e6:.1f} MB, {found.seconds:.1f} s, {found.megabytes:.0f} MB; {line}"
            )
            path.unlink()
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main())
