"""Balances: what must hold whatever the figures."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from designer.make import balance

moistures = st.floats(30.0, 86.0)


@given(moistures)
def test_the_lever_rule_goes_there_and_back(moisture: float) -> None:
    curd = balance.curd_by_lever_kg(moisture)
    assert balance.moisture_by_lever_pct(100.0 - curd) == pytest.approx(moisture, abs=1e-9)


@given(moistures, st.floats(10.0, 60.0))
def test_fat_of_fdm_is_its_inverse(moisture: float, fdm: float) -> None:
    assert balance.fdm_pct(balance.fat_pct_of_fdm(fdm, moisture), moisture) == pytest.approx(fdm)


@given(st.floats(2.5, 6.0), st.floats(2.0, 3.5), moistures)
def test_more_fat_casein_or_moisture_is_more_cheese(fat: float, casein: float, moisture: float) -> None:
    here = balance.yield_van_slyke_price(fat, casein, moisture)
    assert balance.yield_van_slyke_price(fat + 0.1, casein, moisture) > here
    assert balance.yield_van_slyke_price(fat, casein + 0.1, moisture) > here
    assert balance.yield_van_slyke_price(fat, casein, moisture + 1) > here
