"""What `sheetfuncs excel-addin --plain` and `sheetfuncs script-addin` write: whole or not at all, with plain steps."""

from __future__ import annotations

import json
import re
import subprocess
import sys
from pathlib import Path

import pytest
from defusedxml.ElementTree import fromstring

import sheetfuncs
from sheetfuncs.cli import main
from sheetfuncs.formulas.catalogue import CATALOGUE
from sheetfuncs.hosts.script import office
from sheetfuncs.hosts.script.sheets import script_text
from sheetfuncs.hosts.script.vba import module_text

resource = pytest.importorskip("resource", reason="only POSIX limits what a process may use")

PLAIN, SCRIPTS, EXCEL = ["excel-addin", "--plain"], ["script-addin"], ["excel-addin"]
PLAIN_FILES = {"sheetfuncs.bas", "STEPS.html"}
SCRIPT_FILES = {"sheetfuncs.gs", "functions.js", "functions.json", "functions.html", "manifest.xml", "STEPS.html"}
APP = "{http://schemas.microsoft.com/office/appforoffice/1.1}"
OVERRIDES = "{http://schemas.microsoft.com/office/taskpaneappversionoverrides}"
BASIC = "{http://schemas.microsoft.com/office/officeappbasictypes/1.0}"


def names(folder: Path) -> set[str]:
    return {path.name for path in folder.iterdir()}


def words(page: Path) -> str:
    """A page of steps as a person reads it."""
    return " ".join(re.sub(r"<style>.*?</style>|<[^>]+>", " ", page.read_text("utf-8"), flags=re.S).split())


def test_the_folder_for_plain_vba(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    made = tmp_path / "a new" / "folder"
    assert main([*PLAIN, str(made)]) == 0
    assert names(made) == PLAIN_FILES
    assert (made / "sheetfuncs.bas").read_bytes() == module_text().encode("ascii")
    assert capsys.readouterr().out.count("written: ") == 2


def test_the_folder_of_scripts(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main([*SCRIPTS, str(tmp_path)]) == 0
    assert names(tmp_path) == SCRIPT_FILES
    assert (tmp_path / "sheetfuncs.gs").read_text("utf-8") == script_text()
    assert len(json.loads((tmp_path / "functions.json").read_text("utf-8"))["functions"]) == len(CATALOGUE)
    assert capsys.readouterr().out.count("written: ") == len(SCRIPT_FILES)


@pytest.mark.parametrize(("command", "first"), [(PLAIN, "sheetfuncs.bas"), (SCRIPTS, "manifest.xml")])
def test_a_folder_that_has_the_files_is_left_alone(
    command: list[str], first: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    (tmp_path / first).write_text("mine")
    assert main([*command, str(tmp_path)]) == 2
    assert f"{first}: this file exists already" in capsys.readouterr().err
    assert names(tmp_path) == {first}
    assert main([*command, str(tmp_path), "--replace"]) == 0
    assert (tmp_path / first).read_text("utf-8") != "mine"


@pytest.mark.parametrize(("command", "room"), [(PLAIN, 50_000), (SCRIPTS, 50_000), (EXCEL, 100_000)])
@pytest.mark.parametrize("there", [False, True])
def test_a_full_disk_leaves_everything_as_it_was(command: list[str], room: int, there: bool, tmp_path: Path) -> None:
    """No file may grow over the room, as on a disk that is full: the system refuses in the middle of writing."""
    folder = tmp_path / "new"
    if there:
        folder.mkdir()
        (folder / "STEPS.html").write_text("mine")

    def little_room() -> None:
        resource.setrlimit(resource.RLIMIT_FSIZE, (room, room))

    program = "import sys; from sheetfuncs import cli; sys.exit(cli.main(sys.argv[1:]))"
    done = subprocess.run(
        [sys.executable, "-c", program, *command, str(folder), *["--replace"] * there],
        capture_output=True, text=True, preexec_fn=little_room,
    )  # fmt: skip
    assert (done.returncode, done.stdout) == (2, "")
    assert len(done.stderr.splitlines()) == 1, done.stderr
    assert "(File too large)" in done.stderr
    assert names(tmp_path) == ({"new"} if there else set())
    if there:
        assert names(folder) == {"STEPS.html"}
        assert (folder / "STEPS.html").read_text() == "mine"


def test_the_manifest_names_the_files_at_their_address(tmp_path: Path) -> None:
    """Elements and their order as the reference of the manifest has them (learn.microsoft.com, OfficeApp)."""
    assert main([*SCRIPTS, str(tmp_path), "--site", "https://maple.example:8443/sugar/"]) == 0
    root = fromstring((tmp_path / "manifest.xml").read_bytes())
    assert [part.tag.rpartition("}")[2] for part in root] == [
        "Id", "Version", "ProviderName", "DefaultLocale", "DisplayName", "Description", "Hosts", "Requirements",
        "DefaultSettings", "Permissions", "VersionOverrides",
    ]  # fmt: skip
    assert re.fullmatch(r"\d+(\.\d+){3}", root.findtext(f"{APP}Version") or "")
    assert re.fullmatch(r"[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}", root.findtext(f"{APP}Id") or "")
    addresses = {one.get("id"): one.get("DefaultValue") for one in root.iter(f"{BASIC}Url")}
    site = "https://maple.example:8443/sugar"
    assert addresses == {
        "Script": f"{site}/functions.js",
        "Page": f"{site}/functions.html",
        "Metadata": f"{site}/functions.json",
    }
    texts = {one.get("id"): one.get("DefaultValue") for one in root.iter(f"{BASIC}String")}
    assert texts == {"Namespace": office.NAMESPACE}
    asked = {one.get("resid") for one in root.iter() if one.get("resid")}
    assert asked == {*addresses, *texts}
    assert {address.rpartition("/")[2] for address in addresses.values() if address} <= names(tmp_path)
    (point,) = root.iter(f"{OVERRIDES}ExtensionPoint")
    assert [part.tag.rpartition("}")[2] for part in point] == ["Script", "Page", "Metadata", "Namespace"]


@pytest.mark.parametrize("site", ["http://maple.example", "maple.example", "https://", 'https://a.example/"x"', ""])
def test_an_address_that_office_does_not_take(site: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main([*SCRIPTS, str(tmp_path / "new"), "--site", site]) == 2
    assert "Office takes an address such as https://" in capsys.readouterr().err
    assert names(tmp_path) == set()


def test_the_steps_for_plain_vba(tmp_path: Path) -> None:
    assert main([*PLAIN, str(tmp_path)]) == 0
    text = words(tmp_path / "STEPS.html")
    assert "Nothing on this page was run in Excel" in text
    assert f"sheetfuncs {sheetfuncs.__version__}" in text
    assert "Never two modules" in text
    assert "$" not in text
    assert set(re.findall(r"\bsheetfuncs_\w+", text)) == {"sheetfuncs_help"}
    assert _example(text)


def test_the_steps_for_the_scripts(tmp_path: Path) -> None:
    assert main([*SCRIPTS, str(tmp_path), "--site", "https://maple.example"]) == 0
    text = words(tmp_path / "STEPS.html")
    assert "Nothing on this page was run in Sheets or in Excel" in text
    assert f"sheetfuncs {sheetfuncs.__version__}" in text
    assert "https://maple.example" in text
    assert "$" not in text
    assert SCRIPT_FILES - {"STEPS.html"} <= set(re.findall(r"[\w]+\.\w+", text))
    assert _example(text)


def _example(text: str) -> bool:
    """Whether the call that a page asks to type gives what the page says."""
    assert f"{CATALOGUE['FINISH_TEMP'](66.9, 29.92):.1f}" == "219.5"
    return "=FINISH_TEMP(66.9, 29.92)" in text and "219.5" in text
