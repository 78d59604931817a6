"""Maple sugaring functions for Python and for spreadsheets.  Made by tests/tools/stubs.py."""

from typing import Literal

from sheetfuncs.formulas.card import Number
from sheetfuncs.science.errors import FormulaError, LeftOut, NoSolution, OutOfLimits, WrongKind

__version__: str
__all__ = [
    "AIR_PRESSURE",
    "AIR_PRESSURE_BY_SEA_LEVEL",
    "AIR_PRESSURE_HERE",
    "BOIL_BRIX",
    "BOIL_FUEL",
    "BOIL_HEAT",
    "BOIL_HOURS",
    "BOIL_RATE",
    "BOIL_WATER",
    "BRIX_BY_BOIL",
    "BRIX_BY_BOIL_SPREAD",
    "BRIX_BY_GRAVITY",
    "BRIX_BY_HYDROMETER",
    "BRIX_BY_REFRACTOMETER",
    "BRIX_BY_SAP_HYDROMETER",
    "BRIX_BY_WEIGHT",
    "FINISH_MINUTES",
    "FINISH_READING",
    "FINISH_RISE",
    "FINISH_TEMP",
    "FUEL_EFFICIENCY",
    "JAR_COUNT",
    "JAR_REST",
    "JAR_WEIGHT",
    "PAN_DEPTH",
    "PAN_RATE",
    "SAP_AFTER_ICE",
    "SAP_FREEZES",
    "SAP_ICE_LOSS",
    "SAP_KEEPS",
    "SAP_PER_SYRUP",
    "SAP_RUNS",
    "SAP_SUGAR",
    "SEASON_GOES_ON",
    "SEASON_WARMTH",
    "SYRUP_ADJUST",
    "SYRUP_BAUME",
    "SYRUP_BLEND",
    "SYRUP_BLEND_SHARE",
    "SYRUP_COLD",
    "SYRUP_DENSITY",
    "SYRUP_FLOATS",
    "SYRUP_FROM_SAP",
    "SYRUP_GRADE",
    "SYRUP_GRAVITY",
    "SYRUP_STATE",
    "TAP_COUNT",
    "WATER_BOILS",
    "FormulaError",
    "LeftOut",
    "NoSolution",
    "OutOfLimits",
    "WrongKind",
]

def AIR_PRESSURE(
    elevation: Number,
    units: Literal["US", "metric"] = "US",
) -> float:
    """Air pressure at an elevation on a standard day.

    The weather moves it by an inch of mercury either way: AIR_PRESSURE_HERE knows the day.

    Arguments:
        elevation: height above the sea; -1,400 to 16,000 ft, or -425 to 4,900 m
        units: unit system, "US" or "metric"; left out: "US"

    Returns:
        air pressure at the pan, inHg or hPa

    Errors (in a cell):
        #NUM! (OutOfLimits): an argument outside its limits, or no solution
        #VALUE! (WrongKind): text where a number belongs, or an unknown word
        #N/A (LeftOut): an argument left out

    Source:
        U.S. Standard Atmosphere, 1976, eq. 18 and 33a

    Example:
        >>> from sheetfuncs import AIR_PRESSURE
        >>> round(AIR_PRESSURE(650.0, 'US'), 4)
        29.2251
    """

def AIR_PRESSURE_HERE(
    barometer: Number,
    elevation: Number,
    units: Literal["US", "metric"] = "US",
) -> float:
    """Air pressure at the pan today, from the altimeter setting and the elevation.

    A barometer is reported as if it stood at sea level. The altimeter setting takes the air
    below for a standard day's; most telephones show sea-level pressure, which asks for its true
    temperature: AIR_PRESSURE_BY_SEA_LEVEL. Typed here on a day of 14 °F (-10 °C) that makes the
    boiling point too high by 0.2 °F (0.1 °C) at 1,300 ft (400 m) and by 0.4 °F (0.2 °C) at
    3,300 ft (1,000 m).

    Arguments:
        barometer: altimeter setting, as airports and the U.S. weather service report it; 26 to
            32 inHg, or 880 to 1,084 hPa
        elevation: height above the sea; -1,400 to 16,000 ft, or -425 to 4,900 m
        units: unit system, "US" or "metric"; left out: "US"

    Returns:
        air pressure at the pan, inHg or hPa

    Errors (in a cell):
        #NUM! (OutOfLimits): an argument outside its limits, or no solution
        #VALUE! (WrongKind): text where a number belongs, or an unknown word
        #N/A (LeftOut): an argument left out

    Source:
        the altimeter-setting relation: Smithsonian Meteorological Tables (1951), Table 64, with
        the constants of the U.S. Standard Atmosphere, 1976

    Example:
        >>> from sheetfuncs import AIR_PRESSURE_HERE
        >>> round(AIR_PRESSURE_HERE(30.1, 650.0, 'US'), 4)
        29.4005
    """

def AIR_PRESSURE_BY_SEA_LEVEL(
    sea_level: Number,
    elevation: Number,
    temperature: Number,
    units: Literal["US", "metric"] = "US",
) -> float:
    """Air pressure at the pan today, from sea-level pressure, the elevation and the cold outdoors.

    Arguments:
        sea_level: sea-level pressure of a forecast, as telephones and weather maps show it; 26
            to 32 inHg, or 880 to 1,084 hPa
        elevation: height above the sea; -1,400 to 16,000 ft, or -425 to 4,900 m
        temperature: air temperature outdoors, the mean of now and 12 hours ago; -60 to 130 °F,
            or -51 to 54.5 °C
        units: unit system, "US" or "metric"; left out: "US"

    Returns:
        air pressure at the pan, inHg or hPa

    Errors (in a cell):
        #NUM! (OutOfLimits): an argument outside its limits, or no solution
        #VALUE! (WrongKind): text where a number belongs, or an unknown word
        #N/A (LeftOut): an argument left out

    Source:
        the hydrostatic equation with the air's own temperature and 6.5 K a kilometre, as
        stations reduce their pressure: WMO-No. 8, vol. I, ch. 3, for dry air

    Example:
        >>> from sheetfuncs import AIR_PRESSURE_BY_SEA_LEVEL
        >>> round(AIR_PRESSURE_BY_SEA_LEVEL(30.1, 650.0, 25.0, 'US'), 4)
        29.3546
    """

def WATER_BOILS(
    pressure: Number,
    units: Literal["US", "metric"] = "US",
) -> float:
    """Boiling point of pure water at an air pressure.

    Arguments:
        pressure: air pressure at the pan, not reduced to sea level (AIR_PRESSURE or
            AIR_PRESSURE_HERE gives it); 15 to 32 inHg, or 508 to 1,084 hPa
        units: unit system, "US" or "metric"; left out: "US"

    Returns:
        boiling point of water, °F or °C

    Errors (in a cell):
        #NUM! (OutOfLimits): an argument outside its limits, or no solution
        #VALUE! (WrongKind): text where a number belongs, or an unknown word
        #N/A (LeftOut): an argument left out

    Source:
        IAPWS-IF97 (R7-97, 2012), region 4, eq. 31

    Example:
        >>> from sheetfuncs import WATER_BOILS
        >>> round(WATER_BOILS(29.92, 'US'), 2)
        211.95
    """

def TAP_COUNT(
    trunk_diameter: Number,
    units: Literal["US", "metric"] = "US",
) -> int:
    """How many taps a maple can bear: under 12 in none, 12 to 18 in one, over 18 in two.

    Girth divided by 3.14 gives the diameter.

    Arguments:
        trunk_diameter: thickness of the trunk at 4.5 ft (1.4 m); 0 to 120 in, or 0 to 305 cm
        units: unit system, "US" or "metric"; left out: "US"

    Returns:
        taps the trunk can bear, count

    Errors (in a cell):
        #NUM! (OutOfLimits): an argument outside its limits, or no solution
        #VALUE! (WrongKind): text where a number belongs, or an unknown word
        #N/A (LeftOut): an argument left out

    Source:
        the conservative tapping guide of U.S. state extension services (12 to 18 in one, above
        two); guides differ, and a slow or damaged tree gets fewer

    Example:
        >>> from sheetfuncs import TAP_COUNT
        >>> TAP_COUNT(14.0, 'US')
        1
    """

def SAP_RUNS(
    night_low: Number,
    recent_low: Number,
    day_high: Number,
    units: Literal["US", "metric"] = "US",
) -> int:
    """Whether sap will run on the day after a night: 0 no, 1 maybe, 2 likely.

    No, without a thaw, or without frost in this night or the two before. Likely after a night
    of 28 °F (-2 °C) or colder when the day reaches 38 °F (3.3 °C) but not 55 °F (13 °C). Else
    maybe. It says nothing of how much.

    Arguments:
        night_low: lowest temperature of the night; -60 to 130 °F, or -51 to 54.5 °C
        recent_low: lowest temperature of this night and the two before; -60 to 130 °F, or -51
            to 54.5 °C
        day_high: highest temperature of the day after; -60 to 130 °F, or -51 to 54.5 °C
        units: unit system, "US" or "metric"; left out: "US"

    Returns:
        0 no, 1 maybe, 2 likely, count

    Errors (in a cell):
        #NUM! (OutOfLimits): an argument outside its limits, or no solution
        #VALUE! (WrongKind): text where a number belongs, or an unknown word
        #N/A (LeftOut): an argument left out

    Source:
        common practice, no source: sap runs when frost is followed by a thaw, and for a day or
        two after; best with nights in the 20s °F and days in the 40s °F. Of 28 days with sap in
        the log of one orchard (MacLeish field station, 2013 to 2015) it calls 26 to 28

    Example:
        >>> from sheetfuncs import SAP_RUNS
        >>> SAP_RUNS(36.0, 24.0, 43.0, 'US')
        1
    """

def SEASON_WARMTH(
    low: Number,
    high: Number,
    units: Literal["US", "metric"] = "US",
) -> float:
    """Warmth of a day that brings the buds on. Added up from 1 January it tells how far spring is.

    Arguments:
        low: lowest temperature of the day; -60 to 130 °F, or -51 to 54.5 °C
        high: highest temperature of the day; -60 to 130 °F, or -51 to 54.5 °C
        units: unit system, "US" or "metric"; left out: "US"

    Returns:
        degree-days over 5 °C (41 °F), F°·days or C°·days

    Errors (in a cell):
        #NUM! (OutOfLimits): an argument outside its limits, or no solution
        #VALUE! (WrongKind): text where a number belongs, or an unknown word
        #N/A (LeftOut): an argument left out

    Source:
        the mean of the day's low and high over 5 °C, as growing degree-days are reckoned; the
        base of Houle et al., PLoS ONE 10(12): e0144844 (2015)

    Example:
        >>> from sheetfuncs import SEASON_WARMTH
        >>> round(SEASON_WARMTH(38.0, 60.0, 'US'), 1)
        8.0
    """

def SEASON_GOES_ON(
    freeze_thaws: Number,
    warmth: Number,
    units: Literal["US", "metric"] = "US",
) -> float:
    """How likely a week is still one of the season, by its frosts and warmth since 1 January.

    Made for one province and for weeks: elsewhere it was right for 68 percent. A gauge, not a
    verdict: swelling buds and a cup that tastes of them decide.

    Arguments:
        freeze_thaws: days since 1 January with a low under 3 °C (37.4 °F) and a high over it; 0
            to 120 count
        warmth: degree-days over 5 °C (41 °F) since 1 January: the sum of SEASON_WARMTH; 0 to
            3,600 F°·days, or 0 to 2,000 C°·days
        units: unit system, "US" or "metric"; left out: "US"

    Returns:
        probability, 0 to 1; the authors count a week as in the season from 0.51 on, probability

    Errors (in a cell):
        #NUM! (OutOfLimits): an argument outside its limits, or no solution
        #VALUE! (WrongKind): text where a number belongs, or an unknown word
        #N/A (LeftOut): an argument left out

    Source:
        Houle et al., PLoS ONE 10(12): e0144844 (2015), eq. 2: 121 producers of Québec, 1999 to
        2011; right for 83 percent of the weeks of production and 95 percent of the others

    Example:
        >>> from sheetfuncs import SEASON_GOES_ON
        >>> round(SEASON_GOES_ON(25.0, 70.0, 'US'), 3)
        0.816
    """

def SAP_SUGAR(
    volume: Number,
    brix: Number,
    units: Literal["US", "metric"] = "US",
) -> float:
    """Mass of sugar in a volume of sap or syrup. It stays when the water leaves.

    Arguments:
        volume: volume of sap or syrup, cold; 0 to 1,000,000 gal, or 0 to 3,800,000 L
        brix: sugar in the liquid, percent by mass; 0 to 85 °Brix
        units: unit system, "US" or "metric"; left out: "US"

    Returns:
        mass of sugar, lb or kg

    Errors (in a cell):
        #NUM! (OutOfLimits): an argument outside its limits, or no solution
        #VALUE! (WrongKind): text where a number belongs, or an unknown word
        #N/A (LeftOut): an argument left out

    Source:
        ICUMSA SPS-4 density at 20 °C times °Brix

    Example:
        >>> from sheetfuncs import SAP_SUGAR
        >>> round(SAP_SUGAR(40.0, 2.0, 'US'), 3)
        6.716
    """

def SAP_PER_SYRUP(
    brix: Number,
    syrup_brix: Number,
) -> float:
    """How many volumes of sap boil down to one volume of syrup.

    Arguments:
        brix: sugar in the liquid, percent by mass, more than none; 0.1 to 85 °Brix
        syrup_brix: sugar in the syrup wanted, percent by mass (66.9 is usual); 0.1 to 85 °Brix

    Returns:
        volumes of sap for one of syrup, volumes

    Errors (in a cell):
        #NUM! (OutOfLimits): an argument outside its limits, or no solution
        #VALUE! (WrongKind): text where a number belongs, or an unknown word
        #N/A (LeftOut): an argument left out

    Source:
        sugar balance with ICUMSA SPS-4 densities at 20 °C. The rule of 86 is this for 65.5
        °Brix; 87.1 and 88.2 (Perkins & Isselhardt, University of Vermont) for 66.0 and 66.9 are
        within 1 %

    Example:
        >>> from sheetfuncs import SAP_PER_SYRUP
        >>> round(SAP_PER_SYRUP(2.0, 66.9), 2)
        44.16
    """

def SYRUP_FROM_SAP(
    volume: Number,
    brix: Number,
    syrup_brix: Number,
) -> float:
    """Volume that is left when sap is boiled to a strength; from any strength to any other.

    Both volumes are cold: hot syrup takes 3 to 4 percent more room (SYRUP_COLD).

    Arguments:
        volume: volume of the liquid, cold; 0 to 10,000,000 any one unit of volume
        brix: sugar in the liquid, percent by mass; 0 to 85 °Brix
        syrup_brix: sugar in the syrup wanted, percent by mass (66.9 is usual); 0.1 to 85 °Brix

    Returns:
        volume left, in the unit of `volume`, any one unit of volume

    Errors (in a cell):
        #NUM! (OutOfLimits): an argument outside its limits, or no solution
        #VALUE! (WrongKind): text where a number belongs, or an unknown word
        #N/A (LeftOut): an argument left out

    Source:
        sugar balance with ICUMSA SPS-4 densities at 20 °C

    Example:
        >>> from sheetfuncs import SYRUP_FROM_SAP
        >>> round(SYRUP_FROM_SAP(100.0, 2.0, 66.9), 3)
        2.264
    """

def SAP_AFTER_ICE(
    brix: Number,
    ice_share: Number,
    ice_brix: Number,
) -> float:
    """Strength of the liquid when ice is lifted out of freezing sap and thrown away.

    #NUM! where the ice would hold more sugar than the sap had.

    Arguments:
        brix: sugar in the liquid, percent by mass; 0 to 85 °Brix
        ice_share: share of the mass that is thrown out as ice, 0.25 for a quarter; 0 to 0.95
            share
        ice_brix: sugar left in the ice, percent by mass (often 0.2 to 1); 0 to 85 °Brix

    Returns:
        strength of the liquid left, °Brix

    Errors (in a cell):
        #NUM! (OutOfLimits): an argument outside its limits, or no solution
        #VALUE! (WrongKind): text where a number belongs, or an unknown word
        #N/A (LeftOut): an argument left out

    Source:
        sugar balance

    Example:
        >>> from sheetfuncs import SAP_AFTER_ICE
        >>> round(SAP_AFTER_ICE(2.4, 0.2, 0.0), 1)
        3.0
    """

def SAP_ICE_LOSS(
    brix: Number,
    ice_share: Number,
    ice_brix: Number,
) -> float:
    """Share of the sugar that goes out with the ice.

    #NUM! where the ice would hold more sugar than the sap had.

    Arguments:
        brix: sugar in the liquid, percent by mass, more than none; 0.1 to 85 °Brix
        ice_share: share of the mass that is thrown out as ice, 0.25 for a quarter; 0 to 0.95
            share
        ice_brix: sugar left in the ice, percent by mass (often 0.2 to 1); 0 to 85 °Brix

    Returns:
        share of the sugar, 0.1 for a tenth, share

    Errors (in a cell):
        #NUM! (OutOfLimits): an argument outside its limits, or no solution
        #VALUE! (WrongKind): text where a number belongs, or an unknown word
        #N/A (LeftOut): an argument left out

    Source:
        sugar balance

    Example:
        >>> from sheetfuncs import SAP_ICE_LOSS
        >>> round(SAP_ICE_LOSS(2.5, 0.5, 1.0), 1)
        0.2
    """

def SAP_FREEZES(
    brix: Number,
    units: Literal["US", "metric"] = "US",
) -> float:
    """Freezing point of sap.

    Arguments:
        brix: sugar in the sap, percent by mass; 0 to 42 °Brix
        units: unit system, "US" or "metric"; left out: "US"

    Returns:
        temperature at which ice begins to form, °F or °C

    Errors (in a cell):
        #NUM! (OutOfLimits): an argument outside its limits, or no solution
        #VALUE! (WrongKind): text where a number belongs, or an unknown word
        #N/A (LeftOut): an argument left out

    Source:
        the freezing constant of water with two terms fitted to the CRC Handbook, 102nd ed.
        (2021), sucrose, 0.5 to 42 %: within 0.01 °C of each row

    Example:
        >>> from sheetfuncs import SAP_FREEZES
        >>> round(SAP_FREEZES(2.0, 'US'), 1)
        31.8
    """

def SAP_KEEPS(
    brix: Number,
    temperature: Number,
    units: Literal["US", "metric"] = "US",
) -> float:
    """Days that sap or part-boiled sap keeps. A judgement: smell and look before you boil.

    At 38 °F (3.3 °C) 7 days for sap as it comes, and a week and a day for sap of 8 °Brix and
    more that was jarred boiling and closed; half for every 10 °F (5.6 °C) warmer, double for as
    much colder; 90 days once frozen, 9 °F (5 °C) below its freezing point. Poured cold or left
    open it keeps as sap does; concentrate of a membrane was never heated: boil it the same day.
    Bringing a lot back to a boil (180 °F, 82 °C or more) starts its clock again. Cloudy, ropy
    or off-smelling sap is thrown out, whatever its age.

    Arguments:
        brix: sugar in the liquid, percent by mass; 0 to 85 °Brix
        temperature: temperature the lot is kept at; -40 to 100 °F, or -40 to 38 °C
        units: unit system, "US" or "metric"; left out: "US"

    Returns:
        days, from when it was collected or last brought to a boil, days

    Errors (in a cell):
        #NUM! (OutOfLimits): an argument outside its limits, or no solution
        #VALUE! (WrongKind): text where a number belongs, or an unknown word
        #N/A (LeftOut): an argument left out

    Source:
        a judgement on common practice, no source: sap keeps about like milk, and part-boiled
        sap is opened again a week later

    Example:
        >>> from sheetfuncs import SAP_KEEPS
        >>> round(SAP_KEEPS(2.0, 48.0, 'US'), 1)
        3.5
    """

def BOIL_BRIX(
    volume: Number,
    brix: Number,
    volume_left: Number,
) -> float:
    """Strength after boiling to a measured volume; both volumes cold, no sugar lost.

    #NUM! where nothing is left, or where more sugar would be left than 85 °Brix holds.

    Arguments:
        volume: volume of the liquid, cold; 0 to 10,000,000 any one unit of volume
        brix: sugar in the liquid, percent by mass; 0 to 85 °Brix
        volume_left: volume left, cold, in the unit of `volume`; 0 to 10,000,000 any one unit of
            volume

    Returns:
        strength after boiling, °Brix

    Errors (in a cell):
        #NUM! (OutOfLimits): an argument outside its limits, or no solution
        #VALUE! (WrongKind): text where a number belongs, or an unknown word
        #N/A (LeftOut): an argument left out

    Source:
        sugar balance with ICUMSA SPS-4 densities at 20 °C, solved by Newton's method

    Example:
        >>> from sheetfuncs import BOIL_BRIX
        >>> round(BOIL_BRIX(40.0, 2.0, 4.0), 2)
        18.71
    """

def BOIL_WATER(
    volume: Number,
    brix: Number,
    to_brix: Number,
) -> float:
    """Water to boil away to bring sap to a strength.

    #NUM! where it is stronger already.

    Arguments:
        volume: volume of the liquid, cold; 0 to 10,000,000 any one unit of volume
        brix: sugar in the liquid, percent by mass; 0 to 85 °Brix
        to_brix: sugar in the syrup wanted, percent by mass (66.9 is usual); 0.1 to 85 °Brix

    Returns:
        cold volume of water, in the unit of `volume`, any one unit of volume

    Errors (in a cell):
        #NUM! (OutOfLimits): an argument outside its limits, or no solution
        #VALUE! (WrongKind): text where a number belongs, or an unknown word
        #N/A (LeftOut): an argument left out

    Source:
        sugar balance with ICUMSA SPS-4 densities at 20 °C

    Example:
        >>> from sheetfuncs import BOIL_WATER
        >>> round(BOIL_WATER(40.0, 2.0, 66.9), 2)
        39.11
    """

def BOIL_HOURS(
    volume: Number,
    brix: Number,
    to_brix: Number,
    rate: Number,
) -> float:
    """Hours to bring sap to a strength at a rate of boiling, without heating up or rests.

    #NUM! where it is stronger already.

    Arguments:
        volume: volume of the liquid, cold; 0 to 10,000,000 any one unit of volume
        brix: sugar in the liquid, percent by mass; 0 to 85 °Brix
        to_brix: sugar in the syrup wanted, percent by mass (66.9 is usual); 0.1 to 85 °Brix
        rate: volume of water that boils off in an hour; 0.001 to 1,000,000 the same unit an
            hour

    Returns:
        hours, hours

    Errors (in a cell):
        #NUM! (OutOfLimits): an argument outside its limits, or no solution
        #VALUE! (WrongKind): text where a number belongs, or an unknown word
        #N/A (LeftOut): an argument left out

    Source:
        water to boil away over the measured rate

    Example:
        >>> from sheetfuncs import BOIL_HOURS
        >>> round(BOIL_HOURS(40.0, 2.0, 66.9, 6.0), 2)
        6.52
    """

def BOIL_HEAT(
    volume: Number,
    brix: Number,
    to_brix: Number,
    sap_temperature: Number,
    units: Literal["US", "metric"] = "US",
) -> float:
    """Heat to warm sap and boil its water off, all of it reaching the sap.

    #NUM! where it is stronger already. BOIL_FUEL reckons the losses.

    Arguments:
        volume: volume of sap or syrup, cold; 0 to 1,000,000 gal, or 0 to 3,800,000 L
        brix: sugar in the liquid, percent by mass; 0 to 85 °Brix
        to_brix: sugar in the syrup wanted, percent by mass (66.9 is usual); 0.1 to 85 °Brix
        sap_temperature: temperature of the sap at the start; 20 to 212 °F, or -6.5 to 100 °C
        units: unit system, "US" or "metric"; left out: "US"

    Returns:
        heat, Btu or MJ

    Errors (in a cell):
        #NUM! (OutOfLimits): an argument outside its limits, or no solution
        #VALUE! (WrongKind): text where a number belongs, or an unknown word
        #N/A (LeftOut): an argument left out

    Source:
        specific heat: Bubnik, Kadlec, Urban & Bruhns, Sugar Technologists Manual (1995); latent
        heat: fitted to IAPWS-IF97. Within 2 % of the 400,000 Btu per gallon of syrup that Ohio
        State Extension gives

    Example:
        >>> from sheetfuncs import BOIL_HEAT
        >>> round(BOIL_HEAT(40.0, 2.0, 66.9, 40.0, 'US'), 1)
        373203.7
    """

def BOIL_FUEL(
    heat: Number,
    fuel: Literal[
        "hardwood",
        "softwood",
        "propane",
        "propane bottle",
        "fuel oil",
        "natural gas",
        "natural gas by therm",
        "electricity",
    ],
    efficiency: Number,
    units: Literal["US", "metric"] = "US",
) -> float:
    """Fuel that brings a heat to the sap; efficiency is the share of its heat that gets there.

    Arguments:
        heat: heat that must reach the sap; 0 to 1e+12 Btu, or 0 to 1,055,000,000 MJ
        fuel: fuel; one of hardwood, softwood, propane, propane bottle, fuel oil, natural gas,
            natural gas by therm, electricity
        efficiency: share of the fuel's heat that reaches the sap (FUEL_EFFICIENCY has one to
            start with); 0.01 to 1 share
        units: unit system, "US" or "metric"; left out: "US"

    Returns:
        amount of fuel: wood in cords or m³ stacked, propane and fuel oil in gal or L, gas in
        ft³ or m³, else 20-lb bottles, therms or kWh, the fuel's unit

    Errors (in a cell):
        #NUM! (OutOfLimits): an argument outside its limits, or no solution
        #VALUE! (WrongKind): text where a number belongs, or an unknown word
        #N/A (LeftOut): an argument left out

    Source:
        heating values: Bartok, UConn Extension (2013); dry wood, middle of its range; a 20-lb
        bottle of propane holds 4.72 gal (cylinder makers' table)

    Example:
        >>> from sheetfuncs import BOIL_FUEL
        >>> round(BOIL_FUEL(373000.0, 'propane', 0.5, 'US'), 2)
        8.06
    """

def FUEL_EFFICIENCY(
    fuel: Literal[
        "hardwood",
        "softwood",
        "propane",
        "propane bottle",
        "fuel oil",
        "natural gas",
        "natural gas by therm",
        "electricity",
    ],
) -> float:
    """Share of a fuel's heat that reaches the sap, to start with: your own log knows better.

    Arguments:
        fuel: fuel; one of hardwood, softwood, propane, propane bottle, fuel oil, natural gas,
            natural gas by therm, electricity

    Returns:
        share of the fuel's heat, share

    Errors (in a cell):
        #NUM! (OutOfLimits): an argument outside its limits, or no solution
        #VALUE! (WrongKind): text where a number belongs, or an unknown word
        #N/A (LeftOut): an argument left out

    Source:
        a judgement: records of wood fires run from 16 to 42 percent; gas 0.35 to 0.5 and an
        electric element in the pan 0.7 to 0.9, from memory

    Example:
        >>> from sheetfuncs import FUEL_EFFICIENCY
        >>> round(FUEL_EFFICIENCY('hardwood'), 2)
        0.25
    """

def PAN_RATE(
    area: Number,
    units: Literal["US", "metric"] = "US",
) -> float:
    """How fast a flat pan over a fire boils water off. A guess to start with: measure your own.

    On a stove or a hot plate the heat decides and not the pan: BOIL_RATE.

    Arguments:
        area: area of the pan's bottom; 0.05 to 1,000 sq ft, or 0.005 to 93 m²
        units: unit system, "US" or "metric"; left out: "US"

    Returns:
        volume of water an hour, gal/h or L/h

    Errors (in a cell):
        #NUM! (OutOfLimits): an argument outside its limits, or no solution
        #VALUE! (WrongKind): text where a number belongs, or an unknown word
        #N/A (LeftOut): an argument left out

    Source:
        common practice, no source: a flat pan of 6 square feet or more loses 1 gal an hour from
        each (0.7 to 1.2 measured by hobbyists), one under 5 square feet about 0.6 (a dealer's
        sizing chart)

    Example:
        >>> from sheetfuncs import PAN_RATE
        >>> round(PAN_RATE(6.0, 'US'), 1)
        6.0
    """

def BOIL_RATE(
    power: Number,
    efficiency: Number,
    units: Literal["US", "metric"] = "US",
) -> float:
    """How fast a heat boils water off, once it boils; efficiency is the share that reaches the sap.

    A hot plate of 1,500 W has 5,118 Btu/h. Cold sap poured in takes up to a sixth of the heat
    to warm: BOIL_HEAT reckons it.

    Arguments:
        power: power of the stove, hot plate or burner; 1 to 10,000,000 Btu/h, or 0.0003 to
            2,930 kW
        efficiency: share of the fuel's heat that reaches the sap (FUEL_EFFICIENCY has one to
            start with); 0.01 to 1 share
        units: unit system, "US" or "metric"; left out: "US"

    Returns:
        volume of water an hour, gal/h or L/h

    Errors (in a cell):
        #NUM! (OutOfLimits): an argument outside its limits, or no solution
        #VALUE! (WrongKind): text where a number belongs, or an unknown word
        #N/A (LeftOut): an argument left out

    Source:
        latent heat at 100 °C, fitted to IAPWS-IF97

    Example:
        >>> from sheetfuncs import BOIL_RATE
        >>> round(BOIL_RATE(5118.0, 0.75, 'US'), 3)
        0.475
    """

def PAN_DEPTH(
    volume: Number,
    area: Number,
    units: Literal["US", "metric"] = "US",
) -> float:
    """Depth of a volume in a pan with upright sides.

    Arguments:
        volume: volume of sap or syrup, cold; 0 to 1,000,000 gal, or 0 to 3,800,000 L
        area: area of the pan's bottom; 0.05 to 1,000 sq ft, or 0.005 to 93 m²
        units: unit system, "US" or "metric"; left out: "US"

    Returns:
        depth of the liquid, in or cm

    Errors (in a cell):
        #NUM! (OutOfLimits): an argument outside its limits, or no solution
        #VALUE! (WrongKind): text where a number belongs, or an unknown word
        #N/A (LeftOut): an argument left out

    Source:
        geometry: volume over area

    Example:
        >>> from sheetfuncs import PAN_DEPTH
        >>> round(PAN_DEPTH(2.0, 4.0, 'US'), 1)
        0.8
    """

def FINISH_RISE(
    brix: Number,
    pressure: Number,
    units: Literal["US", "metric"] = "US",
) -> float:
    """How much hotter than water sap or syrup boils, at its strength and the air pressure.

    Arguments:
        brix: sugar in the liquid, percent by mass; 0 to 85 °Brix
        pressure: air pressure at the pan, not reduced to sea level (AIR_PRESSURE or
            AIR_PRESSURE_HERE gives it); 15 to 32 inHg, or 508 to 1,084 hPa
        units: unit system, "US" or "metric"; left out: "US"

    Returns:
        degrees above boiling water, F° or C°

    Errors (in a cell):
        #NUM! (OutOfLimits): an argument outside its limits, or no solution
        #VALUE! (WrongKind): text where a number belongs, or an unknown word
        #N/A (LeftOut): an argument left out

    Source:
        water activity: Starzak & Peacock, Zuckerindustrie 122 (1997) 380-387 (constants read in
        its abstract, form from memory), with IAPWS-IF97 for water; about 0.1 °C to 70 °Brix

    Example:
        >>> from sheetfuncs import FINISH_RISE
        >>> round(FINISH_RISE(66.9, 29.92, 'US'), 2)
        7.56
    """

def FINISH_TEMP(
    brix: Number,
    pressure: Number,
    units: Literal["US", "metric"] = "US",
) -> float:
    """Temperature at which sap or syrup of a strength boils, at the air pressure of the day.

    Arguments:
        brix: sugar in the liquid, percent by mass; 0 to 85 °Brix
        pressure: air pressure at the pan, not reduced to sea level (AIR_PRESSURE or
            AIR_PRESSURE_HERE gives it); 15 to 32 inHg, or 508 to 1,084 hPa
        units: unit system, "US" or "metric"; left out: "US"

    Returns:
        boiling temperature, °F or °C

    Errors (in a cell):
        #NUM! (OutOfLimits): an argument outside its limits, or no solution
        #VALUE! (WrongKind): text where a number belongs, or an unknown word
        #N/A (LeftOut): an argument left out

    Source:
        water activity: Starzak & Peacock, Zuckerindustrie 122 (1997) 380-387 (constants read in
        its abstract, form from memory), with IAPWS-IF97 for water; about 0.1 °C to 70 °Brix

    Example:
        >>> from sheetfuncs import FINISH_TEMP
        >>> round(FINISH_TEMP(66.9, 29.92, 'US'), 2)
        219.51
    """

def FINISH_READING(
    brix: Number,
    water_reading: Number,
    units: Literal["US", "metric"] = "US",
) -> float:
    """What this thermometer shows when the strength is reached, from what it shows in boiling water.

    Its own error and the day's weather are in the water reading already. Take that reading each
    day, and again when a front goes through.

    Arguments:
        brix: sugar in the liquid, percent by mass; 0 to 85 °Brix
        water_reading: what the thermometer shows in water boiling hard, today; 175 to 222 °F,
            or 79.5 to 105.5 °C
        units: unit system, "US" or "metric"; left out: "US"

    Returns:
        what the thermometer shows, °F or °C

    Errors (in a cell):
        #NUM! (OutOfLimits): an argument outside its limits, or no solution
        #VALUE! (WrongKind): text where a number belongs, or an unknown word
        #N/A (LeftOut): an argument left out

    Source:
        water activity: Starzak & Peacock, Zuckerindustrie 122 (1997) 380-387 (constants read in
        its abstract, form from memory), with IAPWS-IF97 for water; about 0.1 °C to 70 °Brix

    Example:
        >>> from sheetfuncs import FINISH_READING
        >>> round(FINISH_READING(66.9, 210.5, 'US'), 2)
        218.02
    """

def FINISH_MINUTES(
    volume: Number,
    brix: Number,
    syrup_brix: Number,
    rate: Number,
) -> float:
    """Minutes until the strength is reached at a rate of boiling; 0 when it is reached or passed.

    Arguments:
        volume: volume of the liquid, cold; 0 to 10,000,000 any one unit of volume
        brix: sugar in the liquid, percent by mass; 0 to 85 °Brix
        syrup_brix: sugar in the syrup wanted, percent by mass (66.9 is usual); 0.1 to 85 °Brix
        rate: volume of water that boils off in an hour; 0.001 to 1,000,000 the same unit an
            hour

    Returns:
        minutes, minutes

    Errors (in a cell):
        #NUM! (OutOfLimits): an argument outside its limits, or no solution
        #VALUE! (WrongKind): text where a number belongs, or an unknown word
        #N/A (LeftOut): an argument left out

    Source:
        water to boil away over the rate

    Example:
        >>> from sheetfuncs import FINISH_MINUTES
        >>> round(FINISH_MINUTES(1.5, 60.0, 66.9, 3.0), 1)
        4.0
    """

def BRIX_BY_BOIL(
    reading: Number,
    water_reading: Number,
    units: Literal["US", "metric"] = "US",
) -> float:
    """Strength of sap or syrup from what one thermometer shows in it and in water, both boiling.

    #NUM! where it boils colder than the water, or hotter than 85 °Brix does.

    Arguments:
        reading: what the thermometer shows in the boiling pan; 150 to 300 °F, or 65 to 149 °C
        water_reading: what the thermometer shows in water boiling hard, today; 175 to 222 °F,
            or 79.5 to 105.5 °C
        units: unit system, "US" or "metric"; left out: "US"

    Returns:
        strength of what is boiling, °Brix

    Errors (in a cell):
        #NUM! (OutOfLimits): an argument outside its limits, or no solution
        #VALUE! (WrongKind): text where a number belongs, or an unknown word
        #N/A (LeftOut): an argument left out

    Source:
        water activity: Starzak & Peacock, Zuckerindustrie 122 (1997) 380-387 (constants read in
        its abstract, form from memory), with IAPWS-IF97 for water; about 0.1 °C to 70 °Brix

    Example:
        >>> from sheetfuncs import BRIX_BY_BOIL
        >>> round(BRIX_BY_BOIL(217.0, 210.5, 'US'), 1)
        64.1
    """

def BRIX_BY_BOIL_SPREAD(
    reading: Number,
    water_reading: Number,
    give_or_take: Number,
    water_from: Literal["today", "another day", "barometer", "elevation"],
    units: Literal["US", "metric"] = "US",
) -> float:
    """How far off BRIX_BY_BOIL may be, the larger side: by the thermometer and by its water reading.

    The water reading is from this thermometer in boiling water today, or another day, or it is
    what water should boil at by the barometer, or by the elevation alone. Sugar that has turned
    to invert sugar comes on top: with a tenth of it turned, syrup is 1.1 to 1.5 °Brix thinner
    than it seems.

    Arguments:
        reading: what the thermometer shows in the boiling pan; 150 to 300 °F, or 65 to 149 °C
        water_reading: what the thermometer shows in water boiling hard, today; 175 to 222 °F,
            or 79.5 to 105.5 °C
        give_or_take: how far off a reading of this thermometer may be; 0 to 10 F°, or 0 to 5.5
            C°
        water_from: where the water reading is from; one of today, another day, barometer,
            elevation
        units: unit system, "US" or "metric"; left out: "US"

    Returns:
        °Brix either way, °Brix

    Errors (in a cell):
        #NUM! (OutOfLimits): an argument outside its limits, or no solution
        #VALUE! (WrongKind): text where a number belongs, or an unknown word
        #N/A (LeftOut): an argument left out

    Source:
        JCGM 100:2008 5.1: both readings' errors, 0.1 °C of the relation (published ones stand
        that far apart at syrup) and that of the water's origin, as squares; the origins are a
        judgement: weather of half an inch of mercury, a thermometer 1.5 °F (0.8 °C) off

    Example:
        >>> from sheetfuncs import BRIX_BY_BOIL_SPREAD
        >>> round(BRIX_BY_BOIL_SPREAD(218.0, 210.5, 0.5, 'today', 'US'), 2)
        1.92
    """

def BRIX_BY_HYDROMETER(
    reading: Number,
    temperature: Number,
    units: Literal["US", "metric"] = "US",
) -> float:
    """True strength from a hydrometer marked at 60 °F, floating in syrup at a temperature.

    #NUM! where that is over 85 °Brix.

    Arguments:
        reading: what the hydrometer shows, °Brix scale marked at 60 °F; 0 to 85 °Brix
        temperature: temperature of the liquid; 32 to 221 °F, or 0 to 105 °C
        units: unit system, "US" or "metric"; left out: "US"

    Returns:
        true strength, °Brix

    Errors (in a cell):
        #NUM! (OutOfLimits): an argument outside its limits, or no solution
        #VALUE! (WrongKind): text where a number belongs, or an unknown word
        #N/A (LeftOut): an argument left out

    Source:
        buoyancy with ICUMSA SPS-4 densities, glass 25e-6 per K (ISO 1768:1975); within 0.33
        °Brix of the printed chart for 66.9 °Brix syrup

    Example:
        >>> from sheetfuncs import BRIX_BY_HYDROMETER
        >>> round(BRIX_BY_HYDROMETER(59.2, 209.0, 'US'), 2)
        66.97
    """

def BRIX_BY_SAP_HYDROMETER(
    reading: Number,
    temperature: Number,
    marked_at: Number,
    units: Literal["US", "metric"] = "US",
) -> float:
    """True strength from a hydrometer marked at another temperature, as sap hydrometers are.

    #NUM! where that is over 85 °Brix.

    Arguments:
        reading: what the hydrometer shows, °Brix; 0 to 85 °Brix
        temperature: temperature of the liquid; 32 to 221 °F, or 0 to 105 °C
        marked_at: temperature its scale was marked for (38 °F on most sap hydrometers); 32 to
            70 °F, or 0 to 21 °C
        units: unit system, "US" or "metric"; left out: "US"

    Returns:
        true strength, °Brix

    Errors (in a cell):
        #NUM! (OutOfLimits): an argument outside its limits, or no solution
        #VALUE! (WrongKind): text where a number belongs, or an unknown word
        #N/A (LeftOut): an argument left out

    Source:
        buoyancy with ICUMSA SPS-4 densities, glass 25e-6 per K (ISO 1768:1975)

    Example:
        >>> from sheetfuncs import BRIX_BY_SAP_HYDROMETER
        >>> round(BRIX_BY_SAP_HYDROMETER(2.0, 50.0, 38.0, 'US'), 2)
        2.05
    """

def BRIX_BY_WEIGHT(
    empty_weight: Number,
    water_weight: Number,
    full_weight: Number,
    temperature: Number,
    units: Literal["US", "metric"] = "US",
) -> float:
    """Strength from a kitchen scale: a container weighed empty, full of water, and full of sap or syrup.

    Fill to the same mark, a narrow neck is best, with water as warm as the liquid. A scale that
    reads to 1 g tells sap in a gallon jug to 0.1 °Brix and syrup in a pint jar to 0.6. #NUM!
    where the liquid weighs less than water, or more than 85 °Brix does.

    Arguments:
        empty_weight: weight of the empty container; 0 to 1,000,000 any one unit of weight
        water_weight: its weight full of water to a mark, in the same unit; 0 to 1,000,000 any
            one unit of weight
        full_weight: its weight full of the liquid to the same mark; 0 to 1,000,000 any one unit
            of weight
        temperature: temperature of the liquid and of the water; 32 to 212 °F, or 0 to 100 °C
        units: unit system, "US" or "metric"; left out: "US"

    Returns:
        true strength, °Brix

    Errors (in a cell):
        #NUM! (OutOfLimits): an argument outside its limits, or no solution
        #VALUE! (WrongKind): text where a number belongs, or an unknown word
        #N/A (LeftOut): an argument left out

    Source:
        weights in air of 1.2 kg/m³ (OIML D 28:2004) with ICUMSA SPS-4 densities, solved by
        Newton's method

    Example:
        >>> from sheetfuncs import BRIX_BY_WEIGHT
        >>> round(BRIX_BY_WEIGHT(12.4, 44.9, 55.6, 68.0, 'US'), 2)
        66.62
    """

def BRIX_BY_REFRACTOMETER(
    reading: Number,
    temperature: Number,
    units: Literal["US", "metric"] = "US",
) -> float:
    """True strength from a refractometer that does not correct for temperature itself; not under 0.

    Arguments:
        reading: what the refractometer shows, no temperature compensation, marked at 20 °C; 0
            to 75 °Brix
        temperature: temperature of the instrument and the drop; 50 to 86 °F, or 10 to 30 °C
        units: unit system, "US" or "metric"; left out: "US"

    Returns:
        true strength, °Brix

    Errors (in a cell):
        #NUM! (OutOfLimits): an argument outside its limits, or no solution
        #VALUE! (WrongKind): text where a number belongs, or an unknown word
        #N/A (LeftOut): an argument left out

    Source:
        the surface nearest to every row of OIV-MA-AS2-02 Table I and of the 1936 international
        table (GOST copy; from 23 °C, 73 °F on from memory): within 0.021 °Brix of each

    Example:
        >>> from sheetfuncs import BRIX_BY_REFRACTOMETER
        >>> round(BRIX_BY_REFRACTOMETER(2.0, 59.0, 'US'), 1)
        1.7
    """

def BRIX_BY_GRAVITY(
    gravity: Number,
) -> float:
    """Strength from true specific gravity 20/20 °C, that is density over that of water at 20 °C.

    Arguments:
        gravity: true specific gravity 20/20 °C; 1 to 1.45 SG 20/20 °C

    Returns:
        true strength, °Brix

    Errors (in a cell):
        #NUM! (OutOfLimits): an argument outside its limits, or no solution
        #VALUE! (WrongKind): text where a number belongs, or an unknown word
        #N/A (LeftOut): an argument left out

    Source:
        ICUMSA SPS-4 density at 20 °C, solved by Newton's method

    Example:
        >>> from sheetfuncs import BRIX_BY_GRAVITY
        >>> round(BRIX_BY_GRAVITY(1.33058), 1)
        66.9
    """

def SYRUP_FLOATS(
    brix: Number,
    temperature: Number,
    units: Literal["US", "metric"] = "US",
) -> float:
    """What a hydrometer marked in °Brix at 60 °F shows in syrup of a strength, that hot.

    #NUM! where it would sink below its 0 mark.

    Arguments:
        brix: sugar in the liquid, percent by mass; 0 to 85 °Brix
        temperature: temperature of the liquid; 32 to 221 °F, or 0 to 105 °C
        units: unit system, "US" or "metric"; left out: "US"

    Returns:
        what the hydrometer shows, °Brix

    Errors (in a cell):
        #NUM! (OutOfLimits): an argument outside its limits, or no solution
        #VALUE! (WrongKind): text where a number belongs, or an unknown word
        #N/A (LeftOut): an argument left out

    Source:
        buoyancy with ICUMSA SPS-4 densities, glass 25e-6 per K (ISO 1768:1975); within 0.33
        °Brix of the printed chart for 66.9 °Brix syrup

    Example:
        >>> from sheetfuncs import SYRUP_FLOATS
        >>> round(SYRUP_FLOATS(66.9, 209.0, 'US'), 2)
        59.12
    """

def SYRUP_GRAVITY(
    brix: Number,
) -> float:
    """True specific gravity 20/20 °C: density over that of water, both at 20 °C.

    Arguments:
        brix: sugar in the liquid, percent by mass; 0 to 85 °Brix

    Returns:
        true specific gravity, SG 20/20 °C

    Errors (in a cell):
        #NUM! (OutOfLimits): an argument outside its limits, or no solution
        #VALUE! (WrongKind): text where a number belongs, or an unknown word
        #N/A (LeftOut): an argument left out

    Source:
        ICUMSA SPS-4, in Bubnik et al., Sugar Technologists Manual (1995), p. 164

    Example:
        >>> from sheetfuncs import SYRUP_GRAVITY
        >>> round(SYRUP_GRAVITY(66.9), 5)
        1.33058
    """

def SYRUP_BAUME(
    brix: Number,
) -> float:
    """Degrees Baumé of a strength, modulus 145, on the 20/20 °C gravity.

    Arguments:
        brix: sugar in the liquid, percent by mass; 0 to 85 °Brix

    Returns:
        degrees Baumé, °Baumé

    Errors (in a cell):
        #NUM! (OutOfLimits): an argument outside its limits, or no solution
        #VALUE! (WrongKind): text where a number belongs, or an unknown word
        #N/A (LeftOut): an argument left out

    Source:
        145 - 145 / gravity, the American modulus; 36 °Baumé is 66.9 °Brix in the Vermont rule

    Example:
        >>> from sheetfuncs import SYRUP_BAUME
        >>> round(SYRUP_BAUME(66.9), 2)
        36.03
    """

def SYRUP_DENSITY(
    brix: Number,
    temperature: Number,
    units: Literal["US", "metric"] = "US",
) -> float:
    """Density at a temperature. True mass; weighed in air a gallon reads 0.01 lb less.

    Arguments:
        brix: sugar in the liquid, percent by mass; 0 to 85 °Brix
        temperature: temperature of the liquid; 32 to 221 °F, or 0 to 105 °C
        units: unit system, "US" or "metric"; left out: "US"

    Returns:
        density, true mass, lb/gal or kg/L

    Errors (in a cell):
        #NUM! (OutOfLimits): an argument outside its limits, or no solution
        #VALUE! (WrongKind): text where a number belongs, or an unknown word
        #N/A (LeftOut): an argument left out

    Source:
        ICUMSA SPS-4, in Bubnik et al., Sugar Technologists Manual (1995), p. 164

    Example:
        >>> from sheetfuncs import SYRUP_DENSITY
        >>> round(SYRUP_DENSITY(66.9, 68.0, 'US'), 3)
        11.084
    """

def SYRUP_COLD(
    volume: Number,
    brix: Number,
    temperature: Number,
    units: Literal["US", "metric"] = "US",
) -> float:
    """Volume of hot sap or syrup once it has cooled to 68 °F (20 °C).

    Arguments:
        volume: volume of syrup; 0 to 1,000,000 gal, or 0 to 3,800,000 L
        brix: sugar in the liquid, percent by mass; 0 to 85 °Brix
        temperature: temperature of the liquid; 32 to 221 °F, or 0 to 105 °C
        units: unit system, "US" or "metric"; left out: "US"

    Returns:
        cold volume, gal or L

    Errors (in a cell):
        #NUM! (OutOfLimits): an argument outside its limits, or no solution
        #VALUE! (WrongKind): text where a number belongs, or an unknown word
        #N/A (LeftOut): an argument left out

    Source:
        ICUMSA SPS-4, in Bubnik et al., Sugar Technologists Manual (1995), p. 164

    Example:
        >>> from sheetfuncs import SYRUP_COLD
        >>> round(SYRUP_COLD(1.0, 66.9, 185.0, 'US'), 3)
        0.971
    """

def SYRUP_ADJUST(
    volume: Number,
    brix: Number,
    syrup_brix: Number,
    units: Literal["US", "metric"] = "US",
) -> float:
    """Water to stir in (positive) or to boil off (negative) to bring syrup to a strength. Cold volumes.

    Arguments:
        volume: volume of syrup; 0 to 1,000,000 gal, or 0 to 3,800,000 L
        brix: sugar in the liquid, percent by mass; 0 to 85 °Brix
        syrup_brix: sugar in the syrup wanted, percent by mass (66.9 is usual); 0.1 to 85 °Brix
        units: unit system, "US" or "metric"; left out: "US"

    Returns:
        water, positive to stir in, negative to boil off, fl oz or mL

    Errors (in a cell):
        #NUM! (OutOfLimits): an argument outside its limits, or no solution
        #VALUE! (WrongKind): text where a number belongs, or an unknown word
        #N/A (LeftOut): an argument left out

    Source:
        sugar balance with ICUMSA SPS-4 densities at 20 °C

    Example:
        >>> from sheetfuncs import SYRUP_ADJUST
        >>> round(SYRUP_ADJUST(1.0, 70.0, 66.9, 'US'), 2)
        8.01
    """

def SYRUP_BLEND(
    volume: Number,
    brix: Number,
    other_volume: Number,
    other_brix: Number,
) -> float:
    """Strength of two lots poured together, cold volumes.

    #NUM! where both are empty.

    Arguments:
        volume: volume of the liquid, cold; 0 to 10,000,000 any one unit of volume
        brix: sugar in the liquid, percent by mass; 0 to 85 °Brix
        other_volume: volume of the liquid, cold; 0 to 10,000,000 any one unit of volume
        other_brix: sugar in the liquid, percent by mass; 0 to 85 °Brix

    Returns:
        strength of the mix, °Brix

    Errors (in a cell):
        #NUM! (OutOfLimits): an argument outside its limits, or no solution
        #VALUE! (WrongKind): text where a number belongs, or an unknown word
        #N/A (LeftOut): an argument left out

    Source:
        sugar and mass balance with ICUMSA SPS-4 densities at 20 °C

    Example:
        >>> from sheetfuncs import SYRUP_BLEND
        >>> round(SYRUP_BLEND(2.0, 64.0, 1.0, 70.0), 2)
        66.04
    """

def SYRUP_BLEND_SHARE(
    thin_brix: Number,
    thick_brix: Number,
    syrup_brix: Number,
) -> float:
    """Share of thick syrup, by cold volume, that brings thin syrup to a strength.

    #NUM! where the strength wanted is not between the two.

    Arguments:
        thin_brix: sugar in the thin syrup, percent by mass; 0 to 85 °Brix
        thick_brix: sugar in the thick syrup, percent by mass; 0 to 85 °Brix
        syrup_brix: sugar in the syrup wanted, percent by mass (66.9 is usual); 0.1 to 85 °Brix

    Returns:
        share of the thick syrup by volume, 0.5 for half, share

    Errors (in a cell):
        #NUM! (OutOfLimits): an argument outside its limits, or no solution
        #VALUE! (WrongKind): text where a number belongs, or an unknown word
        #N/A (LeftOut): an argument left out

    Source:
        sugar and mass balance (Pearson's square is the same by mass)

    Example:
        >>> from sheetfuncs import SYRUP_BLEND_SHARE
        >>> round(SYRUP_BLEND_SHARE(64.0, 70.0, 66.9), 4)
        0.4764
    """

def SYRUP_STATE(
    brix: Number,
) -> Literal["thin", "in range", "thick"]:
    """Whether syrup is thin (it spoils), in range, or thick (it crystallises): against 66.0 to 68.9 °Brix.

    Arguments:
        brix: sugar in the liquid, percent by mass; 0 to 85 °Brix

    Returns:
        thin, in range or thick, thin, in range or thick

    Errors (in a cell):
        #NUM! (OutOfLimits): an argument outside its limits, or no solution
        #VALUE! (WrongKind): text where a number belongs, or an unknown word
        #N/A (LeftOut): an argument left out

    Source:
        U.S. Standards for Grades of Maple Syrup, USDA AMS (2015) and 21 CFR 168.140: 66.0 to
        68.9 °Brix; some states ask for more (Vermont 66.9)

    Example:
        >>> from sheetfuncs import SYRUP_STATE
        >>> SYRUP_STATE(65.2)
        'thin'
    """

def SYRUP_GRADE(
    transmittance: Number,
) -> Literal["Golden", "Amber", "Dark", "Very Dark"]:
    """Colour class from the light that passes: Golden, Amber, Dark or Very Dark.

    A grade also asks for good flavour and clear syrup of 66.0 to 68.9 °Brix.

    Arguments:
        transmittance: light that passes, percent, 560 nm, 10 mm, glycerol 100; 0 to 100 percent

    Returns:
        grade by colour, Golden, Amber, Dark or Very Dark

    Errors (in a cell):
        #NUM! (OutOfLimits): an argument outside its limits, or no solution
        #VALUE! (WrongKind): text where a number belongs, or an unknown word
        #N/A (LeftOut): an argument left out

    Source:
        USDA AMS (2015); 1 NYCRR 270.1; Maple Products Regulations C.R.C. c. 289 Sch. III: 75,
        50 and 25 percent

    Example:
        >>> from sheetfuncs import SYRUP_GRADE
        >>> SYRUP_GRADE(58.0)
        'Amber'
    """

def JAR_COUNT(
    volume: Number,
    jar_size: Number,
    units: Literal["US", "metric"] = "US",
) -> int:
    """Whole jars that a volume fills. Both hot or both cold: SYRUP_COLD turns one into the other.

    Arguments:
        volume: volume of syrup; 0 to 1,000,000 gal, or 0 to 3,800,000 L
        jar_size: volume of one jar, filled; 0.1 to 1,000 fl oz, or 3 to 30,000 mL
        units: unit system, "US" or "metric"; left out: "US"

    Returns:
        jars filled, count

    Errors (in a cell):
        #NUM! (OutOfLimits): an argument outside its limits, or no solution
        #VALUE! (WrongKind): text where a number belongs, or an unknown word
        #N/A (LeftOut): an argument left out

    Source:
        whole jars in the volume

    Example:
        >>> from sheetfuncs import JAR_COUNT
        >>> JAR_COUNT(1.0, 16.0, 'US')
        8
    """

def JAR_REST(
    volume: Number,
    jar_size: Number,
    units: Literal["US", "metric"] = "US",
) -> float:
    """What is left over after the whole jars: for the taster.

    Arguments:
        volume: volume of syrup; 0 to 1,000,000 gal, or 0 to 3,800,000 L
        jar_size: volume of one jar, filled; 0.1 to 1,000 fl oz, or 3 to 30,000 mL
        units: unit system, "US" or "metric"; left out: "US"

    Returns:
        what is left over, fl oz or mL

    Errors (in a cell):
        #NUM! (OutOfLimits): an argument outside its limits, or no solution
        #VALUE! (WrongKind): text where a number belongs, or an unknown word
        #N/A (LeftOut): an argument left out

    Source:
        the volume less the whole jars in it

    Example:
        >>> from sheetfuncs import JAR_REST
        >>> round(JAR_REST(1.06, 16.0, 'US'), 2)
        7.68
    """

def JAR_WEIGHT(
    jar_size: Number,
    brix: Number,
    units: Literal["US", "metric"] = "US",
) -> float:
    """Weight of what a full jar holds, cold: for a label, or to see on a scale that it is full.

    Arguments:
        jar_size: volume of one jar, filled; 0.1 to 1,000 fl oz, or 3 to 30,000 mL
        brix: sugar in the liquid, percent by mass; 0 to 85 °Brix
        units: unit system, "US" or "metric"; left out: "US"

    Returns:
        what a scale shows, less the jar, oz or g

    Errors (in a cell):
        #NUM! (OutOfLimits): an argument outside its limits, or no solution
        #VALUE! (WrongKind): text where a number belongs, or an unknown word
        #N/A (LeftOut): an argument left out

    Source:
        ICUMSA SPS-4 density at 20 °C, weighed in air of 1.2 kg/m³ against steel of 8,000 (OIML
        D 28:2004)

    Example:
        >>> from sheetfuncs import JAR_WEIGHT
        >>> round(JAR_WEIGHT(16.0, 66.9, 'US'), 2)
        22.15
    """
