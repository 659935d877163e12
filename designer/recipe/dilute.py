"""Amounts too small for a scale: weigh more into a measured volume of sterile milk or water and give a part of it.

Plain proportions; a scale that reads 0.01 g is what a small dairy has (common practice).
"""

from __future__ import annotations

from dataclasses import dataclass

SCALE_LEAST_KG = 1.0e-4
"""Below 0.10 g a 0.01 g scale is off by a tenth and more."""

STOCK_KG = 5.0e-4
STOCK_VOLUMES_L = (0.1, 0.2, 0.5, 1.0)
ALIQUOT_LEAST_L = 5.0e-3
SYRINGE_LEAST_L = 5.0e-4
"""Below 0.5 mL a 1 mL syringe is off by a tenth and more: dilute first."""
DILUTED = 10.0


@dataclass(frozen=True, slots=True)
class Stock:
    """An amount too small to weigh: weigh `weigh_kg`, stir into `into_l`, give `take_l` of that."""

    weigh_kg: float
    into_l: float
    take_l: float


def stock(mass_kg: float) -> Stock | None:
    """How to measure a small mass by way of a larger one in sterile milk or water; None if it can be weighed."""
    if not 0.0 < mass_kg < SCALE_LEAST_KG:
        return None
    share = mass_kg / STOCK_KG
    into_l = next((volume for volume in STOCK_VOLUMES_L if share * volume >= ALIQUOT_LEAST_L), STOCK_VOLUMES_L[-1])
    return Stock(STOCK_KG, into_l, share * into_l)


def diluted_l(volume_l: float) -> float | None:
    """What to give [L] of the liquid let down one to ten with cool water; None if it can be measured as it is."""
    return DILUTED * volume_l if 0.0 < volume_l < SYRINGE_LEAST_L else None
