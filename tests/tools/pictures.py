"""Pictures for the README: sheets in a window of LibreOffice and on paper, the report in a browser.

    python -m tests.tools.pictures

needs LibreOffice 24.8 or newer, Xvfb, ImageMagick, pdftoppm and Chromium.
"""

from __future__ import annotations

import shutil
import subprocess
import tempfile
from argparse import Namespace
from pathlib import Path

from sheetfuncs.workbook.commands.report.report import report
from tests.tools import browser, office, screens
from tests.tools.templates import ROOT, filled

FOLDER = ROOT / "examples" / "pictures"
REPORT = (900, 1500)  # how much of the report's page is shown
ON_SCREEN = ("weekend-phone", "boil-phone", "finish-phone", "finish-laptop")
PAGES = {"charts": "Charts", "wall-card": "Wall card", "batch-card": "Batch card", "labels": "Labels"}


def main() -> None:
    FOLDER.mkdir(exist_ok=True)
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        path = folder / "season.xlsx"
        filled(path, "US", "inline")
        taken = {picture.stem: picture for picture in screens.take(path, screens.titles(path), folder)}
        for one in ON_SCREEN:
            shutil.copy(taken[one], FOLDER)
        pdf = office.convert(path, "pdf", office.new_profile(folder))
        pages = subprocess.run(["pdftotext", "-layout", str(pdf), "-"], capture_output=True, text=True, check=True)
        firsts = [page.strip().splitlines()[0] if page.strip() else "" for page in pages.stdout.split("\f")]
        for file, title in PAGES.items():
            number = str(firsts.index(title) + 1)
            target = str(FOLDER / file)
            options = ["-r", "80", "-f", number, "-l", number, "-singlefile", "-png"]
            subprocess.run(["pdftoppm", *options, str(pdf), target], check=True)
        page = folder / "report.html"
        report(Namespace(files=[str(path)], html=str(page), replace=False))
        browser.screenshot(page, FOLDER / "report.png", *REPORT)
    for picture in sorted(FOLDER.glob("*.png")):
        subprocess.run(["mogrify", "-strip", "-colors", "128", str(picture)], check=True)
        print(picture.name, f"{picture.stat().st_size // 1024} KB")


if __name__ == "__main__":
    main()
