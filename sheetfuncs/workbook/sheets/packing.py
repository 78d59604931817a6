"""Which boils wait for a finishing pot, and as few pots as hold them: first fit, the largest first.

Early and late sap stay apart.  The workings are a hidden table with a line for each boil; its right
half has the same lots again, the largest first.
"""

from __future__ import annotations

from sheetfuncs.workbook.model.formula import NOTHING, cases, say
from sheetfuncs.workbook.model.kinds import COUNT, NUMBER, TEXT, VOLUME, WORDS
from sheetfuncs.workbook.model.parts import Column, Table
from sheetfuncs.workbook.model.rows import Rows
from sheetfuncs.workbook.model.systems import Units
from sheetfuncs.workbook.sheets.phrases import of_row, rounded

AHEAD = 1000000  # keeps the early lots before the late ones, whatever their volume


# The pan of Yard's choice, else the one that holds least, else the first.
LEAST = "IF(COUNT(@pans.holds)=0,1,MATCH(MIN(@pans.holds),@pans.holds,0))"
FINISH_PAN = f'IF(TRIM(@know.finish_pan)<>"",TRIM(@know.finish_pan),INDEX(@pans.name,{LEAST})&"")'


def _holds() -> str:
    """What the finishing pan holds; without a pan anything."""
    holds = of_row("@pans.holds", "@pans.name", FINISH_PAN)
    return f"IFERROR(IF({holds}+0>0,{holds},{AHEAD}),{AHEAD})"


def workings(units: Units, rows: Rows, top: int, column: int) -> Table:
    """A line for each boil: what it holds, which batch takes it, and in which pot of the plan it is."""

    def of_boil(key: str) -> str:
        return f"INDEX(@boil.{key},[row])"

    started = "N(INDEX(@batches.last,MAX(1,[batch])))+N(INDEX(@batches.strength,MAX(1,[batch])))>0"
    free = f"IF([batch]=0,TRUE,AND(INDEX(@batches.all_part,[batch])=1,NOT({started})))"

    def fits(pot: int) -> str:
        load = f"SUMIFS([put<],[bin<],{pot})"
        return f"OR({load}=0,AND({load}+[put]<=[cap],COUNTIFS([bin<],{pot},[kind<],1-[kind])=0))"

    bins = cases(*((fits(pot), str(pot)) for pot in range(1, rows.batches)), otherwise=str(rows.batches))
    columns = (
        Column("row", "Row of Boil", COUNT, fixed=tuple(range(1, rows.boils + 1))),
        Column("name", "Boil", TEXT, f'{of_boil("name")}&""'),
        Column("boiled_on", "Boiled on", COUNT, f"N({of_boil('date')})"),
        Column("batch", "Its batch", COUNT, f"N({of_boil('batch')})"),
        Column(
            "waits",
            "Waits for a pot",
            VOLUME,
            f'IF([name]="",0,IF(AND(N({of_boil("used_by")})=0,{free}),N({of_boil("available")}),0))',
        ),
        Column("syrup", "Syrup in it", VOLUME, f"IF([waits]>0,N({of_boil('syrup_left')}),0)"),
        Column("late", "Late sap", COUNT, "IF(AND(ISNUMBER(@know.split),[boiled_on]>=N(@know.split)),1,0)"),
        Column("key", "Order", NUMBER, f"IF([waits]>0,[waits]+(1-[late])*{AHEAD}-[row]/{AHEAD},0)"),
        Column(
            "who",
            "The next, largest first",
            COUNT,
            'IF(LARGE(@packing.key,[row])>0,MATCH(LARGE(@packing.key,[row]),@packing.key,0),"")',
        ),
        Column("put", "Its volume", VOLUME, 'IF([who]="",0,INDEX(@packing.waits,[who]))'),
        Column("kind", "Its kind", COUNT, 'IF([who]="",0,INDEX(@packing.late,[who]))'),
        Column("cap", "Room in the pan", VOLUME, _holds()),
        Column("bin", "Its pot", COUNT, f'IF([who]="","",{bins})'),
        Column(
            "pot",
            "Pot of the boil",
            COUNT,
            "IF([waits]>0,IFERROR(INDEX(@packing.bin,MATCH([row],@packing.who,0)),0),0)",
        ),
        Column("pot_before", "Row before, of that pot", COUNT, "IF([pot]=0,0,MAXIFS([row<],[pot<],[pot]))"),
        Column(
            "lots",
            "Lots so far",
            TEXT,
            'IF([pot]=0,"",IF([pot_before]=0,[name],INDEX([lots<],[pot_before]+1)&", "&[name]))',
        ),
    )
    return Table("packing", "", tuple(one._replace(hidden=True) for one in columns), rows.boils, row=top, column=column)


def plan(units: Units, rows: Rows, top: int) -> Table:
    """The pots that hold what waits, as lines for Batches."""
    last = "MAXIFS(@packing.row,@packing.pot,[pot])"
    there = f"{last}>0"
    known = 'MAX(MAXIFS(@batches.number,@batches.goes_in,"?*"),MAXIFS(@batches.number,@batches.last,">0"))'
    of_kind = f"SUMIFS(@packing.waits,@packing.late,INDEX(@packing.late,MAX(1,{last})))"
    pots = 'MAX(1,COUNTIFS([kind^],[kind],[pot^],">0"))'
    more = f"AND([pots_of_kind]>ROUNDUP({of_kind}/INDEX(@packing.cap,1),0),[pots_of_kind]={pots})"
    sentence = "Batch {batch}: {lots}: {volume} {unit}"
    parts = {"batch": "[batch]", "lots": "[lots]", "volume": rounded("[volume]", 2), "unit": f'"{units.volume}"'}
    columns = (
        Column("pot", "Pot", COUNT, tuple(str(n + 1) for n in range(rows.batches))),
        Column("volume", "Volume", VOLUME, f'IF({there},SUMIFS(@packing.waits,@packing.pot,[pot]),"")'),
        Column("syrup", "Syrup", VOLUME, f'IF({there},SUMIFS(@packing.syrup,@packing.pot,[pot]),"")'),
        Column(
            "kind",
            "Sap",
            TEXT,
            f'IF({there},IF(ISNUMBER(@know.split),IF(INDEX(@packing.late,{last})=1,"late","early"),"all"),"")',
        ),
        Column(
            "say",
            "Could be",
            WORDS,
            cases(
                (f"NOT({there})", NOTHING),
                (more, say(sentence + "; or pour it into the pot before as that boils down.", **parts)),
                otherwise=say(sentence + ".", **parts),
            ),
            width=19,
        ),
        Column("lots", "Lots", TEXT, f'IF({there},INDEX(@packing.lots,{last}),"")'),
        Column("batch", "Batch", COUNT, f'IF({there},{known}+[pot],"")'),
        Column(
            "pots_of_kind",
            "Pots of its kind",
            COUNT,
            f'IF({there},SUMPRODUCT((@plan.kind=[kind])*(@plan.pot>0)),"")',
            hidden=False,
        ),
    )
    return Table("plan", "What waits, in as few pots as the pan allows", columns, rows.batches, row=top, lines=2)
