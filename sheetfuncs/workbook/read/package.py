"""The zip that a workbook file is: opened with every limit checked, or refused in one line."""

from __future__ import annotations

import io
import posixpath
import re
import zipfile
from collections.abc import Iterator
from pathlib import Path
from typing import NamedTuple

from defusedxml import ElementTree

from sheetfuncs.files import Refused, to_read

MOST_PARTS = 10_000
OLD_OR_LOCKED = b"\xd0\xcf\x11\xe0"  # a compound file: an old .xls, or a workbook under a password

# Parts that are read piece by piece, or not at all.
_PASSED_OVER = re.compile(r"xl/worksheets/[^/]+\.xml$|content\.xml$|(xl/media|Pictures|Thumbnails)/")
_LINK = "{http://schemas.openxmlformats.org/package/2006/relationships}Relationship"


class Room(NamedTuple):
    """How large a workbook may be, in bytes, and what such a one is called."""

    file: int
    unpacked: int
    part: int  # of any part that is held whole in memory
    called: str


def content_of(path: Path, room: Room) -> bytes:
    """The bytes of a file, none of it changed."""
    with to_read(path, room.file, room.called) as file:
        return file.read(room.file)


def opened(path: Path, content: bytes, room: Room, kinds: str) -> zipfile.ZipFile:
    """The parts of the file, none of them too large; `kinds` says which files would do."""
    if not content:
        raise Refused(f"{path}: the file is empty; take an earlier copy")
    if content.startswith(OLD_OR_LOCKED):
        locked = "EncryptedPackage".encode("utf-16-le") in content
        what = "under a password; save it without one" if locked else "an old .xls; save it as .xlsx"
        raise Refused(f"{path}: {what} and try again")
    if not content.startswith(b"PK"):
        raise Refused(f"{path}: not a workbook; give {kinds}")
    if content.count(b"PK\x01\x02") > MOST_PARTS:
        raise Refused(f"{path}: it has over {MOST_PARTS:,} parts, no workbook has; it is not read")
    try:
        archive = zipfile.ZipFile(io.BytesIO(content))
        entries = archive.infolist()
    except Exception as error:  # zipfile itself stumbles over some damage
        raise Refused(f"{path}: damaged or cut short; take an earlier copy, or copy the file again") from error
    if any(entry.flag_bits & 1 for entry in entries) or "encrypted-package" in archive.NameToInfo:
        raise Refused(f"{path}: under a password; save it without one and try again")
    wholes = [entry.file_size for entry in entries if not _PASSED_OVER.match(entry.filename)]
    if sum(entry.file_size for entry in entries) > room.unpacked or max(wholes, default=0) > room.part:
        raise Refused(f"{path}: unpacks to far more than {room.called} holds; it is not read")
    return archive


class Link(NamedTuple):
    """What a part of the file points to."""

    name: str
    kind: str
    target: str


def links(archive: zipfile.ZipFile, part: str) -> Iterator[Link]:
    """Where a part points; those of the whole file for the part ""."""
    folder, _, name = part.rpartition("/")
    where = posixpath.join(folder, "_rels", f"{name}.rels")
    if where not in archive.namelist():
        return
    for link in ElementTree.fromstring(archive.read(where)).iter(_LINK):
        target = link.get("Target", "")
        absolute = target.removeprefix("/") if target.startswith("/") else posixpath.join(folder, target)
        yield Link(link.get("Id", ""), link.get("Type", "").rpartition("/")[2], posixpath.normpath(absolute))
