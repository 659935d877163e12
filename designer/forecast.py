"""One Forecast of a recipe: lowered, marched lane by lane, its outcomes, bands, remarks and cautions; read-only."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from typing import Any

import numpy as np
from numpy.typing import NDArray

from designer.language import say
from designer.make import band, caution, outcomes, path, run, safety, validity
from designer.make.kernel import Path
from designer.make.many import SEEN, place
from designer.make.parting import Parting, PartingError, Start
from designer.make.prepare import prepare
from designer.make.records import joined
from designer.make.start import first_state, parameters
from designer.recipe.document import Branch, Recipe, stage_label
from designer.recipe.error import RecipeError
from designer.recipe.lower import lower, lower_branch
from designer.recipe.schedule import Lane, Schedule
from designer.recipe.stages.kinds import AnyStage
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


class _AtPoint(Mapping[str, float]):
    """The columns of a trace at one of its points."""

    __slots__ = ("columns", "point")

    def __init__(self, columns: Mapping[str, Series], point: int) -> None:
        self.columns, self.point = columns, point

    def __getitem__(self, name: str) -> float:
        return float(self.columns[name][self.point])

    def __iter__(self) -> Iterator[str]:
        return iter(self.columns)

    def __len__(self) -> int:
        return len(self.columns)


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
    branches: tuple[Forecast, ...] = ()
    branch_id: str | None = None
    remarks: tuple[validity.Remark, ...] = ()
    weight: float = 1.0
    """Kilograms of the first milk behind one kilogram of this lane's: lanes add up by it."""

    @property
    def notes(self) -> tuple[str, ...]:
        """Where laws were used outside what they are known for."""
        return tuple(remark.text for remark in self.remarks)

    @property
    def lanes(self) -> tuple[Forecast, ...]:
        """The main make and its branches."""
        return (self, *self.branches)

    def lane(self, branch_id: str | None) -> Forecast:
        """The forecast of a branch, or of the main make (None); KeyError if there is none."""
        for one in self.lanes:
            if one.branch_id == branch_id:
                return one
        raise KeyError(branch_id)


Caution = safety.Caution
LOW, HIGH = 10.0, 90.0


def forecast(
    recipe: Recipe, *, members: int = 0, twin: bool | None = None, stop: Callable[[], bool] = lambda: False
) -> Forecast:
    """The make of a recipe and of its branches, from milk in the vat to the first room and at least to 24 hours.

    `members` > 0 adds 80 % bands from so many draws of the uncertain inputs, the same ones in every lane. `stop` is
    asked between the draws; when it turns true the forecast comes back without bands. Raises RecipeError.
    """
    schedule = lower(recipe)
    lane = schedule.lanes[0]
    p = parameters(schedule.milk)
    rows = _before_room(lane.rows, recipe.stages)
    wait = _wait(recipe.stages, rows, schedule.room_c)
    partings = tuple(_parting(recipe, branch, rows) for branch in recipe.branches)
    try:
        main = run.run_main(schedule, rows, first_state(schedule.milk, p[0]), p[0], wait, twin, partings)
    except PartingError as error:
        raise RecipeError(str(error), _named(recipe.branches)) from None
    whole = _Made(lane, recipe.stages, rows, wait, main, main, mill_row(recipe.stages, main))
    parted = tuple(
        _branch(recipe, schedule, main, *own, twin) for own in zip(recipe.branches, partings, main.starts, strict=True)
    )
    drawn, lost = _drawn(schedule, whole, parted, partings, members, stop) if members > 0 else (None, 0)
    spreads = [None] * (1 + len(parted)) if drawn is None else drawn
    branches = tuple(
        _joined(recipe, schedule, own, spread, ()) for own, spread in zip(parted, spreads[1:], strict=True)
    )
    told = _joined(recipe, schedule, whole, spreads[0], branches)
    return _without(told, lost, members) if lost else told


def _without(made: Forecast, lost: int, count: int) -> Forecast:
    """Every lane told how many draws its bands are without."""
    row = "draws-without" if made.bands is not None else "no-bands"
    more = caution.say(row, lost=lost, count=count, names=_named(made.recipe.branches))
    branches = tuple(_without(lane, lost, count) for lane in made.branches)
    return replace(made, cautions=caution.gravest_first([*made.cautions, more]), branches=branches)


@dataclass(frozen=True, slots=True)
class _Made:
    """One lane: the rows it is marched from, and how that went: `own` alone, `whole` with the main make before it where
    that is its own. `mill_row` is a row of `whole`."""

    lane: Lane
    stages: tuple[AnyStage, ...]
    rows: NDArray[Any]
    wait: NDArray[Any]
    own: run.LaneRun
    whole: run.LaneRun
    mill_row: int | None


@dataclass(frozen=True, slots=True)
class _Spread:
    """The bands of one lane, and the minutes its rows end at: (2, rows), low and high."""

    bands: Bands
    ends: NDArray[np.float64]


def _room_stage(stages: tuple[Stage, ...]) -> int | None:
    return next((index for index, stage in enumerate(stages) if stage.kind == "room"), None)


def _before_room(rows: NDArray[Any], stages: tuple[AnyStage, ...]) -> NDArray[Any]:
    """What the march marches: prepared rows up to the first room; RecipeError where none are left."""
    kept = run.until_room(rows, _room_stage(stages))
    if not len(kept):
        raise RecipeError(
            say("no cheese goes into the room yet; put a stage of the make before it"), stage_label(stages, 0)
        )
    return kept


def _wait(stages: tuple[Stage, ...], rows: NDArray[Any], room_c: float) -> NDArray[Any]:
    room = _room_stage(stages)
    index = len(stages) - 1 if room is None else room
    # A room that says no temperature of its own has that of the make room.
    own = None if room is None else getattr(stages[room], "room_c", None)
    return prepare(run.day_row(index, room_c if own is None else own, rows[-1]))


def mill_row(stages: tuple[Stage, ...], lane: run.LaneRun) -> int | None:
    """The row that begins milling, or salting where nothing is milled; None where neither is."""
    order = [stage.kind for stage in stages]
    mill = next((index for kind in ("mill", "salt") for index, own in enumerate(order) if own == kind), None)
    found = np.flatnonzero(lane.rows["stage"] == mill) if mill is not None else np.array([], dtype=int)
    return int(found[0]) if found.size and found[0] <= lane.end_row else None


def branch_mill_row(recipe: Recipe, branch: Branch, main: run.LaneRun, own: run.LaneRun, begins: int) -> int | None:
    """The same of a branch, as a row of its whole way; `begins` is the row of the main make it parts before."""
    mill = mill_row(branch.stages, own)
    if branch.of != "curd":
        return mill
    before = mill_row(recipe.stages, main)
    return before if before is not None and before < begins else None if mill is None else begins + mill


def _outcomes(schedule: Schedule, lane: run.LaneRun, mill_row: int | None) -> dict[str, float]:
    """The outcomes of one lane; what did not happen has no key."""
    left = outcomes.of_paths([lane.path], lane.rows, joined([lane.p]), schedule.starter_min, lane.milk[None])
    return {key: float(values[0]) for key, values in _found(schedule, left, np.array([lane.weight]), mill_row).items()}


def _found(
    schedule: Schedule, left: outcomes.Left, weight: Series, mill_row: int | None
) -> dict[str, NDArray[np.float64]]:  # fmt: skip
    """The outcomes of makes over the same rows, each (m,); what did not happen in all of them has no key."""
    mills = None if mill_row is None else np.full(len(weight), mill_row)
    found = outcomes.outcomes(left, mill_row=mills, milk_kg=schedule.milk.mass_kg * weight)
    there = np.isfinite(np.array(list(found.values()))).all(axis=1)
    return {key: values for (key, values), one in zip(found.items(), there.tolist(), strict=True) if one}


def _parting(recipe: Recipe, branch: Branch, rows: NDArray[Any]) -> Parting:
    """Where a branch leaves the main make, as a row of it; from the first room on, where the make ends."""
    after = next(index for index, stage in enumerate(recipe.stages) if stage.id == branch.after)
    return Parting(int(np.flatnonzero(rows["stage"] <= after)[-1]), branch.of, branch.share_pct / 100.0)


def _named(branches: tuple[Branch, ...]) -> str:
    return ", ".join(
        say("branch “{name}”", name=branch.name or branch.id) for branch in branches if branch.of != "curd"
    )


def _branch(
    recipe: Recipe, schedule: Schedule, main: run.LaneRun, branch: Branch, parting: Parting, start: Start,
    twin: bool | None,
) -> _Made:  # fmt: skip
    lane = lower_branch(recipe, branch, schedule.milk, start.weight * schedule.milk.mass_kg)
    rows = _before_room(lane.rows, branch.stages)
    wait = _wait(branch.stages, rows, schedule.room_c)
    curd = branch.of == "curd"
    until = schedule.starter_min + run.DAY_MIN
    own, whole = run.run_branch(main, start, parting.row, rows, until, wait, twin, whole=curd)
    mill = branch_mill_row(recipe, branch, main, own, parting.row + 1)
    return _Made(lane, branch.stages, rows, wait, own, whole, mill)


def _drawn(
    schedule: Schedule, main: _Made, branches: Sequence[_Made], partings: tuple[Parting, ...], count: int,
    stop: Callable[[], bool],
) -> tuple[list[_Spread] | None, int]:  # fmt: skip
    """What the draws make of the main make and of each branch, and how many of them found nothing to part with; None
    when stopped, or where fewer than half are left."""
    lanes = [main, *branches]
    clocks = [_clock(made.own.path) for made in lanes]
    ways = [
        band.Way(band.apart(made.rows), made.wait, clock[kept], parting)
        for made, (clock, kept), parting in zip(lanes, clocks, (None, *partings), strict=True)
    ]
    drawn, lost = band.marched(schedule.milk, schedule.starter_min, ways[0], ways[1:], count, stop)
    if drawn is None:
        return None, lost
    return [_spread(schedule, *one) for one in zip(lanes, clocks, drawn, strict=True)], lost


def _spread(
    schedule: Schedule, made: _Made, clock: tuple[Series, NDArray[np.intp]], drawn: band.Members
) -> _Spread:  # fmt: skip
    """Bands on the nominal clock: members are compared at the same fraction of the same stage."""
    at, kept = clock
    low, high = (
        {name: np.interp(at, at[kept], values) for name, values in zip(SEEN, side, strict=True)}
        for side in spread_of(drawn.marks.seen)
    )
    samples = _found(schedule, drawn.marks, drawn.weight, made.mill_row)
    own = slice(drawn.first_row, drawn.first_row + len(made.rows))
    return _Spread(Bands(low, high, samples), np.array(spread_of(drawn.marks.ends[:, own, 1].T)))


def spread_of(values: Series) -> tuple[Series, Series]:
    """Where the 80 % of members lie, the last axis: `np.percentile` with straight lines, several times as fast."""
    ordered, last = np.sort(values, axis=-1), values.shape[-1] - 1
    below = [int(share / 100.0 * last) for share in (LOW, HIGH)]
    low, high = (
        ordered[..., k] + (share / 100.0 * last - k) * (ordered[..., min(k + 1, last)] - ordered[..., k])
        for share, k in zip((LOW, HIGH), below, strict=True)
    )
    return low, high


def _clock(nominal: Path) -> tuple[Series, NDArray[np.intp]]:
    """The common clock of the members: where each point of the nominal path lies, and which of them a band is read at.

    A band is smooth: its points may lie apart, but for the edges of rows.
    """
    row = nominal.out[:, 1].astype(int)
    at = np.asarray(place(row, nominal.out[:, 0], nominal.ends[row, 0], nominal.ends[row, 1]))
    edge = np.flatnonzero(np.diff(nominal.out[:, 1]))
    return at, np.unique(np.concatenate([np.arange(0, len(at), 3), edge, edge + 1, [len(at) - 1]]))


def _joined(
    recipe: Recipe, schedule: Schedule, made: _Made, spread: _Spread | None, branches: tuple[Forecast, ...]
) -> Forecast:
    own, stages = made.own, made.stages
    columns = path.Columns(own.path, own.rows, own.p)
    row_stage = own.rows["stage"]
    trace = Trace(own.path.out[:, 0], row_stage[own.path.out[:, 1].astype(int)].astype(np.int32), columns)
    # Rows are those of the stages in order: each stage from its first row up to that of the next.
    edges = np.searchsorted(row_stage[: own.end_row + 1], np.arange(len(stages) + 1)).tolist()
    last = (np.searchsorted(own.path.out[:, 1], np.array(edges[1:]) - 1, side="right") - 1).tolist()
    ends = own.path.ends.tolist()
    low, high = (own.path.ends[:, 1].tolist(),) * 2 if spread is None else spread.ends.tolist()
    marched = []
    for stage, first, beyond, point in zip(stages, edges, edges[1:], last, strict=False):
        if first == beyond:
            break
        end = beyond - 1
        marched.append(
            StageForecast(
                stage.id, stage.title, stage.kind, ends[first][0], ends[end][1], low[end], high[end],
                ends[end][2] > 0.0 or not stage.end.is_state, _AtPoint(columns, point),
            )
        )  # fmt: skip
    remarks = validity.remarks(own)
    bands = None if spread is None else spread.bands
    nominal = _outcomes(schedule, made.whole, made.mill_row)
    around = {} if bands is None or not bands.samples else _around(bands.samples)
    figures = {key: _outcome(key, value, around.get(key, (value, value)), remarks) for key, value in nominal.items()}
    cautions = safety.cautions(recipe, stages, schedule, marched, trace, figures)
    return Forecast(
        recipe, tuple(marched), trace, figures, cautions, bands, branches, made.lane.branch_id, remarks, own.weight
    )  # fmt: skip


def _around(samples: Mapping[str, Series]) -> dict[str, tuple[float, float]]:
    """The band of each outcome."""
    low, high = spread_of(np.array(list(samples.values())))
    return dict(zip(samples, zip(low.tolist(), high.tolist(), strict=True), strict=True))


def _outcome(
    key: str, value: float, band: tuple[float, float], remarks: tuple[validity.Remark, ...]
) -> Outcome:  # fmt: skip
    note = next((remark.text for remark in remarks if remark.concerns(key)), "")
    return Outcome(key, value, min(value, band[0]), max(value, band[1]), note)
