"""Files made to take all time and memory: each is checked or refused in one line, within the limits."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest

from tests.tools.edits import example
from tests.tools.hostile import FILES, MEGABYTES, SECONDS, cost


@pytest.fixture(scope="module")
def whole(tmp_path_factory: pytest.TempPathFactory) -> Path:
    path = tmp_path_factory.mktemp("whole") / "season.xlsx"
    example().write(path, "carried")
    return path


@pytest.mark.parametrize("name", FILES)
def test_no_file_takes_more_than_its_share(name: str, whole: Path, tmp_path: Path) -> None:
    found = cost("check", str(FILES[name](whole, tmp_path / "hostile.xlsx")))
    assert found.code in (0, 1, 2)
    assert found.line.count("\n") == (found.code == 2)
    assert "Traceback" not in found.line
    assert found.seconds < SECONDS
    assert found.megabytes < MEGABYTES


def test_a_season_as_it_is_costs_little(whole: Path) -> None:
    found = cost("check", str(whole))
    assert (found.code, found.line) == (0, "")
    assert found.seconds < 5
    assert found.megabytes < 200


@pytest.mark.skipif(os.name != "posix", reason="pipes and devices with names are of POSIX")
@pytest.mark.parametrize("arguments", [["check"], ["new", "a.xlsx", "--collection"]])
def test_devices_and_pipes_are_refused(arguments: list[str], tmp_path: Path) -> None:
    os.mkfifo(tmp_path / "pipe")
    for place in ("/dev/zero", "/dev/stdin", str(tmp_path / "pipe"), str(tmp_path)):
        run = subprocess.run(
            [sys.executable, "-m", "sheetfuncs.cli", *arguments, place],
            cwd=tmp_path, capture_output=True, text=True, timeout=20, stdin=subprocess.PIPE,
        )  # fmt: skip
        assert run.returncode == 2
        assert len(run.stderr.splitlines()) == 1
    assert [path.name for path in tmp_path.iterdir()] == ["pipe"]


def test_a_log_is_not_read_whole(tmp_path: Path) -> None:
    """A file of a gigabyte that holds nothing: sparse, so that the test needs no such disk."""
    with (tmp_path / "log.csv").open("wb") as stream:
        stream.truncate(1 << 30)
    found = cost("new", str(tmp_path / "a.xlsx"), "--collection", str(tmp_path / "log.csv"))
    assert (found.code, found.line.count("\n")) == (2, 1)
    assert found.megabytes < 100


def killed_inside(words: str) -> subprocess.CompletedProcess[str]:
    """What the net says when the work below it does this."""
    program = f"import sys, os; from sheetfuncs.bounded import bounded; sys.exit(bounded(lambda: {words}, 'check a'))"
    return subprocess.run([sys.executable, "-c", program], capture_output=True, text=True, timeout=60)


def test_the_last_net() -> None:
    """Work that takes all memory, that falls over, and that goes well."""
    memory = killed_inside("len(b'a' * (1 << 31))")
    assert memory.returncode != 0
    fallen = killed_inside("os.abort()")
    assert (fallen.returncode, fallen.stderr.count("\n")) == (2, 1)
    assert "fell over" in fallen.stderr
    assert killed_inside("7").returncode == 7


def test_the_last_net_counts_what_the_work_takes() -> None:
    """Not what a large program held before it called us."""
    program = (
        "import sys; from sheetfuncs.bounded import MEGABYTES, bounded; held = bytearray(2 * MEGABYTES << 20); "
        "sys.exit(bounded(lambda: len(b'a' * ({megabytes} << 20)) and 7, 'check a'))"
    )
    for megabytes, code in ((100, 7), (700, 70)):
        words = [sys.executable, "-c", program.format(megabytes=megabytes)]
        assert subprocess.run(words, capture_output=True, timeout=60).returncode == code


def test_the_last_net_has_a_clock() -> None:
    ended = killed_inside("__import__('resource').setrlimit(0, (1, 5)) or max(iter(int, 1))")
    assert ended.returncode == 2
    assert "takes over" in ended.stderr
