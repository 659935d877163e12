"""Published makes beside the forecast, on a terminal and as JSON: rows, mean errors, bands, effects."""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import Any

from rich.console import Console
from rich.markup import escape
from rich.table import Table

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


def print_makes(
    rows: Sequence[Row], means: Sequence[Mean], covered: Sequence[Coverage], effects: Sequence[Effect]
) -> None:
    """All of it as tables: every figure, then the means, the bands and the effects."""
    console = Console(highlight=False)
    table = Table("make", "quantity", "where", "class", "published", "forecast", "error", "out of the fit", "source")
    table.box = None
    for row in rows:
        out = row.error_out
        table.add_row(
            row.figure.make,
            row.figure.quantity,
            escape(row.figure.place),
            row.figure.kind,
            row.figure.printed,
            f"{row.forecast:.4g}",
            f"{row.error:+.2f}",
            "" if out is None else f"{out:+.2f}" if row.fitted else "never fitted",
            escape(f"{row.figure.source} ({row.figure.have})"),
        )
    console.print(table)
    console.print("\n[bold]Mean absolute error; out of the fit with its 80 % interval[/bold]")
    table = Table("", "class", "figures", "families", "as fitted", "out of the fit", "interval", "aim", box=None)
    for mean in means:
        aim = f"{AIMS[mean.group]:g}" if mean.kind == "all" and mean.group in AIMS else ""
        spread = f"{mean.low:.2g}-{mean.high:.2g}"
        counts = (str(mean.n), str(mean.families))
        line = escape(f"{mean.group} [{UNITS[mean.group]}]")
        table.add_row(line, mean.kind, *counts, f"{mean.fitted:.2g}", f"{mean.out:.2g}", spread, aim)
    console.print(table)
    if covered:
        console.print("\n[bold]Figures that the 80 % bands reach, out of the fit[/bold]")
        for one in covered:
            spread = f"{one.low_pct:.0f}-{one.high_pct:.0f} %"
            console.print(f"{one.group}: {one.inside} of {one.n} (80 % interval {spread})")
    console.print("\n[bold]Effects of one change[/bold]")
    for effect in effects:
        figure = effect.figure
        words = f"{effect.id}: {figure.quantity} {effect.value():+.2f}, published {figure.printed} ({figure.source}; "
        console.print(escape(words + f"{figure.have})"))


def _finite(value: float | None) -> float | None:
    return float(value) if value is not None and math.isfinite(value) else None
