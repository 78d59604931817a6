"""Whole seasons computed by the embedded engine."""

from __future__ import annotations

import csv
import datetime
from pathlib import Path
from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from sheetfuncs import BOIL_BRIX, BOIL_WATER, FINISH_READING, SAP_SUGAR, SYRUP_FROM_SAP
from sheetfuncs.workbook.commands.new.log import read_log
from sheetfuncs.workbook.commands.new.new import season_of
from sheetfuncs.workbook.model.parts import Column, Fields, Rows, Table
from sheetfuncs.workbook.season import Season
from sheetfuncs.workbook.sheets.season import LEDGER

SMALL = Rows(collections=8, lots=8, boils=4, batches=2, readings=8, bottlings=4)
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


def test_empty_rows_stay_empty() -> None:
    season = computed("US", {})
    for sheet in season.sheets:
        for block in sheet.blocks:
            if not isinstance(block, Table) or block.key in ("ledger", "this", "by_barometer", "by_elevation"):
                continue
            shown = [one for one in block.columns if one.formula and not one.hidden]
            if any(one.fixed for one in block.columns) or block.key == "forecast":
                continue
            for one in shown:
                assert set(column(season, f"{block.key}.{one.key}")) == {""}, f"{block.key}.{one.key}"


def test_the_example_gives_no_look_sentence(example: Season) -> None:
    for system in ("US", "metric"):
        season = example if system == "US" else season_of(system, Rows(), {}, with_example=True)
        season.values or season.compute()
        for name in season.layout.spots:
            if name.endswith(".look"):
                assert not [text for text in column(season, name) if text], name


def test_weekend_answers_of_the_example(example: Season) -> None:
    """Each answer against the numbers typed in the example, worked out here again."""
    waiting = [(10.5, 1.7), (5.0, 1.7), (0.6, 28.7), (0.6, 24.2)]
    syrup = sum(SYRUP_FROM_SAP(volume, brix, 66.9) for volume, brix in waiting)
    assert example.value("now.syrup_number") == pytest.approx(syrup)
    assert example.value("now.first") == "Lot J6, 0.6 gal of part-boiled sap: boil it by 2 Apr."
    assert example.value("now.first_days") == pytest.approx(8.57 - 3, abs=0.02)  # 3 days at 37 °F
    assert example.value("now.room_number") == pytest.approx(20 + 20 + 8 + 8 + 2 + 4 - 10.5 - 5 - 0.6 - 0.6)
    hours = (16.7 - syrup) / example.value("yard.rate")
    assert example.value("now.hours") == pytest.approx(hours)
    assert example.value("now.pull") == "Leave the taps in."
    assert example.value("now.probe") == 1


def test_the_second_example_has_its_mistakes_caught() -> None:
    season = season_of("US", Rows(), {}, with_example=True, mistakes=True)
    season.compute()
    said = {
        name: {row: text for row, text in enumerate(column(season, name), 1) if text}
        for name in ("collection.look", "storage.look", "boil.look")
    }
    assert said["collection.look"] == {
        4: "Sugar over 10 °Brix: is this sap?",
        6: "Sap is text, not a number: type the number alone.",
        9: "The date is text: type it again as a date.",
    }
    assert said["storage.look"][3] == "Two lots have this name."
    assert said["storage.look"][8] == "This lot went into two boils."
    assert said["boil.look"][2] == "It ends before it starts: past midnight, use two rows."
    assert said["boil.look"][3] == "Sugar was gained: is a lot missing, or a reading wrong?"
    assert said["boil.look"][4] == "A lot here is not in Storage, or is there twice."


DATE = datetime.date(2026, 3, 14)
LOOKS: list[tuple[str, dict[str, Any], str]] = [
    ("collection", {"date": DATE, "sap": 4.0}, "No °Brix: this sap is counted without its sugar."),
    ("collection", {"sap": 4.0, "brix": 2.0}, "When was it collected?"),
    ("collection", {"date": DATE, "sap": 4.0, "brix": 0.2}, "Hardly any sugar: rain in the pails, or ice melted in?"),
    ("collection", {"date": DATE, "sap": -4.0, "brix": 2.0}, "Sap is less than nothing: is the sign right?"),
    ("collection", {"date": DATE, "sap": 4.0, "brix": 90.0}, "°Brix must be 0 to 85."),
    ("collection", {"date": datetime.date(2026, 5, 1), "sap": 4.0, "brix": 2.0}, "This day is still to come."),
    ("collection", {"date": DATE, "sap": 4.0, "brix": 2.0, "ice": 0.6, "ice_brix": 0.5},
     "Over half thrown out as ice: much sugar went with it. Let some melt."),
    ("collection", {"date": DATE, "sap": 9.0, "brix": 2.0, "container": "can"}, "More than this container holds."),
    ("storage", {"lot": "A", "put": DATE, "volume": 9.0, "brix": 2.0, "container": "can"},
     "This container holds more than it can."),
    ("storage", {"lot": "A", "put": datetime.date(2026, 3, 1), "volume": 2.0, "brix": 30.0},
     "Past its time: smell and look; throw it out if it is off."),
    ("storage", {"put": DATE, "volume": 2.0, "brix": 2.0}, "Give this lot a name."),
    ("storage", {"lot": "A", "put": DATE, "volume": "2 gal", "brix": 2.0},
     "Volume is text, not a number: type the number alone."),
    ("storage", {"lot": "A", "put": DATE, "volume": 2.0, "brix": 2.0, "used": datetime.date(2026, 3, 1)},
     "Used before it was put in."),
    ("storage", {"lot": "A", "put": DATE, "volume": 2.0, "brix": 60.0, "meant": 1.0},
     "Its batch is bottled: write the day under Used on."),
    ("boil", {"date": DATE, "lot_a": "none", "left": 1.0}, "A lot here is not in Storage, or is there twice."),
    ("boil", {"date": DATE, "sap": 10.0, "sap_brix": 2.0, "left": 11.0},
     "More came out than went in: is a lot missing?"),
    ("boil", {"date": DATE, "sap": 10.0, "sap_brix": 2.0, "left": 0.6, "left_brix": 20.0},
     "Over a tenth of the sugar is gone: spilled, or a reading wrong?"),
    ("boil", {"date": DATE, "start": datetime.time(9), "end": datetime.time(8)},
     "It ends before it starts: past midnight, use two rows."),
    ("boil", {"date": DATE, "water": 211.0, "reading": 209.0}, "It cannot boil colder than water: read both again."),
    ("bottles", {"date": DATE, "volume": 1.0, "brix": 64.0},
     "Thin: it can ferment or mould. Boil it again, or keep it cold and use it first."),
    ("bottles", {"date": DATE, "volume": 1.0, "brix": 70.0}, "Thick: it will crystallise. Stir in a little hot water."),
    ("bottles", {"date": DATE, "volume": 1.0, "brix": 66.9, "at": 150.0}, "Under 180 °F: too cool to seal safely."),
    ("trees", {"name": "T", "girth": 45.0, "taps": 3.0}, "More taps than it can bear."),
    ("forecast", {"low": 50.0, "high": 30.0}, "The low is above the high: swapped?"),
    ("thermometers", {"name": "t", "water": 190.0, "read_on": DATE},
     "Far from where water boils: was it boiling hard, and is the elevation right?"),
]  # fmt: skip


@pytest.mark.parametrize(("table", "row", "sentence"), LOOKS, ids=[sentence for _, _, sentence in LOOKS])
def test_a_doubtful_row_gets_its_sentence(table: str, row: dict[str, Any], sentence: str) -> None:
    typed = {f"{table}.{key}": [value] for key, value in row.items()}
    season = computed("US", {"containers.name": ["can"], "containers.holds": [5.0], "bottles.batch": [1.0]} | typed)
    assert column(season, f"{table}.look")[0] == sentence


def test_time_that_runs_backwards_is_said_in_the_readings() -> None:
    inputs = {
        "batch1.water_typed": 211.0,
        "readings1.time": [datetime.time(10), datetime.time(9)],
        "readings1.reading": [213.0, 214.0],
    }
    assert column(computed("US", inputs), "readings1.do")[1] == "Time runs backwards: check it."


def test_minutes_left_come_from_the_measured_pace() -> None:
    """A pan that loses 1.2 gal an hour, whatever Yard guesses: the minutes must be the true ones."""
    pace, boiling_water, syrup, target = 1.2, 211.0, 1.0, 66.9
    start = BOIL_BRIX(syrup, target, 2.0)
    to_boil_off = BOIL_WATER(2.0, start, target)
    times, readings, left = [], [], []
    for minutes in range(0, 30, 5):
        left.append((to_boil_off - pace * minutes / 60) / pace * 60)
        brix = strength_with(to_boil_off - pace * minutes / 60, syrup, target)
        times.append(datetime.time(10, minutes))
        readings.append(FINISH_READING(brix, boiling_water))
    inputs = {
        "batch1.volume_typed": 2.0,
        "batch1.brix_typed": start,
        "batch1.water_typed": boiling_water,
        "batch1.thermometer": "fine",
        "thermometers.name": ["fine"],
        "thermometers.error": [0.1],
        "yard.typed_rate": 9.0,
        "readings1.time": times,
        "readings1.reading": readings,
    }
    told = column(computed("US", inputs), "readings1.minutes")
    assert told[1:6] == pytest.approx(left[1:6], rel=0.001)


def strength_with(water: float, syrup: float, target: float) -> float:
    """Strength of what will be that much syrup once this water has left, by halving the interval."""
    low, high = 1.0, target
    for _ in range(60):
        middle = (low + high) / 2
        more = BOIL_WATER(SYRUP_FROM_SAP(syrup, target, middle), middle, target) > water
        low, high = (middle, high) if more else (low, middle)
    return low


def test_an_old_forecast_decides_nothing() -> None:
    """Days that are over do not count, and after three days a new forecast is asked for."""
    warm = {"forecast.low": [26.0] + [40.0] * 9, "forecast.high": [44.0] + [50.0] * 9}
    for starts, run, pull in (
        (datetime.date(2026, 3, 28), "Likely on 28 Mar.", "Pull the taps: 9 nights in a row stay above freezing."),
        (None, "Likely on 28 Mar.", "Pull the taps: 9 nights in a row stay above freezing."),
        (datetime.date(2026, 3, 24), "Not in this forecast.", "The forecast is over 3 days old: copy a new one."),
        (
            datetime.date(2026, 3, 1),
            "Copy a forecast into Forecast.",
            "The forecast is over 3 days old: copy a new one.",
        ),
    ):
        season = computed("US", warm | {"weekend.today": datetime.date(2026, 3, 28), "signs.starts": starts})
        assert (season.value("now.run"), season.value("now.pull")) == (run, pull)


def amounts(least: float, most: float) -> st.SearchStrategy[float]:
    return st.floats(least, most).map(lambda value: round(value, 2))


@settings(max_examples=25, deadline=None, derandomize=True, suppress_health_check=[HealthCheck.too_slow])
@given(
    runs=st.lists(
        st.tuples(amounts(0.5, 40), amounts(0.5, 9), amounts(0, 0.5), amounts(0, 0.4)), min_size=1, max_size=8
    ),
    stored=st.lists(st.tuples(amounts(0.1, 20), amounts(0.5, 60), st.booleans()), max_size=8),
    jars=st.lists(st.tuples(amounts(0.1, 3), amounts(60, 70)), max_size=4),
)
def test_sugar_in_is_sugar_out_and_sugar_lost(
    runs: list[tuple[float, ...]], stored: list[tuple[float, float, bool]], jars: list[tuple[float, float]]
) -> None:
    """Conservation of mass, worked out here from each row: the ledger closes over random seasons."""
    season = computed(
        "US",
        {
            "collection.date": [DATE] * len(runs),
            "collection.sap": [run[0] for run in runs],
            "collection.brix": [run[1] for run in runs],
            "collection.ice": [run[2] for run in runs],
            "collection.ice_brix": [run[3] for run in runs],
            "storage.lot": [f"L{number}" for number in range(len(stored))],
            "storage.put": [DATE] * len(stored),
            "storage.volume": [lot[0] for lot in stored],
            "storage.brix": [lot[1] for lot in stored],
            "storage.used": [DATE if lot[2] else None for lot in stored],
            "bottles.date": [DATE] * len(jars),
            "bottles.volume": [jar[0] for jar in jars],
            "bottles.brix": [jar[1] for jar in jars],
        },
    )
    ledger = dict(zip(LEDGER, column(season, "ledger.mass"), strict=True))
    kept = sum(SAP_SUGAR(sap, brix) for sap, brix, _, _ in runs)
    # what was in the ice: its mass is that share of all there was, the liquid is the rest
    ice = sum(SAP_SUGAR(sap, brix) / brix * share / (1 - share) * in_ice for sap, brix, share, in_ice in runs)
    waiting = sum(SAP_SUGAR(volume, brix) for volume, brix, used in stored if not used)
    bottled = sum(SAP_SUGAR(volume, brix) for volume, brix in jars)
    assert ledger["Came from the trees"] == pytest.approx(kept + ice)
    assert ledger["Thrown out with ice"] == pytest.approx(ice)
    assert ledger["In store: sap and part-boiled"] == pytest.approx(waiting)
    assert ledger["Bottled"] == pytest.approx(bottled)
    parts = sum(ledger[name] for name in LEDGER[1:5])
    assert ledger["Came from the trees"] == pytest.approx(parts)


def test_suggested_batches_fill_the_pan_oldest_first_and_keep_late_sap_apart() -> None:
    inputs = {
        "pans.name": ["pot"],
        "pans.length": [23.1],
        "pans.width": [10.0],
        "pans.depth": [2.0],  # 462 cubic inches: 2 gal
        "yard.finish_pan": "pot",
        "yard.split": datetime.date(2026, 3, 20),
        "storage.lot": ["A", "B", "C", "D", "E", "F"],
        "storage.put": [datetime.date(2026, 3, day) for day in (1, 5, 10, 21, 22, 23)],
        "storage.volume": [1.0, 0.9, 0.5, 1.5, 0.4, 5.0],
        "storage.brix": [30.0, 30.0, 30.0, 30.0, 30.0, 2.0],
    }
    suggested = column(computed("US", inputs), "storage.suggested")
    assert suggested[:6] == [1.0, 1.0, 2.0, 3.0, 3.0, "boil down"]


def test_every_log_row_ends_in_a_look_cell() -> None:
    season = Season("US", {}, SMALL)
    logs = ("collection", "storage", "boil", "bottles")
    for sheet in season.sheets:
        for block in sheet.blocks:
            if isinstance(block, Table) and block.key in logs:
                shown: list[Column] = [one for one in block.columns if not one.hidden]
                assert shown[-1].key == "look", block.key


def test_headings_are_told_apart_and_carry_their_unit() -> None:
    for system in ("US", "metric"):
        for sheet in Season(system, {}, SMALL).sheets:
            for block in sheet.blocks:
                words = [one.heading for one in block.columns] if isinstance(block, Table) else []
                words = [one.label for one in block.fields if one.label] if isinstance(block, Fields) else words
                assert len(set(words)) == len(words), sheet.title


def test_the_log_of_the_example_folder_is_what_the_guide_says() -> None:
    with (ROOT / "examples" / "twelve-runs.csv").open() as file:
        assert csv.DictReader(file).fieldnames == ["date", "volume", "brix"]
