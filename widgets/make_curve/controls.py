"""Real focusable sliders over the grips: the keyboard's way to every setting, and what a screen reader meets.

They draw nothing and let the mouse through; the canvas draws the focus. (Graphics drawn by hand have no
accessibility of their own.)
"""

from __future__ import annotations

from typing import Final

from PySide6.QtCore import QEvent, QRect, Qt, Signal
from PySide6.QtGui import QFocusEvent, QKeyEvent, QPaintEvent
from PySide6.QtWidgets import QSlider, QWidget

from widgets.make_curve.grips import Grip, value_text

SIDE_PX: Final = 24
_STEPS: Final = {
    Qt.Key.Key_Right: 1.0,
    Qt.Key.Key_Up: 1.0,
    Qt.Key.Key_Left: -1.0,
    Qt.Key.Key_Down: -1.0,
    Qt.Key.Key_PageUp: 5.0,
    Qt.Key.Key_PageDown: -5.0,
}


def _whole(kind: str, value: float) -> int:
    """A value as a whole number for the slider: hundredths of pH, tenths of others, whole minutes."""
    return round(value * {"ph": 100, "duration": 1}.get(kind, 10))


class GripControl(QSlider):
    """One grip as a slider: arrows nudge, Shift takes small steps, Enter asks for typing, Esc leaves."""

    nudged = Signal(object, float, bool)
    """grip, steps, fine"""
    entered = Signal(object)
    asked = Signal(object)
    left = Signal()

    def __init__(self, grip: Grip, parent: QWidget) -> None:
        super().__init__(Qt.Orientation.Horizontal, parent)
        self.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        self.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self.setRange(-1_000_000, 2_000_000_000)
        self.grip = grip

    def show_grip(self, grip: Grip, system: str) -> None:
        """Follow the grip: place, value, name."""
        self.grip = grip
        self.setAccessibleName(grip.label)
        self.setAccessibleDescription(value_text(grip.kind, grip.value, system))
        self.setValue(_whole(grip.kind, grip.value))
        side = SIDE_PX
        box = (
            grip.box.toAlignedRect()
            if grip.place == "inside"
            else QRect(round(grip.at.x()) - side // 2, round(grip.at.y()) - side // 2, side, side)
        )
        if self.geometry() != box:
            self.setGeometry(box)

    def paintEvent(self, event: QPaintEvent) -> None:
        """The canvas draws it."""

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Arrows, Page Up and Down nudge; Shift: small steps."""
        steps = _STEPS.get(Qt.Key(event.key()))
        if steps is not None:
            self.nudged.emit(self.grip, steps, bool(event.modifiers() & Qt.KeyboardModifier.ShiftModifier))
        elif event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.asked.emit(self.grip)
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
