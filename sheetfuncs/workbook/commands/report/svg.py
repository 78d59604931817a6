"""A chart of a workbook as SVG text: the same records that the writer draws with, no script, no style of its own.

The page that holds it says how the classes look (`STYLE`), so that charts follow light, dark and print.
"""

from __future__ import annotations

import datetime
import math
from collections.abc import Callable, Iterator, Mapping, Sequence
from html import escape
from typing import Any, NamedTuple

from sheetfuncs.workbook.model import kinds
from sheetfuncs.workbook.model.days import DAY_ZERO, LAST_DAY, MONTHS, ONE_DAY
from sheetfuncs.workbook.model.kinds import Kind
from sheetfuncs.workbook.model.parts import Chart, Series
from sheetfuncs.workbook.model.systems import Units
from sheetfuncs.workbook.season import Season

WIDTH, HEIGHT = 560, 300
LEFT, RIGHT, TOP, BOTTOM = 52, 14, 12, 46
NAMES = 240  # room for the words at the left of a bar chart
TICKS = 6
LETTER = 7  # as wide as one is taken to be
REACH = (-1e12, 1e12)  # what is beyond has no place on a chart

STYLE = """
svg { width: 100%; height: auto; font: 12px system-ui, sans-serif; }
svg text { fill: var(--ink); }
svg .grid { stroke: var(--rule); stroke-width: 1; }
svg .axis { stroke: var(--quiet); stroke-width: 1; }
svg .line { fill: none; stroke-width: 2; }
svg .s0 { stroke: var(--first); } svg .f0 { fill: var(--first); }
svg .s1 { stroke: var(--second); stroke-dasharray: 6 4; } svg .f1 { fill: var(--second); }
svg .s2 { stroke: var(--third); stroke-dasharray: 2 3; } svg .f2 { fill: var(--third); }
svg rect { stroke: var(--ink); stroke-width: .5; }
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


def points(season: Season, chart: Chart, of: Sequence[Series] = ()) -> list[list[Point]]:
    """The numbers of each series, as far as both of its cells are filled."""
    found = []
    for series in of or chart.series:
        rows = range(max(season.layout.spots[series.y].height, series.rows))
        both = [(season.number(series.x, row), season.number(series.y, row)) for row in rows]
        wordy = chart.x_kind.wordy or chart.kind == "bar"
        reach = (1, LAST_DAY - 1) if chart.x_kind == kinds.DATE else REACH
        found.append([(x, y) for x, y in both if _drawn(y, REACH) and (wordy or _drawn(x, reach))])
    return found


def _drawn(value: Any, reach: tuple[float, float]) -> bool:
    """Whether a value is a number that a scale can reach; `check` speaks of others."""
    return isinstance(value, float) and reach[0] <= value <= reach[1]


def drawing(season: Season, chart: Chart) -> str:
    """The chart as an SVG element; "" where there is nothing to draw."""
    series = points(season, chart)
    if not any(series):
        return ""
    if chart.kind == "bar":
        body = list(_bars(series[0]))
    elif chart.kind == "column":
        body = list(_columns(series, chart, season))
    else:
        body = list(_lines(series, chart, season.units))
    if len(chart.series) + len(chart.lines) > 1:
        body += _legend(chart, [bool(one) for one in series])
    words = escape(chart.title)
    height = max(HEIGHT, TOP + BOTTOM + 28 * len(series[0])) if chart.kind == "bar" else HEIGHT
    head = f'<svg viewBox="0 0 {WIDTH} {height}" role="img" aria-label="{words}" xmlns="http://www.w3.org/2000/svg">'
    return "\n".join([head, f"<title>{words}</title>", *body, "</svg>"])


def _lines(series: Sequence[Sequence[Point]], chart: Chart, units: Units) -> Iterator[str]:
    everything = [point for one in series for point in one]
    x, marks = _scale([float(point[0]) for point in everything], chart.x_kind, LEFT, WIDTH - RIGHT)
    y, _ = _scale([point[1] for point in everything], kinds.NUMBER, HEIGHT - BOTTOM, TOP)
    yield from _grid(y, chart.y_title)
    yield from _below(x, {mark: _words(mark, chart.x_kind, units) for mark in marks})
    for number, one in enumerate(series):
        yield _line(one, x, y, number)
        if not number:
            yield from (
                f'<circle class="f0" cx="{x.at(float(at)):.1f}" cy="{y.at(value):.1f}" r="2.5"/>' for at, value in one
            )


def _line(one: Sequence[Point], x: Axis, y: Axis, number: int) -> str:
    path = " ".join(f"{x.at(float(at)):.1f},{y.at(value):.1f}" for at, value in one)
    return f'<polyline class="line s{number % 3}" points="{path}"/>'


def _columns(series: Sequence[Sequence[Point]], chart: Chart, season: Season) -> Iterator[str]:
    """Columns beside each other; what falls on one day is added up.  Lines over them have an axis at the right."""
    named = list(dict.fromkeys(str(at) for one in series for at, _ in one)) if chart.x_kind.wordy else []
    summed: list[dict[float, float]] = []
    for one in series:
        sums: dict[float, float] = {}
        for at, value in one:
            place = float(named.index(str(at)) if named else at)
            sums[place] = sums.get(place, 0.0) + value
        summed.append(sums)
    places = sorted({at for sums in summed for at in sums})
    right = WIDTH - (LEFT if chart.lines else RIGHT)
    x, marks = _scale([places[0] - 0.5, places[-1] + 0.5], chart.x_kind, LEFT, right)
    y, _ = _scale([0.0, *(value for sums in summed for value in sums.values())], kinds.NUMBER, HEIGHT - BOTTOM, TOP)
    yield from _grid(y, chart.y_title, right)
    shown = places if named or chart.x_kind == kinds.COUNT else marks
    yield from _below(
        x, {at: named[int(at)] if named else _words(at, chart.x_kind, season.units) for at in shown}, right
    )
    beside = 1 if chart.stacked else len(series)
    width = min(40.0, (x.at(1) - x.at(0)) * 0.8 / beside)
    for number, sums in enumerate(summed):
        colour = f'fill="{chart.series[number].colour}"' if chart.series[number].colour else f'class="f{number % 3}"'
        for at, value in sums.items():
            left = x.at(at) + ((0 if chart.stacked else number) - beside / 2) * width
            top, foot = sorted((y.at(value), y.at(0)))
            size = f'width="{width:.1f}" height="{foot - top:.1f}"'
            yield f'<rect {colour} x="{left:.1f}" y="{top:.1f}" {size}/>'
    if chart.lines:
        yield from _over(points(season, chart, chart.lines), chart, x, right)


def _over(lines: Sequence[Sequence[Point]], chart: Chart, x: Axis, right: int) -> Iterator[str]:
    """Lines on an axis of their own, as far as the columns reach."""
    lines = [[(at, value) for at, value in one if x.low <= float(at) <= x.high] for one in lines]
    values = [value for one in lines for _, value in one]
    if not values:
        return
    y, marks = _scale(values, kinds.NUMBER, HEIGHT - BOTTOM, TOP)
    for mark in marks:
        yield f'<text x="{right + 6}" y="{y.at(mark) + 4:.1f}">{mark:g}</text>'
    middle = (TOP + HEIGHT - BOTTOM) / 2
    words = escape(chart.lines_title)
    yield f'<text transform="translate({WIDTH - 6} {middle:.0f}) rotate(-90)" text-anchor="middle">{words}</text>'
    for number, one in enumerate(lines, len(chart.series)):
        yield _line(one, x, y, number)


def _bars(one: Sequence[Point]) -> Iterator[str]:
    """Bars under each other, with their words at the left and their numbers at the end."""
    x, marks = _scale([0.0, *(value for _, value in one)], kinds.NUMBER, NAMES, WIDTH - RIGHT - 40)
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


def _grid(y: Axis, title: str, right: int = WIDTH - RIGHT) -> Iterator[str]:
    for mark in _marks(y.low, y.high):
        yield f'<line class="grid" x1="{LEFT}" x2="{right}" y1="{y.at(mark):.1f}" y2="{y.at(mark):.1f}"/>'
        yield f'<text x="{LEFT - 6}" y="{y.at(mark) + 4:.1f}" text-anchor="end">{mark:g}</text>'
    middle = (TOP + HEIGHT - BOTTOM) / 2
    yield f'<text transform="translate(13 {middle:.0f}) rotate(-90)" text-anchor="middle">{escape(title)}</text>'


def _below(x: Axis, marks: Mapping[float, str], right: int = WIDTH - RIGHT) -> Iterator[str]:
    """The words under the axis; the last one ends where the axis does, so that no frame cuts it."""
    foot = HEIGHT - BOTTOM
    yield f'<line class="axis" x1="{LEFT}" x2="{right}" y1="{foot}" y2="{foot}"/>'
    for mark, words in marks.items():
        half = LETTER * len(words) / 2
        place = min(x.at(mark), WIDTH - half)
        yield f'<text x="{place:.1f}" y="{foot + 16}" text-anchor="middle">{escape(words)}</text>'


def _legend(chart: Chart, drawn: Sequence[bool]) -> Iterator[str]:
    left, foot = LEFT, HEIGHT - 8
    for number, series in enumerate((*chart.series, *chart.lines)):
        if number < len(drawn) and not drawn[number]:
            continue
        if chart.kind == "column" and number < len(chart.series):
            colour = f'fill="{series.colour}"' if series.colour else f'class="f{number % 3}"'
            yield f'<rect {colour} x="{left + 12}" y="{foot - 10}" width="12" height="12"/>'
        else:
            yield f'<line class="line s{number % 3}" x1="{left}" x2="{left + 24}" y1="{foot - 4}" y2="{foot - 4}"/>'
        yield f'<text x="{left + 30}" y="{foot}">{escape(series.name)}</text>'
        left += 50 + round(LETTER * len(series.name))


def _scale(values: Sequence[float], kind: Kind, start: float, end: float) -> tuple[Axis, list[float]]:
    """An axis with room for all values, and where its marks stand."""
    low, high = min(values), max(values)
    if high - low <= 1e-9 * max(abs(low), abs(high), 1e-3):  # too near each other to be told apart
        low, high = low - 1, high + 1
    if kind in (kinds.DATE, kinds.TIME, kinds.COUNT):
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
    kinds.DATE: _one_of(1, 2, 7, 14, 28),
    kinds.TIME: _one_of(*(minutes / 1440 for minutes in (1, 2, 5, 10, 15, 30, 60, 120, 240))),
}


def _words(value: float, kind: Kind, units: Units) -> str:
    if kind == kinds.DATE:
        day: datetime.datetime = DAY_ZERO + ONE_DAY * round(value)
        month = MONTHS[day.month - 1]
        return str(units.pick(f"{month} {day.day}", f"{day.day} {month}"))
    if kind == kinds.TIME:
        minutes = round(value * 1440)
        return f"{minutes // 60}:{minutes % 60:02d}"
    return f"{value:g}"
