"""The report: its numbers, its page, how the page looks in a browser and on paper."""

from __future__ import annotations

import re
import subprocess
from html.parser import HTMLParser
from pathlib import Path
from typing import Any

import pytest
from defusedxml import ElementTree

from sheetfuncs import cli
from sheetfuncs.workbook.commands.report import svg
from sheetfuncs.workbook.commands.report.told import story
from sheetfuncs.workbook.model.kinds import BRIX, COUNT, DATE, FUEL, SHARE, TEXT, TIME, VOLUME, Kind
from sheetfuncs.workbook.model.parts import Chart
from sheetfuncs.workbook.model.systems import Units
from sheetfuncs.workbook.season import Season
from tests.tools import browser
from tests.tools.edits import Name, example, typed

WITHOUT_END = {"meta", "link", "br", "hr", "img"}


@pytest.fixture(scope="module")
def computed() -> Season:
    """The small example, computed."""
    season = example()
    season.compute()
    return season


@pytest.fixture(scope="module")
def page(whole: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    out = tmp_path_factory.mktemp("report") / "report.html"
    assert cli.main(["report", str(whole), "--html", str(out)]) == 0
    return out


def printed(capsys: pytest.CaptureFixture[str], *arguments: object) -> list[str]:
    capsys.readouterr()
    assert cli.main(["report", *map(str, arguments)]) == 0
    return capsys.readouterr().out.splitlines()


def test_the_season_is_told_of_whatever_stands_where_a_number_belongs() -> None:
    """Of one jar, of jars of no batch, and of a batch that is words."""
    edits: dict[Name, Any] = {("bottles.filled", 1): 1.0, ("bottles.batch", 1): "the first"}
    edits |= {("bottles.batch", 2): None, ("bottles.filled", 3): 0.0}
    season = typed(example(), edits)
    season.compute()
    said = [words for _, words in story(season) if words.startswith("Filled")]
    assert said == [
        "Filled 1 jar, size pint from batch the first; given: two to the neighbors who lent a tree.",
        "Filled 7 jars, size pint.",
    ]


def test_the_text_says_the_numbers_of_the_season(whole: Path, capsys: pytest.CaptureFixture[str]) -> None:
    lines = printed(capsys, whole)
    assert lines[0] == "Quarry Lane 2026"
    told = {re.split(r"  +", line.strip())[0]: re.split(r"  +", line.strip())[1:] for line in lines if "  " in line}
    assert told["Sap collected"] == ["117.00", "gal"]  # the sum of the example's log, by hand
    assert told["First run"] == ["Feb 24, 2026"]
    assert told["Fuel used"] == ["0.45", "cord"]
    assert told["2025"][:4] == ["10", "88.00", "2.1", "1.90"]
    assert [line for line in lines if line and not line.startswith(" ")] == [
        "Quarry Lane 2026",
        "The season in order",
        "On the shelf",
        "Totals",
        "Learned from your own rows",
        "Where the sugar went",
        "The ledger in words",
        "Words to the next keeper",
        "Batches",
        "This season",
        "Earlier seasons",
    ]


def test_seasons_stand_side_by_side_in_the_units_of_the_first(
    whole: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    other = typed(example("metric"), {"yard.name": "Mill Road", "yard.year": 2025.0, ("collection.sap", 1): 40.0})
    other.write(tmp_path / "other.xlsx", "linked")
    lines = printed(capsys, whole, tmp_path / "other.xlsx", whole)
    assert lines[0] == f"Quarry Lane 2026, Mill Road 2025, Quarry Lane 2026 ({whole.stem})"
    sap = next(line for line in lines if "Sap collected" in line).split()
    first = 117 - 5.5 + 40 / 3.785411784  # the first run of 5.5 gal is one of 40 L there; 231 in³ to the gallon
    assert [float(number) for number in sap[2:5]] == pytest.approx([117, first, 117], abs=0.02)


def test_a_season_with_mistakes_says_so(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    typed(example(), {("collection.sap", 3): "9 gal"}).write(tmp_path / "a.xlsx", "linked")
    lines = printed(capsys, tmp_path / "a.xlsx", "--html", tmp_path / "a.html")
    assert lines[1] == "Quarry Lane 2026: 1 thing must be mended first, see `sheetfuncs check`."
    assert '<p class="warning">Quarry Lane 2026: 1 thing' in (tmp_path / "a.html").read_text(encoding="utf-8")


class Tags(HTMLParser):
    """Which tags a page opens, whether it closes them, and what it fetches."""

    def __init__(self) -> None:
        super().__init__()
        self.open: list[str] = []
        self.seen: set[str] = set()
        self.fetched: list[str] = []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.seen.add(tag)
        self.fetched += [value or "" for name, value in attrs if name in ("src", "href", "xlink:href")]
        self.fetched += [name for name, _ in attrs if name.startswith("on")]
        if tag not in WITHOUT_END:
            self.open.append(tag)

    def handle_startendtag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.seen.add(tag)

    def handle_endtag(self, tag: str) -> None:
        assert self.open.pop() == tag


def test_the_page_is_whole_and_fetches_nothing(page: Path) -> None:
    text = page.read_text(encoding="utf-8")
    tags = Tags()
    tags.feed(text)
    assert tags.open == []
    assert tags.fetched == []
    assert not tags.seen & {"script", "iframe", "object", "link", "img"}
    assert "url(" not in text
    assert "@import" not in text
    assert "prefers-color-scheme: dark" in text
    assert "@media print" in text


def test_every_chart_of_the_workbook_is_drawn_inside_its_frame(page: Path, computed: Season) -> None:
    season = computed
    charts = [block for sheet in season.sheets for block in sheet.blocks if isinstance(block, Chart)]
    drawn = {chart.title: svg.drawing(season, chart) for chart in charts}
    assert [title for title, text in drawn.items() if not text] == []
    text = page.read_text(encoding="utf-8")
    for title, picture in drawn.items():
        if not picture:
            continue
        assert picture in text, title
        root = ElementTree.fromstring(picture)
        width, height = (float(number) for number in root.attrib["viewBox"].split()[2:])
        for element in root.iter():
            pairs = (("x", "y"), ("cx", "cy"), ("x1", "y1"), ("x2", "y2"))
            places = [tuple(float(element.attrib[one]) for one in pair) for pair in pairs if pair[0] in element.attrib]
            places += [tuple(map(float, pair.split(","))) for pair in element.attrib.get("points", "").split()]
            assert all(0 <= x <= width and 0 <= y <= height for x, y in places), title


def test_the_line_of_sap_so_far_ends_at_the_total(computed: Season) -> None:
    season = computed
    chart = next(
        b for s in season.sheets for b in s.blocks if isinstance(b, Chart) and b.title.startswith("Sap so far")
    )
    (line,) = svg.points(season, chart)
    assert line[0][1] == 5.5
    assert line[-1][1] == pytest.approx(117)
    assert len(line) == 15


def test_words_of_the_workbook_are_words_on_the_page(tmp_path: Path) -> None:
    name = "<script>alert('sap')</script> & \"Söhne\""
    typed(example(), {"yard.name": name}).write(tmp_path / "a.xlsx", "linked")
    assert cli.main(["report", str(tmp_path / "a.xlsx"), "--html", str(tmp_path / "a.html")]) == 0
    text = (tmp_path / "a.html").read_text(encoding="utf-8")
    assert "<script" not in text
    assert "&lt;script&gt;alert(&#x27;sap&#x27;)&lt;/script&gt; &amp; &quot;Söhne&quot; 2026" in text


def test_an_empty_season_has_a_page(tmp_path: Path) -> None:
    assert cli.main(["new", str(tmp_path / "a.xlsx")]) == 0
    assert cli.main(["report", str(tmp_path / "a.xlsx"), "--html", str(tmp_path / "a.html")]) == 0


def test_too_many_seasons(whole: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert cli.main(["report", *[str(whole)] * 13]) == 2
    assert "at most 12 stand side by side" in capsys.readouterr().err


@pytest.mark.parametrize(("kind", "value", "shown"), [
    (VOLUME, 1234.5, "1,234.50"), (SHARE, 0.256, "26 %"), (BRIX, 2.06, "2.1"), (DATE, 46095.0, "Mar 14, 2026"),
    (TIME, 0.6041666666666666, "2:30 PM"), (FUEL, 0.45, "0.45"), (FUEL, 2.0, "2"), (VOLUME, None, ""),
    (VOLUME, "#NUM!", "#NUM!"), (TEXT, 12.0, "12"), (COUNT, 3.0, "3"),
])  # fmt: skip
def test_values_are_shown_as_the_workbook_shows_them(kind: Kind, value: object, shown: str) -> None:
    assert kind.show(value, Units("US")) == shown


def test_in_a_browser_light_and_dark(page: Path, tmp_path: Path) -> None:
    browser.needed()
    browser.screenshot(page, tmp_path / "light.png", 1000, 800)
    browser.screenshot(page, tmp_path / "dark.png", 1000, 800, dark=True)
    assert browser.first_pixel(tmp_path / "light.png") == (0xFF, 0xFD, 0xF8)
    assert browser.first_pixel(tmp_path / "dark.png") == (0x1D, 0x1A, 0x17)


@pytest.mark.parametrize("width", [400, 1200])
def test_no_part_of_the_page_is_wider_than_the_window(page: Path, width: int, tmp_path: Path) -> None:
    """A copy of the page measures itself; wide tables scroll inside their own frame."""
    browser.needed()
    measured = "<script>document.title = document.documentElement.scrollWidth + ' ' + window.innerWidth</script>"
    copy = tmp_path / "measured.html"
    copy.write_text(page.read_text(encoding="utf-8").replace("</html>", measured + "</html>"), encoding="utf-8")
    found = re.search(r"<title>(\d+) (\d+)</title>", browser.run(copy, f"--window-size={width},800", "--dump-dom"))
    assert found
    assert int(found[1]) <= int(found[2])


def test_on_paper(page: Path, tmp_path: Path) -> None:
    """Every word of the tables is on the printed pages, and they are few."""
    browser.needed()
    browser.run(page, "--no-pdf-header-footer", f"--print-to-pdf={tmp_path / 'a.pdf'}")
    command = ["pdftotext", "-layout", str(tmp_path / "a.pdf"), "-"]
    words = subprocess.run(command, capture_output=True, text=True, check=True).stdout
    assert words.count("\f") <= 5
    wanted = (
        "Quarry Lane 2026",
        "117.00",
        "Where the sugar went",
        "Earlier seasons",
        "late",
        "Syrup by batch, gal",
    )
    assert [one for one in wanted if one not in words] == []


@pytest.mark.parametrize(
    "edits",
    [
        {("readings1.reading", 1): 1e17},
        {("collection.sap", 1): 1.7e308, ("collection.sap", 2): 1.7e308},
        {("collection.sap", 1): 5e-324, ("collection.sap", 2): 0},
        {("collection.date", 1): -1e6},
        {("collection.date", 1): 2958465, ("collection.date", 2): 2958466},
        {("past.sap", 1): 1e300, ("past.sap", 2): -1e300},
    ],
    ids=str,
)
def test_charts_of_any_numbers(edits: dict[tuple[str, int], float], tmp_path: Path) -> None:
    typed(example(), dict(edits)).write_uncomputed(tmp_path / "a.xlsx")
    assert cli.main(["report", str(tmp_path / "a.xlsx"), "--html", str(tmp_path / "a.html")]) == 0
    assert not re.search(
        r'"[^"]*(nan|inf)[^"]*"', (tmp_path / "a.html").read_text(encoding="utf-8").split("<svg", 1)[1]
    )
