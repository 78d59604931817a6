"""The small log of Storage: what happened to a lot besides being boiled."""

from __future__ import annotations

from sheetfuncs.workbook.model.formula import NOTHING, cases
from sheetfuncs.workbook.model.kinds import BRIX, COUNT, DATE, MASS, TEMPERATURE, TEXT, VOLUME
from sheetfuncs.workbook.model.parts import Column, Table
from sheetfuncs.workbook.model.rows import Rows
from sheetfuncs.workbook.model.systems import Units
from sheetfuncs.workbook.sheets.naming import cleaned
from sheetfuncs.workbook.sheets.phrases import ask, judged, look, mend, of_row, tell, when

AGAIN, FROZEN, MOVED, SOME, OUT = "boiled up again", "frozen", "moved", "some used", "thrown out"


def was_taken(name: str) -> str:
    """The volume that the log takes from a lot."""
    return f"SUMIFS(@happenings.gone,@happenings.key,{name})"


def thrown_out(name: str) -> str:
    """Whether the log says that all of a lot was thrown out."""
    return f"COUNTIFS(@happenings.key,{name},@happenings.all,1)>0"


def table(units: Units, rows: Rows) -> Table:
    """The log; what it says of a lot counts up to the day when the lot was used."""
    counts = "[counts]=1"
    amount = "COUNT([jars],[volume])>0"
    columns = (
        Column("lot", "Lot", TEXT, width=7, hint="One lot: S3, B1, R2 or K1, as Waiting names it."),
        Column("what", "What", TEXT, choices=(AGAIN, FROZEN, MOVED, SOME, OUT), width=12),
        Column("date", "Date", DATE, width=11),
        look(
            mend('AND([lot]="",OR([what]<>"",COUNT([date],[jars],[volume])>0))', "Which lot? Waiting names them.", "lot"),
            mend('AND([lot]<>"",[what]="")', "What happened to it?", "what"),
            mend('AND([lot]<>"",[date]="")', "When was it?", "date"),
            mend("[known]=0", 'There is no lot "{lot}": name one, as Waiting does.', "lot", lot="[lot]"),
            mend("AND([known]=1,[counts]=0)", "{lot} was used before: this changes nothing.", "date", lot="UPPER([key])"),
            ask("AND(ISNUMBER([date]),N([date])>@weekend.today)", "This day is still to come.", "date"),
            mend(f'AND(TRIM([what])="{SOME}",[lot]<>"",NOT({amount}))', "How much was used: jars or volume?", "volume"),
            mend('AND(N([jars])>0,N([volume])=0,[size]="")', "So many jars of what size? Type the volume.", "jars"),
            mend('AND(ISNUMBER([gone]),N([there])>0,N([all_gone])>N([there])*1.001)', "More than there was of {lot}.", "volume",
                 lot="UPPER([key])"),
            mend(f'AND(TRIM([what])="{MOVED}",[lot]<>"",[where]="")', "Where to? Name a place of Yard.", "where"),
            ask('AND([where]<>"",[temperature]="")', "Yard has no place of this name: it counts as kept where it was.", "where"),
            tell(f'AND(OR(TRIM([what])="{FROZEN}",TRIM([what])="{MOVED}",TRIM([what])="{AGAIN}"),{amount})',
                 "It counts for the whole lot: leave jars and volume blank.", "volume"),
            width=21,
        ),
        Column("where", "Where to", TEXT, choices="@places.name", width=11, hint="For what was moved or frozen."),
        Column("jars", "Jars", COUNT, limits=(0, 10000), hint="How many, where not all of it: some used, thrown out."),
        Column("volume", "Or volume", VOLUME, called="The volume", hint="How much, where not all of it: some used, thrown out."),
        Column("key", "Lot, cleaned", TEXT, f'IF([lot]="","",{cleaned("[lot]")})', hidden=True),
        Column("known", "Is a lot", COUNT,
               'IF([key]="","",IF(COUNTIF(@collection.name,[key])+COUNTIF(@boil.name,[key])+COUNTIF(@boil.over_name,[key])'
               '+COUNTIFS(@batches.number,MID([key],2,9),@batches.over,">0")*(LEFT([key],1)="k")>0,1,0))', hidden=True),
        Column("used", "Used on", COUNT,
               'IF([known]=1,SUMIFS(@collection.used_on,@collection.name,[key])+SUMIFS(@boil.used_on,@boil.name,[key]),"")',
               hidden=True),
        Column("counts", "Counts", COUNT,
               cases(('[key]=""', NOTHING), ('OR([known]<>1,[what]="")', "0"),
                     ("AND(N([used])>0,ISNUMBER([date]),N([date])>N([used]))", "0"), otherwise="1"), hidden=True),
        Column("size", "A jar holds", VOLUME,
               'IF([key]="","",IF(SUMIFS(@boil.jar_size,@boil.name,[key])>0,SUMIFS(@boil.jar_size,@boil.name,[key]),""))',
               hidden=True),
        Column("asked", "Taken, as typed", VOLUME,
               cases(("N([volume])>0", "[volume]"), ("AND(N([jars])>0,ISNUMBER([size]))", "[jars]*[size]")), hidden=True),
        Column("gone", "Taken", VOLUME,
               f'IF(AND({counts},OR(TRIM([what])="{SOME}",TRIM([what])="{OUT}"),ISNUMBER([asked])),[asked],"")', hidden=True),
        Column("all", "All of it", COUNT, f'IF(AND({counts},TRIM([what])="{OUT}",NOT({amount})),1,"")', hidden=True),
        Column("again", "Boiled up again on", DATE, f'IF(AND({counts},TRIM([what])="{AGAIN}",ISNUMBER([date])),[date],"")',
               hidden=True),
        Column("temperature", "Kept at, from then", TEMPERATURE,
               cases(('[where]<>""', f'IFERROR({of_row("@places.kept_at", "@places.name", "TRIM([where])")}+0,"")'),
                     (f'TRIM([what])="{FROZEN}"', str(units.pick(0, -18)))), hidden=True),
        Column("moves", "Kept elsewhere", COUNT,
               tuple(f'IF(AND({counts},OR(TRIM([what])="{FROZEN}",TRIM([what])="{MOVED}"),ISNUMBER([temperature])),{row},"")'
                     for row in range(1, rows.happenings + 1)), hidden=True),
        Column("there", "There was of it", VOLUME,
               'IF([known]=1,SUMIFS(@collection.volume,@collection.name,[key])+SUMIFS(@boil.out_volume,@boil.name,[key])'
               '+SUMIFS(@boil.over,@boil.over_name,[key])+SUMIFS(@lots.volume,@lots.name,[key],@lots.name,"K*"),"")',
               hidden=True),
        Column("all_gone", "Taken of it, so far", VOLUME, 'IF([known]=1,SUMIFS([gone^],[key^],[key]),"")', hidden=True),
        Column("sugar", "Sugar that left with it", MASS,
               when("AND(N([out])>0,N([strength])>0)", "SAP_SUGAR([out],[strength],UNITS)"), hidden=True),
        Column("out", "Volume that left", VOLUME,
               cases(("ISNUMBER([gone])", "MIN([gone],IF(N([there])>0,[there],[gone]))"),
                     ("[all]=1", "MAX(0,N([there])-SUMIFS(@happenings.gone,@happenings.key,[key]))")), hidden=True),
        Column("strength", "Its strength", BRIX,
               'IF([known]=1,SUMIFS(@collection.true,@collection.name,[key])+SUMIFS(@boil.brix_out,@boil.name,[key])'
               '+SUMIFS(@boil.brix_in,@boil.over_name,[key]),"")', hidden=True),
    )  # fmt: skip
    return Table("happenings", "What happened to a lot besides", judged(columns, units), rows.happenings, lines=2)
