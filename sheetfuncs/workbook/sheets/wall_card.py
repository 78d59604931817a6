"""Wall card: one sheet of paper to hang by the pan, right for this yard and this thermometer."""

from __future__ import annotations

from sheetfuncs.workbook.model.formula import cases, say
from sheetfuncs.workbook.model.kinds import BRIX, DIFFERENCE, ELEVATION, PRESSURE, SMALL, TEMPERATURE, WORDS
from sheetfuncs.workbook.model.parts import Column, Field, Fields, Sheet, Table, Text
from sheetfuncs.workbook.model.rows import Rows
from sheetfuncs.workbook.model.systems import Units
from sheetfuncs.workbook.sheets.cautions import short
from sheetfuncs.workbook.sheets.phrases import day, rounded, when

BAROMETERS = {
    "US": (28.0, 28.5, 29.0, 29.5, 29.75, 30.0, 30.25, 30.5, 31.0),
    "metric": (950, 965, 980, 990, 1000, 1010, 1020, 1030, 1045),
}
ELEVATIONS = {"US": tuple(range(0, 5500, 500)), "metric": tuple(range(0, 1650, 150))}
CUPS = {"US": (60, 80, 100, 120, 140, 160, 180, 200, 211), "metric": (15, 25, 40, 50, 60, 70, 80, 90, 99)}
STRENGTHS = (60, 62, 63, 64, 65, 66, 68, 69, 70, 71, 72)


def sheet(units: Units, rows: Rows) -> Sheet:
    """Finishing temperatures, hydrometer marks, thin and thick, cautions."""
    system = units.system
    barometer = _boils(
        "by_barometer",
        "Here, by the forecast's barometer",
        Column("barometer", "Barometer", PRESSURE, fixed=BAROMETERS[system]),
        "Air at the pan",
        when("ISNUMBER(@yard.elevation)", "AIR_PRESSURE_HERE([barometer],@yard.elevation,UNITS)"),
    )
    elevation = _boils(
        "by_elevation",
        "Elsewhere, on a standard day",
        Column("elevation", "Elevation", ELEVATION, fixed=ELEVATIONS[system]),
        "Air there",
        "AIR_PRESSURE([elevation],UNITS)",
    )
    cups = Table(
        "by_cup",
        "On target, the hydrometer shows",
        (
            Column("cup", "Cup", TEMPERATURE, fixed=CUPS[system]),
            Column("shows", "Shows", BRIX, when("TRUE", "SYRUP_FLOATS(@know.target,[cup],UNITS)")),
        ),
        len(CUPS[system]),
        row=8,
        column=5,
    )
    fixes = Table(
        "by_strength",
        f"For each {units.volume} of cold syrup",
        (
            Column("brix", "True strength", BRIX, fixed=STRENGTHS),
            Column(
                "fix",
                "Hot water: stir in (+), boil off (-)",
                SMALL,
                when("TRUE", "SYRUP_ADJUST(1,[brix],@know.target,UNITS)"),
            ),
        ),
        len(STRENGTHS),
        row=20,
        column=5,
    )
    return Sheet(
        "Wall card",
        "Print it and hang it by the pan.",
        (
            _head(units),
            barometer,
            elevation,
            cups,
            fixes,
            Text("Cautions", short(units), row=35, across=7, caution=True),
        ),
        tab="paper",
        freeze=(3, 0),
        widths=(17, 16, 16, 16, 3, 16, 22),
        pages=1,
        portrait=True,
    )


def _head(units: Units) -> Fields:
    """The one number of today, and whose it is."""
    read, name, on = "ISNUMBER(@behind.goal_1)", "INDEX(@thermometers.name,1)", "INDEX(@thermometers.read_on,1)"
    return Fields(
        "card",
        "",
        (
            Field("goal", "SYRUP AT", TEMPERATURE, cases((read, "@behind.goal_1"), otherwise="@behind.goal"), strong=True, across=5),
            Field(
                "whose",
                "that is",
                WORDS,
                cases(
                    (read, say("on {name}, which was read in boiling water on {day}", name=name, day=day(on, units))),
                    ("ISNUMBER(@behind.goal)", say("on a thermometer without error: read yours in boiling water and add the degrees below")),
                    otherwise=say("not known: type the elevation in Yard"),
                ),
            ),
            Field("rise", "Above boiling water", DIFFERENCE, '@behind.rise'),
            Field(
                "words",
                "for syrup of",
                WORDS,
                cases(
                    ("ISNUMBER(@behind.rise)", say(
                        "{target} °Brix at {elevation} " + units.elevation + "; read water and syrup on one thermometer, on the same day",
                        target=rounded("@know.target"), elevation="ROUND(@yard.elevation,0)")),
                ),
            ),
        ),
        span=2,
    )  # fmt: skip


def _boils(key: str, title: str, first: Column, heading: str, pressure: str) -> Table:
    """Where water and syrup boil, by what stands in the first column."""
    columns = (
        first,
        Column("pressure", heading, PRESSURE, pressure),
        Column("water", "Water boils", TEMPERATURE, when("ISNUMBER([pressure])", "WATER_BOILS([pressure],UNITS)")),
        Column(
            "syrup", "Syrup", TEMPERATURE, when("ISNUMBER([pressure])", "FINISH_TEMP(@know.target,[pressure],UNITS)")
        ),
    )
    return Table(key, title, columns, len(first.fixed))
