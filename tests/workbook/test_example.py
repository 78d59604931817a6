"""The example season is believable, and each mistake of the second one is caught by a sentence."""

from __future__ import annotations

import csv
from importlib import resources

import pytest

from sheetfuncs.workbook.commands.new.new import season_of
from sheetfuncs.workbook.model.parts import TELL, Column
from sheetfuncs.workbook.model.rows import Rows
from sheetfuncs.workbook.season import Season
from sheetfuncs.workbook.sheets.ledger import row


def findings(season: Season) -> dict[tuple[str, int], tuple[str, str]]:
    """What the rows say is wrong with them: by table and row, the weight and the sentence."""
    found = {}
    for name, what in season.cells.items():
        if not isinstance(what, Column) or not what.number:
            continue
        table = name.partition(".")[0]
        for offset in range(season.layout.spots[name].height):
            number = int(season.value(f"{table}.{what.number}", offset) or 0)
            if number:
                found[table, offset + 1] = what.findings[number - 1].weight, season.value(name, offset)
    return found


@pytest.mark.parametrize("system", ["US", "metric"])
def test_the_example_is_believable(system: str) -> None:
    season = season_of(system, Rows(), {}, with_example=True)
    season.compute()
    said = findings(season)
    assert {weight for weight, _ in said.values()} == {TELL}
    assert len(said) <= 5
    missing, error = (season.value(f"ledger.{column}", row("missing")) for column in ("mass", "error"))
    assert 0 < missing < error
    assert 0.7 < season.value("by_batch.against", 0) < 1.05 and 0.7 < season.value("by_batch.against", 1) < 1.05
    assert {season.value("batches.state", number) for number in range(2)} == {"in range"}


def test_weekend_reads_well() -> None:
    season = season_of("US", Rows(), {}, with_example=True)
    season.compute()
    wanted = ("next", "first", "reading", "syrup", "run", "jars", "pull")
    assert {name: season.value(f"now.{name}") for name in wanted} == {
        "next": "When you have boiled: a row in Boil, with its date, hours and jars.",
        "first": "B5: Finish it or boil it up today: it will not reach next Saturday.",
        "reading": "Syrup at 218.3 °F on dial, by boiling water read today.",
        "syrup": "0.48 gal of syrup: 15.5 gal of sap to boil down, 0.60 gal part-boiled.",
        "run": "Likely on Mar 28, and on 3 days after it.",
        "jars": "quart: 1 jar, for all that is part-boiled.",
        "pull": "Leave the taps in: 6 nights of frost are ahead.",
    }  # fmt: skip


def test_each_mistake_is_caught_by_a_sentence() -> None:
    """In its own row, or in the first row that takes what the mistake spoils."""
    season = season_of("US", Rows(), {}, with_example=True, mistakes=True)
    season.compute()
    said = findings(season)
    text = resources.files("sheetfuncs.workbook.example").joinpath("mistakes.csv").read_text(encoding="utf-8")
    mistakes = list(csv.DictReader(text.splitlines()))
    assert len(mistakes) >= 12
    for mistake in mistakes:
        place = mistake["cell"].partition(".")[0], int(mistake["row"])
        weight, _ = said[place]
        assert weight != TELL, place
