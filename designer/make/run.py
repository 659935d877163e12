"""Running a Schedule: the main make and its branches, each on to 24 hours after the starter.

A branch is a march that begins from the state at its stage. States stay per kilogram of the milk that the lane holds;
`weight` says how many kilograms of the first milk stand behind one of them, so that lanes add up.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

import numpy as np
from numpy.typing import NDArray

from designer.make import kernel
from designer.make.kernel import Path
from designer.make.path import at_minute_of_row, phase_mass
from designer.make.state import CASEIN, COLLOIDAL, CURD, FAT, GONE, WATER, WHEY, WHEY_PROTEIN, T
from designer.recipe.schedule import PLACE_AIR, T_FOLLOW, Schedule, as_rows, row

CREAM_FAT = 0.40
DAY_MIN = 1440.0


@dataclass(frozen=True, slots=True)
class LaneRun:
    """One marched lane: `rows` as marched, `end_row` the last before the first room, `p` its parameters."""

    path: Path
    rows: NDArray[Any]
    p: Any
    end_row: int
    weight: float


def until_room(rows: NDArray[Any], room_stage: int | None) -> NDArray[Any]:
    """Prepared rows up to the first room; the make ends where the cheese enters it."""
    kept = rows if room_stage is None else rows[rows["stage"] < room_stage]
    return kernel.prepare(kept)


def day_row(stage: int, room_c: float, minutes: float, like: NDArray[Any]) -> NDArray[Any]:
    """A row that only waits, so that the march reaches 24 hours."""
    return as_rows(
        [
            row(
                stage=stage,
                minutes=minutes,
                place=PLACE_AIR,
                t_law=T_FOLLOW,
                follow_c=room_c,
                step_max_min=10.0,
                va_mm=float(like["va_mm"]),
                height_mm=float(like["height_mm"]),
                radius_mm=float(like["radius_mm"]),
            )
        ]
    )


def to_a_day(path: Path, rows: NDArray[Any], p: Any, until_min: float, wait: NDArray[Any], twin: bool | None) -> Path:
    """The path marched on to `until_min` where it ended before."""
    done = float(path.out[-1, 0])
    if done >= until_min - 1e-6:
        return path
    wait = wait.copy()
    wait["minutes"] = until_min - done
    more = kernel.march(
        kernel.prepare(wait), path.last, p, t0=done, rennet_min=path.rennet_min,
        floc_min=path.floc_min, cut_min=path.cut_min, twin=twin,
    )  # fmt: skip
    tail = more.out.copy()
    tail[:, 1] = len(rows)
    return Path(
        np.vstack([path.out, tail]),
        np.vstack([path.ends, [more.ends[0, 0], more.ends[-1, 1], 1.0]]),
        path.rennet_min,
        path.floc_min,
        path.cut_min,
        more.last,
    )


def run_main(
    schedule: Schedule,
    rows: NDArray[Any],
    y0: NDArray[np.float64],
    p: Any,
    wait: NDArray[Any],
    twin: bool | None = None,
) -> LaneRun:
    """March the main lane from prepared rows and on to 24 hours after the starter."""
    path = kernel.march(rows, y0, p, twin=twin)
    path = to_a_day(path, rows, p, schedule.starter_min + DAY_MIN, wait, twin)
    return LaneRun(path, np.concatenate([rows, wait]), p, len(rows) - 1, 1.0)


def branch_start(
    parent: LaneRun, row_index: int, share: float, of: str
) -> tuple[NDArray[np.float64], Any, float, float]:
    """State, parameters, minute and weight with which a branch of curd, whey or cream begins after a row.

    Raises ValueError when there is nothing of that kind at that point.
    """
    y = at_minute_of_row(parent.path, row_index).copy()
    minute = float(parent.path.ends[row_index, 1])
    p = parent.p.copy()
    if of == "curd":
        return y, p, minute, parent.weight * share
    part = np.zeros_like(y)
    part[T] = y[T]
    if of == "whey":
        source, taken = WHEY, float(phase_mass(y, WHEY, p))
        if taken < 1e-3:  # already run off: the whey that was collected
            source, taken = GONE, float(phase_mass(y, GONE, p))
        if taken < 1e-3:
            raise ValueError("there is no whey there yet")
        part[CURD : CURD + 12] = y[source : source + 12] / taken
    else:
        fat = float(y[CURD + FAT])
        taken = fat / CREAM_FAT
        serum = (taken - fat) / (float(phase_mass(y, CURD, p)) - fat)
        part[CURD : CURD + 12] = y[CURD : CURD + 12] * serum / taken
        part[CURD + FAT] = CREAM_FAT
        part[COLLOIDAL] = y[COLLOIDAL] * serum / taken
    part[CURD + CASEIN] = max(part[CURD + CASEIN], 1e-6)
    p["casein_milk"] = part[CURD + CASEIN] + 0.85 * part[CURD + WHEY_PROTEIN]
    p["water_milk"] = part[CURD + WATER]
    p["bound_whey_protein"] = 0.0
    p["colloidal_per_casein"] = part[COLLOIDAL] / part[CURD + CASEIN]
    return part, p, minute, parent.weight * share * taken


def without_cream(y: NDArray[np.float64], p: Any, share: float) -> tuple[NDArray[np.float64], Any, float]:
    """What is left when a share of the cream is taken: state and parameters per kilogram left, and that weight."""
    fat = float(y[CURD + FAT]) * share
    taken = fat / CREAM_FAT
    serum = (taken - fat) / (float(phase_mass(y, CURD, p)) - float(y[CURD + FAT]))
    left = y.copy()
    left[CURD : CURD + 12] *= 1.0 - serum
    left[CURD + FAT] = y[CURD + FAT] - fat
    left[COLLOIDAL] *= 1.0 - serum
    weight = 1.0 - taken
    left[CURD : CURD + 12] /= weight
    left[COLLOIDAL] /= weight
    p = p.copy()
    p["casein_milk"] *= (1.0 - serum) / weight
    p["water_milk"] = left[CURD + WATER]
    return left, p, weight


def run_many(
    rows: list[NDArray[Any]], y0: NDArray[np.float64], p: NDArray[Any], until_min: float, wait: NDArray[Any],
    stop: Callable[[], bool] = lambda: False,
) -> list[Path] | None:  # fmt: skip
    """Members of a band, each marched on to `until_min`; None when stopped."""
    paths = kernel.march_many(rows, y0, p, stop=stop)
    if paths is None:
        return None
    return [
        to_a_day(path, own, p[member], until_min, wait, False)
        for member, (path, own) in enumerate(zip(paths, rows, strict=True))
    ]
