"""Doses of the weigh-out against worked figures: bottles of any strength, packs, small amounts, brines."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from designer.plan.doses import brine_salt_kg, coagulant_l, culture_kg, culture_kg_for_cells, stock


@pytest.mark.parametrize(("strength", "ml"), [(200.0, 22.5), (280.0, 16.1), (600.0, 7.5)])
def test_coagulant_follows_the_bottle(strength: float, ml: float) -> None:
    assert coagulant_l(45.0, 100.0, strength) * 1000.0 == pytest.approx(ml, abs=0.05)


def test_coagulant_for_another_vat_and_bottle() -> None:
    per_litre = 8.0 * 200.0 / 43.7
    assert coagulant_l(per_litre, 10.0, 500.0) * 1000.0 == pytest.approx(0.73, abs=0.01)


def test_culture_by_the_pack() -> None:
    assert culture_kg(1.75, 50.0, 9.2e-3) * 1000.0 == pytest.approx(0.322, abs=0.001)


def test_culture_for_cells() -> None:
    assert culture_kg_for_cells(1e7, 100.0, 1e11) * 1000.0 == pytest.approx(10.0)


def test_what_a_scale_can_weigh_is_weighed() -> None:
    assert stock(1.0e-4) is None
    assert stock(0.322e-3) is None


@given(st.floats(1e-6, 0.99e-4))
def test_a_part_of_the_stock_holds_what_was_wanted(mass_kg: float) -> None:
    small = stock(mass_kg)
    assert small is not None
    assert small.weigh_kg >= 1.0e-4
    assert small.take_l <= small.into_l
    assert small.weigh_kg * small.take_l / small.into_l == pytest.approx(mass_kg)


def test_brine_is_by_weight_in_weight() -> None:
    assert brine_salt_kg(20.0, 100.0) == pytest.approx(25.0)
    salt = 20.0
    assert salt / (100.0 + salt) * 100.0 == pytest.approx(16.7, abs=0.05)
