"""Meeting a style: a recipe brought inside its limits and usual ranges.

Settings outside their usual range come back to its nearest end, then aim does the rest. What hangs on the milk is not
done unasked: it is offered as skim or cream.
"""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterator
from dataclasses import dataclass, replace

from designer.forecast import Forecast, forecast
from designer.judge.aim import Change, InTheWay, Wanted, aim
from designer.judge.check import check
from designer.judge.freedom import acid_guards
from designer.judge.limits import NEAR_ELSE, NEAR_POINTS
from designer.judge.movable import movables, moved
from designer.judge.verdict import LIMIT, MET, NOT_MET
from designer.judge.windows import ranged
from designer.judge.words import lowered
from designer.language import headed, joined, say
from designer.quantities import QUANTITIES
from designer.recipe.document import Recipe
from designer.recipe.error import RecipeError
from designer.recipe.milk import blend
from designer.recipe.standardise import Offer, Target, offers
from styles.reader import Style
from styles.reader import style as read_style

_OF_THE_MILK = ("fdm_pct", "fat_pct")
AT_ALL, AT_LIMITS = "aim", "limits"
"""The steps it takes: aimed at limits and ranges; where that does not bring it inside, at the limits alone."""


@dataclass(frozen=True, slots=True)
class Met:
    """A recipe brought to a style: every figure changed, whether it meets all its limits, and what does not.

    `milk` are ways to standardise where fat in dry matter misses; `missed` names limits and ranges still not met.
    """

    recipe: Recipe
    made: Forecast
    before: Forecast
    changes: tuple[Change, ...]
    reached: bool
    missed: tuple[str, ...]
    worse: tuple[str, ...]
    in_the_way: tuple[InTheWay, ...]
    milk: tuple[Offer, ...]
    notes: tuple[str, ...] = ()

    @property
    def sentence(self) -> str:
        """What was done and what is left, in words."""
        how = joined(change.sentence() for change in self.changes) or say("nothing changed")
        if self.reached and not self.missed:
            return say("Forecast inside the limits and usual ranges: {how}.", how=how)
        head = say("Forecast inside the limits") if self.reached else say("Not inside the limits")
        return say("{head}: {how}. Still outside: {missed}.", head=head, how=how, missed=joined(self.missed))


def meet(
    recipe: Recipe,
    style: Style | str,
    *,
    locks: Collection[tuple[str, str] | str] = (),
    begins: Callable[[str], object] = lambda step: None,
) -> Met:
    """The recipe with the least change that meets the limits of a style, and its usual ranges as far as they go.

    `begins(step)` is told before each step, AT_ALL or AT_LIMITS; what it raises ends the work. Raises RecipeError,
    StyleError.
    """
    of = read_style(style) if isinstance(style, str) else style
    before = forecast(recipe)
    start = _brought_back(recipe, of, locks)
    begins(AT_ALL)
    inside = forecast(start)
    limits, usual = _limits(inside, of), _usual(inside, of)
    found = aim(start, [*limits, *usual], locks=locks, style=of)
    if not found.reached and limits:
        begins(AT_LIMITS)
        strict = aim(start, limits, locks=locks, style=of)
        if not _outside(found.made, of) or _outside(strict.made, of):
            strict = found
        found = strict
    elif found.reached and _outside(found.made, of):  # a limit that hangs on another outcome has moved with it
        found = aim(found.recipe, _limits(found.made, of), locks=locks, style=of)
    said = summed_up(before, found.recipe, found.made, of)
    return replace(said, worse=found.worse, in_the_way=() if said.reached else found.in_the_way)


def _brought_back(recipe: Recipe, style: Style, locks: Collection[tuple[str, str] | str]) -> Recipe:
    """Settings outside their usual range moved to its nearest end."""
    for one in ranged(recipe, style):
        if one.setting.path in locks or one.setting.where in locks or one.low <= one.setting.value <= one.high:
            continue
        to = one.low if one.setting.value < one.low else one.high
        try:
            recipe = moved(recipe, one.setting, to)
        except RecipeError:  # bound to another figure of its stage; aim may still find a way
            continue
    return recipe


def _limits(made: Forecast, style: Style) -> list[Wanted]:
    """Acid in time, and limits of law and standards, a little inside, on what the make decides."""
    out = [Wanted(one.key, one.low, one.high) for one in acid_guards(made) if one.key in made.outcomes]
    for row in check(made, style).section(LIMIT):
        if row.quantity in made.outcomes and row.quantity not in _OF_THE_MILK:
            inside = NEAR_POINTS.get(row.quantity, NEAR_ELSE)
            low = None if row.low is None else row.low + inside
            high = None if row.high is None else row.high - inside
            if low is not None and high is not None and low > high:
                low = high = 0.5 * (row.low + row.high) if row.low is not None and row.high is not None else None
            out.append(Wanted(row.quantity, low, high))
    return out


def _usual(made: Forecast, style: Style) -> list[Wanted]:
    """Gates and usual ranges on outcomes, as wanted."""
    found = []
    for key in dict.fromkeys(one.key for one in style.windows if one.key in made.outcomes and one.key in QUANTITIES):
        windows = [one for one in style.windows_of(key) if one.low is not None or one.high is not None]
        if windows and key not in _OF_THE_MILK:
            lows, highs = [one.low for one in windows], [one.high for one in windows]
            low = None if None in lows else min(one for one in lows if one is not None)
            high = None if None in highs else max(one for one in highs if one is not None)
            found.append(Wanted(key, low, high))
    return found


def _outside(made: Forecast, style: Style) -> list[str]:
    """Limits not met, in words."""
    rows = check(made, style).limits
    return [headed(row.rule, f"{lowered(row.label)}, {row.sentence}") for row in rows if row.state == NOT_MET]


def summed_up(before: Forecast, recipe: Recipe, made: Forecast, style: Style) -> Met:
    """What a changed recipe is to a style, beside the one it was: changes, what is met, what not, and the milk."""
    verdict = check(made, style)
    limits = _outside(made, style)
    ranges = [headed(row.label, row.sentence) for row in verdict.section("make", "curve") if row.state != MET]
    fdm = next((row for row in verdict.section(LIMIT) if row.quantity == "fdm_pct" and row.state == NOT_MET), None)
    milk: tuple[Offer, ...] = ()
    if fdm is not None:
        ends = [end for end in (fdm.low, fdm.high) if end is not None]
        wanted = ends[0] + NEAR_ELSE if fdm.low is not None else ends[0] - NEAR_ELSE
        milk = offers(recipe, ratio_for_fdm(made, wanted))
    changes = tuple(_changes(before.recipe, recipe))
    return Met(recipe, made, before, changes, not limits, (*limits, *ranges), (), (), milk)


def _changes(before: Recipe, after: Recipe) -> Iterator[Change]:
    now = {one.path: one for one in movables(after)}
    for one in movables(before):
        other = now.get(one.path)
        if other is not None and abs(other.value - one.value) > 1e-9 and one.of != "milk":
            yield Change(one, other.value, (other.value - one.value) / one.step)


def ratio_for_fdm(made: Forecast, fdm_pct: float) -> Target:
    """Protein to fat of the milk that would bring fat in dry matter to a value, all else equal.

    Dry matter beside fat goes with the protein, so (1 / FDM - 1) goes with the ratio.
    """
    milk = blend(made.recipe)
    here = 100.0 / made.outcomes["fdm_pct"].value - 1.0
    wanted = milk.protein / milk.fat * (100.0 / fdm_pct - 1.0) / here
    return Target.within(wanted)
