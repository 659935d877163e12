"""What a recipe has once, beside its stages: milk, vat and form; whether two have the same, and how it is said."""

from __future__ import annotations

import math
from typing import Any

from designer.judge.given import of_100kg
from designer.language import listed, say
from designer.recipe.document import Form, Recipe, Vat
from designer.recipe.field import choice
from designer.recipe.milk import blend
from designer.units import System, show


def composition(recipe: Recipe) -> tuple[Any, ...]:
    """What tells one milk from another, to the digit that matters."""
    milk = blend(recipe)
    names = ("fat", "casein", "whey_protein", "lactose", "ash", "ph", "species", "calcium", "heat_denatured",
             "age_cold_h", "temperature_c")  # fmt: skip
    return tuple(round(value, 6) if isinstance(value := getattr(milk, name), float) else value for name in names)


def milk_words(recipe: Recipe) -> str:
    """The milk in the vat in words: its animals, fat and protein."""
    milk = blend(recipe)
    protein = milk.protein / 10.0
    kinds = listed(sorted({choice(one.species) for one in recipe.milks}))
    return say("{kinds}, {fat:.2f} % fat, {protein:.2f} % protein", kinds=kinds, fat=milk.fat / 10.0, protein=protein)


def same_vat(left: Vat | None, right: Vat | None) -> bool:
    """Whether two vats heat and lose alike, but for the last digit of a rescaled power."""
    if left is None or right is None:
        return left is right
    pairs = ((getattr(left, name), getattr(right, name)) for name in ("power_kw", "area_m2", "u_w_m2k"))
    return all(one == other or (None not in (one, other) and math.isclose(one, other)) for one, other in pairs)


def vat_words(recipe: Recipe, per_100kg: bool) -> str:
    """The vat's heating in words."""
    if recipe.vat is None or recipe.vat.power_kw is None:
        return say("none said")
    power = recipe.vat.power_kw * (100.0 / blend(recipe).mass_kg if per_100kg else 1.0)
    return show(power, "power") + (of_100kg() if per_100kg else "")


def faces(form: Form | None) -> Any:
    """A form but for how many of it there are."""
    return None if form is None else form.model_dump(exclude={"count"})


def form_words(form: Form | None, system: System) -> str:
    """A form's shape and sides in words."""
    if form is None:
        return say("none")
    sides = [getattr(form, name) for name in ("diameter_mm", "length_mm", "width_mm", "height_mm")]
    return f"{choice(form.shape)} " + " × ".join(
        show(side, "length", system=system) for side in sides if side is not None
    )
