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
    "hosts": {"science", "formulas", "files", "folders"},
    "arrays": {"formulas", "hosts"},
    "weather": {"science", "formulas", "files"},
    "workbook": {"science", "formulas", "hosts", "weather", "files", "bounded", "folders"},
    "files": set(),
    "folders": {"files"},
    "bounded": set(),
    "ending": {"files"},
    "arguments": {"__init__", "files", "workbook"},
    "cli": {"science", "formulas", "hosts", "weather", "workbook", "files", "bounded", "ending", "arguments"},
}
# The same inside `workbook`.  A season stands above `write`, since the engine computes a written workbook;
# and below `read`, since what is read back is a season.
INSIDE = {
    "model": set(),
    "sheets": {"model"},
    "write": {"model"},
    "example": {"model"},
    "season": {"model", "sheets", "write"},
    "read": {"model", "sheets", "season"},
    "commands": {"model", "sheets", "write", "example", "season", "read"},
}
# What commands share; nothing else of one command is used by another.
SHARED = {
    "target": "the workbook that is written",
    "weather": "saved weather as typed cells",
    "check.check": "a report counts what must be mended",
    "check.typed": "what of the typed cells was not understood",
    "renew.carried": "what has no place in a new workbook",
    "renew.told": "what was not found or not understood, and what was carried",
    "renew.story": "what was written down along the way, for the next keeper",
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


def of_workbook(name: str) -> str:
    """A module's name inside `workbook`; "" for any other."""
    return name.removeprefix("sheetfuncs.workbook.") if name.startswith("sheetfuncs.workbook.") else ""


@pytest.mark.parametrize("path", [path for path in MODULES if of_workbook(named(path))], ids=named)
def test_imports_inside_workbook_point_one_way(path):
    part = of_workbook(named(path)).partition(".")[0]
    ours = {of_workbook(name).partition(".")[0] for name in imported(path)} - {""}
    assert ours <= INSIDE[part] | {part}


@pytest.mark.parametrize("path", [path for path in MODULES if ".commands." in named(path)], ids=named)
def test_commands_share_what_is_named_as_shared(path):
    command = of_workbook(named(path)).split(".")[1]
    theirs = {of_workbook(name).removeprefix("commands.") for name in module_names(path) if ".commands." in name}
    assert {name for name in theirs if name.split(".")[0] != command} <= set(SHARED)


def module_names(path: Path) -> set[str]:
    """The modules of ours that a file imports, without what it takes out of them; all know the version."""
    ours = {named(module) for module in MODULES} - {"sheetfuncs"}
    return {name if name in ours else name.rpartition(".")[0] for name in imported(path)} & ours


def test_there_is_no_circle():
    imports = {named(path): module_names(path) for path in MODULES}
    while leaves := {name for name, needed in imports.items() if not needed & imports.keys()}:
        imports = {name: needed for name, needed in imports.items() if name not in leaves}
    assert not set(imports)


@pytest.mark.parametrize("library", ["xlsxwriter", "openpyxl"])
def test_one_folder_writes_workbooks_and_one_reads_them(library):
    users = {
        named(path).rpartition(".")[0] for path in MODULES for name in imported(path) if name.split(".")[0] == library
    }
    assert len(users - {named(path).rpartition(".")[0] for path in MODULES if part_of(path) == "hosts"}) <= 1, users


def test_two_modules_need_numpy_and_none_pandas():
    users = {named(path): imported(path) for path in MODULES}
    assert [name for name, found in users.items() if "numpy" in found] == ["sheetfuncs.hosts.elements"]
    assert [name for name, found in users.items() if "sheetfuncs.hosts.elements.answer" in found] == [
        "sheetfuncs.arrays"
    ]
    assert not [name for name, found in users.items() if "pandas" in found]


@pytest.mark.parametrize("path", sorted((PACKAGE / "weather").glob("*.py")), ids=named)
def test_weather_comes_from_files_alone(path):
    """The standard library without what reaches the network, and defusedxml."""
    tops = {name.split(".")[0] for name in imported(path)}
    assert tops <= {*sys.stdlib_module_names, "sheetfuncs", "defusedxml"}
    assert not tops & {"socket", "ssl", "http", "urllib", "ftplib", "asyncio", "subprocess"}


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


def test_no_module_of_tests_imports_another():
    """What they share stands in tests/tools and in fixtures."""
    tests = Path(__file__).parent
    found = {path.name: [name for name in imported(path) if ".test_" in name] for path in tests.rglob("test_*.py")}
    assert not {name: names for name, names in found.items() if names}
