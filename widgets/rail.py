"""The places of the program as plain words along one edge, each with its drawing and a key."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtGui import QKeySequence, QResizeEvent
from PySide6.QtWidgets import QSizePolicy, QToolButton, QVBoxLayout, QWidget

from widgets.room import Scrolling
from widgets.theme import apply as dress
from widgets.theme.icons import icon


@dataclass(frozen=True, slots=True)
class View:
    """One way a place is shown in pictures of it: "" is the place as it opens; `show` brings it there."""

    name: str = ""
    show: Callable[[], object] = lambda: None


@dataclass(frozen=True, slots=True)
class Place:
    """One place: its name, its drawing, what makes its widget when it is first opened, what to do on opening.

    A page `under` another place has no button of its own: that place's stays marked.
    """

    key: str
    name: str
    icon: str
    make: Callable[[], QWidget]
    opened: Callable[[], object] = lambda: None
    under: str = ""
    keys: str = ""
    """its own key; else it is Ctrl and its number along the edge"""
    views: tuple[View, ...] = (View(),)


class Rail(QWidget):
    """One button a place."""

    chosen = Signal(str)

    def __init__(self, places: list[Place], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("places")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.setAccessibleName(self.tr("Places"))
        column = QVBoxLayout(self)
        column.setContentsMargins(6, 8, 6, 8)
        column.setSpacing(4)
        self._icons = {place.key: place.icon for place in places if not place.under}
        self.buttons: dict[str, QToolButton] = {}
        number = 0
        for place in (place for place in places if not place.under):
            number += not place.keys
            keys = place.keys or f"Ctrl+{number}"
            button = QToolButton(self)
            button.setText(place.name)
            button.setToolButtonStyle(Qt.ToolButtonStyle.ToolButtonTextUnderIcon)
            button.setIconSize(QSize(24, 24))
            button.setCheckable(True)
            button.setAutoExclusive(True)
            button.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
            button.setMinimumHeight(56)
            button.setShortcut(QKeySequence(keys))
            button.setToolTip(f"{place.name}  ({button.shortcut().toString(QKeySequence.SequenceFormat.NativeText)})")
            button.clicked.connect(lambda _=False, key=place.key: self.chosen.emit(key))
            column.addWidget(button)
            self.buttons[place.key] = button
        column.addStretch(1)
        self.setFixedWidth(max(82, 12 + max(button.sizeHint().width() for button in self.buttons.values())))
        self.recolour()

    def recolour(self) -> None:
        """Draw the icons in the ink of the palette."""
        c = dress.colours()
        for key, button in self.buttons.items():
            button.setIcon(icon(self._icons[key], c.ink, c.chosen))

    def show_chosen(self, key: str) -> None:
        """Mark the place that is open."""
        self.buttons[key].setChecked(True)


class Railed(Scrolling):
    """The rail where it may be higher than the window: a little wider there, for the bar it scrolls by."""

    def __init__(self, rail: Rail) -> None:
        super().__init__(rail, across=False)
        self.setObjectName("edge")
        self._rail = rail
        self.setFixedWidth(rail.width())

    def resizeEvent(self, event: QResizeEvent) -> None:
        """As wide as the rail, and its bar where it needs one."""
        super().resizeEvent(event)
        scrolls = self.height() < self._rail.minimumSizeHint().height()
        self.setFixedWidth(self._rail.width() + (self.verticalScrollBar().sizeHint().width() if scrolls else 0))
