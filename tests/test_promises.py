"""What the README's section on safety promises: no network, no programs, nothing written but the output."""

from __future__ import annotations

import datetime
import subprocess
import sys
from pathlib import Path
from typing import Any

import pytest

from sheetfuncs.workbook.model.rows import MOST_ROWS
from tests.tools.edits import Name, example, part_of, typed, with_xml

# Python tells of everything that it asks of the system: https://docs.python.org/3/library/audit_events.html
WATCHED = """
import os, sys
asked = []
def note(event, given):
    if event.split(".")[0] in ("socket", "subprocess", "urllib", "ftplib", "smtplib", "webbrowser", "winreg"):
        asked.append(event)
    elif event in ("os.system", "os.exec", "os.posix_spawn", "os.fork", "os.spawn", "os.startfile"):
        asked.append(event)
    elif event == "open" and given[2] & (os.O_WRONLY | os.O_RDWR) and isinstance(given[0], (str, bytes)):
        asked.append("writes " + os.fsdecode(given[0]))
    elif event in ("os.rename", "os.remove", "os.link", "os.symlink", "os.truncate", "os.mkdir", "shutil.move"):
        asked.append(f"{event} {given[0]} {given[1]}")
sys.addaudithook(note)
from sheetfuncs import cli
code = cli.main(sys.argv[1:])
print("asked", *asked, sep="\\n", file=sys.stderr)
sys.exit(code)
"""


@pytest.fixture(scope="module")
def whole(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A season with formulas that would fetch, and links to elsewhere."""
    folder = tmp_path_factory.mktemp("whole")
    words: dict[Name, Any] = {
        ("collection.note", 1): "https://example.org/",
        ("collection.note", 2): '=WEBSERVICE("http://example.org")',
    }
    typed(example(), words).write(folder / "a.xlsx", "linked")

    def fetching(text: bytes) -> bytes:
        formula = b'<f>WEBSERVICE("http://example.org/")+[1]Sheet1!A1+CALL("a","b")</f>'
        return text.replace(b"</sheetData>", b'<row r="900"><c r="A900">%b</c></row></sheetData>' % formula)

    path = folder / "season.xlsx"
    return with_xml(folder / "a.xlsx", path, {part_of(example(), "Collection"): fetching})


COMMANDS = {
    "new": ["new", "OUT.xlsx", "--example", "--elevation", "650 ft"],
    "check": ["check", "WHOLE"],
    "report": ["report", "WHOLE"],
    "report --html": ["report", "WHOLE", "--html", "OUT.html"],
    "convert": ["convert", "WHOLE", "OUT.xlsx", "--units", "metric"],
    "handover": ["handover", "WHOLE", "OUT.xlsx"],
    "calc-addin": ["calc-addin", "OUT.oxt"],
}


@pytest.mark.skipif(sys.platform != "linux", reason="elsewhere a file has a name while it is written")
@pytest.mark.parametrize("name", COMMANDS)
def test_a_command_asks_nothing_of_the_system_but_its_output(name: str, whole: Path, tmp_path: Path) -> None:
    command = [word.replace("WHOLE", str(whole)).replace("OUT", str(tmp_path / "out")) for word in COMMANDS[name]]
    before = whole.read_bytes()
    run = subprocess.run([sys.executable, "-c", WATCHED, *command], capture_output=True, text=True)
    assert run.returncode in (0, 1), run.stderr
    asked = run.stderr.partition("asked\n")[2].splitlines()
    written = [word for word in command if word.startswith(str(tmp_path))]
    # the folder is opened for a file without a name, which then gets one; handles of this process are in memory
    allowed = {f"writes {tmp_path}"}
    others = [one for one in asked if one not in allowed and not one.startswith("writes /proc/self/fd/")]
    assert [one.split()[0] for one in others] == ["os.link"] * len(written)
    assert [one.split()[-1] for one in others] == written
    assert whole.read_bytes() == before
    assert [str(path) for path in tmp_path.iterdir()] == written


def test_the_largest_workbook_that_is_made_is_read_within_the_limits(tmp_path: Path) -> None:
    """With every row filled, by processes of their own: the promise of seconds and of memory is `bounded`'s."""
    start = datetime.date(2026, 1, 1)
    lines = [
        f"{start + datetime.timedelta(number // 10)},{number % 7 + 1},2.{number % 9}" for number in range(MOST_ROWS)
    ]
    (tmp_path / "log.csv").write_text("\n".join(["date,volume,brix", *lines]), encoding="utf-8")
    for command in (["new", "season.xlsx", "--collection", "log.csv"], ["check", "season.xlsx"]):
        run = subprocess.run(
            [sys.executable, "-m", "sheetfuncs.cli", *command], cwd=tmp_path, capture_output=True, text=True
        )
        assert run.returncode == 0, run.stdout + run.stderr
