"""Many makes that differ by one thing, kept only at the end of each row: what levers, aim and explain need.

A make begins where its first changed stage begins, from the state the base was in, so that a late edit costs only what
comes after it. Steps may be longer than those of a forecast: a difference of two makes on the same steps is good to a
few per cent where each of them is off by more (see the tests).
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass
from functools import cache
from typing import Any

import numpy as np
from numba import njit
from numpy.typing import NDArray

from designer.make import kernel
from designer.make.law import FAST
from designer.make.march import INFO, OUT_EXTRA, march
from designer.make.path import phase_mass
from designer.make.state import (
    CALCIUM,
    CALCIUM_KG,
    CASEIN,
    COLLOIDAL,
    CURD,
    DRY_SALT,
    EVAPORATED,
    FAT,
    GALACTOSE,
    GALACTOSE_KG,
    GONE,
    HEXOSE,
    HEXOSE_KG,
    LACTATE,
    LACTATE_KG,
    SALT,
    SIZE,
    WATER,
    WHEY_PROTEIN,
    ZONES,
)
from designer.recipe.schedule import PLACE_DRAINED

Floats = NDArray[np.float64]
WIDTH = OUT_EXTRA + SIZE
H6_MIN, DAY_MIN = 360.0, 1440.0
_march: Callable[..., int] = march


@dataclass(frozen=True, slots=True)
class Base:
    """One make marched stage by stage. `rows` (n,) end with the wait to 24 h; `bounds` (s + 1,) are its stages' rows.

    `y` (s, ZONES, SIZE), `t` (s,) and `info` (s, INFO) stand where each stage begins; `at_end` (n, WIDTH) is the last
    point of each row, `ends` (n, 3) and `last_info` as `march` writes them, `minutes` and `ph` the whole course.
    """

    rows: NDArray[Any]
    bounds: NDArray[np.int64]
    p: Any
    y: Floats
    t: Floats
    info: Floats
    at_end: Floats
    ends: Floats
    last_info: Floats
    minutes: Floats
    ph: Floats
    starter_min: float


@dataclass(frozen=True, slots=True)
class Variant:
    """A make that differs from the base from `stage` on: `rows` from there to the last before the wait, and how many
    stand before them; `y0` (SIZE,) and `p` where the milk itself differs."""

    stage: int
    rows: NDArray[Any]
    starter_min: float
    y0: Floats | None = None
    p: Any = None


def _staged(
    rows: Any, bounds: NDArray[np.int64], y0: Floats, p: Any, until: float, out: Floats, ends: Floats, info: Floats,
    y: Floats, t: Floats, infos: Floats,
) -> int:  # fmt: skip
    """March one make stage by stage, noting the state where each begins, and on to `until`; points written."""
    last = y0.copy()
    n, minute, wait = 0, 0.0, len(rows) - 1
    top = np.int64(0)  # typed, else the march is compiled anew for a literal 0
    for s in range(len(bounds)):
        first = wait
        beyond = wait + 1
        if s < len(bounds) - 1:
            first, beyond = bounds[s], bounds[s + 1]
            y[s] = last
            t[s] = minute
            infos[s] = info
        elif minute >= until - 1e-6:
            ends[wait, 0] = minute
            ends[wait, 1] = minute
            break
        else:
            rest = rows[wait]
            rest.minutes = until - minute
        begun = last.copy()
        written = _march(rows[first:beyond], begun, top, minute, p, out[n:], ends[first:], info, last)
        for k in range(n, n + written):
            out[k, 1] += first
        n += written
        minute = out[n - 1, 0]
    return n


def _each(
    members: NDArray[np.int64], rows: Any, counts: NDArray[np.int64], first_row: NDArray[np.int64], y0: Floats,
    t0: Floats, p: Any, own_p: NDArray[np.int64], until: Floats, ask: Floats, out: Floats, at_end: Floats,
    ends: Floats, info: Floats, ph: Floats,
) -> None:  # fmt: skip
    """March each of `members` from its first row, and on to `until`; `out` is room for the longest path."""
    last = np.zeros((ZONES, SIZE))
    top = np.int64(0)
    for m in members:
        wait = counts[m] - 1
        own = p[own_p[m]]
        n = _march(rows[m][:wait], y0[m], first_row[m], t0[m], own, out, ends[m], info[m], last)
        minute = out[n - 1, 0]
        ends[m, wait, 0] = minute
        ends[m, wait, 1] = minute
        if minute < until[m] - 1e-6:
            rest = rows[m][wait]
            rest.minutes = until[m] - minute
            begun = last.copy()
            more = _march(rows[m][wait : wait + 1], begun, top, minute, own, out[n:], ends[m][wait:], info[m], last)
            for k in range(n, n + more):
                out[k, 1] = wait
            n += more
        for k in range(n):
            if k == n - 1 or out[k + 1, 1] != out[k, 1]:
                at_end[m, int(out[k, 1])] = out[k]
        for q in range(ask.shape[1]):
            if ask[m, q] < t0[m]:
                continue
            k = 1
            while k < n - 1 and out[k, 0] < ask[m, q]:
                k += 1
            before, after, share = out[k - 1, 0], out[k, 0], 1.0
            if after > before:
                share = min(1.0, max(0.0, (ask[m, q] - before) / (after - before)))
            ph[m, q] = out[k - 1, 2] + share * (out[k, 2] - out[k - 1, 2])


@cache
def _compiled() -> tuple[Callable[..., int], Callable[..., None]]:
    """Both loops as machine code, around the one compiled march."""
    global _march
    _march = kernel.compiled()
    machine = njit(cache=True, nogil=True, error_model="numpy", fastmath=FAST)
    return machine(_staged), machine(_each)


@cache
def _pool() -> ThreadPoolExecutor:
    return ThreadPoolExecutor(max_workers=2, thread_name_prefix="many")


def base(rows: NDArray[Any], wait: NDArray[Any], y0: Floats, p: Any, starter_min: float) -> Base:
    """March prepared rows, shape (n - 1,), stage by stage, with a row `wait` for what is left to 24 h."""
    staged, _ = _compiled()
    every = np.concatenate([rows, wait])
    bounds = np.append(np.flatnonzero(np.diff(rows["stage"], prepend=rows["stage"][0] - 1)), len(rows))
    stages, n = len(bounds) - 1, len(every)
    until = starter_min + DAY_MIN
    out = np.empty((kernel.room_for(rows) + int(until / float(wait["step_max_min"][0])) + 8, WIDTH))
    ends, info = np.zeros((n, 3)), np.array([0.0, -1.0, -1.0, -1.0])
    y, t, infos = np.empty((stages, ZONES, SIZE)), np.empty(stages), np.empty((stages, INFO))
    written = staged(every, bounds, kernel.zoned(y0), p, until, out, ends, info, y, t, infos)
    out = out[:written]
    at_end = np.zeros((n, WIDTH))
    edge = np.flatnonzero(np.diff(out[:, 1], append=-1.0))
    at_end[out[edge, 1].astype(int)] = out[edge]
    return Base(every, bounds, p, y, t, infos, at_end, ends, info, out[:, 0].copy(), out[:, 2].copy(), starter_min)


@dataclass(frozen=True, slots=True)
class Marks:
    """What m makes leave, row by row: `milk` (m, SIZE) at the start, `at_end` (m, n, WIDTH), `ends` (m, n, 3), `info`
    (m, INFO), `counts` (m,) rows used, `ph` (m, 2) at 6 and 24 h after the starter, `rows` (m, n), `p` (m,)."""

    milk: Floats
    at_end: Floats
    ends: Floats
    info: Floats
    ph: Floats
    counts: NDArray[np.int64]
    rows: NDArray[Any]
    p: NDArray[Any]


def march_variants(of: Base, variants: Sequence[Variant]) -> Marks:
    """March the base's variants; index 0 of what comes back is the base itself."""
    _, each = _compiled()
    m, n = len(variants) + 1, len(of.rows)
    counts = np.array([n, *(int(of.bounds[one.stage]) + len(one.rows) + 1 for one in variants)])
    first_row = np.array([n, *(int(of.bounds[one.stage]) for one in variants)])
    width = int(counts.max())
    rows = np.empty((m, width), dtype=of.rows.dtype)
    rows[:, :n] = of.rows
    at_end, ends = np.zeros((m, width, WIDTH)), np.zeros((m, width, 3))
    at_end[:, :n], ends[:, :n] = of.at_end, of.ends
    info, t0 = np.tile(of.last_info, (m, 1)), np.zeros(m)
    y0 = np.empty((m, ZONES, SIZE))
    y0[0] = of.y[0]
    ask = np.empty((m, 2))
    milk = np.tile(of.y[0, 0], (m, 1))
    own_p, records = np.zeros(m, dtype=np.int64), [of.p]
    for k, one in enumerate(variants, start=1):
        first = first_row[k]
        rows[k, first : counts[k] - 1] = one.rows
        rows[k, counts[k] - 1] = of.rows[-1]
        y0[k], t0[k], info[k] = of.y[one.stage], of.t[one.stage], of.info[one.stage]
        if one.y0 is not None:
            y0[k] = kernel.zoned(one.y0)
            milk[k] = one.y0
        if one.p is not None:
            own_p[k] = len(records)
            records.append(one.p)
    starters = np.array([of.starter_min, *(one.starter_min for one in variants)])
    ask[:, 0], ask[:, 1] = starters + H6_MIN, starters + DAY_MIN
    ph = np.interp(ask, of.minutes, of.ph)
    p = np.array(records, dtype=of.p.dtype)
    room = int(np.ceil(rows["minutes"] / rows["step_max_min"]).sum(axis=1).max()) + 2 * width + 8
    room += int((starters.max() + DAY_MIN) / float(of.rows["step_max_min"][-1])) + 2

    def chunk(members: NDArray[np.int64]) -> None:
        out = np.empty((room, WIDTH))
        each(members, rows, counts, first_row, y0, t0, p, own_p, starters + DAY_MIN, ask, out, at_end, ends, info, ph)

    # The longest first, dealt out in turn, so that both threads end together.
    order = 1 + np.argsort(first_row[1:], kind="stable")
    list(_pool().map(chunk, (order[::2], order[1::2])))
    return Marks(milk, at_end, ends, info, ph, counts, rows, p[own_p])


def outcomes(marks: Marks, *, mill_row: NDArray[np.int64] | None, milk_kg: Floats) -> dict[str, Floats]:
    """Outcomes of every make, each shape (m,), meaning what `path.outcomes` means by them; nan where there is none.

    `mill_row` (m,) begins milling or salting; `milk_kg` (m,).
    """
    every = np.arange(len(marks.counts))
    end_row = marks.counts - 2
    at = marks.at_end[every, end_row]
    y, milk, p = at[:, OUT_EXTRA:], marks.milk, marks.p
    mass = phase_mass(y, CURD, p)
    protein = y[:, CURD + CASEIN] + y[:, CURD + WHEY_PROTEIN]
    calcium = y[:, COLLOIDAL] + y[:, CURD + CALCIUM]
    moisture, fat = 100.0 * y[:, CURD + WATER] / mass, 100.0 * y[:, CURD + FAT] / mass
    salt, sugar = (
        100.0 * y[:, CURD + SALT] / mass,
        HEXOSE_KG * y[:, CURD + HEXOSE] + GALACTOSE_KG * y[:, CURD + GALACTOSE],
    )
    out = {
        "moisture_pct": moisture,
        "dry_matter_pct": 100.0 - moisture,
        "fat_pct": fat,
        "protein_pct": 100.0 * protein / mass,
        "fdm_pct": 100.0 * fat / (100.0 - moisture),
        "mnfs_pct": 100.0 * moisture / (100.0 - fat),
        "salt_pct": salt,
        "salt_in_moisture_pct": 100.0 * salt / moisture,
        "lactose_pct": 100.0 * sugar / mass,
        "lactate_pct": 100.0 * LACTATE_KG * y[:, CURD + LACTATE] / mass,
        "calcium_mg_per_g_protein": 1000.0 * calcium / protein,
        "calcium_mmol_per_kg": 1000.0 * calcium / CALCIUM_KG / mass,
        "yield_kg_per_100kg": 100.0 * mass,
        "fat_recovery_pct": 100.0 * y[:, CURD + FAT] / np.maximum(milk[:, CURD + FAT], 1e-12),
        "casein_recovery_pct": 100.0 * y[:, CURD + CASEIN] / milk[:, CURD + CASEIN],
        "whey_kg_per_100kg": 100.0 * phase_mass(y, GONE, p),
        "cheese_kg": mass * milk_kg,
        "ph_6h": marks.ph[:, 0],
        "ph_24h": marks.ph[:, 1],
        "ph_end": at[:, 2],
        "finish_min": marks.ends[every, end_row, 1],
        "weight_loss_pct": 100.0 * y[:, EVAPORATED] / mass,
        "dry_salt_left_pct": 100.0 * y[:, DRY_SALT] / mass,
    }
    rennet, floc, cut = marks.info[:, 1:].T
    out["floc_min"] = np.where(floc >= 0.0, floc, np.nan)
    out["cut_min"] = np.where((cut >= rennet) & (rennet >= 0.0), cut - rennet, np.nan)
    drained = marks.rows["place"] >= PLACE_DRAINED
    drained &= np.arange(drained.shape[1]) < marks.counts[:, None]
    first = np.where(drained.any(axis=1), drained.argmax(axis=1), 0)
    before = marks.at_end[every, np.maximum(first - 1, 0)]
    there = np.where(first > 0, 1.0, np.nan)
    water = before[:, OUT_EXTRA + CURD + WATER]
    out["ph_drain"], out["ph_whey_drain"] = before[:, 2] * there, before[:, 3] * there
    out["drain_moisture_pct"] = 100.0 * water / phase_mass(before[:, OUT_EXTRA:], CURD, p) * there
    if mill_row is not None:
        out["ph_mill"] = marks.at_end[every, np.maximum(mill_row - 1, 0), 2]
    return out
