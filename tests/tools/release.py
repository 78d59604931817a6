"""A release: that all which names it agrees, and its tag.

    python -m tests.tools.release          says what is not ready yet, or that all is
    python -m tests.tools.release --tag    makes the tag too, where all is ready; pushing it is left to you

The version stands in `sheetfuncs/__init__.py` alone, what is new in the README.
"""

from __future__ import annotations

import re
import subprocess
import sys
import zipfile
from collections.abc import Iterator, Sequence
from pathlib import Path

from defusedxml import ElementTree

ROOT = Path(__file__).parents[2]
VERSION = re.compile(r'^__version__ = "([^"]*)"$', re.MULTILINE)
FORMAT = re.compile(r'^FORMAT = "?(\d+)"?', re.MULTILINE)
NUMBERS = re.compile(r"(\d+)\.(\d+)\.(\d+)")
FIRST_LISTED = 2  # the first format whose headings were listed when it was released


def tag_of(version: str) -> str:
    return f"v{version}"


def version(root: Path) -> str:
    """The version that the package names."""
    found = VERSION.search((root / "sheetfuncs" / "__init__.py").read_text(encoding="utf-8"))
    return found[1] if found else ""


def whats_new(root: Path) -> list[tuple[str, str]]:
    """The versions that the README's section names, newest first, each with what it says."""
    _, _, section = (root / "README.md").read_text(encoding="utf-8").partition("\n## What is new\n")
    parts = re.split(r"^### (.*)\n", re.split(r"^## ", section, flags=re.MULTILINE)[0], flags=re.MULTILINE)
    return [(title.strip(), text.strip()) for title, text in zip(parts[1::2], parts[2::2], strict=True)]


def not_ready(root: Path) -> Iterator[str]:
    """What stands against a release, a sentence each."""
    named = version(root)
    if not NUMBERS.fullmatch(named):
        yield f"sheetfuncs/__init__.py: the version is {named!r}; write three numbers, such as 1.2.3"
        return
    new = whats_new(root)
    if not new or new[0][0] != named:
        yield f"README.md: What is new begins with {new[0][0] if new else 'nothing'}; write what is new in {named}"
    elif not new[0][1]:
        yield f"README.md: What is new says nothing of {named}"
    earlier = [tag for tag in _git(root, "tag", "--list", "v*").split() if NUMBERS.fullmatch(tag[1:])]
    if tag_of(named) in earlier:
        yield f"{tag_of(named)} is there already; give the version in sheetfuncs/__init__.py a higher number"
    elif earlier and _numbers(named) < max(_numbers(tag) for tag in earlier):
        yield f"sheetfuncs/__init__.py: {named} is older than {max(earlier, key=_numbers)}"
    yield from _format_not_kept(root)
    yield from _made_earlier(root, named)
    if _git(root, "status", "--porcelain"):
        yield "there are changes that are not committed; commit them first"


def make_tag(root: Path) -> str:
    """The tag of this version, with what is new as its message."""
    tag, (title, text) = tag_of(version(root)), whats_new(root)[0]
    _git(root, "tag", "--annotate", "--cleanup=verbatim", "--message", f"sheetfuncs {title}\n\n{text}\n", tag)
    return tag


def _format_not_kept(root: Path) -> Iterator[str]:
    """A format that is released must stay readable: a workbook of it is kept, and the list of its headings."""
    found = FORMAT.search((root / "sheetfuncs" / "workbook" / "season.py").read_text(encoding="utf-8"))
    if found is None:
        yield "sheetfuncs/workbook/season.py: no FORMAT is set"
        return
    kept = root / "tests" / "kept"
    if not [*kept.glob(f"format-{found[1]}.xlsx"), *kept.glob(f"format-{found[1]}-*.xlsx")]:
        yield f"tests/kept: no workbook of format {found[1]} is kept"
    if int(found[1]) >= FIRST_LISTED and not (kept / f"headings-{found[1]}.txt").exists():
        yield f"tests/kept/headings-{found[1]}.txt: the headings of format {found[1]} are not listed"


def _made_earlier(root: Path, named: str) -> Iterator[str]:
    """Generated files that say they are of another version."""
    for path in sorted([*(root / "templates").iterdir(), *(root / "examples").glob("*.xlsx")]):
        if path.suffix in (".xlsx", ".oxt") and (says := _version_in(path)) not in (None, named):
            yield f"{path.relative_to(root).as_posix()}: made by {says}; run: python -m tests.tools.templates"


def _version_in(path: Path) -> str | None:
    """The version that a workbook or the Calc add-in was made by; None where it does not say."""
    with zipfile.ZipFile(path) as archive:
        if path.suffix == ".oxt":
            card = ElementTree.fromstring(archive.read("description.xml"))
            found = card.find("{http://openoffice.org/extensions/description/2006}version")
            return None if found is None else str(found.get("value"))
        if "docProps/custom.xml" not in archive.namelist():
            return None
        stamps = ElementTree.fromstring(archive.read("docProps/custom.xml"))
        return next(("".join(one.itertext()) for one in stamps if one.get("name") == "sheetfuncs version"), None)


def _numbers(text: str) -> tuple[int, ...]:
    return tuple(int(part) for part in text.removeprefix("v").split("."))


def _git(root: Path, *arguments: str) -> str:
    return subprocess.run(["git", *arguments], cwd=root, capture_output=True, text=True, check=True).stdout.strip()


def main(arguments: Sequence[str], root: Path = ROOT) -> int:
    """0 where all is ready, 1 where something is not."""
    found = list(not_ready(root))
    if found:
        print(*found, sep="\n")
        return 1
    print(f"sheetfuncs {version(root)}: all agrees")
    if "--tag" in arguments:
        tag = make_tag(root)
        print(f"tagged: {tag}; to publish it: git push origin {tag}")
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
