"""Pictures for the README: the sheets of the example as LibreOffice shows them on paper, the report in a browser.

    python -m tests.tools.pictures

needs LibreOffice 24.8 or newer, pdftoppm and Chromium.
"""

from __future__ import annotations

import subprocess
import tempfile
from argparse import Namespace
from pathlib import Path

from sheetfuncs.workbook.commands.report.report import report
from tests.tools import browser, office
from tests.tools.templates import ROOT, filled

FOLDER = ROOT / "examples" / "pictures"
REPORT = (900, 1500)  # how much of the report's page is shown
PAGES = {"weekend": "Weekend", "finish": "Finish", "season": "Season", "wall-card": "Wall card"}


def main() -> None:
    FOLDER.mkdir(exist_ok=True)
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        path = folder / "season.xlsx"
        filled(path, "US", "inline")
        pdf = office.convert(path, "pdf", office.new_profile(folder))
        pages = subprocess.run(["pdftotext", "-layout", str(pdf), "-"], capture_output=True, text=True, check=True)
        firsts = [page.strip().splitlines()[0] if page.strip() else "" for page in pages.stdout.split("\f")]
        for file, title in PAGES.items():
            page = str(firsts.index(title) + 1)
            target = str(FOLDER / file)
            options = ["-r", "100", "-f", page, "-l", page, "-singlefile", "-png"]
            subprocess.run(["pdftoppm", *options, str(pdf), target], check=True)
            print(f"{target}.png")
        page = folder / "report.html"
        report(Namespace(files=[str(path)], html=str(page), replace=False))
        browser.screenshot(page, FOLDER / "report.png", *REPORT)


if __name__ == "__main__":
    main()
