"""LibreOffice for the tests: found, started in a profile of its own, asked to compute a workbook."""

from __future__ import annotations

import functools
import os
import re
import shutil
import subprocess
from pathlib import Path

import pytest

OLDEST_WITH_LET = (24, 8)
FOR_EVERYBODY = "UNO_SHARED_PACKAGES_CACHE"  # where LibreOffice looks for what `unopkg add --shared` installed

# Recompute on load, whatever values a file brings along.
RECOMPUTE = (
    '<?xml version="1.0" encoding="UTF-8"?><oor:items xmlns:oor="http://openoffice.org/2001/registry">'
    + "".join(
        '<item oor:path="/org.openoffice.Office.Calc/Formula/Load">'
        f'<prop oor:name="{kind}RecalcMode" oor:op="fuse"><value>0</value></prop></item>'
        for kind in ("OOXML", "ODF")
    )
    + "</oor:items>"
)


@functools.cache
def version() -> tuple[int, ...]:
    """The version of LibreOffice on this machine; (0,) where there is none."""
    if shutil.which("soffice") is None:
        return (0,)
    answer = subprocess.run(["soffice", "--version"], capture_output=True, text=True, timeout=60).stdout
    found = re.search(r"LibreOffice (\d+)\.(\d+)", answer)
    return tuple(int(part) for part in found.groups()) if found else (0,)


def needed(oldest: tuple[int, ...] = OLDEST_WITH_LET) -> None:
    """Skip a test where LibreOffice is missing or too old; under CI that is a failure."""
    if version() < oldest:
        missing(f"needs LibreOffice {'.'.join(map(str, oldest))} or newer, found {version()}")


def program(name: str) -> None:
    """Skip a test where a program is missing; under CI that is a failure."""
    if shutil.which(name) is None:
        missing(f"needs {name}")


def missing(words: str) -> None:
    """Skip a test for want of a program; under CI fail it."""
    if os.environ.get("CI"):
        pytest.fail(words)
    pytest.skip(words)


def new_profile(folder: Path) -> Path:
    """A user profile that recomputes every workbook it loads."""
    profile = folder / "profile"
    (profile / "user").mkdir(parents=True)
    (profile / "user" / "registrymodifications.xcu").write_text(RECOMPUTE)
    return profile


# Numbers as stored and not as shown, text in quotes, every sheet in a file of its own.
EVERY_SHEET_AS_CSV = "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,false,false,false,false,-1"


def convert_all(sources: list[Path], ending: str, out: Path, folder: Path) -> None:
    """Load, compute and save many workbooks as another format, in one run of the program."""
    profile = folder / "profile"
    if not profile.exists():
        new_profile(folder)
    command = ["soffice", f"-env:UserInstallation={profile.as_uri()}", "--headless", "--convert-to", ending]
    environment = {**os.environ, **own_extensions(profile)}
    subprocess.run(
        [*command, "--outdir", str(out), *map(str, sources)],
        check=True,
        capture_output=True,
        timeout=600,
        env=environment,
    )


def own_extensions(folder: Path) -> dict[str, str]:
    """The variable that keeps out the extensions which are installed for everybody on this machine."""
    return {FOR_EVERYBODY: (folder / "for-everybody").as_uri()}


def convert(source: Path, ending: str, profile: Path) -> Path:
    """Load, compute and save a workbook as another format beside it, in a folder of its own."""
    out = source.parent / f"as-{ending.partition(':')[0]}"
    out.mkdir(exist_ok=True)
    command = ["soffice", f"-env:UserInstallation={profile.as_uri()}", "--headless", "--convert-to", ending]
    environment = {**os.environ, **own_extensions(profile)}
    subprocess.run(
        [*command, "--outdir", str(out), str(source)], check=True, capture_output=True, timeout=300, env=environment
    )
    made = out / f"{source.stem}.{ending.partition(':')[0]}"
    assert made.exists(), f"LibreOffice did not write {made}"
    return made
