"""Bands that wait: those of the last forecast moved onto a new one, until the worker has the new ones.

Each band keeps its distance from its curve, read at the same share of the same stage.
"""

from __future__ import annotations

from dataclasses import replace

import numpy as np
from numpy.typing import NDArray

from designer.forecast import Bands, Forecast, Outcome, StageForecast, Trace

Array = NDArray[np.float64]


def place(trace: Trace) -> Array:
    """Where each point of a trace lies: stage + share of the stage gone by, never falling; shape (n,)."""
    count = int(trace.stage[-1]) + 1
    stages = np.arange(count)
    first = np.searchsorted(trace.stage, stages, side="left")
    last = np.searchsorted(trace.stage, stages, side="right") - 1
    start, end = trace.time_min[np.minimum(first, len(trace.time_min) - 1)], trace.time_min[last]
    own = trace.stage
    share = (trace.time_min - start[own]) / np.maximum(end[own] - start[own], 1e-9)
    return np.asarray(own + np.clip(share, 0.0, 1.0 - 1e-6), dtype=np.float64)


def carried(old: Forecast, new: Forecast) -> Forecast:
    """The new forecast with the bands of the old one laid around its curves, outcomes and stage ends."""
    was_there = {one.branch_id: one for one in old.branches}
    branches = tuple(
        carried(was_there[one.branch_id], one) if one.branch_id in was_there else one for one in new.branches
    )
    new = replace(new, branches=branches) if branches else new
    if old.bands is None or new.bands is not None:
        return new
    at, was = place(new.trace), place(old.trace)
    low, high = {}, {}
    for name, values in old.bands.low.items():
        nominal = old.trace[name]
        low[name] = new.trace[name] + np.interp(at, was, values - nominal)
        high[name] = new.trace[name] + np.interp(at, was, old.bands.high[name] - nominal)
    return replace(
        new,
        bands=Bands(low, high),
        outcomes={key: _outcome(old.outcomes.get(key), one) for key, one in new.outcomes.items()},
        stages=_stages(old.stages, new.stages),
    )


def _outcome(old: Outcome | None, new: Outcome) -> Outcome:
    if old is None:
        return new
    low, high = new.value - (old.value - old.low), new.value + (old.high - old.value)
    return Outcome(new.key, new.value, low, high, new.outside)


def _stages(old: tuple[StageForecast, ...], new: tuple[StageForecast, ...]) -> tuple[StageForecast, ...]:
    before = {stage.id: stage for stage in old}
    made = []
    for stage in new:
        was = before.get(stage.id)
        if was is None:
            made.append(stage)
        else:
            early, late = was.end_min - was.end_low_min, was.end_high_min - was.end_min
            made.append(replace(stage, end_low_min=stage.end_min - early, end_high_min=stage.end_min + late))
    return tuple(made)
