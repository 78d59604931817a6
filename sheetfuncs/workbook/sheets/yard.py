"""Yard: what stays the same all season."""

from __future__ import annotations

from sheetfuncs.formulas import quantities
from sheetfuncs.formulas.boil import EFFICIENCY
from sheetfuncs.formulas.fuels import FUELS
from sheetfuncs.formulas.sap import KEPT_AT
from sheetfuncs.formulas.vocabulary import JAR, PLACE, WATER_READING
from sheetfuncs.workbook.model.parts import (
    AREA,
    BRIX,
    COUNT,
    DATE,
    DIFFERENCE,
    ELEVATION,
    FUEL_PRICE,
    LENGTH,
    NUMBER,
    SHARE,
    SMALL,
    TEMPERATURE,
    TEXT,
    VOLUME,
    Column,
    Field,
    Fields,
    Rows,
    Sheet,
    Table,
    Units,
)
from sheetfuncs.workbook.sheets.phrases import ask, look, mend, not_a_date, not_a_number, numbers, tell, when

SPECIES = ("sugar maple", "black maple", "red maple", "silver maple", "boxelder", "Norway maple", "other maple")
PLACES = ("refrigerator", "freezer", "snow bank", "cellar", "shade outdoors")


def sheet(units: Units, rows: Rows) -> Sheet:
    """The yard's settings, instruments, trees, vessels and jars."""
    return Sheet(
        "Yard",
        "What stays the same all season. Fill in what you have; the rest of the workbook reads it here.",
        (
            _settings(units),
            _thermometers(units, rows),
            _pans(units, rows),
            _containers(units, rows),
            _jars(units, rows),
            _trees(units, rows),
        ),
        freeze=(2, 0),
        widths=(20, 14, 14, 14, 12, 12, 14, 14, 40),
    )


def _settings(units: Units) -> Fields:
    per_hour = f"{units.volume}/h"
    counted_in = (fuel.counted_in for fuel in FUELS.values())
    fuel_units = ",".join(f'"{units.pick(each.us, each.metric).symbol}"' for each in counted_in)
    fuels = ",".join(f'"{fuel}"' for fuel in FUELS)
    return Fields(
        "yard",
        "The season",
        (
            Field("name", "Name of the yard", TEXT, start=""),
            Field("year", "Season (year)", NUMBER, limits=(1900, 2200)),
            Field("keeper", "Kept by", TEXT, start=""),
            Field(
                "elevation",
                "Elevation above the sea",
                ELEVATION,
                note=f"{units.elevation}; water boils cooler the higher you are",
                limits=units.limits(PLACE),
            ),
            Field(
                "target",
                "Syrup target",
                BRIX,
                start=66.9,
                limits=(60, 72),
                note="°Brix; 66.9 is syrup everywhere (some places allow 66.0). Thinner spoils, over 68.9 crystallises",
            ),
            Field("split", "Late sap from", DATE, note="kept apart in batches: late sap makes darker syrup"),
            Field("typed_taps", "Taps, if trees are not listed", COUNT, limits=(0, 100000)),
            Field("taps", "Taps in all", COUNT, "IF(SUM(@trees.taps)>0,SUM(@trees.taps),N(@yard.typed_taps))"),
            Field("typed_rate", "Boiling rate, if known", VOLUME, note=f"{per_hour} of water; leave blank to measure"),
            Field(
                "rate",
                "Boiling rate used",
                VOLUME,
                "IF(N(@yard.typed_rate)>0,@yard.typed_rate,IF(SUM(@boil.hours)>0,SUM(@boil.timed_water)"
                "/SUM(@boil.hours),IFERROR(PAN_RATE(MAX(@pans.area),UNITS),0)))",
                note=f"{per_hour}: as typed, else measured in Boil, else guessed from the largest pan",
            ),
            Field("fuel", "Fuel", TEXT, start="hardwood", choices=tuple(FUELS)),
            Field(
                "fuel_unit",
                "Fuel is counted in",
                TEXT,
                f'IFERROR(CHOOSE(MATCH(@yard.fuel,{{{fuels}}},0),{fuel_units}),"")',
            ),
            Field("fuel_price", "Price of one", FUEL_PRICE, note="in your money"),
            Field(
                "efficiency",
                "Heat that reaches the sap",
                SHARE,
                start=0.35,
                limits=units.limits(EFFICIENCY),
                note="open fire about 20 %, block arch 35 %, good evaporator 50 % or more (common practice)",
            ),
            Field("finish_pan", "Finishing pan", TEXT, choices="@pans.name"),
            Field(
                "atc",
                "Refractometer corrects for temperature",
                TEXT,
                start="yes",
                choices=("yes", "no"),
                note='"no": write its temperature in Collection',
            ),
            Field("brix_error", "Refractometer reads to within", BRIX, start=0.2, limits=(0, 5), note="± °Brix"),
            Field("hydrometer_error", "Hydrometer reads to within", BRIX, start=0.3, limits=(0, 5), note="± °Brix"),
            Field(
                "volume_error",
                "Volumes are measured to within",
                SHARE,
                start=0.03,
                limits=(0, 0.5),
                note="± of the volume",
            ),
            Field(
                "store",
                "Cold store is at",
                TEMPERATURE,
                start=units.pick(38, 3),
                limits=units.limits(KEPT_AT),
                note=f"{units.temperature}; for lots whose container names no temperature",
            ),
        ),
    )


def _thermometers(units: Units, rows: Rows) -> Table:
    return Table(
        "thermometers",
        "Thermometers",
        (
            Column("name", "Thermometer", TEXT, hint="A name you can tell it by."),
            Column("error", f"Reads to within, ± {units.difference}", DIFFERENCE, limits=(0, 20)),
            Column(
                "water",
                f"Shows in boiling water, {units.temperature}",
                TEMPERATURE,
                limits=units.limits(WATER_READING),
                hint="After a few minutes of hard boiling. Take it again each day you finish.",
            ),
            Column("read_on", "Read on", DATE),
            Column(
                "should",
                f"Water boils today at, {units.temperature}",
                TEMPERATURE,
                when('[name]<>""', "WATER_BOILS(@weekend.pressure,UNITS)"),
            ),
            Column(
                "off", f"Off by, {units.difference}", DIFFERENCE, when(numbers("water", "should"), "[water]-[should]")
            ),
            look(
                not_a_number("water", "The water reading"),
                not_a_date("read_on"),
                ask(
                    f"AND(ISNUMBER([off]),ABS(N([off]))>{units.pick(5, 3)})",
                    "Far from where water boils: was it boiling hard, and is the elevation right?",
                ),
                tell(
                    "AND(ISNUMBER([water]),[read_on]<>@weekend.today)",
                    "Not from today: take it again before you finish a batch.",
                ),
            ),
        ),
        rows.thermometers,
    )


def _pans(units: Units, rows: Rows) -> Table:
    square, cube = units.one(quantities.AREA), units.one(quantities.VOLUME)
    length = units.one(quantities.LENGTH)
    area = f"[length]*[width]/{square / length**2:.15g}"
    holds = f"[area]*[depth]*{square * length / cube:.15g}"
    return Table(
        "pans",
        "Pans",
        (
            Column("name", "Pan", TEXT),
            Column("length", f"Length, {units.length}", LENGTH, limits=(0, 1000)),
            Column("width", f"Width, {units.length}", LENGTH, limits=(0, 1000)),
            Column("depth", f"Depth to fill to, {units.length}", LENGTH, limits=(0, 200), hint="Leave room for foam."),
            Column("area", f"Area, {units.area}", AREA, when(numbers("length", "width"), area)),
            Column("holds", f"Holds, {units.volume}", VOLUME, when(numbers("length", "width", "depth"), holds)),
            Column(
                "rate",
                f"Boils off about, {units.volume}/h",
                VOLUME,
                when("ISNUMBER([area])", "PAN_RATE([area],UNITS)"),
            ),
        ),
        rows.pans,
    )


def _containers(units: Units, rows: Rows) -> Table:
    return Table(
        "containers",
        "Containers",
        (
            Column("name", "Container", TEXT),
            Column("holds", f"Holds, {units.volume}", VOLUME),
            Column("place", "Kept where", TEXT, choices=PLACES),
            Column(
                "kept",
                f"Kept at, {units.temperature}",
                TEMPERATURE,
                limits=units.limits(KEPT_AT),
            ),
            Column(
                "inside",
                f"In it now, {units.volume}",
                VOLUME,
                when('[name]<>""', "SUMIFS(@storage.volume,@storage.container,[name],@storage.open,1)"),
            ),
            Column(
                "room",
                f"Room left, {units.volume}",
                VOLUME,
                when(numbers("holds", "inside"), "MAX(0,[holds]-[inside])"),
            ),
            look(
                not_a_number("holds", "What it holds"),
                mend('AND([name]<>"",COUNTIF(@containers.name,[name])>1)', "Two containers have this name."),
                ask(
                    "AND(ISNUMBER([holds]),ISNUMBER([inside]),N([inside])>N([holds])*1.001)",
                    "Holds more than it can.",
                ),
            ),
        ),
        rows.containers,
    )


def _jars(units: Units, rows: Rows) -> Table:
    return Table(
        "jars",
        "Jars",
        (
            Column("name", "Jar", TEXT, hint="The first one is what Weekend and Finish count in."),
            Column("size", f"Size, {units.small}", SMALL, limits=units.limits(JAR)),
            Column("have", "Empty ones in the house", COUNT, limits=(0, 100000)),
        ),
        rows.jars,
    )


def _trees(units: Units, rows: Rows) -> Table:
    return Table(
        "trees",
        "Trees",
        (
            Column("name", "Tree", TEXT),
            Column("species", "Species", TEXT, choices=SPECIES, hint="Be sure that it is a maple."),
            Column("girth", f"Girth at breast height, {units.length}", LENGTH, limits=(0, units.pick(370, 950))),
            Column("diameter", f"Diameter, {units.length}", LENGTH, when("ISNUMBER([girth])", "[girth]/PI()")),
            Column("suggested", "Taps it can bear", COUNT, when("ISNUMBER([diameter])", "TAP_COUNT([diameter],UNITS)")),
            Column("taps", "Taps", COUNT, limits=(0, 10)),
            Column("tapped", "Tapped on", DATE),
            Column("pulled", "Pulled on", DATE),
            look(
                not_a_number("girth", "Girth"),
                not_a_number("taps", "Taps"),
                ask("AND(ISNUMBER([suggested]),N([taps])>N([suggested]))", "More taps than it can bear."),
                mend("AND(ISNUMBER([pulled]),ISNUMBER([tapped]),[pulled]<[tapped])", "Pulled before it was tapped."),
            ),
        ),
        rows.trees,
    )
