"""A published make made ready to be marched again and again: with other constants for the fit, drawn for the bands.

The report, the tests and the fit all read a figure's counterpart here, so they never differ.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from typing import Any

import numpy as np
from numpy.typing import NDArray

from designer.make import members, run
from designer.make.march import OUT_EXTRA
from designer.make.outcomes import composition
from designer.make.prepare import prepare
from designer.make.start import first_state, parameters
from designer.make.state import CASEIN, CURD
from designer.recipe.lower import lower
from designer.recipe.schedule import Schedule
from designer.validate.makes import Figure, Make, makes

Values = NDArray[np.float64]
Constants = Mapping[str, float] | None
"""Constants by name in place of the shipped ones."""
IN_CURD = {"curd_moisture_pct": "moisture_pct", "mnfs_pct": "mnfs_pct"}
"""Figures of the curd at a stage -> what the composition calls them."""


@dataclass(frozen=True, slots=True)
class Course:
    """A make with its Schedule and prepared rows; `wait` takes the march on to 24 hours."""

    make: Make
    schedule: Schedule
    rows: NDArray[Any]
    wait: NDArray[Any]

    def values(self, constants: Constants = None) -> Values:
        """The model's counterpart of each figure, shape (figures,), with `constants` in place of the shipped ones."""
        p = parameters(self.schedule.milk)[0]
        for name, value in (constants or {}).items():
            if name == "calcium_colloidal":  # the one constant that parameters have already worked into another
                p["colloidal_per_casein"] *= value / p[name]
            p[name] = value
        lane = run.run_main(self.schedule, self.rows, first_state(self.schedule.milk, p), p, self.wait)
        return self._read(lane)

    def drawn(self, count: int) -> Values:
        """The same for `count` members of the band, shape (count, figures)."""
        rows, y0, p = members.drawn(self.schedule.milk, self.rows, count)
        lanes = (run.run_main(self.schedule, *one, self.wait, False) for one in zip(rows, y0, p, strict=True))
        return np.array([self._read(lane) for lane in lanes])

    def _read(self, lane: run.LaneRun) -> Values:
        out = lane.path.out
        state = out[int(np.flatnonzero(out[:, 1] <= lane.end_row)[-1]), OUT_EXTRA:]
        end = {key: float(value) for key, value in composition(state, lane.p).items()}
        end["casein_recovery_pct"] = float(100.0 * state[CURD + CASEIN] / out[0, OUT_EXTRA + CURD + CASEIN])
        end["ph_24h"] = float(np.interp(self.schedule.starter_min + run.DAY_MIN, out[:, 0], out[:, 2]))
        return np.array([self._counterpart(figure, lane, end) for figure in self.make.figures])

    def _counterpart(self, figure: Figure, lane: run.LaneRun, end: Mapping[str, float]) -> float:
        if figure.at or figure.minute is not None:
            return self._in_course(figure, lane)
        return after_loss(figure.quantity, end, figure.loss_pct)

    def _in_course(self, figure: Figure, lane: run.LaneRun) -> float:
        minutes = lane.path.out[:, 0]
        if figure.minute is not None:
            index = int(np.searchsorted(minutes, figure.minute))
            minute = figure.minute
        else:
            stage = next(at for at, stage in enumerate(self.make.recipe.stages) if stage.id == figure.at)
            row = int(np.flatnonzero(lane.rows["stage"][: lane.end_row + 1] == stage)[-1])
            index = int(np.flatnonzero(lane.path.out[:, 1] <= row)[-1])
            minute = float(minutes[index]) + figure.after_min
        if figure.quantity in IN_CURD:
            return float(composition(lane.path.out[index, OUT_EXTRA:], lane.p)[IN_CURD[figure.quantity]])
        column = 2 if figure.quantity == "ph" else 3
        if figure.after_min or figure.minute is not None:
            return float(np.interp(minute, minutes, lane.path.out[:, column]))
        return float(lane.path.out[index, column])


def after_loss(quantity: str, end: Mapping[str, float], loss_pct: float) -> float:
    """A figure of the cheese after it lost `loss_pct` of its weight as water."""
    left = 1.0 - loss_pct / 100.0
    if quantity == "moisture_pct":
        return (end["moisture_pct"] - loss_pct) / left
    if quantity == "mnfs_pct":
        return 100.0 * (end["moisture_pct"] - loss_pct) / (100.0 * left - end["fat_pct"])
    if quantity == "salt_in_moisture_pct":
        return 100.0 * end["salt_pct"] / (end["moisture_pct"] - loss_pct)
    if quantity == "yield_kg_per_100kg":
        return end[quantity] * left
    if quantity in ("fat_pct", "protein_pct", "salt_pct", "lactose_pct", "lactate_pct", "calcium_mmol_per_kg"):
        return end[quantity] / left
    return end[quantity]


def prepared(make: Make) -> Course:
    """A make, lowered and prepared. Raises RecipeError."""
    schedule = lower(make.recipe)
    rows = run.until_room(schedule.lanes[0].rows, None)
    wait = prepare(run.day_row(len(make.recipe.stages) - 1, schedule.room_c, rows[-1]))
    return Course(make, schedule, rows, wait)


@cache
def courses() -> tuple[Course, ...]:
    """Every published make, lowered and prepared once."""
    return tuple(prepared(make) for make in makes())
