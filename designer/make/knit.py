"""Knit: how well pieces of curd grow together in form and press - closed, nearly closed, open or creviced, and why.

Directions are published (Thom & Fisk 1918; Lodaite et al. 2002; Walstra); the weights are engineering defaults, the
`knit_*` rows of constants.toml. Every step is smooth, so the score moves with each setting instead of jumping.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from functools import cache
from types import SimpleNamespace
from typing import Any

import numpy as np
from numpy.typing import NDArray

from designer import language
from designer.language import say
from designer.make import constants
from designer.make.records import joined
from designer.make.seen import Curves, Series, StageDone
from designer.recipe.pressing import GRAVITY_M_S2
from designer.recipe.schedule import GEL_ACID_HEAT, PLACE_AIR, PLACE_DRAINED, PLACE_MOULD, PLACE_PRESS

WORDS = ("closed", "nearly closed", "open", "creviced")
WORTH_A_LINE = 0.02
"""Share of the score below which a loss is not worth a reason."""
LIGHTLY = 0.3
"""`disturbed` of curd that is only pushed aside while the whey runs; from here to 1 its grains fall apart."""


@dataclass(frozen=True, slots=True)
class Joining:
    """Curd as its pieces are laid together, in the press or (with none) in the form: all that the score rests on.

    Numbers, or arrays (m,) for m makes, nan where nothing is formed. `early_kpa` is the mean load of the first
    `knit_hard_min`, `load_kpa` the highest (own weight at the least); `loose` is 0 for a bed cut in blocks, 1 for
    grains or chips worked apart; `stretched` curd is one mass already.
    """

    temperature_c: Any
    ph: Any
    moisture_pct: Any
    salt_in_moisture_pct: Any
    load_kpa: Any
    early_kpa: Any
    contact_min: Any
    loose: Any
    stretched: Any

    def one(self, make: int) -> Joining | None:
        """A single make out of m, as plain numbers; None where nothing is formed."""
        values = {name: getattr(self, name)[make].item() for name in self.__dataclass_fields__}
        return None if np.isnan(values["temperature_c"]) else Joining(**values)


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
            return say("The cheese is likely {word}.", word=self.said)
        first = self.reasons[0].text
        if self.word == WORDS[0]:
            return say("The cheese is likely {word}; what costs it most: {reason}", word=self.said, reason=first)
        return say("The cheese is likely {word}: {reason}", word=self.said, reason=first)

    @property
    def said(self) -> str:
        """The word in the language spoken."""
        return language.word(self.word, "knit")


@cache
def _constants() -> SimpleNamespace:
    """The knit rows of constants.toml as plain numbers, named without their prefix."""
    rows = {name: row.value for name, row in constants.table().items()}
    own = {name.removeprefix("knit_"): value for name, value in rows.items() if name.startswith("knit_")}
    return SimpleNamespace(**own, density=rows["cheese_density"])


def joining(
    rows: NDArray[Any], ends: Series, used: NDArray[np.bool_], before: Callable[[NDArray[np.int64]], Sequence[Any]]
) -> Joining:
    """What the pieces are like when they meet, for m makes; nan where nothing is formed or acid and heat curdled it.

    `rows` (m, n) Schedule rows of which `used` (m, n) are marched before the first room; `ends` (m, n, 2) start and
    end of each [min]; `before(first)` gives temperature [°C], pH, moisture [%] and salt in moisture [%], each (m,),
    just before the row `first` (m,).
    """
    c, every = _constants(), np.arange(len(rows))
    pressed = (rows["place"] == PLACE_PRESS) & used
    formed = ((rows["place"] == PLACE_MOULD) & used) | pressed
    begin = np.where(pressed.any(axis=1), pressed.argmax(axis=1), formed.argmax(axis=1))
    known = formed.any(axis=1) & ~((rows["gel"] == GEL_ACID_HEAT) & used).any(axis=1)
    start = ends[every, begin, 0][:, None]
    early = np.maximum(np.minimum(ends[..., 1], start + c.hard_min) - np.maximum(ends[..., 0], start), 0.0)
    on_its_way = np.arange(rows.shape[1]) < formed.argmax(axis=1)[:, None]
    worked = np.where((rows["place"] == PLACE_DRAINED) & (rows["stretch"] == 0.0) & on_its_way, rows["disturbed"], 0.0)
    own_kpa = c.density * GRAVITY_M_S2 * np.where(formed, rows["height_mm"], 0.0).max(axis=1) * 1e-6
    lost = np.where(known, 0.0, np.nan)
    temperature_c, ph, moisture_pct, salt_in_moisture_pct = before(begin)
    return Joining(
        temperature_c=temperature_c + lost,
        ph=ph + lost,
        moisture_pct=moisture_pct + lost,
        salt_in_moisture_pct=salt_in_moisture_pct + lost,
        load_kpa=np.maximum(np.where(formed, rows["load_kpa"], 0.0).max(axis=1), own_kpa) + lost,
        early_kpa=(early * rows["load_kpa"] * formed).sum(axis=1) / c.hard_min,
        contact_min=((ends[..., 1] - ends[..., 0]) * formed).sum(axis=1),
        loose=np.minimum(np.maximum(worked.max(axis=1) - LIGHTLY, 0.0) / (1.0 - LIGHTLY), 1.0),
        stretched=((rows["stretch"] > 0.0) & used).any(axis=1),
    )


def of_stages(
    rows: NDArray[Any], stages: Sequence[StageDone], trace: Curves, earlier: NDArray[Any] | None = None
) -> Joining | None:
    """The same for one make, from its Schedule rows (n,), what its stages did, and its trace.

    `earlier` are the rows of the make a branch parted from: what was done to its curd before.
    """
    rows, begun = rows[rows["stage"] < len(stages)], 0
    if earlier is not None:
        begun, earlier = len(earlier), earlier.copy()
        earlier["place"][earlier["place"] > PLACE_DRAINED] = PLACE_AIR
        rows = joined([earlier, rows])
    ends = np.zeros((1, len(rows), 2))
    for index, done in enumerate(stages):
        own = begun + np.flatnonzero(rows["stage"][begun:] == index)
        until = done.start_min + np.cumsum(rows["minutes"][own])
        ends[0, own, 1] = np.minimum(until, done.end_min)
        ends[0, own, 0] = np.minimum(until - rows["minutes"][own], done.end_min)

    def before(first: NDArray[np.int64]) -> Sequence[Any]:
        earlier = np.flatnonzero(trace.stage < rows["stage"][first[0]])
        at = earlier[-1:] if earlier.size else np.array([0])
        moisture = trace["curd_moisture_pct"][at]
        return trace["temperature_c"][at], trace["ph"][at], moisture, 100.0 * trace["salt_pct"][at] / moisture

    return joining(rows[None], ends, np.ones((1, len(rows)), bool), before).one(0)


def _step(distance: Any, width: float) -> Any:
    """0 below, 1 above, a half where `distance` is nought; smooth over `width`."""
    return 0.5 + 0.5 * np.tanh(distance * (0.5 / width))


def factors(curd: Joining) -> dict[str, Any]:
    """What each circumstance leaves of the score (1 nothing lost), before moist curd runs together by itself."""
    c = _constants()
    salted = _step(curd.salt_in_moisture_pct - c.salted_pct, c.salted_width)
    need = c.press_sweet_kpa ** (1.0 - salted) * c.press_salted_kpa**salted
    at_once = _step(curd.early_kpa / curd.load_kpa - c.hard_share, c.hard_share_width)
    degrees = {
        "cold": _step(c.cold_c - curd.temperature_c, c.temperature_width),
        "warm": salted * _step(curd.temperature_c - c.warm_c, c.temperature_width),
        "sweet": salted * _step(curd.ph - c.sweet_ph, c.ph_width),
        "acid": _step(c.acid_ph - curd.ph, c.ph_width),
        "light": _step(np.log(0.5 * need / curd.load_kpa), c.light_width),
        "dry": _step(c.dry_pct - curd.moisture_pct, c.dry_width),
        "hard": at_once * _step(curd.early_kpa - c.hard_kpa, c.hard_width),
        "brief": _step(c.brief_min - curd.contact_min, c.brief_width),
        "loose": curd.loose,
    }
    return {key: 1.0 - (1.0 - getattr(c, f"{key}_left")) * degree for key, degree in degrees.items()}


def by_itself(curd: Joining) -> Any:
    """How far the curd runs together without help, 0-1: moist enough, or stretched to one mass."""
    c = _constants()
    return np.where(curd.stretched, 1.0, _step(curd.moisture_pct - c.moist_pct, c.moist_width))


def score(curd: Joining) -> Any:
    """Knit, 0 (loose pieces) to 1 (one smooth mass); shape of the figures, nan where nothing is formed."""
    product: Any = 1.0
    for left in factors(curd).values():
        product = product * left
    return 1.0 - (1.0 - by_itself(curd)) * (1.0 - product)


def word(value: float) -> str:
    """The word for a score; the limits are rows of constants.toml."""
    c = _constants()
    return WORDS[sum(value < limit for limit in (c.closed_from, c.nearly_from, c.open_from))]


def knit(curd: Joining) -> Knit:
    """The verdict on a joining, with reasons ranked by what they cost and what it means for each coat."""
    value, runs = float(score(curd)), float(by_itself(curd))
    lost = {key: (1.0 - runs) * (1.0 - float(left)) for key, left in factors(curd).items()}
    ranked = sorted((key for key in lost if lost[key] >= WORTH_A_LINE), key=lambda key: -lost[key])
    means = {coat: language.word(said, "knit") for coat, said in MEANS[word(value)].items()}
    return Knit(value, word(value), tuple(_reason(key, lost[key], curd) for key in ranked), means)


def _reason(key: str, lost: float, curd: Joining) -> Reason:
    text, remedy, source, have = REASONS[key]
    figures = {name: getattr(curd, name) for name in Joining.__dataclass_fields__}
    return Reason(key, lost, language.fill(text, "knit", **figures), language.word(remedy, "knit"), source, have)


_FISK_206 = "Thom & Fisk 1918, The Book of Cheese, s. 206"
REASONS: Mapping[str, tuple[str, str, str, str]] = {
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
