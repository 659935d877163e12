"""The compiled march behind one typed door, with its plain twin for the first frames and for the cross-check.

The cache folder is named after the sources and the constants: an edited law never meets an old compiled result.
"""

from __future__ import annotations

import hashlib
import os
import threading
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass
from functools import cache
from importlib.metadata import version
from importlib.resources import files
from types import SimpleNamespace
from typing import Any, TypeVar

import numpy as np
from numpy.typing import NDArray
from platformdirs import user_cache_path

from designer.make import march as plain
from designer.make.law import machine_code
from designer.make.prepare import prepare as prepare
from designer.make.records import copied
from designer.make.start import first_state, parameters
from designer.make.state import SIZE, ZONES
from designer.make.stride import TOLERANCE
from designer.recipe.schedule import Milk, as_rows, row

Path2D = NDArray[np.float64]
M = TypeVar("M")


@dataclass(frozen=True, slots=True)
class Path:
    """One marched make: `out` and `ends` as written by `march`, minute of rennet, flocculation time, minute of the cut.

    `last` (ZONES, SIZE) is the state from which another march can go on.
    """

    out: Path2D
    ends: Path2D
    rennet_min: float
    floc_min: float
    cut_min: float
    last: Path2D


MARCHED = (
    "acid.py",
    "begin.py",
    "buffer.py",
    "constants.py",
    "constants.toml",
    "heat.py",
    "kept.py",
    "law.py",
    "march.py",
    "rates.py",
    "set.py",
    "state.py",
    "stride.py",
    "syneresis.py",
    "uptake.py",
)
"""What the compiled march is made of (a test holds that it imports nothing else of this folder)."""


def source_key() -> str:
    """Short hash of everything the compiled code depends on."""
    digest = hashlib.sha256(version("numba").encode())
    for name in MARCHED:
        digest.update(files("designer.make").joinpath(name).read_bytes())
    digest.update(files("designer.recipe").joinpath("schedule.py").read_bytes())
    return digest.hexdigest()[:16]


@cache
def compiled() -> Callable[..., int]:
    """The march as machine code; compiles (a few seconds) on its first call after an edit, else loads."""
    os.environ.setdefault("NUMBA_CACHE_DIR", str(user_cache_path("curdwright") / f"march-{source_key()}"))
    import numba  # a third of a second, and never needed for the first picture

    numba.config.CACHE_DIR = os.environ["NUMBA_CACHE_DIR"]
    return machine_code(plain.march)


_ready = threading.Event()
_warming = threading.Lock()


def warm_up() -> None:
    """Compile or load the march, so that later calls take it; safe to call from a worker, and quick once it is done."""
    with _warming:
        if is_warm():
            return
        milk = Milk(1.0, 1.03, 37.0, 26.0, 6.0, 47.0, 7.0, 6.65, "cow", 1.2)
        p = parameters(milk)
        _run(compiled(), prepare(_one_row()), first_state(milk, p[0]), 0, 0.0, p[0], _fresh_info())
        _ready.set()


def is_warm() -> bool:
    """Whether the compiled march stands ready."""
    return _ready.is_set()


def _one_row() -> NDArray[Any]:
    return as_rows([row(minutes=2.0)])


def _fresh_info() -> NDArray[np.float64]:
    return np.array([0.0, -1.0, -1.0, -1.0])


def room_for(rows: NDArray[Any]) -> int:
    """Points that a march of rows (n,) can write at the most; of makes (m, n), the one that can write most."""
    steps = np.ceil(rows["minutes"] / rows["every_min"] - 1e-9)
    return int(steps.sum(axis=-1).max()) + 2 * rows.shape[-1] + 2


def _run(
    function: Callable[..., int],
    rows: Any,
    y0: NDArray[np.float64],
    first_row: int,
    t0: float,
    p: Any,
    info: NDArray[np.float64],
    tolerance: float = TOLERANCE,
    room: int | None = None,
) -> Path:
    out = np.empty((room or room_for(rows), plain.OUT_EXTRA + SIZE))
    ends = np.zeros((len(rows), 3))
    last = np.zeros((ZONES, SIZE))
    n = function(rows, zoned(y0), first_row, t0, p, tolerance, out, ends, info, last)
    return Path(out[:n], ends, float(info[1]), float(info[2]), float(info[3]), last)


def zoned(y: NDArray[np.float64]) -> NDArray[np.float64]:
    """A state (SIZE,) as zones (ZONES, SIZE) of which only the first is there yet; zones as they are."""
    if y.ndim == 2:
        return y
    return np.vstack([y, np.full(SIZE, np.nan)])


def march(
    rows: NDArray[Any],
    y0: NDArray[np.float64],
    p: Any,
    *,
    first_row: int = 0,
    t0: float = 0.0,
    rennet_min: float = -1.0,
    floc_min: float = -1.0,
    cut_min: float = -1.0,
    tolerance: float = TOLERANCE,
    twin: bool | None = None,
) -> Path:
    """March prepared rows from a state. `twin=None` takes the compiled march if it is ready, else the plain twin.

    rows: from `prepare`; y0 (SIZE,), or (ZONES, SIZE) to go on with a cheese; p one parameter record; tolerance as in
    `make.stride`. The rows are copied, so a call never changes them.
    """
    rows = copied(rows)
    info = np.array([0.0, rennet_min, floc_min, cut_min])
    if twin or (twin is None and not is_warm()):
        plain_rows = [SimpleNamespace(**{k: v.item() for k, v in zip(r.dtype.names, r, strict=True)}) for r in rows]
        plain_p = SimpleNamespace(**{k: float(p[k]) for k in p.dtype.names})
        return _run(plain.march, plain_rows, y0, first_row, t0, plain_p, info, tolerance, room_for(rows))
    return _run(compiled(), rows, y0, first_row, t0, p, info, tolerance)


def each(one: Callable[[int], M], count: int, stop: Callable[[], bool]) -> list[M] | None:
    """`one` of 0..count-1, on this thread and, where it is free, one beside it; None when `stop()` turned true before
    the last began."""
    left, done = iter(range(count)), dict[int, M]()

    def work() -> None:
        for index in left:
            if stop():
                return
            done[index] = one(index)

    beside = _beside().submit(work) if count > 1 else None
    try:
        work()
    finally:
        if beside is not None and not beside.cancel():
            beside.result()
    return [done[index] for index in range(count)] if len(done) == count else None


@cache
def _beside() -> ThreadPoolExecutor:
    return ThreadPoolExecutor(max_workers=1, thread_name_prefix="march")
