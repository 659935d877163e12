"""Cheese in brine is driven by what the brine holds beyond the cheese: never above it, and the saltier takes the less.

Held to the wheel's series (Crank) where the cheese comes without salt, and to the stated ranges of brining practice in
designer/validate.
"""

from __future__ import annotations

from itertools import pairwise

import numpy as np
import pytest

from designer.make import kernel
from designer.make.march import OUT_EXTRA
from designer.make.path import phase_mass
from designer.make.start import first_state, parameters
from designer.make.state import CURD, DRY_SALT, EVAPORATED, GONE, SALT, SALT_IN, WATER, WATER_IN, WHEY
from designer.make.uptake import brine_uptake, filled, surface_salt
from designer.recipe.schedule import GEL_RENNET, PLACE_BRINE, PLACE_MOULD, T_FOLLOW, as_rows, row
from tests.make.families import COW, ready
from tests.speed import lsoda

P = lsoda.named(parameters(COW)[0])
DAY = 1440.0
IN_BRINE = {"t_law": T_FOLLOW, "follow_c": 12.0, "va_mm": 30.0, "height_mm": 90.0, "radius_mm": 113.0}


def brined(salt_first: float, strength_pct: float, days: float) -> np.ndarray:
    """Path (n, SIZE) of a soft cheese with dry salt [kg per kg curd] before its brine."""
    ready()
    rows = [
        row(minutes=40, t_end_c=33.0, rennet_imcu_l=42.0, gel=GEL_RENNET),
        row(stage=1, minutes=DAY, place=PLACE_MOULD, cut_mm=15.0, whey_off=1.0, every_min=5, t_end_c=33.0),
        row(stage=2, minutes=DAY, place=PLACE_MOULD, salt_per_curd=salt_first, every_min=5, t_end_c=18.0),
        row(stage=3, minutes=days * DAY, place=PLACE_BRINE, brine_pct=strength_pct, every_min=30, **IN_BRINE),
    ]
    p = parameters(COW)[0]
    path = kernel.march(kernel.prepare(as_rows(rows)), first_state(COW, p), p)
    return np.asarray(path.out[:, OUT_EXTRA:])


def in_water(y: np.ndarray) -> np.ndarray:
    return np.asarray(y[..., CURD + SALT] / y[..., CURD + WATER])


def test_without_salt_of_its_own_it_follows_the_wheels_series() -> None:
    salt, theta, step = 0.0, P.brine_film_cm**2, 0.002
    start = filled(theta, 9.0, 11.0)
    for _ in range(1000):
        middle = salt + 0.5 * step * brine_uptake(salt, 0.25, theta, 9.0, 11.0, P)
        salt += step * brine_uptake(middle, 0.25, theta + 0.5 * step, 9.0, 11.0, P)
        theta += step
    assert salt == pytest.approx(P.brine_zone * 0.25 * (filled(theta, 9.0, 11.0) - start), rel=0.015)  # the film apart


def test_saltier_cheese_takes_less() -> None:
    rates = [brine_uptake(own, 0.09, 0.3, 9.0, 11.0, P) for own in (0.0, 0.03, 0.06, 0.085)]
    assert all(after < before for before, after in pairwise(rates))
    took = []
    for first in (0.0, 0.01, 0.02, 0.03):
        y = brined(first, 8.0, 14.0)
        at = int(np.flatnonzero(y[:, DRY_SALT] > 1e-9)[-1]) if first else 0
        took.append(float(y[-1, SALT_IN] - y[at, SALT_IN]))
    assert all(after < before for before, after in pairwise(took))


@pytest.mark.parametrize("strength", [5.0, 8.0, 16.0])
@pytest.mark.parametrize("first", [0.0, 0.02])
def test_it_never_ends_above_its_brine(strength: float, first: float) -> None:
    salt = in_water(brined(first, strength, 60.0))
    assert salt[-1] <= surface_salt(strength, P) * (1.0 + 1e-9)
    assert salt[-1] > 0.5 * surface_salt(strength, P)


def test_weak_brine_drives_out_less_whey_for_its_salt() -> None:
    """1.8 kg of water a kilogram of salt at 20 % (Geurts et al. 1974: about 2), in step with the strength."""
    given = {}
    for strength in (8.0, 20.0):
        path = brined(0.0, strength, 0.5)
        first, after = path[np.flatnonzero(path[:, SALT_IN] > 0.0)[0] - 1], path[-1]
        given[strength] = (first[CURD + WATER] - after[CURD + WATER]) / (after[CURD + SALT] - first[CURD + SALT])
    assert given[8.0] < 0.5 * given[20.0]
    assert 1.3 < given[20.0] < 2.2


def test_a_brine_weaker_than_the_cheese_draws_salt_and_gives_water() -> None:
    y = brined(0.045, 3.0, 30.0)
    salted = int(np.argmax(in_water(y)))
    assert in_water(y)[salted] > in_water(y)[-1] > surface_salt(3.0, P)
    assert y[-1, WATER_IN] > 0.0
    assert y[-1, CURD + WATER] > y[salted, CURD + WATER]


@pytest.mark.parametrize(("first", "strength"), [(0.02, 8.0), (0.045, 3.0)])
def test_salt_and_mass_hold(first: float, strength: float) -> None:
    y = brined(first, strength, 30.0)
    salt = y[:, CURD + SALT] + y[:, WHEY + SALT] + y[:, GONE + SALT] + y[:, DRY_SALT] - y[:, SALT_IN]
    assert np.ptp(salt) < 1e-9
    p = parameters(COW)[0]
    mass = sum(phase_mass(y, phase, p) for phase in (CURD, WHEY, GONE)) + y[:, DRY_SALT] + y[:, EVAPORATED]
    assert np.ptp(mass - y[:, WATER_IN] - y[:, SALT_IN]) < 2e-6


def test_feta_ends_near_what_is_printed() -> None:
    """Greek practice: 52.9 % moisture and 2.9 % salt, 5.5 g per 100 g of water (reference table, common practice)."""
    assert 100.0 * in_water(brined(0.025, 7.0, 14.0))[-1] == pytest.approx(5.5, abs=1.0)
