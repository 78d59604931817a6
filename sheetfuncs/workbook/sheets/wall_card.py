"""Wall card: one sheet of paper to hang by the pan, right for this yard."""

from __future__ import annotations

from sheetfuncs.workbook.model.parts import (
    BRIX,
    ELEVATION,
    NUMBER,
    PRESSURE,
    SMALL,
    TEMPERATURE,
    WORDS,
    Column,
    Field,
    Fields,
    Rows,
    Sheet,
    Table,
    Text,
    Units,
)
from sheetfuncs.workbook.sheets.cautions import SHORT
from sheetfuncs.workbook.sheets.phrases import rounded, when

BAROMETERS = {
    "US": (28.0, 28.5, 29.0, 29.5, 29.75, 30.0, 30.25, 30.5, 31.0),
    "metric": (950, 965, 980, 990, 1000, 1010, 1020, 1030, 1045),
}
ELEVATIONS = {"US": tuple(range(0, 5500, 500)), "metric": tuple(range(0, 1650, 150))}
CUPS = {"US": (60, 80, 100, 120, 140, 160, 180, 200, 211), "metric": (15, 25, 40, 50, 60, 70, 80, 90, 99)}
STRENGTHS = (60, 62, 63, 64, 65, 66, 68, 69, 70, 71, 72)


def sheet(units: Units, rows: Rows) -> Sheet:
    """Finishing temperatures, hydrometer marks, thin and thick, cautions."""
    t, system = units.temperature, units.system
    heads = Fields(
        "card",
        "",
        (
            Field(
                "words",
                "Syrup is done at",
                WORDS,
                f'{rounded("@card.rise")}&" {units.difference} above boiling water, read on the same thermometer, the same day ("&'
                f'{rounded("@yard.target")}&" °Brix, at "&ROUND(N(@yard.elevation),0)&" {units.elevation})"',
            ),
            Field(
                "rise",
                "Degrees above boiling water",
                TEMPERATURE,
                "FINISH_RISE(@yard.target,@weekend.standard,UNITS)",
                note=units.difference,
            ),
        ),
        span=2,
    )
    barometer = _boils(
        units,
        "by_barometer",
        "Here, by the forecast's barometer",
        Column("barometer", f"Barometer, {units.pressure}", PRESSURE, fixed=BAROMETERS[system]),
        f"Air at the pan, {units.pressure}",
        "AIR_PRESSURE_HERE([barometer],N(@yard.elevation),UNITS)",
    )
    elevation = _boils(
        units,
        "by_elevation",
        "Elsewhere, on a standard day",
        Column("elevation", f"Elevation, {units.elevation}", ELEVATION, fixed=ELEVATIONS[system]),
        f"Air, {units.pressure}",
        "AIR_PRESSURE([elevation],UNITS)",
    )
    cups = Table(
        "by_cup",
        "On target, the hydrometer shows",
        (
            Column("cup", f"Cup, {t}", NUMBER, fixed=CUPS[system]),
            Column("shows", "°Brix", BRIX, when("TRUE", "SYRUP_FLOATS(@yard.target,[cup],UNITS)")),
        ),
        len(CUPS[system]),
        row=6,
        column=5,
    )
    fixes = Table(
        "by_strength",
        f"For each {units.volume} of cold syrup",
        (
            Column("brix", "True °Brix", NUMBER, fixed=STRENGTHS),
            Column(
                "fix",
                f"Stir in (+), boil off (-), {units.small} of water",
                SMALL,
                when("TRUE", "SYRUP_ADJUST(1,[brix],@yard.target,UNITS)"),
            ),
        ),
        len(STRENGTHS),
        row=18,
        column=5,
    )
    return Sheet(
        "Wall card",
        "Print it and hang it by the pan.",
        (heads, barometer, elevation, cups, fixes, Text("Cautions", SHORT, row=32, across=7, caution=True)),
        freeze=(2, 0),
        widths=(13, 13, 13, 13, 4, 13, 20),
        portrait=True,
    )


def _boils(units: Units, key: str, title: str, first: Column, heading: str, pressure: str) -> Table:
    """Where water and syrup boil, by what stands in the first column."""
    t = units.temperature
    columns = (
        first,
        Column("pressure", heading, PRESSURE, pressure),
        Column("water", f"Water boils, {t}", TEMPERATURE, when("TRUE", "WATER_BOILS([pressure],UNITS)")),
        Column("syrup", f"Syrup, {t}", TEMPERATURE, when("TRUE", "FINISH_TEMP(@yard.target,[pressure],UNITS)")),
    )
    return Table(key, title, columns, len(first.fixed))
