"""The folders of the script hosts: the functions as program text, and a page of steps."""

from __future__ import annotations

import re
from pathlib import Path

from sheetfuncs.files import Refused
from sheetfuncs.folders import STEPS, steps, write_files
from sheetfuncs.hosts.excel import CATEGORY
from sheetfuncs.hosts.script import office
from sheetfuncs.hosts.script.sheets import script_text
from sheetfuncs.hosts.script.vba import module_text

MODULE, SCRIPT = "sheetfuncs.bas", "sheetfuncs.gs"
OWN_MACHINE = "https://localhost:3000"  # until the user says where the files are served from
ADDRESS = re.compile(r"https://[\w.-]+(:\d+)?(/[\w.~/-]*)?", re.ASCII)


def write_plain(folder: Path, replace: bool = False) -> list[str]:
    """The VBA module for Excel; tells what was done, a line a file."""
    page = steps(__package__, "plain.html", module=MODULE, category=CATEGORY)
    told = write_files(folder, {MODULE: module_text().encode("ascii"), STEPS: page}, replace)
    return [*told, f"next: open {folder / STEPS} on the machine with Excel, and go step by step"]


def write_scripts(folder: Path, site: str | None = None, replace: bool = False) -> list[str]:
    """The script for Google Sheets, and Office's custom functions to be served from an address."""
    address = OWN_MACHINE if site is None else site
    if not ADDRESS.fullmatch(address):
        raise Refused(f"{address}: Office takes an address such as https://example.org/sugar; give one with --site")
    texts = {SCRIPT: script_text(), **office.files(address)}
    names = {"script": SCRIPT, "code": office.SCRIPT, "metadata": office.METADATA, "page": office.PAGE}
    page = steps(
        __package__, "scripts.html", manifest=office.MANIFEST, namespace=office.NAMESPACE, site=address, **names
    )
    told = write_files(folder, {**{name: text.encode() for name, text in texts.items()}, STEPS: page}, replace)
    return [*told, f"next: open {folder / STEPS}, and go step by step"]
