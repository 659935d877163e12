"""What makes leave, in the maker's figures: one way for a forecast, for the members of a band and for levers.

All functions work on m makes at once; states stand as (m, SIZE). What did not happen in a make is nan.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any, Protocol

import numpy as np
from numpy.typing import NDArray

from designer.make import knit
from designer.make.kernel import Path
from designer.make.march import INFO, OUT_EXTRA
from designer.make.path import acidity_pct, phase_mass
from designer.make.state import (
    CALCIUM,
    CALCIUM_KG,
    CASEIN,
    COLLOIDAL,
    CURD,
    DRY_SALT,
    EVAPORATED,
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
from designer.recipe.schedule import GEL_ACID_HEAT, PLACE_DRAINED
from designer.units import DAY_MIN as DAY_MIN

Floats = NDArray[np.float64]
H6_MIN = 360.0
TRACE = 1e-9
"""A share below which there is nothing to divide by."""


class Left(Protocol):
    """What m makes leave, row by row; the last of each make's `counts` rows is its wait to 24 h.

    `rows` (m, n); `milk` (m, SIZE) the state at the start; `at_end` (m, n, OUT_EXTRA + SIZE) the last point of each
    row, `ends` (m, n, 3) and `info` (m, INFO) as `march` writes them; `ph` (m, 2) at 6 and 24 h after the starter; `p`
    (m,) parameters.
    """

    @property
    def rows(self) -> NDArray[Any]: ...
    @property
    def counts(self) -> NDArray[np.int64]: ...
    @property
    def milk(self) -> Floats: ...
    @property
    def at_end(self) -> Floats: ...
    @property
    def ends(self) -> Floats: ...
    @property
    def info(self) -> Floats: ...
    @property
    def ph(self) -> Floats: ...
    @property
    def p(self) -> NDArray[Any]: ...


@dataclass(frozen=True, slots=True)
class Marched:
    """`Left` of whole paths over the same rows."""

    rows: NDArray[Any]
    counts: NDArray[np.int64]
    milk: Floats
    at_end: Floats
    ends: Floats
    info: Floats
    ph: Floats
    p: NDArray[Any]


def of_paths(
    paths: Sequence[Path], rows: NDArray[Any], p: NDArray[Any], starter_min: float | Floats, milk: Floats
) -> Marched:
    """What whole paths leave. `rows` are those of all (n,), or of each (m, n), the last of them the wait to 24 h; p
    (m,); `starter_min` of all or of each; `milk` (m, SIZE) is what recoveries count from.
    """
    m, n = len(paths), rows.shape[-1]
    started = np.broadcast_to(np.asarray(starter_min, dtype=float), (m,))
    at_end, ends = np.empty((m, n, paths[0].out.shape[1])), np.zeros((m, n, 3))
    ph, info = np.empty((m, 2)), np.zeros((m, INFO))
    for k, path in enumerate(paths):
        # A lane that begins later has no point in the rows before; its first one stands for them.
        last = np.maximum(np.searchsorted(path.out[:, 1], np.arange(n), side="right") - 1, 0)
        at_end[k], ends[k, : len(path.ends)] = path.out[last], path.ends
        ph[k] = np.interp(started[k] + np.array([H6_MIN, DAY_MIN]), path.out[:, 0], path.out[:, 2])
        info[k] = 0.0, path.rennet_min, path.floc_min, path.cut_min
    return Marched(np.broadcast_to(rows, (m, n)), np.full(m, n), milk, at_end, ends, info, ph, p)


def composition(y: Floats, p: Any) -> dict[str, Floats]:
    """Composition of curd or cheese in states y (..., SIZE), in per cent unless the name says otherwise."""
    mass = phase_mass(y, CURD, p)
    protein = y[..., CURD + CASEIN] + y[..., CURD + WHEY_PROTEIN]
    calcium = y[..., COLLOIDAL] + y[..., CURD + CALCIUM]
    moisture, fat = 100.0 * y[..., CURD + WATER] / mass, 100.0 * y[..., CURD + FAT] / mass
    salt = 100.0 * y[..., CURD + SALT] / mass
    sugar = HEXOSE_KG * y[..., CURD + HEXOSE] + GALACTOSE_KG * y[..., CURD + GALACTOSE]
    return {
        "moisture_pct": moisture,
        "dry_matter_pct": 100.0 - moisture,
        "fat_pct": fat,
        "protein_pct": 100.0 * protein / mass,
        "fdm_pct": 100.0 * fat / np.maximum(100.0 - moisture, TRACE),
        "mnfs_pct": 100.0 * moisture / (100.0 - fat),
        "salt_pct": salt,
        "salt_in_moisture_pct": 100.0 * salt / moisture,
        "lactose_pct": 100.0 * np.maximum(sugar, 0.0) / mass,
        "lactate_pct": 100.0 * LACTATE_KG * y[..., CURD + LACTATE] / mass,
        "calcium_mg_per_g_protein": 1000.0 * calcium / np.maximum(protein, TRACE),
        "calcium_mmol_per_kg": 1000.0 * calcium / CALCIUM_KG / mass,
        "yield_kg_per_100kg": 100.0 * mass,
    }


def dissolved(y: Floats, p: Any) -> Floats:
    """The states y (m, SIZE) with what the curd will still take of the dry salt that lies on it."""
    whole = y.copy()
    whole[:, CURD + SALT] += p["salt_retained"] * np.maximum(y[:, DRY_SALT], 0.0)
    return whole


def outcomes(left: Left, *, mill_row: NDArray[np.int64] | None, milk_kg: Floats) -> dict[str, Floats]:
    """All outcomes of m makes, each shape (m,); nan for what did not happen.

    `mill_row` (m,) begins milling or salting (None: nothing is milled or salted); `milk_kg` (m,) is the milk behind
    each make. The cheese is read where it enters its first room.
    """
    every = np.arange(len(left.counts))
    end_row = left.counts - 2
    at, p = left.at_end[every, end_row], left.p
    y = dissolved(at[:, OUT_EXTRA:], p)
    used = np.arange(left.rows.shape[1]) < left.counts[:, None]
    drained, there = _before(left, (left.rows["place"] >= PLACE_DRAINED) & used)
    both = composition(np.stack([y, drained[:, OUT_EXTRA:]]), p)
    out = {key: values[0] for key, values in both.items()}
    mass = out["yield_kg_per_100kg"] / 100.0
    # In an acid-and-heat curd whey protein counts as casein, so a recovery of casein says nothing there.
    heated = ((left.rows["gel"] == GEL_ACID_HEAT) & used).any(axis=1)
    recovered = 100.0 * y[:, CURD + CASEIN] / left.milk[:, CURD + CASEIN]
    rennet, floc, cut = left.info[:, 1:].T
    out |= {
        "fat_recovery_pct": 100.0 * y[:, CURD + FAT] / np.maximum(left.milk[:, CURD + FAT], 1e-12),
        "casein_recovery_pct": np.where(heated, np.nan, recovered),
        "whey_kg_per_100kg": 100.0 * phase_mass(y, GONE, p),
        "cheese_kg": mass * milk_kg,
        "ph_6h": left.ph[:, 0],
        "ph_24h": left.ph[:, 1],
        "ph_end": at[:, 2],
        "ph_core": at[:, 7],
        "ph_edge": at[:, 8],
        "moisture_core_pct": 100.0 * at[:, 9],
        "moisture_edge_pct": 100.0 * at[:, 10],
        "finish_min": left.ends[every, end_row, 1],
        "weight_loss_pct": 100.0 * y[:, EVAPORATED] / mass,
        "dry_salt_left_pct": 100.0 * np.maximum(y[:, DRY_SALT], 0.0) / mass,
        "floc_min": np.where(floc >= 0.0, floc, np.nan),
        "cut_min": np.where((cut >= rennet) & (rennet >= 0.0), cut - rennet, np.nan),
    }
    out["ph_drain"], out["ph_whey_drain"] = drained[:, 2] * there, drained[:, 3] * there
    out["drain_moisture_pct"] = both["moisture_pct"][1] * there
    drawn, there = _before(left, (left.rows["whey_off"] > 0.0) & used)
    whey = drawn[:, OUT_EXTRA:]
    out["acidity_drawn_pct"] = np.where(whey[:, WHEY + WATER] > LEAST_WATER, acidity_pct(whey, WHEY), np.nan) * there
    if mill_row is not None:
        out["ph_mill"] = left.at_end[every, np.maximum(mill_row - 1, 0), 2]
    out["knit"] = knit.score(joining(left))
    return out


def joining(left: Left) -> knit.Joining:
    """What the pieces of curd are like when they meet in form or press, for m makes; see `make.knit`."""
    every, made = np.arange(len(left.counts)), np.arange(left.rows.shape[1]) < left.counts[:, None] - 1

    def before(first: NDArray[np.int64]) -> tuple[Floats, ...]:
        point = left.at_end[every, np.maximum(first - 1, 0)]
        y = point[:, OUT_EXTRA:]
        water = y[:, CURD + WATER]
        moisture = 100.0 * water / phase_mass(y, CURD, left.p)
        return y[:, T], point[:, 2], moisture, 100.0 * y[:, CURD + SALT] / water

    return knit.joining(left.rows, left.ends[..., :2], made, before)


def _before(left: Left, which: NDArray[np.bool_]) -> tuple[Floats, Floats]:
    """The point just before the first row of `which` (m, n), and 1 where there is such a row (nan where not)."""
    first = np.where(which.any(axis=1), which.argmax(axis=1), 0)
    point = left.at_end[np.arange(len(first)), np.maximum(first - 1, 0)]
    return point, np.where(first > 0, 1.0, np.nan)
