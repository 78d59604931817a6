"""Storage: a row for each lot of sap or part-boiled sap that waits."""

from __future__ import annotations

from sheetfuncs.formulas.sap import KEPT_AT
from sheetfuncs.formulas.vocabulary import STRENGTH
from sheetfuncs.workbook.model.parts import (
    BRIX,
    COUNT,
    DATE,
    DAYS,
    MASS,
    TEMPERATURE,
    TEXT,
    VOLUME,
    Column,
    Rows,
    Sheet,
    Table,
    Units,
)
from sheetfuncs.workbook.sheets.phrases import ask, look, mend, not_a_date, not_a_number, numbers, of_row, outside, when

BOIL_LOTS = ("lot_a", "lot_b", "lot_c", "lot_d")  # where a boil names the lots that went in
SAP_BELOW = 20  # °Brix: below it a lot is boiled down before it is finished


def sheet(units: Units, rows: Rows) -> Sheet:
    """The lots in store: what each is worth, how long it keeps, and where it should go."""
    boiled = "+".join(f"COUNTIF(@boil.{lot},[lot])" for lot in BOIL_LOTS)
    container_is_known = 'COUNTIFS(@containers.name,[container],@containers.kept,"<>")>0'
    kept_in = of_row("@containers.kept", "@containers.name", "[container]")
    holds = of_row("@containers.holds", "@containers.name", "[container]")
    clock = "MAX(N([put]),N([heated]))"
    columns = (
        Column("lot", "Lot", TEXT, hint="A short name, written on the jar too.", width=10),
        Column("what", "What it is", TEXT, choices=("sap", "part-boiled", "syrup to finish")),
        Column("put", "Put in on", DATE),
        Column("container", "Container", TEXT, choices="@containers.name"),
        Column("volume", f"Volume, cold, {units.volume}", VOLUME),
        Column("brix", "Sugar, °Brix", BRIX, limits=units.limits(STRENGTH)),
        Column(
            "kept",
            f"Kept at, {units.temperature}",
            TEMPERATURE,
            limits=units.limits(KEPT_AT),
            hint="Leave blank to take the container's.",
        ),
        Column(
            "heated", "Back to a boil on", DATE, hint=f"{units.pick('180 °F', '82 °C')} or more starts its clock again."
        ),
        Column("meant", "For batch", COUNT, choices=tuple(str(n + 1) for n in range(rows.batches))),
        Column("used", "Used on", DATE, hint="The day it went into a boil or a batch."),
        Column("suggested", "Suggested batch", TEXT, _suggestion(), width=11),
        Column(
            "age",
            "Age, days",
            DAYS,
            f'IF(AND([open]=1,{clock}>0),@weekend.today-{clock},"")',
        ),
        Column("keeps", "Keeps, days", DAYS, when("[open]=1", "SAP_KEEPS([brix],[kept_at],UNITS)")),
        Column("left", "Days left", DAYS, 'IF(COUNT([age],[keeps])=2,[keeps]-[age],"")'),
        Column("by", "Boil by", DATE, f'IF(ISNUMBER([left]),{clock}+INT([keeps]),"")'),
        Column(
            "first",
            "Boil first, order",
            COUNT,
            'IF(ISNUMBER([left]),RANK([left],@storage.left,1)+COUNTIF([left^],[left])-1,"")',
        ),
        Column(
            "sugar", f"Sugar, {units.mass}", MASS, when(numbers("volume", "brix"), "SAP_SUGAR([volume],[brix],UNITS)")
        ),
        Column(
            "syrup",
            f"Syrup in it, {units.volume}",
            VOLUME,
            when(numbers("volume", "brix"), "SYRUP_FROM_SAP([volume],[brix],@yard.target)"),
        ),
        look(
            not_a_date("put"),
            not_a_date("used"),
            not_a_date("heated"),
            not_a_number("volume", "Volume"),
            not_a_number("brix", "Sugar"),
            mend('AND([lot]="",ISNUMBER([volume]))', "Give this lot a name."),
            mend('AND([lot]<>"",COUNTIF(@storage.lot,[lot])>1)', "Two lots have this name."),
            mend("N([volume])<0", "Volume is less than nothing: is the sign right?"),
            outside("brix", units.limits(STRENGTH), "°Brix"),
            ask('AND(ISNUMBER([volume]),[brix]="")', "No °Brix: its sugar is not counted."),
            mend('AND([lot]<>"",[boils]>1)', "This lot went into two boils."),
            mend('AND([lot]<>"",ISNUMBER([meant]),[boils]>0)', "In a boil and in a batch: it can only be used once."),
            mend("AND(ISNUMBER([used]),ISNUMBER([put]),N([used])<N([put]))", "Used before it was put in."),
            ask('AND([lot]<>"",[used]="",[boils]>0)', "It went into a boil: write the day under Used on."),
            ask(
                'AND(ISNUMBER([meant]),[used]="",COUNTIF(@bottles.batch,[meant])>0)',
                "Its batch is bottled: write the day under Used on.",
            ),
            ask(
                'AND([lot]<>"",ISNUMBER([used]),[meant]="",[boils]=0)',
                "Used, but no boil names it and it has no batch.",
            ),
            ask(
                f'IFERROR(AND([open]=1,[container]<>"",{holds}>0,'
                f"SUMIFS(@storage.volume,@storage.container,[container],@storage.open,1)>{holds}*1.001),FALSE)",
                "This container holds more than it can.",
            ),
            ask(f'AND([what]="sap",N([brix])>{SAP_BELOW})', "So much sugar: is this part-boiled?"),
            ask("AND(ISNUMBER([left]),N([left])<0)", "Past its time: smell and look; throw it out if it is off."),
            ask("AND(ISNUMBER([left]),N([left])<1)", "Boil it today, or bring it back to a boil."),
        ),
        Column("boils", "Boils that name it", COUNT, f'IF([lot]="",0,{boiled})', hidden=True),
        Column("open", "In store", COUNT, 'IF(AND(ISNUMBER([volume]),[used]=""),1,0)', hidden=True),
        Column(
            "kept_at",
            "Kept at, found",
            TEMPERATURE,
            f"IF(ISNUMBER([kept]),[kept],IF({container_is_known},{kept_in},@yard.store))",
            hidden=True,
        ),
        *_packing(),
    )
    return Sheet(
        "Storage",
        "A row for each lot that waits: a container of sap, or a jar of part-boiled sap. When it is used, say when.",
        (Table("storage", "", columns, rows.lots),),
        freeze=(4, 1),
    )


def _packing() -> list[Column]:
    """Hidden columns that fill the finishing pan with waiting lots, oldest first, early and late sap apart.

    Each chain goes down the rows and opens the next batch when a lot would not fit any more.
    """
    pan = "IFERROR(INDEX(@pans.holds,MATCH(@yard.finish_pan,@pans.name,0))+0,1000000)"
    late = "AND(ISNUMBER(@yard.split),N([put])>=N(@yard.split))"
    waits = f'AND([open]=1,[meant]="",N([brix])>={SAP_BELOW})'
    columns = [Column("chain", "Early 1, late 2", COUNT, f"IF({waits},IF({late},2,1),0)", hidden=True)]
    for number, name in ((1, "early"), (2, "late")):
        full = f"N([{name}_load-1])+[volume]>{pan}"
        load = f"IF([chain]={number},IF({full},[volume],N([{name}_load-1])+[volume]),N([{name}_load-1]))"
        batch = f"IF([chain]={number},N([{name}_batch-1])+IF(OR(N([{name}_batch-1])=0,{full}),1,0),N([{name}_batch-1]))"
        columns.append(Column(f"{name}_load", f"{name} load", VOLUME, load, hidden=True))
        columns.append(Column(f"{name}_batch", f"{name} batch", COUNT, batch, hidden=True))
    return columns


def _suggestion() -> str:
    """The next free batch for part-boiled lots that have none; raw sap is boiled down first."""
    taken = "MAX(0,@storage.meant)"
    return (
        f"IF([chain]=1,{taken}+[early_batch],IF([chain]=2,{taken}+MAX(@storage.early_batch)+[late_batch],"
        f'IF(AND([open]=1,[meant]="",ISNUMBER([brix])),"boil down","")))'
    )
