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

from designer.make.kernel import Path
from designer.make.march import begin
from designer.make.rates import rates
from designer.make.state import SIZE, T
from designer.recipe.schedule import T_RAMP

TOLERANCE = 1e-6
State = NDArray[np.float64]
Begin = Callable[[State, Any, Any], None]
Rates = Callable[[State, Any, Any, State], None]


def integrate(path: Path, rows: Any, y0: State, p: Any, begin: Begin, rates: Rates) -> State:
    """The state at the end, each row integrated over the minutes the march gave it. y0 and result (SIZE,)."""
    y = y0.copy()
    change = np.zeros(SIZE)
    for row, (start, end, _) in zip(rows, path.ends, strict=True):
        begin(y, row, p)
        if row.t_law == T_RAMP and row.minutes > 0:
            row.slope_c_min = (row.t_end_c - y[T]) / row.minutes
        if end <= start:
            continue

        def slope(_: float, state: State, row: Any = row) -> State:
            rates(state, row, p, change)
            return change

        y = solve_ivp(slope, (start, end), y, method="LSODA", rtol=TOLERANCE, atol=TOLERANCE * 1e-3).y[:, -1]
    return y


def plain(path: Path, rows: NDArray[Any], y0: State, p: Any) -> State:
    """With the rates as plain Python."""
    return integrate(path, [named(row) for row in rows], y0, named(p), begin, rates)


def compiled(path: Path, rows: NDArray[Any], y0: State, p: Any) -> State:
    """With the rates as machine code, the loop around them still SciPy's."""
    return integrate(path, list(rows.copy().view(np.recarray)), y0, p, machine(begin), machine(rates))


def named(record: Any) -> SimpleNamespace:
    return SimpleNamespace(**{name: record[name].item() for name in record.dtype.names})


@cache
def machine(function: Callable[..., None]) -> Callable[..., None]:
    return njit(nogil=True)(function)  # type: ignore[no-any-return]
