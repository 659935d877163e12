"""Forecast, verdict and check data as tables on a terminal."""

from __future__ import annotations

import math
from collections.abc import Sequence

from rich.console import Console
from rich.table import Table

from designer.forecast import Forecast
from designer.judge.verdict import NOT_MET, Row, Verdict
from designer.language import headed, mark, number, say, word
from designer.make.caution import Caution
from designer.plan.clock import Clock
from designer.quantities import QUANTITIES
from designer.units import System, show

SHOWN = (
    "moisture_pct",
    "mnfs_pct",
    "fdm_pct",
    "fat_pct",
    "protein_pct",
    "salt_pct",
    "salt_in_moisture_pct",
    "ph_24h",
    "yield_kg_per_100kg",
    "cheese_kg",
    "calcium_mg_per_g_protein",
    "floc_min",
    "cut_min",
    "ph_drain",
)
SECTIONS = {
    "limit": mark("Limits"),
    "class": mark("Class"),
    "milk": mark("Milk"),
    "age": mark("Age"),
    "quality": mark("Quality"),
    "make": mark("The make"),
    "curve": mark("The curve"),
}


def print_forecast(forecast: Forecast, system: System = "metric") -> None:
    """Stages, outcomes with their range, cautions and notes."""
    console = Console(highlight=False)
    recipe, clock = forecast.recipe, Clock(forecast.recipe.start_clock_min)
    console.print(f"[bold]{_plain(recipe.name)}[/bold]  {_plain(recipe.place)}")
    console.print(_stages(forecast, clock, system))
    console.print(_outcomes(forecast))
    _print_said(console, forecast.cautions, forecast.notes)
    for branch in forecast.branches:
        console.print(say("\n[bold]Branch {branch_id}[/bold]", branch_id=_plain(branch.branch_id or "")))
        console.print(_stages(branch, clock, system))
        console.print(_outcomes(branch))
        _print_said(
            console,
            [caution for caution in branch.cautions if caution not in forecast.cautions],
            [note for note in branch.notes if note not in forecast.notes],
        )


def _print_said(console: Console, cautions: Sequence[Caution], notes: Sequence[str]) -> None:
    """Cautions and remarks of a lane; of a branch those that are its own."""
    for caution in cautions:
        source = f" ({caution.source})" if caution.source else ""
        console.print(
            headed(word(caution.level, "level"), _plain(caution.text + source)),
            style="bold" if caution.level == "stop" else "",
        )
    for note in notes:
        console.print(say("model: {note}", note=_plain(note)))


def print_verdict(verdict: Verdict) -> None:
    """The verdict in a sentence, then its rows by section, then the conditions."""
    console = Console(highlight=False)
    console.print(
        say(
            "[bold]{name}: {state}[/bold]. {sentence}",
            name=_plain(verdict.name),
            state=word(verdict.state, "state"),
            sentence=_plain(verdict.sentence),
        )
    )
    for section in SECTIONS:
        rows = verdict.section(section)
        if rows:
            console.print(_rows(word(SECTIONS[section]), rows))
    for condition in verdict.conditions:
        console.print(f"- {_plain(condition)}")


def _stages(forecast: Forecast, clock: Clock, system: System) -> Table:
    table = Table(
        "",
        say("stage"),
        say("from"),
        say("to"),
        "",
        say("temperature"),
        "pH",
        say("moisture"),
        say("whey off"),
        box=None,
    )
    for place, stage in enumerate(forecast.stages, start=1):
        values = stage.values
        table.add_row(
            str(place),
            _plain(stage.name),
            clock.read(stage.start_min),
            clock.read(stage.end_min),
            ", ".join([*clock.remarks(stage.end_min), *(() if stage.reached else (say("not reached"),))]),
            _figure(values.get("temperature_c"), lambda c: show(c, "temperature", system=system, decimals=1)),
            _figure(values.get("ph"), lambda ph: number(ph, ".2f")),
            _figure(values.get("curd_moisture_pct"), lambda pct: f"{number(pct, '.1f')} %"),
            _figure(values.get("whey_kg_per_100kg"), lambda kg: f"{number(kg, '.1f')} kg/100"),
        )
    return table


def _outcomes(forecast: Forecast) -> Table:
    table = Table(say("outcome"), say("value"), say("8 in 10 inside"), "", box=None)
    for key in SHOWN:
        outcome = forecast.outcomes.get(key)
        if outcome is None or not math.isfinite(outcome.value):
            continue
        quantity = QUANTITIES[key]
        span = say(
            "{low:.{decimals}f} – {high:.{decimals}f}", low=outcome.low, decimals=quantity.decimals, high=outcome.high
        )
        ranged = outcome.low < outcome.high
        table.add_row(
            quantity.label,
            number(outcome.value, f".{quantity.decimals}f"),
            span if ranged else "",
            quantity.unit,
        )
    return table


def _rows(title: str, rows: Sequence[Row]) -> Table:
    ruled = any(row.rule for row in rows)
    table = Table(title, "", "", *((say("rule"),) if ruled else ()), box=None)
    for row in rows:
        state = word(row.state, "state")
        state = state.upper() if row.state == NOT_MET else state
        table.add_row(state, _plain(row.label), _plain(row.sentence), *((_plain(row.rule),) if ruled else ()))
    return table


def _figure(value: float | None, words: object) -> str:
    assert callable(words)
    return str(words(value)) if value is not None and math.isfinite(value) else ""


def _plain(text: str) -> str:
    """Text that may hold square brackets, safe for the console's own marks."""
    return text.replace("[", "\\[")
