"""What moves it: effects in rough strides against full forecasts, directions of the trade, what can't be moved."""

from __future__ import annotations

import math
from importlib.resources import files
from pathlib import Path

import numpy as np
import pytest

from designer.forecast import forecast
from designer.judge.levers import Levers, effects, levers, spreads
from designer.judge.movable import movables, moved
from designer.make import kernel
from designer.recipe.document import Branch, Recipe
from designer.recipe.edit import add, edit, edit_end
from designer.recipe.error import RecipeError
from designer.recipe.file import read

FOLDER = Path(str(files("example_recipes")))
CHEDDAR = read(FOLDER / "thistlecombe-cheddar.toml")
KEYS = ("moisture_pct", "ph_24h", "yield_kg_per_100kg", "fdm_pct", "salt_in_moisture_pct", "finish_min")


@pytest.fixture(scope="module", autouse=True)
def compiled() -> None:
    kernel.warm_up()


@pytest.fixture(scope="module")
def of_cheddar() -> Levers:
    return levers(CHEDDAR)


def effect(of: Levers, where: str, field: str, key: str) -> tuple[float, float]:
    row = next(k for k, one in enumerate(of.settings) if one.path == (where, field))
    return float(of.up[row, of.column(key)]), float(of.down[row, of.column(key)])


@pytest.mark.parametrize("name", ["weirside-gouda", "little-thimble", "fourways-jack"])
def test_effects_are_those_of_full_forecasts(name: str) -> None:
    recipe = read(FOLDER / f"{name}.toml")
    found = levers(recipe)
    base = forecast(recipe).outcomes
    for row, one in enumerate(found.settings):
        for sign, change in ((1.0, found.up[row]), (-1.0, found.down[row])):
            try:
                after = forecast(moved(recipe, one, one.value + sign * one.step)).outcomes
            except RecipeError:
                assert np.isnan(change).all(), one.title
                continue
            for key in KEYS:
                true = after[key].value - base[key].value
                largest = np.nanmax(np.abs(found.up[:, found.column(key)]))
                assert change[found.column(key)] == pytest.approx(true, rel=0.1, abs=0.08 * largest), one.title


def test_the_base_lies_close_to_the_forecast(of_cheddar: Levers) -> None:
    base = forecast(CHEDDAR).outcomes
    for key, value in zip(of_cheddar.keys, of_cheddar.base, strict=True):
        if key in base:
            assert value == pytest.approx(base[key].value, rel=0.01, abs=0.02), key


def test_cheddar_has_the_settings_it_should(of_cheddar: Levers) -> None:
    paths = {one.path for one in of_cheddar.settings}
    wanted = {
        ("warm", "temperature_c"),
        ("cut", "cut_mm"),
        ("set", "end.value"),
        ("press", "steps.2.load_kg"),
        ("bulk", "bulk_pct"),
        ("rennet", "volume_l"),
        ("morning", "fat_pct"),
        ("form", "height_mm"),
        ("", "room_c"),
        ("salt", "salt_pct"),
    }
    assert wanted <= paths
    assert not any(field.startswith("heat") or where == "cellar" for where, field in paths)
    assert len(paths) == len(of_cheddar.settings) >= 45


@pytest.mark.parametrize(
    ("where", "field", "key", "sign"),
    [
        ("cut", "cut_mm", "moisture_pct", 1),  # a finer cut makes drier cheese
        ("set", "end.value", "moisture_pct", 1),  # a longer set makes moister cheese
        ("warm", "temperature_c", "moisture_pct", -1),  # a hotter cook makes drier cheese
        ("bulk", "bulk_pct", "ph_6h", -1),  # more culture: lower pH at a given time
        ("salt", "salt_pct", "salt_in_moisture_pct", 1),
        ("morning", "fat_pct", "fdm_pct", 1),
        ("rennet", "volume_l", "floc_min", -1),
        ("dry", "humidity_pct", "weight_loss_pct", -1),  # drier air takes more weight
        ("press", "steps.2.load_kg", "moisture_pct", -1),
    ],
)
def test_directions(of_cheddar: Levers, where: str, field: str, key: str, sign: int) -> None:
    up, down = effect(of_cheddar, where, field, key)
    assert sign * up > 0.0
    assert sign * down < 0.0


def test_colder_brine_takes_less_salt() -> None:
    up, down = effect(levers(read(FOLDER / "weirside-gouda.toml")), "brine", "brine_c", "salt_pct")
    assert up > 0.0 > down


def test_ranked_begins_with_the_strongest_and_leaves_out_what_does_nothing(of_cheddar: Levers) -> None:
    ranked = of_cheddar.ranked("moisture_pct")
    assert [one.size for one in ranked] == sorted((one.size for one in ranked), reverse=True)
    assert ranked[0].size > 0.3
    floc = {one.setting.path for one in of_cheddar.ranked("floc_min")}
    assert ("rennet", "volume_l") in floc
    assert ("press", "steps.0.load_kg") not in floc
    with pytest.raises(KeyError):
        of_cheddar.ranked("holes")


def test_a_step_past_the_range_is_said_by_nan(of_cheddar: Levers) -> None:
    up, down = effect(of_cheddar, "drain", "whey_off_pct", "moisture_pct")
    assert math.isnan(up)
    assert not math.isnan(down)


def test_a_late_edit_keeps_what_was_worked_out(of_cheddar: Levers) -> None:
    edited = levers(edit(CHEDDAR, "warm", temperature_c=38.0))
    assert effect(edited, "cut", "cut_mm", "moisture_pct")[0] > 0.0
    again = levers(CHEDDAR)
    np.testing.assert_array_equal(again.up, of_cheddar.up)


def test_bands_of_the_strongest_hold_the_effect(of_cheddar: Levers) -> None:
    top = of_cheddar.ranked("moisture_pct")[:5]
    found = spreads(CHEDDAR, "moisture_pct", top, members=16)
    assert [one.setting for one in found] == [one.setting for one in top]
    for lever, band in zip(top, found, strict=True):
        for effect_, (low, high) in ((lever.up, band.up), (lever.down, band.down)):
            if math.isnan(effect_):  # whey off goes no further than all of it
                continue
            assert low < high
            assert low - 0.1 * abs(effect_) <= effect_ <= high + 0.1 * abs(effect_)
    again = spreads(CHEDDAR, "moisture_pct", top, members=16)
    np.testing.assert_equal([(one.up, one.down) for one in again], [(one.up, one.down) for one in found])
    # fixed draws: a band does not flicker


def test_the_band_of_a_step_that_cannot_be_is_nan(of_cheddar: Levers) -> None:
    drain = next(one for one in of_cheddar.ranked("moisture_pct") if one.setting.path == ("drain", "whey_off_pct"))
    (found,) = spreads(CHEDDAR, "moisture_pct", [drain], members=8)
    assert math.isnan(found.up[0])
    assert not math.isnan(found.down[0])


def test_only_some_settings(of_cheddar: Levers) -> None:
    one = levers(CHEDDAR, only={("cut", "cut_mm")})
    assert [each.path for each in one.settings] == [("cut", "cut_mm")]
    assert effect(one, "cut", "cut_mm", "moisture_pct") == effect(of_cheddar, "cut", "cut_mm", "moisture_pct")


def test_a_length_and_its_ramp_move_together() -> None:
    ramped = {one.field for one in movables(CHEDDAR) if one.where == "warm"}
    assert "ramp_min" not in ramped
    length = next(one for one in movables(CHEDDAR) if one.path == ("warm", "end.length_min"))
    longer = moved(CHEDDAR, length, 45.0).stage("warm")
    assert (longer.end.length_min, longer.ramp_min) == (45.0, 45.0)  # type: ignore[union-attr]


def test_steps_grow_with_what_they_move() -> None:
    steps = {one.path: one.step for one in movables(CHEDDAR)}
    assert steps["cut", "end.length_min"] == 5.0
    assert steps["press", "steps.2.length_min"] == 60.0
    assert steps["press", "steps.0.load_kg"] == 1.0
    assert steps["press", "steps.2.load_kg"] == 5.0
    assert steps["rennet", "volume_l"] == pytest.approx(0.001)


def test_a_vat_that_parts() -> None:
    parted = _with_cream(CHEDDAR)
    fat = next(one for one in movables(parted) if one.path == ("morning", "fat_pct"))
    found = effects(parted, [fat], [fat.value + 0.1])
    assert found["fdm_pct"][0] == pytest.approx(forecast(parted).outcomes["fdm_pct"].value, rel=1e-3)
    assert found["fdm_pct"][1] > found["fdm_pct"][0]


def _with_cream(recipe: Recipe) -> Recipe:
    cream = Branch.model_validate(
        {
            "id": "cream",
            "after": "ripen",
            "of": "cream",
            "share_pct": 20.0,
            "stages": ({"id": "stand", "kind": "ripen", "end": {"by": "time", "length_min": 60.0}},),
        }
    )
    return add(recipe, cream)


def test_a_cheese_that_waits_for_its_24_hours() -> None:
    short = edit_end(CHEDDAR, "dry", length_min=30.0)
    found = levers(short, only={("bulk", "bulk_pct"), ("dry", "end.length_min")})
    assert found.base[found.column("ph_24h")] == pytest.approx(forecast(short).outcomes["ph_24h"].value, abs=0.005)


def test_words(of_cheddar: Levers) -> None:
    cook = next(one for one in of_cheddar.settings if one.path == ("warm", "temperature_c"))
    assert cook.title == "cook: temperature"
    assert cook.shown() == "39 °C"
    assert cook.shown_change(-0.5) == "−0.5 °C"
