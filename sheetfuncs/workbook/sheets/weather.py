"""Weather: a log that stays, forecast and past days alike; will it run, and is the season over."""

from __future__ import annotations

from sheetfuncs.formulas.taps import DAY, NIGHT
from sheetfuncs.workbook.model.formula import cases, say
from sheetfuncs.workbook.model.kinds import COUNT, DATE, NUMBER, SHARE, TEMPERATURE, TEXT, VOLUME, WORDS
from sheetfuncs.workbook.model.parts import Column, Field, Fields, Sheet, Table, Text
from sheetfuncs.workbook.model.rows import Rows
from sheetfuncs.workbook.model.systems import Units
from sheetfuncs.workbook.sheets.phrases import ask, counted, day, judged, look, mend, numbers, when

NIGHTS = 6  # of forecast from which something can be said: official ones have six or seven
WARM_NIGHTS = 4  # in a row above freezing: a caution; common practice, no source
PRODUCES = 0.51  # Houle et al. (2015): from this probability on a week is one of the season
BESIDE = 10  # the column right of the days, where the verdict stands
MEMORY = 2  # nights before, whose frost still lets sap run
KNOWN = 0.9  # of the days since New Year: from this share on the gauge says something
EVENT = (
    37.4,
    3,
)  # °F and °C: a freeze-thaw event is a day whose low is under and whose high is over it, Houle et al. (2015)
AHEAD = '@weather.date,">="&@weekend.today'


def sheet(units: Units, rows: Rows) -> Sheet:
    """The days, with what they mean, and beside them the verdict."""
    return Sheet(
        "Weather",
        "A row a day: the low of the night before and the high, as forecast or as it was. Type over a forecast that is past.",
        (_days(units, rows), _signs(units)),
        tab="log",
        freeze=(4, 1),
        widths=(11, 7, 7, 7, 20, 9, 9, 9, 9, 3, 36, 14, 30),
    )


def _signs(units: Units) -> Fields:
    yes = ("yes", "no")
    return Fields(
        "signs",
        "Pull the taps?",
        (
            Field("pull", "What to do", WORDS, _verdict(units)),
            Field("buds", "Buds are swelling", TEXT, choices=yes),
            Field("cloudy", "Sap is cloudy, yellow or ropy", TEXT, choices=yes),
            Field(
                "smell",
                "A boiled cup smells or tastes of buds",
                TEXT,
                choices=yes,
                note="boil a cup of sap down and taste it",
            ),
            Field("ahead", "Nights known from today on", COUNT, f'COUNTIFS({AHEAD},@weather.low,">-999")'),
            Field("frost_ahead", "of them with frost", COUNT, f'COUNTIFS({AHEAD},@weather.low,"<{units.pick(32, 0)}")'),
            Field(
                "warm",
                "Warm nights in a row ahead, at most",
                COUNT,
                f"IF(@signs.ahead=0,0,MAXIFS(@weather.warm,{AHEAD}))",
            ),
            Field(
                "known_from",
                "Weather known from",
                DATE,
                'IF(COUNT(@weather.date)=0,"",MIN(@weather.date))',
                note="for the gauge it should be 1 January",
            ),
            Field("known", "    that is of the days since 1 January", SHARE, _known()),
            Field("events", "Freeze-thaw days since then", COUNT, "SUM(@weather.event)"),
            Field(
                "degree_days",
                units.pick("Degree-days over 41 °F since then", "Degree-days over 5 °C since then"),
                NUMBER,
                "SUM(@weather.warmth)",
            ),
            Field(
                "goes_on",
                "A week like this is of the season",
                SHARE,
                cases(
                    (f"@signs.known<{KNOWN}", '""'),
                    otherwise='IFERROR(SEASON_GOES_ON(MIN(200,@signs.events),MIN(5000,@signs.degree_days),UNITS),"")',
                ),
                note="a gauge made in Québec; buds and the taste decide",
            ),
            Field("likely_day", "Next likely day", DATE, _next_day(2)),
            Field("maybe_day", "Next day it may run", DATE, _next_day(1)),
        ),
        row=3,
        column=BESIDE,
        span=1,
    )


def _known() -> str:
    """The share of this year's days up to today whose low and high are there."""
    new_year = "DATE(YEAR(@weekend.today),1,1)"
    days = f'COUNTIFS(@weather.date,">="&{new_year},@weather.date,"<="&@weekend.today,@weather.low,">-999",@weather.high,">-999")'
    return f"IF(ISNUMBER(@weekend.today),{days}/(@weekend.today-{new_year}+1),0)"


def _next_day(run: int) -> str:
    found = f"@weather.run,{run},{AHEAD}"
    return f'IF(COUNTIFS({found})=0,"",MINIFS(@weather.date,{found}))'


def _verdict(units: Units) -> str:
    """The signs weighed: only a boiled cup that tastes of buds, or warmth with no frost ahead, ends a season."""
    taste = "Pull the taps: a cup that tastes of buds does not come back."
    wash = "Wash pails and spouts and hang them again: cloudy sap spoiled in the pail, and frost is ahead."
    return cases(
        ("AND(ISNUMBER(@taps.pulled_on),N(@taps.in)=0)", say("The taps are out since {day}.", day=day("@taps.pulled_on", units))),
        ("N(@taps.in)=0", say("No taps are in yet, as far as Yard knows.")),
        ('TRIM(@signs.smell)="yes"', say(taste)),
        ('AND(TRIM(@signs.cloudy)="yes",@signs.frost_ahead>0)', say(wash)),
        ('TRIM(@signs.buds)="yes"', say("Boil a cup and taste it: buds are swelling. Pull the taps if it tastes of them.")),
        ('TRIM(@signs.cloudy)="yes"', say("Boil a cup and taste it: the sap is cloudy and no frost is known ahead. If it is good, wash and hang again.")),
        (f"@signs.ahead<{NIGHTS}", say("Too little weather to say: {nights} from today on, {wanted} are wanted. Type a forecast.",
            nights=f'IF(@signs.ahead=0,"no night is known",{counted("@signs.ahead", "night is known", "nights are known")})', wanted=str(NIGHTS))),
        (f"AND(@signs.frost_ahead=0,@signs.warm>={WARM_NIGHTS},ISNUMBER(@signs.goes_on),N(@signs.goes_on)<{PRODUCES})",
            say("Pull the taps: no frost is ahead, and by its warmth the season is over.")),
        (f"AND(@signs.frost_ahead=0,@signs.warm>={WARM_NIGHTS})",
            say("Boil a cup and taste it: {nights} in a row without frost are ahead.", nights=counted("@signs.warm", "night", "nights"))),
        ("@signs.frost_ahead=0", say("Leave the taps in and look again: no frost is ahead, but few warm nights are either.")),
        otherwise=say("Leave the taps in: {nights} ahead.", nights=counted("@signs.frost_ahead", "night of frost is", "nights of frost are")),
    )  # fmt: skip


def _days(units: Units, rows: Rows) -> Table:
    freezing = units.pick(32, 0)
    mark = units.pick(*EVENT)
    this_year = "[date]>=DATE(YEAR(@weekend.today),1,1)"
    counts = f"IF({numbers('date', 'low', 'high')},AND([date]<=@weekend.today,{this_year}),FALSE)"
    recent = f'@weather.date,">="&[date]-{MEMORY},@weather.date,"<="&[date]'
    columns = (
        Column("date", "Day", DATE),
        Column("low", "Low, the night before", TEMPERATURE, limits=units.limits(NIGHT)),
        Column("high", "High of the day", TEMPERATURE, limits=units.limits(DAY)),
        Column("words", "Will it run?", TEXT, 'IF(ISNUMBER([run]),CHOOSE([run]+1,"no","maybe","likely"),"")', width=9),
        look(
            mend('AND([date]="",COUNT([low],[high])>0)', "Which day is this?", "date"),
            mend(f"AND({numbers('low', 'high')},N([low])>N([high]))", "The low is above the high: swapped?", "low"),
            mend('AND(ISNUMBER([date]),COUNTIF(@weather.date,[date])>1)', "This day is there twice.", "date"),
            ask("AND(ISNUMBER([date]),ISNUMBER([date-1]),N([date])<N([date-1]))", "Earlier than the row above.", "date"),
            ask('AND(ISNUMBER([date]),[date]>=@weekend.today,COUNT([low],[high])=1)', "Low or high is missing.", "low"),
        ),
        Column("run", "0 no, 1 maybe, 2 likely", COUNT, when(numbers("low", "high", "recent"), "SAP_RUNS([low],[recent],[high],UNITS)")),
        Column("warm", "Nights above freezing in a row, from today on", COUNT, f'IF(AND(COUNT([date],[low])=2,N([date])>=@weekend.today),IF([low]>{freezing},N([warm-1])+1,0),"")'),
        Column("sap", "Sap brought in", VOLUME, when('AND(ISNUMBER([date]),COUNTIF(@collection.date,[date])>0)', "SUMIFS(@collection.volume,@collection.date,[date])")),
        Column("per_tap", "Sap per tap", VOLUME, when("AND(ISNUMBER([sap]),@yard.taps>0)", "[sap]/@yard.taps")),
        Column("coming", "Sap to come, summed", VOLUME, 'IF(AND(ISNUMBER([run]),N([date])>=@weekend.today),MAX([coming<])+[run]/2*@behind.each_day,"")', hidden=True),
        Column("recent", "Lowest of three nights", TEMPERATURE, f'IF(COUNT([date],[low])=2,MINIFS(@weather.low,{recent}),"")', hidden=True),
        Column("event", "Freeze-thaw", COUNT, f"IF({counts},IF(AND([low]<{mark},[high]>{mark}),1,0),0)", hidden=True),
        Column("warmth", "Degree-days", NUMBER, f"IF({counts},IFERROR(SEASON_WARMTH([low],[high],UNITS),0),0)", hidden=True),
    )  # fmt: skip
    return Table("weather", "", judged(columns, units), rows.days)


def rule(units: Units, across: int) -> Text:
    """What the sheet rests on, for the Guide."""
    return Text(
        "What Weather rests on",
        (
            "Sap runs when frost is followed by a thaw, and for a day or two after: best after nights of "
            + units.pick("20 to 28 °F and with days around 40 °F", "-7 to -2 °C and with days around 5 °C")
            + ". Common practice; it says nothing of how much.",
            "The end: the gauge is a published one (Houle and others, 2015), made for weeks in one province; it needs the "
            "weather from 1 January on. Cloudy sap in mid-season is spoiled in the pail, not in the tree. What decides is a "
            "cup of sap, boiled down and tasted.",
        ),
        across=across,
    )
