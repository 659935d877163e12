"""Brine in every unit a maker meets: there and back, topping up, and the classic mix-up refused."""

from __future__ import annotations

import pytest

from designer.make import salt

STRENGTHS = [0.0, 0.5, 3.0, 7.7, 12.0, 18.0, 20.0, 22.5, 26.0, 26.4]


@pytest.mark.parametrize("strength", STRENGTHS)
def test_every_unit_goes_there_and_back(strength: float) -> None:
    assert salt.strength_of_density(salt.density_handbook_1974(strength, 12.0), 12.0) == pytest.approx(
        strength, abs=1e-6
    )
    assert salt.strength_of_grams_per_litre(salt.grams_per_litre(strength)) == pytest.approx(strength, abs=1e-6)
    assert salt.strength_of_salt_per_water(salt.salt_per_water(strength)) == pytest.approx(strength, abs=1e-9)
    assert salt.strength_of_baume(salt.baume(strength)) == pytest.approx(strength, abs=1e-6)
    assert salt.strength_of_saturation(salt.saturation_pct(strength)) == pytest.approx(strength, abs=1e-9)


def test_warmer_and_weaker_brine_is_lighter() -> None:
    assert salt.density_handbook_1974(18, 20) < salt.density_handbook_1974(18, 10) < salt.density_handbook_1974(20, 10)


def test_topping_up_gives_the_strength_wanted() -> None:
    added = salt.top_up_kg(50.0, 17.0, 20.0)
    assert (50.0 * 0.17 + added) / (50.0 + added) == pytest.approx(0.20)
    assert salt.top_up_kg(50.0, 20.0, 20.0) == 0.0


def test_a_brine_too_strong_asks_for_water() -> None:
    with pytest.raises(ValueError, match="add water"):
        salt.top_up_kg(50.0, 22.0, 20.0)


@pytest.mark.parametrize("strength", [35.0, 26.5, -1.0])
def test_more_than_saturated_is_a_mix_up_of_units(strength: float) -> None:
    with pytest.raises(ValueError, match=r"35\.9 g of salt per 100 g of water"):
        salt.density_handbook_1974(strength)


def test_a_density_no_brine_has() -> None:
    with pytest.raises(ValueError, match="weighs between"):
        salt.strength_of_density(1250.0)
