"""Workbooks of other shapes: strict Open XML, days from 1904, odd attributes, odd dates, things beside cells."""

from __future__ import annotations

import datetime
import io
import re
import zipfile
from collections.abc import Callable
from pathlib import Path
from typing import Any

import openpyxl
import pytest
from openpyxl.chart import BarChart, Reference
from openpyxl.comments import Comment
from openpyxl.workbook.defined_name import DefinedName

from sheetfuncs import cli
from sheetfuncs.workbook.commands.check.check import check_file
from sheetfuncs.workbook.model.parts import ASK, TELL
from sheetfuncs.workbook.read.contents import LONGEST
from sheetfuncs.workbook.read.filled import read
from sheetfuncs.workbook.season import Season
from tests.tools import office
from tests.tools.edits import (
    SMALL,
    address,
    example,
    expected,
    in_cell,
    part_of,
    trimmed,
    typed,
    with_openpyxl,
    with_xml,
)

SEASON = example()
LOG = part_of(SEASON, "Collection")
FIRST_DATE = address(SEASON, "collection.date")[1]
FIRST_NOTE = address(SEASON, "collection.note")[1]
FIRST_SAP = address(SEASON, "collection.sap")[1]


@pytest.fixture(scope="module")
def whole(tmp_path_factory: pytest.TempPathFactory) -> Path:
    path = tmp_path_factory.mktemp("whole") / "season.xlsx"
    example().write(path, "inline")
    return path


def inputs(path: Path) -> dict[str, Any]:
    return trimmed(read(path).season.inputs)


# The transitional namespaces and their strict counterparts: ECMA-376 part 1, annex A, and part 4.
STRICT = {
    b"spreadsheetml/2006/main": b"spreadsheetml/main",
    b"officeDocument/2006/relationships": b"officeDocument/relationships",
    b"officeDocument/2006/custom-properties": b"officeDocument/customProperties",
    b"drawingml/2006/spreadsheetDrawing": b"drawingml/spreadsheetDrawing",
    b"drawingml/2006/chart": b"drawingml/chart",
}


def all_parts(whole: Path, path: Path, edit: Callable[[str, bytes], bytes]) -> Path:
    out = io.BytesIO()
    with zipfile.ZipFile(whole) as old, zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as new:
        for name in old.namelist():
            new.writestr(name, edit(name, old.read(name)))
    path.write_bytes(out.getvalue())
    return path


def strict(name: str, text: bytes) -> bytes:
    for loose, other in STRICT.items():
        text = text.replace(b"schemas.openxmlformats.org/" + loose, b"purl.oclc.org/ooxml/" + other)
    if not name.startswith("xl/worksheets/sheet"):
        return text

    def as_date(found: re.Match[bytes]) -> bytes:
        """Strict workbooks may write days as ISO 8601: ECMA-376 part 1, 18.18.11, type d."""
        day = datetime.datetime(1899, 12, 30) + datetime.timedelta(days=int(found[2]))
        return b'<c %b t="d"><v>%b</v></c>' % (found[1], day.isoformat().encode())

    return re.sub(rb"<c ([^>]*?)><v>(46\d{3})</v></c>", as_date, text)


def test_strict_open_xml_is_read(whole: Path, tmp_path: Path) -> None:
    path = all_parts(whole, tmp_path / "strict.xlsx", strict)
    assert b't="d"' in zipfile.ZipFile(path).read(LOG)
    assert inputs(path) == expected("US")
    assert {one.weight for one in check_file(path)} == {TELL}


def test_a_prefix_for_every_name(whole: Path, tmp_path: Path) -> None:
    """As some libraries write it: <x:row> for <row>."""

    def edit(name: str, text: bytes) -> bytes:
        if not name.startswith("xl/worksheets/sheet"):
            return text
        text = re.sub(rb"<(/?)(?![?x:])([a-zA-Z])", rb"<\1x:\2", text)
        return text.replace(b' xmlns="', b' xmlns:x="', 1)

    assert inputs(all_parts(whole, tmp_path / "a.xlsx", edit)) == expected("US")


def test_days_counted_from_1904(whole: Path, tmp_path: Path) -> None:
    """openpyxl writes such a workbook; the days are the same ones."""

    def edit(book: openpyxl.Workbook) -> None:
        book.epoch = openpyxl.utils.datetime.CALENDAR_MAC_1904

    path = with_openpyxl(whole, tmp_path / "a.xlsx", edit)
    assert b"date1904" in zipfile.ZipFile(path).read("xl/workbook.xml")
    assert inputs(path) == expected("US")


@pytest.mark.parametrize("number", ["20260301", "2958466", "1e300", "-3"])
def test_a_date_of_no_calendar_stays_the_number_that_was_typed(number: str, whole: Path, tmp_path: Path) -> None:
    """20260301 typed for a date: a spreadsheet shows ### or an error, and keeps the number."""
    edits = {LOG: in_cell(FIRST_DATE, rb"<v>[^<]*</v>", b"<v>%b</v>" % number.encode())}
    path = with_xml(whole, tmp_path / "a.xlsx", edits)
    assert read(path).season.inputs["collection.date"][0] == float(number)
    assert any((one.sheet, one.cell) == ("Collection", FIRST_DATE) for one in check_file(path))
    assert cli.main(["convert", str(path), str(tmp_path / "b.xlsx")]) == 1
    if float(number) < 1e299:
        assert read(tmp_path / "b.xlsx").season.inputs["collection.date"][0] == float(number)


def test_a_line_break_of_windows_is_one_line_break(whole: Path, tmp_path: Path) -> None:
    """ECMA-376 part 1, 22.9.2.19: _x000D_ stands for the letter of that number, _x005F_ for the underscore."""
    words = b"first run_x000D_\nsnow_x0009_deep _x005F_x000D_"
    text = b'<c r="%b" t="inlineStr"><is><t>%b</t></is></c>' % (FIRST_NOTE.encode(), words)
    path = with_xml(whole, tmp_path / "a.xlsx", {LOG: in_cell(FIRST_NOTE, rb"^.*$", text)})
    wanted = "first run\nsnow\tdeep _x000D_"
    assert read(path).season.inputs["collection.note"][0] == wanted
    for number in range(2):  # there and back again
        assert cli.main(["convert", str(path), str(tmp_path / f"{number}.xlsx")]) == 0
        path = tmp_path / f"{number}.xlsx"
        assert read(path).season.inputs["collection.note"][0] == wanted


ODD = {
    "no number": (rb'<v>[^<]*</v>', b"<v>5 gal</v>", "is stored as a number and is none"),
    "no such text": (rb'><v>[^<]*</v>', b' t="s"><v>9999999</v>', "Its text is not in the file"),
    "a text of no number": (rb'><v>[^<]*</v>', b' t="s"><v>x</v>', "Its text is not in the file"),
    "not a number": (rb'<v>[^<]*</v>', b"<v>nan</v>", "is stored as a number and is none"),
}  # fmt: skip


@pytest.mark.parametrize("name", ODD)
def test_one_odd_cell_costs_that_cell_a_sentence(
    name: str, whole: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    pattern, replacement, words = ODD[name]
    path = with_xml(whole, tmp_path / "a.xlsx", {LOG: in_cell(FIRST_SAP, pattern, replacement)})
    found = read(path)
    sap = found.at("collection.sap")
    assert [(one.sheet, one.at) for one in found.contents.odd] == [sap and tuple(sap)]
    assert any(words in one.sentence and (one.cell, one.weight) == (FIRST_SAP, ASK) for one in check_file(path))
    understood = not name.endswith("number") or name.startswith("a text")
    assert cli.main(["convert", str(path), str(tmp_path / "b.xlsx")]) == (0 if understood else 1)
    assert f"look at: Collection!{FIRST_SAP}: " in capsys.readouterr().out


@pytest.mark.parametrize(
    ("pattern", "replacement"),
    [(rb'r="[A-Z]+', b'r="AAAA'), (rb'r="', b'r="%'), (rb' s="\d+"', b' s="99999"'), (rb' s="\d+"', b' s="-1"')],
)
def test_odd_references_and_styles(pattern: bytes, replacement: bytes, whole: Path, tmp_path: Path) -> None:
    path = with_xml(whole, tmp_path / "a.xlsx", {LOG: in_cell(FIRST_SAP, pattern, replacement)})
    found = read(path).season.inputs["collection.sap"]
    assert found[1:] == expected("US")["collection.sap"][1:]


def test_text_beyond_what_a_cell_holds_is_told(whole: Path, tmp_path: Path) -> None:
    text = b'<c r="%b" t="inlineStr"><is><t>%b</t></is></c>' % (FIRST_NOTE.encode(), b"a" * (LONGEST + 5))
    path = with_xml(whole, tmp_path / "a.xlsx", {LOG: in_cell(FIRST_NOTE, rb"^.*$", text)})
    assert read(path).season.inputs["collection.note"][0] == "a" * LONGEST
    assert [one.cell for one in check_file(path) if "the rest is not read" in one.sentence] == [FIRST_NOTE]


def test_what_is_no_cell_is_told(whole: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    def edit(book: openpyxl.Workbook) -> None:
        sheet = book["Collection"]
        sheet[FIRST_NOTE].hyperlink = "https://example.org/"
        sheet.oddFooter.center.text = "Property of the yard"
        sheet.add_chart(own_chart(sheet), "P30")
        book.create_chartsheet("Drawn").add_chart(own_chart(sheet))
        book.defined_names["own_price"] = DefinedName("own_price", attr_text="Yard!$C$5")
        book.properties.description = "the year of the flood"
        book["Storage"]["A5"].comment = Comment("smell it", "me")

    path = with_openpyxl(whole, tmp_path / "a.xlsx", edit)
    parts = [name for name in zipfile.ZipFile(path).namelist() if name.startswith("xl/drawings/drawing")]
    edits = {parts[0]: lambda text: text.replace(b"</wsDr>", b"<sp><txBody/></sp></wsDr>")}
    path = with_xml(path, tmp_path / "b.xlsx", edits)
    assert cli.main(["convert", str(path), str(tmp_path / "c.xlsx")]) == 0
    said = [line for line in capsys.readouterr().out.splitlines() if line.startswith("not copied: ")]
    assert said == [
        "not copied: 1 link",
        "not copied: 1 text box or drawing",
        "not copied: headers or footers of your own for printing (Collection)",
        "not copied: the chart sheet 'Drawn'",
        "not copied: a description in its properties (comments)",
        "not copied: 1 chart of your own on the sheet 'Collection'",
        "not copied: names of your own (own_price)",
    ]
    assert read(path).contents.notes["Storage", (4, 0)] == "smell it"
    told = {one.sentence for one in check_file(path)}
    assert {
        f"The workbook holds {line.removeprefix('not copied: ')}: not read, and not copied." for line in said
    } <= told


@pytest.mark.parametrize(
    "part", ["xl/drawings/drawing1.xml", "docProps/core.xml", "docProps/custom.xml", "xl/styles.xml"]
)
def test_a_damaged_part_that_holds_no_cells_costs_no_workbook(part: str, whole: Path, tmp_path: Path) -> None:
    path = with_xml(whole, tmp_path / "a.xlsx", {part: lambda text: text[: len(text) // 2]})
    assert inputs(path) == expected("US")
    assert f"The part {part} is damaged: what it holds is not read." in [one.sentence for one in check_file(path)]


def own_chart(sheet: Any) -> BarChart:
    chart = BarChart()
    chart.add_data(Reference(sheet, min_col=3, min_row=5, max_row=9))
    return chart


@pytest.fixture(scope="module")
def as_ods(whole: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The season saved by LibreOffice."""
    office.needed()
    folder = tmp_path_factory.mktemp("ods")
    return Path(office.convert(whole, "ods", office.new_profile(folder)))


def ods_with(path: Path, target: Path, pattern: bytes, replacement: bytes) -> Path:
    def edit(name: str, text: bytes) -> bytes:
        if name != "content.xml":
            return text
        other, count = re.subn(pattern, replacement, text, count=1)
        assert count, pattern
        return other

    return all_parts(path, target, edit)


ODD_ODS = [
    (rb'office:date-value="2026-02-24"', rb'office:date-value="20266-03-01"', "20266-03-01"),
    (rb'office:date-value="2026-02-24"', rb'office:date-value="-001-03-01"', "-001-03-01"),
    (rb'office:date-value="2026-02-24"', rb'office:date-value=""', ""),
    (rb'office:time-value="PT[^"]*"', rb'office:time-value="noon"', "noon"),
    (rb'office:value="7.5"', rb'office:value="many"', "many"),
    (rb'(<table:table-cell[^>]*)number-columns-repeated="\d+"', rb'\1number-columns-repeated="-4"', "-4"),
    (rb'number-rows-repeated="\d+"', rb'number-rows-repeated="a"', "a"),
]


@pytest.mark.parametrize(("pattern", "replacement", "words"), ODD_ODS)
def test_one_odd_attribute_of_an_ods(
    pattern: bytes, replacement: bytes, words: str, as_ods: Path, tmp_path: Path
) -> None:
    path = ods_with(as_ods, tmp_path / "a.ods", pattern, replacement)
    found = read(path)
    assert [repr(words) in one.sentence for one in found.contents.odd] == [True]
    assert found.season.inputs["yard.name"] == expected("US")["yard.name"]
    assert check_file(path)


def test_a_mistyped_year_in_an_ods_is_kept_as_it_was_typed(as_ods: Path, tmp_path: Path) -> None:
    path = ods_with(as_ods, tmp_path / "a.ods", *ODD_ODS[0][:2])
    assert "20266-03-01" in read(path).season.inputs["weather.date"]
    assert cli.main(["convert", str(path), str(tmp_path / "b.xlsx")]) == 1
    assert "20266-03-01" in read(tmp_path / "b.xlsx").season.inputs["weather.date"]


def test_what_libreoffice_saved_holds_nothing_beside_our_cells(as_ods: Path) -> None:
    """Its charts are ours, their previews are no pictures, and its page footers are ours too."""
    assert list(read(as_ods).besides()) == []
    assert {one.weight for one in check_file(as_ods)} == {TELL}


def test_a_preview_of_a_chart_is_no_picture(as_ods: Path, tmp_path: Path) -> None:
    """Some programs keep them among the pictures (an .ods of gnumeric does)."""
    preview = rb'\1<draw:image xlink:href="Pictures/preview.png"/>'
    path = ods_with(as_ods, tmp_path / "a.ods", rb"(<draw:object [^>]*>(?:</draw:object>)?)", preview)
    assert list(read(path).besides()) == []
    own = (
        rb'<table:shapes><draw:frame><draw:image xlink:href="Pictures/bees.png"/></draw:frame>'
        rb"<draw:frame><draw:text-box/></draw:frame></table:shapes>"
    )
    path = ods_with(as_ods, tmp_path / "b.ods", rb"</table:table>", own + rb"</table:table>")
    assert list(read(path).besides()) == ["1 picture", "1 text box or drawing"]


def test_typed_cells_of_every_kind_come_back(tmp_path: Path) -> None:
    typed(example(), {("collection.note", 2): "  two\n\nlines_x0041_ "}).write(tmp_path / "a.xlsx", "linked")
    assert read(tmp_path / "a.xlsx").season.inputs["collection.note"][1] == "  two\n\nlines_x0041_ "


def test_a_sheet_that_is_called_as_a_programs_is_told(whole: Path, tmp_path: Path) -> None:
    def edit(book: openpyxl.Workbook) -> None:
        book.create_sheet("xlwings.conf")["A1"] = "bees"

    assert read(with_openpyxl(whole, tmp_path / "a.xlsx", edit)).own_sheets() == ["xlwings.conf"]


def test_a_season_takes_no_more_than_its_tables() -> None:
    with pytest.raises(ValueError, match=r"collection.sap: 99 rows for a table of"):
        Season("US", {"collection.sap": [1.0] * 99}, SMALL)


@pytest.mark.parametrize("text", ["a\x0bb", "a\x00b", "_x000B_", "_x005F_", "a\rb"])
def test_letters_that_xml_does_not_take(text: str, tmp_path: Path) -> None:
    """In a typed cell, and in the values of the formulas that repeat it."""
    season = typed(example(), {"yard.name": text, ("containers.name", 1): text, ("collection.container", 1): text})
    season.write(tmp_path / "a.xlsx", "linked")
    found = read(tmp_path / "a.xlsx")
    assert found.season.inputs["yard.name"].replace("_x0000_", "\x00") == text.replace("\r", "\n")
    assert cli.main(["convert", str(tmp_path / "a.xlsx"), str(tmp_path / "b.xlsx")]) == 0
    assert inputs(tmp_path / "b.xlsx") == trimmed(found.season.inputs)
