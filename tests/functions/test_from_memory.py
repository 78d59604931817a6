"""What is said to be remembered is on one page, with what would settle it; and nothing else is there."""

from __future__ import annotations

import csv
import re
from collections import Counter
from pathlib import Path

ROOT = Path(__file__).parents[2]
PAGE = ROOT / "tests" / "FROM_MEMORY.md"
PHRASE = "from " + "memory"  # in two pieces: this file is searched as well
ABOUT_IT = ("tests/hosts/test_reference.py", "tests/workbook/test_reader.py")  # they speak of the words, or of a file


def listed(heading: str) -> list[list[str]]:
    """The rows of a table of the page."""
    part = PAGE.read_text(encoding="utf-8").split(f"## {heading}\n")[1].split("\n## ")[0]
    rows = [[cell.strip() for cell in line.strip("|").split("|")] for line in part.splitlines() if line[:1] == "|"]
    return rows[2:]


def test_reference_values() -> None:
    found: Counter[tuple[str, str]] = Counter()
    for path in sorted((ROOT / "tests/reference/functions").glob("*.csv")):
        with path.open(encoding="utf-8", newline="") as file:
            for line in csv.DictReader(file):
                found[path.stem, line["source"]] += any(PHRASE in cell for cell in line.values())
    expected = {(table, source): int(rows) for table, source, rows, _ in listed("Reference values")}
    assert {key: rows for key, rows in found.items() if rows} == expected


def test_code_and_tests() -> None:
    found = {}
    for path in sorted([*(ROOT / "sheetfuncs").rglob("*.py"), *(ROOT / "tests").rglob("*.py")]):
        name = path.relative_to(ROOT).as_posix()
        text = " ".join(re.sub('[#"]', " ", path.read_text(encoding="utf-8")).split())  # over the ends of lines
        if times := text.count(PHRASE):
            found[name] = times
    expected = {name: int(times) for name, times, *_ in listed("Code and tests")}
    assert {name: times for name, times in found.items() if name not in ABOUT_IT} == expected


def test_each_entry_says_what_would_settle_it() -> None:
    for heading in ("Reference values", "Code and tests"):
        assert listed(heading)
        for row in listed(heading):
            assert all(row), row
