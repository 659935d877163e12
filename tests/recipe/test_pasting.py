"""Stages as text: they come back as they were, in any recipe, and what is no stage is refused with a sentence."""

from __future__ import annotations

import pytest

from designer.recipe.error import RecipeError
from designer.recipe.file import read, reads, writes
from designer.recipe.pasting import copied, pasted
from designer.recipe.split_off import split_off
from tests.recipe.samples import CHEDDAR, EXAMPLES


@pytest.mark.parametrize("path", EXAMPLES, ids=lambda path: path.stem)
def test_every_stage_comes_back_as_it_was(path) -> None:  # type: ignore[no-untyped-def]
    recipe = read(path)
    for stage in recipe.stages:
        made, new_id = pasted(recipe, copied(recipe, [stage.id]), stage.id)
        assert made.stage(new_id).but(id=stage.id) == stage
        given = [one for one in (*recipe.starters, *recipe.additions) if one.at == stage.id]
        there = [one for one in (*made.starters, *made.additions) if one.at == new_id]
        assert [one.but(id="x", at="x") for one in there] == [one.but(id="x", at="x") for one in given]
    assert reads(writes(made)) == made


def test_stages_go_into_another_recipe_and_into_a_branch() -> None:
    recipe = read(CHEDDAR)
    split = split_off(recipe, "warm", "curd", 40.0, "twin")
    made, last = pasted(split, copied(recipe, ["stack", "mill"]), "twin-drain")
    ids = [stage.id for stage in made.branches[0].stages]
    at = ids.index("twin-drain")
    assert ids[at + 1 : at + 3] == ["stack-2", "mill-2"]
    assert last == "mill-2"
    assert made.stages == split.stages


@pytest.mark.parametrize(
    "text",
    ["", "a letter to my sister", "name = 'x'", "[[stage]]\nkind = 'cook'\n[form]\nheight = '9 cm'", "stage = 3",
     "[[starter]]\nid = 'x'", "[[stage]]\n" * 60_000],
    ids=["nothing", "words", "no stage", "more than stages", "a number", "no stage but a starter", "too long"],
)  # fmt: skip
def test_what_is_no_stage_is_refused(text: str) -> None:
    with pytest.raises(RecipeError, match="no stage of a recipe"):
        pasted(read(CHEDDAR), text, "warm")


def test_a_fault_in_a_stage_is_named() -> None:
    with pytest.raises(RecipeError, match="kind = “fly” is unknown"):
        pasted(read(CHEDDAR), "[[stage]]\nid = 'x'\nkind = 'fly'", "warm")
    with pytest.raises(RecipeError, match="not copied with it"):
        pasted(
            read(CHEDDAR),
            "[[stage]]\nid = 'x'\nkind = 'cook'\n[[addition]]\nid = 's'\nwhat = 'salt'\nat = 'far'\nmass = '1 kg'",
            "warm",
        )
