"""The lines of outcomes, painted in one go, because they change in every frame of a drag.

A line opens in place: the one room below it is kept free for what it opens to.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from typing import Final

from PySide6.QtCore import QCoreApplication, QEvent, QObject, QPointF, QRectF, QSize, Qt, Signal, Slot
from PySide6.QtGui import (
    QFocusEvent,
    QHelpEvent,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QPen,
    QResizeEvent,
)
from PySide6.QtWidgets import QSizePolicy, QToolTip, QWidget

from designer.judge.verdict import CLASS, LIMIT, MAKE, MET, NEAR, NOT_MET, QUALITY, Row
from designer.judge.words import chance_words
from designer.language import headed, joined, word
from designer.quantities import quantity
from widgets.help.entries import word_of
from widgets.outcomes.figures import SHORTER, band_words, label_of, shorter_of, value_words
from widgets.outcomes.fold import paint_chevron
from widgets.outcomes.marks import COLOUR, paint_state, state_words
from widgets.outcomes.spoken import Spoken, SpokenLines
from widgets.session import Session
from widgets.theme import apply as dress

SHOWN: Final = (
    "moisture_pct",
    "mnfs_pct",
    "fdm_pct",
    "salt_in_moisture_pct",
    "salt_pct",
    "ph_24h",
    "yield_kg_per_100kg",
    "cheese_kg",
    "protein_pct",
    "calcium_mg_per_g_protein",
    "lactose_pct",
    "floc_min",
    "drain_moisture_pct",
    "finish_min",
)
RANK: Final = {MET: 0, NEAR: 1, NOT_MET: 2}
LEFT_PX, RIGHT_PX = 16, 14


@dataclass(frozen=True, slots=True)
class Line:
    """One outcome as written: label, value, band, and the row of the verdict that speaks of it."""

    key: str
    label: str
    value: str
    band: str
    row: Row | None
    outside: str


def row_for(rows: Sequence[Row], key: str) -> Row | None:
    """The row of a verdict that matters most for an outcome: limits before quality before usual, the worst of them."""
    for sections in ((LIMIT,), (QUALITY, CLASS), (MAKE,)):
        found = [row for row in rows if row.quantity == key and row.section in sections]
        if found:
            return max(found, key=lambda row: (RANK[row.state], -(row.margin if row.margin is not None else 0.0)))
    return None


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
        rows = verdict.rows if verdict is not None else ()
        made = []
        for key in SHOWN:
            outcome = forecast.outcomes.get(key)
            if outcome is not None:
                value, band = value_words(key, outcome.value, self.system), band_words(key, outcome, self.system)
                made.append(Line(key, label_of(key), value, band, row_for(rows, key), outcome.outside))
        if self._room is not None and self.session.previewing:
            # What is open stays where it is while something is tried: a line keeps its height.
            before = {line.key: line.row for line in self.lines}
            made = [replace(one, row=one.row if before.get(one.key, one.row) is not None else None) for one in made]
        self._show(tuple(made), self.words)

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
        return joined(
            f"{line.label} {line.value}" + (f", {line.row.sentence}" if line.row is not None else "")
            for line in self.every
        )

    def _speak(self) -> None:
        """Tell every line to a screen reader."""
        self.spoken.put(
            Spoken(
                line.key, ", ".join((line.label, line.value, *([_how(line.row)] if line.row is not None else ()))),
                ". ".join(self._more(line)), self.box_of(line.key).toAlignedRect(),
            )
            for line in self.every
        )  # fmt: skip

    def _more(self, line: Line) -> Iterator[str]:
        if line.key == self.opened:
            yield self.tr("Open below")
        if line.band:
            yield self.tr("8 in 10 makes within {0}").format(line.band)

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
            self._room.setGeometry(LEFT_PX, round(self.top_of(self.opened) + self._height(line)), wide, self._tall)
        if before != (self._tall, self._room.geometry() if self._room is not None else None):
            self.updateGeometry()
            self.update()
        self._speak()

    def _room_px(self) -> int:
        return self._tall

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Another width, another height of what is open."""
        super().resizeEvent(event)
        if event.size().width() != event.oldSize().width():
            self.lay_out()

    @staticmethod
    def _height(line: Line) -> float:
        below = dress.metrics("note").height() if line.row is not None else 0.0
        return max(24.0, dress.metrics("body").height() + 9 + below)

    def top_of(self, key: str) -> float:
        """Where a line begins."""
        y = 0.0
        for line in self.every:
            if line.key == key:
                return y
            y += self._height(line) + (self._room_px() if line.key == self.opened else 0)
        return y

    def box_of(self, key: str) -> QRectF:
        """The whole line, as wide as the panel."""
        line = next(line for line in self.every if line.key == key)
        return QRectF(0, self.top_of(key), self.width(), self._height(line))

    def sizeHint(self) -> QSize:
        """As tall as its lines and what is open."""
        return QSize(260, round(sum(self._height(line) for line in self.every)) + self._room_px() + 4)

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
        line = next(line for line in self.every if line.key == key)
        said = f"{line.label} {line.value}" + (f", {line.row.sentence}" if line.row is not None else "")
        self.setAccessibleDescription(said)
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
            y = 0.0
            for line in self.every:
                tall = self._height(line)
                room = self._room_px() if line.key == self.opened else 0
                if y <= bottom and y + tall + room >= top:
                    self._paint_ground(painter, line, QRectF(0, y, self.width(), tall), room)
                    self._paint_line(painter, line, QRectF(LEFT_PX, y, self.width() - LEFT_PX - RIGHT_PX, tall))
                y += tall + room
        finally:
            painter.end()

    def _paint_ground(self, painter: QPainter, line: Line, box: QRectF, room: int) -> None:
        """What is behind a line: open, pointed at, holding the keyboard; and the mark that it opens."""
        c, opened = dress.colours(), line.key == self.opened
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        if opened:
            painter.fillRect(box.adjusted(0, 0, 0, -1), dress.ink(c.chosen))
            painter.fillRect(box.adjusted(0, box.height() - 1, 0, room), dress.ink(c.paper))
            painter.fillRect(QRectF(0, box.top(), 3, box.height() + room), dress.ink(c.accent))
        elif line.key == self._over:
            painter.fillRect(box.adjusted(0, 0, 0, -1), dress.ink(c.of("pointed")))
        at = QPointF(9, box.top() + dress.metrics("body").height() / 2 + 4)
        paint_chevron(painter, at, opened, c.accent if opened or line.key == self._over else c.soft)
        if self.hasFocus() and line.key == self.current:
            painter.setPen(QPen(dress.ink(c.accent), 1.5))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRoundedRect(box.adjusted(1, 1, -1, -2), 4, 4)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)

    def _paint_line(self, painter: QPainter, line: Line, box: QRectF) -> None:
        ink, soft = dress.ink(dress.colours().ink), dress.ink(dress.colours().soft)
        base = box.top() + dress.metrics("body").ascent() + 4
        if line in self.words:
            self._paint_words(painter, line, box, base)
            return
        wide, band_wide = dress.width(line.value, "body", bold=True), dress.width(line.band, "note")
        value_room = max(wide, 58.0)
        painter.setPen(ink)
        painter.setFont(dress.font("body", bold=True))
        painter.drawText(QPointF(box.right() - wide, base), line.value)
        painter.setFont(dress.font("body"))
        room = box.width() - value_room - band_wide - 20
        label = line.label
        if line.key in SHORTER and dress.width(label, "body") > room:
            label = shorter_of(line.key)
        painter.drawText(QPointF(box.left(), base), dress.fitted(label, "body", room))
        painter.setFont(dress.font("note"))
        painter.setPen(soft)
        painter.drawText(QPointF(box.right() - value_room - 10 - band_wide, base), line.band)
        if line.row is not None:
            self._paint_margin(painter, line.row, box, base + dress.metrics("note").height())
        rule = dress.ink(dress.colours().line)
        painter.fillRect(round(box.left()), round(box.bottom()) - 1, round(box.width()), 1, rule)

    def _paint_words(self, painter: QPainter, line: Line, box: QRectF, base: float) -> None:
        """A line of words: what is judged, and how it is, pale while it is judged anew."""
        c = dress.colours()
        painter.setFont(dress.font("body"))
        painter.setPen(dress.ink(c.ink))
        painter.drawText(QPointF(box.left(), base), line.label)
        left = dress.width(line.label, "body") + 16
        said = dress.fitted(line.value, "body", box.width() - left, bold=True)
        painter.setFont(dress.font("body", bold=True))
        painter.setPen(dress.ink(c.soft if self.words_pale else c.ink))
        painter.drawText(QPointF(box.right() - dress.width(said, "body", bold=True), base), said)
        painter.fillRect(round(box.left()), round(box.bottom()) - 1, round(box.width()), 1, dress.ink(c.line))

    @staticmethod
    def _paint_margin(painter: QPainter, row: Row, box: QRectF, base: float) -> None:
        """The margin in words behind the shape of its state, the chance at the right."""
        said = row.sentence.removesuffix(f", {chance_words(row.chance)}") if row.chance is not None else row.sentence
        chance = short_chance(row.chance)
        chance_wide = dress.width(chance, "note")
        room = box.width() - 20 - chance_wide
        if row.state != MET and dress.width(full := headed(state_words(row.state), said), "note") <= room:
            said = full  # else the shape before it says so alone, and the tooltip in words
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        paint_state(painter, QPointF(box.left() + 5, base - 4), row.state)
        painter.setPen(dress.ink(getattr(dress.colours(), COLOUR[row.state])))
        painter.drawText(QPointF(box.left() + 15, base), dress.fitted(said, "note", room))
        painter.setPen(dress.ink(dress.colours().soft))
        painter.drawText(QPointF(box.right() - chance_wide, base), chance)

    def looked_up(self) -> str:
        """What F1 looks up here: the outcome that has the keyboard."""
        return self.current

    def line_at(self, y: float) -> Line | None:
        """The line at a height; None where something is open."""
        top = 0.0
        for line in self.every:
            tall = self._height(line)
            if top <= y < top + tall:
                return line
            top += tall + (self._room_px() if line.key == self.opened else 0)
        return None

    def event(self, event: QEvent) -> bool:
        """The tooltip says where a limit comes from and how we have it."""
        if event.type() == QEvent.Type.ToolTip and isinstance(event, QHelpEvent):
            line = self.line_at(event.pos().y())
            QToolTip.showText(event.globalPos(), self._tip(line) if line is not None else "", self)
            return True
        return super().event(event)

    def _tip(self, line: Line) -> str:
        if line in self.words:
            return headed(line.label, line.value)
        lines = [headed(quantity(line.key).label, line.value)]
        told = word_of(line.key)
        if told is not None:
            lines.append(told.says)
        if line.band:
            lines.append(self.tr("8 in 10 makes within {0}").format(line.band))
        if line.row is not None:
            lines += [
                line.row.rule,
                line.row.sentence,
                f"{line.row.source} ({word(line.row.have, 'have')})",
                line.row.note,
            ]
        lines.append(line.outside)
        return "\n".join(text for text in lines if text)


def _how(row: Row) -> str:
    """How a line stands, in words."""
    return headed(state_words(row.state), row.sentence)


def short_chance(chance: float | None) -> str:
    """The judge's chance, shorter: "9 in 10", "> 9 in 10", "7 in 10 outside"; the tooltip has it in full."""
    if chance is None:
        return ""
    if 0.45 < chance < 0.55:
        return chance_words(chance)
    odds = max(chance, 1.0 - chance)
    if odds >= 0.95:
        tens = QCoreApplication.translate("Outcome", "> 9 in 10")
    else:
        tens = QCoreApplication.translate("Outcome", "{0} in 10").format(round(10.0 * odds))
    return tens if chance > 0.5 else QCoreApplication.translate("Outcome", "{0} outside").format(tens)
