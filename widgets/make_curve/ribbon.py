"""The stage ribbon under the vat: name and end of every stage, never colliding; and the time axis with its strip."""

from __future__ import annotations

from collections.abc import Iterator
from math import ceil
from typing import Final

from PySide6.QtCore import QCoreApplication, QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen

from designer.units import DAY_MIN
from widgets import wording
from widgets.make_curve.axis import TimeAxis
from widgets.make_curve.frame import OUT, Block, Frame
from widgets.theme import apply as dress

WEEK_MIN: Final = 7 * DAY_MIN
WARNED_PX: Final = 14.0
NIGHT_PX: Final = 44.0
"""Midnights nearer to each other than this are a fence before the picture: then the days of the axis are enough."""


def cell(frame: Frame, block: Block) -> QRectF:
    """Where a stage stands in the ribbon, cut to what is in view (may be empty)."""
    rect = frame.places.ribbon
    left, right = max(frame.axis.x(block.start_min), rect.left()), min(frame.axis.x(block.end_min), rect.right())
    return QRectF(left, rect.top(), max(right - left, 0.0), rect.height())


def paint_ribbon(painter: QPainter, frame: Frame) -> None:
    """Cells with their words: two or three lines where there is room, upright where there is little, else none."""
    rect = frame.places.ribbon
    painter.save()
    painter.setClipRect(rect, Qt.ClipOperation.IntersectClip)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)
    for block in frame.blocks:
        box = cell(frame, block)
        if box.width() <= 0 or box.right() < frame.left_px:
            continue
        painter.fillRect(box, QColor(_ground(frame, block)))
        painter.setPen(QPen(frame.colour("line"), 1.0))
        painter.drawLine(QLineF(round(box.right()) - 0.5, box.top(), round(box.right()) - 0.5, box.bottom()))
        _words(painter, frame, block, box)
        _warned(painter, frame, block, box)
    painter.setPen(QPen(frame.colour("line"), 1.0))
    painter.drawLine(QLineF(rect.left(), rect.bottom() - 0.5, rect.right(), rect.bottom() - 0.5))
    painter.restore()


def _ground(frame: Frame, block: Block) -> str:
    c = frame.colours
    if block.id == frame.chosen:
        return c.chosen
    return c.panel if block.index % 2 else c.of("cell")


def _words(painter: QPainter, frame: Frame, block: Block, box: QRectF) -> None:
    strong, note = frame.fonts.strong_metrics, frame.fonts.note_metrics
    ink = QColor(frame.colours.ink)
    if box.height() < strong.height() + note.height():
        _one_line(painter, frame, block, box)
        return
    room = int(box.width()) - 8
    names = broken(block.name, room) if box.height() >= 2 * strong.height() + note.height() else (block.name,)
    whole = all(dress.width(name, "note", bold=True) <= room for name in names)
    stands = box.width() >= note.height() - 2 and dress.width(block.name, "note") <= box.height() - 2
    if whole or (room >= 44 and not stands):
        painter.setFont(frame.fonts.strong)
        painter.setPen(ink)
        top = box.top() + (box.height() - len(names) * strong.height() - note.height()) / 2
        for name in names:
            line = QRectF(box.left(), top, box.width(), strong.height())
            painter.drawText(line, Qt.AlignmentFlag.AlignHCenter, dress.fitted(name, "note", room, bold=True))
            top += strong.height()
        end = ("\u25c7 " if block.state else "") + block.end_text
        painter.setFont(frame.fonts.note)
        painter.setPen(QColor(frame.colours.soft) if block.id != frame.chosen else ink)
        if dress.width(end, "note") > room:
            end = dress.fitted(block.end_text, "note", room)
        if end.endswith("\u2026") and (len(end) < 6 or end[-2] in "0123456789.,"):
            return  # half a figure is none
        line = QRectF(box.left(), top, box.width(), note.height())
        painter.drawText(line, Qt.AlignmentFlag.AlignHCenter, end)
    elif box.width() >= note.height() - 2:
        painter.save()
        painter.translate(box.center())
        painter.rotate(-90)
        painter.setFont(frame.fonts.note)
        painter.setPen(ink)
        name = dress.fitted(block.name, "note", box.height() - 2)
        upright = QRectF(-box.height() / 2, -box.width() / 2, box.height(), box.width())
        painter.drawText(upright, Qt.AlignmentFlag.AlignCenter, name)
        painter.restore()


def cautions_of(frame: Frame, stage_id: str) -> list[str]:
    """The cautions of a stage that ask to be heeded, gravest first; mere notes are told among the outcomes."""
    return [one.text for one in frame.forecast.cautions if one.stage == stage_id and one.level != "note"]


def _warned(painter: QPainter, frame: Frame, block: Block, box: QRectF) -> None:
    """A triangle in the corner of a stage that has a caution: the list that tells them may be scrolled out of sight."""
    if not cautions_of(frame, block.id) or box.width() < WARNED_PX:
        return
    painter.setFont(frame.fonts.note)
    painter.setPen(QColor(frame.colours.near))
    painter.drawText(QPointF(box.left() + 3, box.top() + frame.fonts.note_metrics.ascent() + 2), "\u25b2")


def broken(name: str, room: int) -> tuple[str, ...]:
    """A name in one line; in two where only so the whole of it has room."""
    words = name.split(" ")
    pairs = [(" ".join(words[:at]), " ".join(words[at:])) for at in range(1, len(words))]
    if not pairs or dress.width(name, "note", bold=True) <= room:
        return (name,)
    wide = {pair: max(dress.width(part, "note", bold=True) for part in pair) for pair in pairs}
    best = min(pairs, key=wide.__getitem__)
    return best if wide[best] <= room else (name,)


def _one_line(painter: QPainter, frame: Frame, block: Block, box: QRectF) -> None:
    """Name and end side by side where a ribbon is slim; the name alone, or nothing, where there is no room."""
    room = box.width() - 8
    end = ("\u25c7 " if block.state else "") + block.end_text
    name_wide, end_wide = dress.width(block.name, "note", bold=True), dress.width(end, "note")
    if room < min(name_wide, 30.0):
        return
    both = name_wide + 8 + end_wide <= room
    left = box.left() + 4 + ((room - name_wide - 8 - end_wide) / 2 if both else max(room - name_wide, 0.0) / 2)
    base = box.center().y() + frame.fonts.strong_metrics.ascent() / 2 - 1
    painter.setFont(frame.fonts.strong)
    painter.setPen(QColor(frame.colours.ink))
    painter.drawText(QPointF(left, base), dress.fitted(block.name, "note", room, bold=True))
    if both:
        painter.setFont(frame.fonts.note)
        painter.setPen(QColor(frame.colours.ink if block.id == frame.chosen else frame.colours.soft))
        painter.drawText(QPointF(left + name_wide + 8, base), end)


def paint_axis(painter: QPainter, frame: Frame) -> None:
    """Clock marks above, time since milk below; midnight as a line of its own through all panes."""
    rect = frame.places.axis
    note = frame.fonts.note_metrics
    painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)
    painter.setPen(QPen(frame.colour("soft"), 1.0))
    painter.drawLine(QLineF(rect.left(), rect.top() + 0.5, rect.right(), rect.top() + 0.5))
    painter.setFont(frame.fonts.note)
    apart_px = note.horizontalAdvance("00:00 am") + 22
    start = frame.clock_start_min
    rows = [(0.0, "elapsed")] if start is None else [(start, "clock"), (0.0, "elapsed")]
    y = rect.top() + 5
    for offset, what in rows:
        painter.setPen(frame.colour("soft"))
        label = (
            QCoreApplication.translate("Axis", "clock")
            if what == "clock"
            else QCoreApplication.translate("Axis", "elapsed")
        )
        room = rect.left() - 12
        painter.drawText(
            QRectF(0, y, room + 4, note.height()),
            Qt.AlignmentFlag.AlignRight,
            note.elidedText(label, Qt.TextElideMode.ElideRight, room),
        )
        for text, x in _marks(frame, what, offset, apart_px):
            painter.setPen(frame.colour("ink" if what == "clock" or start is None else "soft"))
            wide = note.horizontalAdvance(text)
            left = min(max(x - wide / 2, rect.left() - 2), rect.right() + 38 - wide)
            painter.drawText(QPointF(left, y + note.ascent()), text)
            if what == rows[0][1]:
                painter.setPen(QPen(frame.colour("soft"), 1.0))
                painter.drawLine(QLineF(round(x) + 0.5, rect.top(), round(x) + 0.5, rect.top() + 4))
        y += note.height() + 1


def gutter_px() -> float:
    """The room that the names of the two rows of the axis ask for before it."""
    names = (QCoreApplication.translate("Axis", "clock"), QCoreApplication.translate("Axis", "elapsed"))
    return ceil(max(dress.width(name, "note") for name in names)) + 13.0


def _marks(frame: Frame, what: str, offset: float, apart_px: float) -> Iterator[tuple[str, float]]:
    """The marks of a row of the axis: words, pixel; each stretch of the scale with a step of its own."""
    for piece in frame.axis.pieces:
        step = piece.step(apart_px)
        for minute in piece.marks(step, offset):
            if minute > piece.end_min - 0.45 * apart_px / piece.px_per_min and piece.end_min in frame.axis.breaks:
                continue  # it would stand in the first mark of the next stretch
            if what == "elapsed":
                text = "0" if minute < 0.5 else _weeks(minute) if step >= WEEK_MIN else wording.length(minute)
            elif step >= DAY_MIN:  # the clock says the same everywhere: count the days
                text = QCoreApplication.translate("Axis", "day {0}").format(int((minute + offset) // DAY_MIN) + 1)
            else:
                text = wording.clock(minute + offset, frame.system)
            yield text, piece.x(minute)


def _weeks(minute: float) -> str:
    return QCoreApplication.translate("Axis", "{0} wk").format(round(minute / WEEK_MIN))


def paint_breaks(painter: QPainter, frame: Frame) -> None:
    """Where the scale changes: the picture is cut through, and two strokes cross the axis."""
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    for minute in frame.axis.breaks:
        x, base = frame.axis.x(minute), frame.places.axis.top()
        cut = [frame.places.vat, *(vat for vat, _ in frame.places.lanes), *frame.places.panes.values()]
        for rect in (*cut, QRectF(x, base - 4, 0, 9)):
            painter.fillRect(QRectF(x - 3, rect.top(), 6, rect.height()), frame.colour("paper"))
        painter.setPen(QPen(frame.colour("soft"), 1.0))
        for side in (-3.0, 3.0):
            for rect in cut:
                painter.drawLine(QLineF(x + side, rect.top(), x + side, rect.bottom()))
            painter.drawLine(QLineF(x + side - 3, base + 6, x + side + 3, base - 5))


def paint_midnights(painter: QPainter, frame: Frame) -> None:
    """A dashed line with the word at each midnight in view, where a day is wide enough for one."""
    if frame.clock_start_min is None:
        return
    painter.setFont(frame.fonts.note)
    for piece in frame.axis.pieces:
        if DAY_MIN * piece.px_per_min >= NIGHT_PX:
            _midnights(painter, frame, piece)


def _midnights(painter: QPainter, frame: Frame, piece: TimeAxis) -> None:
    assert frame.clock_start_min is not None
    apart_px = DAY_MIN * piece.px_per_min
    for minute in piece.marks(DAY_MIN, frame.clock_start_min):
        if minute <= 0:
            continue
        x = round(piece.x(minute)) + 0.5
        painter.setPen(QPen(frame.colour("soft", 0.8), 1.0, Qt.PenStyle.DashLine))
        painter.drawLine(QLineF(x, frame.places.top, x, frame.places.bottom))
        painter.setPen(frame.colour("soft"))
        text = QCoreApplication.translate("Axis", "midnight")
        if x + 60 < piece.right and apart_px > 70:
            painter.drawText(QPointF(x + 4, frame.places.top + frame.fonts.note_metrics.ascent() + 1), text)


MAKE_SHARE: Final = 0.82
"""Of the strip, where ageing follows the make: weeks are pressed together, or the make would be a hair."""


def strip_x(frame: Frame, minute: float) -> float:
    """Pixel of the strip for a minute: the make to scale, what follows pressed together."""
    rect, make, whole = frame.places.strip, max(frame.make_min, 1.0), max(frame.axis.whole_min, 1.0)
    minute = min(max(minute, 0.0), whole)
    if whole <= 1.3 * make:
        return rect.left() + rect.width() * minute / whole
    if minute <= make:
        return rect.left() + rect.width() * MAKE_SHARE * minute / make
    return rect.left() + rect.width() * (MAKE_SHARE + (1.0 - MAKE_SHARE) * (minute - make) / (whole - make))


def strip_minute(frame: Frame, x: float) -> float:
    """The minute at a pixel of the strip."""
    rect, make, whole = frame.places.strip, max(frame.make_min, 1.0), max(frame.axis.whole_min, 1.0)
    share = min(max((x - rect.left()) / rect.width(), 0.0), 1.0)
    if whole <= 1.3 * make:
        return share * whole
    if share <= MAKE_SHARE:
        return share / MAKE_SHARE * make
    return make + (share - MAKE_SHARE) / (1.0 - MAKE_SHARE) * (whole - make)


def _strip_fill(frame: Frame, block: Block) -> str:
    """The name of the colour of a stage in the strip."""
    out = block.phase in OUT
    if block.id == frame.chosen:
        return "chosen_cheese" if out else "chosen_whey"
    if block.planned:
        return "to_come" if out else "to_run"
    return "cheese" if out else "whey"


def paint_strip(painter: QPainter, frame: Frame) -> None:
    """Make and ageing as a thin strip, and what part of it is in view."""
    rect, c = frame.places.strip, frame.colours
    painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)
    for block in frame.blocks:
        left, right = strip_x(frame, block.start_min), strip_x(frame, block.end_min)
        box = QRectF(left, rect.top() + 4, right - left, rect.height() - 8)
        painter.fillRect(box, QColor(c.of(_strip_fill(frame, block))))
        painter.fillRect(QRectF(box.right() - 1, box.top(), 1, box.height()), QColor(c.paper))
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    left, right = strip_x(frame, frame.axis.start_min), strip_x(frame, frame.axis.end_min)
    painter.setPen(QPen(QColor(c.accent), 1.4))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawRoundedRect(QRectF(left, rect.top() + 0.5, right - left, rect.height() - 1), 4, 4)
