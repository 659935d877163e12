"""Curves of several makes over each other on one elapsed time, told apart by line and by label."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any, Final

import numpy as np
from PySide6.QtCore import QT_TRANSLATE_NOOP, QCoreApplication, QLineF, QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QKeyEvent, QMouseEvent, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from designer.forecast import Forecast
from designer.language import number
from widgets import wording
from widgets.make_curve.axis import STEPS
from widgets.make_curve.path import Array, polygon, stroke, thinned
from widgets.make_curve.vat import read_marks
from widgets.theme import apply as dress
from widgets.theme.palette import MAKES

N = QT_TRANSLATE_NOOP
PANES: Final[tuple[tuple[str, Any, str, str, int, float], ...]] = (
    ("temperature_c", N("Compare", "temperature"), "°C", "temperature", 1, 2.0),
    ("ph", N("Compare", "pH of milk, then curd"), "", "ph", 2, 0.1),
    ("curd_moisture_pct", N("Compare", "curd moisture"), "%", "moisture", 1, 2.0),
)
"""column, title, unit, colour, decimals, least room above and below in that unit"""
AFTER: Final = frozenset(("press", "turn", "brine", "hold_brine", "drying", "room"))
WHOLE_MIN: Final = 30 * 60.0
LEFT, RIGHT, HEAD, FOOT, KEY = 44.0, 14.0, 22.0, 24.0, 20.0
SAMPLE: Final = 30.0
DASHES: Final[tuple[tuple[float, ...], ...]] = ((), (4.0, 3.0), (1.2, 2.2), (7.0, 2.0, 1.2, 2.0), (2.5, 1.5))
"""Line of the first make, the second, ... in pen widths; the first is full."""
Line = tuple[Array, Array]
Pane = tuple[str, str, str, str, int, float]


def vat_end(made: Forecast) -> float:
    """Minute at which the make comes to the press, the brine or the air."""
    stages = made.recipe.stages
    last = max((at for at, stage in enumerate(stages) if stage.kind not in AFTER), default=0)
    inside = made.trace.time_min[made.trace.stage <= last]
    return float(inside[-1]) if len(inside) else float(made.trace.time_min[-1])


def inks(colour: str, count: int) -> tuple[str, ...]:
    """Inks of so many makes in a pane of this colour: of one or two, the first has that of the pane; of more, each has
    the same in every pane."""
    c = dress.colours()
    return (c.of(colour), c.ink) if count <= 2 else tuple(c.of(name) for name in MAKES[c.name])


class Curves(QWidget):
    """The curves of the first make (a full line) and of others (broken ones); pointer and arrows read them all."""

    changed = Signal()
    """other makes are drawn, or another length of them"""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setMouseTracking(True)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setAccessibleName(self.tr("Curves of the makes; left and right arrows read their values"))
        self.makes: tuple[Forecast, ...] = ()
        self.names: tuple[str, ...] = ()
        self.spans: tuple[tuple[float, float] | None, ...] = ()
        self.role = "note"
        self.whole = False
        self.minute: float | None = None

    def sizeHint(self) -> QSize:
        """Room for three panes."""
        return QSize(460, 420)

    def minimumSizeHint(self) -> QSize:
        """The least in which curves are told apart."""
        return QSize(300, 240)

    def show_makes(self, makes: Sequence[Forecast], names: Sequence[str]) -> None:
        """Draw these, up to five, under these names."""
        self.makes, self.names = tuple(makes), tuple(names)
        self.spans = ()
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus if makes else Qt.FocusPolicy.NoFocus)
        self.update()
        self.changed.emit()

    def mark(self, spans: Sequence[tuple[float, float] | None]) -> None:
        """Mark a span of minutes in each make (None: nowhere), as where a stage lies."""
        self.spans = tuple(spans)
        self.update()

    def set_whole(self, whole: bool) -> None:
        """The first 30 hours, or only the time in the vat."""
        self.whole = whole
        self.minute = None
        self.update()
        self.changed.emit()

    @property
    def end_min(self) -> float:
        """Right end of the time axis."""
        if not self.makes:
            return 60.0
        longest = max(float(one.trace.time_min[-1]) for one in self.makes)
        return min(longest, WHOLE_MIN if self.whole else max(vat_end(one) for one in self.makes) + 30.0)

    @property
    def _foot(self) -> float:
        return FOOT + (KEY if len(self.makes) > 2 else 0.0)

    # ---- reading

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Read at the pointer."""
        share = (event.position().x() - LEFT) / max(self.width() - LEFT - RIGHT, 1.0)
        self._read_at(share * self.end_min)

    def leaveEvent(self, event: object) -> None:
        """The pointer is gone."""
        self.minute = None
        self.update()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Left and right move the reading line by five minutes, Home and End to the ends."""
        now = self.minute if self.minute is not None else 0.0
        to = {
            Qt.Key.Key_Left: now - 5.0,
            Qt.Key.Key_Right: now + 5.0,
            Qt.Key.Key_Home: 0.0,
            Qt.Key.Key_End: self.end_min,
        }.get(Qt.Key(event.key()))
        if to is None:
            super().keyPressEvent(event)
        else:
            self._read_at(to)

    def _read_at(self, minute: float) -> None:
        self.minute = min(max(minute, 0.0), self.end_min)
        self.update()

    # ---- painting

    def paintEvent(self, event: QPaintEvent) -> None:
        """Three panes over one time axis."""
        if not self.makes:
            return
        c = dress.colours()
        painter = QPainter(self)
        try:
            painter.setFont(dress.font(self.role))
            tall = (self.height() - self._foot) / len(PANES)
            for index, pane in enumerate(PANES):
                rect = QRectF(LEFT, index * tall + HEAD, self.width() - LEFT - RIGHT, tall - HEAD - 4.0)
                self._pane(painter, rect, pane)
            self._time(
                painter, QRectF(LEFT, HEAD, self.width() - LEFT - RIGHT, self.height() - self._foot - HEAD - 4.0)
            )
            if len(self.makes) > 2:
                self._key(painter)
            if self.hasFocus():
                painter.setPen(QPen(dress.ink(c.accent), 1.0))
                painter.setBrush(Qt.BrushStyle.NoBrush)
                painter.drawRect(QRectF(self.rect()).adjusted(0.5, 0.5, -0.5, -0.5))
        finally:
            painter.end()

    def minutes_told(self, width: float) -> list[float]:
        """Where the time axis is marked: at natural steps, their words clear of each other."""
        apart = dress.width("00 h 00", self.role) + 14.0
        step = next((one for one in STEPS if one * width / self.end_min >= apart), STEPS[-1])
        return [at * step for at in range(int(self.end_min / step + 1e-9) + 1)]

    def _time(self, painter: QPainter, rect: QRectF) -> None:
        c = dress.colours()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)
        for minute in self.minutes_told(rect.width()):
            x = rect.left() + minute / self.end_min * rect.width()
            painter.setPen(dress.ink(c.soft))
            text = wording.length(minute) if minute else "0"
            wide = dress.width(text, self.role)
            at = min(max(x - wide / 2.0, 0.0), self.width() - wide - 1.0)
            painter.drawText(QPointF(at, self.height() - self._foot + 16.0), text)
        if self.minute is not None:
            x = rect.left() + self.minute / self.end_min * rect.width()
            painter.setPen(QPen(dress.ink(c.ink, 0.6), 1.0))
            painter.drawLine(QLineF(x, rect.top(), x, rect.bottom()))

    def _pane(self, painter: QPainter, rect: QRectF, pane: Pane) -> None:
        column, title, unit, colour, decimals, room = pane
        series = [self._seen(one, column) for one in self.makes]
        line = dress.metrics(self.role).height() / rect.height() if len(series) == 2 else 0.0
        low, high = _range([values for _, values in series], room, line)
        painter.fillRect(rect, dress.ink(dress.colours().paper))
        self._grid(painter, rect, low, high)
        self._head(painter, rect, QCoreApplication.translate("Compare", title), unit, column, decimals)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        lines = [self._line(rect, *one, low, high) for one in series]
        painter.save()
        painter.setClipRect(rect)
        self._spans(painter, rect, colour)
        worn = inks(colour, len(lines))
        for at in reversed(range(len(lines))):
            self._draw(painter, lines[at], at, worn[at])
        painter.restore()
        if len(lines) == 2:
            self._labels(painter, rect, lines, worn)

    def _line(self, rect: QRectF, minutes: Array, values: Array, low: float, high: float) -> Line:
        x = rect.left() + minutes / self.end_min * rect.width()
        y = rect.bottom() - (values - low) / (high - low) * rect.height()
        pick = thinned(x, np.zeros(len(x), dtype=bool), rect.left(), rect.right())
        return x[pick], y[pick]

    def _draw(self, painter: QPainter, line: Line, at: int, ink: str) -> None:
        if at == 0:
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(dress.ink(ink))
            painter.drawPolygon(stroke(*line, 2.2))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            return
        painter.setPen(_pen(ink, at))
        painter.drawPolyline(polygon(*line))

    def _spans(self, painter: QPainter, rect: QRectF, colour: str) -> None:
        """Where the chosen stage lies in each make: a bar at the foot of the pane, over it a breath of colour."""
        for at, span in enumerate(self.spans):
            if span is None:
                continue
            x0, x1 = (rect.left() + minute / self.end_min * rect.width() for minute in span)
            ink = inks(colour, len(self.makes))[at]
            if at == 0:
                painter.fillRect(QRectF(x0, rect.top(), x1 - x0, rect.height()), dress.ink(ink, 0.08))
            y = rect.bottom() - 3.0 - 4.0 * at
            painter.setPen(QPen(dress.ink(ink), 2.4) if at == 0 else _pen(ink, at))
            painter.drawLine(QLineF(x0, y, max(x1, x0 + 2.0), y))

    def _grid(self, painter: QPainter, rect: QRectF, low: float, high: float) -> None:
        c = dress.colours()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)
        for value in read_marks(low, high, rect.height(), dress.metrics(self.role).height()):
            y = rect.bottom() - (value - low) / (high - low) * rect.height()
            painter.setPen(QPen(dress.ink(c.grid), 1.0))
            painter.drawLine(QLineF(rect.left(), round(y) + 0.5, rect.right(), round(y) + 0.5))
            painter.setPen(dress.ink(c.soft))
            box = QRectF(0.0, y - 10.0, rect.left() - 7.0, 20.0)
            painter.drawText(box, Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter, number(value))
        for minute in self.minutes_told(rect.width()):
            x = round(rect.left() + minute / self.end_min * rect.width()) + 0.5
            painter.setPen(QPen(dress.ink(c.grid), 1.0))
            painter.drawLine(QLineF(x, rect.top(), x, rect.bottom()))

    def _key(self, painter: QPainter) -> None:
        """Samples of the lines with their names, in one row."""
        room = (self.width() - LEFT) / len(self.names)
        worn = inks("ph", len(self.names))
        y = self.height() - KEY / 2.0
        for at, name in enumerate(self.names):
            x = LEFT + at * room
            painter.setPen(QPen(dress.ink(worn[at]), 2.2) if at == 0 else _pen(worn[at], at))
            painter.drawLine(QLineF(x, y, x + SAMPLE, y))
            painter.setPen(dress.ink(dress.colours().ink))
            painter.drawText(QPointF(x + SAMPLE + 6.0, y + 4.0), dress.fitted(name, self.role, room - SAMPLE - 14.0))

    def _seen(self, made: Forecast, column: str) -> tuple[Array, Array]:
        """A curve as far as the axis goes, where it says something."""
        time, values = made.trace.time_min, made.trace[column]
        kept = np.isfinite(values) & (time <= self.end_min)
        return time[kept], values[kept]

    def _head(self, painter: QPainter, rect: QRectF, title: str, unit: str, column: str, decimals: int) -> None:
        c = dress.colours()
        base = rect.top() - 7.0
        painter.setPen(dress.ink(c.soft))
        text = f"{title}, {unit}" if unit else title
        painter.drawText(QPointF(rect.left(), base), text)
        if self.minute is None:
            return
        said = []
        for made in self.makes:
            value = made.trace.at(column, self.minute) if self.minute <= made.trace.time_min[-1] else float("nan")
            said.append(number(value, f".{decimals}f") if np.isfinite(value) else "\u2013")
        words = f"{wording.length(self.minute)}:  {'  ·  '.join(said)}"
        painter.setPen(dress.ink(c.ink))
        painter.drawText(QPointF(rect.right() - dress.width(words, self.role), base), words)

    def _labels(self, painter: QPainter, rect: QRectF, lines: list[Line], colours: tuple[str, ...]) -> None:
        """Each line's name beside it, where the two lie furthest apart; the upper over its line, the lower under."""
        if any(len(x) < 2 for x, _ in lines):
            return
        room = min(rect.width() * 0.36, 150.0)
        names = [dress.fitted(name, self.role, room) for name in self.names]
        wide = max(dress.width(name, self.role) for name in names)
        last = min(rect.right() - wide, max(float(x[-1]) for x, _ in lines) - wide)
        tall = dress.metrics(self.role).height()
        starts = np.linspace(rect.left() + 8.0, max(last, rect.left() + 9.0), 60)
        along = starts[:, None] + np.linspace(0.0, wide, 12)
        ys = [np.interp(along, x, y) for x, y in lines]
        apart = ys[1] - ys[0]
        upper = np.where(np.mean(apart, axis=1) >= 0.0, 0, 1)
        over = np.minimum(*(np.min(y, axis=1) for y in ys)) - 5.0
        under = np.maximum(*(np.max(y, axis=1) for y in ys)) + tall - 1.0
        fits = (over >= rect.top() + tall - 3.0) & (under <= rect.bottom() - 2.0)
        best = int(np.argmax(np.min(np.abs(apart), axis=1) + np.where(fits, 1e4, 0.0)))
        for side in (0, 1):
            base = float(over[best] if side == upper[best] else under[best])
            base = min(max(base, rect.top() + tall - 3.0), rect.bottom() - 3.0)
            painter.setPen(dress.ink(colours[side]))
            painter.drawText(QPointF(float(starts[best]), base), names[side])


def _range(series: list[Array], room: float, line: float) -> tuple[float, float]:
    """Ends of the axis of values, with room above and below: `line` is what a line of words takes of the height."""
    both = np.concatenate(series)
    low, high = (float(np.min(both)), float(np.max(both))) if len(both) else (0.0, 1.0)
    share = min(max(1.25 * line, 0.08), 0.24)
    spare = max(room, (high - low) * share / (1.0 - 2.0 * share))
    return low - spare, high + spare


def _pen(ink: str, at: int) -> QPen:
    pen = QPen(dress.ink(ink), 1.6, Qt.PenStyle.CustomDashLine, Qt.PenCapStyle.FlatCap)
    pen.setDashPattern(list(DASHES[at]))
    return pen
