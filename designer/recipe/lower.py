"""From what the maker means to arrays: a Recipe becomes a Schedule (milk, rows of every lane)."""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import replace

from designer.language import say
from designer.recipe import schedule
from designer.recipe.document import Addition, Branch, Form, Recipe, Starter, Vat, stage_label
from designer.recipe.dose import addition_columns, starter_columns
from designer.recipe.error import RecipeError
from designer.recipe.milk import blend
from designer.recipe.presets import presets
from designer.recipe.stages.kinds import AnyStage
from designer.recipe.stages.stage import Geometry, Row, RowContext, Stage, VatStage
from designer.recipe.vat_heat import VatHeat


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


ROUND = 6.0 * math.pi * (1.0 / (2.0 * math.pi)) ** (2.0 / 3.0)
"""Surface of a cylinder as wide as it is high, over its volume to the power 2/3."""


def vat_heat(vat: Vat | None, milk_kg: float, litres: float, room_c: float) -> VatHeat | None:
    """The heat of a vat with its milk; None without a vat. It loses heat where its surface or its loss is given, or
    where it is unheated."""
    if vat is None:
        return None
    usual = presets()["vat"]
    area = ROUND * (litres / 1000.0) ** (2.0 / 3.0) if vat.area_m2 is None else vat.area_m2
    losing = vat.unheated or vat.area_m2 is not None or vat.u_w_m2k is not None
    loss = float(usual["loss"]) if vat.u_w_m2k is None else vat.u_w_m2k
    jacket = float(usual["jacket"]) if vat.jacket_u_w_m2k is None else vat.jacket_u_w_m2k
    jacket_area = area * float(usual["jacketed"]) if vat.jacket_area_m2 is None else vat.jacket_area_m2
    return VatHeat(
        milk_kg=max(milk_kg, 1e-9),
        room_c=room_c,
        power_kw=vat.power_kw,
        loss_kw_k=loss * area / 1000.0 if losing else 0.0,
        jacket_kw_k=0.0 if vat.cooling_c is None else jacket * jacket_area / 1000.0,
        cooling_c=vat.cooling_c,
        unheated=vat.unheated,
        kj_per_kg_k=float(presets()["milk"]["heat_capacity"]),
    )


def _add(row: Row, columns: Row) -> None:
    """Doses add up; a shared lag is the mean by cells; the coagulant named last wins."""
    cells = sum(row[f"inoculum_{name}"] for name in schedule.POPULATIONS)
    more = sum(columns.get(f"inoculum_{name}", 0.0) for name in schedule.POPULATIONS)
    if more > 0.0:
        row["lag_h"] = (row["lag_h"] * cells + columns["lag_h"] * more) / (cells + more)
    for name in schedule.ADDED:
        row[name] += columns.get(name, 0.0)
    row["coagulant"] = columns.get("coagulant", row["coagulant"])


def _split(rows: list[Row], after_min: float) -> int:
    """Make a row begin `after_min` minutes into the stage; its index. Raises ValueError past the planned end."""
    start = 0.0
    for index, row in enumerate(rows):
        if after_min <= start + 1e-9:
            return index
        if after_min < start + row["minutes"] - 1e-9:
            first, rest = schedule.split(row, after_min - start)
            # The end belongs to the last row: what goes in midway goes in, met or not.
            first |= {"end_by": schedule.END_TIME, "end_value": 0.0, "earliest_min": 0.0}
            rows[index : index + 1] = [first, rest]
            return index + 1
        start += row["minutes"]
    raise ValueError(say("goes in after the stage has ended"))


def _default_at(stages: Sequence[AnyStage]) -> str:
    return next((stage.id for stage in stages if stage.kind == "ripen"), stages[0].id)


def temperatures_before(recipe: Recipe, milk_c: float) -> dict[str, float]:
    """Stage id -> temperature it starts from, as far as it is set [°C]; nan where it follows a room or comes of mixing.

    `milk_c` is that of the milk as it comes into the vat. An unheated vat has cooled by then.
    """
    vat = None
    if recipe.vat is not None and recipe.vat.unheated:
        milk = blend(recipe)
        vat = vat_heat(recipe.vat, milk.mass_kg, milk.mass_kg / milk.density_kg_l, recipe.room_c)
    out: dict[str, float] = {}
    ends: dict[str, float] = {}
    for lane in recipe.lanes():
        now = ends[lane.after] if isinstance(lane, Branch) else milk_c
        for stage in lane.stages:
            out[stage.id] = now
            now = ends[stage.id] = _left(stage, now, vat)
    return out


def _left(stage: AnyStage, start_c: float, vat: VatHeat | None) -> float:
    """Temperature at the end of a stage [°C], cooled where nothing is set and the vat is unheated."""
    end_c = stage.end_temperature_c(start_c)
    alone = vat is not None and isinstance(stage, VatStage) and stage.temperature_c is None
    if not alone or stage.end.by == "temperature" or stage.PLACE > schedule.PLACE_UNDER_WHEY:
        return end_c
    assert vat is not None
    return vat.left_alone_c(end_c, stage.end.planned_min)


def given_at(lane: Recipe | Branch, stage: Stage) -> tuple[Starter | Addition, ...]:
    """What goes in at a stage: starters, then additions, as the document has them."""
    default_at = _default_at(lane.stages)
    starters = tuple(each for each in lane.starters if (each.at or default_at) == stage.id)
    return (*starters, *(each for each in lane.additions if each.at == stage.id))


WHEY_OF_MILK = 0.88
"""Whey of a kilogram of milk where the forecast has not said yet how much there is (100 less about 12 of curd)."""


def milk_left(recipe: Recipe, index: int, milk: schedule.Milk) -> float:
    """Share of the milk whose curd is still in the main make at its stage `index`: less what branches took before."""
    left, fat = 1.0, milk.fat / 1000.0
    for stage in recipe.stages[:index]:
        gone = {"cream": 0.0, "curd": 0.0, "whey": 0.0}
        for branch in recipe.branches:
            if branch.after == stage.id:
                gone[branch.of] += branch.share_pct / 100.0
        skimmed = 1.0 - gone["cream"] * fat / schedule.CREAM_FAT
        fat *= (1.0 - gone["cream"]) / skimmed
        left *= skimmed * (1.0 - gone["curd"])
    return left


def _held_by(recipe: Recipe, branch: Branch, milk: schedule.Milk) -> float:
    """Kilograms of milk, whey or cream that a branch begins with, for each kilogram of the first milk; whey roughly."""
    index = next(at for at, stage in enumerate(recipe.stages) if stage.id == branch.after)
    held = {"curd": 1.0, "whey": WHEY_OF_MILK, "cream": milk.fat / 1000.0 / schedule.CREAM_FAT}[branch.of]
    return milk_left(recipe, index, milk) * held * branch.share_pct / 100.0


def contexts_of(
    recipe: Recipe, lane: Recipe | Branch, milk: schedule.Milk, starts_c: Mapping[str, float]
) -> list[RowContext]:
    """What each stage of a lane may know of the make; `starts_c` as `temperatures_before` says.

    `milk` is what the lane began with; of the main make, what branches took before a stage is taken off here.
    """
    form = geometry(lane.form if lane.form is not None else recipe.form)
    parts = isinstance(lane, Recipe) and bool(recipe.branches)
    out: list[RowContext] = []
    behind, vat = milk, vat_heat(recipe.vat, milk.mass_kg, milk.mass_kg / milk.density_kg_l, recipe.room_c)
    for index, stage in enumerate(lane.stages):
        left = milk_left(recipe, index, milk) if parts else 1.0
        if left != 1.0:
            behind = replace(milk, mass_kg=max(milk.mass_kg * left, 1e-9))
            vat = vat_heat(recipe.vat, behind.mass_kg, behind.mass_kg / milk.density_kg_l, recipe.room_c)
        out.append(RowContext(index, behind, form, recipe.room_c, starts_c[stage.id], vat))
    return out


def stage_rows(
    stage: Stage, given: Sequence[Starter | Addition], context: RowContext, where: str
) -> tuple[list[Row], float | None]:
    """Rows of one stage with what goes in there, and the minute of it at which the first starter does.

    Raises RecipeError, naming `where`, for a dose after the stage has ended or a set without coagulant.
    """
    try:
        rows = stage.rows(context)
    except ValueError as error:
        raise RecipeError(str(error), where) from None
    starter_min: float | None = None
    coagulant_row: int | None = None
    for each in given:
        try:
            milk = context.milk
            columns = starter_columns(each, milk) if isinstance(each, Starter) else addition_columns(each, milk)
            at = _split(rows, each.after_min)
        except ValueError as error:
            raise RecipeError(f"“{each.name or each.id}”: {error}", where) from None
        _add(rows[at], columns)
        if isinstance(each, Starter):
            starter_min = each.after_min if starter_min is None else min(starter_min, each.after_min)
        if columns.get("rennet_imcu_l"):
            coagulant_row = at if coagulant_row is None else min(at, coagulant_row)
    if stage.kind == "set":
        if coagulant_row is None:
            raise RecipeError(say('no coagulant goes in here; add one with at = "{id}"', id=stage.id), where)
        for row in rows[:coagulant_row]:
            row["gel"] = schedule.GEL_NONE
    return rows, starter_min


def _lane(
    recipe: Recipe, lane: Recipe | Branch, milk: schedule.Milk, starts_c: dict[str, float]
) -> tuple[list[Row], float | None]:
    """Rows of one lane, and the planned minute of its first starter."""
    place = say("branch “{name}”, ", name=lane.name or lane.id) if isinstance(lane, Branch) else ""
    out: list[Row] = []
    clock, starter_min = 0.0, None
    for index, (stage, context) in enumerate(zip(lane.stages, contexts_of(recipe, lane, milk, starts_c), strict=True)):
        where = place + stage_label(lane.stages, index)
        rows, first = stage_rows(stage, given_at(lane, stage), context, where)
        if first is not None and (starter_min is None or clock + first < starter_min):
            starter_min = clock + first
        out += rows
        clock += sum(row["minutes"] for row in rows)
    return out, starter_min


def lower(recipe: Recipe) -> schedule.Schedule:
    """The Schedule of a recipe: main lane first, branches after it in the order of the document.

    Raises RecipeError naming the stage or the milk for what a single field can't show: withheld milk, a set without
    coagulant, an addition after its stage has ended.
    """
    milk = blend(recipe)
    starts_c = temperatures_before(recipe, milk.temperature_c)
    rows, starter_min = _lane(recipe, recipe, milk, starts_c)
    lanes = [schedule.Lane(schedule.as_rows(rows), tuple(stage.id for stage in recipe.stages))]
    for branch in recipe.branches:
        lanes.append(lower_branch(recipe, branch, milk, milk.mass_kg * _held_by(recipe, branch, milk)))
    return schedule.Schedule(
        milk=milk,
        lanes=tuple(lanes),
        clock_start_min=None if recipe.start_clock_min is None else round(recipe.start_clock_min),
        starter_min=0.0 if starter_min is None else starter_min,
        pieces=recipe.form.count if recipe.form is not None else 1,
        room_c=recipe.room_c,
    )


def lower_branch(recipe: Recipe, branch: Branch, milk: schedule.Milk, holds_kg: float) -> schedule.Lane:
    """The rows of a branch that begins with `holds_kg` of milk (as curd with its whey), whey or cream: amounts said in
    kilograms or litres count for that, not for the whole vat.

    `milk` is that of the recipe. Raises RecipeError as `lower` does.
    """
    starts_c = temperatures_before(recipe, milk.temperature_c)
    rows, _ = _lane(recipe, branch, replace(milk, mass_kg=max(holds_kg, 1e-9)), starts_c)
    return schedule.Lane(
        schedule.as_rows(rows), tuple(stage.id for stage in branch.stages), branch_id=branch.id,
        after_stage=branch.after, share=branch.share_pct / 100.0, of=branch.of,
    )  # fmt: skip
