"""Stages as text of their own, with what goes in at them: copied out of one recipe, put into another.

The text is what a recipe's file holds for them, `[[stage]]`, `[[starter]]` and `[[addition]]`, so that it may as well
come from an editor or a letter.
"""

from __future__ import annotations

import tomllib
from collections.abc import Mapping, Sequence
from typing import Any, Final, TypeVar

from designer.language import say
from designer.recipe.document import Addition, Branch, Recipe, Starter
from designer.recipe.edit import edit_branch, edit_recipe, free_id, insert
from designer.recipe.error import RecipeError
from designer.recipe.field import Model
from designer.recipe.reading import build, part_label, stage_model
from designer.recipe.stages.stage import Stage
from designer.recipe.writing import part_text

LONGEST: Final = 100_000
"""A longer text is no piece of a recipe [signs]."""
PIECES: Final[Mapping[str, type[Model] | None]] = {"stage": None, "starter": Starter, "addition": Addition}
G = TypeVar("G", Starter, Addition)


def copied(recipe: Recipe, stage_ids: Sequence[str]) -> str:
    """Stages of one lane as text, with what goes in at them, in the order of the lane."""
    lane = recipe.lane(stage_ids[0])
    parts: list[tuple[str, Model]] = [("stage", one) for one in lane.stages if one.id in stage_ids]
    parts += [("starter", one) for one in lane.starters if one.at in stage_ids]
    parts += [("addition", one) for one in lane.additions if one.at in stage_ids]
    return "\n".join(part_text(name, part).strip() + "\n" for name, part in parts)


def pasted(recipe: Recipe, text: str, after_id: str) -> tuple[Recipe, str]:
    """The recipe with the stages of a text after one of its own, and the id of the last of them.

    Raises RecipeError where the text is no stage of a recipe.
    """
    found = _read(text)
    stages: list[Stage] = found["stage"]
    own: dict[str, str] = {}
    last = after_id
    for stage in stages:
        new_id = free_id(recipe, stage.id)
        own[stage.id] = new_id
        recipe = insert(recipe, stage.but(id=new_id), after_id=last)
        last = new_id
    lane = recipe.lane(last)
    starters = _renamed(recipe, found["starter"], own)
    additions = _renamed(recipe, found["addition"], own)
    changes = {"starters": (*lane.starters, *starters), "additions": (*lane.additions, *additions)}
    if isinstance(lane, Branch):
        return edit_branch(recipe, lane.id, **changes), last
    return edit_recipe(recipe, **changes), last


def _read(text: str) -> dict[str, list[Any]]:
    no_stage = say("what was copied is no stage of a recipe")
    if len(text) > LONGEST:
        raise RecipeError(no_stage)
    try:
        data = tomllib.loads(text)
    except (ValueError, RecursionError):
        raise RecipeError(no_stage) from None
    if not isinstance(data.get("stage"), list) or any(key not in PIECES for key in data):
        raise RecipeError(no_stage)
    out: dict[str, list[Any]] = {}
    for key, model in PIECES.items():
        raws = data.get(key, [])
        if not isinstance(raws, list) or not all(isinstance(raw, Mapping) for raw in raws):
            raise RecipeError(no_stage)
        out[key] = []
        for index, raw in enumerate(raws):
            where = say("what was copied, {part}", part=part_label(key, index, raw))
            out[key].append(build(stage_model(raw, where) if model is None else model, raw, where))
    return out


def _renamed(recipe: Recipe, parts: Sequence[G], own: Mapping[str, str]) -> tuple[G, ...]:
    made: list[G] = []
    taken = set(recipe.ids())
    for one in parts:
        if one.at not in own:
            raise RecipeError(say("“{name}” goes in at a stage that was not copied with it", name=one.name or one.id))
        new_id, count = one.id, 2
        while new_id in taken:
            new_id, count = f"{one.id}-{count}", count + 1
        taken.add(new_id)
        made.append(one.but(id=new_id, at=own[one.at]))
    return tuple(made)
