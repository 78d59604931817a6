"""Season: totals, what was learned, charts, earlier seasons, words to the next keeper."""

from __future__ import annotations

from functools import partial

from sheetfuncs.formulas.vocabulary import STRENGTH
from sheetfuncs.workbook.model.formula import cases, say
from sheetfuncs.workbook.model.kinds import (
    BRIX,
    COUNT,
    DATE,
    DIFFERENCE,
    FUEL,
    HOURS,
    MASS,
    MONEY,
    RATE,
    RATIO,
    SHARE,
    TEXT,
    VOLUME,
    WORDS,
)
from sheetfuncs.workbook.model.parts import Column, Field, Fields, Sheet, Table
from sheetfuncs.workbook.model.rows import Rows
from sheetfuncs.workbook.model.systems import Units
from sheetfuncs.workbook.sheets import ledger
from sheetfuncs.workbook.sheets.phrases import counted, rounded, when

# Of syrup, as it looks in a glass: light to dark, so that it can be told in grey too.
SHADES = {
    "golden": ("Golden", "#F2C75C"),
    "amber": ("Amber", "#C8811E"),
    "dark": ("Dark", "#7A3B12"),
    "very_dark": ("Very Dark", "#2E1408"),
    "unjudged": ("", "#FFFFFF"),
}


def sheet(units: Units, rows: Rows) -> Sheet:
    """The season in numbers."""
    return Sheet(
        "Season",
        "The season in numbers. Nothing to type but words to the next keeper and earlier seasons, at the bottom.",
        (
            _totals(units),
            _learned(units),
            *ledger.blocks(units),
            _words(rows),
            _batches(units, rows),
            _this(rows),
            _past(rows),
        ),
        tab="result",
        freeze=(3, 0),
        widths=(31, 12, 12, 12, 12, 12, 12, 12, 12, 12, 12, 12, 12, 30),
    )


def _totals(units: Units) -> Fields:
    sap, syrup = "SUM(@collection.volume)", "SUM(@collection.syrup)"
    per_tap = 'IF(AND(@yard.taps>0,{0}>0),{0}/@yard.taps,"")'
    made = "(@season.bottled+@season.waiting)"
    v = units.volume

    def day_of(end: str) -> str:
        sap_came = '@collection.name,"S*",@collection.date,">0"'
        return f'IF(COUNTIFS({sap_came})=0,"",{end}IFS(@collection.date,{sap_came}))'

    return Fields(
        "season",
        "Totals",
        (
            Field("first", "First run", DATE, day_of("MIN")),
            Field("last", "Last run", DATE, day_of("MAX")),
            Field("days", "Days it ran", COUNT, "SUM(@collection.new_day)"),
            Field("taps", "Taps", COUNT, "@yard.taps"),
            Field("sap", "Sap collected", VOLUME, f'IF({sap}>0,{sap},"")'),
            Field(
                "brix",
                "Its sugar, on average",
                BRIX,
                f'IF({syrup}>0,IFERROR(BOIL_BRIX({syrup},@know.target,{sap}),""),"")',
            ),
            Field("guessed", "    of it guessed", SHARE, f'IF({sap}>0,SUMIFS(@collection.volume,@collection.guess,1)/{sap},"")', note="of the sap; its sugar was not measured"),
            Field("expected", "Syrup in all that sap", VOLUME, f'IF({syrup}>0,{syrup},"")', note="at the target, cold"),
            Field("bottled", "Syrup bottled", VOLUME, "SUM(@bottles.cold)", note="cold"),
            Field("waiting", "Syrup still waiting in store", VOLUME, "@store.syrup"),
            Field("sap_per_tap", "Sap per tap", VOLUME, per_tap.format("N(@season.sap)")),
            Field(
                "syrup_per_tap",
                "Syrup per tap, with what waits",
                VOLUME,
                per_tap.format(made),
                note=units.pick("a quart", "a litre") + " is a good year (common practice)",
            ),
            Field("ratio", "Sap for one of syrup", RATIO, f'IF(AND({made}>0,N(@season.sap)>0),@season.sap/{made},"")', note="with the syrup that waits"),
            Field("water", "Water boiled off", VOLUME, 'IF(COUNT(@boil.water_off)=0,"",SUM(@boil.water_off))'),
            Field("hours", "Hours at the pan", HOURS, 'IF(COUNT(@boil.spent)=0,"",SUM(@boil.spent))'),
            Field("fuel", "Fuel used", FUEL, 'IF(COUNT(@boil.fuel)=0,"",SUM(@boil.fuel))', beside=Field("fuel_in", "", TEXT, '@yard.fuel_unit&""')),
            Field("cost", "Fuel cost", MONEY, 'IF(AND(N(@know.fuel_price)>0,ISNUMBER(@season.fuel)),@season.fuel*@know.fuel_price,"")'),
            Field("cost_each", f"Fuel cost for each {v} of syrup", MONEY, f'IF(AND(ISNUMBER(@season.cost),{made}>0),@season.cost/{made},"")'),
        ),
        span=1,
    )  # fmt: skip


def _learned(units: Units) -> Fields:
    """What the yard's own rows say; each figure with the number of rows it rests on."""
    rows = 'COUNTIFS(@boil.known,1,@boil.spent,">0")'
    fuelled = 'COUNTIFS(@boil.fuel,">0",@boil.water_off,">0")'
    likely = '@weather.run,2,@weather.per_tap,">=0"'
    boils = partial(counted, one="boil", more="boils")
    return Fields(
        "learned",
        "Learned from your own rows",
        (
            Field("rate", "Boils off", RATE, f'IF({rows}=0,"",SUMIFS(@boil.water_off,@boil.known,1,@boil.spent,">0")/SUMIFS(@boil.spent,@boil.known,1))', note="of water"),
            Field("rate_rows", "    from boils", COUNT, rows),
            Field("fuel_each", f"Fuel for each {units.volume} of water", FUEL, f'IF({fuelled}=0,"",SUMIFS(@boil.fuel,@boil.fuel,">0",@boil.water_off,">0")/SUMIFS(@boil.water_off,@boil.fuel,">0",@boil.water_off,">0"))'),
            Field("fuel_rows", "    from boils with fuel", COUNT, fuelled),
            Field("per_tap", "Sap per tap on a likely day", VOLUME, f'IF(COUNTIFS({likely})=0,"",AVERAGEIFS(@weather.per_tap,{likely}))'),
            Field("per_tap_rows", "    from days", COUNT, f"COUNTIFS({likely})"),
            Field("offset", "All thermometers less the cup", DIFFERENCE, 'IF(COUNT(@batches.offset)=0,"",AVERAGE(@batches.offset))', note="+ says syrup too early, - too late",
                  was=("Thermometers less the cup, over all batches",)),
            Field("offset_rows", "    from batches", COUNT, "COUNT(@batches.offset)"),
            Field(
                "said",
                "In words",
                WORDS,
                cases(
                    ("AND(@learned.rate_rows>0,N(@learned.rate)>=0.05,@learned.fuel_rows>0,N(@learned.fuel_each)>=0.0005)", say(
                        "About {rate} an hour, from {boils}; {fuel} {unit} of fuel for each " + units.volume + " of water, from {fuelled}.",
                        rate=f'{rounded("@learned.rate")}&" {units.volume}"', boils=boils("@learned.rate_rows"),
                        fuel=rounded("@learned.fuel_each", 3), unit="@yard.fuel_unit", fuelled=boils("@learned.fuel_rows"))),
                    ("AND(@learned.rate_rows>0,N(@learned.rate)>=0.05)", say("About {rate} an hour, from {boils}.", rate=f'{rounded("@learned.rate")}&" {units.volume}"', boils=boils("@learned.rate_rows"))),
                    otherwise=say("Nothing yet: hours, jars and fuel of two boils teach the plans."),
                ),
            ),
        ),
        span=1,
    )  # fmt: skip


def _words(rows: Rows) -> Table:
    columns = (
        Column("date", "Day", DATE),
        Column("words", "Words to the next keeper: a line a weekend, a batch, a tree", TEXT, width=14),
    )
    return Table("words", "What to tell the next keeper", columns, rows.words)


def _batches(units: Units, rows: Rows) -> Table:
    def of(key: str) -> tuple[str, ...]:
        cells = [f"INDEX(@batches.{key},{number})" for number in numbers]
        return tuple(f'IF({cell}="","",{cell})' for cell in cells)

    numbers = tuple(range(1, rows.batches + 1))
    bottled = "SUMIFS(@bottles.cold,@bottles.batch,[batch])"
    return Table(
        "by_batch",
        "Batches",
        (
            Column("batch", "Batch", COUNT, fixed=numbers),
            Column("date", "Finished on", DATE, of("date")),
            Column("expected", "Expected", VOLUME, of("syrup")),
            Column("bottled", "Bottled, cold", VOLUME, f'IF({bottled}>0,{bottled},"")'),
            Column(
                "against", "Of expected", SHARE, when("AND(N([expected])>0,N([bottled])>0)", "[bottled]/[expected]")
            ),
            Column("brix", "Strength", BRIX, of("strength")),
            Column("state", "It was", TEXT, of("state"), width=10),
            Column("colour", units.pick("Color", "Colour"), TEXT, of("colour"), width=10),
            Column("taste", "Taste", TEXT, of("taste"), width=12),
            Column("sugar", "Sugar bottled", MASS, "SUMIFS(@bottles.sugar,@bottles.batch,[batch])", hidden=True),
            Column(
                "open",
                "Its strength leaves open",
                MASS,
                tuple(
                    f'IF([sugar]>0,{ledger.DENSER_SYRUP}*[sugar]*IF(COUNTIFS(@bottles.batch,[batch],@bottles.brix,">0")>0,@know.hydrometer_error,'
                    f"IF(ISNUMBER(INDEX(@batches.error,{number})),INDEX(@batches.error,{number}),{ledger.UNREAD}))/MAX(1,N(@know.target)),0)"
                    for number in numbers
                ),
                hidden=True,
            ),
            Column(
                "amount",
                "Bottled, else expected",
                VOLUME,
                'IF(ISNUMBER([bottled]),[bottled],IF(ISNUMBER([expected]),[expected],""))',
                hidden=True,
            ),
            *(
                Column(key, f"{name or 'Not judged'}", VOLUME, f'IF(TRIM([colour])="{name}",[amount],"")', hidden=True)
                for key, (name, _) in SHADES.items()
            ),
        ),
        rows.batches,
    )


def _this(rows: Rows) -> Table:
    """This season as a line that stands under the same headings as the earlier ones."""
    now = {
        "season": '@yard.year&""',
        "taps": "@season.taps",
        "sap": "@season.sap",
        "brix": "@season.brix",
        "syrup": "@season.bottled",
        "first": "@season.first",
        "last": "@season.last",
        "days": "@season.days",
        "hours": "@season.hours",
        "fuel": "@season.fuel",
        "note": '"so far"',
    }
    columns = [column._replace(formula=now.get(column.key, column.formula)) for column in _past(rows).columns]
    return Table("this", "This season", columns, 1)


def _past(rows: Rows) -> Table:
    return Table(
        "past",
        "Earlier seasons",
        (
            Column("season", "Season", TEXT),
            Column("taps", "Taps", COUNT, limits=(0, 100000)),
            Column("sap", "Sap", VOLUME),
            Column("brix", "Its sugar", BRIX, limits=(STRENGTH.us)),
            Column("syrup", "Syrup", VOLUME),
            Column("first", "First run", DATE),
            Column("last", "Last run", DATE),
            Column("days", "Days it ran", COUNT, limits=(0, 366)),
            Column("hours", "Hours", HOURS),
            Column("fuel", "Fuel", FUEL),
            Column("sap_per_tap", "Sap per tap", VOLUME, when("AND(N([taps])>0,ISNUMBER([sap]))", "[sap]/[taps]")),
            Column(
                "syrup_per_tap", "Syrup per tap", VOLUME, when("AND(N([taps])>0,ISNUMBER([syrup]))", "[syrup]/[taps]")
            ),
            Column("ratio", "Sap for one of syrup", RATIO, when("AND(ISNUMBER([sap]),N([syrup])>0)", "[sap]/[syrup]")),
            Column("note", "Note", TEXT),
        ),
        rows.past,
    )
