"""Random seasons, believable and odd: no sentence that anybody could be told is broken, in either unit system."""

from __future__ import annotations

import random
import re

import pytest

from tests.tools import random_seasons
from tests.tools.typed_into import FALSE, Sheets

HOW_MANY = 150  # in each unit system; one of three is odd
# Of any season: an error, two blanks, a part that is not there, "1 minutes", a machine's number.
BROKEN = re.compile(FALSE.pattern + r"| [.,:;?]|\.\.|\(\)|\b(by|of|in|on|at|read) [.,:;]")
# Of a believable one besides: nothing that is called a number.
NOUGHT = re.compile(
    r"(?<![\d.,])0(\.0+)? (minutes|hours|days|jars|boils|nights|°Brix)\b"
    r"|(?<![\d.,])0\.0+ (ft³|m³|therm|kWh|cu ft|gal|L|lb|kg|mL|fl oz)\b"
)
# What ends as a sentence begins as one, but for the name of a jar.
SMALL = re.compile(r"(^(?![\w ]+: )|[.?!] )[a-z](?=.* .*[.?!:]$)")
BEGUN = ("now.works",)  # by its label
TOLD_BACK = re.compile(r'"[^"]*"|\b(0\.001|-1)\b')  # as it was typed


@pytest.mark.parametrize("system", ["US", "metric"])
def test_no_sentence_is_broken(system: str) -> None:
    sheets, rng = Sheets(system), random.Random(system)  # noqa: S311 (no secret)
    wrong: dict[str, str] = {}
    for number in range(HOW_MANY):
        typed = random_seasons.season(rng, sheets, odd=number % 3 == 0)
        for said, where in random_seasons.sentences(sheets, typed).items():
            words = TOLD_BACK.sub("it", said)
            rules = [BROKEN] + [NOUGHT] * (number % 3 > 0) + [SMALL] * (where not in BEGUN)
            wrong |= {found[0]: f"{where}: {said}" for rule in rules if (found := rule.search(words))}
    assert not wrong, "\n".join(f"{found!r} in {said}" for found, said in wrong.items())
