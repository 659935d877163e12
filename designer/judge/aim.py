"""Aim: the smallest natural change of a recipe that brings its outcomes where they are wanted.

Minimises the sum of |change| / step over settings that may move (see `freedom`), in whole steps: a small program
over the slopes of `levers`, drawn again at each try, and every try is forecast in full.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from designer.forecast import Forecast, forecast
from designer.judge.check import check
from designer.judge.freedom import Guard, figures, freedoms, guards, unit_of
from designer.judge.levers import effects
from designer.judge.movable import Movable, moved
from designer.judge.verdict import LIMIT, MET, NEAR, NOT_MET
from designer.judge.whole_steps import whole_steps
from designer.language import headed, listed, number, say
from designer.quantities import QUANTITIES
from designer.recipe.document import Recipe
from designer.recipe.error import RecipeError
from designer.units import System, show
from styles.reader import Style
from styles.reader import style as read_style
from styles.settings import SETTINGS

Floats = NDArray[np.float64]
TRIES = 8
FIRST_STRETCH, STRETCH = 8, 4
"""How many steps a setting may move in one try, first and later: slopes hold only so far."""
WANTED, FIRM, USUAL = 100.0, 2000.0, 2.0
"""What a natural step past a bound costs, in steps of settings: the wanted, what must hold, what is usual."""
OF_THE_MILK = frozenset(("fdm_pct", "fat_pct", "protein_pct"))
NOT_REACHED = "not-reached"
RAN_OUT = 8.0
"""The same for a stage that newly runs to its latest; any other new caution must not be."""
GONE = 1000.0
"""Natural steps that an outcome counts as past its bound where the make no longer has it."""
INSIDE = 0.15
"""Share of the tolerance by which a try aims inside, because slopes are not exact."""


class AimError(ValueError):
    """What is wanted can't be asked for; one sentence for the maker."""


@dataclass(frozen=True, slots=True)
class Wanted:
    """An outcome wanted inside `low`..`high`; None is open."""

    key: str
    low: float | None
    high: float | None


def at(key: str, value: float) -> Wanted:
    """An outcome wanted at a value, within one natural step of it."""
    tolerance = unit_of(_known(key))
    return Wanted(key, value - tolerance, value + tolerance)


def _known(key: str) -> str:
    """AimError for what is no outcome."""
    if key not in QUANTITIES:
        raise AimError(
            say("“{key}” is no outcome; outcomes are for example moisture_pct, ph_24h, salt_in_moisture_pct.", key=key)
        )
    return key


@dataclass(frozen=True, slots=True)
class Change:
    """One setting moved: from its value to `to`, `steps` natural steps away."""

    setting: Movable
    to: float
    steps: float

    def sentence(self, system: System = "metric") -> str:
        """ "cook: temperature 39 °C → 40 °C"."""
        one = self.setting
        return f"{one.title} {one.shown(system=system)} → {one.shown(self.to, system)}"


@dataclass(frozen=True, slots=True)
class InTheWay:
    """What keeps the wanted from being reached: locked settings, a range, or a guard; a sentence each."""

    sentence: str
    settings: tuple[tuple[str, str], ...] = ()


@dataclass(frozen=True, slots=True)
class Aimed:
    """What aim found. `recipe` is the changed recipe (or the nearest reachable), `made` its forecast.

    `size` is the sum of |change| / step. `worse` are sentences; `in_the_way` is empty where `reached`.
    """

    recipe: Recipe
    made: Forecast
    before: Forecast
    changes: tuple[Change, ...]
    reached: bool
    size: float
    worse: tuple[str, ...]
    in_the_way: tuple[InTheWay, ...]
    sentence: str


@dataclass(frozen=True, slots=True)
class _Bound:
    """One bound on an outcome: `low`..`high`, what a unit past it costs, and the guard behind it (None: wanted)."""

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
class _Try:
    """A place tried: steps of every freedom, its forecast, and how far past the bounds it lies, in natural steps."""

    steps: NDArray[np.int64]
    made: Forecast
    here: Mapping[str, float]
    wanted: float
    firm: float
    usual: float

    @property
    def cost(self) -> float:
        """The smaller, the better; what the integer program counts, too."""
        change = float(np.abs(self.steps).sum())
        return FIRM * self.firm + WANTED * self.wanted + USUAL * self.usual + change

    def beats(self, other: _Try) -> bool:
        """A better place; one where something that must hold does not is never better, however near the wanted."""
        return self.firm <= other.firm and self.cost < other.cost - 1e-6

    @property
    def good(self) -> bool:
        """All that is wanted is there, and all that must hold does."""
        return self.wanted == 0.0 and self.firm == 0.0


def aim(
    recipe: Recipe,
    wanted: Sequence[Wanted],
    *,
    locks: Collection[tuple[str, str] | str] = (),
    style: Style | str | None = None,
) -> Aimed:
    """The smallest change that reaches all that is wanted, or the nearest reachable and what is in the way.

    `locks` are paths of settings, or ids of stages and doses of which nothing may move. `style` (by default that of
    the recipe, where it names one) gives the ranges. Raises AimError for an outcome this make has not, RecipeError.
    """
    of = read_style(style or recipe.style) if isinstance(style, str) or (style is None and recipe.style) else style
    assert not isinstance(of, str)
    return _Search(recipe, wanted, locks, of).found()


class _Search:
    """One search: the free settings, the bounds, and the best place so far."""

    def __init__(
        self, recipe: Recipe, wanted: Sequence[Wanted], locks: Collection[tuple[str, str] | str], style: Style | None
    ) -> None:
        self.style, self.wanted = style, tuple(wanted)
        self.before = forecast(recipe)
        for one in self.wanted:
            if _known(one.key) not in self.before.outcomes:
                raise AimError(say("This make has no “{label}” to aim at.", label=QUANTITIES[one.key].label))
            if one.low is not None and one.high is not None and one.low > one.high:
                raise AimError(say("{label}: the range wanted runs backwards.", label=QUANTITIES[one.key].label))
        self.free = freedoms(recipe, style)
        self.locked = np.array([one.setting.path in locks or one.setting.where in locks for one in self.free])
        held = guards(self.before, style, {one.key for one in self.wanted})
        self.bounds = (
            *(_Bound(one.key, one.low, one.high, WANTED, None) for one in self.wanted),
            *(_Bound(one.key, one.low, one.high, FIRM if one.firm else USUAL, one) for one in held),
        )
        self.cautions = {(one.code, one.stage) for one in self.before.cautions if one.level != "note"}
        self.best = self._place(np.zeros(len(self.free), dtype=np.int64), self.before)
        self.slopes = np.zeros((len(self.bounds), len(self.free)))
        self.bias = np.zeros(len(self.bounds))

    def found(self) -> Aimed:
        """Search, pare down what was more than needed, and say it."""
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
        return self._said()

    def _slopes(self, here: _Try) -> Floats:
        """Change of each bounded figure for one step of each free setting, shape (bounds, settings)."""
        now = [replace(one.setting, value=one.at(int(by))) for one, by in zip(self.free, here.steps, strict=True)]
        both = [one.value + sign * one.step for one in now for sign in (1.0, -1.0)]
        found = effects(here.made.recipe, [one for one in now for _ in (0, 1)], both, settings_too=True)
        out = np.zeros((len(self.bounds), len(self.free)))
        for i, bound in enumerate(self.bounds):
            if bound.key in found:
                change = found[bound.key][1:] - found[bound.key][0]
                up, down = change[0::2], -change[1::2]
                slope = 0.5 * (np.where(np.isnan(up), down, up) + np.where(np.isnan(down), up, down))
                out[i] = np.nan_to_num(slope)
        return out

    def _off(self, there: _Try) -> Floats:
        """How far the figures of a try lie from what the slopes said of it."""
        said = self.slopes @ (there.steps - self.best.steps)
        return np.array(
            [
                there.here.get(one.key, 0.0) - self.best.here.get(one.key, 0.0) - said[k]
                for k, one in enumerate(self.bounds)
            ]
        )

    def _solved(
        self, here: _Try, stretch: int, stuck: Collection[int] = (), *, locks: bool = True, ranges: bool = True,
        without: Collection[Guard] = (),
    ) -> NDArray[np.int64] | None:  # fmt: skip
        """Steps of least cost by the slopes at `here`; None where the solver finds nothing.

        Without `locks`, or the `ranges` that are not the field's own, or some guards: to see what is in the way.
        """
        least = np.array([one.least if ranges else one.lowest for one in self.free], dtype=float)
        most = np.array([one.most if ranges else one.highest for one in self.free], dtype=float)
        least, most = np.maximum(least, here.steps - stretch), np.minimum(most, here.steps + stretch)
        fixed = np.isin(np.arange(len(self.free)), list(stuck)) | (self.locked & locks)
        least, most = np.where(fixed, here.steps, least), np.where(fixed, here.steps, most)
        held = [k for k, one in enumerate(self.bounds) if one.guard is None or one.guard not in without]
        unit = np.array([self.bounds[k].unit for k in held])
        slope = self.slopes[held] / unit[:, None]
        now = np.array([here.here.get(self.bounds[k].key, 0.0) + self.bias[k] for k in held]) / unit
        now -= slope @ here.steps
        low = np.array([-np.inf if (end := self.bounds[k].low) is None else end for k in held]) / unit
        high = np.array([np.inf if (end := self.bounds[k].high) is None else end for k in held]) / unit
        narrow = INSIDE * np.minimum(1.0, (high - low) / 2.0)
        cost = np.array([self.bounds[k].cost for k in held])
        return whole_steps(slope, low + narrow - now, high - narrow - now, cost, least, most)

    def _recipe(self, steps: NDArray[np.int64]) -> Recipe:
        recipe = self.before.recipe
        for one, by in zip(self.free, steps, strict=True):
            if by:
                recipe = moved(recipe, one.setting, one.at(int(by)))
        return recipe

    def _tried(self, steps: NDArray[np.int64]) -> _Try | None:
        """The place forecast in full; None where the recipe can't be."""
        try:
            return self._place(steps, forecast(self._recipe(steps)))
        except RecipeError:
            return None

    def _place(self, steps: NDArray[np.int64], made: Forecast) -> _Try:
        """How far a forecast lies past the bounds."""
        past, here = {WANTED: 0.0, FIRM: 0.0, USUAL: 0.0}, figures(made)
        for one in self.bounds:
            if one.key in here:
                past[one.cost] += one.past(here[one.key])
            elif one.guard is None or one.guard.firm:  # it no longer comes to that
                past[one.cost] += GONE
        fresh = [
            one.code for one in made.cautions if one.level != "note" and (one.code, one.stage) not in self.cautions
        ]
        ran_out = fresh.count(NOT_REACHED)
        firm = past[FIRM] + 10.0 * (len(fresh) - ran_out)
        return _Try(steps, made, here, past[WANTED], firm, past[USUAL] + RAN_OUT * ran_out)

    def _impossible(self, here: _Try, steps: NDArray[np.int64]) -> set[int]:
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

    # --- What was found, in words ------------------------------------------------------------------------------------

    def _said(self) -> Aimed:
        best = self.best
        changes = tuple(
            Change(one.setting, one.at(int(by)), (one.at(int(by)) - one.setting.value) / one.setting.step)
            for one, by in zip(self.free, best.steps, strict=True)
            if by
        )
        reached = best.good
        in_the_way = () if reached else tuple(self._in_the_way())
        size = round(sum(abs(change.steps) for change in changes), 3)
        worse = tuple(self._worse())
        sentence = _sentence(self.wanted, self.before, best.made, changes, reached, in_the_way)
        return Aimed(best.made.recipe, best.made, self.before, changes, reached, size, worse, in_the_way, sentence)

    def _in_the_way(self) -> Iterator[InTheWay]:
        """Locks, guards and ranges without which the slopes would reach further."""
        best = self.best
        self.slopes, self.bias = self._slopes(best), np.zeros(len(self.bounds))
        said = False
        if self.locked.any() and (free := self._further(locks=False)) is not None:
            which = [self.free[k].setting for k in np.flatnonzero(self.locked & (free != best.steps))]
            names = listed(one.title for one in which)
            if which:
                said = True
                yield InTheWay(say("The lock on {names} is in the way.", names=names), tuple(one.path for one in which))
        for guard in self._guards_in_the_way():
            said = True
            yield InTheWay(say("In the way: {why}.", why=guard.why))
        if (free := self._further(ranges=False)) is not None:
            beyond = [
                one for one, by in zip(self.free, free, strict=True) if not one.least <= by <= one.most and one.usual
            ]
            if beyond:
                said = True
                names = "; ".join(headed(one.setting.title, one.why) for one in beyond)
                yield InTheWay(
                    say("Ranges are in the way ({names}).", names=names), tuple(one.setting.path for one in beyond)
                )
        if any(one.key in OF_THE_MILK for one in self.wanted):
            said = True
            yield InTheWay(say("That hangs on the milk: standardise its protein to fat."))
        if not said:
            yield InTheWay(say("What may move in this recipe does not reach so far."))

    def _guards_in_the_way(self) -> list[Guard]:
        """Firm guards without which more would be reached: those on one outcome that do it alone, else all at fault."""
        firm = [one.guard for one in self.bounds if one.guard is not None and one.guard.firm]
        free = self._further(without=firm)
        if free is None:
            return []
        there = self.slopes @ (free - self.best.steps)
        broken = [
            one.guard
            for k, one in enumerate(self.bounds)
            if one.guard in firm and one.past(self.best.here[one.key] + there[k]) > INSIDE
        ]
        alone = [
            one
            for one in broken
            if one is not None
            and self._further(without=[each for each in firm if _same(each.key) == _same(one.key)]) is not None
        ]
        return alone or [one for one in broken if one is not None]

    def _further(
        self, *, locks: bool = True, ranges: bool = True, without: Collection[Guard] = ()
    ) -> NDArray[np.int64] | None:
        """Steps that by the slopes reach further than the best does, with something given up; None if they do not."""
        steps = self._solved(self.best, FIRST_STRETCH, locks=locks, ranges=ranges, without=without)
        here, there = self._short(self._solved(self.best, FIRST_STRETCH)), self._short(steps)
        return steps if here is not None and there is not None and there < 0.9 * here - 0.2 else None

    def _short(self, steps: NDArray[np.int64] | None) -> float | None:
        """How far the wanted would be missed, by the slopes at the best place."""
        if steps is None:
            return None
        change = self.slopes @ (steps - self.best.steps)
        return sum(
            one.past(self.best.here[one.key] + change[k]) for k, one in enumerate(self.bounds) if one.guard is None
        )

    def _worse(self) -> Iterator[str]:
        """Outcomes that go the wrong way, verdict rows that fall, a longer day, and new cautions."""
        after, before = self.best.made, self.before
        keys = {one.key for one in self.wanted}
        for key, quantity in QUANTITIES.items():
            if not quantity.better or key in keys or not {key} <= before.outcomes.keys() & after.outcomes.keys():
                continue
            was, now = before.outcomes[key].value, after.outcomes[key].value
            wrong = was - now if quantity.better == "more" else now - was
            if wrong >= quantity.step:
                yield f"{quantity.label} {_shown(key, was)} → {_shown(key, now)}"
        later = after.outcomes["finish_min"].value - before.outcomes["finish_min"].value
        if later >= 15.0 and "finish_min" not in keys:
            yield say("the make takes {later} longer", later=show(later, "duration"))
        yield from self._fallen()
        known = {(one.code, one.stage) for one in before.cautions}
        for caution in after.cautions:
            if (caution.code, caution.stage) not in known:
                yield caution.text

    def _fallen(self) -> Iterator[str]:
        if self.style is None:
            return
        rank = {MET: 0, NEAR: 1, NOT_MET: 2}
        was = {(row.section, row.rules, row.quantity): row for row in check(self.before, self.style).rows}
        for row in check(self.best.made, self.style).rows:
            old = was.get((row.section, row.rules, row.quantity))
            if (
                old is not None
                and rank[row.state] > rank[old.state]
                and not (row.section == LIMIT and row.state == NEAR)
            ):
                yield headed(row.label, row.sentence)


def _same(key: str) -> str:
    """Outcomes that say the same: moisture and dry matter."""
    return "moisture_pct" if key == "dry_matter_pct" else key


def _shown(key: str, value: float) -> str:
    quantity = QUANTITIES[key]
    if quantity.kind == "duration":
        return show(value, "duration")
    return f"{number(value, f'.{quantity.decimals}f')} {quantity.unit}".rstrip()


def _sentence(
    wanted: Sequence[Wanted], before: Forecast, after: Forecast, changes: Sequence[Change], reached: bool,
    in_the_way: Sequence[InTheWay],
) -> str:  # fmt: skip
    figures = ", ".join(
        f"{QUANTITIES[one.key].label} {_shown(one.key, before.outcomes[one.key].value)} → "
        f"{_shown(one.key, after.outcomes[one.key].value)}"
        for one in wanted
    )
    how = "; ".join(change.sentence() for change in changes) or say("nothing changed")
    if reached and not changes:
        return say("All that is wanted is so already: {figures}.", figures=figures)
    if reached:
        return headed(figures, f"{how}.")
    return " ".join(
        [
            say("Not reached; the nearest is {figures}: {how}.", figures=figures, how=how),
            *(one.sentence for one in in_the_way),
        ]
    )


def outcome_changes(aimed: Aimed) -> Mapping[str, tuple[float, float]]:
    """Every outcome before and after."""
    before, after = aimed.before.outcomes, aimed.made.outcomes
    return {key: (before[key].value, after[key].value) for key in before if key in after}
