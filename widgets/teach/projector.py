"""The view for the projector: the make curve and the outcomes in large type, over the whole screen.

The curve is the window's own, so that a drag in front of a class is an edit like any other, with its undo.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Final

from PySide6.QtCore import QObject, Qt, Signal, Slot
from PySide6.QtGui import QFont, QKeyEvent, QResizeEvent
from PySide6.QtWidgets import (
    QApplication,
    QFrame,
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QMainWindow,
    QSplitter,
    QToolBar,
    QVBoxLayout,
    QWidget,
)

from designer.judge.compare import part_words
from designer.units import System
from widgets import wording
from widgets.outcomes import figures
from widgets.session import Session
from widgets.theme import apply as dress
from widgets.together import Wrapped

LARGE: Final = 1.7
"""How much larger the type is than at the desk."""
FRAME_PX, GAP_PX = 82, 16
"""What the frame about the figures takes of the width, and what stands between two of them."""
SHOWN: Final = ("moisture_pct", "ph_24h", "fdm_pct", "salt_in_moisture_pct", "yield_kg_per_100kg", "finish_min")


class Projector(QWidget):
    """Takes the curve in while it is shown; `left` when Esc is pressed."""

    left = Signal()

    def __init__(self, session: Session, system: System, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.session, self.system = session, system
        self.setAccessibleName(self.tr("View for the projector"))
        self.name = QLabel()
        self.name.setFont(dress.font("title", bold=True))
        self.hint = QLabel(self.tr("Esc: back to the desk"))
        self.hint.setProperty("role", "soft")
        self.names: dict[str, QLabel] = {}
        self.values: dict[str, QLabel] = {}
        self.moves: dict[str, QLabel] = {}
        head = QHBoxLayout()
        head.addWidget(self.name, 1)
        head.addWidget(self.hint)
        self.room = QVBoxLayout()
        column = QVBoxLayout(self)
        column.setContentsMargins(24, 14, 24, 14)
        column.setSpacing(10)
        column.addLayout(head)
        column.addLayout(self.room, 1)
        column.addWidget(self._figures())
        session.forecastChanged.connect(self.fill)
        session.documentChanged.connect(self.fill)
        self.fill()

    def _figures(self) -> QWidget:
        whole = QFrame()
        whole.setObjectName("card")
        grid = QGridLayout(whole)
        grid.setContentsMargins(16, 10, 16, 10)
        grid.setHorizontalSpacing(GAP_PX)
        grid.setVerticalSpacing(0)
        for column, key in enumerate(SHOWN):
            name = Wrapped(figures.label_of(key))
            name.setProperty("role", "soft")
            name.setFont(dress.font("note"))
            self.names[key] = name
            self.values[key], self.moves[key] = QLabel(), QLabel()
            self.values[key].setFont(dress.font("title", bold=True))
            self.moves[key].setFont(dress.font("head"))
            for row, label in enumerate((name, self.values[key], self.moves[key])):
                label.setAlignment(Qt.AlignmentFlag.AlignHCenter | Qt.AlignmentFlag.AlignBottom)
                grid.addWidget(label, row, column)
            grid.setColumnStretch(column, 1)
        return whole

    def take(self, curve: QWidget) -> None:
        """The curve comes here."""
        self.room.addWidget(curve, 1)
        curve.show()
        curve.setFocus()

    @Slot()
    def fill(self) -> None:
        """Bring the figures up to date: the value, and how far it went with the last change."""
        made, before = self.session.forecast, self.session.before
        self.name.setText(made.recipe.name)
        for key in SHOWN:
            there = made.outcomes.get(key)
            self.values[key].setText("\u2013" if there is None else figures.value_words(key, there.value, self.system))
            old = before.outcomes.get(key) if before is not None else None
            by = part_words(key, there.value - old.value) if there is not None and old is not None else ""
            self.moves[key].setText(by or " ")
        self._fit()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Another screen, another room for the figures."""
        super().resizeEvent(event)
        self._fit()

    def _fit(self) -> None:
        """The figures as large as the narrowest column lets them all be."""
        room = (self.width() - FRAME_PX) / len(SHOWN) - GAP_PX
        widest = max(dress.width(label.text(), "title", bold=True) for label in self.values.values())
        share = min(1.0, max(room, 40.0) / widest)
        for labels, role, bold in ((self.values, "title", True), (self.moves, "head", False)):
            font = QFont(dress.font(role, bold=bold))
            font.setPointSizeF(font.pointSizeF() * share)
            for label in labels.values():
                label.setFont(font)
        for key, label in self.names.items():
            label.setText(figures.label_of(key) if share == 1.0 else figures.shorter_of(key))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Esc leads back to the desk."""
        if event.key() == Qt.Key.Key_Escape:
            self.left.emit()
        else:
            super().keyPressEvent(event)


class Projecting(QObject):
    """Enters and leaves the view: puts it in place of all the window holds, and all back afterwards."""

    def __init__(self, window: QMainWindow, session: Session, curve: QWidget, scheme: Callable[[], str]) -> None:
        super().__init__(window)
        self.window, self.session, self.curve, self.scheme = window, session, curve, scheme
        self.system: System = "metric"
        self.view: Projector | None = None
        self._desk: QWidget | None = None
        self._home: QSplitter | None = None
        """where the curve lives at the desk"""
        self._sizes: list[int] = []
        self._state = window.windowState()

    def toggle(self) -> None:
        """Enter, or leave."""
        self.enter() if self.view is None else self.leave()

    def enter(self) -> None:
        """The whole screen for the curve and the figures, in large type."""
        if self.view is not None:
            return
        home = self.curve.parentWidget()
        assert isinstance(home, QSplitter)
        self._home, self._sizes = home, home.sizes()
        self._state = self.window.windowState()
        self._type(LARGE)
        self.view = Projector(self.session, self.system)
        self.view.left.connect(self.leave)
        self._chrome(False)
        self._desk = self.window.takeCentralWidget()
        self.window.setCentralWidget(self.view)
        self.view.take(self.curve)
        self.window.showFullScreen()

    @Slot()
    def leave(self) -> None:
        """Back to the desk, as it was."""
        view, desk, home = self.view, self._desk, self._home
        if view is None or desk is None or home is None:
            return
        self.view = self._desk = None
        self._type(1.0)
        home.insertWidget(0, self.curve)
        self.window.takeCentralWidget()
        self.window.setCentralWidget(desk)
        desk.show()
        home.setSizes(self._sizes)
        self._chrome(True)
        view.hide()
        view.deleteLater()
        self.window.setWindowState(self._state)
        self.curve.setFocus()

    def _chrome(self, on: bool) -> None:
        for part in (self.window.menuBar(), self.window.statusBar(), *self.window.findChildren(QToolBar)):
            part.setVisible(on)

    def _type(self, larger: float) -> None:
        app = QApplication.instance()
        assert isinstance(app, QApplication)
        dress.enlarge(app, self.scheme(), larger)

    def set_system(self, system: str) -> None:
        """Metric or US units."""
        self.system = wording.system_of(system)
        if self.view is not None:
            self.view.system = self.system
            self.view.fill()
