"""The style's gates on the curves: where a curve should pass at a moment of the make, and whether it does.

Told three ways at once: by shape (ring inside, triangle near, cross outside), by words, and by colour.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from typing import Final

from PySide6.QtCore import QCoreApplication, QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPen, QPolygonF

from designer.forecast import Forecast
from designer.judge.moments import moments
from designer.quantities import quantity
from styles.reader import Gate
from styles.settings import MOMENTS
from widgets.make_curve.frame import Frame, Scale

PANE_OF: Final = {"ph": "ph", "ph_whey": "ph", "curd_moisture_pct": "moisture"}


@dataclass(frozen=True, slots=True)
class Mark:
    """A gate with its moment found and judged. `state`: "inside", "near" or "outside"."""

    curve: str
    at: str
    minute: float
    low: float | None
    high: float | None
    value: float
    state: str
    source: str
    have: str

    @property
    def off(self) -> float:
        """How far outside: positive above, negative below, 0 inside (or where rounding would show no miss)."""
        grain = 0.5 * 10.0 ** -quantity(self.curve).decimals
        if self.high is not None and self.high < self.value < self.high + grain:
            return 0.0
        if self.low is not None and self.low - grain < self.value < self.low:
            return 0.0
        if self.high is not None and self.value > self.high:
            return self.value - self.high
        if self.low is not None and self.value < self.low:
            return self.value - self.low
        return 0.0

    def words(self) -> str:
        """ "in", or by how much it misses."""
        decimals = quantity(self.curve).decimals
        if self.state == "inside":
            return QCoreApplication.translate("Gate", "in")
        text = f"{abs(self.off):.{decimals}f}"
        if self.off > 0:
            return QCoreApplication.translate("Gate", "{0} above").format(text)
        return QCoreApplication.translate("Gate", "{0} below").format(text)

    def sentence(self) -> str:
        """The gate in full, for the tooltip and the table."""
        decimals = quantity(self.curve).decimals
        low = "" if self.low is None else f"{self.low:.{decimals}f}"
        high = "" if self.high is None else f"{self.high:.{decimals}f}"
        window = f"{low}\u2013{high}" if low and high else ("\u2265 " + low if low else "\u2264 " + high)
        text = QCoreApplication.translate("Gate", "{0} {1}: {2}, the style asks {3} ({4}; {5}; {6})")
        return text.format(
            quantity(self.curve).label,
            MOMENTS[self.at].label,
            f"{self.value:.{decimals}f}",
            window,
            self.words(),
            self.source,
            self.have,
        )


def judged(gate: Gate, forecast: Forecast, minute: float) -> Mark:
    """A gate held against the forecast. Near: outside by no more than half the window, or a few steps of the figure."""
    value = forecast.trace.at(gate.curve, minute)
    mark = Mark(gate.curve, gate.at, minute, gate.low, gate.high, value, "inside", gate.source, gate.have)
    if mark.off == 0.0:
        return mark
    width = gate.high - gate.low if gate.low is not None and gate.high is not None else 0.0
    tolerance = max(width / 2, quantity(gate.curve).step * 5)
    state = "near" if abs(mark.off) <= tolerance else "outside"
    return Mark(gate.curve, gate.at, minute, gate.low, gate.high, value, state, gate.source, gate.have)


def marks(gates: Iterable[Gate], forecast: Forecast) -> tuple[Mark, ...]:
    """The gates whose curve is drawn and whose moment the make has; one a curve and moment, the first named."""
    found: dict[tuple[str, str], Mark] = {}
    when = moments(forecast)
    last = float(forecast.trace.time_min[-1])
    for gate in gates:
        minute = when.get(gate.at)
        if gate.curve in PANE_OF and minute is not None and minute <= last and (gate.curve, gate.at) not in found:
            found[gate.curve, gate.at] = judged(gate, forecast, minute)
    return tuple(found.values())


COLOUR: Final = {"inside": "met", "near": "near", "outside": "miss"}


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
        if found is None:
            continue
        x, scale = found
        colour = frame.colour(COLOUR[mark.state])
        rect = scale.rect
        top = max(rect.top() + 1, scale.y(mark.high) if mark.high is not None else rect.top() + 1)
        bottom = min(rect.bottom() - 1, scale.y(mark.low) if mark.low is not None else rect.bottom() - 1)
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
    colour = frame.colour(COLOUR[mark.state])
    painter.setPen(QPen(colour, 2.0))
    painter.setBrush(frame.colour("paper"))
    if mark.state == "inside":
        painter.drawEllipse(at, 3.6, 3.6)
    elif mark.state == "near":
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
    wide = metrics.horizontalAdvance(text)
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
            painter.setPen(frame.colour(COLOUR[mark.state]))
            painter.drawText(box, Qt.AlignmentFlag.AlignCenter, text)
            return
