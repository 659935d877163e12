"""Changes of whole stages and of the milk, each said in words: what a guess can be about beside a setting."""

from __future__ import annotations

from dataclasses import dataclass

from designer.judge.movable import made_stages
from designer.language import say
from designer.recipe import edit as edits
from designer.recipe.another_milk import with_milk
from designer.recipe.document import Addition, Recipe, Species, Starter
from designer.recipe.field import choice


@dataclass(frozen=True, slots=True)
class Rebuilt:
    """A recipe that was changed, and what was done to it."""

    recipe: Recipe
    words: str


def _called(recipe: Recipe, stage_id: str) -> str:
    return recipe.stage(stage_id).title


def places(recipe: Recipe) -> tuple[tuple[str, str], ...]:
    """(id, name) of the stages that can be left out or moved: those up to the first room."""
    return tuple((stage.id, stage.title) for stage in made_stages(recipe))


def without(recipe: Recipe, stage_id: str) -> Rebuilt:
    """A stage left out, with what goes in at it. RecipeError where the make can't be without it."""
    title = _called(recipe, stage_id)
    given: tuple[Starter | Addition, ...] = (*recipe.starters, *recipe.additions)
    for dose in given:
        if dose.at == stage_id:
            recipe = edits.take_out(recipe, dose.id)
    return Rebuilt(edits.remove(recipe, stage_id), say("without {stage}", stage=title))


def shifted(recipe: Recipe, stage_id: str, by: int) -> Rebuilt:
    """A stage some places later, or earlier where negative. RecipeError where it can't stand there."""
    words = say("{stage} later") if by > 0 else say("{stage} earlier")
    return Rebuilt(edits.move(recipe, stage_id, by), words.format(stage=_called(recipe, stage_id)))


def put_in(recipe: Recipe, kind: str, after_id: str) -> Rebuilt:
    """A new stage of a kind after another, as it comes. RecipeError where it can't stand there."""
    stage = edits.new_stage(recipe, kind)
    words = say("{stage} after {other}", stage=stage.title, other=_called(recipe, after_id))
    return Rebuilt(edits.insert(recipe, stage, after_id=after_id), words)


def of_milk(recipe: Recipe, species: Species) -> Rebuilt:
    """The same make of another animal's milk, of its usual composition."""
    return Rebuilt(with_milk(recipe, species), say("of {species} milk", species=choice(species)))
