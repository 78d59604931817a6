"""Finish: the race to the last degree, a block for each batch."""

from __future__ import annotations

from sheetfuncs.formulas.finish import FLOATING
from sheetfuncs.formulas.vocabulary import CUP_TEMPERATURE, STRENGTH, WATER_READING
from sheetfuncs.workbook.model.parts import (
    BRIX,
    COUNT,
    DATE,
    DIFFERENCE,
    LENGTH,
    SMALL,
    TEMPERATURE,
    TEXT,
    VOLUME,
    WORDS,
    Block,
    Field,
    Fields,
    Rows,
    Sheet,
    Units,
)
from sheetfuncs.workbook.sheets import finish_log
from sheetfuncs.workbook.sheets.phrases import ask, first_found, of_row, rounded, when

TOP = 3
BATCH_ROWS = 62  # a batch, its check in the cup and its chart
FITS = '"Fits."'


def sheet(units: Units, rows: Rows) -> Sheet:
    """A block of labelled cells, a readings log and a chart for each batch."""
    blocks: list[Block] = []
    each = max(BATCH_ROWS, rows.readings + 4)
    for batch in range(1, rows.batches + 1):
        top = TOP + (batch - 1) * each
        fields = _fields(units, batch, top)
        blocks += [fields, _check(units, batch, top + len(fields.fields) + 2)]
        blocks += [
            finish_log.log(units, batch, top, rows.readings),
            finish_log.goal_line(units, batch, top + 35),
            finish_log.chart(units, batch, top + 40),
        ]
    return Sheet(
        "Finish",
        "One block a batch. Give the lots their batch number in Storage, read the thermometer in boiling water, then log.",
        blocks,
        freeze=(2, 0),
        widths=(16, 12, 12, 15, 30, 3, 9, 13, 10, 9, 12, 12, 10, 56),
        breaks=[TOP + batch * each for batch in range(1, rows.batches)],
    )


def _fields(units: Units, batch: int, top: int) -> Fields:
    me = f"batch{batch}"
    of_pan = of_row("@pans.area", "@pans.name", f"@{me}.pan")
    pan_holds = of_row("@pans.holds", "@pans.name", f"@{me}.pan")
    of_thermometer = of_row("@thermometers.water", "@thermometers.name", f"@{me}.thermometer")
    read_on = of_row("@thermometers.read_on", "@thermometers.name", f"@{me}.thermometer")
    error = of_row("@thermometers.error", "@thermometers.name", f"@{me}.thermometer")
    filled = f"ISNUMBER(@{me}.syrup)"
    least = units.pick(0.4, 1.0)
    read_that_day = f"AND(N({of_thermometer})>0,N({read_on})=N(@{me}.date),N(@{me}.date)>0)"
    fits = (
        ask(f"N(@{me}.volume)>IFERROR({pan_holds}+0,1000000)", "Over the rim: leave a lot out, or take a larger pan."),
        ask(f"@{me}.depth_end<{least}", "Too shallow at the end, it scorches: finish in a smaller pan."),
    )
    return Fields(
        me,
        f"Batch {batch}",
        (
            Field(
                "goal",
                "IT IS SYRUP AT",
                TEMPERATURE,
                when(f"ISNUMBER(@{me}.water)", f"ROUND(FINISH_READING(@yard.target,@{me}.water,UNITS),1)"),
                note=f"{units.temperature} on this thermometer",
                strong=True,
            ),
            Field(
                "now",
                "NOW",
                WORDS,
                f"INDEX(@readings{batch}.said,ROWS(@readings{batch}.said))",
            ),
            Field("date", "Date", DATE),
            Field("thermometer", "Thermometer", TEXT, choices="@thermometers.name"),
            Field(
                "water_typed",
                "It shows in boiling water",
                TEMPERATURE,
                limits=units.limits(WATER_READING),
                note=f"{units.temperature}, today",
            ),
            Field("pan", "Pan", TEXT, choices="@pans.name"),
            Field(
                "volume_typed", "Volume going in, if measured", VOLUME, note=f"{units.volume}, cold; else from Storage"
            ),
            Field("brix_typed", "Its sugar, if measured", BRIX, limits=units.limits(STRENGTH), note="°Brix"),
            Field(
                "lots",
                "Lots in it",
                COUNT,
                f"COUNTIF(@storage.meant,{batch})",
                note="from Storage",
            ),
            Field(
                "syrup",
                "Syrup expected, cold",
                VOLUME,
                f"IF(COUNT(@{me}.volume_typed,@{me}.brix_typed)=2,"
                f'IFERROR(SYRUP_FROM_SAP(@{me}.volume_typed,@{me}.brix_typed,@yard.target),""),'
                f'IF(SUMIFS(@storage.syrup,@storage.meant,{batch})>0,SUMIFS(@storage.syrup,@storage.meant,{batch}),""))',
                note=units.volume,
            ),
            Field(
                "volume",
                "Volume going in, cold",
                VOLUME,
                f"IF({filled},IF(COUNT(@{me}.volume_typed,@{me}.brix_typed)=2,@{me}.volume_typed,"
                f'SUMIFS(@storage.volume,@storage.meant,{batch})),"")',
                note=units.volume,
            ),
            Field(
                "brix",
                "Its sugar",
                BRIX,
                when(filled, f"BOIL_BRIX(@{me}.syrup,@yard.target,@{me}.volume)"),
                note="°Brix",
            ),
            Field(
                "depth",
                "Depth in the pan at the start",
                LENGTH,
                when(filled, f"PAN_DEPTH(@{me}.volume,{of_pan},UNITS)"),
                note=units.length,
            ),
            Field(
                "depth_end",
                "Depth when it is syrup",
                LENGTH,
                when(filled, f"PAN_DEPTH(@{me}.syrup,{of_pan},UNITS)"),
                note=units.length,
            ),
            Field(
                "fits",
                "The pan",
                WORDS,
                f'IF(ISNUMBER(@{me}.depth),{first_found(fits, FITS)},"")',
                findings=fits,
            ),
            Field(
                "jars",
                "Jars to have hot",
                COUNT,
                when(filled, f"JAR_COUNT(@{me}.syrup,INDEX(@jars.size,1),UNITS)+1"),
                note="of the first size in Yard, one to spare",
            ),
            Field(
                "water",
                "Boiling water, taken as",
                TEMPERATURE,
                f"IF(OR(N(@{me}.date)>0,{filled}),IF(ISNUMBER(@{me}.water_typed),@{me}.water_typed,"
                f'IF(IFERROR({read_that_day},FALSE),{of_thermometer},@weekend.water)),"")',
                note="typed, else Yard that day, else air pressure",
            ),
            Field(
                "error",
                "Thermometer reads to within",
                DIFFERENCE,
                f"IFERROR(IF({error}>0,{error}+0,{units.pick(0.5, 0.3)}),{units.pick(0.5, 0.3)})",
                note=f"± {units.difference}",
            ),
            Field(
                "rate",
                "Boils off, until the readings tell",
                VOLUME,
                f"IF(ISNUMBER(@{me}.depth),IFERROR(PAN_RATE({of_pan},UNITS),@yard.rate),@yard.rate)",
                note=f"{units.volume}/h, from the pan, else from Yard",
            ),
        ),
        row=top,
    )


def _check(units: Units, batch: int, top: int) -> Fields:
    me = f"check{batch}"
    true = f"ISNUMBER(@{me}.true)"
    return Fields(
        me,
        f"Batch {batch}: in the cup",
        (
            Field(
                "shows", "Hydrometer shows", BRIX, limits=units.limits(FLOATING), note="°Brix scale, marked at 60 °F"
            ),
            Field(
                "cup",
                "Syrup in the cup is at",
                TEMPERATURE,
                limits=units.limits(CUP_TEMPERATURE),
                note=f"{units.temperature}; read both together",
            ),
            Field(
                "true",
                "True strength",
                BRIX,
                when(f"COUNT(@{me}.shows,@{me}.cup)=2", f"BRIX_BY_HYDROMETER(@{me}.shows,@{me}.cup,UNITS)"),
                note="°Brix",
            ),
            Field(
                "state",
                "It is",
                TEXT,
                f'IF({true},IFERROR(SYRUP_STATE(@{me}.true),""),"")',
                note="against 66.0 to 68.9",
            ),
            Field("pan_volume", "Volume in the pan", VOLUME, note=f"{units.volume}, as it is; blank: as expected"),
            Field(
                "pan_at",
                "The pan is at",
                TEMPERATURE,
                limits=units.limits(CUP_TEMPERATURE),
                note=f"{units.temperature}; blank: as in the cup",
            ),
            Field(
                "expected",
                "Volume as expected, cold",
                VOLUME,
                when(true, f"SYRUP_FROM_SAP(@batch{batch}.syrup,@yard.target,@{me}.true)"),
                note=units.volume,
            ),
            Field(
                "cold",
                "Volume once cold",
                VOLUME,
                when(
                    true,
                    f"IF(ISNUMBER(@{me}.pan_volume),SYRUP_COLD(@{me}.pan_volume,@{me}.true,"
                    f"IF(ISNUMBER(@{me}.pan_at),@{me}.pan_at,@{me}.cup),UNITS),@{me}.expected)",
                ),
                note=units.volume,
            ),
            Field(
                "fix",
                "Water to stir in (+) or boil off (-)",
                SMALL,
                when(f"ISNUMBER(@{me}.cold)", f"SYRUP_ADJUST(@{me}.cold,@{me}.true,@yard.target,UNITS)"),
                note=f"{units.small}, to reach the target",
            ),
            Field(
                "words",
                "What to do",
                WORDS,
                f'IF(ISNUMBER(@{me}.fix),IF(ABS(@{me}.true-@yard.target)<=@yard.hydrometer_error,"Bottle it: on target.",'
                f'IF(@{me}.fix>0,"Stir in "&{rounded(f"@{me}.fix", 0)}&" {units.small} of clean water.",'
                f'"Boil off "&{rounded(f"-@{me}.fix", 0)}&" {units.small} more.")),"")',
            ),
        ),
        row=top,
    )
