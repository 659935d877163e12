"""A vat against its room: an unheated one cools as the energy balance says, a ramp goes no faster than the vat can."""

from __future__ import annotations

import math
from itertools import pairwise

import pytest

from designer.forecast import Forecast, forecast
from designer.judge.levers import effects
from designer.judge.movable import movables, moved
from designer.recipe.document import Recipe, Vat
from designer.recipe.edit import edit, edit_recipe
from designer.recipe.error import RecipeError
from designer.recipe.file import reads
from designer.recipe.lower import lower, temperatures_before
from designer.recipe.schedule import T_RAMP
from designer.recipe.vat_heat import VatHeat

MILK_KG = 103.0
MAKE = """
format = 1
name = "Vat in its room"
room = "14 °C"

[[milk]]
id = "milk"
mass = "103 kg"
temperature = "33 °C"

[[starter]]
id = "bulk"
at = "ripen"
bulk = "1 %"

[[addition]]
id = "rennet"
what = "coagulant"
at = "set"
strength = "200 IMCU/mL"
volume = "20 mL"

[[stage]]
id = "ripen"
kind = "ripen"
length = "60 min"

[[stage]]
id = "set"
kind = "set"
length = "45 min"

[[stage]]
id = "cut"
kind = "cut"
length = "10 min"
size = "10 mm"

[[stage]]
id = "draw"
kind = "drain"
length = "10 min"
whey_off = "60 %"

[[stage]]
id = "rest"
kind = "rest"
length = "30 min"

[[stage]]
id = "cook"
kind = "cook"
length = "40 min"
temperature = "38 °C"
"""


def made(vat: Vat | None, **changes: object) -> Forecast:
    return forecast(edit_recipe(reads(MAKE), vat=vat, **changes))


def end_c(found: Forecast, stage: str) -> float:
    return next(one.values["temperature_c"] for one in found.stages if one.id == stage)


LOSING = Vat(unheated=True, u_w_m2k=10.0, area_m2=1.2)


def test_two_worked_vats() -> None:
    """C10: 206 kg and 20 W/K are 11.2 h, 1.6 °C an hour at 18 °C above the room. C9: 500 kg, 8 °C in 30 min, 8.7 kW."""
    left = VatHeat(206.0, 18.0, loss_kw_k=0.020, unheated=True)
    assert 1.0 / left.loss_per_min / 60.0 == pytest.approx(11.2, abs=0.1)
    assert 36.0 - left.left_alone_c(36.0, 60.0) == pytest.approx(1.6, abs=0.1)
    assert VatHeat(500.0, 18.0, power_kw=8.7).least_minutes(31.0, 39.0) == pytest.approx(30.0, abs=0.2)


def test_an_unheated_vat_cools_as_its_energy_balance_says() -> None:
    found = made(LOSING)
    tau = MILK_KG * 3.93 / (0.010 * 1.2) / 60.0
    for stage, minutes in (("ripen", 60.0), ("set", 105.0)):
        assert end_c(found, stage) == pytest.approx(14.0 + 19.0 * math.exp(-minutes / tau), abs=0.02)
    trace = found.trace
    lost = [trace.at("temperature_c", minute) for minute in (0.0, 30.0, 60.0)]
    by_hand = 0.010 * 1.2 * (sum(lost) / 3.0 - 14.0) * 3600.0  # kJ in the hour
    assert MILK_KG * 3.93 * (lost[0] - lost[-1]) == pytest.approx(by_hand, rel=0.01)


def test_less_in_the_vat_cools_faster() -> None:
    trace = made(LOSING).trace
    full = trace.at("temperature_c", 105.0) - trace.at("temperature_c", 115.0)
    drawn = trace.at("temperature_c", 130.0) - trace.at("temperature_c", 140.0)
    assert drawn > 1.05 * full


def test_a_colder_room_leaves_a_cooler_vat_that_sours_later() -> None:
    rooms = [made(LOSING, room_c=room) for room in (24.0, 18.0, 12.0, 6.0)]
    temperatures = [end_c(one, "rest") for one in rooms]
    assert all(after < before for before, after in pairwise(temperatures))
    ph = [next(s.values["ph"] for s in one.stages if s.id == "rest") for one in rooms]
    assert all(after > before for before, after in pairwise(ph))


def test_more_surface_and_worse_lagging_cool_faster() -> None:
    for less, more in (({"area_m2": 0.8}, {"area_m2": 1.6}), ({"u_w_m2k": 4.0}, {"u_w_m2k": 14.0})):
        ends = [end_c(made(LOSING.but(**change)), "rest") for change in (less, more)]
        assert ends[1] < ends[0]


def test_without_a_vat_and_in_one_that_is_kept_all_is_as_it_was() -> None:
    plain, kept = made(None), made(Vat(u_w_m2k=10.0, area_m2=1.2))
    assert (plain.trace["temperature_c"] == kept.trace["temperature_c"]).all()
    assert end_c(plain, "rest") == 33.0


def test_what_a_stage_starts_from_has_cooled() -> None:
    recipe: Recipe = edit_recipe(reads(MAKE), vat=LOSING)
    before = temperatures_before(recipe, 33.0)
    assert before["set"] == pytest.approx(end_c(forecast(recipe), "ripen"), abs=0.02)
    assert temperatures_before(reads(MAKE), 33.0)["set"] == 33.0


def ramp_min(vat: Vat) -> float:
    rows = lower(edit_recipe(reads(MAKE), vat=vat)).lanes[0].rows
    return float(rows["ramp_min"][rows["t_law"] == T_RAMP].max())


def test_a_ramp_goes_no_faster_than_the_vat_can() -> None:
    strong, weak = Vat(power_kw=9.0), Vat(power_kw=0.5)
    assert ramp_min(strong) == 40.0
    assert ramp_min(weak) == pytest.approx(MILK_KG * 3.93 * 5.0 / 0.5 / 60.0)
    slow = made(weak)
    assert end_c(slow, "cook") == pytest.approx(33.0 + 5.0 * 40.0 / ramp_min(weak), abs=0.01)
    assert "vat-slow" in {caution.code for caution in slow.cautions}
    assert "vat-slow" not in {caution.code for caution in made(strong).cautions}
    assert ramp_min(weak.but(u_w_m2k=10.0, area_m2=0.5)) > ramp_min(weak)


def test_a_temperature_out_of_reach_is_refused() -> None:
    with pytest.raises(RecipeError, match=r"the vat's heating brings so much milk to .* at the most"):
        made(Vat(power_kw=0.3, u_w_m2k=10.0, area_m2=2.0))


def test_a_cold_jacket_cools_by_its_water() -> None:
    milk = edit(reads(MAKE), "cook", temperature_c=20.0)
    vat = Vat(cooling_c=10.0, jacket_area_m2=0.5, jacket_u_w_m2k=300.0)
    rows = lower(edit_recipe(milk, vat=vat)).lanes[0].rows
    tau = MILK_KG * 3.93 / (0.3 * 0.5) / 60.0
    assert float(rows["ramp_min"].max()) == pytest.approx(max(40.0, tau * math.log(23.0 / 10.0)))
    warm = [float(lower(edit_recipe(milk, vat=vat.but(cooling_c=c))).lanes[0].rows["ramp_min"].max()) for c in (5, 15)]
    assert warm[0] < warm[1]
    with pytest.raises(RecipeError, match="jacket brings"):
        lower(edit_recipe(milk, vat=vat.but(cooling_c=22.0)))


def test_what_moves_it_knows_that_a_room_and_more_milk_reach_an_unheated_vat() -> None:
    """The quick way agrees with the forecast in full, for the room and for the milk in the vat."""
    recipe = edit_recipe(reads(MAKE), vat=LOSING)
    for path, value in ((("", "room_c"), 8.0), (("milk", "mass_kg"), 150.0)):
        one = next(each for each in movables(recipe) if each.path == path)
        found = effects(recipe, [one], [value])["moisture_pct"]
        wanted = [forecast(each).outcomes["moisture_pct"].value for each in (recipe, moved(recipe, one, value))]
        assert abs(wanted[1] - wanted[0]) > 1e-3
        assert found[1] - found[0] == pytest.approx(wanted[1] - wanted[0], rel=0.1)
