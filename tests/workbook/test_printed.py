"""Every sheet as LibreOffice prints it: nothing cut off, no error, one page across."""

from __future__ import annotations

import re
import subprocess
from pathlib import Path

import pytest

from sheetfuncs.workbook.season import Season
from tests.tools import office
from tests.tools.templates import empty, filled

pytestmark = pytest.mark.xdist_group("LibreOffice")

LONGEST = 4  # pages that the longest log takes, downwards


def pages(path: Path, folder: Path) -> list[list[str]]:
    """The lines of each page."""
    pdf = office.convert(path, "pdf", office.new_profile(folder))
    text = subprocess.run(["pdftotext", "-layout", str(pdf), "-"], capture_output=True, text=True, check=True).stdout
    return [page.strip().splitlines() for page in text.split("\f") if page.strip()]


@pytest.mark.parametrize("system", ["US", "metric"])
@pytest.mark.parametrize("make", [filled, empty], ids=["example", "empty"])
def test_a_workbook_prints(system: str, make: object, tmp_path: Path) -> None:
    office.needed()
    path = tmp_path / "season.xlsx"
    (filled if make is filled else empty)(path, system, "inline")
    printed = pages(path, tmp_path)
    titles = [sheet.title for sheet in Season(system, {}).sheets]
    # Each page repeats its sheet's title on top; a page to the right of another would not.
    assert [page[0].strip() for page in printed if page[0].strip() not in titles] == []
    found = [page[0].strip() for page in printed]
    assert list(dict.fromkeys(found)) == titles
    for title in titles:
        most = LONGEST
        assert found.count(title) <= most, title
    for page in printed:
        if page[0].strip() == "Guide":  # it explains the errors
            continue
        wrong = [line for line in page if re.search(r"###|#N/A|#NAME|#NUM|#VALUE|#REF|#DIV|Err:\d", line)]
        assert not wrong, page[0]
