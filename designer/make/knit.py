"""Knit: how well pieces of curd grow together in form and press - closed, nearly closed, open or creviced, and why.

Directions are published (Thom & Fisk 1918; Lodaite et al. 2002; Walstra); the weights are engineering defaults, the
`knit_*` rows of constants.toml. Every step is smooth, so the score moves with each setting instead of jumping.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Any

import numpy as np
from numpy.typing import NDArray

from designer.make import constants
from designer.make.seen import Curves, Series
from designer.recipe.schedule import GEL_ACID_HEAT, PLACE_DRAINED, PLACE_MOULD, PLACE_PRESS

WORDS = ("closed", "nearly closed", "open", "creviced")
GRAVITY_M_S2 = 9.81
WORTH_A_LINE = 0.02
"""Share of the score below which a loss is not worth a reason."""
LIGHTLY = 0.3
"""`disturbed` of curd that is only pushed aside while the whey runs; from here to 1 its grains fall apart."""


@dataclass(frozen=True, slots=True)
class Joining:
    """Curd as its pieces are laid together, in the press or (with none) in the form: all that the score rests on.

    `temperature_c` and `ph` are means of the first minutes of contact (`knit_contact_min`); `early_kpa` is the mean
    load of the first `knit_hard_min`, `load_kpa` the highest (own weight at the least); `loose` is 0 for a bed cut
    in blocks, 1 for grains or chips worked apart; `stretched` curd is one mass already.
    """

    temperature_c: float
    ph: float
    moisture_pct: float
    salt_in_moisture_pct: float
    load_kpa: float
    early_kpa: float
    contact_min: float
    loose: float
    stretched: bool


@dataclass(frozen=True, slots=True)
class Reason:
    """One thing that cost knit: `lost` is the share of the score it took, `remedy` what would mend it."""

    key: str
    lost: float
    text: str
    remedy: str
    source: str
    have: str


@dataclass(frozen=True, slots=True)
class Knit:
    """The verdict: score 0-1, its word, the reasons with the weightiest first, and what it means for each coat."""

    score: float
    word: str
    reasons: tuple[Reason, ...]
    means: Mapping[str, str]

    @property
    def sentence(self) -> str:
        """The word with its first reason."""
        if not self.reasons:
            return f"The cheese is likely {self.word}."
        link = "; what costs it most:" if self.word == WORDS[0] else ":"
        return f"The cheese is likely {self.word}{link} {self.reasons[0].text}"


def joining(
    rows: NDArray[Any], minute: Series, place: NDArray[Any], load_kpa: Series, temperature_c: Series, ph: Series,
    water_and_salt: Callable[[int], tuple[float, float]], p: Any,
) -> Joining | None:  # fmt: skip
    """What the pieces are like when they meet; None where nothing is formed or the curd is an acid-and-heat one.

    `rows` are Schedule rows up to the first room; the series (n,) are points of the march, `place` the PLACE_* of
    each; `water_and_salt(index)` gives moisture [%] and salt in moisture [%] at a point.
    """
    if (rows["gel"] == GEL_ACID_HEAT).any():
        return None
    formed = np.flatnonzero((place == PLACE_MOULD) | (place == PLACE_PRESS))
    if not formed.size:
        return None
    pressed = np.flatnonzero(place == PLACE_PRESS)
    begin, last = int(pressed[0] if pressed.size else formed[0]), int(formed[-1])
    at = minute[begin : last + 1] - minute[begin]
    first = np.linspace(0.0, min(float(p["knit_contact_min"]), max(at[-1], 1e-9)), 6)
    moisture, salted = water_and_salt(begin)
    in_form = (place[:-1] == place[1:]) | (np.diff(minute) > 0.0)
    stays = np.diff(minute) * in_form * ((place[:-1] == PLACE_MOULD) | (place[:-1] == PLACE_PRESS))
    form_rows = (rows["place"] == PLACE_MOULD) | (rows["place"] == PLACE_PRESS)
    own_kpa = float(p["cheese_density"]) * GRAVITY_M_S2 * float(rows["height_mm"][form_rows].max(initial=0.0)) * 1e-6
    return Joining(
        temperature_c=float(np.interp(first, at, temperature_c[begin : last + 1]).mean()),
        ph=float(np.interp(first, at, ph[begin : last + 1]).mean()),
        moisture_pct=moisture,
        salt_in_moisture_pct=salted,
        load_kpa=max(float(load_kpa[formed].max()), own_kpa),
        early_kpa=_mean_until(at, load_kpa[begin : last + 1], float(p["knit_hard_min"])),
        contact_min=float(stays.sum()),
        loose=_loose(rows, form_rows),
        stretched=bool(rows["stretch"].any()),
    )


def of_trace(rows: NDArray[Any], trace: Curves, end_min: float) -> Joining | None:
    """The same from a forecast's trace, its Schedule rows and the minute its make ends."""
    places = np.full(int(trace.stage.max()) + 1, -1)
    for row in rows[::-1]:
        if row["stage"] < len(places):
            places[row["stage"]] = row["place"]
    until = int(np.searchsorted(trace.time_min, end_min + 1e-9, side="right"))

    def water_and_salt(index: int) -> tuple[float, float]:
        moisture = float(trace["curd_moisture_pct"][index])
        return moisture, 100.0 * float(trace["salt_pct"][index]) / moisture

    return joining(
        rows, trace.time_min[:until], places[trace.stage[:until]], trace["load_kpa"], trace["temperature_c"],
        trace["ph"], water_and_salt, constants.record()[0],
    )  # fmt: skip


def _mean_until(at: Series, load: Series, until: float) -> float:
    """Mean of a series that steps, over its first `until` minutes."""
    area = np.concatenate([[0.0], np.cumsum((load[1:] + load[:-1]) / 2.0 * np.diff(at))])
    return float(np.interp(until, at, area)) / until


def _loose(rows: NDArray[Any], form_rows: NDArray[Any]) -> float:
    """How far the grains fall apart on their way into the form."""
    before = rows[: int(np.flatnonzero(form_rows)[0])] if form_rows.any() else rows
    worked = before["disturbed"][(before["place"] == PLACE_DRAINED) & (before["stretch"] == 0.0)]
    return float(np.clip((worked.max(initial=0.0) - LIGHTLY) / (1.0 - LIGHTLY), 0.0, 1.0))


def _step(distance: float, width: float) -> float:
    """0 below, 1 above, a half where `distance` is nought; smooth over `width`."""
    return float(1.0 / (1.0 + np.exp(-np.clip(distance / width, -40.0, 40.0))))


def salted(curd: Joining, p: Any) -> float:
    """How far the curd counts as salted before it is formed, 0-1."""
    return _step(curd.salt_in_moisture_pct - p["knit_salted_pct"], p["knit_salted_width"])


def factors(curd: Joining, p: Any) -> dict[str, float]:
    """What each circumstance leaves of the score (1 nothing lost), before moist curd runs together by itself."""
    in_salt = salted(curd, p)
    need = float(p["knit_press_sweet_kpa"] ** (1.0 - in_salt) * p["knit_press_salted_kpa"] ** in_salt)
    light = _step(np.log(0.5 * need / curd.load_kpa), p["knit_light_width"])
    at_once = _step(curd.early_kpa / curd.load_kpa - p["knit_hard_share"], p["knit_hard_share_width"])
    degrees = {
        "cold": _step(p["knit_cold_c"] - curd.temperature_c, p["knit_temperature_width"]),
        "warm": in_salt * _step(curd.temperature_c - p["knit_warm_c"], p["knit_temperature_width"]),
        "sweet": in_salt * _step(curd.ph - p["knit_sweet_ph"], p["knit_ph_width"]),
        "acid": _step(p["knit_acid_ph"] - curd.ph, p["knit_ph_width"]),
        "light": light,
        "dry": _step(p["knit_dry_pct"] - curd.moisture_pct, p["knit_dry_width"]),
        "hard": at_once * _step(curd.early_kpa - p["knit_hard_kpa"], p["knit_hard_width"]),
        "brief": _step(p["knit_brief_min"] - curd.contact_min, p["knit_brief_width"]),
        "loose": curd.loose,
    }
    return {key: 1.0 - (1.0 - float(p[f"knit_{key}_left"])) * degree for key, degree in degrees.items()}


def by_itself(curd: Joining, p: Any) -> float:
    """How far the curd runs together without help, 0-1: moist enough, or stretched to one mass."""
    return 1.0 if curd.stretched else _step(curd.moisture_pct - p["knit_moist_pct"], p["knit_moist_width"])


def score(curd: Joining, p: Any) -> float:
    """Knit, 0 (loose pieces) to 1 (one smooth mass)."""
    product = float(np.prod(list(factors(curd, p).values())))
    return 1.0 - (1.0 - by_itself(curd, p)) * (1.0 - product)


def word(value: float) -> str:
    """The word for a score; the limits are rows of constants.toml."""
    table = constants.record()[0]
    limits = (table["knit_closed_from"], table["knit_nearly_from"], table["knit_open_from"])
    return WORDS[sum(value < limit for limit in limits)]


def knit(curd: Joining) -> Knit:
    """The verdict on a joining, with reasons ranked by what they cost and what it means for each coat."""
    p = constants.record()[0]
    value, runs = score(curd, p), by_itself(curd, p)
    lost = {key: (1.0 - runs) * (1.0 - left) for key, left in factors(curd, p).items()}
    ranked = sorted((key for key in lost if lost[key] >= WORTH_A_LINE), key=lambda key: -lost[key])
    return Knit(value, word(value), tuple(_reason(key, lost[key], curd) for key in ranked), MEANS[word(value)])


def _reason(key: str, lost: float, curd: Joining) -> Reason:
    text, remedy, source, have = _REASONS[key]
    figures = {name: getattr(curd, name) for name in Joining.__dataclass_fields__}
    return Reason(key, lost, text.format(**figures), remedy, source, have)


_FISK_206 = "Thom & Fisk 1918, The Book of Cheese, s. 206"
_REASONS: Mapping[str, tuple[str, str, str, str]] = {
    "cold": (
        "the curd lies at {temperature_c:.0f} °C when it is pressed; too cold, pieces do not fuse and no rind forms.",
        "warm forms and room, form sooner, keep the curd covered; salted curd wants 27-30 °C",
        _FISK_206,
        "published; weight an engineering default",
    ),
    "warm": (
        "the salted curd is pressed at {temperature_c:.0f} °C; too warm, fat runs out and greasy faces do not join.",
        "cool the milled curd to 27-32 °C before it is formed",
        f"{_FISK_206}; Chandan & Kilara 2011 p. 269",
        "published; weight an engineering default",
    ),
    "sweet": (
        "the curd is salted and still at pH {ph:.2f}; above about 5.6 salted curd does not flow.",
        "mill and salt at a lower pH (5.3-5.4)",
        "text taken to follow Walstra et al.",
        "from memory (medium); weight an engineering default",
    ),
    "acid": (
        "the curd is at pH {ph:.2f} when it is pressed; below about 5.0 it is short and does not flow.",
        "form and press earlier, or less starter",
        "Lawrence et al. 1987 (short curd below pH 4.9-5.0)",
        "from memory (high); weight an engineering default",
    ),
    "light": (
        "the highest pressure is {load_kpa:.0f} kPa, less than half of what such curd usually gets.",
        "press heavier towards the end, or longer and warmer",
        "Thom & Fisk 1918, s. 256; Lodaite et al. 2002, Int. Dairy J. 12:455",
        "published; weight an engineering default",
    ),
    "dry": (
        "the curd comes into the press at {moisture_pct:.0f} % moisture; crumbs that dried out do not unite.",
        "form the curd moister: less stirring dry, or a shorter cook",
        "Thom & Fisk 1918",
        "published; weight an engineering default",
    ),
    "hard": (
        "it is pressed at {early_kpa:.0f} kPa in its first quarter of an hour; the skin closes, whey stays between.",
        "start light and raise the load by steps over an hour",
        "Geurts 1978; Thom & Fisk 1918 s. 206 (gradual pressure)",
        "from memory (high); weight an engineering default",
    ),
    "brief": (
        "it lies only {contact_min:.0f} min in form and press.",
        "press longer: Cheddar 12-18 h, up to 24 h where it stays open",
        "Thom & Fisk 1918, s. 256",
        "published; weight an engineering default",
    ),
    "loose": (
        "the grains were worked apart before forming, so air lies between them.",
        "form from a bed pressed under the whey, or dress and press again under vacuum",
        "Hill, University of Guelph, Curd handling; Robertson 1966",
        "published; weight an engineering default",
    ),
}  # fmt: skip

MEANS: Mapping[str, Mapping[str, str]] = {
    "closed": {
        "natural": "The faces can carry a natural rind.",
        "cloth": "Cloth will lie smooth on it.",
        "wax": "A closed face takes wax, once it is dry.",
        "bag": "Nothing in the knit asks for a bag.",
    },
    "nearly closed": {
        "natural": "A natural rind can do, if small gaps are filled and smoothed in the first days.",
        "cloth": "Cloth and fat bridge small gaps; rub the fat well into them.",
        "wax": "Small gaps hold air under wax: fill and smooth them first.",
        "bag": "A bag is a safe second choice.",
    },
    "open": {
        "natural": "Openings at the face let mould in; expect mould between the grains under a natural rind.",
        "cloth": "Mould finds its way through cloth into the openings.",
        "wax": "Whey and air in the openings loosen wax, and mould grows under it.",
        "bag": "It does better sealed in a vacuum bag, if its conditions hold.",
    },
    "creviced": {
        "natural": "Every crevice lets mould and mites in; a natural rind will not hold.",
        "cloth": "Crevices under cloth mould through.",
        "wax": "Wax cannot close crevices; whey and mould sit under it.",
        "bag": "Sealed in a vacuum bag it does best, if its conditions hold.",
    },
}
"""Word -> coat -> sentence. Bad rind, cracks, then moulds and mites: Thom & Fisk 1918 s. 207; bag: common practice."""
