"""Functions that undo each other, or that say one thing in two ways, agree over their whole limits."""

from __future__ import annotations

from hypothesis import assume, given
from hypothesis import strategies as st
from pytest import approx

from sheetfuncs import (
    AIR_PRESSURE,
    AIR_PRESSURE_BY_SEA_LEVEL,
    AIR_PRESSURE_HERE,
    BOIL_BRIX,
    BOIL_HEAT,
    BOIL_HOURS,
    BOIL_RATE,
    BOIL_WATER,
    BRIX_BY_BOIL,
    BRIX_BY_GRAVITY,
    BRIX_BY_HYDROMETER,
    BRIX_BY_SAP_HYDROMETER,
    BRIX_BY_WEIGHT,
    FINISH_MINUTES,
    FINISH_READING,
    FINISH_RISE,
    FINISH_TEMP,
    JAR_COUNT,
    JAR_REST,
    JAR_WEIGHT,
    PAN_DEPTH,
    SAP_AFTER_ICE,
    SAP_ICE_LOSS,
    SAP_PER_SYRUP,
    SAP_SUGAR,
    SYRUP_ADJUST,
    SYRUP_BAUME,
    SYRUP_BLEND,
    SYRUP_BLEND_SHARE,
    SYRUP_COLD,
    SYRUP_DENSITY,
    SYRUP_FLOATS,
    SYRUP_FROM_SAP,
    SYRUP_GRAVITY,
    WATER_BOILS,
    NoSolution,
)
from sheetfuncs.science import atmosphere, boiling, water

CLOSE = 1e-6  # °Brix or degrees: far below what any instrument shows
BRIX = st.floats(0.0, 85.0)
SWEET = st.floats(0.1, 85.0)
VOLUME = st.floats(0.001, 500.0)
HECTOPASCALS = st.floats(508.0, 1084.0)


def close(value, within=CLOSE):
    return approx(value, rel=0.0, abs=within)


@given(BRIX, st.floats(175.0, 222.0))
def test_the_finishing_reading_reads_back_as_its_strength(brix, water_reading):
    assert BRIX_BY_BOIL(FINISH_READING(brix, water_reading), water_reading) == close(brix)


@given(BRIX, st.floats(79.5, 105.5))
def test_the_finishing_reading_reads_back_as_its_strength_in_metric(brix, water_reading):
    reading = FINISH_READING(brix, water_reading, "metric")
    assert BRIX_BY_BOIL(reading, water_reading, "metric") == close(brix)


@given(st.floats(0.0, 20.0), st.floats(175.0, 222.0))
def test_a_reading_gives_the_strength_that_boils_at_it(rise, water_reading):
    brix = BRIX_BY_BOIL(water_reading + rise, water_reading)
    assert FINISH_READING(brix, water_reading) == close(water_reading + rise)


@given(BRIX, HECTOPASCALS)
def test_boiling_point_is_water_and_rise(brix, pressure):
    both = WATER_BOILS(pressure, "metric") + FINISH_RISE(brix, pressure, "metric")
    assert FINISH_TEMP(brix, pressure, "metric") == close(both, 1e-9)


@given(BRIX, HECTOPASCALS)
def test_at_the_boiling_point_the_solution_has_the_pressure_of_the_air(brix, pressure):
    celsius = boiling.boiling_point(brix, pressure * 100.0)
    there = boiling.water_activity(brix, celsius) * water.saturation_pressure(celsius)
    assert there == approx(pressure * 100.0, rel=CLOSE * 0.04)  # 4 percent of pressure to the degree


@given(BRIX, st.floats(0.0, 105.0))
def test_the_hydrometer_reads_back_as_the_strength(brix, celsius):
    try:
        shown = SYRUP_FLOATS(brix, celsius, "metric")
    except NoSolution:
        assume(False)
    assume(0.0 < shown < 85.0)  # pressed back to an end of the scale
    assert BRIX_BY_HYDROMETER(shown, celsius, "metric") == close(brix)


@given(BRIX, st.floats(32.0, 221.0))
def test_the_strength_shows_again_on_the_hydrometer(shown, fahrenheit):
    try:
        brix = BRIX_BY_HYDROMETER(shown, fahrenheit)
    except NoSolution:
        assume(False)
    assume(0.0 < brix < 85.0)
    assert SYRUP_FLOATS(brix, fahrenheit) == close(shown)


@given(BRIX)
def test_gravity_reads_back_as_the_strength(brix):
    assert BRIX_BY_GRAVITY(SYRUP_GRAVITY(brix)) == close(brix)


@given(BRIX)
def test_baume_is_made_of_gravity(brix):
    assert 145.0 / (145.0 - SYRUP_BAUME(brix)) == approx(SYRUP_GRAVITY(brix), rel=1e-12)


@given(VOLUME, SWEET, SWEET)
def test_boiled_to_the_syrup_volume_it_is_syrup(volume, brix, syrup_brix):
    assert BOIL_BRIX(volume, brix, SYRUP_FROM_SAP(volume, brix, syrup_brix)) == close(syrup_brix)


@given(VOLUME, SWEET, SWEET)
def test_sugar_stays(volume, brix, syrup_brix):
    left = SYRUP_FROM_SAP(volume, brix, syrup_brix)
    assert SAP_SUGAR(left, syrup_brix) == approx(SAP_SUGAR(volume, brix), rel=1e-12)
    assert SAP_PER_SYRUP(brix, syrup_brix) * left == approx(volume, rel=1e-12)


@given(VOLUME, SWEET, SWEET, st.floats(0.1, 100.0))
def test_the_water_that_left_poured_back_gives_the_sap_again(volume, brix, to_brix, rate):
    assume(brix <= to_brix)
    gone = BOIL_WATER(volume, brix, to_brix)
    assert SYRUP_BLEND(SYRUP_FROM_SAP(volume, brix, to_brix), to_brix, gone, 0.0) == close(brix)
    assert BOIL_HOURS(volume, brix, to_brix, rate) * rate == approx(gone, rel=1e-12)
    assert FINISH_MINUTES(volume, brix, to_brix, rate) == approx(60.0 * gone / rate, rel=1e-12, abs=1e-12)


@given(VOLUME, SWEET, SWEET)
def test_water_stirred_in_brings_thick_syrup_to_strength(volume, brix, syrup_brix):
    water_needed = SYRUP_ADJUST(volume, brix, syrup_brix, "metric") / 1000.0
    if water_needed >= 0.0:
        assert SYRUP_BLEND(volume, brix, water_needed, 0.0) == close(syrup_brix)
    else:
        assert -water_needed == approx(BOIL_WATER(volume, brix, syrup_brix), rel=1e-12)


@given(BRIX, BRIX, BRIX)
def test_the_blend_of_that_share_has_the_strength(one, other, wanted):
    thin, middle, thick = sorted((one, other, wanted))
    assume(thick - thin > 0.001 and middle >= 0.1)
    share = SYRUP_BLEND_SHARE(thin, thick, middle)
    assert 0.0 <= share <= 1.0
    assert SYRUP_BLEND(1.0 - share, thin, share, thick) == close(middle)


@given(SWEET, st.floats(0.0, 0.95), BRIX)
def test_sugar_is_in_the_liquid_or_in_the_ice(brix, share, ice_brix):
    assume(share * ice_brix <= brix and brix - share * ice_brix <= 85.0 * (1.0 - share))
    liquid = SAP_AFTER_ICE(brix, share, ice_brix) * (1.0 - share)
    assert liquid == close(brix * (1.0 - SAP_ICE_LOSS(brix, share, ice_brix)), 1e-9)


@given(VOLUME, BRIX, st.floats(32.0, 221.0))
def test_cooling_changes_no_mass(volume, brix, fahrenheit):
    hot = volume * SYRUP_DENSITY(brix, fahrenheit)
    assert SYRUP_COLD(volume, brix, fahrenheit) * SYRUP_DENSITY(brix, 68.0) == approx(hot, rel=1e-12)


@given(st.floats(0.0, 10000.0), st.floats(3.0, 30000.0))
def test_jars_and_rest_are_the_volume(volume, jar_size):
    jars, rest = JAR_COUNT(volume, jar_size, "metric"), JAR_REST(volume, jar_size, "metric")
    assert jars * jar_size + rest == approx(volume * 1000.0, rel=1e-9, abs=1e-8 * jar_size)
    assert 0.0 <= rest < jar_size
    assert jars == int(jars)


@given(HECTOPASCALS)
def test_water_boils_where_its_pressure_is_that_of_the_air(pressure):
    # IAPWS-IF97 gives its two equations of region 4 as inverse to each other
    assert water.saturation_pressure(WATER_BOILS(pressure, "metric")) == approx(pressure * 100.0, rel=1e-9)


@given(st.floats(-425.0, 4900.0))
def test_a_standard_barometer_is_a_standard_day(elevation):
    here = AIR_PRESSURE_HERE(1013.25, elevation, "metric")
    assert here == approx(AIR_PRESSURE(elevation, "metric"), rel=1e-12)
    assert atmosphere.station_pressure(101325.0, elevation) == approx(100.0 * here, rel=1e-12)


@given(VOLUME, st.floats(0.005, 93.0))
def test_depth_times_area_is_volume(volume, area):
    assert PAN_DEPTH(volume, area, "metric") / 100.0 * area * 1000.0 == approx(volume, rel=1e-12)


@given(st.floats(880.0, 1084.0), st.floats(-425.0, 4900.0))
def test_on_a_standard_day_both_barometers_are_the_same(barometer, elevation):
    # at sea level pressure differs from 1,013.25 hPa at a standard temperature: the two part by 0.1 hPa there
    standard = 15.0 - 0.0065 * atmosphere.geopotential(elevation)
    assert AIR_PRESSURE_BY_SEA_LEVEL(1013.25, elevation, standard, "metric") == close(
        AIR_PRESSURE_HERE(1013.25, elevation, "metric"), 1e-9
    )
    assert AIR_PRESSURE_BY_SEA_LEVEL(barometer, 0.0, standard, "metric") == close(barometer, 1e-9)


@given(BRIX, st.floats(0.0, 105.0))
def test_a_sap_hydrometer_marked_at_60_is_a_syrup_hydrometer(shown, celsius):
    try:
        brix = BRIX_BY_HYDROMETER(shown, celsius, "metric")
    except NoSolution:
        assume(False)
    assert BRIX_BY_SAP_HYDROMETER(shown, celsius, (60.0 - 32.0) / 1.8, "metric") == close(brix)


@given(BRIX, st.floats(0.0, 21.0))
def test_at_its_mark_a_hydrometer_shows_the_strength(brix, marked_at):
    assert BRIX_BY_SAP_HYDROMETER(brix, marked_at, marked_at, "metric") == close(brix)


@given(BRIX, st.floats(0.0, 100.0), st.floats(1.0, 5000.0), st.floats(1.0, 10000.0))
def test_a_scale_finds_the_strength_that_has_the_density(brix, celsius, jar, filled):
    air = 0.0012  # kg/L
    water_weighs, weighs = (SYRUP_DENSITY(each, celsius, "metric") - air for each in (0.0, brix))
    full = jar + filled * weighs / water_weighs
    assert BRIX_BY_WEIGHT(jar, jar + filled, full, celsius, "metric") == close(brix)


@given(BRIX, st.floats(3.0, 30000.0))
def test_a_jar_weighs_its_volume_less_the_air(brix, jar_size):
    true = jar_size * SYRUP_DENSITY(brix, 20.0, "metric")
    assert JAR_WEIGHT(jar_size, brix, "metric") == approx(true, rel=0.0011)  # 1.2 kg/m³ of air in 1,000


@given(st.floats(0.01, 1000.0), st.floats(0.01, 1.0))
def test_an_hour_at_a_rate_takes_the_heat_that_made_it(kilowatts, efficiency):
    litres = BOIL_RATE(kilowatts, efficiency, "metric")
    heat = BOIL_HEAT(litres, 0.0, 66.9, 100.0, "metric")
    assert heat == approx(3.6 * kilowatts * efficiency, rel=1e-9)  # MJ
