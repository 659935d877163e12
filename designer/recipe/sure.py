"""Values far outside practice: "Sure? Usual is ...". A question, never a refusal; the ranges stand with the fields.

Where practice lies is common practice unless the field names a source.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from designer.language import number, say
from designer.recipe.document import Addition, Branch, Form, Recipe, stage_label
from designer.recipe.dose import addition_columns, rennet_imcu_per_l
from designer.recipe.error import RecipeError
from designer.recipe.field import FieldMeta, Model, Usual, choice, field_meta, field_metas
from designer.recipe.lower import geometry
from designer.recipe.milk import blend, milk_label
from designer.recipe.pressing import pressure_kpa
from designer.recipe.stages.press import Press, PressStep
from designer.units import KINDS, System, convert, show

RENNET_IMCU_L: Usual = (10.0, 120.0)
"""Cow milk 32-45, calf liquid about 50, one rule of thumb 100 IMCU/L (common practice)."""
CALCIUM_CHLORIDE_G_KG: Usual = (None, 0.4)
"""0.1-0.2 g per litre, dry (common practice)."""


@dataclass(frozen=True, slots=True)
class Doubt:
    """A value worth a second look: id of its part, field, where it stands in words, and the question."""

    part: str
    field: str
    where: str
    sentence: str


def asked(meta: FieldMeta, value: float, system: System = "metric") -> str:
    """The question to ask of a value of a field; "" where it lies in practice or nothing is known."""
    if meta.usual is None:
        return ""
    return _question(value, meta.usual, meta.kind, meta.usual_where, system)


def _question(value: float, usual: Usual, kind: str, where: str, system: System) -> str:
    low, high = usual
    if (low is None or value >= low) and (high is None or value <= high):
        return ""
    side = say("below") if low is not None and value < low else say("above")
    said = say(" to ").join(_roughly(end, kind, system) for end in usual if end is not None)
    usual_is = (
        say("from {said}", said=said) if high is None else say("up to {said}", said=said) if low is None else said
    )
    return say(
        "Sure? {value} is far {side} what is usual{where}: {usual_is}. Check the unit or the decimal point.",
        value=show(value, kind, system=system),
        side=side,
        where=f" {where}" if where else "",
        usual_is=usual_is,
    )


def _roughly(value: float, kind: str, system: System) -> str:
    """Two figures: the end of a usual range is no sharp thing."""
    unit = KINDS[kind].display(system)[0]
    return f"{number(float(f'{convert(value, kind, unit):.2g}'))} {unit}".strip()


def doubts(recipe: Recipe, system: System = "metric") -> tuple[Doubt, ...]:
    """Everything in a recipe that lies far outside practice, in the order of the document."""
    return tuple(_all(recipe, system))


def _all(recipe: Recipe, system: System) -> Iterator[Doubt]:
    for index, source in enumerate(recipe.milks):
        yield from _of(source, source.id, milk_label(recipe, index), system)
    for lane in recipe.lanes():
        place = say("branch “{name}”, ", name=lane.name or lane.id) if isinstance(lane, Branch) else ""
        for starter in lane.starters:
            yield from _of(starter, starter.id, place + (starter.name or say("starter")), system)
        for addition in lane.additions:
            yield from _of(addition, addition.id, place + _called(addition), system)
        if isinstance(lane, Recipe):
            yield from _of_doses(recipe, system)
        if lane.form is not None:
            yield from _of(lane.form, "form", place + say("form"), system)
        for index, stage in enumerate(lane.stages):
            yield from _of(stage, stage.id, place + stage_label(lane.stages, index), system)
            if isinstance(stage, Press):
                where = place + stage_label(lane.stages, index)
                for step in stage.steps:
                    yield from _of(step, stage.id, where, system)
                    sentence = pressed(step, lane.form or recipe.form, system)
                    if sentence:
                        yield Doubt(stage.id, "load_kg", where, sentence)


def pressed(step: PressStep, form: Form | None, system: System = "metric") -> str:
    """The question to ask of a load by the pressure it makes on the cheese; "" where it lies in practice."""
    if step.load_kg is None or form is None or asked(field_meta(PressStep, "load_kg"), step.load_kg, system):
        return ""  # without a face there is no pressure; a load already asked about is not asked about twice
    face = geometry(form)
    kpa = pressure_kpa(step.load_kg * face.lever, face.press_area_m2)
    return asked(field_meta(PressStep, "pressure_kpa"), kpa, system)


def _called(addition: Addition) -> str:
    return addition.name or choice(addition.what)


def _of(part: Model, part_id: str, where: str, system: System) -> Iterator[Doubt]:
    for meta in field_metas(type(part)):
        value = getattr(part, meta.name)
        if meta.usual is not None and value is not None:
            sentence = asked(meta, value, system)
            if sentence:
                yield Doubt(part_id, meta.name, where, sentence)


def _of_doses(recipe: Recipe, system: System) -> Iterator[Doubt]:
    """Doses that only the milk they go into can judge."""
    try:
        milk = blend(recipe)
    except RecipeError:
        return  # said where the recipe is lowered
    kinds = {stage.id: stage.kind for stage in recipe.stages}
    for each in recipe.additions:
        if each.what == "coagulant" and kinds[each.at] == "set":
            dose = rennet_imcu_per_l(each, milk)
            sentence = _question(dose, RENNET_IMCU_L, "ratio", say("in IMCU per litre of milk"), system)
        elif each.what == "calcium_chloride" and (each.volume_l is None or each.strength_pct is not None):
            dose = addition_columns(each, milk)["cacl2_g_kg"]
            sentence = _question(dose, CALCIUM_CHLORIDE_G_KG, "ratio", say("in grams, dry, per kg of milk"), system)
        else:
            continue
        if sentence:
            yield Doubt(each.id, "amount", _called(each), sentence)
