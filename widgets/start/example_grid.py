"""The example recipes as cards with a small picture of their make, in as many columns as there is room for."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Final

from PySide6.QtCore import QRectF, QSize, Qt, Signal
from PySide6.QtGui import QKeyEvent, QPainter, QPaintEvent, QPen, QResizeEvent
from PySide6.QtWidgets import QAbstractButton, QGridLayout, QSizePolicy, QWidget

from designer.forecast import Forecast
from widgets.start.thumbnail import paint_make
from widgets.theme import apply as dress

CARD_PX: Final = 216
PICTURE_PX: Final = 64
GAP_PX: Final = 12


@dataclass(frozen=True, slots=True)
class Example:
    """One example: its file, what it is called, a second line, and its make once it is worked out."""

    path: Path
    name: str
    line: str
    made: Forecast | None = None


class ExampleCard(QAbstractButton):
    """One example: picture, name, a second line. A click or Enter opens it."""

    def __init__(self, example: Example, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.example = example
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setCursor(Qt.CursorShape.PointingHandCursor)
        self.setAttribute(Qt.WidgetAttribute.WA_Hover)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setAccessibleName(f"{example.name}, {example.line}")

    def put(self, example: Example) -> None:
        """Show the same example with its picture."""
        self.example = example
        self.update()

    def sizeHint(self) -> QSize:
        """Room for the picture and two lines."""
        lines = dress.metrics("body", bold=True).height() + dress.metrics("note").height()
        return QSize(CARD_PX, round(PICTURE_PX + lines + 26))

    def minimumSizeHint(self) -> QSize:
        """It may be narrower, never lower."""
        return QSize(150, self.sizeHint().height())

    def paintEvent(self, event: QPaintEvent) -> None:
        """The card as it stands."""
        c = dress.colours()
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        strong = self.hasFocus() or self.underMouse()
        edge = 2.0 if self.hasFocus() else 1.0
        painter.setPen(QPen(dress.ink(c.accent if strong else c.line), edge))
        painter.setBrush(dress.ink(c.chosen if self.isDown() else c.panel))
        box = QRectF(self.rect()).adjusted(1, 1, -1, -1)
        painter.drawRoundedRect(box, 8, 8)
        inside = box.adjusted(10, 9, -10, -8)
        if self.example.made is not None:
            paint_make(painter, QRectF(inside.left(), inside.top(), inside.width(), PICTURE_PX), self.example.made)
        y = inside.top() + PICTURE_PX + 6
        for text, role, bold, colour in (
            (self.example.name, "body", True, c.ink),
            (self.example.line, "note", False, c.soft),
        ):
            metrics = dress.metrics(role, bold=bold)
            painter.setFont(dress.font(role, bold=bold))
            painter.setPen(dress.ink(colour))
            room = QRectF(inside.left(), y, inside.width(), metrics.height())
            painter.drawText(room, Qt.AlignmentFlag.AlignVCenter, dress.fitted(text, role, inside.width(), bold=bold))
            y += metrics.height() + 1
        painter.end()


class ExampleGrid(QWidget):
    """All examples; arrows go from card to card."""

    chosen = Signal(Path)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.cards: list[ExampleCard] = []
        self._columns = 0
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setSpacing(GAP_PX)
        self._grid.setAlignment(Qt.AlignmentFlag.AlignTop)

    def put(self, examples: Sequence[Example]) -> None:
        """Show these; cards that are there already only take their pictures."""
        if [card.example.path for card in self.cards] == [one.path for one in examples]:
            for card, one in zip(self.cards, examples, strict=True):
                card.put(one)
            return
        for card in self.cards:
            card.hide()
            card.deleteLater()
        self.cards = [ExampleCard(one, self) for one in examples]
        for card in self.cards:
            card.clicked.connect(lambda _=False, card=card: self.chosen.emit(card.example.path))
        self._columns = 0
        self._place()

    def columns(self) -> int:
        """How many cards stand beside each other."""
        return max(1, (self.width() + GAP_PX) // (CARD_PX + GAP_PX))

    def _place(self) -> None:
        if self.columns() == self._columns:
            return
        for column in range(self._columns):
            self._grid.setColumnStretch(column, 0)
        self._columns = self.columns()
        for index, card in enumerate(self.cards):
            self._grid.addWidget(card, index // self._columns, index % self._columns)
        for column in range(self._columns):
            self._grid.setColumnStretch(column, 1)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """As many columns as there is room for."""
        super().resizeEvent(event)
        self._place()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Arrows go from card to card, Enter opens."""
        here = next((index for index, card in enumerate(self.cards) if card.hasFocus()), None)
        steps = {
            Qt.Key.Key_Left: -1, Qt.Key.Key_Right: 1, Qt.Key.Key_Up: -self._columns, Qt.Key.Key_Down: self._columns,
        }  # fmt: skip
        step = steps.get(Qt.Key(event.key()))
        if here is None:
            super().keyPressEvent(event)
        elif step is not None and 0 <= here + step < len(self.cards):
            self.cards[here + step].setFocus(Qt.FocusReason.OtherFocusReason)
        elif event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.cards[here].click()
        else:
            super().keyPressEvent(event)
