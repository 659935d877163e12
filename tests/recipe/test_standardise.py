"""Standardising: the worked examples, the rich milk of the story, and balances that must hold whatever the figures."""

from __future__ import annotations

from importlib.resources import files
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from designer.forecast import forecast
from designer.recipe.document import MilkSource, Recipe
from designer.recipe.edit import edit_milk, edit_recipe
from designer.recipe.error import RecipeError
from designer.recipe.file import read
from designer.recipe.milk import blend
from designer.recipe.standardise import (
    Liquid,
    Target,
    cream_to_remove_kg,
    offers,
    pearson_parts,
    skim_to_add_kg,
    standardise,
    usual_target,
    wanted_fat_pct,
)

CHEDDAR = read(Path(str(files("example_recipes"))) / "thistlecombe-cheddar.toml")


def of_milk(fat: float, protein: float, **more: float) -> Recipe:
    """The Cheddar with 100 kg of a milk."""
    return edit_milk(
        CHEDDAR, "morning", volume_l=None, mass_kg=100.0, fat_pct=fat, protein_pct=protein, casein_pct=None, **more
    )


def ratio(recipe: Recipe, of: str = "protein") -> float:
    milk = blend(recipe)
    return (milk.casein + (milk.whey_protein if of == "protein" else 0.0)) / milk.fat


def test_pearson_square() -> None:
    assert pearson_parts(3.9, 0.0, 2.6) == pytest.approx((2.6, 1.3))  # FAO village-dairy text
    with pytest.raises(ValueError, match="No mix"):
        pearson_parts(3.9, 0.1, 4.2)


@pytest.mark.parametrize(
    ("target", "skim", "fat", "protein"), [(0.91, 0.0738, 3.636, 3.309), (1.13, 0.3292, 2.949, 3.332)]
)
def test_skim_of_the_worked_examples(target: float, skim: float, fat: float, protein: float) -> None:
    k = skim_to_add_kg(3.9, 3.3, 0.06, 3.43, target)
    assert k == pytest.approx(skim, abs=5e-5)
    assert (3.9 + 0.06 * k) / (1.0 + k) == pytest.approx(fat, abs=5e-4)
    assert (3.3 + 3.43 * k) / (1.0 + k) == pytest.approx(protein, abs=5e-4)


def test_cream_of_the_worked_example() -> None:
    y = cream_to_remove_kg(3.9, 3.3, 40.0, 2.0, 1.13)
    assert y == pytest.approx(0.02562, abs=5e-6)
    assert (3.9 - 40.0 * y) / (1.0 - y) == pytest.approx(2.951, abs=5e-4)


def test_rich_milk_is_offered_cream_off_or_skim() -> None:
    rich = of_milk(5.0, 3.9)
    target = Target(0.91)
    assert wanted_fat_pct(rich, target) == pytest.approx(4.3, abs=0.05)
    cream, skim = offers(rich, target, cream=Liquid(40.0, 2.2), skim=Liquid(0.06, 4.05))
    assert (cream.way, skim.way) == ("cream off", "skim")
    assert cream.kg_per_100kg == pytest.approx(1.90, abs=0.05)
    assert skim.kg_per_100kg == pytest.approx(16.3, abs=0.2)
    assert cream.kg == pytest.approx(cream.kg_per_100kg)
    before = forecast(rich).outcomes["fdm_pct"].value
    for offer in (cream, skim):
        leaner = standardise(rich, offer)
        assert ratio(leaner) == pytest.approx(0.91, abs=1e-3)
        assert forecast(leaner).outcomes["fdm_pct"].value < before - 1.0


def test_what_cream_and_skim_hold_follows_from_the_milk() -> None:
    cream, skim = offers(of_milk(5.0, 3.9), Target(0.91))
    serum = 3.9 / 0.95
    assert cream.liquid.protein_pct == pytest.approx(serum * 0.60)
    assert skim.liquid.protein_pct == pytest.approx(serum * 0.9994)


@given(st.floats(2.0, 7.0), st.floats(2.6, 5.0), st.floats(0.6, 1.5), st.sampled_from(["protein", "casein"]))
def test_every_offer_reaches_the_target_and_keeps_fat_and_protein(
    fat: float, protein: float, wanted: float, of: str
) -> None:
    recipe = of_milk(round(fat, 2), round(protein, 2))
    before = blend(recipe)
    for offer in offers(recipe, Target(wanted, of)):  # type: ignore[arg-type]
        after_recipe = standardise(recipe, offer)
        after = blend(after_recipe)
        assert ratio(after_recipe, of) == pytest.approx(wanted, rel=1e-3)
        sign = -1.0 if offer.way == "cream off" else 1.0
        for name, held in (("fat", offer.liquid.fat_pct), ("protein", offer.liquid.protein_pct)):
            there = before.fat if name == "fat" else before.casein + before.whey_protein
            now = after.fat if name == "fat" else after.casein + after.whey_protein
            assert now * after.mass_kg == pytest.approx(
                there * before.mass_kg + sign * offer.kg * held * 10.0, rel=1e-4
            )
        assert after.mass_kg == pytest.approx(before.mass_kg + sign * offer.kg, rel=1e-6)


def test_lean_milk_is_offered_cream() -> None:
    (offer,) = offers(of_milk(2.8, 3.3), Target(0.96))
    assert offer.way == "cream on"
    assert "add" in offer.sentence


def test_two_milks_by_volume_give_cream_together() -> None:
    two = edit_recipe(
        CHEDDAR,
        milks=(
            CHEDDAR.milks[0],
            MilkSource(id="evening", species="cow", breed="jersey", volume_l=50.0, heat="pasteurised"),
        ),
    )
    cream, _ = offers(two, Target(1.0, "casein"))
    leaner = standardise(two, cream)
    assert ratio(leaner, "casein") == pytest.approx(1.0, abs=1e-3)
    assert [milk.id for milk in leaner.milks] == ["morning", "evening"]


def test_at_the_target_nothing_is_offered() -> None:
    assert offers(of_milk(4.0, 3.64), Target(0.91)) == ()


def test_what_cannot_be_is_said() -> None:
    with pytest.raises(RecipeError, match="lies between"):
        offers(CHEDDAR, Target(50.0))
    skim_and_rich = edit_recipe(
        CHEDDAR,
        milks=(
            MilkSource(id="skim", species="cow", volume_l=80.0, fat_pct=0.1),
            MilkSource(id="rich", species="cow", volume_l=20.0, fat_pct=9.0),
        ),
    )
    cream = offers(skim_and_rich, Target(2.5))[0]
    with pytest.raises(RecipeError, match="can't be taken off"):
        standardise(skim_and_rich, cream)


def test_usual_ratios() -> None:
    assert usual_target("cheddar") == Target(0.91)
    assert usual_target("alpine") is None
