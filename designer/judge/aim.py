"""Aim: the smallest natural change of a recipe that brings its outcomes where they are wanted.

Minimises the sum of |change| / step over settings that may move (see `freedom`), in whole steps (see `search`); here it
is asked, and what was found is put in words.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping, Sequence
from dataclasses import dataclass

import numpy as np

from designer.forecast import Forecast, forecast
from designer.judge.check import check
from designer.judge.freedom import Guard, style_of, unit_of
from designer.judge.movable import Movable
from designer.judge.search import FIRM, INSIDE, Search, Wanted, name_of
from designer.judge.verdict import LIMIT, NEAR, RANK
from designer.language import headed, joined, listed, number, say
from designer.quantities import QUANTITIES
from designer.recipe.document import Recipe
from designer.units import System, show
from styles.reader import Style
from styles.reader import style as read_style

__all__ = ["AimError", "Aimed", "Change", "InTheWay", "Wanted", "aim", "at", "outcome_changes"]
OF_THE_MILK = frozenset(("fdm_pct", "fat_pct", "protein_pct"))


class AimError(ValueError):
    """What is wanted can't be asked for; one sentence for the maker."""


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
    """What aim found. `recipe` is the changed recipe (or the nearest reachable), `made` its forecast; `branch` the lane
    whose outcomes were wanted.

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
    branch: str | None = None

    @property
    def lane(self) -> Forecast:
        """The forecast of the lane that was aimed with."""
        return self.made.lane(self.branch)

    @property
    def lane_before(self) -> Forecast:
        """The same before."""
        return self.before.lane(self.branch)


def aim(
    recipe: Recipe,
    wanted: Sequence[Wanted],
    *,
    branch: str | None = None,
    locks: Collection[tuple[str, str] | str] = (),
    style: Style | str | None = None,
) -> Aimed:
    """The smallest change that reaches all that is wanted of the main make or a branch, or the nearest reachable and
    what is in the way.

    `locks` are paths of settings, or ids of stages and doses of which nothing may move. `style` (by default that of
    the lane, where it names one) gives the ranges. Raises AimError for an outcome this make has not, RecipeError,
    KeyError for a branch that is not there.
    """
    of = style_of(recipe, branch) if style is None else read_style(style) if isinstance(style, str) else style
    before = forecast(recipe)
    here = before.lane(branch).outcomes
    for one in wanted:
        if _known(one.key) not in here:
            raise AimError(say("This make has no “{label}” to aim at.", label=QUANTITIES[one.key].label))
        if one.low is not None and one.high is not None and one.low > one.high:
            raise AimError(say("{label}: the range wanted runs backwards.", label=QUANTITIES[one.key].label))
    search = Search(before, wanted, branch, locks, of)
    search.search()
    return _Found(search, tuple(wanted)).said()


class _Found:
    """What a search found, in words."""

    def __init__(self, search: Search, wanted: tuple[Wanted, ...]) -> None:
        self.search, self.wanted = search, wanted
        self.best, self.before, self.style = search.best, search.before, search.style

    def said(self) -> Aimed:
        """All of it."""
        best, lane = self.best, self.search.branch
        changes = tuple(
            Change(one.setting, one.at(int(by)), (one.at(int(by)) - one.setting.value) / one.setting.step)
            for one, by in zip(self.search.free, best.steps, strict=True)
            if by
        )
        reached = best.good
        in_the_way = () if reached else tuple(self._in_the_way())
        size = round(sum(abs(change.steps) for change in changes), 3)
        worse = tuple(self._worse())
        was, now = self.before.lane(lane), best.made.lane(lane)
        sentence = _sentence(self.wanted, was, now, changes, reached, in_the_way)
        return Aimed(
            best.made.recipe, best.made, self.before, changes, reached, size, worse, in_the_way, sentence, lane
        )

    def _in_the_way(self) -> Iterator[InTheWay]:
        """Locks, guards and ranges without which the slopes would reach further."""
        search, best = self.search, self.best
        search.look_again()
        said = False
        if search.locked.any() and (free := search.further(locks=False)) is not None:
            which = [search.free[k].setting for k in np.flatnonzero(search.locked & (free != best.steps))]
            names = listed(one.title for one in which)
            if which:
                said = True
                yield InTheWay(say("The lock on {names} is in the way.", names=names), tuple(one.path for one in which))
        for guard in self._guards_in_the_way():
            said = True
            yield InTheWay(say("In the way: {why}.", why=guard.why))
        if (free := search.further(ranges=False)) is not None:
            beyond = [
                one for one, by in zip(search.free, free, strict=True) if not one.least <= by <= one.most and one.usual
            ]
            if beyond:
                said = True
                names = joined(headed(one.setting.title, one.why) for one in beyond)
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
        search = self.search
        held = [one for one in search.bounds if one.cost == FIRM]
        free = search.further(without=held)
        if free is None:
            return []
        there = search.slopes @ (free - self.best.steps)
        broken = [
            one
            for k, one in enumerate(search.bounds)
            if one in held and one.past((self.best.at(one) or 0.0) + there[k]) > INSIDE
        ]
        alone = [
            one
            for one in broken
            if search.further(
                without=[each for each in held if each.lane == one.lane and _same(each.key) == _same(one.key)]
            )
            is not None
        ]
        return [one.guard for one in alone or broken if one.guard is not None]

    def _worse(self) -> Iterator[str]:
        """Outcomes that go the wrong way, verdict rows that fall, a longer day, and new cautions."""
        lane = self.search.branch
        after, before = self.best.made.lane(lane), self.before.lane(lane)
        keys = {one.key for one in self.wanted}
        for key, quantity in QUANTITIES.items():
            if not quantity.better or key in keys or not {key} <= before.outcomes.keys() & after.outcomes.keys():
                continue
            was, now = before.outcomes[key].value, after.outcomes[key].value
            wrong = was - now if quantity.better == "more" else now - was
            if wrong >= quantity.step:
                first = number(was, f".{quantity.decimals}f") if quantity.kind != "duration" else _shown(key, was)
                yield f"{quantity.label} {first} → {_shown(key, now)}"
        later = after.outcomes["finish_min"].value - before.outcomes["finish_min"].value
        if later >= 15.0 and "finish_min" not in keys:
            yield say("the make takes {later} longer", later=show(later, "duration"))
        for each in self.before.lanes:
            yield from self._worse_in(each, self.best.made.lane(each.branch_id))

    def _worse_in(self, was: Forecast, now: Forecast) -> Iterator[str]:
        """Verdict rows of a lane that fall, and its new cautions; of another lane with its name."""
        own = was.branch_id == self.search.branch
        style = self.style if own else style_of(was.recipe, was.branch_id)
        known = {(one.code, one.stage) for one in was.cautions}
        fresh = [one.text for one in now.cautions if (one.code, one.stage) not in known]
        for text in (*_fallen(was, now, style), *fresh):
            yield text if own else headed(name_of(was), text)


def _fallen(was: Forecast, now: Forecast, style: Style | None) -> Iterator[str]:
    if style is None:
        return
    before = {(row.section, row.rules, row.quantity): row for row in check(was, style).rows}
    for row in check(now, style).rows:
        old = before.get((row.section, row.rules, row.quantity))
        if old is not None and RANK[row.state] > RANK[old.state] and not (row.section == LIMIT and row.state == NEAR):
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
    how = joined(change.sentence() for change in changes) or say("nothing changed")
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
    before, after = aimed.lane_before.outcomes, aimed.lane.outcomes
    return {key: (before[key].value, after[key].value) for key in before if key in after}
