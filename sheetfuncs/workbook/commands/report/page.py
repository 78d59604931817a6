"""The HTML page of a report: one file, no script, charts inside; for the screen, light or dark, and for paper."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from html import escape
from typing import TYPE_CHECKING

from sheetfuncs import __version__
from sheetfuncs.workbook.commands.report import svg
from sheetfuncs.workbook.model.parts import Chart
from sheetfuncs.workbook.season import Season

if TYPE_CHECKING:
    from sheetfuncs.workbook.commands.report.report import Section, Told

TABLES_FIRST = 2  # the totals and where the sugar went; then come the charts

STYLE = """
:root { --paper: #fffdf8; --ink: #222222; --quiet: #666666; --rule: #ddd5cb; --first: #4a3728; --second: #b3701a;
  --head: #f3ece2; color-scheme: light dark; }
@media (prefers-color-scheme: dark) { :root { --paper: #1d1a17; --ink: #eee8df; --quiet: #a89f94; --rule: #453d36;
  --first: #d8b48c; --second: #e0983b; --head: #2b2621; } }
* { box-sizing: border-box; }
body { margin: 0 auto; padding: 1.2rem; max-width: 70rem; background: var(--paper); color: var(--ink);
  font: 15px/1.45 system-ui, sans-serif; }
h1 { font-size: 1.7rem; margin: 0 0 .2rem; } h2 { font-size: 1.15rem; margin: 1.6rem 0 .4rem; }
p { margin: .2rem 0; } .quiet { color: var(--quiet); } .warning { font-weight: bold; }
.wide { overflow-x: auto; }
table { border-collapse: collapse; } th, td { padding: .18rem .7rem .18rem 0; vertical-align: top; text-align: right; }
td { border-top: 1px solid var(--rule); } th { background: var(--head); font-weight: 600; }
th.left, td.left { text-align: left; } th:first-child, td:first-child { padding-left: .5rem; }
@media screen { td { white-space: nowrap; } }
.charts { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(24rem, 100%), 1fr)); gap: 1rem; }
@page { margin: 12mm; }
@media print { :root { --paper: #ffffff; --ink: #000000; --quiet: #444444; --rule: #bbbbbb; --first: #4a3728;
  --second: #b3701a; --head: #eeeeee; } body { padding: 0; font-size: 9.5pt; } .wide { overflow: visible; }
  table { font-size: 7.5pt; } th, td { padding-right: .45rem; } h2 { break-after: avoid; }
  figure, tr { break-inside: avoid; } .charts { grid-template-columns: 1fr 1fr; } }
figure { margin: 0; } figcaption { font-weight: 600; margin-bottom: .2rem; }
"""


def html(told: Sequence[Told], sections: Sequence[Section], warnings: Sequence[str]) -> str:
    """The whole page."""
    title = escape(", ".join(one.name for one in told))
    body = [f"<h1>{title}</h1>", *(f'<p class="warning">{escape(words)}</p>' for words in warnings)]
    parts = [[f"<h2>{escape(section.title)}</h2>", *_table(section)] for section in sections]
    for part in (*parts[:TABLES_FIRST], list(_charts(told)), *parts[TABLES_FIRST:]):
        body += part
    body.append(f'<p class="quiet">Recomputed by sheetfuncs {__version__}. Guidance: local rules come first.</p>')
    head = [
        "<!doctype html>",
        '<html lang="en">',
        '<meta charset="utf-8">',
        '<meta name="viewport" content="width=device-width, initial-scale=1">',
        f"<title>{title}</title>",
        f"<style>{STYLE}{svg.STYLE}</style>",
    ]
    return "\n".join([*head, *body, "</html>", ""])


def _table(section: Section) -> Iterator[str]:
    yield '<div class="wide"><table>'
    if any(section.headings):
        yield "<tr>" + "".join(map(_cell, ["th"] * len(section.left), section.headings, section.left)) + "</tr>"
    for row in section.rows:
        yield "<tr>" + "".join(map(_cell, ["td"] * len(row), row, section.left)) + "</tr>"
    yield "</table></div>"


def _cell(tag: str, text: str, left: bool) -> str:
    return f"<{tag}{' class=left' if left else ''}>{escape(text)}</{tag}>"


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
    """The charts of the Season sheet first."""
    sheets = sorted(season.sheets, key=lambda sheet: sheet.title != "Season")
    for sheet in sheets:
        yield from (block for block in sheet.blocks if isinstance(block, Chart))
