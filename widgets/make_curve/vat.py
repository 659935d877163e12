"""The vat through time: the area under the temperature line, filled to scale with milk, gel, curd, whey and cheese.

The height of the area at any moment stands for 100 kg of milk (or for all that is in the vat, where wash water
makes it more). Once the curd is out of the whey it is drawn enlarged, by a whole number that is written beside it.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import QCoreApplication, QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QBrush, QColor, QLinearGradient, QPainter, QPen

from designer.forecast import Forecast
from designer.language import number
from widgets import wording
from widgets.make_curve import texture
from widgets.make_curve.frame import OUT, Block, Frame, Scale, lane_phases
from widgets.make_curve.path import Array, between, polygon, stroke, thinned
from widgets.theme import apply as dress
from widgets.theme.palette import VAT_WORDS


def temperature_scale(rect: QRectF, lows: float, highs: float, head_px: float = 0.0) -> Scale:
    """A scale from well below the coldest to a little above the warmest, so that the vat always has a body.

    `head_px` is kept free above the warmest.
    """
    spread = max(highs - lows, 12.0)
    low = max(lows - 0.55 * spread, min(0.0, lows - 4.0))
    body = max(rect.height() - head_px, 1.0)
    return Scale(rect, low, max(highs + 0.13 * spread, low + (highs - low) * rect.height() / body))


@dataclass(frozen=True, slots=True)
class Content:
    """What is in the vat at each point of the trace, as shares of the area's height, each shape (n,)."""

    curd: NDArray[np.float64]
    """top of milk, gel, curd or cheese"""
    whey: NDArray[np.float64]
    """top of the whey that stands over it"""
    bare: NDArray[np.bool_]
    """where it is drawn so"""


LARGER = (1, 2, 3, 4, 5, 6, 8, 10, 12, 15, 20)
"""How many times as large curd may be drawn."""


def weights(forecast: Forecast) -> NDArray[np.float64]:
    """Kilograms of the first milk behind a kilogram of the lane, at each point of its trace, shape (n,).

    The main make gets lighter where curd or cream leaves it; whey that leaves counts as run off already.
    """
    trace = forecast.trace
    if forecast.branch_id is not None:
        return np.full(len(trace.time_min), forecast.weight)
    out = np.ones(len(trace.time_min))
    index = {stage.id: at for at, stage in enumerate(forecast.recipe.stages)}
    for branch, own in zip(forecast.recipe.branches, forecast.branches, strict=True):
        if branch.of != "whey":
            out[trace.stage > index[branch.after]] -= own.weight
    return out


def enlargement(forecast: Forecast, full_kg: float = 100.0) -> int:
    """How many times as large the curd can be drawn once it is out of the whey."""
    bare = _bare(forecast)
    if not np.any(bare):
        return 1
    most = float(np.max((forecast.trace["curd_kg_per_100kg"] * weights(forecast))[bare])) / full_kg * 100.0
    return max((times for times in LARGER if times * most <= 62.0), default=1)


def _bare(forecast: Forecast) -> NDArray[np.bool_]:
    """Where in the trace the curd is out of the vat, shape (n,)."""
    out = np.array([phase in OUT for phase in lane_phases(forecast)])
    return np.asarray(out[forecast.trace.stage])


def fullest_kg(forecast: Forecast) -> float:
    """The most that is ever in the vat [kg per 100 kg milk]: more than 100 where wash water comes on top."""
    inside = ~_bare(forecast)
    held = forecast.trace["curd_kg_per_100kg"] + forecast.trace["whey_in_vat_kg_per_100kg"]
    return max(100.0, float(np.max((held * weights(forecast))[inside]))) if np.any(inside) else 100.0


def content(forecast: Forecast, enlarged: int, full_kg: float) -> Content:
    """The vat's content to scale, of the first milk, the curd `enlarged` once out of the whey."""
    trace = forecast.trace
    bare = _bare(forecast)
    times = np.where(bare, enlarged, 1) * weights(forecast) / full_kg
    share = np.clip(trace["curd_kg_per_100kg"] * times, 0.0, 1.0)
    return Content(share, np.clip(share + trace["whey_in_vat_kg_per_100kg"] * times, 0.0, 1.0), bare)


def _content(frame: Frame) -> Content:
    """The content of a frame, worked out once."""
    known: Content | None = frame.memo.get("content")
    if known is None:
        known = frame.memo["content"] = content(frame.forecast, frame.enlarged, frame.full_kg)
    return known


def brush_of(frame: Frame, block: Block) -> QBrush:
    """How the curd of a stage is filled."""
    c, ratio = frame.colours, frame.pixel_ratio
    if block.phase in ("milk", "cream"):
        return QBrush(dress.ink(c.milk))
    if block.phase == "drawn":
        return QBrush(dress.ink(c.whey))
    if block.phase == "gel":
        gel = QLinearGradient(QPointF(frame.axis.x(block.start_min), 0), QPointF(frame.axis.x(block.end_min), 0))
        floc = frame.forecast.outcomes.get("floc_min")
        share = 0.4 if floc is None or block.length_min <= 0 else min(max(floc.value / block.length_min, 0.05), 0.95)
        gel.setColorAt(0.0, QColor(c.milk))
        gel.setColorAt(max(share - 0.05, 0.0), QColor(c.milk))
        gel.setColorAt(min(share + 0.05, 1.0), QColor(c.gel))
        gel.setColorAt(1.0, QColor(c.of("set_gel")))
        return QBrush(gel)
    if block.phase == "whey":
        size = int(min(max(block.grain_mm * 0.7, 5.0), 16.0))
        return texture.grains(c.curd, c.rind, size, ratio)
    if block.phase == "bare":
        tile = texture.chips if block.kind in ("mill", "salt") else texture.slabs
        return tile(c.curd_dry, c.rind, ratio)
    return QBrush(dress.ink(c.cheese))


def paint_vat(painter: QPainter, frame: Frame) -> None:
    """Fill the vat, draw what bounds it and the temperature line."""
    rect, axis = frame.places.vat, frame.axis
    painter.save()
    painter.setClipRect(rect.adjusted(-1, -4, 1, 0), Qt.ClipOperation.IntersectClip)
    trace = frame.forecast.trace
    x_all = axis.xs(trace.time_min)
    pick = thinned(x_all, frame.edges, frame.left_px, rect.right())
    held = _content(frame)
    x = x_all[pick]
    top = frame.temperature.ys(trace["temperature_c"][pick])
    floor = rect.bottom()
    curd = floor - (floor - top) * held.curd[pick]
    whey = floor - (floor - top) * held.whey[pick]
    stage = trace.stage[pick]
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)
    painter.setBrush(frame.colour("gone"))
    painter.drawPolygon(between(x, top, np.full_like(x, floor)))
    painter.setBrush(frame.colour("whey"))
    for run in _runs(whey < curd - 0.25):
        painter.drawPolygon(between(x[run], whey[run], np.full_like(x[run], floor)))
    painter.setBrushOrigin(round(axis.x(0.0)), round(floor))  # whole pixels: tiles are copied, not resampled
    bounds = np.searchsorted(stage, np.arange(len(frame.blocks) + 1)).tolist()
    for block, first, last in zip(frame.blocks, bounds, bounds[1:], strict=False):
        if last - first > 1:
            painter.setBrush(brush_of(frame, block))
            painter.drawPolygon(between(x[first:last], curd[first:last], np.full(last - first, floor)))
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    _surfaces(painter, frame, x, curd, whey, stage)
    _planned(painter, frame, held)
    _edges(painter, frame)
    _enlarged(painter, frame, held)
    if frame.before is not None:
        paint_before(painter, frame)
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(frame.colour("temperature"))
    painter.drawPolygon(stroke(x, top, 2.2))
    painter.restore()


def _planned(painter: QPainter, frame: Frame, held: Content) -> None:
    """Stages after the make, paler: the cheese as it went into its room, and the room's own temperature."""
    rect, trace = frame.places.vat, frame.forecast.trace
    came = float(trace.time_min[-1])
    for block in frame.blocks:
        left, right = frame.axis.x(max(block.start_min, came)), frame.axis.x(block.end_min)
        left, right = max(left, frame.left_px), min(right, rect.right())
        if not block.planned or right <= left:
            continue
        top = frame.temperature.y(block.end_c)
        level = rect.bottom() - (rect.bottom() - top) * float(held.curd[-1])
        painter.fillRect(QRectF(left, top, right - left, rect.bottom() - top), frame.colour("gone", 0.5))
        painter.fillRect(QRectF(left, level, right - left, rect.bottom() - level), frame.colour("cheese", 0.45))
        painter.setPen(QPen(frame.colour("temperature"), 1.4, Qt.PenStyle.DashLine))
        painter.drawLine(QLineF(left, top, right, top))


def _surfaces(painter: QPainter, frame: Frame, x: Array, curd: Array, whey: Array, stage: NDArray[np.int32]) -> None:
    """The line where curd meets whey, and the rind of what is out of the vat."""
    c = frame.colours
    held = [block.phase for block in frame.blocks]
    held += [held[-1]] * (int(stage[-1]) + 1 - len(held))
    standing = np.array([phase == "whey" for phase in held])[stage]
    out = np.array([phase in OUT for phase in held])[stage]
    for inside, colour, width in ((standing, c.of("curd_edge"), 1.0), (out, c.rind, 1.6)):
        painter.setPen(line(dress.ink(colour), width))
        for run in _runs(inside):
            painter.drawPolyline(polygon(x[run], curd[run]))
    painter.setPen(QPen(dress.ink(c.of("whey_edge")), 1.0))
    for run in _runs(standing & (whey < curd - 1.0)):
        painter.drawPolyline(polygon(x[run], whey[run]))


def _runs(mask: NDArray[np.bool_]) -> list[slice]:
    """Unbroken stretches of True longer than one point."""
    bounds = np.flatnonzero(np.diff(np.concatenate(([0], mask.view(np.int8), [0]))))
    return [slice(int(a), int(b)) for a, b in zip(bounds[::2], bounds[1::2], strict=True) if b - a > 1]


def _edges(painter: QPainter, frame: Frame) -> None:
    """A thin light line at each stage end, from the temperature line to the floor."""
    floor = round(frame.places.vat.bottom())
    colour = frame.colour("paper", 0.8 if not frame.colours.dark else 0.5)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)  # whole pixels: the same, and quicker
    for block in frame.blocks[:-1]:
        if frame.left_px < frame.axis.x(block.end_min) < frame.axis.right:
            top = round(frame.temperature.y(block.end_c)) + 1
            painter.fillRect(round(frame.axis.x(block.end_min)), top, 1, floor - top, colour)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)


def _enlarged(painter: QPainter, frame: Frame, held: Content) -> None:
    """Say from where on, and how much, the curd is drawn enlarged, where the words have room under the line."""
    if frame.enlarged <= 1 or not bool(np.any(held.bare)):
        return
    trace, rect = frame.forecast.trace, frame.places.vat
    first = int(np.argmax(held.bare))
    x = frame.axis.x(float(trace.time_min[first])) + 7
    if not rect.left() <= x <= rect.right() - 20:
        return
    body = rect.bottom() - frame.temperature.y(float(trace["temperature_c"][first]))
    level = rect.bottom() - body * float(held.curd[first])
    metrics = frame.fonts.note_metrics
    for text in (
        QCoreApplication.translate("Vat", "drawn {0} times as large from here").format(frame.enlarged),
        f"\u00d7 {frame.enlarged}",
    ):
        right = x + metrics.horizontalAdvance(text)
        words = QRectF(x, level - 7 - metrics.ascent(), right - x, metrics.height())
        if any(pill.intersects(words) for pill in frame.memo.get("pills", ())):
            continue
        line_there = frame.temperature.y(trace.at("temperature_c", frame.axis.minute(right)))
        if right < rect.right() - 4 and line_there < level - 7 - metrics.ascent():
            painter.setFont(frame.fonts.note)
            painter.setPen(frame.colour("soft"))
            painter.drawText(QPointF(x, level - 7), text)
            return


def paint_scale(painter: QPainter, frame: Frame) -> None:
    """Temperature marks at the left, faint lines behind the vat."""
    rect, scale = frame.places.vat, frame.temperature
    display = wording.temperature(frame.system)
    painter.setFont(frame.fonts.note)
    metrics = frame.fonts.note_metrics
    for shown in read_marks(display.shown(scale.low), display.shown(scale.high), rect.height(), metrics.height()):
        y = scale.y(display.base(shown))
        painter.setPen(QPen(frame.colour("grid"), 1.0))
        painter.drawLine(QLineF(rect.left(), round(y) + 0.5, rect.right(), round(y) + 0.5))
        painter.setPen(frame.colour("soft"))
        box = QRectF(0, y - 10, rect.left() - 8, 20)
        painter.drawText(box, Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter, number(shown))


def nice_marks(low: float, high: float, height_px: float, apart_px: float) -> list[float]:
    """Round values between two, at least `apart_px` apart over `height_px`."""
    if high <= low or height_px <= 0:
        return []
    wanted = (high - low) * apart_px / height_px
    power = 10.0 ** np.floor(np.log10(wanted))
    step = float(next((power * m for m in (1, 2, 5) if power * m >= wanted), power * 10))
    first = np.ceil(low / step - 1e-9)
    count = int(np.floor(high / step + 1e-9) - first) + 1
    return [round(float((first + i) * step), 6) for i in range(count)]


def read_marks(low: float, high: float, height_px: float, line_px: float) -> list[float]:
    """Round values to be told along a scale in lines of `line_px`: two of them where they can be, since from one alone
    no scale is read."""
    found: list[float] = []
    for lines in (1.7, 1.2, 0.8):
        found = nice_marks(low, high, height_px, lines * line_px)
        if len(found) > 1:
            break
    return found


def paint_before(painter: QPainter, frame: Frame) -> None:
    """The temperature line as it was before the last edit, thin."""
    assert frame.before is not None
    trace = frame.before.trace
    x = frame.axis.xs(trace.time_min)
    pick = thinned(x, np.zeros(len(x), dtype=bool), frame.left_px, frame.places.vat.right(), 3.0)
    painter.setPen(QPen(frame.colour("temperature", 0.55), 1.0, Qt.PenStyle.DotLine))
    painter.drawPolyline(polygon(x[pick], frame.temperature.ys(trace["temperature_c"][pick])))
    painter.setBrush(Qt.BrushStyle.NoBrush)


def content_words(painter: QPainter, frame: Frame, taken: list[QRectF], owners: dict[str, str]) -> dict[str, str]:
    """Name what fills the vat once, where there is most room for the word and nothing else stands.

    Gives back in which stage each word stands; while something is dragged they stay in their `owners`.
    """
    held = _content(frame)
    trace, rect = frame.forecast.trace, frame.places.vat
    painter.setFont(frame.fonts.note)
    painter.setPen(frame.colour("vat_ink", VAT_WORDS))
    metrics = frame.fonts.note_metrics
    seen: dict[str, str] = {}
    for block in sorted(frame.blocks, key=lambda b: -b.length_min):
        left, right = max(frame.axis.x(block.start_min), rect.left()), min(frame.axis.x(block.end_min), rect.right())
        if right - left < 30 or right < frame.left_px:
            continue
        middle = frame.axis.minute((left + right) / 2)
        body = rect.bottom() - frame.temperature.y(trace.at("temperature_c", middle))
        curd = body * float(np.interp(middle, trace.time_min, held.curd))
        whey = body * float(np.interp(middle, trace.time_min, held.whey)) - curd
        for word, height, base in _words_of(block.phase, curd, whey):
            wide = dress.width(word, "note")
            if frame.moving and owners.get(word) != block.id:
                continue
            if word in seen or height < metrics.height() * 1.5 or wide + 12 > right - left:
                continue
            y = rect.bottom() - base - height / 2 + metrics.ascent() / 2 - 1
            box = QRectF((left + right - wide) / 2, y - metrics.ascent(), wide, metrics.height())
            under = next((other for other in taken if other.adjusted(-4, -3, 4, 3).intersects(box)), None)
            if under is not None:
                box.moveTop(under.bottom() + 4)
            if box.bottom() <= rect.bottom() - base - 2 and not any(other.intersects(box) for other in taken):
                seen[word] = block.id
                painter.drawText(QPointF(box.left(), box.top() + metrics.ascent()), word)
    return owners if frame.moving else seen


def _words_of(phase: str, curd: float, whey: float) -> list[tuple[str, float, float]]:
    """(word, height in pixels of what it names, height below it) for what is in the vat."""
    tr = QCoreApplication.translate
    if phase == "whey":
        return [(tr("Vat", "curd"), curd, 0.0), (tr("Vat", "whey"), whey, curd)]
    word = {
        "milk": tr("Vat", "milk"),
        "cream": tr("Vat", "cream"),
        "drawn": tr("Vat", "whey"),
        "gel": tr("Vat", "gel"),
        "bare": tr("Vat", "drained curd"),
        "cheese": tr("Vat", "cheese"),
    }[phase]
    return [(word, curd, 0.0)]


def line(colour: QColor, width: float) -> QPen:
    """A pen for long lines: flat ends and bevelled joins, the quickest Qt draws."""
    return QPen(colour, width, Qt.PenStyle.SolidLine, Qt.PenCapStyle.FlatCap, Qt.PenJoinStyle.BevelJoin)


def level_y(frame: Frame, minute: float) -> float:
    """Pixel of the top of what is in the vat just after a minute."""
    held = _content(frame)
    index = min(int(np.searchsorted(frame.forecast.trace.time_min, minute, side="right")), len(held.whey) - 1)
    top = frame.temperature.y(float(frame.forecast.trace["temperature_c"][index]))
    floor = frame.places.vat.bottom()
    return float(floor - (floor - top) * held.whey[index])
