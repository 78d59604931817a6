"""Every row of the reference tables, in every host: the rows of one function in one host are one test.

A row says what a function must give, how far off it may be and why, and where that is from:
published, common practice, from memory, by definition, or computed with a named library.
"""

from __future__ import annotations

import csv
import json
from pathlib import Path
from typing import Any, NamedTuple

import pytest

from sheetfuncs.formulas.catalogue import CATALOGUE, STAGES
from sheetfuncs.hosts.cells import ERRORS
from tests.tools.arguments import FACES
from tests.tools.calls import HOSTS, Answers, Call

FOLDER = Path(__file__).parents[1] / "reference" / "functions"
HOW = ("published", "common practice", "from memory", "by definition", "computed with ")


class Row(NamedTuple):
    place: str  # file and line
    call: Call
    expected: float | str
    tolerance: float
    line: dict[str, str]

    def __str__(self) -> str:
        return f"{self.place}-{self.call.name}"


def _rows(path: Path) -> list[Row]:
    with path.open(encoding="utf-8", newline="") as file:
        return [_row(f"{path.stem}:{number}", line) for number, line in enumerate(csv.DictReader(file), 2)]


def _row(place: str, line: dict[str, str]) -> Row:
    expected, tolerance = line["expected"], line["tolerance"]
    call = Call(line["function"], tuple(json.loads(line["arguments"])))
    return Row(place, call, float(expected) if tolerance else expected, float(tolerance or 0.0), line)


ROWS = [row for path in sorted(FOLDER.glob("*.csv")) for row in _rows(path)]
CASES = [
    pytest.param(name, host, id=f"{name}-{host}")
    for name in CATALOGUE
    for host in HOSTS
    if any(row.call.runs_in(host) for row in ROWS if row.call.name == name)
]


@pytest.fixture(scope="module")
def answers(tmp_path_factory: pytest.TempPathFactory) -> Answers:
    return Answers([row.call for row in ROWS], tmp_path_factory.mktemp("reference"))


@pytest.mark.parametrize(("name", "host"), CASES)
def test_rows(name: str, host: str, answers: Answers) -> None:
    mine = [row for row in ROWS if row.call.name == name and row.call.runs_in(host)]
    wrong = [told for row in mine if (told := _wrong(row, answers.of(row.call, host)))]
    assert not wrong, "\n".join(wrong)


def _wrong(row: Row, got: Any) -> str:
    """What a row has to say against an answer, or nothing."""
    if isinstance(row.expected, str) or not isinstance(got, (int, float)):
        right = got == row.expected
    else:
        right = abs(got - row.expected) <= row.tolerance + 1e-15 * abs(row.expected)
    told = f"{row}{row.call.given}: {got!r}, not {row.expected!r} ± {row.tolerance} ({row.line['source']})"
    return "" if right else told


def test_each_row_says_where_it_is_from_and_why_its_tolerance() -> None:
    for row in ROWS:
        assert row.line["source"], row
        assert row.line["how"].startswith(HOW), row
        assert row.line["because"] or isinstance(row.expected, str), row
        assert row.place.partition(":")[0] == CATALOGUE[row.call.name].__module__.rpartition(".")[2], row


def test_one_table_a_stage() -> None:
    assert sorted(path.stem for path in FOLDER.glob("*.csv")) == sorted(
        stage.__name__.rpartition(".")[2] for stage in STAGES
    )


@pytest.mark.parametrize(("card", "system"), FACES, ids=[f"{card.name}-{system}" for card, system in FACES])
def test_every_function_has_rows_of_values_and_of_errors_in_each_unit_system(card: Any, system: str) -> None:
    mine = [row for row in ROWS if row.call.name == card.name and (system in row.call.given or not card.units)]
    values = [row for row in mine if row.expected not in ERRORS]
    assert len(values) >= 2, f"{card.name} has {len(values)} rows of values in {system} units"
    assert any(row.expected in ERRORS for row in mine)
