"""Meeting a style: a recipe brought inside its limits and usual ranges, and a first recipe for a milk in a style.

Settings outside their usual range come back to its nearest end, then aim does the rest. What hangs on the milk is not
done unasked: it is offered as skim or cream.
"""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterator, Sequence
from dataclasses import dataclass, replace
from functools import cache

from designer.forecast import Forecast, forecast
from designer.judge.aim import Change, InTheWay, Wanted, aim
from designer.judge.check import check, least_age_days
from designer.judge.freedom import acid_guards
from designer.judge.limits import NEAR_ELSE, NEAR_POINTS
from designer.judge.moments import AGEING, DAY_MIN
from designer.judge.movable import movables, moved, stages_before
from designer.judge.style_stages import SETS, between, with_stages
from designer.judge.verdict import LIMIT, MET, NOT_MET
from designer.judge.windows import ranged
from designer.judge.words import lowered
from designer.language import either, headed, joined, say
from designer.make.caution import limit
from designer.quantities import QUANTITIES
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
from designer.recipe.standardise import Offer, Target, offers, usual_target
from styles.reader import Style
from styles.reader import style as read_style

_OF_THE_MILK = ("fdm_pct", "fat_pct")
RATIOS = (0.3, 5.0)
STEPS = ("example", "middle", "aim", "limits")
"""What a first recipe takes: the nearest example, set to the middle of the ranges, aimed at all, or at the limits."""
WAIT_FOR_ACID_MIN = 480.0
"""Curd to be stretched waits no longer than this for its acid."""
LACTIC_SET_MIN = 300.0
"""A gel that takes longer from rennet to cut is an acid gel."""


@dataclass(frozen=True, slots=True)
class Met:
    """A recipe brought to a style: every figure changed, whether it meets all its limits, and what does not.

    `milk` are ways to standardise where fat in dry matter misses; `missed` names limits and ranges still not met.
    """

    recipe: Recipe
    made: Forecast
    before: Forecast
    changes: tuple[Change, ...]
    reached: bool
    missed: tuple[str, ...]
    worse: tuple[str, ...]
    in_the_way: tuple[InTheWay, ...]
    milk: tuple[Offer, ...]
    notes: tuple[str, ...] = ()

    @property
    def sentence(self) -> str:
        """What was done and what is left, in words."""
        how = joined(change.sentence() for change in self.changes) or say("nothing changed")
        if self.reached and not self.missed:
            return say("Forecast inside the limits and usual ranges: {how}.", how=how)
        head = say("Forecast inside the limits") if self.reached else say("Not inside the limits")
        return say("{head}: {how}. Still outside: {missed}.", head=head, how=how, missed=joined(self.missed))


def meet(
    recipe: Recipe,
    style: Style | str,
    *,
    locks: Collection[tuple[str, str] | str] = (),
    begins: Callable[[str], object] = lambda step: None,
) -> Met:
    """The recipe with the least change that meets the limits of a style, and its usual ranges as far as they go.

    `begins(step)` is told before each step, one of `STEPS`; what it raises ends the work. Raises RecipeError,
    StyleError.
    """
    of = read_style(style) if isinstance(style, str) else style
    before = forecast(recipe)
    start = _brought_back(recipe, of, locks)
    begins("aim")
    inside = forecast(start)
    limits, usual = _limits(inside, of), _usual(inside, of)
    found = aim(start, [*limits, *usual], locks=locks, style=of)
    if not found.reached and limits:
        begins("limits")
        strict = aim(start, limits, locks=locks, style=of)
        if not _outside(found.made, of) or _outside(strict.made, of):
            strict = found
        found = strict
    elif found.reached and _outside(found.made, of):  # a limit that hangs on another outcome has moved with it
        found = aim(found.recipe, _limits(found.made, of), locks=locks, style=of)
    said = summed_up(before, found.recipe, found.made, of)
    return replace(said, worse=found.worse, in_the_way=() if said.reached else found.in_the_way)


def _brought_back(recipe: Recipe, style: Style, locks: Collection[tuple[str, str] | str]) -> Recipe:
    """Settings outside their usual range moved to its nearest end."""
    for one in ranged(recipe, style):
        if one.setting.path in locks or one.setting.where in locks or one.low <= one.setting.value <= one.high:
            continue
        to = one.low if one.setting.value < one.low else one.high
        try:
            recipe = moved(recipe, one.setting, to)
        except RecipeError:  # bound to another figure of its stage; aim may still find a way
            continue
    return recipe


def _limits(made: Forecast, style: Style) -> list[Wanted]:
    """Acid in time, and limits of law and standards, a little inside, on what the make decides."""
    out = [Wanted(one.key, one.low, one.high) for one in acid_guards(made) if one.key in made.outcomes]
    for row in check(made, style).section(LIMIT):
        if row.quantity in made.outcomes and row.quantity not in _OF_THE_MILK:
            inside = NEAR_POINTS.get(row.quantity, NEAR_ELSE)
            low = None if row.low is None else row.low + inside
            high = None if row.high is None else row.high - inside
            if low is not None and high is not None and low > high:
                low = high = 0.5 * (row.low + row.high) if row.low is not None and row.high is not None else None
            out.append(Wanted(row.quantity, low, high))
    return out


def _usual(made: Forecast, style: Style) -> list[Wanted]:
    """Gates and usual ranges on outcomes, as wanted."""
    found = []
    for key in dict.fromkeys(one.key for one in style.windows if one.key in made.outcomes and one.key in QUANTITIES):
        windows = [one for one in style.windows_of(key) if one.low is not None or one.high is not None]
        if windows and key not in _OF_THE_MILK:
            lows, highs = [one.low for one in windows], [one.high for one in windows]
            low = None if None in lows else min(one for one in lows if one is not None)
            high = None if None in highs else max(one for one in highs if one is not None)
            found.append(Wanted(key, low, high))
    return found


def _outside(made: Forecast, style: Style) -> list[str]:
    """Limits not met, in words."""
    rows = check(made, style).limits
    return [headed(row.rule, f"{lowered(row.label)}, {row.sentence}") for row in rows if row.state == NOT_MET]


def summed_up(before: Forecast, recipe: Recipe, made: Forecast, style: Style) -> Met:
    """What a changed recipe is to a style, beside the one it was: changes, what is met, what not, and the milk."""
    verdict = check(made, style)
    limits = _outside(made, style)
    ranges = [headed(row.label, row.sentence) for row in verdict.section("make", "curve") if row.state != MET]
    fdm = next((row for row in verdict.section(LIMIT) if row.quantity == "fdm_pct" and row.state == NOT_MET), None)
    milk: tuple[Offer, ...] = ()
    if fdm is not None:
        ends = [end for end in (fdm.low, fdm.high) if end is not None]
        wanted = ends[0] + NEAR_ELSE if fdm.low is not None else ends[0] - NEAR_ELSE
        milk = offers(recipe, ratio_for_fdm(made, wanted))
    changes = tuple(_changes(before.recipe, recipe))
    return Met(recipe, made, before, changes, not limits, (*limits, *ranges), (), (), milk)


def _changes(before: Recipe, after: Recipe) -> Iterator[Change]:
    now = {one.path: one for one in movables(after)}
    for one in movables(before):
        other = now.get(one.path)
        if other is not None and abs(other.value - one.value) > 1e-9 and one.of != "milk":
            yield Change(one, other.value, (other.value - one.value) / one.step)


def ratio_for_fdm(made: Forecast, fdm_pct: float) -> Target:
    """Protein to fat of the milk that would bring fat in dry matter to a value, all else equal.

    Dry matter beside fat goes with the protein, so (1 / FDM - 1) goes with the ratio.
    """
    milk = blend(made.recipe)
    ratio = (milk.casein + milk.whey_protein) / milk.fat
    here = 100.0 / made.outcomes["fdm_pct"].value - 1.0
    wanted = ratio * (100.0 / fdm_pct - 1.0) / here
    return Target(min(max(wanted, RATIOS[0]), RATIOS[1]))


# --- A first recipe -------------------------------------------------------------------------------------------------


def first_recipe(
    milks: Sequence[MilkSource],
    style: str,
    *,
    name: str = "",
    begins: Callable[[str], object] = lambda step: None,
) -> Met:
    """A first recipe for a milk in a style: the nearest example, its settings at the middle of the style's ranges.

    Doses, forms and loads are scaled to the milk; then the recipe is brought to the style (`meet`). `notes` say where
    it comes from, what to look at, and how the milk would be standardised; `begins` as in `meet`. Raises RecipeError,
    StyleError.
    """
    if not milks:
        raise RecipeError(say("a first recipe needs a milk"))
    begins("example")
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
    begins("middle")
    for one in ranged(recipe, of):
        try:
            recipe = moved(recipe, one.setting, one.middle)
        except RecipeError:  # bound to another figure of its stage: it stays as in the example
            continue
    met = meet(_kept(_set_as_usual(recipe, of), of), of, begins=begins)
    notes = [
        say(
            "Drawn from the example “{name}”, its settings at the middle of the usual ranges of {name2}.",
            name=example.name,
            name2=of.title,
        )
    ]
    if example.style != style:
        notes.append(say("There is no example of {name}; look at every stage before you trust it.", name=of.title))
    if restaged:
        notes.append(say("As {name} asks for it: {stages}.", name=of.title, stages=joined(restaged)))
    strangers = sorted({milk.species for milk in milks} - set(of.milk)) if of.milk else []
    if strangers:
        notes.append(
            say(
                "{name} is not usually made of {strangers} milk.",
                name=of.title,
                strangers=either(choice(one) for one in strangers),
            )
        )
    target = usual_target(style)
    ways = met.milk or (() if target is None else offers(met.recipe, target))
    notes += met.made.notes  # where a law says that this milk does not do as the example's
    notes += [say("To standardise: {sentence}", sentence=way.sentence) for way in ways]
    return Met(
        met.recipe, met.made, met.before, met.changes, met.reached, met.missed, met.worse, met.in_the_way, ways,
        tuple(notes),
    )  # fmt: skip


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
    slow = any((one.low or 0.0) >= LACTIC_SET_MIN for one in style.windows_of("set_min"))
    hot = any((one.low or 0.0) >= limit("thermised_c").value for one in style.windows_of("set_c"))
    kinds = {stage.kind for stage in example.stages}
    own = read_style(example.style).family if example.style else ""
    words = _words(own) & _words(style.family)
    return (
        example.style == style.key,
        hot == ("acid_heat" in kinds),
        slow == ("lactic_set" in kinds),
        len(words),
        len(ranged(example, style)),
    )


def _words(family: str) -> set[str]:
    return set(family.replace(",", " ").split()) - {"and", "the", "in", "or", "a"}
