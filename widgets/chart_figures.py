"""The figures behind a chart as a grid of texts: rows are moments, columns are curves with their bands.

Nothing is worked out before it is asked for: a table asks only for what it shows.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import Any, Final

import numpy as np
from PySide6.QtCore import QT_TRANSLATE_NOOP, QCoreApplication

from designer.forecast import Forecast
from designer.language import number
from widgets import wording
from widgets.make_curve.curves import beside_curd
from widgets.together import together

N = QT_TRANSLATE_NOOP
CURVES: Final[tuple[tuple[str, Any, str, int], ...]] = (
    ("temperature_c", N("Figures", "temperature"), "°C", 1),
    ("ph", N("Figures", "pH of milk, then curd"), "", 2),
    ("ph_whey", N("Figures", "pH of whey"), "", 2),
    ("curd_moisture_pct", N("Figures", "curd moisture"), "%", 1),
    ("whey_kg_per_100kg", N("Figures", "whey run off per 100 kg milk"), "kg", 1),
    ("firmness_pa", N("Figures", "gel firmness"), "Pa", 0),
    ("salt_pct", N("Figures", "salt"), "%", 2),
)
"""column, name, unit, decimals"""
COMPARED: Final = ("temperature_c", "ph", "curd_moisture_pct")
STEPS_MIN: Final = (5.0, 10.0, 15.0, 30.0, 60.0, 120.0, 240.0, 720.0, 1440.0)
ROWS_A_STAGE: Final = 8
NOTHING: Final = "\u2013"


@dataclass(frozen=True, slots=True)
class Grid:
    """Heads of the columns, number of rows, and what stands in a cell."""

    title: str
    heads: tuple[str, ...]
    rows: int
    cell: Callable[[int, int], str]

    def tsv(self, rows: Sequence[int], columns: Sequence[int]) -> str:
        """Rows and columns as tab-separated lines under their heads, for a spreadsheet."""
        lines = ["\t".join(self.heads[column] for column in columns)]
        lines += ["\t".join(self.cell(row, column) for column in columns) for row in rows]
        return "\n".join(lines) + "\n"


def moments(starts: Sequence[float], ends: Sequence[float]) -> list[tuple[int, float]]:
    """(stage, minute): each stage's start, round times within it, and its end."""
    found = []
    for stage, (start, end) in enumerate(zip(starts, ends, strict=True)):
        step = next((one for one in STEPS_MIN if (end - start) / one <= ROWS_A_STAGE), STEPS_MIN[-1])
        inside = np.arange(step, end - start - 0.25 * step, step)
        found += [(stage, minute) for minute in (start, *(start + inside), end)]
    return found


def of_make(made: Forecast, system: str) -> Grid:
    """Every curve of the make curve, with its 80 % band, at the moments of its stages."""
    tr = QCoreApplication.translate
    at = moments([one.start_min for one in made.stages], [one.end_min for one in made.stages])
    start = made.recipe.start_clock_min
    names = [wording.stage_name(one.name, one.kind) for one in made.stages]
    whey = beside_curd(made)
    heads = [tr("Figures", "stage"), tr("Figures", "clock"), tr("Figures", "since milk, min")]
    for column, name, unit, _ in CURVES:
        head = _head(tr("Figures", name), unit, column, system)
        heads += [together(one) for one in (head, tr("Figures", "{0}, 80 % band").format(head))]

    def cell(row: int, column: int) -> str:
        stage, minute = at[row]
        if column == 0:
            return names[stage]
        if column == 1:
            return NOTHING if start is None else wording.clock(start + minute, system)
        if column == 2:
            return number(minute, ".0f")
        key, _, _, decimals = CURVES[(column - 3) // 2]
        if key == "ph_whey" and not np.any(whey & (made.trace.stage == stage)):
            return NOTHING
        if column % 2:
            return _read(made, made.trace[key], stage, minute, key, decimals, system)
        if made.bands is None or key not in made.bands.low:
            return NOTHING
        low, high = (
            _read(made, side[key], stage, minute, key, decimals, system) for side in (made.bands.low, made.bands.high)
        )
        return low if low == high else f"{low} – {high}"

    return Grid(tr("Figures", "Make curve of {0}").format(made.recipe.name), tuple(heads), len(at), cell)


def of_makes(makes: Sequence[Forecast], names: Sequence[str], end_min: float, system: str) -> Grid:
    """The curves of several makes beside each other on one time since milk."""
    tr = QCoreApplication.translate
    step = next((one for one in STEPS_MIN if end_min / one <= 60), STEPS_MIN[-1])
    minutes = np.append(np.arange(0.0, end_min - 0.25 * step, step), end_min)
    shown = [one for one in CURVES if one[0] in COMPARED]
    heads = [tr("Figures", "since milk, min")]
    for column, label, unit, _ in shown:
        head = _head(tr("Figures", label), unit, column, system)
        heads += [tr("Figures", "{0}: {1}").format(name, head) for name in names]

    def cell(row: int, column: int) -> str:
        minute = float(minutes[row])
        if column == 0:
            return number(minute, ".0f")
        what, which = divmod(column - 1, len(makes))
        key, _, _, decimals = shown[what]
        made = makes[which]
        if minute > made.trace.time_min[-1]:
            return NOTHING
        return _said(made.trace.at(key, minute), key, decimals, system)

    return Grid(tr("Figures", "Curves of {0}").format(", ".join(names)), tuple(heads), len(minutes), cell)


def _head(name: str, unit: str, column: str, system: str) -> str:
    if column == "temperature_c":
        unit = wording.temperature(system).unit
    return f"{name}, {unit}" if unit else name


def _read(made: Forecast, series: Any, stage: int, minute: float, key: str, decimals: int, system: str) -> str:
    """A curve at a minute of a stage: at an edge the value on this stage's side."""
    own = np.flatnonzero(made.trace.stage == stage)
    if not len(own):
        return NOTHING
    kept = slice(own[0], own[-1] + 1)
    return _said(float(np.interp(minute, made.trace.time_min[kept], series[kept])), key, decimals, system)


def _said(value: float, key: str, decimals: int, system: str) -> str:
    if not np.isfinite(value):
        return NOTHING
    if key == "temperature_c":
        value = wording.temperature(system).shown(value)
    return number(value, f".{decimals}f")
