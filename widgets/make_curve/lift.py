"""Taking a stage by its name in the ribbon and putting it elsewhere in its lane: where it would go, and its picture."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QCoreApplication, QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPen

from widgets.make_curve.frame import Block, Frame


@dataclass(frozen=True, slots=True)
class Lift:
    """A stage in the hand: the lane it belongs to and which of its blocks it is."""

    lane: str | None
    block: Block

    def slot(self, frame: Frame, x: float) -> int:
        """Before which block of the lane it would go at a pixel; the number of blocks: after the last."""
        return sum(1 for block in frame.blocks if (frame.axis.x(block.start_min) + frame.axis.x(block.end_min)) / 2 < x)

    def by(self, frame: Frame, x: float) -> int:
        """How many places later (negative: earlier) it would stand."""
        slot = self.slot(frame, x)
        return slot - self.block.index - (1 if slot > self.block.index else 0)

    def words(self, frame: Frame, x: float) -> str:
        """Where it would go, in words."""
        slot = self.slot(frame, x)
        if not self.by(frame, x):
            return QCoreApplication.translate("Lift", "stays where it is")
        if slot < len(frame.blocks):
            return QCoreApplication.translate("Lift", "before {0}").format(frame.blocks[slot].name)
        return QCoreApplication.translate("Lift", "after {0}").format(frame.blocks[-1].name)


def grabbed(frame: Frame, at: QPointF) -> Block | None:
    """The stage whose name is under a point of the ribbon."""
    if not frame.places.ribbon.contains(at):
        return None
    minute = frame.axis.minute(at.x())
    return next((block for block in frame.blocks if block.start_min <= minute < block.end_min), None)


def paint(painter: QPainter, frame: Frame, lift: Lift, x: float) -> None:
    """Mark where it is, and where it would go."""
    ribbon, axis = frame.places.ribbon, frame.axis
    block = next((one for one in frame.blocks if one.id == lift.block.id), lift.block)
    left, right = max(axis.x(block.start_min), axis.left), min(axis.x(block.end_min), axis.right)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.setPen(QPen(frame.colour("accent"), 1.4, Qt.PenStyle.DashLine))
    painter.drawRect(QRectF(left + 1, ribbon.top() + 1, max(right - left - 2, 1), ribbon.height() - 2))
    if lift.by(frame, x):
        slot = lift.slot(frame, x)
        minute = frame.blocks[slot].start_min if slot < len(frame.blocks) else frame.blocks[-1].end_min
        edge = min(max(axis.x(minute), axis.left), axis.right)
        painter.setPen(QPen(frame.colour("accent"), 4.0))
        painter.drawLine(QLineF(edge, frame.places.vat.top(), edge, ribbon.bottom()))
