"""Batch card: for one batch in its pan, what each reading means; to print and lay beside the stove."""

from __future__ import annotations

from sheetfuncs.workbook.model.formula import cases, say
from sheetfuncs.workbook.model.kinds import AREA, BRIX, COUNT, LENGTH, MINUTES, RATE, TEMPERATURE, VOLUME, WORDS
from sheetfuncs.workbook.model.parts import Column, Field, Fields, Sheet, Table, Text
from sheetfuncs.workbook.model.rows import Rows
from sheetfuncs.workbook.model.systems import Units
from sheetfuncs.workbook.sheets.cautions import short
from sheetfuncs.workbook.sheets.phrases import numbers, when

STEPS = {"US": tuple(step / 2 for step in range(-12, 5)), "metric": tuple(step / 4 for step in range(-13, 5))}


def sheet(units: Units, rows: Rows) -> Sheet:
    """Every half degree near the end: strength, what is left, how deep, how long."""
    return Sheet(
        "Batch card",
        "For one batch, to print and lay beside the stove. Name the batch, or leave it blank for the next.",
        (_head(units), _table(units), Text("Cautions", short(units), across=6, caution=True)),
        tab="paper",
        freeze=(3, 0),
        widths=(20, 18, 18, 18, 18, 18),
        pages=1,
        portrait=True,
    )


def _head(units: Units) -> Fields:
    def of(key: str) -> str:
        return f'IFERROR(INDEX(@batches.{key},@one.number),"")'

    pan = "MATCH(TRIM(@one.pan),@pans.name,0)"
    next_one = 'COUNTIFS(@batches.syrup,">0",@batches.state,"?*")+1'
    planned = "MAX(@batches.planned)"
    return Fields(
        "one",
        "",
        (
            Field("goal", "SYRUP AT", TEMPERATURE, of("goal"), strong=True, across=4),
            Field("batch", "Batch", COUNT, limits=(1, 40)),
            Field("number", "Batch on this card", COUNT, f"IF(N(@one.batch)>=1,INT(@one.batch),MAX(1,MIN({next_one},{planned})))"),
            Field("water", "Boiling water, this thermometer", TEMPERATURE, of("water_used")),
            Field("syrup", "Syrup expected, cold", VOLUME, of("syrup")),
            Field("pan", "Pan", WORDS, of("pan_used") + '&""'),
            Field("area", "Its area", AREA, f'IFERROR(INDEX(@pans.area,{pan})+0,"")'),
            Field("rate", "Boils off", RATE, of("rate"), note="a guess until its readings tell"),
            Field("said",
                "First", WORDS, cases(
                ("NOT(ISNUMBER(@one.goal))", say("Read this batch's thermometer in boiling water and write it in Batches.")),
                ("NOT(ISNUMBER(@one.syrup))", say("Say in Batches which boils go in.")),
            )),
        ),
        span=2,
    )  # fmt: skip


def _table(units: Units) -> Table:
    steps = STEPS[units.system]
    columns = (
        Column("step", "From the goal", TEMPERATURE, fixed=steps),
        Column("reading", "It shows", TEMPERATURE, when("ISNUMBER(@one.goal)", "@one.goal+[step]")),
        Column("brix", "Strength", BRIX, when("AND(ISNUMBER([reading]),N([reading])>=N(@one.water))", "BRIX_BY_BOIL([reading],@one.water,UNITS)")),
        Column("cold", "In the pan, cold", VOLUME, when("AND(N([brix])>0.5,ISNUMBER(@one.syrup))", "SYRUP_FROM_SAP(@one.syrup,@know.target,[brix])")),
        Column("depth", "Depth", LENGTH, when("AND(ISNUMBER([cold]),N(@one.area)>0)", "PAN_DEPTH([cold],@one.area,UNITS)")),
        Column("minutes", "Minutes to go", MINUTES, when(f"AND({numbers('cold', 'brix')},N(@one.rate)>0)", "IF([brix]>=@know.target,0,FINISH_MINUTES([cold],[brix],@know.target,@one.rate))")),
    )  # fmt: skip
    return Table("batch_card", "", columns, len(steps), lines=2)
