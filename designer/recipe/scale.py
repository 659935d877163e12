"""A recipe for another amount of milk: the new recipe, and line by line which rule made it so.

What goes in is multiplied by the milk, forms hold as much curd or become larger, the vat warms by its own power; what
becomes of the stages stands in `scale_stages`. Nothing is multiplied without a line (`scaling`) that says so.
"""

from __future__ import annotations

from designer.language import say
from designer.recipe.dilute import diluted_l, stock
from designer.recipe.document import Addition, Branch, Form, MilkSource, Recipe, Starter, Vat
from designer.recipe.edit import edit_addition, edit_branch, edit_milk, edit_recipe, edit_starter
from designer.recipe.error import RecipeError
from designer.recipe.field import choice, field_meta
from designer.recipe.lower import geometry, temperatures_before
from designer.recipe.milk import blend
from designer.recipe.scale_stages import scale_stage
from designer.recipe.scaling import Forms, Rule, Scaled, Scaling
from designer.units import System, show

LEAST_FILLED = 0.6
"""A form less filled than this makes another cheese; below it one smaller form is offered instead."""
_SIDES = ("diameter_mm", "length_mm", "width_mm", "height_mm", "follower_diameter_mm")


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
    work = Scaling(recipe, to_l / from_l, forms, vat, system)
    for source in work.first.milks:
        _milk(work, source)
    for lane in work.first.lanes():
        for starter in lane.starters:
            _starter(work, starter)
        for addition in lane.additions:
            _addition(work, addition)
        if lane.form is not None:
            _form(work, lane, lane.form)
    _vat(work)
    starts_c = temperatures_before(work.first, blend(work.first).temperature_c)
    for lane in work.first.lanes():
        for stage in lane.stages:
            scale_stage(work, lane, stage, starts_c[stage.id])
    return Scaled(work.recipe, work.factor, tuple(work.lines))


def _milk(work: Scaling, source: MilkSource) -> None:
    name = "volume_l" if source.volume_l is not None else "mass_kg"
    value = getattr(source, name)
    work.recipe = edit_milk(work.recipe, source.id, **{name: value * work.factor})
    meta = field_meta(MilkSource, name)
    why = say("{factor} times the milk", factor=show(work.factor, "ratio"))
    work.figure(source.id, source.name or say("milk"), meta, value, value * work.factor, "by milk", why)


def _starter(work: Scaling, starter: Starter) -> None:
    of = starter.name or say("starter")
    if starter.bulk_pct is not None or starter.cells_per_ml is not None:
        name = "bulk_pct" if starter.bulk_pct is not None else "cells_per_ml"
        why = say("the same activity in each litre; the amount goes by the milk of itself")
        work.figure(starter.id, of, field_meta(Starter, name), getattr(starter, name), None, "unchanged", why)
        return
    name = "mass_kg" if starter.mass_kg is not None else "units"
    value = getattr(starter, name)
    now = value * work.factor
    work.recipe = edit_starter(work.recipe, starter.id, **{name: now})
    why = say("the same activity in each litre")
    if name == "mass_kg":
        why += _weighing(now)
    work.figure(starter.id, of, field_meta(Starter, name), value, now, "by milk", why)


def _addition(work: Scaling, addition: Addition) -> None:
    of = addition.name or choice(addition.what)
    if addition.mass_pct is not None:
        meta = field_meta(Addition, "mass_pct")
        work.figure(addition.id, of, meta, addition.mass_pct, None, "unchanged", say("a share of the milk"))
        return
    name = "mass_kg" if addition.mass_kg is not None else "volume_l"
    value = getattr(addition, name)
    now = value * work.factor
    work.recipe = edit_addition(work.recipe, addition.id, **{name: now})
    why = say("the same strength in each litre") if addition.what == "coagulant" else say("the same share of the milk")
    why += _weighing(now) if name == "mass_kg" else _measuring(now)
    work.figure(addition.id, of, field_meta(Addition, name), value, now, "by milk", why)


def _form(work: Scaling, lane: Recipe | Branch, form: Form) -> None:
    new = _form_for(work, form)
    if isinstance(lane, Branch):
        work.recipe = edit_branch(work.recipe, lane.id, form=new)
    else:
        work.recipe = edit_recipe(work.recipe, form=new)
    of = "form" if isinstance(lane, Recipe) else say("form of {name}", name=lane.name or lane.id)
    more = (
        say("{count:g} would be needed", count=round(form.count * work.factor, 1))
        if new.count != form.count
        else say("as many as before")
    )
    if work.forms == "many":
        why = say("as much curd in each; {more}, made whole", more=more)
        if form.count * work.factor < LEAST_FILLED:
            why = say("too little curd for one of these forms: one smaller cheese of the same proportions")
    elif work.forms == "large":
        why = say("as many cheeses as before, of the same proportions")
    else:
        why = say("a form of your own choice")
    work.line("form", of, "number", str(form.count), str(new.count), "by milk", why)
    for name in _SIDES:
        before, now = getattr(form, name), getattr(new, name)
        if before is None and now is None:
            continue
        meta = field_meta(Form, name)
        if name == "height_mm" and abs(before - now) > 1e-9 and new.diameter_mm == form.diameter_mm:
            work.figure("form", of, meta, before, now, "by milk", say("the curd there is, over the face of the forms"))
            continue
        rule: Rule = "unchanged" if before == now else "by milk"
        why = say("the same form") if before == now else say("the cube root of the curd in each: same proportions")
        why = why if work.forms in ("many", "large") else say("your form")
        work.line("form", of, meta.label, *work.both(meta.kind, before, now), rule, why)
    work.figure("form", of, field_meta(Form, "lever"), form.lever, new.lever, "unchanged", say("the same press"))


def _form_for(work: Scaling, form: Form) -> Form:
    curd = form.count * work.factor
    if isinstance(work.forms, Form):
        new = work.forms
        face, old_face = geometry(new).radius_mm ** 2, geometry(form).radius_mm ** 2
        return new.but(height_mm=form.height_mm * old_face * curd / (face * new.count))
    if work.forms == "many" and curd >= LEAST_FILLED:
        count = max(1, round(curd))
        return form.but(count=count, height_mm=form.height_mm * curd / count)
    count = 1 if work.forms == "many" else form.count
    length = (curd / count) ** (1.0 / 3.0)
    sides = {name: getattr(form, name) for name in _SIDES}
    return form.but(count=count, **{name: side * length for name, side in sides.items() if side is not None})


def _vat(work: Scaling) -> None:
    old = work.first.vat
    if work.vat is not None:
        work.recipe = edit_recipe(work.recipe, vat=work.vat)
    new = work.vat or old
    if new is None or new.power_kw is None:
        return
    before = say("none") if old is None or old.power_kw is None else show(old.power_kw, "power")
    if work.vat is not None:
        work.line("vat", "vat", "power", before, show(new.power_kw, "power"), "unchanged", say("the vat you named"))
    else:
        why = say("this is the vat of the old recipe; name the one it will be made in")
        work.line("vat", "vat", "power", before, before, "to be checked", why)


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


def _measuring(litres: float) -> str:
    given = diluted_l(litres)
    if given is None:
        return ""
    return say(
        "; {litres:.2f} mL is too little to measure: let 1 mL down to 10 mL with cool water and "
        "give {given:.1f} mL of that",
        litres=litres * 1000.0,
        given=given * 1000.0,
    )
