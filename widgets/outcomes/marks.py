"""The shapes and words of the states of a verdict, the same wherever one is shown."""

from __future__ import annotations

from typing import Final

from PySide6.QtCore import QT_TRANSLATE_NOOP, QCoreApplication, QPointF, Qt
from PySide6.QtGui import QPainter, QPen, QPolygonF

from designer.judge.verdict import MET, NEAR, NOT_MET
from widgets.theme import apply as dress

COLOUR: Final = {MET: "met", NEAR: "near", NOT_MET: "miss"}
STATE_WORDS: Final = {
    MET: QT_TRANSLATE_NOOP("Outcome", "met"),
    NEAR: QT_TRANSLATE_NOOP("Outcome", "near"),
    NOT_MET: QT_TRANSLATE_NOOP("Outcome", "not met"),
}


def state_words(state: str) -> str:
    """A state of the verdict in the maker's language."""
    return QCoreApplication.translate("Outcome", STATE_WORDS[state])


def paint_state(painter: QPainter, at: QPointF, state: str) -> None:
    """The shape of a state: ring met, triangle near, cross not met."""
    c = dress.colours()
    painter.setPen(QPen(dress.ink(getattr(c, COLOUR[state])), 1.8))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    if state == MET:
        painter.drawEllipse(at, 3.4, 3.4)
    elif state == NEAR:
        painter.drawPolygon(QPolygonF([at + QPointF(-4, 3.2), at + QPointF(4, 3.2), at + QPointF(0, -3.8)]))
    else:
        painter.drawLine(at + QPointF(-3.4, -3.4), at + QPointF(3.4, 3.4))
        painter.drawLine(at + QPointF(-3.4, 3.4), at + QPointF(3.4, -3.4))
