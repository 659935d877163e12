"""Curd stretched in hot water: the heat it takes, the water and fat it gives or gains, its salt, and when it stretches.

The directions are those of pasta filata practice (from memory, medium); the heat balance is worked by hand.
"""

from __future__ import annotations

from itertools import pairwise

import numpy as np
import pytest

from designer.forecast import Forecast, forecast
from designer.make import kernel
from designer.make.march import OUT_EXTRA
from designer.make.path import phase_mass
from designer.make.start import first_state, parameters
from designer.make.state import CURD, DRY_SALT, EVAPORATED, FAT, GONE, SALT, SALT_IN, WATER, WATER_IN, WHEY, T
from designer.make.uptake import surface_salt
from designer.recipe.edit import edit
from designer.recipe.end import after
from designer.recipe.schedule import PLACE_DRAINED, T_FOLLOW, T_HOLD, as_rows, row
from designer.validate.makes import makes
from tests.make.families import COW, cheddar, ready
from tests.speed import lsoda

P = lsoda.named(parameters(COW)[0])
RIPE = [*cheddar()[:5], row(stage=5, minutes=150, place=PLACE_DRAINED, whey_off=1.0, t_law=T_HOLD, t_end_c=38.0)]


def stretched(minutes: float = 6.0, water_c: float = 75.0, **columns: float) -> np.ndarray:
    """States (n, SIZE) of the stretch alone."""
    ready()
    hot = row(stage=6, minutes=minutes, place=PLACE_DRAINED, t_law=T_FOLLOW, follow_c=water_c, va_mm=5.0, stretch=1.0,
              disturbed=1.0, every_min=0.5, **columns)  # fmt: skip
    p = parameters(COW)[0]
    rows = kernel.prepare(as_rows([*RIPE, hot]))
    path = kernel.march(rows, first_state(COW, p), p)
    return np.asarray(path.out[path.out[:, 1] == len(rows) - 1, OUT_EXTRA:])


def fat_lost(y: np.ndarray) -> float:
    return float(1.0 - y[-1, CURD + FAT] / y[0, CURD + FAT])


def test_the_heat_the_curd_takes_cools_its_water() -> None:
    """1 kg of curd from 38 °C in 1.5 kg of water of 75 °C: (1.5 x 4.18 x 75 + 2.9 x 38) / (1.5 x 4.18 + 2.9) = 63.3."""
    by_hand = (1.5 * 4.18 * 75.0 + 2.9 * 38.0) / (1.5 * 4.18 + 2.9)
    assert stretched(60.0, curd_per_water=1.0 / 1.5)[-1, T] == pytest.approx(by_hand, abs=0.05)
    assert stretched(60.0)[-1, T] == pytest.approx(75.0, abs=0.05)


def test_usual_water_brings_curd_to_its_usual_heat() -> None:
    """Water of 70-80 °C for 4-5 min (Chandan & Kilara 2011); the curd then reaches 55-65 °C (common practice)."""
    for water_c in (70.0, 80.0):
        assert 52.0 < stretched(4.5, water_c, curd_per_water=0.6)[-1, T] < 66.0


def test_hotter_or_less_cooled_water_dries_more_and_takes_more_fat() -> None:
    for change in ("water_c", "curd_per_water"):
        values = (66.0, 72.0, 78.0, 84.0) if change == "water_c" else (0.6, 0.4, 0.2, 0.0)
        made = [stretched(8.0, **{change: value}) for value in values]
        assert all(after_[-1, CURD + WATER] < before[-1, CURD + WATER] for before, after_ in pairwise(made))
        assert all(fat_lost(after_) > fat_lost(before) for before, after_ in pairwise(made))


def test_longer_working_loses_more_fat() -> None:
    lost = [fat_lost(stretched(minutes)) for minutes in (2.0, 5.0, 10.0, 20.0)]
    assert all(after_ > before for before, after_ in pairwise(lost))
    assert 0.02 < fat_lost(stretched(6.0, 72.0)) < 0.12


def test_dry_curd_takes_up_cool_water_and_gives_it_in_hot() -> None:
    cool, hot = stretched(15.0, 56.0), stretched(15.0, 95.0)
    assert cool[-1, WATER_IN] >= hot[-1, WATER_IN]
    assert cool[-1, CURD + WATER] > hot[-1, CURD + WATER]


def test_cold_curd_does_not_flow() -> None:
    assert fat_lost(stretched(10.0, 44.0)) < 0.1 * fat_lost(stretched(10.0, 75.0))


def test_salt_in_the_water_goes_in_and_never_above_it() -> None:
    salts = [stretched(6.0, brine_pct=pct) for pct in (0.0, 3.0, 6.0, 10.0)]
    per_water = [float(y[-1, CURD + SALT] / y[-1, CURD + WATER]) for y in salts]
    assert all(after_ > before for before, after_ in pairwise(per_water))
    assert per_water[0] == 0.0
    long = stretched(600.0, brine_pct=6.0)
    assert float(long[-1, CURD + SALT] / long[-1, CURD + WATER]) <= surface_salt(6.0, P) + 1e-9


@pytest.mark.parametrize("water_c", [56.0, 75.0, 95.0])
def test_salt_fat_and_mass_hold(water_c: float) -> None:
    y = stretched(20.0, water_c, brine_pct=8.0)
    assert np.ptp(y[:, CURD + SALT] + y[:, GONE + SALT] + y[:, WHEY + SALT] + y[:, DRY_SALT] - y[:, SALT_IN]) < 1e-9
    assert np.ptp(y[:, CURD + FAT] + y[:, GONE + FAT] + y[:, WHEY + FAT]) < 1e-9
    mass = sum(phase_mass(y, phase, parameters(COW)[0]) for phase in (CURD, WHEY, GONE)) + y[:, DRY_SALT]
    assert np.ptp(mass + y[:, EVAPORATED] - y[:, WATER_IN] - y[:, SALT_IN]) < 2e-6


def mozzarella(**stack: object) -> Forecast:
    recipe = next(make for make in makes() if make.id == "mozzarella-low-moisture").recipe
    return forecast(edit(recipe, "stack", **stack) if stack else recipe)


def test_what_keeps_a_curd_from_stretching_is_said() -> None:
    assert len(mozzarella().notes) == 1
    sweet = mozzarella(end=after(45.0))
    assert "tears instead of stretching" in sweet.outcomes["moisture_pct"].outside
    recipe = next(make for make in makes() if make.id == "mozzarella-low-moisture").recipe
    cold = forecast(edit(recipe, "stretch", water_c=60.0, water_per_curd=0.5))
    assert any("does not flow" in note for note in cold.notes)
