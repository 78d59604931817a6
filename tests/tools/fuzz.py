"""Damaged workbooks, hostile texts, bad logs and random command lines, for as long as one likes.

    python -m tests.tools.fuzz [MINUTES [SEED [FOLDER]]]

Every command must end in 20 seconds with 0, 1 or 2, at most one line of complaint, nothing but its own
output written, and what it reads unchanged.  What fails is kept in FOLDER (fuzzed, if left out) with the
command and the error beside it; the counts are printed.
"""

from __future__ import annotations

import contextlib
import datetime
import io
import random
import shutil
import sys
import tempfile
import time
import traceback
from collections import Counter
from collections.abc import Callable
from pathlib import Path
from typing import Any, NamedTuple

from sheetfuncs import cli
from sheetfuncs.formulas.catalogue import CATALOGUE
from sheetfuncs.workbook.model.editions import EDITIONS
from sheetfuncs.workbook.read.filled import read
from tests.tools.damage import as_ods, damaged
from tests.tools.edits import SMALL, example, typed
from tests.tools.hostile import SECONDS

TEXTS = (
    "", " ", "=1+1", "'", '"', "<b>&amp;", "]]>", "\N{MAPLE LEAF}", "a\nb", "\x0b", "a" * 40_000, "_x000D_", "#N/A",
    "5 gal", "3,5", "hardwood ", "Hardwood", "snow bin 1", "Batch 1", "Collection", "Look", "0", "1e999", "-0", "TRUE",
)  # fmt: skip
NUMBERS = (0, -1, 1e-300, 0.1, 36.5, 46095, 1e17, 1.7e308, -1.7e308, 20260301, 2958466, 2958465, -1e6, 5e-324)
DAYS = (datetime.date(2026, 3, 14), datetime.date(1900, 3, 1), datetime.date(9999, 12, 31), datetime.time(14, 30))
COMMANDS = (
    "new", "check", "report", "convert", "handover", "compare", "merge", "forecast", "carry", "functions",
    "calc-addin", "excel-addin",
)  # fmt: skip
TOLD_BY_CODE = ("check", "compare", "merge")  # 1 where they have something to say
WORDS = (
    *COMMANDS, "--units", "us",
    "metric", "--edition", "inline", "--season", "--elevation", "650 ft", "5**9 ft", "--example", "--collection",
    "--rows", "3", "--replace", "--html", "--json", "--help", "--version", "--", "-x", "", "a.xlsx", "b.xlsx",
    "a.html", "c.oxt", "log.csv", "folder", ".", "..", "/dev/null", "/dev/full", "/proc/self/mem", "a\0b", "a\nb",
    "a" * 300, "FINISH_TEMP", "\udcff.xlsx", "whole.xlsx", "whole.ods", "*",
)  # fmt: skip
LOG = "date,volume,brix\n" + "".join(f"2026-03-{day:02},{day / 2},2.1\n" for day in range(1, 29))


class Failed(Exception):
    """A command did what none may do."""


class Round(NamedTuple):
    """One command, and the file that it is about."""

    kind: str
    command: list[str]
    file: str = ""


def _reading(dice: random.Random, file: str) -> list[str]:
    return dice.choice(
        (
            ["check", file],
            ["check", file, "--json"],
            ["report", file, "--html", "a.html"],
            ["convert", file, "b.xlsx", "--units", dice.choice(("us", "metric"))],
            ["convert", file, "b.xlsx", "--edition", dice.choice(list(EDITIONS))],
            ["handover", file, "b.xlsx"],
            ["compare", file, "whole.xlsx"],
            ["merge", file, "whole.xlsx", "b.xlsx"],
            ["merge", "whole.xlsx", file, "b.xlsx"],
            ["carry", file, "b.xlsx"],
        )
    )


class Fuzz:
    """Draws rounds and runs them in a folder of their own."""

    def __init__(self, folder: Path, seed: int) -> None:
        self.folder, self.dice = folder, random.Random(seed)  # noqa: S311 (a die)
        self.workbooks = {}
        for edition in EDITIONS:
            example().write(folder / "whole.xlsx", edition)
            self.workbooks[edition] = (folder / "whole.xlsx").read_bytes()
        self.workbooks["ods"] = as_ods(folder / "whole.xlsx")
        (folder / "whole.ods").write_bytes(self.workbooks["ods"])
        self.kinds: tuple[Callable[[], Round], ...] = (self.damage, self.damage, self.fill, self.log, self.words)

    def damage(self) -> Round:
        """A workbook with some damage."""
        which = self.dice.choice(list(self.workbooks))
        file = "damaged.ods" if which == "ods" else "damaged.xlsx"
        (self.folder / file).write_bytes(damaged(self.workbooks[which], self.dice))
        return Round(f"damaged {which}", _reading(self.dice, file), file)

    def fill(self) -> Round:
        """A workbook with anything typed into a few or all of its cells."""
        season = example(self.dice.choice(("US", "metric")), SMALL)
        share, edits = self.dice.choice((0.01, 0.1, 1.0)), {}
        for name, what in season.cells.items():
            rows = range(1, season.layout.spots[name].height + 1) if hasattr(what, "heading") else (0,)
            for row in rows:
                if what.typed and self.dice.random() < share:
                    edits[(name, row) if row else name] = self.dice.choice(self.dice.choice((TEXTS, NUMBERS, DAYS)))
        edits = {name: value[:32_767] if isinstance(value, str) else value for name, value in edits.items()}
        typed(season, edits).write_uncomputed(self.folder / "filled.xlsx")
        return Round("filled", _reading(self.dice, "filled.xlsx"), "filled.xlsx")

    def log(self) -> Round:
        """A log with some damage."""
        text = LOG.replace(",", self.dice.choice((",", ",", ";", "\t")))
        for _ in range(self.dice.choice((0, 1, 1, 5, 50))):
            place = self.dice.randrange(len(text))
            piece = self.dice.choice(("", ",", ";", '"', "\n", "\r", "\0", "\u2028", "-", "9" * 400, "\ufeff", "1"))
            text = text[:place] + piece + text[place + self.dice.choice((0, 1, 9)) :]
        encoding = self.dice.choice(("utf-8", "utf-8", "utf-8-sig", "utf-16", "latin-1"))
        (self.folder / "log.csv").write_bytes(text.encode(encoding, "replace"))
        reads = (["new", "b.xlsx", "--collection", "log.csv"], ["forecast", "log.csv"])
        return Round("log", self.dice.choice(reads), "log.csv")

    def words(self) -> Round:
        """A command line of anything."""
        words = [*WORDS, self.dice.choice(list(CATALOGUE))]
        command = [self.dice.choice(COMMANDS), *(self.dice.choice(words) for _ in range(self.dice.randrange(6)))]
        return Round("command line", command)

    def run(self) -> tuple[Round, str, float]:
        """One round: what it was, how it ended, and the seconds it took."""
        one = self.dice.choice(self.kinds)()
        before = _files(self.folder)
        out, said, start = io.StringIO(), io.StringIO(), time.process_time()
        try:
            with contextlib.chdir(self.folder), contextlib.redirect_stdout(out), contextlib.redirect_stderr(said):
                code = cli.main(one.command)
        except BaseException as error:
            raise Failed(f"{one}: {type(error).__name__}\n{traceback.format_exc()}") from error
        seconds = time.process_time() - start
        after = _files(self.folder)
        new = after.keys() - before.keys()
        checks = {
            "a code of no meaning": code in (0, 1, 2),
            "1 without anything to mend": code != 1
            or one.command[0] in TOLD_BY_CODE
            or any(words in out.getvalue() for words in ("not ", "passed over")),
            "more than one line": said.getvalue().count("\n") == (code == 2),
            "too slow": seconds < SECONDS,
            "something changed that was there": all(after.get(name) == content for name, content in before.items())
            or "--replace" in one.command,
            "something written by a command that refused": code != 2 or not new,
        }
        if one.kind == "filled" and code == 0 and one.command[0] == "convert" and "--units" not in one.command:
            checks["something typed is lost"] = _typed(self.folder / one.file) == _typed(self.folder / "b.xlsx")
        wrong = [words for words, holds in checks.items() if not holds]
        if wrong:
            raise Failed(f"{one}: {', '.join(wrong)} ({code}, {seconds:.1f} s, {sorted(new)})\n{said.getvalue()}")
        for name in (*new, *(name for name in after if after[name] != before.get(name))):
            path = self.folder / name
            shutil.rmtree(path) if path.is_dir() else path.unlink(missing_ok=True)
        for name, content in before.items():
            if content and not (self.folder / name).exists():
                (self.folder / name).write_bytes(content)
        return one, ("done", "to mend", "refused")[code], seconds


def _typed(path: Path) -> dict[str, Any]:
    return {name: value for name, value in read(path).season.inputs.items() if value not in (None, [])}


def _files(folder: Path) -> dict[str, bytes]:
    """Everything in the folder; of folders in it, their names."""
    return {path.name: path.read_bytes() if path.is_file() else b"" for path in folder.iterdir()}


def fuzz(seconds: float, rounds: int, seed: int, keep: Path | None = None) -> tuple[Counter[str], list[str], float]:
    """Rounds until the time or their number is over: counts, what failed, and the slowest."""
    counted, failed, slowest, until = Counter[str](), [], 0.0, time.monotonic() + seconds
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name) / "here"  # with a folder above it that is ours too: `report ..` reads that one
        folder.mkdir()
        drawn = Fuzz(folder, seed)
        while time.monotonic() < until and counted.total() < rounds:
            try:
                one, ended, took = drawn.run()
            except Failed as failure:
                failed.append(str(failure))
                counted["failed"] += 1
                if keep:
                    _keep(folder, keep / f"{seed}-{counted.total()}", str(failure))
                continue
            counted[f"{one.kind}: {ended}"] += 1
            slowest = max(slowest, took)
    return counted, failed, slowest


def _keep(folder: Path, place: Path, words: str) -> None:
    place.mkdir(parents=True, exist_ok=True)
    for path in folder.iterdir():
        if path.is_file():
            shutil.copy(path, place)
    (place / "failure.txt").write_text(words, encoding="utf-8", errors="backslashreplace")


def main() -> int:
    minutes = float(sys.argv[1]) if len(sys.argv) > 1 else 10.0
    seed = int(sys.argv[2]) if len(sys.argv) > 2 else int(time.time())
    keep = Path(sys.argv[3] if len(sys.argv) > 3 else "fuzzed").absolute()
    counted, failed, slowest = fuzz(minutes * 60, sys.maxsize, seed, keep)
    for words, count in sorted(counted.items()):
        print(f"{count:7,}  {words}")
    print(f"{counted.total():7,}  in all; seed {seed}, slowest {slowest:.1f} s")
    for words in failed[:10]:
        print(words)
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main())
