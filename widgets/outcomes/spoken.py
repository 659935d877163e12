"""Painted lines as real buttons for a screen reader: they are walked, read and pressed one by one.

They draw nothing and let the mouse through. The keyboard stays with the list that paints the lines: which line it is
on is told to the screen reader, and a reader that goes to a line takes the keyboard of the list there.
"""

from __future__ import annotations

from collections.abc import Hashable, Iterable
from typing import NamedTuple

from PySide6.QtCore import QObject, QRect, Qt, Signal
from PySide6.QtGui import QFocusEvent, QKeyEvent, QPaintEvent
from PySide6.QtWidgets import QAbstractButton, QWidget

from widgets.aloud import go_to


class Spoken(NamedTuple):
    """A line as it is told: what it is known by, its name, what else there is to say, where it is painted."""

    key: Hashable
    name: str
    more: str
    box: QRect
    can: bool = True
    """it can be pressed"""


class SpokenLine(QAbstractButton):
    """One line."""

    entered = Signal()
    """a screen reader takes the keyboard here"""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        self.setFocusPolicy(Qt.FocusPolicy.ClickFocus)  # the list is the one stop of the Tab key
        self.setUpdatesEnabled(False)

    def paintEvent(self, event: QPaintEvent) -> None:
        """The list draws it."""

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """The list has the keys."""
        event.ignore()

    def focusInEvent(self, event: QFocusEvent) -> None:
        """Hand the keyboard to the list, at this line."""
        self.entered.emit()


class SpokenLines(QObject):
    """The lines of a list."""

    pressed = Signal(object)
    """the key of a line"""
    entered = Signal(object)
    """the key of the line the list is to have the keyboard on"""

    def __init__(self, painted: QWidget) -> None:
        super().__init__(painted)
        self._painted = painted
        self.lines: dict[Hashable, SpokenLine] = {}

    def put(self, told: Iterable[Spoken]) -> None:
        """Tell these; lines that are no more go."""
        every = {one.key: one for one in told}
        for key in [key for key in self.lines if key not in every]:
            gone = self.lines.pop(key)
            gone.hide()
            gone.deleteLater()
        for key, one in every.items():
            line = self.lines.get(key) or self._made(key)
            if line.accessibleName() != one.name:
                line.setAccessibleName(one.name)
            if line.accessibleDescription() != one.more:
                line.setAccessibleDescription(one.more)
            line.setEnabled(one.can)
            line.setGeometry(one.box)

    def _made(self, key: Hashable) -> SpokenLine:
        line = self.lines[key] = SpokenLine(self._painted)
        line.clicked.connect(lambda: self.pressed.emit(key))
        line.entered.connect(lambda: self.entered.emit(key))
        line.show()
        return line

    def point(self, key: Hashable) -> None:
        """The keyboard is on this line now."""
        if key in self.lines:
            go_to(self.lines[key])
