"""Storage: what waits, most urgent first, and the small log of what happened to a lot besides."""

from __future__ import annotations

from sheetfuncs.workbook.model.formula import NOTHING, cases, say
from sheetfuncs.workbook.model.kinds import BRIX, COUNT, DATE, DAYS, TEXT, VOLUME, WORDS
from sheetfuncs.workbook.model.parts import Column, Field, Fields, Sheet, Table
from sheetfuncs.workbook.model.rows import Rows
from sheetfuncs.workbook.model.systems import Units
from sheetfuncs.workbook.sheets import happenings, lots
from sheetfuncs.workbook.sheets.phrases import day, weekday, when

SATURDAY = 6


def sheet(units: Units, rows: Rows) -> Sheet:
    """What is in store and what to do about it.  Nothing of Collection or Boil is typed again."""
    return Sheet(
        "Storage",
        "What waits, most urgent first. It comes from Collection, Boil and Batches: type nothing again.",
        (_waiting(units, rows), happenings.table(units, rows), _store(), lots.table(units, rows)),
        tab="log",
        freeze=(3, 1),
    )


def _store() -> Fields:
    def total(column: str, *what: str) -> str:
        return "+".join(f'SUMIFS(@lots.{column},@lots.open,1,@lots.what,"{one}")' for one in what)

    def first(column: str) -> str:
        return f'IF(@store.count=0,"",INDEX(@waiting.{column},1))'

    finish = (lots.PART, lots.OVER)
    return Fields(
        "store",
        "In store",
        (
            Field("volume", "Sap and part-boiled, in all", VOLUME, "SUMIFS(@lots.volume,@lots.open,1)"),
            Field("syrup", "Syrup in it", VOLUME, "SUMIFS(@lots.syrup,@lots.open,1)"),
            Field("sap", "Sap to boil down", VOLUME, total("volume", lots.SAP)),
            Field("part", "Part-boiled", VOLUME, total("volume", *finish)),
            Field("part_syrup", "Syrup in the part-boiled", VOLUME, total("syrup", *finish)),
            Field("brix", "Sugar, all together", BRIX,
                  when("AND(@store.volume>0,@store.unknown=0)", "BOIL_BRIX(@store.syrup,@know.target,@store.volume)")),
            Field("count", "Lots", COUNT, "COUNTIF(@lots.open,1)"),
            Field("guess", "of them with a guessed strength", COUNT, "COUNTIFS(@lots.open,1,@lots.guess,1)"),
            Field("unknown", "of them of unknown volume or strength", COUNT,
                  '@store.count-COUNTIFS(@lots.open,1,@lots.volume,">=0",@lots.syrup,">=0")'),
            Field("first_lot", "Most urgent", TEXT, first("lot")),
            Field("first_by", "    by", DATE, first("by")),
            Field("first_days", "    in days", DAYS, first("days")),
        ),
        span=3,
    )  # fmt: skip


def _waiting(units: Units, rows: Rows) -> Table:
    def of_lot(column: str) -> str:
        return f'IF([at]="","",INDEX(@lots.{column},[at]))'

    return Table(
        "waiting",
        "Waiting, most urgent first",
        (
            Column("lot", "Lot", TEXT, of_lot("name"), width=7),
            Column("what", "What", TEXT, of_lot("what"), width=12),
            Column("by", "By", DATE, of_lot("by"), width=11),
            Column("say", "Do", WORDS, _plan(units), width=21),
            Column("jars", "Jars", COUNT,
                   'IF(AND([jar]<>"",ISNUMBER([volume])),MIN(INDEX(@boil.jars_out,[boil]),'
                   'ROUNDDOWN([volume]/INDEX(@boil.jar_size,[boil])+0.01,0)),"")'),
            Column("jar", "of", TEXT, 'IF([boil]="","",INDEX(@boil.jar_name,[boil])&"")', width=11),
            Column("rest", "and a rest", VOLUME,
                   'IF(ISNUMBER([jars]),MAX(0,[volume]-[jars]*INDEX(@boil.jar_size,[boil])),"")'),
            Column("volume", "Volume, all", VOLUME, of_lot("volume")),
            Column("brix", "Sugar", BRIX, of_lot("brix"), guess="guess"),
            Column("syrup", "Syrup in it", VOLUME, of_lot("syrup"), guess="guess"),
            Column("days", "Days left", DAYS, of_lot("left_days")),
            Column("where", "Where", TEXT, of_lot("where")),
            Column("guess", "Sugar is a guess", COUNT, of_lot("guess"), hidden=True),
            Column("boil", "Row of its boil", COUNT, 'IF(LEFT([lot],1)="B",MID([lot],2,9)+0,"")', hidden=True),
            Column("order", "Order", COUNT, 'IF([at]="","",INDEX(@lots.order,[at]))', hidden=True),
            Column("at", "Row among the lots", COUNT,
                   tuple(f'IF({row}>COUNT(@lots.key),"",MATCH(SMALL(@lots.key,{row}),@lots.key,0))'
                         for row in range(1, rows.waiting + 1)), hidden=True),
        ),
        rows.waiting,
        lines=3,
    )  # fmt: skip


def _plan(units: Units) -> str:
    """A plan before trouble; only past its time by the rule a warning."""
    today = "@weekend.today"
    saturday = f"(MOD({SATURDAY - 1}-WEEKDAY({today},2),7)+1)"  # days to the next one, after today
    when_by = {"weekday": weekday("[by]"), "day": day("[by]", units)}
    keeps = "INDEX(@lots.keeps,[at])"
    part = f'[what]<>"{lots.SAP}"'
    return cases(
        ('[at]=""', NOTHING),
        ('[by]=""', say("When was it? Type its date in its row.")),
        ('[volume]=""', say("How much is it? Type jars or rest in its row of Boil.")),
        ("[days]<0", say("Past its time since {weekday} {day}: smell it, look at it; throw it out if it is off.", **when_by)),
        (f"{keeps}>={lots.FROZEN_DAYS}", say("Frozen. Use it by {weekday} {day}.", **when_by)),
        (f"AND([days]<{saturday},WEEKDAY({today},2)={SATURDAY},{part})",
         say("Finish it or boil it up today: it will not reach next Saturday.")),
        (f"AND([days]<{saturday},WEEKDAY({today},2)={SATURDAY})", say("Boil it today: it will not reach next Saturday.")),
        ("[days]=0", say("Today is its last day: bring it to a boil, or freeze it.")),
        (f"AND([days]<{saturday},{part})",
         say("Will not reach Saturday: bring it to a boil again by {weekday} {day}, or freeze it.", **when_by)),
        (f"[days]<{saturday}", say("Will not reach Saturday: boil it by {weekday} {day}, or freeze it.", **when_by)),
        (part, say("Finish it or boil it up again by {weekday} {day}.", **when_by)),
        otherwise=say("Boil it by {weekday} {day}.", **when_by),
    )  # fmt: skip
