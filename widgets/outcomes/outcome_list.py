"""The lines of outcomes, painted in one go, because they change in every frame of a drag.

A line opens in place: the one room below it is kept free for what it opens to.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from PySide6.QtCore import QEvent, QObject, QRectF, QSize, Qt, Signal, Slot
from PySide6.QtGui import (
    QFocusEvent,
    QHelpEvent,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QResizeEvent,
)
from PySide6.QtWidgets import QSizePolicy, QToolTip, QWidget

from designer.language import joined
from widgets.outcomes.line_paint import LEFT_PX, RIGHT_PX, height_of, paint_ground, paint_line
from widgets.outcomes.outcome_line import Line, lines_of
from widgets.outcomes.spoken import Spoken, SpokenLines
from widgets.session import Session


class OutcomeList(QWidget):
    """The lines themselves: outcomes, then what else there is to say of the cheese."""

    asked = Signal(str)
    """a line is to open, or to shut if it is open"""
    shut = Signal()
    """Esc"""
    wanted = Signal(str, str)
    """the outcome the keyboard is on is to be aimed at a value, of which this much is typed"""
    moved = Signal(float, float)
    """top and height of the line the keyboard went to, to be scrolled into view"""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.session = session
        self.system = "metric"
        self.lines: tuple[Line, ...] = ()
        self.words: tuple[Line, ...] = ()
        """lines of words after the outcomes: body, knit, coat, cautions"""
        self.words_pale = False
        self.opened = ""
        """key of the line that is open"""
        self.current = ""
        """key of the line the keyboard is on"""
        self._over = ""
        self._room: QWidget | None = None
        self._tall = 0
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setAccessibleName(self.tr("Outcomes"))
        self.spoken = SpokenLines(self)
        self.spoken.pressed.connect(self._press)
        self.spoken.entered.connect(self._enter)

    def refresh(self) -> None:
        """Read forecast and verdict anew."""
        forecast, verdict = self.session.seen, self.session.verdict
        made = lines_of(forecast, verdict.rows if verdict is not None else (), self.system)
        if self._room is not None and self.session.previewing:
            # What is open stays where it is while something is tried: a line keeps its height.
            before = {line.key: line.row for line in self.lines}
            made = tuple(one if before.get(one.key, one.row) is not None else replace(one, row=None) for one in made)
        self._show(made, self.words)

    def put_words(self, words: tuple[Line, ...], *, pale: bool = False) -> None:
        """Show these lines after the outcomes."""
        if pale != self.words_pale:
            self.words_pale = pale
            self.update()
        self._show(self.lines, words)

    def _show(self, lines: tuple[Line, ...], words: tuple[Line, ...]) -> None:
        before = self.every
        self.lines, self.words = lines, words
        if [(line.key, line.row is None) for line in before] != [(line.key, line.row is None) for line in self.every]:
            self.lay_out()
            self.updateGeometry()
            self.update()
            return
        if not self.session.previewing:  # what is only tried is not told
            self._speak()
        for was, line in zip(before, self.every, strict=True):
            if line != was:  # what is open below a line is not painted with it
                self.update(self.box_of(line.key).toAlignedRect())

    @property
    def every(self) -> tuple[Line, ...]:
        """All lines, from the top."""
        return self.lines + self.words

    def told(self) -> str:
        """The lines as text, for whoever can't see them."""
        return joined(line.said for line in self.every)

    def _speak(self) -> None:
        """Tell every line to a screen reader."""
        opened = {self.opened: self.tr("Open below")}
        self.spoken.put(
            Spoken(
                line.key, line.name, ". ".join(filter(None, (opened.get(line.key), line.within))),
                self.box_of(line.key).toAlignedRect(),
            )
            for line in self.every
        )  # fmt: skip

    @Slot(object)
    def _enter(self, key: str) -> None:
        """A screen reader goes to a line."""
        self.current = key
        self.setFocus()
        self._go(key)

    @Slot(object)
    def _press(self, key: str) -> None:
        """A screen reader presses a line."""
        self.current = key
        self.asked.emit(key)

    # ---- the room below the open line

    def open(self, key: str, room: QWidget | None) -> None:
        """Open a line with what stands below it, or with None shut it."""
        self.opened, self._room = (key, room) if room is not None else ("", None)
        if room is not None:
            room.installEventFilter(self)
            self.current = key
        self.lay_out()
        self.updateGeometry()
        self.update()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """What is open asks for another height."""
        if watched is self._room and event.type() == QEvent.Type.LayoutRequest:
            self.lay_out()
        return False

    def lay_out(self) -> None:
        """Put what is open below its line, as tall as it asks to be."""
        line = next((line for line in self.every if line.key == self.opened), None)
        before = self._tall, self._room.geometry() if self._room is not None else None
        self._tall = 0
        if self._room is not None and line is not None:
            wide = max(120, self.width() - LEFT_PX - RIGHT_PX)
            grown = self._room.heightForWidth(wide) if self._room.hasHeightForWidth() else -1
            self._tall = grown if grown > 0 else self._room.sizeHint().height()
            self._room.setGeometry(LEFT_PX, round(self.top_of(self.opened) + height_of(line)), wide, self._tall)
        if before != (self._tall, self._room.geometry() if self._room is not None else None):
            self.updateGeometry()
            self.update()
        self._speak()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Another width, another height of what is open."""
        super().resizeEvent(event)
        if event.size().width() != event.oldSize().width():
            self.lay_out()

    def _stacked(self) -> Iterator[tuple[Line, float, float]]:
        """Each line, where it begins and how tall it is; what is open takes its room below its line."""
        y = 0.0
        for line in self.every:
            tall = height_of(line)
            yield line, y, tall
            y += tall + (self._tall if line.key == self.opened else 0)

    def top_of(self, key: str) -> float:
        """Where a line begins."""
        return next((top for line, top, _ in self._stacked() if line.key == key), 0.0)

    def box_of(self, key: str) -> QRectF:
        """The whole line, as wide as the panel."""
        return next(QRectF(0, top, self.width(), tall) for line, top, tall in self._stacked() if line.key == key)

    def line_at(self, y: float) -> Line | None:
        """The line at a height; None where something is open."""
        return next((line for line, top, tall in self._stacked() if top <= y < top + tall), None)

    def sizeHint(self) -> QSize:
        """As tall as its lines and what is open."""
        return QSize(260, round(sum(tall for _, _, tall in self._stacked())) + self._tall + 4)

    # ---- pointing and keys

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """A line under the pointer shows that it opens."""
        line = self.line_at(event.position().y())
        self.setCursor(Qt.CursorShape.PointingHandCursor if line is not None else Qt.CursorShape.ArrowCursor)
        self._hover(line.key if line is not None else "")

    def leaveEvent(self, event: QEvent) -> None:
        """No line is under the pointer."""
        self._hover("")

    def _hover(self, key: str) -> None:
        if key != self._over:
            self._over = key
            self.update()

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Open the line, or shut it."""
        line = self.line_at(event.position().y())
        if event.button() == Qt.MouseButton.LeftButton and line is not None:
            self.current = line.key
            self.asked.emit(line.key)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Arrows go from line to line, Enter opens or shuts, Esc shuts; a figure begins to say what is wanted."""
        if event.key() == Qt.Key.Key_Escape and self.opened:
            self.shut.emit()
            return
        if not self.hasFocus():  # a key that what is open left over
            super().keyPressEvent(event)
            return
        keys = [line.key for line in self.every]
        at = keys.index(self.current) if self.current in keys else 0
        to = {
            Qt.Key.Key_Up: at - 1, Qt.Key.Key_Down: at + 1, Qt.Key.Key_Home: 0, Qt.Key.Key_End: len(keys) - 1,
        }.get(Qt.Key(event.key()))  # fmt: skip
        if to is not None and keys:
            self._go(keys[min(max(to, 0), len(keys) - 1)])
        elif event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_Space) and keys:
            self.asked.emit(keys[at])
        elif self.lines and at < len(self.lines) and event.text().isdecimal():
            self.wanted.emit(keys[at], event.text())
        else:
            super().keyPressEvent(event)

    def _go(self, key: str) -> None:
        self.current = key
        self.setAccessibleDescription(next(line.said for line in self.every if line.key == key))
        box = self.box_of(key)
        self.moved.emit(box.top(), box.height())
        self.spoken.point(key)
        self.update()

    def focusInEvent(self, event: QFocusEvent) -> None:
        """The keyboard is on a line."""
        super().focusInEvent(event)
        if self.every and self.current not in {line.key for line in self.every}:
            self.current = self.every[0].key
        if event.reason() in (Qt.FocusReason.TabFocusReason, Qt.FocusReason.BacktabFocusReason) and self.every:
            box = self.box_of(self.current)
            self.moved.emit(box.top(), box.height())
        self.spoken.point(self.current)
        self.update()

    # ---- painting

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw the lines that show."""
        painter = QPainter(self)
        top, bottom = event.rect().top(), event.rect().bottom()
        try:
            for line, y, tall in self._stacked():
                opened = line.key == self.opened
                room = self._tall if opened else 0
                if y <= bottom and y + tall + room >= top:
                    box = QRectF(0, y, self.width(), tall)
                    held = self.hasFocus() and line.key == self.current
                    paint_ground(painter, box, room, opened=opened, pointed=line.key == self._over, held=held)
                    paint_line(painter, line, box, pale=self.words_pale)
        finally:
            painter.end()

    def looked_up(self) -> str:
        """What F1 looks up here: the outcome that has the keyboard."""
        return self.current

    def event(self, event: QEvent) -> bool:
        """The tooltip says where a limit comes from and how we have it."""
        if event.type() == QEvent.Type.ToolTip and isinstance(event, QHelpEvent):
            line = self.line_at(event.pos().y())
            QToolTip.showText(event.globalPos(), line.tip if line is not None else "", self)
            return True
        return super().event(event)
