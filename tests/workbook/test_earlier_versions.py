"""A workbook of every format that was released stays readable: tests/kept holds one of each.

They are never made anew.  When `book.FORMAT` goes up, the workbook of the new format is added with

    python -m tests.workbook.test_earlier_versions
"""

from __future__ import annotations

from pathlib import Path

import pytest

from sheetfuncs import cli
from sheetfuncs.workbook.commands.check.check import check_file
from sheetfuncs.workbook.model.parts import ASK, MEND
from sheetfuncs.workbook.read.filled import Filled
from sheetfuncs.workbook.season import FORMAT, STAMP_FORMAT
from tests.tools.edits import example

FOLDER = Path(__file__).parents[1] / "kept"
KEPT = sorted(FOLDER.glob("format-*.xlsx"))


def test_the_format_of_today_is_kept() -> None:
    assert f"format-{FORMAT}.xlsx" in [path.name for path in KEPT]


@pytest.mark.parametrize("path", KEPT, ids=lambda path: path.stem)
def test_it_is_read_checked_and_written_anew(path: Path, tmp_path: Path) -> None:
    """The sums are those of the example's logs, by hand: 15 runs, 117 gal, 19 lots, 5 boils, 8 + 7 + 1 jars."""
    filled = Filled(path)
    inputs = filled.season.inputs
    assert filled.contents.properties[STAMP_FORMAT] == path.stem.partition("-")[2]
    assert list(filled.gone()) == []
    assert sum(inputs["collection.sap"]) == 117
    assert [len(inputs[name]) for name in ("collection.date", "storage.lot", "boil.date")] == [15, 19, 5]
    assert sum(inputs["bottles.filled"]) == 16
    assert not [one for one in check_file(path) if one.weight in (MEND, ASK)]
    for command in (["convert", str(path), str(tmp_path / "a.xlsx"), "--units", "metric"],
                    ["handover", str(path), str(tmp_path / "b.xlsx")]):  # fmt: skip
        assert cli.main(command) == 0


if __name__ == "__main__":
    example().write(FOLDER / f"format-{FORMAT}.xlsx", "carried")
