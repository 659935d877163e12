"""Running a Schedule: the main make and its branches, each on to 24 hours after the starter.

A branch is a march that begins from the state at its stage. States stay per kilogram of the milk that the lane holds;
`weight` says how many kilograms of the first milk stand behind one of them, so that lanes add up.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any

import numpy as np
from numpy.typing import NDArray

from designer.make import kernel
from designer.make.kernel import Path
from designer.make.parting import Parting, Start, part
from designer.make.records import joined
from designer.make.state import PHASE
from designer.recipe.schedule import PLACE_AIR, T_FOLLOW, Schedule, as_rows, row
from designer.units import DAY_MIN as DAY_MIN


@dataclass(frozen=True, slots=True)
class LaneRun:
    """One marched lane: `rows` as marched, `end_row` the last before the first room, `p` its parameters.

    `rows` end with the first of its wait. `weight`, `taken` (12,) and `starts` as `make.parting` says, where branches
    part from it; `milk` (SIZE,) is the milk that recoveries count from.
    """

    path: Path
    rows: NDArray[Any]
    p: Any
    end_row: int
    weight: float
    milk: NDArray[np.float64]
    taken: NDArray[np.float64] = field(default_factory=lambda: np.zeros(PHASE))
    starts: tuple[Start, ...] = ()


def until_room(rows: NDArray[Any], room_stage: int | None) -> NDArray[Any]:
    """Prepared rows up to the first room, where the make ends."""
    kept = rows if room_stage is None else rows[: int(np.searchsorted(rows["stage"], room_stage))]
    return kernel.prepare(kept)


def day_row(stage: int, room_c: float, like: NDArray[Any] | Mapping[str, float]) -> NDArray[Any]:
    """A row that only waits for a day, so that the march reaches 24 hours, of a cheese in the shape of the row `like`;
    to be prepared like any other."""
    return as_rows(
        [
            row(
                stage=stage,
                minutes=DAY_MIN,
                place=PLACE_AIR,
                t_law=T_FOLLOW,
                follow_c=room_c,
                every_min=10.0,
                va_mm=float(like["va_mm"]),
                height_mm=float(like["height_mm"]),
                radius_mm=float(like["radius_mm"]),
            )
        ]
    )


def to_a_day(path: Path, rows: NDArray[Any], p: Any, until_min: float, wait: NDArray[Any], twin: bool | None) -> Path:
    """The path marched on to `until_min` where it ended before, along as much of the prepared rows `wait` as is left:
    as one more row."""
    done = float(path.out[-1, 0])
    left = until_min - done
    if left <= 1e-6:
        return path
    begun = np.cumsum(wait["minutes"]) - wait["minutes"]
    wait = wait[begun < left].copy()
    wait["minutes"][-1] = left - begun[len(wait) - 1]
    more = kernel.march(
        wait, path.last, p, t0=done, rennet_min=path.rennet_min, floc_min=path.floc_min, cut_min=path.cut_min, twin=twin
    )
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
    partings: Sequence[Parting] = (),
) -> LaneRun:
    """March the main lane from prepared rows and on to 24 hours after the starter; branches part where they are said.

    `starts` of what comes back are in the order of `partings`. Raises PartingError.
    """
    return run_parted(rows, y0, p, schedule.starter_min + DAY_MIN, wait, partings, twin)


def run_parted(
    rows: NDArray[Any], y0: NDArray[np.float64], p: Any, until_min: float, wait: NDArray[Any],
    partings: Sequence[Parting], twin: bool | None,
) -> LaneRun:  # fmt: skip
    """The main lane from prepared rows and a state, marched from one parting to the next and on to `until_min`; as
    `run_main` gives it. Raises PartingError."""
    y, first, weight, taken = kernel.zoned(y0), 0, 1.0, np.zeros(PHASE)
    milk = y[0]
    path: Path | None = None
    starts: dict[int, Start] = {}
    for at in sorted({one.row for one in partings}):
        path = _further(path, rows[: at + 1], y, p, first, twin)
        here = [k for k, one in enumerate(partings) if one.row == at]
        left = part(path.last, p, milk, weight, taken, [partings[k] for k in here])
        starts |= dict(zip(here, left.starts, strict=True))
        y, p, milk, weight, taken, first = left.y, left.p, left.milk, left.weight, left.taken, at + 1
    if path is None or first < len(rows):
        path = _further(path, rows, y, p, first, twin)
    path = to_a_day(path, rows, p, until_min, wait, twin)
    in_order = tuple(starts[k] for k in range(len(partings)))
    return LaneRun(path, joined([rows, wait[:1]]), p, len(rows) - 1, weight, milk, taken, in_order)


def _further(
    done: Path | None, rows: NDArray[Any], y: NDArray[np.float64], p: Any, first: int, twin: bool | None
) -> Path:
    """The path marched on through `rows` from row `first` and state y (ZONES, SIZE)."""
    if done is None:
        return kernel.march(rows, y, p, twin=twin)
    more = kernel.march(
        rows, y, p, first_row=first, t0=float(done.out[-1, 0]), rennet_min=done.rennet_min, floc_min=done.floc_min,
        cut_min=done.cut_min, twin=twin,
    )  # fmt: skip
    return Path(
        np.vstack([done.out, more.out]), np.vstack([done.ends, more.ends[first:]]), more.rennet_min, more.floc_min,
        more.cut_min, more.last,
    )  # fmt: skip


def run_branch(
    main: LaneRun, start: Start, after_row: int, rows: NDArray[Any], until_min: float, wait: NDArray[Any],
    twin: bool | None = None, *, whole: bool,
) -> tuple[LaneRun, LaneRun]:  # fmt: skip
    """March a branch from where it begins: the branch alone, and with the main make before it where that is its own.

    `whole` says that it is curd, which has come all the way; of whey and cream both are the same.
    """
    minute = float(main.path.ends[after_row, 1])
    begun = main.path if whole and minute > main.path.rennet_min >= 0.0 else None
    path = kernel.march(
        rows, start.y, start.p, t0=minute, rennet_min=begun.rennet_min if begun else -1.0,
        floc_min=begun.floc_min if begun and 0.0 <= begun.floc_min <= minute - begun.rennet_min else -1.0,
        cut_min=begun.cut_min if begun and begun.cut_min <= minute else -1.0, twin=twin,
    )  # fmt: skip
    path = to_a_day(path, rows, start.p, until_min, wait, twin)
    own = LaneRun(path, joined([rows, wait[:1]]), start.p, len(rows) - 1, start.weight, start.milk, start.taken)
    if not whole:
        return own, own
    before = main.path.out[main.path.out[:, 1] <= after_row]
    after = path.out.copy()
    after[:, 1] += after_row + 1
    way = Path(
        np.vstack([before, after]), np.vstack([main.path.ends[: after_row + 1], path.ends]), path.rennet_min,
        path.floc_min, path.cut_min, path.last,
    )  # fmt: skip
    joined_rows = joined([main.rows[: after_row + 1], own.rows])
    return own, LaneRun(
        way, joined_rows, start.p, after_row + len(rows), start.weight, start.milk, start.taken
    )  # fmt: skip
