"""Schedule rows as the march wants them: split where a law changes inside a row, stepped as fine as they need."""

from __future__ import annotations

from typing import Any

import numpy as np
from numpy.typing import NDArray

from designer.make.constants import table
from designer.recipe.schedule import (
    GEL_ACID_HEAT,
    GEL_NONE,
    PLACE_BRINE,
    PLACE_MILK,
    PLACE_MOULD,
    PLACE_UNDER_WHEY,
    T_FOLLOW,
    T_HOLD,
    T_RAMP,
    as_mappings,
    as_rows,
    split,
)

HOT_C, HOT_STEP_MIN, IN_WHEY_STEP_MIN, BASKET_STEP_MIN = 43.0, 0.5, 1.0, 2.0
"""Hot curd under whey gives it up within minutes, acid-and-heat curd in its basket; held by the halving test."""
LATE_MIN, LATE_STEP_MIN = 60.0, 15.0
"""After an hour in its form a cheese changes slowly: steps as long as this are off by 0.0003 pH and 0.003 points."""
HOT_BATH_C = 50.0
"""Pieces in a bath as hot as this go on changing: no long steps there."""
SETTLED = 9.0
"""Time constants after which a cheese has the temperature of its room."""
BORNE = 0.8
"""Longest step in time constants of the fastest conduction."""


def prepare(rows: NDArray[Any], *, cut: bool = False, gel: float = GEL_NONE) -> NDArray[Any]:
    """A private copy of Schedule rows, ready to march; `cut` says that the curd is cut before the first of them, `gel`
    of what kind it is by then.

    A ramp shorter than its row becomes ramp and hold. Curd in whey is stepped as fine as it evens out with it, hot curd
    finer, and acid-and-heat curd in its basket too. A cheese that cools is stepped as fine as its conduction asks, and
    held at the temperature of its surroundings once it has settled.
    """
    out: list[dict[str, float]] = []
    set_c = 0.0
    for row in as_mappings(rows):
        gel = row["gel"] or gel
        if row["t_law"] != T_FOLLOW and not np.isnan(row["t_end_c"]):
            set_c = max(row["t_end_c"], set_c if row["t_law"] == T_RAMP else 0.0)
        cut = cut or row["cut_mm"] > 0.0
        if row["place"] == PLACE_MILK and cut:
            row["step_max_min"] = min(row["step_max_min"], IN_WHEY_STEP_MIN)
        if row["place"] == PLACE_UNDER_WHEY and set_c > HOT_C:
            row["step_max_min"] = min(row["step_max_min"], HOT_STEP_MIN)
        if row["place"] >= PLACE_MOULD and gel == GEL_ACID_HEAT:
            row["step_max_min"] = min(row["step_max_min"], BASKET_STEP_MIN)
        if row["t_law"] == T_RAMP and 0.0 < row["ramp_min"] < row["minutes"] - 1e-9:
            out += split(row, row["ramp_min"])
        elif row["t_law"] == T_FOLLOW and row["place"] >= PLACE_MOULD:
            parts = _cooling(row)
            quick = gel == GEL_ACID_HEAT or row["follow_c"] > HOT_BATH_C
            out += parts if quick else [piece for part in parts for piece in _late(part)]
        else:
            out.append(row)
    return as_rows(out)


def _late(row: dict[str, float]) -> tuple[dict[str, float], ...]:
    """A row of a cheese in its form, with longer steps from its second hour on, but none its conduction can't bear."""
    step = LATE_STEP_MIN if row["t_law"] == T_HOLD else min(LATE_STEP_MIN, BORNE / _conduction(row)[0])
    if row["minutes"] <= LATE_MIN or step <= row["step_max_min"]:
        return (row,)
    first, rest = split(row, LATE_MIN)
    return first, rest | {"step_max_min": step}


def _cooling(row: dict[str, float]) -> tuple[dict[str, float], ...]:
    """A row of a cooling cheese, split where it has settled."""
    fastest, slowest = _conduction(row)
    step = min(row["step_max_min"], BORNE / fastest)
    settled = SETTLED / slowest
    if settled > 0.8 * row["minutes"] or step == row["step_max_min"]:
        return (row | {"step_max_min": step},)
    first, rest = split(row, settled)
    return first | {"step_max_min": step}, rest | {"t_law": T_HOLD, "t_end_c": row["follow_c"]}


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
