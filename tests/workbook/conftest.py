"""What the tests of the workbook share."""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.tools.edits import Written


@pytest.fixture(scope="session")
def written(tmp_path_factory: pytest.TempPathFactory) -> Written:
    """The small example as a file, in any system and edition; nobody may change it."""
    return Written(tmp_path_factory.mktemp("written"))


@pytest.fixture(scope="session")
def whole(written: Written) -> Path:
    """The small example in US units, carried."""
    return written("US", "carried")
