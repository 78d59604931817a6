"""The release script, in a small repository of its own."""

from __future__ import annotations

import shutil
import subprocess
from pathlib import Path
from typing import Any

import pytest

from sheetfuncs import __version__
from sheetfuncs.hosts.calc.builder import write_addin
from tests.tools import office, release
from tests.tools.edits import example

README = """# A project

## What is new

### VERSION

- **Something** for the one who boils.

### 0.0.1

- The first.

## Another section

### 9.9.9
"""


def git(root: Path, *arguments: str) -> str:
    return subprocess.run(["git", *arguments], cwd=root, check=True, capture_output=True, text=True).stdout.strip()


def write(root: Path, name: str, text: str) -> None:
    path = root / name
    path.parent.mkdir(parents=True, exist_ok=True)
    path.write_text(text, encoding="utf-8")


@pytest.fixture(scope="module")
def made(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A repository where all is ready, made by this version."""
    if shutil.which("git") is None:
        office.missing("needs git")
    root = tmp_path_factory.mktemp("made")
    write(root, "sheetfuncs/__init__.py", f'"""Words."""\n\n__version__ = "{__version__}"\n')
    write(root, "sheetfuncs/workbook/season.py", 'FORMAT = "7"  # goes up\n')
    write(root, "README.md", README.replace("VERSION", __version__))
    write(root, "tests/kept/headings-7.txt", "Date\n")
    write(root, "tests/kept/format-7-a.xlsx", "")
    write(root, "templates/README.txt", "")
    write(root, "examples/log.csv", "")
    write_addin(root / "templates" / "sheetfuncs.oxt")
    example().write(root / "templates" / "season.xlsx", "linked")
    git(root, "init", "-q", "-b", "main")
    git(root, "config", "user.name", "A keeper")
    git(root, "config", "user.email", "keeper@example.org")
    git(root, "config", "core.autocrlf", "false")
    git(root, "add", "-A")
    git(root, "commit", "-q", "-m", "The first")
    return root


@pytest.fixture
def root(made: Path, tmp_path: Path) -> Path:
    return Path(shutil.copytree(made, tmp_path / "repository"))


def told(root: Path, capsys: pytest.CaptureFixture[str], *arguments: str) -> tuple[int, list[str]]:
    code = release.main(arguments, root)
    return code, capsys.readouterr().out.splitlines()


def test_ready_and_tagged_once(root: Path, capsys: pytest.CaptureFixture[str]) -> None:
    tag = f"v{__version__}"
    assert told(root, capsys) == (0, [f"sheetfuncs {__version__}: all agrees"])
    assert git(root, "tag") == ""
    code, lines = told(root, capsys, "--tag")
    assert (code, lines[1]) == (0, f"tagged: {tag}; to publish it: git push origin {tag}")
    assert git(root, "cat-file", "-t", tag) == "tag"
    assert git(root, "rev-parse", f"{tag}^{{commit}}") == git(root, "rev-parse", "HEAD")
    message = git(root, "tag", "--list", "--format=%(contents)", tag)
    assert message == f"sheetfuncs {__version__}\n\n- **Something** for the one who boils."
    code, lines = told(root, capsys, "--tag")
    assert code == 1 and lines[0].startswith(f"{tag} is there already")


OTHER = f'__version__ = "{__version__}"', '__version__ = "0.0.9"'
WRONG: dict[str, tuple[str, tuple[str, str], list[str]]] = {
    "version": ("sheetfuncs/__init__.py", (__version__, "soon"), ["sheetfuncs/__init__.py: the version is 'soon'"]),
    "new": ("README.md", (f"### {__version__}", "### 0.0.2"), ["README.md: What is new begins with 0.0.2;"]),
    "no section": ("README.md", ("## What is new", "## Old"), ["README.md: What is new begins with nothing;"]),
    "nothing said": (
        "README.md",
        ("- **Something** for the one who boils.", ""),
        [f"README.md: What is new says nothing of {__version__}"],
    ),
    "format": (
        "sheetfuncs/workbook/season.py",
        ('"7"', "8"),
        ["tests/kept: no workbook of format 8", "tests/kept/headings-8.txt: "],
    ),
    "no format": ("sheetfuncs/workbook/season.py", ("FORMAT", "OTHER"), ["sheetfuncs/workbook/season.py: no FORMAT"]),
    "made earlier": (
        "sheetfuncs/__init__.py",
        OTHER,
        [
            f"README.md: What is new begins with {__version__};",
            f"templates/season.xlsx: made by {__version__};",
            f"templates/sheetfuncs.oxt: made by {__version__};",
        ],
    ),
}


@pytest.mark.parametrize("case", WRONG)
def test_what_does_not_agree_is_named_and_nothing_is_tagged(
    case: str, root: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    name, (old, new), expected = WRONG[case]
    text = (root / name).read_text(encoding="utf-8")
    assert old in text
    write(root, name, text.replace(old, new))
    git(root, "commit", "-q", "-a", "-m", "Wrong")
    code, lines = told(root, capsys, "--tag")
    assert code == 1
    assert len(lines) == len(expected)
    for line, start in zip(lines, expected, strict=True):
        assert line.startswith(start), line
    assert git(root, "tag") == ""


def test_an_older_version_and_changes_that_are_not_committed(root: Path, capsys: pytest.CaptureFixture[Any]) -> None:
    git(root, "tag", "v100.0.0")
    git(root, "tag", "v99.0.0")
    git(root, "tag", "very-old")
    assert told(root, capsys)[1] == [f"sheetfuncs/__init__.py: {__version__} is older than v100.0.0"]
    git(root, "tag", "--delete", "v100.0.0", "v99.0.0")
    write(root, "more.txt", "")
    assert told(root, capsys) == (1, ["there are changes that are not committed; commit them first"])


def test_this_project_is_read_as_it_stands() -> None:
    assert release.version(release.ROOT) == __version__
    title, text = release.whats_new(release.ROOT)[0]
    assert title == __version__
    assert len(text) > 100
