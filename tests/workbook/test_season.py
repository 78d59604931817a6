"""Whole seasons computed by the embedded engine."""

from __future__ import annotations

import csv
import datetime
from pathlib import Path
from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from sheetfuncs import SAP_SUGAR
from sheetfuncs.workbook.commands.new.log import read_log
from sheetfuncs.workbook.commands.new.new import season_of
from sheetfuncs.workbook.model.parts import Table
from sheetfuncs.workbook.model.rows import Rows
from sheetfuncs.workbook.season import Season
from sheetfuncs.workbook.sheets.ledger import LINES, row

SMALL = Rows(collections=8, boils=4, happenings=4, waiting=8, batches=2, readings=8, bottlings=4, days=8)
ROOT = Path(__file__).parents[2]


def computed(system: str, inputs: dict[str, Any], rows: Rows = SMALL) -> Season:
    season = Season(system, inputs, rows, today=datetime.date(2026, 3, 28))
    season.compute()
    return season


def column(season: Season, name: str) -> list[Any]:
    return [season.value(name, offset) for offset in range(season.layout.spots[name].height)]


@pytest.fixture(scope="module")
def example() -> Season:
    season = season_of("US", Rows(), {}, with_example=True)
    season.compute()
    return season


def test_published_season_of_twelve_runs() -> None:
    """mapleacres.com, table of the 2018 season: 12 runs, 3,965 gal in all, about 101 gal bottled (the dates
    in our file are invented).  The sap itself says how much syrup that is, to 2 gal."""
    log = read_log(ROOT / "examples" / "twelve-runs.csv")
    season = computed("US", log | {"yard.typed_taps": 511}, Rows(collections=12))
    assert season.value("season.sap") == pytest.approx(3965)
    assert season.value("season.expected") == pytest.approx(101, abs=2)
    assert season.value("season.days") == 12
    assert season.value("season.sap_per_tap") == pytest.approx(3965 / 511)


def test_no_formula_of_any_sheet_gives_an_error(example: Season) -> None:
    for season in (example, computed("US", {}), computed("metric", {})):
        for title, cells in season.values.items():
            wrong = {cell: value for cell, value in cells.items() if isinstance(value, str) and value.startswith("#")}
            assert not wrong, title


ALWAYS = {
    "ledger",
    "this",
    "batches",
    "plan",
    "by_batch",
    "by_barometer",
    "by_elevation",
    "by_strength",
    "by_cup",
}  # never empty


def test_empty_rows_stay_empty() -> None:
    season = computed("US", {})
    shown = {}
    for sheet in season.sheets:
        for block in sheet.blocks:
            if not isinstance(block, Table) or block.key in ALWAYS or any(one.fixed for one in block.columns):
                continue
            for one in block.columns:
                if one.formula and not one.hidden and not any(other.starts for other in block.columns):
                    shown[f"{block.key}.{one.key}"] = set(column(season, f"{block.key}.{one.key}"))
    assert {name: values for name, values in shown.items() if values != {""}} == {}


DATE = datetime.date(2026, 3, 14)


def amounts(least: float, most: float) -> st.SearchStrategy[float]:
    return st.floats(least, most).map(lambda value: round(value, 2))


@settings(max_examples=25, deadline=None, derandomize=True, suppress_health_check=[HealthCheck.too_slow])
@given(
    runs=st.lists(
        st.tuples(amounts(0.5, 40), amounts(0.5, 9), amounts(0, 0.5), amounts(0, 0.4)), min_size=1, max_size=8
    ),
    jars=st.lists(st.tuples(amounts(0.1, 3), amounts(60, 70)), max_size=4),
)
def test_sugar_in_is_sugar_out_and_sugar_lost(runs: list[tuple[float, ...]], jars: list[tuple[float, float]]) -> None:
    """Conservation of mass, worked out here from each row: the ledger closes over random seasons."""
    season = computed(
        "US",
        {
            "collection.date": [DATE] * len(runs),
            "collection.sap": [run[0] for run in runs],
            "collection.brix": [run[1] for run in runs],
            "collection.ice": [run[2] for run in runs],
            "collection.ice_brix": [run[3] for run in runs],
            "bottles.date": [DATE] * len(jars),
            "bottles.volume": [jar[0] for jar in jars],
            "bottles.brix": [jar[1] for jar in jars],
            "bottles.at": [68.0] * len(jars),  # as measured: hot, a jar holds less
        },
    )
    mass = {key: season.value("ledger.mass", row(key)) for key in LINES}
    kept = sum(SAP_SUGAR(sap, brix) for sap, brix, _, _ in runs)
    # what was in the ice: its mass is that share of all there was, the liquid is the rest
    ice = sum(SAP_SUGAR(sap, brix) / brix * share / (1 - share) * in_ice for sap, brix, share, in_ice in runs)
    bottled = sum(SAP_SUGAR(volume, brix) for volume, brix in jars)
    assert mass["trees"] == pytest.approx(kept + ice)
    assert mass["ice"] == pytest.approx(ice)
    assert mass["store"] == pytest.approx(kept)  # nothing was boiled
    assert mass["bottled"] == pytest.approx(bottled)
    assert mass["trees"] == pytest.approx(sum(mass[key] for key in ("ice", "thrown", "store", "bottled", "missing")))


def test_the_log_of_the_example_folder_is_what_the_guide_says() -> None:
    with (ROOT / "examples" / "twelve-runs.csv").open() as file:
        assert csv.DictReader(file).fieldnames == ["date", "volume", "brix"]
