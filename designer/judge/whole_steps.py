"""The program behind aim: the fewest whole steps that bring linear figures inside their bounds, or nearest to them."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]
MOVES = 30
"""Improvements by single steps at the most; a start from the linear program needs a handful."""


def whole_steps(
    slope: Floats, low: Floats, high: Floats, cost: Floats, least: Floats, most: Floats
) -> NDArray[np.int64] | None:
    """Whole steps n (settings,) in least..most with the least sum |n| + cost · (how far slope @ n lies past low..high).

    slope (bounds, settings). A linear program gives the start; then one or two settings at a time move by a step as
    long as that is better. None where the program has no solution.
    """
    from scipy.optimize import linprog  # slow to load, and only aim needs it

    count, bounds = len(least), len(cost)
    slack = np.eye(bounds)
    below, above = np.isfinite(low), np.isfinite(high)
    rows = np.vstack([np.hstack([-slope, slope, -slack])[below], np.hstack([slope, -slope, -slack])[above]])
    ends = np.concatenate([-low[below], high[above]])
    limits = [(max(0.0, down), max(0.0, up)) for down, up in zip(least, most, strict=True)]
    limits += [(max(0.0, -up), max(0.0, -down)) for down, up in zip(least, most, strict=True)]
    limits += [(0.0, np.inf)] * bounds
    weights = np.concatenate([np.ones(2 * count), cost])
    found = linprog(weights, A_ub=rows, b_ub=ends, bounds=limits, method="highs")
    if found.x is None:
        return None

    def price(steps: Floats) -> Floats:
        """Cost of each row of steps (many, settings)."""
        there = steps @ slope.T
        past = np.maximum(np.maximum(low - there, there - high), 0.0)
        outside = ((steps < least - 1e-9) | (steps > most + 1e-9)).any(axis=1)
        return np.asarray(np.abs(steps).sum(axis=1) + past @ cost + 1e9 * outside)

    one = np.vstack([np.eye(count), -np.eye(count)])
    two = (one[:, None] + one[None, :]).reshape(-1, count)
    near = np.vstack([one, two])
    steps = np.clip(np.rint(found.x[:count] - found.x[count : 2 * count]), np.ceil(least), np.floor(most))
    here = float(price(steps[None, :])[0])
    for _ in range(MOVES):
        around = steps + near
        prices = price(around)
        best = int(prices.argmin())
        if prices[best] >= here - 1e-9:
            break
        steps, here = around[best], float(prices[best])
    whole: NDArray[np.int64] = steps.astype(np.int64)
    return whole
