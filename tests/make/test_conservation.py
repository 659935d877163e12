"""Sums over curd, whey and run-off hold at every step, and the whole mass closes."""

from __future__ import annotations

import numpy as np
import pytest

from designer.make.march import OUT_EXTRA
from designer.make.path import phase_mass
from designer.make.start import parameters
from designer.make.state import (
    ACID,
    ACID_IN,
    ASH,
    CALCIUM,
    CASEIN,
    COLLOIDAL,
    COMPONENTS,
    CURD,
    DRY_SALT,
    EVAPORATED,
    FAT,
    GALACTOSE,
    GONE,
    HEXOSE,
    LACTATE,
    SALT,
    SALT_IN,
    SERUM,
    WATER,
    WATER_IN,
    WHEY,
    WHEY_PROTEIN,
)
from tests.make.families import COW, MAKES, marched

TIGHT = 1e-9


def over_phases(y: np.ndarray, component: int) -> np.ndarray:
    return y[:, CURD + component] + y[:, WHEY + component] + y[:, GONE + component]


@pytest.mark.parametrize("name", MAKES)
@pytest.mark.parametrize("component", [FAT, SERUM], ids=lambda i: COMPONENTS[i])
def test_what_is_only_moved_is_kept(name: str, component: int) -> None:
    total = over_phases(marched(MAKES[name]).out[:, OUT_EXTRA:], component)
    assert np.ptp(total) < TIGHT


@pytest.mark.parametrize("name", MAKES)
def test_protein_is_kept_and_only_heat_makes_curd_of_whey_protein(name: str) -> None:
    y = marched(MAKES[name]).out[:, OUT_EXTRA:]
    casein, soluble = over_phases(y, CASEIN), over_phases(y, WHEY_PROTEIN)
    assert np.ptp(casein + soluble) < TIGHT
    assert (np.ptp(casein) > 1e-3) == (name == "hot_acid")
    assert name == "hot_acid" or np.ptp(casein) < TIGHT


@pytest.mark.parametrize("name", MAKES)
def test_hexose_equivalents(name: str) -> None:
    y = marched(MAKES[name]).out[:, OUT_EXTRA:]
    total = over_phases(y, HEXOSE) + over_phases(y, GALACTOSE) + 0.5 * over_phases(y, LACTATE)
    assert np.ptp(total[1:]) < TIGHT  # the first point stands before the starter's own lactate
    assert (y[-1, CURD + LACTATE] > y[1, CURD + LACTATE]) == (name != "hot_acid")


@pytest.mark.parametrize("name", MAKES)
def test_acid_balance_is_lactate_and_what_was_added(name: str) -> None:
    y = marched(MAKES[name]).out[:, OUT_EXTRA:]
    made = over_phases(y, LACTATE) - over_phases(y, LACTATE)[0]
    of_starter = sum(one["inoculum_lactate"] for one in MAKES[name])
    other = np.maximum(0.0, y[:, ACID_IN] - of_starter)
    assert np.allclose(over_phases(y, ACID) - over_phases(y, ACID)[0], made + other, atol=TIGHT)
    assert y[-1, ACID_IN] > 0.0


@pytest.mark.parametrize("name", MAKES)
def test_calcium_salt_and_ash(name: str) -> None:
    y = marched(MAKES[name]).out[:, OUT_EXTRA:]
    assert np.ptp(over_phases(y, CALCIUM) + y[:, COLLOIDAL]) < TIGHT
    assert np.ptp(over_phases(y, SALT) + y[:, DRY_SALT] - y[:, SALT_IN]) < TIGHT
    ash = over_phases(y, ASH) + float(parameters(COW)["ash_per_calcium"][0]) * y[:, COLLOIDAL]
    assert np.ptp(ash) < TIGHT


@pytest.mark.parametrize("name", MAKES)
def test_the_whole_mass_closes(name: str) -> None:
    """Water of hydrolysis included: milk, wash water and salt in equal curd, whey, run-off and vapour out."""
    y = marched(MAKES[name]).out[:, OUT_EXTRA:]
    p = parameters(COW)[0]
    mass = sum(phase_mass(y, phase, p) for phase in (CURD, WHEY, GONE)) + y[:, DRY_SALT] + y[:, EVAPORATED]
    closed = mass - y[:, WATER_IN] - y[:, SALT_IN]
    # Molar masses of sugar, acid and water are rounded to five digits.
    assert np.ptp(closed[1:]) < 2e-6


@pytest.mark.parametrize("name", MAKES)
def test_nothing_is_negative_or_undefined(name: str) -> None:
    path = marched(MAKES[name])
    assert np.isfinite(path.out).all()
    y = path.out[:, OUT_EXTRA:]
    for phase in (CURD, WHEY, GONE):
        for component in range(len(COMPONENTS)):
            if component != ACID:
                assert y[:, phase + component].min() > -1e-9, (phase, COMPONENTS[component])
    assert (np.diff(path.out[:, 0]) >= 0.0).all()
    assert y[:, CURD + WATER].min() > 0.0
