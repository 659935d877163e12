"""When the moments of a make come (rennet, cut, whey off, milling) and what its settings are, read from a forecast.

Gates of a style stand at these moments; make windows are compared with these settings.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from designer.forecast import Forecast, StageForecast
from designer.units import DAY_MIN

MILK_KG_PER_L = 1.03
UNDER_WHEY = frozenset(("cut", "rest", "stir", "cook", "wash", "settle"))
AGEING = frozenset(("drying", "room", "hold_brine"))
_STARTS = {
    "cut": ("cut", "ladle"),
    "mill": ("mill",),
    "salt": ("salt",),
    "mould": ("fill", "ladle", "press"),
    "stretch": ("stretch",),
    "brine": ("brine", "hold_brine"),
}


def moments(forecast: Forecast) -> dict[str, float]:
    """Moment (a key of styles.settings.MOMENTS) -> minute of the make; a moment this make has not is left out."""
    stages = forecast.stages
    out = {
        name: stage.start_min
        for name, kinds in _STARTS.items()
        if (stage := next((one for one in stages if one.kind in kinds), None)) is not None
    }
    at = {stage.id: stage.start_min for stage in stages}
    if (rennet := _first_given(forecast, at, "coagulant")) is not None:
        out["rennet"] = rennet
    drawn = next((stage for stage in stages if _draws_whey(forecast, stage)), None)
    if drawn is not None:
        out["drain"] = drawn.start_min
    cooked = [stage.end_min for stage in stages if stage.kind == "cook"]
    warmed = cooked or [stage.end_min for stage in stages if stage.kind == "wash"]
    if warmed:
        out["cook_end"] = warmed[-1]
    pressed = [stage.end_min for stage in stages if stage.kind == "press"]
    if pressed:
        out["press_end"] = pressed[-1]
    started = _first_given(forecast, at, "starter")
    for name, hours in (("h6", 6), ("h24", 24)):
        minute = (started or 0.0) + 60.0 * hours
        if forecast.trace.time_min.size and minute <= forecast.trace.time_min[-1] + 1e-6:
            out[name] = minute
    return out


def settings(forecast: Forecast, when: Mapping[str, float]) -> dict[str, float]:
    """Setting (a key of styles.settings.SETTINGS) -> value in this make; what the make has not is left out.

    `when` are the moments of the same forecast.
    """
    by_id = _by_id(forecast)
    out: dict[str, float] = {}
    total = {"ripen": 0.0, "stack": 0.0, "press": 0.0, "brine": 0.0, "hang": 0.0}
    before_c: float | None = None
    after_cut = False
    for ran in forecast.stages:
        stage, length, end_c = by_id.get(ran.id), ran.end_min - ran.start_min, ran.values.get("temperature_c")
        if ran.kind in total:
            total[ran.kind] += length
        if ran.kind == "ripen" and end_c is not None:
            out["ripen_c"] = end_c
        elif ran.kind in ("set", "lactic_set") and end_c is not None:
            out["set_c"] = end_c
            out["set_min"] = length
        elif ran.kind == "rest" and after_cut:
            out["heal_min"] = out.get("heal_min", 0.0) + length
        after_cut = ran.kind == "cut" or (after_cut and ran.kind == "rest")
        if ran.kind in UNDER_WHEY and end_c is not None:
            out["cook_c"] = max(out.get("cook_c", end_c), end_c)
        if ran.kind == "cook" and end_c is not None and before_c is not None and length > 0.0 and end_c > before_c:
            ramp = getattr(stage, "ramp_min", None) or length
            out["cook_rate_c_min"] = max(out.get("cook_rate_c_min", 0.0), (end_c - before_c) / ramp)
        if stage is not None:
            _read_fields(forecast, ran, stage, out)
        before_c = end_c if end_c is not None else before_c
    for name, key, unit in _TOTALS:
        if total[name] > 0.0:
            out[key] = total[name] / unit
    aged = sum(stage.end.planned_min for stage in own_stages(forecast) if stage.kind in AGEING)
    if aged > 0.0:
        out["age_days"] = aged / DAY_MIN
    _read_outcomes(forecast, when, out)
    return out


_TOTALS = (
    ("ripen", "ripen_min", 1.0),
    ("stack", "stack_min", 1.0),
    ("press", "press_h", 60.0),
    ("brine", "brine_h", 60.0),
    ("hang", "hang_h", 60.0),
)


def _read_fields(forecast: Forecast, ran: StageForecast, stage: Any, out: dict[str, float]) -> None:
    """Settings that stand in the recipe's own fields."""
    match ran.kind:
        case "cut" | "ladle" if "cut_mm" not in out and getattr(stage, "cut_mm", None):
            out["cut_mm"] = stage.cut_mm
        case "wash":
            out["wash_pct"] = out.get("wash_pct", 0.0) + _water_pct(forecast, stage)
            out["wash_c"] = stage.water_c
            if "whey_in_vat_kg_per_100kg" in forecast.trace.columns:
                in_vat = forecast.trace.at("whey_in_vat_kg_per_100kg", ran.start_min)
                out["whey_off_pct"] = out.get("whey_off_pct", 0.0) + in_vat * stage.whey_off_pct / 100.0
        case "salt" if stage.of == "curd" and stage.on == "curd":
            out["salt_curd_pct"] = out.get("salt_curd_pct", 0.0) + stage.salt_pct
        case "stretch":
            out["stretch_c"] = stage.water_c
        case "scald":
            out["scald_c"] = stage.bath_c
        case "brine":
            out["brine_pct"], out["brine_c"] = stage.strength_pct, stage.brine_c
        case "hold_brine" if "brine_pct" not in out:
            out["brine_pct"], out["brine_c"] = stage.strength_pct, stage.brine_c


def _read_outcomes(forecast: Forecast, when: Mapping[str, float], out: dict[str, float]) -> None:
    """Settings that only the forecast knows: flocculation, the multiple reached, the pressure on the cheese."""
    outcomes = forecast.outcomes
    if "floc_min" in outcomes and outcomes["floc_min"].value > 0.0 and "set_min" in out:
        out["floc_min"] = outcomes["floc_min"].value
        if "cut_min" in outcomes:
            out["set_min"] = outcomes["cut_min"].value
            out["floc_multiple"] = outcomes["cut_min"].value / outcomes["floc_min"].value
    if "press_kpa" in outcomes and outcomes["press_kpa"].value > 0.0:
        out["press_kpa"] = outcomes["press_kpa"].value
    if "cut" in when and "drain" in when:
        out["cut_to_drain_min"] = when["drain"] - when["cut"]


def _water_pct(forecast: Forecast, stage: Any) -> float:
    """Wash water as share of the milk's mass [%]."""
    if stage.water_pct is not None:
        return float(stage.water_pct)
    milk_kg = sum(milk.mass_kg or (milk.volume_l or 0.0) * MILK_KG_PER_L for milk in forecast.recipe.milks)
    return 100.0 * float(stage.water_l) / milk_kg if milk_kg else 0.0


def own_stages(forecast: Forecast) -> Sequence[Any]:
    """The recipe's stages of this lane, also those after the make has ended."""
    recipe = forecast.recipe
    if forecast.branch_id is None:
        return recipe.stages
    return next(branch.stages for branch in recipe.branches if branch.id == forecast.branch_id)


def _by_id(forecast: Forecast) -> Mapping[str, Any]:
    return {stage.id: stage for stage in own_stages(forecast)}


def _draws_whey(forecast: Forecast, ran: StageForecast) -> bool:
    """True for the stage at which whey first leaves the vat."""
    if ran.kind == "wash":
        stage = _by_id(forecast).get(ran.id)
        return stage is not None and stage.whey_off_pct > 0.0
    return ran.kind in ("drain", "ladle", "hang")


def _first_given(forecast: Forecast, at: Mapping[str, float], what: str) -> float | None:
    """Minute at which the first starter or coagulant goes in, None if there is none; unnamed starters go in first."""
    lanes = forecast.recipe.lanes()
    given: list[Any] = (
        [one for lane in lanes for one in lane.starters]
        if what == "starter"
        else [one for lane in lanes for one in lane.additions if one.what == what]
    )
    first = forecast.stages[0].id if forecast.stages else ""
    ripening = next((stage.id for stage in forecast.stages if stage.kind == "ripen"), first)
    minutes = [at[place] + one.after_min for one in given if (place := one.at or ripening) in at]
    return min(minutes) if minutes else None
