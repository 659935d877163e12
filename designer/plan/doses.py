"""Dose arithmetic of the weigh-out: culture by its cells, salt for a brine, and amounts too small for a scale.

Plain proportions; every function says its units.
"""

from __future__ import annotations

from dataclasses import dataclass

SCALE_LEAST_KG = 1.0e-4
"""Below 0.10 g a 0.01 g scale is off by a tenth and more: weigh more into a measured volume and take a part."""

STOCK_KG = 5.0e-4
STOCK_VOLUMES_L = (0.1, 0.2, 0.5, 1.0)
ALIQUOT_LEAST_L = 5.0e-3


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


def culture_kg_for_cells(cells_per_ml: float, litres: float, potency_cfu_g: float) -> float:
    """Mass [kg] that gives `cells_per_ml` to `litres` of milk from a culture of that potency [CFU/g]."""
    return cells_per_ml * litres * 1000.0 / potency_cfu_g / 1000.0


def brine_salt_kg(strength_pct: float, water_l: float) -> float:
    """Salt [kg] for a brine of `strength_pct` [% w/w] in `water_l` of water (1 kg a litre)."""
    return water_l * strength_pct / (100.0 - strength_pct)
