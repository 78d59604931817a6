"""A few workbooks edited at random; as many as one likes: python -m tests.tools.edited_at_random MINUTES"""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.tools.edited_at_random import Lost, run
from tests.tools.edits import Written


@pytest.mark.parametrize("number", range(100, 106))
def test_nothing_typed_is_lost(number: int, written: Written, tmp_path: Path) -> None:
    run(number, tmp_path, {system: written(system) for system in ("US", "metric")})


def test_what_is_lost_would_be_found(written: Written, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Without the list of what was carried, something is missing."""
    monkeypatch.setattr("sheetfuncs.workbook.commands.renew.carried.Carried._own", lambda self: iter(()))
    monkeypatch.setattr("sheetfuncs.workbook.commands.renew.carried.Carried._typed_over", lambda self: iter(()))
    with pytest.raises(Lost):
        for number in range(100, 110):
            run(number, tmp_path, {system: written(system) for system in ("US", "metric")})
