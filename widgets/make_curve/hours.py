"""Working hours on the time axis: when nobody is there is shaded, and a stage that changes hands then is marked."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Final

from PySide6.QtCore import QCoreApplication, QPointF, QRectF, Qt
from PySide6.QtGui import QBrush, QPainter, QPen

from designer.units import DAY_MIN
from widgets import wording
from widgets.make_curve.frame import Block, Frame

REACH_PX: Final = 8.0
LEAST_PX: Final = 8.0
"""A night narrower than this is not shaded: weeks would be grey."""


def works(minute_of_day: float, hours: tuple[float, float]) -> bool:
    """True where somebody works then; hours may run over midnight."""
    start, end = hours
    now = minute_of_day % DAY_MIN
    return start <= now <= end if start <= end else now >= start or now <= end


def nights(frame: Frame) -> Iterator[tuple[float, float]]:
    """Stretches in view outside the working hours, in minutes of the make."""
    if frame.hours is None or frame.clock_start_min is None:
        return
    start, end = frame.hours
    rest = (start - end) % DAY_MIN
    first = (end - frame.clock_start_min) % DAY_MIN - DAY_MIN
    begin = first + DAY_MIN * ((frame.axis.start_min - first - rest) // DAY_MIN)
    while begin < frame.axis.end_min:
        if begin + rest > max(frame.axis.start_min, 0.0):
            yield max(begin, frame.axis.start_min, 0.0), min(begin + rest, frame.axis.end_min)
        begin += DAY_MIN


def paint_hours(painter: QPainter, frame: Frame) -> None:
    """Shade the nights behind the panes."""
    if frame.hours is None:
        return
    brush = QBrush(frame.colour("soft", 0.28), Qt.BrushStyle.BDiagPattern)
    for begin, end in nights(frame):
        left, right = frame.axis.x(begin), frame.axis.x(end)
        if DAY_MIN * frame.axis.piece(begin).px_per_min * 0.5 < LEAST_PX:
            continue
        for rect in frame.places.panes.values():
            painter.fillRect(QRectF(left, rect.top(), right - left, rect.height()), brush)


def outside(frame: Frame) -> list[Block]:
    """Stages that end while nobody works: somebody would have to come. Not the last: it ends when one likes."""
    if frame.hours is None or frame.clock_start_min is None:
        return []
    return [
        block for block in frame.blocks[:-1]
        if not block.planned and not works(frame.clock_start_min + block.end_min, frame.hours)
    ]  # fmt: skip


def paint_outside(painter: QPainter, frame: Frame) -> None:
    """A half moon on the edge of every stage that ends while nobody works."""
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    y = frame.places.ribbon.bottom() - 7
    for block in outside(frame):
        x = frame.axis.x(block.end_min)
        if frame.left_px <= x <= frame.axis.right:
            painter.setPen(QPen(frame.colour("near"), 1.4))
            painter.setBrush(frame.colour("paper"))
            painter.drawEllipse(QPointF(x, y), 5.0, 5.0)
            painter.setBrush(frame.colour("near"))
            painter.drawPie(QRectF(x - 5, y - 5, 10, 10), 90 * 16, 180 * 16)


def tip_at(frame: Frame, at: QPointF) -> str:
    """What the mark under a point says, "" where there is none."""
    if frame.hours is None or frame.clock_start_min is None or at.y() < frame.places.ribbon.bottom() - 15:
        return ""
    for block in outside(frame):
        if abs(frame.axis.x(block.end_min) - at.x()) <= REACH_PX and at.y() <= frame.places.ribbon.bottom():
            text = QCoreApplication.translate("Hours", "{0} ends at {1}, outside the working hours ({2} to {3})")
            start, end = (wording.clock(one, frame.system) for one in frame.hours)
            return text.format(block.name, frame.clock_text(block.end_min), start, end)
    return ""
