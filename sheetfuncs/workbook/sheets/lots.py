"""The lots: a row for each Collection row (S), Boil row (B), what was left over of it (R), and of a batch (K)."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import NamedTuple

from sheetfuncs.workbook.model.formula import NOTHING, cases
from sheetfuncs.workbook.model.kinds import BRIX, COUNT, DATE, DAYS, MASS, NUMBER, TEMPERATURE, TEXT, VOLUME
from sheetfuncs.workbook.model.parts import Column, Table
from sheetfuncs.workbook.model.rows import Rows
from sheetfuncs.workbook.model.systems import Units
from sheetfuncs.workbook.sheets.naming import ALL_PART, literally, naming
from sheetfuncs.workbook.sheets.phrases import of_row, when

SAP, PART, OVER = "sap", "part-boiled", "left of a batch"
FROZEN_DAYS = 60  # what keeps longer is frozen
CLOSED, OPEN = (
    8,
    7.9,
)  # °Brix for SAP_KEEPS: at least, where it was jarred boiling and closed; at most, where it was not
NEVER = 99999  # a day after all others, for a lot whose day is not known


class Source(NamedTuple):
    """A log that lots come from: the letter of their names, and the column that holds each of their facts."""

    rows: int
    facts: Mapping[str, str]


def table(units: Units, rows: Rows) -> Table:
    """One list of all lots, so that what is in store can be put in order."""
    sources = _sources(rows)
    count = sum(source.rows for source in sources)

    def each(formula: Callable[[Source, str], str]) -> tuple[str, ...]:
        return tuple(formula(source, str(row)) for source in sources for row in range(1, source.rows + 1))

    def fact(key: str) -> tuple[str, ...]:
        """The fact of a lot as its log has it, for lots that are in store."""
        found = each(lambda source, row: source.facts[key].replace("#", row) if key in source.facts else NOTHING)
        return tuple(one if one == NOTHING else f'IF([open]=1,{one},"")' for one in found)

    name = each(lambda source, row: source.facts["name"].replace("#", row))
    is_open = each(lambda source, row: f'IF([name]="",0,{source.facts["open"].replace("#", row)})')
    place = of_row("@places.kept_at", "@places.name", "[where]")
    store = f"IF(ISNUMBER(@know.store),@know.store,{units.pick(38, 3)})"
    closed = 'OR(LEFT([name],1)="B",LEFT([name],1)="K")'
    strength = f"IF({closed},MAX({CLOSED},N([brix])),MIN({OPEN},IF(ISNUMBER([brix]),[brix],2)))"
    moved = "MAXIFS(@happenings.moves,@happenings.key,[name])"
    columns = (
        Column("name", "Name", TEXT, name, hidden=True),
        Column("open", "In store", COUNT, is_open, hidden=True),
        Column("what", "What", TEXT, fact("what"), hidden=True),
        Column("made", "Made on", DATE, fact("made"), hidden=True),
        Column("clock", "Its clock starts on", DATE, fact("clock"), hidden=True),
        Column("volume", "Volume", VOLUME, fact("volume"), hidden=True),
        Column("brix", "Sugar", BRIX, fact("brix"), hidden=True),
        Column("guess", "Sugar is a guess", COUNT, fact("guess"), hidden=True),
        Column("syrup", "Syrup in it", VOLUME, fact("syrup"), hidden=True),
        Column("sugar", "Sugar", MASS, when("ISNUMBER([syrup])", "SAP_SUGAR([syrup],@know.target,UNITS)"), hidden=True),
        Column("moved", "Row that moved it", COUNT, f"IF([open]=1,{moved},0)", hidden=True),
        Column("where", "Where", TEXT,
               tuple(f'IF([open]=1,IF([moved]>0,INDEX(@happenings.where,[moved])&"",{base}),"")'
                     for base in each(lambda source, row: source.facts.get("where", NOTHING).replace("#", row))), hidden=True),
        Column("temperature", "Kept at", TEMPERATURE,
               cases(("[open]=0", NOTHING), ("[moved]>0", "INDEX(@happenings.temperature,[moved])"), ('[where]=""', store),
                     otherwise=f"IFERROR({place}+0,{store})"), hidden=True),
        Column("keeps", "Keeps", DAYS, when("[open]=1", f"SAP_KEEPS({strength},[temperature],UNITS)"), hidden=True),
        Column("by", "Go on by", DATE, f'IF(AND(N([clock])>0,N([clock])<{NEVER},ISNUMBER([keeps])),[clock]+INT([keeps]+0.01),"")', hidden=True),
        Column("left_days", "Days left", DAYS, 'IF(ISNUMBER([by]),[by]-@weekend.today,"")', hidden=True),
        Column("key", "Urgency", NUMBER,
               tuple(f'IF([open]=1,IF(ISNUMBER([by]),[by],{NEVER})+{number}/{2 * count},"")' for number in range(1, count + 1)),
               hidden=True),
        Column("order", "Order", COUNT, 'IF([open]=1,RANK([key],@lots.key,1),"")', hidden=True),
    )  # fmt: skip
    return Table("lots", "Lots", columns, count)


def _sources(rows: Rows) -> tuple[Source, ...]:
    """Where each fact stands; # is the row of the log."""

    def at(column: str) -> str:
        return f"INDEX(@{column},#)"

    collections = {
        "name": at("collection.name"),
        "open": f"IF({at('collection.left')}>0,1,0)",
        "what": f'"{SAP}"',
        "made": at("collection.date"),
        "clock": at("collection.clock"),
        "volume": at("collection.left"),
        "brix": at("collection.true"),
        "guess": at("collection.guess"),
        "where": f'{at("collection.into")}&""',
        "syrup": at("collection.syrup_left"),
    }
    boils = {
        "name": at("boil.name"),
        "open": at("boil.waits"),
        "what": f'"{PART}"',
        "made": at("boil.date"),
        "clock": at("boil.clock"),
        "volume": at("boil.left"),
        "brix": at("boil.brix_out"),
        "guess": at("boil.out_guess"),
        "syrup": at("boil.syrup_left"),
    }
    over = {
        "name": at("boil.over_name"),
        "open": f"IF({at('boil.over_left')}>0,1,0)",
        "what": f'IF({at("boil.over_sap")}=1,"{SAP}","{PART}")',
        "made": at("boil.date"),
        "clock": at("boil.over_clock"),
        "volume": at("boil.over_left"),
        "brix": at("boil.brix_in"),
        "guess": at("boil.in_guess"),
        "syrup": at("boil.over_syrup_left"),
        "where": at("boil.over_place"),
    }
    later = '@batches.number,">#",@batches.date,"<="&@weekend.today,@batches.list'
    used = f"COUNTIFS({later},{naming('[name]')})+COUNTIFS({later},{literally(ALL_PART)})"
    batches = {
        "name": f'IF(N({at("batches.over")})>0,"K#","")',
        "what": f'"{OVER}"',
        "open": f"IF({used}=0,1,0)",
        "made": at("batches.date"),
        "clock": at("batches.date"),
        "volume": at("batches.over"),
        "brix": at("batches.strength"),
        "guess": "0",
        "syrup": f'IFERROR(SYRUP_FROM_SAP({at("batches.over")},{at("batches.strength")},@know.target),"")',
    }
    return (
        Source(rows.collections, collections),
        Source(rows.boils, boils),
        Source(rows.boils, over),
        Source(rows.batches, batches),
    )
