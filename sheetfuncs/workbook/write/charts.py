"""Charts of columns of tables."""

from __future__ import annotations

from typing import Any

from xlsxwriter import Workbook
from xlsxwriter.worksheet import Worksheet

from sheetfuncs.workbook.model import kinds
from sheetfuncs.workbook.model.layout import Layout
from sheetfuncs.workbook.model.parts import Chart, Series
from sheetfuncs.workbook.model.systems import Units
from sheetfuncs.workbook.write import styles

COLOURS = (styles.BAR, "#C8871E", "#6E8B8B")
LETTERS = {"name": styles.FONT, "size": 9}


def insert(book: Workbook, page: Worksheet, chart: Chart, layout: Layout, units: Units) -> None:
    """A chart of columns of tables, in ink and bark so that it prints in grey."""
    subtype = "straight_with_markers" if chart.kind == "scatter" else "stacked" if chart.stacked else ""
    picture: Any = book.add_chart({"type": chart.kind} | ({"subtype": subtype} if subtype else {}))
    for number, series in enumerate(chart.series):
        picture.add_series(_series(layout, chart, series, number))
    title = "=" + layout.spots[chart.titled].address("") if chart.titled else chart.title
    picture.set_title({"name": title, "name_font": {"size": 11, "name": styles.FONT}})
    x_axis: dict[str, Any] = {"name": chart.x_title, "num_font": LETTERS, "name_font": LETTERS}
    if chart.x_kind is kinds.DATE:
        x_axis |= {"num_format": units.pick("mmm d", "d mmm")} | ({"date_axis": True} if chart.kind == "column" else {})
    elif chart.x_kind is kinds.TIME:
        x_axis |= {"num_format": chart.x_kind.format(units)}
    y_axis: dict[str, Any] = {
        "name": chart.y_title,
        "num_font": LETTERS,
        "name_font": LETTERS,
        "major_gridlines": {"visible": True, "line": {"color": "#DDDDDD"}},
    }
    if chart.kind == "column":
        y_axis["min"] = 0
    if chart.kind == "bar":  # lying down: its categories stand on the y axis, first one on top
        x_axis, y_axis = y_axis | {"min": 0}, x_axis | {"reverse": True}
    picture.set_x_axis(x_axis)
    picture.set_y_axis(y_axis)
    if chart.lines:
        over: Any = book.add_chart({"type": "line"})
        for number, series in enumerate(chart.lines, len(chart.series)):
            over.add_series(_series(layout, chart._replace(kind="line"), series, number) | {"y2_axis": True})
        over.set_y2_axis({"name": chart.lines_title, "num_font": LETTERS, "name_font": LETTERS})
        picture.combine(over)
    several = len(chart.series) + len(chart.lines) > 1
    place = {"position": "right" if chart.stacked else "bottom", "font": LETTERS}
    picture.set_legend(place if several else {"none": True})
    picture.set_size({"width": chart.width, "height": chart.height})
    picture.show_na_as_empty_cell()
    picture.show_hidden_data()  # what a chart draws may stand in hidden columns
    page.insert_chart(chart.row, chart.column, picture, {"description": chart.title})


def _series(layout: Layout, chart: Chart, series: Series, number: int) -> dict[str, Any]:
    spots = [layout.spots[name] for name in (series.x, series.y)]
    x, y = ("=" + spot._replace(height=max(spot.height, series.rows)).address("") for spot in spots)
    colour = series.colour or COLOURS[number % 3]
    line = {"color": colour, "width": 1.75, "dash_type": ("solid", "dash", "round_dot")[number % 3]}
    filled = {"fill": {"color": colour}, "border": {"color": styles.INK, "width": 0.5}, "gap": 60}
    look: dict[str, Any] = filled if chart.kind in ("column", "bar") else {"line": line}
    if chart.kind == "scatter":
        look["marker"] = {"type": "none"} if number else {"type": "circle", "size": 4, "fill": {"color": colour}}
    return {"name": series.name, "categories": x, "values": y, **look}
