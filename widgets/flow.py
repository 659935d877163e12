"""A row of widgets that goes on in the next line where there is no room, as words do."""

from __future__ import annotations

from PySide6.QtCore import QPoint, QRect, QSize, Qt
from PySide6.QtWidgets import QHBoxLayout, QLabel, QLayout, QLayoutItem, QSizePolicy, QWidget


class Flow(QLayout):
    """Lays its widgets out from left to right, each as large as it asks to be, and wraps."""

    def __init__(self, parent: QWidget | None = None, *, spacing: int = 6, centred: bool = False) -> None:
        super().__init__(parent)
        self._centred = centred
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
        y = rect.y()
        for line in self._lines(rect.width()):
            high = max(size.height() for _, size in line)
            spare = rect.width() - sum(size.width() + self.spacing() for _, size in line) + self.spacing()
            x = rect.x() + (spare // 2 if self._centred else 0)
            for item, size in line:
                if move:
                    item.setGeometry(QRect(QPoint(x, y + (high - size.height()) // 2), size))
                x += size.width() + self.spacing()
            y += high + self.spacing()
        return max(y - self.spacing() - rect.y(), 0)

    def _lines(self, room: int) -> list[list[tuple[QLayoutItem, QSize]]]:
        """What stands in each line; what is wider than the room has a line to itself, and is cut to it."""
        lines: list[list[tuple[QLayoutItem, QSize]]] = []
        taken = 0
        for item in self._items:
            if item.isEmpty():
                continue
            size = item.sizeHint()
            if room > 0:
                size = QSize(min(size.width(), max(room, item.minimumSize().width())), size.height())
            if not lines or taken + size.width() > room:
                lines.append([])
                taken = 0
            lines[-1].append((item, size))
            taken += size.width() + self.spacing()
        return lines


def flowing(*widgets: QWidget, spacing: int = 6, centred: bool = False) -> QWidget:
    """Widgets in a row that goes on in the next line."""
    made = QWidget()
    rule = QSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Preferred)
    rule.setHeightForWidth(True)
    made.setSizePolicy(rule)
    row = Flow(made, spacing=spacing, centred=centred)
    for widget in widgets:
        row.addWidget(widget)
    return made


def labelled(text: str, *fields: QWidget, spacing: int = 10) -> QWidget:
    """A quieter label with what it names, kept together in a line."""
    made = QWidget()
    row = QHBoxLayout(made)
    row.setContentsMargins(0, 0, 0, 0)
    row.setSpacing(spacing)
    label = QLabel(text)
    label.setProperty("role", "soft")
    label.setBuddy(fields[0])
    for widget in (label, *fields):
        row.addWidget(widget)
    return made
