"""A row of widgets that goes on in the next line where there is no room, as words do."""

from __future__ import annotations

from PySide6.QtCore import QPoint, QRect, QSize, Qt
from PySide6.QtWidgets import QLayout, QLayoutItem, QWidget


class Flow(QLayout):
    """Lays its widgets out from left to right, each as large as it asks to be, and wraps."""

    def __init__(self, parent: QWidget | None = None, *, spacing: int = 6) -> None:
        super().__init__(parent)
        self._items: list[QLayoutItem] = []
        self.setContentsMargins(0, 0, 0, 0)
        self.setSpacing(spacing)

    def addItem(self, item: QLayoutItem) -> None:
        """At the end."""
        self._items.append(item)

    def insertWidget(self, at: int, widget: QWidget) -> None:
        """Before the widget that stands there."""
        self.addWidget(widget)
        self._items.insert(at, self._items.pop())
        self.invalidate()

    def count(self) -> int:
        """How many."""
        return len(self._items)

    def itemAt(self, index: int) -> QLayoutItem | None:  # type: ignore[override]
        """One of them, None past the end."""
        return self._items[index] if 0 <= index < len(self._items) else None

    def takeAt(self, index: int) -> QLayoutItem | None:  # type: ignore[override]
        """Out of the row, None past the end."""
        return self._items.pop(index) if 0 <= index < len(self._items) else None

    def expandingDirections(self) -> Qt.Orientation:
        """It asks for no more than it needs."""
        return Qt.Orientation(0)

    def hasHeightForWidth(self) -> bool:
        """The narrower, the higher."""
        return True

    def heightForWidth(self, width: int) -> int:
        """How high at a width."""
        return self._arranged(QRect(0, 0, width, 0), move=False)

    def setGeometry(self, rect: QRect) -> None:
        """Put everything in its place."""
        super().setGeometry(rect)
        self._arranged(rect, move=True)

    def sizeHint(self) -> QSize:
        """All in one line."""
        seen = [item.sizeHint() for item in self._items if not item.isEmpty()]
        wide = sum(size.width() for size in seen) + self.spacing() * max(len(seen) - 1, 0)
        return QSize(wide, max((size.height() for size in seen), default=0))

    def minimumSize(self) -> QSize:
        """The largest of them."""
        sizes = [item.minimumSize() for item in self._items if not item.isEmpty()]
        return QSize(max((one.width() for one in sizes), default=0), max((one.height() for one in sizes), default=0))

    def _arranged(self, rect: QRect, *, move: bool) -> int:
        x, y, line = rect.x(), rect.y(), 0
        for item in self._items:
            if item.isEmpty():
                continue
            size = item.sizeHint()
            if x > rect.x() and x + size.width() > rect.right() + 1:
                x, y, line = rect.x(), y + line + self.spacing(), 0
            if move:
                item.setGeometry(QRect(QPoint(x, y), size))
            x += size.width() + self.spacing()
            line = max(line, size.height())
        return y + line - rect.y()
