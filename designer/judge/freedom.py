"""How far aim may go: which settings may move and between what, and what must hold whatever is wanted.

Heat treatment, the milk itself and the ageing rooms are no settings of aim, and where an age is asked for nothing that
counts for it gets shorter. Limits of law that hold now go on holding; acid in time, salt and calcium chloride are never
traded for anything.
"""

from __future__ import annotations

import math
from collections.abc import Collection, Iterator, Mapping
from dataclasses import dataclass

import numpy as np

from designer.forecast import Forecast
from designer.judge.check import check, least_age_days
from designer.judge.moments import AGEING, moments, own_stages, settings
from designer.judge.movable import Movable, movables
from designer.judge.verdict import LIMIT, NOT_MET
from designer.judge.windows import Ranged, ranged
from designer.judge.words import lowered
from designer.language import headed, say, word
from designer.make.caution import Family, limit
from designer.make.slow_acid import family_of
from designer.quantities import QUANTITIES
from designer.recipe.document import Addition, Recipe
from designer.recipe.dose import addition_columns
from designer.recipe.lower import lower, temperatures_before
from designer.recipe.milk import blend
from designer.recipe.schedule import PLACE_MILK
from styles.reader import Style, StyleError
from styles.reader import style as read_style
from styles.settings import SETTINGS

STEPS_AT_MOST = 8
"""How many natural steps a setting may go where no usual range speaks of it."""
_NEVER = frozenset(("acidity_pct", "after_min", "vigour", "ramp_min", "off_min", "on_min"))
"""What no maker sets finely: how strongly is stirred, over how long is poured; or what is a fact of the starter."""
DOSES = ("starter", "addition")
LEAST_STEP = {"duration": 5.0}
OF_THE_MAKE = frozenset(
    ("ripen_c", "set_c", "cook_c", "cut_to_drain_min", "ripen_min", "stack_min", "press_h", "brine_h", "hang_h")
)
"""Settings of styles.settings that levers follows beside outcomes."""


@dataclass(frozen=True, slots=True)
class Freedom:
    """A setting and the range it may move in, in whole steps of it from where it stands; `why` says whose range."""

    setting: Movable
    least: int
    most: int
    why: str
    usual: bool

    @property
    def lowest(self) -> int:
        """Steps to the end of the field's own range."""
        return math.ceil(max(-100.0, (self.setting.low - self.setting.value) / self.setting.step - 1e-6))

    @property
    def highest(self) -> int:
        """The same upwards."""
        return math.floor(min(100.0, (self.setting.high - self.setting.value) / self.setting.step + 1e-6))

    def at(self, steps: int) -> float:
        """The value so many steps away, on the lattice of its step."""
        one = self.setting
        value = one.value + steps * one.step
        if steps:
            value = round(value / one.step) * one.step
        return round(min(max(value, one.low), one.high), 10)


@dataclass(frozen=True, slots=True)
class Guard:
    """An outcome (or a setting of styles.settings that comes of the whole make) that must stay inside `low`..`high`
    (None: open), and why in words. `firm` ones are never given up."""

    key: str
    low: float | None
    high: float | None
    why: str
    firm: bool


def freedoms(recipe: Recipe, style: Style | None, branch: str | None = None) -> tuple[Freedom, ...]:
    """Settings of stages and doses with the range each may move in: the style's usual range, else some steps.

    Those of the main make, or those that move a branch. A setting outside its usual range now may stay or come back,
    not go further out.
    """
    usual = _usual_ranges(recipe, style, branch)
    hot, aging = (
        _heat_treated(recipe),
        _aging(recipe) if style is not None and least_age_days(recipe, style) else frozenset[str](),
    )
    out = []
    for one in movables(recipe, branch):
        if not _may_move(one) or one.where in hot:
            continue
        low, high, why, narrowed = _span(recipe, one, *usual.get(one.path, (None, "")))
        low, high = max(low, one.low, one.step if one.of in DOSES else -math.inf), min(high, one.high)
        if one.where in aging and one.field == "end.length_min":
            low = one.value
        least = math.ceil((min(low, one.value) - one.value) / one.step - 1e-6)
        out.append(Freedom(one, least, math.floor((high - one.value) / one.step + 1e-6), why, narrowed))
    return tuple(out)


def _usual_ranges(recipe: Recipe, style: Style | None, branch: str | None) -> dict[tuple[str, str], tuple[Ranged, str]]:
    """Usual ranges by path, with the style that knows them; what a branch shares is that of the main make's style."""
    own = () if style is None else ranged(recipe, style, branch)
    main = None if branch is None else style_of(recipe, None)
    shared = () if main is None else ranged(recipe, main)
    out = {one.setting.path: (one, style.title) for one in own if style is not None}
    return out | {one.setting.path: (one, main.title) for one in shared if main is not None}


def _may_move(one: Movable) -> bool:
    """A figure of a stage or dose that a maker sets; whey run off to the last is no share that is chosen."""
    all_whey = one.field == "whey_off_pct" and one.value >= 100.0
    return one.of in ("stage", *DOSES) and one.field not in _NEVER and not all_whey


def _heat_treated(recipe: Recipe) -> frozenset[str]:
    """Stages in which milk, whey or cream is heated against germs, or comes down from there: never aim's to move."""
    starts_c, from_c = temperatures_before(recipe, blend(recipe).temperature_c), limit("thermised_c").value
    milky = [stage for lane in recipe.lanes() for stage in lane.stages if stage.PLACE == PLACE_MILK]
    ends_c = {stage.id: (starts_c[stage.id], stage.end_temperature_c(starts_c[stage.id])) for stage in milky}
    return frozenset(where for where, temperatures in ends_c.items() if any(one >= from_c for one in temperatures))


def _aging(recipe: Recipe) -> frozenset[str]:
    """Stages that count for the age of the cheese."""
    return frozenset(stage.id for lane in recipe.lanes() for stage in lane.stages if stage.kind in AGEING)


def _span(recipe: Recipe, one: Movable, usual: Ranged | None, whose: str) -> tuple[float, float, str, bool]:
    """Between what a setting may move, whose range that is, and whether it is one that is known."""
    low, high = one.value - STEPS_AT_MOST * one.step, one.value + STEPS_AT_MOST * one.step
    if usual is not None:
        known = say(
            "the usual range of {name}, {low} to {high}",
            name=whose,
            low=one.shown(usual.low),
            high=one.shown(usual.high),
        )
        return min(usual.low, one.value), max(usual.high, one.value), known, True
    ceiling = _ceiling(recipe, one) if one.of == "addition" else None
    if ceiling is not None:
        why = say("the legal ceiling of calcium chloride, 0.02 % of the milk")
        return low, min(high, max(ceiling, one.value)), why, True
    return low, high, say("no more than {steps_at_most} steps at once", steps_at_most=STEPS_AT_MOST), False


def _ceiling(recipe: Recipe, one: Movable) -> float | None:
    """The most of a calcium chloride that the law allows, in the unit of its dose; None for other additions."""
    if one.branch is not None:
        added = next(each for each in recipe.branch(one.branch).additions if each.id == one.where)
        return one.value if added.what == "calcium_chloride" else None
    milk = blend(recipe)
    given = {each.id: _chloride(each, milk) for each in recipe.additions if each.what == "calcium_chloride"}
    if one.where not in given or given[one.where] <= 0.0:
        return None
    others = sum(given.values()) - given[one.where]
    return one.value * max(0.0, limit("chloride_g_kg").value - others) / given[one.where]


def _chloride(each: Addition, milk: object) -> float:
    return float(addition_columns(each, milk).get("cacl2_g_kg", 0.0))  # type: ignore[arg-type]


def guards(made: Forecast, style: Style | None, wanted: Collection[str]) -> tuple[Guard, ...]:
    """What must hold in a lane: firm ones for safety and law, others for the style's gates and windows on outcomes.

    A value outside now may stay, not go further out. Outcomes that are `wanted` have only firm guards.
    """
    here = figures(made)
    found = [*acid_guards(made), *_salt(style, here)]
    if style is not None:
        found += _law(made, style)
        found += [one for one in _usual(style, here) if one.key not in wanted]
    return tuple(_from_here(one, here[one.key]) for one in found if one.key in here)


def figures(made: Forecast) -> dict[str, float]:
    """Outcomes of a forecast and its settings as a style speaks of them."""
    return settings(made, moments(made)) | {key: one.value for key, one in made.outcomes.items()}


def unit_of(key: str) -> float:
    """What counts as one step of an outcome or of a style's setting."""
    if key in QUANTITIES:
        quantity = QUANTITIES[key]
        return max(quantity.step, LEAST_STEP.get(quantity.kind, 0.0))
    return SETTINGS[key].near


def _from_here(one: Guard, value: float) -> Guard:
    low = None if one.low is None else min(one.low, value)
    high = None if one.high is None else max(one.high, value)
    return Guard(one.key, low, high, one.why, one.firm)


def acid_guards(made: Forecast) -> Iterator[Guard]:
    """Acid in time, as the family of a lane asks for it, whether it is there now or not."""
    family = _family(made)
    if family is None:
        return
    name = word(family.name, "caution")
    by_six, at_mill = family.ph_6h_watch or family.ph_6h_stop, family.ph_mill_watch
    if by_six is not None:
        why = say("acid in time: pH {most:g} at 6 h ({name})", most=by_six, name=name)
        yield Guard("ph_6h", None, by_six, why, True)
    if at_mill is not None:
        why = say("acid in time: pH {most:g} at milling ({name})", most=at_mill, name=name)
        yield Guard("ph_mill", None, at_mill, why, True)
    if family.drawn_stop_pct is not None:
        least = family.drawn_stop_pct
        yield Guard("acidity_drawn_pct", least, None, say("whey drawn at {least:g} % acid or more", least=least), True)


def _family(made: Forecast) -> Family | None:
    rows = next(lane.rows for lane in lower(made.recipe).lanes if lane.branch_id == made.branch_id)
    return family_of(own_stages(made), rows, float(np.max(made.trace["temperature_c"])))


def _salt(style: Style | None, here: Mapping[str, float]) -> Iterator[Guard]:
    """Salt in moisture never falls below the least the style knows; without one not below where it stands."""
    key = "salt_in_moisture_pct"
    if key not in here or here[key] < 0.05:
        return
    lows = [one.low for one in style.windows_of(key) if one.low is not None] if style is not None else []
    least = min(lows, default=here[key])
    yield Guard(key, least, None, say("salt in moisture of at least {least:.1f} %", least=min(least, here[key])), True)


def _law(made: Forecast, style: Style) -> Iterator[Guard]:
    """Limits of law and standards that hold now."""
    for row in check(made, style).section(LIMIT):
        if row.state != NOT_MET and row.quantity in QUANTITIES:
            yield Guard(row.quantity, row.low, row.high, headed(row.rule, lowered(row.label)), True)


def _usual(style: Style, here: Mapping[str, float]) -> Iterator[Guard]:
    """Usual ranges and gates of the style on what comes of the whole make, hulls over their sources."""
    for key in dict.fromkeys(one.key for one in style.windows):
        if key in here and (key in QUANTITIES or key in OF_THE_MAKE):
            windows = style.windows_of(key)
            lows, highs = [one.low for one in windows], [one.high for one in windows]
            low = None if None in lows else min(one for one in lows if one is not None)
            high = None if None in highs else max(one for one in highs if one is not None)
            yield Guard(
                key, low, high, say("usual in {name}: {label_of}", name=style.title, label_of=label_of(key)), False
            )


def label_of(key: str) -> str:
    """Words for an outcome or a style's setting."""
    return QUANTITIES[key].label if key in QUANTITIES else SETTINGS[key].label


def style_of(recipe: Recipe, branch: str | None) -> Style | None:
    """The style a lane is checked against; None where it names none that we know."""
    key = recipe.style_of(branch)
    try:
        return read_style(key) if key else None
    except StyleError:
        return None
