"""Two copies of a workbook that grew apart: what differs, and the two made one with nothing lost."""

from __future__ import annotations

import copy
import datetime
import hashlib
import re
from collections import Counter
from collections.abc import Callable
from pathlib import Path
from typing import Any, NamedTuple

import openpyxl
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from sheetfuncs import cli
from sheetfuncs.workbook.commands.two.compare import SAME
from sheetfuncs.workbook.commands.two.copies import Both
from sheetfuncs.workbook.commands.two.merge import BOTH_KEPT, FORECAST, Merged
from sheetfuncs.workbook.model.kinds import DATE, TEXT, TIME, WORDS, Kind
from sheetfuncs.workbook.model.parts import Column, Field
from sheetfuncs.workbook.read.filled import read
from sheetfuncs.workbook.season import Season
from sheetfuncs.workbook.sheets.tasting import cups
from tests.tools.edits import SMALL, example, trimmed, typed, with_openpyxl

DAY = datetime.date
EXAMPLE = example()


class Kept:
    """What `merge` asks of a workbook read back, without a file."""

    def __init__(self, season: Season) -> None:
        self.season, self.cells, self.system = season, season.cells, season.units.system
        self.rows = SMALL
        self.path = Path("kept")


def a_copy(*edits: dict[Any, Any]) -> Season:
    season = copy.copy(EXAMPLE)
    season.inputs = copy.deepcopy(EXAMPLE.inputs)
    for edit in edits:
        typed(season, edit)
    return season


def merged(one: Season, other: Season) -> Merged:
    return Merged(Kept(one), Kept(other))  # type: ignore[arg-type]


def rows(inputs: dict[str, Any], columns: tuple[str, ...]) -> list[tuple[Any, ...]]:
    """The filled rows of a table."""
    each = [inputs.get(name) or [] for name in columns]
    longest = max(map(len, each), default=0)
    lines = [tuple(column[n] if n < len(column) else None for column in each) for n in range(longest)]
    return [line for line in lines if any(value is not None for value in line)]


def test_two_that_are_the_same() -> None:
    both = merged(EXAMPLE, EXAMPLE)
    assert not both.clashes
    assert (both.added, both.filled_in) == (0, 0)
    assert trimmed(both.season.inputs) == trimmed(dict.fromkeys(both.season.inputs) | EXAMPLE.inputs)


NEW = {("collection.date", 17): DAY(2026, 3, 28), ("collection.sap", 17): 4.0}
EARLY = {("collection.date", 17): DAY(2026, 2, 25), ("collection.sap", 17): 3.0}


def test_rows_added_on_both_sides_are_in_the_order_of_their_days() -> None:
    both = merged(a_copy(NEW), a_copy(EARLY))
    assert not both.clashes
    days = both.season.inputs["collection.date"]
    assert days == sorted([*EXAMPLE.inputs["collection.date"], DAY(2026, 3, 28), DAY(2026, 2, 25)])
    assert both.added == 1


def test_what_one_side_filled_in_is_taken() -> None:
    one = a_copy({"yard.keeper": None, ("trees.taps", 2): None, ("collection.note", 3): None})
    other = a_copy({"know.typed_rate": 3.5, ("collection.warmth", 4): 39.0})
    both = merged(one, other)
    assert not both.clashes
    assert trimmed(both.season.inputs) == trimmed(dict.fromkeys(both.season.inputs) | other.inputs)
    assert both.filled_in == 5


def test_what_is_as_in_a_new_workbook_was_not_changed() -> None:
    name, start = next(
        (name, cell.start)
        for name, cell in EXAMPLE.cells.items()
        if isinstance(cell, Field) and cell.typed and isinstance(cell.start, (int, float))
        and EXAMPLE.inputs.get(name, cell.start) == cell.start
    )  # fmt: skip
    for one, other in ((start, start + 1), (start + 1, start)):
        both = merged(a_copy({name: one}), a_copy({name: other}))
        assert both.season.inputs[name] == start + 1
        assert not both.clashes


def test_a_row_changed_on_both_sides_is_kept_twice_and_listed() -> None:
    both = merged(a_copy({("collection.sap", 3): 9.5}), a_copy({("collection.sap", 3): 9.75}))
    day = EXAMPLE.inputs["collection.date"][2]
    inputs = both.season.inputs
    assert [sap for at, sap in zip(inputs["collection.date"], inputs["collection.sap"], strict=False) if at == day] == [
        9.5,
        9.75,
    ]
    (line,) = both.listed()
    assert line[:3] == ("Collection", "A8", "Date")
    assert "9.50" in line[3]
    assert "9.75" in line[4]
    assert line[5] == BOTH_KEPT


def test_a_name_has_one_row_and_what_differs_in_it_is_listed() -> None:
    both = merged(a_copy({("pans.depth", 2): 6.0}), a_copy({("pans.depth", 2): 7.0, ("pans.name", 1): " Big PAN"}))
    assert [name for name in both.season.inputs["pans.name"] if name] == EXAMPLE.inputs["pans.name"]
    assert {(one.name, one.one, one.other) for one in both.clashes} == {
        ("pans.depth", 6.0, 7.0),
        ("pans.name", EXAMPLE.inputs["pans.name"][0], " Big PAN"),
    }


def test_a_day_of_weather_has_one_row_and_nobody_guesses_what_was_forecast() -> None:
    day = EXAMPLE.inputs["weather.date"][9]
    both = merged(
        a_copy({("weather.low", 10): 21.0, ("weather.date", 99): DAY(2026, 4, 9), ("weather.low", 99): 33.0}),
        a_copy({("weather.low", 10): 24.0, ("weather.date", 98): DAY(2026, 4, 8), ("weather.low", 98): 35.0}),
    )
    inputs = both.season.inputs
    days = [one for one in inputs["weather.date"] if one]
    assert days == sorted(days) and len(days) == len(set(days)) == len(EXAMPLE.inputs["weather.date"]) + 2
    (clash,) = both.clashes
    assert (clash.name, clash.one, clash.other, clash.done) == ("weather.low", 21.0, 24.0, FORECAST)
    assert inputs["weather.low"][inputs["weather.date"].index(day)] == 21.0


def test_full_logs_make_room() -> None:
    days = [DAY(2026, 1, 1) + datetime.timedelta(days=number) for number in range(100)]
    both = merged(
        a_copy({"collection.date": days, "collection.sap": [1.0] * 100}),
        a_copy({"collection.date": days, "collection.sap": [2.0] * 100}),
    )
    assert len(both.season.inputs["collection.date"]) == 200
    assert both.season.layout.spots["collection.date"].height >= 200


def of_the_28th(*rows: tuple[float | None, float | None, str | None]) -> Season:
    """The example and some rows of 28 March: sap, its sugar, a note."""
    edits: dict[Any, Any] = {}
    for number, row in enumerate(rows, 17):
        edits["collection.date", number] = DAY(2026, 3, 28)
        edits |= {(f"collection.{key}", number): value for key, value in zip(("sap", "brix", "note"), row, strict=True)}
    return a_copy(edits)


@pytest.mark.parametrize(
    ("one", "other", "result", "listed"),
    [
        ([(4, None, None)] * 2, [(4, None, None)] * 2, [(4, None, None)] * 2, 0),
        ([(4, None, None)] * 2, [(4, None, None)], [(4, None, None)] * 2, 0),
        ([(4, None, None)] * 2, [(4, 2, None)], [(4, 2, None), (4, None, None)], 0),
        ([(4, None, "a")], [(4, 2, None)], [(4, 2, "a")], 0),
        ([(None, None, "a")], [(4, None, None)], [(None, None, "a"), (4, None, None)], 1),
        ([(4, 2, None), (5, 2, None)], [(5, 2, "b"), (4, 2, "a")], [(4, 2, "a"), (5, 2, "b")], 0),
    ],
)
def test_rows_of_one_day_that_belong_together(one: Any, other: Any, result: Any, listed: int) -> None:
    both = merged(of_the_28th(*one), of_the_28th(*other))
    found = rows(both.season.inputs, ("collection.sap", "collection.brix", "collection.note"))[15:]
    assert found == result
    assert len(both.clashes) == listed


# Random edits.  Every row that a name can mean has a note of its own, so that it is known again wherever it went.
TAGGED = {"S": "collection", "B": "boil", "R": "boil", "K": "batches"}
NAMING = {"boil.took": "boil.note", "batches.goes_in": "batches.note", "happenings.lot": "happenings.volume"}
LOGS = Both(Kept(EXAMPLE), Kept(EXAMPLE)).logs  # type: ignore[arg-type]
TYPED = sorted(
    name for name, cell in EXAMPLE.cells.items()
    if cell.typed and name != "yard.year" and name not in (*NAMING, *NAMING.values(), "collection.note", "run.batch")
)  # fmt: skip


class Edit(NamedTuple):
    """One thing that a person does to a copy."""

    what: str
    where: int
    row: int
    number: int
    word: str


EDITS = st.lists(
    st.builds(
        Edit,
        st.sampled_from(["type", "type", "clear", "sap", "boil", "boil", "batch", "frozen", "reading", "bottled"]),
        st.integers(0, 10_000),
        st.integers(0, 12),
        st.integers(0, 60),
        st.sampled_from(["A", "b", "snow bin 1", "all sap", "", " x "]),
    ),
    max_size=9,
)


def a_value(kind: Kind, edit: Edit) -> Any:
    if kind is DATE:
        return DAY(2026, 2, 20) + datetime.timedelta(days=edit.number)
    if kind is TIME:
        return datetime.time(edit.number % 24, edit.number % 60)
    if kind in (TEXT, WORDS):
        return edit.word or None
    return edit.number / 4


def filled(inputs: dict[str, Any], name: str) -> int:
    return len(inputs.get(name) or [])


def marked() -> Season:
    """The example with a note to tell each row by, and boils that name what they took."""
    season = a_copy()
    inputs = season.inputs
    for table in ("collection", "boil", "batches"):
        inputs[f"{table}.note"] = [f"{table} {number}" for number in range(filled(inputs, f"{table}.date"))]
    inputs["happenings.volume"] = [1000.0]
    inputs["boil.took"] = ["S1, S2", "s3;S4", "S5 and B1", "S6 + snow bin 1", "all sap"]
    inputs["batches.goes_in"] = ["B1, b2", "B3, K1"]
    inputs["batches.over"] = [0.1, 0.6]
    return season


MARKED = marked()


def edited(edits: list[Edit], who: str) -> Season:
    season = copy.copy(MARKED)
    season.inputs = inputs = copy.deepcopy(MARKED.inputs)
    for step, edit in enumerate(edits):
        sap, boils, batches = (filled(inputs, f"{table}.date") for table in ("collection", "boil", "batches"))
        day, mark = a_value(DATE, edit), f"{who} {step}"
        lots = f"S{1 + edit.where % sap}, b{1 + edit.row % boils};{edit.word}"
        new: dict[str, Any] = {}
        if edit.what in ("type", "clear"):
            name = TYPED[edit.where % len(TYPED)]
            cell = season.cells[name]
            value = a_value(cell.kind, edit) if edit.what == "type" else None
            row = min(edit.row + 1, season.layout.spots[name].height)
            typed(season, {(name, row) if isinstance(cell, Column) else name: value})
        elif edit.what == "sap":
            new = {"collection.date": day, "collection.sap": 3.0, "collection.note": mark}
        elif edit.what == "boil":
            new = {"boil.date": day, "boil.took": lots, "boil.rest": 0.5, "boil.note": mark}
        elif edit.what == "batch":
            new = {"batches.date": day, "batches.goes_in": f"B{1 + edit.row % boils}", "batches.note": mark}
        elif edit.what == "frozen":
            lot = f"{'SBRK'[edit.where % 4]}{1 + edit.row % batches}"
            new = {"happenings.date": day, "happenings.lot": lot, "happenings.volume": 1 + step + 100 * (who == "one")}
        elif edit.what == "reading":
            new = {"run.time": a_value(TIME, edit), "run.reading": 212 + edit.number / 8}
            new["run.batch"] = 1.0 + edit.row % batches
        else:
            new = {"bottles.date": day, "bottles.batch": 1.0 + edit.row % batches, "bottles.note": mark}
        if new:
            row = max(filled(inputs, name) for name in LOGS[next(iter(new)).partition(".")[0]].columns) + 1
            typed(season, {(name, row): value for name, value in new.items()})
    for table in ("collection", "boil", "batches"):  # a row that was begun without one gets its mark
        notes = inputs[f"{table}.note"]
        used = max(filled(inputs, name) for name in LOGS[table].columns)
        inputs[f"{table}.note"] = [
            note or f"{who} {table} {row}" for row, note in enumerate(notes + [None] * (used - len(notes)))
        ]
    return season


def at(inputs: dict[str, Any], name: str, row: int) -> Any:
    column = inputs.get(name) or []
    return column[row] if row < len(column) else None


def meant(inputs: dict[str, Any], text: Any) -> list[str]:
    """What a cell means, with the note of each lot in place of its name."""
    found = []
    for word in re.split(r"[,;+\s]+|and", str(text).upper()):
        lot = re.fullmatch(r"([SBRK])(\d+)", word)
        note = at(inputs, f"{TAGGED[lot[1]]}.note", int(lot[2]) - 1) if lot else None
        found.append(f"{lot[1]} of {note}" if lot and note else word)
    return found


def said(inputs: dict[str, Any]) -> Counter[tuple[Any, ...]]:
    """What each cell that names something means, by the mark of its row."""
    found: Counter[tuple[Any, ...]] = Counter()
    for name, mark in NAMING.items():
        for row, text in enumerate(inputs.get(name) or []):
            if text:
                found[(name, at(inputs, mark, row), *meant(inputs, text))] += 1
    for row, batch in enumerate(inputs.get("bottles.batch") or []):
        if batch and (note := at(inputs, "bottles.note", row)):
            found["bottles", note, at(inputs, "batches.note", int(batch) - 1)] += 1
    return found


def runs(inputs: dict[str, Any]) -> dict[Any, list[Any]]:
    """The readings of each batch, by its note."""
    found: dict[Any, list[Any]] = {}
    batch = 1.0
    for row in range(max(filled(inputs, f"run.{key}") for key in ("time", "reading", "batch"))):
        batch = at(inputs, "run.batch", row) or batch
        both = at(inputs, "run.time", row), at(inputs, "run.reading", row)
        if any(both):
            found.setdefault(at(inputs, "batches.note", int(batch) - 1), []).append(both)
    return found


def in_order(some: list[Any], more: list[Any]) -> bool:
    """Whether `more` has all of `some`, one after the other."""
    rest = iter(more)
    return all(any(one == other for other in rest) for one in some)


def settled(runs_of: list[Any]) -> list[Any]:
    return [both for both in runs_of if None not in both]


def within(row: tuple[Any, ...], larger: tuple[Any, ...]) -> bool:
    return all(mine is None or mine == theirs for mine, theirs in zip(row, larger, strict=True))


@settings(max_examples=100)
@given(EDITS, EDITS)
def test_every_typed_value_of_either_is_in_the_result_or_on_the_list(ones: list[Edit], others: list[Edit]) -> None:
    one, other = edited(ones, "one"), edited(others, "other")
    before = copy.deepcopy((one.inputs, other.inputs))
    both = merged(one, other)
    assert (one.inputs, other.inputs) == before
    result = both.season.inputs
    listed: dict[str, list[Any]] = {}
    for clash in both.clashes:
        listed.setdefault(clash.name, []).extend((clash.one, clash.other))
    naming = {*NAMING, "bottles.batch", "run.batch", "panel.batch", "side.one", "side.other"}
    for name, cell in EXAMPLE.cells.items():
        if isinstance(cell, Field) and cell.typed and name not in naming:
            for side in (one, other):
                value = side.inputs.get(name)
                assert value in (None, cell.start, result.get(name), *listed.get(name, ())), name
    for log in LOGS.values():
        columns = tuple(name for name in log.columns if name not in naming)
        found = rows(result, columns)
        for side in (one, other):
            for row, times in Counter(rows(side.inputs, columns)).items():
                if sum(within(row, one) for one in found) >= times:
                    continue
                assert log.unique or log.told_by is None or log.key == "run", (log.key, row)
                for name, value in zip(columns, row, strict=True):
                    if value is not None:
                        known = [line[columns.index(name)] for line in found]
                        known += [
                            *listed.get(name, ()),
                            *getattr(EXAMPLE.cells[name], "starts", ()),
                        ]  # what a new workbook brings
                        assert value in known, (name, value)


@settings(max_examples=100)
@given(EDITS, EDITS)
def test_every_name_means_the_lot_that_it_meant(ones: list[Edit], others: list[Edit]) -> None:
    one, other = edited(ones, "one"), edited(others, "other")
    both = merged(one, other)
    found = said(both.season.inputs)
    for side in (one, other):
        assert not said(side.inputs) - found
        for batch, readings in runs(side.inputs).items():
            assert in_order(settled(readings), runs(both.season.inputs).get(batch, [])), batch
    shifted = [clash.done for clash in both.clashes if "write it on its jars" in clash.done]
    rows_of: dict[str, list[int]] = {}
    for row, note in enumerate(both.season.inputs["boil.note"], 1):
        rows_of.setdefault(note, []).append(row)
    stands = Counter[int]()
    for which, side in (("first", one), ("second", other)):
        for old, note in enumerate(side.inputs["boil.note"], 1):
            words = f"B{old} of the {which} copy is B{{}} now: write it on its jars"
            new = [row for row in rows_of[note] if words.format(row) in shifted] or [old]
            assert len(new) == 1 and new[0] in rows_of[note], words
            assert words.format(old) not in shifted  # nothing is said of what stays
            stands[new[0]] += 1
    assert all(times <= 2 for times in stands.values())
    assert {row for rows_now in rows_of.values() for row in rows_now} == set(stands)


@settings(max_examples=40)
@given(EDITS, EDITS)
def test_logs_in_the_order_of_their_days_stay_so(ones: list[Edit], others: list[Edit]) -> None:
    one, other = edited(ones, "one"), edited(others, "other")
    both = merged(one, other)
    for log in LOGS.values():
        if log.told_by is None or log.listed or log.key == "run":
            continue
        days = [[row[log.told_by] for row in rows(side, log.columns)] for side in (one.inputs, other.inputs)]
        if all(None not in side and side == sorted(side) for side in days):
            merged_days = [row[log.told_by] for row in rows(both.season.inputs, log.columns)]
            assert merged_days == sorted(merged_days)


@settings(max_examples=25)
@given(EDITS)
def test_a_copy_that_was_only_added_to_wins(edits: list[Edit]) -> None:
    """Merged with itself, and with an empty workbook, a copy is what it was."""
    one = edited(edits, "one")
    empty = a_copy()
    empty.inputs = {}
    for both in (merged(one, one), merged(one, empty), merged(empty, one)):
        assert not both.clashes
        for log in LOGS.values():
            assert Counter(rows(both.season.inputs, log.columns)) == Counter(rows(one.inputs, log.columns)), log.key


def test_what_boils_and_batches_hold_is_what_it_was() -> None:
    """Sap, a boil and a batch added on either side between those of the other; computed before and after."""
    one, other = copy.copy(MARKED), copy.copy(MARKED)
    for season, day, who in ((one, 20, "one"), (other, 12, "other")):
        season.inputs = copy.deepcopy(MARKED.inputs)
        season.inputs["boil.took"] = ["S1, S2", "S3, S4", "S5, S6, S7", "S8, S9, S10", "S11, S12"]
        season.inputs["batches.goes_in"] = ["B1, B2", "B3, B4, K1"]
        date = DAY(2026, 3, day)
        typed(season, {
            ("collection.date", 16): date, ("collection.sap", 16): 7.0, ("collection.note", 16): f"{who} sap",
            ("boil.date", 6): date, ("boil.took", 6): "S16, S13", ("boil.rest", 6): 0.9, ("boil.note", 6): who,
            ("batches.date", 3): date, ("batches.goes_in", 3): "B6", ("batches.note", 3): who,
        })  # fmt: skip
    typed(other, {("boil.took", 6): "s16"})
    both = merged(one, other)
    assert (
        both.season.inputs["boil.took"][both.season.inputs["boil.note"].index("one")] == "S17, S14"
    )  # of the first: its own sap, and sap of both
    before: dict[tuple[str, str], Any] = {}
    for season in (one, other, both.season):
        season.compute()
        for table, cell in (
            ("boil", "sugar_in"),
            ("boil", "syrup_in"),
            ("batches", "lots_syrup"),
            ("batches", "syrup"),
        ):
            for row, note in enumerate(season.inputs[f"{table}.note"]):
                value = season.value(f"{table}.{cell}", row)
                assert isinstance(value, float), (table, cell, note)
                assert before.setdefault((cell, note), value) == pytest.approx(value), (table, cell, note)


@pytest.mark.parametrize("system", ["US", "metric"])
def test_what_a_new_workbook_starts_with_was_typed_by_nobody(system: str) -> None:
    one, other = Season("US", {}, SMALL), Season(system, {}, SMALL)
    both = merged(one, typed(other, {("places.name", 2): "porch", ("places.where", 2): "shade outdoors"}))
    assert not both.clashes
    starts = one.cells["places.name"].starts  # type: ignore[union-attr]
    assert [name for name in both.season.inputs["places.name"] if name] == [starts[0], "porch", *starts[2:]]
    assert not merged(one, Season(system, {}, SMALL)).clashes


def test_a_name_on_the_phone_means_the_row_on_the_laptop() -> None:
    phone = typed(Season("US", {}, SMALL), {("happenings.lot", 1): "B2", ("happenings.what", 1): "frozen"})
    laptop = typed(Season("US", {}, SMALL), {("boil.date", 1): DAY(2026, 3, 1), ("boil.date", 2): DAY(2026, 3, 8)})
    for both in (merged(phone, laptop), merged(laptop, phone)):
        assert both.season.inputs["boil.date"] == [DAY(2026, 3, 1), DAY(2026, 3, 8)]
        assert both.season.inputs["happenings.lot"] == ["B2"]
        assert not both.clashes


def test_readings_of_one_pot_from_two_devices() -> None:
    """One went on where the other began, over midnight; then a second pot was read on one of them."""
    clock = datetime.time
    one = {"run.time": [clock(23, 40), clock(23, 50), clock(0, 20)], "run.reading": [214.0, 215.0, 217.0]}
    other = {
        "run.time": [clock(23, 40), clock(0, 5), clock(9, 0)],
        "run.reading": [214.0, 216.0, 213.0],
        "run.batch": [None, None, 2.0],
    }
    both = merged(Season("US", one, SMALL), Season("US", other, SMALL))
    assert not both.clashes
    assert both.season.inputs["run.reading"] == [214.0, 215.0, 216.0, 217.0, 213.0]
    assert trimmed(both.season.inputs)["run.batch"] == [None, None, None, None, 2.0]


def test_points_of_a_blind_tasting_stay_with_their_batch() -> None:
    order = cups(SMALL.batches)
    one = a_copy({("blind.points", order.index(2) + 1): 4.0})
    other = a_copy({("batches.date", 3): DAY(2026, 3, 1), ("batches.note", 3): "first of all"})
    inputs = merged(one, other).season.inputs
    assert inputs["batches.date"] == sorted([*EXAMPLE.inputs["batches.date"], DAY(2026, 3, 1)])
    assert [batch for cup, batch in enumerate(order) if at(inputs, "blind.points", cup)] == [3]


@pytest.fixture(scope="module")
def files(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Two copies as files: an .xlsx each, the second in other units too; and own things on both."""
    folder = tmp_path_factory.mktemp("two")
    a_copy(NEW, {("collection.sap", 3): 9.5}).write(folder / "first.xlsx", "inline")
    a_copy(EARLY, {("collection.sap", 3): 9.75, "yard.elevation": 700.0}).write(folder / "second.xlsx", "linked")

    def own(text: str) -> Callable[[openpyxl.Workbook], None]:
        def edit(book: openpyxl.Workbook) -> None:
            book.create_sheet("Bees")["A1"] = text
            book["Collection"]["ZZ5"] = f"own {text}"

        return edit

    with_openpyxl(folder / "first.xlsx", folder / "one.xlsx", own("hives"))
    with_openpyxl(folder / "second.xlsx", folder / "other.xlsx", own("queens"))
    assert cli.main(["convert", str(folder / "other.xlsx"), str(folder / "metric.xlsx"), "--units", "metric"]) == 0
    return folder


def test_compare_names_sheet_and_cell(files: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert cli.main(["compare", str(files / "one.xlsx"), str(files / "other.xlsx")]) == 0
    said = capsys.readouterr().out.splitlines()
    assert "Yard B8, Elevation above the sea: 650 | 700" in said
    assert "Collection B7, Sap kept: 9.50 | 9.75" in said
    assert "Collection A21: only in one.xlsx: Date Mar 28, 2026, Sap kept 4.00" in said
    assert "Collection A21: only in other.xlsx: Date Feb 25, 2026, Sap kept 3.00" in said
    assert "Bees A1: only in one.xlsx, of your own: hives" in said
    assert "Collection ZZ5: only in other.xlsx, of your own: own queens" in said
    assert len(said) == 8, said


def test_compare_sees_no_difference_in_other_units(files: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert cli.main(["compare", str(files / "second.xlsx"), str(files / "metric.xlsx")]) == 0
    said = capsys.readouterr().out.splitlines()
    assert said[0] == "metric.xlsx is shown in the units of second.xlsx"
    assert not [line for line in said[1:] if "of your own" not in line]
    assert cli.main(["compare", str(files / "one.xlsx"), str(files / "one.xlsx")]) == 0
    assert capsys.readouterr().out == f"{SAME}\n"


@pytest.mark.parametrize("second", ["other.xlsx", "metric.xlsx"])
def test_two_files_are_made_one(second: str, files: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    sources = [files / "one.xlsx", files / second]
    before = [hashlib.sha256(path.read_bytes()).digest() for path in sources]
    new = tmp_path / "new.xlsx"
    assert cli.main(["merge", *map(str, sources), str(new)]) == 1
    said = capsys.readouterr().out.splitlines()
    assert "1 row added" not in said[0]
    assert said[-2] == "listed on the sheet 'After merging': 2 lines to look at"
    assert said[-1] == f"written: {new}"
    assert [hashlib.sha256(path.read_bytes()).digest() for path in sources] == before
    result = read(new)
    days = result.season.inputs["collection.date"]
    assert days == sorted(days)
    assert len(days) == 18
    assert {9.5, 9.75, 4.0, 3.0} <= set(result.season.inputs["collection.sap"])
    book = openpyxl.load_workbook(new)
    listed = list(book["After merging"].iter_rows(values_only=True))
    assert listed[1][:5] == ("Yard", "B8", "Elevation above the sea", 650, 700)
    assert len(listed) == 3
    everything = {str(cell) for sheet in book for row in sheet.iter_rows(values_only=True) for cell in row}
    assert {"hives", "queens", "own hives", "own queens"} <= everything


def test_nothing_to_decide_is_no_failure(files: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    first = str(files / "first.xlsx")
    assert cli.main(["merge", first, first, str(tmp_path / "new.xlsx")]) == 0
    assert capsys.readouterr().out.splitlines()[:2] == [
        f"from {first}: 0 rows added, 0 cells filled in",
        f"written: {tmp_path / 'new.xlsx'}",
    ]
    assert trimmed(read(tmp_path / "new.xlsx").season.inputs) == trimmed(read(files / "first.xlsx").season.inputs)


def test_neither_is_ever_written_to(files: Path, capsys: pytest.CaptureFixture[str]) -> None:
    one, other = str(files / "one.xlsx"), str(files / "other.xlsx")
    for new in (one, other):
        assert cli.main(["merge", one, other, new, "--replace"]) == 2
        assert "never written to" in capsys.readouterr().err


@pytest.mark.parametrize("year", [2026.0, "this one"])
def test_two_seasons_are_refused(year: float | str, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    for name, one in (("one", 2025.0), ("other", year)):
        a_copy({"yard.year": one}).write(tmp_path / f"{name}.xlsx", "linked")
    assert cli.main(["merge", str(tmp_path / "one.xlsx"), str(tmp_path / "other.xlsx"), str(tmp_path / "n.xlsx")]) == 2
    said = capsys.readouterr().err
    assert f"one.xlsx of 2025 and {tmp_path / 'other.xlsx'} of {year if isinstance(year, str) else 2026}" in said
    assert "two seasons, not two copies of one" in said
    assert not (tmp_path / "n.xlsx").exists()


@pytest.mark.parametrize("name", ["format-1-a.xlsx", "format-1-c.xlsx"])
def test_a_copy_of_an_older_format_is_read_too(name: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """A copy that stayed as it was, and one that was converted and then went on."""
    old, new = Path(__file__).parents[1] / "kept" / name, tmp_path / "new.xlsx"
    assert cli.main(["convert", str(old), str(new)]) == 0
    filled = read(new)
    row = len(filled.season.inputs["collection.date"]) + 1
    last = max(day for day in filled.season.inputs["collection.date"] if day)
    typed(filled.season, {("collection.date", row): last, ("collection.sap", row): 77.0})
    both = Merged(read(old), filled)
    assert not both.clashes
    assert (both.added, both.filled_in) == (1, 0)
    assert trimmed(both.season.inputs) == trimmed(filled.season.inputs)
    capsys.readouterr()
    assert cli.main(["compare", str(old), str(new)]) == 0
    assert not [line for line in capsys.readouterr().out.splitlines() if "of your own" not in line and line != SAME]
