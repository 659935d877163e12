"""Fields told in more ways than their own unit: a load as pressure, a brine in °Bé, a cut by its name, a dose by IMCU.

The arithmetic is that of make/strength, make/salt, make/pressing and make/curd_size, where its sources stand.
`other_reading` reads what is typed in these ways.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from designer.language import joined, say
from designer.make import curd_size, salt, strength
from designer.recipe import pressing
from designer.recipe.dilute import diluted_l, stock
from designer.recipe.document import Addition, Form, MilkSource, Recipe, Starter
from designer.recipe.dose import addition_mass_kg, rennet_imcu_per_l
from designer.recipe.error import RecipeError
from designer.recipe.field import Model
from designer.recipe.lower import geometry
from designer.recipe.milk import blend, source_milk
from designer.recipe.presets import presets
from designer.recipe.schedule import Milk
from designer.recipe.stages.press import PressStep
from designer.recipe.stages.stage import Geometry, Stage
from designer.recipe.sure import doubts, pressed
from designer.units import System, measure, show

WATER_KG_L = 0.999
Key = tuple[type[Model] | None, str]
Tell = Callable[[Recipe, Any, float, System], str]


def told(recipe: Recipe, part: Model, name: str, system: System = "metric") -> str:
    """The value of a field in the other ways it is said; "" where there is none, or the recipe can't tell."""
    value = getattr(part, name, None)
    teller = _TELL.get(key_of(part, name))
    if value is None or teller is None:
        return ""
    try:
        return teller(recipe, part, float(value), system)
    except (RecipeError, ValueError):  # the milk can't be blended, the form is missing: said elsewhere
        return ""


def doubted(recipe: Recipe, part: Model, name: str, system: System = "metric") -> str:
    """The question to ask of a dose by its milk, or of a load by the face it presses; "" where it lies in practice."""
    if isinstance(part, PressStep) and name == "load_kg":
        return pressed(part, _form_of(recipe, part), system)
    if not isinstance(part, Addition) or name not in ("volume_l", "mass_kg", "mass_pct") or getattr(part, name) is None:
        return ""
    return next((one.sentence for one in doubts(recipe, system) if one.part == part.id and one.field == "amount"), "")


def key_of(part: Model, name: str) -> Key:
    """Where a field stands in the tables: under its part, or under any stage that has it."""
    return (None, name) if isinstance(part, Stage) else (type(part), name)


def litres(milk: Milk) -> float:
    """Volume of a milk [L]."""
    return milk.mass_kg / milk.density_kg_l


def _tell_milk(recipe: Recipe, part: Any, value: float, system: System) -> str:
    density = source_milk(part).density_kg_l
    if part.volume_l is not None:
        return f"= {show(value * density, 'mass', system=system, decimals=1)}"
    return f"= {show(value / density, 'volume', system=system, decimals=1)}"


def _tell_cut(recipe: Recipe, part: Any, value: float, system: System) -> str:
    surface = say("{surface:.0f} cm² of surface a litre", surface=curd_size.surface_cm2_per_l(value))
    name = curd_size.name_of(value)
    return f"{say_size(name)}; {surface}" if name else surface


def say_size(name: str) -> str:
    """A common name of a size of curd, in the language spoken."""
    return {
        "rice": say("rice"),
        "wheat": say("wheat"),
        "hemp": say("hemp seed"),
        "pea": say("pea"),
        "hazelnut": say("hazelnut"),
        "cherry": say("cherry"),
        "walnut": say("walnut"),
    }[name]


def _form_of(recipe: Recipe, step: PressStep) -> Form | None:
    lanes = [lane for lane in recipe.lanes() for stage in lane.stages if step in getattr(stage, "steps", ())]
    return next((lane.form for lane in lanes if lane.form is not None), recipe.form)


def face_of(recipe: Recipe, step: PressStep) -> Geometry:
    """What a press step acts on: the form of its lane. ValueError where there is none."""
    form = _form_of(recipe, step)
    if form is None:
        raise ValueError(say("Give the form first: a load becomes a pressure by the face of the cheese."))
    return geometry(form)


def _tell_load(recipe: Recipe, part: Any, value: float, system: System) -> str:
    face = face_of(recipe, part)
    kpa = pressing.pressure_kpa(value * face.lever, face.press_area_m2)
    units = ("psi", "kPa") if measure(system, "pressure") == "us" else ("kPa", "psi")
    return "= " + ", ".join(show(kpa, "pressure", unit=unit, decimals=1) for unit in units)


def _tell_pressure(recipe: Recipe, part: Any, value: float, system: System) -> str:
    face = face_of(recipe, part)
    force = pressing.force_kg(value, face.press_area_m2)
    hung = show(pressing.hang_kg(force, face.lever), "mass", system=system, decimals=1)
    if face.lever == 1.0:
        return say("= {hung} laid on", hung=hung)
    return say("= {hung} hung on a lever of {lever:g}", hung=hung, lever=face.lever)


def _tell_brine(recipe: Recipe, part: Any, value: float, system: System) -> str:
    if value >= salt.SATURATED_PCT - 0.05:
        return say("saturated")
    per_l = salt.grams_per_litre(value)
    return say(
        "{weight:.1f} % w/v, {baume:.1f} °Bé, {density:.3f} kg/L, {share:.0f} % of saturation; {salt:.1f} kg of salt "
        "to 100 L of water. A point weaker wants {more:.2f} kg of salt to 100 kg of brine.",
        weight=per_l / 10.0,
        baume=salt.baume(value),
        density=salt.density_handbook_1974(value, 15.0) / 1000.0,
        share=salt.saturation_pct(value),
        salt=salt.salt_for_water_kg(value, 100.0 * WATER_KG_L),
        more=salt.top_up_kg(100.0, value - 1.0, value) if value > 1.0 else 0.0,
    )


def _tell_dose(recipe: Recipe, part: Any, value: float, system: System) -> str:
    milk = blend(recipe)
    said = []
    if part.what == "coagulant":
        said.append(say("{dose:.1f} IMCU/L of milk; may be typed so", dose=rennet_imcu_per_l(part, milk)))
    mass = addition_mass_kg(part, milk)
    if part.mass_pct is not None and mass is not None:
        said.append(say("{mass} here", mass=show(mass, "small_mass", system=system)))
    if mass is not None and part.volume_l is None:
        said += _weighed(mass)
    if part.volume_l is not None and (given := diluted_l(part.volume_l)) is not None:
        said.append(
            say(
                "too little to measure: let 1 mL down to 10 mL with cool water and give {given:.1f} mL of that",
                given=given * 1000.0,
            )
        )
    return joined(said)


def _weighed(mass_kg: float) -> list[str]:
    small = stock(mass_kg)
    if small is None:
        return []
    return [
        say(
            "too little to weigh: stir {weigh:g} g into {into:g} mL of sterile milk and give {take:.1f} mL of that",
            weigh=small.weigh_kg * 1000.0,
            into=small.into_l * 1000.0,
            take=small.take_l * 1000.0,
        )
    ]


def _tell_strength(recipe: Recipe, part: Any, value: float, system: System) -> str:
    if not part.age_months:
        return ""
    left = strength.strength_left(value, part.age_months, float(presets()["rennet"]["loss_per_month"]))
    return say("{left:.0f} left after {months:g} months in the cold", left=left, months=part.age_months)


def _tell_bulk(recipe: Recipe, part: Any, value: float, system: System) -> str:
    return say("{mass} here", mass=show(value / 100.0 * blend(recipe).mass_kg, "mass", system=system))


def _tell_culture(recipe: Recipe, part: Any, value: float, system: System) -> str:
    cells = strength.cells_per_ml(value * 1000.0, part.potency_cfu_g, litres(blend(recipe)))
    return joined([say("{cells:.1e} cells in a mL of milk", cells=cells), *_weighed(value)])


def _tell_units(recipe: Recipe, part: Any, value: float, system: System) -> str:
    each_100l = 100.0 * value / litres(blend(recipe))
    said = [say("as {bulk:.2g} % of bulk starter", bulk=each_100l / part.units_per_100l)]
    if part.pack_kg is not None and part.pack_units is not None:
        grams = strength.culture_g(value, part.pack_kg * 1000.0, part.pack_units)
        serves = strength.pack_serves_l(part.pack_units, each_100l)
        said.append(say("{grams:.3g} g of this pack, which serves {serves:.0f} L", grams=grams, serves=serves))
        said += _weighed(grams / 1000.0)
    return joined(said)


def _tell_acidity(recipe: Recipe, part: Any, value: float, system: System) -> str:
    units = ("°D", "°SH", "°Th")
    return ", ".join(show(value, "acidity", unit=unit, decimals=1) for unit in units)


_TELL: Mapping[Key, Tell] = {
    (MilkSource, "volume_l"): _tell_milk,
    (MilkSource, "mass_kg"): _tell_milk,
    (PressStep, "load_kg"): _tell_load,
    (PressStep, "pressure_kpa"): _tell_pressure,
    (Addition, "volume_l"): _tell_dose,
    (Addition, "mass_kg"): _tell_dose,
    (Addition, "mass_pct"): _tell_dose,
    (Addition, "strength_imcu_ml"): _tell_strength,
    (Starter, "bulk_pct"): _tell_bulk,
    (Starter, "mass_kg"): _tell_culture,
    (Starter, "units"): _tell_units,
    (Starter, "acidity_pct"): _tell_acidity,
    (None, "cut_mm"): _tell_cut,
    (None, "strength_pct"): _tell_brine,
}
