"""A workbook that another library opened and saved: nothing that was typed is lost, and what it dropped is said."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest

from sheetfuncs.workbook.commands.check.check import check_filled
from sheetfuncs.workbook.model.parts import TELL
from sheetfuncs.workbook.read.filled import Filled, read
from tests.tools import office
from tests.tools.edits import Written

SAVERS = Path(__file__).parents[1] / "tools" / "savers"
LIBRARIES = Path(sys.prefix) / "savers" / "node_modules"  # where tests/run installs them


def saved(library: str, source: Path, target: Path) -> Filled:
    """The workbook as a library of JavaScript writes it again, every cell and style of it."""
    office.program("node")
    if not (LIBRARIES / library).is_dir():
        office.missing(f"needs {library}, which tests/run installs")
    words = ["node", str(SAVERS / "save.js"), library, str(source), str(target)]
    subprocess.run(words, check=True, timeout=120, env=os.environ | {"NODE_PATH": str(LIBRARIES)})
    return read(target)


@pytest.mark.parametrize("edition", ["inline", "carried"])
@pytest.mark.parametrize("library", ["xlsx", "exceljs"])
def test_nothing_typed_is_lost(library: str, edition: str, written: Written, tmp_path: Path) -> None:
    source = written("US", edition)
    before, after = read(source), saved(library, source, tmp_path / "saved.xlsx")
    assert after.season.inputs == before.season.inputs
    assert list(after.gone()) == []
    known = check_filled(before)
    new = [one for one in check_filled(after) if one not in known and one.weight != TELL]
    dropped = library == "exceljs" and edition == "carried"  # it writes names of ranges, and none of functions
    assert ["dropped its names" in one.sentence for one in new] == [True] * dropped
