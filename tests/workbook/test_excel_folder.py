"""What `sheetfuncs excel-addin` writes.  Excel is not here: nothing of this was run in it."""

from __future__ import annotations

import re
import subprocess
import sys
import warnings
import zipfile
from html.parser import HTMLParser
from pathlib import Path, PurePosixPath
from xml.etree.ElementTree import Element

import openpyxl
import pytest
import tomllib
import xlwings
from defusedxml.ElementTree import fromstring

import sheetfuncs
from sheetfuncs.cli import main
from sheetfuncs.files import Refused
from sheetfuncs.hosts import excel
from sheetfuncs.hosts.excel import installed, wrapper
from sheetfuncs.hosts.excel.wrapper import XLWINGS, module_text
from sheetfuncs.workbook.season import Season
from sheetfuncs.workbook.write.calls import has_calls
from tests.tools import office
from tests.tools.calc_office import Office

BROUGHT = Path(xlwings.__file__).parent
FILES = {"season.xlsm", "sheetfuncs.bas", "xlwings.bas", "STEPS.html"}
RELATION = "http://schemas.openxmlformats.org/officeDocument/2006/relationships"
PROJECT_RELATION = "http://schemas.microsoft.com/office/2006/relationships/vbaProject"  # [MS-OFFMACRO2] 2.2.1.1
TYPES = {  # [MS-OFFMACRO2] 2.2: of the workbook with macros, and of the project
    "/xl/workbook.xml": "application/vnd.ms-excel.sheet.macroEnabled.main+xml",
    "/xl/vbaProject.bin": "application/vnd.ms-office.vbaProject",
}


@pytest.fixture(scope="module")
def folder(tmp_path_factory: pytest.TempPathFactory) -> Path:
    made = tmp_path_factory.mktemp("excel") / "a new" / "folder"
    assert main(["excel-addin", str(made), "--units", "metric"]) == 0
    return made


@pytest.fixture(scope="module")
def archive(folder: Path) -> dict[str, bytes]:
    with zipfile.ZipFile(folder / "season.xlsm") as book:
        assert book.testzip() is None
        return {f"/{name}": book.read(name) for name in book.namelist()}


def test_the_files(folder: Path) -> None:
    assert {path.name for path in folder.iterdir()} == FILES
    assert (folder / "sheetfuncs.bas").read_bytes() == module_text().encode("ascii")
    assert (folder / "xlwings.bas").read_bytes() == (BROUGHT / "xlwings.bas").read_bytes()


def test_the_vba_project_is_xlwings_own(archive: dict[str, bytes]) -> None:
    with zipfile.ZipFile(BROUGHT / "quickstart_standalone.xlsm") as theirs:
        assert archive["/xl/vbaProject.bin"] == theirs.read("xl/vbaProject.bin")


def test_the_project_holds_the_module_that_our_wrapper_calls(archive: dict[str, bytes], folder: Path) -> None:
    """oletools reads the project; its module is the text file for the user's own workbooks."""
    modules = _modules(archive["/xl/vbaProject.bin"])
    assert {"ThisWorkbook", "xlwings"} <= set(modules)
    assert wrapper.NAME not in modules, "it would be there twice after the import"
    code = modules["xlwings"]
    assert f'XLWINGS_VERSION As String = "{xlwings.__version__}"' in code
    assert re.search(r"^Function XLPy\(\)\r?$", code, re.M)
    assert code.splitlines() == (folder / "xlwings.bas").read_text().splitlines()


def _modules(project: bytes) -> dict[str, str]:
    """The code of each module of a VBA project."""
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")  # oletools calls pyparsing by names that pyparsing no longer likes
        from oletools.olevba import VBA_Parser

        parser = VBA_Parser("vbaProject.bin", data=project)
        modules = {name.rpartition(".")[0]: code for _, _, name, code in parser.extract_macros()}
        parser.close()
    return modules


def test_every_part_has_a_content_type(archive: dict[str, bytes]) -> None:
    root = fromstring(archive["/[Content_Types].xml"])
    endings = {found.get("Extension"): found.get("ContentType") for found in root if found.tag.endswith("Default")}
    named = {found.get("PartName"): found.get("ContentType") for found in root if found.tag.endswith("Override")}
    assert set(named) <= set(archive)
    for part in set(archive) - {"/[Content_Types].xml"}:
        kind = named.get(part) or endings.get(part.rpartition(".")[2])
        assert kind, part
        assert kind == TYPES.get(part, kind)


def _relations(archive: dict[str, bytes], part: str) -> list[Element]:
    path = PurePosixPath(part)
    return list(fromstring(archive[f"{path.parent / '_rels' / path.name}.rels"]))


def test_every_relationship_leads_somewhere(archive: dict[str, bytes]) -> None:
    followed = 0
    for name in archive:
        if not name.endswith(".rels"):
            continue
        base = PurePosixPath(name).parent.parent
        for relation in fromstring(archive[name]):
            if relation.get("TargetMode") == "External":
                continue
            target = (base / str(relation.get("Target"))).as_posix()
            while "/../" in target:
                target = re.sub(r"/[^/]+/\.\./", "/", target, count=1)
            assert target in archive, f"{name}: {target}"
            followed += 1
    assert followed > 20
    (project,) = [one for one in _relations(archive, "/xl/workbook.xml") if one.get("Type") == PROJECT_RELATION]
    assert project.get("Target") == "vbaProject.bin"


def test_code_names_tie_the_workbook_and_the_first_sheets_to_the_project(archive: dict[str, bytes]) -> None:
    assert b'<workbookPr codeName="ThisWorkbook"' in archive["/xl/workbook.xml"]
    names = [re.findall(rb'<sheetPr codeName="(\w+)"', part) for name, part in archive.items() if "/sheet" in name]
    flat = [name for found in names for name in found]
    assert len(flat) == len(set(flat)) == len(Season("US", {}).pages) + 1
    assert {b"Sheet1", b"Sheet2"} <= set(flat)  # the two that xlwings' project has


def test_the_linked_season_is_in_it(folder: Path, tmp_path: Path) -> None:
    """Cell for cell the linked edition that `sheetfuncs new` writes, and each formula has its value."""
    Season("metric", {}).write(tmp_path / "linked.xlsx", "linked")
    book = openpyxl.load_workbook(folder / "season.xlsm")
    values = openpyxl.load_workbook(folder / "season.xlsm", data_only=True)
    plain = openpyxl.load_workbook(tmp_path / "linked.xlsx")
    computed = openpyxl.load_workbook(tmp_path / "linked.xlsx", data_only=True)
    assert book.sheetnames == [*plain.sheetnames, "xlwings.conf"]
    calls = 0
    for sheet in plain:
        for row in sheet.iter_rows():
            for cell in row:
                there, here = (
                    getattr(one.value, "text", one.value) for one in (book[sheet.title][cell.coordinate], cell)
                )
                assert there == here
                if isinstance(here, str) and here.startswith("=") and has_calls(here):
                    assert values[sheet.title][cell.coordinate].value == computed[sheet.title][cell.coordinate].value
                    calls += 1
    assert calls > 200
    assert not [name for name in book.defined_names if name in excel.FUNCTIONS]


def test_the_settings_are_those_we_know(folder: Path) -> None:
    sheet = openpyxl.load_workbook(folder / "season.xlsm")["xlwings.conf"]
    assert {row[0].value: row[1].value for row in sheet.iter_rows()} == installed.settings()
    assert installed.settings() == {"UDF Modules": "sheetfuncs.hosts.excel"}


def test_on_windows_the_settings_say_which_python(monkeypatch: pytest.MonkeyPatch) -> None:
    """Where Excel and this Python are on one machine; and the settings are such as xlwings' VBA asks for."""
    python = r"C:\Users\sap\sugar\Scripts\python.exe"
    monkeypatch.setattr(sys, "platform", "win32")
    monkeypatch.setattr(sys, "executable", python)
    settings = installed.settings()
    assert settings == {"Interpreter_Win": python, "UDF Modules": "sheetfuncs.hosts.excel"}
    for name in settings:
        assert f'GetConfig("{name.upper()}"' in (BROUGHT / "xlwings.bas").read_text()


@pytest.mark.xdist_group("LibreOffice")
def test_libreoffice_opens_it(plain_office: Office, folder: Path) -> None:
    office.needed()
    opened = plain_office.takes(folder / "season.xlsm", "season.xlsm")
    with plain_office.calc() as calc:
        calc.open(opened)
        found = calc.sheets()
        sheets = openpyxl.load_workbook(opened).sheetnames
        assert list(found) == sheets
        assert calc.read("A1:B1", sheets.index("xlwings.conf")) == [["UDF Modules", "sheetfuncs.hosts.excel"]]


class _Page(HTMLParser):
    def __init__(self) -> None:
        super().__init__()
        self.text, self.tags = "", set[str]()

    def handle_data(self, data: str) -> None:
        self.text += data

    def handle_starttag(self, tag: str, attrs: object) -> None:
        self.tags.add(tag)


def test_the_steps(folder: Path) -> None:
    page = _Page()
    page.feed((folder / "STEPS.html").read_text("utf-8"))
    text = " ".join(page.text.split())
    assert "Nothing on this page was run in Excel" in text
    assert "Never do both" in text
    assert f"sheetfuncs {sheetfuncs.__version__} for xlwings {xlwings.__version__}" in text
    assert FILES - {"STEPS.html"} <= set(re.findall(r"[\w.]+", text))
    assert excel.CATEGORY in text
    assert "$" not in text
    assert "script" not in page.tags
    macros = set(re.findall(r"\bsheetfuncs_\w+|\bImportPythonUDFs\b", text))
    assert macros == {"sheetfuncs_check", "sheetfuncs_help", "ImportPythonUDFs"}
    modules = module_text() + (BROUGHT / "xlwings.bas").read_text()
    assert all(re.search(rf"^(Public )?Sub {macro}\(", modules, re.M) for macro in macros)


def test_a_folder_that_has_the_files_is_left_alone(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    (tmp_path / "STEPS.html").write_text("mine")
    assert main(["excel-addin", str(tmp_path)]) == 2
    assert "STEPS.html: this file exists already" in capsys.readouterr().err
    assert [path.name for path in tmp_path.iterdir()] == ["STEPS.html"]
    assert (tmp_path / "STEPS.html").read_text() == "mine"


def test_replacing_leaves_a_workbook_as_it_is(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """A whole season may have been typed into it."""
    (tmp_path / "STEPS.html").write_text("old")
    (tmp_path / "season.xlsm").write_text("a season")
    assert main(["excel-addin", str(tmp_path), "--replace"]) == 0
    assert (tmp_path / "season.xlsm").read_text() == "a season"
    assert (tmp_path / "STEPS.html").read_text("utf-8") != "old"
    told = capsys.readouterr().out
    assert f"left as it was: {tmp_path / 'season.xlsm'}" in told
    assert f"written: {tmp_path / 'season.xlsm'}" not in told


def test_a_file_is_no_folder(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    (tmp_path / "taken").write_text("")
    assert main(["excel-addin", str(tmp_path / "taken")]) == 2
    assert "this folder cannot be made" in capsys.readouterr().err


def test_without_xlwings(tmp_path: Path) -> None:
    """In a Python of its own, that cannot import it."""
    command = ["excel-addin", str(tmp_path / "new")]
    program = f"import sys; sys.modules['xlwings'] = None; from sheetfuncs.cli import main; sys.exit(main({command!r}))"
    done = subprocess.run([sys.executable, "-c", program], capture_output=True, text=True, timeout=120)
    assert done.returncode == 2
    assert done.stderr.startswith("sheetfuncs: xlwings: this Python has no xlwings; install it: python -m pip install")
    assert done.stderr.count("\n") == 1
    assert not (tmp_path / "new").exists()


def test_another_version_of_xlwings(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(xlwings, "__version__", "0.38.0")
    with pytest.raises(Refused, match=rf"xlwings 0\.38\.0: .*{re.escape(XLWINGS)}; install that: .*=={XLWINGS}"):
        installed.installed()


def test_an_xlwings_without_its_files(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(xlwings, "__file__", str(tmp_path / "__init__.py"))
    workbook, module = tmp_path / "quickstart_standalone.xlsm", tmp_path / "xlwings.bas"

    def refused() -> str:
        with pytest.raises(Refused) as caught:
            installed.installed()
        return str(caught.value)

    assert refused().startswith(f"{workbook}: xlwings should bring this file")
    workbook.write_text("no workbook")
    assert refused().startswith(f"{workbook}: xlwings should bring this file")
    with zipfile.ZipFile(workbook, "w") as empty:
        empty.writestr("xl/workbook.xml", "")
    assert refused().startswith(f"{workbook}: xlwings should bring this file, with a VBA project in it")
    workbook.write_bytes((BROUGHT / workbook.name).read_bytes())
    assert refused().startswith(f"{module}: xlwings should bring this file")
    module.write_text('Public Const XLWINGS_VERSION As String = "0.37.0"')
    assert refused().startswith(f"{module}: it does not belong to xlwings {xlwings.__version__}")
    module.write_bytes((BROUGHT / module.name).read_bytes())
    assert installed.installed().version == xlwings.__version__


def test_the_project_asks_for_the_xlwings_that_the_wrapper_is_written_for() -> None:
    project = tomllib.loads((Path(__file__).parents[2] / "pyproject.toml").read_text("utf-8"))["project"]
    extras = project["optional-dependencies"]
    asked = [one for one in extras["workbook"] + extras["dev"] if "xlwings" in one]
    assert [one.partition(";")[0] for one in asked] == [f"xlwings=={XLWINGS}.*"] * 2
