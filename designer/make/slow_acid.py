"""Is the vat slow? Acid by six hours, warm hours of a lactic set, acidity at milling and drawing, degree-hours.

Limits per family stand in safety.toml (Delbes et al. 2006; Zehren & Zehren 1968). Each check looks at its own moment,
so a good pH later never lifts it. Readings of a real vat go through the same functions as a forecast.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

import numpy as np
from numpy.typing import NDArray

from designer.make.caution import Caution, Family, family, limit, say, table
from designer.make.seen import Curves, Figure, Series
from designer.recipe.document import Recipe
from designer.recipe.schedule import GEL_ACID_HEAT, GEL_LACTIC, PLACE_MILK, POPULATIONS
from designer.recipe.stages.salt import Salt
from designer.recipe.stages.stage import Stage
from designer.units import DAY_MIN

SIX_H_MIN = 360.0


def family_of(stages: Sequence[Stage], rows: NDArray[Any], hottest_c: float) -> Family | None:
    """The family of a make by what is done in it; None for curd made by acid and heat, which needs no acid in time."""
    gels, kinds = set(rows["gel"].tolist()), [stage.kind for stage in stages]
    if GEL_ACID_HEAT in gels:
        return None
    if GEL_LACTIC in gels:
        return family("lactic")
    cooked = family("cooked")
    assert cooked.cooked_from_c is not None
    if hottest_c >= cooked.cooked_from_c and "stretch" not in kinds:
        return cooked
    if "cook" in kinds and "wash" in kinds[kinds.index("cook") :]:
        return family("washed")
    milled = family("milled")
    assert milled.salted_from_pct is not None
    loose = sum(_of_curd_pct(stage) for stage in stages if isinstance(stage, Salt) and stage.on == "curd")
    return milled if "mill" in kinds or loose >= milled.salted_from_pct - 1e-9 else family("uncooked")


def _of_curd_pct(stage: Salt) -> float:
    """Salt strewn as a share of the curd [%], which is about a tenth of its milk."""
    return stage.salt_pct if stage.of == "curd" else 10.0 * stage.salt_pct


def by_six_hours(own: Family, ph: float, stage: str = "") -> Caution | None:
    """What a pH six hours after the starter means for a family; None where all is well."""
    if own.ph_6h_stop is not None and ph > own.ph_6h_stop:
        goal = own.ph_6h_watch if own.ph_6h_watch is not None else own.ph_6h_stop
        return say("slow-six-hours", stage, ph=ph, family=own.name, limit=goal, source=own.sourced)
    if own.ph_6h_watch is not None and ph > own.ph_6h_watch:
        figures = {"ph": ph, "family": own.name, "limit": own.ph_6h_watch, "stop": own.ph_6h_stop}
        return say("acid-behind", stage, source=own.sourced, **figures)
    return None


def at_milling(ph: float, stage: str = "") -> Caution | None:
    """What the pH of curd at milling or salting means, in place of a titration."""
    own = family("milled")
    assert own.ph_mill_stop is not None
    assert own.ph_mill_watch is not None
    if ph > own.ph_mill_stop:
        return say("subnormal-mill", stage, ph=ph, limit=own.ph_mill_stop, source=own.sourced)
    if ph > own.ph_mill_watch:
        return say("sweet-mill", stage, ph=ph, stop=own.ph_mill_stop, source=own.sourced)
    return None


def milling_acidity(acidity_pct: float, stage: str = "") -> Caution | None:
    """What the titrated whey of milled curd means [% lactic acid]; subnormal below the limit."""
    own = family("milled")
    assert own.mill_stop_pct is not None
    if acidity_pct < own.mill_stop_pct - 1e-9:
        figures = {"acidity": acidity_pct, "limit": own.mill_stop_pct, "source": own.sourced}
        return say("subnormal-mill-acidity", stage, **figures)
    return None


def drawing_acidity(acidity_pct: float, stage: str = "") -> Caution | None:
    """What the acidity of the whey drawn from washed curd means [% lactic acid]; subnormal at the limit and below."""
    own = family("washed")
    assert own.drawn_stop_pct is not None
    if acidity_pct <= own.drawn_stop_pct + 1e-9:
        return say("subnormal-drawn", stage, acidity=acidity_pct, limit=own.drawn_stop_pct, source=own.sourced)
    return None


def degree_hour_limit(hottest_f: float) -> float:
    """Degree-hours [°F h] the sausage trade allows at that hottest temperature [°F]; borrowed, passes no cheese."""
    own = table()["degree_hours"]
    if hottest_f < 90.0:
        return float(own["below_90_f"])
    return float(own["to_100_f"] if hottest_f <= 100.0 else own["above_100_f"])


def degree_hours(minute: Series, temperature_c: Series, ph: Series) -> tuple[float, float]:
    """Degree-hours [°F h above 60] until pH 5.3 is first reached, and the hottest °F till then; series (n,)."""
    own = table()["degree_hours"]
    reached = np.flatnonzero(ph <= own["until_ph"])
    until = int(reached[0]) + 1 if reached.size else len(minute)
    grows = temperature_c[:until] <= own["grows_to_c"]
    fahrenheit = temperature_c[:until] * 1.8 + 32.0
    above = np.clip(fahrenheit - own["start_f"], 0.0, None) * grows
    hottest = float(np.where(grows, fahrenheit, own["start_f"]).max())
    return float(np.trapezoid(above, minute[:until])) / 60.0, hottest


def warm_min(minute: Series, temperature_c: Series) -> Series:
    """Minutes above `warm_c` so far at each point, shape (n,)."""
    warm = (temperature_c > limit("warm_c").value).astype(float)
    steps = np.diff(minute, prepend=minute[0]) * (warm + np.roll(warm, 1)) / 2.0
    return np.asarray(np.cumsum(steps))


def cautions(
    recipe: Recipe, stages: Sequence[Stage], rows: NDArray[Any], starter_min: float, trace: Curves,
    outcomes: Mapping[str, Figure],
) -> list[Caution]:  # fmt: skip
    """All that the course of the acid asks to be said, for one lane with its Schedule rows."""
    minute, temp, ph = trace.time_min, trace["temperature_c"], trace["ph"]
    own = family_of(stages, rows, float(temp.max()))
    if own is None:
        return [say("heat-curd")]
    if not _sown(recipe, rows):
        own_acid = bool(rows["acid_mol_kg"].any())  # a branch carries what went into the main make, too
        acid = own_acid or any(given.what == "acid" for given in recipe.additions)
        return [say("acid-no-starter" if acid else "no-starter")]
    begin = _warm_from(minute, temp, starter_min)
    out = [_warm_hours(own, minute, temp, ph, starter_min)]
    if begin is not None:
        six = begin + SIX_H_MIN
        judged = family("warm_lactic") if own.key == "lactic" and _is_warm(minute, temp, begin) else own
        out += [by_six_hours(judged, float(np.interp(six, minute, ph))), _maybe(judged, outcomes)]
        out.append(_dead(own, minute, ph, begin))
        out.append(_waiting(rows, minute, temp, trace.stage, min(starter_min, begin)))
    if own.key == "milled" and "ph_mill" in outcomes:
        out.append(at_milling(outcomes["ph_mill"].value, _first(stages, ("mill", "salt"))))
    if own.key == "washed" and "acidity_drawn_pct" in outcomes:
        out.append(drawing_acidity(outcomes["acidity_drawn_pct"].value, _first(stages, ("drain", "wash"))))
    hours, hottest = degree_hours(minute, temp, ph)
    allowed = degree_hour_limit(hottest)
    if hours > allowed:
        borrowed = table()["degree_hours"]
        source = f"{borrowed['source']} ({borrowed['have']})"
        out.append(say("degree-hours", hours=hours, limit=allowed, source=source))
    found = [caution for caution in out if caution is not None]
    held = any(caution.level == "stop" for caution in found)
    return [caution for caution in found if not (held and caution.code == "acid-watch")]


def _sown(recipe: Recipe, rows: NDArray[Any]) -> bool:
    """Whether any living starter goes in, in this lane or the make it comes from."""
    own = any(rows[f"inoculum_{name}"].any() for name in POPULATIONS)
    return bool(own) or bool(recipe.starters)


def _first(stages: Sequence[Stage], kinds: tuple[str, ...]) -> str:
    """Id of the first stage of the first of these kinds that there is."""
    return next((stage.id for kind in kinds for stage in stages if stage.kind == kind), "")


def _warm_from(minute: Series, temperature_c: Series, starter_min: float) -> float | None:
    """When starter and warmth first meet [min]; None where the make stays cold."""
    warm = np.flatnonzero((minute >= starter_min - 1e-9) & (temperature_c > limit("warm_c").value))
    return float(minute[warm[0]]) if warm.size else None


def _is_warm(minute: Series, temperature_c: Series, begin: float) -> bool:
    """Whether the first six hours are as warm on the mean as those of a rennet vat."""
    hours = np.linspace(begin, min(begin + SIX_H_MIN, float(minute[-1])), 73)
    return float(np.interp(hours, minute, temperature_c).mean()) >= limit("warm_set_c").value


def _warm_hours(own: Family, minute: Series, temp: Series, ph: Series, starter_min: float) -> Caution | None:
    """A lactic set by the warm hours it took to its pH."""
    if own.warm_h_stop is None or own.warm_h_watch is None or own.ph_until is None:
        return None
    reached = np.flatnonzero((ph <= own.ph_until) & (minute >= starter_min - 1e-9))
    last = int(reached[0]) if reached.size else len(minute) - 1
    so_far = warm_min(minute, temp)
    hours = float(so_far[last] - np.interp(starter_min, minute, so_far)) / 60.0
    figures: dict[str, Any] = {"hours": hours, "warm": limit("warm_c").value, "ph": own.ph_until, "source": own.sourced}
    if hours > own.warm_h_stop:
        return say("slow-warm-hours", **figures)
    return say("warm-hours", stop=own.warm_h_stop, **figures) if hours > own.warm_h_watch else None


def _maybe(own: Family, outcomes: Mapping[str, Figure]) -> Caution | None:
    """The upper end of the band lies past the stop line where the forecast itself does not."""
    figure = outcomes.get("ph_6h")
    if figure is None or own.ph_6h_stop is None or not figure.high > own.ph_6h_stop >= figure.value:
        return None
    return say("slow-maybe", ph=figure.high, limit=own.ph_6h_stop, family=own.name, source=own.sourced)


def _dead(own: Family, minute: Series, ph: Series, begin: float) -> Caution | None:
    """No acid a day after the starter."""
    day, dead = begin + DAY_MIN, limit("dead_ph")
    if own.key == "lactic" and minute[-1] < day - 1.0:
        return None
    at_a_day = float(np.interp(day, minute, ph))
    return say("dead-vat", ph=at_a_day, source=f"{dead.source} ({dead.have})") if at_a_day > dead.value else None


def _waiting(
    rows: NDArray[Any], minute: Series, temp: Series, stage: NDArray[np.int32], until: float
) -> Caution | None:
    """Milk that stands warm before its starter."""
    longest = limit("waiting_h").value
    if until <= 60.0 * longest:
        return None
    milk = np.isin(stage, np.unique(rows["stage"][rows["place"] == PLACE_MILK]))
    hours = float(np.interp(until, minute, warm_min(minute, np.where(milk, temp, 0.0)))) / 60.0
    return say("warm-waiting", hours=hours, limit=longest) if hours > longest else None
