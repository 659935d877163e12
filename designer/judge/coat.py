"""Rind, cloth, wax, coating or bag: what follows from knit, moisture, pH, salt, gas and room, with its conditions.

The rules are data (coat.toml), each with its source; the knit comes from `make.knit`. Advice, never a promise: every
condition is looked at again on the day.
"""

from __future__ import annotations

import tomllib
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from importlib.resources import files

from designer.forecast import Forecast
from designer.judge.moments import own_stages
from designer.language import joined, say, word
from designer.make import knit, ranges, texture
from designer.make.caution import Caution
from designer.recipe.document import Branch, Recipe
from designer.recipe.lower import lower
from designer.recipe.stages.room import Room
from styles.reader import Style

COATS = ("natural", "cloth", "wax", "coating", "bag", "bloomy", "washed")
SUITS, WITH_CARE, AGAINST = "suits", "with care", "speaks against"
"""A coat suits only while no condition of it is known to be broken."""
ALIKE = {"ash": "bloomy", "leaves": "natural"}
"""Coats of a recipe that are judged like another."""
SUITS_FROM, CARE_FROM = 0.6, 0.3
SAID_FROM = 0.2
"""A point that carries less is not worth a line."""
HOUR_MIN = 60.0


@dataclass(frozen=True, slots=True)
class Point:
    """One thing that speaks for or against a coat, or is to be done: how far it carries, its figures, its source."""

    text: str
    carries: float
    figures: tuple[str, ...]
    source: str
    have: str
    next_time: bool = False
    """True for what would mend the knit at the next make."""


@dataclass(frozen=True, slots=True)
class Condition:
    """One condition of a coat. `met` is None where the forecast cannot say; `todo` is what would meet it."""

    text: str
    met: bool | None
    figures: tuple[str, ...]
    todo: str
    source: str
    have: str


@dataclass(frozen=True, slots=True)
class Option:
    """One coat: `fit` 0-1 and its word (“suits”, “with care”, “speaks against”), points each way, and conditions."""

    coat: str
    fit: float
    stance: str
    speaks_for: tuple[Point, ...]
    speaks_against: tuple[Point, ...]
    conditions: tuple[Condition, ...]

    @property
    def open_conditions(self) -> tuple[Condition, ...]:
        """Those that do not hold, or that nobody knows yet."""
        return tuple(condition for condition in self.conditions if condition.met is not True)


@dataclass(frozen=True, slots=True)
class CoatAdvice:
    """All coats, the fittest first; `chosen` is the recipe's own; `meanwhile` what to do now; `sentence` sums up.

    `gas` are the reasons a cheese may blow. `options` is empty where there is no face to coat (nothing formed, brined).
    """

    knit: knit.Knit | None
    options: tuple[Option, ...]
    chosen: Option | None
    gas: tuple[Point, ...]
    meanwhile: tuple[Point, ...]
    figures: Mapping[str, float]
    sentence: str

    def option(self, coat: str) -> Option:
        """The option of a coat; KeyError if it is none of COATS or nothing is formed."""
        for one in self.options:
            if one.coat == coat:
                return one
        raise KeyError(coat)


@dataclass(frozen=True, slots=True)
class _Rule:
    """A row of coat.toml, whichever table it stands in."""

    when: ranges.Ranges
    says: str
    source: str
    have: str
    strength: float = 1.0
    coat: str = ""
    side: str = ""
    todo: str = ""


@cache
def table() -> tuple[Mapping[str, ranges.Measure], Mapping[str, tuple[_Rule, ...]], tuple[float, float]]:
    """Measures, the rules by table (gas, rule, condition, meanwhile) and the pH window where no style says one."""
    document = tomllib.loads(files("designer.judge").joinpath("coat.toml").read_text("utf-8"))
    measures = ranges.measures(document["figure"])
    rules = {}
    for part in ("gas", "rule", "condition", "meanwhile"):
        rules[part] = tuple(
            _Rule(**(row | {"when": ranges.ranges(row["when"], measures, f"coat.toml, {part} {number}")}))
            for number, row in enumerate(document[part], 1)
        )
    window = document["window"]["ph"]
    return measures, rules, (window["low"], window["high"])


def advise(forecast: Forecast, style: Style | None = None) -> CoatAdvice:
    """What coat this cheese asks for. `style` gives the windows of pH and salt and the middle of the moisture."""
    joined, figures, lane = _joined(forecast), facts(forecast, style), _lane(forecast)
    if joined is None:
        return CoatAdvice(None, (), None, (), (), figures, say("Nothing is formed here, so there is no face to coat."))
    verdict, gas = knit.knit(joined), _points("gas", figures)
    if lane.coat is not None and lane.coat.kind == "brine":
        kept = say("Knit {word}: kept in brine, it needs no coat.", word=verdict.said)
        return CoatAdvice(verdict, (), None, gas, (), figures, kept)
    options = tuple(sorted((option(coat, figures) for coat in COATS), key=_rank))
    planned = ALIKE.get(lane.coat.kind, lane.coat.kind) if lane.coat is not None else ""
    chosen = next((one for one in options if one.coat == planned), None)
    meanwhile = (*_points("meanwhile", figures), *_remedies(verdict))
    sentence = (
        say("The vat is held for slow acid; nothing is coated or sold before it is released. ")
        if figures["held"]
        else ""
    )
    sentence += _sentence(verdict, options, chosen)
    return CoatAdvice(verdict, options, chosen, gas, meanwhile, figures, sentence)


def _rank(option: Option) -> tuple[int, float]:
    """Sorts by stance, then by fit."""
    return (SUITS, WITH_CARE, AGAINST).index(option.stance), -option.fit


def facts(forecast: Forecast, style: Style | None) -> dict[str, float]:
    """The figures rules ask for; those the forecast or the style cannot give are left out."""
    values = {key: figure.value for key, figure in forecast.outcomes.items()}
    recipe, lane = forecast.recipe, _lane(forecast)
    out: dict[str, float] = {key: values[key] for key in ("knit", "mnfs_pct", "salt_in_moisture_pct") if key in values}
    out["ph"] = values["ph_24h"]
    middle = texture.mnfs_of(style)
    if middle is not None:
        out["mnfs_off"] = values["mnfs_pct"] - middle
    out["ph_off"] = _outside(values["ph_24h"], _ph_windows(style))
    salt = [(window.low, window.high) for window in style.windows_of("salt_in_moisture_pct")] if style else []
    if salt:
        out["salt_off"] = _outside(values["salt_in_moisture_pct"], salt)
    room = next((stage for stage in own_stages(forecast) if isinstance(stage, Room)), None)
    if room is not None:
        out["room_c"] = recipe.room_c if room.room_c is None else room.room_c
        out["room_rh"] = room.humidity_pct
    end, trace = forecast.stages[-1].end_min, forecast.trace
    ran = trace.at("whey_kg_per_100kg", end) - trace.at("whey_kg_per_100kg", end - HOUR_MIN)
    out["whey_rate"] = max(0.0, 100.0 * ran / values["yield_kg_per_100kg"])
    starters = {starter.kind for starter in (*recipe.starters, *lane.starters)}
    out["aroma"] = float("aroma" in starters)
    out["eyed"] = float(style is not None and "eyed" in style.family)
    out["held"] = float(any(_holds(caution) for caution in forecast.cautions))
    out["raw"] = float(any(caution.code == "raw-milk" for caution in forecast.cautions))
    measures, rules, _ = table()
    out["gas"] = float(ranges.together([ranges.carries(row.when, row.strength, out, measures) for row in rules["gas"]]))
    return out


def _holds(caution: Caution) -> bool:
    return caution.level == "stop" and caution.code in ("slow-acid", "subnormal-acid")


def _lane(forecast: Forecast) -> Recipe | Branch:
    """The main make or the branch this forecast is of."""
    lanes = forecast.recipe.branches
    return next((branch for branch in lanes if branch.id == forecast.branch_id), forecast.recipe)


def _joined(forecast: Forecast) -> knit.Joining | None:
    """The joining of this forecast's lane; None where nothing is formed."""
    main, *branches = lower(forecast.recipe).lanes
    lane = next((one for one in branches if one.branch_id == forecast.branch_id), main)
    earlier = None
    if lane is not main and lane.of == "curd" and lane.after_stage is not None:
        earlier = main.rows[main.rows["stage"] <= main.stage_ids.index(lane.after_stage)]
    return knit.of_stages(lane.rows, forecast.stages, forecast.trace, earlier)


def _ph_windows(style: Style | None) -> list[tuple[float | None, float | None]]:
    gates = [gate for gate in style.gates if gate.curve == "ph" and gate.at == "h24"] if style else []
    return [(gate.low, gate.high) for gate in gates] or [table()[2]]


def _outside(value: float, windows: list[tuple[float | None, float | None]]) -> float:
    """How far a value lies outside the window that fits it best; 0 inside one."""
    return min(
        max(0.0, 0.0 if low is None else low - value, 0.0 if high is None else value - high) for low, high in windows
    )


def _figures(rule: _Rule, figures: Mapping[str, float]) -> tuple[str, ...]:
    return tuple(table()[0][key].shown(figures[key]) for key in rule.when if key in figures)


def _points(part: str, figures: Mapping[str, float], coat: str = "", side: str = "") -> tuple[Point, ...]:
    """The rules of one table that carry here, the weightiest first."""
    measures, rules, _ = table()
    found = [
        Point(word(rule.says, "coat"), float(ranges.carries(rule.when, rule.strength, figures, measures)),
              _figures(rule, figures), rule.source, rule.have)
        for rule in rules[part]
        if rule.coat == coat and rule.side == side
    ]  # fmt: skip
    return tuple(sorted((one for one in found if one.carries >= SAID_FROM), key=lambda one: -one.carries))


def option(coat: str, figures: Mapping[str, float]) -> Option:
    """How one coat fits given facts (see `facts`)."""
    measures, rules, _ = table()
    sides = {
        side: float(
            ranges.together(
                [
                    ranges.carries(rule.when, rule.strength, figures, measures)
                    for rule in rules["rule"]
                    if rule.coat == coat and rule.side == side
                ]
            )
        )
        for side in ("for", "against")
    }
    fit = sides["for"] * (1.0 - sides["against"])
    conditions = tuple(_condition(rule, figures) for rule in rules["condition"] if rule.coat == coat)
    broken = any(condition.met is False for condition in conditions)
    stance = SUITS if fit >= SUITS_FROM and not broken else WITH_CARE if fit >= CARE_FROM else AGAINST
    speaks_for, against = _points("rule", figures, coat, "for"), _points("rule", figures, coat, "against")
    return Option(coat, fit, stance, speaks_for, against, conditions)


def _condition(rule: _Rule, figures: Mapping[str, float]) -> Condition:
    met: bool | None = None
    if rule.when.keys() <= figures.keys():
        met = all(
            (low is None or figures[key] >= low) and (high is None or figures[key] <= high)
            for key, (low, high) in rule.when.items()
        )
    says, todo = word(rule.says, "coat"), word(rule.todo, "coat")
    return Condition(says, met, _figures(rule, figures), todo, rule.source, rule.have)


def _remedies(verdict: knit.Knit) -> tuple[Point, ...]:
    """What would mend the knit next time, where it is not closed."""
    if verdict.word == knit.WORDS[0]:
        return ()
    return tuple(
        Point(
            say("next time: {remedy}", remedy=reason.remedy),
            reason.lost,
            (reason.text,),
            reason.source,
            reason.have,
            True,
        )
        for reason in verdict.reasons
    )


NAMES: Mapping[str, str] = {
    "natural": "a natural rind",
    "cloth": "cloth",
    "wax": "wax",
    "coating": "a breathing coat",
    "bag": "a vacuum bag",
    "bloomy": "a white mould rind",
    "washed": "a washed rind",
}


def name_of(coat: str) -> str:
    """What a coat is called, in the language spoken."""
    return word(NAMES[coat], "coat")


def _sentence(verdict: knit.Knit, options: tuple[Option, ...], chosen: Option | None) -> str:
    """The knit, then the planned coat where it suits, else the fittest with its open conditions and what is against."""
    best = chosen if chosen is not None and chosen.stance == options[0].stance else options[0]
    text = say("Knit {word}: ", word=verdict.said)
    if best.stance == AGAINST:
        text += say("no coat fits as it stands; the least unfit is {coat}", coat=name_of(best.coat))
    else:
        coat = name_of(best.coat)
        text += say("{coat} suits", coat=coat) if best.stance == SUITS else say("{coat} can do, with care", coat=coat)
    if best.stance != SUITS and best.speaks_against:
        text += f" ({best.speaks_against[0].text})"
    if best.open_conditions:
        text += say(", only if: ") + joined(condition.text for condition in best.open_conditions)
    if chosen is not None and chosen is not best and chosen.speaks_against:
        text += say(
            ". Against {coat}, as planned: {speaks_against}",
            coat=name_of(chosen.coat),
            speaks_against=chosen.speaks_against[0].text,
        )
    return f"{text}."
