"""The march once more, by SciPy's LSODA on the same rates: what the benchmark measures the march against."""

from __future__ import annotations

from collections.abc import Callable
from functools import cache
from types import SimpleNamespace
from typing import Any

import numpy as np
from numba import njit
from numpy.typing import NDArray
from scipy.integrate import solve_ivp

from designer.make.kept import KEPT, nothing_kept
from designer.make.kernel import Path, zoned
from designer.make.law import tell_compiler
from designer.make.march import begin
from designer.make.rates import zone_rates
from designer.make.state import CORE, OUTER, SIZE, ZONES, T
from designer.recipe.schedule import PLACE_MOULD, T_RAMP

TOLERANCE = 1e-6
State = NDArray[np.float64]
Begin = Callable[[State, Any, Any], None]
Rates = Callable[[State, int, Any, Any, State, State], None]


def integrate(path: Path, rows: Any, y0: State, p: Any, begin: Begin, rates: Rates) -> State:
    """The zones at the end (ZONES, SIZE), each row integrated over the minutes the march gave it. y0 (SIZE,)."""
    y = zoned(y0).copy()
    change = np.zeros_like(y)
    kept = np.empty((ZONES, KEPT))
    nothing_kept(kept, 6.6)
    for row, (start, end, _) in zip(rows, path.ends, strict=True):
        if row.place >= PLACE_MOULD and np.isnan(y[OUTER, T]):
            y[OUTER] = y[CORE]
        zones = 1 if np.isnan(y[OUTER, T]) else ZONES
        for zone in range(zones):
            begin(y[zone], row, p)
        if row.t_law == T_RAMP and row.minutes > 0:
            row.slope_c_min = (row.t_end_c - y[CORE, T]) / max(row.ramp_min, row.minutes)
        row.bath_start_c = y[CORE, T]
        if end <= start:
            continue
        live = slice(0, zones)

        def slope(_: float, flat: State, row: Any = row, zones: int = zones, live: slice = live) -> State:
            now = np.zeros_like(y)
            now[live] = flat.reshape(zones, SIZE)
            rates(now, zones, row, p, kept, change)
            return change[live].ravel()

        found = solve_ivp(slope, (start, end), y[live].ravel(), method="LSODA", rtol=TOLERANCE, atol=TOLERANCE * 1e-3)
        y[live] = found.y[:, -1].reshape(zones, SIZE)
    return y


def plain(path: Path, rows: NDArray[Any], y0: State, p: Any) -> State:
    """With the rates as plain Python."""
    return integrate(path, [named(row) for row in rows], y0, named(p), begin, zone_rates)


def compiled(path: Path, rows: NDArray[Any], y0: State, p: Any) -> State:
    """With the rates as machine code, the loop around them still SciPy's."""
    return integrate(path, list(rows.copy().view(np.recarray)), y0, p, machine(begin), machine(zone_rates))


def named(record: Any) -> SimpleNamespace:
    return SimpleNamespace(**{name: record[name].item() for name in record.dtype.names})


@cache
def machine(function: Callable[..., None]) -> Callable[..., None]:
    tell_compiler()
    return njit(nogil=True)(function)  # type: ignore[no-any-return]
