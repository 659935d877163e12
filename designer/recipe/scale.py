"""A recipe for another amount of milk: the new recipe, and line by line which rule made it so.

What goes by the milk is multiplied; loads go by the area of the face, so that the pressure stays; brining goes by the
square of the thickness; warming by the vat's own power; shares, temperatures and pH stay. What no rule can tell is
left as it is and said to be checked. Nothing is multiplied without a line that says so.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Any, Literal

from designer.language import say, word
from designer.recipe.dilute import diluted_l, stock
from designer.recipe.document import Addition, Branch, Form, MilkSource, Recipe, Starter, Vat
from designer.recipe.edit import (
    edit,
    edit_addition,
    edit_branch,
    edit_milk,
    edit_recipe,
    edit_starter,
)
from designer.recipe.error import RecipeError
from designer.recipe.field import FieldMeta, choice, field_meta, field_metas
from designer.recipe.lower import geometry, temperatures_before, vat_heat
from designer.recipe.milk import blend
from designer.recipe.presets import presets
from designer.recipe.stages.press import Press
from designer.recipe.stages.stage import Stage, VatStage
from designer.units import System, show

Rule = Literal["by milk", "by area", "by thickness squared", "by the vat's power", "unchanged", "to be checked"]
Forms = Literal["many", "large"]
LEAST_FILLED = 0.6
"""A form less filled than this makes another cheese; below it one smaller form is offered instead."""
_SIDES = ("diameter_mm", "length_mm", "width_mm", "height_mm", "follower_diameter_mm")


@dataclass(frozen=True, slots=True)
class Line:
    """One line of the preview: what it is of, before and after as text, the rule, and why."""

    part: str
    of: str
    what: str
    before: str
    after: str
    rule: Rule
    why: str

    @property
    def changed(self) -> bool:
        """Whether the text differs."""
        return self.before != self.after


@dataclass(frozen=True, slots=True)
class Scaled:
    """The recipe for another amount of milk, the factor, and a line for every figure of it."""

    recipe: Recipe
    factor: float
    lines: tuple[Line, ...]

    def by(self, rule: Rule) -> tuple[Line, ...]:
        """The lines of one rule."""
        return tuple(line for line in self.lines if line.rule == rule)


def scale(
    recipe: Recipe,
    to_l: float,
    *,
    forms: Forms | Form = "many",
    vat: Vat | None = None,
    system: System = "metric",
) -> Scaled:
    """The recipe for `to_l` litres of milk in all.

    `forms`: more of the same form ("many"), the same number of larger ones of the same proportions ("large"), or a form
    of one's own, whose height then follows from the curd. `vat` is the vat it will be made in, where it is another.
    Raises RecipeError for an amount that can't be.
    """
    milk = blend(recipe)
    from_l = milk.mass_kg / milk.density_kg_l
    if not 0.05 <= to_l <= 100_000.0:
        raise RecipeError(
            say("a vat holds between 50 mL and 100 000 L, not {to_l}", to_l=show(to_l, "volume")), "scaling"
        )
    work = _Scaling(recipe, to_l / from_l, forms, vat, system)
    return work.done()


class _Scaling:
    """The recipe on its way, with the lines written so far."""

    def __init__(self, recipe: Recipe, factor: float, forms: Forms | Form, vat: Vat | None, system: System) -> None:
        self.first, self.recipe, self.factor, self.forms, self.system = recipe, recipe, factor, forms, system
        self.vat = vat
        self.lines: list[Line] = []

    def done(self) -> Scaled:
        """Everything, in the order of the document."""
        for source in self.first.milks:
            self._milk(source)
        for lane in self.first.lanes():
            for starter in lane.starters:
                self._starter(starter)
            for addition in lane.additions:
                self._addition(addition)
            if lane.form is not None:
                self._form(lane, lane.form)
        self._vat()
        starts_c = temperatures_before(self.first, blend(self.first).temperature_c)
        for lane in self.first.lanes():
            for stage in lane.stages:
                self._stage(lane, stage, starts_c[stage.id])
        return Scaled(self.recipe, self.factor, tuple(self.lines))

    def _line(self, part: str, of: str, what: str, before: str, after: str, rule: Rule, why: str) -> None:
        self.lines.append(Line(part, word(of, "field"), word(what, "field"), before, after, rule, word(why, "rule")))

    def _figure(
        self, part: str, of: str, meta: FieldMeta, before: float, now: float | None, rule: Rule, why: str
    ) -> None:
        said = self._both(meta.kind, before, before if now is None else now)
        self._line(part, of, meta.label, *said, rule, why)

    def _both(self, kind: str, before: float | None, now: float | None) -> tuple[str, str]:
        """A figure before and after, as text."""
        first, then = (say("none") if value is None else self._shown(kind, value) for value in (before, now))
        return first, then

    def _shown(self, kind: str, value: float) -> str:
        """A figure as text."""
        return show(value, kind, system=self.system)

    # --- what goes in ------------------------------------------------------------------------------------------------

    def _milk(self, source: MilkSource) -> None:
        name = "volume_l" if source.volume_l is not None else "mass_kg"
        value = getattr(source, name)
        self.recipe = edit_milk(self.recipe, source.id, **{name: value * self.factor})
        meta = field_meta(MilkSource, name)
        why = say("{factor} times the milk", factor=show(self.factor, "ratio"))
        self._figure(source.id, source.name or say("milk"), meta, value, value * self.factor, "by milk", why)

    def _starter(self, starter: Starter) -> None:
        of = starter.name or say("starter")
        if starter.bulk_pct is not None or starter.cells_per_ml is not None:
            name = "bulk_pct" if starter.bulk_pct is not None else "cells_per_ml"
            why = say("the same activity in each litre; the amount goes by the milk of itself")
            self._figure(starter.id, of, field_meta(Starter, name), getattr(starter, name), None, "unchanged", why)
            return
        name = "mass_kg" if starter.mass_kg is not None else "units"
        value = getattr(starter, name)
        now = value * self.factor
        self.recipe = edit_starter(self.recipe, starter.id, **{name: now})
        why = say("the same activity in each litre")
        if name == "mass_kg":
            why += _weighing(now)
        self._figure(starter.id, of, field_meta(Starter, name), value, now, "by milk", why)

    def _addition(self, addition: Addition) -> None:
        of = addition.name or choice(addition.what)
        if addition.mass_pct is not None:
            meta = field_meta(Addition, "mass_pct")
            self._figure(addition.id, of, meta, addition.mass_pct, None, "unchanged", say("a share of the milk"))
            return
        name = "mass_kg" if addition.mass_kg is not None else "volume_l"
        value = getattr(addition, name)
        now = value * self.factor
        self.recipe = edit_addition(self.recipe, addition.id, **{name: now})
        why = (
            say("the same strength in each litre")
            if addition.what == "coagulant"
            else say("the same share of the milk")
        )
        why += _weighing(now) if name == "mass_kg" else _measuring(now, addition.what)
        self._figure(addition.id, of, field_meta(Addition, name), value, now, "by milk", why)

    # --- forms -------------------------------------------------------------------------------------------------------

    def _form(self, lane: Recipe | Branch, form: Form) -> None:
        new = self._form_for(form)
        if isinstance(lane, Branch):
            self.recipe = edit_branch(self.recipe, lane.id, form=new)
        else:
            self.recipe = edit_recipe(self.recipe, form=new)
        of = "form" if isinstance(lane, Recipe) else say("form of {name}", name=lane.name or lane.id)
        more = (
            say("{count:g} would be needed", count=round(form.count * self.factor, 1))
            if new.count != form.count
            else say("as many as before")
        )
        if self.forms == "many":
            why = say("as much curd in each; {more}, made whole", more=more)
            if form.count * self.factor < LEAST_FILLED:
                why = say("too little curd for one of these forms: one smaller cheese of the same proportions")
        elif self.forms == "large":
            why = say("as many cheeses as before, of the same proportions")
        else:
            why = say("a form of your own choice")
        self._line("form", of, "number", str(form.count), str(new.count), "by milk", why)
        for name in _SIDES:
            before, now = getattr(form, name), getattr(new, name)
            if before is None and now is None:
                continue
            meta = field_meta(Form, name)
            if name == "height_mm" and abs(before - now) > 1e-9 and new.diameter_mm == form.diameter_mm:
                self._figure(
                    "form", of, meta, before, now, "by milk", say("the curd there is, over the face of the forms")
                )
                continue
            rule: Rule = "unchanged" if before == now else "by milk"
            why = say("the same form") if before == now else say("the cube root of the curd in each: same proportions")
            why = why if self.forms in ("many", "large") else say("your form")
            self._line("form", of, meta.label, *self._both(meta.kind, before, now), rule, why)
        self._figure("form", of, field_meta(Form, "lever"), form.lever, new.lever, "unchanged", say("the same press"))

    def _form_for(self, form: Form) -> Form:
        curd = form.count * self.factor
        if isinstance(self.forms, Form):
            new = self.forms
            face, old_face = geometry(new).radius_mm ** 2, geometry(form).radius_mm ** 2
            return new.but(height_mm=form.height_mm * old_face * curd / (face * new.count))
        if self.forms == "many" and curd >= LEAST_FILLED:
            count = max(1, round(curd))
            return form.but(count=count, height_mm=form.height_mm * curd / count)
        count = 1 if self.forms == "many" else form.count
        length = (curd / count) ** (1.0 / 3.0)
        sides = {name: getattr(form, name) for name in _SIDES}
        return form.but(count=count, **{name: side * length for name, side in sides.items() if side is not None})

    # --- vat and stages ----------------------------------------------------------------------------------------------

    def _vat(self) -> None:
        old = self.first.vat
        if self.vat is not None:
            self.recipe = edit_recipe(self.recipe, vat=self.vat)
        new = self.vat or old
        if new is None or new.power_kw is None:
            return
        before = say("none") if old is None or old.power_kw is None else show(old.power_kw, "power")
        if self.vat is not None:
            self._line(
                "vat", "vat", "power", before, show(new.power_kw, "power"), "unchanged", say("the vat you named")
            )
        else:
            why = say("this is the vat of the old recipe; name the one it will be made in")
            self._line("vat", "vat", "power", before, before, "to be checked", why)

    def _stage(self, lane: Recipe | Branch, stage: Stage, start_c: float) -> None:
        of = stage.title
        for meta in field_metas(type(stage)):
            value = getattr(stage, meta.name)
            if meta.shape != "quantity" or value is None or meta.name == "ramp_min":
                continue
            if meta.kind == "volume":
                self.recipe = edit(self.recipe, stage.id, **{meta.name: value * self.factor})
                self._figure(
                    stage.id, of, meta, value, value * self.factor, "by milk", say("the same share of the milk")
                )
            elif meta.kind == "duration" and meta.name != "turn_min":
                why = say("more milk takes longer by hand")
                self._figure(stage.id, of, meta, value, None, "to be checked", why)
            elif meta.kind == "pressure":
                self._figure(
                    stage.id, of, meta, value, None, "unchanged", say("a pressure; the weight goes by the area")
                )
            else:
                self._figure(stage.id, of, meta, value, None, "unchanged", _UNCHANGED.get(meta.kind, _NO_SCALE))
        if isinstance(stage, Press):
            self._press(lane, stage)
        self._length(lane, stage, start_c)

    def _press(self, lane: Recipe | Branch, stage: Press) -> None:
        old, new = self._geometry(self.first, lane), self._geometry(self.recipe, lane)
        ratio = new.press_area_m2 * old.lever / (old.press_area_m2 * new.lever)
        steps = []
        for index, step in enumerate(stage.steps):
            label = say("step {index}: ", index=index + 1)
            if step.pressure_kpa is not None:
                said = show(step.pressure_kpa, "pressure", system=self.system)
                self._line(
                    stage.id, stage.title, label + word("pressure", "field"), said, said, "unchanged", say("a pressure")
                )
                steps.append(step)
                continue
            assert step.load_kg is not None
            now = step.load_kg * ratio
            kpa = step.load_kg * old.lever * 9.81 / old.press_area_m2 / 1000.0
            why = say(
                "the same {kpa} on the face; a stack feels it in each cheese",
                kpa=show(kpa, "pressure", system=self.system),
            )
            if new.pieces > old.pieces:
                why += say(", cheeses side by side share it")
            said_both = self._both("mass", step.load_kg, now)
            self._line(stage.id, stage.title, label + word("load", "field"), *said_both, "by area", why)
            steps.append(step.but(load_kg=now))
        if tuple(steps) != stage.steps:
            self.recipe = edit(self.recipe, stage.id, steps=tuple(steps))

    def _geometry(self, recipe: Recipe, lane: Recipe | Branch) -> Any:
        form = recipe.form
        if isinstance(lane, Branch):
            form = next(one.form for one in recipe.branches if one.id == lane.id) or form
        return geometry(form)

    def _length(self, lane: Recipe | Branch, stage: Stage, start_c: float) -> None:
        if stage.end.is_state:
            said = stage.end_line(self.system)
            rule: Rule = "by the vat's power" if stage.end.by == "temperature" else "unchanged"
            self._line(stage.id, stage.title, "ends", said, said, rule, say("a state, whenever it is reached"))
            return
        minutes = stage.end.planned_min
        if stage.kind == "brine" or (stage.kind == "salt" and getattr(stage, "on", "") == "cheese"):
            self._brining(lane, stage)
        elif isinstance(stage, VatStage) and stage.temperature_c is not None:
            self._warming(stage, start_c)
        else:
            said = show(minutes, "duration")
            rule, why = _LENGTHS.get(stage.kind, ("unchanged", _EACH_LITRE))
            if self._geometry(self.first, lane).height_mm == self._geometry(self.recipe, lane).height_mm:
                rule, why = ("unchanged", say("the same cheese")) if stage.kind in _BY_SIZE else (rule, why)
            self._line(stage.id, stage.title, "length", said, said, rule, why)

    def _brining(self, lane: Recipe | Branch, stage: Stage) -> None:
        old, new = self._geometry(self.first, lane), self._geometry(self.recipe, lane)
        ratio = (_thickness_mm(new) / _thickness_mm(old)) ** 2
        before, now = stage.end.planned_min, stage.end.planned_min * ratio
        said = self._both("duration", before, now)
        if stage.kind == "salt":
            self._line(
                stage.id, stage.title, "length", said[0], said[0], "to be checked" if ratio != 1.0 else "unchanged",
                say("salt strewn on the faces goes in by thickness squared: {said} for the same share", said=said[1]),
            )  # fmt: skip
            return
        if abs(ratio - 1.0) > 1e-9:
            self.recipe = edit(self.recipe, stage.id, end=stage.end.but(length_min=now))
        why = say(
            "{thickness_mm:.0f} to {thickness_mm2:.0f} mm thick: salt goes in by the square of it",
            thickness_mm=_thickness_mm(old),
            thickness_mm2=_thickness_mm(new),
        )
        self._line(stage.id, stage.title, "length", *said, "by thickness squared", why)

    def _warming(self, stage: VatStage, start_c: float) -> None:
        """The time a change of temperature takes, from the vat's power; longer where the vat can't keep the pace."""
        assert stage.temperature_c is not None
        change = stage.temperature_c - start_c
        ramp = stage.end.planned_min if stage.ramp_min is None else stage.ramp_min
        milk = blend(self.recipe)
        kj = milk.mass_kg * float(presets()["milk"]["heat_capacity"]) * change
        vat = self.recipe.vat
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
        elif (shortest := self._shortest_min(start_c, stage.temperature_c)) is None or isinstance(shortest, str):
            rule, why = "to be checked", shortest or _EACH_LITRE
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
            self.recipe = edit(self.recipe, stage.id, **changes)
            longer = show(minutes, "duration")
            why = say(
                "{power_kw:g} kW brings so much milk up {change:.1f} °C in no less; more time for the acid",
                power_kw=vat.power_kw,
                change=change,
            )
        self._line(stage.id, stage.title, "length" if stage.ramp_min is None else "warm over", said, longer, rule, why)
        if stage.ramp_min is not None:
            lengths = self._both("duration", stage.end.planned_min, self.recipe.stage(stage.id).end.planned_min)
            self._line(stage.id, stage.title, "length", *lengths, rule if said != longer else "unchanged", _EACH_LITRE)

    def _shortest_min(self, start_c: float, end_c: float) -> float | str | None:
        """Minutes the vat needs with what it loses meanwhile, or the sentence that it never gets there."""
        milk = blend(self.recipe)
        heat = vat_heat(self.recipe.vat, milk.mass_kg, milk.mass_kg / milk.density_kg_l, self.recipe.room_c)
        try:
            return None if heat is None else heat.least_minutes(start_c, end_c)
        except ValueError as error:
            return str(error)


_NO_SCALE = "does not scale"
_EACH_LITRE = "what happens in each litre takes as long"
_UNCHANGED = {
    "percent": "a share",
    "temperature": "a temperature",
    "ph": "a pH",
    "length": "size of the cut; it sets how fast whey leaves",
    "ratio": "the way it is handled",
    "multiple": "a multiple",
}
_BY_HAND: tuple[Rule, str] = ("to be checked", "more milk or more forms take longer by hand")
_BY_SIZE = frozenset(("turn", "drying", "press", "scald", "room", "hold_brine"))
_LENGTHS: dict[str, tuple[Rule, str]] = {
    "cut": _BY_HAND,
    "drain": ("to be checked", "a deeper bed and one outlet take longer to run dry"),
    "mill": _BY_HAND,
    "fill": _BY_HAND,
    "ladle": _BY_HAND,
    "stretch": _BY_HAND,
    "hang": ("to be checked", "a larger bag drains slower"),
    "turn": ("to be checked", "a larger cheese cools slower, by thickness squared"),
    "press": ("to be checked", "a larger cheese cools and drains slower; go by the pH out of the press"),
    "scald": ("to be checked", "larger pieces heat through slower, by thickness squared"),
    "drying": ("to be checked", "go by the dry face"),
    "hold_brine": ("to be checked", "salt reaches the middle by thickness squared"),
    "room": ("to be checked", "larger cheeses dry slower and are ready later"),
}


def _thickness_mm(form: Any) -> float:
    """The way salt has to go: the lesser of height and breadth."""
    return float(min(form.height_mm, 2.0 * form.radius_mm))


def _weighing(kg: float) -> str:
    """How to measure what a scale can't, as the end of a sentence."""
    small = stock(kg)
    if small is None:
        return ""
    return say(
        "; {kg:.3f} g is too little to weigh: stir {weigh_kg:g} g into {into_l:g} mL of sterile "
        "milk and give {take_l:.1f} mL of that",
        kg=kg * 1000.0,
        weigh_kg=small.weigh_kg * 1000.0,
        into_l=small.into_l * 1000.0,
        take_l=small.take_l * 1000.0,
    )


def _measuring(litres: float, what: str) -> str:
    given = diluted_l(litres)
    if given is None:
        return ""
    return say(
        "; {litres:.2f} mL is too little to measure: let 1 mL down to 10 mL with cool water and "
        "give {given:.1f} mL of that",
        litres=litres * 1000.0,
        given=given * 1000.0,
    )
