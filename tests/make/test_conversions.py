"""Conversions inside the fields: each against a worked figure, and back again."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from designer.make import curd_size, salt, strength
from designer.recipe import pressing


def test_rennet_loses_strength_with_age() -> None:
    assert strength.strength_left(200.0, 12.0, 0.015) == pytest.approx(166.8, abs=0.1)


def test_a_soxhlet_strength_is_a_range_of_imcu() -> None:
    low, high = strength.imcu_of_soxhlet(15_000.0)
    assert low == pytest.approx(200.0, abs=1.0)
    assert high == pytest.approx(225.0)


def test_culture_by_cells() -> None:
    assert strength.culture_g_for_cells(1e7, 100.0, 1e11) == pytest.approx(10.0)


@given(st.floats(0.1, 300.0), st.floats(0.001, 1.0), st.integers(1, 6))
def test_pressure_and_force_there_and_back(kpa: float, area: float, count: int) -> None:
    force = pressing.force_kg(kpa, area, count)
    assert pressing.pressure_kpa(force, area, count) == pytest.approx(kpa)


def test_ten_times_the_cheese_weight() -> None:
    """Ten times its weight on a cheese 10 cm high is 10.6 kPa whatever its width (reference: 1 cm is 0.106 kPa)."""
    assert pressing.times_cheese_weight_kpa(10.0, 100.0) == pytest.approx(10.6, abs=0.05)


def test_an_arm_too_heavy_is_said() -> None:
    with pytest.raises(ValueError, match="arm alone"):
        pressing.hang_kg(3.0, 3.0, 4.0)


@pytest.mark.parametrize(("name", "mm"), [("rice", 2.0), ("wheat", 4.0), ("hemp", 6.0), ("hazelnut", 10.0)])
def test_names_of_the_cut(name: str, mm: float) -> None:
    assert curd_size.edge_of(name) == mm
    assert curd_size.name_of(mm) == name


def test_a_litre_of_curd() -> None:
    """1 cm cubes: 1,000 of them with 6,000 cm² together, not 100 cubes as is sometimes said."""
    assert curd_size.pieces_per_l(10.0) == pytest.approx(1000.0)
    assert curd_size.surface_cm2_per_l(10.0) == pytest.approx(6000.0)
    assert curd_size.pieces_per_l(5.0) == pytest.approx(8000.0)


def test_brine_weakened_and_topped_up_again() -> None:
    water = salt.weaken_kg(50.0, 20.0, 18.0)
    assert 50.0 * 0.20 / (50.0 + water) == pytest.approx(0.18)
    assert salt.top_up_kg(50.0 + water, 18.0, 20.0) > 0.0
    with pytest.raises(ValueError, match="add salt"):
        salt.weaken_kg(50.0, 18.0, 20.0)


def test_brine_after_cheese() -> None:
    """10 kg of cheese take 0.2 kg of salt and give 0.4 kg of water to 50 kg at 20 %."""
    assert salt.after_cheese(50.0, 20.0, 0.2, 0.4) == pytest.approx(9.8 / 50.2 * 100.0)
    with pytest.raises(ValueError, match="more salt"):
        salt.after_cheese(10.0, 5.0, 1.0, 0.0)


@given(st.floats(1.0, 26.0))
def test_every_way_to_say_a_brine_comes_back(pct: float) -> None:
    assert salt.strength_of_grams_per_litre(salt.grams_per_litre(pct)) == pytest.approx(pct, abs=0.01)
    assert salt.strength_of_baume(salt.baume(pct)) == pytest.approx(pct, abs=0.01)
    assert salt.strength_of_saturation(salt.saturation_pct(pct)) == pytest.approx(pct)
    water = 30.0
    assert salt.strength_of_salt_and_water(salt.salt_for_water_kg(pct, water), water) == pytest.approx(pct)
