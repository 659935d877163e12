"""Scaling: every figure has its line and its rule, and the cheese comes out as it was."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from designer.recipe.document import Form, Recipe, Vat
from designer.recipe.dose import rennet_imcu_per_l
from designer.recipe.edit import edit, edit_form, edit_recipe
from designer.recipe.end import after
from designer.recipe.error import RecipeError
from designer.recipe.file import read
from designer.recipe.lower import geometry, lower, vat_heat
from designer.recipe.milk import blend
from designer.recipe.scale import scale
from designer.recipe.scaling import Line, Scaled
from designer.recipe.stages.press import Press
from tests.recipe.samples import CHEDDAR, EXAMPLES

GOUDA = CHEDDAR.with_name("weirside-gouda.toml")
THIMBLE = CHEDDAR.with_name("little-thimble.toml")


def line(scaled: Scaled, part: str, what: str) -> Line:
    return next(one for one in scaled.lines if one.part == part and one.what == what)


def kpa(recipe: Recipe) -> list[float]:
    rows = lower(recipe).lanes[0].rows
    return [float(one) for one in rows["load_kpa"] if one > 0.0]


@pytest.mark.parametrize("path", EXAMPLES, ids=lambda path: path.stem)
@given(litres=st.sampled_from([8.0, 45.46, 300.0]), forms=st.sampled_from(["many", "large"]))
def test_what_the_model_sees_stays(path: object, litres: float, forms: str) -> None:
    """Per kilogram of milk nothing has changed but the shape of the cheese, brining and, with power, warming."""
    recipe = read(path)  # type: ignore[arg-type]
    new = scale(recipe, litres, forms=forms).recipe  # type: ignore[arg-type]
    milk = blend(new)
    assert milk.mass_kg / milk.density_kg_l == pytest.approx(litres, rel=1e-6)
    assert kpa(new) == pytest.approx(kpa(recipe), rel=1e-6)
    for before, now in zip(lower(recipe).lanes[0].rows, lower(new).lanes[0].rows, strict=True):
        for name in ("rennet_imcu_l", "cacl2_g_kg", "inoculum_meso", "inoculum_strep", "water_on", "salt_per_curd"):
            assert now[name] == pytest.approx(before[name], rel=1e-5, abs=1e-12)


@pytest.mark.parametrize("path", EXAMPLES, ids=lambda path: path.stem)
def test_nothing_changes_without_a_line(path: object) -> None:
    """As many lines as changed figures at the least: each changed part of the document is spoken of."""
    recipe = read(path)  # type: ignore[arg-type]
    scaled = scale(recipe, 300.0, forms="large")
    told = {one.part for one in scaled.lines if one.changed}
    for lane, new in zip(recipe.lanes(), scaled.recipe.lanes(), strict=True):
        for name in ("starters", "additions", "stages"):
            for old_part, new_part in zip(getattr(lane, name), getattr(new, name), strict=True):
                assert old_part == new_part or old_part.id in told, old_part.id
    for stage in recipe.stages:
        assert any(one.part == stage.id for one in scaled.lines)


def test_many_forms_hold_as_much_curd_as_before() -> None:
    scaled = scale(read(GOUDA), 300.0)
    form = scaled.recipe.form
    assert form is not None
    assert form.count == 8  # 7.5 made whole
    assert form.height_mm == pytest.approx(80.0 * 7.5 / 8.0)
    brine = scaled.recipe.stage("brine")
    assert brine.end.planned_min == pytest.approx(read(GOUDA).stage("brine").end.planned_min * (7.5 / 8.0) ** 2)
    assert line(scaled, "brine", "length").rule == "by thickness squared"


def test_one_large_keeps_its_proportions_and_its_pressure() -> None:
    recipe = edit_form(read(GOUDA), follower_diameter_mm=240.0)
    scaled = scale(recipe, 640.0, forms="large")
    old, new = recipe.form, scaled.recipe.form
    assert old is not None
    assert new is not None
    assert new.diameter_mm == pytest.approx(2.0 * (old.diameter_mm or 0.0))
    assert new.height_mm == pytest.approx(2.0 * old.height_mm)
    assert line(scaled, "press", "step 1: load").rule == "by area"
    press, before = scaled.recipe.stage("press"), recipe.stage("press")
    assert isinstance(press, Press)
    assert isinstance(before, Press)
    assert press.steps[0].load_kg == pytest.approx(4.0 * (before.steps[0].load_kg or 0.0))
    assert scaled.recipe.stage("brine").end.planned_min == pytest.approx(4.0 * recipe.stage("brine").end.planned_min)


def test_a_form_of_ones_own_takes_its_height_from_the_curd() -> None:
    recipe = read(GOUDA)
    wheel = Form(shape="cylinder", diameter_mm=400.0, height_mm=50.0, count=3)
    new = scale(recipe, 240.0, forms=wheel).recipe.form
    assert new is not None
    assert recipe.form is not None

    def held(form: Form) -> float:
        return geometry(form).radius_mm ** 2 * form.height_mm * form.count

    assert held(new) == pytest.approx(3.0 * held(recipe.form))


def test_warming_takes_what_the_vat_needs() -> None:
    """300 L by 8 °C is 300 × 1.03 × 3.93 × 8 kJ, in 35 min 4.6 kW: a 3 kW vat takes 54 min."""
    cook = next(stage.id for stage in read(CHEDDAR).stages if stage.kind == "cook")
    recipe = edit(read(CHEDDAR), cook, temperature_c=39.0, ramp_min=None, end=after(35.0))
    told = line(scale(recipe, 300.0), cook, "length")
    assert told.rule == "to be checked"
    assert "kW for so much milk; give the vat its power" in told.why
    slow = scale(recipe, 300.0, vat=Vat(power_kw=3.0))
    assert slow.recipe.stage(cook).end.planned_min == pytest.approx(54.0, abs=1.0)
    assert line(slow, cook, "length").rule == "by the vat's power"
    quick = scale(recipe, 300.0, vat=Vat(power_kw=20.0))
    assert quick.recipe.stage(cook) == recipe.stage(cook)


def test_warming_counts_what_the_vat_loses() -> None:
    """The time is that of the forecast's own vat; one that loses as much as it is given never gets there."""
    recipe = read(CHEDDAR)
    cook = recipe.stages[[stage.kind for stage in recipe.stages].index("cook")].id
    tight, leaking = (scale(recipe, 300.0, vat=Vat(power_kw=3.0, u_w_m2k=u)) for u in (1.0, 25.0))
    milk = blend(leaking.recipe)
    heat = vat_heat(leaking.recipe.vat, milk.mass_kg, milk.mass_kg / milk.density_kg_l, recipe.room_c)
    assert heat is not None
    needed = heat.least_minutes(31.0, 39.0)
    assert needed is not None
    assert leaking.recipe.stage(cook).end.planned_min == pytest.approx(needed, abs=1.0)
    assert leaking.recipe.stage(cook).end.planned_min > tight.recipe.stage(cook).end.planned_min + 4.0
    never = line(scale(recipe, 300.0, vat=Vat(power_kw=1.0, u_w_m2k=40.0)), cook, "warm over")
    assert never.rule == "to be checked"
    assert "at the most" in never.why


def test_the_vat_of_the_old_recipe_is_asked_about() -> None:
    recipe = edit_recipe(read(CHEDDAR), vat=Vat(power_kw=2.0))
    assert line(scale(recipe, 300.0), "vat", "power").rule == "to be checked"


def test_too_small_to_weigh_or_measure() -> None:
    scaled = scale(read(THIMBLE), 8.0)
    mould = next(one for one in scaled.lines if "mould" in one.of)
    assert "too little to weigh: stir 0.5 g" in mould.why
    rennet = next(one for one in scaled.lines if "rennet" in one.of)
    assert "let 1 mL down to 10 mL" in rennet.why
    dose, before = (
        next(each for each in one.additions if each.what == "coagulant") for one in (scaled.recipe, read(THIMBLE))
    )
    assert rennet_imcu_per_l(dose, blend(scaled.recipe)) == pytest.approx(
        rennet_imcu_per_l(before, blend(read(THIMBLE))), rel=1e-5
    )


def test_an_amount_that_cannot_be() -> None:
    with pytest.raises(RecipeError, match="between"):
        scale(read(CHEDDAR), 0.0)
