"""What type checkers, editors and `inspect` are told of the functions, and that it is true."""

from __future__ import annotations

import inspect
import json
import linecache
import os
import re
import subprocess
import sys
import traceback
from pathlib import Path
from typing import Any, Literal, get_args

import pytest

import sheetfuncs
from sheetfuncs import FINISH_TEMP, LeftOut
from sheetfuncs.formulas.card import Number
from sheetfuncs.formulas.catalogue import CATALOGUE
from sheetfuncs.formulas.define import define
from sheetfuncs.formulas.quantities import SUGAR, SYSTEMS, number
from tests.tools.arguments import FACES, example
from tests.tools.stubs import stubs

ROOT = Path(sheetfuncs.__file__).parents[1]
EACH = pytest.mark.parametrize("function", CATALOGUE.values(), ids=CATALOGUE)

# A checker must refuse the lines marked so, and no other.
CALLS = """
from decimal import Decimal
from fractions import Fraction
from typing import Literal

import numpy as np

from sheetfuncs import BOIL_FUEL, FINISH_TEMP, JAR_COUNT, SYRUP_STATE, WrongKind, arrays

degrees: float = FINISH_TEMP(66.9, 29.92)
jars: int = JAR_COUNT(1, 16)
state: Literal["thin", "in range", "thick"] = SYRUP_STATE(66.9)
FINISH_TEMP(np.float64(66.9), np.int64(1000), units="metric")
FINISH_TEMP(np.float32(66.9), Decimal("29.92"), "US")
FINISH_TEMP(Fraction(66), pressure=True)
BOIL_FUEL(1000.0, "propane", 0.5)
arrays.FINISH_TEMP(np.array([66.9]), [29.92, 30.1], errors="raise")
arrays.FINISH_TEMP(66.9, (29.92, 1013.25), ["US", "metric"])
arrays.BOIL_FUEL(1000.0, ["propane", "hardwood"], 0.5)
error: type[ValueError] = WrongKind

FINISH_TEMP("maple", "syrup", 7, bogus=3)  # refused
FINISH_TEMP()  # refused
FINISH_TEMP(66.9)  # refused
FINISH_TEMP(66.9, 29.92, units="imperial")  # refused
FINISH_TEMP(66.9, 29.92, "US", 1)  # refused
FINISH_TEMP("66.9", 29.92)  # refused
FINISH_TEMP(66.9, None)  # refused
FINISH_TEMP([66.9], 29.92)  # refused
FINISH_TEMP(np.array([66.9]), 29.92)  # refused
BOIL_FUEL(1000.0, "coal", 0.5)  # refused
other: Literal["thin", "good"] = SYRUP_STATE(66.9)  # refused
half: int = FINISH_TEMP(66.9, 29.92)  # refused
arrays.FINISH_TEMP("maple", [29.92])  # refused
arrays.FINISH_TEMP([66.9])  # refused
arrays.FINISH_TEMP([66.9], 29.92, errors="ignore")  # refused
"""
REFUSED = {place for place, line in enumerate(CALLS.splitlines(), 1) if line.endswith("# refused")}


def test_the_stubs_are_up_to_date():
    for path, text in stubs().items():
        assert path.read_text(encoding="utf-8") == text, "run: python -m tests.tools.stubs"


def test_mypy_knows_the_calls(tmp_path):
    (tmp_path / "calls.py").write_text(CALLS)
    command = [sys.executable, "-m", "mypy", "--strict", "--cache-dir", str(tmp_path / "cache"), "calls.py"]
    done = run(command, tmp_path, MYPYPATH=str(ROOT))
    assert {int(line) for line in re.findall(r"^calls\.py:(\d+): error", done.stdout, re.M)} == REFUSED, done.stdout


def test_pyright_knows_the_calls(tmp_path):
    (tmp_path / "calls.py").write_text(CALLS)
    (tmp_path / "pyrightconfig.json").write_text(json.dumps({"extraPaths": [str(ROOT)]}))
    done = run([sys.executable, "-m", "pyright", "--outputjson", "--pythonpath", sys.executable], tmp_path)
    found = json.loads(done.stdout)["generalDiagnostics"]
    lines = {one["range"]["start"]["line"] + 1 for one in found if one["severity"] == "error"}
    assert lines == REFUSED, found


def run(command: list[str], folder: Path, **environment: str) -> subprocess.CompletedProcess[str]:
    return subprocess.run(command, cwd=folder, capture_output=True, text=True, env={**os.environ, **environment})


@EACH
def test_the_signature_is_true(function):
    card, signature = function.card, inspect.signature(function)
    assert list(signature.parameters) == list(card.parameters)
    for name, parameter in signature.parameters.items():
        assert parameter.kind is inspect.Parameter.POSITIONAL_OR_KEYWORD
        assert parameter.default == (SYSTEMS[0] if name == "units" else inspect.Parameter.empty)
        assert function.__annotations__[name] == parameter.annotation
        words = SYSTEMS if name == "units" else card.arguments[name].allowed
        assert parameter.annotation == (Literal[words] if words else Number)
    assert function.__annotations__["return"] == signature.return_annotation
    given = example(card, "US")
    named = dict(zip(card.parameters, given, strict=True))
    assert function(**named) == function(*given)
    for wrong in ({**named, "bogus": 3}, {}):
        with pytest.raises((TypeError, LeftOut)):
            function(**wrong)


@pytest.mark.parametrize(("card", "system"), FACES, ids=[f"{card.name}-{system}" for card, system in FACES])
def test_the_result_is_of_the_type_that_is_said(card, system):
    value: Any = CATALOGUE[card.name](*example(card, system))
    said = card.signature.return_annotation
    if card.result.words:
        assert get_args(said) == card.result.words
        assert value in card.result.words
    else:
        assert type(value) is said


@pytest.mark.parametrize("name", [name for name, function in CATALOGUE.items() if function.card.result.words])
def test_every_word_of_a_result_is_given_and_no_other(name):
    function = CATALOGUE[name]
    (argument,) = function.card.arguments.values()
    low, high = argument.us
    assert {function(low + (high - low) * step / 1000) for step in range(1001)} == set(function.card.result.words)


@EACH
def test_source_and_relation_can_be_seen(function):
    relation = function.card.relation
    assert function.__wrapped__ is relation
    assert inspect.getsource(function) == inspect.getsource(relation)
    code = function.__code__
    lines = linecache.getlines(code.co_filename)
    assert lines[code.co_firstlineno - 1].startswith(f"def {function.__name__}(")
    linecache.checkcache()
    assert linecache.getlines(code.co_filename) == lines


def test_a_traceback_shows_the_line():
    with pytest.raises(LeftOut) as refused:
        FINISH_TEMP(66.9)  # type: ignore[call-arg]
    shown = "".join(traceback.format_exception(refused.value))
    assert "return slowly(card, (brix, pressure, ), units)" in shown


def test_a_relation_with_a_fault_runs_once_and_its_own_error_comes_out():
    ran = []

    def FAULTY(brix: Any) -> Any:
        ran.append(brix)
        return brix + "1"

    function = define("strength", SUGAR, source="none", example=((1.0,), 1.0), brix=number("sugar", SUGAR, 0.0, 9.0))(
        FAULTY
    )
    for value in (5.0, 5):
        ran.clear()
        with pytest.raises(TypeError):
            function(value)
        assert ran == [5.0]
