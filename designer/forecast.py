"""Joins make (and later cellar and cost) into one Forecast: every state over time plus outcomes, read-only."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field, replace
from typing import Any

import numpy as np
from numpy.typing import NDArray

from designer.make import kernel, members, path, run, safety
from designer.make.set import SET_C_HIGH, SET_C_LOW
from designer.make.start import first_state, parameters
from designer.recipe.document import Recipe
from designer.recipe.lower import lower
from designer.recipe.schedule import GEL_ACID_HEAT, GEL_LACTIC, Lane, Schedule
from designer.recipe.stages.stage import Stage

Series = NDArray[np.float64]


@dataclass(frozen=True, slots=True)
class Outcome:
    """One figure of the cheese. `low`..`high` is the 80 % band (equal to `value` where no band was asked for).

    `outside` is a sentence when the law behind it left its validity range, else "".
    """

    key: str
    value: float
    low: float
    high: float
    outside: str = ""


@dataclass(frozen=True, slots=True)
class StageForecast:
    """What one stage does. Times count from milk in the vat; `reached` is False when a state end ran to `latest`."""

    id: str
    name: str
    kind: str
    start_min: float
    end_min: float
    end_low_min: float
    end_high_min: float
    reached: bool
    values: Mapping[str, float]
    """State at the end: temperature_c, ph, ph_whey, curd_moisture_pct, whey_kg_per_100kg (run off so far), ..."""


@dataclass(frozen=True, slots=True)
class Trace:
    """Every state over time: `time_min` strictly rising but for equal pairs at stage edges, each column shape (n,)."""

    time_min: Series
    stage: NDArray[np.int32]
    columns: Mapping[str, Series]

    def __getitem__(self, name: str) -> Series:
        return self.columns[name]

    def at(self, name: str, minute: float) -> float:
        """The column read at a minute, by straight line between points."""
        return float(np.interp(minute, self.time_min, self.columns[name]))


@dataclass(frozen=True, slots=True)
class Bands:
    """80 % bands on the nominal clock: per column (low, high), each the length of the trace."""

    low: Mapping[str, Series]
    high: Mapping[str, Series]
    samples: Mapping[str, Series] = field(default_factory=dict)
    """Outcome key -> value per member, so that a verdict can say "n in 10"."""


@dataclass(frozen=True, slots=True)
class Forecast:
    """All that the model says of one recipe; lanes beside the main one are the branches, in order."""

    recipe: Recipe
    stages: tuple[StageForecast, ...]
    trace: Trace
    outcomes: Mapping[str, Outcome]
    cautions: tuple[safety.Caution, ...]
    bands: Bands | None = None
    branches: tuple["Forecast", ...] = ()
    branch_id: str | None = None
    notes: tuple[str, ...] = ()
    weight: float = 1.0
    """Kilograms of the first milk behind one kilogram of this lane's: lanes add up by it."""


Caution = safety.Caution
BANDED = ("temperature_c", "ph", "ph_whey", "curd_moisture_pct", "whey_kg_per_100kg", "firmness_pa", "salt_pct")
LOW, HIGH = 10.0, 90.0


def forecast(
    recipe: Recipe, *, members: int = 0, twin: bool | None = None, stop: Callable[[], bool] = lambda: False
) -> Forecast:
    """The make of a recipe and of its branches, from milk in the vat to the first room and at least to 24 hours.

    `members` > 0 adds 80 % bands from so many draws of the uncertain inputs (on the main make). `stop` is asked
    between chunks of that work; when it turns true the forecast comes back without bands. Raises RecipeError.
    """
    schedule = lower(recipe)
    lane = schedule.lanes[0]
    p = parameters(schedule.milk)
    rows = run.until_room(lane.rows, _room_stage(recipe.stages))
    wait = _wait(recipe.stages, rows, schedule.room_c)
    main = run.run_main(schedule, rows, first_state(schedule.milk, p[0]), p[0], wait, twin)
    bands, nominal, spreads = None, _outcomes(recipe.stages, schedule, main, 1.0), None
    if members > 0:
        bands, spreads = _bands(recipe, schedule, main, rows, wait, members, stop)
    branches = tuple(_branch(recipe, schedule, main, own, twin) for own in schedule.lanes[1:])
    return _joined(recipe, recipe.stages, schedule, lane, main, nominal, bands, spreads, branches)


def _room_stage(stages: tuple[Stage, ...]) -> int | None:
    return next((index for index, stage in enumerate(stages) if stage.kind == "room"), None)


def _wait(stages: tuple[Stage, ...], rows: NDArray[Any], room_c: float) -> NDArray[Any]:
    room = _room_stage(stages)
    index = len(stages) - 1 if room is None else room
    cool = room_c if room is None else getattr(stages[room], "temperature_c", None) or room_c
    return run.day_row(index, cool, 0.0, rows[-1])


def _outcomes(stages: tuple[Stage, ...], schedule: Schedule, lane: run.LaneRun, share: float) -> Mapping[str, float]:
    order = [stage.kind for stage in stages]
    mill = next((index for kind in ("mill", "salt") for index, own in enumerate(order) if own == kind), None)
    mill_rows = np.flatnonzero(lane.rows["stage"] == mill) if mill is not None else np.array([])
    return path.outcomes(
        lane.path, lane.rows, lane.p, end_row=lane.end_row, starter_min=schedule.starter_min,
        mill_row=int(mill_rows[0]) if mill_rows.size and mill_rows[0] <= lane.end_row else None,
        milk_kg=schedule.milk.mass_kg * lane.weight * share,
    )  # fmt: skip


def _branch(recipe: Recipe, schedule: Schedule, main: run.LaneRun, lane: Lane, twin: bool | None) -> Forecast:
    branch = next(one for one in recipe.branches if one.id == lane.branch_id)
    after = next(index for index, stage in enumerate(recipe.stages) if stage.id == branch.after)
    row_index = int(np.flatnonzero(main.rows["stage"] == after)[-1])
    y, p, minute, weight = run.branch_start(main, min(row_index, main.end_row), branch.share_pct / 100.0, branch.of)
    rows = run.until_room(lane.rows, _room_stage(branch.stages))
    wait = _wait(branch.stages, rows, schedule.room_c)
    begun = main.path if minute > main.path.rennet_min >= 0.0 and branch.of == "curd" else None
    marched = kernel.march(
        rows, y, p, t0=minute, rennet_min=begun.rennet_min if begun else -1.0,
        floc_min=begun.floc_min if begun else -1.0, cut_min=begun.cut_min if begun else -1.0, twin=twin,
    )  # fmt: skip
    marched = run.to_a_day(marched, rows, p, schedule.starter_min + run.DAY_MIN, wait, twin)
    own = run.LaneRun(marched, np.concatenate([rows, wait]), p, len(rows) - 1, weight)
    return _joined(
        recipe, branch.stages, schedule, lane, own, _outcomes(branch.stages, schedule, own, 1.0), None, None, ()
    )


def _bands(
    recipe: Recipe, schedule: Schedule, main: run.LaneRun, rows: NDArray[Any], wait: NDArray[Any], count: int,
    stop: Callable[[], bool],
) -> tuple[Bands | None, NDArray[np.float64] | None]:  # fmt: skip
    """Bands on the nominal clock: members are compared at the same fraction of the same stage."""
    drawn_rows, y0, p = members.drawn(schedule.milk, rows, count)
    paths = run.run_many(drawn_rows, y0, p, schedule.starter_min + run.DAY_MIN, wait, stop)
    if paths is None:
        return None, None
    at = _place(main.path)
    series: dict[str, list[Series]] = {name: [] for name in BANDED}
    samples: dict[str, list[float]] = {}
    for member, own in enumerate(paths):
        lane = run.LaneRun(own, main.rows, p[member], main.end_row, 1.0)
        place = _place(own)
        for name, column in path.columns(own, main.rows, p[member], BANDED).items():
            series[name].append(np.interp(at, place, column))
        for key, value in _outcomes(recipe.stages, schedule, lane, 1.0).items():
            samples.setdefault(key, []).append(value)
    low = {name: np.percentile(np.array(all_of), LOW, axis=0) for name, all_of in series.items()}
    high = {name: np.percentile(np.array(all_of), HIGH, axis=0) for name, all_of in series.items()}
    kept = {key: np.array(values) for key, values in samples.items() if len(values) == count}
    ends = np.array([own.ends[: main.end_row + 1, 1] for own in paths])
    return Bands(low, high, kept), np.percentile(ends, [LOW, HIGH], axis=0)


def _place(one: kernel.Path) -> Series:
    """Where each point of a path lies, as row + share of the row gone: the common clock of the members."""
    row = one.out[:, 1].astype(int)
    start, end = one.ends[row, 0], one.ends[row, 1]
    share = (one.out[:, 0] - start) / np.maximum(end - start, 1e-9)
    return np.asarray(row + np.minimum(share, 1.0 - 1e-6))


def _joined(
    recipe: Recipe, stages: tuple[Stage, ...], schedule: Schedule, lane: Lane, own: run.LaneRun,
    nominal: Mapping[str, float], bands: Bands | None, spreads: NDArray[np.float64] | None,
    branches: tuple[Forecast, ...],
) -> Forecast:  # fmt: skip
    values = path.columns(own.path, own.rows, own.p)
    row_stage = own.rows["stage"]
    trace = Trace(own.path.out[:, 0], row_stage[own.path.out[:, 1].astype(int)].astype(np.int32), values)
    marched = []
    for index, stage in enumerate(stages):
        rows = np.flatnonzero(row_stage[: own.end_row + 1] == index)
        if not rows.size:
            break
        last = int(np.flatnonzero(own.path.out[:, 1] <= rows[-1])[-1])
        low, high = spreads[:, rows[-1]] if spreads is not None else (own.path.ends[rows[-1], 1],) * 2
        marched.append(
            StageForecast(
                stage.id, stage.title, stage.kind, float(own.path.ends[rows[0], 0]), float(own.path.ends[rows[-1], 1]),
                float(low), float(high), bool(own.path.ends[rows, 2].min() > 0.0) or not stage.end.is_state,
                {name: float(column[last]) for name, column in values.items()},
            )
        )  # fmt: skip
    notes = _notes(own)
    outcomes = {key: _outcome(key, value, bands, notes) for key, value in nominal.items()}
    made = Forecast(recipe, tuple(marched), trace, outcomes, (), bands, branches, lane.branch_id, notes, own.weight)
    return replace(made, cautions=safety.cautions(recipe, stages, schedule, made.stages, trace, outcomes))


def _outcome(key: str, value: float, bands: Bands | None, notes: tuple[str, ...]) -> Outcome:
    if bands is None or key not in bands.samples:
        return Outcome(key, value, value, value, notes[0] if notes else "")
    low, high = np.percentile(bands.samples[key], [LOW, HIGH])
    return Outcome(key, value, min(value, float(low)), max(value, float(high)), notes[0] if notes else "")


def _notes(own: run.LaneRun) -> tuple[str, ...]:
    """Where a law was used outside what it is known for, in words."""
    out = []
    gels = set(own.rows["gel"].tolist())
    if GEL_LACTIC in gels:
        out.append("Lactic curd drains here by a plain law; take moisture and yield as a first guess.")
    if GEL_ACID_HEAT in gels:
        out.append("Acid-and-heat curd drains here by a plain law; take moisture and yield as a first guess.")
    if own.rows["stretch"].any():
        out.append("Stretching is a plain law here: fat lost with time in hot water, moisture hardly changed.")
    rennet = own.path.rennet_min
    if rennet >= 0.0:
        temp = float(
            np.interp(
                rennet, own.path.out[:, 0], path.columns(own.path, own.rows, own.p, ("temperature_c",))["temperature_c"]
            )
        )
        if not SET_C_LOW <= temp <= SET_C_HIGH:
            out.append(
                f"Rennet at {temp:.0f} °C lies outside the {SET_C_LOW:.0f}-{SET_C_HIGH:.0f} °C the setting law knows."
            )
    return tuple(out)
