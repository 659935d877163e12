"""What another amount of milk does to the stages.

Loads go by the area of the face, so that the pressure stays; brining by the square of the thickness; warming by the
vat's own power; states, shares, temperatures and pH stay. What no rule can tell is left and said to be checked.
"""

from __future__ import annotations

import math
from typing import Any

from designer.language import say, word
from designer.recipe.document import Branch, Recipe
from designer.recipe.edit import edit
from designer.recipe.field import field_metas
from designer.recipe.lower import vat_heat
from designer.recipe.milk import blend
from designer.recipe.presets import presets
from designer.recipe.pressing import pressure_kpa
from designer.recipe.scaling import Rule, Scaling
from designer.recipe.stages.press import Press
from designer.recipe.stages.stage import Stage, VatStage
from designer.units import show

NO_SCALE = "does not scale"
EACH_LITRE = "what happens in each litre takes as long"
UNCHANGED = {
    "percent": "a share",
    "temperature": "a temperature",
    "ph": "a pH",
    "length": "size of the cut; it sets how fast whey leaves",
    "ratio": "the way it is handled",
    "multiple": "a multiple",
}
BY_HAND: tuple[Rule, str] = ("to be checked", "more milk or more forms take longer by hand")
_BY_SIZE = frozenset(("turn", "drying", "press", "scald", "room", "hold_brine"))
LENGTHS: dict[str, tuple[Rule, str]] = {
    "cut": BY_HAND,
    "drain": ("to be checked", "a deeper bed and one outlet take longer to run dry"),
    "mill": BY_HAND,
    "fill": BY_HAND,
    "ladle": BY_HAND,
    "stretch": BY_HAND,
    "hang": ("to be checked", "a larger bag drains slower"),
    "turn": ("to be checked", "a larger cheese cools slower, by thickness squared"),
    "press": ("to be checked", "a larger cheese cools and drains slower; go by the pH out of the press"),
    "scald": ("to be checked", "larger pieces heat through slower, by thickness squared"),
    "drying": ("to be checked", "go by the dry face"),
    "hold_brine": ("to be checked", "salt reaches the middle by thickness squared"),
    "room": ("to be checked", "larger cheeses dry slower and are ready later"),
}


def scale_stage(work: Scaling, lane: Recipe | Branch, stage: Stage, start_c: float) -> None:
    """Every figure of a stage and its length; `start_c` is the temperature the vat comes to it with [°C]."""
    of = stage.title
    for meta in field_metas(type(stage)):
        value = getattr(stage, meta.name)
        if meta.shape != "quantity" or value is None or meta.name == "ramp_min":
            continue
        if meta.kind == "volume":
            work.recipe = edit(work.recipe, stage.id, **{meta.name: value * work.factor})
            work.figure(stage.id, of, meta, value, value * work.factor, "by milk", say("the same share of the milk"))
        elif meta.kind == "duration" and meta.name != "turn_min":
            why = say("more milk takes longer by hand")
            work.figure(stage.id, of, meta, value, None, "to be checked", why)
        elif meta.kind == "pressure":
            work.figure(stage.id, of, meta, value, None, "unchanged", say("a pressure; the weight goes by the area"))
        else:
            work.figure(stage.id, of, meta, value, None, "unchanged", UNCHANGED.get(meta.kind, NO_SCALE))
    if isinstance(stage, Press):
        _press(work, lane, stage)
    _length(work, lane, stage, start_c)


def _press(work: Scaling, lane: Recipe | Branch, stage: Press) -> None:
    old, new = work.geometry(work.first, lane), work.geometry(work.recipe, lane)
    ratio = new.press_area_m2 * old.lever / (old.press_area_m2 * new.lever)
    steps = []
    for index, step in enumerate(stage.steps):
        label = say("step {index}: ", index=index + 1)
        if step.pressure_kpa is not None:
            said = show(step.pressure_kpa, "pressure", system=work.system)
            work.line(
                stage.id, stage.title, label + word("pressure", "field"), said, said, "unchanged", say("a pressure")
            )
            steps.append(step)
            continue
        assert step.load_kg is not None
        now = step.load_kg * ratio
        kpa = pressure_kpa(step.load_kg * old.lever, old.press_area_m2)
        why = say(
            "the same {kpa} on the face; a stack feels it in each cheese",
            kpa=show(kpa, "pressure", system=work.system),
        )
        if new.pieces > old.pieces:
            why += say(", cheeses side by side share it")
        said_both = work.both("mass", step.load_kg, now)
        work.line(stage.id, stage.title, label + word("load", "field"), *said_both, "by area", why)
        steps.append(step.but(load_kg=now))
    if tuple(steps) != stage.steps:
        work.recipe = edit(work.recipe, stage.id, steps=tuple(steps))


def _length(work: Scaling, lane: Recipe | Branch, stage: Stage, start_c: float) -> None:
    if stage.end.is_state:
        said = stage.end_line(work.system)
        rule: Rule = "by the vat's power" if stage.end.by == "temperature" else "unchanged"
        work.line(stage.id, stage.title, "ends", said, said, rule, say("a state, whenever it is reached"))
        return
    minutes = stage.end.planned_min
    if stage.kind == "brine" or (stage.kind == "salt" and getattr(stage, "on", "") == "cheese"):
        _brining(work, lane, stage)
    elif isinstance(stage, VatStage) and stage.temperature_c is not None:
        _warming(work, stage, start_c)
    else:
        said = show(minutes, "duration")
        rule, why = LENGTHS.get(stage.kind, ("unchanged", EACH_LITRE))
        if work.geometry(work.first, lane).height_mm == work.geometry(work.recipe, lane).height_mm:
            rule, why = ("unchanged", say("the same cheese")) if stage.kind in _BY_SIZE else (rule, why)
        work.line(stage.id, stage.title, "length", said, said, rule, why)


def _brining(work: Scaling, lane: Recipe | Branch, stage: Stage) -> None:
    old, new = work.geometry(work.first, lane), work.geometry(work.recipe, lane)
    ratio = (_thickness_mm(new) / _thickness_mm(old)) ** 2
    before, now = stage.end.planned_min, stage.end.planned_min * ratio
    said = work.both("duration", before, now)
    if stage.kind == "salt":
        work.line(
            stage.id, stage.title, "length", said[0], said[0], "to be checked" if ratio != 1.0 else "unchanged",
            say("salt strewn on the faces goes in by thickness squared: {said} for the same share", said=said[1]),
        )  # fmt: skip
        return
    if abs(ratio - 1.0) > 1e-9:
        work.recipe = edit(work.recipe, stage.id, end=stage.end.but(length_min=now))
    why = say(
        "{thickness_mm:.0f} to {thickness_mm2:.0f} mm thick: salt goes in by the square of it",
        thickness_mm=_thickness_mm(old),
        thickness_mm2=_thickness_mm(new),
    )
    work.line(stage.id, stage.title, "length", *said, "by thickness squared", why)


def _warming(work: Scaling, stage: VatStage, start_c: float) -> None:
    """The time a change of temperature takes, from the vat's power; longer where the vat can't keep the pace."""
    assert stage.temperature_c is not None
    change = stage.temperature_c - start_c
    ramp = stage.end.planned_min if stage.ramp_min is None else stage.ramp_min
    milk = blend(work.recipe)
    kj = milk.mass_kg * float(presets()["milk"]["heat_capacity"]) * change
    vat = work.recipe.vat
    said = longer = show(ramp, "duration")
    rule: Rule = "by the vat's power"
    if not (math.isfinite(change) and change > 0.05) or ramp == 0.0:
        rule, why = "unchanged", say("nothing to warm")
    elif vat is None or vat.power_kw is None:
        rule = "to be checked"
        why = say(
            "{change:.1f} °C in {said} takes {kj:.2g} kW for so much milk; give the vat its power",
            change=change,
            said=said,
            kj=kj / 60.0 / ramp,
        )
    elif (shortest := _shortest_min(work, start_c, stage.temperature_c)) is None or isinstance(shortest, str):
        rule, why = "to be checked", shortest or EACH_LITRE
    elif shortest <= ramp + 1e-9:
        why = say(
            "{power_kw:g} kW could do it in {shortest}; the pace is the recipe's",
            power_kw=vat.power_kw,
            shortest=show(shortest, "duration"),
        )
    else:
        minutes = float(math.ceil(shortest))
        changes: dict[str, Any] = {"end": stage.end.but(length_min=stage.end.planned_min + minutes - ramp)}
        if stage.ramp_min is not None:
            changes["ramp_min"] = minutes
        work.recipe = edit(work.recipe, stage.id, **changes)
        longer = show(minutes, "duration")
        why = say(
            "{power_kw:g} kW brings so much milk up {change:.1f} °C in no less; more time for the acid",
            power_kw=vat.power_kw,
            change=change,
        )
    work.line(stage.id, stage.title, "length" if stage.ramp_min is None else "warm over", said, longer, rule, why)
    if stage.ramp_min is not None:
        lengths = work.both("duration", stage.end.planned_min, work.recipe.stage(stage.id).end.planned_min)
        work.line(stage.id, stage.title, "length", *lengths, rule if said != longer else "unchanged", EACH_LITRE)


def _shortest_min(work: Scaling, start_c: float, end_c: float) -> float | str | None:
    """Minutes the vat needs with what it loses meanwhile, or the sentence that it never gets there."""
    milk = blend(work.recipe)
    heat = vat_heat(work.recipe.vat, milk.mass_kg, milk.mass_kg / milk.density_kg_l, work.recipe.room_c)
    try:
        return None if heat is None else heat.least_minutes(start_c, end_c)
    except ValueError as error:
        return str(error)


def _thickness_mm(form: Any) -> float:
    """The way salt has to go: the lesser of height and breadth."""
    return float(min(form.height_mm, 2.0 * form.radius_mm))
