"""From the recipe to Schedule rows: doses, loads, splits, temperatures, branches, and what can't be made."""

from __future__ import annotations

import math
from pathlib import Path

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from designer.recipe import edit as change
from designer.recipe import schedule
from designer.recipe.document import Addition, Form, Recipe, Starter
from designer.recipe.dose import addition_columns, rennet_imcu_per_l, starter_columns
from designer.recipe.edit import edit, edit_addition, edit_end, edit_milk, edit_starter
from designer.recipe.end import after
from designer.recipe.error import RecipeError
from designer.recipe.file import read, reads
from designer.recipe.lower import geometry, lower, temperatures_before
from designer.recipe.milk import blend
from tests.recipe.samples import CHEDDAR, EXAMPLES, STAGES, every_stage
from tests.recipe.test_writing import BRANCH, TEXT

MILK = schedule.Milk(103.0, 1.03, 37.0, 26.0, 7.0, 47.0, 7.0, 6.65, "cow", 1.2)  # 100 L


def rows_of(recipe: Recipe, stage_id: str) -> np.ndarray:
    lane = lower(recipe).lanes[0]
    return lane.rows[lane.rows["stage"] == lane.stage_ids.index(stage_id)]


@pytest.mark.parametrize("path", EXAMPLES, ids=lambda path: path.stem)
def test_examples_lower(path: Path) -> None:
    recipe = read(path)
    made = lower(recipe)
    rows = made.lanes[0].rows
    assert made.lanes[0].stage_ids == tuple(stage.id for stage in recipe.stages)
    assert rows.dtype == schedule.ROW
    assert (np.diff(rows["stage"]) >= 0).all()
    assert set(rows["stage"]) == set(range(len(recipe.stages)))
    assert (rows["minutes"] > 0).all()
    for index, stage in enumerate(recipe.stages):
        minutes = rows["minutes"][rows["stage"] == index].sum()
        if stage.end.by == "temperature":  # known beforehand, so the latest is not waited for
            assert minutes <= stage.end.planned_min
        else:
            assert minutes == pytest.approx(stage.end.planned_min)
    assert rows["inoculum_meso"].sum() + rows["inoculum_strep"].sum() > 0.0005
    assert rows["rennet_imcu_l"].sum() > 1.0


def test_every_kind_lowers() -> None:
    made = lower(reads(every_stage()))
    assert set(made.lanes[0].rows["stage"]) == set(range(len(STAGES)))
    for name in schedule.COLUMNS:
        column = made.lanes[0].rows[name]
        assert np.isfinite(column).all() or name == "t_end_c"


# --- Doses (set-and-acid 1.1 and 2.5, maker stories 1 and 2) -------------------------------------------------------


def coagulant(**fields: object) -> Addition:
    return Addition.model_validate({"id": "r", "what": "coagulant", "at": "set", "strength_imcu_ml": 200.0} | fields)


@pytest.mark.parametrize(
    ("strength", "millilitres"),
    [(200.0, 22.5), (280.0, 16.07), (600.0, 7.5)],  # 45 IMCU/L in 100 L
)
def test_rennet_strength(strength: float, millilitres: float) -> None:
    dose = coagulant(strength_imcu_ml=strength, volume_l=millilitres / 1000.0)
    assert rennet_imcu_per_l(dose, MILK) == pytest.approx(45.0, abs=0.05)


def test_rennet_of_another_vat() -> None:
    """8 mL of 200 IMCU/mL in 43.7 L are 36.6 IMCU/L; 10 L want 0.73 mL of 500 IMCU/mL."""
    vat = schedule.Milk(43.7 * 1.03, 1.03, 37.0, 26.0, 7.0, 47.0, 7.0, 6.65, "cow", 1.2)
    assert rennet_imcu_per_l(coagulant(volume_l=0.008), vat) == pytest.approx(36.6, abs=0.05)
    small = schedule.Milk(10.3, 1.03, 37.0, 26.0, 7.0, 47.0, 7.0, 6.65, "cow", 1.2)
    assert rennet_imcu_per_l(coagulant(strength_imcu_ml=500.0, volume_l=0.00073), small) == pytest.approx(36.6, abs=0.2)


def test_rennet_loses_by_age_and_powder_goes_by_mass() -> None:
    fresh = rennet_imcu_per_l(coagulant(volume_l=0.02), MILK)
    assert rennet_imcu_per_l(coagulant(volume_l=0.02, age_months=6.0), MILK) == pytest.approx(fresh * 0.985**6)
    powder = coagulant(strength_imcu_ml=2200.0, mass_kg=0.002, coagulant="microbial")
    columns = addition_columns(powder, MILK)
    assert columns["rennet_imcu_l"] == pytest.approx(44.0)
    assert columns["coagulant"] == schedule.COAGULANT_MICROBIAL
    assert addition_columns(coagulant(mass_pct=0.02), MILK)["rennet_imcu_l"] == pytest.approx(41.2, abs=0.01)


def starter(**fields: object) -> Starter:
    return Starter.model_validate({"id": "s", "kind": "mesophilic"} | fields)


def test_starters_that_are_the_same_dose() -> None:
    """1 % of a 1e9 culture = 10 g of 1e11 CFU/g in 100 L = 10 units in 100 L = 1e7 cells per mL."""
    doses = (
        starter(bulk_pct=1.0),
        starter(mass_kg=0.010, potency_cfu_g=1e11),
        starter(units=10.0),
        starter(units=6.5, units_per_100l=6.5),
        starter(cells_per_ml=1e7),
    )
    for dose in doses:
        assert starter_columns(dose, MILK)["inoculum_meso"] == pytest.approx(0.01)


def test_populations_lag_and_acid_of_a_starter() -> None:
    yoghurt = starter_columns(starter(kind="yoghurt", bulk_pct=1.0, acidity_pct=0.9), MILK)
    assert yoghurt["inoculum_strep"] == yoghurt["inoculum_rods"] == pytest.approx(0.005)
    assert yoghurt["inoculum_lactate"] == pytest.approx(0.01 * (9.0 - 1.5) / 90.08)
    whey = starter_columns(starter(kind="whey", bulk_pct=1.0), MILK)
    assert whey["inoculum_rods"] > whey["inoculum_strep"]
    alpine = starter_columns(starter(kind="alpine", bulk_pct=1.0), MILK)
    assert alpine["inoculum_strep"] > alpine["inoculum_rods"] > 0.0
    assert (
        starter_columns(starter(bulk_pct=1.0), MILK)["lag_h"]
        < starter_columns(starter(units=9.0, direct=True), MILK)["lag_h"]
    )
    assert starter_columns(starter(mass_kg=0.01, potency_cfu_g=1e11), MILK)["inoculum_lactate"] == 0.0


def test_calcium_acid_and_salt() -> None:
    solid = Addition(id="a", what="calcium_chloride", at="x", mass_pct=0.02)
    assert addition_columns(solid, MILK)["cacl2_g_kg"] == pytest.approx(0.2)
    # 0.02 % of 100 kg is 20 g dry, or 61 g of a 33 % solution.
    solution = Addition(id="a", what="calcium_chloride", at="x", mass_kg=0.0618, strength_pct=33.0)
    assert addition_columns(solution, MILK)["cacl2_g_kg"] == pytest.approx(0.198, abs=0.001)
    poured = Addition(id="a", what="calcium_chloride", at="x", volume_l=0.047, strength_pct=33.0)
    assert addition_columns(poured, MILK)["cacl2_g_kg"] == pytest.approx(0.198, abs=0.003)
    lactic = Addition(id="a", what="acid", acid="lactic", at="x", mass_kg=0.1, strength_pct=80.0)
    assert addition_columns(lactic, MILK)["acid_mol_kg"] == pytest.approx(80.0 / 90.08 * 0.98 / 103.0)
    for name in ("citric", "acetic"):
        acid = Addition(id="a", what="acid", acid=name, at="x", volume_l=0.5)  # type: ignore[arg-type]
        assert addition_columns(acid, MILK)["acid_mol_kg"] > 0.0
    assert addition_columns(Addition(id="a", what="salt", at="x", mass_pct=0.25), MILK)[
        "salt_per_milk"
    ] == pytest.approx(0.0025)
    assert addition_columns(Addition(id="a", what="herbs", at="x", mass_kg=0.1), MILK) == {}


# --- Form and press ------------------------------------------------------------------------------------------------


def test_press_by_pressure() -> None:
    """10 kg, lever 4, 20 cm across: 12.5 kPa. 14.5 cm and 58.0 kg: 34.5 kPa (5 psi)."""
    recipe = read(CHEDDAR)
    assert rows_of(recipe, "press")["load_kpa"][0] == pytest.approx(12.5, abs=0.05)
    small = change.edit_form(recipe, diameter_mm=145.0, lever=1.0)
    step = {"load_kg": 58.0, "length_min": 60.0}
    assert rows_of(edit(small, "press", steps=(step,)), "press")["load_kpa"][0] == pytest.approx(34.5, abs=0.1)
    wide = change.edit_form(small, follower_diameter_mm=290.0)
    assert rows_of(edit(wide, "press", steps=(step,)), "press")["load_kpa"][0] == pytest.approx(34.5 / 4.0, abs=0.1)


def test_shapes() -> None:
    round_ = geometry(Form(diameter_mm=200.0, height_mm=100.0, count=3))
    assert (round_.radius_mm, round_.height_mm, round_.pieces) == (pytest.approx(100.0), 100.0, 3)
    assert round_.va_mm == pytest.approx(25.0)  # R H / 2 (R + H)
    block = geometry(Form(shape="block", length_mm=300.0, width_mm=200.0, height_mm=100.0))
    assert math.pi * block.radius_mm**2 == pytest.approx(60_000.0)
    assert block.press_area_m2 == pytest.approx(0.06)
    pyramid = geometry(Form(shape="pyramid", width_mm=70.0, height_mm=70.0))
    assert math.pi * pyramid.radius_mm**2 == pytest.approx(4900.0)


def test_a_press_that_ends_by_ph() -> None:
    rows = rows_of(reads(every_stage()), "press")
    assert list(rows["minutes"]) == [60.0, 420.0]
    assert list(rows["end_by"]) == [schedule.END_TIME, schedule.END_PH]
    assert list(rows["earliest_min"]) == [0.0, 0.0]
    assert rows["load_kpa"][1] == pytest.approx(34.47, abs=0.01)


# --- Splits and temperatures ---------------------------------------------------------------------------------------


def test_an_addition_in_the_middle_splits_the_stage() -> None:
    rows = rows_of(read(CHEDDAR), "ripen")
    assert list(rows["minutes"]) == [30.0, 30.0]
    assert list(rows["cacl2_g_kg"]) == [0.0, pytest.approx(0.1457, abs=1e-4)]
    assert list(rows["inoculum_meso"]) == [pytest.approx(0.01), 0.0]


def test_a_split_ramp_keeps_its_pace() -> None:
    recipe = change.add(read(CHEDDAR), Addition(id="herbs", what="salt", at="warm", after_min=10.0, mass_kg=0.1))
    rows = rows_of(recipe, "warm")
    assert list(rows["minutes"]) == [10.0, 25.0]
    assert list(rows["ramp_min"]) == [35.0, 25.0]  # both halves climb at the same pace to the same end
    assert list(rows["t_end_c"]) == [39.0, 39.0]
    late = edit_addition(edit(recipe, "warm", ramp_min=5.0), "herbs", after_min=10.0)
    rows = rows_of(late, "warm")
    assert rows["t_law"][1] == schedule.T_HOLD
    assert math.isnan(rows["t_end_c"][1])


def test_a_split_state_end_stays_with_the_last_row() -> None:
    recipe = change.add(read(CHEDDAR), Addition(id="salt-2", what="salt", at="stack", after_min=30.0, mass_kg=0.1))
    rows = rows_of(recipe, "stack")
    assert list(rows["end_by"]) == [schedule.END_TIME, schedule.END_PH]
    assert list(rows["minutes"]) == [30.0, 150.0]
    assert list(rows["earliest_min"]) == [0.0, 30.0]


def test_cutting_and_salt_happen_once() -> None:
    recipe = change.add(read(CHEDDAR), Addition(id="herbs", what="salt", at="salt", after_min=5.0, mass_kg=0.1))
    rows = rows_of(recipe, "salt")
    assert list(rows["salt_per_curd"]) == [pytest.approx(0.028), 0.0]
    assert rows["salt_per_milk"][1] > 0.0


def test_rennet_later_in_the_set_gels_from_there() -> None:
    rows = rows_of(edit_addition(read(CHEDDAR), "rennet", after_min=5.0), "set")
    assert list(rows["gel"]) == [schedule.GEL_NONE, schedule.GEL_RENNET]


def test_starter_goes_in_where_nothing_is_said() -> None:
    recipe = edit_starter(read(CHEDDAR), "bulk", at="")
    assert rows_of(recipe, "ripen")["inoculum_meso"][0] > 0.0
    assert lower(edit_starter(recipe, "bulk", after_min=20.0)).starter_min == 20.0


def test_two_starters_share_a_lag_by_their_cells() -> None:
    more = Starter(id="direct", kind="thermophilic", units=10.0, direct=True, at="ripen")
    row = rows_of(change.add(read(CHEDDAR), more), "ripen")[0]
    assert row["lag_h"] == pytest.approx((0.4 + 1.2) / 2.0, abs=0.02)


def test_wash_is_whey_off_then_water_then_stirring() -> None:
    gouda = next(path for path in EXAMPLES if "gouda" in path.stem)
    recipe = edit(read(gouda), "wash", whey_off_pct=35.0, off_min=5.0, on_min=17.0, water_pct=22.0, end=after(45.0))
    rows = rows_of(recipe, "wash")
    assert list(rows["minutes"]) == [5.0, 17.0, 23.0]
    assert list(rows["whey_off"]) == [pytest.approx(0.35), 0.0, 0.0]
    assert list(rows["water_on"]) == [0.0, pytest.approx(0.22), 0.0]
    by_volume = edit(read(gouda), "wash", water_pct=None, water_l=18.0)
    assert rows_of(by_volume, "wash")["water_on"][1] == pytest.approx(18.0 / 82.4, abs=0.001)


def test_heating_takes_what_the_vat_can_give() -> None:
    """103 kg · 3.93 kJ/kg K · 21 K / 10 kW = 850 s."""
    rows = rows_of(reads(every_stage()), "heat")
    pace = 21.0 / (rows["ramp_min"][0] / (rows["t_end_c"][0] - 10.0) * 21.0)
    assert 21.0 / pace == pytest.approx(850.0 / 60.0, rel=0.01)
    assert rows["t_end_c"][0] > 31.0  # crossed, not just touched
    with pytest.raises(RecipeError, match=r"stage 1, “heat”.*vat its power"):
        lower(reads(every_stage().replace('[vat]\npower = "10 kW"\n', "")))


def test_temperatures_are_tracked_as_far_as_they_are_set() -> None:
    recipe = read(CHEDDAR)
    known = temperatures_before(recipe, 31.0)
    assert (known["ripen"], known["warm"], known["hold"], known["fill"]) == (31.0, 31.0, 39.0, 31.0)
    assert math.isnan(known["press"])


# --- Branches ------------------------------------------------------------------------------------------------------


def test_a_branch_is_a_lane() -> None:
    made = lower(reads(TEXT + BRANCH))
    main, branch = made.lanes
    assert (branch.branch_id, branch.after_stage, branch.share, branch.of) == ("whey-cheese", "drain", 0.8, "whey")
    assert branch.stage_ids == ("curdle", "basket")
    assert branch.rows["gel"][0] == schedule.GEL_ACID_HEAT
    assert branch.rows["acid_mol_kg"][0] > 0.0
    assert branch.rows["height_mm"][-1] == 80.0
    assert main.branch_id is None


# --- What can't be made ----------------------------------------------------------------------------------------------


def test_what_can_t_be_made_says_where() -> None:
    recipe = read(CHEDDAR)
    for broken, words in (
        (
            edit_milk(recipe, "morning", withheld=True),
            "milk 1, “morning milk”: milk withheld because of medicine can't be used",
        ),
        (edit_milk(recipe, "morning", breed="unicorn"), "no preset for the breed “unicorn”"),
        (edit_milk(recipe, "morning", breed="saanen"), "“Saanen” is a goat breed, not cow"),
        (change.take_out(recipe, "rennet"), "stage 2, “set”: no coagulant goes in here"),
        (
            edit_addition(recipe, "calcium", after_min=90.0),
            "stage 1, “ripen”: “calcium”: goes in after the stage has ended",
        ),
        (edit_addition(recipe, "calcium", mass_kg=None, volume_l=0.01), "needs its solution"),
    ):
        with pytest.raises(RecipeError) as caught:
            lower(broken)
        assert words in str(caught.value)


# --- Milk ------------------------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("fat", "protein", "lactose", "ash", "density"),
    [(4.0, 3.25, 4.9, 0.8, 1.0302), (3.6, 3.3, 4.6, 0.7, 1.0291), (0.02, 3.4, 4.8, 0.7, 1.0334)],
)
def test_density_by_components(fat: float, protein: float, lactose: float, ash: float, density: float) -> None:
    from designer.recipe.milk import density_walstra

    assert density_walstra(fat, protein, lactose, ash) == pytest.approx(density, abs=0.0006)


@given(
    st.lists(
        st.tuples(st.sampled_from(["cow", "goat", "sheep", "buffalo"]), st.floats(1.0, 500.0), st.floats(1.0, 8.0)),
        min_size=1,
        max_size=4,
    )
)
def test_blending_is_a_mass_balance(sources: list[tuple[str, float, float]]) -> None:
    base = read(CHEDDAR)
    milks = [
        {"id": f"m{index}", "species": species, "mass_kg": mass, "fat_pct": fat}
        for index, (species, mass, fat) in enumerate(sources)
    ]
    one = blend(change.edit_recipe(base, milks=milks))
    assert one.mass_kg == pytest.approx(sum(mass for _, mass, _ in sources))
    assert one.mass_kg * one.fat == pytest.approx(sum(mass * 10.0 * fat for _, mass, fat in sources), rel=1e-6)
    assert one.casein < one.casein + one.whey_protein < 80.0
    assert 1.0 < one.density_kg_l < 1.06
    assert one.species in {species for species, _, _ in sources}


def test_presets_fill_gaps_and_every_one_has_its_source() -> None:
    from designer.recipe.presets import breeds, presets

    recipe = change.edit_recipe(
        read(CHEDDAR), milks=[{"id": "m", "volume_l": 10.0, "species": "goat", "breed": "nubian"}]
    )
    milk = blend(recipe)
    assert milk.fat == pytest.approx(45.7)
    assert milk.lactose == pytest.approx(41.0)
    assert set(breeds("sheep")) == {"lacaune", "east_friesian"}
    for table in ("species", "breed", "acid"):
        for preset in presets()[table].values():
            assert preset["source"]
    for name in ("density", "heat_denatured", "milk", "dose", "rennet", "calcium_chloride"):
        assert presets()[name]["source"]
        assert presets()[name]["have"]


def test_an_end_by_whey_off_is_a_share_of_the_milk() -> None:
    rows = rows_of(reads(every_stage()), "drain")
    assert rows["end_value"][0] == pytest.approx(0.8)
    assert rows["end_by"][0] == schedule.END_WHEY_OFF
    earlier = edit_end(reads(every_stage()), "drain", earliest_min=10.0)
    assert rows_of(earlier, "drain")["earliest_min"][0] == 10.0


def test_what_goes_in_midway_leaves_wash_water_and_whey_as_they_were() -> None:
    """A row that is split shares out the water that comes on and the whey that goes off; neither counts twice."""
    path = next(one for one in EXAMPLES if one.stem == "weirside-gouda")
    recipe = read(path)
    whole = rows_of(recipe, "wash")
    minute = float(whole["minutes"][0]) + 0.5 * float(whole["minutes"][1])
    dose = Addition(id="late-herbs", what="salt", at="wash", after_min=minute, mass_kg=0.1)
    parts = rows_of(change.add(recipe, dose), "wash")
    assert len(parts) == len(whole) + 1
    assert parts["minutes"].sum() == pytest.approx(whole["minutes"].sum())
    assert parts["water_on"].sum() == pytest.approx(whole["water_on"].sum())
    assert np.prod(1.0 - parts["whey_off"]) == pytest.approx(np.prod(1.0 - whole["whey_off"]))
