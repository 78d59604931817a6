"""The trees: taps, whether the sap will run, and when the season ends."""

from __future__ import annotations

from sheetfuncs.formulas.define import define
from sheetfuncs.formulas.quantities import (
    COUNT,
    DEGREE_DAYS,
    LENGTH,
    PROBABILITY,
    TEMPERATURE,
    measured,
    number,
)
from sheetfuncs.science.maths import TINY, Value, choose, exp, require

TRUNK = measured("thickness of the trunk at 4.5 ft (1.4 m)", LENGTH, (0.0, 120.0), (0.0, 305.0))
NIGHT = measured("lowest temperature of the night", TEMPERATURE, (-60.0, 130.0), (-51.0, 54.5))
RECENT = measured("lowest temperature of this night and the two before", TEMPERATURE, (-60.0, 130.0), (-51.0, 54.5))
DAY = measured("highest temperature of the day after", TEMPERATURE, (-60.0, 130.0), (-51.0, 54.5))
LOWEST = measured("lowest temperature of the day", TEMPERATURE, (-60.0, 130.0), (-51.0, 54.5))
HIGHEST = measured("highest temperature of the day", TEMPERATURE, (-60.0, 130.0), (-51.0, 54.5))
FREEZE_THAWS = number("days since 1 January with a low under 3 °C (37.4 °F) and a high over it", COUNT, 0.0, 120.0)
WARMTH = measured(
    "degree-days over 5 °C (41 °F) since 1 January: the sum of SEASON_WARMTH", DEGREE_DAYS, (0.0, 3600.0), (0.0, 2000.0)
)

ONE_TAP, TWO_TAPS = 0.3048, 0.4572  # m: 12 and 18 in

# °C: nights in the 20s °F and days from 38 °F run; a light frost or a hot day only may.
COLD_NIGHT, WARM_DAY, HOT_DAY = -2.0, 3.3, 13.0
BUDS = 5.0  # °C: cooler days bring no bud on


@define(
    "taps the trunk can bear",
    COUNT,
    source="the conservative tapping guide of U.S. state extension services (12 to 18 in one, above "
    "two); guides differ, and a slow or damaged tree gets fewer",
    example=((14.0, "US"), 1),
    trunk_diameter=TRUNK,
)
def TAP_COUNT(trunk_diameter: Value) -> Value:
    """How many taps a maple can bear: under 12 in none, 12 to 18 in one, over 18 in two.

    Girth divided by 3.14 gives the diameter.
    """
    many = choose(trunk_diameter > TWO_TAPS + TINY, 2, 1)
    return choose(trunk_diameter < ONE_TAP - TINY, 0, many)


@define(
    "0 no, 1 maybe, 2 likely",
    COUNT,
    source="common practice, no source: sap runs when frost is followed by a thaw, and for a day or two "
    "after; best with nights in the 20s °F and days in the 40s °F. Of 28 days with sap in the log of one "
    "orchard (MacLeish field station, 2013 to 2015) it calls 26 to 28",
    example=((36.0, 24.0, 43.0, "US"), 1),
    night_low=NIGHT,
    recent_low=RECENT,
    day_high=DAY,
)
def SAP_RUNS(night_low: Value, recent_low: Value, day_high: Value) -> Value:
    """Whether sap will run on the day after a night: 0 no, 1 maybe, 2 likely.

    No, without a thaw, or without frost in this night or the two before. Likely after a night of
    28 °F (-2 °C) or colder when the day reaches 38 °F (3.3 °C) but not 55 °F (13 °C). Else maybe.
    It says nothing of how much.
    """
    good_day = choose(day_high >= WARM_DAY, choose(day_high <= HOT_DAY, 2, 1), 1)
    likely = choose(night_low <= COLD_NIGHT, good_day, 1)
    runs = choose(recent_low < 0.0, choose(day_high > 0.0, likely, 0), 0)
    runs = require(night_low <= day_high, runs, "the night's low is above the day's high: are they swapped?")
    return require(recent_low <= night_low, runs, "the lowest of three nights is above the low of one of them")


@define(
    "degree-days over 5 °C (41 °F)",
    DEGREE_DAYS,
    source="the mean of the day's low and high over 5 °C, as growing degree-days are reckoned; the base of "
    "Houle et al., PLoS ONE 10(12): e0144844 (2015)",
    example=((38.0, 60.0, "US"), 8.0),
    low=LOWEST,
    high=HIGHEST,
)
def SEASON_WARMTH(low: Value, high: Value) -> Value:
    """Warmth of a day that brings the buds on. Added up from 1 January it tells how far spring is."""
    middle = (low + high) / 2.0
    warmth = choose(middle > BUDS, middle - BUDS, 0.0)
    return require(low <= high, warmth, "the low is above the high: are they swapped?")


@define(
    "probability, 0 to 1; the authors count a week as in the season from 0.51 on",
    PROBABILITY,
    source="Houle et al., PLoS ONE 10(12): e0144844 (2015), eq. 2: 121 producers of Québec, 1999 to 2011; "
    "right for 83 percent of the weeks of production and 95 percent of the others",
    example=((25.0, 70.0, "US"), 0.816),
    freeze_thaws=FREEZE_THAWS,
    warmth=WARMTH,
)
def SEASON_GOES_ON(freeze_thaws: Value, warmth: Value) -> Value:
    """How likely a week is still one of the season, by its frosts and warmth since 1 January.

    Made for one province and for weeks: elsewhere it was right for 68 percent. A gauge, not a
    verdict: swelling buds and a cup that tastes of them decide.
    """
    odds = -5.09 + (0.722 - 0.014 * freeze_thaws) * freeze_thaws - 0.07 * warmth
    return 1.0 / (1.0 + exp(-odds))
