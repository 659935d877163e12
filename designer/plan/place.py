"""Where the curd is while a stage lasts, as the plan needs it: at the vat, or out of it."""

from __future__ import annotations

from designer.recipe import schedule
from designer.recipe.document import Branch, Recipe
from designer.recipe.stages.kinds import AnyStage
from designer.recipe.stages.salt import Salt


def place_of(stage: AnyStage) -> int:
    """Where the curd is while a stage lasts (schedule.PLACE_*)."""
    if isinstance(stage, Salt) and stage.on == "cheese":
        return schedule.PLACE_AIR
    return stage.PLACE


def first_out_of_the_vat(lane: Recipe | Branch) -> int:
    """Index of the first stage in forms, cloth, press, brine or air."""
    away = (schedule.PLACE_MOULD, schedule.PLACE_PRESS, schedule.PLACE_BRINE, schedule.PLACE_AIR)
    return next((index for index, stage in enumerate(lane.stages) if place_of(stage) in away), len(lane.stages))
