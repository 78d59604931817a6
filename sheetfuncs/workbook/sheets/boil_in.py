"""What went into a boil: the names of its list, the lots that it took, their volume and their syrup."""

from __future__ import annotations

from sheetfuncs.workbook.model.formula import NOTHING, cases
from sheetfuncs.workbook.model.kinds import BRIX, COUNT, MASS, NUMBER, TEXT, VOLUME
from sheetfuncs.workbook.model.parts import Column
from sheetfuncs.workbook.model.rows import Rows
from sheetfuncs.workbook.model.systems import Units
from sheetfuncs.workbook.sheets.collection import MOST_BOILS
from sheetfuncs.workbook.sheets.naming import ALL_SAP, MOST_NAMES, listed, nth
from sheetfuncs.workbook.sheets.phrases import numbers, when

NAMES = "abcdefgh"[:MOST_NAMES]  # a column for each name of a list
FIRST, LAST = NAMES[0], NAMES[-1]
# What may be wrong with a name; a number above is the boil that took it, from 1000 on the batch.
UNKNOWN, NOT_YET, EMPTY, TWICE = -1, -2, -3, -4
SOME = '">=0"'  # any number, and no blank

# Where a boil finds what it may take: collections, boils of the rows above, and what was left over of those.
LOTS = (
    {"used_by": "@collection.used_by", "available": "@collection.available", "syrup": "@collection.syrup_left",
     "guess": "@collection.guess"},
    {"used_by": "[used_by<]", "available": "[available<]", "syrup": "[syrup_left<]", "guess": "[out_guess<]"},
    {"used_by": "[over_used_by<]", "available": "[over_available<]", "syrup": "[over_syrup_left<]", "guess": "[in_guess<]"},
)  # fmt: skip


def shown(units: Units) -> tuple[Column, ...]:
    return (
        Column("volume_in", "Went in", VOLUME,
               'IF(ISNUMBER([named]),IF([named]>=N([over]),[named]-MAX(0,N([over])),""),"")'),
        Column("syrup_in", "Syrup in it", VOLUME,
               cases(("NOT(ISNUMBER([named_syrup]))", NOTHING), ("N([over])<=0", "[named_syrup]"),
                     ("N([volume_in])>0", "[named_syrup]*[volume_in]/[named]")), guess="in_guess"),
        Column("sugar_in", "Sugar in", MASS, when("ISNUMBER([syrup_in])", "SAP_SUGAR([syrup_in],@know.target,UNITS)"),
               guess="in_guess"),
        Column("brix_in", "Sugar in, strength", BRIX,
               when(numbers("syrup_in", "volume_in"), "BOIL_BRIX([syrup_in],@know.target,[volume_in])"), width=9,
               guess="in_guess"),
    )  # fmt: skip


def hidden(units: Units, rows: Rows) -> tuple[Column, ...]:
    count = tuple(str(row) for row in range(1, rows.boils + 1))

    def taken(key: str = "", criterion: str = "") -> str:
        """How many lots this row took, in all or of a kind."""
        of_kind = [f",{lots[key]},{criterion}" if key else "" for lots in LOTS]
        return "+".join(f"COUNTIFS({lots['used_by']},[number]{kind})" for lots, kind in zip(LOTS, of_kind, strict=True))

    def total(key: str) -> str:
        return "+".join(f"SUMIFS({lots[key]},{lots['used_by']},[number])" for lots in LOTS)

    return (
        Column("number", "Number", NUMBER, count, hidden=True, numbers=True),
        Column("list", "Names, as a list", TEXT, f'IF(N([date])>0,{listed("[took]", ALL_SAP)},"")', hidden=True),
        Column("rank", "Rank", COUNT, f'IF([list]="","",{MOST_BOILS}-[number])', hidden=True),
        Column("taken", "Lots it took", COUNT, f'IF([list]="","",{taken()})', hidden=True),
        Column("volumes", "of known volume", COUNT, f'IF([list]="","",{taken("available", SOME)})', hidden=True),
        Column("syrups", "of known strength", COUNT, f'IF([list]="","",{taken("syrup", SOME)})', hidden=True),
        Column("guesses", "of guessed strength", COUNT, f'IF([list]="","",{taken("guess", "1")})', hidden=True),
        Column("named", "Volume of what it took", VOLUME,
               f'IF(AND(N([taken])>0,[volumes]=[taken]),{total("available")},"")', hidden=True),
        Column("named_syrup", "Syrup in what it took", VOLUME,
               f'IF(AND(N([taken])>0,[syrups]=[taken]),{total("syrup")},"")', hidden=True),
        Column("in_guess", "Strength in is a guess", COUNT, 'IF([list]="","",IF([guesses]>0,1,0))', hidden=True),
        Column("in_share", "Strength in, share it may be off", NUMBER,
               cases(("N([brix_in])<=0", NOTHING),
                     ("[in_guess]=1", 'IF(N(@know.sap_brix)>0,N(@know.sap_spread)/@know.sap_brix,"")'),
                     otherwise="N(@know.brix_error)/[brix_in]"), hidden=True),
        *(Column(f"item_{name}", f"Name {name}", TEXT,
                 f'IF([{before}]="","",{nth("[list]", number)})', hidden=True)
          for number, (name, before) in enumerate(zip(NAMES, ("list", *(f"item_{name}" for name in NAMES)), strict=False), 1)),
        *(Column(f"state_{name}", f"What is wrong with name {name}", COUNT, _state(f"[item_{name}]"), hidden=True) for name in NAMES),
        Column("trouble_at", "Name that something is wrong with", COUNT,
               cases(*((f"N([state_{name}])<>0", str(number)) for number, name in enumerate(NAMES, 1)), otherwise="0"), hidden=True),
        Column("trouble", "What is wrong with it", COUNT,
               f"IF([trouble_at]=0,0,CHOOSE([trouble_at],{','.join(f'[state_{name}]' for name in NAMES)}))", hidden=True),
        Column("unknown", "Names nobody knows", COUNT,
               f'IF([list]="","",COUNTIF([state_{FIRST}]:[state_{LAST}],{UNKNOWN}))', hidden=True),
    )  # fmt: skip


def _state(item: str) -> str:
    """What is wrong with a name of the list; 0 for nothing."""

    def of_lot(key: str) -> str:
        return (
            f"SUMIFS(@collection.{key},@collection.name,{item})+SUMIFS(@boil.{key},@boil.name,{item})"
            f"+SUMIFS(@boil.over_{key},@boil.over_name,{item})"
        )

    known = f"COUNTIF(@collection.name,{item})+COUNTIF(@boil.name,{item})+COUNTIF(@boil.over_name,{item})"
    batch = f"SUMIFS(@boil.batch,@boil.name,{item})+SUMIFS(@boil.over_batch,@boil.over_name,{item})"
    return cases(
        (f'{item}=""', NOTHING),
        (f"COUNTIF([item_{FIRST}]:[item_{LAST}],{item})>1", str(TWICE)),
        (f'{item}="{ALL_SAP}"', "0"),
        (
            f"COUNTIF(@places.name,{item})>0",
            f"IF(COUNTIFS(@collection.used_by,[number],@collection.place,{item})"
            f"+COUNTIFS(@boil.over_used_by,[number],@boil.over_place,{item})=0,{EMPTY},0)",
        ),
        (f"({known})=0", str(UNKNOWN)),
        (f"({of_lot('used_by')})=[number]", "0"),
        (f"({of_lot('used_by')})>0", of_lot("used_by")),
        (f"({batch})>0", f"1000+{batch}"),
        otherwise=str(NOT_YET),
    )
