"""Doses as the make model wants them: cells per mL milk, IMCU per litre, mol acid per kg.

Conversions are common practice or arithmetic; every figure behind them stands in presets.toml with its source.
"""

from __future__ import annotations

from designer.language import say
from designer.recipe import schedule
from designer.recipe.document import Addition, Starter
from designer.recipe.presets import presets
from designer.recipe.stages.stage import Row

COAGULANTS = {
    "calf": schedule.COAGULANT_CALF,
    "chymosin": schedule.COAGULANT_CHYMOSIN,
    "microbial": schedule.COAGULANT_MICROBIAL,
    "camel": schedule.COAGULANT_CAMEL,
    "plant": schedule.COAGULANT_PLANT,
}


def starter_columns(starter: Starter, milk: schedule.Milk) -> Row:
    """Cells [1e9 per mL milk], lactic acid [mol per kg milk] and lag [h] that one starter brings.

    1 % of a liquid culture with 1e9 cells per mL gives 1e7 per mL milk; 10 units in 100 L do as much (common practice).
    """
    kind, dose = presets()["starter"][starter.kind], presets()["dose"]
    litres = milk.mass_kg / milk.density_kg_l
    lactate = 0.0
    if starter.bulk_pct is not None:
        cells = starter.bulk_pct / 100.0 * kind["cells"]
        acidity = kind["acidity"] if starter.acidity_pct is None else starter.acidity_pct
        developed = max(0.0, acidity - dose["natural_acidity"])
        lactate = starter.bulk_pct / 100.0 * developed * 10.0 / presets()["lactic_acid"]["molar_g"]
    elif starter.mass_kg is not None:
        assert starter.potency_cfu_g is not None
        cells = starter.mass_kg * 1000.0 * starter.potency_cfu_g / (litres * 1000.0) / 1e9
    elif starter.cells_per_ml is not None:
        cells = starter.cells_per_ml / 1e9
    else:
        assert starter.units is not None
        cells = starter.units / (litres / 100.0) / starter.units_per_100l / 100.0
    row = {f"inoculum_{name}": cells * kind[name] for name in schedule.POPULATIONS}
    lag = dose["lag_direct_h"] if starter.direct or starter.mass_kg is not None else dose["lag_active_h"]
    return row | {"inoculum_lactate": lactate, "lag_h": lag}


def addition_mass_kg(addition: Addition, milk: schedule.Milk) -> float | None:
    """Mass that goes in [kg]; None for a volume of something whose density is not known."""
    if addition.mass_kg is not None:
        return addition.mass_kg
    if addition.mass_pct is not None:
        return addition.mass_pct / 100.0 * milk.mass_kg
    assert addition.volume_l is not None
    if addition.what == "acid":
        acid = presets()["acid"][addition.acid]
        return float(addition.volume_l * (1.0 + acid["density_slope"] * _acid_strength(addition)))
    if addition.what == "calcium_chloride":
        slope = presets()["calcium_chloride"]["density_slope"]
        return float(addition.volume_l * (1.0 + slope * (addition.strength_pct or 0.0)))
    return None


def _acid_strength(addition: Addition) -> float:
    return (
        float(presets()["acid"][addition.acid]["strength"]) if addition.strength_pct is None else addition.strength_pct
    )


def rennet_imcu_per_l(addition: Addition, milk: schedule.Milk) -> float:
    """Activity given to each litre of milk [IMCU/L], after what the coagulant lost by age."""
    assert addition.strength_imcu_ml is not None
    litres = milk.mass_kg / milk.density_kg_l
    if addition.volume_l is not None:
        amount = addition.volume_l * 1000.0
    else:
        amount = (addition_mass_kg(addition, milk) or 0.0) * 1000.0
    kept = (1.0 - presets()["rennet"]["loss_per_month"]) ** addition.age_months
    return float(amount * addition.strength_imcu_ml * kept / litres)


def addition_columns(addition: Addition, milk: schedule.Milk) -> Row:
    """Columns of one addition; lipase, ripening cultures, colour and herbs change no column."""
    if addition.what == "coagulant":
        return {
            "rennet_imcu_l": rennet_imcu_per_l(addition, milk),
            "coagulant": COAGULANTS[addition.coagulant or "calf"],
        }
    if addition.what == "salt":
        mass = addition_mass_kg(addition, milk)
        if mass is None:
            raise ValueError(say("give salt by mass or as a share of the milk, not by volume"))
        return {"salt_per_milk": mass / milk.mass_kg}
    if addition.what == "calcium_chloride":
        if addition.volume_l is not None and addition.strength_pct is None:
            raise ValueError(say('calcium chloride by volume needs its solution, for example solution = "33 %"'))
        dry = (addition_mass_kg(addition, milk) or 0.0) * (addition.strength_pct or 100.0) / 100.0
        return {"cacl2_g_kg": dry * 1000.0 / milk.mass_kg}
    if addition.what == "acid":
        acid = presets()["acid"][addition.acid]
        pure_g = (addition_mass_kg(addition, milk) or 0.0) * 1000.0 * _acid_strength(addition) / 100.0
        return {"acid_mol_kg": pure_g / acid["molar_g"] * acid["protons"] / milk.mass_kg}
    return {}
