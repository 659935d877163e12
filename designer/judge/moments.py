"""Where in a forecast the moments of a make lie, at which a style has its gates (`styles.settings.MOMENTS`)."""

from __future__ import annotations

from collections.abc import Mapping

from designer.forecast import Forecast

STARTS: Mapping[str, tuple[str, ...]] = {
    "cut": ("cut",),
    "drain": ("drain", "ladle", "hang"),
    "mill": ("mill",),
    "salt": ("salt",),
    "mould": ("fill", "ladle", "press"),
    "stretch": ("stretch", "scald"),
    "brine": ("brine", "hold_brine"),
}
ENDS: Mapping[str, str] = {"cook_end": "cook", "press_end": "press"}


def moments(forecast: Forecast) -> Mapping[str, float]:
    """Moment -> minute of the make, for the moments this make has."""
    stages = forecast.stages
    out: dict[str, float] = {}
    rennet = rennet_min(forecast)
    if rennet is not None:
        out["rennet"] = rennet
    for moment, kinds in STARTS.items():
        start = next((stage.start_min for stage in stages if stage.kind in kinds), None)
        if start is not None:
            out[moment] = start
    for moment, kind in ENDS.items():
        end = next((stage.end_min for stage in reversed(stages) if stage.kind == kind), None)
        if end is not None:
            out[moment] = end
    starter = starter_min(forecast)
    return out | {"h6": starter + 360.0, "h24": starter + 1440.0}


def starter_min(forecast: Forecast) -> float:
    """When the first starter goes in [min]; 0 where there is none."""
    begins = {stage.id: stage.start_min for stage in forecast.stages}
    first = next((stage.start_min for stage in forecast.stages if stage.kind == "ripen"), 0.0)
    given = [begins.get(one.at, first) + one.after_min for one in forecast.recipe.starters]
    return min(given, default=0.0)


def rennet_min(forecast: Forecast) -> float | None:
    """When the coagulant goes in [min]; None where none does."""
    begins = {stage.id: stage.start_min for stage in forecast.stages}
    given = [
        begins[one.at] + one.after_min
        for one in forecast.recipe.additions
        if one.what == "coagulant" and one.at in begins
    ]
    return min(given, default=None)
