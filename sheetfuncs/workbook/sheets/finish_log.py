"""Finish: the readings of one batch, what they tell, and the chart of the run with its target line."""

from __future__ import annotations

from sheetfuncs.formulas.finish import PAN_READING
from sheetfuncs.workbook.model.parts import (
    BRIX,
    MINUTES,
    TEMPERATURE,
    TEXT,
    TIME,
    VOLUME,
    WORDS,
    Chart,
    Column,
    Field,
    Fields,
    Series,
    Table,
    Units,
)
from sheetfuncs.workbook.sheets.phrases import ask, first_found, mend, not_a_number, not_a_time, rounded, when

LOG_COLUMN = 6  # where the readings stand, beside the batch
PACE_OVER = 6  # readings from which the pace is measured
NOISY = 4  # °Brix: a reading less sure than this tells no pace yet
CALLS = 3  # minutes before the end at which nobody leaves the pan


def log(units: Units, batch: int, top: int, rows: int) -> Table:
    me, goal = f"batch{batch}", f"@batch{batch}.goal"
    higher = f"BRIX_BY_BOIL([reading]+@{me}.error,@{me}.water,UNITS)"
    findings = (
        not_a_time("time"),
        not_a_number("reading", "The reading"),
        mend("AND(ISNUMBER([time-1]),ISNUMBER([time]),N([time])<N([time-1]))", "Time runs backwards: check it."),
        ask(f"AND(ISNUMBER([reading]),N([reading])<N(@{me}.water))", "Not boiling yet, or the water reading is wrong."),
    )
    done = f'IF([reading]>={goal},IF([reading]>={goal}+{units.pick(2, 1)},"TAKE IT OFF: too far, it is thick.","TAKE IT OFF"),'
    wait = (
        f'IF(ISNUMBER([minutes]),IF([minutes]<={CALLS},"Stay with it: about "&{rounded("[minutes]", 0)}&" minutes.",'
        f'"About "&{rounded("[minutes]", 0)}&" minutes still."),"")'
    )
    return Table(
        f"readings{batch}",
        "",
        (
            Column("time", "Time", TIME),
            Column(
                "reading",
                f"Thermometer, {units.temperature}",
                TEMPERATURE,
                limits=units.limits(PAN_READING),
            ),
            Column(
                "brix",
                "°Brix now",
                BRIX,
                when(f"COUNT([reading],@{me}.water)=2", f"BRIX_BY_BOIL([reading],@{me}.water,UNITS)"),
            ),
            Column("error", "give or take", BRIX, when("ISNUMBER([brix])", f"{higher}-[brix]")),
            Column(
                "cold",
                f"In the pan, cold, {units.volume}",
                VOLUME,
                when(f"AND(N([brix])>0.1,ISNUMBER(@{me}.syrup))", f"SYRUP_FROM_SAP(@{me}.syrup,@yard.target,[brix])"),
            ),
            Column(
                "water_left",
                f"Water left, {units.volume}",
                VOLUME,
                when("ISNUMBER([cold])", "IF([brix]>=@yard.target,0,BOIL_WATER([cold],[brix],@yard.target))"),
            ),
            Column(
                "minutes",
                "Minutes left",
                MINUTES,
                when(
                    "ISNUMBER([water_left])",
                    f"FINISH_MINUTES([cold],[brix],@yard.target,IF(AND(N([pace])>0,[error]<={NOISY}),[pace],@{me}.rate))",
                ),
            ),
            Column(
                "do",
                "Do",
                WORDS,
                first_found(findings, f'IF(ISNUMBER([reading]),{done}{wait}),"")'),
                width=56,
                findings=findings,
            ),
            Column("said", "Said last", TEXT, 'IF([do]="",[said-1],[do])', hidden=True),
            Column(
                "pace",
                "Measured pace, an hour",
                VOLUME,
                f"IFERROR(-SLOPE([water_left~{PACE_OVER - 1}],[time~{PACE_OVER - 1}])/24,0)",
                hidden=True,
            ),
        ),
        rows,
        row=top,
        column=LOG_COLUMN,
    )


def goal_line(units: Units, batch: int, top: int) -> Fields:
    """The two ends of the target line in the chart."""
    times = f"@readings{batch}.time"
    goal = f'IF(ISNUMBER(@batch{batch}.goal),@batch{batch}.goal,"")'

    def end(key: str, words: str, function: str) -> Field:
        height = Field(f"{key}_reading", "", TEMPERATURE, goal)
        return Field(key, words, TIME, f'IF(COUNT({times})=0,"",{function}({times}))', beside=height)

    return Fields(
        f"line{batch}",
        "",
        (end("first", "Target line in the chart, from", "MIN"), end("last", "to", "MAX")),
        row=top,
    )


def chart(units: Units, batch: int, top: int) -> Chart:
    return Chart(
        f"Batch {batch}: the run and its target",
        "scatter",
        (
            Series("thermometer", f"readings{batch}.time", f"readings{batch}.reading"),
            Series("target", f"line{batch}.first", f"line{batch}.first_reading", rows=2),
        ),
        "",
        units.temperature,
        row=top,
        column=0,
        x_kind=TIME,
        width=590,
        height=380,
    )
