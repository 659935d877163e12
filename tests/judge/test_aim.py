"""Aim: what it reaches, what it never touches, what it says is in the way."""

from __future__ import annotations

from importlib.resources import files
from itertools import product
from pathlib import Path

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from designer.forecast import forecast
from designer.judge.aim import Aimed, AimError, Wanted, aim, at
from designer.judge.freedom import freedoms, guards
from designer.judge.whole_steps import whole_steps
from designer.make import kernel
from designer.recipe.document import Recipe
from designer.recipe.edit import edit_addition
from designer.recipe.file import read
from styles.reader import style

FOLDER = Path(str(files("example_recipes")))
CHEDDAR = read(FOLDER / "thistlecombe-cheddar.toml")
GOUDA = read(FOLDER / "weirside-gouda.toml")


@pytest.fixture(scope="module", autouse=True)
def compiled() -> None:
    kernel.warm_up()


def of(recipe: Recipe, key: str) -> float:
    return forecast(recipe).outcomes[key].value


def holds(found: Aimed, style_key: str) -> None:
    """What must hold for every answer: heat, milk and rooms as they were, ranges and steps kept, guards not broken."""
    before, after = found.before.recipe, found.recipe
    assert after.milks == before.milks
    assert [stage for stage in after.stages if stage.kind == "room"] == [
        stage for stage in before.stages if stage.kind == "room"
    ]
    ranges = {one.setting.path: one for one in freedoms(before, style(style_key))}
    for change in found.changes:
        own = ranges[change.setting.path]
        assert own.least - 1 <= change.steps <= own.most + 1
        assert change.setting.low <= change.to <= change.setting.high
    for guard in guards(found.before, style(style_key), ()):
        if guard.firm:
            value = found.made.outcomes[guard.key].value
            assert guard.low is None or value >= guard.low - 1e-6, guard.why
            assert guard.high is None or value <= guard.high + 1e-6, guard.why


@pytest.mark.parametrize(
    ("recipe", "key", "change"),
    [
        (CHEDDAR, "moisture_pct", -1.0),
        (CHEDDAR, "ph_24h", -0.04),
        (CHEDDAR, "salt_in_moisture_pct", 0.4),
        (GOUDA, "moisture_pct", -1.2),
        (GOUDA, "ph_24h", 0.05),
    ],
)
def test_a_value_within_reach_is_reached(recipe: Recipe, key: str, change: float) -> None:
    wanted = of(recipe, key) + change
    found = aim(recipe, [at(key, wanted)])
    assert found.reached, found.sentence
    assert of(found.recipe, key) == pytest.approx(wanted, abs={"moisture_pct": 0.1}.get(key, 0.1) + 1e-9)
    assert found.size == pytest.approx(sum(abs(one.steps) for one in found.changes), abs=1e-3)
    assert found.size < 25.0
    assert found.in_the_way == ()
    holds(found, recipe.style)


def test_two_outcomes_at_once() -> None:
    found = aim(CHEDDAR, [Wanted("moisture_pct", None, 37.5), Wanted("salt_in_moisture_pct", 5.0, 5.5)])
    assert found.reached
    assert of(found.recipe, "moisture_pct") <= 37.5
    assert 5.0 <= of(found.recipe, "salt_in_moisture_pct") <= 5.5


def test_what_is_so_already_changes_nothing() -> None:
    found = aim(CHEDDAR, [at("moisture_pct", of(CHEDDAR, "moisture_pct"))])
    assert found.reached
    assert found.recipe == CHEDDAR
    assert "so already" in found.sentence


def test_locks_hold() -> None:
    locks = {("warm", "temperature_c"), "bulk", "stack"}
    found = aim(CHEDDAR, [at("moisture_pct", of(CHEDDAR, "moisture_pct") - 0.8)], locks=locks)
    moved = {one.setting.path for one in found.changes}
    assert not any(path in locks or path[0] in locks for path in moved)


def test_the_lock_in_the_way_is_named() -> None:
    every = {one.setting.path for one in freedoms(CHEDDAR, style("cheddar"))}
    saltier = [at("salt_in_moisture_pct", of(CHEDDAR, "salt_in_moisture_pct") + 0.45)]
    found = aim(CHEDDAR, saltier, locks=every - {("mill", "end.length_min"), ("dry", "room_c")})
    assert not found.reached
    assert ("salt", "salt_pct") in {path for one in found.in_the_way for path in one.settings}
    assert "lock" in found.sentence


def test_the_law_is_not_traded() -> None:
    found = aim(CHEDDAR, [at("moisture_pct", 42.0)])
    assert not found.reached
    assert of(found.recipe, "moisture_pct") <= 39.0 + 1e-6
    assert any("21 CFR 133.113" in one.sentence for one in found.in_the_way)
    holds(found, "cheddar")


def test_salt_is_not_traded() -> None:
    found = aim(CHEDDAR, [Wanted("salt_in_moisture_pct", None, 2.5)])
    assert not found.reached
    assert of(found.recipe, "salt_in_moisture_pct") >= 4.0 - 1e-6
    assert any("salt in moisture" in one.sentence.lower() for one in found.in_the_way)


def test_acid_in_time_is_not_traded() -> None:
    found = aim(CHEDDAR, [at("ph_6h", 6.6)])
    assert not found.reached
    assert of(found.recipe, "ph_6h") <= 6.3 + 1e-6
    assert not any(one.level == "stop" for one in found.made.cautions)


def test_calcium_chloride_stops_at_its_ceiling() -> None:
    near = edit_addition(CHEDDAR, "calcium", mass_kg=0.020)
    free = next(one for one in freedoms(near, None) if one.setting.path == ("calcium", "mass_kg"))
    assert free.at(free.most) <= 0.0206
    assert "ceiling" in free.why


def test_what_gets_worse_is_said() -> None:
    found = aim(CHEDDAR, [at("moisture_pct", of(CHEDDAR, "moisture_pct") - 1.5)])
    assert any(one.startswith("Yield") for one in found.worse)


def test_fat_in_dry_matter_hangs_on_the_milk() -> None:
    found = aim(CHEDDAR, [at("fdm_pct", 58.0)])
    assert not found.reached
    assert any("standardise" in one.sentence for one in found.in_the_way)


def test_what_cannot_be_asked() -> None:
    with pytest.raises(AimError, match="no outcome"):
        aim(CHEDDAR, [at("holes", 3.0)])
    with pytest.raises(AimError, match="backwards"):
        aim(CHEDDAR, [Wanted("moisture_pct", 40.0, 38.0)])
    with pytest.raises(AimError, match="no “"):
        aim(GOUDA, [at("ph_mill", 5.3)])


@settings(max_examples=40)
@given(st.integers(0, 10_000))
def test_the_program_finds_the_least_of_small_cases(seed: int) -> None:
    dice = np.random.default_rng(seed)
    slope = dice.normal(size=(2, 3))
    low = dice.normal(scale=3.0, size=2)
    high, cost = low + 0.3 + dice.random(2), np.array([50.0, 5.0])
    least, most = np.full(3, -3.0), np.full(3, 3.0)
    found = whole_steps(slope, low, high, cost, least, most)
    assert found is not None

    def price(steps: np.ndarray) -> float:
        past = np.maximum(np.maximum(low - slope @ steps, slope @ steps - high), 0.0)
        return float(np.abs(steps).sum() + past @ cost)

    best = min(price(np.array(steps)) for steps in product(range(-3, 4), repeat=3))
    assert price(found) <= best + 3.0
