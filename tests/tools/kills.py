"""Commands that are killed at random moments while they work: the old file or the new one, never a part.

    python -m tests.tools.kills [HOW MANY]

kills `new`, `convert` and `report` with each of the signals, and looks at what is left in the folder
and in the place for temporary files.
"""

from __future__ import annotations

import os
import random
import signal
import subprocess
import sys
import tempfile
import time
from collections import Counter
from pathlib import Path

from tests.tools.edits import example

SIGNALS = (signal.SIGINT, signal.SIGTERM, signal.SIGHUP, signal.SIGKILL)
READY = "import sys; from sheetfuncs import cli; print('ready', flush=True); sys.exit(cli.main())"
OLD = b"what stood there before"
LONGEST = 3.0  # seconds that a command may take here, and then it is let alone


def kill_some(many: int, folder: Path, seed: int = 0) -> Counter[str]:
    """How the commands ended; an AssertionError where something is not as it should be."""
    dice = random.Random(seed)  # noqa: S311 (a die)
    whole, out, temporary = folder / "whole.xlsx", folder / "out", folder / "temporary"
    example().write(whole, "carried")
    read = whole.read_bytes()
    out.mkdir()
    temporary.mkdir()
    counted = Counter[str]()
    for number in range(many):
        name = dice.choice(("new.xlsx", "new.xlsx", "page.html"))
        there = dice.random() < 0.5
        command = {
            "new.xlsx": dice.choice((["new", str(out / name)], ["convert", str(whole), str(out / name)])),
            "page.html": ["report", str(whole), "--html", str(out / name)],
        }[name]
        if there:
            (out / name).write_bytes(OLD)
            command.append("--replace")
        which, wait = dice.choice(SIGNALS), dice.random() * LONGEST * 0.6
        code, said = _killed(command, which, wait, temporary)
        whom = f"{command[0]}, {which.name} after {wait:.3f} s (number {number})"
        left = {path.name: path.read_bytes() for path in out.iterdir()}
        counted[_state(left, name, there, whom)] += 1
        assert code in (0, -which, 128 + which), f"{whom}: ended with {code}: {said}"
        assert said.count("\n") <= 1, f"{whom}: {said}"
        assert "Traceback" not in said, f"{whom}: {said}"
        assert not list(temporary.iterdir()), f"{whom}: left in the temporary folder: {list(temporary.iterdir())}"
        assert whole.read_bytes() == read, f"{whom}: the workbook that is read has changed"
        for path in out.iterdir():
            path.unlink()
    return counted


def _killed(command: list[str], which: signal.Signals, wait: float, temporary: Path) -> tuple[int, str]:
    process = subprocess.Popen(
        [sys.executable, "-c", READY, *command],
        stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True, env={**os.environ, "TMPDIR": str(temporary)},
    )  # fmt: skip
    assert process.stdout
    assert process.stdout.readline() == "ready\n"
    time.sleep(wait)
    process.send_signal(which)
    _, said = process.communicate(timeout=60)
    return process.returncode, said


def _state(left: dict[str, bytes], name: str, there: bool, whom: str) -> str:
    """Whether the old file is there, the new one, or none; a season that was replaced is kept beside."""
    kept = [other for other in left if other != name]
    assert len(kept) <= 1, f"{whom}: {sorted(left)}"
    assert all("(before)" in other and left[other] == OLD for other in kept), f"{whom}: {sorted(left)}"
    content = left.get(name)
    if content is None:
        assert not there, f"{whom}: the old file is gone"
        return "no file"
    if content == OLD:
        return "the old file"
    whole = (content.startswith(b"PK") and b"PK\x05\x06" in content[-22:]) or content.endswith(b"</html>\n")
    assert whole, f"{whom}: a part of a file"
    return "the new file"


def main() -> None:
    many = int(sys.argv[1]) if len(sys.argv) > 1 else 200
    with tempfile.TemporaryDirectory() as name:
        counted = kill_some(many, Path(name), seed=int(time.time()))
    print(f"{many} kills: " + ", ".join(f"{count} times {words}" for words, count in counted.items()))


if __name__ == "__main__":
    main()
