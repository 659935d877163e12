"""The search of aim: whole steps of settings that bring outcomes where they are wanted, and what must hold with them.

A small integer program over the slopes of `levers`, drawn again at each try, and every try is forecast in full. In a
vat that parts, what must hold holds in every lane.
"""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from designer.forecast import Forecast, forecast
from designer.judge.freedom import Guard, figures, freedoms, guards, style_of, unit_of
from designer.judge.levers import lane_effects
from designer.judge.movable import moved
from designer.judge.whole_steps import whole_steps
from designer.language import headed
from designer.recipe.document import Recipe
from designer.recipe.error import RecipeError
from styles.reader import Style
from styles.settings import SETTINGS

Floats = NDArray[np.float64]
Steps = NDArray[np.int64]
LaneId = str | None
TRIES = 8
FIRST_STRETCH, STRETCH = 8, 4
"""How many steps a setting may move in one try, first and later: slopes hold only so far."""
WANTED, FIRM, USUAL = 100.0, 2000.0, 2.0
"""What a natural step past a bound costs, in steps of settings: the wanted, what must hold, what is usual."""
RAN_OUT = 8.0
"""What a stage costs that newly runs to its latest; any other new caution must not be."""
NOT_REACHED = "not-reached"
"""Code of the caution that says so."""
GONE = 1000.0
"""Natural steps that an outcome counts as past its bound where the make no longer has it."""
INSIDE = 0.15
"""Share of the tolerance by which a try aims inside, because slopes are not exact."""


@dataclass(frozen=True, slots=True)
class Wanted:
    """An outcome wanted inside `low`..`high`; None is open."""

    key: str
    low: float | None
    high: float | None


@dataclass(frozen=True, slots=True)
class Bound:
    """One bound on an outcome of a lane: `low`..`high`, what a unit past it costs, and the guard behind it (None:
    wanted)."""

    lane: LaneId
    key: str
    low: float | None
    high: float | None
    cost: float
    guard: Guard | None

    @property
    def unit(self) -> float:
        """What distances are counted in; of what is only usual, how far outside still counts as near."""
        return SETTINGS[self.key].near if self.cost == USUAL and self.key in SETTINGS else unit_of(self.key)

    def past(self, value: float) -> float:
        """How far a value lies outside, in its unit."""
        under = 0.0 if self.low is None else self.low - value
        over = 0.0 if self.high is None else value - self.high
        return max(under, over, 0.0) / self.unit


@dataclass(frozen=True, slots=True)
class Try:
    """A place tried: steps of every freedom, its forecast, the figures of each lane, and how far past the bounds it
    lies, in natural steps."""

    steps: Steps
    made: Forecast
    figures: Mapping[LaneId, Mapping[str, float]]
    wanted: float
    firm: float
    usual: float

    @property
    def cost(self) -> float:
        """The smaller, the better; what the integer program counts, too."""
        change = float(np.abs(self.steps).sum())
        return FIRM * self.firm + WANTED * self.wanted + USUAL * self.usual + change

    def beats(self, other: Try) -> bool:
        """A better place; one where something that must hold does not is never better, however near the wanted."""
        return self.firm <= other.firm and self.cost < other.cost - 1e-6

    def at(self, bound: Bound) -> float | None:
        """The figure a bound speaks of; None where this make has it not."""
        return self.figures[bound.lane].get(bound.key)

    @property
    def good(self) -> bool:
        """All that is wanted is there, and all that must hold does."""
        return self.wanted == 0.0 and self.firm == 0.0


class Search:
    """One search: the free settings, the bounds, and the best place so far."""

    def __init__(
        self, before: Forecast, wanted: Sequence[Wanted], branch: LaneId, locks: Collection[tuple[str, str] | str],
        style: Style | None,
    ) -> None:  # fmt: skip
        """`wanted` of one lane of a forecast (of the main make: None), whose style gives usual ranges."""
        self.before, self.branch, self.style = before, branch, style
        recipe = before.recipe
        self.free = freedoms(recipe, style, branch)
        self.locked = np.array([one.setting.path in locks or one.setting.where in locks for one in self.free])
        own = guards(before.lane(branch), style, {one.key for one in wanted})
        self.bounds = (
            *(Bound(branch, one.key, one.low, one.high, WANTED, None) for one in wanted),
            *(_held(branch, one) for one in own),
            *self._of_other_lanes(),
        )
        self.lanes = tuple(dict.fromkeys(one.lane for one in self.bounds))
        self.cautions = _grave(before)
        self.best = self._place(np.zeros(len(self.free), dtype=np.int64), self.before)
        self.slopes = np.zeros((len(self.bounds), len(self.free)))
        self.bias = np.zeros(len(self.bounds))

    def _of_other_lanes(self) -> list[Bound]:
        """What must hold in the other cheeses of the vat."""
        out = []
        for lane in self.before.lanes:
            if lane.branch_id != self.branch:
                held = guards(lane, style_of(self.before.recipe, lane.branch_id), ())
                named = [replace(one, why=headed(name_of(lane), one.why)) for one in held]
                out += [_held(lane.branch_id, one) for one in named]
        return out

    def search(self) -> Try:
        """Search, and pare down what was more than needed: the best place, from which slopes are drawn anew."""
        stuck: set[int] = set()
        stretch, fresh = FIRST_STRETCH, True
        for _ in range(TRIES):
            if fresh:
                self.slopes, self.bias = self._slopes(self.best), np.zeros(len(self.bounds))
            steps = self._solved(self.best, stretch, stuck)
            if steps is None or (steps == self.best.steps).all():
                break
            there = self._tried(steps)
            fresh = there is not None and there.beats(self.best)
            if there is None:
                stuck |= self._impossible(self.best, steps)
            elif fresh:
                self.best, stretch = there, min(stretch, STRETCH)
            else:  # the slopes led astray: believe them less far, and less by what they were off
                self.bias = self._off(there)
                stretch = max(1, stretch // 2)
        self._pare()
        return self.best

    def _slopes(self, here: Try) -> Floats:
        """Change of each bounded figure for one step of each free setting, shape (bounds, settings)."""
        now = [replace(one.setting, value=one.at(int(by))) for one, by in zip(self.free, here.steps, strict=True)]
        both = [one.value + sign * one.step for one in now for sign in (1.0, -1.0)]
        twice = [one for one in now for _ in (0, 1)]
        every = lane_effects(here.made.recipe, twice, both, self.lanes, settings_too=True)
        out = np.zeros((len(self.bounds), len(self.free)))
        for i, bound in enumerate(self.bounds):
            found = every[bound.lane]
            if bound.key in found:
                change = found[bound.key][1:] - found[bound.key][0]
                up, down = change[0::2], -change[1::2]
                slope = 0.5 * (np.where(np.isnan(up), down, up) + np.where(np.isnan(down), up, down))
                out[i] = np.nan_to_num(slope)
        return out

    def _off(self, there: Try) -> Floats:
        """How far the figures of a try lie from what the slopes said of it."""
        said = self.slopes @ (there.steps - self.best.steps)
        return np.array(
            [(there.at(one) or 0.0) - (self.best.at(one) or 0.0) - said[k] for k, one in enumerate(self.bounds)]
        )

    def _solved(
        self, here: Try, stretch: int, stuck: Collection[int] = (), *, locks: bool = True, ranges: bool = True,
        without: Collection[Bound] = (),
    ) -> Steps | None:  # fmt: skip
        """Steps of least cost by the slopes at `here`; None where the solver finds nothing.

        Without `locks`, or the `ranges` that are not the field's own, or some bounds: to see what is in the way.
        """
        least = np.array([one.least if ranges else one.lowest for one in self.free], dtype=float)
        most = np.array([one.most if ranges else one.highest for one in self.free], dtype=float)
        least, most = np.maximum(least, here.steps - stretch), np.minimum(most, here.steps + stretch)
        fixed = np.isin(np.arange(len(self.free)), list(stuck)) | (self.locked & locks)
        least, most = np.where(fixed, here.steps, least), np.where(fixed, here.steps, most)
        held = [k for k, one in enumerate(self.bounds) if one not in without]
        unit = np.array([self.bounds[k].unit for k in held])
        slope = self.slopes[held] / unit[:, None]
        now = np.array([(here.at(self.bounds[k]) or 0.0) + self.bias[k] for k in held]) / unit
        now -= slope @ here.steps
        low = np.array([-np.inf if (end := self.bounds[k].low) is None else end for k in held]) / unit
        high = np.array([np.inf if (end := self.bounds[k].high) is None else end for k in held]) / unit
        narrow = INSIDE * np.minimum(1.0, (high - low) / 2.0)
        cost = np.array([self.bounds[k].cost for k in held])
        return whole_steps(slope, low + narrow - now, high - narrow - now, cost, least, most)

    def _recipe(self, steps: Steps) -> Recipe:
        recipe = self.before.recipe
        for one, by in zip(self.free, steps, strict=True):
            if by:
                recipe = moved(recipe, one.setting, one.at(int(by)))
        return recipe

    def _tried(self, steps: Steps) -> Try | None:
        """The place forecast in full; None where the recipe can't be."""
        try:
            return self._place(steps, forecast(self._recipe(steps)))
        except RecipeError:
            return None

    def _place(self, steps: Steps, made: Forecast) -> Try:
        """How far a forecast lies past the bounds."""
        past = {WANTED: 0.0, FIRM: 0.0, USUAL: 0.0}
        here = {lane: figures(made.lane(lane)) for lane in self.lanes}
        for one in self.bounds:
            if one.key in here[one.lane]:
                past[one.cost] += one.past(here[one.lane][one.key])
            elif one.guard is None or one.guard.firm:  # it no longer comes to that
                past[one.cost] += GONE
        fresh = [code for _, code, _ in _grave(made) - self.cautions]
        ran_out = fresh.count(NOT_REACHED)
        firm = past[FIRM] + 10.0 * (len(fresh) - ran_out)
        return Try(steps, made, here, past[WANTED], firm, past[USUAL] + RAN_OUT * ran_out)

    def _impossible(self, here: Try, steps: Steps) -> set[int]:
        """Settings whose step alone already can't be; else every one that was to move."""
        moving = [int(k) for k in np.flatnonzero(steps != here.steps)]
        alone = set()
        for k in moving:
            single = here.steps.copy()
            single[k] = steps[k]
            if self._tried(single) is None:
                alone.add(k)
        return alone or set(moving)

    def _pare(self) -> None:
        """Take back steps that turn out not to be needed."""
        for k in np.flatnonzero(self.best.steps):
            fewer = self.best.steps.copy()
            fewer[k] -= np.sign(fewer[k])
            there = self._tried(fewer)
            if there is not None and there.beats(self.best):
                self.best = there

    def further(self, *, locks: bool = True, ranges: bool = True, without: Collection[Bound] = ()) -> Steps | None:
        """Steps that by the slopes reach further than the best does, with something given up; None if they do not."""
        steps = self._solved(self.best, FIRST_STRETCH, locks=locks, ranges=ranges, without=without)
        here, there = self._short(self._solved(self.best, FIRST_STRETCH)), self._short(steps)
        return steps if here is not None and there is not None and there < 0.9 * here - 0.2 else None

    def _short(self, steps: Steps | None) -> float | None:
        """How far the wanted would be missed, by the slopes at the best place."""
        if steps is None:
            return None
        change = self.slopes @ (steps - self.best.steps)
        return sum(
            one.past((self.best.at(one) or 0.0) + change[k]) for k, one in enumerate(self.bounds) if one.guard is None
        )

    def look_again(self) -> None:
        """Slopes at the best place: what would reach further is asked by them."""
        self.slopes, self.bias = self._slopes(self.best), np.zeros(len(self.bounds))


def _held(lane: LaneId, guard: Guard) -> Bound:
    return Bound(lane, guard.key, guard.low, guard.high, FIRM if guard.firm else USUAL, guard)


def _grave(made: Forecast) -> set[tuple[LaneId, str, str]]:
    """Cautions of all lanes that are more than a note."""
    return {
        (lane.branch_id, one.code, one.stage) for lane in made.lanes for one in lane.cautions if one.level != "note"
    }


def name_of(lane: Forecast) -> str:
    """What a lane is called."""
    if lane.branch_id is None:
        return lane.recipe.name
    branch = lane.recipe.branch(lane.branch_id)
    return branch.name or branch.id
