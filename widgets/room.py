"""Room for the places: each has the window to itself, and scrolls where the screen is too small for it (at 200 %)."""

from __future__ import annotations

from PySide6.QtCore import QSize, Qt
from PySide6.QtWidgets import QFrame, QScrollArea, QStackedWidget, QWidget


class Stack(QStackedWidget):
    """One place at a time; it asks for no more room than the one that is shown."""

    def minimumSizeHint(self) -> QSize:
        """What the place shown can't do without."""
        shown = self.currentWidget()
        return shown.minimumSizeHint().expandedTo(shown.minimumSize()) if shown is not None else QSize()


def scrolling(widget: QWidget, *, across: bool = True) -> QScrollArea:
    """A frame of no width that scrolls what does not fit; `across` also sideways."""
    area = QScrollArea()
    area.setFrameShape(QFrame.Shape.NoFrame)
    area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
    area.setWidgetResizable(True)
    area.setWidget(widget)
    if not across:
        area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
    return area
