"""Collection: a row each time sap is brought in."""

from __future__ import annotations

from sheetfuncs.formulas.finish import PRISM
from sheetfuncs.formulas.vocabulary import ICE_BRIX, ICE_SHARE, STRENGTH
from sheetfuncs.workbook.model.parts import (
    BRIX,
    COUNT,
    DATE,
    MASS,
    RATIO,
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
from sheetfuncs.workbook.sheets.phrases import (
    ask,
    look,
    mend,
    not_a_date,
    not_a_number,
    numbers,
    of_row,
    outside,
    tell,
    when,
)


def sheet(units: Units, rows: Rows) -> Sheet:
    """The collection log."""
    holds = of_row("@containers.holds", "@containers.name", "[container]")
    columns = (
        Column("date", "Date", DATE),
        Column("from_tree", "From", TEXT, choices="@trees.name", hint="A tree, or leave blank for all."),
        Column("sap", f"Sap kept, {units.volume}", VOLUME, hint="The liquid, without the ice you threw out."),
        Column(
            "brix",
            "Sugar as read, °Brix",
            BRIX,
            limits=units.limits(STRENGTH),
            hint="Of the liquid you kept; stir before you read.",
        ),
        Column(
            "warmth",
            f"Refracto-meter at, {units.temperature}",
            TEMPERATURE,
            limits=units.limits(PRISM),
            hint="Only if it does not correct for temperature itself.",
        ),
        Column(
            "ice",
            "Ice thrown out, share",
            SHARE,
            limits=units.limits(ICE_SHARE),
            hint="25% for a quarter of all there was.",
        ),
        Column(
            "ice_brix",
            "Sugar in the ice, °Brix",
            BRIX,
            limits=units.limits(ICE_BRIX),
            hint="Melt a little and read it; often 0.2 to 1.",
        ),
        Column("container", "Into container", TEXT, choices="@containers.name"),
        Column("note", "Note", TEXT, width=22),
        Column(
            "true",
            "Sugar, true °Brix",
            BRIX,
            when(
                numbers("sap", "brix"),
                'IF(AND(ISNUMBER([warmth]),@yard.atc="no"),BRIX_BY_REFRACTOMETER([brix],[warmth],UNITS),[brix])',
            ),
        ),
        Column("sugar", f"Sugar, {units.mass}", MASS, when("ISNUMBER([true])", "SAP_SUGAR([sap],[true],UNITS)")),
        Column(
            "syrup",
            f"Syrup in it, {units.volume}",
            VOLUME,
            when("ISNUMBER([true])", "SYRUP_FROM_SAP([sap],[true],@yard.target)"),
        ),
        Column("ratio", "Sap for one of syrup", RATIO, when("ISNUMBER([true])", "SAP_PER_SYRUP([true],@yard.target)")),
        Column("sap_sum", f"Sap so far, {units.volume}", VOLUME, 'IF(ISNUMBER([sap]),SUM([sap^]),"")'),
        Column("syrup_sum", f"Syrup so far, {units.volume}", VOLUME, 'IF(ISNUMBER([syrup]),SUM([syrup^]),"")'),
        Column(
            "per_tap",
            f"Sap per tap, {units.volume}",
            VOLUME,
            when("AND(ISNUMBER([sap]),@yard.taps>0)", "[sap]/@yard.taps"),
        ),
        Column(
            "ice_sugar",
            f"Sugar thrown out with the ice, {units.mass}",
            MASS,
            when(
                "AND(ISNUMBER([sugar]),N([ice])>0,N([ice_brix])>0)",
                "[sugar]*[ice]*[ice_brix]/((1-[ice])*[true])",
            ),
        ),
        look(
            not_a_date("date"),
            not_a_number("sap", "Sap"),
            not_a_number("brix", "Sugar"),
            not_a_number("warmth", "The refractometer's temperature"),
            not_a_number("ice", "The share of ice"),
            mend('AND([date]="",COUNT([sap],[brix])>0)', "When was it collected?"),
            mend("N([sap])<0", "Sap is less than nothing: is the sign right?"),
            outside("brix", units.limits(STRENGTH), "°Brix"),
            ask('AND(ISNUMBER([sap]),[brix]="")', "No °Brix: this sap is counted without its sugar."),
            mend('AND([brix]<>"",[sap]="")', "How much was it?"),
            ask("N([brix])>10", "Sugar over 10 °Brix: is this sap?"),
            ask("AND(ISNUMBER([brix]),[brix]<0.5)", "Hardly any sugar: rain in the pails, or ice melted in?"),
            ask("AND(ISNUMBER([date]),[date]>@weekend.today)", "This day is still to come."),
            ask("AND(ISNUMBER([date]),ISNUMBER([date-1]),N([date])<N([date-1]))", "Earlier than the row above."),
            ask(
                f'IFERROR(AND([container]<>"",{holds}>0,N([sap])>{holds}*1.001),FALSE)',
                "More than this container holds.",
            ),
            ask('AND(@yard.atc="no",ISNUMBER([brix]),[warmth]="")', "No temperature: the reading is not corrected."),
            mend('AND(ISNUMBER([brix]),[true]="")', "The refractometer is too cold or too warm to correct."),
            tell("N([ice])>0.5", "Over half thrown out as ice: much sugar went with it. Let some melt."),
            tell('AND(N([ice])>0,[ice_brix]="")', "Sugar in the ice is not known: taken as none."),
        ),
        Column(
            "new_day",
            "A day it ran",
            COUNT,
            "IF(AND(ISNUMBER([date]),N([sap])>0),IF(ISNUMBER([date-1]),IF(N([date-1])=[date],0,1),1),0)",
            hidden=True,
        ),
    )
    return Sheet(
        "Collection",
        "A row each time you bring sap in. Type in the tinted cells; a sentence under Look asks you to check a row.",
        (Table("collection", "", columns, rows.collections),),
        freeze=(4, 1),
    )
