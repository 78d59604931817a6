"""Weekend: the page to open first; each answer is one cell to read aloud, its number beside it."""

from __future__ import annotations

from sheetfuncs.formulas.air import BAROMETER
from sheetfuncs.workbook.model.parts import (
    BRIX,
    COUNT,
    DATE,
    DAYS,
    FUEL,
    HOURS,
    NUMBER,
    PRESSURE,
    TEMPERATURE,
    VOLUME,
    WORDS,
    Field,
    Fields,
    Rows,
    Sheet,
    Text,
    Units,
)
from sheetfuncs.workbook.sheets.cautions import SHORT
from sheetfuncs.workbook.sheets.phrases import day, rounded

PART_BOILED_FROM = 10  # °Brix: above it a lot is no longer called sap


def sheet(units: Units, rows: Rows) -> Sheet:
    """What to do now, from the other sheets."""
    return Sheet(
        "Weekend",
        "What to do now. The numbers come from the other sheets.",
        (_today(units), _answers(units), _behind(units), Text("Cautions", SHORT, across=4, caution=True)),
        freeze=(2, 0),
        widths=(32, 74, 13, 24),
    )


def _today(units: Units) -> Fields:
    return Fields(
        "weekend",
        "",
        (
            Field("today", "Today", DATE, "TODAY()"),
            Field(
                "barometer",
                "Barometer in the forecast",
                PRESSURE,
                limits=units.limits(BAROMETER),
                note=f"{units.pressure}, altimeter setting (as airports report it); blank: a standard day",
            ),
            Field(
                "standard",
                "Air pressure here on a standard day",
                PRESSURE,
                "AIR_PRESSURE(N(@yard.elevation),UNITS)",
                note=units.pressure,
            ),
            Field(
                "pressure",
                "Air pressure at the pan today",
                PRESSURE,
                "IF(ISNUMBER(@weekend.barometer),AIR_PRESSURE_HERE(@weekend.barometer,N(@yard.elevation),UNITS),"
                "@weekend.standard)",
                note=units.pressure,
            ),
            Field(
                "water",
                "Water boils at",
                TEMPERATURE,
                "WATER_BOILS(@weekend.pressure,UNITS)",
                note=f"{units.temperature}, on a thermometer without error",
            ),
        ),
        span=2,
    )


def _answers(units: Units) -> Fields:
    v, t = units.volume, units.temperature
    ahead = '@forecast.date,">="&@weekend.today'

    def days(run: str) -> str:
        return f'COUNTIFS(@forecast.run,"{run}",{ahead})'

    store = "@storage.open,1"
    first = "MATCH(1,@storage.first,0)"
    lot, by, left = (f"INDEX(@storage.{key},{first})" for key in ("lot", "by", "left"))
    kind = f'IF(INDEX(@storage.brix,{first})>={PART_BOILED_FROM},"part-boiled sap","sap")'
    amount = rounded(f"INDEX(@storage.volume,{first})")
    water_today = "AND(ISNUMBER(INDEX(@thermometers.water,1)),INDEX(@thermometers.read_on,1)=@weekend.today)"
    jar = 'IF(INDEX(@jars.name,1)="","",INDEX(@jars.name,1))'
    return Fields(
        "now",
        "Now",
        (
            Field(
                "first",
                "1. Boil first",
                WORDS,
                f'IF(COUNT(@storage.first)=0,"Nothing is waiting in store.","Lot "&{lot}&", "&{amount}&" {v} of "&{kind}&": "&'
                f'IF({left}<0,"past its time since "&{day(by)}&". Smell it; throw it out if it is off.",'
                f'"boil it by "&{day(by)}&"."))',
                beside=Field("first_days", "", DAYS, f'IF(COUNT(@storage.first)=0,"",{left})'),
                note="days left",
            ),
            Field(
                "reading",
                "2. The thermometer must read",
                WORDS,
                f'{rounded("@now.reading_number")}&" {t} when it is syrup"&IF({water_today}," on "&INDEX(@thermometers.name,1)&'
                f'", from its reading in boiling water today.",". Read it in boiling water today to be sure.")',
                beside=Field(
                    "reading_number",
                    "",
                    TEMPERATURE,
                    f"FINISH_READING(@yard.target,IF({water_today},INDEX(@thermometers.water,1),@weekend.water),UNITS)",
                ),
                note=t,
            ),
            Field(
                "syrup",
                "3. Syrup waiting in store",
                WORDS,
                f'{rounded("@now.syrup_number", 2)}&" {v} of syrup, in "&'
                f'{rounded(f"SUMIFS(@storage.volume,{store})")}&" {v} waiting: "&'
                f'{rounded(f"SUMIFS(@storage.volume,{store},@storage.chain,0)")}&" {v} to boil down, "&'
                f'{rounded(f"SUMIFS(@storage.volume,{store})-SUMIFS(@storage.volume,{store},@storage.chain,0)")}&" {v} to finish."',
                beside=Field("syrup_number", "", VOLUME, f"SUMIFS(@storage.syrup,{store})"),
                note=v,
            ),
            Field(
                "boil",
                "4. Hours to boil all of it",
                WORDS,
                f'IF(@now.hours=0,"Nothing to boil.",IF(@yard.rate>0,"About "&{rounded("@now.hours")}&" hours at "&{rounded("@yard.rate")}&'
                f'" {v} an hour","Give a boiling rate or a pan in Yard")&".")',
                beside=Field(
                    "hours",
                    "",
                    HOURS,
                    f"IF(@yard.rate>0,MAX(0,SUMIFS(@storage.volume,{store})-@now.syrup_number)/@yard.rate,0)",
                ),
                note="hours",
            ),
            Field(
                "fuel_words",
                "    and fuel",
                WORDS,
                f'IF(@now.fuel>0,{rounded("@now.fuel", 2)}&" "&@yard.fuel_unit&" of "&@yard.fuel&", at the share of heat in Yard.","None.")',
                beside=Field(
                    "fuel",
                    "",
                    FUEL,
                    "IF(N(@behind.heat)>0,IFERROR(BOIL_FUEL(@behind.heat,@yard.fuel,@yard.efficiency,UNITS),0),0)",
                ),
                note="in the unit that Yard names",
            ),
            Field(
                "room",
                "5. Room left in the containers",
                WORDS,
                f'IF(COUNT(@containers.room)=0,"List your containers in Yard.",{rounded("@now.room_number")}&" {v} of room"&'
                f'IF(@yard.taps>0,", about "&{rounded(f"@now.room_number/@yard.taps/{units.pick(1, 3.8)}")}&" good days of sap.","."))',
                beside=Field("room_number", "", VOLUME, "SUM(@containers.room)"),
                note=v,
            ),
            Field(
                "jars",
                "6. Jars to have hot",
                WORDS,
                f'IF(N(INDEX(@jars.size,1))=0,"List your jars in Yard.",@now.jars_number&" of size "&{jar}&" for what can be finished, "&'
                f'"and a spare one."&IF(AND(ISNUMBER(INDEX(@jars.have,1)),INDEX(@jars.have,1)<@now.jars_number)," You have "&'
                f'INDEX(@jars.have,1)&".",""))',
                beside=Field(
                    "jars_number",
                    "",
                    COUNT,
                    f'IFERROR(JAR_COUNT(SUMIFS(@storage.syrup,{store},@storage.brix,">=20"),INDEX(@jars.size,1),UNITS),0)',
                ),
                note="jars",
            ),
            Field(
                "run",
                "7. Will it run?",
                WORDS,
                f'IF({days(">=0")}=0,"Copy a forecast into Forecast.",IF({days("2")}>0,"Likely on "&{day("@now.run_day")}&'
                f'IF({days("2")}>1,", and "&({days("2")}-1)&" more of the days ahead.","."),'
                f'IF({days("1")}>0,"Maybe, on "&{days("1")}&" of the days ahead.","Not in this forecast.")))',
                beside=Field(
                    "run_day",
                    "",
                    DATE,
                    f'IF({days("2")}=0,"",MINIFS(@forecast.date,@forecast.run,2,{ahead}))',
                ),
                note="next likely day",
            ),
            Field(
                "pull",
                "8. Pull the taps?",
                WORDS,
                "@signs.pull",
                beside=Field("pull_nights", "", COUNT, "@signs.warm"),
                note="nights above freezing in a row",
            ),
            Field(
                "works",
                "This workbook",
                WORDS,
                'IF(@now.probe=1,"computes here.","does not compute in this program: see the Guide.")',
                beside=Field(
                    "probe", "", COUNT, 'IF(IFERROR(ABS(FINISH_TEMP(66.9,29.92,"US")-219.508)<0.01,FALSE),1,0)'
                ),
                note="1 is well",
            ),
        ),
        span=1,
    )


def _behind(units: Units) -> Fields:
    """Steps to the fuel: all lots in store, taken as one of their mean strength."""
    store = "SUMIFS(@storage.volume,@storage.open,1)"
    return Fields(
        "behind",
        "Behind the answers",
        (
            Field(
                "brix",
                "Sugar of all that waits, poured together",
                BRIX,
                f'IF({store}>0,IFERROR(BOIL_BRIX(@now.syrup_number,@yard.target,{store}),""),"")',
                note="°Brix",
            ),
            Field(
                "heat",
                "Heat to boil it down to syrup",
                NUMBER,
                f"IF(ISNUMBER(@behind.brix),IFERROR(BOIL_HEAT({store},@behind.brix,@yard.target,"
                f'{units.pick(40, 4)},UNITS),""),"")',
                note=units.pick("Btu", "MJ"),
            ),
        ),
        span=2,
    )
