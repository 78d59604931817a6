"""The functions defined as names in any workbook, so that its own cells can call them."""

from __future__ import annotations

import argparse
import zipfile
from collections.abc import Sequence
from pathlib import Path
from typing import NamedTuple
from xml.parsers.expat import ExpatError

from defusedxml import DefusedXmlException, ElementTree

from sheetfuncs.files import Refused, new_file
from sheetfuncs.workbook.commands.carry.one_part import with_part
from sheetfuncs.workbook.commands.carry.workbook_part import Entities, WorkbookPart
from sheetfuncs.workbook.read.package import Room, content_of, links, opened
from sheetfuncs.workbook.write.names import Definition, definitions

ROOM = Room(file=250_000_000, unpacked=2_000_000_000, part=250_000_000, called="a workbook")
KINDS = "an .xlsx or .xlsm file"
MOST_NAMES = 5000  # beyond that a workbook is as a rule full of names that point nowhere

_TYPES = "{http://schemas.openxmlformats.org/package/2006/content-types}"
# What the workbook part says it is, and how the name of such a file ends.
ENDINGS = {
    "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml": ".xlsx",
    "application/vnd.openxmlformats-officedocument.spreadsheetml.template.main+xml": ".xltx",
    "application/vnd.ms-excel.sheet.macroEnabled.main+xml": ".xlsm",
    "application/vnd.ms-excel.template.macroEnabled.main+xml": ".xltm",
    "application/vnd.ms-excel.addin.macroEnabled.main+xml": ".xlam",
}


class Workbook(NamedTuple):
    """A workbook of one's own, as far as `carry` must know it."""

    path: Path
    content: bytes
    archive: zipfile.ZipFile
    part: str  # the name of its workbook part
    ending: str


def carry(options: argparse.Namespace) -> int:
    """Write a workbook anew with the functions defined in it, and say so."""
    source, path = Path(options.file), Path(options.new)
    if path.exists() and source.exists() and path.samefile(source):
        raise Refused(f"{path}: this is the workbook itself, which is never written to; choose another name")
    workbook = read(source)
    if path.suffix.lower() != workbook.ending:
        raise Refused(
            f"{path}: {source.name} is an {workbook.ending} file; end the new name with {workbook.ending} too"
        )
    content, told = carried(workbook, options.replace_names)
    with new_file(path, options.replace) as beside:
        beside.write(content)
    print("\n".join([*told, f"written: {path}"]))
    return 0


def read(path: Path) -> Workbook:
    """A workbook that names can be defined in, every part of it whole; refused in one line otherwise."""
    content = content_of(path, ROOM)
    archive = opened(path, content, ROOM, KINDS)
    parts = set(archive.namelist())
    if "mimetype" in parts:
        raise Refused(f"{path}: an OpenDocument file, which cannot hold functions as names; save it as .xlsx first")
    if "xl/workbook.bin" in parts:
        raise Refused(f"{path}: a binary workbook; save it as .xlsx or .xlsm and try again")
    try:
        broken = archive.testzip()
        if broken:
            raise Refused(f"{path}: damaged, its part {broken} is not whole; take an earlier copy")
        if "[Content_Types].xml" not in parts:
            raise Refused(f"{path}: not a workbook; give {KINDS}")
        types = _types(archive)
        ours = [link for link in links(archive, "") if link.kind in ("officeDocument", "origin")]
        if any(link.kind == "origin" for link in ours):
            raise Refused(f"{path}: signed, and any change breaks a signature; remove it, carry, and sign again")
        part = next((link.target for link in ours if link.kind == "officeDocument"), "")
        kind = types.get(part, "")
    except Refused:
        raise
    except NotImplementedError:
        raise Refused(f"{path}: packed in an unusual way; open it in a spreadsheet program and save it anew") from None
    except DefusedXmlException:
        raise Refused(f"{path}: its XML defines entities, which no spreadsheet writes; it is not read") from None
    except Exception as error:  # a damaged file can fail anywhere in the libraries that read it, in any way
        raise Refused(f"{path}: damaged, it cannot be read ({_reason(error)}); take an earlier copy") from error
    if kind not in ENDINGS or part not in parts:
        raise Refused(f"{path}: not a workbook; give {KINDS}")
    return Workbook(path, content, archive, part, ENDINGS[kind])


def carried(workbook: Workbook, replace_names: bool = False) -> tuple[bytes, list[str]]:
    """The bytes of the workbook with every function defined, and what to tell of it."""
    path, archive = workbook.path, workbook.archive
    try:
        book = WorkbookPart(archive.read(workbook.part))
        if book.strict:
            raise Refused(f"{path}: in the strict form of Open XML; save it as an ordinary .xlsx and try again")
        if len(book.names) > MOST_NAMES:
            raise Refused(
                f"{path}: it defines {len(book.names):,} names, more than the {MOST_NAMES:,} that are read; "
                "delete those that nothing uses (Formulas, Name Manager)"
            )
        wanted, replaced = _wanted(path, book, replace_names)
        _no_table_of_the_name(path, archive, definitions())
        told = [_told(len(wanted), len(replaced))]
        if replaced:
            told.append(f"replaced: {', '.join(replaced)}; every cell is computed anew when the file is opened")
        if not wanted:
            return workbook.content, told
        text = book.with_names(wanted, recompute=bool(replaced))
        return with_part(workbook.content, archive, workbook.part, text), told
    except Entities as error:
        raise Refused(f"{path}: {error}; it is not read") from None
    except (ValueError, ExpatError, ElementTree.ParseError) as error:
        raise Refused(f"{path}: damaged, it cannot be read ({_reason(error)}); take an earlier copy") from error


def _wanted(path: Path, book: WorkbookPart, replace_names: bool) -> tuple[list[Definition], list[str]]:
    """The functions that are not defined there as they are here; and which of their names mean something else."""
    wanted, others = [], []
    for definition in definitions():
        known = book.defined(definition.name)
        if known and all(one.text.removeprefix("=") == definition.formula for one in known):
            if any("localSheetId" not in one.attributes for one in known):
                continue
        elif known:
            others.append(definition.name)
        wanted.append(definition)
    if others and not replace_names:
        some = f"{', '.join(others[:3])} and {len(others) - 3} more" if len(others) > 4 else ", ".join(others)
        raise Refused(
            f"{path}: it defines {some} already, and otherwise; rename what is yours (Formulas, Name Manager), "
            "or add --replace-names"
        )
    return wanted, others


def _no_table_of_the_name(path: Path, archive: zipfile.ZipFile, names: Sequence[Definition]) -> None:
    """A table and a name cannot be called the same."""
    ours = {one.name.casefold() for one in names}
    for part in archive.namelist():
        if part.startswith("xl/tables/") and part.endswith(".xml"):
            table = ElementTree.fromstring(archive.read(part))
            called = table.get("displayName") or table.get("name") or ""
            if called.casefold() in ours:
                raise Refused(f"{path}: a table in it is called {called}, as a function is; rename the table")


def _types(archive: zipfile.ZipFile) -> dict[str, str]:
    """What each part with an entry of its own is."""
    root = ElementTree.fromstring(archive.read("[Content_Types].xml"))
    named = {
        one.get("PartName", "").removeprefix("/"): one.get("ContentType", "") for one in root.iter(f"{_TYPES}Override")
    }
    default = {one.get("Extension", "").lower(): one.get("ContentType", "") for one in root.iter(f"{_TYPES}Default")}
    return {part: default.get(part.rpartition(".")[2].lower(), "") for part in archive.namelist()} | named


def _told(new: int, replaced: int) -> str:
    count = len(definitions())
    if not new:
        return f"all {count} functions are defined in it already; a copy of it is written"
    return f"functions defined: {new - replaced} new, {replaced} replaced, {count - new} there already"


def _reason(error: BaseException) -> str:
    return " ".join(f"{type(error).__name__}: {error}".split())[:80]
