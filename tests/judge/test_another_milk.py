"""A recipe moved to another milk: what shifts, which way, and that each change has its reason and source."""

from __future__ import annotations

import pytest

from designer.judge.another_milk import Moved, move_to
from designer.make import kernel
from designer.recipe.another_milk import with_milk
from designer.recipe.document import Species
from designer.recipe.dose import rennet_imcu_per_l
from designer.recipe.error import RecipeError
from designer.recipe.file import read
from designer.recipe.milk import blend
from designer.recipe.sure import doubts
from tests.recipe.samples import CHEDDAR

GOUDA = CHEDDAR.with_name("weirside-gouda.toml")


@pytest.fixture(scope="module", autouse=True)
def machine_code() -> None:
    kernel.warm_up()


@pytest.fixture(scope="module")
def sheep() -> Moved:
    return move_to(read(GOUDA), "sheep")


def three(moved: Moved, key: str) -> tuple[float, float, float]:
    """An outcome as it was, with the milk alone, with the changes."""
    return (moved.before.outcomes[key].value, moved.with_milk.outcomes[key].value, moved.after.outcomes[key].value)


def dose(recipe: object) -> float:
    each = next(one for one in recipe.additions if one.what == "coagulant")  # type: ignore[attr-defined]
    return rennet_imcu_per_l(each, blend(recipe))  # type: ignore[arg-type]


@pytest.mark.parametrize(("species", "low", "high"), [("sheep", 0.5, 0.75), ("goat", 0.65, 0.9), ("buffalo", 0.6, 1.0)])
def test_less_rennet_for_the_same_flocculation(species: Species, low: float, high: float) -> None:
    """Sheep 0.6-0.8 of cow, goat less by a quarter to a half or hardly less: directions from the reference."""
    moved = move_to(read(CHEDDAR), species)
    was, alone, now = three(moved, "floc_min")
    assert now == pytest.approx(was, abs=0.3)
    assert abs(alone - was) > abs(now - was)
    assert low < dose(moved.recipe) / dose(read(CHEDDAR)) < high


def test_rich_milk_gives_more_and_fatter_cheese(sheep: Moved) -> None:
    assert three(sheep, "yield_kg_per_100kg")[2] > 1.4 * three(sheep, "yield_kg_per_100kg")[0]
    assert three(sheep, "fdm_pct")[2] > three(sheep, "fdm_pct")[0] + 2.0


def test_moisture_in_non_fat_substance_comes_back(sheep: Moved) -> None:
    was, _, now = three(sheep, "mnfs_pct")
    assert sheep.reached
    assert now == pytest.approx(was, abs=1.0)


def test_more_curd_fills_more_forms_and_thicker_ones_lie_longer_in_brine(sheep: Moved) -> None:
    before, after = sheep.before.recipe, sheep.recipe
    assert before.form is not None
    assert after.form is not None
    assert after.form.count > before.form.count
    thicker = after.form.height_mm / before.form.height_mm
    longer = after.stage("brine").end.planned_min / before.stage("brine").end.planned_min
    assert longer == pytest.approx(thicker**2, rel=0.01)


def test_every_shift_has_reason_and_source(sheep: Moved) -> None:
    assert {shift.what for shift in sheep.shifts} >= {"calf rennet", "forms"}
    for shift in (*sheep.shifts, *sheep.notes):
        assert shift.source
        assert shift.have
    assert all(shift.before != shift.after for shift in sheep.shifts)
    assert "clots in 0.62 of the time" in sheep.shifts[0].sentence


def test_fat_is_offered_and_not_done(sheep: Moved) -> None:
    assert {offer.way for offer in sheep.milk} == {"cream off", "skim"}
    assert blend(sheep.recipe).fat > 1.5 * blend(sheep.before.recipe).fat


def test_a_blend_lies_between() -> None:
    recipe = read(CHEDDAR)
    third = with_milk(recipe, "goat", share_pct=30.0)
    milk = blend(third)
    litres = [blend(one).mass_kg / blend(one).density_kg_l for one in (recipe, third)]
    assert litres[1] == pytest.approx(litres[0])
    assert dict(milk.shares)["goat"] == pytest.approx(0.3, abs=0.01)
    part, whole = move_to(recipe, "goat", share_pct=30.0), move_to(recipe, "goat")
    assert dose(whole.recipe) < dose(part.recipe) < dose(recipe)


def test_there_and_back_needs_the_same_rennet() -> None:
    goat = move_to(read(CHEDDAR), "goat")
    back = move_to(goat.recipe, "cow", breed=read(CHEDDAR).milks[0].breed)
    assert dose(back.recipe) == pytest.approx(dose(read(CHEDDAR)), rel=0.1)


def test_a_breed_and_a_share_that_cannot_be() -> None:
    assert with_milk(read(CHEDDAR), "goat", breed="nubian").milks[0].breed == "nubian"
    with pytest.raises(RecipeError, match="share of the milk"):
        with_milk(read(CHEDDAR), "goat", share_pct=0.0)


def test_the_proposal_raises_no_question(sheep: Moved) -> None:
    assert doubts(sheep.recipe) == ()
