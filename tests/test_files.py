"""New files: whole or not at all, in no one's place, and nothing left over."""

from __future__ import annotations

import errno
import os
import stat
import subprocess
import sys
from pathlib import Path

import pytest

from sheetfuncs import cli, files
from sheetfuncs.files import New, Refused, new_file, write_all
from sheetfuncs.workbook.read.filled import read
from tests.tools.edits import example
from tests.tools.kills import kill_some


def refuse_links(*_: object, **__: object) -> None:
    raise PermissionError(errno.EPERM, "no links here")


@pytest.fixture(params=["without a name", "with a hidden name", "without links"])
def system(request: pytest.FixtureRequest, monkeypatch: pytest.MonkeyPatch) -> str:
    """Three kinds of file systems: Linux's own, others, and those that know no links."""
    if request.param != "without a name":
        monkeypatch.setattr(files, "UNNAMED", 0)
    if request.param == "without links":
        monkeypatch.setattr(os, "link", refuse_links)
    return str(request.param)


def names(folder: Path) -> list[str]:
    return sorted(path.name for path in folder.iterdir())


def test_a_file_is_written_with_the_usual_mode(system: str, tmp_path: Path) -> None:
    with new_file(tmp_path / "a.txt") as part:
        part.write(b"new")
        assert names(tmp_path) == []
    plain = tmp_path / "b.txt"
    plain.write_bytes(b"")
    assert (tmp_path / "a.txt").read_bytes() == b"new"
    assert (tmp_path / "a.txt").stat().st_mode == plain.stat().st_mode
    assert names(tmp_path) == ["a.txt", "b.txt"]


def test_a_file_that_comes_meanwhile_stays(system: str, tmp_path: Path) -> None:
    with pytest.raises(Refused, match="exists already"), new_file(tmp_path / "a.txt") as part:
        part.write(b"new")
        (tmp_path / "a.txt").write_bytes(b"mine")
    assert (tmp_path / "a.txt").read_bytes() == b"mine"
    assert names(tmp_path) == ["a.txt"]


def test_even_at_the_last_moment(system: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """It comes when we have looked and not yet written."""
    sync = os.fsync

    def late(handle: int) -> None:
        sync(handle)
        (tmp_path / "a.txt").write_bytes(b"mine")

    monkeypatch.setattr(os, "fsync", late)
    with pytest.raises(Refused, match="has come meanwhile"), new_file(tmp_path / "a.txt") as part:
        part.write(b"new")
    assert (tmp_path / "a.txt").read_bytes() == b"mine"
    assert names(tmp_path) == ["a.txt"]


def test_of_several_files_all_or_none(system: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    (tmp_path / "b").write_bytes(b"mine")
    wanted = [New(tmp_path / name, b"new") for name in ("a", "c")]
    with pytest.raises(Refused, match="exists already"):
        write_all([*wanted, New(tmp_path / "b", b"new")])
    sync, left = os.fsync, [1, 1]

    def full(handle: int) -> None:
        if not left:
            raise OSError(errno.ENOSPC, os.strerror(errno.ENOSPC))
        left.pop()
        sync(handle)

    monkeypatch.setattr(os, "fsync", full)
    with pytest.raises(Refused, match="No space left"):
        write_all([*wanted, New(tmp_path / "b", b"new", replace=True)])
    assert names(tmp_path) == ["b"]
    assert (tmp_path / "b").read_bytes() == b"mine"


def test_what_is_replaced_keeps_its_mode(system: str, tmp_path: Path) -> None:
    path = tmp_path / "a.txt"
    path.write_bytes(b"old")
    path.chmod(0o600)
    with new_file(path, replace=True, keep=tmp_path / "b.txt") as part:
        part.write(b"new")
    assert (path.read_bytes(), stat.S_IMODE(path.stat().st_mode)) == (b"new", 0o600)
    assert (tmp_path / "b.txt").read_bytes() == b"old"
    assert names(tmp_path) == ["a.txt", "b.txt"]


def test_a_link_stays_a_link(system: str, tmp_path: Path) -> None:
    (tmp_path / "far").mkdir()
    target, link = tmp_path / "far" / "a.txt", tmp_path / "a.txt"
    link.symlink_to(target)
    with pytest.raises(Refused, match="exists already"), new_file(link) as part:
        part.write(b"new")
    with new_file(link, replace=True) as part:
        part.write(b"new")
    assert link.is_symlink()
    assert target.read_bytes() == b"new"
    assert (names(tmp_path), names(tmp_path / "far")) == (["a.txt", "far"], ["a.txt"])


@pytest.mark.skipif(os.name != "posix", reason="pipes and devices with names are of POSIX")
@pytest.mark.parametrize("kind", ["pipe", "folder", "device"])
def test_only_a_plain_file_is_replaced(kind: str, tmp_path: Path) -> None:
    path = tmp_path / "a.html"
    if kind == "pipe":
        os.mkfifo(path)
    elif kind == "folder":
        path.mkdir()
    else:
        path.symlink_to("/dev/null")
    with pytest.raises(Refused, match="not a plain file"), new_file(path, replace=True):
        pass
    assert names(tmp_path) == ["a.html"]
    assert not Path("/dev/null").is_file()


@pytest.mark.parametrize(
    ("arguments", "ending"),
    [
        (["new", "OTHER.ods"], ".xlsx"),
        (["convert", "whole.xlsx", "OTHER.xlsm"], ".xlsx"),
        (["handover", "whole.xlsx", "OTHER"], ".xlsx"),
        (["report", "whole.xlsx", "--html", "OTHER.xlsx"], ".html"),
        (["report", "whole.xlsx", "--html", ""], ".html"),
        (["calc-addin", "OTHER.xlsx"], ".oxt"),
    ],
)
def test_an_output_ends_as_its_kind_does(
    arguments: list[str],
    ending: str,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
) -> None:
    monkeypatch.chdir(tmp_path)
    for name in arguments:
        if name.startswith("OTHER"):
            Path(name).write_text("mine")
    assert cli.main([*arguments, "--replace"]) == 2
    assert f"end the name with {ending}" in capsys.readouterr().err
    assert all(path.read_text() == "mine" for path in tmp_path.iterdir())


def test_a_season_that_is_replaced_is_kept_beside_it(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    path, before = tmp_path / "season.xlsx", tmp_path / "season (before).xlsx"
    assert cli.main(["new", str(path), "--season", "2026"]) == 0
    assert cli.main(["new", str(path), "--replace"]) == 0  # nothing was typed into it
    assert names(tmp_path) == ["season.xlsx"]
    example().write(path, "linked")
    filled = path.read_bytes()
    assert cli.main(["new", str(path), "--replace"]) == 0
    assert f"kept: the season that was there, as {before}" in capsys.readouterr().out
    assert before.read_bytes() == filled
    path.write_text("no workbook at all")
    assert cli.main(["convert", str(before), str(path), "--replace"]) == 0
    assert (tmp_path / "season (before 2).xlsx").read_text() == "no workbook at all"
    assert read(path).season.inputs["yard.name"] == example().inputs["yard.name"]


def test_of_two_writers_one_is_told(tmp_path: Path) -> None:
    for number in range(4):
        command = [sys.executable, "-m", "sheetfuncs.cli", "new", str(tmp_path / f"{number}.xlsx")]
        both = [subprocess.Popen(command, stdout=subprocess.DEVNULL, stderr=subprocess.PIPE) for _ in range(2)]
        said = [process.communicate()[1] for process in both]
        assert sorted(process.returncode for process in both) == [0, 2], said
    assert len(names(tmp_path)) == 4


def test_the_excel_folder_is_whole_or_not_there(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    sync, left = os.fsync, [1, 1]

    def full(handle: int) -> None:
        if not left:
            raise OSError(errno.ENOSPC, os.strerror(errno.ENOSPC))
        left.pop()
        sync(handle)

    monkeypatch.setattr(os, "fsync", full)
    assert cli.main(["excel-addin", str(tmp_path / "one" / "two")]) == 2
    assert "No space left on device" in capsys.readouterr().err
    assert names(tmp_path) == []


def test_kills_at_random_moments_leave_nothing(tmp_path: Path) -> None:
    """200 in a run by hand: python -m tests.tools.kills"""
    assert sum(kill_some(16, tmp_path).values()) == 16
