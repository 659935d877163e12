"""The style's gates on the curves: where a curve should pass at a moment of the make, and whether it does.

The judging is `designer.judge`; here it is told three ways at once: by shape (ring inside, triangle near, cross
outside), by words, and by colour.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from PySide6.QtCore import QCoreApplication, QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPen, QPolygonF

from designer.judge.verdict import CURVE, MET, NEAR, Row, Verdict
from designer.language import headed, number, word
from designer.quantities import quantity
from widgets.make_curve.frame import Frame, Scale
from widgets.outcomes.marks import COLOUR
from widgets.theme import apply as dress

WORDS_PX: Final = 80.0
"""No further to the right of its gate does a word reach."""
PANE_OF: Final = {"ph": "ph", "ph_whey": "ph", "curd_moisture_pct": "moisture"}


@dataclass(frozen=True, slots=True)
class Mark:
    """A gate on a curve, with the judge's row about it."""

    curve: str
    minute: float
    value: float
    row: Row

    @property
    def off(self) -> float:
        """How far outside: positive above, negative below, 0 inside."""
        if self.row.high is not None and self.value > self.row.high:
            return self.value - self.row.high
        if self.row.low is not None and self.value < self.row.low:
            return self.value - self.row.low
        return 0.0

    def words(self) -> str:
        """ "in", or by how much it misses."""
        if self.row.state == MET:
            return QCoreApplication.translate("Gate", "in")
        decimals = quantity(self.curve).decimals
        if round(abs(self.off), decimals) == 0.0:
            decimals += 1
        text = number(abs(self.off), f".{decimals}f")
        if self.off > 0:
            return QCoreApplication.translate("Gate", "{0} above").format(text)
        return QCoreApplication.translate("Gate", "{0} below").format(text)

    def sentence(self) -> str:
        """The gate in full, for the tooltip."""
        text = headed(
            self.row.label, f"{number(self.value, f'.{quantity(self.curve).decimals}f')}, {self.row.sentence}"
        )
        return f"{text}\n{self.row.source} ({word(self.row.have, 'have')})"


def marks(verdict: Verdict | None) -> tuple[Mark, ...]:
    """The gates of a verdict whose curve is drawn."""
    found = []
    for row in verdict.section(CURVE) if verdict is not None else ():
        curve = row.quantity.split("@")[0]
        if curve in PANE_OF and row.minute is not None and row.value is not None:
            found.append(Mark(curve, row.minute, row.value, row))
    return tuple(found)


def place(frame: Frame, mark: Mark) -> tuple[float, Scale] | None:
    """Pixel of a mark and the scale of its pane, None where it is out of view."""
    pane = PANE_OF[mark.curve]
    x = frame.axis.x(mark.minute)
    if pane not in frame.places.panes or not frame.axis.left - 1 <= x <= frame.axis.right + 1:
        return None
    return x, frame.scales[pane]


def paint_gates(painter: QPainter, frame: Frame) -> None:
    """Brackets, the shape at the curve, and the words where there is room for them."""
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setFont(frame.fonts.note)
    taken: list[QRectF] = []
    for mark in frame.gates:
        found = place(frame, mark)
        if found is None or found[0] < frame.left_px - WORDS_PX:
            continue
        x, scale = found
        colour = frame.colour(COLOUR[mark.row.state])
        rect = scale.rect
        top = max(rect.top() + 1, scale.y(mark.row.high) if mark.row.high is not None else rect.top() + 1)
        bottom = min(rect.bottom() - 1, scale.y(mark.row.low) if mark.row.low is not None else rect.bottom() - 1)
        style = Qt.PenStyle.DotLine if mark.curve == "ph_whey" else Qt.PenStyle.SolidLine
        shift = -4.0 if mark.curve == "ph_whey" else 4.0
        painter.setPen(QPen(colour, 2.0, style, Qt.PenCapStyle.FlatCap))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawLine(QLineF(x + shift, top, x + shift, bottom))
        painter.setPen(QPen(colour, 2.0))
        for y in (top, bottom):
            painter.drawLine(QLineF(x, y, x + 1.6 * shift, y))
        y = min(max(scale.y(mark.value), rect.top() + 5), rect.bottom() - 5)
        _shape(painter, frame, mark, QPointF(x, y))
        _words(painter, frame, mark, x, y, top, bottom, taken)


def _shape(painter: QPainter, frame: Frame, mark: Mark, at: QPointF) -> None:
    colour = frame.colour(COLOUR[mark.row.state])
    painter.setPen(QPen(colour, 2.0))
    painter.setBrush(frame.colour("paper"))
    if mark.row.state == MET:
        painter.drawEllipse(at, 3.6, 3.6)
    elif mark.row.state == NEAR:
        up = 1.0 if mark.off > 0 else -1.0
        painter.drawPolygon(
            QPolygonF([at + QPointF(-4.6, -4 * up), at + QPointF(4.6, -4 * up), at + QPointF(0, 4.4 * up)])
        )
    else:
        painter.drawLine(at + QPointF(-4, -4), at + QPointF(4, 4))
        painter.drawLine(at + QPointF(-4, 4), at + QPointF(4, -4))


def _words(
    painter: QPainter, frame: Frame, mark: Mark, x: float, y: float, top: float, bottom: float, taken: list[QRectF]
) -> None:
    metrics = frame.fonts.note_metrics
    text = mark.words()
    wide = dress.width(text, "note")
    middle = (top + bottom) / 2
    tall = metrics.height()
    for left, centre in (
        (x + 11, middle),
        (x + 11, top - tall * 0.6),
        (x + 11, bottom + tall * 0.6),
        (x - 11 - wide, middle),
    ):
        box = QRectF(left, centre - tall / 2, wide, tall)
        rect = frame.places.panes[PANE_OF[mark.curve]]
        if rect.contains(box) and not any(box.intersects(other) for other in taken):
            taken.append(box)
            painter.fillRect(box.adjusted(-2, 1, 2, -1), frame.colour("paper", 0.82))
            painter.setPen(frame.colour(COLOUR[mark.row.state]))
            painter.drawText(box, Qt.AlignmentFlag.AlignCenter, text)
            return
