"""The generated files are those that this version makes."""

from __future__ import annotations

from pathlib import Path

import pytest

from templates import GENERATED, ROOT


@pytest.mark.parametrize("name", GENERATED)
def test_a_generated_file_is_up_to_date(name: str, tmp_path: Path) -> None:
    made = tmp_path / Path(name).name
    GENERATED[name](made)
    assert made.read_bytes() == (ROOT / name).read_bytes(), "run: python -m tests.templates"


def test_nothing_else_stands_in_templates() -> None:
    assert {f"templates/{path.name}" for path in (ROOT / "templates").iterdir()} == {
        name for name in GENERATED if name.startswith("templates/")
    }
