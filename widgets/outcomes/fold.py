"""A line that opens: what is said, a figure at its right, a quieter second line; its details below when opened."""

from __future__ import annotations

from typing import Final

from PySide6.QtCore import QPointF, QRectF, QSize, Qt, Signal, Slot
from PySide6.QtGui import QFont, QKeyEvent, QPainter, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QAbstractButton, QSizePolicy, QVBoxLayout, QWidget

from widgets.outcomes.marks import paint_state
from widgets.theme import apply as dress
from widgets.together import Wrapped

MARK_PX: Final = 14.0
WRAP: Final = Qt.TextFlag.TextWordWrap | Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignTop
TALL: Final = 10_000.0


def paint_chevron(painter: QPainter, at: QPointF, opened: bool, colour: str) -> None:
    """The mark of something that opens, its middle at a point: to the right while shut, down while open."""
    arrow = [QPointF(-3.5, -1.8), QPointF(0, 1.8), QPointF(3.5, -1.8)]
    points = arrow if opened else [QPointF(-1.8, -3.5), QPointF(1.8, 0), QPointF(-1.8, 3.5)]
    painter.setPen(QPen(dress.ink(colour), 1.5))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawPolyline(QPolygonF([at + point for point in points]))


class _Opens(QAbstractButton):
    """A line that opens something: Enter does as a click does."""

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Space is Qt's own; Enter beside it."""
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.click()
        else:
            super().keyPressEvent(event)


class FoldHead(_Opens):
    """The line itself: a button with wrapped text."""

    def __init__(self, text: str, value: str, second: str, state: str, parent: QWidget) -> None:
        super().__init__(parent)
        self.value, self.second, self.state, self.pale = value, second, state, False
        self.setText(text)
        self.setCheckable(True)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setAttribute(Qt.WidgetAttribute.WA_Hover)
        policy = QSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Fixed)
        policy.setHeightForWidth(True)
        self.setSizePolicy(policy)
        self.setAccessibleName(", ".join(each for each in (text, value) if each))
        self.setAccessibleDescription(second)

    def say(self, second: str, state: str) -> None:
        """Another second line and state; it asks for room only where it needs another."""
        if (second, state) == (self.second, self.state):
            return
        tall = self.heightForWidth(self.width())
        self.second, self.state = second, state
        if self.heightForWidth(self.width()) != tall:
            self.updateGeometry()
        self.update()

    def _heights(self, width: float) -> tuple[float, float]:
        """How tall text and second line are."""
        left = MARK_PX + (14.0 if self.state else 0.0)
        room = width - left - (dress.width(self.value, "note", bold=True) + 10.0 if self.value else 0.0)
        first = dress.metrics("note").boundingRect(QRectF(0, 0, room, TALL), WRAP, self.text()).height()
        if not self.second:
            return first, 0.0
        second = dress.metrics("note").boundingRect(QRectF(0, 0, width - MARK_PX, TALL), WRAP, self.second).height()
        return first, second

    def hasHeightForWidth(self) -> bool:
        """Narrow, it grows taller."""
        return True

    def heightForWidth(self, width: int) -> int:
        """Tall enough for its words, and to be pressed."""
        return max(24, round(sum(self._heights(width))) + 9)

    def sizeHint(self) -> QSize:
        """As tall as a usual panel asks."""
        return QSize(240, self.heightForWidth(290))

    def minimumSizeHint(self) -> QSize:
        """Words wrap."""
        return QSize(120, 24)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Chevron, words, figure; a ring around it while it has the keyboard."""
        c = dress.colours()
        painter = QPainter(self)
        try:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            if self.underMouse():
                painter.fillRect(self.rect(), dress.ink(c.of("unfolded")))
            first, second = self._heights(self.width())
            top, left = 4.0, MARK_PX
            paint_chevron(painter, QPointF(5, top + dress.metrics("note").height() / 2), self.isChecked(), c.soft)
            if self.state:
                paint_state(painter, QPointF(left + 4, top + dress.metrics("note").height() / 2), self.state)
                left += 14.0
            painter.setPen(dress.ink(c.soft if self.pale else c.ink))
            painter.setFont(dress.font("note"))
            painter.drawText(QRectF(left, top, self.width() - left - self._value_room(), first + 2), WRAP, self.text())
            painter.setFont(dress.font("note", bold=True))
            base = top + dress.metrics("note").ascent()
            painter.drawText(QPointF(self.width() - dress.width(self.value, "note", bold=True) - 2, base), self.value)
            painter.setFont(dress.font("note"))
            painter.setPen(dress.ink(c.soft))
            painter.drawText(QRectF(MARK_PX, top + first, self.width() - MARK_PX, second + 2), WRAP, self.second)
            if self.hasFocus():
                painter.setPen(QPen(dress.ink(c.accent), 1.5))
                painter.setBrush(Qt.BrushStyle.NoBrush)
                painter.drawRoundedRect(QRectF(self.rect()).adjusted(1, 1, -1, -1), 4, 4)
        finally:
            painter.end()

    def _value_room(self) -> float:
        return dress.width(self.value, "note", bold=True) + 10.0 if self.value else 0.0


class SourceLink(_Opens):
    """Where a figure is from, on one line: a click or Enter opens it; the tooltip has all its words."""

    def __init__(self, text: str, parent: QWidget) -> None:
        super().__init__(parent)
        self.setText(text)
        self.setToolTip(text)
        self.setAccessibleName(self.tr("Source: {0}").format(text))
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setAttribute(Qt.WidgetAttribute.WA_Hover)
        self.setCursor(Qt.CursorShape.PointingHandCursor)
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Fixed)

    def sizeHint(self) -> QSize:
        """One line, high enough to be pressed."""
        return QSize(120, max(24, round(dress.metrics("note").height()) + 6))

    def paintEvent(self, event: QPaintEvent) -> None:
        """The words in the colour of what can be pressed, underlined where the pointer or the keyboard is."""
        painter = QPainter(self)
        try:
            font = QFont(dress.font("note"))
            font.setUnderline(self.underMouse() or self.hasFocus())
            painter.setFont(font)
            painter.setPen(dress.ink(dress.colours().accent))
            said = dress.fitted(self.text(), "note", self.width() - MARK_PX - 4)
            painter.drawText(QPointF(MARK_PX, dress.metrics("note").ascent() + 3), said)
            if self.hasFocus():
                painter.setRenderHint(QPainter.RenderHint.Antialiasing)
                painter.setPen(QPen(dress.ink(dress.colours().accent), 1.5))
                painter.drawRoundedRect(QRectF(self.rect()).adjusted(1, 1, -1, -1), 4, 4)
        finally:
            painter.end()


class Fold(QWidget):
    """A line and what it opens to; `state` of the verdict sets a shape before it, `source` a line that opens it."""

    toggled = Signal(bool)

    def __init__(
        self, text: str, details: str, *, value: str = "", second: str = "", state: str = "", source: str = "",
        parent: QWidget | None = None,
    ) -> None:  # fmt: skip
        super().__init__(parent)
        self.head = FoldHead(text, value, second, state, self)
        self.details = Wrapped(details, self)
        self.details.setFont(dress.font("note"))
        self.details.setProperty("role", "soft")
        self.details.setContentsMargins(round(MARK_PX), 2, 4, 6)
        self.details.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self.details.setTextFormat(Qt.TextFormat.PlainText)
        self.details.hide()
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self.head)
        self.source = SourceLink(source, self) if source else None
        if self.source is not None:
            column.addWidget(self.source)
        column.addWidget(self.details)
        self.head.toggled.connect(self._turn)

    @Slot(bool)
    def _turn(self, on: bool) -> None:
        self.details.setVisible(on)
        self.toggled.emit(on)

    def set_pale(self, pale: bool) -> None:
        """Quieter while what it says is being worked out anew."""
        self.head.pale = pale
        self.head.update()
