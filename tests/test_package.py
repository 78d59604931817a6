"""What is published: the licence in it, the functions alone without any package, and what then asks for more."""

from __future__ import annotations

import subprocess
import tarfile
import zipfile
from email import message_from_string
from pathlib import Path

import pytest

import sheetfuncs
from sheetfuncs.formulas.catalogue import CATALOGUE
from tests.tools import package

LICENSE = (package.ROOT / "sheetfuncs" / "LICENSE").read_bytes()
FILE = "a.xlsx"
ASKING_FOR_MORE = [
    ["new", FILE],
    ["check", FILE],
    ["report", FILE],
    ["convert", FILE, "b.xlsx"],
    ["handover", FILE, "b.xlsx"],
    ["excel-addin", "folder"],
]


@pytest.fixture(scope="module")
def built(tmp_path_factory: pytest.TempPathFactory) -> tuple[Path, Path]:
    return package.built(tmp_path_factory.mktemp("package"))


@pytest.fixture(scope="module")
def alone(built: tuple[Path, Path], tmp_path_factory: pytest.TempPathFactory) -> Path:
    return package.installed_alone(built[0], tmp_path_factory.mktemp("alone"))


def run(python: Path, folder: Path, *arguments: str) -> subprocess.CompletedProcess[str]:
    return package.run(python.with_name("sheetfuncs"), folder, *arguments)


def test_the_licence_is_named_and_inside(built: tuple[Path, Path]) -> None:
    wheel, source = built
    with zipfile.ZipFile(wheel) as archive:
        names = archive.namelist()
        card = message_from_string(archive.read(next(n for n in names if n.endswith("/METADATA"))).decode())
        texts = [archive.read(name) for name in names if Path(name).name == "LICENSE"]
    assert card["License-Expression"] == "Apache-2.0"
    assert card["Version"] == sheetfuncs.__version__
    assert LICENSE in texts
    assert LICENSE.split()[:4] == [b"Apache", b"License", b"Version", b"2.0,"]
    with tarfile.open(source) as archive:
        members = {Path(*Path(one.name).parts[1:]).as_posix(): one for one in archive.getmembers()}
        inside = archive.extractfile(members["sheetfuncs/LICENSE"])
        assert inside is not None and inside.read() == LICENSE
    assert {"README.md", "pyproject.toml", "sheetfuncs/__init__.pyi", "sheetfuncs/py.typed"} <= set(members)


def test_all_our_files_are_in_the_wheel(built: tuple[Path, Path]) -> None:
    ours = {
        path.relative_to(package.ROOT).as_posix()
        for path in (package.ROOT / "sheetfuncs").rglob("*")
        if path.is_file() and path.suffix != ".pyc"
    }
    with zipfile.ZipFile(built[0]) as archive:
        assert ours <= set(archive.namelist())


def test_the_functions_alone_need_no_package(alone: Path, tmp_path: Path) -> None:
    asked = "import sheetfuncs; print(sheetfuncs.__file__, sheetfuncs.FINISH_READING(66.9, 210.5))"
    done = package.run(alone, tmp_path, "-c", asked)
    assert done.returncode == 0, done.stderr
    place, number = done.stdout.rsplit(maxsplit=1)
    assert Path(place).is_relative_to(alone.parents[1])
    assert float(number) == sheetfuncs.FINISH_READING(66.9, 210.5)

    listed = run(alone, tmp_path, "functions")
    assert (listed.returncode, listed.stderr) == (0, "")
    assert [line.split()[0] for line in listed.stdout.splitlines()] == list(CATALOGUE)
    assert run(alone, tmp_path, "calc-addin", "a.oxt").returncode == 0


@pytest.mark.parametrize("command", ASKING_FOR_MORE, ids=lambda command: command[0])
def test_what_needs_the_extra_says_so_in_one_line(alone: Path, tmp_path: Path, command: list[str]) -> None:
    if command[0] != "new":
        (tmp_path / FILE).write_bytes(b"not read yet")
    before = sorted(tmp_path.iterdir())
    done = run(alone, tmp_path, *command)
    assert (done.returncode, done.stdout) == (2, "")
    assert done.stderr.count("\n") == 1
    assert done.stderr.startswith("sheetfuncs: ")
    assert "pip install" in done.stderr and "sheetfuncs[workbook]" in done.stderr
    assert sorted(tmp_path.iterdir()) == before
