"""Charts: the season to look at, on one page."""

from __future__ import annotations

from functools import partial

from sheetfuncs.workbook.model.formula import cases, say
from sheetfuncs.workbook.model.kinds import DATE, TEXT, VOLUME
from sheetfuncs.workbook.model.layout import FIRST_ROW
from sheetfuncs.workbook.model.parts import Chart, Column, Series, Sheet, Table
from sheetfuncs.workbook.model.rows import Rows
from sheetfuncs.workbook.model.systems import Units
from sheetfuncs.workbook.sheets.season import SHADES

CHART = (360, 275)  # pixels: one fills a phone, three a laptop and a page of paper
WIDTH, CHART_ROWS = 51, 14  # of the columns and rows that a chart lies over


def sheet(units: Units, rows: Rows) -> Sheet:
    """Six charts, and out of sight what they need besides the logs."""
    return Sheet(
        "Charts",
        "The season to look at. Nothing to type.",
        (_titles(units), _years(rows), *_charts(units)),
        tab="result",
        freeze=(3, 0),
        widths=(WIDTH,) * 3,
        since=2,
    )


def _titles(units: Units) -> Table:
    """The titles of the charts: what is not there yet says so."""

    def title(key: str, there: str, words: str, missing: str) -> Column:
        formula = cases((there, say(words)), otherwise=say(missing))
        return Column(key, f"Title: {key}", TEXT, formula, hidden=True)

    v = units.volume
    columns = (
        title("day", "COUNT(@collection.volume)>0", f"Sap by day, {v}, and the weather, {units.temperature}", "Sap by day: none yet"),
        title("sum", "COUNT(@collection.volume)>0", f"Sap so far, {v}", "Sap so far: none yet"),
        title("sugar", "COUNTIFS(@collection.guess,0)>0", "Sugar of the sap, °Brix", "Sugar of the sap: not measured yet"),
        title("batch", "SUM(@by_batch.amount)>0", f"Syrup by batch and {units.pick('color', 'colour')}, {v}", "Syrup by batch: none yet"),
        title("ledger", "SUM(@collection.sugar)>0", f"Where the sugar went, {units.mass}", "Where the sugar went: no sap yet"),
        title("year", "COUNT(@years.syrup)>0", f"Syrup by season, {v}", "Syrup by season: none yet"),
    )  # fmt: skip
    return Table("titles", "", columns, 1, row=FIRST_ROW, since=2)


def _years(rows: Rows) -> Table:
    """Earlier seasons and this one in a row, for a chart."""
    earlier = "COUNTA(@past.season)"

    def of(past: str, now: str) -> tuple[str, ...]:
        return tuple(
            f'IF({row}<={earlier},INDEX(@past.{past},{min(row, rows.past)})&"",IF({row}={earlier}+1,{now},""))'
            for row in range(1, rows.past + 2)
        )

    def number(past: str, now: str) -> tuple[str, ...]:
        """A season of which it was not written down has no bar."""
        found = []
        for row, text in enumerate(of(past, now), 1):
            cell = f"INDEX(@past.{past},{min(row, rows.past)})"
            found.append(text.replace(f'{cell}&""', f'IF(ISNUMBER({cell}),{cell},"")', 1))
        return tuple(found)

    columns = (
        Column("name", "Season", TEXT, of("season", 'IF(@yard.year="","this season",@yard.year&"")'), hidden=True),
        Column("syrup", "Syrup", VOLUME, number("syrup", 'IF(@season.bottled>0,@season.bottled,"")'), hidden=True),
    )
    return Table("years", "", columns, rows.past + 1, row=FIRST_ROW + 3, since=2)


def _charts(units: Units) -> tuple[Chart, ...]:
    """Three beside each other, twice."""
    chart = partial(Chart, width=CHART[0], height=CHART[1])
    first, second = FIRST_ROW, FIRST_ROW + CHART_ROWS
    v = units.volume
    return (
        chart(
            "Sap by day, and the weather",
            "column",
            (Series("sap", "weather.date", "weather.sap"),),
            "",
            v,
            row=first,
            column=0,
            x_kind=DATE,
            titled="titles.day",
            lines=(Series("low", "weather.date", "weather.low"), Series("high", "weather.date", "weather.high")),
            lines_title=units.temperature,
        ),
        chart(
            f"Sap so far, {v}",
            "scatter",
            (Series("sap", "collection.date", "collection.sap_sum"),),
            "",
            v,
            row=first,
            column=1,
            x_kind=DATE,
            titled="titles.sum",
        ),
        chart(
            "Sugar of the sap",
            "scatter",
            (Series("sugar", "collection.date", "collection.true"),),
            "",
            "°Brix",
            row=first,
            column=2,
            x_kind=DATE,
            titled="titles.sugar",
        ),
        chart(
            f"Syrup by batch, {v}",
            "column",
            tuple(
                Series(name or "not judged", "by_batch.batch", f"by_batch.{key}", colour=shade)
                for key, (name, shade) in SHADES.items()
            ),
            "batch",
            v,
            row=second,
            column=0,
            titled="titles.batch",
            stacked=True,
        ),
        chart(
            f"Where the sugar went, {units.mass}",
            "bar",
            (Series("sugar", "ledger.what", "ledger.mass"),),
            "",
            "",
            row=second,
            column=1,
            titled="titles.ledger",
        ),
        chart(
            f"Syrup by season, {v}",
            "column",
            (Series("syrup", "years.name", "years.syrup"),),
            "",
            v,
            row=second,
            column=2,
            x_kind=TEXT,
            titled="titles.year",
        ),
    )
