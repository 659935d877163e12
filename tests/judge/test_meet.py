"""Meeting a style, and first recipes: limits met or said, milk never touched, examples well chosen."""

from __future__ import annotations

from importlib.resources import files
from pathlib import Path

import pytest

from designer.forecast import forecast
from designer.judge.check import check
from designer.judge.first_recipe import first_recipe
from designer.judge.meet import meet, ratio_for_fdm
from designer.judge.verdict import NOT_MET
from designer.judge.windows import ranged
from designer.make import kernel
from designer.recipe.document import MilkSource
from designer.recipe.edit import edit, edit_milk
from designer.recipe.error import RecipeError
from designer.recipe.file import read, reads, writes
from designer.recipe.standardise import offers, standardise
from styles.reader import StyleError, style

FOLDER = Path(str(files("example_recipes")))
CHEDDAR = read(FOLDER / "thistlecombe-cheddar.toml")


@pytest.fixture(scope="module", autouse=True)
def compiled() -> None:
    kernel.warm_up()


def milk(species: str, litres: float = 40.0, breed: str = "") -> MilkSource:
    return MilkSource.model_validate({"id": "own", "species": species, "breed": breed, "volume_l": litres})


def test_a_wet_cheddar_is_brought_inside_its_limits() -> None:
    wet = edit(edit(CHEDDAR, "warm", temperature_c=36.0), "cut", cut_mm=16.0)
    assert check(forecast(wet), "cheddar").state == NOT_MET
    found = meet(wet, "cheddar")
    assert found.reached
    assert check(found.made, "cheddar").state != NOT_MET
    assert found.recipe.milks == wet.milks
    usual = {one.setting.path: one for one in ranged(found.recipe, style("cheddar"))}
    assert usual["cut", "cut_mm"].low <= found.recipe.stage("cut").cut_mm <= usual["cut", "cut_mm"].high  # type: ignore[union-attr]
    assert "inside the limits" in found.sentence


def test_every_change_is_listed() -> None:
    wet = edit(CHEDDAR, "cut", cut_mm=16.0)
    found = meet(wet, "cheddar")
    assert ("cut", "cut_mm") in {one.setting.path for one in found.changes}
    for one in found.changes:
        assert one.setting.value != one.to


def test_lean_milk_is_offered_cream_and_not_changed() -> None:
    lean = edit_milk(CHEDDAR, "morning", fat_pct=2.9)
    found = meet(lean, "cheddar")
    assert not found.reached
    assert found.recipe.milks == lean.milks
    (offer,) = found.milk
    assert offer.way == "cream on"
    better = forecast(standardise(found.recipe, offer)).outcomes["fdm_pct"].value
    assert better >= 50.0


def test_the_ratio_for_a_fat_in_dry_matter() -> None:
    made = forecast(CHEDDAR)
    target = ratio_for_fdm(made, 48.0)
    (offer, _) = offers(CHEDDAR, target)
    assert forecast(standardise(CHEDDAR, offer)).outcomes["fdm_pct"].value == pytest.approx(48.0, abs=0.4)


@pytest.mark.parametrize(
    ("key", "species"), [("cheddar", "cow"), ("gouda", "goat"), ("feta", "sheep"), ("gruyere", "cow")]
)
def test_a_first_recipe(key: str, species: str) -> None:
    first = first_recipe([milk(species)], key)
    assert first.recipe.style == key
    assert first.recipe.milks == (milk(species),)
    assert first.recipe.maker == ""
    assert reads(writes(first.recipe)) == first.recipe
    assert first.reached or first.missed or first.milk
    assert first.notes[0].startswith("Drawn from the example")
    assert not any(one.level == "stop" for one in first.made.cautions)


def test_an_acid_set_style_begins_from_an_acid_set_example() -> None:
    first = first_recipe([milk("goat", 20.0)], "crottin")
    assert any(stage.kind == "lactic_set" for stage in first.recipe.stages)
    assert any("no example" in note for note in first.notes)


def test_a_strange_milk_is_said() -> None:
    first = first_recipe([milk("buffalo")], "roquefort")
    assert any("not usually made of" in note for note in first.notes)


def test_what_cannot_be() -> None:
    with pytest.raises(RecipeError, match="needs a milk"):
        first_recipe([], "cheddar")
    with pytest.raises(StyleError):
        first_recipe([milk("cow")], "moon")
