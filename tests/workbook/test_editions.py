"""The editions: what each holds, which one is written unasked, and what a program shows that does not compute it."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path
from typing import Any

import openpyxl
import pytest
from pytest import approx

from sheetfuncs import cli
from sheetfuncs.formulas.catalogue import CATALOGUE
from sheetfuncs.workbook.commands.check.check import check_file
from sheetfuncs.workbook.model import formula as formulas
from sheetfuncs.workbook.model.editions import CARRIED, DEFAULT, EDITIONS, INLINE, LINKED
from sheetfuncs.workbook.model.parts import MEND, TELL
from sheetfuncs.workbook.read.filled import read
from sheetfuncs.workbook.sheets.weekend import COMPUTES, COMPUTES_NOT, UNANSWERED
from tests.tools import office
from tests.tools.calc_office import Calc, Office, own_folder, with_addin
from tests.tools.edits import address, example

SEASON = example()
OPENING = "A2"  # below the title
KINDS = {"xlsx": "Calc MS Excel 2007 XML", "ods": "calc8"}


@pytest.fixture(scope="module")
def files(tmp_path_factory: pytest.TempPathFactory) -> dict[str, Path]:
    """The example in each edition."""
    folder = tmp_path_factory.mktemp("editions")
    made = {name: folder / f"{name}.xlsx" for name in EDITIONS}
    for name, path in made.items():
        SEASON.write(path, name)
    return made


@pytest.fixture(scope="module")
def plain() -> Iterator[Office]:
    office.needed()
    with own_folder() as folder:
        yield as_it_comes(Office(folder))


@pytest.fixture(scope="module")
def installed() -> Iterator[Office]:
    with with_addin() as made:
        yield as_it_comes(made)


def as_it_comes(made: Office) -> Office:
    """With the settings of a new user, under which stored values are believed when a file is opened."""
    settings = made.profile / "user" / "registrymodifications.xcu"
    text = settings.read_text(encoding="utf-8")
    assert text.count("RecalcMode") == 2
    settings.write_text(text.replace("<value>0</value>", "<value>1</value>"), encoding="utf-8")
    return made


def opened(where: Office, source: Path) -> Path:
    """A copy in the folder of that LibreOffice."""
    path = where.folder / source.name
    path.write_bytes(source.read_bytes())
    return path


def shown(calc: Calc, name: str) -> Any:
    sheet, cell = address(SEASON, name)
    number = list(calc.sheets()).index(sheet)
    return calc.read(f"{cell}:{cell}", number)[0][0]


def answers(calc: Calc) -> dict[str, Any]:
    """What stands below each question of Weekend, and what the workbook says of itself."""
    sheet = calc.sheets()["Weekend"]
    return {name: sheet[address(SEASON, name)[1]] for name in UNANSWERED}


def differing(one: dict[str, dict[str, Any]], other: dict[str, dict[str, Any]]) -> list[tuple[Any, ...]]:
    """Formulas that give something else, but for the last digits, which a file does not keep."""
    assert {title: set(cells) for title, cells in one.items()} == {title: set(cells) for title, cells in other.items()}
    return [
        (title, cell, value, other[title][cell])
        for title, cells in one.items()
        for cell, value in cells.items()
        if other[title][cell] != (approx(value, rel=1e-12, abs=1e-12) if isinstance(value, float) else value)
    ]


def typed(calc: Calc) -> None:
    """Another elevation, as a user types it."""
    sheet, cell = address(SEASON, "yard.elevation")
    calc.fill({cell: 3000.0}, list(calc.sheets()).index(sheet))


def test_inline_is_written_unasked(tmp_path: Path) -> None:
    assert DEFAULT is INLINE
    assert cli.main(["new", str(tmp_path / "a.xlsx")]) == 0
    assert read(tmp_path / "a.xlsx").edition == INLINE.name
    SEASON.write(tmp_path / "b.xlsx")
    assert read(tmp_path / "b.xlsx").edition == INLINE.name


@pytest.mark.parametrize("edition", EDITIONS.values(), ids=EDITIONS)
def test_what_an_edition_holds(files: dict[str, Path], edition: Any) -> None:
    """Names for the user's own cells in two, calls in the sheets in two, plain text on top where it may not compute."""
    book = openpyxl.load_workbook(files[edition.name])
    assert {name for name in book.defined_names if name in CATALOGUE} == (set(CATALOGUE) if edition.named else set())
    found = [
        getattr(cell.value, "text", cell.value)
        for sheet in book
        for row in sheet.iter_rows()
        for cell in row
        if cell.data_type == "f"
    ]
    calls = [text for text in found if any(f"{name}(" in text for name in CATALOGUE)]
    assert bool(calls) != edition.inline
    assert any("_xlfn.LET(" in text for text in found) == edition.inline
    top = book.worksheets[0][OPENING]
    assert top.data_type == "s"
    assert top.value == (edition.opening or SEASON.sheets[0].purpose)


@pytest.mark.parametrize("edition", EDITIONS)
def test_the_line_on_top_is_ours(files: dict[str, Path], edition: str, tmp_path: Path) -> None:
    filled = read(files[edition])
    assert list(filled.own_cells()) == []
    assert not [one for one in check_file(files[edition]) if one.weight != TELL]
    for name in ("carried", "inline"):  # a line of another edition does not stay
        target = tmp_path / f"{name}.xlsx"
        assert cli.main(["convert", str(files[edition]), str(target), "--edition", name]) == 0
        top = openpyxl.load_workbook(target).worksheets[0][OPENING].value
        assert top == (EDITIONS[name].opening or SEASON.sheets[0].purpose)


@pytest.mark.parametrize("edition", EDITIONS.values(), ids=EDITIONS)
def test_nothing_is_answered_where_nothing_was_computed(files: dict[str, Path], edition: Any) -> None:
    """A preview shows what is stored: of an edition that calls names it is that nothing computes."""
    book = openpyxl.load_workbook(files[edition.name], data_only=True)
    for name, silent in UNANSWERED.items():
        sheet, cell = address(SEASON, name)
        expected = SEASON.value(name) if edition.inline else silent
        assert (book[sheet][cell].value or "") == (expected or ""), name
    assert SEASON.value("now.works") == COMPUTES


def test_every_answer_asks_whether_the_program_computes() -> None:
    answers = {name: str(cell.formula) for name, cell in SEASON.cells.items() if name.startswith("now.")}
    assert set(answers) | {"behind.works"} == set(UNANSWERED)
    assert all("@behind.works" in formula for formula in answers.values())
    assert not formulas.calls(str(SEASON.cells["behind.works"].formula))


@pytest.mark.parametrize("edition", [CARRIED.name, LINKED.name])
def test_calc_without_the_addin_shows_that_it_does_not_compute(
    plain: Office, files: dict[str, Path], edition: str
) -> None:
    """Opened and typed into; no sentence of an earlier day stays."""
    with plain.calc() as calc:
        calc.open(opened(plain, files[edition]))
        assert answers(calc) == UNANSWERED
        typed(calc)
        assert answers(calc) == UNANSWERED
        assert calc.read(f"{OPENING}:{OPENING}") == [[EDITIONS[edition].opening]]


@pytest.mark.parametrize("edition", [CARRIED.name, LINKED.name])
def test_calc_with_the_addin_answers_at_once(installed: Office, files: dict[str, Path], edition: str) -> None:
    with installed.calc() as calc:
        calc.open(opened(installed, files[edition]))
        assert answers(calc) == {name: SEASON.value(name) for name in UNANSWERED}


@pytest.mark.parametrize("kind", KINDS)
def test_inline_typed_into_saved_and_opened_again_by_calc_alone(
    plain: Office, files: dict[str, Path], kind: str
) -> None:
    """Every formula gives what it gave before it was saved; the names stay, and check has nothing to mend."""
    saved = plain.folder / f"inline-saved.{kind}"
    with plain.calc() as calc:
        calc.open(opened(plain, files["inline"]))
        before = answers(calc)
        assert before["now.works"] == COMPUTES
        typed(calc)
        computed = calc.sheets()
        assert answers(calc)["now.works"] == COMPUTES
        calc.save(saved, KINDS[kind])
        calc.open(saved)
        assert differing(computed, calc.sheets()) == []
        calc.recalculate()
        assert differing(computed, calc.sheets()) == []
    filled = read(saved)
    assert filled.edition == INLINE.name
    assert filled.season.inputs["yard.elevation"] == 3000.0
    assert not [one for one in check_file(saved) if one.weight == MEND or "differ" in one.sentence]


def test_names_of_an_inline_workbook_may_be_gone(files: dict[str, Path], tmp_path: Path) -> None:
    """Its sheets do not need them: one that is damaged is told, and nothing must be mended."""
    book = openpyxl.load_workbook(files["inline"])
    for name in CATALOGUE:
        del book.defined_names[name]
    book.save(tmp_path / "none.xlsx")
    assert not [one for one in check_file(tmp_path / "none.xlsx") if "name" in one.sentence]
    book = openpyxl.load_workbook(files["inline"])
    del book.defined_names["FINISH_TEMP"]
    book.save(tmp_path / "one.xlsx")
    said = [one for one in check_file(tmp_path / "one.xlsx") if "FINISH_TEMP" in one.sentence]
    assert [one.weight for one in said] == [TELL]


def test_it_is_told_what_an_edition_is_for(capsys: pytest.CaptureFixture[str]) -> None:
    assert cli.main(["new", "--help"]) == 0
    told = " ".join(capsys.readouterr().out.split())
    assert all(edition.words in told for edition in EDITIONS.values())
    assert COMPUTES_NOT.startswith("does not compute")
