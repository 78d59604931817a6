"""Bottles: a row each time jars of one size are filled."""

from __future__ import annotations

from sheetfuncs.formulas.syrup import LIGHT
from sheetfuncs.formulas.vocabulary import CUP_TEMPERATURE, STRENGTH
from sheetfuncs.workbook.model.parts import (
    BRIX,
    COUNT,
    DATE,
    MASS,
    SHARE,
    TEMPERATURE,
    TEXT,
    VOLUME,
    Column,
    Rows,
    Sheet,
    Table,
    Units,
)
from sheetfuncs.workbook.sheets.phrases import ask, look, not_a_date, not_a_number, numbers, of_row, outside, when


def sheet(units: Units, rows: Rows) -> Sheet:
    """The bottling log: cold volume, against expected, grade, label and keep-until."""
    size = of_row("@jars.size", "@jars.name", "[jar]")
    expected = "CHOOSE([batch]," + ",".join(f"@batch{n}.syrup" for n in range(1, rows.batches + 1)) + ")"
    columns = (
        Column("batch", "Batch", COUNT, choices=tuple(str(n + 1) for n in range(rows.batches))),
        Column("date", "Date", DATE),
        Column("volume", f"Syrup, hot, {units.volume}", VOLUME),
        Column("at", f"It is at, {units.temperature}", TEMPERATURE, limits=units.limits(CUP_TEMPERATURE)),
        Column("brix", "True °Brix", BRIX, limits=units.limits(STRENGTH), hint="From the cup: Finish works it out."),
        Column("jar", "Jar", TEXT, choices="@jars.name"),
        Column("filled", "Jars filled", COUNT, limits=(0, 100000)),
        Column(
            "light", "Light through, %", COUNT, limits=units.limits(LIGHT), hint="Percent at 560 nm, if you measure it."
        ),
        Column("taste", "Taste, note", TEXT, width=26),
        Column(
            "cold",
            f"Syrup, cold, {units.volume}",
            VOLUME,
            when(numbers("volume", "brix"), "IF(ISNUMBER([at]),SYRUP_COLD([volume],[brix],[at],UNITS),[volume])"),
        ),
        Column("sugar", f"Sugar, {units.mass}", MASS, when(numbers("cold", "brix"), "SAP_SUGAR([cold],[brix],UNITS)")),
        Column(
            "in_jars",
            f"In jars, {units.volume}",
            VOLUME,
            when(numbers("filled"), f"[filled]*{size}/{units.small_in_volume}"),
        ),
        Column(
            "jars_due", "Jars it should fill", COUNT, when("ISNUMBER([volume])", f"JAR_COUNT([volume],{size},UNITS)")
        ),
        Column(
            "against",
            "Batch so far, of expected",
            SHARE,
            when(numbers("batch", "cold"), f"SUMIFS([cold^],[batch^],[batch])/{expected}"),
        ),
        Column("grade", "Colour", TEXT, when(numbers("light"), "SYRUP_GRADE([light])"), width=11),
        Column(
            "label",
            "Lot label",
            TEXT,
            'IF(COUNT([batch],[date])=2,YEAR([date])&"-"&[batch]&"-"&COUNTIF([batch^],[batch]),"")',
            width=11,
        ),
        Column("until", "Keeps until", DATE, 'IF(ISNUMBER([date]),DATE(YEAR([date])+1,MONTH([date]),DAY([date])),"")'),
        look(
            not_a_date("date"),
            not_a_number("volume", "Volume"),
            not_a_number("brix", "Sugar"),
            not_a_number("filled", "Jars filled"),
            outside("brix", units.limits(STRENGTH), "°Brix"),
            ask('AND(ISNUMBER([volume]),[brix]="")', "No °Brix: its sugar is not counted."),
            ask(
                "AND(ISNUMBER([brix]),[brix]<66)",
                "Thin: it can ferment or mould. Boil it again, or keep it cold and use it first.",
            ),
            ask("N([brix])>68.9", "Thick: it will crystallise. Stir in a little hot water."),
            ask(
                f"AND(ISNUMBER([at]),[at]<{units.pick(180, 82)})",
                f"Under {units.pick('180 °F', '82 °C')}: too cool to seal safely.",
            ),
            ask(
                f"AND(ISNUMBER([at]),[at]>{units.pick(200, 93)})",
                f"Over {units.pick('200 °F', '93 °C')}: new sugar sand clouds it.",
            ),
            ask(
                "AND(ISNUMBER([filled]),ISNUMBER([jars_due]),N([filled])>N([jars_due])+1)",
                "More jars than the volume fills.",
            ),
            ask("AND(ISNUMBER([against]),N([against])>1.1)", "Over a tenth more than the batch held: check its lots."),
        ),
    )
    return Sheet(
        "Bottles",
        "A row each time you fill jars of one size. Hot pack at 180 to 190 °F (82 to 88 °C), into warm glass.",
        (Table("bottles", "", columns, rows.bottlings),),
        freeze=(4, 1),
    )
