"""Several makes drawn over each other for paper: temperature, pH and moisture on one elapsed time.

Black on white: makes are told apart by dash and weight, and each by its name in the key below.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence

import numpy as np

from designer.forecast import Forecast, Series
from designer.language import mark, number, say, word
from designer.plan.curve import AXIS_PT, GRID_DASH, GRID_MM, Item, Pane, around, frame, grid, plot_end_min, trace_line
from designer.plan.sheet import Drawing, Label, Polyline
from designer.plan.weigh_out import degrees
from designer.units import System, convert

LINES: tuple[tuple[float, tuple[float, ...]], ...] = (
    (0.8, ()),
    (0.7, (3.0, 1.4)),
    (0.9, (0.9, 1.0)),
    (0.6, (5.0, 1.1, 0.9, 1.1)),
    (0.35, ()),
)
"""Width and dash of the first make, the second, ..."""
LEFT_MM, TOP_MM, GAP_MM, HOURS_MM, KEY_MM = 17.0, 1.0, 4.0, 7.0, 5.6
KEY_SAMPLE_MM, KEY_CHAR_MM = 12.0, 2.0
TITLES = {"temperature_c": mark("temperature"), "ph": "pH", "curd_moisture_pct": mark("moisture")}
SHARES = (0.32, 0.34, 0.34)


def over_each_other(
    makes: Sequence[Forecast], names: Sequence[str], *, width_mm: float, height_mm: float = 116.0,
    system: System = "metric", empty: bool = False,
) -> Drawing:  # fmt: skip
    """Up to `len(LINES)` makes in three panes with a key of their names; ValueError for more.

    `empty`: only the panes, to draw in by pen.
    """
    if not 0 < len(makes) <= len(LINES):
        raise ValueError(f"{len(makes)} makes; 1 to {len(LINES)} can be told apart")
    end = max(plot_end_min(made) for made in makes)
    key, rows = ([], 0) if empty else _key(names, width_mm, height_mm)
    room = height_mm - TOP_MM - HOURS_MM - rows * KEY_MM - 2.0 * GAP_MM
    degree = degrees(system)
    step = 5.0 if degree == "°C" else 10.0
    items: list[Item] = []
    panes = []
    top = TOP_MM
    kinds = (("temperature_c", step, 3.0 * step), ("ph", 0.2, 1.2), ("curd_moisture_pct", 10.0, 30.0))
    for (column, fine, least), share in zip(kinds, SHARES, strict=True):
        lines = [(made.trace.time_min, _values(made, column, degree)) for made in makes]
        seen = np.concatenate([values[minutes <= end] for minutes, values in lines])
        low, high = around(seen, fine, least=least)
        pane = Pane(LEFT_MM, width_mm - 0.5, top, top + room * share, end, low, high)
        panes.append(pane)
        named = fine if high - low <= 6.0 * fine else 2.0 * fine if high - low <= 10.0 * fine else 5.0 * fine
        items += grid(pane, fine, named, _worded(column, degree))
        items += _hours(pane)
        for (minutes, values), (thick, dash) in zip(() if empty else lines, LINES, strict=False):
            items += trace_line(pane, minutes, values, thick, dash)
        items.append(frame(pane))
        items.append(Label(word(TITLES[column]), 2.0, (pane.y0 + pane.y1) / 2, AXIS_PT, True, "centre", upright=True))
        top = pane.y1 + GAP_MM
    items += _hour_names(panes[-1])
    return Drawing(width_mm, height_mm, (*items, *key), shortest_mm=height_mm - 26.0)


def _values(made: Forecast, column: str, degree: str) -> Series:
    values = made.trace[column]
    if column != "temperature_c" or degree == "°C":
        return values
    return np.array([convert(float(each), "temperature", degree) for each in values])


def _worded(column: str, degree: str) -> Callable[[float], str]:
    if column == "ph":
        return lambda value: number(value, ".1f")
    unit = degree if column == "temperature_c" else "%"
    return lambda value: f"{value:.0f} {unit}"


def _every(pane: Pane) -> float:
    return next(
        step for step in (60.0, 120.0, 180.0, 240.0, 360.0, 720.0, 1440.0)
        if (pane.x1 - pane.x0) / pane.end_min * step > 12.5
    )  # fmt: skip


def _hours(pane: Pane) -> list[Item]:
    every = _every(pane)
    return [
        Polyline(((pane.x(every * n), pane.y0), (pane.x(every * n), pane.y1)), GRID_MM, GRID_DASH)
        for n in range(1, math.ceil(pane.end_min / every))
    ]


def _hour_names(pane: Pane) -> list[Item]:
    every = _every(pane)
    return [
        Label(say("{hours:.0f} h", hours=every * n / 60.0), pane.x(every * n), pane.y1 + 3.4, AXIS_PT, align="centre")
        for n in range(int((pane.end_min - 1e-6) // every) + 1)
    ]


def _key(names: Sequence[str], width_mm: float, height_mm: float) -> tuple[list[Item], int]:
    """Line samples with their names, in as many rows as they need (widths by a rough count of letters)."""
    places = []
    x, row = LEFT_MM, 0
    for name in names:
        wide = KEY_SAMPLE_MM + len(name) * KEY_CHAR_MM + 5.0
        if x > LEFT_MM and x + wide > width_mm:
            x, row = LEFT_MM, row + 1
        places.append((x, row))
        x += wide
    items: list[Item] = []
    for name, (x, at), (thick, dash) in zip(names, places, LINES, strict=False):
        y = height_mm - (row - at + 0.5) * KEY_MM
        items.append(Polyline(((x, y), (x + KEY_SAMPLE_MM - 2.0, y)), thick, dash))
        items.append(Label(name, x + KEY_SAMPLE_MM, y, AXIS_PT))
    return items, row + 1
