"""Whatever is wanted, and whatever may move: aim never buys it with heat treatment, law, age, acid in time or salt."""

from __future__ import annotations

from functools import cache
from importlib.resources import files
from pathlib import Path
from typing import NamedTuple

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from designer.forecast import Forecast, forecast
from designer.judge.aim import Aimed, Wanted, aim
from designer.judge.check import check
from designer.judge.freedom import freedoms, style_of, unit_of
from designer.judge.moments import own_stages
from designer.judge.verdict import AGE, LIMIT, NOT_MET
from designer.make import kernel
from designer.make.caution import Family, limit
from designer.make.slow_acid import family_of
from designer.recipe.document import Recipe
from designer.recipe.edit import edit, edit_addition, edit_end, edit_milk
from designer.recipe.file import read
from designer.recipe.lower import lower
from designer.recipe.schedule import PLACE_MILK

FOLDER = Path(str(files("example_recipes")))
NAMES = (
    "thistlecombe-cheddar", "thistlecombe-cheddar+ceiling", "thistlecombe-cheddar+raw", "weirside-gouda",
    "fourways-jack", "highfold-alpine+hot", "kitchen-bloom", "little-thimble", "saltmarsh-white", "lantern-colby",
    "millpond-twins", "millpond-twins",
)  # fmt: skip
KEYS = (
    "moisture_pct", "mnfs_pct", "fdm_pct", "yield_kg_per_100kg", "ph_6h", "ph_24h", "ph_mill", "ph_drain", "salt_pct",
    "salt_in_moisture_pct", "calcium_mg_per_g_protein", "finish_min", "floc_min", "acidity_drawn_pct",
)  # fmt: skip


@cache
def made(name: str) -> Forecast:
    """An example forecast; some of them changed to lie right at a limit: the ceiling of calcium chloride, raw and
    just old enough, heated in the vat."""
    kernel.warm_up()
    stem, _, how = name.partition("+")
    recipe = read(FOLDER / f"{stem}.toml")
    match how:
        case "ceiling":
            recipe = edit_addition(recipe, "calcium", mass_kg=0.0199)
        case "raw":
            recipe = edit_milk(recipe, "morning", heat="raw", heat_c=None, heat_min=None)
            dry_min = recipe.stage("dry").end.planned_min
            recipe = edit_end(recipe, "cellar", length_min=60.0 * 1440.0 - dry_min)
        case "hot":
            recipe = edit(edit_end(recipe, "heat", value=64.0), "ripen", temperature_c=32.0)
    return forecast(recipe)


def acid_family(of: Forecast) -> Family | None:
    """The acid limits of a lane."""
    rows = next(lane.rows for lane in lower(of.recipe).lanes if lane.branch_id == of.branch_id)
    return family_of(own_stages(of), rows, float(np.max(of.trace["temperature_c"])))


def hot_stages(recipe: Recipe) -> list[object]:
    """Stages that bring milk to where heat is given against germs."""
    hot = limit("thermised_c").value
    return [
        stage
        for lane in recipe.lanes()
        for stage in lane.stages
        if stage.PLACE == PLACE_MILK and stage.end_temperature_c(0.0) >= hot
    ]


def is_as_safe_as_before(found: Aimed, locks: set[tuple[str, str]]) -> None:
    before, after = found.before, found.made
    assert after.recipe.milks == before.recipe.milks  # heat treatment with them
    assert hot_stages(after.recipe) == hot_stages(before.recipe)
    assert all(
        [one for one in now.stages if one.kind == "room"] == [one for one in was.stages if one.kind == "room"]
        for was, now in zip(before.recipe.lanes(), after.recipe.lanes(), strict=True)
    )
    assert not locks & {one.setting.path for one in found.changes}
    for was in before.lanes:
        holds_in(was, after.lane(was.branch_id))


def holds_in(was: Forecast, now: Forecast) -> None:
    """What must hold in one cheese of the vat."""
    new = {(one.code, one.stage) for one in now.cautions if one.level != "note"}
    new -= {(one.code, one.stage) for one in was.cautions}
    assert {code for code, _ in new} <= {"not-reached"}
    chloride = [
        sum(float(lane.rows["cacl2_g_kg"].sum()) for lane in lower(one.recipe).lanes if lane.branch_id == one.branch_id)
        for one in (was, now)
    ]
    assert chloride[1] <= max(limit("chloride_g_kg").value, chloride[0]) + 1e-9
    own = acid_family(was)
    if own is not None:
        for key, most in (("ph_6h", own.ph_6h_watch or own.ph_6h_stop), ("ph_mill", own.ph_mill_watch)):
            if most is not None and key in was.outcomes:
                assert now.outcomes[key].value <= max(most, was.outcomes[key].value) + 1e-9
    of = style_of(was.recipe, was.branch_id)
    salt = "salt_in_moisture_pct"
    least = [one.low for one in of.windows_of(salt) if one.low is not None] if of is not None else []
    if was.outcomes[salt].value >= 0.05:
        assert now.outcomes[salt].value >= min([*least, was.outcomes[salt].value]) - 1e-9
    if of is not None:
        rows = [row for row in check(was, of).section(LIMIT, AGE) if row.state != NOT_MET]
        held = {(row.rules, row.quantity, row.label) for row in rows}
        for row in check(now, of).section(LIMIT, AGE):
            assert row.state != NOT_MET or (row.rules, row.quantity, row.label) not in held, row.sentence


class Asked(NamedTuple):
    """A recipe, the lane aimed with, what is wanted, and what is locked."""

    name: str
    lane: str | None
    wanted: list[Wanted]
    locks: set[tuple[str, str]]


@st.composite
def questions(draw: st.DrawFn) -> Asked:
    """One or two outcomes of a lane wanted somewhere about where they stand, with some settings locked."""
    name = draw(st.sampled_from(NAMES))
    lane = draw(st.sampled_from([one.branch_id for one in made(name).lanes]))
    recipe, here = made(name).recipe, made(name).lane(lane).outcomes
    keys = draw(st.lists(st.sampled_from([key for key in KEYS if key in here]), min_size=1, max_size=2, unique=True))
    wanted = []
    for key in keys:
        unit = unit_of(key)
        to = here[key].value + unit * draw(st.integers(-60, 60))
        ways = [Wanted(key, to - unit, to + unit), Wanted(key, to, None), Wanted(key, None, to)]
        wanted.append(draw(st.sampled_from(ways)))
    paths = [one.setting.path for one in freedoms(recipe, style_of(recipe, lane), lane)]
    return Asked(name, lane, wanted, set(draw(st.lists(st.sampled_from(paths), max_size=len(paths), unique=True))))


@pytest.mark.parametrize("name", ["thistlecombe-cheddar+raw", "highfold-alpine+hot"])
def test_hurry_is_not_bought_with_age_or_heat(name: str) -> None:
    """What aim once did: dried a day less at sixty days, cut the heating of the milk short, took a caution for it."""
    is_as_safe_as_before(aim(made(name).recipe, [Wanted("finish_min", None, 300.0)]), set())


@settings(max_examples=4)
@given(questions())
def test_never_at_the_cost_of_safety(asked: Asked) -> None:
    found = aim(made(asked.name).recipe, asked.wanted, branch=asked.lane, locks=asked.locks)
    is_as_safe_as_before(found, asked.locks)


@pytest.mark.slow
@settings(max_examples=40)
@given(questions())
def test_never_at_the_cost_of_safety_however_asked(asked: Asked) -> None:
    found = aim(made(asked.name).recipe, asked.wanted, branch=asked.lane, locks=asked.locks)
    is_as_safe_as_before(found, asked.locks)
