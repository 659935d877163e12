"""One stride of the march: its two methods, its error, and the states within it.

A stride is as long as its error allows: minutes just after the cut, hours in a quiet press. Bogacki and Shampine's 3(2)
pair (1989) takes it. Where calcium settles between micelle and serum much sooner than the rest moves, a stride longer
than the pair stands is taken by the second-order Chebyshev method (RKC; Sommeijer, Shampine and Verwer 1997), with as
many looks at the rates as its length asks for. The temperatures of a cheese that cools are known beforehand. What lies
within a stride is read by the cubic through both its ends and their rates, which costs no look at the rates.
"""

from __future__ import annotations

from typing import Any

import numpy as np
from numpy.polynomial import Chebyshev
from numpy.typing import NDArray

from designer.make.heat import OUTWARD, SETTLES, cool
from designer.make.law import law
from designer.make.rates import zone_rates
from designer.make.state import (
    ACID,
    AWAKE,
    CELLS,
    CURD,
    DRY_SALT,
    GALACTOSE,
    GONE,
    HEXOSE,
    SIZE,
    WATER,
    WHEY,
    ZONES,
    T,
)

STAGES = 4
"""Rates, or points, that a stride keeps: the first are those it begins with, the last those of its end."""
TOLERANCE, ROUGH = 3e-4, 2e-3
"""Share of each state that a stride may be off by: within 0.001 pH and 0.03 points over a make; and where it is spreads
and differences of makes that count."""
LITTLE, LITTLE_WHEY = 0.01, 0.1
"""A state of curd or whey as small as this [kg or mol per kg milk] may be off by a share of this."""
FEW = 1e-6
"""Cells that make no acid to speak of [1e9 per mL]."""
NOTHING, NO_SUGAR, NO_SALT = -1e-11, -2e-6, -1e-6
"""As far below nothing [kg or mol per kg milk] as a stride may bring what runs out, sugar that is eaten up, and salt
strewn that dissolves."""
MOST_LOOKS = 8
"""Looks at the rates that one stride may hold."""
PAIR_STANDS = 2.2
"""Stride times the fastest rate up to which the pair stands (2.5), with some to spare."""
EAGER = 1.4
"""How long the first stride of a row is, in parts of what would move a state by the cube root of its tolerance."""
SHORTEST_MIN = 1e-3
"""A stride is not shortened below this, whatever its error."""
LEAST, MOST, SAFE, OVERDRAWN = 0.2, 3.0, 0.9, 0.4
"""How much longer a stride may be than the one before, how much of what its error allows it takes, and how much of one
that took more than there was."""


def _chebyshev(looks: int) -> NDArray[np.float64]:
    """Shares (looks + 1, 5) of each look of an RKC stride: of the point before, of the one before that, of the rates
    there, of those at the beginning, and when it is; damped by 2/13 as its authors do."""
    w0 = 1.0 + 2.0 / 13.0 / looks**2
    of = [Chebyshev.basis(j) for j in range(looks + 1)]
    t, slope, bend = (np.array([each.deriv(order)(w0) for each in of]) for order in (0, 1, 2))
    w1 = slope[looks] / bend[looks]
    b = np.empty(looks + 1)
    b[2:] = bend[2:] / slope[2:] ** 2
    b[:2] = b[2]
    out = np.zeros((looks + 1, 5))
    out[1, 2] = b[1] * w1
    for j in range(2, looks + 1):
        rates = 2.0 * b[j] * w1 / b[j - 1]
        out[j, :4] = 2.0 * b[j] * w0 / b[j - 1], -b[j] / b[j - 2], rates, -(1.0 - b[j - 1] * t[j - 1]) * rates
        out[j, 4] = w1 * bend[j] / slope[j]
    out[1, 4] = out[2, 4] / slope[2]
    return out


CHEBYSHEV: NDArray[np.float64] = np.zeros((MOST_LOOKS + 1, MOST_LOOKS + 1, 5))
"""`_chebyshev` of each number of looks."""
STANDS: NDArray[np.float64] = 2.0 / 3.0 * (np.arange(MOST_LOOKS + 1.0) ** 2 - 1.0) * (1.0 - 2.0 / 15.0 * 2.0 / 13.0)
"""Stride times the fastest rate up to which so many looks stand."""
for _looks in range(2, MOST_LOOKS + 1):
    CHEBYSHEV[_looks, : _looks + 1] = _chebyshev(_looks)


@law
def take(source: NDArray[np.float64], into: NDArray[np.float64]) -> None:
    """Copy zones (ZONES, SIZE); a plain loop, since an array assignment costs the compiler seconds."""
    for zone in range(ZONES):
        for i in range(SIZE):
            into[zone, i] = source[zone, i]


@law
def stride(
    y: NDArray[np.float64],
    zones: int,
    row: Any,
    p: Any,
    kept: NDArray[np.float64],
    h: float,
    pace: NDArray[np.float64],
    k: NDArray[np.float64],
    to: NDArray[np.float64],
) -> float:
    """h minutes from y into `to`, both (ZONES, SIZE); returns its error as a share of the states, nan for none of it.

    pace (PACE,) is that of the row (see `make.heat`), h no longer than its `farthest`.
    k (STAGES, ZONES, SIZE): k[0] must hold the rates at y; k[3] takes those at `to`, k[1] the error per minute.
    """
    looks, pair = 3, h * pace[SETTLES] <= PAIR_STANDS
    if not pair:
        while looks < MOST_LOOKS and STANDS[looks] < h * pace[SETTLES]:
            looks += 1
    for look in range(1, looks + 1):
        into, at = k[3], CHEBYSHEV[looks, look, 4]
        if pair:
            _pair_point(y, zones, h, look, k, to)
            into, at = k[look], min(0.25 + 0.25 * look, 1.0)
        else:
            _chebyshev_point(y, zones, h, CHEBYSHEV[looks, look], look, k, to)
        cool(y, row, pace, at * h, to)
        zone_rates(to, zones, row, p, kept, into)
    if _overdrawn(y, to, zones):
        return np.nan
    for zone in range(zones):
        for i in range(SIZE):
            if pair:
                change = 5.0 * k[0, zone, i] - 6.0 * k[1, zone, i] - 8.0 * k[2, zone, i] + 9.0 * k[3, zone, i]
                k[1, zone, i] = change / 72.0
            else:
                k[1, zone, i] = 0.8 * (y[zone, i] - to[zone, i]) / h + 0.4 * (k[0, zone, i] + k[3, zone, i])
        if pace[OUTWARD] > 0.0:
            k[1, zone, T] = 0.0  # known, not strode
    return h * _size(k[1], to, zones)


@law
def _pair_point(
    y: NDArray[np.float64], zones: int, h: float, look: int, k: NDArray[np.float64], to: NDArray[np.float64]
) -> None:
    """Where the pair looks at the rates for the first, second and last time; k[look] takes what is seen."""
    # One sum a look: a share of nothing of what a stride far too long left behind may still be no number.
    for zone in range(zones):
        for i in range(SIZE):
            moved = 0.5 * k[0, zone, i]
            if look == 2:
                moved = 0.75 * k[1, zone, i]
            elif look == 3:
                moved = (2.0 * k[0, zone, i] + 3.0 * k[1, zone, i] + 4.0 * k[2, zone, i]) / 9.0
            to[zone, i] = y[zone, i] + h * moved


@law
def _chebyshev_point(
    y: NDArray[np.float64],
    zones: int,
    h: float,
    share: NDArray[np.float64],
    look: int,
    k: NDArray[np.float64],
    to: NDArray[np.float64],
) -> None:
    """Where Chebyshev's way looks next, from the two points before (k[1], k[2]) and the rates at the last (k[3])."""
    if look == 1:
        for zone in range(zones):
            for i in range(SIZE):
                k[2, zone, i] = y[zone, i]
                to[zone, i] = y[zone, i] + share[2] * h * k[0, zone, i]
        return
    for zone in range(zones):
        for i in range(SIZE):
            began, before, last = y[zone, i], k[2, zone, i], to[zone, i]
            moved = share[2] * k[3, zone, i] + share[3] * k[0, zone, i]
            # From where it began: what stands still stays the very same figure.
            to[zone, i] = began + share[0] * (last - began) + share[1] * (before - began) + h * moved
            k[2, zone, i] = last


@law
def farthest(pace: NDArray[np.float64]) -> float:
    """The longest stride [min] that stands at the pace of a row."""
    return STANDS[MOST_LOOKS] / (pace[SETTLES] + 1e-9)


@law
def first(y: NDArray[np.float64], zones: int, k: NDArray[np.float64], tolerance: float) -> float:
    """A stride [min] to begin a row with: a fair guess from how fast the states move, k[0] being their rates."""
    return max(SHORTEST_MIN, EAGER * tolerance ** (1.0 / 3.0) / (_size(k[0], y, zones) + 1e-6))


@law
def _size(change: NDArray[np.float64], y: NDArray[np.float64], zones: int) -> float:
    """A change as a share of the states y, both (ZONES, SIZE)."""
    total = 0.0
    for zone in range(zones):
        # What leaves the curd decides the cheese: its water is held four times as closely as the rest.
        total += (4.0 * change[zone, CURD + WATER] / y[zone, CURD + WATER]) ** 2
        for i in range(CURD + 1, WHEY):
            total += (change[zone, i] / (abs(y[zone, i]) + LITTLE)) ** 2
        if y[zone, WHEY + WATER] > 0.0:
            for i in range(WHEY, GONE):
                total += (change[zone, i] / (abs(y[zone, i]) + LITTLE_WHEY)) ** 2
        total += (change[zone, T] / (abs(y[zone, T]) + 1.0)) ** 2
        for i in range(CELLS, AWAKE):
            total += (change[zone, i] / (y[zone, i] + FEW)) ** 2  # what grows a thousandfold: to a share of itself
            total += (change[zone, i + 3] / (abs(y[zone, i + 3]) + LITTLE)) ** 2
        total += (change[zone, DRY_SALT] / (abs(y[zone, DRY_SALT]) + LITTLE)) ** 2
    return np.sqrt(total)


@law
def _overdrawn(y: NDArray[np.float64], to: NDArray[np.float64], zones: int) -> bool:
    """Whether a stride took more of something than there was; what is a hair below nothing may move a hair further."""
    for zone in range(zones):
        for i in range(GONE):
            least = NO_SUGAR if i == CURD + HEXOSE or i == CURD + GALACTOSE else NOTHING
            if i != CURD + ACID and i != WHEY + ACID and to[zone, i] < min(y[zone, i], 0.0) + least:
                return True
        if to[zone, DRY_SALT] < min(y[zone, DRY_SALT], 0.0) + NO_SALT:
            return True
    return False


@law
def longer(h: float, error: float) -> float:
    """The next stride after one of h minutes and an error in parts of what it may be off by."""
    if error <= 0.0:
        return h * MOST
    if np.isnan(error):
        return max(SHORTEST_MIN, h * OVERDRAWN)
    return max(SHORTEST_MIN, h * min(MOST, max(LEAST, SAFE * error ** (-1.0 / 3.0))))


@law
def on_cubic(before: float, after: float, rate_before: float, rate_after: float, h: float, share: float) -> float:
    """A state at a share of a stride of h minutes, on the cubic through both its ends and their rates."""
    rest = 1.0 - share
    bent = share * rest * h * (rest * rate_before - share * rate_after)
    return before + share * share * (3.0 - 2.0 * share) * (after - before) + bent


@law
def within(
    y: NDArray[np.float64],
    to: NDArray[np.float64],
    zones: int,
    k: NDArray[np.float64],
    row: Any,
    pace: NDArray[np.float64],
    h: float,
    part: float,
    into: NDArray[np.float64],
) -> None:
    """The state `part` minutes into a stride of h minutes from y to `to`, all (ZONES, SIZE)."""
    for zone in range(zones):
        for i in range(SIZE):
            into[zone, i] = on_cubic(y[zone, i], to[zone, i], k[0, zone, i], k[3, zone, i], h, part / h)
    cool(y, row, pace, part, into)
