"""Real focusable sliders over the grips: the keyboard's way to every setting, and what a screen reader meets.

They draw nothing and let the mouse through; the canvas draws the focus. (Graphics drawn by hand have no
accessibility of their own.)
"""

from __future__ import annotations

from typing import Final

from PySide6.QtCore import QEvent, QRect, Qt, Signal, Slot
from PySide6.QtGui import QFocusEvent, QKeyEvent, QPaintEvent
from PySide6.QtWidgets import QSlider, QWidget

from widgets.aloud import say
from widgets.make_curve.grips import Grip, value_text
from widgets.wording import measured, temperature

SIDE_PX: Final = 24
_STEPS: Final = {
    Qt.Key.Key_Right: 1.0,
    Qt.Key.Key_Up: 1.0,
    Qt.Key.Key_Left: -1.0,
    Qt.Key.Key_Down: -1.0,
    Qt.Key.Key_PageUp: 5.0,
    Qt.Key.Key_PageDown: -5.0,
}


def _scale(kind: str) -> int:
    """What a value is multiplied by for the slider: hundredths of pH, tenths of others, whole minutes."""
    return {"ph": 100, "duration": 1}.get(kind, 10)


def _whole(kind: str, value: float) -> int:
    """A value as a whole number for the slider."""
    return round(max(min(value * _scale(kind), 2e9), -1e6))


def _at_least(box: QRect) -> QRect:
    """A box grown to the least size of a target."""
    wide, tall = max(SIDE_PX - box.width(), 0), max(SIDE_PX - box.height(), 0)
    return box.adjusted(-(wide // 2), -(tall // 2), wide - wide // 2, tall - tall // 2)


class GripControl(QSlider):
    """One grip as a slider: arrows nudge, Shift takes small steps, Enter asks for typing, L locks, Esc leaves."""

    nudged = Signal(object, float, bool)
    """grip, steps, fine"""
    entered = Signal(object)
    asked = Signal(object)
    left = Signal()
    locked = Signal()
    """aim is to leave this setting as it is, or may move it again"""

    def __init__(self, grip: Grip, parent: QWidget) -> None:
        super().__init__(Qt.Orientation.Horizontal, parent)
        self.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        self.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self.setUpdatesEnabled(False)  # the canvas draws it; two dozen painters that draw nothing cost every frame
        self.grip = grip
        self._system = "metric"
        self._following = False
        self.valueChanged.connect(self._placed)

    def show_grip(self, grip: Grip, system: str) -> None:
        """Follow the grip: place, value, name."""
        other = value_text(grip.kind, grip.value, system) != self.accessibleDescription()
        self.grip, self._system = grip, system
        self.setAccessibleName(grip.label)
        self.setAccessibleDescription(value_text(grip.kind, grip.value, system))
        self._following = True
        self.setRange(_whole(grip.kind, min(grip.low, grip.value)), _whole(grip.kind, max(grip.high, grip.value)))
        self.setValue(_whole(grip.kind, grip.value))
        self._following = False
        if other and self.hasFocus():
            say(self, self.accessibleDescription())
        side = SIDE_PX
        box = (
            _at_least(grip.box.toAlignedRect())
            if grip.place == "inside"
            else QRect(round(grip.at.x()) - side // 2, round(grip.at.y()) - side // 2, side, side)
        )
        if self.geometry() != box:
            self.setGeometry(box)

    @Slot(int)
    def _placed(self, whole: int) -> None:
        """The value was set from outside, as a screen reader does: as so many small steps."""
        if self._following:
            return
        away = whole / _scale(self.grip.kind) - self.grip.value
        step = 1.0 if self.grip.kind == "duration" else 0.1 * self.grip.step
        if self.grip.kind == "temperature" and measured(self._system, "temperature") == "us":
            step = 0.1 / temperature("us").slope
        self.nudged.emit(self.grip, away / step, True)

    def paintEvent(self, event: QPaintEvent) -> None:
        """The canvas draws it."""

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Arrows, Page Up and Down nudge; Shift: small steps."""
        steps = _STEPS.get(Qt.Key(event.key()))
        if steps is not None:
            self.nudged.emit(self.grip, steps, bool(event.modifiers() & Qt.KeyboardModifier.ShiftModifier))
        elif event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.asked.emit(self.grip)
        elif event.key() == Qt.Key.Key_L and not event.modifiers():
            self.locked.emit()
        elif event.key() == Qt.Key.Key_Escape:
            self.clearFocus()
        else:
            event.ignore()

    def event(self, event: QEvent) -> bool:
        """Keep the arrows for nudging, whatever shortcut wants them."""
        if (
            event.type() == QEvent.Type.ShortcutOverride
            and isinstance(event, QKeyEvent)
            and Qt.Key(event.key()) in _STEPS
        ):
            event.accept()
            return True
        return super().event(event)

    def focusInEvent(self, event: QFocusEvent) -> None:
        """Tell the canvas."""
        super().focusInEvent(event)
        self.entered.emit(self.grip)

    def focusOutEvent(self, event: QFocusEvent) -> None:
        """Tell the canvas."""
        super().focusOutEvent(event)
        self.left.emit()
