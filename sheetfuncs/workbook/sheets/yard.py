"""Yard: what stays the same all season, what is needed first and the rest for those who know it."""

from __future__ import annotations

from sheetfuncs.formulas.boil import EFFICIENCY
from sheetfuncs.formulas.fuels import FUELS
from sheetfuncs.formulas.sap import KEPT_AT
from sheetfuncs.formulas.vocabulary import PLACE
from sheetfuncs.workbook.model.formula import cases, say, text
from sheetfuncs.workbook.model.kinds import (
    BRIX,
    COUNT,
    DATE,
    ELEVATION,
    FUEL_PRICE,
    NUMBER,
    RATE,
    SHARE,
    TEMPERATURE,
    TEXT,
)
from sheetfuncs.workbook.model.parts import Field, Fields, Sheet
from sheetfuncs.workbook.model.rows import Rows
from sheetfuncs.workbook.model.systems import Units
from sheetfuncs.workbook.sheets import lists
from sheetfuncs.workbook.sheets.phrases import counted

ENOUGH_ROWS = 2  # boils of one's own from which a figure of the yard is learned
NO_FUEL = 'TRIM(@yard.fuel)=""'


def sheet(units: Units, rows: Rows) -> Sheet:
    """The yard's settings, instruments, trees, vessels and jars."""
    return Sheet(
        "Yard",
        "Filled in once: type in the tinted cells. The first list is enough to begin with.",
        (
            _to_start(units),
            lists.thermometers(units, rows),
            lists.places(units, rows),
            lists.jars(units, rows),
            lists.pans(units, rows),
            _known(units),
            _taps(units),
            lists.trees(units, rows),
        ),
        tab="once",
        freeze=(3, 0),
        widths=(25, 11, 11, 12, 11, 11, 11, 30),
    )


def _to_start(units: Units) -> Fields:
    names = ",".join(text(fuel) for fuel in FUELS)
    symbols = ",".join(text(fuel.counted_in.unit(units.system).symbol) for fuel in FUELS.values())
    return Fields(
        "yard",
        "To start",
        (
            Field("name", "Name of the yard", TEXT, start=""),
            Field("keeper", "Kept by", TEXT, start=""),
            Field("year", "Season (year)", NUMBER, limits=(1900, 2200)),
            Field(
                "elevation",
                "Elevation above the sea",
                ELEVATION,
                note="the finishing temperature depends on it; a map tells",
                limits=units.limits(PLACE),
            ),
            Field("typed_taps", "Taps, if trees are not listed", COUNT, limits=(0, 100000)),
            Field("fuel", "Fuel", TEXT, start="hardwood", choices=tuple(FUELS)),
            Field("taps", "Taps in all", COUNT, "IF(SUM(@trees.taps)>0,SUM(@trees.taps),N(@yard.typed_taps))"),
            Field(
                "rate",
                "Boils off",
                RATE,
                cases(
                    ("N(@know.typed_rate)>0", "@know.typed_rate"),
                    ("N(@learned.rate)>0", "@learned.rate"),
                    ("SUM(@pans.rate)>0", "MAX(@pans.rate)"),
                ),
                note="of water",
            ),
            Field(
                "rate_from",
                "    and that is",
                TEXT,
                cases(
                    ("N(@know.typed_rate)>0", say("as typed")),
                    (
                        f"N(@learned.rate_rows)>={ENOUGH_ROWS}",
                        say("learned from {boils}", boils=counted("@learned.rate_rows", "boil", "boils")),
                    ),
                    ("N(@learned.rate)>0", say("from one boil, a guess still")),
                    ("SUM(@pans.rate)>0", say("a guess from the largest pan")),
                    otherwise=say("not known: boil once and write its hours, or list a pan"),
                ),
            ),
            Field(
                "fuel_unit",
                "Fuel is counted in",
                TEXT,
                f'IFERROR(CHOOSE(MATCH(TRIM(@yard.fuel),{{{names}}},0),{symbols}),"")',
            ),
            Field(
                "efficiency",
                "Heat that reaches the sap",
                SHARE,
                cases(
                    ("N(@know.efficiency)>0", "@know.efficiency"),
                    (NO_FUEL, '""'),
                    otherwise='IFERROR(FUEL_EFFICIENCY(TRIM(@yard.fuel)),"")',
                ),
                note="to start with; your own log tells better, in Season",
            ),
        ),
        span=1,
    )


def _known(units: Units) -> Fields:
    cold = units.pick(38, 3)
    return Fields(
        "know",
        "If you know it",
        (
            Field(
                "target",
                "Syrup target",
                BRIX,
                start=66.9,
                limits=(60, 72),
                note="66.9 is syrup everywhere, some places allow 66.0; thinner spoils, over 68.9 "
                + units.pick("crystallizes", "crystallises"),
            ),
            Field("sap_brix", "Sugar of sap that is not measured", BRIX, start=2.0, limits=(0.5, 10), note="a guess"),
            Field(
                "sap_spread",
                "    that guess is good to",
                BRIX,
                called="What that guess is good to",
                start=0.6,
                limits=(0, 5),
                note="more or less",
            ),
            Field("split", "Late sap from", DATE, note="late sap makes darker syrup: kept apart in batches"),
            Field(
                "typed_rate",
                "Boiling rate, if measured",
                RATE,
                limits=(0, 100000),
                note="of water; blank: learned from Boil",
            ),
            Field(
                "efficiency",
                "Heat that reaches the sap",
                SHARE,
                limits=units.limits(EFFICIENCY),
                note="blank: by fuel",
            ),
            Field("fuel_price", "Price of fuel", FUEL_PRICE, note="in your money, for one of what fuel is counted in"),
            Field("finish_pan", "Finishing pan", TEXT, choices="@pans.name", note="blank: the pan that holds least"),
            Field(
                "atc",
                "Refractometer corrects for temperature",
                TEXT,
                start="yes",
                choices=("yes", "no"),
                note='"no": write its temperature in Collection',
            ),
            Field("brix_error", "Refractometer is good to", BRIX, start=0.2, limits=(0, 5), note="more or less"),
            Field("hydrometer_error", "Hydrometer is good to", BRIX, start=0.3, limits=(0, 5), note="more or less"),
            Field(
                "hydrometer_marked",
                "Sap hydrometer is marked at",
                TEMPERATURE,
                start=units.pick(38, 3.3),
                limits=units.pick((32, 80), (0, 27)),
                note="as printed on it",
            ),
            Field(
                "volume_error",
                "Volumes are good to",
                SHARE,
                start=0.03,
                limits=(0, 0.5),
                note="of the volume, more or less",
            ),
            Field(
                "store",
                "Cold store is at",
                TEMPERATURE,
                start=cold,
                limits=units.limits(KEPT_AT),
                note="where a place in the list above has no temperature of its own",
            ),
            Field(
                "label_line",
                "Sentence for the label",
                TEXT,
                note="what your state or province asks for, if it does",
            ),
        ),
        span=1,
    )


def _taps(units: Units) -> Fields:
    """When taps went in and came out; trees that are listed have days of their own."""
    all_pulled = "AND(COUNT(@trees.since)>0,COUNT(@trees.pulled)>=COUNT(@trees.since))"
    return Fields(
        "taps",
        "Taps in and out",
        (
            Field("tapped", "Tapped on", DATE, note="for all; or a day for each tree below"),
            Field("pulled", "Pulled on", DATE, note="the day the last tap came out"),
            Field(
                "first",
                "Tapped first on",
                DATE,
                'IF(COUNT(@taps.tapped,@trees.tapped)=0,"",MIN(@taps.tapped,@trees.tapped))',
            ),
            Field(
                "pulled_on",
                "Pulled last on",
                DATE,
                cases(
                    ("AND(N(@taps.pulled)>=1,N(@taps.pulled)<99999)", "@taps.pulled"),
                    (all_pulled, "MAX(@trees.pulled)"),
                ),
            ),
            Field(
                "in",
                "Taps are in (1) or out (0)",
                COUNT,
                cases(
                    ("ISNUMBER(@taps.pulled_on)", "IF(@taps.pulled_on<=@weekend.today,0,1)"),
                    ("OR(COUNT(@collection.date)>0,AND(ISNUMBER(@taps.first),N(@taps.first)<=@weekend.today))", "1"),
                    otherwise="0",
                ),
            ),
        ),
        span=1,
    )
