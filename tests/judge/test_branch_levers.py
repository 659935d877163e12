"""What moves a branch: its own settings and those of the main make before it parted, as full forecasts have it."""

from __future__ import annotations

from importlib.resources import files
from pathlib import Path

import numpy as np
import pytest

from designer.forecast import forecast
from designer.judge.levers import Levers, effects, levers, spreads
from designer.judge.movable import Movable, movables, moved
from designer.make import kernel
from designer.recipe.document import Branch, Recipe
from designer.recipe.edit import add, edit_recipe
from designer.recipe.error import RecipeError
from designer.recipe.file import read

FOLDER = Path(str(files("example_recipes")))
CREAM = {
    "id": "cream", "name": "cream", "after": "ripen", "of": "cream", "share_pct": 20.0,
    "stages": ({"id": "stand", "kind": "ripen", "end": {"by": "time", "length_min": 60.0}},),
}  # fmt: skip
TWINS = add(read(FOLDER / "millpond-twins.toml"), Branch.model_validate(CREAM))
LANES = (None, "plain", "whey-cheese", "cream")
KEYS = ("moisture_pct", "ph_24h", "yield_kg_per_100kg", "fdm_pct", "salt_in_moisture_pct", "cheese_kg")


@pytest.fixture(scope="module")
def of() -> dict[str | None, Levers]:
    kernel.warm_up()
    return {lane: levers(TWINS, branch=lane) for lane in LANES}


def effect(found: Levers, where: str, field: str, key: str) -> tuple[float, float]:
    row = next(k for k, one in enumerate(found.settings) if one.path == (where, field))
    return float(found.up[row, found.column(key)]), float(found.down[row, found.column(key)])


def setting(recipe: Recipe, lane: str | None, where: str, field: str) -> Movable:
    return next(one for one in movables(recipe, lane) if one.path == (where, field))


@pytest.mark.parametrize("lane", LANES)
def test_effects_are_those_of_full_forecasts(of: dict[str | None, Levers], lane: str | None) -> None:
    found, base = of[lane], forecast(TWINS).lane(lane).outcomes
    for key in set(found.keys) & base.keys():
        assert found.base[found.column(key)] == pytest.approx(base[key].value, rel=0.02, abs=0.02), key
    for row in range(0, len(found.settings), 5):
        one = found.settings[row]
        for sign, change in ((1.0, found.up[row]), (-1.0, found.down[row])):
            try:
                after = forecast(moved(TWINS, one, one.value + sign * one.step)).lane(lane).outcomes
            except RecipeError:
                assert np.isnan(change).all(), one.title
                continue
            for key in set(KEYS) & set(found.keys):
                true = after[key].value - base[key].value
                largest = np.nanmax(np.abs(found.up[:, found.column(key)]))
                assert change[found.column(key)] == pytest.approx(true, rel=0.1, abs=0.1 * largest + 1e-12), one.title


@pytest.mark.parametrize("lane", LANES)
def test_settings_of_a_lane_are_its_own_and_those_before_it(lane: str | None) -> None:
    every = movables(TWINS, lane)
    assert len({one.path for one in every}) == len(every)
    wheres = {one.where for one in every}
    assert {"milk", "ripen"} <= wheres
    assert ("press" in wheres) == (lane is None)
    assert ("plain-press" in wheres) == (lane == "plain")
    assert ("whey-heat" in wheres) == (lane == "whey-cheese")
    assert ("rennet" in wheres) == (lane != "cream")
    for one in every:
        assert one.branch == (None if one.of != "branch" and one.where in set(_of_main()) else one.branch)
        there = next(each for each in movables(moved(TWINS, one, one.value), lane) if each.path == one.path)
        assert there == one


def _of_main() -> list[str]:
    return ["", "form", "milk", *(stage.id for stage in TWINS.stages), *(one.id for one in TWINS.additions)]


@pytest.mark.parametrize(
    ("lane", "where", "field", "key", "sign"),
    [
        ("plain", "plain-cook", "temperature_c", "moisture_pct", -1),  # its own hotter cook makes it drier
        ("plain", "plain-salt", "salt_pct", "salt_in_moisture_pct", 1),
        ("plain", "cut", "cut_mm", "moisture_pct", 1),  # cut in the main make, before it parted
        ("plain", "plain", "share_pct", "cheese_kg", 1),
        (None, "plain", "share_pct", "cheese_kg", -1),  # what goes to the twin is missing here
        ("whey-cheese", "plain", "share_pct", "cheese_kg", -1),  # and so is its whey
        ("whey-cheese", "milk", "fat_pct", "fdm_pct", 1),
        ("whey-cheese", "whey-cheese", "share_pct", "cheese_kg", 1),
        ("whey-cheese", "cut", "cut_mm", "fdm_pct", -1),  # a fine cut loses fat to the whey
        ("cream", "milk", "fat_pct", "cheese_kg", 1),
        (None, "cream", "share_pct", "fdm_pct", -1),  # what cream takes is missing in the cheese
    ],
)
def test_directions(
    of: dict[str | None, Levers], lane: str | None, where: str, field: str, key: str, sign: int
) -> None:  # fmt: skip
    up, down = effect(of[lane], where, field, key)
    assert sign * up > 0.0
    assert sign * down < 0.0


def test_a_branch_does_not_move_the_main_make(of: dict[str | None, Levers]) -> None:
    cook = setting(TWINS, "plain", "plain-cook", "temperature_c")
    found = effects(TWINS, [cook], [cook.value + 1.0], branch="whey-cheese")
    assert all(column[1] == column[0] for column in found.values())
    assert not any(one.branch == "plain" for one in of[None].settings if one.of != "branch")


def test_its_own_form(of: dict[str | None, Levers]) -> None:
    assert ("plain", "height_mm") in {one.path for one in of["plain"].settings}
    height = setting(TWINS, "plain", "plain", "height_mm")
    after = moved(TWINS, height, 120.0)
    assert after.form == TWINS.form
    assert after.branch("plain").form.height_mm == 120.0  # type: ignore[union-attr]
    assert effect(of["plain"], "plain", "height_mm", "moisture_pct")[0] != 0.0


def test_parts_of_one_name_are_told_apart(of: dict[str | None, Levers]) -> None:
    titles = [one.title for one in of["plain"].settings]
    assert len(set(titles)) == len(titles)


@pytest.mark.parametrize("lane", ["plain", "whey-cheese", None])
def test_bands_of_the_strongest_hold_the_effect(of: dict[str | None, Levers], lane: str | None) -> None:
    top = of[lane].ranked("moisture_pct")[:2]
    found = spreads(TWINS, "moisture_pct", top, branch=lane, members=12)
    assert [one.setting for one in found] == [one.setting for one in top]
    for lever, band in zip(top, found, strict=True):
        for effect_, (low, high) in ((lever.up, band.up), (lever.down, band.down)):
            assert low < high
            assert low - 0.2 * abs(effect_) <= effect_ <= high + 0.2 * abs(effect_)


def test_the_room_moves_what_waits_in_it() -> None:
    short = edit_recipe(TWINS, stages=TWINS.stages[:-4], branches=())  # pressed, then left in the make room
    room = setting(short, None, "", "room_c")
    found = effects(short, [room], [room.value + 3.0])
    warm, cool = forecast(moved(short, room, room.value + 3.0)).outcomes, forecast(short).outcomes
    true = warm["ph_24h"].value - cool["ph_24h"].value
    assert true < -0.005
    assert found["ph_24h"][1] - found["ph_24h"][0] == pytest.approx(true, rel=0.15)


def test_no_such_branch() -> None:
    with pytest.raises(KeyError):
        levers(TWINS, branch="moon")
