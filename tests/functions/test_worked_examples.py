"""The whole job as others have done it and written it down: their numbers in, their numbers out.

Each check names where it was read.  Home records are rounded and weighed on bathroom scales: the
tolerance is what their digits leave open, said beside it.
"""

from __future__ import annotations

import pytest
from pytest import approx

from sheetfuncs import (
    BOIL_FUEL,
    BOIL_HEAT,
    BOIL_HOURS,
    BOIL_WATER,
    BRIX_BY_WEIGHT,
    FUEL_EFFICIENCY,
    JAR_WEIGHT,
    PAN_RATE,
    SAP_AFTER_ICE,
    SAP_PER_SYRUP,
    SAP_RUNS,
    SAP_SUGAR,
    SYRUP_DENSITY,
    SYRUP_FROM_SAP,
)
from sheetfuncs.formulas.fuels import FUELS

QUART, PINT, HALF_PINT = 32.0, 16.0, 8.0  # fl oz
RECORDS = "professorguy.com/me/syrup.html"  # seasons of one yard: sap in pounds, syrup in jars, gas in pounds


# missionexploration.com, yearly production log: 50 buckets, eleven lots, 9.1 gal drawn off.
LOTS = "35@2 50@1.5 15@1.5 30@1.25 40@2 15@2 30@2 30@2 38@3 80@2 50@2"
DRAWN = (1.4, 1.0, 1.0, 1.0, 2.0, 1.5, 1.2)


def test_a_season_of_eleven_lots() -> None:
    lots = [(float(volume), float(brix)) for volume, _, brix in (lot.partition("@") for lot in LOTS.split())]
    assert sum(volume for volume, _ in lots) == 413.0
    # read to half a percent, some to a quarter: a tenth of the sugar
    assert sum(SYRUP_FROM_SAP(volume, brix, 66.9) for volume, brix in lots) == approx(sum(DRAWN), rel=0.1)


# mapleacres.com, 2018: twelve runs, 3,965 gal of sap, about 101 gal bottled.
RUNS = "435@2.25 400@2 255@2.5 400@3 440@2.25 505@2 325@2.5 400@2 415@2 200@2 165@2 25@3"


def test_a_season_of_twelve_runs() -> None:
    pairs = [tuple(map(float, run.split("@"))) for run in RUNS.split()]
    assert sum(volume for volume, _ in pairs) == 3965.0
    assert sum(SYRUP_FROM_SAP(volume, brix, 66.9) for volume, brix in pairs) == approx(101.0, abs=2.0)


@pytest.mark.parametrize(
    ("pounds", "least", "most"),
    [
        (40.0, 3.5, 3.75),  # RECORDS, 2016: 40 lb are "just over 3.5 gallons"
        (25.0, 2.0, 2.5),  # RECORDS, 2013: 25 lb are "over 2 gallons"
        (20.0, 1.75, 1.85),  # RECORDS, 2014: "a total of 1.8 gallons, about 20 pounds"
        (11.0, 0.99, 1.005),  # sweetmaple.ca: a gallon weighs 11 pounds, at 66.5 percent
    ],
)
def test_pounds_of_syrup_are_so_many_gallons(pounds: float, least: float, most: float) -> None:
    assert least <= pounds / SYRUP_DENSITY(66.5, 68.0) <= most


def test_jars_on_the_shelf_weigh_what_was_written_down() -> None:
    # RECORDS, 2014: 3 quarts, 5 pints, 6 half-pints and nearly another: about 20 pounds
    ounces = 3 * JAR_WEIGHT(QUART, 66.9) + 5 * JAR_WEIGHT(PINT, 66.9) + 7 * JAR_WEIGHT(HALF_PINT, 66.9)
    assert ounces / 16.0 == approx(20.0, abs=0.5)  # a half-pint not quite full is 0.7 lb at most


@pytest.mark.parametrize(
    ("sap", "syrup", "gas"),
    [
        (1000.0, 40.0, 70.0),  # RECORDS, 2016
        (800.0, 25.0, 80.0),  # RECORDS, 2013
    ],
)
def test_a_season_on_bottled_gas(sap: float, syrup: float, gas: float) -> None:
    brix = 66.9 * syrup / sap  # all the sugar of the sap is in the syrup
    gallons = sap / SYRUP_DENSITY(brix, 40.0)
    heat = BOIL_HEAT(gallons, brix, 66.9, 40.0)
    reached = BOIL_FUEL(heat, "propane bottle", 1.0) / (gas / 20.0)
    # a range, not a value: efficiency was not measured.  Other records are 5 to 34 gal of sap a bottle
    assert 0.1 < reached < 0.75
    assert abs(reached - FUEL_EFFICIENCY("propane bottle")) < 0.35


@pytest.mark.parametrize(
    ("gallons", "cords"),
    [
        (73.0, 4.5),  # greatmountainforest.org, 16 April 2019: 16.2 gal a cord
        (265.0, 13.5),  # the same, another season: 13 to 14 cords
    ],
)
def test_a_season_on_wood(gallons: float, cords: float) -> None:
    heat = gallons * BOIL_HEAT(SAP_PER_SYRUP(2.0, 66.9), 2.0, 66.9, 40.0)
    reached = BOIL_FUEL(heat, "hardwood", 1.0) / cords
    assert 0.16 < reached < 0.42  # what records of wood fires span
    assert reached == approx(FUELS["hardwood"].efficiency, abs=0.15)


@pytest.mark.parametrize(
    ("brix", "syrup_brix", "ratio", "within"),
    [
        (3.0, 66.0, 29.0, 0.5),  # wb9kzy.blogspot.com, March 2023: "3% is 29 to 1"
        (2.2, 66.0, 40.0, 1.0),  # muskegvalleyrabbitry.com: 40 gal of 2.2 percent make one
        (2.0, 65.5, 43.0, 0.5),  # howsitrunning.com/s10t: 43 gal of 2 percent make one
        (1.0, 65.5, 86.0, 0.5),  # howsitrunning.com/s10t: 86 gal of 1 percent
        (2.05, 65.5, 42.0, 0.5),  # mapleacres.com, season 94: "normal is 42:1", by the rule of 86 2.05 percent
        (2.01, 65.5, 42.8, 0.5),  # the same: last year's sap, 2.01 percent by the same rule
    ],
)
def test_so_much_sap_makes_one_of_syrup(brix: float, syrup_brix: float, ratio: float, within: float) -> None:
    assert SAP_PER_SYRUP(brix, syrup_brix) == approx(ratio, abs=within)


def test_a_pail_of_sap_is_a_pint_of_syrup() -> None:
    # muskegvalleyrabbitry.com: 5 gal of sap (2.2 percent) are approximately 16 oz
    assert SYRUP_FROM_SAP(5.0 * 128.0, 2.2, 66.0) == approx(16.0, abs=0.5)
    # sweetmaple.ca: 10 gal, a season's sap of one tap, about a quart; sap 2.5 percent on average
    assert SYRUP_FROM_SAP(10.0 * 4.0, 2.5, 66.5) == approx(1.0, abs=0.2)


def test_syrup_is_seven_eighths_sugar_by_volume() -> None:
    # wb9kzy.blogspot.com, March 2023: 66 percent by mass "is more like 87% sugar by volume"
    assert SAP_SUGAR(1.0, 66.0, "metric") == approx(0.87, abs=0.005)


def test_concentrate_of_twice_the_strength_takes_half_the_hours() -> None:
    # Cornell Small Farms (2017): from 2 to 4 or 5 percent before boiling halves the time
    raw = BOIL_HOURS(100.0, 2.0, 66.9, 6.0)
    assert BOIL_HOURS(SYRUP_FROM_SAP(100.0, 2.0, 4.0), 4.0, 66.9, 6.0) / raw == approx(0.5, abs=0.05)


def test_a_day_at_a_barrel() -> None:
    # tomakemaplesyrup.com, 15 March 2014: 25 gal in 8 h 45 min, "about 2.75" gal an hour; two steam-table
    # pans of 12 x 20 in have 3.3 sq ft
    assert BOIL_WATER(25.0, 2.0, 66.9) / 8.75 == approx(2.75, abs=0.05)
    assert PAN_RATE(2.0 * 12.0 * 20.0 / 144.0) == approx(2.75, rel=0.35)  # a guess to start with


def test_ice_lifted_out_of_the_bucket() -> None:
    # fortunefarms.ca, 29 March 2020: a fifth of the depth was ice without sugar, 2.4 percent became 3.1
    assert SAP_AFTER_ICE(2.4, 0.2, 0.0) == approx(3.1, abs=0.15)


# cindycreighton.blogspot.com, 23 March 2014: six trees, low and high of the day in °C, cups of sap.
WEEK = [(-10.9, 6.8, 5.25), (-3.5, 4.8, 6.0), (0.7, 5.0, 4.5), (-3.2, 5.5, 22.75), (-6.8, 4.7, 29.0)]


def test_a_week_of_sap_by_the_cup() -> None:
    assert sum(cups for *_, cups in WEEK[:4]) + 13.0 == 51.5  # "total for first boil", 3.22 gal
    lows = [low for low, *_ in WEEK]
    for place, (low, high, cups) in enumerate(WEEK):
        assert cups > 0.0
        assert SAP_RUNS(low, min(lows[max(0, place - 2) : place + 1]), high, "metric") >= 1
    assert [SAP_RUNS(low, low, high, "metric") for low, high, _ in WEEK] == [2, 2, 0, 2, 2]  # the third by memory alone


def test_a_kitchen_scale_stands_in_for_a_hydrometer() -> None:
    # a hobby forum, t-19738 (2013): gravity is (full - empty) / (water - empty).  The scale shows grams
    for grams, brix, within in ((3805.0, 2.0, 0.15), (1331.0, 66.9, 0.3)):  # a gallon jug of sap, a litre of syrup
        water = {3805.0: 3776.0, 1331.0: 1000.0}[grams]
        assert BRIX_BY_WEIGHT(200.0, 200.0 + water, 200.0 + grams, 20.0, "metric") == approx(brix, abs=within)
