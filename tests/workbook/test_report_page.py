"""The report's page: the season in order, and whether everybody can read it."""

from __future__ import annotations

from argparse import Namespace
from pathlib import Path

import pytest

from sheetfuncs.workbook.commands.report.report import report
from sheetfuncs.workbook.commands.report.told import story
from sheetfuncs.workbook.season import Season
from tests.tools import axe, browser
from tests.tools.templates import filled


@pytest.fixture(scope="module")
def page(tmp_path_factory: pytest.TempPathFactory) -> Path:
    folder = tmp_path_factory.mktemp("page")
    path, out = folder / "season.xlsx", folder / "report.html"
    filled(path, "US", "inline")
    assert report(Namespace(files=[str(path)], html=str(out), replace=False)) == 0
    return out


@pytest.mark.parametrize("dark", [False, True], ids=["light", "dark"])
@pytest.mark.parametrize("width", axe.WIDTHS)
def test_axe_finds_nothing(page: Path, width: int, dark: bool) -> None:
    browser.needed()
    assert axe.told(axe.violations(page, width, dark)) == ""


def test_axe_would_find_it(page: Path) -> None:
    browser.needed()
    pale = page.with_name("pale.html")
    text = page.read_text(encoding="utf-8")
    pale.write_text(text.replace("--ink: #222222", "--ink: #cccccc", 1), encoding="utf-8")
    assert "color-contrast" in axe.told(axe.violations(pale, axe.WIDTHS[0]))


def test_the_season_is_told_in_order() -> None:
    days = [46075.0, 46080.0, None]
    season = Season(
        "US",
        {
            "collection.date": [days[1], days[0], None],
            "collection.sap": [8.0, 3.0, None],
            "words.date": [46100.0],
            "words.words": ["Wash the pails sooner."],
        },
    )
    season.compute()
    assert story(season) == [
        ("Feb 22, 2026", "The first run: 3.0 gal of sap."),
        ("Feb 27, 2026", "The best run: 8.0 gal of sap."),
        ("Mar 19, 2026", "Wash the pails sooner."),
    ]


def test_a_season_without_a_row_has_no_story() -> None:
    season = Season("metric", {})
    season.compute()
    assert story(season) == []
