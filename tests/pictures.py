"""Pictures of the sheets for the README, from the example as LibreOffice shows it on paper.

    python -m tests.pictures

needs LibreOffice 24.8 or newer and pdftoppm.
"""

from __future__ import annotations

import subprocess
import tempfile
from pathlib import Path

from tests import office
from tests.templates import ROOT, filled

FOLDER = ROOT / "examples" / "pictures"
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


if __name__ == "__main__":
    main()
