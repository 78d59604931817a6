"""Both unit systems mean the same thing, and their factors are those of a units library."""

from __future__ import annotations

from typing import Any

import pint
import pytest
from hypothesis import given
from hypothesis import strategies as st
from pytest import approx

from sheetfuncs import BOIL_FUEL
from sheetfuncs.formulas import quantities
from sheetfuncs.formulas.catalogue import CATALOGUE
from sheetfuncs.formulas.fuels import FUELS
from sheetfuncs.formulas.quantities import SYSTEMS, Quantity
from sheetfuncs.science.errors import FormulaError, NoSolution
from tests.tools.arguments import FACES, with_units

UNITS: Any = pint.UnitRegistry(autoconvert_offset_to_baseunit=True)
UNITS.define("cord = 128 * foot**3")  # NIST Handbook 130: stacked
UNITS.define("bottle = 20 * pound")  # of propane

QUANTITIES = {
    name: quantity for name, quantity in vars(quantities).items() if isinstance(quantity, Quantity) and quantity.si
}
IN_BOTH = [card for card, system in FACES if card.units and system == "metric"]
MEASURED = [
    pytest.param(argument, id=f"{card.name}-{name}")
    for card, system in FACES
    for name, argument in card.arguments.items()
    if argument.quantity.units and system == "metric"
]


@pytest.mark.parametrize("system", SYSTEMS)
@pytest.mark.parametrize("name", QUANTITIES)
def test_factors_are_those_of_pint(name, system):
    quantity = QUANTITIES[name]
    unit = quantity.unit(system)
    for value in (1.0, 37.0, 250.0):
        expected = UNITS.Quantity(value, unit.pint).to(quantity.si).magnitude
        assert unit.into_si(value) == approx(expected, rel=1e-12)
        assert unit.out_of_si(expected) == approx(value, rel=1e-12)


@pytest.mark.parametrize("argument", MEASURED)
def test_limits_in_the_two_systems_agree_within_2_percent(argument):
    us = [argument.quantity.us.into_si(end) for end in argument.us]
    metric = [argument.quantity.metric.into_si(end) for end in argument.metric]
    span = us[1] - us[0]
    assert metric == approx(us, rel=0.0, abs=0.02 * span)


def test_numbers_without_a_unit_have_one_pair_of_limits():
    for function in CATALOGUE.values():
        for argument in function.card.arguments.values():
            assert argument.quantity.units or argument.us == argument.metric
            low, high = argument.us
            assert argument.allowed or low < high


def _in_both_limits(argument: Any) -> Any:
    """A number in US units that is inside the limits of both systems."""
    if argument.allowed:
        return st.sampled_from(argument.allowed)
    low, high = argument.us
    if argument.quantity.units:
        ends = [argument.quantity.us.out_of_si(argument.quantity.metric.into_si(end)) for end in argument.metric]
        low, high = max(low, ends[0]), min(high, ends[1])
    return st.floats(low, high).map(lambda value: min(max(round(value, 6), low), high))


def _answer(function: Any, given: tuple[Any, ...]) -> Any:
    try:
        return function(*given)
    except NoSolution as error:
        return error.cell


@pytest.mark.parametrize("card", IN_BOTH, ids=[card.name for card in IN_BOTH])
@given(data=st.data())
def test_a_call_means_the_same_in_both_systems(card, data):
    arguments = card.arguments.values()
    us = [data.draw(_in_both_limits(argument)) for argument in arguments]
    metric = [
        value if argument.allowed else argument.quantity.metric.out_of_si(argument.quantity.us.into_si(value))
        for argument, value in zip(arguments, us, strict=True)
    ]
    try:
        one = _answer(CATALOGUE[card.name], with_units(card, us, "US"))
        other = _answer(CATALOGUE[card.name], with_units(card, metric, "metric"))
    except FormulaError:
        return  # the last bit of a converted end can fall outside
    if isinstance(one, str) or isinstance(other, str):
        assert one == other
        return
    result = FUELS[us[1]].counted_in if card.result is quantities.FUEL_AMOUNT else card.result
    one, other = result.us.into_si(one), result.metric.into_si(other)
    if card.name == "JAR_REST":
        jar = card.arguments["jar_size"].quantity.us.into_si(us[1])
        volume = card.arguments["volume"].quantity.us.into_si(us[0])
        off = abs(one - other) % jar  # a jar more or less can be full by the last bit
        assert min(off, jar - off) <= 1e-9 * jar + 1e-12 * volume
    else:
        assert other == approx(one, rel=1e-9, abs=1e-9)


@pytest.mark.parametrize("fuel", FUELS)
def test_a_fuel_has_the_same_heat_in_both_systems(fuel):
    heat = {
        system: FUELS[fuel].heat_of_one(system)
        / UNITS.Quantity(1.0, FUELS[fuel].counted_in.unit(system).pint).to_base_units().magnitude
        for system in SYSTEMS
    }
    assert heat["metric"] == approx(heat["US"], rel=1e-12)
    assert 0.0 < FUELS[fuel].efficiency < 1.0


def test_a_bottle_is_so_many_gallons_of_propane():
    assert BOIL_FUEL(1e6, "propane", 0.5) == approx(4.72 * BOIL_FUEL(1e6, "propane bottle", 0.5), rel=1e-12)
