"""From a marched path to what a maker reads: trace columns, the composition of the cheese, its outcomes."""

from __future__ import annotations

from collections.abc import Callable, Collection
from typing import Any

import numpy as np
from numpy.typing import NDArray

from designer.make.kernel import Path
from designer.make.march import NATURAL_ACIDITY_PCT, OUT_EXTRA
from designer.make.state import (
    ASH,
    CASEIN,
    CELLS,
    COLLOIDAL,
    COMPONENTS,
    CURD,
    FAT,
    GALACTOSE,
    GALACTOSE_KG,
    GONE,
    HEXOSE,
    HEXOSE_KG,
    LACTATE,
    LACTATE_KG,
    LEAST_WATER,
    SALT,
    WATER,
    WHEY,
    WHEY_PROTEIN,
    T,
)

Series = NDArray[np.float64]
KG = np.zeros(len(COMPONENTS))
"""What each component of a phase weighs [kg per unit of it]; what is only counted, nothing."""
KG[[WATER, FAT, CASEIN, WHEY_PROTEIN, ASH, SALT]] = 1.0
KG[[HEXOSE, GALACTOSE, LACTATE]] = HEXOSE_KG, GALACTOSE_KG, LACTATE_KG


def phase_mass(y: Series, phase: int, p: Any) -> Series:
    """Mass of curd, whey or run-off [kg per kg milk] for states y, shape (..., SIZE) -> (...)."""
    mass = (y[..., phase : phase + len(KG)] * KG).sum(axis=-1)
    if phase == CURD:
        mass = mass + p["ash_per_calcium"] * y[..., COLLOIDAL]
    return np.asarray(mass)


def acidity_pct(y: Series, phase: int) -> Series:
    """Titratable acidity of curd (or milk) or whey [% lactic acid] for states y, (..., SIZE) -> (...), as ends read it.

    What the titration counts before any lactic acid, and the lactic acid in the water; where there is no whey, that of
    the curd, as the pH of the whey is told.
    """
    water = y[..., phase + WATER]
    wet = np.maximum(water, LEAST_WATER)
    own = NATURAL_ACIDITY_PCT[phase == WHEY] + 100.0 * LACTATE_KG * y[..., phase + LACTATE] / wet
    return np.asarray(np.where(water > LEAST_WATER, own, acidity_pct(y, CURD)) if phase == WHEY else own)


def columns(path: Path, rows: NDArray[Any], p: Any, names: Collection[str] | None = None) -> dict[str, Series]:
    """Trace columns for one path (all, or those named), each shape (n,); see designer.forecast.Trace for the clock."""
    y = path.out[:, OUT_EXTRA:]
    curd = phase_mass(y, CURD, p)
    per_water = p["water_milk"] / y[:, CURD + WATER]
    read: dict[str, Callable[[], Series]] = {
        "temperature_c": lambda: y[:, T],
        "ph": lambda: path.out[:, 2],
        "ph_whey": lambda: path.out[:, 3],
        "firmness_pa": lambda: path.out[:, 4],
        "temperature_core_c": lambda: path.out[:, 5],
        "temperature_edge_c": lambda: path.out[:, 6],
        "ph_core": lambda: path.out[:, 7],
        "ph_edge": lambda: path.out[:, 8],
        "moisture_core_pct": lambda: 100.0 * path.out[:, 9],
        "moisture_edge_pct": lambda: 100.0 * path.out[:, 10],
        "curd_moisture_pct": lambda: 100.0 * y[:, CURD + WATER] / curd,
        "curd_kg_per_100kg": lambda: 100.0 * curd,
        "whey_in_vat_kg_per_100kg": lambda: 100.0 * phase_mass(y, WHEY, p),
        "whey_kg_per_100kg": lambda: 100.0 * phase_mass(y, GONE, p),
        "salt_pct": lambda: 100.0 * y[:, CURD + SALT] / curd,
        "lactose_pct": lambda: 100.0 * (HEXOSE_KG * y[:, CURD + HEXOSE] + GALACTOSE_KG * y[:, CURD + GALACTOSE]) / curd,
        "lactate_pct": lambda: 100.0 * LACTATE_KG * y[:, CURD + LACTATE] / curd,
        "acidity_pct": lambda: acidity_pct(y, CURD),
        "acidity_whey_pct": lambda: acidity_pct(y, WHEY),
        "r": lambda: y[:, CURD + WATER] / y[:, CURD + CASEIN],
        "load_kpa": lambda: rows["load_kpa"][path.out[:, 1].astype(int)],
        "meso": lambda: y[:, CELLS] * per_water,
        "strep": lambda: y[:, CELLS + 1] * per_water,
        "rods": lambda: y[:, CELLS + 2] * per_water,
    }
    return {name: np.ascontiguousarray(one()) for name, one in read.items() if names is None or name in names}
