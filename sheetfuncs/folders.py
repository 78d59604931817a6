"""A folder of new files: all of them are written, or nothing is, and no folder is left behind empty.

With each goes a page of steps, an HTML file of the package with a few words to be filled in.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from contextlib import contextmanager, suppress
from errno import ENOTDIR
from html import escape
from importlib.resources import files
from os import strerror
from pathlib import Path
from string import Template

from sheetfuncs import __version__
from sheetfuncs.files import New, Refused, write_all

STEPS = "STEPS.html"
STYLE = """\
body { font: 16px/1.5 "Segoe UI", sans-serif; max-width: 46em; margin: 2em auto; padding: 0 1em; color: #222; }
h1 { font-size: 1.5em; } h2 { font-size: 1.15em; margin-top: 2em; }
li { margin: .4em 0; } code, kbd { background: #f3efe6; padding: 0 .25em; }
.note { border-left: 4px solid #c8871e; background: #fbf6ec; padding: .5em 1em; }
td, th { text-align: left; vertical-align: top; padding: .2em 1em .2em 0; }
"""


def steps(package: str, page: str, /, **words: str) -> bytes:
    """A page of steps, with words put where it has `$name`, and the looks of all such pages."""
    text = Template((files(package) / page).read_text("utf-8"))
    filled = {name: escape(word) for name, word in {"version": __version__, **words}.items()}
    return text.substitute(filled, style=STYLE).encode()


def write_files(folder: Path, contents: Mapping[str, bytes], replace: bool = False) -> list[str]:
    """Write the files into the folder, which is made if need be; tells what was done, a line a file."""
    with made(folder):
        free(folder, contents, replace)
        write_all([New(folder / name, content, replace) for name, content in contents.items()])
    return [f"written: {folder / name}" for name in contents]


def free(folder: Path, names: Iterable[str], replace: bool) -> list[str]:
    """Which of the files are there already; refused where they may not be written over."""
    there = [name for name in names if (folder / name).exists()]
    if there and not replace:
        raise Refused(f"{folder / there[0]}: this file exists already; choose another folder, or add --replace")
    return there


@contextmanager
def made(folder: Path) -> Iterator[None]:
    """The folder, and those above it; what was made is gone again where nothing could be put in."""
    new = []
    try:
        missing = [one for one in (folder, *folder.parents) if not one.exists()]
        for one in reversed(missing):
            one.mkdir()
            new.append(one)
        if not folder.is_dir():
            raise NotADirectoryError(ENOTDIR, strerror(ENOTDIR))
    except (OSError, ValueError) as error:
        _take_away(new)
        why = getattr(error, "strerror", None) or error
        raise Refused(f"{folder}: this folder cannot be made ({why}); choose another place") from error
    try:
        yield
    except BaseException:
        _take_away(new)
        raise


def _take_away(new: Sequence[Path]) -> None:
    with suppress(OSError):  # someone else has put something in
        for one in reversed(new):
            one.rmdir()
