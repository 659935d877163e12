"""Many makes at once, kept only where they are read: at the end of each row, and at places of a clock they share.

What levers, aim, explain and the bands need. A make is marched in sections; one may begin later, from the state another
make was in there, so that a late edit or a branch costs only what comes after it. Strides are rougher than those of a
forecast: what spreads and differences of makes are off by is a few per cent of them (see the tests).
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, fields
from functools import cache
from typing import Any

import numpy as np
from numpy.typing import NDArray

from designer.make import kernel
from designer.make.law import law, machine_code
from designer.make.march import OUT_EXTRA, march
from designer.make.outcomes import DAY_MIN, H6_MIN
from designer.make.rates import curd_mass, phase_kg
from designer.make.records import beside, joined, plain
from designer.make.start import first_state, parameters
from designer.make.state import CURD, GONE, SALT, SIZE, WATER, ZONES, T
from designer.make.stride import ROUGH
from designer.recipe.schedule import Milk, as_rows, row

Floats = NDArray[np.float64]
WIDTH = OUT_EXTRA + SIZE
SEEN = ("temperature_c", "ph", "ph_whey", "curd_moisture_pct", "whey_kg_per_100kg", "firmness_pa", "salt_pct")
"""Columns of a trace that are read on the shared clock."""
NOWHERE: Floats = np.empty(0)
CHUNK = 16
"""Makes a thread takes at a time, and marches before it asks whether to stop."""
_march: Callable[..., int] = march


@dataclass(frozen=True, slots=True)
class Marks:
    """What m makes leave, row by row; the first axis of everything but `at` and `seen` is the make.

    `rows` (m, n) as marched. Their sections begin at `bounds` (m, s + 2), the last of them the wait to 24 h, for which
    one row stands in what is left: `counts` (m,) are the rows with it. `milk` (m, SIZE) is the state at the start;
    `at_end` (m, n, WIDTH) the last point of each row, `ends` (m, n, 3) and `info` (m, INFO) are as `march` writes them;
    `ph` (m, 2) stands 6 and 24 h after the starter. `y` (m, s + 1, ZONES, SIZE), `t` and `infos` hold where each
    section begins; `p` (m,) are the parameters. `seen` (columns, places, m) holds the columns of SEEN where the clock
    shows `at` (places,): a row and the share of it that is gone.
    """

    rows: NDArray[Any]
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
    at: Floats
    seen: Floats

    @property
    def counts(self) -> NDArray[np.int64]:
        """Rows of each make, (m,), with one for its wait."""
        return np.asarray(self.bounds[:, -2] + 1)

    def of(self, which: NDArray[np.int64]) -> Marks:
        """Some of the makes."""
        of_each: dict[str, Any] = {
            one.name: getattr(self, one.name)[which] for one in fields(self) if one.name not in ("at", "seen")
        }
        return Marks(**of_each, at=self.at, seen=self.seen[..., which])


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


# ---- the compiled loop


WITHIN = 1.0 - 1e-6
"""The end of a row lies just before the beginning of the next on the shared clock."""


@law
def place(row: Any, minute: Any, start: Any, end: Any) -> Any:
    """Where a minute of a row that goes from `start` to `end` lies on the shared clock: the row, and the share of it
    that is gone. Of one point, or of arrays of them."""
    return row + np.minimum((minute - start) / np.maximum(end - start, 1e-9), WITHIN)


@law
def _place(point: Floats, ends: Floats) -> float:
    """Where a point of a path lies on the shared clock."""
    index = int(point[1])
    return place(index, point[0], ends[index, 0], ends[index, 1])


@law
def _look(point: Floats, p: Any, into: Floats) -> None:
    """The columns of SEEN at a point of a path."""
    y = point[OUT_EXTRA:]
    curd = curd_mass(y, p)
    into[0], into[1], into[2] = y[T], point[2], point[3]
    into[3] = 100.0 * y[CURD + WATER] / curd
    into[4] = 100.0 * phase_kg(y, GONE)
    into[5] = point[4]
    into[6] = 100.0 * y[CURD + SALT] / curd


def _each(
    members: NDArray[np.int64], begins: NDArray[np.int64], beyond: int, rows: Any, bounds: NDArray[np.int64], p: Any,
    tolerance: float, until: Floats, ask: Floats, at: Floats, out: Floats, at_end: Floats, ends: Floats,
    info: Floats, ph: Floats, y: Floats, t: Floats, infos: Floats, seen: Floats,
) -> None:  # fmt: skip
    """March each of `members` from its section to `beyond`, and wait until `until`; `out` has room for any of them."""
    last, before, after = np.zeros((ZONES, SIZE)), np.empty(len(seen)), np.empty(len(seen))
    top = np.int64(0)  # typed, else the march is compiled anew for a literal 0
    sections = t.shape[1]
    for m in members:
        begin, n = begins[m], 0
        last[:] = y[m, begin]
        minute = t[m, begin]
        info[m] = infos[m, begin]
        for s in range(begin, beyond):
            wait, first, end = s == sections - 1, bounds[m, s], bounds[m, s + 1]
            started = minute
            while first < end and not (wait and minute >= until[m] - 1e-6):
                stop = end
                if wait:  # row by row, as far as there is time left
                    stop, left = first + 1, until[m] - minute
                    rest = rows[m][first]
                    rest.minutes = left if stop == end else min(rest.minutes, left)
                begun = last.copy()
                more = _march(
                    rows[m][first:stop], begun, top, minute, p[m], tolerance, out[n:], ends[m][first:], info[m], last
                )
                for k in range(n, n + more):
                    out[k, 1] = bounds[m, s] if wait else out[k, 1] + first
                n += more
                minute = out[n - 1, 0]
                first = stop
            if wait:
                ends[m, bounds[m, s], 0] = started
                ends[m, bounds[m, s], 1] = minute
            else:
                y[m, s + 1] = last
                t[m, s + 1] = minute
                infos[m, s + 1] = info[m]
        if n == 0:
            continue
        for k in range(n):
            if k == n - 1 or out[k + 1, 1] != out[k, 1]:
                at_end[m, int(out[k, 1])] = out[k]
        for q in range(ask.shape[1]):
            if ask[m, q] < t[m, begin]:
                continue
            k = 0
            while k + 1 < n and out[k + 1, 0] < ask[m, q]:
                k += 1
            ph[m, q] = out[k, 2]
            if k + 1 < n and ask[m, q] > out[k, 0]:
                share = (ask[m, q] - out[k, 0]) / (out[k + 1, 0] - out[k, 0])
                ph[m, q] += share * (out[k + 1, 2] - out[k, 2])
        k, looked = 0, -1
        for q in range(len(at)):
            if not bounds[m, begin] <= at[q] < bounds[m, beyond]:
                continue
            while k + 1 < n and _place(out[k + 1], ends[m]) <= at[q]:
                k += 1
            following = min(k + 1, n - 1)
            if k != looked:
                _look(out[k], p[m], before)
                _look(out[following], p[m], after)
                looked = k
            share = 0.0
            if following > k:
                from_place = _place(out[k], ends[m])
                share = max(0.0, at[q] - from_place) / (_place(out[following], ends[m]) - from_place)
            for c in range(len(seen)):
                seen[c, q, m] = before[c] + share * (after[c] - before[c])


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


# ---- makes to be marched


def unmarched(
    rows: NDArray[Any], sections: Sequence[int], y0: Floats, p: NDArray[Any], starter_min: float | Floats,
    at: Floats = NOWHERE,
) -> Marks:  # fmt: skip
    """Makes that have yet to be marched: their own rows (m, n), in sections that begin at the rows `sections`, of which
    the last is the wait; y0 (m, SIZE), or (m, ZONES, SIZE) to go on with a cheese; p (m,)."""
    m, n = rows.shape
    s = len(sections)
    y, info = np.full((m, s, ZONES, SIZE), np.nan), np.tile([0.0, -1.0, -1.0, -1.0], (m, 1))
    if y0.ndim == 2:
        y[:, 0, 0] = y0
    else:
        y[:, 0] = y0
    return Marks(
        rows, np.tile([*sections, n], (m, 1)), y[:, 0, 0].copy(), np.zeros((m, n, WIDTH)), np.zeros((m, n, 3)), info,
        np.full((m, 2), np.nan), y, np.zeros((m, s)), np.repeat(info[:, None], s, axis=1), p,
        np.full(m, starter_min), at, np.empty((len(SEEN), len(at), m)),
    )  # fmt: skip


def along(
    base: Marks, section: int, rows: NDArray[Any], sections: Sequence[int], starter_min: float | Floats,
    at: Floats = NOWHERE,
) -> Marks:  # fmt: skip
    """Makes that came the way of `base`, whose sections are alike, as far as one of its sections, and have yet to be
    marched from there: along their own rows (m, n), in sections that begin at the rows `sections` of these."""
    m, first = len(rows), int(base.bounds[0, section])
    edges = [*base.bounds[0, :section].tolist(), *(first + own for own in sections)]
    out = unmarched(beside(m, base.rows[:, :first], rows), edges, base.y[:, 0], base.p, starter_min, first + at)
    for ours, theirs in ((out.y, base.y), (out.t, base.t), (out.infos, base.infos)):
        ours[:, : section + 1] = theirs[:, : section + 1]
    out.milk[:], out.ph[:] = base.milk, base.ph
    out.at_end[:, :first], out.ends[:, :first] = base.at_end[:, :first], base.ends[:, :first]
    return out


def march_base(stages: Sequence[NDArray[Any]], wait: NDArray[Any], y0: Floats, p: Any, starter_min: float) -> Marks:
    """March one make, given as prepared rows of each stage and a row `wait` for what is left to 24 h."""
    sections = np.cumsum([0, *(len(rows) for rows in stages)])
    out = unmarched(joined([*stages, wait])[None, :], sections.tolist(), y0[None], joined([p]), starter_min)
    march_on(out, np.zeros(1, dtype=np.int64))
    return out


def march_variants(base: Marks, variants: Sequence[Variant]) -> Marks:
    """March the base's variants; index 0 of what comes back is the base itself.

    A variant begins at the first stage that reads differently, from the state the base was in there.
    """
    m, s, n = len(variants) + 1, base.bounds.shape[1] - 2, base.rows.shape[1]
    begins = np.full(m, s + 1)
    bounds = np.repeat(base.bounds, m, axis=0)
    longer = set()
    for k, one in enumerate(variants, start=1):
        begins[k] = 0 if one.y0 is not None else min(one.pieces, default=s + 1 if one.wait is None else s)
        for stage, piece in one.pieces.items():
            more = len(piece) - int(base.bounds[0, stage + 1] - base.bounds[0, stage])
            if more:
                bounds[k, stage + 1 :] += more
                longer.add(k)
    width = int(bounds[:, -1].max())
    # Rows move as bytes: numpy copies records field by field.
    rows = np.empty((m, width), dtype=base.rows.dtype)
    raw, raw_base = plain(rows), plain(base.rows)[0]
    raw[:, : min(n, width)] = raw_base[:width]
    raw[:, n:] = raw_base[-1]
    for k, one in enumerate(variants, start=1):
        if k in longer:
            for stage in range(s):
                raw[k, bounds[k, stage] : bounds[k, stage + 1]] = (
                    plain(one.pieces[stage])
                    if stage in one.pieces
                    else raw_base[base.bounds[0, stage] : base.bounds[0, stage + 1]]
                )
            raw[k, bounds[k, s]] = raw_base[-1]
        else:
            for stage, piece in one.pieces.items():
                raw[k, bounds[k, stage] : bounds[k, stage + 1]] = plain(piece)
        if one.wait is not None:
            raw[k, bounds[k, s]] = plain(one.wait)[0]
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
    starters = np.array([base.starter_min[0], *(one.starter_min for one in variants)])
    out = Marks(
        rows, bounds, milk, at_end, ends, np.repeat(base.info, m, axis=0), np.repeat(base.ph, m, axis=0), y,
        np.repeat(base.t, m, axis=0), np.repeat(base.infos, m, axis=0),
        plain(joined(records))[own_p].view(base.p.dtype), starters, NOWHERE, np.empty((len(SEEN), 0, m)),
    )  # fmt: skip
    # Those that take longest first, so that both threads end together.
    order = np.argsort(begins, kind="stable")
    march_on(out, begins, order[begins[order] <= s])
    return out


def march_on(
    makes: Marks, begins: NDArray[np.int64], members: NDArray[np.int64] | None = None, *, beyond: int | None = None,
    stop: Callable[[], bool] = lambda: False, tolerance: float = ROUGH,
) -> bool:  # fmt: skip
    """March makes (all, or `members`, in that order) from where their section `begins` (m,) to the section `beyond`, or
    through their wait; False when `stop()` turned true before all had begun.

    `tolerance` as in `make.stride`. What the loop is given lies closely in memory: strided is another type, for which
    it is compiled once more.
    """
    each = _compiled()
    members = np.arange(len(makes.rows)) if members is None else members
    beyond = makes.t.shape[1] if beyond is None else beyond
    ask = makes.starter_min[:, None] + np.array([H6_MIN, DAY_MIN])
    room = kernel.room_for(makes.rows) + int(ask[:, 1].max() / makes.rows["every_min"][:, -1].min()) + 1
    parts = -(-len(members) // CHUNK)
    parts += parts % 2 * (len(members) > 1)  # as many for one thread as for the other

    def chunk(part: int) -> bool:
        each(
            members[part::parts].copy(), begins, beyond, makes.rows, makes.bounds, makes.p, tolerance,
            ask[:, 1].copy(), ask, makes.at, np.empty((room, WIDTH)), makes.at_end, makes.ends, makes.info, makes.ph,
            makes.y, makes.t, makes.infos, makes.seen,
        )  # fmt: skip
        return True

    return kernel.each(chunk, parts, stop) is not None
