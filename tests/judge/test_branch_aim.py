"""Aim and explain on a branch: its own settings and what it shares, the other cheeses of the vat as they must be."""

from __future__ import annotations

from importlib.resources import files
from pathlib import Path

import pytest

from designer.forecast import Forecast, forecast
from designer.judge.aim import Wanted, aim, at
from designer.judge.explain import explain
from designer.judge.freedom import freedoms, guards, style_of
from designer.make import kernel
from designer.recipe.file import read

TWINS = read(Path(str(files("example_recipes"))) / "millpond-twins.toml")


@pytest.fixture(scope="module")
def made() -> Forecast:
    kernel.warm_up()
    return forecast(TWINS)


def test_a_value_within_reach_is_reached(made: Forecast) -> None:
    wanted = made.lane("plain").outcomes["moisture_pct"].value - 0.6
    found = aim(TWINS, [at("moisture_pct", wanted)], branch="plain")
    assert found.reached, found.sentence
    assert found.lane.outcomes["moisture_pct"].value == pytest.approx(wanted, abs=0.1 + 1e-9)
    assert {one.setting.branch for one in found.changes} <= {None, "plain"}
    assert found.sentence.startswith(f"Moisture {made.lane('plain').outcomes['moisture_pct'].value:.1f} %")


def test_what_must_hold_holds_in_every_cheese(made: Forecast) -> None:
    found = aim(TWINS, [Wanted("moisture_pct", None, 36.0)], branch="plain")
    for lane in made.lanes:
        for guard in guards(lane, style_of(TWINS, lane.branch_id), ()):
            if guard.firm:
                value = found.made.lane(lane.branch_id).outcomes[guard.key].value
                assert guard.low is None or value >= guard.low - 1e-6, guard.why
                assert guard.high is None or value <= guard.high + 1e-6, guard.why


def test_only_its_own_where_what_is_shared_is_locked(made: Forecast) -> None:
    shared = {one.setting.path for one in freedoms(TWINS, None, "plain") if one.setting.branch is None}
    salty = made.lane("plain").outcomes["salt_in_moisture_pct"].value + 0.3
    found = aim(TWINS, [at("salt_in_moisture_pct", salty)], branch="plain", locks=shared)
    assert found.reached
    assert found.recipe.stages == TWINS.stages
    assert found.made.outcomes["moisture_pct"].value == made.outcomes["moisture_pct"].value
    assert found.worse == ()


def test_whey_heated_for_its_cheese_is_not_a_setting_of_aim() -> None:
    wheres = {one.setting.where for one in freedoms(TWINS, None, "whey-cheese")}
    assert "whey-drain" in wheres
    assert not wheres & {"whey-heat", "whey-set", "plain-cook", "press"}


@pytest.mark.parametrize("lane", ["plain", "whey-cheese"])
def test_links_and_rest_make_the_whole(made: Forecast, lane: str) -> None:
    found = explain(made.lane(lane), "ph_24h", TWINS.style_of(lane))
    assert found is not None
    assert found.value == made.lane(lane).outcomes["ph_24h"].value
    assert sum(link.part for link in found.links) + found.rest == pytest.approx(found.value - found.middle, abs=1e-9)
    assert {link.ranged.setting.branch for link in found.links} <= {None, lane}


def test_a_branch_is_explained_by_its_own_cook(made: Forecast) -> None:
    found = explain(made.lane("plain"), "ph_24h", "cantal")
    assert found is not None
    assert found.links[0].ranged.setting.path == ("plain-cook", "temperature_c")
    assert found.links[0].part > 0.0
