"""One stride of the march: Bogacki and Shampine's 3(2) pair (1989), its error, and the states within it.

A stride is as long as its error allows: minutes just after the cut, an hour in a quiet press. What lies within one is
read by the cubic through both its ends and their rates, which costs no look at the rates.
"""

from __future__ import annotations

from typing import Any

import numpy as np
from numpy.typing import NDArray

from designer.make.law import law
from designer.make.rates import zone_rates
from designer.make.state import ACID, AWAKE, CELLS, CURD, DRY_SALT, GONE, SIZE, WATER, WHEY, ZONES, T

STAGES = 4
"""Looks at the rates that one stride holds; the last is the first of the next."""
TOLERANCE, ROUGH = 3e-4, 2e-3
"""Share of each state that a stride may be off by: within 0.001 pH and 0.03 points over a make; and where it is spreads
and differences of makes that count."""
LITTLE, LITTLE_WHEY = 0.01, 0.1
"""A state of curd or whey as small as this [kg or mol per kg milk] may be off by a share of this."""
NOTHING, NO_SALT = -1e-11, -1e-7
"""As far below nothing [kg or mol per kg milk] as a stride may bring what runs out, and salt strewn that dissolves."""
SHORTEST_MIN = 1e-3
"""A stride is not shortened below this, whatever its error."""
LEAST, MOST, SAFE = 0.2, 3.0, 0.9
"""How much longer a stride may be than the one before, and how much of what its error allows it takes."""


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
    k: NDArray[np.float64],
    to: NDArray[np.float64],
) -> float:
    """h minutes from y into `to`, both (ZONES, SIZE); returns its error as a share of the states, nan for none of it.

    k (STAGES, ZONES, SIZE): k[0] must hold the rates at y; k[3] takes those at `to`, k[1] the error per minute.
    """
    for zone in range(zones):
        for i in range(SIZE):
            to[zone, i] = y[zone, i] + 0.5 * h * k[0, zone, i]
    zone_rates(to, zones, row, p, kept, k[1])
    for zone in range(zones):
        for i in range(SIZE):
            to[zone, i] = y[zone, i] + 0.75 * h * k[1, zone, i]
    zone_rates(to, zones, row, p, kept, k[2])
    for zone in range(zones):
        for i in range(SIZE):
            to[zone, i] = y[zone, i] + h / 9.0 * (2.0 * k[0, zone, i] + 3.0 * k[1, zone, i] + 4.0 * k[2, zone, i])
    zone_rates(to, zones, row, p, kept, k[3])
    if _overdrawn(y, to, zones):
        return np.nan
    for zone in range(zones):
        for i in range(SIZE):
            k[1, zone, i] = (
                5.0 * k[0, zone, i] - 6.0 * k[1, zone, i] - 8.0 * k[2, zone, i] + 9.0 * k[3, zone, i]
            ) / 72.0
    return h * _size(k[1], to, zones)


@law
def first(y: NDArray[np.float64], zones: int, k: NDArray[np.float64], tolerance: float) -> float:
    """A stride [min] to begin a row with: a fair guess from how fast the states move, k[0] being their rates."""
    return max(SHORTEST_MIN, 2.0 * tolerance ** (1.0 / 3.0) / (_size(k[0], y, zones) + 1e-6))


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
            if y[zone, i] > 0.0:  # what grows a thousandfold is held to a share of itself
                total += (change[zone, i] / y[zone, i]) ** 2
            total += (change[zone, i + 3] / (abs(y[zone, i + 3]) + LITTLE)) ** 2
        total += (change[zone, DRY_SALT] / (abs(y[zone, DRY_SALT]) + LITTLE)) ** 2
    return np.sqrt(total)


@law
def _overdrawn(y: NDArray[np.float64], to: NDArray[np.float64], zones: int) -> bool:
    """Whether a stride took more of something than there was."""
    for zone in range(zones):
        for i in range(GONE):
            if i != CURD + ACID and i != WHEY + ACID and to[zone, i] < min(y[zone, i], NOTHING):
                return True
        if to[zone, DRY_SALT] < min(y[zone, DRY_SALT], NO_SALT):
            return True
    return False


@law
def longer(h: float, error: float) -> float:
    """The next stride after one of h minutes and an error in parts of what it may be off by."""
    if error <= 0.0:
        return h * MOST
    if not error < 1e6:  # nan too
        return max(SHORTEST_MIN, h * LEAST)
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
    h: float,
    part: float,
    into: NDArray[np.float64],
) -> None:
    """The state `part` minutes into a stride of h minutes from y to `to`, all (ZONES, SIZE)."""
    for zone in range(zones):
        for i in range(SIZE):
            into[zone, i] = on_cubic(y[zone, i], to[zone, i], k[0, zone, i], k[3, zone, i], h, part / h)
