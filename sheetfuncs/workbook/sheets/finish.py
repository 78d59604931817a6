"""Finish: the race to the last degree, one log for all batches, with the answer frozen above it."""

from __future__ import annotations

from sheetfuncs.formulas.syrup import THICKEST
from sheetfuncs.workbook.model.formula import NOTHING, cases, say
from sheetfuncs.workbook.model.kinds import (
    COUNT,
    MINUTES,
    TEMPERATURE,
    TEXT,
    WORDS,
)
from sheetfuncs.workbook.model.parts import ASK, MEND, Chart, Column, Field, Fields, Series, Sheet, Table
from sheetfuncs.workbook.model.rows import Rows
from sheetfuncs.workbook.model.systems import Units
from sheetfuncs.workbook.sheets import run
from sheetfuncs.workbook.sheets.phrases import rounded

NEAR = 5  # minutes from which the panel turns amber; red when it is off now
TOP = 9  # the first reading: what stands above is frozen


def sheet(units: Units, rows: Rows) -> Sheet:
    """The panel, the log of readings, and the chart of the run that the panel shows."""
    log = run.log(units, rows)
    return Sheet(
        "Finish",
        "Type time and reading; the answer stands beside it and above. Another pot: its number under Batch.",
        (
            _panel(units, rows),
            log,
            _drawn(units),
            _chart(units, len([one for one in log.columns if not one.hidden])),
        ),
        tab="log",
        freeze=(TOP, 2),
    )


LAST = "MAXIFS(@run.at,@run.no,@panel.shown)"  # the row of the last reading of the batch that is shown


def _of_last(key: str, otherwise: str) -> str:
    return f'IFERROR(IF({LAST}>0,INDEX(@run.{key},{LAST}),{otherwise}),"")'


def _of_batch(key: str) -> str:
    return f"INDEX(@batches.{key},MAX(1,@panel.shown))"


def _panel(units: Units, rows: Rows) -> Fields:
    """What is asked while it boils, in the cells above the log's first three columns."""
    of_last, of_batch = _of_last, _of_batch
    today = "MINIFS(@batches.number,@batches.date,@weekend.today)"
    shown = cases(
        ("ISNUMBER(@panel.batch)", "@panel.batch"),
        ("MAX(@run.at)>0", "INDEX(@run.no,MAX(@run.at))"),
        (f"{today}>0", today),
        otherwise="MAX(@batches.planned)",
    )
    # A second day of finishing goes on in the same log: its first reading needs the batch's number.
    other_day = (
        f"AND(NOT(ISNUMBER(@panel.batch)),MAX(@run.at)>0,{today}>0,"
        f'COUNTIFS(@run.no,{today},@run.at,">0")=0,N({of_batch("date")})<>@weekend.today)'
    )
    prompt = say(
        "These are readings of batch {shown}. Type {number} under Batch beside the first reading of today.",
        shown="@panel.shown",
        number=today,
    )
    do = cases(
        ("@panel.shown=0", say("Give the batch a line in Batches first: date and thermometer.")),
        (other_day, prompt),
        (f"COUNT({of_batch('off_at')},{of_batch('true')})>0", of_batch("do")),
        (f"ISTEXT({of_last('time', '0')})", of_last("advice", NOTHING)),  # a time mistyped hides no advice
        otherwise=of_last("do", of_batch("do")),
    )
    on = cases(
        (
            "ISNUMBER(@panel.goal)",
            cases(
                (
                    f'{of_last("from", of_batch("from"))}="another day"',
                    say(
                        "Read {meter} in boiling water again today: this is by another day's.",
                        meter=of_last("meter", of_batch("meter")),
                    ),
                ),
                (f'{of_last("meter", of_batch("meter"))}=""', say("batch {shown}", shown="@panel.shown")),
                otherwise=say(
                    "by {meter}, batch {shown}", meter=of_last("meter", of_batch("meter")), shown="@panel.shown"
                ),
            ),
        ),
        ("@panel.shown=0", NOTHING),
        otherwise=of_last("goal_words", of_batch("goal_words")),
    )
    about = cases(
        (
            f"ISNUMBER({of_last('brix', NOTHING)})",
            say(
                "{brix} °Brix, give or take {error}",
                brix=rounded(of_last("brix", NOTHING)),
                error=rounded(of_last("error", NOTHING)),
            ),
        ),
    )
    states = (
        ("AND(ISNUMBER(@panel.goal),ISNUMBER(@panel.now),N(@panel.now)>=N(@panel.goal))", MEND),
        (f"AND(ISNUMBER(@panel.minutes),N(@panel.minutes)<={NEAR})", ASK),
    )
    return Fields(
        "panel",
        "",
        (
            Field(
                "goal",
                "Syrup at",
                TEMPERATURE,
                of_last("goal", of_batch("goal")),
                strong=True,
                beside=Field("on", "", WORDS, f'IFERROR({on},"")', lines=2),
            ),
            Field(
                "now",
                "Now",
                TEMPERATURE,
                of_last("reading", NOTHING),
                strong=True,
                states=states,
                beside=Field("do", "", WORDS, f'IFERROR({do},"")', lines=4, states=states),
            ),
            Field(
                "minutes",
                "Minutes",
                MINUTES,
                of_last("minutes", NOTHING),
                strong=True,
                beside=Field("about", "", WORDS, f'IFERROR({about},"")', lines=2),
            ),
            Field(
                "batch",
                "Batch",
                COUNT,
                limits=(1, rows.batches),
                beside=Field("shown", "", COUNT, f"IFERROR({shown},0)"),
                note="shown above; blank: of the last reading",
            ),
        ),
        span=1,
    )


def _drawn(units: Units) -> Table:
    """What the chart needs besides the readings: where it is too thick on this thermometer, and its title."""
    thick = f'IFERROR(ROUND(FINISH_READING({THICKEST},[water],UNITS),1),"")'
    title = cases(
        ("MAX(@run.at)=0", say("The run: no readings yet")),
        otherwise=say("Batch {shown}: the run, where it is syrup, and too thick", shown="@panel.shown"),
    )
    columns = (
        Column(
            "water",
            "The last one's boiling water",
            TEMPERATURE,
            _of_last("water", _of_batch("water_used")),
            hidden=True,
        ),
        Column("thick", "Too thick from", TEMPERATURE, f'IF(ISNUMBER(@panel.goal),{thick},"")', hidden=True),
        Column("title", "Title of the chart", TEXT, title, hidden=True),
    )
    return Table("drawn", "", columns, 1, row=TOP - 1)


def _chart(units: Units, column: int) -> Chart:
    return Chart(
        "The run, where it is syrup, and too thick",
        "scatter",
        (
            Series("thermometer", "run.drawn_minute", "run.drawn"),
            Series("syrup", "run.drawn_minute", "run.drawn_goal"),
            Series("too thick", "run.drawn_minute", "run.drawn_thick"),
        ),
        "minutes",
        units.temperature,
        row=TOP,
        column=column,
        width=440,
        titled="drawn.title",
    )
