"""Every figure of a recipe that a maker can move: doses, times, temperatures, sizes, loads, the milk itself.

Levers, aim and explain speak of a recipe in these. What is a fact of the bottle or the pack (strength, potency), the
heat treatment, and what happens after the first room are not among them.
"""

from __future__ import annotations

import math
from collections.abc import Collection, Iterator, Mapping
from dataclasses import dataclass, replace
from typing import Any, Literal

from designer.language import headed, say
from designer.recipe.document import Addition, Branch, Form, MilkSource, Recipe, Starter
from designer.recipe.edit import edit, edit_addition, edit_branch, edit_form, edit_milk, edit_recipe, edit_starter
from designer.recipe.end import END_VALUE_KIND, END_VALUE_RANGE, End
from designer.recipe.field import FieldMeta, Model, choice, field_meta, field_metas
from designer.recipe.lower import given_at
from designer.recipe.milk import source_milk
from designer.recipe.reading import checked
from designer.recipe.stages.press import Press, PressStep
from designer.recipe.stages.stage import Stage, VatStage
from designer.units import System, show

Of = Literal["recipe", "milk", "starter", "addition", "form", "stage", "branch"]

MILK_FIELDS = (
    "volume_l", "mass_kg", "fat_pct", "protein_pct", "casein_pct", "lactose_pct", "ph", "temperature_c", "age_h",
)  # fmt: skip
STARTER_FIELDS = ("bulk_pct", "mass_kg", "cells_per_ml", "units", "acidity_pct", "after_min")
ADDITION_FIELDS = ("mass_kg", "volume_l", "mass_pct", "after_min")
FORM_FIELDS = ("diameter_mm", "length_mm", "width_mm", "height_mm", "follower_diameter_mm", "lever")
FOR_THE_PLAN = frozenset(("turn_min",))
"""Stage fields that say how the work is done and reach no law."""
_MODELS: Mapping[str, type[Model]] = {"milk": MilkSource, "starter": Starter, "addition": Addition, "form": Form}
_WORKING = frozenset(("coagulant", "calcium_chloride", "acid", "salt"))
_DIFFERENCES = {"temperature": "temperature_difference"}


@dataclass(frozen=True, slots=True)
class Movable:
    """One figure that can be moved. `where` is the id of its stage, milk or dose ("form"; "" for the recipe itself).

    `field` is a field of that part, "end.value", "end.length_min" or "steps.2.load_kg". `step`, `low`, `high` and
    `value` are in the base unit of `kind`; `owner` names the part as the maker does. `branch` is the id of the branch
    it is of (None: of the main make), whose id also stands for its form and share.
    """

    of: Of
    where: str
    field: str
    owner: str
    label: str
    kind: str
    step: float
    low: float
    high: float
    value: float
    branch: str | None = None

    @property
    def path(self) -> tuple[str, str]:
        """What tells it from every other of the recipe."""
        return self.where, self.field

    @property
    def title(self) -> str:
        """ "cook: temperature"."""
        return headed(self.owner, self.label) if self.owner else self.label

    def shown(self, value: float | None = None, system: System = "metric") -> str:
        """A value of it (its own by default) with unit."""
        return show(self.value if value is None else value, self.kind, system=system)

    def shown_change(self, change: float, system: System = "metric") -> str:
        """A change with its sign: "+0.5 °C"."""
        text = show(abs(change), _DIFFERENCES.get(self.kind, self.kind), system=system)
        return f"{'+' if change >= 0.0 else '−'}{text}"


def movables(recipe: Recipe, branch: str | None = None) -> tuple[Movable, ...]:
    """Everything of the main make that can be moved; or what moves a branch: its own, and what was before it parted.

    In the order of the document. KeyError for a branch that is not there.
    """
    if branch is None:
        return (
            *_of_the_room(recipe),
            *_of_doses(recipe.starters, recipe.additions),
            *_of_form(recipe),
            *(one for stage in made_stages(recipe) for one in _of_stage(stage)),
            *map(_share, recipe.branches),
        )
    own = recipe.branch(branch)
    shared = stages_before(recipe, own)
    given = {each.id for stage in shared for each in given_at(recipe, stage)}
    before = (
        *_of_the_room(recipe),
        *(one for one in _of_doses(recipe.starters, recipe.additions) if one.where in given),
        *(_of_form(recipe) if own.form is None else ()),
        *(one for stage in shared for one in _of_stage(stage)),
        *(_share(other) for other in recipe.branches if other.after in {stage.id for stage in shared}),
    )
    owners = {one.owner for one in before}
    return (*before, *(_named_apart(own, one, owners) for one in _of_own(own)))


def stages_before(recipe: Recipe, branch: Branch) -> tuple[Stage, ...]:
    """Stages of the main make that a branch has come through when it parts."""
    made = tuple(made_stages(recipe))
    after = next((index for index, stage in enumerate(made) if stage.id == branch.after), len(made) - 1)
    return made[: after + 1]


def _of_the_room(recipe: Recipe) -> Iterator[Movable]:
    room = field_meta(Recipe, "room_c")
    yield _movable("recipe", "", "room_c", "", say("make room"), room, recipe.room_c)
    for source in recipe.milks:
        yield from _of_milk(source, len(recipe.milks) > 1)


def _of_doses(starters: tuple[Starter, ...], additions: tuple[Addition, ...]) -> Iterator[Movable]:
    for starter in starters:
        owner = starter.name or say("{kind} starter", kind=choice(starter.kind))
        yield from _of_part("starter", starter, owner, STARTER_FIELDS, dose=True)
    for addition in additions:
        if addition.what in _WORKING:
            owner = addition.name or choice(addition.what)
            yield from _of_part("addition", addition, owner, ADDITION_FIELDS, dose=True)


def _of_form(lane: Recipe | Branch) -> Iterator[Movable]:
    if lane.form is not None:
        yield from _of_part("form", lane.form, say("form"), FORM_FIELDS)


def _share(branch: Branch) -> Movable:
    meta = field_meta(Branch, "share_pct")
    found = _movable("branch", branch.id, "share_pct", branch.name or branch.id, meta.label, meta, branch.share_pct)
    return replace(found, branch=branch.id)


def _of_own(branch: Branch) -> Iterator[Movable]:
    yield from _of_doses(branch.starters, branch.additions)
    for one in _of_form(branch):
        yield replace(one, where=branch.id)
    for stage in made_stages(branch):
        yield from _of_stage(stage)


def _named_apart(branch: Branch, one: Movable, taken: Collection[str]) -> Movable:
    """With the name of the branch where the main make has a part of the same name."""
    owner = headed(branch.name or branch.id, one.owner) if one.owner in taken else one.owner
    return replace(one, owner=owner, branch=branch.id)


def made_stages(lane: Recipe | Branch) -> Iterator[Stage]:
    """Stages of the main make, or of a branch, up to the first room, where it ends."""
    for stage in lane.stages:
        if stage.kind == "room":
            return
        yield stage


def _movable(of: Of, where: str, field: str, owner: str, label: str, meta: FieldMeta, value: float) -> Movable:
    low = -math.inf if meta.low is None else meta.low
    high = math.inf if meta.high is None else meta.high
    if label == meta.name.replace("_", " "):  # no label of its own: the word of the file, without a unit
        label = meta.key.replace("_", " ")
    return Movable(of, where, field, owner, label, meta.kind, natural_step(meta, value), low, high, value)


# What grows with the thing itself: an hour more or less for a night, 5 kg for a heavy press.
_GROWS: Mapping[str, tuple[float, ...]] = {
    "duration": (5.0, 10.0, 15.0, 30.0, 60.0, 120.0, 240.0, 720.0, 1440.0),
    "mass": (0.5, 1.0, 2.0, 5.0, 10.0, 20.0, 50.0, 100.0),
    "volume": (0.5, 1.0, 2.0, 5.0, 10.0, 20.0, 50.0, 100.0),
    "pressure": (1.0, 2.0, 5.0, 10.0),
}


def natural_step(meta: FieldMeta, value: float) -> float:
    """The step of the field; of a long time, a heavy load or a large vat a natural part of about a twelfth."""
    larger = [step for step in _GROWS.get(meta.kind, ()) if meta.step <= step <= value / 12.0]
    return max(larger, default=meta.step)


def _of_part(of: Of, part: Any, owner: str, fields: tuple[str, ...], *, dose: bool = False) -> Iterator[Movable]:
    where = "form" if of == "form" else part.id
    for name in fields:
        value, meta = getattr(part, name), field_meta(_MODELS[of], name)
        if value is None or (name == "after_min" and value == 0.0):
            continue
        label = {
            "after_min": say("goes in after"),
            "bulk_pct": say("dose"),
            "mass_kg": say("dose"),
            "volume_l": say("dose"),
        }.get(name)
        found = _movable(of, where, name, owner, label or meta.label, meta, value)
        yield _fine(found) if dose and name != "after_min" else found


def _fine(one: Movable) -> Movable:
    """A dose moves by a natural part of itself: a step no longer than a quarter of it, from 1, 2, 5, 10, ..."""
    if one.value <= 0.0 or one.step <= one.value / 4.0:
        return one
    most = one.value / 4.0
    power = 10.0 ** math.floor(math.log10(most))
    step = max(part * power for part in (1.0, 2.0, 5.0) if part * power <= most * (1.0 + 1e-9))
    return replace(one, step=step)


def _of_milk(source: MilkSource, several: bool) -> Iterator[Movable]:
    milk = source_milk(source)
    holds = {
        "volume_l": source.volume_l,
        "mass_kg": source.mass_kg,
        "fat_pct": milk.fat / 10.0,
        "protein_pct": (milk.casein + milk.whey_protein) / 10.0,
        "casein_pct": source.casein_pct,
        "lactose_pct": milk.lactose / 10.0,
        "ph": milk.ph,
        "temperature_c": milk.temperature_c,
        "age_h": source.age_h,
    }
    owner = (source.name or source.id) if several else "milk"
    for name in MILK_FIELDS:
        value = holds[name]
        if value is not None:
            meta = field_meta(MilkSource, name)
            yield _movable("milk", source.id, name, owner, meta.label, meta, value)


def _of_stage(stage: Stage) -> Iterator[Movable]:
    for meta in field_metas(type(stage)):
        value = getattr(stage, meta.name)
        if meta.shape != "quantity" or value is None or meta.name in FOR_THE_PLAN:
            continue
        if meta.name == "ramp_min" and ramp_is_stage(stage):
            continue
        yield _movable("stage", stage.id, meta.name, stage.title, meta.label, meta, value)
    if isinstance(stage, Press):
        yield from _of_steps(stage)
    yield from _of_end(stage)


def _of_steps(stage: Press) -> Iterator[Movable]:
    many = len(stage.steps) > 1
    for index, step in enumerate(stage.steps):
        for meta in field_metas(type(step)):
            value = getattr(step, meta.name)
            if value is not None:
                label = say("{label} of step {index}", label=meta.label, index=index + 1) if many else meta.label
                yield _movable("stage", stage.id, f"steps.{index}.{meta.name}", stage.title, label, meta, value)


def _of_end(stage: Stage) -> Iterator[Movable]:
    end = stage.end
    if end.is_state:
        assert end.value is not None
        low, high, step = END_VALUE_RANGE[end.by]
        what = {"ph": "pH", "floc_multiple": say("multiple of flocculation"), "whey_off": say("whey run off")}.get(
            end.by, choice(end.by)
        )
        label = say("ends at {what}", what=what) + (say(" of the {of}", of=choice(end.of)) if end.of else "")
        kind = END_VALUE_KIND[end.by]
        yield Movable("stage", stage.id, "end.value", stage.title, label, kind, step, low, high, end.value)
    elif not isinstance(stage, Press):  # there the steps hold the length
        meta = field_meta(End, "length_min")
        assert end.length_min is not None
        yield _movable("stage", stage.id, "end.length_min", stage.title, meta.label, meta, end.length_min)


def ramp_is_stage(stage: Stage) -> bool:
    """True where the change of temperature takes the whole stage, so that the two lengths are one."""
    return isinstance(stage, VatStage) and stage.ramp_min is not None and stage.ramp_min >= stage.end.planned_min - 1e-9


def changes(part: Model, field: str, value: float) -> dict[str, Any]:
    """Field changes of a part that move one figure to a value; ValueError where end or press step can't take it."""
    name, _, rest = field.partition(".")
    if name == "steps":
        assert isinstance(part, Press)
        index, _, inner = rest.partition(".")
        steps = list(part.steps)
        steps[int(index)] = PressStep.model_validate(dict(steps[int(index)]) | {inner: value})
        return {"steps": tuple(steps)}
    if name == "end":
        assert isinstance(part, Stage)
        moved: dict[str, Any] = {"end": End.model_validate(dict(part.end) | {rest: value})}
        if rest == "length_min" and ramp_is_stage(part):
            moved["ramp_min"] = value
        return moved
    return {field: value}


def moved(recipe: Recipe, one: Movable, value: float) -> Recipe:
    """The recipe with one figure at a value. Raises RecipeError where that can't be."""
    match one.of:
        case "recipe":
            return edit_recipe(recipe, **{one.field: value})
        case "milk":
            return edit_milk(recipe, one.where, **{one.field: value})
        case "starter":
            return edit_starter(recipe, one.where, **{one.field: value})
        case "addition":
            return edit_addition(recipe, one.where, **{one.field: value})
        case "form":
            return edit_form(recipe, one.branch, **{one.field: value})
        case "branch":
            return edit_branch(recipe, one.where, **{one.field: value})
    stage = recipe.stage(one.where)
    fields = checked(lambda: changes(stage, one.field, value), type(stage), one.title)
    return edit(recipe, one.where, **fields)
