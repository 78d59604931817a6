"""Boil: a row each time the pan was on.  Each row makes a lot of part-boiled sap: B1, B2 ..."""

from __future__ import annotations

from sheetfuncs.formulas.finish import PAN_READING
from sheetfuncs.formulas.vocabulary import CUP_TEMPERATURE, STRENGTH, WATER_READING
from sheetfuncs.workbook.model.formula import NOTHING, cases, say
from sheetfuncs.workbook.model.kinds import BRIX, COUNT, DATE, FUEL, HOURS, TEMPERATURE, TEXT, TIME, VOLUME
from sheetfuncs.workbook.model.parts import Column, Finding, Sheet, Table
from sheetfuncs.workbook.model.rows import Rows
from sheetfuncs.workbook.model.systems import Units
from sheetfuncs.workbook.sheets import boil_in, boil_out
from sheetfuncs.workbook.sheets.naming import too_many
from sheetfuncs.workbook.sheets.phrases import NOTE, ask, day, judged, look, mend, rounded, weekday

DOUBT = 2  # so many times the computed spread is a disagreement


def sheet(units: Units, rows: Rows) -> Sheet:
    """The boil log: what went in, what came out, what to write on the jars."""
    columns = (
        *_typed(units),
        *boil_in.shown(units),
        *boil_out.shown(units),
        *boil_in.hidden(units, rows),
        *boil_out.hidden(units, rows),
        _trouble(),
    )
    return Sheet(
        "Boil",
        "A row each time the pan is on. It takes all sap in store unless you name what went in.",
        (Table("boil", "", judged(columns, units), rows.boils, lines=4),),
        tab="log",
        freeze=(4, 1),
    )


def _typed(units: Units) -> tuple[Column, ...]:
    return (
        Column("date", "Date", DATE, width=11),
        Column("took", "What went in", TEXT, width=9,
               hint="Blank: all sap in store. Or names: all sap, B1; a place of Yard; S3, R2."),
        Column("hours", "Hours", HOURS, limits=(0, 100), width=6, hint="On the boil. Or start and end, further right."),
        Column("jars_out", "Jars out", COUNT, limits=(0, 10000), width=6, hint="Full jars at the end."),
        look(*_findings(units), heading="Do", otherwise=_answer(units), width=20),
        Column("rest", "And a rest, or all of it", VOLUME, called="The rest", hint="What came out besides the jars; all of it if there are none."),
        Column("jar", "Jar", TEXT, choices="@jars.name", width=11, hint="Blank: the first jar of Yard."),
        Column("reading", "It boiled at, at the end", TEMPERATURE, called="The reading at the end", limits=units.limits(PAN_READING),
               hint="The thermometer in the boiling pan: it tells the strength."),
        Column("water", "Water boils at", TEMPERATURE, limits=units.limits(WATER_READING),
               hint="The same thermometer in boiling water, that day."),
        Column("thermometer", "Thermometer", TEXT, choices="@thermometers.name", hint="Blank: the first of Yard."),
        Column("left_brix", "Sugar out, if read", BRIX, limits=units.limits(STRENGTH)),
        Column("left_at", "Measured at", TEMPERATURE, limits=units.limits(CUP_TEMPERATURE),
               hint="How warm it was when its volume was measured; blank if it had cooled."),
        Column("fuel", "Fuel used", FUEL, limits=(0, 100000), hint="In the unit that Yard names."),
        Column("over", "Left over", VOLUME, hint="Of what was named, and did not go in: it waits as a lot of its own, R and the number of the row."),
        Column("note", "Note", TEXT, width=22, hint=NOTE),
        Column("pan", "Pan", TEXT, choices="@pans.name", width=12),
        Column("start", "Start", TIME),
        Column("end", "End", TIME, hint="After midnight is fine."),
    )  # fmt: skip


def _findings(units: Units) -> tuple[Finding, ...]:
    """What is wrong with a row: first what it took, then what came out of it, then what does not agree."""
    any_typed = "COUNT([hours],[jars_out],[rest],[reading],[left_brix],[over],[fuel],[start],[end])>0"
    name, share = "[trouble_name]", "FIXED(100*ABS([lost]),0,TRUE)"

    def trouble(state: int) -> str:
        return f"[trouble]={state}"

    apart = f"SQRT(N([reading_error])^2+N([volume_spread])^2)*{DOUBT}"
    read_apart = f"SQRT(N([reading_error])^2+N(@know.brix_error)^2)*{DOUBT}"
    loss = f"SQRT(N([in_share])^2+(N([out_error])/N([brix_out]))^2+2*N(@know.volume_error)^2)*{DOUBT}"
    return (
        mend(f'AND([date]="",OR([took]<>"",{any_typed}))', "When was it?", "date"),
        mend("AND(ISNUMBER([date]),N([date])<MAX([date<]))",
             "Earlier than a row above: keep these rows in the order of their days.", "date"),
        ask("AND(ISNUMBER([date]),N([date])>@weekend.today+7)", "This day is far ahead: is it right?", "date"),
        mend(trouble(boil_in.UNKNOWN), 'There is no lot or place "{name}". Write B1, S3, a place, or all sap.', "took", name=name),
        mend(trouble(boil_in.TWICE), '"{name}" is named twice here: it is counted once.', "took", name=name),
        mend(trouble(boil_in.NOT_YET), '"{name}" was not there yet that day.', "took", name=name),
        mend("AND(N([trouble])>0,N([trouble])<1000)", '"{name}" went into B{boil} already: it is not counted again.', "took",
             name=name, boil="[trouble]"),
        mend("N([trouble])>=1000", '"{name}" went into batch {batch} already: it is not counted again.', "took",
             name=name, batch="([trouble]-1000)"),
        ask(too_many("[list]"), "Too many names to look up one by one: write a place, or all sap.", "took"),
        ask(trouble(boil_in.EMPTY), 'No sap was in "{name}" that day.', "took", name=name),
        mend('AND([list]<>"",[taken]=0)', "No sap was left that day: name what went in.", "took"),
        mend("N([volumes])<N([taken])", "It took a boil whose jars or volume are not typed: type them in its row.", "took"),
        mend("AND(N([volumes])=N([taken]),N([syrups])<N([taken]))",
             "It took a boil that does not say what went into it: mend that row first.", "took"),
        mend("AND(ISNUMBER([named]),N([over])>N([named])*1.001)", "More left over than there was.", "over"),
        mend('AND(N([jars_out])>0,[jar_size]="")', "How much such a jar holds is not in Yard.", "jar"),
        mend("AND(ISNUMBER([out_volume]),ISNUMBER([volume_in]),N([out_volume])>N([volume_in])*(1+2*N(@know.volume_error)))",
             "More came out than went in: is a lot missing?", "jars_out"),
        mend('AND(N([syrup_in])>0,ISNUMBER([out_volume]),[brix_volume]="")',
             "So little cannot hold all that sugar: how much came out?", "jars_out"),
        mend("AND(ISNUMBER([start]),ISNUMBER([end]),N([start])=N([end]))", "It ends when it starts: check both times.", "end"),
        ask("AND(ISNUMBER([hours]),ISNUMBER([between]),ABS(N([hours])-N([between]))>0.5)",
            "The hours and the times disagree: the hours count.", "hours"),
        mend('AND(ISNUMBER([reading]),[water_used]="",[list]<>"")',
             "What did this thermometer show in boiling water? Type it, or the elevation in Yard.", "water"),
        mend("AND(ISNUMBER([reading]),ISNUMBER([water_used]),N([reading])<N([water_used]))",
             "It cannot boil colder than water: read both again.", "reading"),
        mend('AND(ISNUMBER([reading]),ISNUMBER([water_used]),[brix_reading]="")', "Hotter than syrup boils: read it again.", "reading"),
        ask(f"AND(COUNT([read_brix],[brix_reading],[reading_error])=3,ABS(N([read_brix])-N([brix_reading]))>{read_apart})",
            "The sugar read and the boiling reading disagree, {one} and {other} °Brix: check both.", "left_brix",
            one=rounded("[read_brix]", 0), other=rounded("[brix_reading]", 0)),
        ask(f"AND([read_brix]=\"\",COUNT([brix_reading],[brix_volume],[reading_error],[volume_spread])=4,"
            f"ABS(N([brix_reading])-N([brix_volume]))>{apart})",
            "By its reading it has {one} °Brix, by its volume {other}: check both.", "reading",
            one=rounded("[brix_reading]", 0), other=rounded("[brix_volume]", 0)),
        ask(f"IF(ISNUMBER([lost]),[lost]>{loss},FALSE)", "{share} % of the sugar is gone: spilled, or a reading wrong?",
            "left_brix", share=share),
        ask(f"IF(ISNUMBER([lost]),-[lost]>{loss},FALSE)", "{share} % of sugar came from nowhere: is a lot missing, or a reading wrong?",
            "left_brix", share=share),
        ask('AND([list]<>"",[out_hot]="",N([date])<@weekend.today)',
            "How much came out: how many jars, and what rest?", "jars_out"),
    )  # fmt: skip


def _answer(units: Units) -> str:
    """What came of it, what to write on the jars, by when to go on."""
    about = 'IF(OR([out_guess]=1,N([out_error])>1.5),"about ","")'
    syrup = f"FIXED([syrup_out],{units.pick(2, 1)},TRUE)"
    parts = {"lot": "[name]", "amount": "[amount]", "unit": f'"{units.volume}"'}
    what_it_is = cases(
        ("NOT(ISNUMBER([out_volume]))", NOTHING),
        ("NOT(ISNUMBER([syrup_out]))", say("Write {lot} on {amount}.", lot="[name]", amount="[amount]")),
        ("NOT(ISNUMBER([brix_out]))",
         say("Write {lot} on {amount}: {about}{syrup} {unit} of syrup in it.", **parts, about=about, syrup=syrup)),
        otherwise=say("Write {lot} on {amount}: {about}{brix} °Brix, {syrup} {unit} of syrup.",
                      **parts, about=about, brix="FIXED([brix_out],0,TRUE)", syrup=syrup),
    )  # fmt: skip
    by = "[go_on_by]"
    when = {"weekday": weekday(by), "day": day(by, units)}
    go_on = cases(
        ("NOT(ISNUMBER([go_on_by]))", NOTHING),
        ('[out_volume]=""', NOTHING),
        (f"{by}-[clock]<{NEXT_WEEK}", say(" Bring it to a boil again by {weekday} {day}, or freeze it.", **when)),
        otherwise=say(" Go on by {weekday} {day}.", **when),
    )
    sap_had = cases(
        ("ISNUMBER([sap_was])", say(" The sap had about {brix} °Brix.", brix="FIXED([sap_was],1,TRUE)")),
    )
    goes_in = cases(
        ("NOT(ISNUMBER([volume_in]))", NOTHING),
        ("NOT(ISNUMBER([syrup_in]))", say("{volume} {unit} goes in.", volume=_volume("[volume_in]", units), unit=parts["unit"])),
        otherwise=say(
            "{volume} {unit} goes in, {about}{syrup} {unit} of syrup in it. At the end type the jars, or the rest.",
            volume=_volume("[volume_in]", units), unit=parts["unit"], about='IF([in_guess]=1,"about ","")',
            syrup=f"FIXED([syrup_in],{units.pick(2, 1)},TRUE)"),
    )  # fmt: skip
    strength_alone = say("It came to {about}{brix} °Brix. Type the jars, or the rest.",
                         about=about, brix="FIXED([brix_out],0,TRUE)")  # fmt: skip
    gone = cases(
        ("[batch]>0", say("{lot} went into batch {batch} on {day}.", lot="[name]", batch="[batch]", day=day("[used_on]", units))),
        otherwise=say("{lot} went into B{boil} on {day}.", lot="[name]", boil="[used_by]", day=day("[used_on]", units)),
    )  # fmt: skip
    return cases(
        ('[list]=""', NOTHING),
        ("AND(ISNUMBER([used_on]),N([used_on])<=@weekend.today)", gone),
        ('AND([out_hot]="",ISNUMBER([brix_out]))', strength_alone),
        ('[out_hot]=""', goes_in),
        otherwise=f"{what_it_is}&{go_on}&{sap_had}",
    )


NEXT_WEEK = 7  # days: the rhythm of those who boil on Saturdays


def _volume(cell: str, units: Units) -> str:
    return f"FIXED({cell},{units.pick(1, 0)},TRUE)"


def _trouble() -> Column:
    """The name that something is wrong with."""
    names = ",".join(f"[item_{name}]" for name in boil_in.NAMES)
    return Column(
        "trouble_name", "Name to look at", TEXT, f'IF(N([trouble_at])>0,CHOOSE([trouble_at],{names}),"")', hidden=True
    )
