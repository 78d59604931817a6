"""Each sheet in a window of LibreOffice, as wide as a laptop and as a phone."""

from __future__ import annotations

import subprocess
from pathlib import Path

import pytest

from sheetfuncs.workbook.season import Season
from tests.tools import office, screens
from tests.tools.templates import filled

FEWEST = 40  # colours and shades of a picture with letters in it


@pytest.fixture(scope="module")
def pictures(tmp_path_factory: pytest.TempPathFactory) -> dict[str, Path]:
    office.needed()
    screens.needed()
    folder = tmp_path_factory.mktemp("screens")
    path = folder / "season.xlsx"
    filled(path, "US", "inline")
    return {picture.stem: picture for picture in screens.take(path, screens.titles(path), folder)}


def test_every_sheet_shows_on_a_laptop_and_on_a_phone(pictures: dict[str, Path]) -> None:
    due = {sheet.title.lower().replace(" ", "-") for sheet in Season("US", {}).sheets}
    assert {f"{name}-{size}" for name in due for size in ("laptop", "phone")} <= set(pictures)
    for name, picture in pictures.items():
        told = subprocess.run(
            ["identify", "-format", "%w %h %k", str(picture)], capture_output=True, text=True, check=True
        )
        width, height, colours = map(int, told.stdout.split())
        assert (width, height) == (screens.PHONE if name.endswith("phone") else screens.LAPTOP)
        assert colours >= FEWEST, f"{name} is blank"


def test_no_two_sheets_look_alike(pictures: dict[str, Path]) -> None:
    assert len({picture.read_bytes() for picture in pictures.values()}) == len(pictures)
