"""Where the curd is while a stage lasts, and how much of the milk stands behind it."""

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


def milk_behind_kg(lane: Recipe | Branch, weight: float, milk_kg: float, stage_index: int) -> float:
    """Milk [kg] whose curd is at work in a stage: less what branches took before it; `weight` is the forecast's."""
    if isinstance(lane, Branch):
        return weight * milk_kg
    before = {stage.id for stage in lane.stages[:stage_index]}
    left = 1.0
    for after in before:
        gone = [branch.share_pct for branch in lane.branches if branch.of == "curd" and branch.after == after]
        left *= 1.0 - sum(gone) / 100.0
    return milk_kg * left
