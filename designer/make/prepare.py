"""Schedule rows as the march wants them: split where a law changes inside a row."""

from __future__ import annotations

from typing import Any

from numpy.typing import NDArray

from designer.make.constants import table
from designer.recipe.schedule import (
    PLACE_BRINE,
    PLACE_MOULD,
    T_FOLLOW,
    T_HOLD,
    T_RAMP,
    as_mappings,
    as_rows,
    split,
)

LATE_MIN, LATE_EVERY_MIN = 60.0, 15.0
"""After an hour in its form a cheese changes slowly: points this far apart draw it."""
HOT_BATH_C = 50.0
"""Pieces in a bath as hot as this go on changing."""
SETTLED = 9.0
"""Time constants after which a cheese has the temperature of its room."""
QUICK_PER_MIN = 0.04
"""A cheese that cools quicker than this would keep the strides of the march short long after it has settled."""


def prepare(rows: NDArray[Any]) -> NDArray[Any]:
    """A private copy of Schedule rows, ready to march.

    A ramp shorter than its row becomes ramp and hold. A small cheese that cools is held at the temperature of its
    surroundings once it has settled.
    """
    out: list[dict[str, float]] = []
    for row in as_mappings(rows):
        if row["t_law"] == T_RAMP and 0.0 < row["ramp_min"] < row["minutes"] - 1e-9:
            out += split(row, row["ramp_min"])
        elif row["t_law"] == T_FOLLOW and row["place"] >= PLACE_MOULD:
            out += [piece for part in _cooling(row) for piece in _late(part)]
        else:
            out.append(row)
    return as_rows(out)


def _late(row: dict[str, float]) -> tuple[dict[str, float], ...]:
    """A row of a cheese in its form, with its points farther apart from its second hour on."""
    if row["minutes"] <= LATE_MIN or row["follow_c"] > HOT_BATH_C or row["every_min"] >= LATE_EVERY_MIN:
        return (row,)
    first, rest = split(row, LATE_MIN)
    return first, rest | {"every_min": LATE_EVERY_MIN}


def _cooling(row: dict[str, float]) -> tuple[dict[str, float], ...]:
    """A row of a cooling cheese, split where it has settled."""
    fastest, slowest = _conduction(row)
    settled = SETTLED / slowest
    if settled > 0.8 * row["minutes"] or fastest < QUICK_PER_MIN:
        return (row,)
    first, rest = split(row, settled)
    return first, rest | {"t_law": T_HOLD, "t_end_c": row["follow_c"]}


def _conduction(row: dict[str, float]) -> tuple[float, float]:
    """The fastest and the slowest rate at which the halves of a cheese cool [1/min]."""
    value = {name: float(table()[name].value) for name in _NEEDED}  # type: ignore[arg-type]
    va_m = row["va_mm"] / 1000.0
    path_m = va_m * value["cooling_shape"]
    film = 1.0 / (value["cooling_h_brine"] if row["place"] == PLACE_BRINE else value["cooling_h"])
    half_per_min = 60.0 / (0.5 * value["cheese_density"] * value["cheese_cp"] * 1000.0 * va_m)
    inward = 2.0 * value["cheese_conductivity"] / path_m
    outside = 1.0 / (film + path_m / (4.0 * value["cheese_conductivity"]))
    return half_per_min * (2.0 * inward + outside), 0.5 * half_per_min / (1.0 / outside + 0.5 / inward)


_NEEDED = ("cooling_shape", "cooling_h_brine", "cooling_h", "cheese_density", "cheese_cp", "cheese_conductivity")
