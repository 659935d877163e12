"""pH from acid: the integrated buffer curves of casein and of serum, and their inverse.

Each phase keeps its acid balance Z [mol H+ per kg milk] counted from the native pH of the milk: what the buffers
have taken up plus lactic acid that stays undissociated. Whey that leaves takes its own share of Z at the pH of the
curd, so draining alone never moves pH. Curves are groups fitted to a reconstructed milk table (see constants.toml).
"""

from __future__ import annotations

from typing import Any

import numpy as np
from numpy.typing import NDArray

from designer.make.constants import listed, table
from designer.make.law import law

PH_LOW, PH_HIGH, PH_STEP = 3.2, 8.2, 0.01
GRID: NDArray[np.float64] = np.arange(PH_LOW, PH_HIGH + PH_STEP / 2, PH_STEP)


def _taken_up(
    amounts: NDArray[np.float64], pks: NDArray[np.float64], steep: NDArray[np.float64]
) -> NDArray[np.float64]:
    """H+ held at each pH of GRID [mol per unit], falling with pH."""
    held = amounts[:, None] / (1.0 + 10.0 ** (steep[:, None] * (GRID[None, :] - pks[:, None])))
    return np.asarray(held.sum(axis=0) / 1000.0)


CASEIN_H: NDArray[np.float64] = 1000.0 * _taken_up(
    listed("buffer_casein_mmol_g"), listed("buffer_casein_pk"), listed("buffer_casein_steep")
)
"""mol H+ per kg casein at each pH of GRID."""
SERUM_H: NDArray[np.float64] = _taken_up(
    listed("buffer_serum_mmol_kg"), listed("buffer_serum_pk"), np.ones_like(listed("buffer_serum_pk"))
)
"""mol H+ per kg of milk's own serum salts at each pH of GRID."""
LACTIC_H: NDArray[np.float64] = 1.0 / (1.0 + 10.0 ** (GRID - float(table()["lactic_pka"].value)))  # type: ignore[arg-type]
"""Share of lactic acid that keeps its H+."""


@law
def on_curve(curve: NDArray[np.float64], ph: float) -> float:
    """A curve over GRID read at a pH, by straight line; held at the ends."""
    place = (ph - PH_LOW) / PH_STEP
    if place <= 0.0:
        return curve[0]
    last = curve.shape[0] - 1
    if place >= last:
        return curve[last]
    index = int(place)
    return curve[index] + (place - index) * (curve[index + 1] - curve[index])


@law
def held_at(index: int, casein: float, serum: float, lactate: float) -> float:
    """H+ that the buffers present hold at a point of GRID [mol/kg milk]."""
    return casein * CASEIN_H[index] + serum * SERUM_H[index] + lactate * LACTIC_H[index]


@law
def ph_of(z: float, casein: float, serum: float, lactate: float, p: Any, near: float) -> float:
    """pH at which the buffers present hold the acid balance z.

    z [mol H+/kg milk] counted from the native pH; casein [kg/kg milk]; serum [kg of original milk serum salts per kg
    milk]; lactate [mol/kg milk]; p.buffer_scale multiplies the buffers. It falls with pH: the inverse is unique.
    It is looked for from the pH `near` outward, in strides that double, then halved: the nearer, the sooner.
    """
    casein *= p.buffer_scale
    serum *= p.buffer_scale
    target = z + casein * p.casein_h_native + serum * p.serum_h_native
    last = CASEIN_H.shape[0] - 1
    low = min(max(int((near - PH_LOW) / PH_STEP), 0), last - 1)
    high, stride = low + 1, 1
    while low > 0 and held_at(low, casein, serum, lactate) <= target:
        low, high, stride = max(low - stride, 0), low, 2 * stride
    while high < last and held_at(high, casein, serum, lactate) > target:
        low, high, stride = high, min(high + stride, last), 2 * stride
    while high - low > 1:
        middle = (low + high) // 2
        if held_at(middle, casein, serum, lactate) > target:
            low = middle
        else:
            high = middle
    above, below = held_at(low, casein, serum, lactate), held_at(high, casein, serum, lactate)
    if above - below < 1e-15:
        return p.ph_native
    share = min(1.0, max(0.0, (above - target) / (above - below)))
    return PH_LOW + PH_STEP * (low + share)


@law
def serum_balance(ph: float, serum: float, lactate: float, p: Any) -> float:
    """The part of Z that is dissolved and leaves with whey [mol H+/kg milk]."""
    return p.buffer_scale * serum * (on_curve(SERUM_H, ph) - p.serum_h_native) + lactate * on_curve(LACTIC_H, ph)


@law
def casein_balance(ph: float, casein: float, p: Any) -> float:
    """The part of Z that casein [kg/kg milk] holds and takes along where it goes [mol H+/kg milk]."""
    return p.buffer_scale * casein * (on_curve(CASEIN_H, ph) - p.casein_h_native)
