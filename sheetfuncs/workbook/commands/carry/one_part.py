"""A zip with one part changed and every other byte of its parts as it was.

Python's zipfile packs anew whatever it writes, so the bytes are copied here by hand.  Offsets and
fields as in PKWARE's APPNOTE.TXT 6.3.10, sections 4.3.7 (local header), 4.3.12 (directory) and
4.3.16 (end of directory).
"""

from __future__ import annotations

import struct
import zipfile
import zlib
from collections.abc import Iterator
from typing import NamedTuple

LOCAL = struct.Struct("<4s5H3I2H")
ENTRY = struct.Struct("<4s6H3I5H2I")
END = struct.Struct("<4s4H2IH")
NAME_IN_UTF_8 = 0x0800  # a bit of a header's flags
MOST_ENTRIES, MOST_OFFSET = 0xFFFF, 0xFFFFFFFF  # what a plain end of directory can say
ZIP64 = 0x0001


class Entry(NamedTuple):
    """One part: where its local header begins, where that of the next one does, and its line in the directory."""

    info: zipfile.ZipInfo
    start: int
    end: int
    line: bytes


def with_part(content: bytes, archive: zipfile.ZipFile, name: str, text: bytes) -> bytes:
    """The bytes of a zip with another text in one of its parts; ValueError where the zip is not as it should be."""
    entries = list(_entries(content, archive))
    old = next(entry for entry in entries if entry.info.filename == name)
    local, line = _packed(old, text)
    grown = len(local) - (old.end - old.start)
    lines = [line if entry is old else _moved(entry, grown if entry.start > old.start else 0) for entry in entries]
    directory = b"".join(lines)
    begins = archive.start_dir + grown
    if len(entries) >= MOST_ENTRIES or begins + len(directory) >= MOST_OFFSET:
        raise ValueError("too many parts for a workbook")
    end = END.pack(b"PK\5\6", 0, 0, len(entries), len(entries), len(directory), begins, len(archive.comment))
    return b"".join(
        (content[: old.start], local, content[old.end : archive.start_dir], directory, end, archive.comment)
    )


def _entries(content: bytes, archive: zipfile.ZipFile) -> Iterator[Entry]:
    """The parts in the order of the directory; each must end before the next one begins."""
    infos = archive.infolist()
    if len({info.filename for info in infos}) < len(infos):
        raise ValueError("it holds a part twice")
    starts = sorted(info.header_offset for info in infos)
    ends = dict(zip(starts, [*starts[1:], archive.start_dir]))
    position = archive.start_dir
    for info in infos:
        fields = ENTRY.unpack_from(content, position)
        length = ENTRY.size + sum(fields[10:13])
        start, end = info.header_offset, ends[info.header_offset]
        header = LOCAL.unpack_from(content, start)
        if (fields[0], header[0]) != (b"PK\1\2", b"PK\3\4"):
            raise ValueError("its directory is broken")
        if start + LOCAL.size + header[9] + header[10] + info.compress_size > end:
            raise ValueError("its parts overlap")
        yield Entry(info, start, end, content[position : position + length])
        position += length


def _packed(entry: Entry, text: bytes) -> tuple[bytes, bytes]:
    """A local header with its part, and the line of the directory, for another text."""
    fields = list(ENTRY.unpack_from(entry.line))
    name = entry.line[ENTRY.size : ENTRY.size + fields[10]]
    method, packed = fields[4], text
    if method != zipfile.ZIP_STORED:
        method, packer = zipfile.ZIP_DEFLATED, zlib.compressobj(6, zlib.DEFLATED, -15)
        packed = packer.compress(text) + packer.flush()
    flags = fields[3] & NAME_IN_UTF_8
    shared = [max(fields[2], 20), flags, method, *fields[5:7], zlib.crc32(text), len(packed), len(text), len(name), 0]
    local = LOCAL.pack(b"PK\3\4", *shared) + name + packed
    return local, ENTRY.pack(b"PK\1\2", fields[1], *shared, 0, *fields[13:15], *fields[15:16], entry.start) + name


def _moved(entry: Entry, by: int) -> bytes:
    """The line of the directory for a part that moved so many bytes."""
    fields = ENTRY.unpack_from(entry.line)
    if fields[-1] != MOST_OFFSET:
        return entry.line[: ENTRY.size - 4] + struct.pack("<I", entry.start + by) + entry.line[ENTRY.size :]
    # the offset stands in the extra field for large files, behind the sizes that stand there too
    position = ENTRY.size + fields[10]
    last = position + fields[11]
    while position + 4 <= last:
        kind, length = struct.unpack_from("<2H", entry.line, position)
        if kind == ZIP64:
            place = position + 4 + 8 * (fields[8:10].count(MOST_OFFSET))
            return entry.line[:place] + struct.pack("<Q", entry.start + by) + entry.line[place + 8 :]
        position += 4 + length
    raise ValueError("its directory is broken")
