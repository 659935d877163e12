"""From what the maker means to arrays: a Recipe becomes a Schedule (milk, rows of every lane)."""

from __future__ import annotations

import math
from collections.abc import Sequence

from designer.recipe import schedule
from designer.recipe.document import Addition, Branch, Form, Recipe, Starter, stage_label
from designer.recipe.error import RecipeError
from designer.recipe.milk import blend
from designer.recipe.presets import presets
from designer.recipe.stages.kinds import AnyStage
from designer.recipe.stages.stage import Geometry, Row, RowContext, split_tail

COAGULANTS = {
    "calf": schedule.COAGULANT_CALF,
    "chymosin": schedule.COAGULANT_CHYMOSIN,
    "microbial": schedule.COAGULANT_MICROBIAL,
    "camel": schedule.COAGULANT_CAMEL,
    "plant": schedule.COAGULANT_PLANT,
}
ADDED = (
    "rennet_imcu_l",
    "cacl2_g_kg",
    "acid_mol_kg",
    "salt_per_milk",
    "inoculum_meso",
    "inoculum_strep",
    "inoculum_rods",
    "inoculum_lactate",
)
# Columns that happen at the start of a row and must not happen again in its second half.
AT_START = ("cut_mm", "salt_per_curd", *ADDED)


def geometry(form: Form | None) -> Geometry:
    """Shape of one cheese [mm], what it cools through and the area the press acts on; without a form a bed of curd."""
    if form is None:
        return Geometry()
    if form.shape == "cylinder":
        assert form.diameter_mm is not None
        area, rim = math.pi * form.diameter_mm**2 / 4.0, math.pi * form.diameter_mm
    else:
        width = form.width_mm or 0.0
        length = form.length_mm if form.length_mm is not None else width
        area, rim = length * width, 2.0 * (length + width)
    surface = 2.0 * area + rim * form.height_mm
    pressed = math.pi * form.follower_diameter_mm**2 / 4.0 if form.follower_diameter_mm is not None else area
    return Geometry(
        height_mm=form.height_mm,
        radius_mm=math.sqrt(area / math.pi),
        va_mm=area * form.height_mm / surface,
        press_area_m2=pressed * 1e-6,
        lever=form.lever,
        pieces=form.count,
    )


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
        lactate = starter.bulk_pct / 100.0 * acidity * 10.0 / presets()["lactic_acid"]["molar_g"]
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
            raise ValueError("give salt by mass or as a share of the milk, not by volume")
        return {"salt_per_milk": mass / milk.mass_kg}
    if addition.what == "calcium_chloride":
        if addition.volume_l is not None and addition.strength_pct is None:
            raise ValueError('calcium chloride by volume needs its solution, for example solution = "33 %"')
        dry = (addition_mass_kg(addition, milk) or 0.0) * (addition.strength_pct or 100.0) / 100.0
        return {"cacl2_g_kg": dry * 1000.0 / milk.mass_kg}
    if addition.what == "acid":
        acid = presets()["acid"][addition.acid]
        pure_g = (addition_mass_kg(addition, milk) or 0.0) * 1000.0 * _acid_strength(addition) / 100.0
        return {"acid_mol_kg": pure_g / acid["molar_g"] * acid["protons"] / milk.mass_kg}
    return {}


def _add(row: Row, columns: Row) -> None:
    """Doses add up; a shared lag is the mean by cells; the coagulant named last wins."""
    cells = sum(row[f"inoculum_{name}"] for name in schedule.POPULATIONS)
    more = sum(columns.get(f"inoculum_{name}", 0.0) for name in schedule.POPULATIONS)
    if more > 0.0:
        row["lag_h"] = (row["lag_h"] * cells + columns["lag_h"] * more) / (cells + more)
    for name in ADDED:
        row[name] += columns.get(name, 0.0)
    row["coagulant"] = columns.get("coagulant", row["coagulant"])


def _split(rows: list[Row], after_min: float) -> int:
    """Make a row begin `after_min` minutes into the stage; its index. Raises ValueError past the planned end."""
    start = 0.0
    for index, row in enumerate(rows):
        if after_min <= start + 1e-9:
            return index
        if after_min < start + row["minutes"] - 1e-9:
            first, rest = dict(row), split_tail(row, after_min - start)
            first |= {"minutes": after_min - start, "end_by": schedule.END_TIME, "end_value": 0.0, "earliest_min": 0.0}
            rest |= dict.fromkeys(AT_START, 0.0)
            if row["t_law"] == schedule.T_HOLD:
                rest["t_end_c"] = math.nan
            rows[index : index + 1] = [first, rest]
            return index + 1
        start += row["minutes"]
    raise ValueError("goes in after the stage has ended")


def _default_at(stages: Sequence[AnyStage]) -> str:
    return next((stage.id for stage in stages if stage.kind == "ripen"), stages[0].id)


def _lane(
    recipe: Recipe,
    lane: Recipe | Branch,
    milk: schedule.Milk,
    temperature_c: float,
    place: str = "",
) -> tuple[list[Row], dict[str, float], float | None]:
    """Rows of one lane, set temperature after each stage, and the planned minute of its first starter."""
    form = geometry(lane.form if lane.form is not None else recipe.form)
    default_at = _default_at(lane.stages)
    out: list[Row] = []
    temperatures: dict[str, float] = {}
    clock, starter_min = 0.0, None
    for index, stage in enumerate(lane.stages):
        where = place + stage_label(lane.stages, index)
        context = RowContext(
            index=index,
            milk=milk,
            geometry=form,
            room_c=recipe.room_c,
            temperature_c=temperature_c,
            heating_kw=recipe.vat.power_kw if recipe.vat is not None else None,
            milk_kj_per_kg_k=float(presets()["milk"]["heat_capacity"]),
        )
        rows = stage.rows(context)
        planned = sum(row["minutes"] for row in rows)
        given: list[Starter | Addition] = [each for each in lane.starters if (each.at or default_at) == stage.id]
        given += [each for each in lane.additions if each.at == stage.id]
        coagulant_row = None
        for each in given:
            try:
                columns = starter_columns(each, milk) if isinstance(each, Starter) else addition_columns(each, milk)
                at = _split(rows, each.after_min)
            except ValueError as error:
                raise RecipeError(f"“{each.name or each.id}”: {error}", where) from None
            _add(rows[at], columns)
            if isinstance(each, Starter) and (starter_min is None or clock + each.after_min < starter_min):
                starter_min = clock + each.after_min
            if columns.get("rennet_imcu_l"):
                coagulant_row = at if coagulant_row is None else min(at, coagulant_row)
        if stage.kind == "set":
            if coagulant_row is None:
                raise RecipeError(f'no coagulant goes in here; add one with at = "{stage.id}"', where)
            for row in rows[:coagulant_row]:
                row["gel"] = schedule.GEL_NONE
        out += rows
        temperature_c = stage.end_temperature_c(context)
        temperatures[stage.id] = temperature_c
        clock += planned
    return out, temperatures, starter_min


def lower(recipe: Recipe) -> schedule.Schedule:
    """The Schedule of a recipe: main lane first, branches after it in the order of the document.

    Raises RecipeError naming the stage or the milk for what a single field can't show: withheld milk, a set without
    coagulant, an addition after its stage has ended.
    """
    milk = blend(recipe)
    rows, temperatures, starter_min = _lane(recipe, recipe, milk, milk.temperature_c)
    lanes = [schedule.Lane(schedule.as_rows(rows), tuple(stage.id for stage in recipe.stages))]
    for branch in recipe.branches:
        place = f"branch “{branch.name or branch.id}”, "
        branch_rows, _, _ = _lane(recipe, branch, milk, temperatures[branch.after], place)
        lanes.append(
            schedule.Lane(
                schedule.as_rows(branch_rows),
                tuple(stage.id for stage in branch.stages),
                branch_id=branch.id,
                after_stage=branch.after,
                share=branch.share_pct / 100.0,
                of=branch.of,
            )
        )
    return schedule.Schedule(
        milk=milk,
        lanes=tuple(lanes),
        clock_start_min=None if recipe.start_clock_min is None else round(recipe.start_clock_min),
        starter_min=0.0 if starter_min is None else starter_min,
        pieces=recipe.form.count if recipe.form is not None else 1,
        room_c=recipe.room_c,
    )
