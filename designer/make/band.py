"""The members of a band marched together: their main make from one parting to the next, and the branches from there.

Every member is one make from the milk to the last branch, so that what is off stays off in all of its lanes.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from typing import Any

import numpy as np
from numpy.typing import NDArray

from designer.make import many
from designer.make.members import drawn, warmed
from designer.make.parting import Parting, PartingError, Start, part
from designer.make.records import beside, copied, joined
from designer.make.state import PHASE
from designer.make.stride import ROUGH
from designer.recipe.schedule import Milk

Floats = NDArray[np.float64]
APART = 5.0
"""Times as far apart as those of a forecast."""


@dataclass(frozen=True, slots=True)
class Way:
    """What a lane is marched along: prepared `rows` (n,) and `wait`, and where on the clock of its rows it is looked
    `at` (places,). A branch says how it parts from the main make."""

    rows: NDArray[Any]
    wait: NDArray[Any]
    at: Floats
    parting: Parting | None = None


@dataclass(frozen=True, slots=True)
class Members:
    """One lane of m members: with the main make before it where that is its own, so that its rows begin at `first_row`
    of `marks`. `weight` (m,) as `make.parting` says."""

    marks: many.Marks
    weight: Floats
    first_row: int = 0


def apart(rows: NDArray[Any]) -> NDArray[Any]:
    """A copy of rows (n,) with their points farther apart: a band is smooth."""
    out = copied(rows)
    out["every_min"] *= APART
    return out


def marched(
    milk: Milk, starter_min: float, main: Way, branches: Sequence[Way], count: int,
    stop: Callable[[], bool] = lambda: False, tolerance: float = ROUGH,
) -> tuple[list[Members] | None, int]:  # fmt: skip
    """The lanes of those of `count` members that find something to part with, and how many are lost because they don't;
    None when stopped, or where fewer than half are left; tolerance as in `make.stride`."""
    rows, y0, p = drawn(milk, main.rows, count)
    partings = [way.parting for way in branches if way.parting is not None]
    edges = sorted({one.row for one in partings})
    sections = [0, *(row + 1 for row in edges), len(main.rows)]
    marks = many.unmarched(beside(count, rows, main.wait), sections, y0, p, starter_min, main.at)
    there, weight, taken = np.arange(count), np.ones(count), np.zeros((count, PHASE))
    starts: dict[tuple[int, int], Start] = {}
    for section, row in enumerate(edges):
        if not many.march_on(marks, np.full(count, section), there, beyond=section + 1, stop=stop, tolerance=tolerance):
            return None, 0
        here = [k for k, one in enumerate(partings) if one.row == row]
        lost = []
        for m in there:
            y = marks.y[m, section + 1]
            try:
                left = part(y, marks.p[m], marks.milk[m], float(weight[m]), taken[m], [partings[k] for k in here])
            except PartingError:
                lost.append(m)
                continue
            starts |= {(k, int(m)): start for k, start in zip(here, left.starts, strict=True)}
            y[:], weight[m], taken[m] = left.y, left.weight, left.taken
            marks.milk[m], marks.p[m] = left.milk, left.p
        there = np.setdiff1d(there, lost)
    gone = count - len(there)
    if len(there) < count / 2:
        return None, gone
    if not many.march_on(marks, np.full(count, len(edges)), there, stop=stop, tolerance=tolerance):
        return None, 0
    out = [Members(marks.of(there) if gone else marks, weight[there])]
    for k, way in enumerate(branches):
        own = [starts[k, int(m)] for m in there]
        made = _branch(out[0].marks, edges.index(partings[k].row) + 1, own, way, warmed(way.rows, count)[there])
        begins = np.full(len(there), made.marks.t.shape[1] - 2)
        if not many.march_on(made.marks, begins, stop=stop, tolerance=tolerance):
            return None, 0
        out.append(made)
    return out, gone


def _branch(main: many.Marks, section: int, starts: Sequence[Start], way: Way, rows: NDArray[Any]) -> Members:
    """The members of a branch that begins where `section` of the main make does, ready to be marched."""
    rows, sections = beside(len(starts), rows, way.wait), [0, len(way.rows)]
    weight, p = np.array([one.weight for one in starts]), joined([one.p for one in starts])
    if way.parting is not None and way.parting.of == "curd":  # it came all the way, and goes on as it is
        marks = many.along(main, section, rows, sections, main.starter_min, way.at)
        # The main make may have lost its cream since.
        marks = replace(marks, p=p, milk=np.array([one.milk for one in starts]))
        return Members(marks, weight, int(main.bounds[0, section]))
    y = np.array([one.y for one in starts])
    marks = many.unmarched(rows, sections, y, p, main.starter_min, way.at)
    marks.t[:, 0] = main.t[:, section]
    return Members(marks, weight)
