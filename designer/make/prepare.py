"""Schedule rows as the march wants them: split where a law changes inside a row."""

from __future__ import annotations

from typing import Any

from numpy.typing import NDArray

from designer.recipe.schedule import PLACE_MOULD, T_FOLLOW, T_RAMP, as_mappings, as_rows, split

LATE_MIN, LATE_EVERY_MIN = 60.0, 15.0
"""After an hour in its form a cheese changes slowly: points this far apart draw it."""
HOT_BATH_C = 50.0
"""Pieces in a bath as hot as this go on changing."""


def prepare(rows: NDArray[Any]) -> NDArray[Any]:
    """A private copy of Schedule rows, ready to march.

    A ramp shorter than its row becomes ramp and hold.
    """
    out: list[dict[str, float]] = []
    for row in as_mappings(rows):
        if row["t_law"] == T_RAMP and 0.0 < row["ramp_min"] < row["minutes"] - 1e-9:
            out += split(row, row["ramp_min"])
        elif row["t_law"] == T_FOLLOW and row["place"] >= PLACE_MOULD:
            out += _late(row)
        else:
            out.append(row)
    return as_rows(out)


def _late(row: dict[str, float]) -> tuple[dict[str, float], ...]:
    """A row of a cheese in its form, with its points farther apart from its second hour on."""
    if row["minutes"] <= LATE_MIN or row["follow_c"] > HOT_BATH_C or row["every_min"] >= LATE_EVERY_MIN:
        return (row,)
    first, rest = split(row, LATE_MIN)
    return first, rest | {"every_min": LATE_EVERY_MIN}
