"""The arithmetic of a drag or a nudge: pointer to value, value to recipe. Pure: no widget, no event.

A drag starts from what the recipe said at the press and maps every pointer place to a new recipe, so that going
there and back leaves nothing behind. The end of a state-ended stage is mapped through the forecast of that stage
marched on to its latest moment.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any, Final

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import QCoreApplication, QPointF

from designer.forecast import Forecast
from designer.recipe.document import Recipe
from designer.recipe.edit import edit
from designer.recipe.end import END_VALUE_RANGE
from designer.recipe.error import RecipeError
from widgets import wording
from widgets.make_curve.axis import snap_step
from widgets.make_curve.frame import Block, Frame
from widgets.make_curve.grips import Grip, changed, value_text

PX_PER_STEP: Final = 6.0
"""How far the pointer goes for one natural step of an inside setting."""
LATER, KEEP = "later", "keep"
"""What becomes of the stages after an edge: pushed along, or the next one takes up the change."""

March = Callable[[Recipe], Forecast]
# Trace column an end is read on, by (end.by, end.of).
COLUMN: Final = {
    ("ph", "milk"): "ph",
    ("ph", "curd"): "ph",
    ("ph", "cheese"): "ph",
    ("ph", "whey"): "ph_whey",
    ("acidity", "milk"): "acidity_pct",
    ("acidity", "curd"): "acidity_pct",
    ("acidity", "cheese"): "acidity_pct",
    ("acidity", "whey"): "acidity_whey_pct",
    ("firmness", ""): "firmness_pa",
    ("whey_off", ""): "whey_kg_per_100kg",
}


@dataclass(frozen=True, slots=True)
class Reach:
    """How an ended state goes on with time: minutes from the stage's start and values, values moving one way only."""

    minutes: NDArray[np.float64]
    values: NDArray[np.float64]

    def value(self, minute: float) -> float:
        """The state at a minute of the stage, held at the ends."""
        return float(np.interp(minute, self.minutes, self.values))


@dataclass(frozen=True, slots=True)
class Answer:
    """What a pointer place or a nudge leads to; `recipe` is None where not allowed, `why` says what stopped it."""

    recipe: Recipe | None
    value: float
    text: str
    note: str
    why: str = ""


def reach(recipe: Recipe, block: Block, forecast: Forecast, march: March) -> Reach | None:
    """The state that ends a block, marched on to its latest moment; None where the state can't be followed."""
    stage = recipe.stage(block.id)
    if block.by in ("temperature", "floc_multiple"):
        start = 0.0 if block.by == "floc_multiple" else forecast.trace.at("temperature_c", block.start_min)
        length = max(block.length_min, 1e-3)
        slope = (float(block.value or 0.0) - start) / length
        latest = stage.end.planned_min
        return Reach(np.array([0.0, latest]), np.array([start, start + slope * latest]))
    column = COLUMN.get((block.by, block.of if block.by in ("ph", "acidity") else ""))
    if column is None:
        return None
    low, high, _ = END_VALUE_RANGE[block.by]
    own = np.flatnonzero(forecast.trace.stage == block.index)
    if not own.size:
        return None
    first = float(forecast.trace[column][own[0]])
    never = low if float(block.value or 0.0) < first else high
    end = stage.end.model_copy(update={"value": never})
    try:
        onward = march(edit(recipe, block.id, end=end)).lane(forecast.branch_id)
    except RecipeError:
        return None
    inside = onward.trace.stage == block.index
    minutes = onward.trace.time_min[inside] - block.start_min
    values = onward.trace[column][inside]
    rising = never > first
    steady = np.maximum.accumulate(values) if rising else np.minimum.accumulate(values)
    return Reach(minutes, steady)


@dataclass(frozen=True, slots=True)
class Drag:
    """One drag from the press on; `to` may be called with any pointer place, in any order."""

    grip: Grip
    recipe: Recipe
    block: Block
    following: Block | None
    px_per_min: float
    px_per_degree: float
    from_px: QPointF
    system: str
    reach: Reach | None

    @staticmethod
    def start(grip: Grip, frame: Frame, recipe: Recipe, at: QPointF, march: March) -> Drag:
        """Take hold of a grip."""
        block = frame.blocks[grip.index]
        following = frame.blocks[grip.index + 1] if grip.index + 1 < len(frame.blocks) else None
        state_edge = grip.place == "edge" and block.state
        px_per_min = frame.axis.piece(block.end_min).px_per_min
        return Drag(
            grip, recipe, block, following, px_per_min, frame.temperature.px_per_unit, at, frame.system,
            reach(recipe, block, frame.forecast, march) if state_edge else None,
        )  # fmt: skip

    def to(self, at: QPointF, *, free: bool = False, mode: str = LATER) -> Answer:
        """The recipe with the pointer there. `free` lets go of round values."""
        if self.grip.place == "edge":
            minutes = (at.x() - self.from_px.x()) / self.px_per_min
            return self._state(minutes, free) if self.block.state else self._length(minutes, free, mode)
        up = self.from_px.y() - at.y()
        if self.grip.place == "corner":
            raw = self.grip.value + up / self.px_per_degree
        else:
            raw = self.grip.value + up / PX_PER_STEP * self.grip.step
        return put(self.recipe, self.grip, self.block, snapped(self.grip, raw, self.system, free), self.system)

    def _length(self, minutes: float, free: bool, mode: str) -> Answer:
        wanted = self.grip.value + minutes
        step = 0.5 if free else snap_step(self.px_per_min)
        length = max(round(wanted / step) * step, 0.5 if free else min(step, self.grip.value))
        return with_length(self.recipe, self.grip, self.block, self.following, length, mode)

    def _state(self, minutes: float, free: bool) -> Answer:
        if self.reach is None:
            why = QCoreApplication.translate("Drag", "This end can't be followed in time; type its value instead.")
            return Answer(None, self.grip.value, value_text(self.grip.kind, self.grip.value, self.system), "", why)
        moment = min(max(self.block.length_min + minutes, 0.0), float(self.reach.minutes[-1]))
        raw = self.reach.value(moment)
        stopped = ""
        if self.block.length_min + minutes > moment + 1e-6:
            stopped = QCoreApplication.translate("Drag", "That is as far as it gets before the latest moment.")
        return put(self.recipe, self.grip, self.block, snapped(self.grip, raw, self.system, free), self.system, stopped)


def snapped(grip: Grip, raw: float, system: str, free: bool) -> float:
    """A value held within its limits and on its natural step (whole degrees Fahrenheit in US units)."""
    step = grip.step / 10.0 if free else grip.step
    if grip.kind == "temperature" and wording.measured(system, "temperature") == "us":
        display = wording.temperature(system)
        shown_step = 0.1 if free else 1.0
        value = display.base(round(display.shown(raw) / shown_step) * shown_step)
    else:
        value = round(raw / step) * step
    return round(min(max(value, grip.low), grip.high), 6)


def put(recipe: Recipe, grip: Grip, block: Block, value: float, system: str, stopped: str = "") -> Answer:
    """The recipe with a grip's setting at a value."""
    stage = recipe.stage(grip.stage)
    text = value_text(grip.kind, value, system)
    was = value_text(grip.kind, grip.value, system)
    note = QCoreApplication.translate("Drag", "{0}, was {1}").format(grip.label, was)
    if grip.field == "end":
        changes: dict[str, Any] = {"end": stage.end.model_copy(update={"value": value})}
    else:
        changes = changed(stage, grip.field, value)
    if grip.field == "temperature_c" and stage.end.is_state and stage.ramp_min is None:
        changes["ramp_min"] = min(10.0, stage.end.planned_min)
    try:
        return Answer(edit(recipe, grip.stage, **changes), value, text, note, stopped)
    except RecipeError as error:
        return Answer(None, value, text, note, error.sentence)


def _lengthened(stage: Any, minutes: float) -> dict[str, Any]:
    """Changes that give a stage another planned length; a ramp as long as its stage stays so, none is longer."""
    name = "latest_min" if stage.end.is_state else "length_min"
    changes: dict[str, Any] = {"end": stage.end.model_copy(update={name: minutes})}
    ramp = getattr(stage, "ramp_min", None)
    if ramp is not None and (ramp > minutes or abs(ramp - stage.end.planned_min) < 1e-6):
        changes["ramp_min"] = minutes
    return changes


def with_length(recipe: Recipe, grip: Grip, block: Block, following: Block | None, length: float, mode: str) -> Answer:
    """The recipe with a time-ended stage of another length; `KEEP` takes the change from the stage after it."""
    tr = QCoreApplication.translate
    change = length - grip.value
    sign = "+" if change >= 0 else wording.MINUS
    note = tr("Drag", "{0}, was {1} ({2})").format(
        grip.label, wording.length(grip.value), sign + wording.length(abs(change))
    )
    why = ""
    try:
        made = edit(recipe, grip.stage, **_lengthened(recipe.stage(grip.stage), length))
        if mode == KEEP and following is not None:
            if following.state:
                why = tr("Drag", "“{0}” ends by a state, so later stages move along.").format(following.name)
            else:
                rest = recipe.stage(following.id).end.planned_min - change
                if rest < 0.5:
                    why = tr("Drag", "“{0}” would be left with no time.").format(following.name)
                    return Answer(None, length, wording.length(length), note, why)
                made = edit(made, following.id, **_lengthened(made.stage(following.id), rest))
    except RecipeError as error:
        return Answer(None, length, wording.length(length), note, error.sentence)
    return Answer(made, length, wording.length(length), note, why)


def nudged(recipe: Recipe, grip: Grip, frame: Frame, steps: float, *, mode: str = LATER, fine: bool = False) -> Answer:
    """The recipe with a grip's setting some natural steps away; `fine` takes a tenth of a step (lengths: a minute)."""
    block = frame.blocks[grip.index]
    if grip.kind == "duration":
        step = 1.0 if fine else 5.0
        length = max(grip.value + steps * step, 1.0)
        if not fine:
            length = max(round(length / step) * step, min(step, grip.value))
        following = frame.blocks[grip.index + 1] if grip.index + 1 < len(frame.blocks) else None
        return with_length(recipe, grip, block, following, length, mode)
    step = grip.step
    if grip.kind == "temperature" and wording.measured(frame.system, "temperature") == "us":
        step = 1.0 / wording.temperature("us").slope
    return put(
        recipe,
        grip,
        block,
        snapped(grip, grip.value + steps * step * (0.1 if fine else 1.0), frame.system, fine),
        frame.system,
    )
