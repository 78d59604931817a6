"""A workbook file read into plain records: the only module that knows openpyxl.  Nothing here writes.

The file is read once, into memory; what is not a workbook, too large once unpacked, or damaged is
refused in one line.
"""

from __future__ import annotations

import datetime
import io
import posixpath
import re
import warnings
import zipfile
from collections.abc import Iterator
from pathlib import Path
from typing import Any, NamedTuple

import openpyxl
from defusedxml import DefusedXmlException, ElementTree

from sheetfuncs.files import Refused
from sheetfuncs.workbook.read import ods
from sheetfuncs.workbook.read.contents import At, Cell, Contents, Counted

MOST_BYTES = 60_000_000  # of the file itself
MOST_UNPACKED = 250_000_000  # a season of 5,000 collections with its formulas written out has 110 million
MOST_IN_A_PART = 40_000_000  # of any part that is held whole in memory
SPREADSHEET = b"application/vnd.oasis.opendocument.spreadsheet"
OLD_OR_LOCKED = b"\xd0\xcf\x11\xe0"  # a compound file: an old .xls, or a workbook under a password

# Parts that are read piece by piece, or not at all.
_PASSED_OVER = re.compile(r"xl/worksheets/[^/]+\.xml$|content\.xml$|(xl/media|Pictures|Thumbnails)/")
_MAIN = "{http://schemas.openxmlformats.org/spreadsheetml/2006/main}"
_LINK = "{http://schemas.openxmlformats.org/package/2006/relationships}Relationship"
_ID = "{http://schemas.openxmlformats.org/officeDocument/2006/relationships}id"


def read(path: Path) -> Contents:
    """Everything a workbook holds that matters to us; refused in one line where it cannot be read."""
    content = _bytes(path)
    archive = _archive(path, content)
    parts = set(archive.namelist())
    try:
        if "mimetype" in parts and archive.read("mimetype").strip() == SPREADSHEET:
            return ods.read(archive, str(path))
        if "xl/workbook.bin" in parts:
            raise Refused(f"{path}: a binary workbook; save it as .xlsx and try again")
        if "[Content_Types].xml" not in parts or not any(name.startswith("xl/") for name in parts):
            raise Refused(f"{path}: not a workbook; give an .xlsx, .xlsm or .ods file")
        return _xlsx(path, content, archive)
    except Refused:
        raise
    except MemoryError:
        raise Refused(f"{path}: too large to read on this machine") from None
    except Exception as error:  # a damaged file can fail anywhere in the libraries that read it, in any way
        first = _first(error)
        if isinstance(first, DefusedXmlException):
            raise Refused(f"{path}: its XML defines entities, which no spreadsheet writes; it is not read") from None
        reason = " ".join(f"{type(first).__name__}: {first}".split())[:80]
        raise Refused(f"{path}: damaged, it cannot be read ({reason}); take an earlier copy") from error


def _first(error: BaseException) -> BaseException:
    """What went wrong first, below all that was made of it."""
    while error.__cause__ or error.__context__:
        error = error.__cause__ or error.__context__ or error
    return error


def _bytes(path: Path) -> bytes:
    try:
        if path.is_dir():
            raise Refused(f"{path}: this is a folder; give a workbook in it")
        if path.stat().st_size > MOST_BYTES:
            raise Refused(f"{path}: over {MOST_BYTES // 1_000_000} MB, too large for a season workbook")
        return path.read_bytes()
    except FileNotFoundError:
        raise Refused(f"{path}: there is no such file") from None
    except (OSError, ValueError) as error:
        raise Refused(f"{path}: cannot be read ({getattr(error, 'strerror', None) or error})") from error


def _archive(path: Path, content: bytes) -> zipfile.ZipFile:
    """The parts of the file, none of them too large."""
    if not content:
        raise Refused(f"{path}: the file is empty; take an earlier copy")
    if content.startswith(OLD_OR_LOCKED):
        locked = "EncryptedPackage".encode("utf-16-le") in content
        what = "under a password; save it without one" if locked else "an old .xls; save it as .xlsx"
        raise Refused(f"{path}: {what} and try again")
    if not content.startswith(b"PK"):
        raise Refused(f"{path}: not a workbook; give an .xlsx, .xlsm or .ods file")
    try:
        archive = zipfile.ZipFile(io.BytesIO(content))
        entries = archive.infolist()
    except Exception as error:  # zipfile itself stumbles over some damage
        raise Refused(f"{path}: damaged or cut short; take an earlier copy, or copy the file again") from error
    if any(entry.flag_bits & 1 for entry in entries) or "encrypted-package" in archive.NameToInfo:
        raise Refused(f"{path}: under a password; save it without one and try again")
    wholes = [entry.file_size for entry in entries if not _PASSED_OVER.match(entry.filename)]
    if sum(entry.file_size for entry in entries) > MOST_UNPACKED or max(wholes, default=0) > MOST_IN_A_PART:
        raise Refused(f"{path}: unpacks to far more than a season workbook holds; it is not read")
    return archive


def _xlsx(path: Path, content: bytes, archive: zipfile.ZipFile) -> Contents:
    sheets: dict[str, dict[At, Cell]] = {}
    counted = Counted(str(path))
    with warnings.catch_warnings():  # about parts that we do not read
        warnings.simplefilter("ignore")
        book = openpyxl.load_workbook(io.BytesIO(content), read_only=True, keep_links=False)
        for title, spot, cell in _cells(book):
            counted.one()
            found = Cell(None, _formula(cell.value)) if cell.data_type == "f" else Cell(_by_calendar(cell.value))
            sheets.setdefault(title, {})[spot] = found
        stored = openpyxl.load_workbook(io.BytesIO(content), read_only=True, keep_links=False, data_only=True)
        for title, spot, cell in _cells(stored):
            if (known := sheets.get(title, {}).get(spot)) and known.formula:
                sheets[title][spot] = known._replace(value=_by_calendar(cell.value))
    return Contents(
        str(path),
        {sheet.title: sheets.get(sheet.title, {}) for sheet in book.worksheets},
        {one.name: str(one.value) for one in book.custom_doc_props.props if one.name},
        {name: str(one.attr_text or "") for name, one in book.defined_names.items()},
        dict(_notes(archive)),
        tuple(_besides(archive)),
    )


def _cells(book: Any) -> Iterator[tuple[str, At, Any]]:
    """Every filled cell of a workbook opened for reading only."""
    for sheet in book.worksheets:
        sheet.reset_dimensions()  # what a file says of its own size may be wrong
        for row in sheet.iter_rows():
            for cell in row:
                if cell.value is not None:
                    yield sheet.title, (cell.row - 1, cell.column - 1), cell


def _formula(value: Any) -> str:
    """The text of a formula without its equals sign; of several cells, it is a record with a text."""
    text = getattr(value, "text", value)
    return text.removeprefix("=") or "=" if isinstance(text, str) else "TABLE()"


def _by_calendar(value: Any) -> Any:
    """Excel knows a 29 February 1900, and openpyxl with it: its first sixty days are a day late."""
    first, last = datetime.datetime(1900, 1, 1), datetime.datetime(1900, 3, 1)
    if isinstance(value, datetime.datetime) and first <= value < last:
        return value - datetime.timedelta(days=1)
    return value


def _notes(archive: zipfile.ZipFile) -> Iterator[tuple[tuple[str, At], str]]:
    """Notes on cells, which openpyxl passes over in a workbook opened for reading only."""
    parts = set(archive.namelist())
    if not any("comments" in name for name in parts):
        return
    sheets = {link.name: link.target for link in _links(archive, "xl/workbook.xml")}
    for sheet in ElementTree.fromstring(archive.read("xl/workbook.xml")).iter(f"{_MAIN}sheet"):
        for link in _links(archive, sheets.get(sheet.get(_ID, ""), "")):
            if link.kind == "comments" and link.target in parts:
                for note in ElementTree.fromstring(archive.read(link.target)).iter(f"{_MAIN}comment"):
                    row, column = openpyxl.utils.cell.coordinate_to_tuple(note.get("ref", "A1"))
                    text = "".join(piece.text or "" for piece in note.iter(f"{_MAIN}t"))
                    yield (sheet.get("name", ""), (row - 1, column - 1)), text


class Link(NamedTuple):
    """What a part of the file points to."""

    name: str
    kind: str
    target: str


def _links(archive: zipfile.ZipFile, part: str) -> Iterator[Link]:
    folder, _, name = part.rpartition("/")
    where = f"{folder}/_rels/{name}.rels"
    if where not in archive.namelist():
        return
    for link in ElementTree.fromstring(archive.read(where)).iter(_LINK):
        target = link.get("Target", "")
        absolute = target.removeprefix("/") if target.startswith("/") else f"{folder}/{target}"
        yield Link(link.get("Id", ""), link.get("Type", "").rpartition("/")[2], posixpath.normpath(absolute))


def _besides(archive: zipfile.ZipFile) -> Iterator[str]:
    names = archive.namelist()
    pictures = sum(name.startswith("xl/media/") for name in names)
    if pictures:
        yield f"{pictures} picture{'s' if pictures > 1 else ''}"
    if "xl/vbaProject.bin" in names:
        yield "macros"
