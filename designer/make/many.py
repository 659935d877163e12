"""Many makes that differ by one thing, kept only at the end of each row: what levers, aim and explain need.

A make begins where its first changed stage begins, from the state the base was in, so that a late edit costs only what
comes after it. Steps may be longer than those of a forecast: a difference of two makes on the same steps is good to a
few per cent where each of them is off by more (see the tests).
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass
from functools import cache
from typing import Any

import numpy as np
from numpy.typing import NDArray

from designer.make import kernel
from designer.make.law import machine_code
from designer.make.march import OUT_EXTRA, march
from designer.make.outcomes import DAY_MIN, H6_MIN
from designer.make.prepare import joined
from designer.make.start import first_state, parameters
from designer.make.state import SIZE, ZONES
from designer.recipe.schedule import Milk, as_rows, row

Floats = NDArray[np.float64]
WIDTH = OUT_EXTRA + SIZE
_march: Callable[..., int] = march


@dataclass(frozen=True, slots=True)
class Marks:
    """What m makes leave, row by row. `rows` (m, n) as marched, of which `counts` (m,) are used: the stages, whose rows
    begin at `bounds` (m, s + 1), then the wait to 24 h. `milk` (m, SIZE) is the state at the start; `at_end`
    (m, n, WIDTH) the last point of each row and `ends` (m, n, 3) and `info` (m, INFO) are as `march` writes them;
    `ph` (m, 2) stands 6 and 24 h after the starter. `y` (m, s, ZONES, SIZE), `t` and `infos` hold where each stage
    begins; `p` (m,) are the parameters."""

    rows: NDArray[Any]
    counts: NDArray[np.int64]
    bounds: NDArray[np.int64]
    milk: Floats
    at_end: Floats
    ends: Floats
    info: Floats
    ph: Floats
    y: Floats
    t: Floats
    infos: Floats
    p: NDArray[Any]
    starter_min: Floats


@dataclass(frozen=True, slots=True)
class Variant:
    """A make that reads differently from the base in some stages: their prepared rows by the stage's place.

    `y0` (SIZE,), `p` and `milk` where the milk itself differs, `wait` (1,) where the wait to 24 h does.
    """

    pieces: Mapping[int, NDArray[Any]]
    starter_min: float
    y0: Floats | None = None
    p: Any = None
    milk: Milk | None = None
    wait: NDArray[Any] | None = None


def _each(
    members: NDArray[np.int64], rows: Any, bounds: NDArray[np.int64], first_stage: NDArray[np.int64], p: Any,
    own_p: NDArray[np.int64], until: Floats, ask: Floats, out: Floats, at_end: Floats, ends: Floats, info: Floats,
    ph: Floats, y: Floats, t: Floats, infos: Floats,
) -> None:  # fmt: skip
    """March each of `members` stage by stage from its first, and on to `until`; `out` is room for the longest path."""
    last = np.zeros((ZONES, SIZE))
    top = np.int64(0)  # typed, else the march is compiled anew for a literal 0
    stages = bounds.shape[1] - 1
    for m in members:
        own, wait, n = p[own_p[m]], bounds[m, stages], 0
        last[:] = y[m, first_stage[m]]
        minute = t[m, first_stage[m]]
        info[m] = infos[m, first_stage[m]]
        for s in range(first_stage[m], stages + 1):
            first, beyond = wait, wait + 1
            if s < stages:
                first, beyond = bounds[m, s], bounds[m, s + 1]
                y[m, s] = last
                t[m, s] = minute
                infos[m, s] = info[m]
            elif minute >= until[m] - 1e-6:
                ends[m, wait, 0] = minute
                ends[m, wait, 1] = minute
                break
            else:
                rest = rows[m][wait]
                rest.minutes = until[m] - minute
            begun = last.copy()
            more = _march(rows[m][first:beyond], begun, top, minute, own, out[n:], ends[m][first:], info[m], last)
            for k in range(n, n + more):
                out[k, 1] += first
            n += more
            minute = out[n - 1, 0]
        for k in range(n):
            if k == n - 1 or out[k + 1, 1] != out[k, 1]:
                at_end[m, int(out[k, 1])] = out[k]
        for q in range(ask.shape[1]):
            if ask[m, q] < t[m, first_stage[m]]:
                continue
            k = 1
            while k < n - 1 and out[k, 0] < ask[m, q]:
                k += 1
            before, after, share = out[k - 1, 0], out[k, 0], 1.0
            if after > before:
                share = min(1.0, max(0.0, (ask[m, q] - before) / (after - before)))
            ph[m, q] = out[k - 1, 2] + share * (out[k, 2] - out[k - 1, 2])


@cache
def _compiled() -> Callable[..., None]:
    """The loop as machine code, around the one compiled march."""
    global _march
    kernel.warm_up()
    _march = kernel.compiled()
    return machine_code(_each)


def warm_up() -> None:
    """Compile or load the loop; safe to call from a worker, and quick once it is done."""
    milk = Milk(1.0, 1.03, 37.0, 26.0, 6.0, 47.0, 7.0, 6.65, "cow", 1.2)
    p = parameters(milk)[0]
    rows = kernel.prepare(as_rows([row(minutes=2.0)]))
    march_base([rows], rows, first_state(milk, p), p, 0.0)


@cache
def _pool() -> ThreadPoolExecutor:
    return ThreadPoolExecutor(max_workers=2, thread_name_prefix="many")


def march_base(stages: Sequence[NDArray[Any]], wait: NDArray[Any], y0: Floats, p: Any, starter_min: float) -> Marks:
    """March one make, given as prepared rows of each stage and a row `wait` for what is left to 24 h."""
    bounds = np.cumsum([0, *(len(rows) for rows in stages)])[None, :]
    rows = joined([*stages, wait])[None, :]
    n, s = rows.shape[1], len(stages)
    y = np.empty((1, s, ZONES, SIZE))
    y[0, 0] = kernel.zoned(y0)
    info = np.array([[0.0, -1.0, -1.0, -1.0]])
    out = Marks(
        rows, np.array([n]), bounds, y[:, 0, 0].copy(), np.zeros((1, n, WIDTH)), np.zeros((1, n, 3)), info,
        np.full((1, 2), np.nan), y, np.zeros((1, s)), np.tile(info[:, None], (1, s, 1)), joined([p]),
        np.array([starter_min]),
    )  # fmt: skip
    _go(out, np.zeros(1, dtype=np.int64), out.p, np.zeros(1, dtype=np.int64), (np.array([0]),))
    return out


def march_variants(base: Marks, variants: Sequence[Variant]) -> Marks:
    """March the base's variants; index 0 of what comes back is the base itself.

    A variant begins at the first stage that reads differently, from the state the base was in there.
    """
    m, s, n = len(variants) + 1, base.bounds.shape[1] - 1, int(base.counts[0])
    first_stage = np.full(m, s)
    bounds = np.repeat(base.bounds, m, axis=0)
    longer = []
    for k, one in enumerate(variants, start=1):
        first_stage[k] = 0 if one.y0 is not None else min(one.pieces, default=s if one.wait is None else s - 1)
        for stage, piece in one.pieces.items():
            more = len(piece) - int(base.bounds[0, stage + 1] - base.bounds[0, stage])
            if more:
                bounds[k, stage + 1 :] += more
                longer.append(k)
    counts = bounds[:, -1] + 1
    width = int(counts.max())
    # Rows move as bytes: numpy copies records field by field.
    rows = np.empty((m, width), dtype=base.rows.dtype)
    raw, raw_base = _bytes(rows), _bytes(base.rows)[0]
    raw[:, : min(n, width)] = raw_base[:width]
    raw[:, n:] = raw_base[-1]
    for k, one in enumerate(variants, start=1):
        if k in longer:
            for stage in range(s):
                raw[k, bounds[k, stage] : bounds[k, stage + 1]] = (
                    _bytes(one.pieces[stage])
                    if stage in one.pieces
                    else raw_base[base.bounds[0, stage] : base.bounds[0, stage + 1]]
                )
            raw[k, counts[k] - 1] = raw_base[-1]
        else:
            for stage, piece in one.pieces.items():
                raw[k, bounds[k, stage] : bounds[k, stage + 1]] = _bytes(piece)
        if one.wait is not None:
            raw[k, counts[k] - 1] = _bytes(one.wait)[0]
    at_end, ends = np.zeros((m, width, WIDTH)), np.zeros((m, width, 3))
    at_end[:, :n], ends[:, :n] = base.at_end[:, :width], base.ends[:, :width]
    y, milk = np.repeat(base.y, m, axis=0), np.repeat(base.milk, m, axis=0)
    own_p, records = np.zeros(m, dtype=np.int64), [base.p[0]]
    for k, one in enumerate(variants, start=1):
        if one.y0 is not None:
            y[k, 0] = kernel.zoned(one.y0)
            milk[k] = one.y0
        if one.p is not None:
            own_p[k] = len(records)
            records.append(one.p)
    p = joined(records)
    starters = np.array([base.starter_min[0], *(one.starter_min for one in variants)])
    out = Marks(
        rows, counts, bounds, milk, at_end, ends, np.repeat(base.info, m, axis=0), np.repeat(base.ph, m, axis=0), y,
        np.repeat(base.t, m, axis=0), np.repeat(base.infos, m, axis=0), p[own_p], starters,
    )  # fmt: skip
    # Those that take longest first, dealt out in turn, so that both threads end together.
    order = np.argsort(first_stage, kind="stable")
    order = order[first_stage[order] < s]
    _go(out, first_stage, p, own_p, (order[::2].copy(), order[1::2].copy()))
    return out


def _bytes(rows: NDArray[Any]) -> NDArray[np.uint8]:
    """Records as bytes, shape (..., bytes of one)."""
    return rows.view(np.uint8).reshape(*rows.shape, rows.dtype.itemsize)


def _go(
    makes: Marks, first_stage: NDArray[np.int64], p: NDArray[Any], own_p: NDArray[np.int64],
    chunks: Sequence[NDArray[np.int64]],
) -> None:  # fmt: skip
    """March the makes of each chunk on a thread of its own, into `makes`.

    What the loop is given lies closely in memory: strided is another type, for which it is compiled once more.
    """
    each = _compiled()
    ask = makes.starter_min[:, None] + np.array([H6_MIN, DAY_MIN])
    steps = np.ceil(makes.rows["minutes"] / makes.rows["step_max_min"] - 1e-9).sum(axis=1).max()
    waits = ask[:, 1].max() / float(makes.rows["step_max_min"][0, -1])
    room = int(steps + waits) + 2 * makes.rows.shape[1] + 8

    def chunk(members: NDArray[np.int64]) -> None:
        each(
            members, makes.rows, makes.bounds, first_stage, p, own_p, ask[:, 1].copy(), ask, np.empty((room, WIDTH)),
            makes.at_end, makes.ends, makes.info, makes.ph, makes.y, makes.t, makes.infos,
        )  # fmt: skip

    if len(chunks) == 1:
        chunk(chunks[0])
    else:
        list(_pool().map(chunk, chunks))
