"""Room for the places: each has the window to itself; what stands side by side stands under each other where the
screen is too small for it (at 200 %), and then the place scrolls up and down, never sideways.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from PySide6.QtCore import QEvent, QSize, Qt, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QApplication, QBoxLayout, QFrame, QScrollArea, QSizePolicy, QSplitter, QWidget

LEAST_PX: Final = 240
"""How high a part is at least where parts stand under each other: less than that is a slit."""


class Stack(QWidget):
    """One of several widgets at a time, asking for no more room than the one that is shown.

    Qt's own stack asks for as much as the largest, and in a layout tells the height of the highest.
    """

    currentChanged = Signal(int)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._all: list[QWidget] = []
        self._at = -1
        rule = QSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        rule.setHeightForWidth(True)
        self.setSizePolicy(rule)

    def addWidget(self, widget: QWidget) -> None:
        """One more, behind the others; the first is shown."""
        widget.setParent(self)
        widget.hide()
        self._all.append(widget)
        if self._at < 0:
            self.setCurrentIndex(0)

    def count(self) -> int:
        """How many."""
        return len(self._all)

    def widget(self, at: int) -> QWidget:
        """One of them."""
        return self._all[at]

    def currentIndex(self) -> int:
        """The place of the one that is shown, -1 where there is none."""
        return self._at

    def currentWidget(self) -> QWidget | None:
        """The one that is shown."""
        return self._all[self._at] if self._at >= 0 else None

    def setCurrentWidget(self, widget: QWidget) -> None:
        """Show this one."""
        self.setCurrentIndex(self._all.index(widget))

    def setCurrentIndex(self, at: int) -> None:
        """Show the one at this place; the keyboard goes with it, as it does in Qt's own."""
        if at == self._at:
            return
        before, self._at = self.currentWidget(), at
        shown = self._all[at]
        held = before is not None and before.isAncestorOf(QApplication.focusWidget() or self)
        shown.setGeometry(self.rect())
        shown.show()
        if before is not None:
            before.hide()
        if held:
            shown.setFocus()
        self.updateGeometry()
        self.currentChanged.emit(at)

    def sizeHint(self) -> QSize:
        """What the one shown likes."""
        shown = self.currentWidget()
        return shown.sizeHint() if shown is not None else QSize()

    def minimumSizeHint(self) -> QSize:
        """What the one shown can't do without."""
        return _least(self.currentWidget())

    def hasHeightForWidth(self) -> bool:
        """Words wrap."""
        return True

    def heightForWidth(self, width: int) -> int:
        """How high it must be at a width."""
        shown = self.currentWidget()
        inside = shown.layout() if shown is not None else None
        least = self.minimumSizeHint().height()
        if inside is None or not inside.hasHeightForWidth():
            return least
        return max(least, inside.minimumHeightForWidth(width))

    def event(self, event: QEvent) -> bool:
        """Where the one shown asks for other room, so does this."""
        if event.type() == QEvent.Type.LayoutRequest:
            self.updateGeometry()
        return super().event(event)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """The one shown has it all."""
        super().resizeEvent(event)
        shown = self.currentWidget()
        if shown is not None:
            shown.setGeometry(self.rect())


class Scrolling(QScrollArea):
    """A frame of no width that scrolls what does not fit: down, and sideways only where it is told to."""

    def __init__(self, widget: QWidget, *, across: bool, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._across = across
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setWidgetResizable(True)
        self.setWidget(widget)
        if not across:
            self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)

    def minimumSizeHint(self) -> QSize:
        """As wide as what it holds where that can't be scrolled to; any height."""
        least = super().minimumSizeHint()
        if self._across:
            return least
        return QSize(_least(self.widget()).width() + self.verticalScrollBar().sizeHint().width(), least.height())


def scrolling(widget: QWidget, *, across: bool = True) -> Scrolling:
    """A frame of no width that scrolls what does not fit; `across` also sideways."""
    return Scrolling(widget, across=across)


class Parts(QSplitter):
    """Parts beside each other with an edge to drag; under each other where the room is less than `beside_px`."""

    turned = Signal(bool)
    """whether the parts now stand under each other"""

    def __init__(self, parts: Sequence[QWidget], sizes: Sequence[int], beside_px: int) -> None:
        super().__init__(Qt.Orientation.Horizontal)
        self._beside_px = beside_px
        self._sizes = list(sizes)
        self.setChildrenCollapsible(False)
        self.setHandleWidth(1)
        for part in parts:
            self.addWidget(part)
        self.setSizes(self._sizes)
        self.splitterMoved.connect(self._dragged)

    def _dragged(self) -> None:
        if not self.under:
            self._sizes = self.sizes()

    @property
    def under(self) -> bool:
        """Whether the parts stand under each other."""
        return self.orientation() == Qt.Orientation.Vertical

    def _heights(self) -> list[int]:
        return [max(_least(self.widget(at)).height(), LEAST_PX) for at in range(self.count())]

    def minimumSizeHint(self) -> QSize:
        """The widest part; the height of one of them, or of all where they stand under each other."""
        least = [_least(self.widget(at)) for at in range(self.count())]
        wide = max(one.width() for one in least)
        if not self.under:
            return QSize(wide, max(one.height() for one in least))
        return QSize(wide, sum(self._heights()) + self.handleWidth() * (self.count() - 1))

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Turn where there is too little room, and back where there is enough."""
        under = event.size().width() < self._beside_px
        if under != self.under:
            self.setOrientation(Qt.Orientation.Vertical if under else Qt.Orientation.Horizontal)
            self.setSizes(self._heights() if under else self._sizes)
            self.turned.emit(under)
            self.updateGeometry()
        super().resizeEvent(event)


class Turning(QWidget):
    """Widgets in a row; in a column where the room is less than `beside_px`."""

    def __init__(self, parts: Sequence[tuple[QWidget, int]], beside_px: int, *, spacing: int = 10) -> None:
        super().__init__()
        self._beside_px = beside_px
        self._row = QBoxLayout(QBoxLayout.Direction.LeftToRight, self)
        self._row.setContentsMargins(0, 0, 0, 0)
        self._row.setSpacing(spacing)
        for part, stretch in parts:
            self._row.addWidget(part, stretch)

    def minimumSizeHint(self) -> QSize:
        """The widest of them, as high as they stand."""
        least = [_least(item.widget()) for at in range(self._row.count()) if (item := self._row.itemAt(at)) is not None]
        edge = self.contentsMargins()
        return QSize(
            max(one.width() for one in least) + edge.left() + edge.right(),
            self._row.minimumSize().height() + edge.top() + edge.bottom(),
        )

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Turn where there is too little room, and back where there is enough."""
        way = QBoxLayout.Direction
        wanted = way.TopToBottom if event.size().width() < self._beside_px else way.LeftToRight
        if wanted != self._row.direction():
            self._row.setDirection(wanted)
            self.updateGeometry()
        super().resizeEvent(event)


def _least(widget: QWidget | None) -> QSize:
    """What a widget can't do without."""
    if widget is None:
        return QSize()
    return widget.minimumSizeHint().expandedTo(widget.minimumSize()).boundedTo(widget.maximumSize())
