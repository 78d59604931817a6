"""Before the season: taps, and whether the sap will run."""

from __future__ import annotations

from sheetfuncs.formulas.define import define
from sheetfuncs.formulas.quantities import COUNT, LENGTH, TEMPERATURE, measured
from sheetfuncs.science.maths import TINY, Value, choose, require

TRUNK = measured("thickness of the trunk at 4.5 ft (1.4 m)", LENGTH, (0.0, 120.0), (0.0, 305.0))
NIGHT = measured("lowest temperature of the night", TEMPERATURE, (-60.0, 130.0), (-51.0, 54.5))
DAY = measured("highest temperature of the day after", TEMPERATURE, (-60.0, 130.0), (-51.0, 54.5))

ONE_TAP, TWO_TAPS = 0.3048, 0.4572  # m: 12 and 18 in

# °C: nights in the 20s °F and days from 38 °F run; a light frost or a hot day only may.
COLD_NIGHT, WARM_DAY, HOT_DAY = -2.0, 3.3, 13.0


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
    source="common practice, no source: sap runs when a night below freezing is followed by a thaw, "
    "best with nights in the 20s °F and days in the 40s °F",
    example=((24.0, 43.0, "US"), 2),
    night_low=NIGHT,
    day_high=DAY,
)
def SAP_RUNS(night_low: Value, day_high: Value) -> Value:
    """Whether sap will run on the day after a night: 0 no, 1 maybe, 2 likely.

    No, without both frost and thaw. Likely after a night of 28 °F (-2 °C) or colder when the day
    reaches 38 °F (3.3 °C) but not 55 °F (13 °C). Else maybe.
    """
    good_day = choose(day_high >= WARM_DAY, choose(day_high <= HOT_DAY, 2, 1), 1)
    likely = choose(night_low <= COLD_NIGHT, good_day, 1)
    runs = choose(night_low < 0.0, choose(day_high > 0.0, likely, 0), 0)
    return require(night_low <= day_high, runs, "the night's low is above the day's high: are they swapped?")
