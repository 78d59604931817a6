"""The generated files are those that this version makes."""

from __future__ import annotations

import zipfile
from pathlib import Path

import pytest

from tests.tools.templates import GENERATED, ROOT


@pytest.mark.parametrize("name", GENERATED)
def test_a_generated_file_is_up_to_date(name: str, tmp_path: Path) -> None:
    made = tmp_path / Path(name).name
    GENERATED[name](made)
    assert unpacked(made) == unpacked(ROOT / name), "run: python -m tests.tools.templates"


def unpacked(path: Path) -> object:
    """Name, date and bytes of each part; how they are squeezed depends on the machine's zlib.  A script's bytes."""
    if path.suffix in (".bas", ".gs"):
        return path.read_bytes()
    with zipfile.ZipFile(path) as archive:
        return [(part.filename, part.date_time, archive.read(part)) for part in archive.infolist()]


def test_the_same_workbook_is_made_byte_for_byte(tmp_path: Path) -> None:
    for name in ("templates/season-us.xlsx", "templates/season-metric-carried.xlsx", "templates/sheetfuncs.oxt"):
        one, other = tmp_path / f"1-{Path(name).name}", tmp_path / f"2-{Path(name).name}"
        GENERATED[name](one)
        GENERATED[name](other)
        assert one.read_bytes() == other.read_bytes(), name


def test_nothing_else_stands_in_templates() -> None:
    assert {f"templates/{path.name}" for path in (ROOT / "templates").iterdir()} == {
        name for name in GENERATED if name.startswith("templates/")
    }
