"""Season: totals, the sugar ledger that closes, charts, and earlier seasons beside it."""

from __future__ import annotations

from functools import partial

from sheetfuncs.formulas.vocabulary import STRENGTH
from sheetfuncs.workbook.model.parts import (
    BRIX,
    COUNT,
    DATE,
    FUEL,
    HOURS,
    MASS,
    MONEY,
    RATIO,
    SHARE,
    TEXT,
    VOLUME,
    Chart,
    Column,
    Field,
    Fields,
    Rows,
    Series,
    Sheet,
    Table,
    Units,
)
from sheetfuncs.workbook.sheets.phrases import when

LEDGER = (
    "Came from the trees",
    "Thrown out with ice",
    "In store: sap and part-boiled",
    "Bottled",
    "Not accounted for",
    "Went into boils",
    "Came out of boils",
)
CHART = (430, 265)


def sheet(units: Units, rows: Rows) -> Sheet:
    """The season in numbers."""
    return Sheet(
        "Season",
        "The season in numbers. Nothing to type here but earlier seasons, at the bottom.",
        (
            _totals(units),
            _ledger(units),
            _batches(units, rows),
            _this(units, rows),
            _past(units, rows),
            *_charts(units),
        ),
        freeze=(2, 0),
        widths=(30, 12, 12, 14, 12, 12, 12, 12, 12, 12, 12, 12, 12, 30),
    )


def _totals(units: Units) -> Fields:
    v = units.volume
    sap, syrup = "SUM(@collection.sap)", "SUM(@collection.syrup)"
    per_tap = 'IF(AND(@yard.taps>0,{0}>0),{0}/@yard.taps,"")'
    return Fields(
        "season",
        "Totals",
        (
            Field("first", "First run", DATE, 'IF(COUNT(@collection.date)=0,"",MIN(@collection.date))'),
            Field("last", "Last run", DATE, 'IF(COUNT(@collection.date)=0,"",MAX(@collection.date))'),
            Field("days", "Days it ran", COUNT, "SUM(@collection.new_day)"),
            Field("taps", "Taps", COUNT, "@yard.taps"),
            Field("sap", "Sap collected", VOLUME, sap, note=v),
            Field(
                "brix",
                "Its sugar, on average",
                BRIX,
                f'IF({syrup}>0,IFERROR(BOIL_BRIX({syrup},@yard.target,{sap}),""),"")',
                note="°Brix",
            ),
            Field("expected", "Syrup in all that sap", VOLUME, syrup, note=f"{v} at the target, cold"),
            Field("bottled", "Syrup bottled", VOLUME, "SUM(@bottles.cold)", note=f"{v}, cold"),
            Field("sap_per_tap", "Sap per tap", VOLUME, per_tap.format("@season.sap"), note=v),
            Field(
                "syrup_per_tap",
                "Syrup per tap, bottled",
                VOLUME,
                per_tap.format("@season.bottled"),
                note=f"{v}; a quart (1 L) is a good year from buckets (common practice)",
            ),
            Field(
                "ratio",
                "Sap for one of syrup, bottled",
                RATIO,
                'IF(@season.bottled>0,@season.sap/@season.bottled,"")',
            ),
            Field("water", "Water boiled off", VOLUME, "SUM(@boil.water_off)", note=v),
            Field("hours", "Hours at the pan", HOURS, "SUM(@boil.hours)"),
            Field(
                "fuel", "Fuel used", FUEL, "SUM(@boil.fuel)", beside=Field("fuel_in", "", TEXT, '@yard.fuel_unit&""')
            ),
            Field("cost", "Fuel cost", MONEY, 'IF(N(@yard.fuel_price)>0,@season.fuel*@yard.fuel_price,"")'),
            Field(
                "cost_each",
                f"Fuel cost for each {v} of syrup",
                MONEY,
                'IF(AND(ISNUMBER(@season.cost),@season.bottled>0),@season.cost/@season.bottled,"")',
            ),
        ),
        span=1,
    )


def _ledger(units: Units) -> Table:
    """Sugar cannot vanish: what came in is thrown out with ice, in store, in jars, or not accounted for."""
    ice, kept = "SUM(@collection.ice_sugar)", "SUM(@collection.sugar)"
    store = "SUMIFS(@storage.sugar,@storage.open,1)"
    bottled = "SUM(@bottles.sugar)"
    # A typical strength turns an instrument's error into a share of the sugar read with it.
    sap_error = "@yard.brix_error/MAX(N(@season.brix),1)"
    one = "SQRT(@yard.volume_error^2+({0})^2)"
    collected = f"({kept}+{ice})*{one.format(sap_error)}/SQRT(MAX(1,COUNT(@collection.sugar)))"
    stored = f"{store}*{one.format('@yard.brix_error/20')}/SQRT(MAX(1,SUM(@storage.open)))"
    jars = f"{bottled}*{one.format('@yard.hydrometer_error/66.9')}/SQRT(MAX(1,COUNT(@bottles.sugar)))"
    mass = (
        f"{kept}+{ice}",
        ice,
        store,
        bottled,
        f"{kept}-{store}-{bottled}",
        "SUM(@boil.sugar_in)",
        "SUM(@boil.sugar_out)",
    )
    error = (
        collected,
        f"{ice}*0.2",
        stored,
        jars,
        f"SQRT(({collected})^2+({stored})^2+({jars})^2)",
        f"SUM(@boil.sugar_in)*{one.format(sap_error)}/SQRT(MAX(1,COUNT(@boil.sugar_in)))",
        f"SUM(@boil.sugar_out)*{one.format('@yard.brix_error/20')}/SQRT(MAX(1,COUNT(@boil.sugar_out)))",
    )
    return Table(
        "ledger",
        "Where the sugar went",
        (
            Column("what", "Sugar", TEXT, fixed=LEDGER),
            Column("mass", units.mass, MASS, mass),
            Column(
                "share",
                "Of all",
                SHARE,
                'IF(SUM(@collection.sugar)>0,[mass]/(SUM(@collection.sugar)+SUM(@collection.ice_sugar)),"")',
            ),
            Column("error", f"Instruments leave open, ± {units.mass}", MASS, error),
            Column(
                "syrup", f"As syrup, {units.volume}", VOLUME, when("TRUE", "[mass]/SAP_SUGAR(1,@yard.target,UNITS)")
            ),
        ),
        len(LEDGER),
    )


def _batches(units: Units, rows: Rows) -> Table:
    numbers = tuple(range(1, rows.batches + 1))
    return Table(
        "by_batch",
        "Batches",
        (
            Column("batch", "Batch", COUNT, fixed=numbers),
            Column("date", "Finished on", DATE, tuple(f'IF(N(@batch{n}.date)>0,@batch{n}.date,"")' for n in numbers)),
            Column(
                "expected",
                f"Expected, {units.volume}",
                VOLUME,
                tuple(f'IF(ISNUMBER(@batch{n}.syrup),@batch{n}.syrup,"")' for n in numbers),
            ),
            Column(
                "bottled",
                f"Bottled, cold, {units.volume}",
                VOLUME,
                'IF(SUMIFS(@bottles.cold,@bottles.batch,[batch])>0,SUMIFS(@bottles.cold,@bottles.batch,[batch]),"")',
            ),
            Column("against", "Of expected", SHARE, when("COUNT([expected],[bottled])=2", "[bottled]/[expected]")),
            Column(
                "brix", "True °Brix", BRIX, tuple(f'IF(ISNUMBER(@check{n}.true),@check{n}.true,"")' for n in numbers)
            ),
            Column("state", "It was", TEXT, tuple(f'@check{n}.state&""' for n in numbers)),
        ),
        rows.batches,
    )


def _this(units: Units, rows: Rows) -> Table:
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
    columns = [column._replace(formula=now.get(column.key, column.formula)) for column in _past(units, rows).columns]
    return Table("this", "This season", columns, 1)


def _past(units: Units, rows: Rows) -> Table:
    v = units.volume
    sap_per_tap = when("AND(N([taps])>0,ISNUMBER([sap]))", "[sap]/[taps]")
    syrup_per_tap = when("AND(N([taps])>0,ISNUMBER([syrup]))", "[syrup]/[taps]")
    return Table(
        "past",
        "Earlier seasons",
        (
            Column("season", "Season", TEXT),
            Column("taps", "Taps", COUNT, limits=(0, 100000)),
            Column("sap", f"Sap, {v}", VOLUME),
            Column("brix", "°Brix", BRIX, limits=units.limits(STRENGTH)),
            Column("syrup", f"Syrup, {v}", VOLUME),
            Column("first", "First run", DATE),
            Column("last", "Last run", DATE),
            Column("days", "Days it ran", COUNT, limits=(0, 366)),
            Column("hours", "Hours", HOURS),
            Column("fuel", "Fuel", FUEL),
            Column("sap_per_tap", f"Sap per tap, {v}", VOLUME, sap_per_tap),
            Column("syrup_per_tap", f"Syrup per tap, {v}", VOLUME, syrup_per_tap),
            Column("ratio", "Sap for one of syrup", RATIO, when("AND(ISNUMBER([sap]),N([syrup])>0)", "[sap]/[syrup]")),
            Column("note", "Note", TEXT),
        ),
        rows.past,
    )


def _charts(units: Units) -> tuple[Chart, ...]:
    """Beside the totals and the ledger."""
    chart = partial(Chart, width=CHART[0], height=CHART[1])
    return (
        chart(
            f"Sap so far, {units.volume}",
            "scatter",
            (Series("sap", "collection.date", "collection.sap_sum"),),
            "",
            units.volume,
            row=3,
            column=7,
            x_kind=DATE,
        ),
        chart(
            f"Sugar by day, {units.mass}",
            "column",
            (Series("sugar", "collection.date", "collection.sugar"),),
            "",
            units.mass,
            row=17,
            column=7,
            x_kind=DATE,
        ),
        chart(
            f"Syrup by batch, {units.volume}",
            "column",
            (
                Series("expected", "by_batch.batch", "by_batch.expected"),
                Series("bottled", "by_batch.batch", "by_batch.bottled"),
            ),
            "batch",
            units.volume,
            row=3,
            column=12,
        ),
        chart(
            f"Where the sugar went, {units.mass}",
            "bar",
            (Series("sugar", "ledger.what", "ledger.mass"),),
            "",
            "",
            row=17,
            column=12,
        ),
    )
