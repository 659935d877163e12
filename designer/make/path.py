"""From a marched path to what a maker reads: trace columns, the composition of the cheese, its outcomes."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
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


class Columns(Mapping[str, Series]):
    """Trace columns of one path by name, each (n,), worked out when they are first read: most of them seldom are.

    `rows` are those of the path, p its parameters; see designer.forecast.Trace for the clock.
    """

    __slots__ = ("_known", "out", "p", "rows")

    def __init__(self, path: Path, rows: NDArray[Any], p: Any) -> None:
        self.out, self.rows, self.p = path.out, rows, p
        self._known: dict[str, Series] = {}

    @property
    def y(self) -> Series:
        """The state at each point, (n, SIZE)."""
        return self.out[:, OUT_EXTRA:]

    def __getitem__(self, name: str) -> Series:
        if name not in self._known:
            self._known[name] = np.ascontiguousarray(READ[name](self))
        return self._known[name]

    def __iter__(self) -> Iterator[str]:
        return iter(READ)

    def __len__(self) -> int:
        return len(READ)


def _of_curd(of: Columns, share: Series) -> Series:
    """Kilograms per kilogram of milk as per cent of the curd."""
    return np.asarray(100.0 * 100.0 * share / of["curd_kg_per_100kg"])


def _cells(of: Columns, population: int) -> Series:
    """Living cells by the water they live in."""
    return np.asarray(of.y[:, CELLS + population] * (of.p["water_milk"] / of.y[:, CURD + WATER]))


READ: Mapping[str, Callable[[Columns], Series]] = {
    "temperature_c": lambda of: of.y[:, T],
    "ph": lambda of: of.out[:, 2],
    "ph_whey": lambda of: of.out[:, 3],
    "firmness_pa": lambda of: of.out[:, 4],
    "temperature_core_c": lambda of: of.out[:, 5],
    "temperature_edge_c": lambda of: of.out[:, 6],
    "ph_core": lambda of: of.out[:, 7],
    "ph_edge": lambda of: of.out[:, 8],
    "moisture_core_pct": lambda of: 100.0 * of.out[:, 9],
    "moisture_edge_pct": lambda of: 100.0 * of.out[:, 10],
    "curd_moisture_pct": lambda of: _of_curd(of, of.y[:, CURD + WATER]),
    "curd_kg_per_100kg": lambda of: 100.0 * phase_mass(of.y, CURD, of.p),
    # What runs out may stand a hair below nothing (see `make.stride`); nobody is told so.
    "whey_in_vat_kg_per_100kg": lambda of: np.maximum(100.0 * phase_mass(of.y, WHEY, of.p), 0.0),
    "whey_kg_per_100kg": lambda of: 100.0 * phase_mass(of.y, GONE, of.p),
    "salt_pct": lambda of: _of_curd(of, of.y[:, CURD + SALT]),
    "lactose_pct": lambda of: np.maximum(
        _of_curd(of, HEXOSE_KG * of.y[:, CURD + HEXOSE] + GALACTOSE_KG * of.y[:, CURD + GALACTOSE]), 0.0
    ),
    "lactate_pct": lambda of: _of_curd(of, LACTATE_KG * of.y[:, CURD + LACTATE]),
    "acidity_pct": lambda of: acidity_pct(of.y, CURD),
    "acidity_whey_pct": lambda of: acidity_pct(of.y, WHEY),
    "r": lambda of: of.y[:, CURD + WATER] / of.y[:, CURD + CASEIN],
    "load_kpa": lambda of: of.rows["load_kpa"][of.out[:, 1].astype(int)],
    "meso": lambda of: _cells(of, 0),
    "strep": lambda of: _cells(of, 1),
    "rods": lambda of: _cells(of, 2),
}
"""How each column is read from points and state."""
