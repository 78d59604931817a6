"""Every sheet as LibreOffice prints it: nothing cut off, no error, one page across."""

from __future__ import annotations

import re
import subprocess
from pathlib import Path

import openpyxl
import pytest

from sheetfuncs.workbook.season import Season
from tests.tools import office
from tests.tools.templates import empty, filled

pytestmark = pytest.mark.xdist_group("LibreOffice")

LONGEST = 4  # pages that the longest log takes, downwards
FUNCTIONS = 10  # each function with an example to try: nobody needs it on paper


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
    book = openpyxl.load_workbook(path)
    titles = [sheet.title for sheet in book.worksheets if sheet.sheet_state == "visible"]
    assert set(titles) == {sheet.title for sheet in Season(system, {}).sheets} | {"Functions"}
    # Each page repeats its sheet's title on top; a page to the right of another would not.
    assert [page[0].strip() for page in printed if page[0].strip() not in titles] == []
    found = [page[0].strip() for page in printed]
    assert list(dict.fromkeys(found)) == titles
    for title in titles:
        most = FUNCTIONS if title == "Functions" else LONGEST
        assert found.count(title) <= most, title
    for page in printed:
        if page[0].strip() in ("Guide", "Functions"):  # they explain the errors
            continue
        wrong = [line for line in page if re.search(r"###|#N/A|#NAME|#NUM|#VALUE|#REF|#DIV|Err:\d", line)]
        assert not wrong, page[0]
