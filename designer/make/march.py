"""The march: one make from any row and any state, row by row, in strides as long as their error allows.

`march` is compiled; the same function runs as plain Python (the twin) while the compiler works.
Columns of `out`: minute, row, pH of curd, pH of whey, firmness [Pa]; core and edge: two temperatures [°C], two pH,
two moistures [kg/kg] (equal where there is one zone); then the state of the whole.
"""

from __future__ import annotations

from typing import Any

import numpy as np
from numpy.typing import NDArray

from designer.make.begin import begin
from designer.make.heat import PACE, find_pace
from designer.make.kept import KEPT, PH_CURD, PH_WHEY, nothing_kept
from designer.make.law import law
from designer.make.rates import curd_mass, curd_ph, firmness, whey_ph, zone_rates
from designer.make.state import (
    CLOT,
    CORE,
    CURD,
    GONE,
    GRAIN,
    LACTATE,
    LACTATE_KG,
    LEAST_WATER,
    OUTER,
    SIZE,
    WATER,
    WHEY,
    ZONES,
    T,
)
from designer.make.stride import SHORTEST_MIN, STAGES, farthest, first, longer, on_cubic, stride, take, within
from designer.recipe.schedule import (
    END_FIRMNESS,
    END_FLOC_MULTIPLE,
    END_PH,
    END_TEMPERATURE,
    END_TIME,
    END_WHEY_OFF,
    OF_WHEY,
    PLACE_MOULD,
    T_RAMP,
)

OUT_EXTRA = 11
# What `march` tells besides the path: info[0] points written, [1] minute of rennet, [2] minutes to flocculation,
# [3] minute of the cut; negative where it did not happen.
INFO = 4
LOOKS, CLOSE = 30, 1e-10
"""How often, and how closely, a stride is looked into for where something in it happens."""
Bracket = tuple[float, float, float, float, int]
"""Two places of a stride with a zero between them, the margins there, below zero and above, and which of the two stayed
when it was last narrowed: -1 the first, 1 the second, 0 neither."""
NATURAL_ACIDITY_PCT = (0.15, 0.11)  # milk or curd, whey: what the titration counts before any lactic acid


@law
def whole(y: NDArray[np.float64], zones: int, out: NDArray[np.float64]) -> None:
    """The cheese as one: the mean of its halves into out (SIZE,)."""
    for i in range(SIZE):
        out[i] = y[CORE, i] if zones < ZONES else 0.5 * (y[CORE, i] + y[OUTER, i])


@law
def end_margin(
    y: NDArray[np.float64],
    row: Any,
    p: Any,
    kept: NDArray[np.float64],
    minute: float,
    info: NDArray[np.float64],
    toward: float,
) -> float:
    """How far past its end a stage is; reached at zero and above. `toward` is +1 or -1 for a temperature end.

    y (SIZE,) is the whole cheese, kept (KEPT,) that of its core.
    """
    if row.end_by == END_TEMPERATURE:
        return toward * (y[T] - row.end_value)
    if row.end_by == END_FLOC_MULTIPLE:
        if info[2] < 0.0:
            return -1.0
        return (minute - info[1]) - row.end_value * info[2]
    if row.end_by == END_WHEY_OFF:
        return y[WHEY + WATER] + y[GONE + WATER] - row.end_value
    ph = curd_ph(y, p, kept[PH_CURD])
    if row.end_of == OF_WHEY:
        ph = whey_ph(y, p, ph, kept[PH_WHEY])
    if row.end_by == END_PH:
        return row.end_value - ph
    if row.end_by == END_FIRMNESS:
        return firmness(y, ph, p) - row.end_value
    base, water, lactate = NATURAL_ACIDITY_PCT[0], y[CURD + WATER], y[CURD + LACTATE]
    if row.end_of == OF_WHEY and y[WHEY + WATER] > LEAST_WATER:
        base, water, lactate = NATURAL_ACIDITY_PCT[1], y[WHEY + WATER], y[WHEY + LACTATE]
    return base + 100.0 * LACTATE_KG * lactate / water - row.end_value


@law
def _write(
    out: NDArray[np.float64],
    n: int,
    minute: float,
    index: int,
    y: NDArray[np.float64],
    zones: int,
    p: Any,
    kept: NDArray[np.float64],
) -> int:
    mean = out[n, OUT_EXTRA:]
    whole(y, zones, mean)
    ph = curd_ph(mean, p, kept[CORE, PH_CURD])
    out[n, 0] = minute
    out[n, 1] = index
    out[n, 2] = ph
    out[n, 3] = whey_ph(mean, p, ph, kept[CORE, PH_WHEY])
    out[n, 4] = firmness(mean, ph, p)
    outer = OUTER if zones == ZONES else CORE
    out[n, 5] = y[CORE, T]
    out[n, 6] = y[outer, T]
    out[n, 7] = ph if zones < ZONES else curd_ph(y[CORE], p, ph)
    out[n, 8] = ph if zones < ZONES else curd_ph(y[outer], p, ph)
    out[n, 9] = y[CORE, CURD + WATER] / curd_mass(y[CORE], p)
    out[n, 10] = y[outer, CURD + WATER] / curd_mass(y[outer], p)
    return n + 1


@law
def _crossing(bracket: Bracket) -> float:
    """Where the straight line between the ends of a bracket crosses zero."""
    low, high, before, after, _ = bracket
    return low + (high - low) * before / (before - after)


@law
def _narrowed(bracket: Bracket, at: float, margin: float) -> Bracket:
    """A bracket, narrowed by the margin `at` a place in it; the end that stays twice counts half (Illinois)."""
    low, high, before, after, stayed = bracket
    if margin >= 0.0:
        return low, at, before * (0.5 if stayed < 0 else 1.0), margin, -1
    return at, high, margin, after * (0.5 if stayed > 0 else 1.0), 1


@law
def _note_clot(
    before: float, after: float, minute: float, h: float, k: NDArray[np.float64], info: NDArray[np.float64]
) -> None:
    """The minute at which the milk flocculates, on the cubic of its stride."""
    if info[2] >= 0.0 or after < 1.0 or before >= 1.0:
        return
    bracket, share = (0.0, 1.0, before - 1.0, after - 1.0, 0), 1.0
    for _ in range(LOOKS):
        share = _crossing(bracket)
        margin = on_cubic(before, after, k[0, CORE, CLOT], k[3, CORE, CLOT], h, share) - 1.0
        if abs(margin) < CLOSE:
            break
        bracket = _narrowed(bracket, share, margin)
    info[2] = minute + h * share - info[1]


@law
def _end_within(
    y: NDArray[np.float64],
    to: NDArray[np.float64],
    zones: int,
    row: Any,
    p: Any,
    kept: NDArray[np.float64],
    pace: NDArray[np.float64],
    minute: float,
    h: float,
    k: NDArray[np.float64],
    info: NDArray[np.float64],
    toward: float,
    after: float,
    between: NDArray[np.float64],
    mean: NDArray[np.float64],
) -> float:
    """Minutes into a stride at which its stage ends; `after` >= 0 is the margin at the end of it."""
    whole(y, zones, mean)
    before = end_margin(mean, row, p, kept[CORE], minute, info, toward)
    if before >= 0.0:
        return 0.0
    bracket, part = (0.0, h, before, after, 0), h
    for _ in range(LOOKS):
        part = _crossing(bracket)
        within(y, to, zones, k, row, pace, h, part, between)
        whole(between, zones, mean)
        margin = end_margin(mean, row, p, kept[CORE], minute + part, info, toward)
        if abs(margin) < CLOSE or bracket[1] - bracket[0] < 1e-9:
            break
        bracket = _narrowed(bracket, part, margin)
    return part


def march(
    rows: Any,
    y0: NDArray[np.float64],
    first_row: int,
    t0: float,
    p: Any,
    tolerance: float,
    out: NDArray[np.float64],
    ends: NDArray[np.float64],
    info: NDArray[np.float64],
    last: NDArray[np.float64],
) -> int:
    """March `rows` from row `first_row`, state y0 (ZONES, SIZE) and minute t0; returns points written to out.

    out (n, OUT_EXTRA + SIZE). ends (rows, 3) takes start, end and 1 where a state end was reached (0: ran to its
    latest). info (INFO,) is read and updated, and last (ZONES, SIZE) takes the final state, so that a march can go on
    from another. p is one record of constants and milk; `tolerance` is what a stride may be off by (see `make.stride`).
    """
    y, trial = np.empty((ZONES, SIZE)), np.empty((ZONES, SIZE))
    take(y0, y)
    take(y0, trial)
    between, k = y.copy(), np.zeros((STAGES, ZONES, SIZE))
    mean, kept, pace = np.zeros(SIZE), np.empty((ZONES, KEPT)), np.empty(PACE)
    nothing_kept(kept, p.ph_native)
    minute, n, done_stage = t0, 0, -1
    zones = ZONES if not np.isnan(y[OUTER, T]) else 1
    for index in range(first_row, len(rows)):
        row = rows[index]
        if zones == 1 and row.place >= PLACE_MOULD:
            for i in range(SIZE):
                y[OUTER, i] = y[CORE, i]
            take(y, trial)
            zones = ZONES
        for zone in range(zones):
            begin(y[zone], row, p)
        if info[1] < 0.0 and row.rennet_imcu_l > 0.0:
            info[1] = minute
        if info[3] < 0.0 and y[CORE, GRAIN] > 0.0:
            info[3] = minute
        ends[index, 0] = minute
        ends[index, 2] = 1.0
        n = _write(out, n, minute, index, y, zones, p, kept)
        open_end = row.end_by != END_TIME
        whole(y, zones, mean)
        toward = 1.0 if mean[T] <= row.end_value else -1.0
        if row.stage == done_stage or (
            open_end and row.earliest_min <= 0.0 and end_margin(mean, row, p, kept[CORE], minute, info, toward) >= 0.0
        ):
            ends[index, 1] = minute
            done_stage = row.stage
            continue
        if row.t_law == T_RAMP and row.minutes > 0.0:
            row.slope_c_min = (row.t_end_c - mean[T]) / max(row.ramp_min, row.minutes)
        row.bath_start_c = mean[T]
        start, gone, points = minute, 0.0, 1
        reached = not open_end
        zone_rates(y, zones, row, p, kept, k[0])
        find_pace(zones, row, p, pace)
        most = farthest(pace)
        h = first(y, zones, k, tolerance)
        while gone < row.minutes - 1e-9:
            h = min(h, most, row.minutes - gone)
            error = stride(y, zones, row, p, kept, h, pace, k, trial) / tolerance
            if not error <= 1.0 and h > SHORTEST_MIN:  # so that nan, from a stride far too long, is refused too
                h = longer(h, error)
                continue
            _note_clot(y[CORE, CLOT], trial[CORE, CLOT], minute, h, k, info)
            part = h
            if open_end and gone + h >= row.earliest_min - 1e-9:
                whole(trial, zones, mean)
                after = end_margin(mean, row, p, kept[CORE], minute + h, info, toward)
                if after >= 0.0:
                    part = _end_within(
                        y, trial, zones, row, p, kept, pace, minute, h, k, info, toward, after, between, mean
                    )
                    part = max(part, min(h, row.earliest_min - gone))
                    reached = True
            while points * row.every_min < gone + part - 1e-6:
                within(y, trial, zones, k, row, pace, h, points * row.every_min - gone, between)
                n = _write(out, n, start + points * row.every_min, index, between, zones, p, kept)
                points += 1
            if part < h:
                within(y, trial, zones, k, row, pace, h, part, between)
                take(between, trial)
            take(trial, y)
            gone += part
            minute = start + gone
            if reached and open_end:
                break
            for zone in range(zones):
                for i in range(SIZE):
                    k[0, zone, i] = k[3, zone, i]
            h = longer(h, error)
        if gone > 0.0:
            n = _write(out, n, minute, index, y, zones, p, kept)
        ends[index, 1] = minute
        if not reached:
            ends[index, 2] = 0.0
        elif open_end:
            done_stage = row.stage
    info[0] = n
    take(y, last)
    return n
