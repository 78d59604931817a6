"""What the README says is so."""

from __future__ import annotations

import doctest
import shlex
import shutil
from pathlib import Path

import pytest

from sheetfuncs import cli
from tests.tools.readme import README, with_table

TEXT = README.read_text(encoding="utf-8")


def blocks(kind: str) -> list[str]:
    return [part.split("```")[0].strip() for part in TEXT.split(f"```{kind}\n")[1:]]


def test_the_table_of_functions_is_up_to_date() -> None:
    assert with_table(TEXT) == TEXT, "run: python -m tests.tools.readme"


def test_the_python_example_gives_what_it_shows() -> None:
    parser = doctest.DocTestParser()
    runner = doctest.DocTestRunner()
    for block in blocks("python"):
        runner.run(parser.get_doctest(block + "\n", {}, "README", None, 0))
    assert runner.summarize().failed == 0
    assert runner.summarize().attempted > 0


def test_the_main_job_prints_what_is_shown(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.chdir(tmp_path)
    shown = next(part for part in TEXT.split("```\n") if part.startswith("$ sheetfuncs new"))
    command, _, output = shown.partition("\n")
    assert cli.main(shlex.split(command.removeprefix("$ sheetfuncs "))) == 0
    assert capsys.readouterr().out == output


def test_every_command_shown_runs(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    shutil.copytree(README.parent / "examples", tmp_path / "examples")
    monkeypatch.chdir(tmp_path)
    commands = [line for block in blocks("sh") for line in block.splitlines() if line.startswith("sheetfuncs ")]
    assert commands
    for command in commands:
        assert cli.main(shlex.split(command, comments=True)[1:]) == 0, command


def test_pictures_and_files_named_are_there() -> None:
    for target in (part.split(")")[0] for part in TEXT.split("](")[1:]):
        if not target.startswith("http"):
            assert (README.parent / target).exists(), target
