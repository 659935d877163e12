"""A forecast and a verdict as plain JSON, for scripts and other programs: the contract of `--json`.

Numbers are in base units (°C, min, kg, %); what a forecast can't say is null, never NaN.
"""

from __future__ import annotations

import json
import math
from collections.abc import Iterable
from typing import Any

import numpy as np

from designer.forecast import Caution, Forecast, Outcome, StageForecast
from designer.judge.verdict import Verdict
from designer.plan.clock import Clock
from designer.validate.published import Compared

FIGURES = 8


def forecast_json(forecast: Forecast) -> dict[str, Any]:
    """{"recipe", "start", "stages", "trace", "outcomes", "cautions", "notes", "branches"}; branches are the same."""
    clock = Clock(forecast.recipe.start_clock_min)
    data = {
        "recipe": forecast.recipe.name,
        "style": forecast.recipe.style,
        "start": None if clock.start_min is None else clock.read(0.0),
        "stages": [_stage(stage, clock) for stage in forecast.stages],
        "trace": _trace(forecast),
        "outcomes": {key: _outcome(outcome) for key, outcome in forecast.outcomes.items()},
        "cautions": [_caution(caution) for caution in forecast.cautions],
        "notes": list(forecast.notes),
        "branches": [forecast_json(branch) | {"id": branch.branch_id} for branch in forecast.branches],
    }
    return data


def dumps(data: Any) -> str:
    """JSON text; ASCII, so that any console and pipe can carry it."""
    return json.dumps(data, indent=1, allow_nan=False)


def number(value: float) -> float | None:
    """A finite number to eight figures, else None."""
    return float(f"{value:.{FIGURES}g}") if math.isfinite(value) else None


def _numbers(values: Iterable[float]) -> list[float | None]:
    return [number(float(value)) for value in values]


def _stage(stage: StageForecast, clock: Clock) -> dict[str, Any]:
    at_end = {f"{key}_end": number(value) for key, value in stage.values.items()}
    return {
        "id": stage.id,
        "name": stage.name,
        "kind": stage.kind,
        "start_min": number(stage.start_min),
        "end_min": number(stage.end_min),
        "end_low_min": number(stage.end_low_min),
        "end_high_min": number(stage.end_high_min),
        "clock": None if clock.start_min is None else clock.read(stage.start_min),
        "reached": stage.reached,
        "temperature_c": at_end.get("temperature_c_end"),
        **at_end,
    }


def _trace(forecast: Forecast) -> dict[str, Any]:
    trace = forecast.trace
    out: dict[str, Any] = {"time_min": _numbers(trace.time_min), "stage": [int(index) for index in trace.stage]}
    out |= {name: _numbers(np.asarray(column)) for name, column in trace.columns.items()}
    if forecast.bands is not None:
        for name in forecast.bands.low:
            out[f"{name}_low"] = _numbers(forecast.bands.low[name])
            out[f"{name}_high"] = _numbers(forecast.bands.high[name])
    return out


def _outcome(outcome: Outcome) -> dict[str, Any]:
    return {
        "value": number(outcome.value),
        "low": number(outcome.low),
        "high": number(outcome.high),
        "outside": outcome.outside,
    }


def _caution(caution: Caution) -> dict[str, str]:
    return {
        "code": caution.code,
        "level": caution.level,
        "text": caution.text,
        "source": caution.source,
        "stage": caution.stage,
    }


def verdict_json(verdict: Verdict) -> dict[str, Any]:
    """{"style", "name", "state", "sentence", "chance", "rules", "conditions", "rows"}; a row as `judge.verdict.Row`."""
    return {
        "style": verdict.style,
        "name": verdict.name,
        "state": verdict.state,
        "sentence": verdict.sentence,
        "chance": None if verdict.chance is None else number(verdict.chance),
        "rules": list(verdict.rules),
        "conditions": list(verdict.conditions),
        "rows": [{key: _plain(value) for key, value in row._asdict().items()} for row in verdict.rows],
    }


def compared_json(compared: Iterable[Compared]) -> list[dict[str, Any]]:
    """Published figures beside ours, one object each."""
    return [
        {
            "case": one.published.case,
            "quantity": one.published.quantity,
            "unit": one.published.unit,
            "class": one.published.kind,
            "published": number(one.published.value),
            "forecast": number(one.ours),
            "error": number(one.error),
            "tolerance": number(one.published.tolerance),
            "within": one.within,
            "source": one.published.source,
            "have": one.published.have,
        }
        for one in compared
    ]


def _plain(value: Any) -> Any:
    return number(float(value)) if isinstance(value, float) else value
