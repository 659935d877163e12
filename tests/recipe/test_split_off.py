"""Splitting the vat: what begins can be made at once, amounts and forms are shared out, and nothing is half done."""

from __future__ import annotations

import pytest

from designer.forecast import forecast
from designer.recipe.document import Branch, Recipe
from designer.recipe.edit import edit_form, edit_recipe, take_out
from designer.recipe.error import RecipeError
from designer.recipe.file import read, reads, writes
from designer.recipe.split_off import Of, split_off
from tests.recipe.samples import CHEDDAR


@pytest.mark.parametrize(("after", "of", "share"), [("warm", "curd", 40.0), ("drain", "whey", 90.0)])
def test_what_is_split_off_can_be_made_and_saved(after: str, of: Of, share: float) -> None:
    recipe = split_off(read(CHEDDAR), after, of, share, "the other one")
    made = forecast(recipe).lane("the-other-one")
    assert made.outcomes["cheese_kg"].value > 0.5
    assert reads(writes(recipe)) == recipe
    assert take_out(recipe, "the-other-one").branches == ()


def test_cream_is_taken_before_the_set() -> None:
    recipe = split_off(read(CHEDDAR), "ripen", "cream", 30.0, "cream")
    assert forecast(recipe).outcomes["fdm_pct"].value < forecast(read(CHEDDAR)).outcomes["fdm_pct"].value


def test_a_twin_of_the_curd_comes_out_as_the_main_make() -> None:
    recipe = edit_form(read(CHEDDAR), count=2)
    made = forecast(split_off(recipe, "warm", "curd", 50.0, "twin"))
    main, twin = made, made.lane("twin")
    assert [branch.form.count for branch in made.recipe.branches if branch.form] == [1]
    assert made.recipe.form is not None
    assert made.recipe.form.count == 1
    for key in ("moisture_pct", "fdm_pct", "ph_24h", "cheese_kg"):
        assert twin.outcomes[key].value == pytest.approx(main.outcomes[key].value, rel=1e-3)


def test_doses_by_mass_are_shared_out() -> None:
    recipe = read(CHEDDAR)
    salt = recipe.additions[0].but(id="late-salt", what="salt", name="", at="press", mass_kg=1.0, volume_l=None,
                                   mass_pct=None, coagulant=None, strength_imcu_ml=None, age_months=0.0)  # fmt: skip
    recipe = edit_recipe(recipe, additions=(*recipe.additions, salt))
    split = split_off(recipe, "warm", "curd", 40.0, "twin")
    assert split.additions[-1].mass_kg == pytest.approx(0.6)
    assert split.branches[0].additions[-1].mass_kg == pytest.approx(0.4)
    assert split.branches[0].additions[-1].at == "twin-press"


def test_refusals_are_sentences() -> None:
    recipe = split_off(read(CHEDDAR), "warm", "curd", 60.0, "twin")
    with pytest.raises(RecipeError, match="choose a stage of it"):
        split_off(recipe, "twin-salt", "curd", 10.0, "third")
    with pytest.raises(RecipeError, match="more than there is"):
        split_off(recipe, "warm", "curd", 60.0, "third")


def test_each_lane_is_checked_against_its_own_style() -> None:
    recipe: Recipe = split_off(split_off(read(CHEDDAR), "warm", "curd", 50.0, "twin"), "drain", "whey", 50.0, "w")
    assert recipe.style_of(None) == recipe.style_of("twin") == "cheddar"
    assert recipe.style_of("w") == ""
    named = edit_recipe(recipe, branches=tuple(branch.but(style="gouda") for branch in recipe.branches))
    assert named.style_of("twin") == named.style_of("w") == "gouda"
    assert isinstance(named.lane("twin-salt"), Branch)
