"""Fields typed in more ways than their own unit: "5 psi" for a load, "19 °Bé" for a brine, "pea" for a cut, "1:15000".

The arithmetic is that of make/strength, make/salt, make/pressing and make/curd_size, where its sources stand.
`other_units` tells values in these ways.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Any

from designer.judge.other_units import WATER_KG_L, Key, face_of, key_of, litres, say_size
from designer.language import say
from designer.make import curd_size, salt, strength
from designer.recipe import pressing
from designer.recipe.document import Addition, MilkSource, Recipe, Starter
from designer.recipe.dose import rennet_imcu_per_l
from designer.recipe.end import End
from designer.recipe.error import RecipeError
from designer.recipe.field import Model
from designer.recipe.milk import blend, source_milk
from designer.recipe.stages.press import PressStep
from designer.units import UnitError, parse

DROP_L = 5.0e-5
"""Twenty drops to the millilitre (common practice); a dropper of one's own may differ by half."""
_N = r"(\d+(?:[.,]\d+)?)"


@dataclass(frozen=True, slots=True)
class Typed:
    """What was typed, in the field's base unit, and what there is to know of the conversion ("" for nothing)."""

    value: float
    note: str = ""


def typed(recipe: Recipe, part: Model, name: str, text: str) -> Typed | None:
    """What a text in one of the other ways means for a field; None where it is written in no such way.

    Raises UnitError, a sentence, where it is written so but can't be.
    """
    reader = _READ.get(key_of(part, name))
    if reader is None:
        return None
    try:
        return reader(recipe, part, " ".join(text.split()))
    except UnitError:
        raise
    except (RecipeError, ValueError) as error:
        raise UnitError(error.sentence if isinstance(error, RecipeError) else str(error)) from None


def _number(text: str) -> float:
    return float(text.replace(",", "."))


def _maybe(text: str, kind: str) -> float | None:
    """A quantity of another kind, None where it is none; which gallon is asked as everywhere."""
    try:
        return parse(text, kind).value
    except UnitError as error:
        if re.search(r"\b(gal|gallons?|qt|quarts?|pt|pints?|fl oz)$", text):
            raise error
        return None


def _read_milk_volume(recipe: Recipe, part: Any, text: str) -> Typed | None:
    if re.search(r"\d\s*(?:kg|g|t|lbs?|oz)$", text) is None or "fl oz" in text:
        return None
    mass, density = parse(text, "mass").value, source_milk(part).density_kg_l
    return Typed(mass / density, say("{mass} at {density:.3f} kg/L", mass=text, density=density))


def _read_milk_mass(recipe: Recipe, part: Any, text: str) -> Typed | None:
    volume = _maybe(text, "volume") if re.search(r"[a-zA-Z]", text) and _is_mass(text) is None else None
    if volume is None:
        return None
    density = source_milk(part).density_kg_l
    return Typed(volume * density, say("{volume} at {density:.3f} kg/L", volume=text, density=density))


def _is_mass(text: str) -> float | None:
    try:
        return parse(text, "mass").value
    except UnitError:
        return None


def _read_cut(recipe: Recipe, part: Any, text: str) -> Typed | None:
    if not text.isalpha():
        return None
    known = {say_size(name): edge for name, edge in curd_size.ONE_FIGURE_MM.items()} | curd_size.ONE_FIGURE_MM
    if text.lower() not in known:
        names = ", ".join(say_size(name) for name in curd_size.ONE_FIGURE_MM)
        raise UnitError(
            say("“{text}” is no size of curd; known are {names}, or a length such as 10 mm.", text=text, names=names)
        )
    return Typed(known[text.lower()], say("names differ from place to place: go by the millimetres"))


def _read_load(recipe: Recipe, part: Any, text: str) -> Typed | None:
    kpa = None
    if (times := re.fullmatch(rf"{_N}\s*(?:x|×|times)(?: (?:its|the) weight)?", text)) is not None:
        kpa = pressing.times_cheese_weight_kpa(_number(times[1]), face_of(recipe, part).height_mm)
    elif re.search(r"(?:Pa|bar|psi|/cm²|/cm2)$", text):
        kpa = parse(text, "pressure").value
    if kpa is None:
        return None
    face = face_of(recipe, part)
    return Typed(pressing.hang_kg(pressing.force_kg(kpa, face.press_area_m2), face.lever))


def _read_pressure(recipe: Recipe, part: Any, text: str) -> Typed | None:
    load = _is_mass(text)
    if load is None:
        return None
    face = face_of(recipe, part)
    return Typed(pressing.pressure_kpa(load * face.lever, face.press_area_m2))


def _read_brine(recipe: Recipe, part: Any, text: str) -> Typed | None:
    for pattern, worth in _BRINES:
        match = re.fullmatch(_N + r"\s*" + pattern, text, re.IGNORECASE)
        if match is not None:
            return Typed(worth(_number(match[1])))
    if (match := re.fullmatch(r"(.+?) (?:of salt )?(?:to|in|per) (.+)", text)) is not None:
        water = match[2].removesuffix(" of water").removesuffix(" water")
        if match[1].endswith((" g", "g")) and re.fullmatch(r"100 ?g", water):
            return Typed(salt.strength_of_salt_per_water(1000.0 * parse(match[1], "mass").value))
        mass = parse(match[1], "mass").value
        volume = _maybe(water, "volume")
        water_kg = volume * WATER_KG_L if volume is not None else parse(water, "mass").value
        return Typed(salt.strength_of_salt_and_water(mass, water_kg))
    return None


_BRINES: tuple[tuple[str, Callable[[float], float]], ...] = (
    (r"% ?w/v", lambda value: salt.strength_of_grams_per_litre(10.0 * value)),
    (r"g/L", salt.strength_of_grams_per_litre),
    (r"(?:°|º|deg ?)? ?B(?:e|é|aum[eé])", salt.strength_of_baume),
    (r"(?:kg/L|g/mL|sg|s\.g\.)", lambda value: salt.strength_of_density(1000.0 * value, 15.0)),
    (r"%? ?(?:sat|of saturation|saturation|saturated|°? ?sal)", salt.strength_of_saturation),
    (r"(?:g/100 ?g water|% on water|% of water)", salt.strength_of_salt_per_water),
)


def _read_dose(recipe: Recipe, part: Any, text: str) -> Typed | None:
    if part.what != "coagulant":
        return None
    if (match := re.fullmatch(rf"{_N}\s*IMCU ?/ ?L", text, re.IGNORECASE)) is not None:
        wanted = _number(match[1])
        milk = blend(recipe)
        value = (
            part.volume_l if part.volume_l is not None else part.mass_kg if part.mass_kg is not None else part.mass_pct
        )
        return Typed(float(value) * wanted / rennet_imcu_per_l(part, milk))
    if part.volume_l is not None and (match := re.fullmatch(rf"{_N}\s*drops?", text)) is not None:
        return Typed(_number(match[1]) * DROP_L, say("twenty drops to the millilitre; measure your own dropper"))
    return None


def _read_strength(recipe: Recipe, part: Any, text: str) -> Typed | None:
    match = re.fullmatch(r"1 ?: ?(\d[\d ., ]*)", text)
    if match is None:
        return None
    low, high = strength.imcu_of_soxhlet(float(re.sub(r"[ ., ]", "", match[1])))
    return Typed(
        0.5 * (low + high),
        say(
            "{text} may stand for {low:.0f} to {high:.0f} IMCU/mL; ask for the bottle's own",
            text=text,
            low=low,
            high=high,
        ),
    )


def _read_culture(recipe: Recipe, part: Any, text: str) -> Typed | None:
    cells = _cells(text)
    if cells is None:
        return None
    return Typed(strength.culture_g_for_cells(cells, litres(blend(recipe)), part.potency_cfu_g) / 1000.0)


def _cells(text: str) -> float | None:
    try:
        return parse(text, "cells").value
    except UnitError:
        return None


def _read_units(recipe: Recipe, part: Any, text: str) -> Typed | None:
    mass = _is_mass(text)
    if mass is None:
        return None
    if part.pack_kg is None or part.pack_units is None:
        raise UnitError(say("To read grams, give the pack: how many units it holds, and what it weighs."))
    return Typed(mass / part.pack_kg * part.pack_units)


def _read_acidity(recipe: Recipe, part: Any, text: str) -> Typed | None:
    if isinstance(part, End) and part.by != "acidity":
        return None
    match = re.fullmatch(rf"{_N} ?mL(?: of)?(?: (N/10|N/9|N/4|0[.,]1 ?N))? (?:on|in|per) {_N} ?mL", text, re.IGNORECASE)
    if match is None:
        return None
    normal = {"n/9": 1.0 / 9.0, "n/4": 0.25}.get((match[2] or "").lower(), 0.1)
    return Typed(
        strength.lactic_pct_of_titration(_number(match[1]), _number(match[3]), normal),
        say("{text}, base of {normal:.3g} N; another sample is another reading", text=text, normal=normal),
    )


Read = Callable[[Recipe, Any, str], Typed | None]
_READ: Mapping[Key, Read] = {
    (MilkSource, "volume_l"): _read_milk_volume,
    (MilkSource, "mass_kg"): _read_milk_mass,
    (PressStep, "load_kg"): _read_load,
    (PressStep, "pressure_kpa"): _read_pressure,
    (Addition, "volume_l"): _read_dose,
    (Addition, "mass_kg"): _read_dose,
    (Addition, "mass_pct"): _read_dose,
    (Addition, "strength_imcu_ml"): _read_strength,
    (Starter, "mass_kg"): _read_culture,
    (Starter, "units"): _read_units,
    (Starter, "acidity_pct"): _read_acidity,
    (End, "value"): _read_acidity,
    (None, "cut_mm"): _read_cut,
    (None, "strength_pct"): _read_brine,
}
