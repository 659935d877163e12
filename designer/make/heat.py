"""Heat in the march: what moves the temperature of vat and curd, and how a cheese of two halves cools.

How the halves cool is linear, with one answer for all time: strides take it from `cool` instead of finding it anew.
"""

from __future__ import annotations

from typing import Any

import numpy as np
from numpy.typing import NDArray

from designer.make.law import law
from designer.make.state import CORE, OUTER, WATER, WHEY, ZONES, T
from designer.make.syneresis import skin_growth_per_min
from designer.recipe.schedule import PLACE_BRINE, PLACE_MOULD, T_FOLLOW, T_HOLD, T_RAMP

SETTLES, INWARD, OUTWARD = 0, 1, 2
PACE = 3
"""Length of the array `pace` of a row, and what stands in it [1/min]."""


@law
def warm(y: NDArray[np.float64], row: Any, p: Any, mass: float, dy: NDArray[np.float64]) -> None:
    """Temperature: set by the maker, following its surroundings, or moved by wash water, or cooling in its vat.

    mass [kg per kg milk] is that of the curd.
    """
    if row.t_law == T_RAMP:
        dy[T] += row.slope_c_min
    elif row.t_law == T_FOLLOW and row.place < PLACE_MOULD:
        va_m = row.va_mm / 1000.0
        film = p.cooling_h + (p.cooling_h_brine - p.cooling_h) * row.stretch  # stretched curd lies in water
        resistance = 1.0 / film + va_m / (1.5 * p.cheese_conductivity)
        taken = row.curd_per_water * p.cheese_cp / p.cp_water  # the water cools by what the curd takes from it
        warmer = row.follow_c - y[T] - taken * (y[T] - row.bath_start_c)
        dy[T] += warmer * 60.0 / (p.cheese_density * p.cheese_cp * 1000.0 * va_m * resistance)
    elif row.water_on > 0.0 and row.minutes > 0.0:
        held = mass + y[WHEY + WATER]
        dy[T] += row.water_on / row.minutes * p.cp_water * (row.water_c - y[T]) / (held * p.cp_milk)
    if row.vat_loss > 0.0 and row.t_law == T_HOLD:
        dy[T] += row.vat_loss * (row.follow_c - y[T]) / (mass + y[WHEY + WATER])


@law
def conducts_per_min(row: Any, p: Any) -> tuple[float, float]:
    """How fast the halves of a cheese even out their heat, and its outer half with what is around it [1/min]."""
    h = p.cooling_h
    if row.place == PLACE_BRINE:
        h = p.cooling_h_brine
    va_m = row.va_mm / 1000.0
    path_m = va_m * p.cooling_shape
    half = 60.0 / (0.5 * p.cheese_density * p.cheese_cp * 1000.0 * va_m)
    inward = 2.0 * p.cheese_conductivity / path_m
    return half * inward, half / (1.0 / h + path_m / (4.0 * p.cheese_conductivity))


@law
def find_pace(zones: int, row: Any, p: Any, pace: NDArray[np.float64]) -> None:
    """How fast things settle in a row [1/min], into pace (PACE,): what settles fastest, with a quarter to spare; how
    fast the halves of a cheese even out their heat, and the outer one with what is around it (0: not in this row).

    Calcium settles between micelle and serum long before the rest has moved, and so does the rind under a hard press;
    a stride must not overshoot them.
    """
    pace[SETTLES] = 1.25 * max(p.calcium_dissolve_per_min, skin_growth_per_min(row.load_kpa, row.place, p))
    pace[INWARD] = pace[OUTWARD] = 0.0
    if zones == ZONES and row.t_law == T_FOLLOW:
        pace[INWARD], pace[OUTWARD] = conducts_per_min(row, p)


@law
def cool(y: NDArray[np.float64], row: Any, pace: NDArray[np.float64], minutes: float, to: NDArray[np.float64]) -> None:
    """The temperatures of a cheese some minutes after y into `to`, both (ZONES, SIZE): what `zone_rates` says of two
    halves that cool has this solution."""
    if pace[OUTWARD] <= 0.0:
        return
    inward, half_out = pace[INWARD], 0.5 * pace[OUTWARD]
    spread = np.sqrt(inward * inward + half_out * half_out)
    slow = np.exp((spread - inward - half_out) * minutes)
    quick = np.exp(-(spread + inward + half_out) * minutes)
    mean, apart = 0.5 * (slow + quick), 0.5 * (slow - quick) / spread
    core, outer = y[CORE, T] - row.follow_c, y[OUTER, T] - row.follow_c
    to[CORE, T] = row.follow_c + (mean + apart * half_out) * core + apart * inward * outer
    to[OUTER, T] = row.follow_c + (mean - apart * half_out) * outer + apart * inward * core
