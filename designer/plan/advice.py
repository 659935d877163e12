"""Late or early? A few lines that say which way to move and how far, from the slopes and levers of this forecast."""

from __future__ import annotations

import math
from collections.abc import Callable

from designer.forecast import Forecast, StageForecast
from designer.language import say
from designer.plan.clock import Clock
from designer.plan.weigh_out import degrees
from designer.recipe.document import Recipe
from designer.recipe.end import End
from designer.recipe.stages.cook import Cook
from designer.recipe.stages.kinds import AnyStage
from designer.recipe.stages.stage import VatStage
from designer.units import System, convert, show

LOOK_BACK_MIN = 20.0
"""A slope is read over the last twenty minutes before a stage ends."""
LEAST_SLOPE = 5e-4
"""pH per minute below which "wait for the acid" is no advice."""

LONGER_MIN = 10.0
"""The wait whose price is told."""

Run = Callable[[Recipe], Forecast]
Change = Callable[..., Recipe]


def late_or_early(
    forecast: Forecast, clock: Clock, system: System, *, edit: Change, run: Run, cook_high_c: float | None = None
) -> tuple[str, ...]:
    """A sentence each on flocculation, acid and the temperature of the cook; fewer where the forecast can't tell."""
    lines = (
        _flocculation(forecast, clock),
        *_acid(forecast, clock, edit=edit, run=run),
        _cook(forecast, system, edit=edit, run=run, high_c=cook_high_c),
    )
    return tuple(line for line in lines if line)


def _flocculation(forecast: Forecast, clock: Clock) -> str:
    """When to cut for the flocculation that was seen."""
    recipe, planned = forecast.recipe, forecast.outcomes.get("floc_min")
    if planned is None or not math.isfinite(planned.value):
        return ""
    for stage, done in zip(recipe.stages, forecast.stages, strict=False):
        if stage.end.by != "floc_multiple" or stage.end.value is None:
            continue
        given = [each.after_min for each in recipe.additions if each.what == "coagulant" and each.at == stage.id]
        rennet = done.start_min + (min(given) if given else 0.0)
        middle = max(4, round(planned.value))
        apart = max(2, round(middle / 4))
        flocs = [middle + apart * step for step in (-1, 0, 1, 2)]
        cuts = " · ".join(
            say("{floc} min, cut {time}", floc=floc, time=clock.read(rennet + floc * stage.end.value)) for floc in flocs
        )
        return say("Floc early or late: cut at {value:g} × floc. Floc {cuts}.", value=stage.end.value, cuts=cuts)
    return ""


def _acid(forecast: Forecast, clock: Clock, *, edit: Change, run: Run) -> tuple[str, ...]:
    """For every stage that waits for acid: how long a tenth of a pH takes, and what waiting does to the cheese."""
    pairs = zip(forecast.recipe.stages, forecast.stages, strict=False)
    waiting = [pair for pair in pairs if pair[0].end.by in ("ph", "acidity") and pair[0].kind != "ripen"]
    said = ((stage, done, _wait(forecast, stage, done, clock)) for stage, done in waiting)
    return tuple(text + _waited(forecast, stage, done, edit=edit, run=run) for stage, done, text in said if text)


def _wait(forecast: Forecast, stage: AnyStage, done: StageForecast, clock: Clock) -> str:
    trace = forecast.trace
    before = max(done.start_min, done.end_min - LOOK_BACK_MIN)
    minutes = done.end_min - before
    if minutes <= 1.0:
        return ""
    end = done.end_min - 1e-6
    slope = (trace.at("ph", before) - trace.at("ph", end)) / minutes
    if not slope >= LEAST_SLOPE:
        return ""
    wait = show(0.1 / slope, "duration", decimals=0)
    latest = clock.read_from(done.start_min, done.start_min + stage.end.planned_min)
    name = f"{stage.title[:1].upper()}{stage.title[1:]}"
    return say(
        "{name} behind: 0.1 pH takes about {wait}; wait, not after {latest}. Ahead: go on at once.",
        name=name,
        wait=wait,
        latest=latest,
    )


def _waited(forecast: Forecast, stage: AnyStage, done: StageForecast, *, edit: Change, run: Run) -> str:
    """What ten minutes more in a stage do to the moisture of the cheese, all that follows ending as it is written."""
    longer = End(by="time", length_min=done.end_min - done.start_min + LONGER_MIN)
    moved = _difference(forecast, run(edit(forecast.recipe, stage.id, end=longer)), "moisture_pct")
    if moved is None or abs(moved) < 0.05:
        return ""
    return say(
        " {minutes:.0f} min more ends {moved:.1f} points {way}.",
        minutes=LONGER_MIN,
        moved=abs(moved),
        way=say("drier") if moved < 0.0 else say("moister"),
    )


def _cook(forecast: Forecast, system: System, *, edit: Change, run: Run, high_c: float | None) -> str:
    """What one degree more or less in the cook does."""
    cooks = [stage for stage in forecast.recipe.stages if isinstance(stage, Cook) and stage.temperature_c is not None]
    if not cooks:
        return ""
    hottest = max(stage.temperature_c or 0.0 for stage in cooks)
    recipe = forecast.recipe
    for stage in forecast.recipe.stages:  # what is held at the cook's temperature later is held warmer too
        if isinstance(stage, VatStage) and stage.temperature_c == hottest:
            recipe = edit(recipe, stage.id, temperature_c=hottest + 1.0)
    warmer = run(recipe)
    drier = _difference(forecast, warmer, "moisture_pct")
    sourer = _difference(forecast, warmer, "ph_24h")
    if drier is None or abs(drier) < 0.05:
        return ""
    step = (
        "1 °C"
        if degrees(system) == "°C"
        else say("{convert:.1f} °F", convert=convert(1.0, "temperature_difference", "°F"))
    )
    way = say("drier") if drier < 0.0 else say("moister")
    limit = (
        say(", not above {high_c},", high_c=show(high_c, "temperature", system=system)) if high_c is not None else ""
    )
    text = say(
        "Curd too soft at the end of the cook: {step} warmer{limit} ends {drier:.1f} points {way}",
        step=step,
        limit=limit,
        drier=abs(drier),
        way=way,
    )
    if sourer is not None and abs(sourer) >= 0.01:
        text += say(
            " and {sourer:.2f} pH {sourer2} at 24 h",
            sourer=abs(sourer),
            sourer2=say("lower") if sourer < 0.0 else say("higher"),
        )
    return say("{said}; too firm: the other way.", said=text)


def _difference(one: Forecast, other: Forecast, key: str) -> float | None:
    if key not in one.outcomes or key not in other.outcomes:
        return None
    change = other.outcomes[key].value - one.outcomes[key].value
    return change if math.isfinite(change) else None
