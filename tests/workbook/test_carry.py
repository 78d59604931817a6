"""The functions defined in a workbook of one's own: one text changed, all else of it byte for byte as it was."""

from __future__ import annotations

import io
import re
import subprocess
import sys
import zipfile
from collections.abc import Callable, Mapping
from pathlib import Path

import ironcalc
import pytest
import xlsxwriter
from defusedxml import ElementTree

from sheetfuncs import cli
from sheetfuncs.files import Refused
from sheetfuncs.formulas.catalogue import CATALOGUE
from sheetfuncs.hosts import trace
from sheetfuncs.workbook.commands.carry import carry
from sheetfuncs.workbook.commands.carry.workbook_part import MAIN, WorkbookPart
from sheetfuncs.workbook.write import limits
from sheetfuncs.workbook.write.names import definitions
from tests.tools import office

resource = pytest.importorskip("resource", reason="only POSIX limits what a process may use")

DATA = Path(__file__).parent.parent / "data" / "workbooks"
WORKBOOKS = sorted([*DATA.rglob("*.xlsx"), *DATA.rglob("*.xlsm")])
OURS = {one.name: one for one in definitions()}


def told(path: Path) -> str:
    return f"{path.parent.name}/{path.name}"


def carried(path: Path, replace_names: bool = False) -> bytes:
    return carry.carried(carry.read(path), replace_names)[0]


def zipped(content: bytes) -> zipfile.ZipFile:
    return zipfile.ZipFile(io.BytesIO(content))


def plain(path: Path, **names: str) -> Path:
    """A workbook of one sheet, with names of its own."""
    book = xlsxwriter.Workbook(str(path))
    page = book.add_worksheet("Own")
    page.write_row(0, 0, [66.9, 29.92])
    page.write_dynamic_array_formula("C1", "=FINISH_TEMP(A1,B1)")
    for name, formula in names.items():
        book.define_name(name.replace("__", "!"), formula)
    book.close()
    return path


def with_workbook_part(source: Path, target: Path, change: Callable[[str], str]) -> Path:
    """A copy with its workbook part edited as text."""
    with zipfile.ZipFile(source) as old, zipfile.ZipFile(target, "w", zipfile.ZIP_DEFLATED) as new:
        for entry in old.infolist():
            content = old.read(entry)
            if entry.filename == "xl/workbook.xml":
                content = change(content.decode()).encode()
            new.writestr(entry, content)
    return target


def test_there_are_workbooks_of_many_kinds() -> None:
    assert len(WORKBOOKS) >= 30
    kinds = {
        name.split("/")[1] for path in WORKBOOKS for name in zipfile.ZipFile(path).namelist() if name.count("/") > 1
    }
    assert {"charts", "media", "pivotTables", "tables", "externalLinks", "activeX", "drawings"} <= kinds
    parts = {name for path in WORKBOOKS for name in zipfile.ZipFile(path).namelist()}
    assert {"xl/vbaProject.bin", "xl/calcChain.xml", "xl/comments1.xml", "xl/metadata.xml"} <= parts


@pytest.mark.parametrize("path", WORKBOOKS, ids=told)
def test_all_but_the_workbook_part_stays_as_it_was(path: Path) -> None:
    """Every entry of the zip has the same compressed bytes, name, date and flags; the one text has names more."""
    before, content = path.read_bytes(), carried(path)
    old, new = zipped(before), zipped(content)
    assert new.testzip() is None
    assert [one.filename for one in old.infolist()] == [one.filename for one in new.infolist()]
    part = carry.read(path).part
    for was, now in zip(old.infolist(), new.infolist(), strict=True):
        if was.filename == part:
            continue
        same = ("compress_type", "compress_size", "file_size", "CRC", "date_time", "flag_bits", "extra", "comment",
                "external_attr", "internal_attr", "create_version", "extract_version")  # fmt: skip
        assert [getattr(was, one) for one in same] == [getattr(now, one) for one in same], was.filename
        length = 30 + len(was.orig_filename) + was.compress_size
        assert before[was.header_offset :][:length] == content[now.header_offset :][:length], was.filename
    text, changed = old.read(part).decode(), new.read(part).decode()
    assert _without_ours(changed) == _LIST.sub("", text)
    found = {one.get("name"): one for one in ElementTree.fromstring(changed).iter(f"{{{MAIN}}}definedName")}
    assert {name: found[name].text for name in OURS} == {name: one.formula for name, one in OURS.items()}
    assert {found[name].get("comment") for name in OURS} == {one.comment for one in OURS.values()}


_LIST = re.compile(r"</?(\w+:)?definedNames\s*/?>")
_OURS = re.compile(rf"<(?:\w+:)?definedName name=\"(?:{'|'.join(OURS)})\" comment=.*?</(?:\w+:)?definedName>")


def _without_ours(text: str) -> str:
    """A workbook part before its names were added, but for the tags of an empty list."""
    return _LIST.sub("", text.replace("".join(found[0] for found in _OURS.finditer(text)), ""))


@pytest.mark.parametrize("path", WORKBOOKS, ids=told)
def test_carried_twice_is_the_same_once(path: Path, tmp_path: Path) -> None:
    once = tmp_path / path.name
    once.write_bytes(carried(path))
    assert carried(once) == once.read_bytes()


def test_libreoffice_shows_the_same_before_and_after(tmp_path: Path) -> None:
    """Every sheet of every workbook, as text, with all values computed anew."""
    office.needed()
    sheets = {}
    for state in ("before", "after"):
        folder = tmp_path / state
        folder.mkdir()
        for number, path in enumerate(WORKBOOKS):
            content = path.read_bytes() if state == "before" else carried(path)
            (folder / f"{number}-{path.name}").write_bytes(content)
        office.convert_all(sorted(folder.iterdir()), office.EVERY_SHEET_AS_CSV, folder, tmp_path)
        sheets[state] = {path.name: path.read_bytes() for path in folder.glob("*.csv")}
    assert {name.partition("-")[0] for name in sheets["before"]} == {str(number) for number in range(len(WORKBOOKS))}
    assert sheets["before"] == sheets["after"]
    assert sum(bool(text.strip()) for text in sheets["before"].values()) > 30


def test_a_cell_of_ones_own_computes(tmp_path: Path) -> None:
    path = plain(tmp_path / "own.xlsx")
    assert cli.main(["carry", str(path), str(tmp_path / "new.xlsx")]) == 0
    model = ironcalc.load_from_xlsx(str(tmp_path / "new.xlsx"), "en", "UTC", "en")
    model.evaluate()
    assert model.get_cell_value(0, 1, 3) == CATALOGUE["FINISH_TEMP"](66.9, 29.92)


def test_the_names_are_those_of_the_carried_edition() -> None:
    assert [one.name for one in definitions()] == list(CATALOGUE)
    assert all(one.formula == trace.lambda_body(CATALOGUE[one.name].card) for one in definitions())
    assert all(0 < len(one.comment) <= limits.COMMENT for one in definitions())


Edit = Callable[[str], str]


def instead(old: str, new: str) -> Edit:
    return lambda text: text.replace(old, new)


def before_calc(text: str) -> Edit:
    return instead("<calcPr", f"{text}<calcPr")


ELSEWHERE = '<o:definedNames xmlns:o="o"><o:definedName name="JAR_REST">1</o:definedName></o:definedNames>'
WAYS: dict[str, Edit] = {
    "no names": lambda text: text,
    "an empty list": before_calc("<definedNames/>"),
    "an empty list in two tags": before_calc("<definedNames></definedNames>"),
    "single quotes, spaces, a mark in a value": before_calc(
        "<definedNames >\n <definedName name='a_b' comment='a>b'>1</definedName >\n</definedNames >\n"
    ),
    "no calcPr": lambda text: re.sub("<calcPr[^>]*/>", "", text),
    "a prefix": lambda text: instead(f'xmlns="{MAIN}"', f'xmlns:x="{MAIN}"')(re.sub("<(/?)(?=[a-z])", r"<\1x:", text)),
    "external references": before_calc("<functionGroups/><externalReferences></externalReferences>"),
    "a byte order mark": lambda text: "\ufeff" + text,
    "names of another namespace": instead("</workbook>", f"<extLst><ext>{ELSEWHERE}</ext></extLst></workbook>"),
    "a comment and a section": before_calc(
        "<!-- <definedNames> --><definedNames><definedName name='q'><![CDATA[1>2]]></definedName></definedNames>"
    ),
}


@pytest.mark.parametrize("way", WAYS)
def test_however_the_workbook_part_is_written(way: str, tmp_path: Path) -> None:
    path = with_workbook_part(plain(tmp_path / "a.xlsx"), tmp_path / "b.xlsx", WAYS[way])
    before = zipfile.ZipFile(path).read("xl/workbook.xml").decode()
    after = zipped(carried(path)).read("xl/workbook.xml").decode()
    assert _without_ours(after) == _LIST.sub("", before)
    order = [one.tag.partition("}")[2] for one in ElementTree.fromstring(after.encode())]
    assert order.count("definedNames") == 1
    place = order.index("definedNames")
    assert not {"sheets", "externalReferences", "functionGroups"} & set(order[place:])
    assert not {"calcPr", "extLst"} & set(order[:place])


def test_a_name_of_ones_own_is_not_written_over(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    path = plain(tmp_path / "own.xlsx", JAR_REST="=Own!$A$1", mine="=1", sap_runs="=LAMBDA(a,a)", Own__TAP_COUNT="=2")
    new = tmp_path / "new.xlsx"
    assert cli.main(["carry", str(path), str(new)]) == 2
    said = capsys.readouterr().err
    assert "defines TAP_COUNT, SAP_RUNS, JAR_REST already" in said
    assert said.count("\n") == 1
    assert not new.exists()
    assert cli.main(["carry", str(path), str(new), "--replace-names"]) == 0
    assert f"{len(CATALOGUE) - 3} new, 3 replaced" in capsys.readouterr().out
    part = WorkbookPart(zipfile.ZipFile(new).read("xl/workbook.xml"))
    assert [one.text for one in part.defined("mine")] == ["1"]
    for name in ("JAR_REST", "SAP_RUNS", "TAP_COUNT"):
        assert {one.text for one in part.defined(name)} == {OURS[name].formula}
    assert [one.attributes.get("localSheetId") for one in part.defined("TAP_COUNT")] == ["0", None]
    assert b'fullCalcOnLoad="1"' in part.content  # what was computed with the old meaning
    assert cli.main(["carry", str(new), str(tmp_path / "again.xlsx")]) == 0
    assert (tmp_path / "again.xlsx").read_bytes() == new.read_bytes()


def test_a_workbook_that_is_computed_anew_only_where_it_must(tmp_path: Path) -> None:
    def never(text: str) -> str:
        return text.replace(' fullCalcOnLoad="1"', "")

    path = with_workbook_part(plain(tmp_path / "a.xlsx"), tmp_path / "b.xlsx", never)
    assert b"fullCalcOnLoad" not in zipped(carried(path)).read("xl/workbook.xml")
    path = with_workbook_part(plain(tmp_path / "a.xlsx", JAR_REST="=1"), tmp_path / "c.xlsx", never)
    assert b'<calcPr calcId="124519" fullCalcOnLoad="1"/>' in zipped(carried(path, True)).read("xl/workbook.xml")


def test_a_table_of_the_name_of_a_function(tmp_path: Path) -> None:
    book = xlsxwriter.Workbook(str(tmp_path / "a.xlsx"))
    book.add_worksheet().add_table("A1:B3", {"name": "Jar_Rest"})
    book.close()
    with pytest.raises(Refused, match="a table in it is called Jar_Rest"):
        carried(tmp_path / "a.xlsx", replace_names=True)


def test_a_large_zip_with_64_bit_fields_and_data_descriptors(tmp_path: Path) -> None:
    """As programs write that do not know a part's size beforehand."""
    source = zipfile.ZipFile(plain(tmp_path / "a.xlsx"))

    class Stream(io.BytesIO):
        def seekable(self) -> bool:
            return False

        def tell(self) -> int:
            raise OSError

    stream = Stream()
    with zipfile.ZipFile(stream, "w", zipfile.ZIP_DEFLATED) as target:
        for name in source.namelist():
            with target.open(name, "w", force_zip64=True) as entry:
                entry.write(source.read(name))
        target.comment = b"a comment"
    path = tmp_path / "b.xlsx"
    path.write_bytes(stream.getvalue())
    assert all(one.flag_bits & 8 for one in zipfile.ZipFile(path).infolist())
    after = zipped(carried(path))
    assert after.testzip() is None
    assert after.comment == b"a comment"
    assert {name: after.read(name) for name in source.namelist() if name != "xl/workbook.xml"} == {
        name: source.read(name) for name in source.namelist() if name != "xl/workbook.xml"
    }


def test_offsets_that_stand_in_the_field_for_large_files(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """As some libraries write them always, however small the file."""
    source = zipfile.ZipFile(plain(tmp_path / "a.xlsx"))
    path = tmp_path / "b.xlsx"
    with monkeypatch.context() as patch:
        patch.setattr(zipfile, "ZIP64_LIMIT", 10)
        with zipfile.ZipFile(path, "w", zipfile.ZIP_DEFLATED) as target:
            for name in source.namelist():
                with target.open(name, "w", force_zip64=True) as entry:
                    entry.write(source.read(name))
    assert b"PK\6\6" in path.read_bytes()
    after = zipped(carried(path))
    assert after.testzip() is None
    assert after.namelist() == source.namelist()


def _cfb(words: str) -> bytes:
    return b"\xd0\xcf\x11\xe0" + b"\0" * 600 + words.encode("utf-16-le")


def _with(entries: Mapping[str, bytes | Callable[[bytes], bytes]]) -> Callable[[Path], bytes]:
    """A plain workbook with parts changed or added."""

    def made(path: Path) -> bytes:
        source, out = zipfile.ZipFile(plain(path)), io.BytesIO()
        with zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as target:
            for name in dict.fromkeys([*source.namelist(), *entries]):
                edit = entries.get(name, lambda content: content)
                target.writestr(name, edit(source.read(name)) if callable(edit) else edit)
        return out.getvalue()

    return made


def _damaged_inside(path: Path) -> bytes:
    """One byte of a packed part is another."""
    plain(path)
    content = bytearray(path.read_bytes())
    place = zipfile.ZipFile(path).getinfo("xl/worksheets/sheet1.xml").header_offset
    content[place + 120] ^= 0xFF
    return bytes(content)


def _cut_short(path: Path) -> bytes:
    content = plain(path).read_bytes()
    return content[: len(content) * 9 // 10]


def _edited(part: str, edit: Edit) -> Callable[[Path], bytes]:
    return _with({part: lambda content: edit(content.decode()).encode()})


BOOK, TYPES, ROOT = "xl/workbook.xml", "[Content_Types].xml", "_rels/.rels"
ODS = {"mimetype": b"application/vnd.oasis.opendocument.spreadsheet"}
SIGNED = """<Relationship Id="rIdS" Target="_xmlsignatures/origin.sigs"
  Type="http://schemas.openxmlformats.org/package/2006/relationships/digital-signature/origin"/></Relationships>"""
STRICTLY = instead(MAIN, "http://purl.oclc.org/ooxml/spreadsheetml/main")
ENTITIES = instead("?>", '?><!DOCTYPE a [<!ENTITY a "ha"><!ENTITY b "&a;&a;&a;">]>')
NAMES = "".join(f'<definedName name="n_{number}">{number}</definedName>' for number in range(8000))
DOCUMENT = instead("spreadsheetml.sheet", "wordprocessingml.document")


def _utf_16(content: bytes) -> bytes:
    return content.decode().replace("UTF-8", "UTF-16").encode("utf-16")


REFUSED: dict[str, tuple[str, Callable[[Path], bytes], str]] = {
    "empty": ("a.xlsx", lambda _: b"", "the file is empty"),
    "a password": ("a.xlsx", lambda _: _cfb("EncryptedPackage"), "under a password"),
    "an .xls": ("a.xls", lambda _: _cfb("Workbook"), "an old .xls"),
    "a .csv": ("a.csv", lambda _: b"date,volume\n", "not a workbook; give an .xlsx or .xlsm file"),
    "an .ods": ("a.ods", _with(ODS), "an OpenDocument file"),
    "an .xlsb": ("a.xlsb", _with({"xl/workbook.bin": b"\0"}), "a binary workbook"),
    "a document": ("a.docx", _edited(TYPES, DOCUMENT), "not a workbook"),
    "signed": ("a.xlsx", _edited(ROOT, instead("</Relationships>", SIGNED)), "signed"),
    "strict": ("a.xlsx", _edited(BOOK, STRICTLY), "in the strict form"),
    "cut short": ("a.xlsx", _cut_short, "damaged or cut short"),
    "damaged inside": ("a.xlsx", _damaged_inside, "damaged"),
    "no XML": ("a.xlsx", _with({BOOK: b"<workbook"}), "damaged, it cannot be read (ExpatError"),
    "no sheets": ("a.xlsx", _with({BOOK: f'<workbook xmlns="{MAIN}"/>'.encode()}), "it lists no sheets"),
    "UTF-16": ("a.xlsx", _with({BOOK: _utf_16}), "written in UTF-16"),
    "entities": ("a.xlsx", _edited(BOOK, ENTITIES), "defines entities"),
    "entities in the list of parts": ("a.xlsx", _edited(TYPES, ENTITIES), "defines entities"),
    "no list of parts": ("a.xlsx", _with({TYPES: b""}), "damaged"),
    "no relations": ("a.xlsx", _with({ROOT: b"<Relationships/>"}), "not a workbook"),
    "a zip bomb": (
        "a.xlsx",
        lambda path: _with({"xl/sharedStrings.xml": bytes(251_000_000)})(path),
        "unpacks to far more",
    ),
    "8,000 names": (
        "a.xlsx",
        _edited(BOOK, before_calc(f"<definedNames>{NAMES}</definedNames>")),
        "defines 8,000 names",
    ),
}


@pytest.mark.parametrize("what", REFUSED)
def test_what_cannot_be_read_is_refused_in_one_line(
    what: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    name, content, words = REFUSED[what]
    path = tmp_path / name
    path.write_bytes(content(tmp_path / "whole.xlsx"))
    (tmp_path / "whole.xlsx").unlink(missing_ok=True)
    before = path.read_bytes()
    assert cli.main(["carry", str(path), str(tmp_path / "new.xlsx"), "--replace-names"]) == 2
    printed = capsys.readouterr()
    assert printed.out == ""
    assert printed.err.startswith(f"sheetfuncs: {path}: ")
    assert printed.err.count("\n") == 1
    assert words in printed.err
    assert [one.name for one in tmp_path.iterdir()] == [name]
    assert path.read_bytes() == before


def test_parts_that_overlap_or_come_twice(tmp_path: Path) -> None:
    content = bytearray(plain(tmp_path / "a.xlsx").read_bytes())
    lines = [found.start() for found in re.finditer(b"PK\1\2", bytes(content))]
    content[lines[1] + 42 : lines[1] + 46] = content[lines[0] + 42 : lines[0] + 46]
    (tmp_path / "a.xlsx").write_bytes(content)
    with pytest.raises(Refused, match="damaged"):
        carried(tmp_path / "a.xlsx")
    with zipfile.ZipFile(plain(tmp_path / "b.xlsx"), "a") as archive, pytest.warns(UserWarning, match="Duplicate"):
        archive.writestr("xl/workbook.xml", "<workbook/>")
    with pytest.raises(Refused, match="damaged"):
        carried(tmp_path / "b.xlsx")


def test_what_is_there_stays_and_the_kind_is_kept(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    own, there = plain(tmp_path / "own.xlsx"), tmp_path / "there.xlsx"
    there.write_text("mine")
    macros = DATA / "excel-writer-xlsx" / "macro01.xlsm"
    refused: list[tuple[list[object], str]] = [
        ([own, there], "exists already"),
        ([own, own, "--replace"], "this is the workbook itself"),
        ([own, tmp_path / "new.xlsm"], "own.xlsx is an .xlsx file; end the new name with .xlsx too"),
        ([macros, tmp_path / "new.xlsx"], "macro01.xlsm is an .xlsm file"),
        ([own, tmp_path / "no" / "new.xlsx"], "there is no folder"),
        ([tmp_path / "none.xlsx", tmp_path / "new.xlsx"], "there is no such file"),
    ]
    for arguments, words in refused:
        assert cli.main(["carry", *map(str, arguments)]) == 2
        said = capsys.readouterr().err
        assert words in said
        assert said.count("\n") == 1
    assert there.read_text() == "mine"
    assert sorted(one.name for one in tmp_path.iterdir()) == ["own.xlsx", "there.xlsx"]
    assert cli.main(["carry", str(macros), str(tmp_path / "new.xlsm")]) == 0
    assert cli.main(["carry", str(own), str(there), "--replace"]) == 0


def test_a_full_disk_leaves_no_part_of_a_file(tmp_path: Path) -> None:
    """No file may grow over 5 kB, as on a disk that is full: the system refuses in the middle of writing."""
    own = plain(tmp_path / "own.xlsx")
    run = subprocess.run(
        [sys.executable, "-m", "sheetfuncs.cli", "carry", str(own), str(tmp_path / "new.xlsx")],
        capture_output=True, text=True, preexec_fn=lambda: resource.setrlimit(resource.RLIMIT_FSIZE, (5000, 5000)),
    )  # fmt: skip
    assert (run.returncode, run.stdout) == (2, "")
    assert len(run.stderr.splitlines()) == 1, run.stderr
    assert [one.name for one in tmp_path.iterdir()] == ["own.xlsx"]
