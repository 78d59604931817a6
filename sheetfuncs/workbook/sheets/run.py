"""The log of readings in Finish: each with its own thermometer, what it tells, and what to do."""

from __future__ import annotations

from sheetfuncs.formulas.finish import PAN_READING
from sheetfuncs.formulas.syrup import THICKEST
from sheetfuncs.workbook.model.formula import NOTHING, cases, say
from sheetfuncs.workbook.model.kinds import (
    BRIX,
    COUNT,
    MINUTES,
    RATE,
    SMALL,
    TEMPERATURE,
    TEXT,
    TIME,
    VOLUME,
)
from sheetfuncs.workbook.model.parts import Column, Finding, Table
from sheetfuncs.workbook.model.rows import Rows
from sheetfuncs.workbook.model.systems import Units
from sheetfuncs.workbook.sheets.phrases import ask, counted, judged, look, rounded, when
from sheetfuncs.workbook.sheets.readings import amount, spread, was_read, water_of

PACE_OVER = 11  # rows above this one, of any batch, that may tell the pace
PACE_MINUTES = 30  # and how far back
NOISY = 4  # °Brix: a reading less sure than this tells no pace
TIMES = 2.5  # °Brix: a thermometer less sure than this of the goal cannot time it
CALLS = 3  # minutes before the end at which nobody leaves the pan
HOURS = 120  # minutes from where on they are told in hours
HALF_DAY, BACK = 720, 600  # minutes: where times wrap, and from where on they rather ran backwards


def log(units: Units, rows: Rows) -> Table:
    def of_batch(key: str) -> str:
        return f"INDEX(@batches.{key},[no])"

    target = "@know.target"
    read = "ISNUMBER([reading])"
    first = "MAX(1,MIN(@batches.planned))"
    number = f"IF(AND(ISNUMBER([batch]),N([batch])>=1,N([batch])<={rows.batches}),INT(N([batch])),{{above}})"
    own = 'TRIM([thermometer]&"")'
    meter = cases(
        ('[at]=""', NOTHING),
        (f'{own}<>""', own),
        ("[before]>0", "INDEX([meter<],[before]+1)"),
        otherwise=f'TRIM({of_batch("thermometer")}&"")',
    )
    its_own = f'AND([at]<>"",[meter]=TRIM({of_batch("thermometer")}&""),ISNUMBER({of_batch("water")}))'
    water, origin = water_of("[meter]", "[typed_water]", of_batch("date"))
    gap = "MOD(ROUND(([time]-INDEX([time<],[last_timed]+1))*1440,2)," + f"{HALF_DAY})"
    minute = cases(
        ('[timed]=""', NOTHING),
        ("[last_timed]=0", "0"),
        otherwise=f"INDEX([minute<],[last_timed]+1)+[gap]-IF([gap]>{BACK},{HALF_DAY},0)",
    )
    fastest = f"MAX(N({of_batch('rate')}),N([pace]))"
    share = f"[brix]*({target}-[upper])/([upper]*({target}-[brix]))"  # of the water left, at the upper end
    earliest = cases(
        (f"OR([upper]>={target},[brix]>={target})", "0"),
        otherwise=f"ROUNDDOWN(60*[water_left]*{share}/{fastest},0)",
    )
    columns = (
        Column("time", "Time", TIME, width=9),
        Column("reading", "Reading", TEMPERATURE, limits=units.limits(PAN_READING), width=10),
        look(*_findings(units), heading="Do", otherwise="[advice]", width=34),
        Column("batch", "Batch", COUNT, limits=(1, rows.batches), hint="Blank: as in the row above."),
        Column(
            "thermometer",
            "Thermometer",
            TEXT,
            choices="@thermometers.name",
            hint="Blank: as before; type it when you swap.",
        ),
        Column(
            "brix", "Sugar now", BRIX, when('AND([at]<>"",ISNUMBER([water]))', "BRIX_BY_BOIL([reading],[water],UNITS)")
        ),
        Column(
            "error",
            "Give or take",
            BRIX,
            when("ISNUMBER([brix])", spread("[reading]", "[water]", "[meter]", "[from]", units)),
        ),
        Column(
            "cold",
            "In the pan, cold",
            VOLUME,
            when("N([brix])>=0.1", f"SYRUP_FROM_SAP({of_batch('syrup')},{target},[brix])"),
        ),
        Column(
            "water_left",
            "Water left",
            VOLUME,
            when("ISNUMBER([cold])", f"IF([brix]>={target},0,BOIL_WATER([cold],[brix],{target}))"),
        ),
        Column(
            "minutes",
            "Minutes, at the earliest",
            MINUTES,
            when(f"AND(ISNUMBER([water_left]),N([at_goal])>0,N([at_goal])<={TIMES},{fastest}>0)", earliest),
        ),
        Column("advice", "Do, whatever else is wrong", TEXT, _do(units), hidden=True),
        Column("goal_words", "Goal", TEXT, _goal_words(units), hidden=True),
        Column("row", "Row", COUNT, fixed=tuple(range(1, rows.readings + 1)), hidden=True),
        Column("at", "Row, where read", COUNT, f'IF({read},[row],"")', hidden=True),
        Column(
            "no",
            "Batch, as counted",
            COUNT,
            (number.format(above=first), *(number.format(above="[no-1]"),) * (rows.readings - 1)),
            hidden=True,
        ),
        Column("before", "Row before", COUNT, 'IF([at]="",0,MAXIFS([at<],[no<],[no]))', hidden=True),
        Column("meter", "Thermometer, as counted", TEXT, meter, hidden=True),
        Column(
            "typed_water", "Its water, of the batch", TEMPERATURE, f'IF({its_own},{of_batch("water")},"")', hidden=True
        ),
        Column("water", "Its boiling water", TEMPERATURE, f'IF([at]="","",{water})', hidden=True),
        Column("from", "Where that is from", TEXT, f'IF([at]="","",{origin})', hidden=True),
        Column("timed", "Row, where timed", COUNT, 'IF(AND([at]<>"",ISNUMBER([time])),[row],"")', hidden=True),
        Column("last_timed", "Timed row before", COUNT, 'IF([timed]="",0,MAXIFS([timed<],[no<],[no]))', hidden=True),
        Column("gap", "Minutes since", MINUTES, f"IF(N([last_timed])=0,0,{gap})", hidden=True),
        Column("minute", "Minute of the run", MINUTES, minute, hidden=True),
        Column("upper", "°Brix at most", BRIX, 'IF(ISNUMBER([error]),MIN(85,[brix]+[error]),"")', hidden=True),
        Column(
            "goal",
            "Syrup at",
            TEMPERATURE,
            when(f"AND(ISNUMBER([water]),{was_read('[from]')})", f"ROUND(FINISH_READING({target},[water],UNITS),1)"),
            hidden=True,
        ),
        Column(
            "at_goal",
            "Give or take at the goal",
            BRIX,
            when("ISNUMBER([goal])", spread("[goal]", "[water]", "[meter]", "[from]", units)),
            hidden=True,
        ),
        Column(
            "paced",
            "Tells the pace",
            COUNT,
            f"IF(AND(COUNT([minute],[water_left])=2,N([error])<={NOISY},N([water_left])>0),1,0)",
            hidden=True,
        ),
        Column("x", "Minute, or 0", MINUTES, "N([minute])", hidden=True),
        Column("y", "Water left, or 0", VOLUME, "N([water_left])", hidden=True),
        Column("pace", "Pace, an hour", RATE, _pace(), hidden=True),
        Column(
            "fix",
            "Hot water to stir in",
            SMALL,
            when(f"AND(N([brix])>{THICKEST},ISNUMBER([cold]))", f"SYRUP_ADJUST([cold],[brix],{target},UNITS)"),
            hidden=True,
        ),
        *_drawn(),
    )
    return Table("run", "", judged(columns, units), rows.readings, lines=2)


def _pace() -> str:
    """Water boiled off an hour by the last readings of this thermometer: the slope of the line through them."""
    near = f"[paced~{PACE_OVER}]*([no~{PACE_OVER}]=[no])*([meter~{PACE_OVER}]=[meter])*([x~{PACE_OVER}]>=[x]-{PACE_MINUTES})"

    def total(*parts: str) -> str:
        return f"SUMPRODUCT({'*'.join([near, *(f'[{part}~{PACE_OVER}]' for part in parts)])})"

    count, x, y = total(), total("x"), total("y")
    slope = f"({count}*{total('x', 'y')}-{x}*{y})/({count}*{total('x', 'x')}-{x}^2)"
    return f'IF([paced]=0,"",IF({count}<3,"",IFERROR(-60*{slope},"")))'


def _goal_words(units: Units) -> str:
    """What is missing before the goal is known."""
    return cases(
        ('OR([at]="",ISNUMBER([goal]))', NOTHING),
        ('[meter]=""', say("Name the thermometer and read it in boiling water.")),
        (
            "ISNUMBER([brix])",
            say(
                "Read {meter} in boiling water, for Yard. About {brix} °Brix by the air alone, a guess.",
                meter="[meter]",
                brix=rounded("[brix]", 0),
            ),
        ),
        otherwise=say("Read {meter} in boiling water and type it in Yard.", meter="[meter]"),
    )


def _findings(units: Units) -> tuple[Finding, ...]:
    cooler = units.pick(5, 3)
    return (
        ask(
            "AND(ISNUMBER([reading]),ISNUMBER([water]),N([reading])<N([water]))",
            "It cannot boil colder than water: not boiling yet, or the water reading is wrong.",
            "reading",
        ),
        ask(
            f"AND([before]>0,N([batch])=0,ISNUMBER([reading]),N([reading])<N(INDEX([reading<],[before]+1))-{cooler})",
            "Much colder than before: is it another batch? Type its number under Batch.",
            "batch",
        ),
    )


def _do(units: Units) -> str:
    brix = rounded("[brix]")
    hot = "{brix} °Brix, too thick. Stir in about {water} {small} of hot water, off the fire, slowly (it spatters)."
    stir = say("Off now: " + hot, brix=brix, water=amount("[fix]", units), small=f'"{units.small}"')
    thick = cases(
        ("ISNUMBER([fix])", stir),
        otherwise=say(
            "Off now: {brix} °Brix, too thick. Stir in hot water, off the fire, slowly (it spatters), and read again.",
            brix=brix,
        ),
    )
    soon = say("Stay with it: about {minutes}.", minutes=counted("[minutes]", "minute", "minutes"))
    return cases(
        ("NOT(ISNUMBER([reading]))", NOTHING),
        ("NOT(ISNUMBER([goal]))", "[goal_words]"),
        (
            "AND([reading]>[goal],NOT(ISNUMBER([brix])))",
            say("Off now: far too thick. Stir in hot water, off the fire, slowly (it spatters)."),
        ),
        (f"N([brix])>{THICKEST}", thick),
        ("[reading]>=[goal]", say("Take it off: it is syrup.")),
        (
            f'AND(N([at_goal])>{TIMES},[from]="another day")',
            say(
                "Read {meter} in boiling water today: then it can be timed. Off at about {goal}.",
                meter="[meter]",
                goal=rounded("[goal]"),
            ),
        ),
        (
            f"N([at_goal])>{TIMES}",
            say("This thermometer cannot time it: watch the reading, off at {goal}.", goal=rounded("[goal]")),
        ),
        ("AND(NOT(ISNUMBER([minutes])),N([brix])<0.5)", say("Off at {goal}.", goal=rounded("[goal]"))),
        (
            "NOT(ISNUMBER([minutes]))",
            say("Off at {goal}. About {brix} °Brix now.", goal=rounded("[goal]"), brix=rounded("[brix]", 0)),
        ),
        ("[minutes]<1", say("Stay with it: syrup any moment, off at {goal}.", goal=rounded("[goal]"))),
        (f"[minutes]<={CALLS}", soon),
        (f"[minutes]>={HOURS}", say("{hours} hours at the earliest.", hours=rounded("[minutes]/60"))),
        otherwise=say("{minutes} at the earliest.", minutes=counted("[minutes]", "minute", "minutes")),
    )


def _drawn() -> tuple[Column, ...]:
    """The run that the panel shows, for the chart: other rows repeat the point before, so that no cell is an error."""
    mine = "AND(ISNUMBER([minute]),[no]=@panel.shown)"
    first = "MINIFS(@run.timed,@run.no,@panel.shown)"

    def point(key: str, of: str) -> Column:
        start = f'IF({first}>0,INDEX(@run.{of},{first}),"")'
        again = f'IF([{key}-1]="",{start},[{key}-1])'
        return Column(key, of, MINUTES, f"IF({mine},[{of}],{again})", hidden=True)

    goal = 'IF([drawn_minute]="","",@panel.goal)'
    return (
        point("drawn_minute", "minute"),
        point("drawn", "reading"),
        Column("drawn_goal", "goal", TEMPERATURE, goal, hidden=True),
        Column("drawn_thick", "too thick", TEMPERATURE, 'IF([drawn_minute]="","",@drawn.thick)', hidden=True),
    )
