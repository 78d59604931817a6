"""The command line under bad arguments, odd terminals, closed pipes and full disks: one line, never a traceback."""

from __future__ import annotations

import json
import os
import signal
import subprocess
import sys
import time
from pathlib import Path

import pytest

from sheetfuncs import cli, ending
from sheetfuncs.workbook.commands.new.length import METRES, metres
from tests.tools.edits import example, typed

SHEETFUNCS = [sys.executable, "-m", "sheetfuncs.cli"]


@pytest.fixture(scope="module")
def whole(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A season with a maple leaf and letters of other scripts in its names."""
    path = tmp_path_factory.mktemp("whole") / "season.xlsx"
    season = typed(example(), {"yard.name": "Érablière \N{MAPLE LEAF} 糖", ("containers.name", 1): "bin \N{BEER MUG}"})
    season.write(path, "linked")
    return path


def run(*arguments: object, **options: object) -> subprocess.CompletedProcess[bytes]:
    return subprocess.run([*SHEETFUNCS, *map(str, arguments)], **{"capture_output": True, "timeout": 60, **options})  # type: ignore[call-overload]


LONG = "a" * 300 + ".xlsx"
BAD = [
    [],
    ["new"],
    ["nwe"],
    ["new", "a.xlsx", "--edition", "x"],
    ["new", "a.xlsx", "--season", "abc"],
    ["new", "a.xlsx", "--season", "9" * 5000],
    ["new", "a.xlsx", "--rows", "1.5"],
    ["new", "a.xlsx", "--units", "a\nb"],
    ["new", "a\nb"],
    ["new", LONG],
    ["new", "a\0b.xlsx"],
    ["new", "nobody/a.xlsx"],
    ["new", "a.xlsx/b.xlsx"],
    ["check"],
    ["check", LONG],
    ["check", "a\0b"],
    ["check", ""],
    ["check", "a.xlsx", "--open"],
    ["report", "a.xlsx", "--html", LONG.replace("xlsx", "html")],
    ["report", *["a.xlsx"] * 13],
    ["convert", "a.xlsx", LONG],
    ["convert", "a.xlsx", "b.xlsx", "--units", ""],
    ["handover", "a.xlsx", "b.xlsx", "--season", "0"],
    ["functions", "NO\u2028SUCH"],
    ["calc-addin", "\0.oxt"],
    ["excel-addin", "a" * 300],
    ["excel-addin", "a\0b"],
    ["excel-addin", "/dev/null/a"],
    *(
        ["new", "a.xlsx", "--elevation", text]
        for text in (" ", "(650 ft", "650 ft)", "1/0 ft", "'650 ft'", "**", "5**5**5 ft", "[1,2] ft", "650 ft; 3")
    ),
    *(["new", "a.xlsx", "--elevation", text] for text in ("ft", "1 200 m", "650,5", "nan m", "9" * 400, "5 in 6 in")),
]


@pytest.mark.parametrize("arguments", BAD, ids=lambda words: " ".join(words).encode("unicode_escape")[:40].decode())
def test_bad_arguments_get_one_line(
    arguments: list[str], tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.chdir(tmp_path)
    assert cli.main(arguments) == 2
    said = capsys.readouterr()
    assert said.out == ""
    assert said.err.startswith("sheetfuncs: ")
    assert len(said.err.splitlines()) == 1
    assert list(tmp_path.iterdir()) == []


def test_a_folder_that_may_not_be_entered(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """For an ordinary user; root may enter every folder, so the system's answer is put in its place."""

    def no(path: Path) -> os.stat_result:
        raise PermissionError(13, "Permission denied", str(path))

    monkeypatch.setattr(Path, "lstat", no)
    assert cli.main(["new", str(tmp_path / "a.xlsx")]) == 2
    assert "cannot be written (Permission denied)" in capsys.readouterr().err


LENGTHS = [
    ("650 ft", "ft", 198.12), ("650'", "m", 198.12), ("650\N{PRIME}", "m", 198.12), ("650 FT", "ft", 198.12),
    ("5 ft 6 in", "m", 1.6764), ("5'6\"", "m", 1.6764), ("200 m", "ft", 200.0), ("200 M", "ft", 200.0),
    ("0.2 km", "ft", 200.0), ("0650 ft", "ft", 198.12), ("650", "ft", 198.12), ("650", "m", 650.0),
    ("-10 ft", "ft", -3.048), ("\N{MINUS SIGN}3 m", "ft", -3.0), ("1 mile", "m", 1609.344), (".5 km", "m", 500.0),
]  # fmt: skip


@pytest.mark.parametrize(("text", "unit", "wanted"), LENGTHS)
def test_a_length_is_a_number_and_a_unit(text: str, unit: str, wanted: float) -> None:
    """International yard and pound agreement, 1959: a foot is 0.3048 m."""
    assert metres("--elevation", text, unit) == pytest.approx(wanted, rel=1e-12)


def test_the_units_of_length_are_those_of_pint() -> None:
    import pint

    registry: pint.UnitRegistry[float] = pint.UnitRegistry()
    names = [name for name in METRES if name.isalpha()]
    assert len(names) > 15
    for name in names:
        assert METRES[name] == pytest.approx(registry.Quantity(1, name).to("meter").magnitude, rel=1e-12)


LOGS = {
    "semicolons": "date;volume;brix\n2026-03-01;10,5;2,1\n",
    "tabs": "date\tvolume\tbrix\n2026-03-01\t10,5\t2.1\n",
    "points": "date;volume;brix\n2026-03-01;10.5;2.1\n",
    "commas": 'date,volume,brix,note\n\n2026-03-01,10.5,2.1,"a;b\vc\u2028d"\n',
}


@pytest.mark.parametrize("name", LOGS)
def test_logs_as_programs_write_them(name: str, tmp_path: Path) -> None:
    from sheetfuncs.workbook.commands.new.log import read_log

    (tmp_path / "log.csv").write_text(LOGS[name], encoding="utf-8")
    found = read_log(tmp_path / "log.csv")
    assert [found["collection.sap"], found["collection.brix"]] == [[10.5], [2.1]]


BAD_LOGS = {
    "date,volume,volume,brix\n2026-03-01,1,2,3\n": "two columns are headed volume",
    "date,volume,brix\n0001-01-01,10,2\n": "line 2: date is 0001-01-01",
    "date,volume,brix\n2026-03-01,1_0,2\n": "line 2: volume is '1_0'",
    'date,volume,brix\n2026-03-01,"10,5",2\n': "line 2: volume is '10,5'",
    "date;volume;brix\n2026-03-01;1.000,5;2\n": "line 2: volume is '1.000,5'",
    "date,volume,brix," + "a" * 20_000: "not a CSV file",
}


@pytest.mark.parametrize("text", BAD_LOGS, ids=BAD_LOGS.values())
def test_logs_that_are_refused(text: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    (tmp_path / "log.csv").write_text(text)
    assert cli.main(["new", str(tmp_path / "a.xlsx"), "--collection", str(tmp_path / "log.csv")]) == 2
    assert BAD_LOGS[text] in capsys.readouterr().err


def test_there_is_room_for_the_whole_log(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """However few rows were asked for."""
    lines = [f"2026-03-{1 + number % 28:02},5,2" for number in range(200)]
    (tmp_path / "log.csv").write_text("date,volume,brix\n" + "\n".join(lines))
    log = ["--collection", str(tmp_path / "log.csv")]
    assert cli.main(["new", str(tmp_path / "a.xlsx"), *log, "--rows", "10"]) == 0
    assert "1,000.0 gal" in capsys.readouterr().out


def test_a_reader_that_goes_away(whole: Path, tmp_path: Path) -> None:
    """`sheetfuncs ... | head -1`: the pipe is closed before anything is printed."""
    for arguments in (["new", tmp_path / "a.xlsx"], ["check", whole], ["functions"], ["--help"], ["report", whole]):
        inside, outside = os.pipe()
        os.close(inside)
        done = run(*arguments, capture_output=False, stdout=outside, stderr=subprocess.PIPE)
        os.close(outside)
        assert (done.returncode, done.stderr) == (141, b"")
    assert (tmp_path / "a.xlsx").exists()


@pytest.mark.skipif(not Path("/dev/full").exists(), reason="a device of Linux")
def test_output_that_cannot_be_written(whole: Path) -> None:
    for arguments in (["check", whole], ["functions"], ["--version"], ["report", whole]):
        with Path("/dev/full").open("wb") as full:
            done = run(*arguments, capture_output=False, stdout=full, stderr=subprocess.PIPE)
        assert done.returncode == 2
        assert len(done.stderr.splitlines()) == 1


def test_closed_streams_do_no_harm(whole: Path, tmp_path: Path) -> None:
    """A new file must not take the place of a closed output, or a message ends up in it."""
    for number, closed in enumerate((">&-", "2>&-", "<&- >&- 2>&-")):
        page = tmp_path / f"{number}.html"
        words = f'"{sys.executable}" -m sheetfuncs.cli report "{whole}" --html "{page}" {closed}'
        assert subprocess.run(["sh", "-c", words], capture_output=True).returncode == 0
        assert page.read_bytes().startswith(b"<!doctype html>")
        assert page.read_bytes().endswith(b"</html>\n")


@pytest.mark.parametrize("encoding", ["ascii", "cp1252", "utf-8", "utf-16"])
def test_terminals_of_other_alphabets(encoding: str, whole: Path, tmp_path: Path) -> None:
    settings = {**os.environ, "PYTHONIOENCODING": encoding, "PYTHONUTF8": "0"}
    for command in (["check"], ["report"], ["report", "--html", str(tmp_path / "a.html")]):
        done = run(*command, whole, env=settings)
        assert (done.returncode, done.stderr) == (0, b"")
    found = json.loads(run("check", whole, "--json", env=settings).stdout.decode(encoding))
    assert found["file"] == str(whole)
    plain = {**os.environ, "LC_ALL": "C", "PYTHONUTF8": "0", "PYTHONCOERCECLOCALE": "0"}
    assert run("report", whole, env=plain).returncode == 0


def test_a_name_that_is_no_text(whole: Path, tmp_path: Path) -> None:
    name = os.fsdecode(bytes(tmp_path) + b"/\xff\xfe\n.xlsx")
    Path(name).write_bytes(whole.read_bytes())
    done = run("report", name, "--html", tmp_path / "a.html")
    assert (done.returncode, done.stderr) == (0, b"")
    assert (tmp_path / "a.html").read_text(encoding="utf-8").startswith("<!doctype html>")
    assert json.loads(run("check", name, "--json").stdout)["units"] == "US"
    gone = run("check", name + "x")
    assert (gone.returncode, len(gone.stderr.splitlines())) == (2, 1)


@pytest.mark.parametrize("which", [signal.SIGINT, signal.SIGTERM])
def test_a_signal_ends_it_with_one_line(which: signal.Signals, whole: Path, tmp_path: Path) -> None:
    program = "import sys; from sheetfuncs import cli; print('ready', flush=True); sys.exit(cli.main())"
    for wait in (0.02, 0.1, 0.3):
        for arguments in (["new", str(tmp_path / "a.xlsx")], ["check", str(whole)]):
            process = subprocess.Popen(
                [sys.executable, "-c", program, *arguments], stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True
            )
            assert process.stdout
            process.stdout.readline()
            time.sleep(wait)
            process.send_signal(which)
            _, said = process.communicate(timeout=30)
            assert process.returncode in (0, 128 + which), said
            assert said in ("", "sheetfuncs: stopped\n")
            (tmp_path / "a.xlsx").unlink(missing_ok=True)


def test_a_signal_that_comes_while_something_is_thrown_away(
    whole: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """Python passes no error on from there; the command must end nevertheless, and say one thing."""
    from sheetfuncs.workbook.commands.check import check

    class Thrown:
        def __del__(self) -> None:
            signal.raise_signal(signal.SIGTERM)

    def throw(*_: object) -> None:
        thrown = Thrown()
        del thrown
        time.sleep(5)

    monkeypatch.setattr(check, "check_filled", throw)
    assert cli.main(["check", str(whole)]) == 128 + signal.SIGTERM
    assert capsys.readouterr().err == "sheetfuncs: stopped\n"


def test_a_fault_of_ours_is_one_line_that_asks_for_a_report(
    whole: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    from sheetfuncs.workbook.commands.check import check

    def fall(*_: object) -> None:
        raise ZeroDivisionError("a\nb")

    monkeypatch.setattr(check, "check_filled", fall)
    assert cli.main(["check", str(whole)]) == 70
    said = capsys.readouterr().err
    assert said.startswith("sheetfuncs: a fault of ours (ZeroDivisionError in test_command_line.py, line ")
    assert "Please report it" in said
    assert len(said.splitlines()) == 1
    monkeypatch.setenv(ending.TRACEBACK, "1")
    assert cli.main(["check", str(whole)]) == 70
    assert "Traceback" in capsys.readouterr().err


def test_help_and_version(capsys: pytest.CaptureFixture[str]) -> None:
    assert cli.main(["--version"]) == 0
    assert cli.main(["new", "--help"]) == 0
    assert "--elevation" in capsys.readouterr().out
