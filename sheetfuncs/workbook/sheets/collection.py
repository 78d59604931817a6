"""Collection: a row each time sap is brought in.  Each row is a lot of sap: S1, S2 ..."""

from __future__ import annotations

from sheetfuncs.formulas.finish import PRISM
from sheetfuncs.formulas.vocabulary import CUP_TEMPERATURE, ICE_BRIX, ICE_SHARE, STRENGTH
from sheetfuncs.workbook.model.formula import NOTHING, cases
from sheetfuncs.workbook.model.kinds import (
    BRIX,
    COUNT,
    DATE,
    MASS,
    NUMBER,
    RATIO,
    SHARE,
    TEMPERATURE,
    TEXT,
    VOLUME,
)
from sheetfuncs.workbook.model.parts import Column, Sheet, Table
from sheetfuncs.workbook.model.rows import Rows
from sheetfuncs.workbook.model.systems import Units
from sheetfuncs.workbook.sheets.happenings import thrown_out, was_taken
from sheetfuncs.workbook.sheets.naming import ALL_SAP, cleaned, literally, naming
from sheetfuncs.workbook.sheets.phrases import ask, judged, look, mend, numbers, of_row, tell, when

MOST_BOILS = 10000  # more rows than Boil can have: the rank of a boil is this less its row
GUESSED = "N(@know.sap_brix)>0"


def sheet(units: Units, rows: Rows) -> Sheet:
    """The collection log."""
    columns = (*_typed(units), *_worked_out(units), *_hidden(units, rows))
    return Sheet(
        "Collection",
        "A row each time you bring sap in. It waits in store until a row of Boil takes it.",
        (Table("collection", "", judged(columns, units), rows.collections, lines=2),),
        tab="log",
        freeze=(4, 1),
    )


def _typed(units: Units) -> tuple[Column, ...]:
    strength = units.limits(STRENGTH)
    weights = "[empty_weight],[water_weight],[full_weight]"
    holds = "N([in_place])"
    return (
        Column("date", "Date", DATE, width=11),
        Column("sap", "Sap kept", VOLUME, width=8, hint="The liquid, without the ice you threw out."),
        Column("into", "Into", TEXT, choices="@places.name", width=11, hint="Where it waits: a place of Yard."),
        look(
            mend('AND([date]="",COUNT([sap],[brix],[floats],[full_weight],[count])>0)', "When was it collected?"),
            ask("AND(ISNUMBER([date]),N([date])>@weekend.today)", "This day is still to come."),
            ask("AND(ISNUMBER([date]),N([date])<MAX([date<]))", "Earlier than a row above: is the date right?"),
            mend('AND([volume]="",ISTEXT([each]),ISNUMBER([count]))',
                 "How much one holds is not in Yard: a jar or a place of that name.", "each"),
            mend('AND([volume]="",[each]<>"",[count]="")', "How many of them were there?", "count"),
            mend('AND([volume]="",ISNUMBER([count]))', "So many of what? Name a jar or a place of Yard.", "each"),
            mend(f'AND([volume]="",[sap]="",COUNT([brix],[floats],{weights},[ice])>0)', "How much was it?", "sap"),
            mend('AND(ISNUMBER([floats]),[by_hydrometer]="")',
                 "The hydrometer cannot stand there in sap this warm: read both again."),
            mend(f'AND(COUNT({weights})=3,[by_weight]="")',
                 "These weights cannot be: empty, full of water and full of sap, to the same mark.", "full_weight"),
            ask(f"OR(COUNT({weights})=1,COUNT({weights})=2)", "Three weights tell the sugar: one is missing.",
                "full_weight"),
            mend('AND(ISNUMBER([brix]),[by_refractometer]="")',
                 "The refractometer is too cold or too warm to correct: warm it and read again.", "warmth"),
            ask('AND(@know.atc="no",ISNUMBER([brix]),[warmth]="")',
                "How warm was the refractometer? Without that the reading is not corrected.", "warmth"),
            ask("AND([guess]=0,N([true])>10)", "Over 10 °Brix: is this sap?", "brix"),
            ask("AND([guess]=0,ISNUMBER([true]),N([true])<0.5)", "Hardly any sugar: rain in the pails, or ice melted in?",
                "brix"),
            ask('AND([into]<>"",COUNTIF(@places.name,TRIM([into]))=0)',
                "Yard has no place of this name: it counts as kept in the cold store."),
            ask(f"AND({holds}>0,N([volume])>{holds}*1.001)", "More than this place holds.", "sap"),
            tell("N([ice])>0.5", "Over half thrown out as ice: much sugar went with it. Let some melt."),
            tell('AND(N([ice])>0,[ice_brix]="")', "Sugar in the ice is not known: taken as none.", "ice_brix"),
            width=21,
        ),
        Column("brix", "Sugar as read", BRIX, limits=strength, hint="By refractometer; stir before you read."),
        Column("count", "Or so many", COUNT, called="The count", limits=(0, 10000), hint="Where you count pails or jars: how many."),
        Column("each", "of these", TEXT, called="What was counted", width=11, hint="A jar or a place of Yard whose size is known."),
        Column("note", "Note", TEXT, width=22),
        Column("from_tree", "From tree", TEXT, choices="@trees.name", hint="Leave blank for all."),
        Column("warmth", "Refracto-meter at", TEMPERATURE, called="The warmth of the refractometer", limits=units.limits(PRISM),
               hint="Only if it does not correct for temperature itself."),
        Column("floats", "Hydro-meter shows", BRIX, called="What the hydrometer shows", limits=strength, hint="A sap hydrometer, in °Brix."),
        Column("floats_at", "in sap at", TEMPERATURE, called="The temperature of the sap", limits=units.limits(CUP_TEMPERATURE),
               hint="How warm the sap was when it was floated or weighed."),
        Column("empty_weight", "A jug weighs, empty", NUMBER, called="The weight of the empty jug", limits=(0, 1000000),
               hint="Any kitchen scale, any unit: the same one three times."),
        Column("water_weight", "full of water", NUMBER, called="The weight full of water", limits=(0, 1000000), hint="To a mark, with water as cold as the sap."),
        Column("full_weight", "full of sap", NUMBER, called="The weight full of sap", limits=(0, 1000000), hint="To the same mark."),
        Column("ice", "Ice thrown out", SHARE, limits=units.limits(ICE_SHARE), hint="25% for a quarter of all there was."),
        Column("ice_brix", "Sugar in the ice", BRIX, limits=units.limits(ICE_BRIX),
               hint="Melt a little and read it; often 0.2 to 1."),
    )  # fmt: skip


def _worked_out(units: Units) -> tuple[Column, ...]:
    guess = f'IF(AND(N([volume])>0,{GUESSED}),@know.sap_brix,"")'
    return (
        Column("volume", "Sap", VOLUME,
               cases(("ISNUMBER([sap])", 'IF([sap]>=0,[sap],"")'),
                     ("AND(N([count])>0,N([holds])>0)", "[count]*[holds]"))),
        Column("true", "Sugar, true", BRIX,
               cases(*((f"ISNUMBER([{key}])", f"[{key}]") for key in ("by_refractometer", "by_hydrometer", "by_weight")),
                     otherwise=guess), guess="guess"),
        Column("sugar", "Sugar in it", MASS, when(numbers("volume", "true"), "SAP_SUGAR([volume],[true],UNITS)"), guess="guess"),
        Column("syrup", "Syrup in it", VOLUME, when(numbers("volume", "true"), "SYRUP_FROM_SAP([volume],[true],@know.target)"),
               guess="guess"),
        Column("ratio", "Sap for one of syrup", RATIO, when("N([true])>0", "SAP_PER_SYRUP([true],@know.target)")),
        Column("sap_sum", "Sap so far", VOLUME, 'IF(ISNUMBER([volume]),SUM([volume^]),"")'),
        Column("syrup_sum", "Syrup so far", VOLUME, 'IF(ISNUMBER([syrup]),SUM([syrup^]),"")'),
        Column("per_tap", "Sap per tap", VOLUME, when("AND(ISNUMBER([volume]),N(@yard.taps)>0)", "[volume]/@yard.taps")),
        Column("ice_sugar", "Sugar out with the ice", MASS,
               when("AND(ISNUMBER([sugar]),N([ice])>0,N([ice])<1,N([ice_brix])>0,[guess]=0)",
                    "[sugar]*[ice]*[ice_brix]/((1-[ice])*[true])")),
    )  # fmt: skip


def _hidden(units: Units, rows: Rows) -> tuple[Column, ...]:
    count = range(1, rows.collections + 1)
    later = '@boil.date,">="&INT([date])'

    def boil_that_names(name: str) -> str:
        return f"MAXIFS(@boil.rank,{later},@boil.list,{name})"

    by_place = f'IF([place]="",0,{boil_that_names(naming("[place]"))})'
    first = f"MAX({boil_that_names(literally(ALL_SAP))},{by_place},{boil_that_names(naming('[name]'))})"
    size = f"{of_row('@jars.size', '@jars.name', 'TRIM([each])')}/{units.small_in_volume:g}"
    place = of_row("@places.holds", "@places.name", "TRIM([each])")
    return (
        Column("holds", "One holds", VOLUME, f'IF([each]="","",IFERROR({size},IFERROR({place}+0,"")))', hidden=True),
        Column("in_place", "Its place holds", VOLUME,
               f'IF([into]="","",IFERROR({of_row("@places.holds", "@places.name", "TRIM([into])")}+0,""))', hidden=True),
        Column("by_refractometer", "By refractometer", BRIX,
               cases(("NOT(AND(ISNUMBER([brix]),N([brix])>=0,N([brix])<=85))", NOTHING),
                     ('AND(ISNUMBER([warmth]),@know.atc="no")', 'IFERROR(BRIX_BY_REFRACTOMETER([brix],[warmth],UNITS),"")'),
                     otherwise="[brix]"), hidden=True),
        Column("by_hydrometer", "By hydrometer", BRIX, when("ISNUMBER([floats])", _by_hydrometer(units)), hidden=True),
        Column("by_weight", "By weight", BRIX,
               when(numbers("empty_weight", "water_weight", "full_weight"),
                    "BRIX_BY_WEIGHT([empty_weight],[water_weight],[full_weight],"
                    f"IF(ISNUMBER([floats_at]),[floats_at],{units.pick(60, 15)}),UNITS)"), hidden=True),
        Column("guess", "Sugar is a guess", COUNT,
               'IF([name]="","",IF(COUNT([by_refractometer],[by_hydrometer],[by_weight])=0,1,0))', hidden=True),
        Column("new_day", "A day it ran", COUNT,
               'IF(AND(ISNUMBER([date]),[name]<>""),IF(COUNTIFS([date<],[date],[name<],"S*")=0,1,0),"")', hidden=True),
        Column("name", "Name", TEXT, tuple(f'IF(N([volume])>0,"S{row}","")' for row in count), hidden=True, numbers=True),
        Column("place", "Its place, as lists have it", TEXT, f'IF([into]="","",{cleaned("[into]")})', hidden=True),
        Column("used_by", "Boil that took it", COUNT,
               cases(('[name]=""', NOTHING), ("NOT(ISNUMBER([date]))", "0"), ("[first]=0", "0"),
                     otherwise=f"{MOST_BOILS}-[first]"), hidden=True),
        Column("first", "Rank of the first boil that names it", COUNT,
               f'IF(AND([name]<>"",ISNUMBER([date])),{first},"")', hidden=True),
        Column("used_on", "Used on", DATE, 'IF(N([used_by])>0,INDEX(@boil.date,[used_by]),"")', hidden=True),
        Column("available", "Of it, for a boil", VOLUME,
               f'IF([name]="","",IF({thrown_out("[name]")},0,MAX(0,[volume]-{was_taken("[name]")})))', hidden=True),
        Column("syrup_left", "Syrup in that", VOLUME,
               'IF(COUNT([available],[syrup])=2,[syrup]*[available]/[volume],"")', hidden=True),
        Column("left", "Still in store", VOLUME,
               'IF([name]="","",IF(AND(ISNUMBER([used_on]),N([used_on])<=@weekend.today),0,[available]))', hidden=True),
        Column("clock", "Collected, or boiled up again, on", DATE,
               'IF(AND([name]<>"",ISNUMBER([date])),MAX([date],MAXIFS(@happenings.again,@happenings.key,[name])),"")',
               hidden=True),
    )  # fmt: skip


def _by_hydrometer(units: Units) -> str:
    """Marked for the temperature that Yard names; floating in sap as warm as that where none is typed."""
    marked = f"IF(ISNUMBER(@know.hydrometer_marked),@know.hydrometer_marked,{units.pick(60, 15.6)})"
    return f"BRIX_BY_SAP_HYDROMETER([floats],IF(ISNUMBER([floats_at]),[floats_at],{marked}),{marked},UNITS)"
