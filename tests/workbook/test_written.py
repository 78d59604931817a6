"""Workbooks as they are written: what the engine computes from is what is handed out, and it is so every time."""

from __future__ import annotations

import io
import re
import zipfile

import pytest

from sheetfuncs.hosts.embedded import Model
from sheetfuncs.workbook.season import TODAY
from sheetfuncs.workbook.write.bare import Bare
from sheetfuncs.workbook.write.styles import FONT
from tests.tools import schemas
from tests.tools.edits import Written, example


@pytest.mark.parametrize("system", ["US", "metric"])
def test_the_carried_edition_computes_the_same(system: str, written: Written) -> None:
    """There each cell has its whole formula, and nothing is shared."""
    path = written(system, "carried")
    season = written.seasons[system]
    bare = Bare(season.pages, season.layout, season.units, {TODAY: season.today} | season.inputs)
    found = bare.model().values(bare.formulas)
    whole = Model(path).values(bare.formulas)
    assert sum(map(len, found.values())) > 5000
    assert found == whole


def test_a_column_is_read_once_and_each_cell_computed() -> None:
    season = example()
    bare = Bare(season.pages, season.layout, season.units, season.inputs)
    cells = [rest for cells in bare.cells.values() for rest in cells.values()]
    shared = sum('<f t="shared" si=' in rest for rest in cells)
    assert sum(map(len, bare.formulas.values())) == sum("<f" in rest for rest in cells) > 5000
    assert shared > 4000


def test_every_part_is_as_the_schemas_say() -> None:
    season = example()
    assert list(schemas.faults(Bare(season.pages, season.layout, season.units, season.inputs).file())) == []


def test_typed_words_arrive_as_they_are() -> None:
    """Of any letters: an engine that read `=1+1` as a formula, or lost a blank, would compute another season."""
    words = ["=1+1", " two  blanks ", "<b>&amp;</b>", "zoë 糖 🍁", "_x0041_", "a\nb", "'", '"', "\x01"]
    season = example()
    inputs = season.inputs | {"collection.note": words}
    bare = Bare(season.pages, season.layout, season.units, inputs)
    spot = season.layout.spots["collection.note"]
    cells = {spot.sheet: [(spot.row + number, spot.column) for number in range(len(words))]}
    assert list(bare.model().values(cells)[spot.sheet].values()) == words


def test_a_season_gives_the_same_bytes_however_many_were_written_before() -> None:
    season, files = example(), (io.BytesIO(), io.BytesIO())
    for file in files:
        season.write(file)
    assert files[0].getvalue() == files[1].getvalue()


def test_letters_are_ours_and_not_those_of_a_theme() -> None:
    """A font with a scheme is that of the theme, whatever its name (ISO/IEC 29500-1, 18.8.35)."""
    season, file = example(), io.BytesIO()
    season.write(file)
    looks = zipfile.ZipFile(file).read("xl/styles.xml").decode()
    assert set(re.findall(r'<name val="([^"]*)"/>', looks)) == {FONT}
    assert "<scheme" not in looks
