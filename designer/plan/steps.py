"""The stage table: what to do, planned clock, target with its range at the end of the stage, and room to write.

Three numbers a line: what is aimed at, the range that is still right, what was read. The range is the style's window
where the style has one at that moment, else the span in which 8 makes in 10 should lie.
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass

import numpy as np

from designer.forecast import Forecast, Outcome, StageForecast
from designer.judge.moments import moments
from designer.language import number, say, word
from designer.plan.clock import Clock
from designer.plan.place import milk_behind_kg, place_of
from designer.plan.sheet import STAGE_PT, Blank, Cell, Column, Line, Table, Ticks
from designer.plan.weigh_out import degrees, mass
from designer.recipe import schedule
from designer.recipe.document import Branch, Recipe
from designer.recipe.field import choice
from designer.recipe.lower import geometry
from designer.recipe.pressing import pressure_kpa
from designer.recipe.stages.kinds import AnyStage
from designer.recipe.stages.press import Press
from designer.recipe.stages.stack import Stack
from designer.units import System, convert, measure, show

CLOCK_PT = 14.0
THERMOMETER_C = 0.6
"""±1 °F: the tolerance of a university's working instruction for raw-milk Cheddar (published, read)."""


@dataclass(frozen=True, slots=True)
class Target:
    """A range of the style at a minute of the make: `curve` "ph" or "ph_whey"."""

    curve: str
    minute: float
    low: float | None
    high: float | None


@dataclass(frozen=True, slots=True)
class Hand:
    """What all rows need to know: forecast, clock, units, what goes in where, the style's targets."""

    forecast: Forecast
    lane: Recipe | Branch
    clock: Clock
    system: System
    goes_in: Mapping[str, Sequence[str]]
    targets: Sequence[Target] = ()

    @property
    def day_min(self) -> float | None:
        """A day after the starter [min], where the forecast runs that far."""
        return moments(self.forecast).get("h24")

    @property
    def drain_min(self) -> float | None:
        """When the whey comes off [min]."""
        return moments(self.forecast).get("drain")


def columns(system: System) -> tuple[Column, ...]:
    """The columns of the stage table; the thermometer's tolerance stands in the head."""
    degree = degrees(system)
    margin = (
        number(THERMOMETER_C)
        if degree == "°C"
        else number(convert(THERMOMETER_C, "temperature_difference", "°F"), ".0f")
    )
    return (
        Column(say("stage"), 52.5),
        Column(say("clock"), 19.5),
        Column(say("target (± {margin} {degree})", margin=margin, degree=degree), 47.0),
        Column(say("ended"), 14.5),
        Column(degree, 13.0),
        Column("pH", 20.0),
        Column(say("by"), 9.5),
    )


def stage_table(hand: Hand, first: int, last: int, next_day: tuple[Cell, ...] | None = None) -> Table:
    """Stages `first` to `last` (exclusive), counted from 0; `next_day` is the row of the cheese at 24 h."""
    rows: list[tuple[Cell, ...]] = []
    for index in range(first, last):
        stage = hand.lane.stages[index]
        known = index < len(hand.forecast.stages)
        starts = hand.forecast.stages[index].start_min if known else hand.forecast.stages[-1].end_min
        if next_day is not None and hand.day_min is not None and starts > hand.day_min:
            rows.append(next_day)
            next_day = None
        rows.append(_row(hand, index, stage, hand.forecast.stages[index]) if known else _room(hand, index, stage))
    return Table(columns(hand.system), tuple(rows if next_day is None else [*rows, next_day]))


def next_day_row(hand: Hand, milk_kg: float) -> tuple[Cell, ...] | None:
    """The cheese at 24 h: pH and weight, planned and read; None where the forecast does not run that far."""
    at = hand.day_min
    if at is None:
        return None
    behind_kg = milk_behind_kg(hand.lane, hand.forecast.weight, milk_kg, len(hand.forecast.stages))
    ph, made = hand.forecast.outcomes.get("ph_24h"), hand.forecast.outcomes.get("yield_kg_per_100kg")
    target = []
    if ph is not None and math.isfinite(ph.value):
        target.append(
            Line(say("pH {value:.2f} ({next_day_range})", value=ph.value, next_day_range=_next_day_range(hand, ph, at)))
        )
    weight = say("weight")
    if made is not None and math.isfinite(made.value):
        weight += say(", planned {value}", value=mass(made.value * behind_kg / 100.0, hand.system))
    clock = (Line(hand.clock.read(at), CLOCK_PT, True), *(Line(text) for text in hand.clock.remarks(at)))
    title = Line(say("Cheese at 24 h"), STAGE_PT, True)
    return (
        (title, Blank(weight)),
        clock,
        tuple(target),
        (Blank(),),
        (Blank(),),
        (Blank(), Ticks((choice("cheese"),))),
        (Blank(),),
    )


def _next_day_range(hand: Hand, ph: Outcome, at: float) -> str:
    for target in hand.targets:
        if target.curve == "ph" and abs(target.minute - at) < 0.5:
            return span_words(target.low, target.high)
    return span_words(ph.low, ph.high)


def _row(hand: Hand, index: int, stage: AnyStage, done: StageForecast) -> tuple[Cell, ...]:
    return (
        _what(hand, index, stage, done),
        _when(hand.clock, stage, done),
        _target(hand, stage, done),
        (Blank(),),
        (Blank(),),
        (Blank(), Ticks(tuple(choice(one) for one in _read_on(hand, stage)))),
        (Blank(),),
    )


def _room(hand: Hand, index: int, stage: AnyStage) -> tuple[Cell, ...]:
    """A stage past the end of the make: the store, which has its own calendar."""
    ends = hand.forecast.stages[-1].end_min
    lines = (Line(_title(index, stage), STAGE_PT, True), Line(stage.plan_line(hand.system)))
    begins = (Line(hand.clock.read(ends), CLOCK_PT, True), *(Line(text) for text in hand.clock.remarks(ends)))
    return (
        lines,
        begins,
        (Line(say("for {planned_min}", planned_min=show(stage.end.planned_min, "duration"))),),
        (Blank(),),
        (Blank(),),
        (Blank(),),
        (Blank(),),
    )


def _title(index: int, stage: AnyStage) -> str:
    return f"{index + 1}  {stage.title[:1].upper()}{stage.title[1:]}"


def _what(hand: Hand, index: int, stage: AnyStage, done: StageForecast) -> Cell:
    items: list[Line | Ticks] = [Line(_title(index, stage), STAGE_PT, True)]
    if isinstance(stage, Press):
        items += [Ticks((text,)) for text in _press_steps(stage, hand, done)]
    else:
        words = stage.plan_line(hand.system)
        items += [Line(words)] if words else []
    if stage.note:
        items.append(Line(stage.note))
    ticks = (*hand.goes_in.get(stage.id, ()), *(_turns(stage, done) if isinstance(stage, Stack) else _ticks(stage)))
    return (*items, Ticks(ticks)) if ticks else tuple(items)


def _ticks(stage: AnyStage) -> tuple[str, ...]:
    return tuple(word(one, "stage") for one in stage.TICKS)


def _turns(stage: Stack, done: StageForecast) -> tuple[str, ...]:
    """One box a turn of the slabs; the line above says what they are."""
    if stage.turn_min is None:
        return _ticks(stage)
    count = max(1, min(12, math.floor((done.end_min - done.start_min) / stage.turn_min)))
    return ("",) * count


def _press_steps(stage: Press, hand: Hand, done: StageForecast) -> list[str]:
    """A line a step: when it begins, what hangs on the press, and what that is on the cheese."""
    form = geometry(hand.lane.form if hand.lane.form is not None else hand.forecast.recipe.form)
    out, at = [], done.start_min
    for step in stage.steps:
        per_kg = pressure_kpa(form.lever, form.press_area_m2)
        load_kg = step.load_kg if step.load_kg is not None else (step.pressure_kpa or 0.0) / per_kg
        load = mass(float(f"{load_kg:.3g}"), hand.system)
        pressure = show(
            load_kg * per_kg,
            "pressure",
            system=hand.system,
            decimals=0 if measure(hand.system, "pressure") == "metric" else 1,
        )
        out.append(f"{hand.clock.read(at)} {load} ({pressure})")
        at += step.length_min
    return out


def _when(clock: Clock, stage: AnyStage, done: StageForecast) -> Cell:
    until = "~" if stage.end.is_state else "– "
    items = [Line(clock.read(done.start_min), CLOCK_PT, True), Line(f"{until}{clock.read(done.end_min)}")]
    return (*items, *(Line(text) for text in clock.remarks(done.end_min)))


def _target(hand: Hand, stage: AnyStage, done: StageForecast) -> Cell:
    """What to read when the stage is done: its own end first, then temperature and pH with their ranges."""
    items: list[Line | Blank] = []
    by = stage.end.by
    own = _own_end(hand, stage)
    latest = (
        say("not after {time}", time=hand.clock.read_from(done.start_min, done.start_min + stage.end.planned_min))
        if stage.end.is_state
        else ""
    )
    if own:
        items.append(Line(own, bold=True, after=latest if by in ("ph", "acidity") else ""))
    if by == "floc_multiple":
        floc = hand.forecast.outcomes.get("floc_min")
        if floc is not None and math.isfinite(floc.value):
            at = hand.clock.read(_rennet_min(hand, stage, done) + floc.value)
            items.append(Line(say("floc {at} ({floc_range} min)", at=at, floc_range=_floc_range(floc)), after=latest))
        return (*items, Blank(say("floc seen at")))
    temperature = done.values.get("temperature_c", math.nan)
    if by != "temperature" and math.isfinite(temperature):
        items.append(Line(_temperature(temperature, place_of(stage) < schedule.PLACE_MOULD, hand.system)))
    if by != "ph":
        items += [Line(text) for text in _ph(hand, stage, done)]
    if latest and by not in ("ph", "acidity"):
        items.append(Line(latest))
    return tuple(items)


def _floc_range(floc: Outcome) -> str:
    low, high = round(floc.low), round(floc.high)
    return f"{low}–{high}" if low < high else f"{round(floc.value)}"


def _own_end(hand: Hand, stage: AnyStage) -> str:
    end = stage.end
    match end.by:
        case "ph":
            return say("pH {value:.2f}, {of}", value=end.value, of=choice(end.of or ""))
        case "acidity":
            return say("{value:.2f} % acid, {of}", value=end.value, of=choice(end.of or ""))
        case "floc_multiple":
            return say("cut at {value:g} × floc", value=end.value)
        case "firmness":
            return say("firm, {value:g} Pa", value=end.value)
        case "whey_off":
            return say("{value:g} % of the milk off as whey", value=end.value)
        case "temperature":
            return show(end.value or 0.0, "temperature", system=hand.system)
        case "feel":
            return say("by feel")
    return ""


def _rennet_min(hand: Hand, stage: AnyStage, done: StageForecast) -> float:
    """When the coagulant goes in [min]."""
    given = [each.after_min for each in hand.lane.additions if each.what == "coagulant" and each.at == stage.id]
    return done.start_min + (min(given) if given else 0.0)


def _temperature(celsius: float, led: bool, system: System) -> str:
    if not led:
        return say("about {celsius}", celsius=show(celsius, "temperature", system=system, decimals=0))
    return show(celsius, "temperature", system=system, decimals=1)


def _ph(hand: Hand, stage: AnyStage, done: StageForecast) -> list[str]:
    """pH at the end of a stage. Under whey the whey is easily read; the curd counts when the whey comes off."""
    if place_of(stage) == schedule.PLACE_MILK:
        curves = [("ph", "pH")]
    elif place_of(stage) == schedule.PLACE_UNDER_WHEY:
        curves = [("ph_whey", choice("whey"))]
        if hand.drain_min is not None and abs(done.end_min - hand.drain_min) < 0.5:
            curves.append(("ph", choice("curd")))
    else:
        curves = [("ph", choice("curd") if place_of(stage) == schedule.PLACE_DRAINED else "pH")]
    out = []
    for curve, whose in curves:
        value = done.values.get(curve, math.nan)
        if math.isfinite(value):
            out.append(say("{whose} {value:.2f}{range}", whose=whose, value=value, range=_range(hand, curve, done)))
    return out


def _range(hand: Hand, curve: str, done: StageForecast) -> str:
    """ " (6.10–6.20)" from the style, else from the band, else "" ."""
    for target in hand.targets:
        if target.curve == curve and done.start_min < target.minute <= done.end_min + 0.5:
            return f" ({span_words(target.low, target.high)})"
    bands = hand.forecast.bands
    if bands is None or curve not in bands.low:
        return ""
    minutes = hand.forecast.trace.time_min
    at = int(np.searchsorted(minutes, done.end_min, side="left"))
    at = min(at, len(minutes) - 1)
    low, high = float(bands.low[curve][at]), float(bands.high[curve][at])
    return f" ({span_words(low, high)})" if math.isfinite(low + high) else ""


def span_words(low: float | None, high: float | None, decimals: int = 2) -> str:
    """ "6.10–6.20", "up to 6.20", "6.10 or more"."""
    if low is None:
        return say("up to {high:.{decimals}f}", high=high, decimals=decimals) if high is not None else ""
    if high is None:
        return say("{low:.{decimals}f} or more", low=low, decimals=decimals)
    return say("{low:.{decimals}f}–{high:.{decimals}f}", low=low, decimals=decimals, high=high)


def _read_on(hand: Hand, stage: AnyStage) -> tuple[str, ...]:
    """What a pH there may have been read on: the maker ticks which. A branch of whey or cream begins as that."""
    if place_of(stage) == schedule.PLACE_MILK:
        lane = hand.lane
        return (lane.of if isinstance(lane, Branch) and lane.of != "curd" else "milk",)
    if place_of(stage) == schedule.PLACE_UNDER_WHEY:
        return ("whey", "curd")
    if place_of(stage) == schedule.PLACE_DRAINED:
        return ("whey", "curd")
    return ("whey", "cheese") if place_of(stage) in (schedule.PLACE_MOULD, schedule.PLACE_PRESS) else ("cheese",)
