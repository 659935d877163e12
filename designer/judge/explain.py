"""Why an outcome is what it is: a short chain from the forecast itself against the middle of the style.

"1.8 points drier than the middle of the style: cut at 6 mm -1.1, cook to 39 °C -0.4, ..." Each link is the part of one
setting in the way from the style's usual make to this one (see `attribution`); what is left is the milk, the doses and
all the style does not speak of. The links and the rest add up to the whole.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass

from designer.forecast import Forecast, forecast
from designer.judge import attribution
from designer.judge.behind import Law, laws_behind
from designer.judge.movable import moved
from designer.judge.windows import Ranged, ranged
from designer.language import joined, mark, number, points, say, word
from designer.quantities import quantity
from designer.recipe.document import Recipe
from designer.recipe.error import RecipeError
from styles.reader import Style
from styles.reader import style as read_style

LEAST_SHARE = 0.03
"""A link smaller than this part of the largest goes into the rest."""


@dataclass(frozen=True, slots=True)
class Link:
    """One setting's part: what it is here and at the middle of the style, and what that is worth.

    `laws` are what it rests on; `outside` are sentences where that was used outside what it is known for.
    """

    ranged: Ranged
    part: float
    text: str
    laws: tuple[Law, ...]
    outside: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Explanation:
    """An outcome against the style's middle: `value - middle = sum of links + rest`."""

    key: str
    value: float
    middle: float
    source: str
    links: tuple[Link, ...]
    rest: float
    head: str
    """How far it is from the middle, in words."""
    sentence: str


def middle_of(style: Style, key: str) -> tuple[float, str] | None:
    """The middle of a style for an outcome and where it is from: published compositions, else its usual window."""
    published = [(one.values[key], one.source) for one in style.typical if key in one.values]
    if published:
        sources = sorted({source for _, source in published})
        return sum(value for value, _ in published) / len(published), joined(sources)
    for window in style.windows_of(key):
        if window.low is not None and window.high is not None:
            return 0.5 * (window.low + window.high), window.source
    return None


def explain(
    made: Forecast, key: str, of: Style | str, *, measure: Callable[[Recipe], Mapping[str, float]] | None = None
) -> Explanation | None:
    """The chain for one outcome of a lane; None where the style has no middle for it or the make has not this outcome.

    `measure` gives the outcomes of a recipe in that lane (by default a forecast without bands). About 60 forecasts for
    ten settings.
    """
    style = read_style(of) if isinstance(of, str) else of
    found = middle_of(style, key)
    if found is None or key not in made.outcomes:
        return None
    middle, source = found
    measure = measure or (lambda recipe: outcomes_of(recipe, made.branch_id))
    value = made.outcomes[key].value
    away = [
        one for one in ranged(made.recipe, style, made.branch_id) if not one.is_middle and _can_move(made.recipe, one)
    ]
    usual = made.recipe
    for one in away:
        usual = moved(usual, one.setting, one.middle)
    steps = [_to_own(one) for one in away]
    shares = attribution.parts(usual, steps, measure) if away else ()
    worth = [(one, share.get(key, 0.0)) for one, share in zip(away, shares, strict=True)]
    largest = max((abs(part) for _, part in worth), default=0.0)
    kept = sorted((pair for pair in worth if abs(pair[1]) > LEAST_SHARE * largest), key=lambda pair: -abs(pair[1]))
    links = tuple(_link(made, one, part, key) for one, part in kept)
    rest = value - middle - sum(link.part for link in links)
    head = _head(key, value - middle)
    return Explanation(key, value, middle, source, links, rest, head, _sentence(key, head, links, rest))


def outcomes_of(recipe: Recipe, branch: str | None) -> Mapping[str, float]:
    """Outcomes of one lane, forecast in full."""
    return {key: outcome.value for key, outcome in forecast(recipe).lane(branch).outcomes.items()}


def _to_own(one: Ranged) -> attribution.Change[Recipe]:
    return lambda recipe: moved(recipe, one.setting, one.setting.value)


def _can_move(recipe: Recipe, one: Ranged) -> bool:
    try:
        moved(recipe, one.setting, one.middle)
    except RecipeError:
        return False
    return True


def _link(made: Forecast, one: Ranged, part: float, key: str) -> Link:
    setting = one.setting
    kind = made.recipe.stage(setting.where).kind if setting.of == "stage" else ""
    outside = tuple(each.text for each in made.remarks if each.concerns(key) and kind in each.stages)
    return Link(one, part, _link_text(one, part, key), laws_behind(made.recipe, setting), outside)


def _signed(part: float, decimals: int) -> str:
    sign = "+" if part >= 0.0 else "−"
    return f"{sign}{number(abs(part), f'.{decimals}f')}"


def _decimals(key: str) -> int:
    return max(1, quantity(key).decimals)


def _link_text(one: Ranged, part: float, key: str) -> str:
    setting = one.setting
    there, usual = setting.shown(), setting.shown(one.middle)
    return say(
        "{title} {there} instead of {usual} {signed}",
        title=setting.title,
        there=there,
        usual=usual,
        signed=_signed(part, _decimals(key)),
    )


_MORE_LESS = {
    "moisture_pct": (mark("moister"), mark("drier")),
    "mnfs_pct": (mark("moister"), mark("drier")),
    "ph_24h": (mark("less acid"), mark("more acid")),
    "salt_pct": (mark("saltier"), mark("less salty")),
    "salt_in_moisture_pct": (mark("saltier"), mark("less salty")),
}


def _head(key: str, away: float) -> str:
    decimals = _decimals(key)
    unit = "" if key.startswith("ph") else f" {points(away)}" if key.endswith("_pct") else f" {quantity(key).unit}"
    more, less = _MORE_LESS.get(key, (mark("more"), mark("less")))
    if abs(away) < 0.5 * 10.0**-decimals:
        return say("At the middle of the style")
    return say(
        "{away:.{decimals}f}{unit} {more} than the middle of the style",
        away=abs(away),
        decimals=decimals,
        unit=unit,
        more=word(more if away > 0.0 else less),
    )


def _sentence(key: str, head: str, links: tuple[Link, ...], rest: float) -> str:
    decimals = _decimals(key)
    tail = [link.text for link in links]
    if abs(rest) >= 0.5 * 10.0**-decimals or not links:
        tail.append(say("milk, doses and the rest {signed}", signed=_signed(rest, decimals)))
    return say("{head}: {parts}.", head=head, parts=", ".join(tail))
