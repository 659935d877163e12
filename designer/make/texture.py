"""Texture in words - short, firm, pliable, rubbery, soft, pasty - from pH, calcium, moisture, fat, salt and age.

The rules are data (texture.toml), each with its source; here they are read and weighed. Laws 5.2-5.4 most pliable,
below 5.0 short: Lawrence, Creamer & Gilles; Luyten 1988; sweet and moist: Thom & Fisk 1918.
"""

from __future__ import annotations

import tomllib
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from importlib.resources import files
from typing import Any

import numpy as np
from numpy.typing import NDArray

from designer.language import headed, say
from designer.language import word as told
from designer.make import ranges
from designer.make.ranges import Measure
from designer.make.seen import Figure
from styles.reader import Style

WORDS = ("short", "firm", "pliable", "rubbery", "soft", "pasty")
OPPOSITE = {"firm": "soft", "soft": "firm"}
SAID_FROM, PLAINLY_FROM = 0.35, 0.7
"""A word is said from the first degree on, and without “rather” from the second."""


@dataclass(frozen=True, slots=True)
class Rule:
    """One row of texture.toml; `when` maps a figure to (low, high), open ends None."""

    word: str
    when: ranges.Ranges
    strength: float
    says: str
    change: str
    source: str
    have: str


@dataclass(frozen=True, slots=True)
class Because:
    """Why a word is said: the rule, how far it carries here, its figures in words, and where it would turn."""

    rule: Rule
    degree: float
    figures: tuple[str, ...]
    turns: str


@dataclass(frozen=True, slots=True)
class Word:
    """One word of the body with its degree (0-1), how sure it is, and the rules behind it, the weightiest first.

    `in_ten` counts of ten draws of the uncertain inputs those that say the word too; None where no bands are known.
    """

    word: str
    degree: float
    confidence: str
    in_ten: int | None
    because: tuple[Because, ...]

    @property
    def said(self) -> str:
        """The word as it is said: "firm", "rather pliable"."""
        plain = told(self.word, "texture")
        return plain if self.degree >= PLAINLY_FROM else say("rather {word}", word=plain)


@dataclass(frozen=True, slots=True)
class Texture:
    """The body in words, the strongest first, with every figure it rests on; `unsaid` is what could not be judged."""

    words: tuple[Word, ...]
    figures: Mapping[str, float]
    unsaid: str

    @property
    def sentence(self) -> str:
        """ "Firm, rather pliable: pH near 5.1 with about 600 mmol of calcium is ..." """
        said = ", ".join(word.said for word in self.words)
        return headed(said[0].upper() + said[1:], told(self.words[0].because[0].rule.says, "texture")) + "."


@cache
def table() -> tuple[Mapping[str, Measure], tuple[Rule, ...]]:
    """The shipped measures and rules. ValueError names a rule with an unknown word or figure or without a range."""
    return read(files("designer.make").joinpath("texture.toml").read_text("utf-8"))


def read(text: str) -> tuple[Mapping[str, Measure], tuple[Rule, ...]]:
    """Measures and rules of a table like texture.toml."""
    document = tomllib.loads(text)
    measures = ranges.measures(document["figure"])
    rules = []
    for number, fields in enumerate(document["rule"], 1):
        place = say("texture rule {number}, “{word}”", number=number, word=fields.get("word", "?"))
        if fields.get("word") not in WORDS:
            raise ValueError(say("{place}: the word is none of {words}", place=place, words=", ".join(WORDS)))
        when = ranges.ranges(fields["when"], measures, place)
        rules.append(Rule(**(fields | {"when": when})))
    return measures, tuple(rules)


def figures_of(values: Mapping[str, Any], *, mnfs_style: float | None, age_days: float) -> dict[str, Any]:
    """The figures rules ask for, from outcomes (numbers, or arrays of draws) of `make.path`.

    Calcium per solids-not-fat is worked out here [mmol/kg]; `mnfs_style` [%] is the middle of the style or None.
    """
    snf_share = (100.0 - values["moisture_pct"] - values["fat_pct"]) / 100.0
    out: dict[str, Any] = {
        "ph": values["ph_24h"],
        "calcium_mmol_per_kg_snf": values["calcium_mmol_per_kg"] / snf_share,
        "mnfs_pct": values["mnfs_pct"],
        "fdm_pct": values["fdm_pct"],
        "salt_in_moisture_pct": values["salt_in_moisture_pct"],
        "age_days": age_days,
    }
    if mnfs_style is not None:
        out["mnfs_off"] = values["mnfs_pct"] - mnfs_style
    return out


def mnfs_of(style: Style | None) -> float | None:
    """The middle of a style's moisture in non-fat substance [%]: the mean of its published compositions."""
    known = [typical.values["mnfs_pct"] for typical in style.typical if "mnfs_pct" in typical.values] if style else []
    return sum(known) / len(known) if known else None


def carries(rule: Rule, figures: Mapping[str, Any]) -> Any:
    """How far a rule carries its word here, 0 to its strength; 0 where it asks for a figure that is not known."""
    return ranges.carries(rule.when, rule.strength, figures, table()[0])


def degree_of(word: str, figures: Mapping[str, Any]) -> Any:
    """How far a word fits, 0-1: rules that say the same add up without passing 1. Numbers or arrays of draws."""
    return ranges.together([carries(rule, figures) for rule in table()[1] if rule.word == word])


def texture(figures: Mapping[str, float], draws: Mapping[str, Any] | None = None) -> Texture:
    """The body of a cheese from its figures (see `figures_of`); `draws` are the same figures as arrays of members.

    The strongest word is always said, others from a third on; of two that are opposites only the stronger.
    """
    degrees = {word: float(degree_of(word, figures)) for word in WORDS}
    ranked = sorted(WORDS, key=lambda word: -degrees[word])
    said = [ranked[0]]
    for word in ranked[1:]:
        if degrees[word] >= SAID_FROM and OPPOSITE.get(word) not in said:
            said.append(word)
    unsaid = (
        ""
        if "mnfs_off" in figures
        else say(
            "Without a style there is no middle to hold the moisture against, "
            "so soft and dry are judged by class alone."
        )
    )
    return Texture(tuple(_word(word, degrees[word], figures, draws) for word in said), dict(figures), unsaid)


def of_outcomes(
    outcomes: Mapping[str, Figure], style: Style | None, age_days: float = 1.0,
    samples: Mapping[str, NDArray[np.float64]] | None = None,
) -> Texture:  # fmt: skip
    """The body of a forecast's cheese at an age [days]; `samples` are its bands' draws by outcome, where it has any."""
    middle = mnfs_of(style)
    values = {key: figure.value for key, figure in outcomes.items()}
    draws = figures_of(samples, mnfs_style=middle, age_days=age_days) if samples else None
    return texture(figures_of(values, mnfs_style=middle, age_days=age_days), draws)


def _word(word: str, degree: float, figures: Mapping[str, float], draws: Mapping[str, Any] | None) -> Word:
    found = [(float(carries(rule, figures)), rule) for rule in table()[1] if rule.word == word]
    found.sort(key=lambda pair: -pair[0])
    kept = [pair for pair in found if pair[0] >= SAID_FROM / 2.0] or found[:1]
    in_ten = None
    if draws is not None:
        in_ten = round(10.0 * float(np.mean(np.asarray(degree_of(word, draws)) >= SAID_FROM)))
    because = tuple(
        Because(rule, carried, tuple(table()[0][key].shown(figures[key]) for key in rule.when if key in figures),
                _turn(rule, figures))
        for carried, rule in kept
    )  # fmt: skip
    return Word(word, degree, _confidence(degree, kept[0][1].have, in_ten), in_ten, because)


def _confidence(degree: float, have: str, in_ten: int | None) -> str:
    """ "good", "fair" or "weak": how the rule is held, less where the figures lie on its edge or the draws disagree."""
    steps = 2 if have.startswith("published") else 1 if have == "from memory (high)" else 0
    unsure = degree < PLAINLY_FROM if in_ten is None else in_ten < 8
    return ("weak", "fair", "good")[max(0, steps - unsure)]


def _turn(rule: Rule, figures: Mapping[str, float]) -> str:
    """Where the word would turn: the limit of the rule that lies nearest, in widths of its figure."""
    near: tuple[float, str] | None = None
    for key, (low, high) in rule.when.items():
        if key not in figures:
            continue
        measure = table()[0][key]
        for limit, way in ((low, "below"), (high, "above")):
            if limit is None:
                continue
            distance = abs(figures[key] - limit) / measure.width
            if near is None or distance < near[0]:
                inside = figures[key] >= limit if way == "below" else figures[key] <= limit
                side = way if inside else {"below": "above", "above": "below"}[way]
                near = (distance, _turn_words(inside, side, measure.shown(limit)))
    return near[1] if near else ""


def _turn_words(inside: bool, side: str, limit: str) -> str:
    if inside:
        return (
            say("less so below {limit}", limit=limit) if side == "below" else say("less so above {limit}", limit=limit)
        )
    return say("more so below {limit}", limit=limit) if side == "below" else say("more so above {limit}", limit=limit)
