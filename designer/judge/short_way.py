"""A way to a style made short: of all the changes that meet it, the few that bring it nearest.

Those go whose going leaves least outside, a few at a time, and each try is a forecast. What stays outside then is told
apart: what only more changes would bring in, and what none of them does.
"""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterable, Mapping, Sequence
from dataclasses import dataclass

from designer.forecast import Forecast, forecast
from designer.judge.aim import Change
from designer.judge.check import check
from designer.judge.limits import NEAR_ELSE, NEAR_POINTS
from designer.judge.meet import Met, summed_up
from designer.judge.movable import moved
from designer.judge.verdict import AGE, CURVE, LIMIT, MAKE, MILK, NOT_MET, Row
from designer.language import headed
from designer.recipe.document import Recipe
from designer.recipe.error import RecipeError
from styles.house import GATE_NEAR
from styles.reader import Style
from styles.settings import SETTINGS

MOST, LEAST, FOR_LIMITS = 5, 2, 2
"""Changes a way has at most, stages among them; settings it may have whatever the stages; and so many more of these
where a limit hangs on them."""
BINDING = 10.0
"""What a limit missed by one near-width counts for, where a usual range counts one."""
FAR = 12.0
"""No usual range counts for more."""
WORTH = 0.3
"""What a change must bring, so that it is worth a line."""


Likeness = Callable[[Forecast], float]
"""How far a forecast lies from what a style is known for, in steps."""


@dataclass(frozen=True, slots=True)
class Short:
    """A way made short: `met` as it is then, `left` what only more changes would bring in, `out` what none does."""

    met: Met
    left: tuple[str, ...]
    out: tuple[str, ...]


def shortened(found: Met, style: Style, stages: int, new: Collection[str] = (), like: Likeness | None = None) -> Short:
    """The few changes of a way that bring it nearest; `stages` are changed already, `new` are the ids of new ones.

    Settings of a new stage are part of it and stay. `like` adds what a style is known for to what counts.
    """
    weigh = _Weighing(style, like)
    start = found.before.recipe
    rest: list[Change] = []
    for change in found.changes:
        if change.setting.where in new:
            start = moved(start, change.setting, change.to)
        else:
            rest.append(change)
    room = max(MOST - stages, LEAST)
    recipe, made = _few(start, rest, room, weigh)
    if found.reached and not _reached(made, style):
        recipe, made = _few(start, rest, room + FOR_LIMITS, weigh)
    met = summed_up(found.before, recipe, made, style)
    full, short = _outside(found.made, style), _outside(made, style)
    left = tuple(said for key, said in short.items() if key not in full)
    return Short(met, left, tuple(said for key, said in short.items() if key in full))


def _few(start: Recipe, changes: Sequence[Change], room: int, weigh: Likeness) -> tuple[Recipe, Forecast]:
    """The recipe with so many of the changes that leave the least outside, and none that is not worth it."""
    kept = list(changes)
    while True:
        recipe, made = _made(start, kept)
        here = weigh(made)
        harm = [(weigh(_made(start, [one for one in kept if one is not each])[1]) - here, at) for at, each in
                enumerate(kept)]  # fmt: skip
        harm.sort()
        over = len(kept) - room
        count = max(1, min(over, len(kept) // 3)) if over > 0 else int(bool(harm) and harm[0][0] < WORTH)
        if not count:
            return recipe, made
        gone = {at for _, at in harm[:count]}
        kept = [one for at, one in enumerate(kept) if at not in gone]


def _made(start: Recipe, changes: Iterable[Change]) -> tuple[Recipe, Forecast]:
    """The recipe with these changes, and its forecast; one that can't be by itself is left out."""
    recipe = start
    for change in changes:
        try:
            recipe = moved(recipe, change.setting, change.to)
        except RecipeError:  # bound to another figure of its stage
            continue
    return recipe, forecast(recipe)


@dataclass(frozen=True, slots=True)
class _Weighing:
    """How much is left outside, limits first."""

    style: Style
    like: Likeness | None

    def __call__(self, made: Forecast) -> float:
        rows = check(made, self.style).section(LIMIT, MILK, AGE, MAKE, CURVE)
        return sum(map(_steps, rows)) + (self.like(made) if self.like is not None else 0.0)


def _steps(row: Row) -> float:
    if row.margin is None or row.margin >= 0.0:
        return 0.0
    away = -row.margin / _near(row)
    return BINDING * away if row.section == LIMIT else min(away, FAR)


def _near(row: Row) -> float:
    key, _, _ = row.quantity.partition("@")
    if row.section == CURVE:
        return GATE_NEAR[key]
    return SETTINGS[key].near if key in SETTINGS else NEAR_POINTS.get(key, NEAR_ELSE)


def _reached(made: Forecast, style: Style) -> bool:
    """Whether every limit is kept."""
    return all(row.state != NOT_MET for row in check(made, style).limits)


def _outside(made: Forecast, style: Style) -> Mapping[tuple[str, str, str], str]:
    """Limits and usual ranges not kept, by what they speak of, in words."""
    rows = check(made, style).section(LIMIT, MILK, AGE, MAKE, CURVE)
    return {
        (row.section, row.rules, row.quantity): headed(row.label, row.sentence)
        for row in rows
        if row.margin is not None and row.margin < 0.0
    }
