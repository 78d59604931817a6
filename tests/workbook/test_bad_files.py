"""Files that are no season workbook, or a damaged or hostile one: one clear line, exit 2, nothing written."""

from __future__ import annotations

import io
import random
import subprocess
import sys
import zipfile
from collections.abc import Callable
from pathlib import Path

import openpyxl
import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from sheetfuncs import cli
from sheetfuncs.files import Refused
from sheetfuncs.workbook.commands.check.check import check_file
from sheetfuncs.workbook.read.filled import read
from sheetfuncs.workbook.season import FORMAT
from tests.tools.damage import damaged
from tests.tools.edits import SMALL, address, example, faults, part_of, with_openpyxl, with_xml

resource = pytest.importorskip("resource", reason="only POSIX limits what a process may use")

BOMB = b"""<?xml version="1.0"?><!DOCTYPE a [<!ENTITY a "ha"><!ENTITY b "&a;&a;&a;&a;&a;&a;&a;&a;&a;&a;">
<!ENTITY c "&b;&b;&b;&b;&b;&b;&b;&b;&b;&b;"><!ENTITY d "&c;&c;&c;&c;&c;&c;&c;&c;&c;&c;">]>"""
ELSEWHERE = b'<?xml version="1.0"?><!DOCTYPE a [<!ENTITY a SYSTEM "file:///etc/hostname">]>'


def zipped(parts: dict[str, bytes]) -> bytes:
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as archive:
        for name, content in parts.items():
            archive.writestr(name, content)
    return out.getvalue()


def another_program() -> bytes:
    book, out = openpyxl.Workbook(), io.BytesIO()
    book.active["A1"] = "Invoice"
    book.save(out)
    return out.getvalue()


def with_flag(content: bytes) -> bytes:
    """The first entry marked as encrypted, in its local header and in the directory."""
    found = bytearray(content)
    found[6] |= 1
    found[content.index(b"PK\x01\x02") + 8] |= 1
    return bytes(found)


ZEROS = b"\0" * 50_000_000
LOCKED_ODS = {"mimetype": b"application/vnd.oasis.opendocument.spreadsheet", "encrypted-package": b"\x00" * 64}
FILES: dict[str, tuple[Callable[[], bytes], str]] = {
    "empty": (lambda: b"", "the file is empty"),
    "text": (lambda: b"date,volume,brix\n", "not a workbook"),
    "picture": (lambda: b"\x89PNG\r\n\x1a\n" + b"\0" * 100, "not a workbook"),
    "zip": (lambda: zipped({"readme.txt": b"hello"}), "not a workbook"),
    "document": (lambda: zipped({"[Content_Types].xml": b"<Types/>", "word/document.xml": b"<w/>"}), "not a workbook"),
    "another program's": (another_program, "not a season workbook"),
    "old .xls": (lambda: b"\xd0\xcf\x11\xe0" + b"\0" * 600, "an old .xls"),
    "password": (lambda: b"\xd0\xcf\x11\xe0" + "EncryptedPackage".encode("utf-16-le"), "under a password"),
    "password, .ods": (lambda: zipped(LOCKED_ODS), "under a password"),
    "password, zip": (lambda: with_flag(zipped({"xl/workbook.xml": b"<a/>"})), "under a password"),
    "binary": (lambda: zipped({"[Content_Types].xml": b"<Types/>", "xl/workbook.bin": b"\0"}), "a binary workbook"),
    "zip bomb": (lambda: zipped({f"xl/worksheets/sheet{n}.xml": ZEROS for n in range(6)}), "unpacks to far"),
    "spreadsheet without content": (
        lambda: zipped({"mimetype": b"application/vnd.oasis.opendocument.spreadsheet"}), "damaged"),
}  # fmt: skip


def refusal(capsys: pytest.CaptureFixture[str], *arguments: object) -> str:
    """The one line that a command gives up with."""
    assert cli.main([str(argument) for argument in arguments]) == 2
    printed = capsys.readouterr()
    assert printed.out == ""
    lines = printed.err.splitlines()
    assert len(lines) == 1, printed.err
    assert lines[0].startswith("sheetfuncs: ")
    return lines[0]


@pytest.mark.parametrize("name", FILES)
def test_what_is_no_season_workbook_is_refused(name: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    content, words = FILES[name]
    path = tmp_path / "bad file é.xlsx"
    path.write_bytes(content())
    line = refusal(capsys, "check", path)
    assert words in line
    assert str(path) in line


@pytest.mark.parametrize("share", [0.1, 0.5, 0.9, 0.999])
def test_a_file_cut_short(whole: Path, share: float, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    content = whole.read_bytes()
    (tmp_path / "a.xlsx").write_bytes(content[: int(len(content) * share)])
    assert "damaged or cut short" in refusal(capsys, "check", tmp_path / "a.xlsx")


@pytest.mark.parametrize("head", [BOMB, ELSEWHERE], ids=["entities in entities", "a file of the machine"])
@pytest.mark.parametrize(
    "part", ["xl/workbook.xml", "xl/sharedStrings.xml", "xl/styles.xml", "xl/worksheets/sheet1.xml"]
)
def test_xml_that_defines_entities(
    whole: Path, part: str, head: bytes, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = with_xml(whole, tmp_path / "a.xlsx", {part: lambda text: head + text.partition(b"?>")[2]})
    assert "defines entities" in refusal(capsys, "check", path)


def test_xml_that_defines_entities_in_an_ods(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    parts = {"mimetype": b"application/vnd.oasis.opendocument.spreadsheet", "content.xml": BOMB + b"<a>&d;</a>"}
    (tmp_path / "a.ods").write_bytes(zipped(parts))
    assert "defines entities" in refusal(capsys, "check", tmp_path / "a.ods")


def test_a_row_repeated_without_end_in_an_ods(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    content = b"""<?xml version="1.0"?><office:document-content
      xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0"
      xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0"><table:table table:name="Collection">
      <table:table-row table:number-rows-repeated="1048576"><table:table-cell office:value-type="float"
      office:value="1" table:number-columns-repeated="16384"/></table:table-row></table:table>
      </office:document-content>"""
    parts = {"mimetype": b"application/vnd.oasis.opendocument.spreadsheet", "content.xml": content}
    (tmp_path / "a.ods").write_bytes(zipped(parts))
    assert "filled cells, too many for a season" in refusal(capsys, "check", tmp_path / "a.ods")


@pytest.mark.parametrize("cells", [3, 6])
def test_a_hundred_thousand_filled_rows(
    whole: Path, cells: int, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    def rows(text: bytes) -> bytes:
        more = []
        for row in range(100, 100_100):
            filled = (b'<c r="%c%d"><v>9</v></c>' % (65 + column, row) for column in range(cells))
            more.append(b'<row r="%d">%b</row>' % (row, b"".join(filled)))
        return text.replace(b"</sheetData>", b"".join(more) + b"</sheetData>")

    path = with_xml(whole, tmp_path / "a.xlsx", {part_of(example(), "Collection"): rows})
    line = refusal(capsys, "check", path)
    assert "a table can have 1,000 rows" in line or "filled cells, too many for a season" in line


def test_no_such_file_and_a_folder(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert "there is no such file" in refusal(capsys, "check", tmp_path / "none.xlsx")
    assert "this is a folder" in refusal(capsys, "check", tmp_path)
    assert "there is no workbook in this folder" in refusal(capsys, "report", tmp_path)


def test_a_newer_format_is_refused(whole: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    edits = {"docProps/custom.xml": lambda text: text.replace(b"<vt:lpwstr>%d<" % FORMAT, b"<vt:lpwstr>99<")}
    path = with_xml(whole, tmp_path / "a.xlsx", edits)
    assert "made by a newer sheetfuncs (format 99" in refusal(capsys, "check", path)


def test_a_macro_enabled_workbook_is_read(whole: Path, tmp_path: Path) -> None:
    path = tmp_path / "a.xlsm"
    with_xml(whole, path, {})
    with zipfile.ZipFile(path, "a") as archive:
        archive.writestr("xl/vbaProject.bin", b"\0" * 100)
    assert read(path).contents.besides == ("macros",)
    assert faults(path) == []
    assert "The workbook holds macros: not read, and not copied." in [one.sentence for one in check_file(path)]


WRITING = {"convert": ["--units", "metric"], "handover": []}


@pytest.mark.parametrize("command", WRITING)
def test_nothing_is_written_over(command: str, whole: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    there = tmp_path / "there.xlsx"
    there.write_text("mine")
    assert "exists already" in refusal(capsys, command, whole, there, *WRITING[command])
    assert there.read_text() == "mine"
    assert "this is the workbook itself" in refusal(capsys, command, whole, whole, "--replace", *WRITING[command])
    assert "end the name with .xlsx" in refusal(capsys, command, whole, tmp_path / "new.ods", *WRITING[command])
    assert "there is no folder" in refusal(capsys, command, whole, tmp_path / "no" / "new.xlsx", *WRITING[command])
    assert "could not be written" in refusal(capsys, command, whole, "/proc/new.xlsx", *WRITING[command])
    assert [path.name for path in tmp_path.iterdir()] == ["there.xlsx"]


def test_the_page_is_not_written_over_a_workbook(
    whole: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert "end the name with .html" in refusal(capsys, "report", whole, "--html", whole, "--replace")
    linked = tmp_path / "b.html"
    linked.symlink_to(whole)
    assert "this is the workbook itself" in refusal(capsys, "report", whole, "--html", linked, "--replace")
    (tmp_path / "a.html").write_text("mine")
    assert "exists already" in refusal(capsys, "report", whole, "--html", tmp_path / "a.html")


@pytest.mark.parametrize("command", WRITING)
def test_a_full_disk_leaves_no_part_of_a_file(command: str, whole: Path, tmp_path: Path) -> None:
    """No file may grow over 100 kB, as on a disk that is full: the system refuses in the middle of writing."""

    def little_room() -> None:
        resource.setrlimit(resource.RLIMIT_FSIZE, (100_000, 100_000))

    arguments = [command, str(whole), str(tmp_path / "new.xlsx"), *WRITING[command]]
    run = subprocess.run(
        [sys.executable, "-c", "import sys; from sheetfuncs import cli; sys.exit(cli.main(sys.argv[1:]))", *arguments],
        capture_output=True, text=True, preexec_fn=little_room,
    )  # fmt: skip
    assert (run.returncode, run.stdout) == (2, "")
    assert len(run.stderr.splitlines()) == 1, run.stderr
    assert list(tmp_path.iterdir()) == []


def test_a_name_with_spaces_and_accents(whole: Path, tmp_path: Path) -> None:
    path = tmp_path / "Érablière de Zoë, año 26 – 糖.xlsx"
    path.write_bytes(whole.read_bytes())
    assert cli.main(["check", str(path)]) == 0


def test_words_of_any_kind_in_the_cells(whole: Path, tmp_path: Path) -> None:
    """A yard and a container named in other scripts are read, checked and written anew."""

    def edit(book: openpyxl.Workbook) -> None:
        sheet, cell = address(example(), "collection.note")
        book[sheet][cell] = 'Zoë’s 糖 <&> "quoted" 🍁 ' + "x" * 3000

    path = with_openpyxl(whole, tmp_path / "a.xlsx", edit)
    assert cli.main(["convert", str(path), str(tmp_path / "b.xlsx"), "--units", "metric"]) == 0
    assert read(tmp_path / "b.xlsx").season.inputs["collection.note"][0].startswith("Zoë’s 糖 <&>")


@settings(max_examples=100, suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(number=st.integers(10_000, 10_000_000))
def test_a_damaged_workbook_is_checked_or_refused(number: int, whole: Path, tmp_path: Path) -> None:
    """Thousands of others: python -m tests.tools.damage"""
    path = tmp_path / "damaged.xlsx"
    path.write_bytes(damaged(whole.read_bytes(), random.Random(number)))  # noqa: S311 (a die)
    try:
        said = check_file(path)
    except Refused as refused:
        assert "\n" not in str(refused)
    else:
        assert all(one.sentence and "\n" not in one.sentence for one in said)


def test_the_fixture_is_small(whole: Path) -> None:
    assert read(whole).rows == SMALL
