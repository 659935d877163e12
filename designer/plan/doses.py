"""Dose arithmetic of the weigh-out: culture by its cells, salt for a brine, and amounts too small for a scale.

Plain proportions; every function says its units.
"""

from __future__ import annotations

from designer.recipe.dilute import Stock as Stock
from designer.recipe.dilute import stock as stock


def culture_kg_for_cells(cells_per_ml: float, litres: float, potency_cfu_g: float) -> float:
    """Mass [kg] that gives `cells_per_ml` to `litres` of milk from a culture of that potency [CFU/g]."""
    return cells_per_ml * litres * 1000.0 / potency_cfu_g / 1000.0


def brine_salt_kg(strength_pct: float, water_l: float) -> float:
    """Salt [kg] for a brine of `strength_pct` [% w/w] in `water_l` of water (1 kg a litre)."""
    return water_l * strength_pct / (100.0 - strength_pct)
