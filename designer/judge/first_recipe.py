"""A first recipe for a milk in a style: drawn from the nearest example, then brought to the style."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import replace
from functools import cache

from designer.forecast import forecast
from designer.judge.check import least_age_days
from designer.judge.meet import AT_ALL, AT_LIMITS, Met, meet
from designer.judge.moments import AGEING
from designer.judge.movable import moved, stages_before
from designer.judge.style_stages import SETS, between, sets_slowly, with_stages
from designer.judge.windows import ranged
from designer.language import either, joined, say
from designer.make.caution import limit
from designer.recipe.document import Branch, MilkSource, Recipe
from designer.recipe.edit import edit, edit_end, edit_recipe, insert, new_stage
from designer.recipe.end import End
from designer.recipe.error import RecipeError
from designer.recipe.examples import examples
from designer.recipe.field import choice
from designer.recipe.file import read
from designer.recipe.lower import given_at
from designer.recipe.milk import blend
from designer.recipe.scale import scale
from designer.recipe.stages.room import Room
from designer.recipe.stages.stage import VatStage
from designer.recipe.standardise import Offer, offers, usual_target
from designer.units import DAY_MIN
from styles.reader import Style
from styles.reader import style as read_style

EXAMPLE, MIDDLE = "example", "middle"
STEPS = (EXAMPLE, MIDDLE, AT_ALL, AT_LIMITS)
"""What it takes: the nearest example, set to the middle of the ranges, and the steps of `meet`."""
WAIT_FOR_ACID_MIN = 480.0
"""Curd to be stretched waits no longer than this for its acid."""


def first_recipe(
    milks: Sequence[MilkSource],
    style: str,
    *,
    name: str = "",
    begins: Callable[[str], object] = lambda step: None,
) -> Met:
    """A first recipe for a milk in a style: the nearest example, its settings at the middle of the style's ranges.

    Doses, forms and loads are scaled to the milk; then the recipe is brought to the style (`meet`). `notes` say where
    it comes from, what to look at, and how the milk would be standardised; `begins` is told before each of STEPS, as in
    `meet`. Raises RecipeError, StyleError.
    """
    if not milks:
        raise RecipeError(say("a first recipe needs a milk"))
    begins(EXAMPLE)
    of = read_style(style)
    example = max(example_recipes(), key=lambda one: _likeness(one, of))
    scaled = scale(example, _litres(edit_recipe(example, milks=tuple(milks)))).recipe
    recipe = edit_recipe(
        scaled, milks=tuple(milks), style=style, name=name or say("First {name}", name=of.title),
        maker="", place="", notes="",
    )  # fmt: skip
    restaged: list[str] = []
    if example.style != style:
        recipe, restaged = _staged_as(recipe, of)
    begins(MIDDLE)
    for one in ranged(recipe, of):
        try:
            recipe = moved(recipe, one.setting, one.middle)
        except RecipeError:  # bound to another figure of its stage: it stays as in the example
            continue
    met = meet(_kept(_set_as_usual(recipe, of), of), of, begins=begins)
    target = usual_target(style)
    ways = met.milk or (() if target is None else offers(met.recipe, target))
    return replace(met, milk=ways, notes=tuple(_notes(of, example, milks, restaged, met, ways)))


def _notes(
    style: Style, example: Recipe, milks: Sequence[MilkSource], restaged: Sequence[str], met: Met,
    ways: Sequence[Offer],
) -> Iterator[str]:  # fmt: skip
    """Where a first recipe comes from, what to look at, and how its milk would be standardised."""
    yield say(
        "Drawn from the example “{name}”, its settings at the middle of the usual ranges of {name2}.",
        name=example.name, name2=style.title,
    )  # fmt: skip
    if example.style != style.key:
        yield say("There is no example of {name}; look at every stage before you trust it.", name=style.title)
    if restaged:
        yield say("As {name} asks for it: {stages}.", name=style.title, stages=joined(restaged))
    strangers = sorted({milk.species for milk in milks} - set(style.milk)) if style.milk else []
    if strangers:
        yield say(
            "{name} is not usually made of {strangers} milk.",
            name=style.title, strangers=either(choice(one) for one in strangers),
        )  # fmt: skip
    yield from met.made.notes  # where a law says that this milk does not do as the example's
    for way in ways:
        yield say("To standardise: {sentence}", sentence=way.sentence)


def _staged_as(recipe: Recipe, style: Style) -> tuple[Recipe, list[str]]:
    """The recipe with the stages the style asks for and without those it has not, and that in words; how it sets is
    the example's. Only for curd worked hot, which nothing else makes up for: other stages balance each other."""
    missing, extra = (tuple(kind for kind in kinds if kind not in SETS) for kinds in between(recipe, style))
    if not {"stretch", "scald"} & set(missing):
        return recipe, []
    restaged, said, _ = with_stages(recipe, missing, extra)
    sour, drained = _narrowest(style, "ph_stretch"), [stage for stage in restaged.stages if stage.kind == "drain"]
    if "stretch" in missing and sour is not None and drained and "stack" not in (one.kind for one in restaged.stages):
        until = End(by="ph", value=round(sum(sour) / 2.0, 2), of="curd", latest_min=WAIT_FOR_ACID_MIN)
        wait = new_stage(restaged, "stack", end=until)
        restaged = insert(restaged, wait, after_id=drained[-1].id)
        said.append(say("{title} after {title2}", title=wait.title, title2=drained[-1].title))
    return restaged, said


def _set_as_usual(recipe: Recipe, style: Style) -> Recipe:
    """Milk that is set as warm as it has become: made so warm before, where the style's ripening allows it."""
    spans = {key: _narrowest(style, key) for key in ("ripen_c", "set_c")}
    here = next((k for k, stage in enumerate(recipe.stages) if stage.kind in ("set", "lactic_set")), 0)
    warmed = [
        (stage, stage.temperature_c)
        for stage in recipe.stages[: here + 1]
        if isinstance(stage, VatStage) and stage.temperature_c is not None
    ]
    if not warmed or spans["set_c"] is None or warmed[-1][0] is recipe.stages[here]:
        return recipe
    last, now_c = warmed[-1]
    wanted = _inside(now_c, spans["set_c"])
    if last.kind == "ripen" and spans["ripen_c"] is not None and _inside(wanted, spans["ripen_c"]) != wanted:
        return recipe
    return edit(recipe, last.id, temperature_c=wanted)


def _narrowest(style: Style, key: str) -> tuple[float, float] | None:
    spans = [(one.low, one.high) for one in style.windows_of(key) if one.low is not None and one.high is not None]
    return min(spans, key=lambda span: span[1] - span[0], default=None)


def _inside(value: float, span: tuple[float | None, float | None]) -> float:
    low, high = span
    value = value if low is None else max(value, low)
    return value if high is None else min(value, high)


def _kept(recipe: Recipe, style: Style) -> Recipe:
    """Rooms as the style has them, each the nearest in temperature, and as long in the last as its rules ask."""
    rooms = [stage for stage in recipe.stages if isinstance(stage, Room)]
    for stage in rooms:
        now_c = recipe.room_c if stage.room_c is None else stage.room_c
        known = [room for room in style.room if room.temp_c is not None]
        if known:
            room = min(known, key=lambda one: abs(_inside(now_c, one.temp_c or (None, None)) - now_c))
            moist = _inside(stage.humidity_pct, room.rh_pct or (None, None))
            recipe = edit(recipe, stage.id, room_c=_inside(now_c, room.temp_c or (None, None)), humidity_pct=moist)
    aged = sum(stage.end.planned_min for stage in recipe.stages if stage.kind in AGEING) / DAY_MIN
    if rooms and aged < (least := least_age_days(recipe, style)) and rooms[-1].end.by == "time":
        longer = rooms[-1].end.planned_min + (least - aged) * DAY_MIN
        recipe = edit_end(recipe, rooms[-1].id, length_min=longer)
    return recipe


def _litres(recipe: Recipe) -> float:
    milk = blend(recipe)
    return milk.mass_kg / milk.density_kg_l


@cache
def example_recipes() -> tuple[Recipe, ...]:
    """The shipped examples, read; each cheese of a parted vat by itself."""
    every = [read(path) for path in examples()]
    parted = [_alone(one, branch) for one in every for branch in one.branches if branch.style]
    return (*(edit_recipe(one, branches=()) for one in every), *parted)


def _alone(recipe: Recipe, branch: Branch) -> Recipe:
    """The cheese of a branch as a recipe: of curd with the make before it, of whey as if it were milk."""
    shared = stages_before(recipe, branch) if branch.of == "curd" else ()
    ids = {each.id for stage in shared for each in given_at(recipe, stage)}
    held_kg = next(lane.weight for lane in forecast(recipe).lanes if lane.branch_id == branch.id)
    litres = _litres(recipe) * held_kg
    milks = tuple(
        milk.but(volume_l=_litres_of(recipe, milk.id) / _litres(recipe) * litres, mass_kg=None) for milk in recipe.milks
    )
    return edit_recipe(
        recipe,
        name=f"{recipe.name}, {branch.name or branch.id}",
        style=branch.style,
        milks=milks,
        starters=(*(one for one in recipe.starters if one.id in ids), *branch.starters),
        additions=(*(one for one in recipe.additions if one.id in ids), *branch.additions),
        form=branch.form or recipe.form,
        coat=branch.coat,
        stages=(*shared, *branch.stages),
        branches=(),
    )


def _litres_of(recipe: Recipe, milk_id: str) -> float:
    return _litres(edit_recipe(recipe, branches=(), milks=tuple(one for one in recipe.milks if one.id == milk_id)))


def _likeness(example: Recipe, style: Style) -> tuple[bool, bool, bool, int, int]:
    """How near an example lies: the style itself; the gel, by acid and heat, by acid, by rennet; words of its family,
    settings it speaks of."""
    hot = any((one.low or 0.0) >= limit("thermised_c").value for one in style.windows_of("set_c"))
    kinds = {stage.kind for stage in example.stages}
    own = read_style(example.style).family if example.style else ""
    words = _words(own) & _words(style.family)
    return (
        example.style == style.key,
        hot == ("acid_heat" in kinds),
        sets_slowly(style) == ("lactic_set" in kinds),
        len(words),
        len(ranged(example, style)),
    )


def _words(family: str) -> set[str]:
    return set(family.replace(",", " ").split()) - {"and", "the", "in", "or", "a"}
