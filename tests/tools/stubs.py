"""What type checkers and editors read of the functions: `__init__.pyi` and `arrays.pyi`, made from the catalogue.

    python -m tests.tools.stubs

writes them anew; a test compares.
"""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path
from typing import Any

import sheetfuncs
from sheetfuncs import arrays
from sheetfuncs.formulas.card import Card, Number
from sheetfuncs.formulas.catalogue import CATALOGUE
from sheetfuncs.formulas.quantities import SYSTEMS

PACKAGE = Path(sheetfuncs.__file__).parent

PLAIN = '''"""Maple sugaring functions for Python and for spreadsheets.  Made by tests/tools/stubs.py."""

from typing import Literal

from sheetfuncs.formulas.card import Number
'''
MANY = '''"""The functions of the catalogue for many values at once.  Made by tests/tools/stubs.py.

A result is an array, a Series where one was given, and of single values that of the plain function.
"""

from typing import Any, Literal, Protocol, TypeAlias

from sheetfuncs.formulas.card import Number

class Array(Protocol):
    """An array or a Series."""

    def __array__(self) -> Any: ...
    def __len__(self) -> int: ...

Many: TypeAlias = list[Any] | tuple[Any, ...] | range | Array
'''


def stubs() -> dict[Path, str]:
    """The text of each file."""
    errors = [name for name in sheetfuncs.__all__ if name not in CATALOGUE]
    plain = [PLAIN + f"from sheetfuncs.science.errors import {', '.join(errors)}", ""]
    plain += ["__version__: str", f"__all__ = {sheetfuncs.__all__!r}", ""]
    many = [MANY, f"__all__ = {arrays.__all__!r}", ""]
    for function in CATALOGUE.values():
        plain += _function(function.card, "", "", _result(function.card), str(function.__doc__))
        choice = '*, errors: Literal["nan", "raise"] = "nan",'
        many += _function(function.card, " | Many", choice, "Any", function.card.summary)
    return {PACKAGE / "__init__.pyi": _formatted(plain), PACKAGE / "arrays.pyi": _formatted(many)}


def _function(card: Card, also: str, more: str, result: str, text: str) -> list[str]:
    given = [
        f"{name}: {_words(argument.allowed) or Number.__name__}{also}," for name, argument in card.arguments.items()
    ]
    given += [f"units: {_words(SYSTEMS)}{also} = {SYSTEMS[0]!r},"] * card.units
    lines = "\n".join(f"    {line}".rstrip() for line in text.splitlines()).strip()
    end = "\n    " if "\n" in lines else ""
    return [f"def {card.name}({' '.join(given)}{more}) -> {result}:", f'    """{lines}{end}"""', ""]


def _words(words: tuple[str, ...]) -> str:
    return f"Literal[{', '.join(map(repr, words))}]" if words else ""


def _result(card: Card) -> str:
    returned: Any = card.signature.return_annotation
    return _words(card.result.words) or str(returned.__name__)


def _formatted(lines: list[str]) -> str:
    command = [str(Path(sys.executable).parent / "ruff"), "format", "--stdin-filename", str(PACKAGE / "stub.pyi"), "-"]
    text = "\n".join(lines)
    return subprocess.run(command, input=text, capture_output=True, text=True, check=True, cwd=PACKAGE).stdout


if __name__ == "__main__":
    for path, text in stubs().items():
        path.write_text(text, encoding="utf-8")
