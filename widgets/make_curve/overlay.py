"""What lies over the still picture: grips, the reading line with its values, the badge at the pointer."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QCoreApplication, QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPen, QPolygonF

from designer.language import number
from widgets import wording
from widgets.make_curve.curves import PANES, paint_head
from widgets.make_curve.frame import Block, Frame
from widgets.make_curve.grips import Grip, value_text
from widgets.theme import apply as dress


def paint_grips(painter: QPainter, frame: Frame, grips: Sequence[Grip], hot: Grip | None, focused: Grip | None) -> None:
    """Every grip, quiet; the one under the pointer or with the keyboard's focus, strong."""
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    for grip in grips:
        strong = (hot is not None and grip.key == hot.key and grip.place == hot.place) or (
            focused is not None and grip.key == focused.key and grip.place == focused.place
        )
        if grip.place == "edge":
            _edge(painter, frame, grip, strong)
        elif grip.place == "corner":
            _corner(painter, frame, grip, strong)
        else:
            _pill(painter, frame, grip, strong)
    if focused is not None:
        now = next((g for g in grips if g.key == focused.key and g.place == focused.place), None)
        if now is not None:
            painter.setPen(QPen(frame.colour("accent"), 2.0))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            box = (
                now.box.adjusted(-4, -4, 4, 4)
                if now.place == "inside"
                else QRectF(now.at.x() - 11, now.at.y() - 11, 22, 22)
            )
            painter.drawRoundedRect(box, 6, 6)


def _edge(painter: QPainter, frame: Frame, grip: Grip, strong: bool) -> None:
    block = frame.blocks[grip.index]
    x, y = grip.at.x(), grip.at.y()
    if strong:
        top = frame.temperature.y(block.end_c)
        painter.setPen(QPen(frame.colour("accent"), 2.0))
        painter.drawLine(QLineF(x, top, x, frame.places.ribbon.bottom()))
    painter.setPen(QPen(frame.colour("accent" if strong else "soft"), 1.2))
    painter.setBrush(frame.colour("accent") if strong else frame.colour("paper"))
    if block.state:
        _whisker(painter, frame, block, y, strong)
        painter.drawPolygon(QPolygonF([QPointF(x, y - 7), QPointF(x + 6, y), QPointF(x, y + 7), QPointF(x - 6, y)]))
    else:
        painter.drawRoundedRect(QRectF(x - 3, y - 7, 6, 14), 3, 3)


def _whisker(painter: QPainter, frame: Frame, block: Block, y: float, strong: bool) -> None:
    """How early and how late a state end may come."""
    early, late = frame.axis.x(block.low_min), frame.axis.x(block.high_min)
    left, right = max(early, frame.axis.left), min(late, frame.axis.right)
    if right - left < 3:
        return
    pen = painter.pen()
    painter.setPen(QPen(frame.colour("accent" if strong else "ink"), 1.4))
    painter.drawLine(QLineF(left, y, right, y))
    for x in (early, late):
        if frame.axis.left <= x <= frame.axis.right:
            painter.drawLine(QLineF(x, y - 4, x, y + 4))
    painter.setPen(pen)


def _corner(painter: QPainter, frame: Frame, grip: Grip, strong: bool) -> None:
    colour = frame.colour("temperature")
    if strong:
        painter.setPen(QPen(frame.colour("accent"), 2.0))
        painter.setBrush(frame.colour("accent"))
        painter.drawEllipse(grip.at, 6.5, 6.5)
    elif grip.set:
        painter.setPen(QPen(colour, 2.0))
        painter.setBrush(frame.colour("paper"))
        painter.drawEllipse(grip.at, 4.8, 4.8)
    else:
        painter.setPen(QPen(frame.colour("paper"), 1.0))
        painter.setBrush(colour)
        painter.drawEllipse(grip.at, 2.8, 2.8)


def _pill(painter: QPainter, frame: Frame, grip: Grip, strong: bool) -> None:
    block = frame.blocks[grip.index]
    left, right = (
        max(frame.axis.x(block.start_min), frame.axis.left),
        min(frame.axis.x(block.end_min), frame.axis.right),
    )
    middle = (left + right) / 2
    if right - left < grip.box.width():
        painter.setPen(QPen(frame.colour("accent" if strong else "rind"), 1.2))
        painter.drawLine(QLineF(middle, grip.box.center().y(), middle, frame.places.ribbon.top()))
    painter.setPen(QPen(frame.colour("accent" if strong else "rind"), 1.2))
    painter.setBrush(frame.colour("accent") if strong else frame.colour("paper"))
    painter.drawRoundedRect(grip.box, grip.box.height() / 2, grip.box.height() / 2)
    painter.setPen(frame.colour("accent_ink" if strong else "ink"))
    painter.setFont(frame.fonts.note)
    painter.drawText(grip.box, Qt.AlignmentFlag.AlignCenter, grip.text)


def paint_corner_words(painter: QPainter, frame: Frame, grips: Sequence[Grip]) -> None:
    """The temperature at the corners that are set, where it is another than the last written and there is room."""
    painter.setFont(frame.fonts.note)
    painter.setPen(frame.colour("temperature"))
    metrics = frame.fonts.note_metrics
    taken: list[QRectF] = list(frame.memo.get("heads", ()))
    written = ""
    for grip in grips:
        if grip.place != "corner" or not grip.set or grip.field not in ("temperature_c", "end"):
            continue
        text = value_text("temperature", grip.value, frame.system)
        wide = dress.width(text, "note")
        box = QRectF(grip.at.x() - wide / 2, grip.at.y() - metrics.height() - 7, wide, metrics.height())
        box.moveLeft(min(max(box.left(), frame.places.vat.left() + 2), frame.places.vat.right() - wide - 2))
        if text == written or any(box.adjusted(-3, 0, 3, 0).intersects(other) for other in taken):
            continue
        trace = frame.forecast.trace
        sides = (trace.at("temperature_c", frame.axis.minute(x)) for x in (box.left(), box.right()))
        if any(frame.temperature.y(side) < box.bottom() - 2 for side in sides):
            continue  # the line itself runs there
        taken.append(box)
        written = text
        painter.drawText(box, Qt.AlignmentFlag.AlignCenter, text)


def paint_reading(painter: QPainter, frame: Frame, read: Frame, minute: float | None) -> None:
    """The reading line through all panes, and in each pane's head line every value there, of the lane `read`."""
    if minute is None:
        return
    for key in frame.places.panes:
        paint_head(painter, read, PANES[key], minute)
    _vat_head(painter, frame, read, minute)
    x = frame.axis.x(minute)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)
    painter.setPen(QPen(frame.colour("ink", 0.75), 1.0))
    painter.drawLine(QLineF(round(x) + 0.5, frame.places.top - 4, round(x) + 0.5, frame.places.bottom))
    text = frame.clock_text(minute)
    if frame.clock_start_min is not None:
        text = QCoreApplication.translate("Reading", "{0}  ·  {1}").format(text, wording.length(minute))
    metrics = frame.fonts.note_metrics
    wide = metrics.horizontalAdvance(text) + 14
    box = QRectF(
        min(max(x - wide / 2, 2.0), frame.axis.right + 44 - wide), frame.places.bottom + 2, wide, metrics.height() + 4
    )
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(frame.colour("ink"))
    painter.drawRoundedRect(box, 4, 4)
    painter.setPen(frame.colour("paper"))
    painter.setFont(frame.fonts.note)
    painter.drawText(box, Qt.AlignmentFlag.AlignCenter, text)


def paint_heads(painter: QPainter, frame: Frame) -> None:
    """The lines over the panes: what is drawn."""
    for key in frame.places.panes:
        paint_head(painter, frame, PANES[key], None)
    _vat_head(painter, frame, frame, None)


def block_at(frame: Frame, minute: float) -> Block | None:
    """The stage that runs at a minute."""
    return next((block for block in frame.blocks if block.start_min <= minute < block.end_min), None)


def _vat_head(painter: QPainter, frame: Frame, read: Frame, minute: float | None) -> None:
    """The line over the vat: temperature and what is in it, of the lane `read`."""
    tr = QCoreApplication.translate
    rect = frame.places.vat
    base = rect.top() - 8
    metrics = frame.fonts.note_metrics
    x = rect.left() + 26
    title = tr("Reading", "temperature, {0}").format(wording.temperature(frame.system).unit)
    words: list[tuple[str, bool]] = []
    if minute is None:
        painter.setPen(QPen(frame.colour("temperature"), 2.0))
        y = base - metrics.xHeight() / 2
        painter.drawLine(QLineF(rect.left(), y, rect.left() + 20, y))
        words.append((title, False))
    else:
        x += metrics.horizontalAdvance(title) + 16
        trace = read.forecast.trace
        block = block_at(read, minute)
        if read.lane is not None:
            words.append((read.name, True))
        curd, whey = trace.at("curd_kg_per_100kg", minute), trace.at("whey_in_vat_kg_per_100kg", minute)
        off = trace.at("whey_kg_per_100kg", minute)
        words.append((wording.figure("temperature_c", trace.at("temperature_c", minute), frame.system), True))
        if block is not None:
            words.append((block.name, True))
        content = tr("Reading", "of 100 kg milk:  curd {0}  ·  whey in the vat {1}  ·  run off {2}")
        words.append((content.format(number(curd, ".1f"), number(whey, ".1f"), number(off, ".1f")), False))
    for text, strong in words:
        used = frame.fonts.strong_metrics if strong else metrics
        if x + used.horizontalAdvance(text) > rect.right() + 40:
            break
        painter.setFont(frame.fonts.strong if strong else frame.fonts.note)
        painter.setPen(frame.colour("ink" if strong else "soft"))
        painter.drawText(QPointF(x, base), text)
        x += used.horizontalAdvance(text) + 16


def paint_badge(painter: QPainter, frame: Frame, at: QPointF, value: str, note: str, why: str, width: float) -> None:
    """Value and unit at the pointer while something moves, what it is, and why it stops."""
    lines = [(value, frame.fonts.strong, frame.fonts.strong_metrics)]
    lines += [(text, frame.fonts.note, frame.fonts.note_metrics) for text in (note, why) if text]
    wide = max(metrics.horizontalAdvance(text) for text, _, metrics in lines) + 20
    tall = sum(metrics.height() for _, _, metrics in lines) + 12
    left = at.x() + 16 if at.x() + 16 + wide < width - 4 else at.x() - 16 - wide
    box = QRectF(max(left, 4.0), max(at.y() - tall - 14, 4.0), wide, tall)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(frame.colour("ink", 0.95))
    painter.drawRoundedRect(box, 6, 6)
    y = box.top() + 6
    for index, (text, font, metrics) in enumerate(lines):
        painter.setFont(font)
        painter.setPen(frame.colour("paper", 1.0 if index == 0 else 0.9))
        painter.drawText(QPointF(box.left() + 10, y + metrics.ascent()), text)
        y += metrics.height()


def paint_ring(painter: QPainter, frame: Frame, rect: QRectF) -> None:
    """The keyboard is on the picture itself."""
    painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)
    painter.setPen(QPen(frame.colour("accent"), 2.0))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawRect(rect.adjusted(1, 1, -1, -1))
