"""A recipe moved to goat, sheep, buffalo, cow or a blend: what shifts, and the change that keeps the cheese.

Rennet goes so that the milk flocculates as before; cut and cook go by the least change that
brings moisture in non-fat substance back; forms are as many as the curd now fills. Fat in dry matter hangs on the milk
and is offered, not done. Every line says why and where that is from.
"""

from __future__ import annotations

import tomllib
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace
from functools import cache
from importlib.resources import files
from typing import Any

from designer.forecast import Forecast, forecast
from designer.judge.movable import Movable, movables, moved
from designer.language import headed, say, word
from designer.make.constants import table
from designer.recipe.another_milk import with_milk
from designer.recipe.document import Addition, Form, Recipe, Species
from designer.recipe.edit import edit, edit_addition, edit_form
from designer.recipe.error import RecipeError
from designer.recipe.lower import geometry
from designer.recipe.milk import blend
from designer.recipe.stages.cook import Cook
from designer.recipe.stages.wash import Wash
from designer.recipe.standardise import Offer, Target, offers
from designer.units import System, show

MNFS_NEAR = 0.5
CUT_SHARE, HEAT_C, WATER_C = 0.4, 3.0, 15.0
"""How far the cut (as a share of itself), the cook and wash water may go to bring the moisture back."""
DOSE_TRIES, FLOC_NEAR_MIN = 6, 0.05


@dataclass(frozen=True, slots=True)
class Shift:
    """One change proposed: what, before and after as text, why, and where the reason is from."""

    what: str
    before: str
    after: str
    why: str
    source: str
    have: str

    @property
    def sentence(self) -> str:
        """ "rennet: 20 mL → 16 mL (goat milk ...)"."""
        return headed(self.what, f"{self.before} → {self.after} ({self.why})")


@dataclass(frozen=True, slots=True)
class Note:
    """Something to know of the milk, with its source."""

    text: str
    source: str
    have: str


@dataclass(frozen=True, slots=True)
class Moved:
    """The proposal: `recipe` is the recipe with all its shifts, `milk_only` with the milk alone; and their forecasts.

    `milk` are ways to bring protein to fat back to what it was, none of them done. `reached` is False where the
    moisture could not be brought back.
    """

    recipe: Recipe
    milk_only: Recipe
    before: Forecast
    with_milk: Forecast
    after: Forecast
    shifts: tuple[Shift, ...]
    notes: tuple[Note, ...]
    milk: tuple[Offer, ...]
    reached: bool


def move_to(
    recipe: Recipe, species: Species, *, breed: str = "", share_pct: float = 100.0, system: System = "metric"
) -> Moved:
    """What moving a recipe to another milk asks for, as a changed recipe with reasons. Raises RecipeError."""
    before = forecast(recipe)
    milk_only = with_milk(recipe, species, breed=breed, share_pct=share_pct)
    alone = forecast(milk_only)
    shifts: list[Shift] = []
    changed = milk_only
    for dose in _coagulants(milk_only):
        changed, shift = _rennet(changed, dose, before, alone, species, system)
        shifts += shift
    changed, reached, own = _moisture(changed, before, system)
    shifts += own
    changed, own = _forms(changed, before, forecast(changed))
    shifts += own
    milk = blend(recipe)
    return Moved(
        changed, milk_only, before, alone, forecast(changed), tuple(shifts), _notes(species),
        offers(changed, Target.within(milk.protein / milk.fat)), reached,
    )  # fmt: skip


def _coagulants(recipe: Recipe) -> Iterator[Addition]:
    kinds = {stage.id: stage.kind for stage in recipe.stages}
    return (each for each in recipe.additions if each.what == "coagulant" and kinds[each.at] == "set")


def _rennet(
    recipe: Recipe, dose: Addition, before: Forecast, alone: Forecast, species: Species, system: System
) -> tuple[Recipe, list[Shift]]:
    """The dose at which the milk flocculates as the old one did."""
    if "floc_min" not in before.outcomes or "floc_min" not in alone.outcomes:
        return recipe, []
    wanted, there = before.outcomes["floc_min"].value, alone.outcomes["floc_min"].value
    if abs(there - wanted) < 0.3:
        return recipe, []
    field = next(name for name in ("volume_l", "mass_kg", "mass_pct") if getattr(dose, name) is not None)
    value = first = float(getattr(dose, field))
    lag = float(table()["floc_lag_min"].value)  # type: ignore[arg-type]
    for _ in range(DOSE_TRIES):
        # Beyond its lag the time goes with one over the dose.
        value *= (there - lag) / (wanted - lag) if wanted > lag else 1.0
        recipe = edit_addition(recipe, dose.id, **{field: float(f"{value:.3g}")})
        there = forecast(recipe).outcomes["floc_min"].value
        if abs(there - wanted) < FLOC_NEAR_MIN:
            break
    row = table()[f"floc_{species}"]
    relative = _clots(recipe) / _clots(before.recipe)
    why = say(
        "this milk clots in {relative:.2f} of the time of the one before; the same dose would "
        "flocculate in {value:.1f} instead of {wanted:.1f} min",
        relative=relative,
        value=alone.outcomes["floc_min"].value,
        wanted=wanted,
    )
    kind = {"volume_l": "volume", "mass_kg": "small_mass", "mass_pct": "percent"}[field]
    said = [show(one, kind, system=system) for one in (first, float(f"{value:.3g}"))]
    return recipe, [Shift(dose.name or say("coagulant"), said[0], said[1], why, row.source, row.have)]


def _clots(recipe: Recipe) -> float:
    """Clotting time of the milk relative to cow milk, at the same dose."""
    milk = blend(recipe)
    shares = milk.shares or ((milk.species, 1.0),)
    times = [(share, table()[f"floc_{species}"].value) for species, share in shares]
    return sum(share * time for share, time in times if isinstance(time, float))


def _moisture(recipe: Recipe, before: Forecast, system: System) -> tuple[Recipe, bool, list[Shift]]:
    """The cut, and where that is not enough the heat, moved as little as brings moisture in non-fat substance back."""
    target = before.outcomes["mnfs_pct"].value
    here = forecast(recipe).outcomes["mnfs_pct"].value
    if abs(here - target) <= MNFS_NEAR:
        return recipe, True, []
    why = say(
        "else the cheese would be {which}, {here:.1f} % moisture in non-fat substance instead of {target:.1f}",
        which=say("moister") if here > target else say("drier"),
        here=here,
        target=target,
    )
    shifts = []
    every = {one.path: one for one in movables(recipe)}
    for path, furthest, law in _levers(recipe):
        setting = every[path]
        away = here - target
        while abs(away) > MNFS_NEAR:
            ends = every[path].value - furthest, every[path].value + furthest
            tries = [_stepped(recipe, setting, way, ends, target) for way in (-1.0, 1.0)]
            best = min((one for one in tries if one is not None), key=lambda one: abs(one[2]), default=None)
            if best is None or abs(best[2]) >= abs(away):
                break
            recipe, setting, away = best
        here = target + away
        if setting.value != every[path].value:
            row = table()[law]
            said = every[path].shown(system=system), setting.shown(system=system)
            shifts.append(Shift(setting.title, said[0], said[1], why, row.source, row.have))
    return recipe, abs(here - target) <= MNFS_NEAR, shifts


def _levers(recipe: Recipe) -> Iterator[tuple[tuple[str, str], float, str]]:
    """Path of a setting, how far it may go in all, and the law behind it: the cut, then the heat."""
    for stage in recipe.stages:
        if stage.kind in ("cut", "ladle"):
            yield (stage.id, "cut_mm"), CUT_SHARE * float(getattr(stage, "cut_mm", 0.0)), "syneresis_size"
            break
    hot = [(stage.id, "temperature_c") for stage in recipe.stages if isinstance(stage, Cook) and stage.temperature_c]
    hot += [(stage.id, "water_c") for stage in recipe.stages if isinstance(stage, Wash)]
    if hot:
        yield hot[-1], HEAT_C if hot[-1][1] == "temperature_c" else WATER_C, "syneresis_ea"


def _stepped(
    recipe: Recipe, setting: Movable, way: float, ends: tuple[float, float], target: float
) -> tuple[Recipe, Movable, float] | None:
    """One natural step of a setting, and how far the moisture then lies; None where it can't go there."""
    value = setting.value + way * (0.5 * setting.step if setting.kind == "length" else setting.step)
    if not max(setting.low, ends[0]) <= value <= min(setting.high, ends[1]):
        return None
    try:
        changed = moved(recipe, setting, value)
    except RecipeError:
        return None
    away = forecast(changed).outcomes["mnfs_pct"].value - target
    return changed, replace(setting, value=value), away


def _forms(recipe: Recipe, before: Forecast, after: Forecast) -> tuple[Recipe, list[Shift]]:
    """As many forms as the curd fills now, each as full as before."""
    form = recipe.form
    if form is None:
        return recipe, []
    ratio = after.outcomes["cheese_kg"].value / before.outcomes["cheese_kg"].value
    count = max(1, round(form.count * ratio))
    if count == form.count and abs(ratio - 1.0) < 0.03:
        return recipe, []
    height = round(form.height_mm * form.count * ratio / count, 1)
    changed = edit_form(recipe, count=count, height_mm=height)
    why = say(
        "{value:.2f} kg of cheese instead of {value2:.2f}",
        value=after.outcomes["cheese_kg"].value,
        value2=before.outcomes["cheese_kg"].value,
    )
    said = [f"{one} × {show(tall, 'length')}" for one, tall in ((form.count, form.height_mm), (count, height))]
    shifts = [Shift(say("forms"), said[0], said[1], why, say("balance of the forecast"), "derived")]
    return _brining(changed, form, shifts)


def _brining(recipe: Recipe, form: Form, shifts: list[Shift]) -> tuple[Recipe, list[Shift]]:
    """Time in brine by the square of the thickness, where the cheeses have become thicker or thinner."""
    assert recipe.form is not None
    thick = [min(one.height_mm, 2.0 * one.radius_mm) for one in (geometry(form), geometry(recipe.form))]
    for stage in recipe.stages:
        if stage.kind == "brine":
            first = stage.end.planned_min
            now = round(first * (thick[1] / thick[0]) ** 2)
            recipe = edit(recipe, stage.id, end=stage.end.but(length_min=now))
            why = say(
                "{thick:.0f} to {thick2:.0f} mm thick: salt goes in by the square of it",
                thick=thick[0],
                thick2=thick[1],
            )
            row = table()["brine_d_12c"]
            said = show(first, "duration"), show(now, "duration")
            shifts.append(Shift(stage.title, said[0], said[1], why, row.source, row.have))
    return recipe, shifts


@cache
def _texts() -> Mapping[str, Any]:
    return tomllib.loads(files("designer.judge").joinpath("another_milk.toml").read_text(encoding="utf-8"))


def _notes(species: Species) -> tuple[Note, ...]:
    return tuple(Note(word(one["text"], "caution"), one["source"], one["have"]) for one in _texts()[species]["notes"])
