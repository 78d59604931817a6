"""Weekend: the page to open first; each question with its answer below, and what to type next."""

from __future__ import annotations

import datetime
from typing import Any

from sheetfuncs.formulas.air import BAROMETER
from sheetfuncs.workbook.model.formula import cases, say, text
from sheetfuncs.workbook.model.kinds import (
    COUNT,
    DATE,
    DIFFERENCE,
    FUEL,
    HEAT,
    HOURS,
    PRESSURE,
    TEMPERATURE,
    TIME,
    VOLUME,
    WORDS,
)
from sheetfuncs.workbook.model.parts import WEIGHTS, Field, Fields, Sheet, Text
from sheetfuncs.workbook.model.rows import Rows
from sheetfuncs.workbook.model.systems import Units
from sheetfuncs.workbook.sheets.cautions import short
from sheetfuncs.workbook.sheets.phrases import clock, counted, day, rounded

SOON = 2  # days left at which a lot is urgent
ENOUGH = 2  # rows of one's own before they are planned by
WOOD = {"US": ("cord", 128, "cu ft"), "metric": ("m³ stacked", 1000, "L")}  # small amounts of stacked wood
COMPUTES, COMPUTES_NOT = "computes here.", "does not compute in this program: see the Guide."
ANSWERS = ("next", "first", "reading", "syrup", "boil", "fuel", "run", "room", "jars", "pull")
# What these cells hold where no function of ours is known.
UNANSWERED: dict[str, Any] = {f"now.{key}": "" for key in ANSWERS} | {"now.works": COMPUTES_NOT, "behind.works": 0}
LITTLE_WOOD = 0.1  # cords or m³ under which wood is told in the small unit


def sheet(units: Units, rows: Rows) -> Sheet:
    """What to do now, from the other sheets."""
    return Sheet(
        "Weekend",
        "What to do now. The answers come from the other sheets.",
        (_answers(units), _today(units), Text("Cautions", short(units), across=3, caution=True), _behind(units, rows)),
        tab="now",
        freeze=(3, 0),
        portrait=True,
        pages=1,
        widths=(48, 13, 34, 3, 40, 13, 30),
    )


def _answers(units: Units) -> Fields:
    return Fields(
        "now",
        "",
        (
            Field("next", "Next", WORDS, _told(_next(units)), lines=3),
            Field(
                "first", "Boil first", WORDS, _told(_first(units)), to="waiting.lot", lines=3, states=_weighed("first")
            ),
            Field(
                "reading", "The thermometer must read", WORDS, _told(_reading(units)), to="thermometers.water", lines=3
            ),
            Field("syrup", "Syrup waiting in store", WORDS, _told(_syrup(units)), to="waiting.volume", lines=2),
            Field("boil", "Hours to boil all of it", WORDS, _told(_hours(units)), to="boil.date", lines=3),
            Field("fuel", "Fuel for that", WORDS, _told(_fuel(units)), to="yard.fuel", lines=2),
            Field("run", "Will it run?", WORDS, _told(_run(units)), to="weather.date", lines=2),
            Field("room", "Room for more sap", WORDS, _told(_room(units)), to="places.name", lines=2),
            Field("jars", "Jars to have hot", WORDS, _told(_jars(units)), to="jars.name", lines=2),
            Field(
                "pull", "Pull the taps?", WORDS, _told("@signs.pull"), to="signs.buds", lines=3, states=_weighed("pull")
            ),
            Field("works", "This workbook", WORDS, f"IF(@behind.works=1,{text(COMPUTES)},{text(COMPUTES_NOT)})"),
        ),
        span=0,
        stacked=True,
    )


def _told(answer: str) -> str:
    """An answer, where this program computes the functions: else it would be an old one, or a wrong one."""
    return f'IF(@behind.works=1,{answer},"")'


def _weighed(key: str) -> tuple[tuple[str, str], ...]:
    """The colours of an answer, by its weight among the steps: a colour looks at its own sheet alone."""
    return tuple((f"@behind.{key}_weight={number}", weight) for number, weight in enumerate(WEIGHTS, 1))


def _next(units: Units) -> str:
    """The one thing to type or do that unlocks most."""
    out = "AND(ISNUMBER(@taps.pulled_on),N(@taps.in)=0)"
    return cases(
        ("NOT(ISNUMBER(@weekend.today))", say("Today below is no date: type it as a date, or put the formula =TODAY() back.")),
        ("NOT(ISNUMBER(@yard.elevation))", say("Start here: type the elevation of your pan in Yard. Each temperature depends on it.")),
        (f"AND({out},@store.count>0)", say("The taps are out. What still waits: {lots}, see Storage.", lots=counted("@store.count", "lot", "lots"))),
        (out, say("The taps are out and nothing waits. Write words to the next keeper in Season, then hand the workbook over.")),
        ("AND(COUNT(@collection.volume)=0,@yard.taps=0)", say("Write the taps in Yard, then each time you bring sap in a row in Collection.")),
        ("COUNT(@collection.volume)=0", say("Each time you bring sap in: a row in Collection, with its date and volume.")),
        ("@store.unknown>0", say("Not all that waits has its amount: type its jars or rest in Boil. Storage shows which.")),
        ("@signs.ahead=0", say("Paste a forecast into Weather: days, lows and highs.")),
        ("@store.sap>0", say("When you have boiled: a row in Boil, with its date, hours and jars.")),
        ("AND(@store.part>0,COUNT(@thermometers.water)=0)", say("Before you finish: name your thermometer in Yard and read it in boiling water.")),
        ("@store.part>0", say("When you finish: a row in Batches, then each reading in Finish.")),
        otherwise=say("Nothing waits. Each time you bring sap in: a row in Collection."),
    )  # fmt: skip


def _first(units: Units) -> str:
    return cases(
        ("NOT(ISNUMBER(@weekend.today))", say("Today is no date, so nothing can be said.")),
        ("COUNT(@collection.volume)=0", say("Nothing is written down yet.")),
        ("@store.count=0", say("Nothing is waiting in store.")),
        otherwise=say("{lot}: {said}", lot="@store.first_lot", said="INDEX(@waiting.say,1)"),
    )


def _reading(units: Units) -> str:
    return cases(
        ("COUNT(@behind.goal_1,@behind.goal_2,@behind.goal_3,@behind.goal_4)>0", "@behind.goals"),
        ("NOT(ISNUMBER(@yard.elevation))", say("Not known: type the elevation in Yard, or read a thermometer in boiling water.")),
        ("NOT(ISNUMBER(@behind.goal))", say("Not known: check the elevation in Yard, the syrup target and the barometer below.")),
        otherwise=say(
            "About {goal} " + units.temperature + ", if yours had no error: not read today. Hang it into boiling water: syrup is {rise} "
            + units.difference + " above what it shows.",
            goal=rounded("@behind.goal"), rise=rounded("@behind.rise")),
    )  # fmt: skip


def _syrup(units: Units) -> str:
    v = units.volume
    about = 'IF(@store.unknown>0,"At least ",IF(@store.guess>0,"About ",""))'
    return cases(
        ("@store.count=0", say("None.")),
        ("AND(@store.unknown>0,@store.syrup=0)", say("Not known: what waits has no amount yet.")),
        ("@store.syrup<0.005", say("Next to none.")),
        ("AND(@store.unknown>0,@store.volume<0.05)", say("{about}{syrup} " + v + " of syrup: type in Boil how much came out.", about=about, syrup=rounded("@store.syrup", 2))),
        (f"@store.part<{units.pick(0.005, 0.05)}", say("{about}{syrup} " + v + " of syrup, in {sap} " + v + " of sap.", about=about, syrup=rounded("@store.syrup", 2), sap=rounded("@store.sap"))),
        ("@store.sap<0.05", say("{about}{syrup} " + v + " of syrup, in {part} " + v + " of part-boiled sap.", about=about, syrup=rounded("@store.syrup", 2), part=rounded("@store.part", units.pick(2, 1)))),
        otherwise=say("{about}{syrup} " + v + " of syrup: {sap} " + v + " of sap to boil down, {part} " + v + " part-boiled.",
            about=about, syrup=rounded("@store.syrup", 2), sap=rounded("@store.sap"), part=rounded("@store.part", units.pick(2, 1))),
    )  # fmt: skip


def _hours(units: Units) -> str:
    v = units.volume
    start = "(ROUNDDOWN((N(@weekend.done_by)-@behind.hours/24)*96,0)/96)"  # to the quarter of an hour
    minutes = counted("MAX(5,5*ROUND(@behind.hours*12,0))", "minute", "minutes")
    hours = f"IF(@behind.hours<1,{minutes},{counted('@behind.hours', 'hour', 'hours', 1)})"
    parts = {"about": 'IF(@store.unknown>0,"At least","About")', "hours": hours, "rate": f'IF(N(@yard.rate)<0.095,{rounded("@yard.rate", 2)},{rounded("@yard.rate")})',
             "source": "@yard.rate_from"}  # fmt: skip
    end = clock("N(@weekend.done_by)", units)
    said = "{about} {hours} at {rate} " + v + " an hour, {source}"
    return cases(
        ("@store.count=0", say("Nothing to boil.")),
        ("NOT(ISNUMBER(@behind.hours))", say("Not known yet: list a pan in Yard, or boil once and write the hours.")),
        ("AND(@store.unknown>0,@behind.water=0)", say("Not known: what waits has no amount yet.")),
        ("NOT(ISNUMBER(@weekend.done_by))", say(said + ".", **parts)),
        (f"{start}>0", say(said + ". Start by {start} to be done by {end}.", start=clock(start, units), end=end, **parts)),
        otherwise=say(said + ": more than today has until {end}, so spread it over more days.", end=end, **parts),
    )  # fmt: skip


def _fuel(units: Units) -> str:
    unit, many, small = WOOD[units.system]
    name = 'SUBSTITUTE(SUBSTITUTE(TRIM(@yard.fuel)," bottle","")," by therm","")'  # the unit says it already
    source = f'IF(@learned.fuel_rows>={ENOUGH},"as your own log burned","a guess by the heat of the fuel")'
    return cases(
        ("@store.count=0", say("None.")),
        ("AND(@store.unknown>0,@behind.water=0)", say("Not known: what waits has no amount yet.")),
        ("AND(@store.unknown>0,ISNUMBER(@yard.efficiency),NOT(ISNUMBER(@behind.fuel)))", say("Not known until all that waits has its amount.")),
        ("NOT(ISNUMBER(@behind.fuel))", say("Not known: choose a fuel in Yard.")),
        (f'AND(@yard.fuel_unit={text(unit)},@behind.fuel<{LITTLE_WOOD})', say(
            "About {fuel} " + small + " of {name}, stacked: {source}.",
            fuel=rounded(f"MAX(1,@behind.fuel*{many})", 0), name=name, source=source)),
        otherwise=say("About {fuel} {unit} of {name}: {source}.",
            fuel=f'IF(@behind.fuel<10,{rounded("MAX(0.1,@behind.fuel)")},{rounded("@behind.fuel", 0)})',
            unit='IF(ISNUMBER(VALUE(LEFT(@yard.fuel_unit,1))),"× ","")&@yard.fuel_unit', name=name, source=source),
    )  # fmt: skip


def _run(units: Units) -> str:
    likely = 'COUNTIFS(@weather.run,2,@weather.date,">="&@weekend.today)'
    return cases(
        ("AND(ISNUMBER(@taps.pulled_on),N(@taps.in)=0)", say("The taps are out.")),
        ("@signs.ahead=0", say("Paste a forecast into Weather.")),
        (f"{likely}>1", say("Likely on {day}, and on {more} after it.", day=day("@signs.likely_day", units), more=counted(f"({likely}-1)", "day", "days"))),
        (f"{likely}=1", say("Likely on {day}.", day=day("@signs.likely_day", units))),
        ("ISNUMBER(@signs.maybe_day)", say("Maybe, on {day}.", day=day("@signs.maybe_day", units))),
        otherwise=say("Not in this forecast."),
    )  # fmt: skip


def _room(units: Units) -> str:
    room = f'{rounded("@behind.room")}&" {units.volume}"'
    return cases(
        ("AND(ISNUMBER(@taps.pulled_on),N(@taps.in)=0)", say("The taps are out.")),
        ("COUNT(@places.room)=0", say("Write in Yard how much each place holds.")),
        ("@behind.room<=0", say("None: boil, or find another place.")),
        ("ISNUMBER(@behind.full_on)", say("{room}; by the forecast it is full on {day}.", room=room, day=day("@behind.full_on", units))),
        ("@yard.taps=0", say("{room}.", room=room)),
        ("@behind.room<@behind.each_day", say("{room}, less than a day of a good run.", room=room)),
        otherwise=say("{room}, about {days} of a good run.", room=room, days=counted("@behind.room/@behind.each_day", "day", "days")),
    )  # fmt: skip


def _jars(units: Units) -> str:
    jar, have = "INDEX(@jars.name,1)", "INDEX(@jars.have,1)"
    number = counted("@behind.jars", "jar", "jars")
    return cases(
        ("N(INDEX(@jars.size,1))=0", say("List your jars in Yard.")),
        ("@behind.jars=0", say("None: nothing is ready to finish.")),
        (f"AND(ISNUMBER({have}),N({have})<@behind.jars)", say("{jar}: {jars}, for all that is part-boiled. You have {have}.", jar=jar, jars=number, have=f'IF({have}=0,"none",{have})')),
        otherwise=say("{jar}: {jars}, for all that is part-boiled.", jar=jar, jars=number),
    )  # fmt: skip


def _today(units: Units) -> Fields:
    return Fields(
        "weekend",
        "Today",
        (
            Field("today", "Today", DATE, "TODAY()"),
            Field(
                "barometer",
                "Barometer in the forecast",
                PRESSURE,
                limits=units.limits(BAROMETER),
                note="as a forecast or an airport gives it; blank: a standard day",
            ),
            Field("done_by", "To be done boiling by", TIME, start=datetime.time(18)),
            Field("standard", "Air pressure here on a standard day", PRESSURE, 'IF(ISNUMBER(@yard.elevation),IFERROR(AIR_PRESSURE(@yard.elevation,UNITS),""),"")'),
            Field(
                "pressure",
                "Air pressure at the pan today",
                PRESSURE,
                cases(
                    ("NOT(ISNUMBER(@yard.elevation))", '""'),
                    ("ISNUMBER(@weekend.barometer)", 'IFERROR(AIR_PRESSURE_HERE(@weekend.barometer,@yard.elevation,UNITS),"")'),
                    otherwise="@weekend.standard",
                ),
            ),
            Field("water", "Water boils at", TEMPERATURE, 'IF(ISNUMBER(@weekend.pressure),IFERROR(WATER_BOILS(@weekend.pressure,UNITS),""),"")', note="on a thermometer without error"),
        ),
        span=1,
    )  # fmt: skip


def _behind(units: Units, rows: Rows) -> Fields:
    """Steps to the answers."""
    goals = []
    for number in range(1, 5):
        water, read = (f"INDEX(@thermometers.{key},{number})" for key in ("water", "read_on"))
        goals.append(Field(f"goal_{number}", f"Thermometer {number} must read", TEMPERATURE,
            f'IF({"TRUE" if number <= rows.thermometers else "FALSE"},IF(AND(ISNUMBER({water}),{read}=@weekend.today),IFERROR(FINISH_READING(@know.target,{water},UNITS),""),""),"")'))  # fmt: skip
    return Fields(
        "behind",
        "Behind the answers",
        (
            Field("goal", "Syrup boils at, without any error", TEMPERATURE, 'IF(ISNUMBER(@weekend.pressure),IFERROR(FINISH_TEMP(@know.target,@weekend.pressure,UNITS),""),"")'),
            Field("rise", "Syrup boils above water by", DIFFERENCE, 'IF(ISNUMBER(@weekend.pressure),IFERROR(FINISH_RISE(@know.target,@weekend.pressure,UNITS),""),"")'),
            *goals,
            Field("goals", "Those read today", WORDS, _goals(units, rows)),
            Field("water", "Water to boil off, all that waits", VOLUME, "MAX(0,@store.volume-@store.syrup)"),
            Field("hours", "Hours for it", HOURS, 'IF(N(@yard.rate)>0,@behind.water/@yard.rate,"")'),
            Field("sap_at", "Sap goes in at", TEMPERATURE, str(units.pick(40, 4))),
            Field("heat", "Heat for it", HEAT, 'IF(AND(@store.volume>0,N(@store.brix)>0),IFERROR(BOIL_HEAT(@store.volume,@store.brix,@know.target,@behind.sap_at,UNITS),""),"")'),
            Field("fuel_by_heat", "Fuel by its heat", FUEL, 'IF(AND(ISNUMBER(@behind.heat),ISNUMBER(@yard.efficiency)),IFERROR(BOIL_FUEL(@behind.heat,TRIM(@yard.fuel),@yard.efficiency,UNITS),""),"")'),
            Field("fuel", "Fuel, taken", FUEL, f'IF(@learned.fuel_rows>={ENOUGH},@behind.water*@learned.fuel_each,@behind.fuel_by_heat)'),
            Field("room", "Room in all places", VOLUME, "SUM(@places.room)"),
            Field("each_day", "Sap of a good day", VOLUME, f"MAX(0.1,@yard.taps*IF(@learned.per_tap_rows>={ENOUGH},@learned.per_tap,{units.pick(1, 3.8)}))", note="learned, or a " + units.pick("gallon", "3.8 L") + " a tap"),
            Field("full_on", "The store is full on", DATE, 'IF(COUNT(@places.room)*COUNTIFS(@weather.coming,">"&@behind.room)=0,"",MINIFS(@weather.date,@weather.coming,">"&@behind.room))'),
            Field("jars", "Jars for what can be finished", COUNT, 'IF(@store.part_syrup>0,IFERROR(JAR_COUNT(@store.part_syrup,INDEX(@jars.size,1),UNITS)+1,0),0)'),
            Field("first_weight", "The first lot: 1 past its time, 2 urgent, 0 neither", COUNT, f"IF(ISNUMBER(@store.first_days),IF(@store.first_days<0,1,IF(@store.first_days<={SOON},2,0)),0)"),
            Field("pull_weight", "The taps: 1 pull them, 2 look, 0 neither", COUNT, cases(
                ("N(@taps.in)=0", "0"),
                ('TRIM(@signs.smell)="yes"', "1"),
                ('OR(TRIM(@signs.buds)="yes",TRIM(@signs.cloudy)="yes",AND(@signs.ahead>0,@signs.frost_ahead=0))', "2"),
                otherwise="0")),
            # TODAY() has both asked anew whenever the workbook is opened; the second holds no call, so that it computes everywhere
            Field("probe", "A sum that is known: 1 is well", COUNT, 'IF(TODAY()>0,IF(IFERROR(ABS(FINISH_TEMP(66.9,29.92,"US")-219.508)<0.01,FALSE),1,0),0)'),
            Field("works", "Computes in this program: 1 is well", COUNT, "IF(COUNT(@behind.probe)=1,IF(AND(@behind.probe=1,TODAY()>0),1,0),0)"),
        ),
        row=3,
        column=4,
        span=1,
    )  # fmt: skip


def _goals(units: Units, rows: Rows) -> str:
    """Those thermometers whose water was read today, each with its goal."""
    parts = []
    for number in range(1, min(4, rows.thermometers) + 1):
        goal, name = f"@behind.goal_{number}", f"INDEX(@thermometers.name,{number})"
        name = f'IF({name}="","number {number}",{name})'
        said = say("; {goal} " + units.temperature + " on {name}", name=name, goal=rounded(goal))
        parts.append(f'IF(ISNUMBER({goal}),{said},"")')
    each = f"MID({'&'.join(parts)},3,200)"
    said = say("Syrup at {each}, by boiling water read today.", each=each)
    goals = ",".join(f"@behind.goal_{number}" for number in range(1, 5))
    return f'IF(COUNT({goals})=0,"",{said})'
