"""The package as it is published: built from a copy of the sources, and installed where nothing else is."""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
import venv
from pathlib import Path

ROOT = Path(__file__).parents[2]
BUILD = """
import sys
from setuptools import build_meta
out = sys.argv[1]
build_meta.build_sdist(out)
build_meta.build_wheel(out)
"""


def built(folder: Path) -> tuple[Path, Path]:
    """The wheel and the source archive, in a new folder."""
    sources, out = folder / "sources", folder / "built"
    shutil.copytree(ROOT / "sheetfuncs", sources / "sheetfuncs", ignore=shutil.ignore_patterns("__pycache__"))
    for name in ("pyproject.toml", "README.md"):
        shutil.copy(ROOT / name, sources)
    out.mkdir()
    subprocess.run([sys.executable, "-c", BUILD, str(out)], cwd=sources, check=True, capture_output=True)
    return next(out.glob("*.whl")), next(out.glob("*.tar.gz"))


def installed_alone(wheel: Path, folder: Path) -> Path:
    """The Python of a new environment that holds the wheel and nothing else: no package can be fetched."""
    environment = folder / "alone"
    venv.create(environment, with_pip=False)
    python = environment / ("Scripts/python.exe" if sys.platform == "win32" else "bin/python")
    pip = [sys.executable, "-m", "pip", "--python", str(python), "install", "-q", "--disable-pip-version-check"]
    subprocess.run([*pip, "--no-index", str(wheel)], check=True, capture_output=True)
    return python


def run(program: Path, folder: Path, *arguments: str) -> subprocess.CompletedProcess[str]:
    """Run a program of such an environment, where no variable of ours tells Python where else to look."""
    environment = {name: value for name, value in os.environ.items() if not name.startswith("PYTHON")}
    return subprocess.run(
        [str(program), *arguments], cwd=folder, env=environment, capture_output=True, text=True, encoding="utf-8"
    )
