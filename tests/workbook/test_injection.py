"""Hostile texts in every cell that takes text: on every page and in every file they stay texts."""

from __future__ import annotations

import json
import re
import zipfile
from pathlib import Path
from typing import Any

import openpyxl
import pytest
from defusedxml import ElementTree

from sheetfuncs import cli
from sheetfuncs.workbook.read.filled import read
from sheetfuncs.workbook.season import Season
from tests.tools import browser
from tests.tools.edits import example, typed, with_openpyxl

SCRIPT = "document.title='run';fetch('{address}/script')"
HOSTILE = (
    f"<script>{SCRIPT}</script>",
    f"</title></style></svg><script>{SCRIPT}</script>",
    f'"><img src="{{address}}/image" onerror="{SCRIPT}">',
    f"'><svg onload=\"{SCRIPT}\">",
    "<iframe src='{address}/frame'></iframe>",
    "<link rel=stylesheet href={address}/style>",
    "<style>@import url({address}/import);</style>",
    "<meta http-equiv=refresh content='0;url={address}/away'>",
    '=HYPERLINK("{address}/link","read")',
    '=WEBSERVICE("{address}/service")',
    "=cmd|' /C calc'!A0",
    "+1+1", "-2+3", "@SUM(1)", "\t=1+1", "\r=1+1", "'=1+1",
    "]]>", "<!-- -->", "&lt;b&gt; &amp; &#60;", "<?xml?>", "${{1+1}} {{{{1+1}}}}",
    '","=1+1', '";DROP', "\\", "\\\\", "\\u003cscript>", "`id`", "$(id)",
    "\N{RIGHT-TO-LEFT OVERRIDE}txt.exe", "a\nb", "a\u2028b", "_x003C_script_x003E_", "javascript:fetch('{address}/')",
)  # fmt: skip


def hostile(address: str, everywhere: bool = False) -> tuple[Season, list[str]]:
    """A season with a hostile text in every cell that takes text, or in every one; and the texts."""
    texts = [text.format(address=address) for text in HOSTILE]
    season, edits, number = example(), {}, 0
    for name, what in season.cells.items():
        if not what.typed or not (everywhere or what.kind.wordy):
            continue
        rows = range(1, min(season.layout.spots[name].height, 4) + 1) if hasattr(what, "heading") else [0]
        for row in rows:
            edits[(name, row) if row else name] = texts[number % len(texts)]
            number += 1
    assert number >= len(texts), "each text is somewhere"
    return typed(season, edits), texts


def written(folder: Path, address: str, everywhere: bool = False) -> Path:
    path = folder / "<img src=x onerror=fetch('')> & co.xlsx"
    hostile(address, everywhere)[0].write(path, "linked")
    return path


def page_of(folder: Path, address: str, everywhere: bool = False) -> Path:
    page = folder / "page.html"
    assert cli.main(["report", str(written(folder, address, everywhere)), "--html", str(page)]) == 0
    return page


@pytest.mark.parametrize("everywhere", [False, True], ids=["in text cells", "in every cell"])
def test_a_page_runs_nothing_and_asks_for_nothing(everywhere: bool, tmp_path: Path) -> None:
    browser.needed()
    found = browser.watched(lambda address: page_of(tmp_path, address, everywhere))
    assert found.asked == []
    assert not re.search(r"<(script|img|iframe|link|a)\b", found.dom)
    assert "<title>run</title>" not in found.dom
    assert not re.search(r"<[^>]*\son\w+=", found.dom)


def test_several_seasons_on_a_page(tmp_path: Path) -> None:
    browser.needed()

    def page(address: str) -> Path:
        first = written(tmp_path, address)
        second = tmp_path / "<script>fetch('')<.xlsx"
        second.write_bytes(first.read_bytes())
        assert cli.main(["report", str(first), str(second), "--html", str(tmp_path / "page.html")]) == 0
        return tmp_path / "page.html"

    found = browser.watched(page)
    assert found.asked == []
    assert not re.search(r"<(script|img|iframe|link|a)\b", found.dom)


def test_the_watch_sees_what_a_page_without_care_would_do(tmp_path: Path) -> None:
    browser.needed()

    def page(address: str) -> Path:
        path = tmp_path / "careless.html"
        body = f"<img src='{{address}}/image'><script>{SCRIPT}</script>".format(address=address)
        path.write_text(f"<!doctype html><title>a</title>{body}")
        return path

    found = browser.watched(page)
    assert sorted(found.asked) == ["/image", "/script"]
    assert "<title>run</title>" in found.dom


def test_charts_are_whole_xml(tmp_path: Path) -> None:
    page = page_of(tmp_path, "http://127.0.0.1:9").read_text(encoding="utf-8")
    drawings = re.findall(r"<svg.*?</svg>", page, re.DOTALL)
    assert len(drawings) > 3
    for drawing in drawings:
        assert {element.tag.rpartition("}")[2] for element in ElementTree.fromstring(drawing).iter()} <= {
            "svg", "title", "line", "text", "polyline", "circle", "rect",
        }  # fmt: skip


@pytest.mark.parametrize("everywhere", [False, True], ids=["in text cells", "in every cell"])
def test_json_stays_json(everywhere: bool, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    path = written(tmp_path, "http://127.0.0.1:9", everywhere)
    assert cli.main(["check", str(path), "--json"]) in (0, 1)
    out = capsys.readouterr().out
    assert out.isascii()
    assert json.loads(out)["file"] == str(path)
    assert cli.main(["check", str(path)]) in (0, 1)
    for line in capsys.readouterr().out.split("\n"):
        assert line.isprintable() or not line, repr(line)


@pytest.mark.parametrize("edition", ["carried", "inline", "linked"])
def test_in_a_workbook_each_is_a_text(edition: str, tmp_path: Path) -> None:
    """Written, converted, handed over: no text becomes a formula, a link or a name."""
    season, texts = hostile("http://127.0.0.1:9")
    source = tmp_path / "a.xlsx"
    season.write(source, edition)
    plain = tmp_path / "plain.xlsx"
    example().write(plain, edition)
    for command in (["convert", "--edition", edition], ["handover"]):
        path = tmp_path / f"{command[0]}.xlsx"
        # 1: where a list is meant, such a text is of no list, and is told
        assert cli.main([*command, str(source), str(path)]) in (0, 1)
        with zipfile.ZipFile(path) as archive:
            assert not [name for name in archive.namelist() if "externalLink" in name or "vba" in name.lower()]
            assert not any(b"TargetMode" in archive.read(name) for name in archive.namelist() if name.endswith(".rels"))
        if command[0] == "convert":
            assert formulas(path) == formulas(plain)
            found = read(path).season.inputs
            typed_texts = {text for value in found.values() for text in (value if isinstance(value, list) else [value])}
            wanted = {text.replace("\r", "\n") for text in texts}
            assert {text.replace("\r", "\n") for text in typed_texts if isinstance(text, str)} >= wanted


def formulas(path: Path) -> set[tuple[str, str]]:
    book = openpyxl.load_workbook(path)
    return {(sheet.title, cell.coordinate) for sheet in book for row in sheet for cell in row if cell.data_type == "f"}


def test_sheets_and_cells_of_ones_own(tmp_path: Path) -> None:
    """They are copied as plain values: whatever they say, and whatever a sheet is called."""
    example().write(tmp_path / "a.xlsx", "linked")
    texts = [text.format(address="http://127.0.0.1:9") for text in HOSTILE if text.isprintable()]
    texts.remove("_x003C_script_x003E_")  # openpyxl writes it so that it means something else

    def edit(book: openpyxl.Workbook) -> None:
        own: Any = book.create_sheet("'<b>&\"=1+1")
        for row, text in enumerate(texts, 1):
            for sheet, column in ((own, 1), (book["Collection"], 30)):
                cell = sheet.cell(row + 40, column, text)
                cell.data_type = "s"

    path = with_openpyxl(tmp_path / "a.xlsx", tmp_path / "b.xlsx", edit)
    assert cli.main(["convert", str(path), str(tmp_path / "c.xlsx")]) == 0
    book = openpyxl.load_workbook(tmp_path / "c.xlsx")
    for title in book.sheetnames[-2:]:
        said = {cell.value for row in book[title] for cell in row if cell.data_type == "s"}
        assert said >= set(texts)
        assert not [cell for row in book[title] for cell in row if cell.data_type == "f"]


def test_words_of_functions_in_vba_and_in_the_add_in() -> None:
    """What is made from the catalogue alone: quotes doubled, no line that begins anything of its own."""
    from sheetfuncs.hosts.calc.builder import addin_files
    from sheetfuncs.hosts.excel.wrapper import module_text

    for line in module_text().splitlines():
        assert line.isprintable()
        assert line.count('"') % 2 == 0, line
    for name, content in addin_files().items():
        if name.endswith((".xml", ".xcu", ".components")):
            ElementTree.fromstring(content)
