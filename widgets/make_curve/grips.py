"""What can be taken hold of on the make curve: stage ends, temperature corners and each kind's own settings.

Where they are and what they set comes from the stage kinds (`Stage.HANDLES`), so a new kind needs nothing here.
"""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from functools import lru_cache
from typing import Any, Final

from PySide6.QtCore import QCoreApplication, QPointF, QRectF

from designer.recipe.end import END_VALUE_KIND, END_VALUE_RANGE
from designer.recipe.field import field_meta
from designer.recipe.stages.press import Press, PressStep
from designer.unit_kinds import Measure
from designer.units import show
from widgets import wording
from widgets.make_curve.frame import Block, Frame
from widgets.theme import apply as dress

EDGE_REACH_PX: Final = 7.0
CORNER_REACH_PX: Final = 11.0
PILL_HEIGHT_PX: Final = 22.0
PILL_GAP_PX: Final = 4.0
SLIMMEST_PX: Final = 14.0
"""A stage slimmer than this shows no pill."""
LENGTH_RANGE: Final = (0.5, 1e6, 5.0)
"""Least, most and natural step of a length [min]."""


@dataclass(frozen=True, slots=True)
class Grip:
    """One thing to take hold of. `field` is a field of the stage, or "end"; `value` and limits in base units."""

    stage: str
    index: int
    field: str
    place: str
    """"edge", "corner" or "inside" """
    label: str
    kind: str
    """key of `units.KINDS`"""
    value: float
    low: float
    high: float
    step: float
    at: QPointF
    box: QRectF = field(default_factory=QRectF)
    """pill of an inside grip; empty for the others"""
    set: bool = True
    """False where the maker has said nothing and the value is what the forecast gives"""
    text: str = ""
    """what the pill says"""
    lane: str | None = None
    """branch it belongs to, None: the main make"""

    @property
    def key(self) -> tuple[str, str]:
        """What it sets: (stage id, field)."""
        return self.stage, self.field


def value_text(kind: str, value: float, system: str) -> str:
    """A value of a kind as text for the eye."""
    return _value_text(kind, value, wording.measured(system, kind))


@lru_cache(maxsize=4096)
def _value_text(kind: str, value: float, system: Measure) -> str:
    if kind == "duration":
        return wording.length(value)
    if kind == "mass" and value >= 10.0:
        return show(value, kind, system=system, decimals=1)
    return show(value, kind, system=system)


def of_frame(frame: Frame) -> tuple[Grip, ...]:
    """Every grip in view, edges first."""
    made: list[Grip] = []
    for block in frame.blocks:
        stage = frame.stages[block.index]
        x = frame.axis.x(block.end_min)
        if frame.axis.left - 1 <= x <= frame.axis.right + 1:
            made.append(_edge(frame, block, stage, x))
            made.extend(_corners(frame, block, stage, x))
    taken: list[QRectF] = []
    for block in frame.blocks:
        made.extend(_pills(frame, block, frame.stages[block.index], taken))
    return tuple(made) if frame.lane is None else tuple(replace(grip, lane=frame.lane) for grip in made)


def _edge(frame: Frame, block: Block, stage: Any, x: float) -> Grip:
    at = QPointF(x, frame.places.ribbon.top())
    if block.state:
        label = QCoreApplication.translate("Grip", "end of {0}").format(block.name)
        value, kind, limits = float(block.value or 0.0), END_VALUE_KIND[block.by], END_VALUE_RANGE[block.by]
    else:
        label = QCoreApplication.translate("Grip", "length of {0}").format(block.name)
        value, kind, limits = stage.end.planned_min, "duration", LENGTH_RANGE
    return Grip(block.id, block.index, "end", "edge", label, kind, value, *limits, at)


def _corners(frame: Frame, block: Block, stage: Any, x: float) -> list[Grip]:
    made = []
    temp = block.end_c
    at = QPointF(x, frame.temperature.y(temp))
    for handle in stage.HANDLES:
        if handle.place != "corner":
            continue
        meta = field_meta(type(stage), handle.field)
        value, field = getattr(stage, handle.field), handle.field
        if block.by == "temperature" and field == "temperature_c":
            value, field = block.value, "end"
        label = QCoreApplication.translate("Grip", "{0} of {1}").format(meta.label, block.name)
        made.append(
            Grip(
                block.id, block.index, field, "corner", label, "temperature", temp if value is None else float(value),
                meta.low if meta.low is not None else -5.0, meta.high if meta.high is not None else 100.0, handle.step,
                at, set=value is not None,
            )
        )  # fmt: skip
    return made


def setting(stage: Any, field: str) -> tuple[str, str, float, float, float] | None:
    """(label, kind, value, low, high) of a stage's own setting; None where the maker left it open."""
    if field == "steps" and isinstance(stage, Press):
        last = stage.steps[-1]
        name = "pressure_kpa" if last.pressure_kpa is not None else "load_kg"
        meta = field_meta(PressStep, name)
        return meta.label, meta.kind, float(getattr(last, name)), meta.low or 0.0, meta.high or 1e3
    meta = field_meta(type(stage), field)
    value = getattr(stage, field)
    if value is None or not meta.kind:
        return None
    low = meta.low if meta.low is not None else 0.0
    return meta.label, meta.kind, float(value), low, meta.high if meta.high is not None else 1e6


def changed(stage: Any, field: str, value: float) -> dict[str, Any]:
    """The changes that give a stage's own setting another value."""
    if field == "steps" and isinstance(stage, Press):
        last = stage.steps[-1]
        name = "pressure_kpa" if last.pressure_kpa is not None else "load_kg"
        return {"steps": (*stage.steps[:-1], last.model_copy(update={name: value}))}
    return {field: value}


def _pills(frame: Frame, block: Block, stage: Any, taken: list[QRectF]) -> list[Grip]:
    """The stage's own settings, each as a pill where there is room; `taken` are the pills that stand already."""
    rect = frame.places.vat
    left, right = max(frame.axis.x(block.start_min), rect.left()), min(frame.axis.x(block.end_min), rect.right())
    if right - left < SLIMMEST_PX:
        return []
    middle = (left + right) / 2
    line_y = frame.temperature.y(frame.forecast.trace.at("temperature_c", frame.axis.minute(middle)))
    made: list[Grip] = []
    for handle in stage.HANDLES:
        found = setting(stage, handle.field) if handle.place == "inside" else None
        if found is None:
            continue
        label, kind, value, low, high = found
        text = value_text(kind, value, frame.system)
        longer = f"{label} {text}"
        if dress.width(longer, "note") + 24 < right - left:
            text = longer
        box = _pill_box(frame, dress.width(text, "note") + 16, middle, line_y + PILL_HEIGHT_PX, len(made), taken)
        if box is None:
            continue  # the form has it, and there is room when one looks closer
        taken.append(box)
        name = QCoreApplication.translate("Grip", "{0} of {1}").format(label, block.name)
        made.append(
            Grip(
                block.id, block.index, handle.field, "inside", name, kind, value, low, high, handle.step,
                box.center(), box, text=text,
            )
        )  # fmt: skip
    return made


def _pill_box(frame: Frame, wide: float, middle: float, lowest: float, row: int, taken: list[QRectF]) -> QRectF | None:
    """Where a pill has room: its row of the stage up from the floor of the vat, at `lowest` or under it, and higher
    where others stand; None where there is none."""
    rect, tall = frame.places.vat, PILL_HEIGHT_PX + PILL_GAP_PX
    y = max(rect.bottom() - rect.height() * 0.30, lowest) - row * tall
    y = min(y, rect.bottom() - PILL_HEIGHT_PX / 2 - 2)
    box = QRectF(middle - wide / 2, y - PILL_HEIGHT_PX / 2, wide, PILL_HEIGHT_PX)
    box.moveLeft(min(max(box.left(), rect.left() + 2), rect.right() - wide - 2))
    while any(box.intersects(other) for other in taken) and box.top() > rect.top() + 8:
        box.translate(0, -tall)
    crowded = any(box.intersects(other) for other in taken)
    return None if crowded or (frame.lane is not None and box.top() < rect.top() - 4) else box


def hit(grips: tuple[Grip, ...], frame: Frame, at: QPointF) -> Grip | None:
    """The grip under a point: pills, then corners, then edges; of several the nearest, an earlier stage first."""
    for grip in grips:
        if grip.place == "inside" and grip.box.adjusted(-1, -1, 1, 1).contains(at):
            return grip
    near: list[tuple[float, int, Grip]] = []
    for grip in grips:
        if grip.place == "corner":
            far = (grip.at - at).manhattanLength()
            if far <= CORNER_REACH_PX:
                near.append((far, -grip.index, grip))
    if near:
        return min(near, key=lambda item: item[:2])[2]
    top, bottom = frame.places.vat.top(), frame.places.ribbon.bottom()
    if not top <= at.y() <= bottom:
        return None
    for grip in grips:
        far = abs(grip.at.x() - at.x())
        if grip.place == "edge" and far <= EDGE_REACH_PX:
            near.append((far, -grip.index if at.x() >= grip.at.x() else grip.index, grip))
    return min(near, key=lambda item: item[:2])[2] if near else None


def moved(grip: Grip, value: float) -> Grip:
    """The same grip at another value."""
    return replace(grip, value=value)
