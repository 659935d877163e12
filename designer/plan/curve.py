"""The make drawn for paper: planned temperature and pH over the clock, with room to plot readings by pen.

Black on white: lines are told apart by dash and weight, ranges by dashed edges, the style's windows by brackets.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from dataclasses import dataclass

import numpy as np

from designer.forecast import Forecast, Series
from designer.language import say
from designer.plan.clock import Clock
from designer.plan.place import first_out_of_the_vat
from designer.plan.sheet import Area, Drawing, Label, Point, Polyline
from designer.plan.weigh_out import degrees
from designer.units import DAY_MIN, System, convert

PLANNED_MM, WHEY_MM, EDGE_MM, STAGE_MM, GRID_MM = 0.8, 0.6, 0.35, 0.3, 0.2
WHEY_DASH, EDGE_DASH, GRID_DASH = (2.4, 1.2), (0.9, 0.7), (0.2, 0.9)
AXIS_PT = 10.0
LEFT_MM, TOP_MM, BOTTOM_MM, GAP_MM = 17.0, 5.5, 11.0, 4.5
NEXT_DAY_MM, NEXT_GAP_MM = 20.0, 3.0
TEMPERATURE_SHARE = 0.42
Item = Polyline | Area | Label


@dataclass(frozen=True, slots=True)
class Bracket:
    """Where the pH should be at a minute of the make, from the style: `words` says whose pH and the range."""

    minute: float
    low: float
    high: float


@dataclass(frozen=True, slots=True)
class Pane:
    """A window of values on the paper: minutes across, values up."""

    x0: float
    x1: float
    y0: float
    y1: float
    end_min: float
    low: float
    high: float

    def x(self, minute: float) -> float:
        """A minute on the paper [mm]."""
        return self.x0 + (self.x1 - self.x0) * minute / self.end_min

    def y(self, value: float) -> float:
        """A value on the paper [mm]."""
        return self.y1 - (self.y1 - self.y0) * (value - self.low) / (self.high - self.low)


def make_curve(
    forecast: Forecast,
    clock: Clock,
    *,
    width_mm: float,
    height_mm: float = 84.0,
    brackets: Sequence[Bracket] = (),
    system: System = "metric",
) -> Drawing:
    """Numbered stage lines, temperature above, pH below, pH at 24 h in a column of its own at the right."""
    trace = forecast.trace
    end = plot_end_min(forecast)
    next_day = end < DAY_MIN - 60.0 and float(trace.time_min[-1]) > end
    right = width_mm - (NEXT_DAY_MM + NEXT_GAP_MM if next_day else 0.5)
    split = TOP_MM + (height_mm - TOP_MM - BOTTOM_MM - GAP_MM) * TEMPERATURE_SHARE
    inside = trace.time_min <= end
    degree = degrees(system)
    step = 5.0 if degree == "°C" else 10.0
    temperatures = np.array([convert(float(each), "temperature", degree) for each in trace["temperature_c"]])
    t_low, t_high = around(temperatures[inside], step, least=3.0 * step)
    day = forecast.outcomes["ph_24h"].value if next_day and "ph_24h" in forecast.outcomes else 6.0
    ph_low, ph_high = around(np.append(trace["ph"][inside], [day]), 0.2, least=1.2)
    warm = Pane(LEFT_MM, right, TOP_MM, split, end, t_low, t_high)
    sour = Pane(LEFT_MM, right, split + GAP_MM, height_mm - BOTTOM_MM, end, ph_low, ph_high)
    items: list[Item] = []
    named = step if t_high - t_low <= 6.0 * step else 2.0 * step
    items += grid(warm, step, named, lambda value: say("{value:.0f} {degree}", value=value, degree=degree))
    items += grid(
        sour, 0.1, 0.2 if (sour.y1 - sour.y0) / (ph_high - ph_low) >= 22.0 else 0.5, lambda ph: say("{ph:.1f}", ph=ph)
    )
    items += _hours((warm, sour), clock)
    items += _stage_lines(forecast, (warm, sour))
    items += trace_line(warm, trace.time_min, temperatures, PLANNED_MM, ())
    if forecast.bands is not None and "ph" in forecast.bands.low:
        items += trace_line(sour, trace.time_min, forecast.bands.low["ph"], EDGE_MM, EDGE_DASH)
        items += trace_line(sour, trace.time_min, forecast.bands.high["ph"], EDGE_MM, EDGE_DASH)
    items += _whey(sour, forecast)
    items += trace_line(sour, trace.time_min, trace["ph"], PLANNED_MM, ())
    for bracket in brackets:
        if bracket.minute <= end:
            items += _bracket(sour.x(bracket.minute), sour.y(bracket.low), sour.y(bracket.high))
    if next_day:
        items += _next_day(forecast, sour, width_mm)
    items += _frames((warm, sour))
    items += _legend(height_mm, bool(brackets), forecast.bands is not None)
    return Drawing(width_mm, height_mm, tuple(items), tallest_mm=height_mm + 36.0, shortest_mm=height_mm - 22.0)


def plot_end_min(forecast: Forecast) -> float:
    """Where the time axis ends [min]: the work at the vat is done and nine tenths of the first day's acid are there.

    Half an hour is left for a make that runs late; the axis ends on a full hour.
    """
    trace = forecast.trace
    away = first_out_of_the_vat(forecast.recipe)
    at_vat = [done.end_min for done in forecast.stages[:away]]
    day = trace.time_min <= DAY_MIN
    ph = trace["ph"][day]
    soured = np.flatnonzero(ph <= ph[0] - 0.9 * (ph[0] - np.nanmin(ph)))
    acid = float(trace.time_min[day][soured[0]]) if soured.size else 0.0
    return 60.0 * math.ceil(max(180.0, max([*at_vat, acid]) + 30.0) / 60.0)


def around(values: Series, step: float, *, least: float) -> tuple[float, float]:
    """A range on whole steps around the values, at least `least` wide, with a little room above and below."""
    finite = values[np.isfinite(values)]
    low = math.floor((float(finite.min()) - step * 0.2) / step) * step
    high = math.ceil((float(finite.max()) + step * 0.2) / step) * step
    while high - low < least - 1e-9:
        low -= step
    return low, high


def _steps(low: float, high: float, step: float) -> list[float]:
    return [low + step * number for number in range(round((high - low) / step) + 1)]


def grid(pane: Pane, fine: float, named: float, words: Callable[[float], str]) -> list[Item]:
    """Fine lines across a pane, named ones a little stronger and with their value at the left."""
    items: list[Item] = []
    for value in _steps(pane.low, pane.high, fine):
        y = pane.y(value)
        whole = abs(value / named - round(value / named)) < 1e-6
        items.append(Polyline(((pane.x0, y), (pane.x1, y)), GRID_MM * (1.5 if whole else 1.0), GRID_DASH))
        if whole:
            items.append(Label(words(value), pane.x0 - 1.0, y, AXIS_PT, align="right"))
    return items


def _hours(panes: tuple[Pane, ...], clock: Clock) -> list[Item]:
    first, last = panes[0], panes[-1]
    span_h = first.end_min / 60.0
    every = next(
        step for step in (60.0, 120.0, 180.0, 240.0, 360.0, 720.0) if (last.x1 - last.x0) / span_h * step / 60.0 > 12.5
    )
    offset = -((clock.start_min or 0.0) % every) % every
    items: list[Item] = []
    for pane in panes:
        for quarter in range(math.ceil((pane.end_min + every) * 4.0 / every)):
            minute = offset - every + quarter * every / 4.0
            if 0.0 < minute < pane.end_min:
                x = pane.x(minute)
                items.append(Polyline(((x, pane.y0), (x, pane.y1)), GRID_MM, GRID_DASH))
    minute = offset
    while minute <= first.end_min:
        x = last.x(minute)
        items.append(Polyline(((x, last.y1), (x, last.y1 + 1.2)), 0.35))
        text = clock.read(minute) if clock.start_min is not None else say("{minute:.0f} h", minute=minute / 60.0)
        if (x > last.x0 + 3.0 or clock.start_min is None) and x < last.x1 - 3.5:
            items.append(Label(text, x, last.y1 + 3.4, AXIS_PT, align="centre"))
        minute += every
    return items


def _stage_lines(forecast: Forecast, panes: tuple[Pane, ...]) -> list[Item]:
    """A line where each stage begins, with its number above; numbers too close give way to the next."""
    items: list[Item] = []
    free_from = -10.0
    for number, stage in enumerate(forecast.stages, start=1):
        if stage.start_min > panes[0].end_min:
            break
        x = panes[0].x(stage.start_min)
        for pane in panes:
            items.append(Polyline(((x, pane.y0), (x, pane.y1)), STAGE_MM))
        middle = panes[0].x(min((stage.start_min + stage.end_min) / 2, panes[0].end_min))
        at = max(middle, free_from)
        if at < panes[0].x1 - 1.5:
            items.append(Label(str(number), at, TOP_MM - 2.8, AXIS_PT, bold=True, align="centre"))
        free_from = at + (4.6 if number >= 9 else 3.4)
    return items


def trace_line(pane: Pane, minutes: Series, values: Series, width_mm: float, dash: tuple[float, ...]) -> list[Item]:
    """A curve cut off at the ends of the pane; gaps in the values are gaps in the line."""
    clipped = np.clip(values, pane.low, pane.high)
    end = pane.end_min
    items: list[Item] = []
    run: list[Point] = []
    for index in range(len(minutes)):
        minute, value = float(minutes[index]), float(clipped[index])
        if not math.isfinite(value):
            items += [Polyline(tuple(run), width_mm, dash)] if len(run) > 1 else []
            run = []
            continue
        if minute > end:
            if run and minutes[index - 1] < end:
                before = float(minutes[index - 1])
                share = (end - before) / (minute - before)
                value = float(clipped[index - 1]) * (1.0 - share) + value * share
                run.append((pane.x(end), pane.y(value)))
            break
        run.append((pane.x(minute), pane.y(value)))
    return [*items, Polyline(tuple(_thin(run)), width_mm, dash)] if len(run) > 1 else items


def _thin(points: list[Point], tolerance_mm: float = 0.03) -> list[Point]:
    """Fewer points on the same line: one is dropped where the straight line from the last kept passes close by."""
    kept = points[:1]
    for index in range(1, len(points) - 1):
        (x0, y0), (x1, y1), (x2, y2) = kept[-1], points[index], points[index + 1]
        length = math.hypot(x2 - x0, y2 - y0)
        off = abs((x2 - x0) * (y0 - y1) - (x0 - x1) * (y2 - y0)) / length if length > 0 else math.inf
        if off > tolerance_mm or x1 - x0 > 3.0:
            kept.append(points[index])
    return [*kept, points[-1]] if len(points) > 1 else kept


def _whey(pane: Pane, forecast: Forecast) -> list[Item]:
    """pH of the whey while there is whey to measure in the vat."""
    trace = forecast.trace
    if "ph_whey" not in trace.columns or "whey_in_vat_kg_per_100kg" not in trace.columns:
        return []
    there = trace["whey_in_vat_kg_per_100kg"] > 1.0
    values = np.where(there, trace["ph_whey"], np.nan)
    return trace_line(pane, trace.time_min, values, WHEY_MM, WHEY_DASH)


def _bracket(x: float, low: float, high: float, arm: float = 1.3) -> list[Item]:
    return [
        Polyline(((x - arm, low), (x - arm * 1.8, low), (x - arm * 1.8, high), (x - arm, high)), 0.6),
        Polyline(((x + arm, low), (x + arm * 1.8, low), (x + arm * 1.8, high), (x + arm, high)), 0.6),
    ]


def _next_day(forecast: Forecast, pane: Pane, width_mm: float) -> list[Item]:
    """The column of the next day: the pH of the cheese at 24 h with its range, on the scale of the pH pane."""
    right = width_mm - 0.5
    column = Pane(width_mm - NEXT_DAY_MM, right, pane.y0, pane.y1, 1.0, pane.low, pane.high)
    middle = (column.x0 + right) / 2
    items: list[Item] = [
        Polyline(((column.x0, column.y(value)), (right, column.y(value))), GRID_MM, GRID_DASH)
        for value in _steps(pane.low, pane.high, 0.1)
    ]
    items.append(frame(column))
    items.append(Label("24 h", middle, pane.y1 + 3.4, AXIS_PT, align="centre"))
    outcome = forecast.outcomes.get("ph_24h")
    if outcome is None or not math.isfinite(outcome.value):
        return items
    value, low, high = (min(max(each, pane.low), pane.high) for each in (outcome.value, outcome.low, outcome.high))
    y = column.y(value)
    if high - low > 0.005:
        for edge in (low, high):
            items.append(Polyline(((middle - 2.0, column.y(edge)), (middle + 2.0, column.y(edge))), EDGE_MM))
        items.append(Polyline(((middle, column.y(low)), (middle, column.y(high))), EDGE_MM, EDGE_DASH))
    items.append(Area(((middle - 1.2, y), (middle, y - 1.2), (middle + 1.2, y), (middle, y + 1.2)), "black"))
    above = column.y(high) - 3.2 > pane.y0 + 2.0
    words = say("pH {value:.2f}", value=outcome.value)
    items.append(
        Label(words, middle, column.y(high) - 3.2 if above else column.y(low) + 3.4, AXIS_PT, True, "centre", True)
    )
    return items


def frame(pane: Pane) -> Polyline:
    """The edge of a pane."""
    corners = ((pane.x0, pane.y0), (pane.x1, pane.y0), (pane.x1, pane.y1), (pane.x0, pane.y1), (pane.x0, pane.y0))
    return Polyline(corners, 0.5)


def _frames(panes: tuple[Pane, ...]) -> list[Item]:
    warm, sour = panes
    return [
        frame(warm),
        frame(sour),
        Label("temperature", 2.0, (warm.y0 + warm.y1) / 2, AXIS_PT, True, "centre", upright=True),
        Label("pH", 2.0, (sour.y0 + sour.y1) / 2, AXIS_PT, True, "centre", upright=True),
    ]


def _legend(height_mm: float, brackets: bool, bands: bool) -> list[Item]:
    y = height_mm - 2.6
    items: list[Item] = []
    x = LEFT_MM - 9.0

    def sample(width_mm: float, dash: tuple[float, ...], words: str, room: float) -> None:
        nonlocal x
        items.append(Polyline(((x, y), (x + 8.0, y)), width_mm, dash))
        items.append(Label(words, x + 9.5, y, AXIS_PT))
        x += 9.5 + room

    sample(PLANNED_MM, (), say("planned"), 18.0)
    sample(WHEY_MM, WHEY_DASH, say("pH of the whey"), 31.0)
    if bands:
        sample(EDGE_MM, EDGE_DASH, say("8 makes in 10 fall inside"), 48.0)
    if brackets:
        items.extend(_bracket(x + 2.6, y + 1.6, y - 1.6))
        items.append(Label(say("the style's window"), x + 7.0, y, AXIS_PT))
    return items
