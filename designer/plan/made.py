"""Published makes beside the forecast, as JSON: rows, mean errors, bands, effects."""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import Any

from designer.validate.effects import Effect
from designer.validate.report import AIMS, UNITS, Coverage, Mean, Row


def row_json(row: Row) -> dict[str, Any]:
    """One figure of a make; the keys of a law's figure, and what only a make has."""
    return {
        "case": row.figure.make,
        "quantity": row.figure.quantity,
        "unit": "",
        "class": row.figure.kind,
        "published": row.figure.value,
        "forecast": _finite(row.forecast),
        "error": _finite(row.error),
        "tolerance": None,
        "within": None,
        "source": row.figure.source,
        "have": row.figure.have,
        "place": row.figure.place,
        "printed": row.figure.printed,
        "family": row.family,
        "fitted": row.fitted,
        "error_out_of_fit": _finite(row.error_out),
        "low": _finite(row.low),
        "high": _finite(row.high),
    }


def summary_json(means: Sequence[Mean], covered: Sequence[Coverage], effects: Sequence[Effect]) -> dict[str, Any]:
    """{"means", "coverage", "effects"}: mean absolute errors with n and 80 % interval, bands, published effects."""
    return {
        "means": [
            {
                "line": mean.group,
                "unit": UNITS[mean.group],
                "class": mean.kind,
                "n": mean.n,
                "families": mean.families,
                "mean_error_fitted": mean.fitted,
                "mean_error_out_of_fit": mean.out,
                "low": mean.low,
                "high": mean.high,
                "aim": AIMS.get(mean.group),
            }
            for mean in means
        ],
        "coverage": [
            {"line": one.group, "n": one.n, "inside": one.inside, "low_pct": one.low_pct, "high_pct": one.high_pct}
            for one in covered
        ],
        "effects": [
            {
                "case": effect.id,
                "quantity": effect.figure.quantity,
                "published": effect.figure.value,
                "printed": effect.figure.printed,
                "forecast": effect.value(),
                "source": effect.figure.source,
                "have": effect.figure.have,
            }
            for effect in effects
        ],
    }


def _finite(value: float | None) -> float | None:
    return float(value) if value is not None and math.isfinite(value) else None
