"""A workbook file read into plain records.  Nothing here writes.

The file is read once, into memory; what is not a workbook, too large once unpacked, or damaged is
refused in one line.
"""

from __future__ import annotations

from pathlib import Path

from sheetfuncs.files import Refused
from sheetfuncs.workbook.read import ods, xlsx
from sheetfuncs.workbook.read.contents import Contents
from sheetfuncs.workbook.read.package import Room, content_of, opened

# A season of 1,000 collections with its formulas written out has 54 million bytes, unpacked.
ROOM = Room(file=64_000_000, unpacked=250_000_000, part=250_000_000, called="a season workbook")
KINDS = "an .xlsx, .xlsm or .ods file"
SPREADSHEET = b"application/vnd.oasis.opendocument.spreadsheet"


def read(path: Path) -> Contents:
    """Everything a workbook holds that matters to us; refused in one line where it cannot be read."""
    archive = opened(path, content_of(path, ROOM), ROOM, KINDS)
    parts = set(archive.namelist())
    try:
        if "mimetype" in parts and archive.open("mimetype").read(100).strip() == SPREADSHEET:
            return ods.read(archive, str(path))
        if "xl/workbook.bin" in parts:
            raise Refused(f"{path}: a binary workbook; save it as .xlsx and try again")
        if "[Content_Types].xml" not in parts or not any(name.startswith("xl/") for name in parts):
            raise Refused(f"{path}: not a workbook; give an .xlsx, .xlsm or .ods file")
        return xlsx.read(archive, str(path))
    except Refused:
        raise
    except MemoryError:
        raise Refused(f"{path}: too large to read on this machine") from None
    except Exception as error:  # a damaged file can fail anywhere in the libraries that read it, in any way
        reason = " ".join(f"{type(error).__name__}: {error}".split())[:80]
        raise Refused(f"{path}: damaged, it cannot be read ({reason}); take an earlier copy") from error
