"""Forecast: will it run, and is it time to pull the taps."""

from __future__ import annotations

from sheetfuncs.formulas.taps import DAY, NIGHT
from sheetfuncs.workbook.model.parts import (
    COUNT,
    DATE,
    TEMPERATURE,
    TEXT,
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
from sheetfuncs.workbook.sheets.phrases import look, mend, not_a_number, numbers, when

DAYS_AHEAD = 10
WARM_NIGHTS = 7  # common practice, no source
OLD = 3  # days after which a forecast no longer decides


def sheet(units: Units, rows: Rows) -> Sheet:
    """Ten days of lows and highs, and the signs that the season ends."""
    freezing = units.pick(32, 0)
    table = Table(
        "forecast",
        "",
        (
            Column(
                "date",
                "Day",
                DATE,
                "IF(ISNUMBER([date-1]),[date-1]+1,IF(ISNUMBER(@signs.starts),@signs.starts,@weekend.today))",
            ),
            Column("low", f"Low of the night before, {units.temperature}", TEMPERATURE, limits=units.limits(NIGHT)),
            Column("high", f"High of the day, {units.temperature}", TEMPERATURE, limits=units.limits(DAY)),
            Column(
                "run",
                "0 no, 1 maybe, 2 likely",
                COUNT,
                when(numbers("low", "high"), "SAP_RUNS([low],MIN([low~2]),[high],UNITS)"),
            ),
            Column("words", "Will it run?", TEXT, 'IF(ISNUMBER([run]),CHOOSE([run]+1,"no","maybe","likely"),"")'),
            Column(
                "warm",
                "Nights above freezing in a row",
                COUNT,
                f'IF(ISNUMBER([low]),IF([low]>{freezing},N([warm-1])+1,0),"")',
            ),
            look(
                not_a_number("low", "The low"),
                not_a_number("high", "The high"),
                mend(f"AND({numbers('low', 'high')},N([low])>N([high]))", "The low is above the high: swapped?"),
            ),
        ),
        DAYS_AHEAD,
    )
    signs = Fields(
        "signs",
        "The forecast, and signs that the season ends",
        (
            Field("starts", "First day of the forecast", DATE, note="the day it was copied; blank: today"),
            Field("buds", "Buds are swelling", TEXT, choices=("yes", "no")),
            Field("cloudy", "Sap is cloudy, yellow or thick", TEXT, choices=("yes", "no")),
            Field("smell", "Sap smells off, or syrup tastes of buds", TEXT, choices=("yes", "no")),
            Field("warm", "Longest row of nights above freezing ahead", COUNT, "MAX(0,@forecast.warm)"),
            Field(
                "pull",
                "Taps",
                WORDS,
                'IF(OR(@signs.smell="yes",@signs.cloudy="yes"),'
                '"Pull the taps: the sap is turning.",'
                f"IF(N(@signs.starts)*(@weekend.today-N(@signs.starts)>{OLD}),"
                f'"The forecast is over {OLD} days old: copy a new one.",'
                f"IF(@signs.warm>={WARM_NIGHTS},"
                f'"Pull the taps: "&@signs.warm&" nights in a row stay above freezing.",'
                'IF(@signs.buds="yes","Boil a little and taste it: buds are swelling.",'
                f"IF(COUNT(@forecast.low)<{WARM_NIGHTS},"
                f'"Fill in at least {WARM_NIGHTS} nights to judge.","Leave the taps in.")))))',
            ),
        ),
    )
    rule = Text(
        "",
        (
            "Sap runs when a night below freezing is followed by a thaw: best after nights in the 20s °F (-7 to -2 °C) "
            "and with days around 40 °F (5 °C). Pull the taps when at least seven forecast nights in a row stay above "
            "freezing, or when buds, cloudy sap or an off smell say so. Common practice; the sap itself decides.",
        ),
        across=7,
    )
    return Sheet(
        "Forecast",
        "Copy ten days of lows and highs from any forecast.",
        (table, signs, rule),
        freeze=(4, 1),
        widths=(14, 14, 14, 14, 14, 14),
    )
