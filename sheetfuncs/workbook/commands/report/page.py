"""The HTML page of a report: one file, no script, charts inside; for the screen, light or dark, and for paper."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from html import escape

from sheetfuncs import __version__
from sheetfuncs.workbook.commands.report import svg
from sheetfuncs.workbook.commands.report.records import Section, Told
from sheetfuncs.workbook.model.parts import Chart
from sheetfuncs.workbook.season import Season

TABLES_FIRST = 3  # the story, the shelf, the totals; then come the charts

STYLE = """
:root { --paper: #fffdf8; --ink: #222222; --quiet: #666666; --rule: #ddd5cb; --first: #4a3728; --second: #a3600f;
  --third: #4d6c6c; --head: #f3ece2; color-scheme: light dark; }
@media (prefers-color-scheme: dark) { :root { --paper: #1d1a17; --ink: #eee8df; --quiet: #a89f94; --rule: #453d36;
  --first: #d8b48c; --second: #e0983b; --third: #9fc0c0; --head: #2b2621; } }
* { box-sizing: border-box; }
body { margin: 0 auto; padding: 1.2rem; max-width: 70rem; background: var(--paper); color: var(--ink);
  font: 15px/1.45 system-ui, sans-serif; }
h1 { font-size: 1.7rem; margin: 0 0 .2rem; } h2 { font-size: 1.15rem; margin: 1.6rem 0 .4rem; }
p { margin: .2rem 0; } .quiet { color: var(--quiet); } .warning { font-weight: bold; }
.wide { overflow-x: auto; }
table { border-collapse: collapse; } th, td { padding: .18rem .7rem .18rem 0; vertical-align: top; text-align: right; }
td { border-top: 1px solid var(--rule); } th { background: var(--head); font-weight: 600; }
th.left, td.left { text-align: left; } th:first-child, td:first-child { padding-left: .5rem; }
td:not(.left) { white-space: nowrap; }
td:last-child, .told td { min-width: 9rem; }
.told td:first-child { white-space: nowrap; min-width: 0; }
@media (max-width: 600px) { body { padding: .8rem; font-size: 16px; } table { font-size: 14px; }
  svg text { font-size: 16px; } }
.charts { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(24rem, 100%), 1fr)); gap: 1rem; }
@page { margin: 12mm; }
@media print { :root { --paper: #ffffff; --ink: #000000; --quiet: #444444; --rule: #bbbbbb; --first: #4a3728;
  --second: #a3600f; --third: #4d6c6c; --head: #eeeeee; } body { padding: 0; font-size: 9.5pt; }
  .wide { overflow: visible; }
  table { font-size: 7.5pt; } th, td { padding-right: .45rem; } h2 { break-after: avoid; }
  figure, tr { break-inside: avoid; } .charts { grid-template-columns: 1fr 1fr; } }
figure { margin: 0; } figcaption { font-weight: 600; margin-bottom: .2rem; }
"""


def html(told: Sequence[Told], sections: Sequence[Section], warnings: Sequence[str]) -> str:
    """The whole page."""
    body: list[str] = []
    parts = [[f"<h2>{escape(section.title)}</h2>", *_table(section)] for section in sections]
    for part in (*parts[:TABLES_FIRST], list(_charts(told)), *parts[TABLES_FIRST:]):
        body += part
    return document(", ".join(one.name for one in told), warnings, body, svg.STYLE)


def document(title: str, warnings: Sequence[str], body: Sequence[str], style: str) -> str:
    """A page of this make: its title, what must be said first, and what it tells; `style` adds to the looks of all."""
    title = escape(title)
    head = [
        "<!doctype html>",
        '<html lang="en">',
        '<meta charset="utf-8">',
        '<meta name="viewport" content="width=device-width, initial-scale=1">',
        f"<title>{title}</title>",
        f"<style>{STYLE}{style}</style>",
    ]
    above = ["<main>", f"<h1>{title}</h1>", *(f'<p class="warning">{escape(words)}</p>' for words in warnings)]
    quiet = f'<p class="quiet">Recomputed by sheetfuncs {__version__}. Guidance: local rules come first.</p>'
    return "\n".join([*head, *above, *body, "</main>", f"<footer>{quiet}</footer>", "</html>", ""])


def _table(section: Section) -> Iterator[str]:
    words = escape(section.title)
    yield f'<div class="wide" tabindex="0" role="region" aria-label="{words}: table"><table{_told(section)}>'
    if any(section.headings):
        yield "<tr>" + "".join(map(_cell, ["th"] * len(section.left), section.headings, section.left)) + "</tr>"
    for row in section.rows:
        yield "<tr>" + "".join(map(_cell, ["td"] * len(row), row, section.left)) + "</tr>"
    yield "</table></div>"


def _told(section: Section) -> str:
    return ' class="told"' if len(section.left) == 2 and all(section.left) else ""


def _cell(tag: str, text: str, left: bool) -> str:
    tag = "td" if tag == "th" and not text else tag
    scope = ' scope="col"' if tag == "th" else ""
    return f"<{tag}{scope}{' class=left' if left else ''}>{escape(text)}</{tag}>"


def _charts(told: Sequence[Told]) -> Iterator[str]:
    """Each chart of a workbook, that of every season beside the others."""
    drawn = [(one, chart) for one in told for chart in _of_season(one.season)]
    titles = dict.fromkeys(chart.title for _, chart in drawn)
    pictures = [
        (one.name, chart.title, picture)
        for title in titles
        for one, chart in drawn
        if chart.title == title and (picture := svg.drawing(one.season, chart))
    ]
    if pictures:
        yield "<h2>Charts</h2>"
        yield '<div class="charts">'
        for name, title, picture in pictures:
            words = title if len(told) == 1 else f"{name}: {title}"
            yield f"<figure><figcaption>{escape(words)}</figcaption>{picture}</figure>"
        yield "</div>"


def _of_season(season: Season) -> Iterator[Chart]:
    """Those of the sheet Charts first."""
    sheets = sorted(season.sheets, key=lambda sheet: sheet.title != "Charts")
    for sheet in sheets:
        yield from (block for block in sheet.blocks if isinstance(block, Chart))
