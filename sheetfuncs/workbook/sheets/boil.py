"""Boil: a row for each time the pan was on."""

from __future__ import annotations

from sheetfuncs.formulas.finish import PAN_READING
from sheetfuncs.formulas.vocabulary import CUP_TEMPERATURE, STRENGTH, WATER_READING
from sheetfuncs.workbook.model.parts import (
    BRIX,
    DATE,
    FUEL,
    HOURS,
    MASS,
    SHARE,
    TEMPERATURE,
    TEXT,
    TIME,
    VOLUME,
    Column,
    Rows,
    Sheet,
    Table,
    Units,
)
from sheetfuncs.workbook.sheets.phrases import ask, look, mend, not_a_date, not_a_number, numbers, of_row, outside, when
from sheetfuncs.workbook.sheets.storage import BOIL_LOTS


def sheet(units: Units, rows: Rows) -> Sheet:
    """The boil log: water off, rate, strength by volume and by reading, sugar in and out."""

    def of_lots(column: str) -> str:
        found = [f'IF([{lot}]="",0,SUMIFS(@storage.{column},@storage.lot,[{lot}]))' for lot in BOIL_LOTS]
        return "+".join(found)

    named = "+".join(f'IF([{lot}]="",0,IF(COUNTIF(@storage.lot,[{lot}])=1,0,1))' for lot in BOIL_LOTS)
    twice = "+".join(f'IF([{lot}]="",0,COUNTIF([{BOIL_LOTS[0]}]:[{BOIL_LOTS[-1]}],[{lot}])-1)' for lot in BOIL_LOTS)
    area = "IFERROR(" + of_row("@pans.area", "@pans.name", "[pan]") + "+0,0)"
    columns = (
        Column("date", "Date", DATE),
        *(
            Column(lot, f"Lot in, {number}", TEXT, choices="@storage.lot", width=7)
            for number, lot in enumerate(BOIL_LOTS, 1)
        ),
        Column("sap", f"Fresh sap added, {units.volume}", VOLUME, hint="Sap that was not a lot in Storage."),
        Column("sap_brix", "Its sugar, °Brix", BRIX, limits=units.limits(STRENGTH)),
        Column("pan", "Pan", TEXT, choices="@pans.name", width=12),
        Column("start", "Start", TIME),
        Column("end", "End", TIME),
        Column(
            "water",
            f"Water boils at, read, {units.temperature}",
            TEMPERATURE,
            limits=units.limits(WATER_READING),
            hint="This thermometer in boiling water, today.",
        ),
        Column(
            "reading",
            f"Boiling reading at the end, {units.temperature}",
            TEMPERATURE,
            limits=units.limits(PAN_READING),
        ),
        Column("left", f"Volume at the end, {units.volume}", VOLUME),
        Column(
            "left_at",
            f"Measured at, {units.temperature}",
            TEMPERATURE,
            limits=units.limits(CUP_TEMPERATURE),
            hint="Leave blank if it had cooled.",
        ),
        Column("left_brix", "Its sugar, if read, °Brix", BRIX, limits=units.limits(STRENGTH)),
        Column("fuel", "Fuel used", FUEL, hint="In the unit that Yard names."),
        Column("volume_in", f"Volume in, {units.volume}", VOLUME, _some(of_lots("volume") + "+N([sap])")),
        Column(
            "syrup_in",
            f"Syrup in it, {units.volume}",
            VOLUME,
            _some(of_lots("syrup") + "+IF(COUNT([sap],[sap_brix])=2,SYRUP_FROM_SAP([sap],[sap_brix],@yard.target),0)"),
        ),
        Column(
            "sugar_in",
            f"Sugar in, {units.mass}",
            MASS,
            when("ISNUMBER([syrup_in])", "SAP_SUGAR([syrup_in],@yard.target,UNITS)"),
        ),
        Column(
            "brix_in",
            "Sugar in, °Brix",
            BRIX,
            when(numbers("syrup_in", "volume_in"), "BOIL_BRIX([syrup_in],@yard.target,[volume_in])"),
        ),
        Column(
            "brix_reading",
            "°Brix out, by reading",
            BRIX,
            when("ISNUMBER([reading])", "BRIX_BY_BOIL([reading],[water_used],UNITS)"),
        ),
        Column(
            "left_cold",
            f"Volume out, cold, {units.volume}",
            VOLUME,
            when(
                "ISNUMBER([left])",
                "IF(ISNUMBER([left_at]),SYRUP_COLD([left],IF(ISNUMBER([left_brix]),[left_brix],"
                "IF(ISNUMBER([brix_reading]),[brix_reading],30)),[left_at],UNITS),[left])",
            ),
        ),
        Column(
            "brix_volume",
            "°Brix out, by volume",
            BRIX,
            when(numbers("syrup_in", "left_cold"), "BOIL_BRIX([syrup_in],@yard.target,[left_cold])"),
        ),
        Column(
            "brix_out",
            "°Brix out, taken",
            BRIX,
            "IF(ISNUMBER([left_brix]),[left_brix],IF(ISNUMBER([brix_volume]),[brix_volume],[brix_reading]))",
        ),
        Column(
            "sugar_out",
            f"Sugar out, {units.mass}",
            MASS,
            when(numbers("left_cold", "brix_out"), "SAP_SUGAR([left_cold],[brix_out],UNITS)"),
        ),
        Column("lost", "Sugar lost", SHARE, when(numbers("sugar_in", "sugar_out"), "1-[sugar_out]/[sugar_in]")),
        Column(
            "water_off",
            f"Water boiled off, {units.volume}",
            VOLUME,
            when(numbers("volume_in", "brix_in", "brix_out"), "BOIL_WATER([volume_in],[brix_in],[brix_out])"),
        ),
        Column("hours", "Hours", HOURS, 'IF(AND(COUNT([start],[end])=2,N([end])>N([start])),([end]-[start])*24,"")'),
        Column("rate", f"Rate, {units.volume}/h", VOLUME, when(numbers("water_off", "hours"), "[water_off]/[hours]")),
        Column(
            "rate_area",
            f"Rate per {units.area}, {units.volume}/h",
            VOLUME,
            when("ISNUMBER([rate])", f"[rate]/{area}"),
        ),
        Column(
            "to_go",
            "Hours still to go to syrup",
            HOURS,
            when(numbers("left_cold", "brix_out", "rate"), "BOIL_HOURS([left_cold],[brix_out],@yard.target,[rate])"),
        ),
        Column(
            "fuel_each",
            f"Fuel for each {units.volume} of water",
            FUEL,
            when(numbers("fuel", "water_off"), "[fuel]/[water_off]"),
        ),
        look(
            not_a_date("date"),
            not_a_number("left", "Volume at the end"),
            not_a_number("sap", "Fresh sap"),
            not_a_number("reading", "The boiling reading"),
            mend('AND([date]="",COUNT([sap],[left])>0)', "When was it?"),
            mend(f"({named})>0", "A lot here is not in Storage, or is there twice."),
            mend(f"({twice})>0", "A lot is named twice in this row."),
            outside("sap_brix", units.limits(STRENGTH), "°Brix of the fresh sap"),
            outside("left_brix", units.limits(STRENGTH), "°Brix at the end"),
            ask('AND(ISNUMBER([sap]),[sap_brix]="")', "No °Brix for the fresh sap: its sugar is not counted."),
            mend(
                "AND(COUNT([start],[end])=2,N([end])<=N([start]))",
                "It ends before it starts: past midnight, use two rows.",
            ),
            mend(
                "AND(COUNT([reading],[water])=2,N([reading])<N([water]))",
                "It cannot boil colder than water: read both again.",
            ),
            mend(
                "AND(ISNUMBER([left]),ISNUMBER([volume_in]),N([left])>N([volume_in]))",
                "More came out than went in: is a lot missing?",
            ),
            ask("AND(ISNUMBER([lost]),N([lost])<-0.05)", "Sugar was gained: is a lot missing, or a reading wrong?"),
            ask(
                "AND(ISNUMBER([lost]),N([lost])>0.1)",
                "Over a tenth of the sugar is gone: spilled, or a reading wrong?",
            ),
            ask(
                "AND(ISNUMBER([brix_reading]),ISNUMBER([brix_volume]),ABS(N([brix_reading])-N([brix_volume]))>6)",
                "Strength by reading and by volume disagree: check both.",
            ),
            ask('AND(ISNUMBER([volume_in]),[left]="",ISNUMBER([end]))', "How much was left at the end?"),
        ),
        Column(
            "water_used",
            "Water boils at, taken",
            TEMPERATURE,
            "IF(ISNUMBER([water]),[water],@weekend.water)",
            hidden=True,
        ),
        Column(
            "timed_water", "Water off, timed", VOLUME, "IF(COUNT([water_off],[hours])=2,[water_off],0)", hidden=True
        ),
    )
    return Sheet(
        "Boil",
        "A row each time the pan is on. What is left at the end goes back to Storage as a new lot.",
        (Table("boil", "", columns, rows.boils),),
        freeze=(4, 1),
    )


def _some(total: str) -> str:
    """A total of lots, or nothing where no lot and no sap are named."""
    return f'IF(COUNTA([{BOIL_LOTS[0]}]:[{BOIL_LOTS[-1]}],[sap])=0,"",{total})'
