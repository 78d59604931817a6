"""The same call gives the same answer in every host: in Python, in formulas, add-ins, scripts and arrays.

Python is taken as right here: whether it is, other tests say.
"""

from __future__ import annotations

from typing import Any

import pytest
from hypothesis import HealthCheck, Phase, given, settings
from hypothesis import strategies as st

from sheetfuncs.formulas.card import Card
from sheetfuncs.science.maths import fifteen
from tests.tools.arguments import FACES, example, replaced, with_units
from tests.tools.calls import BLANK, HOSTS, PYTHON, SAME_DOUBLE, SCRIPTS, Answers, Call

CALLS_PER_FACE = 60  # of a function in one unit system: 3,780 calls in all
# NumPy's exp and power differ from Python's in the last bit.
# LibreOffice writes 15 digits of a number into a file, and takes the difference of two numbers that
# agree to 15 digits for 0.  A JavaScript engine brings an exp and a log of its own, whose last bit may
# be another, and more of them where two such numbers are subtracted.  The other hosts give the very
# double that Python gives.
AGREEMENT, CLOSER = 1e-12, 1e-13  # relative, and absolute under 1; closer for the scripts
ERRORS_IN = ("#DIV/0!", "#N/A", "#VALUE!")


def _inside(card: Card, system: str) -> Any:
    """Any arguments within the limits, as a cell holds them: 15 digits, and none of them under a hundred-millionth.

    At a billionth they are as small as the room that limits leave for rounding, and what the formula engine
    takes for equal (under 2e-16 apart, whatever the size) decides on which side of it they fall.
    """
    values = [
        st.sampled_from(argument.allowed)
        if argument.allowed
        else st.floats(*argument.limits(system)).map(lambda value: fifteen(round(value, 8)))
        for argument in card.arguments.values()
    ]
    return st.tuples(*values).map(lambda some: with_units(card, list(some), system))


def _random_calls(card: Card, system: str) -> list[Call]:
    calls = []

    @settings(
        max_examples=CALLS_PER_FACE,
        phases=[Phase.generate],
        derandomize=True,
        database=None,
        suppress_health_check=list(HealthCheck),
    )
    @given(_inside(card, system))
    def collect(values: tuple[Any, ...]) -> None:
        calls.append(Call(card.name, values))

    collect()
    return calls


def _numbers(card: Card) -> list[tuple[int, Any]]:
    """The place and the definition of each argument that is a number."""
    return [(place, argument) for place, argument in enumerate(card.arguments.values()) if not argument.allowed]


def _limit_calls(card: Card, system: str) -> list[Call]:
    """The example, with each argument in turn at either end of its limits."""
    return [
        Call(card.name, replaced(example(card, system), place, end))
        for place, argument in _numbers(card)
        for end in argument.limits(system)
    ]


def _outside_calls(card: Card, system: str) -> list[Call]:
    """The example, with each argument in turn a billionth outside its limits."""
    calls = []
    for place, argument in _numbers(card):
        low, high = argument.limits(system)
        for outside in (low - 1e-9 * max(1.0, abs(low)), high + 1e-9 * max(1.0, abs(high))):
            calls.append(Call(card.name, replaced(example(card, system), place, fifteen(outside))))
    return calls


def _odd_calls(card: Card, system: str) -> list[Call]:
    """The example, with each argument in turn a word, a number as text, blank, true, false, an error, or left out."""
    places = range(len(card.arguments))
    odd = ("maple", "5", BLANK, True, False, None, *ERRORS_IN)
    calls = [Call(card.name, replaced(example(card, system), place, value)) for place in places for value in odd]
    calls += [Call(card.name, example(card, system)[:place]) for place in places]
    if card.units:
        measures = example(card, system)[:-1]
        calls += [Call(card.name, (*measures, word)) for word in (system.upper(), system.lower(), "furlongs", None)]
        calls += [Call(card.name, measures)]
    return calls


KINDS = {"random": _random_calls, "limits": _limit_calls, "outside": _outside_calls, "odd": _odd_calls}
NAMES = [f"{card.name}-{system}" for card, system in FACES]


@pytest.fixture(scope="module")
def calls() -> dict[tuple[str, str, str], list[Call]]:
    return {(card.name, system, kind): make(card, system) for card, system in FACES for kind, make in KINDS.items()}


@pytest.fixture(scope="module")
def answers(calls: dict[Any, list[Call]], tmp_path_factory: pytest.TempPathFactory) -> Answers:
    return Answers([call for some in calls.values() for call in some], tmp_path_factory.mktemp("agreement"))


def _differs(host: str, call: Call, expected: Any, got: Any) -> bool:
    if host in SAME_DOUBLE or isinstance(expected, str) or isinstance(got, str) or got is None:
        return bool(got != expected)  # the same double, word or error
    scale = [abs(expected), 1.0]
    if call.name == "JAR_REST":  # what is left of a volume has the error of the volume
        scale += [value for value in call.given if isinstance(value, float)]
    return abs(got - expected) > (CLOSER if host in SCRIPTS else AGREEMENT) * max(scale)


@pytest.mark.parametrize("host", HOSTS[1:])
@pytest.mark.parametrize("kind", KINDS)
@pytest.mark.parametrize(("card", "system"), FACES, ids=NAMES)
def test_every_host_gives_what_python_gives(card, system, kind, host, calls, answers):
    wrong = []
    for call in calls[card.name, system, kind]:
        if call.runs_in(host):
            expected, got = answers.of(call, PYTHON), answers.of(call, host)
            if _differs(host, call, expected, got):
                wrong.append(f"{call.name}{call.given}: Python {expected!r}, {host} {got!r}")
    assert not wrong, "\n".join(wrong)
