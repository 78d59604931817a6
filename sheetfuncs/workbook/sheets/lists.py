"""The lists of Yard: thermometers, places where sap and jars are kept, jars, pans, trees."""

from __future__ import annotations

from sheetfuncs.formulas.sap import KEPT_AT
from sheetfuncs.formulas.vocabulary import JAR, WATER_READING
from sheetfuncs.workbook.model.formula import cases
from sheetfuncs.workbook.model.kinds import (
    AREA,
    COUNT,
    DATE,
    DAYS,
    DIFFERENCE,
    LENGTH,
    RATE,
    SMALL,
    TEMPERATURE,
    TEXT,
    VOLUME,
)
from sheetfuncs.workbook.model.parts import Column, Table
from sheetfuncs.workbook.model.rows import Rows
from sheetfuncs.workbook.model.systems import Units
from sheetfuncs.workbook.sheets.phrases import ask, judged, look, mend, numbers, tell, when

SPECIES = ("sugar maple", "black maple", "red maple", "silver maple", "boxelder", "Norway maple", "other maple")
# Where things are kept, with the temperature that is taken where none is typed: a judgement.
KEPT = {
    "refrigerator": (38, 3),
    "freezer": (0, -18),
    "snow bank": (32, 0),
    "cellar": (50, 10),
    "shade outdoors": (45, 7),
}
OLD_HOLE = 28  # days: an open hole gives less and less from three to four weeks on; common practice, no source
FAR_OFF = (5, 3)  # F° and C°: a reading further from boiling water is of something else

# What a new workbook lists: changed freely.
JARS = {
    "US": (("quart", 32), ("pint", 16), ("half pint", 8)),
    "metric": (("1 L", 1000), ("half L", 500), ("quarter L", 250)),
}


def thermometers(units: Units, rows: Rows) -> Table:
    columns = (
        Column("name", "Thermometer", TEXT, width=25, hint="A name you can tell it by: dial, electronic."),
        Column("water", "Shows in boiling water", TEMPERATURE, limits=units.limits(WATER_READING),
               hint="After a few minutes of hard boiling. Take it again each day you finish."),
        Column("read_on", "Read on", DATE, hint="The day of that reading."),
        Column("error", "Good to, ±", DIFFERENCE, limits=(0, 20), hint="Half of its smallest step, or what you trust."),
        Column("should", "Water boils today at", TEMPERATURE,
               when('AND([name]<>"",ISNUMBER(@weekend.pressure))', "WATER_BOILS(@weekend.pressure,UNITS)")),
        Column("off", "Off by", DIFFERENCE, when(numbers("water", "should"), "[water]-[should]")),
        Column("offset", "Reads less what the cup says, learned", DIFFERENCE,
               'IF([name]="","",IF(COUNTIFS(@batches.meter,[name],@batches.offset,">-99")=0,"",'
               'AVERAGEIFS(@batches.offset,@batches.meter,[name],@batches.offset,">-99")))'),
        look(
            mend('AND([name]<>"",COUNTIF(@thermometers.name,[name])>1)', "Two thermometers have this name.", "name"),
            mend('AND([name]="",ISNUMBER([water]))', "Give this thermometer a name.", "name"),
            ask(f"AND(ISNUMBER([off]),ABS(N([off]))>{units.pick(*FAR_OFF)})",
                "Far from where water boils: was it boiling hard, and is the elevation right?", "water"),
            ask('AND(ISNUMBER([water]),[read_on]="")', "Which day was that? The air changes it from day to day.", "read_on"),
            tell("AND(ISNUMBER([water]),ISNUMBER([read_on]),[read_on]<@weekend.today)",
                 "Not from today: take it again before you finish a batch.", "water"),
        ),
    )  # fmt: skip
    return Table("thermometers", "Thermometers", judged(columns, units), rows.thermometers)


def places(units: Units, rows: Rows) -> Table:
    names = tuple(KEPT)
    degrees = ",".join(str(units.pick(*both)) for both in KEPT.values())
    known = "{" + ",".join(f'"{name}"' for name in names) + "}"
    columns = (
        Column("name", "Place, or container", TEXT, width=25, starts=names[:3],
               hint="A pail, a jug, a shelf: a name you will write under Into."),
        Column("holds", "Holds", VOLUME),
        Column("where", "Kept where", TEXT, choices=names, starts=names[:3]),
        Column("kept", "Kept at, if measured", TEMPERATURE, limits=units.limits(KEPT_AT)),
        Column("kept_at", "Kept at, taken", TEMPERATURE,
               cases(('[name]=""', '""'), ("ISNUMBER([kept])", "[kept]"),
                     otherwise=f"IFERROR(CHOOSE(MATCH(TRIM([where]),{known},0),{degrees}),@know.store)")),
        Column("inside", "In it now", VOLUME,
               when('[name]<>""', "SUMIFS(@lots.volume,@lots.where,[name],@lots.open,1)")),
        Column("room", "Room left", VOLUME, when(numbers("holds", "inside"), "MAX(0,[holds]-[inside])")),
        look(
            mend('AND([name]<>"",COUNTIF(@places.name,[name])>1)', "Two places have this name.", "name"),
            mend('AND([name]="",ISNUMBER([holds]))', "Give this place a name.", "name"),
            ask('AND([name]<>"",[where]="",[kept]="")',
                "Where is it? Without that it counts as kept in the cold store.", "where"),
            ask("AND(ISNUMBER([holds]),ISNUMBER([inside]),N([inside])>N([holds])*1.001)", "Holds more than it can.", "holds"),
        ),
    )  # fmt: skip
    return Table("places", "Where sap and jars are kept", judged(columns, units), rows.places)


def jars(units: Units, rows: Rows) -> Table:
    listed = JARS[units.system]
    columns = (
        Column("name", "Jar", TEXT, width=25, starts=tuple(name for name, _ in listed),
               hint="The first one is what part-boiled sap is counted in, and syrup until you say another."),
        Column("size", "Size", SMALL, limits=units.limits(JAR), starts=tuple(size for _, size in listed)),
        Column("have", "Empty ones in the house", COUNT, limits=(0, 100000)),
        look(
            mend('AND([name]<>"",COUNTIF(@jars.name,[name])>1)', "Two jars have this name.", "name"),
            mend('AND([name]<>"",[size]="")', "How much does it hold?", "size"),
        ),
    )  # fmt: skip
    return Table("jars", "Jars", judged(columns, units), rows.jars)


def pans(units: Units, rows: Rows) -> Table:
    round_area = f"PI()*[length]^2/4/{units.area_in_lengths:g}"
    columns = (
        Column("name", "Pan or pot", TEXT, width=25),
        Column("length", "Length, or across if round", LENGTH, limits=(0, 1000)),
        Column("width", "Width; blank if round", LENGTH, limits=(0, 1000)),
        Column("depth", "Depth to fill to", LENGTH, limits=(0, 200), hint="Leave room for foam."),
        Column("area", "Area", AREA,
               cases(("N([length])<=0", '""'),
                     ("ISNUMBER([width])", f"[length]*[width]/{units.area_in_lengths:g}"),
                     ('[width]=""', round_area))),
        Column("holds", "Holds", VOLUME,
               when(numbers("area", "depth"), f"[area]*{units.area_in_lengths:g}*[depth]/{units.volume_in_lengths:g}")),
        Column("rate", "Boils off about", RATE, when("N([area])>0", "PAN_RATE([area],UNITS)")),
        look(
            mend('AND([name]<>"",COUNTIF(@pans.name,[name])>1)', "Two pans have this name.", "name"),
            mend('AND([name]="",ISNUMBER([length]))', "Give this pan a name.", "name"),
            ask('AND(ISNUMBER([area]),[depth]="")', "How deep may it be filled? Without that it never overflows here.", "depth"),
        ),
    )  # fmt: skip
    return Table("pans", "Pans and pots", judged(columns, units), rows.pans)


def trees(units: Units, rows: Rows) -> Table:
    columns = (
        Column("name", "Tree", TEXT, width=25),
        Column("girth", "Girth at breast height", LENGTH, limits=(0, units.pick(370, 950))),
        Column("taps", "Taps", COUNT, limits=(0, 10)),
        Column("tapped", "Tapped on", DATE, hint="Blank: as for all, above."),
        Column("pulled", "Pulled on", DATE),
        Column("species", "Species", TEXT, choices=SPECIES, hint="Be sure that it is a maple."),
        Column("suggested", "Taps it can bear", COUNT, when("N([diameter])>0", "TAP_COUNT([diameter],UNITS)")),
        look(
            ask("AND(ISNUMBER([suggested]),N([taps])>N([suggested]))", "More taps than it can bear.", "taps"),
            mend("AND(ISNUMBER([pulled]),ISNUMBER([since]),N([pulled])<N([since]))", "Pulled before it was tapped.", "pulled"),
            tell(f"AND(N([hole_age])>={OLD_HOLE},N([taps])>0)",
                 "Its hole is over four weeks old: it gives less and less. Do not drill a second one.", "tapped"),
        ),
        Column("hole_age", "Hole is old, days", DAYS,
               cases(("OR([name]=\"\",NOT(ISNUMBER([since])))", '""'),
                     ("ISNUMBER([pulled])", '""'),
                     ("ISNUMBER(@taps.pulled)", '""'),
                     ("@weekend.today>=[since]", "@weekend.today-[since]"))),
        Column("diameter", "Diameter", LENGTH, when("N([girth])>0", "[girth]/PI()")),
        Column("since", "Tapped on, taken", DATE,
               cases(('[name]=""', '""'), ("ISNUMBER([tapped])", "[tapped]"), ("ISNUMBER(@taps.tapped)", "@taps.tapped")),
               hidden=True),
    )  # fmt: skip
    return Table("trees", "Trees, if you list them", judged(columns, units), rows.trees)
