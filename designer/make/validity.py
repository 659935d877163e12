"""Where a law was used outside what it is known for, in words, and which outcomes that concerns.

What a law is known for stands beside it: its range in the chapter, its figures in constants.toml and in validate.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from types import SimpleNamespace

import numpy as np

from designer.language import fill, mark, word
from designer.make.march import OUT_EXTRA
from designer.make.run import LaneRun
from designer.make.set import SET_C_HIGH, SET_C_LOW, heat_curdled
from designer.make.state import CASEIN, COLLOIDAL, CURD, T
from designer.recipe.schedule import GEL_ACID_HEAT, GEL_LACTIC, GEL_RENNET, PLACE_BRINE, PLACE_MILK

DRAINAGE = frozenset(
    ("moisture_pct", "mnfs_pct", "fat_pct", "protein_pct", "yield_kg_per_100kg", "cheese_kg", "whey_kg_per_100kg",
     "fat_recovery_pct")
)  # fmt: skip
SALT = frozenset(("salt_pct", "salt_in_moisture_pct", "moisture_pct"))
LACTIC_PH, LACTIC_C = 4.8, 56.0
"""Where the makes lie that the drainage of acid gels is held to."""
OF_LACTIC = frozenset(("lactic_set", "ladle", "hang", "cut", "stir", "cook", "drain"))
OF_ACID_HEAT = frozenset(("heat", "acid_heat", "ladle", "hang", "drain"))
OF_STRETCH, OF_BRINE, OF_RENNET = (
    frozenset(("stretch",)),
    frozenset(("brine", "hold_brine")),
    frozenset(("ripen", "set")),
)
BRINE_C = (4.0, 20.0)
"""Floury et al. 2010: where the pace of salt was measured."""
CURDLED_WELL = 0.9
STRETCH_CALCIUM, STRETCH_PH, STRETCH_C = 28.0, 4.95, 54.0
"""Bound calcium [mg per g casein] at about pH 5.5 of a cultured curd; practice stretches at pH 5.1-5.4 and 55-65 °C,
directly acidified curd, with less calcium, from 5.7 (from memory, high)."""

SCALD_C, BATH_C = 78.0, 60.0
"""Where pieces are drawn together whole, and the bath that is meant to do it (common practice, no source)."""

DENATURED_MUCH = 0.25
"""Share of whey protein denatured from which rennet curd is clearly weak (milk of 85 °C on; from memory, high)."""

LACTIC = mark(
    "Lactic curd: the few published makes came within about 3 points of moisture of this law; take moisture and yield "
    "with that."
)
LACTIC_SWEET = mark("The curd begins to drain at pH {ph:.1f}; the drainage of lactic curd is known below {limit:.1f}.")
LACTIC_WARM = mark("Lactic curd is warmed to {temp:.0f} °C here; its drainage is known up to {limit:.0f} °C.")
ACID_HEAT = mark(
    "Acid-and-heat curd drains by a law that rests on four cheeses (ricotta, chhana, paneer, Queso blanco); take "
    "moisture and yield as a first guess."
)
NOT_CURDLED = mark(
    "At pH {ph:.1f} and {temp:.0f} °C acid has curdled only about {share:.0f} % of it; the rest goes with the whey. It "
    "takes more acid, or more heat."
)
STRETCHED = mark(
    "What stretching takes and gives of water and fat is known by its direction; its size is an engineering default."
)
STRETCH_TOUGH = mark(
    "At pH {ph:.1f} the curd still holds {calcium:.0f} mg of bound calcium per g of casein; above about {limit:.0f} it "
    "tears instead of stretching. Let it sour further."
)
STRETCH_SHORT = mark("At pH {ph:.1f} the curd is past its stretch: it turns short and loses fat.")
STRETCH_COLD = mark(
    "The curd reaches only {temp:.0f} °C in this water; below about {limit:.0f} °C it does not flow. It takes hotter "
    "water, or more of it."
)
SCALDED = mark(
    "What scalded pieces let go of their water rests on remembered compositions; take moisture within about 3 points."
)
SCALD_COLD = mark(
    "The pieces reach only {temp:.0f} °C in this bath; below about {limit:.0f} °C they shrink little and stay soft. It "
    "takes a hotter bath, a longer one, or smaller pieces."
)
BRINE = mark(
    "A brine of {temp:.0f} °C lies outside the {low:.0f}-{high:.0f} °C at which the pace of salt was measured."
)
NOT_SET = mark(
    "The milk is cut {cut:.0f} min after the coagulant and flocculates only after {floc:.0f}: it has not set, and "
    "what is forecast is curd of a gel. It takes more coagulant, more time, or more warmth."
)
NEVER_SET = mark(
    "The milk is cut {cut:.0f} min after the coagulant and has not even flocculated: what is forecast is curd of a "
    "gel. It takes more coagulant, more time, or more warmth."
)
HEATED = mark(
    "About {share:.0f} % of the whey protein of this milk is denatured by heat: with rennet it sets softly, and how "
    "much more whey its curd holds is a rough estimate."
)
RENNET = mark("Rennet at {temp:.0f} °C lies outside the {low:.0f}-{high:.0f} °C the setting law knows.")


@dataclass(frozen=True, slots=True)
class Remark:
    """One sentence, the outcomes it concerns (none named: all), the kinds of stages whose settings act by its law."""

    text: str
    about: frozenset[str] = frozenset()
    stages: frozenset[str] = frozenset()

    def concerns(self, outcome: str) -> bool:
        """Whether that outcome should carry it."""
        return not self.about or outcome in self.about


def remarks(own: LaneRun) -> tuple[Remark, ...]:
    """All that is to be said of a marched lane, of one law the most pointed first: an outcome shows its first."""
    return (
        *_lactic(own), *_acid_heat(own), *_stretched(own), *_scalded(own), *_brined(own), *_rennet(own), *_set(own),
    )  # fmt: skip


def _lactic(own: LaneRun) -> Iterator[Remark]:
    if not (own.rows["gel"] == GEL_LACTIC).any():
        return
    drained = own.path.out[np.isin(own.path.out[:, 1], np.flatnonzero(own.rows["place"] != PLACE_MILK))]
    if drained.size:
        ph, temp = float(drained[0, 2]), float(drained[:, OUT_EXTRA + T].max())
        if ph > LACTIC_PH:
            yield Remark(fill(LACTIC_SWEET, ph=ph, limit=LACTIC_PH), DRAINAGE, OF_LACTIC)
        if temp > LACTIC_C + 1.0:
            yield Remark(fill(LACTIC_WARM, temp=temp, limit=LACTIC_C), DRAINAGE, OF_LACTIC)
    yield Remark(word(LACTIC), DRAINAGE, OF_LACTIC)


def _acid_heat(own: LaneRun) -> Iterator[Remark]:
    rows = np.flatnonzero(own.rows["gel"] == GEL_ACID_HEAT)
    if not rows.size:
        return
    last = own.path.out[own.path.out[:, 1] <= rows[-1]][-1]
    ph, temp = float(last[2]), float(last[OUT_EXTRA + T])
    curdled = heat_curdled(ph, temp, SimpleNamespace(**{name: float(own.p[name]) for name in own.p.dtype.names}))
    if curdled < CURDLED_WELL:
        yield Remark(fill(NOT_CURDLED, ph=ph, temp=temp, share=100.0 * curdled), DRAINAGE, OF_ACID_HEAT)
    yield Remark(word(ACID_HEAT), DRAINAGE, OF_ACID_HEAT)


def _stretched(own: LaneRun) -> Iterator[Remark]:
    at = np.flatnonzero(np.isin(own.path.out[:, 1], np.flatnonzero(own.rows["stretch"] > 0.0)))
    if not at.size:
        return
    first = own.path.out[at[0]]
    ph, temp = float(first[2]), float(own.path.out[at, OUT_EXTRA + T].max())
    bound = 1000.0 * float(first[OUT_EXTRA + COLLOIDAL] / first[OUT_EXTRA + CURD + CASEIN])
    if bound > STRETCH_CALCIUM:
        yield Remark(fill(STRETCH_TOUGH, ph=ph, calcium=bound, limit=STRETCH_CALCIUM), DRAINAGE, OF_STRETCH)
    elif ph < STRETCH_PH:
        yield Remark(fill(STRETCH_SHORT, ph=ph), DRAINAGE, OF_STRETCH)
    if temp < STRETCH_C:
        yield Remark(fill(STRETCH_COLD, temp=temp, limit=STRETCH_C), DRAINAGE, OF_STRETCH)
    yield Remark(word(STRETCHED), DRAINAGE, OF_STRETCH)


def _scalded(own: LaneRun) -> Iterator[Remark]:
    bath = (own.rows["place"] == PLACE_BRINE) & (own.rows["brine_pct"] == 0.0) & (own.rows["stretch"] == 0.0)
    at = np.flatnonzero(np.isin(own.path.out[:, 1], np.flatnonzero(bath & (own.rows["follow_c"] >= BATH_C))))
    if not at.size:
        return
    temp = float(own.path.out[at, OUT_EXTRA + T].max())
    if temp < SCALD_C:
        yield Remark(fill(SCALD_COLD, temp=temp, limit=SCALD_C), DRAINAGE)
    yield Remark(word(SCALDED), DRAINAGE)


def _brined(own: LaneRun) -> Iterator[Remark]:
    temps = own.rows["follow_c"][(own.rows["place"] == PLACE_BRINE) & (own.rows["brine_pct"] > 0.0)]
    far = temps[(temps < BRINE_C[0]) | (temps > BRINE_C[1])]
    if far.size:
        yield Remark(fill(BRINE, temp=float(far[0]), low=BRINE_C[0], high=BRINE_C[1]), SALT, OF_BRINE)


def _rennet(own: LaneRun) -> Iterator[Remark]:
    minute = own.path.rennet_min
    if minute < 0.0:
        return
    temp = float(np.interp(minute, own.path.out[:, 0], own.path.out[:, OUT_EXTRA + T]))
    if not SET_C_LOW <= temp <= SET_C_HIGH:
        yield Remark(fill(RENNET, temp=temp, low=SET_C_LOW, high=SET_C_HIGH), stages=OF_RENNET)


def _set(own: LaneRun) -> Iterator[Remark]:
    """Rennet milk cut before it flocculates, when it has no firmness at all, and milk that was heated high."""
    path = own.path
    if path.rennet_min < 0.0 or not (own.rows["gel"] == GEL_RENNET).any():
        return
    cut = path.cut_min - path.rennet_min
    if path.cut_min >= path.rennet_min:
        if path.floc_min < 0.0:
            yield Remark(fill(NEVER_SET, cut=cut), stages=OF_RENNET)
        elif cut < path.floc_min:
            yield Remark(fill(NOT_SET, cut=cut, floc=path.floc_min), stages=OF_RENNET)
    denatured = float(own.p["heat_denatured"])
    if denatured >= DENATURED_MUCH:
        yield Remark(fill(HEATED, share=100.0 * denatured), DRAINAGE, OF_RENNET)
