"""A short look around the window: a note beside the real thing, one after another, while all of it can be used.

It never takes the keyboard and blocks nothing. "Later" puts it away and it goes on from there when it is asked for;
"Close for good" keeps it from coming by itself.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Final

from PySide6.QtCore import QEvent, QObject, QPoint, QRect, QRectF, Qt, Signal, Slot
from PySide6.QtGui import QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QPushButton, QVBoxLayout, QWidget

from widgets.theme import apply as dress
from widgets.together import Wrapped

NOTE_PX: Final = 400
GAP_PX: Final = 14


@dataclass(frozen=True, slots=True)
class Step:
    """One thing to look at: where it is (a rectangle of the window), what it is called, two sentences."""

    where: Callable[[], QRect]
    title: str
    text: str
    place: str = "design"


class Ring(QWidget):
    """A ring around a thing; the mouse goes through it."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        self.hide()

    def paintEvent(self, event: QPaintEvent) -> None:
        """The ring."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(QPen(dress.ink(dress.colours().accent), 3.0))
        painter.drawRoundedRect(QRectF(self.rect()).adjusted(2, 2, -2, -2), 8, 8)
        painter.end()


class LookAround(QObject):
    """Walks through the steps. `closed` tells that it shall not come by itself again."""

    closed = Signal()

    def __init__(self, window: QWidget, go: Callable[[str], None], steps: list[Step]) -> None:
        super().__init__(window)
        self._window, self._go, self.steps = window, go, steps
        self.at = 0
        self.ring = Ring(window)
        self.note = QFrame(window)
        self.note.setObjectName("note")
        self.note.setAccessibleName(self.tr("A look around"))
        self.note.setFixedWidth(NOTE_PX)
        self.title, self.text, self.count = QLabel(self.note), Wrapped(self.note), QLabel(self.note)
        self.title.setFont(dress.font("head", bold=True))
        self.count.setProperty("role", "soft")
        self.back = QPushButton(self.tr("Back"), self.note)
        self.next = QPushButton(self.tr("Next"), self.note)
        self.later = QPushButton(self.tr("Later"), self.note)
        self.end = QPushButton(self.tr("Close for good"), self.note)
        for button, does in (
            (self.back, lambda: self.show(self.at - 1)),
            (self.next, self._onward),
            (self.later, self.pause),
            (self.end, self.close),
        ):
            button.clicked.connect(does)
        self.next.setProperty("strong", True)
        self._lay_out()
        self.note.hide()
        window.installEventFilter(self)

    def _lay_out(self) -> None:
        head = QHBoxLayout()
        head.addWidget(self.title, 1)
        head.addWidget(self.count)
        foot = QHBoxLayout()
        foot.setSpacing(6)
        foot.addWidget(self.end)
        foot.addStretch(1)
        for button in (self.later, self.back, self.next):
            foot.addWidget(button)
        column = QVBoxLayout(self.note)
        column.setContentsMargins(16, 14, 14, 14)
        column.setSpacing(8)
        column.addLayout(head)
        column.addWidget(self.text)
        column.addLayout(foot)

    @property
    def shown(self) -> bool:
        """True while a note is on the window."""
        return self.note.isVisibleTo(self._window)

    @Slot()
    def start(self) -> None:
        """Begin, or go on where it was put away; from the first again once all were seen."""
        self.show(self.at if self.at < len(self.steps) - 1 else 0)

    def show(self, at: int) -> None:
        """Show one step at its thing."""
        self.at = min(max(at, 0), len(self.steps) - 1)
        step = self.steps[self.at]
        self._go(step.place)
        last = self.at == len(self.steps) - 1
        self.title.setText(step.title)
        self.text.setText(step.text)
        self.count.setText(self.tr("{0} of {1}").format(self.at + 1, len(self.steps)))
        self.back.setEnabled(self.at > 0)
        self.next.setText(self.tr("Done") if last else self.tr("Next"))
        self.note.setAccessibleDescription(f"{step.title}. {step.text}")
        self.note.show()
        self.ring.show()
        self.place()

    @Slot()
    def _onward(self) -> None:
        if self.at == len(self.steps) - 1:
            self.close()
        else:
            self.show(self.at + 1)

    def place(self) -> None:
        """Put ring and note where the thing is now."""
        if not self.shown:
            return
        where = self.steps[self.at].where()
        self.ring.setGeometry(where.adjusted(-4, -4, 4, 4).intersected(self._window.rect()))
        self.note.adjustSize()
        self.note.move(beside(where, self.note.size().width(), self.note.size().height(), self._window.rect()))
        self.ring.raise_()
        self.note.raise_()

    @Slot()
    def pause(self) -> None:
        """Put it away for now."""
        self.note.hide()
        self.ring.hide()

    @Slot()
    def close(self) -> None:
        """Put it away for good; it can still be asked for."""
        self.pause()
        self.closed.emit()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Follow the window's size."""
        if event.type() == QEvent.Type.Resize:
            self.place()
        return super().eventFilter(watched, event)


def beside(thing: QRect, wide: int, high: int, window: QRect) -> QPoint:
    """Where a note stands beside a thing: right of it, left of it, under it, over it, else in its corner."""
    inside = window.adjusted(8, 8, -8, -8)
    middle = thing.center() - QPoint(wide // 2, high // 2)
    for at in (
        QPoint(thing.right() + GAP_PX, middle.y()),
        QPoint(thing.left() - GAP_PX - wide, middle.y()),
        QPoint(middle.x(), thing.bottom() + GAP_PX),
        QPoint(middle.x(), thing.top() - GAP_PX - high),
    ):
        moved = QPoint(
            min(max(at.x(), inside.left()), inside.right() - wide),
            min(max(at.y(), inside.top()), inside.bottom() - high),
        )
        if not QRect(moved.x(), moved.y(), wide, high).intersects(thing):
            return moved
    return QPoint(thing.right() - wide - GAP_PX, thing.top() + GAP_PX)
