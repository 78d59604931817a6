"""What the command line says of itself."""

from __future__ import annotations

import argparse
import shlex

import pytest

from sheetfuncs import arguments, cli


def commands() -> dict[str, argparse.ArgumentParser]:
    return next(one for one in arguments.parser()._actions if isinstance(one, argparse._SubParsersAction)).choices


def test_every_command_has_an_example_that_is_understood() -> None:
    assert set(arguments.EXAMPLES) == set(cli.COMMANDS) == set(commands())
    for name, words in arguments.EXAMPLES.items():
        arguments.parser().parse_args([name, *shlex.split(words)])


@pytest.mark.parametrize("name", arguments.EXAMPLES)
def test_help_shows_the_example(name: str) -> None:
    text = " ".join(commands()[name].format_help().split())
    assert f"example: sheetfuncs {name} {arguments.EXAMPLES[name]}" in text


def test_the_next_step_names_what_was_written() -> None:
    options = arguments.parser().parse_args(["new", "a.xlsx"])
    assert cli._next(options) == "Next: open a.xlsx; the sheet Weekend says what to type first."
    assert cli._next(arguments.parser().parse_args(["report", "a.xlsx"])) == ""
