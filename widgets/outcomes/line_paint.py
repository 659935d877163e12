"""Paints a line of the outcomes: the ground it stands on, then its figure with the margin to a limit, or its words."""

from __future__ import annotations

from typing import Final

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPen

from designer.judge.verdict import MET, Row
from designer.judge.words import chance_words
from designer.language import headed
from widgets.outcomes.figures import SHORTER, shorter_of
from widgets.outcomes.fold import paint_chevron
from widgets.outcomes.marks import COLOUR, paint_state, state_words
from widgets.outcomes.outcome_line import Line, short_chance
from widgets.theme import apply as dress

LEFT_PX: Final = 16
RIGHT_PX: Final = 14


def height_of(line: Line) -> float:
    """How tall a line is [px]."""
    below = dress.metrics("note").height() if line.row is not None else 0.0
    return max(24.0, dress.metrics("body").height() + 9 + below)


def paint_ground(painter: QPainter, box: QRectF, room: int, *, opened: bool, pointed: bool, held: bool) -> None:
    """What is behind a line as wide as the panel: open, with `room` px below, pointed at, held by the keyboard; and the
    mark that it opens."""
    c = dress.colours()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    if opened:
        painter.fillRect(box.adjusted(0, 0, 0, -1), dress.ink(c.chosen))
        painter.fillRect(box.adjusted(0, box.height() - 1, 0, room), dress.ink(c.paper))
        painter.fillRect(QRectF(0, box.top(), 3, box.height() + room), dress.ink(c.accent))
    elif pointed:
        painter.fillRect(box.adjusted(0, 0, 0, -1), dress.ink(c.of("pointed")))
    at = QPointF(9, box.top() + dress.metrics("body").height() / 2 + 4)
    paint_chevron(painter, at, opened, c.accent if opened or pointed else c.soft)
    if held:
        painter.setPen(QPen(dress.ink(c.accent), 1.5))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawRoundedRect(box.adjusted(1, 1, -1, -2), 4, 4)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)


def paint_line(painter: QPainter, line: Line, panel: QRectF, *, pale: bool) -> None:
    """What a line says, within the margins of the panel; words are pale while they are judged anew."""
    box = panel.adjusted(LEFT_PX, 0, -RIGHT_PX, 0)
    if line.of_words:
        _paint_words(painter, line, box, pale)
    else:
        _paint_figure(painter, line, box)
    rule = dress.ink(dress.colours().line)
    painter.fillRect(round(box.left()), round(box.bottom()) - 1, round(box.width()), 1, rule)


def _base(box: QRectF) -> float:
    return box.top() + dress.metrics("body").ascent() + 4


def _paint_figure(painter: QPainter, line: Line, box: QRectF) -> None:
    """An outcome: label, band and value, below them the margin to its limit."""
    ink, soft = dress.ink(dress.colours().ink), dress.ink(dress.colours().soft)
    base = _base(box)
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
        _paint_margin(painter, line.row, box, base + dress.metrics("note").height())


def _paint_words(painter: QPainter, line: Line, box: QRectF, pale: bool) -> None:
    """What is judged, and how it is."""
    c, base = dress.colours(), _base(box)
    painter.setFont(dress.font("body"))
    painter.setPen(dress.ink(c.ink))
    painter.drawText(QPointF(box.left(), base), line.label)
    left = dress.width(line.label, "body") + 16
    said = dress.fitted(line.value, "body", box.width() - left, bold=True)
    painter.setFont(dress.font("body", bold=True))
    painter.setPen(dress.ink(c.soft if pale else c.ink))
    painter.drawText(QPointF(box.right() - dress.width(said, "body", bold=True), base), said)


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
