"""Changes to a recipe: each makes a new, validated Recipe and leaves the old one as it was.

Raises RecipeError naming the stage or part; nothing is half done.
"""

from __future__ import annotations

import math
from typing import Any, TypeVar

from designer.language import say, word
from designer.recipe.document import Addition, Branch, Coat, Form, MilkSource, Recipe, Starter, Vat, stage_label
from designer.recipe.end import End, after
from designer.recipe.error import RecipeError
from designer.recipe.field import Model, field_metas
from designer.recipe.lower import temperatures_before
from designer.recipe.milk import blend, milk_label
from designer.recipe.reading import checked
from designer.recipe.stages.kinds import KINDS, AnyStage
from designer.recipe.stages.press import Press, PressStep
from designer.recipe.stages.stage import Stage, VatStage
from designer.units import show

M = TypeVar("M", bound=Model)
G = TypeVar("G", Starter, Addition)
Lane = Recipe | Branch


def _changed(model: M, where: str, **changes: Any) -> M:
    """The part with fields replaced, validated anew."""
    names = type(model).model_fields
    for name in changes:
        if name not in names:
            raise RecipeError(
                say("there is no field “{name}” here; known are {names}", name=name, names=", ".join(names)), where
            )
    data = dict(model) | changes
    if isinstance(model, Stage):
        data = checked(lambda: type(model).reconcile(data, changes), type(model), where)
    built: M = checked(lambda: type(model).model_validate(data), type(model), where)
    return built


def edit_recipe(recipe: Recipe, **changes: Any) -> Recipe:
    """Change fields of the recipe itself: name, style, room_c, start_clock_min, form, stages, ..."""
    return _changed(recipe, "", **changes)


def _lane_of(recipe: Recipe, stage_id: str) -> tuple[Lane, int]:
    for lane in recipe.lanes():
        for index, stage in enumerate(lane.stages):
            if stage.id == stage_id:
                return lane, index
    raise RecipeError(say("there is no stage “{stage_id}”", stage_id=stage_id))


def _with_lane(recipe: Recipe, lane: Lane, **changes: Any) -> Recipe:
    if isinstance(lane, Recipe):
        return _changed(recipe, "", **changes)
    changed = _changed(lane, say("branch “{name}”", name=lane.name or lane.id), **changes)
    return _changed(recipe, "", branches=tuple(changed if each is lane else each for each in recipe.branches))


def _where(lane: Lane, index: int) -> str:
    place = say("branch “{name}”, ", name=lane.name or lane.id) if isinstance(lane, Branch) else ""
    return place + stage_label(lane.stages, index)


def edit(recipe: Recipe, stage_id: str, **changes: Any) -> Recipe:
    """Change fields of one stage, also in a branch; a changed `id` is followed by what hangs on it."""
    lane, index = _lane_of(recipe, stage_id)
    stage = _changed(lane.stages[index], _where(lane, index), **changes)
    stages = (*lane.stages[:index], stage, *lane.stages[index + 1 :])
    if stage.id == stage_id:
        return _with_lane(recipe, lane, stages=stages)
    return _renamed(recipe, lane, stages, stage_id, stage.id)


def _renamed(
    recipe: Recipe, lane: Lane, stages: tuple[AnyStage, ...], old: str, new: str, *, at_start: bool = False
) -> Recipe:
    """What hung on the stage `old` hangs on `new`. One validation for all: in between, names would hang loose."""
    moved: dict[str, Any] = {"at": new, "after_min": 0.0} if at_start else {"at": new}
    follow: dict[str, Any] = {
        "stages": stages,
        "starters": tuple(each.but(**moved) if each.at == old else each for each in lane.starters),
        "additions": tuple(each.but(**moved) if each.at == old else each for each in lane.additions),
    }
    if isinstance(lane, Recipe):
        parted = tuple(b.but(after=new) if b.after == old else b for b in recipe.branches)
        return _changed(recipe, "", **follow, branches=parted)
    return _with_lane(recipe, lane, **follow)


def edit_end(recipe: Recipe, stage_id: str, **changes: Any) -> Recipe:
    """Change fields of a stage's end (`value`, `length_min`, `latest_min`, ...), keeping the rest of it."""
    lane, index = _lane_of(recipe, stage_id)
    return edit(recipe, stage_id, end=_changed(lane.stages[index].end, _where(lane, index), **changes))


def set_end(recipe: Recipe, stage_id: str, **fields: Any) -> Recipe:
    """Give a stage another kind of end, from its fields: by="ph", of="curd", value=6.1, latest_min=120."""
    lane, index = _lane_of(recipe, stage_id)
    end = checked(lambda: End.model_validate(fields), End, _where(lane, index))
    return edit(recipe, stage_id, end=end)


# --- Parts beside the stages -----------------------------------------------------------------------------------------


def edit_milk(recipe: Recipe, milk_id: str, **changes: Any) -> Recipe:
    """Change fields of one milk source."""
    for index, source in enumerate(recipe.milks):
        if source.id == milk_id:
            new = _changed(source, milk_label(recipe, index), **changes)
            return _changed(recipe, "", milks=(*recipe.milks[:index], new, *recipe.milks[index + 1 :]))
    raise RecipeError(say("there is no milk “{milk_id}”", milk_id=milk_id))


def edit_starter(recipe: Recipe, starter_id: str, **changes: Any) -> Recipe:
    """Change fields of one starter, also in a branch."""
    return _edit_given(recipe, "starters", starter_id, changes)


def edit_addition(recipe: Recipe, addition_id: str, **changes: Any) -> Recipe:
    """Change fields of one addition, also in a branch."""
    return _edit_given(recipe, "additions", addition_id, changes)


def _edit_given(recipe: Recipe, field: str, part_id: str, changes: dict[str, Any]) -> Recipe:
    for lane in recipe.lanes():
        given: tuple[Starter | Addition, ...] = getattr(lane, field)
        for index, each in enumerate(given):
            if each.id == part_id:
                new = _changed(each, f"{field[:-1]} {index + 1}, “{each.name or each.id}”", **changes)
                return _with_lane(recipe, lane, **{field: (*given[:index], new, *given[index + 1 :])})
    raise RecipeError(say("there is no {field} “{part_id}”", field=word(field[:-1], "field"), part_id=part_id))


def edit_form(recipe: Recipe, branch: str | None = None, /, **changes: Any) -> Recipe:
    """Change the form of the main make or of a branch, or begin one."""
    lane = _lane_named(recipe, branch)
    return _with_lane(recipe, lane, form=_begun(lane.form, Form, "form", changes))


def edit_coat(recipe: Recipe, branch: str | None = None, /, **changes: Any) -> Recipe:
    """Change the rind or coat of the main make or of a branch, or begin one."""
    lane = _lane_named(recipe, branch)
    return _with_lane(recipe, lane, coat=_begun(lane.coat, Coat, "coat", changes))


def edit_vat(recipe: Recipe, **changes: Any) -> Recipe:
    """Change the vat, or begin one."""
    return _changed(recipe, "", vat=_begun(recipe.vat, Vat, "vat", changes))


def _begun(part: M | None, model: type[M], where: str, changes: dict[str, Any]) -> M:
    if part is not None:
        return _changed(part, where, **changes)
    built: M = checked(lambda: model.model_validate(changes), model, where)
    return built


def edit_branch(recipe: Recipe, branch_id: str, **changes: Any) -> Recipe:
    """Change fields of one branch."""
    return _with_lane(recipe, _lane_named(recipe, branch_id), **changes)


def _lane_named(recipe: Recipe, branch_id: str | None) -> Lane:
    for lane in recipe.branches:
        if lane.id == branch_id:
            return lane
    if branch_id is not None:
        raise RecipeError(say("there is no branch “{branch_id}”", branch_id=branch_id))
    return recipe


_HOMES: dict[type[Model], str] = {MilkSource: "milks", Starter: "starters", Addition: "additions", Branch: "branches"}


def add(recipe: Recipe, part: MilkSource | Starter | Addition | Branch) -> Recipe:
    """Add a milk, starter, addition or branch at the end of its kind."""
    home = _HOMES[type(part)]
    return _changed(recipe, "", **{home: (*getattr(recipe, home), part)})


def take_out(recipe: Recipe, part_id: str) -> Recipe:
    """Take a milk, starter, addition or branch out (a stage: see `remove`)."""
    for lane in recipe.lanes():
        for home in ("milks", "starters", "additions", "branches"):
            kept = tuple(each for each in getattr(lane, home, ()) if each.id != part_id)
            if len(kept) < len(getattr(lane, home, ())):
                return _with_lane(recipe, lane, **{home: kept})
    raise RecipeError(say("there is no part “{part_id}”", part_id=part_id))


# --- Stages in order -------------------------------------------------------------------------------------------------


def free_id(recipe: Recipe, wanted: str) -> str:
    """An id nobody has yet, beginning with the one wanted."""
    taken, count = set(recipe.ids()), 2
    if wanted not in taken:
        return wanted
    while f"{wanted}-{count}" in taken:
        count += 1
    return f"{wanted}-{count}"


def new_stage(recipe: Recipe, kind: str, **fields: Any) -> AnyStage:
    """A stage of a kind with a free id and the kind's own settings."""
    if kind not in KINDS:
        raise RecipeError(say("there is no stage kind “{kind}”", kind=kind))
    model = KINDS[kind]
    data = {"id": free_id(recipe, kind.replace("_", "-"))} | _needed(model) | fields
    data = checked(lambda: model.reconcile(data, fields), model, kind) if "end" not in data else data
    built: AnyStage = checked(
        lambda: model.model_validate(data), model, say("new stage, “{label}”", label=word(model.LABEL, "stage"))
    )
    return built


def _needed(model: type[Stage]) -> dict[str, Any]:
    """What a kind asks for that has no default: a wash needs its water."""
    return {"water_pct": 20.0} if any(meta.name == "water_pct" for meta in field_metas(model)) else {}


def insert(recipe: Recipe, stage: Stage, *, after_id: str | None = None, branch: str | None = None) -> Recipe:
    """Put a stage after another (also in a branch), or first; `branch` is needed only to put it first in one."""
    if after_id is None:
        lane: Lane = recipe if branch is None else next((b for b in recipe.branches if b.id == branch), recipe)
        return _with_lane(recipe, lane, stages=(stage, *lane.stages))
    lane, index = _lane_of(recipe, after_id)
    return _with_lane(recipe, lane, stages=(*lane.stages[: index + 1], stage, *lane.stages[index + 1 :]))


def remove(recipe: Recipe, stage_id: str) -> Recipe:
    """Take a stage out. What went in there, and branches after it, move to the stage before it (or after the first)."""
    lane, index = _lane_of(recipe, stage_id)
    if len(lane.stages) == 1:
        raise RecipeError(say("the only stage can't be taken out"), _where(lane, index))
    neighbour = lane.stages[index - 1] if index else lane.stages[1]
    stages = (*lane.stages[:index], *lane.stages[index + 1 :])
    return _renamed(recipe, lane, stages, stage_id, neighbour.id, at_start=True)


def move(recipe: Recipe, stage_id: str, by: int) -> Recipe:
    """Move a stage later (by > 0) or earlier among its neighbours; it stops at the ends."""
    lane, index = _lane_of(recipe, stage_id)
    rest = [stage for stage in lane.stages if stage.id != stage_id]
    rest.insert(min(max(index + by, 0), len(rest)), lane.stages[index])
    return _with_lane(recipe, lane, stages=tuple(rest))


def duplicate(recipe: Recipe, stage_id: str) -> Recipe:
    """A stage twice in a row; the second has its own id, and nothing goes in at it."""
    lane, index = _lane_of(recipe, stage_id)
    return insert(recipe, lane.stages[index].but(id=free_id(recipe, stage_id)), after_id=stage_id)


# What these do at their start, or spread over themselves, would be done twice.
_ONCE = frozenset({"set", "lactic_set", "acid_heat", "cut", "wash", "drain", "ladle", "mill", "salt", "stretch"})


def split(recipe: Recipe, stage_id: str, at_min: float) -> Recipe:
    """Cut a stage in two after `at_min` minutes. The second half keeps the end; what goes in later goes in there.

    A change of temperature keeps its pace. Raises RecipeError for a kind that can't be cut (a cut, a wash, ...).
    """
    lane, index = _lane_of(recipe, stage_id)
    stage, where = lane.stages[index], _where(lane, index)
    if stage.kind in _ONCE:
        raise RecipeError(
            say("“{label}” can't be cut in two: what it does would be done twice", label=word(stage.LABEL, "stage")),
            where,
        )
    if not 0.5 <= at_min <= stage.end.planned_min - 0.5:
        raise RecipeError(
            say("a stage of {planned_min} can't be cut there", planned_min=show(stage.end.planned_min, "duration")),
            where,
        )
    new_id = free_id(recipe, stage_id)
    first, second = checked(lambda: _split_settings(recipe, stage, at_min, where), type(stage), where)
    halves = (_changed(stage, where, **first), _changed(stage, where, **second, id=new_id))
    changes: dict[str, Any] = {"stages": (*lane.stages[:index], *halves, *lane.stages[index + 1 :])}
    for field in ("starters", "additions"):
        changes[field] = tuple(_given_later(each, stage_id, new_id, at_min) for each in getattr(lane, field))
    return _with_lane(recipe, lane, **changes)


Halves = tuple[dict[str, Any], dict[str, Any]]


def _split_settings(recipe: Recipe, stage: Stage, at_min: float, where: str) -> Halves:
    """What changes in the first and in the second half."""
    first: dict[str, Any] = {"end": after(at_min)}
    second: dict[str, Any] = {"end": _later(stage.end, at_min)}
    if isinstance(stage, Press):
        first["steps"], second["steps"] = _split_steps(stage.steps, at_min)
    elif isinstance(stage, VatStage) and stage.temperature_c is not None:
        for half, settings in zip((first, second), _split_ramp(recipe, stage, at_min, where), strict=True):
            half.update(settings)
    return first, second


def _later(end: End, minutes: float) -> End:
    """The same end for what is left after some minutes."""
    if not end.is_state:
        return end.but(length_min=end.planned_min - minutes)
    earliest = None if end.earliest_min is None or end.earliest_min <= minutes else end.earliest_min - minutes
    return end.but(latest_min=end.planned_min - minutes, earliest_min=earliest)


def _split_steps(steps: tuple[PressStep, ...], at_min: float) -> tuple[tuple[PressStep, ...], tuple[PressStep, ...]]:
    first, second, start = [], [], 0.0
    for step in steps:
        before = min(max(at_min - start, 0.0), step.length_min)
        if before > 0.0:
            first.append(step.but(length_min=before))
        if before < step.length_min:
            second.append(step.but(length_min=step.length_min - before))
        start += step.length_min
    return tuple(first), tuple(second)


def _split_ramp(recipe: Recipe, stage: VatStage, at_min: float, where: str) -> Halves:
    """Temperature settings of the two halves, so that the line stays the same."""
    assert stage.temperature_c is not None
    ramp = stage.end.planned_min if stage.ramp_min is None else stage.ramp_min
    if at_min >= ramp:
        return {}, {"temperature_c": None, "ramp_min": None}
    start = temperatures_before(recipe, blend(recipe).temperature_c)[stage.id]
    if math.isnan(start):
        raise RecipeError(
            say("the temperature it starts from follows the room, so its change can't be cut in two"), where
        )
    middle = start + (stage.temperature_c - start) * at_min / ramp
    return {"temperature_c": middle, "ramp_min": None}, {"ramp_min": ramp - at_min}


def _given_later(each: G, stage_id: str, new_id: str, at_min: float) -> G:
    if each.at != stage_id or each.after_min < at_min:
        return each
    return each.but(at=new_id, after_min=each.after_min - at_min)
