"""Scaling and comparing as tables on a terminal and as JSON: what `curdwright scale` and `compare` print."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from rich.console import Console
from rich.table import Table

from designer.forecast import Forecast
from designer.plan.as_json import number
from designer.quantities import QUANTITIES
from designer.recipe.scale import Rule, Scaled
from designer.units import show

BESIDE = (
    "moisture_pct",
    "fdm_pct",
    "salt_in_moisture_pct",
    "ph_24h",
    "calcium_mg_per_g_protein",
    "yield_kg_per_100kg",
    "cheese_kg",
    "finish_min",
)
"""Outcomes that two makes are set beside each other by."""
RULES: tuple[Rule, ...] = (
    "by milk",
    "by area",
    "by thickness squared",
    "by the vat's power",
    "to be checked",
    "unchanged",
)


def scaled_json(scaled: Scaled, before: Forecast, after: Forecast) -> dict[str, Any]:
    """{"factor", "lines": [{"part", "of", "what", "before", "after", "rule", "why"}], "outcomes": {key: {...}}}."""
    lines = [
        {
            "part": line.part,
            "of": line.of,
            "what": line.what,
            "before": line.before,
            "after": line.after,
            "rule": line.rule,
            "why": line.why,
        }
        for line in scaled.lines
    ]
    return {"factor": number(scaled.factor), "lines": lines, "outcomes": _beside(before, after)}


def _beside(before: Forecast, after: Forecast) -> Mapping[str, Any]:
    return {
        key: {"before": number(before.outcomes[key].value), "after": number(after.outcomes[key].value)}
        for key in BESIDE
        if key in before.outcomes and key in after.outcomes
    }


def print_scaled(scaled: Scaled, before: Forecast, after: Forecast) -> None:
    """Rule by rule what becomes of every line; then what cheese comes of both."""
    console = Console(highlight=False)
    console.print(f"{show(scaled.factor, 'ratio')} times the milk. Every line says by which rule it goes.")
    for rule in RULES:
        lines = scaled.by(rule)
        if not lines:
            continue
        console.print(f"\n[bold]{rule.capitalize()}[/bold]")
        if rule == "unchanged":
            console.print(_plain("; ".join(f"{line.of}: {line.what} {line.before}" for line in lines)))
            continue
        for line in lines:
            figure = f"{line.before} → {line.after}" if line.changed else line.before
            console.print(_plain(f"{line.of}: {line.what} {figure} ({line.why})"))
    console.print()
    console.print(outcomes_table(before, after, "before", "after"))


def outcomes_table(left: Forecast, right: Forecast, left_name: str, right_name: str) -> Table:
    """Two forecasts side by side."""
    table = Table(box=None, pad_edge=False)
    table.add_column("outcome")
    for name in (left_name, right_name, "difference"):
        table.add_column(_plain(name), justify="right")
    for key in BESIDE:
        if key in left.outcomes and key in right.outcomes:
            values = left.outcomes[key].value, right.outcomes[key].value
            table.add_row(QUANTITIES[key].label, *(shown(key, value) for value in values), change(key, values))
    return table


def shown(key: str, value: float) -> str:
    """An outcome with its unit."""
    quantity = QUANTITIES[key]
    if quantity.kind == "duration":
        return show(value, "duration")
    return f"{value:.{quantity.decimals}f} {quantity.unit}".rstrip()


def change(key: str, values: tuple[float, float]) -> str:
    """The difference of two outcomes, with its sign."""
    amount = values[1] - values[0]
    sign = "+" if amount >= 0.0 else "−"
    quantity = QUANTITIES[key]
    if quantity.kind == "duration":
        return f"{sign}{show(abs(amount), 'duration')}"
    return f"{sign}{abs(amount):.{quantity.decimals}f}"


def _plain(text: str) -> str:
    """Text that the console takes as it is."""
    return text.replace("[", "\\[")
