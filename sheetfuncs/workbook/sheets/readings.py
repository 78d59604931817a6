"""What a reading rests on: what its thermometer shows in boiling water, and where that is from."""

from __future__ import annotations

from sheetfuncs.workbook.model.formula import NOTHING, cases
from sheetfuncs.workbook.model.systems import Units
from sheetfuncs.workbook.sheets.phrases import of_row

# Where a thermometer's boiling-water reading is from, as BRIX_BY_BOIL_SPREAD takes it, and in a table's words.
FROM = {
    "today": "read that day",
    "another day": "read another day",
    "barometer": "barometer, a guess",
    "elevation": "elevation alone, a guess",
}


def water_of(name: str, typed: str, date: str) -> tuple[str, str]:
    """Two formulas for a thermometer: what it shows in boiling water, and where that is from.

    `typed` is a reading of this thermometer that was typed for the `date`; it may be empty.
    """
    yard = of_row("@thermometers.water", "@thermometers.name", name)
    read_on = of_row("@thermometers.read_on", "@thermometers.name", name)
    in_yard = f"IFERROR(ISNUMBER({yard}),FALSE)"
    air = 'IF(ISNUMBER(@weekend.water),@weekend.water,"")'
    water = cases((f"ISNUMBER({typed})", typed), (in_yard, yard), otherwise=air)
    origin = cases(
        (f"ISNUMBER({typed})", '"today"'),
        (in_yard, f'IF(AND(N({date})>0,N({read_on})=N({date})),"today","another day")'),
        ("NOT(ISNUMBER(@weekend.water))", NOTHING),
        ("ISNUMBER(@weekend.barometer)", '"barometer"'),
        otherwise='"elevation"',
    )
    return water, origin


def was_read(origin: str) -> str:
    """Whether that is a reading of this thermometer, and no guess by the air."""
    return f'OR({origin}="today",{origin}="another day")'


def error_of(name: str, units: Units) -> str:
    """To within how much a thermometer reads; where Yard does not say, as a usual one."""
    usual = units.pick(0.5, 0.3)
    error = of_row("@thermometers.error", "@thermometers.name", name)
    # N: a module of plain VBA takes the number of a cell, not the cell that INDEX refers to
    return f"IFERROR(IF(N({error})>0,N({error}),{usual}),{usual})"


def spread(reading: str, water: str, name: str, origin: str, units: Units) -> str:
    """How far off the strength may be that a thermometer tells."""
    return f"BRIX_BY_BOIL_SPREAD({reading},{water},{error_of(name, units)},{origin},UNITS)"


def amount(number: str, units: Units) -> str:
    """So much water to stir in or boil off, as a kitchen measures it."""
    return str(units.pick(f"FIXED(MAX(1,{number}),0,TRUE)", f"FIXED(MAX(10,ROUND({number},-1)),0,TRUE)"))
