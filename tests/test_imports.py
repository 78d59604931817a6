"""Which module may import what, what a plain `import sheetfuncs` loads, and what runs on older Pythons."""

from __future__ import annotations

import ast
import subprocess
import sys
from pathlib import Path

import pytest

import sheetfuncs

PACKAGE = Path(sheetfuncs.__file__).parent
MODULES = sorted(PACKAGE.rglob("*.py"))

# From the bottom up: each part may import itself and those in its line.
MAY_IMPORT = {
    "__init__": {"science", "formulas"},
    "science": set(),
    "formulas": {"science"},
    "hosts": {"science", "formulas", "files"},
    "workbook": {"science", "formulas", "hosts", "files"},
    "arrays": {"formulas", "hosts"},
    "files": set(),
    "cli": {"science", "formulas", "hosts", "workbook", "files"},
}
HEAVY = ("pint", "openpyxl", "xlsxwriter", "xlwings", "ironcalc", "numpy", "pandas")
# These enter the Calc add-in and run on the Python that LibreOffice brings along.
IN_THE_ADDIN = sorted(
    [*(PACKAGE / "science").glob("*.py"), *(PACKAGE / "formulas").glob("*.py"), PACKAGE / "hosts" / "cells.py"]
)


def named(path: Path) -> str:
    return ".".join(("sheetfuncs", *path.relative_to(PACKAGE).with_suffix("").parts)).removesuffix(".__init__")


def imported(path: Path) -> set[str]:
    """The modules that a file imports, anywhere in it; `from a import b` counts as a.b."""
    found = set()
    for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
        if isinstance(node, ast.Import):
            found |= {alias.name for alias in node.names}
        elif isinstance(node, ast.ImportFrom):
            assert node.level == 0, f"{path}: a relative import"
            found |= {f"{node.module}.{alias.name}" for alias in node.names}
    return found


def part_of(path: Path) -> str:
    """The part that a module belongs to: a folder, or a single file, of the package."""
    return path.relative_to(PACKAGE).with_suffix("").parts[0]


@pytest.mark.parametrize("path", MODULES, ids=named)
def test_imports_point_one_way(path):
    part = part_of(path)
    ours = {name.split(".")[1] for name in imported(path) if name.startswith("sheetfuncs.")} - {"__version__"}
    assert ours <= MAY_IMPORT[part] | {part}


@pytest.mark.parametrize("library", ["xlsxwriter", "openpyxl"])
def test_one_module_writes_workbooks_and_one_reads_them(library):
    users = {named(path) for path in MODULES for name in imported(path) if name.split(".")[0] == library}
    assert len(users - {named(path) for path in MODULES if part_of(path) == "hosts"}) <= 1, users


def test_two_modules_need_numpy_and_none_pandas():
    users = {named(path): imported(path) for path in MODULES}
    assert [name for name, found in users.items() if "numpy" in found] == ["sheetfuncs.hosts.elements"]
    assert [name for name, found in users.items() if "sheetfuncs.hosts.elements.answer" in found] == [
        "sheetfuncs.arrays"
    ]
    assert not [name for name, found in users.items() if "pandas" in found]


def test_import_sheetfuncs_loads_nothing_heavy():
    asked = "import sys, sheetfuncs; sheetfuncs.FINISH_TEMP(66.9, 29.92); print(*sys.modules)"
    done = subprocess.run([sys.executable, "-c", asked], capture_output=True, text=True, check=True)
    loaded = {name.split(".")[0] for name in done.stdout.split()}
    assert not loaded & set(HEAVY)
    assert "sheetfuncs" in loaded


@pytest.mark.parametrize("path", IN_THE_ADDIN, ids=named)
def test_what_enters_the_addin_keeps_to_python_3_9_and_its_own_library(path):
    text = path.read_text(encoding="utf-8")
    ast.parse(text, feature_version=(3, 9))
    assert "from __future__ import annotations" in text or not ast.parse(text).body[1:]
    for name in imported(path):
        top = name.split(".")[0]
        assert top == "sheetfuncs" or top in sys.stdlib_module_names
