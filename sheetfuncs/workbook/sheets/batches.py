"""Batches: a row for each finishing pot, from its plan to its verdict."""

from __future__ import annotations

from sheetfuncs.formulas.finish import FLOATING, PAN_READING
from sheetfuncs.formulas.syrup import LIGHT
from sheetfuncs.formulas.vocabulary import CUP_TEMPERATURE, STRENGTH, WATER_READING
from sheetfuncs.workbook.model.formula import cases
from sheetfuncs.workbook.model.kinds import (
    BRIX,
    COUNT,
    DATE,
    DIFFERENCE,
    LENGTH,
    RATE,
    SMALL,
    TEMPERATURE,
    TEXT,
    VOLUME,
)
from sheetfuncs.workbook.model.parts import Column, Sheet, Table
from sheetfuncs.workbook.model.rows import Rows
from sheetfuncs.workbook.model.systems import Units
from sheetfuncs.workbook.sheets import batch_lots, packing, tasting
from sheetfuncs.workbook.sheets.phrases import NOTE, judged, look, numbers, of_row, when
from sheetfuncs.workbook.sheets.readings import FROM, spread, was_read, water_of
from sheetfuncs.workbook.sheets.verdict import findings, fits_words, goal_words, of_batch

TOP = 4  # the first batch
COLOURS = ("Golden", "Amber", "Dark", "Very Dark")
FAT = ("no", "butter or cream", "oil")


def sheet(units: Units, rows: Rows) -> Sheet:
    """The batches; below them what could be planned, two side by side, and the blind tasting."""
    table = _table(units, rows)
    below = TOP + rows.batches + 1
    plan = packing.plan(units, rows, below)
    side = tasting.side(units, rows, below + rows.batches + 3)
    return Sheet(
        "Batches",
        "A line for each finishing pot. What goes in stays blank for all that is part-boiled, or names boils: B1, B2.",
        (
            table,
            plan,
            side,
            tasting.blind(units, rows, below + rows.batches + 3 + len(side.fields) + 2),
            packing.workings(units, rows, TOP - 1, len(table.columns) + 1),
        ),
        tab="log",
        freeze=(TOP, 2),
        widths=(3.5, 11, 7, 12, 18.5),
    )


def _table(units: Units, rows: Rows) -> Table:
    target, last = "@know.target", "[last]"
    filled = 'OR(N([date])>0,[goes_in]<>"",[thermometer]<>"",COUNT([volume_typed],[off_at],[cup_shows])>0)'
    pan = cases(('TRIM([pan]&"")<>""', 'TRIM([pan]&"")'), otherwise=packing.FINISH_PAN)
    of_pan = {key: of_row(f"@pans.{key}", "@pans.name", "[pan_used]") for key in ("area", "holds", "rate")}
    water, origin = water_of('TRIM([thermometer]&"")', "[water]", "[date]")
    of_run = {key: f"INDEX(@run.{key},{last})" for key in ("reading", "meter", "water", "from")}
    hot = f"MIN([off],{CUP_TEMPERATURE.limits(units.system)[1]})"
    jar = "INDEX(@jars.size,1)"
    columns = (
        Column("number", "No.", COUNT, tuple(str(n + 1) for n in range(rows.batches)), width=3.5, numbers=True),
        Column("date", "Date", DATE, width=11.5),
        Column(
            "goes_in",
            "Goes in",
            TEXT,
            width=7,
            hint="B1, B2 or the like; blank: all that is part-boiled and in no other batch.",
        ),
        Column("thermometer", "Thermometer", TEXT, choices="@thermometers.name"),
        look(*findings(units), heading="Do", otherwise=of_batch(units), width=19),
        Column("pan", "Pan", TEXT, choices="@pans.name", hint="Blank: the finishing pan of Yard, else the first."),
        Column(
            "water",
            "It shows in boiling water that day",
            TEMPERATURE,
            called="The reading in boiling water",
            limits=units.limits(WATER_READING),
            width=12,
        ),
        Column("volume_typed", "Volume going in, if measured, cold", VOLUME, width=11),
        Column("brix_typed", "Its sugar, if measured", BRIX, limits=units.limits(STRENGTH), width=10),
        Column(
            "off_at",
            "Taken off at",
            TEMPERATURE,
            limits=units.limits(PAN_READING),
            hint="Blank: the last reading in Finish.",
        ),
        Column("cup_shows", "Hydrometer shows", BRIX, limits=units.limits(FLOATING), width=11),
        Column("cup_at", "Syrup in the cup is at", TEMPERATURE, limits=units.limits(CUP_TEMPERATURE), width=10),
        Column("pan_volume", "Volume in the pan, hot, if measured", VOLUME, width=12),
        Column("over", "Left over", VOLUME, hint="What of it stays in store."),
        Column("fat", "Fat against foam", TEXT, choices=FAT, hint="Butter and cream are milk: the label says so."),
        Column("colour", units.pick("Color by eye", "Colour by eye"), TEXT, choices=COLOURS, width=11),
        Column(
            "light", "Light through, %", COUNT, limits=units.limits(LIGHT), hint="Percent at 560 nm, if you measure it."
        ),
        Column("taste", "Taste", TEXT, width=26),
        Column("note", "Note", TEXT, width=20, hint=NOTE),
        Column(
            "volume",
            "Volume going in",
            VOLUME,
            cases(("ISNUMBER([volume_typed])", "[volume_typed]"), ("N([lots_volume])>0", "[lots_volume]")),
        ),
        Column(
            "brix",
            "Its sugar",
            BRIX,
            cases(("ISNUMBER([brix_typed])", "[brix_typed]"), ("ISNUMBER([boiled])", "[boiled]")),
            guess="guess",
        ),
        Column(
            "syrup",
            "Syrup expected, cold",
            VOLUME,
            cases(
                (numbers("volume", "brix"), f'IFERROR(SYRUP_FROM_SAP([volume],[brix],{target}),"")'),
                ("COUNT([volume_typed],[brix_typed])=0", "[lots_syrup]"),
            ),
            guess="guess",
        ),
        Column("jars", "Jars to have hot", COUNT, when("ISNUMBER([syrup])", f"JAR_COUNT([syrup],{jar},UNITS)+1")),
        Column(
            "jars_day",
            "Jars for all of that day",
            COUNT,
            when(numbers("syrup", "date"), f"JAR_COUNT(SUMIFS(@batches.syrup,@batches.date,[date]),{jar},UNITS)+1"),
            width=10,
        ),
        Column(
            "depth_start",
            "Depth at the start",
            LENGTH,
            when("ISNUMBER([volume])", f"PAN_DEPTH([volume],{of_pan['area']},UNITS)"),
        ),
        Column(
            "depth_end",
            "Depth when it is syrup",
            LENGTH,
            when("ISNUMBER([syrup])", f"PAN_DEPTH([syrup],{of_pan['area']},UNITS)"),
        ),
        Column("fits", "The pan", TEXT, fits_words(units), width=24),
        Column("water_used", "Boiling water, taken as", TEMPERATURE, f'IF([planned]="","",{water})'),
        Column(
            "water_from",
            "That is from",
            TEXT,
            cases(*((f'[from]="{one}"', f'"{words}"') for one, words in FROM.items())),
            width=22,
        ),
        Column(
            "goal",
            "Syrup at",
            TEMPERATURE,
            when(was_read("[from]"), f"ROUND(FINISH_READING({target},[water_used],UNITS),1)"),
        ),
        Column(
            "off_brix",
            "°Brix by the thermometer",
            BRIX,
            when(numbers("off", "off_water"), "BRIX_BY_BOIL([off],[off_water],UNITS)"),
            width=12,
        ),
        Column(
            "true",
            "°Brix by the cup",
            BRIX,
            when(numbers("cup_shows", "cup_at"), "BRIX_BY_HYDROMETER([cup_shows],[cup_at],UNITS)"),
        ),
        Column("strength", "°Brix taken as", BRIX, "IF(ISNUMBER([true]),[true],[off_brix])"),
        Column(
            "error",
            "Give or take",
            BRIX,
            cases(("ISNUMBER([true])", "@know.hydrometer_error"), ("ISNUMBER([off_spread])", "[off_spread]")),
        ),
        Column("state", "It is", TEXT, when("ISNUMBER([strength])", "SYRUP_STATE([strength])"), width=10),
        Column("cold", "Volume once cold", VOLUME, "IF(ISNUMBER([measured]),[measured],[expected])"),
        Column(
            "fix",
            "Water to stir in (+) or boil off (-)",
            SMALL,
            when(numbers("cold", "strength"), f"SYRUP_ADJUST([cold],[strength],{target},UNITS)"),
            width=12,
        ),
        Column(
            "offset",
            "Thermometer over the cup",
            DIFFERENCE,
            when(numbers("true", "off", "off_water"), "[off]-FINISH_READING([true],[off_water],UNITS)"),
            width=12,
        ),
        Column(
            "code",
            "Code for a blind tasting",
            COUNT,
            tuple(f'IF(ISNUMBER([strength]),{tasting.code(n + 1)},"")' for n in range(rows.batches)),
            width=10,
        ),
        *batch_lots.hidden(),
        *(
            Column(key, words, kind, formula, hidden=True)
            for key, words, kind, formula in (
                ("planned", "Number, where filled", COUNT, f'IF({filled},[number],"")'),
                ("pan_used", "Pan, as counted", TEXT, pan),
                ("holds", "The pan holds", VOLUME, f'IFERROR(IF({of_pan["holds"]}>0,{of_pan["holds"]},""),"")'),
                # the yard's own rate, by the share that this pan would have of its largest
                (
                    "rate",
                    "Boils off, an hour",
                    RATE,
                    f'IFERROR(@yard.rate*{of_pan["rate"]}/MAX(@pans.rate),IF(ISNUMBER(@yard.rate),@yard.rate,""))',
                ),
                ("from", "Where its water is from", TEXT, f'IF([planned]="","",{origin})'),
                (
                    "by_air",
                    "Syrup at, by the air",
                    TEMPERATURE,
                    when(
                        f"AND(ISNUMBER([water_used]),NOT({was_read('[from]')}))",
                        f"FINISH_READING({target},[water_used],UNITS)",
                    ),
                ),
                ("goal_words", "Goal, in words", TEXT, goal_words(units)),
                ("last", "Its last reading's row", COUNT, "MAXIFS(@run.at,@run.no,[number])"),
                (
                    "off",
                    "Off, as counted",
                    TEMPERATURE,
                    cases(("ISNUMBER([off_at])", "[off_at]"), (f"{last}>0", of_run["reading"])),
                ),
                ("meter", "On this thermometer", TEXT, f'IF({last}>0,{of_run["meter"]},TRIM([thermometer]&""))'),
                ("off_water", "In boiling water", TEMPERATURE, f"IF({last}>0,{of_run['water']},[water_used])"),
                ("off_from", "Where that is from", TEXT, f"IF({last}>0,{of_run['from']},[from])"),
                (
                    "off_spread",
                    "°Brix, give or take",
                    BRIX,
                    when("ISNUMBER([off_brix])", spread("[off]", "[off_water]", "[meter]", "[off_from]", units)),
                ),
                (
                    "expected",
                    "Cold, as expected",
                    VOLUME,
                    when(
                        f"AND({numbers('syrup', 'strength')},N([strength])>0)",
                        f"SYRUP_FROM_SAP([syrup],{target},[strength])",
                    ),
                ),
                (
                    "measured",
                    "Cold, as measured",
                    VOLUME,
                    when(
                        numbers("pan_volume", "strength"),
                        f"SYRUP_COLD([pan_volume],[strength],IF(ISNUMBER([cup_at]),[cup_at],{hot}),UNITS)",
                    ),
                ),
            )
        ),
    )
    return Table("batches", "", judged(columns, units), rows.batches, lines=3)
