"""Cautions of the make: acid too slow, warm milk too long, raw milk, heat, allergens, loads, wax - with their source.

Limits and sentences are data (safety.toml), looked up for the family, never learned, and nothing measured relaxes
them. A caution is not a certificate and its absence is none either: the maker's own authority decides.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping, Sequence
from functools import cache, lru_cache
from typing import Any

import numpy as np
from numpy.typing import NDArray

from designer.make import heat_treatment, slow_acid
from designer.make.caution import Caution as Caution
from designer.make.caution import gravest_first, limit, say, table
from designer.make.seen import Curves, Figure, StageDone
from designer.recipe.document import Addition, Branch, MilkSource, Recipe
from designer.recipe.lower import geometry
from designer.recipe.milk import source_milk
from designer.recipe.pressing import force_kg
from designer.recipe.schedule import PLACE_PRESS, Schedule
from designer.recipe.stages.room import Room
from designer.recipe.stages.stage import Stage, VatStage
from designer.recipe.stages.stretch import Stretch
from designer.recipe.stages.wash import Wash

WORD = re.compile("[a-z]+")
FLOW_S = 60.0
"""Holds shorter than this are held in a tube, longer ones in a vat."""


def cautions(
    recipe: Recipe, stages: Sequence[Stage], schedule: Schedule, marched: Sequence[StageDone], trace: Curves,
    outcomes: Mapping[str, Figure],
) -> tuple[Caution, ...]:  # fmt: skip
    """All cautions for one lane, the gravest first."""
    ids = tuple(stage.id for stage in stages)
    rows = next((lane.rows for lane in schedule.lanes if lane.stage_ids == ids), schedule.lanes[0].rows)
    return gravest_first(
        [
            *slow_acid.cautions(recipe, stages, rows, schedule.starter_min, trace, outcomes),
            *_milk(recipe, stages, outcomes),
            *_late(stages, marched),
            *_allergens(recipe, stages),
            *_work(recipe, stages, rows),
        ]
    )


def _milk(recipe: Recipe, stages: Sequence[Stage], outcomes: Mapping[str, Figure]) -> Iterator[Caution]:
    """Medicine, heat treatment, and what raw milk asks for."""
    if any(source.withheld for source in recipe.milks):
        yield say("withheld")
    raw = False
    for source in recipe.milks:
        counted_raw, said = _heat(source)
        raw = raw or counted_raw
        yield from said
    if not raw:
        return
    yield say("raw-milk")
    days, least = _days_of_age(recipe, stages), limit("raw_days").value
    if days < least:
        yield say("raw-days", days=days, limit=least, room=limit("raw_room_c").value)
    mnfs = outcomes["mnfs_pct"].value if "mnfs_pct" in outcomes else limit("soft_mnfs_pct").value
    living = _coat(_lane(recipe, stages)) in ("washed", "bloomy")
    if mnfs > limit("hard_mnfs_pct" if living else "soft_mnfs_pct").value:
        yield say("people-at-risk")


def _heat(source: MilkSource) -> tuple[bool, list[Caution]]:
    """Whether the law counts this milk as raw, and what is to be said of its heat treatment."""
    name = f"“{source.name or source.id}”"
    if source.heat == "raw":
        return True, []
    if source.heat == "thermised":
        return True, [say("thermised", name=name)]
    if source.heat_c is None or source.heat_min is None:
        return False, [say("heat-unsaid", name=name, source=heat_treatment.SOURCE)]
    seconds, fat_pct = 60.0 * source.heat_min, source_milk(source).fat / 10.0
    sentence = heat_treatment.treatment(source.heat_c, seconds, fat_pct)
    figures = {"name": name, "sentence": sentence, "source": heat_treatment.SOURCE}
    pair = heat_treatment.pair_met(source.heat_c, seconds, fat_pct)
    if pair is None:
        return True, [say("heat-not-met", **figures)]
    if pair.seconds < FLOW_S:
        return False, [say("heat-flow", **figures)]
    return False, [say("heat-met", minutes=pair.seconds / 60.0, **figures)]


def _days_of_age(recipe: Recipe, stages: Sequence[Stage]) -> float:
    """Days in rooms warm enough to count."""
    warm_enough = limit("raw_room_c").value
    minutes = 0.0
    for stage in stages:
        if isinstance(stage, Room) and (recipe.room_c if stage.room_c is None else stage.room_c) >= warm_enough:
            minutes += stage.end.planned_min
    return minutes / 1440.0


def _lane(recipe: Recipe, stages: Sequence[Stage]) -> Recipe | Branch:
    """The main make or the branch these stages belong to."""
    return next((lane for lane in recipe.lanes() if lane.stages == tuple(stages)), recipe)


def _coat(lane: Recipe | Branch) -> str:
    return lane.coat.kind if lane.coat else ""


def _late(stages: Sequence[Stage], marched: Sequence[StageDone]) -> Iterator[Caution]:
    """State ends that ran to their latest."""
    for one in marched:
        if not one.reached:
            end = next(stage.end_line() for stage in stages if stage.id == one.id)
            yield say(
                "not-reached", one.id, name=one.name, end=end, ph=one.values["ph"],
                temperature=one.values["temperature_c"],
            )  # fmt: skip


@cache
def _allergen_of() -> Mapping[str, Mapping[str, Any]]:
    """Word -> the allergen it names."""
    return {word: row for row in table()["allergen"] for word in row["words"]}


@lru_cache(maxsize=1024)
def _named_in(text: str) -> tuple[Mapping[str, Any], ...]:
    """The allergens a text names."""
    return tuple(row for row in map(_allergen_of().get, WORD.findall(text.lower())) if row is not None)


def _allergens(recipe: Recipe, stages: Sequence[Stage]) -> Iterator[Caution]:
    """Milk always; the rest by the words the maker wrote for additions, starters, coat and stages."""
    yield say("allergen-milk")
    told: set[str] = set()
    for name, text, stage in _written(recipe, stages):
        for row in _named_in(text):
            if row["name"] not in told:
                told.add(row["name"])
                yield say("allergen", stage, name=name, allergen=row["name"], more=row.get("more", ""))
    for given in _additions(recipe, stages):
        if given.what == "herbs":
            yield say("herbs", given.at, name=given.name or given.id)
    if _coat(_lane(recipe, stages)) == "leaves":
        yield say("herbs", name="leaves")


def _lanes(recipe: Recipe, stages: Sequence[Stage]) -> tuple[Recipe | Branch, ...]:
    """A branch carries what went into the main make, too."""
    own = _lane(recipe, stages)
    return (recipe,) if own is recipe else (recipe, own)


def _additions(recipe: Recipe, stages: Sequence[Stage]) -> Iterator[Addition]:
    for lane in _lanes(recipe, stages):
        yield from lane.additions


def _written(recipe: Recipe, stages: Sequence[Stage]) -> Iterator[tuple[str, str, str]]:
    """What is named, all the words written on it, and its stage."""
    for given in _additions(recipe, stages):
        yield given.name or given.id, f"{given.id} {given.name}", given.at
    for lane in _lanes(recipe, stages):
        for starter in lane.starters:
            yield starter.name or starter.id, f"{starter.id} {starter.name}", starter.at
    coat = _lane(recipe, stages).coat
    if coat is not None:
        yield "coat", coat.note, ""
    for stage in stages:
        yield stage.title, f"{stage.name} {stage.note}", stage.id


def _work(recipe: Recipe, stages: Sequence[Stage], rows: NDArray[Any]) -> Iterator[Caution]:
    """What can hurt the maker, or others through the work."""
    chloride = float(rows["cacl2_g_kg"].sum())
    if chloride > limit("chloride_g_kg").value + 1e-9:
        yield say("calcium", share=chloride / 10.0)
    lane = _lane(recipe, stages)
    yield from _slow_vat(stages, rows)
    yield from _loads(lane, stages, rows)
    for given in lane.additions:
        if given.what == "acid" and (given.strength_pct or 0.0) >= limit("strong_acid_pct").value:
            yield say("acid-handling", given.at, name=given.name or given.id)
    for stage in stages:
        temp = stage.water_c if isinstance(stage, Stretch | Wash) else 0.0
        if temp > limit("hot_water_c").value:
            yield say("hot-water", stage.id, temp=temp)
    brined = next((stage.id for stage in stages if stage.kind in ("brine", "hold_brine")), None)
    if brined is not None:
        yield say("brine", brined)
    if _coat(lane) == "wax":
        yield say("hot-wax")
    if _coat(lane) in ("washed", "bloomy"):
        yield say("listeria")
    yield say("cleaning")


def _slow_vat(stages: Sequence[Stage], rows: NDArray[Any]) -> Iterator[Caution]:
    """Changes of temperature that are asked for faster than the vat can make them."""
    longest = np.zeros(len(stages))
    np.maximum.at(longest, rows["stage"], rows["ramp_min"])
    for stage, needed in zip(stages, longest.tolist(), strict=True):
        if not isinstance(stage, VatStage):
            continue
        asked = stage.end.planned_min if stage.ramp_min is None and stage.end.by != "temperature" else stage.ramp_min
        if asked and needed > 1.03 * asked:
            yield say("vat-slow", stage.id, name=stage.title, asked=asked, needed=needed)


def _loads(lane: Recipe | Branch, stages: Sequence[Stage], rows: NDArray[Any]) -> Iterator[Caution]:
    """Loads too heavy to stack by hand, and pressures that look like a slip of the unit."""
    form = geometry(lane.form)
    kpa = rows["load_kpa"] * (rows["place"] == PLACE_PRESS)
    if not kpa.size:
        return
    worst = int(kpa.argmax())
    highest, stage = float(kpa[worst]), stages[int(rows["stage"][worst])].id
    force = force_kg(highest, form.press_area_m2)
    if force / form.lever > limit("hand_load_kg").value:
        yield say("heavy-press", stage, hung=force / form.lever)
    if highest > limit("usual_kpa").value:
        yield say("load-unit", stage, force=force, kpa=highest)
