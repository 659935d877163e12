"""What would have to change for this recipe to be a ...? Styles ranked by how far they lie, and the way to each.

How far: the figures of the cheese against the style's published compositions and limits, the stages the style asks for
and the recipe has not (or the other way round), rind, and whose milk. The way: those stages in or out, then the least
change of settings that meets the style (`meet`), made short (`short_way`).
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from functools import partial

from designer.forecast import Forecast, forecast
from designer.judge.aim import Change
from designer.judge.meet import Met, meet
from designer.judge.moments import moments, settings
from designer.judge.short_way import shortened
from designer.judge.style_stages import SETS, between, with_stages
from designer.judge.words import label_of
from designer.language import either, joined, number, say, word
from designer.recipe.document import Recipe
from designer.recipe.edit import edit_coat
from designer.recipe.field import choice
from designer.recipe.stages.kinds import KINDS
from styles.reader import Style, house_keys, styles
from styles.reader import style as read_style
from styles.settings import SETTINGS

NEAR: Mapping[str, float] = {"moisture_pct": 1.5, "fdm_pct": 2.0, "salt_in_moisture_pct": 0.6, "ph_24h": 0.1}
"""Figures a style is known by, and how far outside counts as one step of distance."""
FAR = 8.0
"""No single figure counts for more steps than this."""
SHAPING = ("cook_c", "cut_mm", "wash_pct", "ph_drain")
SETTING, UNKNOWN = 0.2, 0.4
"""What a setting one near-width outside counts for, and a figure nothing is known of in the style, in steps."""
STAGE, RIND, MILK = 2.0, 1.5, 3.0
"""What a stage too many or too few, another rind and another animal count for, in steps."""
_COATS: Mapping[str, str] = {"white mould": "bloomy", "smeared": "washed", "washed rind": "washed"}


@dataclass(frozen=True, slots=True)
class Gap:
    """One figure against what the style is known for; `steps` is how far outside it lies."""

    key: str
    value: float
    low: float | None
    high: float | None
    steps: float

    @property
    def sentence(self) -> str:
        """ "Moisture 41.2 %, there 36 to 39.5 %"."""
        label, unit, decimals = _label(self.key)
        ends = [number(end, f".{decimals}f") for end in (self.low, self.high) if end is not None]
        return say(
            "{label} {value:.{decimals}f}, there {ends} {unit}",
            label=label,
            value=self.value,
            decimals=decimals,
            ends=say(" to ").join(ends),
            unit=unit,
        ).rstrip()


def _label(key: str) -> tuple[str, str, int]:
    if key in SETTINGS:
        return SETTINGS[key].label, SETTINGS[key].unit, 2 if key.startswith("ph_") else 0
    return label_of(key)


@dataclass(frozen=True, slots=True)
class Near:
    """A style and how far it lies: `missing` and `extra` are stage kinds, `rind` the coat it would need ("" if none),
    `milk` False where the style is not made of this milk."""

    style: Style
    distance: float
    gaps: tuple[Gap, ...]
    missing: tuple[str, ...]
    extra: tuple[str, ...]
    rind: str
    milk: bool

    @property
    def sentence(self) -> str:
        """What lies between, in words."""
        said = [say("with {stage}", stage=word(KINDS[kind].LABEL, "stage")) for kind in self.missing]
        said += [say("without {stage}", stage=word(KINDS[kind].LABEL, "stage")) for kind in self.extra]
        said += [say("a {rind} rind", rind=choice(self.rind))] if self.rind else []
        said += [] if self.milk else [say("another animal's milk")]
        said += [gap.sentence for gap in self.gaps if gap.steps > 0.0]
        return joined(said) or say("it is one by all that is known of it here")


@dataclass(frozen=True, slots=True)
class Way:
    """How to get there: stages in and out in words, then the settings; `size` counts both in natural steps.

    `met` is None where the two are different kinds of cheese (another way of setting), and `sentence` says so. A way
    is short: `left` is what only more changes would bring in, `out` what no change of settings does.
    """

    near: Near
    stages: tuple[str, ...]
    changes: tuple[Change, ...]
    met: Met | None
    size: float
    sentence: str
    left: tuple[str, ...] = ()
    out: tuple[str, ...] = ()

    @property
    def recipe(self) -> Recipe | None:
        """The recipe changed so; None where there is no way."""
        return None if self.met is None else self.met.recipe


def nearest(made: Forecast, of: Iterable[Style] | None = None) -> tuple[Near, ...]:
    """Styles by how far they lie from a forecast, the nearest first; by default all shipped and house styles."""
    every = (*styles(), *(read_style(key) for key in house_keys())) if of is None else of
    found = settings(made, moments(made))
    return tuple(sorted((_near(made, one, found) for one in every), key=lambda near: (near.distance, near.style.name)))


def ways(made: Forecast, count: int = 3, of: Iterable[Style] | None = None) -> tuple[Way, ...]:
    """The nearest styles with the way to each; each is a search (see `meet`)."""
    return tuple(way_to(made.recipe, near) for near in nearest(made, of)[:count])


def way_to(recipe: Recipe, near: Near) -> Way:
    """The smallest change found that makes of the recipe a cheese of that style. Raises RecipeError."""
    other_set = [kind for kind in (*near.missing, *near.extra) if kind in SETS]
    if other_set:
        words = say(
            "{name} sets another way ({sentence}): that is another recipe, not a change of this one.",
            name=near.style.title,
            sentence=near.sentence,
        )
        return Way(near, (), (), None, float("inf"), words)
    changed, said, new = _restaged(recipe, near)
    found = meet(changed, near.style)
    short = shortened(found, near.style, len(said), new.values(), like=partial(_unlike, near.style))
    met = short.met
    stages = tuple(_with_settings(one, new.get(one, ""), met.changes) for one in said)
    changes = tuple(change for change in met.changes if change.setting.where not in new.values())
    size = STAGE * len(said) + sum(abs(change.steps) for change in changes)
    how = joined([*stages, *(change.sentence() for change in changes)]) or say("nothing")
    head = say("inside its limits") if met.reached else say("nearer, but not inside its limits")
    tail = "".join(say(" Milk: {sentence}", sentence=offer.sentence) for offer in met.milk[:1])
    if not near.milk:
        whose = either(choice(one) for one in near.style.milk)
        tail += say(" {name} is made of {milk} milk.", name=near.style.title, milk=whose)
    sentence = say("{name}, {head}, to change: {how}.{tail}", name=near.style.title, head=head, how=how, tail=tail)
    return Way(near, stages, changes, met, size, sentence, short.left, short.out)


def _with_settings(said: str, where: str, changes: Iterable[Change]) -> str:
    """A stage that comes in, with what of it is not as usual: "brine after press (length 30 h)"."""
    own = [
        f"{one.setting.label} {one.setting.shown(one.to)}" for one in changes if where and one.setting.where == where
    ]
    return f"{said} ({', '.join(own)})" if where and own else said


def _unlike(style: Style, made: Forecast) -> float:
    """How far the figures of a forecast lie from what a style is known for, in steps."""
    return sum(gap.steps for gap in _gaps(made, style, {}))


# --- How far ---------------------------------------------------------------------------------------------------------


def _near(made: Forecast, style: Style, found: Mapping[str, float]) -> Near:
    gaps = tuple(_gaps(made, style, found))
    missing, extra = between(made.recipe, style)
    wanted = next((coat for words, coat in _COATS.items() if words in style.family), "")
    own = made.recipe.coat.kind if made.recipe.coat is not None else ""
    rind = wanted if wanted != own and (wanted or own in _COATS.values()) else ""
    bare = not wanted and own in _COATS.values()
    milk = not style.milk or {source.species for source in made.recipe.milks} <= set(style.milk)
    unknown = sum(1 for gap in gaps if gap.low is None and gap.high is None)
    distance = sum(gap.steps for gap in gaps) + UNKNOWN * unknown + STAGE * (len(missing) + len(extra))
    distance += (RIND if rind or bare else 0.0) + (0.0 if milk else MILK)
    return Near(style, distance, gaps, missing, extra, rind or ("natural" if bare else ""), milk)


def _gaps(made: Forecast, style: Style, found: Mapping[str, float]) -> Iterator[Gap]:
    """Figures of the cheese, then the settings that shape a make most; `found` are the settings of the forecast."""
    for key, near in NEAR.items():
        if key in made.outcomes:
            value, (low, high) = made.outcomes[key].value, known_for(style, key)
            yield Gap(key, value, low, high, min(_outside(value, low, high) / near, FAR))
    for key in SHAPING:
        windows = [(one.low, one.high) for one in style.windows_of(key)]
        if key in found and windows:
            low, high = min(windows, key=lambda ends: _outside(found[key], *ends))
            steps = SETTING * _outside(found[key], low, high) / SETTINGS[key].near
            yield Gap(key, found[key], low, high, min(steps, FAR / 2.0))


def _outside(value: float, low: float | None, high: float | None) -> float:
    return max((low - value) if low is not None else 0.0, (value - high) if high is not None else 0.0, 0.0)


def known_for(style: Style, key: str) -> tuple[float | None, float | None]:
    """What a style is known for in a figure: published compositions and usual windows, inside its binding limits."""
    half = NEAR[key] / 2.0
    spans = [(one.values[key] - half, one.values[key] + half) for one in style.typical if key in one.values]
    spans += [(one.low, one.high) for one in style.windows_of(key) if one.low is not None and one.high is not None]
    low: float | None = min((one for one, _ in spans), default=None)
    high: float | None = max((one for _, one in spans), default=None)
    for rules in style.rules:
        if rules.judged and rules.kind not in ("class", "quality window"):
            for limit in rules.limits:
                if limit.quantity == key and not limit.bands:
                    low = limit.low if low is None else max(low, limit.low if limit.low is not None else low)
                    high = limit.high if high is None else min(high, limit.high if limit.high is not None else high)
    if low is not None and high is not None and low > high:  # the limit lies beyond what is published
        low = high
    return low, high


# --- The stages ------------------------------------------------------------------------------------------------------


def _restaged(recipe: Recipe, near: Near) -> tuple[Recipe, tuple[str, ...], dict[str, str]]:
    """The recipe with the style's stages in their usual places and without those it has not; that in words; and the
    ids of those that came in, by the words for them."""
    recipe, said, came = with_stages(recipe, near.missing, near.extra)
    if near.rind:
        recipe = edit_coat(recipe, kind=near.rind)
        said.append(say("a {rind} rind", rind=choice(near.rind)))
    return recipe, tuple(said), came


def nearest_to(recipe: Recipe, of: Iterable[Style] | None = None) -> tuple[Near, ...]:
    """The same from a recipe. Raises RecipeError."""
    return nearest(forecast(recipe), of)
