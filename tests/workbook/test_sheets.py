"""What every computed cell of the workbook must give, and every sentence that a row can say."""

from __future__ import annotations

from collections import defaultdict
from pathlib import Path

import openpyxl
import pytest

from sheetfuncs.workbook.model.parts import Table
from sheetfuncs.workbook.season import Season
from sheetfuncs.workbook.sheets.phrases import NUMBER
from tests.tools import cases, office
from tests.tools.cases import Expected, Provoked

EXPECTED, PROVOKED = cases.expected(), cases.provoked()
GROUPS: dict[tuple[str, str, str], list[Expected]] = defaultdict(list)
for one in EXPECTED:
    GROUPS[one.case, one.units, one.cell].append(one)
UNITS = ("US", "metric")


@pytest.mark.parametrize("group", GROUPS, ids="-".join)
def test_a_cell_gives_what_it_must(group: tuple[str, str, str]) -> None:
    season = cases.season(*group[:2])
    found = [cases.wrong(season.shown(one.cell, one.row - 1), one) for one in GROUPS[group]]
    assert not any(found), "\n".join(filter(None, found))


def test_every_computed_cell_has_a_row() -> None:
    """But for the number of a finding, which the findings' own table asks for."""
    computed = {name for name, what in cases.cells("US").items() if what.formula and not name.endswith(f".{NUMBER}")}
    assert computed - {one.cell for one in EXPECTED} == set()


def test_every_row_says_why() -> None:
    assert not [one.place for one in EXPECTED if not one.because]


@pytest.mark.parametrize("one", PROVOKED, ids=lambda one: f"{one.cell}-{one.sentence[:40]}")
def test_a_sentence_is_said(one: Provoked) -> None:
    season = Season(one.units, cases.inputs(one.case, one.units, one.typed), cases.ROWS)
    season.compute()
    table = one.cell.partition(".")[0]
    name = next(name for name, what in season.cells.items() if name.startswith(f"{table}.") and bool(what.number))
    what = season.cells[name]
    number = int(season.value(f"{table}.{what.number}", one.row - 1))
    assert number, f"{one.place}: nothing is said, {season.value(name, one.row - 1)!r}"
    finding = what.findings[number - 1]
    said = season.value(name, one.row - 1)
    assert (f"{table}.{finding.cell}", finding.weight) == (one.cell, one.weight), f"{one.place}: {said!r}"
    assert one.sentence in said, f"{one.place}: {said!r}"


def test_every_sentence_written_by_hand_is_provoked() -> None:
    due, said = set(), set()
    for sheet in Season("US", {}, cases.ROWS).sheets:
        for block in sheet.blocks:
            if isinstance(block, Table):
                found = [finding for column in block.columns for finding in column.findings if not finding.of_kind]
                due |= {(f"{block.key}.{finding.cell}", finding.key) for finding in found}
    for cell, key in due:
        words = [piece for piece in _pieces(key) if piece.strip()]
        if any(one.cell == cell and all(word.strip() in one.sentence for word in words) for one in PROVOKED):
            said.add((cell, key))
    assert due - said == set()


def _pieces(sentence: str) -> list[str]:
    """The fixed words of a sentence, between its parts."""
    pieces, rest = [], sentence
    while "{" in rest:
        words, _, rest = rest.partition("{")
        pieces.append(words)
        rest = rest.partition("}")[2]
    return [*pieces, rest]


CASES: dict[tuple[str, str], list[Expected]] = defaultdict(list)
for one in EXPECTED:
    CASES[one.case, one.units].append(one)


@pytest.fixture(scope="module")
def recomputed(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Every case in the default edition, computed and saved by one run of a real Calc."""
    office.needed()
    folder = tmp_path_factory.mktemp("cases")
    (folder / "written").mkdir()
    written = [folder / "written" / f"{'-'.join(case)}.xlsx" for case in CASES]
    for case, path in zip(CASES, written, strict=True):
        cases.season(*case).write(path, "inline")
    office.convert_all(written, "xlsx", folder, folder)
    return folder


@pytest.mark.parametrize("case", CASES, ids="-".join)
def test_libreoffice_gives_the_same(case: tuple[str, str], recomputed: Path) -> None:
    """Every cell of the case that has a row."""
    spots = cases.season(*case).layout.spots
    made = openpyxl.load_workbook(recomputed / f"{'-'.join(case)}.xlsx", data_only=True)
    found = []
    for one in CASES[case]:
        spot = spots[one.cell]
        found.append(cases.wrong(made[spot.sheet].cell(spot.row + one.row, spot.column + 1).value, one))
    assert not any(found), "\n".join(filter(None, found))
