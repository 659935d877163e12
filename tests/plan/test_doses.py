"""Doses of the weigh-out against worked figures: cells, small amounts, brines."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from designer.plan.doses import brine_salt_kg, culture_kg_for_cells, stock


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
