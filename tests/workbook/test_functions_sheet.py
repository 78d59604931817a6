"""The sheet Functions, in every edition and as a workbook of its own: each function with a call to change."""

from __future__ import annotations

import zipfile
from pathlib import Path

import openpyxl
import pytest

from sheetfuncs import cli
from sheetfuncs.formulas.catalogue import CATALOGUE
from sheetfuncs.hosts.embedded import Model
from sheetfuncs.workbook.commands.check.check import check_file
from sheetfuncs.workbook.model.parts import Field, Fields, Text
from sheetfuncs.workbook.model.systems import Units
from sheetfuncs.workbook.read.filled import read
from sheetfuncs.workbook.sheets import functions
from sheetfuncs.workbook.write.names import definitions
from tests.tools.edits import example, with_openpyxl

SYSTEMS = ["US", "metric"]


def answers(path: Path) -> dict[str, tuple[int, str, object]]:
    """The row of each answer, its formula and its value, by function."""
    formulas, values = (openpyxl.load_workbook(path, data_only=stored)["Functions"] for stored in (False, True))
    found, name = {}, ""
    for row in range(1, formulas.max_row + 1):
        text = str(formulas.cell(row, 1).value)
        name = text.partition("(")[0] if text.partition("(")[0] in CATALOGUE and "(" in text else name
        if text == "gives":
            formula = formulas.cell(row, 2).value
            found[name] = row, getattr(formula, "text", formula), values.cell(row, 2).value
    return found


@pytest.mark.parametrize("system", SYSTEMS)
def test_every_function_has_its_words_limits_and_source(system: str) -> None:
    blocks = functions.sheet(Units(system)).blocks
    words = {block.title.partition("(")[0]: block for block in blocks if isinstance(block, Text)}
    calls = {block.key: block for block in blocks if isinstance(block, Fields)}
    assert list(words) == list(CATALOGUE)
    for name, function in CATALOGUE.items():
        card = function.card
        assert words[name].title == card.call
        assert words[name].lines[0] == card.summary
        assert card.source.rstrip(".") in words[name].lines[-1]
        *arguments, answer = calls[f"try_{name.lower()}"].fields
        assert [field.label for field in arguments] == list(card.arguments)
        for field, argument in zip(arguments, card.arguments.values(), strict=True):
            assert argument.range_words(system) in field.note
            assert within(field, argument.allowed)
        assert f"={name}(B" in answer.note


def same(one: object, other: object) -> bool:
    """Numbers to the last digit that a file keeps."""
    return one == (other if isinstance(other, str) else pytest.approx(other, rel=1e-14))


def within(field: Field, allowed: tuple[str, ...]) -> bool:
    low, high = field.limits
    return field.start in allowed if allowed else low <= field.start <= high


@pytest.mark.parametrize("system", SYSTEMS)
def test_a_workbook_of_its_own_computes_and_answers_to_a_change(system: str, tmp_path: Path) -> None:
    path = tmp_path / "functions.xlsx"
    assert cli.main(["functions", "--workbook", str(path), "--units", system.lower()]) == 0
    page = openpyxl.load_workbook(path)["Functions"]
    found = answers(path)
    assert list(found) == list(CATALOGUE)
    model = Model(path)
    for name, (row, formula, value) in found.items():
        card = CATALOGUE[name].card
        given = [page.cell(row - len(card.arguments) + number, 2).value for number in range(len(card.arguments))]
        assert same(value, CATALOGUE[name](*given, *[system] * card.units)), name
        assert name not in formula  # written out, with the cells of its arguments
        assert all(f"B{row - len(card.arguments) + number}" in formula for number in range(len(card.arguments)))
        model.put("Functions", (row - len(card.arguments) - 1, 1), 1e9)
    changed = model.values({"Functions": [(row - 1, 1) for row, _, _ in found.values()]})["Functions"]
    assert not [name for name, (row, _, value) in found.items() if changed[row - 1, 1] == value]


def test_its_names_can_be_called_from_other_cells(tmp_path: Path) -> None:
    assert cli.main(["functions", "--workbook", str(tmp_path / "a.xlsx")]) == 0
    text = zipfile.ZipFile(tmp_path / "a.xlsx").read("xl/workbook.xml").decode()
    assert all(f'<definedName name="{one.name}" ' in text for one in definitions())


@pytest.mark.parametrize("edition", ["carried", "inline", "linked"])
def test_the_call_itself_or_written_out_by_edition(edition: str, tmp_path: Path) -> None:
    example().write(tmp_path / "season.xlsx", edition)
    found = answers(tmp_path / "season.xlsx")
    assert list(found) == list(CATALOGUE)
    for name, (_, formula, value) in found.items():
        assert (name in formula) == (edition != "inline")
        assert same(value, in_python(name)), name


def in_python(name: str) -> object:
    block = functions.sheet(Units("US")).block(f"try_{name.lower()}")
    assert isinstance(block, Fields)
    return CATALOGUE[name](*(field.start for field in block.fields[:-1]))


def test_nothing_of_it_belongs_to_the_season(tmp_path: Path) -> None:
    """What is tried there is no remark, no input, and no sheet of one's own."""
    example().write(tmp_path / "season.xlsx", "carried")
    before = check_file(tmp_path / "season.xlsx")

    def tried(book: openpyxl.Workbook) -> None:
        book["Functions"]["B8"] = 1234
        book["Functions"]["E8"] = "mine"

    path = with_openpyxl(tmp_path / "season.xlsx", tmp_path / "tried.xlsx", tried)
    assert not [one for one in check_file(path) if one.sheet == "Functions"]
    assert read(path).own_sheets() == []
    assert not [one for one in before if one.sheet == "Functions"]


def test_what_is_there_is_not_written_over(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    (tmp_path / "a.xlsx").write_text("mine")
    assert cli.main(["functions", "--workbook", str(tmp_path / "a.xlsx")]) == 2
    assert "exists already" in capsys.readouterr().err
    assert cli.main(["functions", "--workbook", str(tmp_path / "a.ods")]) == 2
    assert "end the name with .xlsx" in capsys.readouterr().err
    assert (tmp_path / "a.xlsx").read_text() == "mine"
