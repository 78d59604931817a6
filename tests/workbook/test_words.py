"""Words to the next keeper: written where one is typing anyway, printed by report and handover."""

from __future__ import annotations

import datetime
from pathlib import Path

import openpyxl
import pytest

from sheetfuncs import cli
from sheetfuncs.workbook.season import Season
from tests.tools.edits import SMALL

LINES = [
    "Mar 14: Hang the pails on the south side first.",
    "Boil B1, Mar 7: split the wood finer",
    "Batch 1: like caramel; filter while it boils.",
]


def test_what_was_noted_along_the_way_is_told(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    inputs = {
        "boil.date": [datetime.date(2026, 3, 7)],
        "boil.note": ["split the wood finer"],
        "batches.taste": ["like caramel"],
        "batches.note": ["filter while it boils"],
        "words.date": [datetime.date(2026, 3, 14)],
        "words.words": ["Hang the pails on the south side first."],
    }
    Season("US", inputs, SMALL).write(tmp_path / "a.xlsx", "linked")
    assert cli.main(["report", str(tmp_path / "a.xlsx")]) == 0
    said = capsys.readouterr().out.splitlines()
    first = said.index("Words to the next keeper") + 1
    assert [line.strip() for line in said[first : first + 3]] == LINES
    assert cli.main(["handover", str(tmp_path / "a.xlsx"), str(tmp_path / "b.xlsx")]) == 0
    book = openpyxl.load_workbook(tmp_path / "b.xlsx", read_only=True)
    cells = {cell for row in book["Newcomer"].iter_rows(values_only=True) for cell in row}
    assert cells >= set(LINES)
