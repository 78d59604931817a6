"""Pictures of each sheet in a window of LibreOffice, as wide as a laptop and as a phone.

    python -m tests.tools.screens FOLDER [FILE.xlsx]

The window opens on a screen of its own, so nothing of yours is touched.  Needs Xvfb and ImageMagick.
"""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
import tempfile
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from pathlib import Path

from tests.tools import calc_office, office
from tests.tools.templates import filled

LAPTOP, PHONE = (1366, 768), (390, 844)  # pixels
SCREEN = "1400x900x24"


def needed() -> None:
    """Skip a test where there is no screen to be had; under CI that is a failure."""
    if not (shutil.which("Xvfb") and shutil.which("import")):
        office.missing("needs Xvfb and ImageMagick's import")


@contextmanager
def screen() -> Iterator[str]:
    """A screen in memory; its name is what DISPLAY takes."""
    reads, writes = os.pipe()
    # without a reset: a server that starts anew when its last client has gone turns away the one that comes just then
    command = ["Xvfb", "-displayfd", str(writes), "-screen", "0", SCREEN, "-ac", "-nolisten", "tcp", "-noreset"]
    process = subprocess.Popen(command, pass_fds=[writes], stderr=subprocess.DEVNULL)
    os.close(writes)
    try:
        with os.fdopen(reads) as answer:
            yield f":{answer.readline().strip()}"
    finally:
        process.terminate()
        process.wait(30)


def take(path: Path, titles: Sequence[str], folder: Path) -> list[Path]:
    """Open a workbook in a window and keep a picture of each sheet, at both sizes."""
    made = []
    with tempfile.TemporaryDirectory() as name, screen() as display:
        place = Path(name)
        rooms = calc_office.Office(place)
        copy = place / "season.xlsx"
        shutil.copy(path, copy)
        copy.chmod(0o666)
        with rooms.calc(display) as calc:
            calc.open(str(copy))
            for size, (width, height) in {"laptop": LAPTOP, "phone": PHONE}.items():
                for title in titles:
                    calc.show(title, width, height, size == "phone")
                    made.append(folder / f"{title.lower().replace(' ', '-')}-{size}.png")
                    crop = ["-crop", f"{width}x{height}+0+0", "+repage"]
                    subprocess.run(["import", "-display", display, "-window", "root", *crop, made[-1]], check=True)
    return made


def main() -> None:
    folder = Path(sys.argv[1])
    folder.mkdir(parents=True, exist_ok=True)
    with tempfile.TemporaryDirectory() as name:
        path = Path(name) / "season.xlsx"
        if len(sys.argv) > 2:
            path = Path(sys.argv[2])
        else:
            filled(path, "US", "inline")
        for picture in take(path, titles(path), folder):
            print(picture)


def titles(path: Path) -> list[str]:
    """The sheets of a workbook that show."""
    from openpyxl import load_workbook

    return [sheet.title for sheet in load_workbook(path, read_only=True) if sheet.sheet_state == "visible"]


if __name__ == "__main__":
    main()
