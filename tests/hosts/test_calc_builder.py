"""The add-in's file: its parts, and that they run where LibreOffice brings only its own Python."""

from __future__ import annotations

import ast
import os
import shutil
import subprocess
import sys
import zipfile
from pathlib import Path

import pytest
from defusedxml import ElementTree

from sheetfuncs import __version__, cli
from sheetfuncs.formulas.catalogue import CATALOGUE
from sheetfuncs.hosts.calc import INTERFACE, SERVICE, builder, typelibrary
from tests.tools import office

UNOIDL_WRITE = "/usr/lib/libreoffice/sdk/bin/unoidl-write"
OLDEST_PYTHON = (3, 9)  # of those that LibreOffice brings along on Windows and macOS

# Calls every function by its own example, through the class that LibreOffice would make.
STANDING_IN = """
import sys, types
uno, unohelper = types.ModuleType("uno"), types.ModuleType("unohelper")
uno.getClass = lambda name: type(name, (), {})
made = []
class Helper:
    def addImplementation(self, *given): made.append(given)
unohelper.Base, unohelper.ImplementationHelper = type("Base", (), {}), Helper
sys.modules.update(uno=uno, unohelper=unohelper)
path = sys.argv[1]
scope = {"__file__": path, "__name__": "uno_component"}
exec(compile(open(path, encoding="utf-8").read(), path, "exec"), scope)
(functions, service, services), = made
from sheetfuncs.formulas.catalogue import CATALOGUE
for name, function in CATALOGUE.items():
    given, expected = function.card.example
    answer = getattr(functions(None), name)(*given)
    assert answer == function(*given), (name, answer)
assert not {"numpy", "pint", "xlsxwriter", "openpyxl"} & set(sys.modules)
print(len(CATALOGUE), sys.modules["sheetfuncs"].__file__)
"""


@pytest.fixture
def addin(tmp_path: Path) -> Path:
    path = tmp_path / "sheetfuncs.oxt"
    builder.write_addin(path)
    return path


def test_two_builds_are_the_same_byte_for_byte(addin: Path, tmp_path: Path) -> None:
    again = tmp_path / "again.oxt"
    builder.write_addin(again)
    assert again.read_bytes() == addin.read_bytes()


def test_the_command_writes_it_and_refuses_to_write_over_it(addin: Path, tmp_path: Path, capsys) -> None:
    out = tmp_path / "out.oxt"
    assert cli.main(["calc-addin", str(out)]) == 0
    assert out.read_bytes() == addin.read_bytes()
    assert cli.main(["calc-addin", str(out)]) == 2
    assert "--replace" in capsys.readouterr().err
    out.write_bytes(b"older")
    assert cli.main(["calc-addin", str(out), "--replace"]) == 0
    assert out.read_bytes() == addin.read_bytes()


def test_what_is_inside_runs_without_any_package(addin: Path, tmp_path: Path) -> None:
    """By this Python without site-packages, and by the oldest one where there is one."""
    with zipfile.ZipFile(addin) as archive:
        archive.extractall(tmp_path / "inside")
    component = tmp_path / "inside" / builder.ADDIN
    pythons = [sys.executable]
    oldest = shutil.which("python3.9")
    if oldest and not subprocess.run([oldest, "--version"], capture_output=True).returncode:
        pythons.append(oldest)
    environment = {name: value for name, value in os.environ.items() if not name.startswith("PYTHON")}
    for python in pythons:
        done = subprocess.run(
            [python, "-S", "-E", "-c", STANDING_IN, str(component)],
            capture_output=True,
            text=True,
            cwd=tmp_path,
            env=environment,
        )
        assert done.returncode == 0, done.stderr
        number, _, imported = done.stdout.strip().partition(" ")
        assert int(number) == len(CATALOGUE)
        assert Path(imported).is_relative_to(tmp_path / "inside")


def test_what_is_inside_keeps_to_the_syntax_of_the_oldest_python() -> None:
    for name, content in builder.addin_files().items():
        if name.endswith(".py"):
            ast.parse(content, name, feature_version=OLDEST_PYTHON)


def test_no_function_is_named_in_the_sources() -> None:
    for source in Path(builder.__file__).parent.glob("*.py"):
        text = source.read_text()
        assert not [name for name in CATALOGUE if name in text], source


def test_every_part_is_declared_and_well_formed() -> None:
    files = builder.addin_files()
    manifest = ElementTree.fromstring(files["META-INF/manifest.xml"])
    path = "{http://openoffice.org/2001/manifest}full-path"
    assert {entry.get(path) for entry in manifest} == {"functions.rdb", "functions.components", "CalcAddIns.xcu"}
    assert {entry.get(path) for entry in manifest} < set(files)
    component = ElementTree.fromstring(files["functions.components"])[0]
    assert component.get("uri") in files
    assert component[0].get("name") == SERVICE
    named = "{http://openoffice.org/extensions/description/2006}"
    description = ElementTree.fromstring(files["description.xml"])
    version = description.find(f"{named}version")
    assert version is not None and version.get("value") == __version__
    ElementTree.fromstring(files["CalcAddIns.xcu"])


def test_the_type_library_is_what_libreoffice_itself_writes(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """The same interface through `unoidl-write`, byte for byte but for the banner that names the writer."""
    if not Path(UNOIDL_WRITE).exists():
        office.missing("needs unoidl-write (Debian: libreoffice-dev)")
    module, interface = INTERFACE.split(".")
    lines = [f"module {module} {{ interface {interface} : com::sun::star::uno::XInterface {{"]
    for name, parameters in builder.methods().items():
        given = ", ".join(f"[in] {kind} {parameter}" for parameter, kind in parameters.items())
        lines.append(f"any {name}({given});")
    (tmp_path / "functions.idl").write_text("\n".join([*lines, "}; };"]))
    written = tmp_path / "functions.rdb"
    types = Path(shutil.which("soffice") or "").resolve().with_name("types.rdb")
    subprocess.run([UNOIDL_WRITE, types, tmp_path / "functions.idl", written], check=True, capture_output=True)
    theirs = written.read_bytes()
    banner = theirs[typelibrary.HEADER : theirs.index(b"**\0") + len(b"**\0")]
    assert b"unoidl-write" in banner
    monkeypatch.setattr(typelibrary, "BANNER", banner)
    assert builder.addin_files()["functions.rdb"] == theirs
