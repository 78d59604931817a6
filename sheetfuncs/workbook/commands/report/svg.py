"""A chart of a workbook as SVG text: the same records that the writer draws with, no script, no style of its own.

The page that holds it says how the classes look (`STYLE`), so that charts follow light, dark and print.
"""

from __future__ import annotations

import datetime
import math
from collections.abc import Callable, Iterator, Sequence
from html import escape
from typing import Any, NamedTuple

from sheetfuncs.workbook.model import parts
from sheetfuncs.workbook.model.parts import Chart
from sheetfuncs.workbook.read.contents import DAY_ZERO, ONE_DAY, serial
from sheetfuncs.workbook.season import Season
from sheetfuncs.workbook.sheets.phrases import MONTHS

WIDTH, HEIGHT = 560, 300
LEFT, RIGHT, TOP, BOTTOM = 52, 14, 12, 46
NAMES = 200  # room for the words at the left of a bar chart
TICKS = 6

STYLE = """
svg { width: 100%; height: auto; font: 12px system-ui, sans-serif; }
svg text { fill: var(--ink); }
svg .grid { stroke: var(--rule); stroke-width: 1; }
svg .axis { stroke: var(--quiet); stroke-width: 1; }
svg .line { fill: none; stroke-width: 2; }
svg .s0 { stroke: var(--first); } svg .f0 { fill: var(--first); }
svg .s1 { stroke: var(--second); stroke-dasharray: 6 4; } svg .f1 { fill: var(--second); }
"""

Point = tuple[Any, float]


class Axis(NamedTuple):
    """A scale from numbers to places on the page."""

    low: float
    high: float
    start: float
    end: float

    def at(self, value: float) -> float:
        return self.start + (value - self.low) / (self.high - self.low) * (self.end - self.start)


def points(season: Season, chart: Chart) -> list[list[Point]]:
    """The numbers of each series, as far as both of its cells are filled."""
    found = []
    for series in chart.series:
        rows = range(max(season.layout.spots[series.y].height, series.rows))
        both = [(_number(season, series.x, row), _number(season, series.y, row)) for row in rows]
        wordy = chart.kind == "bar"
        found.append([(x, y) for x, y in both if isinstance(y, float) and (wordy or isinstance(x, float))])
    return found


def _number(season: Season, name: str, row: int) -> Any:
    value = serial(season.shown(name, row))
    return float(value) if isinstance(value, int) and not isinstance(value, bool) else value


def drawing(season: Season, chart: Chart) -> str:
    """The chart as an SVG element; "" where there is nothing to draw."""
    series = points(season, chart)
    if not any(series):
        return ""
    if chart.kind == "bar":
        body = list(_bars(series[0]))
    else:
        body = list(_columns(series, chart) if chart.kind == "column" else _lines(series, chart))
    if len(chart.series) > 1:
        body += _legend(chart)
    words = escape(chart.title)
    height = max(HEIGHT, TOP + BOTTOM + 28 * len(series[0])) if chart.kind == "bar" else HEIGHT
    head = f'<svg viewBox="0 0 {WIDTH} {height}" role="img" aria-label="{words}" xmlns="http://www.w3.org/2000/svg">'
    return "\n".join([head, f"<title>{words}</title>", *body, "</svg>"])


def _lines(series: Sequence[Sequence[Point]], chart: Chart) -> Iterator[str]:
    everything = [point for one in series for point in one]
    x, marks = _scale([float(point[0]) for point in everything], chart.x_kind, LEFT, WIDTH - RIGHT)
    y, _ = _scale([point[1] for point in everything], parts.NUMBER, HEIGHT - BOTTOM, TOP)
    yield from _grid(y, chart.y_title)
    yield from _below(x, marks, chart.x_kind)
    for number, one in enumerate(series):
        path = " ".join(f"{x.at(float(at)):.1f},{y.at(value):.1f}" for at, value in one)
        yield f'<polyline class="line s{number % 2}" points="{path}"/>'
        if not number:
            yield from (
                f'<circle class="f0" cx="{x.at(float(at)):.1f}" cy="{y.at(value):.1f}" r="2.5"/>' for at, value in one
            )


def _columns(series: Sequence[Sequence[Point]], chart: Chart) -> Iterator[str]:
    """Columns beside each other; what falls on one day is added up."""
    summed: list[dict[float, float]] = []
    for one in series:
        sums: dict[float, float] = {}
        for at, value in one:
            sums[float(at)] = sums.get(float(at), 0.0) + value
        summed.append(sums)
    places = sorted({at for sums in summed for at in sums})
    x, marks = _scale([places[0] - 0.5, places[-1] + 0.5], chart.x_kind, LEFT, WIDTH - RIGHT)
    y, _ = _scale([0.0, *(value for sums in summed for value in sums.values())], parts.NUMBER, HEIGHT - BOTTOM, TOP)
    yield from _grid(y, chart.y_title)
    yield from _below(x, places if chart.x_kind == parts.COUNT else marks, chart.x_kind)
    width = min(40.0, (x.at(1) - x.at(0)) * 0.8 / len(series))
    for number, sums in enumerate(summed):
        for at, value in sums.items():
            left = x.at(at) + (number - len(series) / 2) * width
            top, foot = sorted((y.at(value), y.at(0)))
            size = f'width="{width:.1f}" height="{foot - top:.1f}"'
            yield f'<rect class="f{number % 2}" x="{left:.1f}" y="{top:.1f}" {size}/>'


def _bars(one: Sequence[Point]) -> Iterator[str]:
    """Bars under each other, with their words at the left and their numbers at the end."""
    x, marks = _scale([0.0, *(value for _, value in one)], parts.NUMBER, NAMES, WIDTH - RIGHT - 40)
    foot = TOP + 28 * len(one)
    for mark in marks:
        yield f'<line class="grid" x1="{x.at(mark):.1f}" x2="{x.at(mark):.1f}" y1="{TOP}" y2="{foot}"/>'
        yield f'<text x="{x.at(mark):.1f}" y="{foot + 16}" text-anchor="middle">{mark:g}</text>'
    for row, (words, value) in enumerate(one):
        left, right = sorted((x.at(0), x.at(value)))
        top = TOP + 28 * row
        yield f'<text x="{NAMES - 8}" y="{top + 18}" text-anchor="end">{escape(str(words))}</text>'
        yield f'<rect class="f0" x="{left:.1f}" y="{top + 5}" width="{right - left:.1f}" height="18"/>'
        yield f'<text x="{right + 5:.1f}" y="{top + 18}">{value:.2f}</text>'


def _grid(y: Axis, title: str) -> Iterator[str]:
    for mark in _marks(y.low, y.high):
        yield f'<line class="grid" x1="{LEFT}" x2="{WIDTH - RIGHT}" y1="{y.at(mark):.1f}" y2="{y.at(mark):.1f}"/>'
        yield f'<text x="{LEFT - 6}" y="{y.at(mark) + 4:.1f}" text-anchor="end">{mark:g}</text>'
    middle = (TOP + HEIGHT - BOTTOM) / 2
    yield f'<text transform="translate(13 {middle:.0f}) rotate(-90)" text-anchor="middle">{escape(title)}</text>'


def _below(x: Axis, marks: Sequence[float], kind: str) -> Iterator[str]:
    foot = HEIGHT - BOTTOM
    yield f'<line class="axis" x1="{LEFT}" x2="{WIDTH - RIGHT}" y1="{foot}" y2="{foot}"/>'
    for mark in marks:
        yield f'<text x="{x.at(mark):.1f}" y="{foot + 16}" text-anchor="middle">{_words(mark, kind)}</text>'


def _legend(chart: Chart) -> Iterator[str]:
    for number, series in enumerate(chart.series):
        left, foot = LEFT + number * 130, HEIGHT - 8
        if chart.kind == "column":
            yield f'<rect class="f{number % 2}" x="{left + 12}" y="{foot - 10}" width="12" height="12"/>'
        else:
            yield f'<line class="line s{number % 2}" x1="{left}" x2="{left + 24}" y1="{foot - 4}" y2="{foot - 4}"/>'
        yield f'<text x="{left + 30}" y="{foot}">{escape(series.name)}</text>'


def _scale(values: Sequence[float], kind: str, start: float, end: float) -> tuple[Axis, list[float]]:
    """An axis with room for all values, and where its marks stand."""
    low, high = min(values), max(values)
    if low == high:
        low, high = low - 1, high + 1
    if kind in (parts.DATE, parts.TIME, parts.COUNT):
        return Axis(low, high, start, end), _marks(low, high, _STEPS.get(kind, _round_step))
    marks = _marks(low, high)
    step = marks[1] - marks[0]
    axis = Axis(math.floor(low / step + 1e-9) * step, math.ceil(high / step - 1e-9) * step, start, end)
    return axis, _marks(axis.low, axis.high)


def _marks(low: float, high: float, step_for: Callable[[float], float] | None = None) -> list[float]:
    """Round numbers from one to the other."""
    step = (step_for or _round_step)((high - low) / TICKS)
    first, last = math.ceil(low / step - 1e-9), math.floor(high / step + 1e-9)
    marks = [number * step for number in range(first, last + 1)]
    return marks if len(marks) > 1 else [low, high]


def _round_step(least: float) -> float:
    power = 10.0 ** math.floor(math.log10(least))
    return next(power * step for step in (1, 2, 5, 10) if power * step >= least * 0.999)


def _one_of(*steps: float) -> Callable[[float], float]:
    return lambda least: next((step for step in steps if step >= least), steps[-1] * math.ceil(least / steps[-1]))


_STEPS = {
    parts.DATE: _one_of(1, 2, 7, 14, 28),
    parts.TIME: _one_of(*(minutes / 1440 for minutes in (1, 2, 5, 10, 15, 30, 60, 120, 240))),
}


def _words(value: float, kind: str) -> str:
    if kind == parts.DATE:
        day: datetime.datetime = DAY_ZERO + ONE_DAY * round(value)
        return f"{day.day} {MONTHS[day.month - 1]}"
    if kind == parts.TIME:
        minutes = round(value * 1440)
        return f"{minutes // 60}:{minutes % 60:02d}"
    return f"{value:g}"
