"""Two makes' curves over each other on one elapsed time: temperature, pH, moisture; told apart by line and by label."""

from __future__ import annotations

from typing import Any, Final

import numpy as np
from PySide6.QtCore import QT_TRANSLATE_NOOP, QCoreApplication, QLineF, QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QKeyEvent, QMouseEvent, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from designer.forecast import Forecast
from widgets import wording
from widgets.make_curve.path import Array, polygon, stroke, thinned
from widgets.make_curve.vat import nice_marks
from widgets.theme import apply as dress

N = QT_TRANSLATE_NOOP
PANES: Final[tuple[tuple[str, Any, str, str, int, float], ...]] = (
    ("temperature_c", N("Compare", "temperature"), "°C", "temperature", 1, 2.0),
    ("ph", N("Compare", "pH of milk, then curd"), "", "ph", 2, 0.1),
    ("curd_moisture_pct", N("Compare", "curd moisture"), "%", "moisture", 1, 2.0),
)
"""column, title, unit, colour, decimals, least room above and below in that unit"""
AFTER: Final = frozenset(("press", "turn", "brine", "hold_brine", "drying", "room"))
WHOLE_MIN: Final = 30 * 60.0
LEFT, RIGHT, HEAD, FOOT = 44.0, 14.0, 22.0, 24.0


def vat_end(made: Forecast) -> float:
    """Minute at which the make comes to the press, the brine or the air."""
    stages = made.recipe.stages
    last = max((at for at, stage in enumerate(stages) if stage.kind not in AFTER), default=0)
    inside = made.trace.time_min[made.trace.stage <= last]
    return float(inside[-1]) if len(inside) else float(made.trace.time_min[-1])


class TwoCurves(QWidget):
    """The curves of the open make (a full line) and of the other (a broken one); pointer and arrows read both."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setMouseTracking(True)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setAccessibleName(self.tr("Curves of both makes; left and right arrows read their values"))
        self.made: tuple[Forecast, Forecast] | None = None
        self.names = ("", "")
        self.whole = False
        self.minute: float | None = None

    def sizeHint(self) -> QSize:
        """Room for three panes."""
        return QSize(460, 420)

    def minimumSizeHint(self) -> QSize:
        """The least in which curves are told apart."""
        return QSize(300, 240)

    def show_makes(self, left: Forecast, right: Forecast, names: tuple[str, str]) -> None:
        """Draw these two under these names."""
        self.made = (left, right)
        self.names = names
        self.update()

    def set_whole(self, whole: bool) -> None:
        """The first 30 hours, or only the time in the vat."""
        self.whole = whole
        self.minute = None
        self.update()

    @property
    def end_min(self) -> float:
        """Right end of the time axis."""
        if self.made is None:
            return 60.0
        longest = max(float(one.trace.time_min[-1]) for one in self.made)
        return min(longest, WHOLE_MIN if self.whole else max(vat_end(one) for one in self.made) + 30.0)

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
        if self.made is None:
            return
        c = dress.colours()
        painter = QPainter(self)
        try:
            painter.setFont(dress.font("note"))
            tall = (self.height() - FOOT) / len(PANES)
            for index, pane in enumerate(PANES):
                rect = QRectF(LEFT, index * tall + HEAD, self.width() - LEFT - RIGHT, tall - HEAD - 4.0)
                self._pane(painter, rect, pane)
            self._time(painter, QRectF(LEFT, HEAD, self.width() - LEFT - RIGHT, self.height() - FOOT - HEAD - 4.0))
            if self.hasFocus():
                painter.setPen(QPen(dress.ink(c.accent), 1.0))
                painter.setBrush(Qt.BrushStyle.NoBrush)
                painter.drawRect(QRectF(self.rect()).adjusted(0.5, 0.5, -0.5, -0.5))
        finally:
            painter.end()

    def _time(self, painter: QPainter, rect: QRectF) -> None:
        c = dress.colours()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)
        for hour in nice_marks(0.0, self.end_min / 60.0, rect.width(), 46.0):
            x = rect.left() + hour * 60.0 / self.end_min * rect.width()
            painter.setPen(dress.ink(c.soft))
            text = f"{hour:g} h"
            wide = dress.width(text, "note")
            at = min(max(x - wide / 2.0, 0.0), self.width() - wide - 1.0)
            painter.drawText(QPointF(at, self.height() - 8.0), text)
        if self.minute is not None:
            x = rect.left() + self.minute / self.end_min * rect.width()
            painter.setPen(QPen(dress.ink(c.ink, 0.6), 1.0))
            painter.drawLine(QLineF(x, rect.top(), x, rect.bottom()))

    def _pane(self, painter: QPainter, rect: QRectF, pane: tuple[str, str, str, str, int, float]) -> None:
        assert self.made is not None
        column, title, unit, colour, decimals, room = pane
        c = dress.colours()
        ink = getattr(c, colour)
        series = [self._seen(one, column) for one in self.made]
        both = np.concatenate([values for _, values in series])
        low, high = (float(np.min(both)), float(np.max(both))) if len(both) else (0.0, 1.0)
        spare = max(room, 0.22 * (high - low))
        low, high = low - spare, high + spare
        painter.fillRect(rect, dress.ink(c.paper))
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)
        for value in nice_marks(low, high, rect.height(), 19.0):
            y = rect.bottom() - (value - low) / (high - low) * rect.height()
            painter.setPen(QPen(dress.ink(c.grid), 1.0))
            painter.drawLine(QLineF(rect.left(), round(y) + 0.5, rect.right(), round(y) + 0.5))
            painter.setPen(dress.ink(c.soft))
            box = QRectF(0.0, y - 10.0, rect.left() - 7.0, 20.0)
            if rect.top() + 4.0 <= y <= rect.bottom() - 4.0:
                painter.drawText(box, Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter, f"{value:g}")
        for hour in nice_marks(0.0, self.end_min / 60.0, rect.width(), 46.0):
            x = round(rect.left() + hour * 60.0 / self.end_min * rect.width()) + 0.5
            painter.setPen(QPen(dress.ink(c.grid), 1.0))
            painter.drawLine(QLineF(x, rect.top(), x, rect.bottom()))
        self._head(painter, rect, QCoreApplication.translate("Compare", title), unit, column, decimals)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        lines = []
        painter.save()
        painter.setClipRect(rect)
        for side, (minutes, values) in enumerate(series):
            x = rect.left() + minutes / self.end_min * rect.width()
            y = rect.bottom() - (values - low) / (high - low) * rect.height()
            pick = thinned(x, np.zeros(len(x), dtype=bool), rect.left(), rect.right())
            lines.append((x[pick], y[pick]))
            if side == 0:
                painter.setPen(Qt.PenStyle.NoPen)
                painter.setBrush(dress.ink(ink))
                painter.drawPolygon(stroke(x[pick], y[pick], 2.2))
                painter.setBrush(Qt.BrushStyle.NoBrush)
            else:
                pen = QPen(dress.ink(c.ink), 1.6, Qt.PenStyle.CustomDashLine, Qt.PenCapStyle.FlatCap)
                pen.setDashPattern([4.0, 3.0])
                painter.setPen(pen)
                painter.drawPolyline(polygon(x[pick], y[pick]))
        painter.restore()
        self._labels(painter, rect, lines, (ink, c.ink))

    def _seen(self, made: Forecast, column: str) -> tuple[Array, Array]:
        """A curve as far as the axis goes, where it says something."""
        time, values = made.trace.time_min, made.trace[column]
        kept = np.isfinite(values) & (time <= self.end_min)
        return time[kept], values[kept]

    def _head(self, painter: QPainter, rect: QRectF, title: str, unit: str, column: str, decimals: int) -> None:
        assert self.made is not None
        c = dress.colours()
        base = rect.top() - 7.0
        painter.setPen(dress.ink(c.soft))
        text = f"{title}, {unit}" if unit else title
        painter.drawText(QPointF(rect.left(), base), text)
        if self.minute is None:
            return
        said = []
        for made in self.made:
            value = made.trace.at(column, self.minute) if self.minute <= made.trace.time_min[-1] else float("nan")
            said.append(f"{value:.{decimals}f}" if np.isfinite(value) else "\u2013")
        words = self.tr("{0}: {1} against {2}").format(wording.length(self.minute), *said)
        painter.setPen(dress.ink(c.ink))
        painter.drawText(QPointF(rect.right() - dress.width(words, "note"), base), words)

    def _labels(self, painter: QPainter, rect: QRectF, lines: list[tuple[Array, Array]], inks: tuple[str, str]) -> None:
        """Each line's name beside it, where the two lie furthest apart; the upper over its line, the lower under."""
        if any(len(x) < 2 for x, _ in lines):
            return
        room = min(rect.width() * 0.36, 150.0)
        names = [dress.fitted(name, "note", room) for name in self.names]
        wide = max(dress.width(name, "note") for name in names)
        last = min(rect.right() - wide, max(float(x[-1]) for x, _ in lines) - wide)
        tall = dress.metrics("note").height()
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
            painter.setPen(dress.ink(inks[side]))
            painter.drawText(QPointF(float(starts[best]), base), names[side])
