"""The panes under the vat: pH of whey and curd, curd moisture and whey run off; each curve with its band."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

import numpy as np
from PySide6.QtCore import QT_TRANSLATE_NOOP, QCoreApplication, QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPen

from designer.forecast import Forecast
from designer.language import number
from widgets.make_curve.frame import Frame, Scale
from widgets.make_curve.gates import Mark
from widgets.make_curve.lanes import dash
from widgets.make_curve.path import Array, between, polygon, stroke, thinned
from widgets.make_curve.vat import read_marks
from widgets.theme import apply as dress


@dataclass(frozen=True, slots=True)
class Curve:
    """One curve of a pane: trace column, palette name, dash, decimals, which axis it reads on."""

    column: str
    label: str
    colour: str
    dashed: bool
    unit: str
    right: bool = False
    vat_only: bool = False
    """drawn only while there is whey in the vat"""
    after_cut: bool = False
    """drawn only from the cut on"""
    short: str = ""
    """its label where there is no room for the other"""


@dataclass(frozen=True, slots=True)
class Pane:
    """One pane: its curves and its title."""

    key: str
    title: str
    unit: str
    curves: tuple[Curve, ...]


N = QT_TRANSLATE_NOOP
SAMPLE_PX, TITLE_GAP_PX, HEAD_GAP_PX = 26.0, 6.0, 22.0
"""Over a pane: the sample of a line and what parts it from its title, title from value, one curve from the next."""
RIGHT_PX = 40.0
"""The room to the right of a pane."""
PANES: Final[dict[str, Pane]] = {
    "ph": Pane(
        "ph",
        N("Pane", "pH"),
        "",
        (
            Curve("ph", N("Pane", "milk, then curd"), "ph", False, ""),
            Curve("ph_whey", N("Pane", "whey"), "ph_whey", True, "", vat_only=True),
        ),
    ),
    "moisture": Pane(
        "moisture",
        N("Pane", "curd moisture"),
        "%",
        (
            Curve("curd_moisture_pct", N("Pane", "curd moisture"), "moisture", False, "%"),
            Curve(
                "whey_kg_per_100kg",
                N("Pane", "whey run off, kg per 100 kg milk"),
                "whey_off",
                True,
                "kg",
                right=True,
                short=N("Pane", "whey, kg per 100 kg milk"),
            ),
        ),
    ),
    "firmness": Pane(
        "firmness",
        N("Pane", "firmness"),
        "Pa",
        (
            Curve("firmness_pa", N("Pane", "gel firmness"), "firmness", False, "Pa"),
            Curve("salt_pct", N("Pane", "salt"), "salt", True, "%", right=True),
        ),
    ),
}
DEFAULT_PANES: Final = ("ph", "moisture")


def scale_keys(pane: str) -> tuple[str, str]:
    """Keys of the left and right scale of a pane."""
    return pane, pane + ":right"


def ranges(lanes: Sequence[Forecast], marks: Sequence[Mark]) -> dict[str, tuple[float, float]]:
    """Low and high of every pane's scales over all lanes, gates included, rounded outwards so that small edits do not
    move them."""
    names = ("ph", "ph_whey", "curd_moisture_pct", "whey_kg_per_100kg", "firmness_pa", "salt_pct")
    trace = {name: np.concatenate([lane.trace[name] for lane in lanes]) for name in names}
    ends = [end for mark in marks if mark.curve in ("ph", "ph_whey") for end in (mark.row.low, mark.row.high) if end]
    ph = np.concatenate((trace["ph"], trace["ph_whey"], ends))
    moisture, whey = trace["curd_moisture_pct"], trace["whey_kg_per_100kg"]
    firmness, salt = trace["firmness_pa"], trace["salt_pct"]
    return {
        "ph": (float(np.floor(np.nanmin(ph) / 0.2 - 0.4) * 0.2), float(np.ceil(np.nanmax(ph) / 0.2 + 0.3) * 0.2)),
        "ph:right": (0.0, 1.0),
        "moisture": (float(np.floor(np.nanmin(moisture) / 10.0 - 0.3) * 10.0), 95.0),
        "moisture:right": (0.0, float(max(100.0, np.ceil(np.nanmax(whey) / 20.0 + 0.2) * 20.0))),
        "firmness": (0.0, float(max(60.0, np.ceil(np.nanmax(firmness) / 50.0 + 0.2) * 50.0))),
        "firmness:right": (0.0, float(max(2.0, np.ceil(np.nanmax(salt) + 0.5)))),
    }


def paint_ground(painter: QPainter, frame: Frame, pane: Pane) -> None:
    """What stays while something is dragged: the grid and its figures."""
    rect = frame.places.panes[pane.key]
    left, right = (frame.scales[key] for key in scale_keys(pane.key))
    painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)
    _grid(painter, frame, left, rect)
    if any(curve.right for curve in pane.curves):
        _right_marks(painter, frame, right, rect, pane)


def paint_pane(painter: QPainter, frame: Frame, pane: Pane, others: Sequence[Frame] = ()) -> None:
    """Stage lines, bands, the line before the last edit, curves; of other lanes thin ones, broken and named."""
    rect = frame.places.panes[pane.key]
    left, right = (frame.scales[key] for key in scale_keys(pane.key))
    painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)
    _stage_lines(painter, frame, rect)
    painter.save()
    painter.setClipRect(rect, Qt.ClipOperation.IntersectClip)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    trace = frame.forecast.trace
    x_all = frame.axis.xs(trace.time_min)
    pick = thinned(x_all, frame.edges, frame.left_px, rect.right())
    for curve in pane.curves:
        _band(painter, frame, curve, right if curve.right else left, x_all, pick)
    if frame.before is not None:
        for curve in pane.curves:
            _before(painter, frame, frame.before, curve, right if curve.right else left, rect)
    named = _others(painter, pane, left, others)
    for curve in reversed(pane.curves):
        kept = pick[_drawn(frame, frame.forecast, curve)[pick]]
        scale = right if curve.right else left
        _draw(painter, frame, curve, x_all[kept], scale.ys(trace[curve.column][kept]))
    _name_lanes(painter, named, rect)
    painter.restore()


Named = list[tuple[Frame, float, float]]
"""Lanes with the pixel at which their curve ends or leaves the view."""


def _others(painter: QPainter, pane: Pane, scale: Scale, others: Sequence[Frame]) -> Named:
    """The first curve of the pane in the lanes that are not looked at."""
    curve, rect = pane.curves[0], scale.rect
    named: Named = []
    for frame in others:
        trace, axis = frame.forecast.trace, frame.axis
        x = axis.xs(trace.time_min)
        pick = thinned(x, frame.edges, frame.left_px, rect.right(), 3.0)
        pick = pick[_drawn(frame, frame.forecast, curve)[pick]]
        if len(pick) < 2 or x[pick[0]] > rect.right() or x[pick[-1]] < rect.left():
            continue
        pen = QPen(frame.colour(curve.colour), 1.0, Qt.PenStyle.CustomDashLine, Qt.PenCapStyle.FlatCap)
        pen.setDashPattern(dash(frame.number))
        painter.setPen(pen)
        ys = scale.ys(trace[curve.column][pick])
        painter.drawPolyline(polygon(x[pick], ys))
        end = min(float(x[pick[-1]]), rect.right())
        named.append((frame, end, float(np.interp(end, x[pick], ys))))
    return named


def _name_lanes(painter: QPainter, named: Named, rect: QRectF) -> None:
    """Each lane's name at the end of its curve, above it or below, where nothing else stands."""
    taken: list[QRectF] = []
    for frame, x, y in named:
        wide, tall = dress.width(frame.name, "note"), frame.fonts.note_metrics.height()
        for top in (y - tall - 2, y + 2, y - 2 * tall, y + tall):
            box = QRectF(x - wide - 5, top, wide, tall)
            if rect.contains(box) and not any(box.intersects(other) for other in taken):
                taken.append(box)
                painter.fillRect(box.adjusted(-2, 1, 2, -1), frame.colour("paper", 0.8))
                painter.setFont(frame.fonts.note)
                painter.setPen(frame.colour("ink"))
                painter.drawText(box, Qt.AlignmentFlag.AlignCenter, frame.name)
                break


def _draw(painter: QPainter, frame: Frame, curve: Curve, x: Array, y: Array) -> None:
    """One curve. Wide pens are dear: a solid curve is filled as an area, a dashed one drawn thin and twice."""
    if not curve.dashed:
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(frame.colour(curve.colour))
        painter.drawPolygon(stroke(x, y, 2.2))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        return
    pen = QPen(
        frame.colour(curve.colour), 1.0, Qt.PenStyle.CustomDashLine, Qt.PenCapStyle.FlatCap, Qt.PenJoinStyle.BevelJoin
    )
    pen.setDashPattern([6.0, 4.0])
    painter.setPen(pen)
    for shift in (-0.45, 0.45):
        painter.drawPolyline(polygon(x, y + shift))


def beside_curd(forecast: Forecast) -> np.ndarray[tuple[int], np.dtype[np.bool_]]:
    """Where whey stands beside curd in the vat: before it there is but milk, after it the whey is off."""
    whey = forecast.trace["whey_in_vat_kg_per_100kg"]
    last = int(np.flatnonzero(whey > 0.5)[-1]) if np.any(whey > 0.5) else 0
    apart = np.abs(forecast.trace["ph_whey"] - forecast.trace["ph"]) > 1e-6
    first = int(np.argmax(apart)) if np.any(apart) else 0
    index = np.arange(len(whey))
    return (index >= first) & (index <= last)


def _drawn(frame: Frame, forecast: Forecast, curve: Curve) -> np.ndarray[tuple[int], np.dtype[np.bool_]]:
    """Where a curve says something."""
    key = (id(forecast), curve.column)
    known: np.ndarray[tuple[int], np.dtype[np.bool_]] | None = frame.memo.get(key)
    if known is not None:
        return known
    values = forecast.trace[curve.column]
    shown = np.isfinite(values)
    if curve.vat_only:
        shown = shown & beside_curd(forecast)
    frame.memo[key] = shown
    return shown


def _band(
    painter: QPainter,
    frame: Frame,
    curve: Curve,
    scale: Scale,
    x: Array,
    pick: np.ndarray[tuple[int], np.dtype[np.intp]],
) -> None:
    bands = frame.forecast.bands
    if bands is None or curve.column not in bands.low:
        return
    kept = pick[_drawn(frame, frame.forecast, curve)[pick]]
    if len(kept) < 2:
        return
    painter.setRenderHint(QPainter.RenderHint.Antialiasing, not (frame.moving or frame.passing))
    painter.setPen(Qt.PenStyle.NoPen)
    strength = 0.17 if not frame.colours.dark else 0.24
    painter.setBrush(frame.colour(curve.colour, strength * (0.5 if frame.bands_stale else 1.0)))
    painter.drawPolygon(
        between(x[kept], scale.ys(bands.low[curve.column][kept]), scale.ys(bands.high[curve.column][kept]))
    )
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)


def _before(painter: QPainter, frame: Frame, before: Forecast, curve: Curve, scale: Scale, rect: QRectF) -> None:
    trace = before.trace
    x = frame.axis.xs(trace.time_min)
    pick = thinned(x, np.zeros(len(x), dtype=bool), frame.left_px, rect.right(), 3.0)
    pick = pick[_drawn(frame, before, curve)[pick]]
    painter.setPen(QPen(frame.colour(curve.colour, 0.6), 1.0, Qt.PenStyle.DotLine))
    painter.drawPolyline(polygon(x[pick], scale.ys(trace[curve.column][pick])))


def _grid(painter: QPainter, frame: Frame, scale: Scale, rect: QRectF) -> None:
    painter.fillRect(rect, frame.colour("paper"))
    painter.setFont(frame.fonts.note)
    metrics = frame.fonts.note_metrics
    for value in read_marks(scale.low, scale.high, rect.height(), metrics.height()):
        y = scale.y(value)
        painter.setPen(QPen(frame.colour("grid"), 1.0))
        painter.drawLine(QLineF(rect.left(), round(y) + 0.5, rect.right(), round(y) + 0.5))
        if rect.top() + 2 <= y <= rect.bottom() - 2:
            painter.setPen(frame.colour("soft"))
            box = QRectF(0, y - 10, rect.left() - 8, 20)
            painter.drawText(box, Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter, number(value))
    painter.setPen(QPen(frame.colour("line"), 1.0))
    painter.drawLine(QLineF(rect.left(), rect.bottom() + 0.5, rect.right(), rect.bottom() + 0.5))


def _right_marks(painter: QPainter, frame: Frame, scale: Scale, rect: QRectF, pane: Pane) -> None:
    colour = next(curve.colour for curve in pane.curves if curve.right)
    painter.setPen(frame.colour(colour))
    painter.setFont(frame.fonts.note)
    for value in read_marks(scale.low, scale.high, rect.height(), frame.fonts.note_metrics.height()):
        y = scale.y(value)
        if rect.top() + 2 <= y <= rect.bottom() - 2:
            box = QRectF(rect.right() + 6, y - 10, RIGHT_PX, 20)
            painter.drawText(box, Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter, number(value))


def _stage_lines(painter: QPainter, frame: Frame, rect: QRectF) -> None:
    colour = frame.colour("line")
    for block in frame.blocks:
        x = round(frame.axis.x(block.end_min))
        if frame.left_px < x < rect.right():
            painter.fillRect(x, round(rect.top()), 1, round(rect.height()), colour)


def paint_head(painter: QPainter, frame: Frame, pane: Pane, minute: float | None) -> None:
    """The line over a pane: what each curve is (no minute), or only their values at the reading line."""
    metrics = frame.fonts.note_metrics
    base = frame.places.panes[pane.key].top() - 7
    for head in heads(frame, pane):
        x, curve = head.left, head.curve
        if minute is None:
            pen = QPen(frame.colour(curve.colour), 2.0, Qt.PenStyle.SolidLine)
            if curve.dashed:
                pen.setDashPattern([3.0, 2.0])
            painter.setPen(pen)
            y = base - metrics.xHeight() / 2
            painter.drawLine(QLineF(x, y, x + 20, y))
            painter.setFont(frame.fonts.note)
            painter.setPen(frame.colour("soft"))
            painter.drawText(QPointF(x + SAMPLE_PX, base), head.title)
        else:
            if head.value == x + SAMPLE_PX:  # in place of the title
                box = QRectF(head.value, base - metrics.ascent(), head.right - head.value, metrics.height())
                painter.fillRect(box, frame.colour("paper"))
            painter.setFont(frame.fonts.strong)
            painter.setPen(frame.colour("ink"))
            painter.drawText(QPointF(head.value, base), value_text(frame, curve, minute))


@dataclass(frozen=True, slots=True)
class Head:
    """What stands over a pane of one curve: where its line, its value and its room begin and end, and its title."""

    curve: Curve
    title: str
    left: float
    value: float
    right: float


def heads(frame: Frame, pane: Pane) -> list[Head]:
    """The heads of a pane from the left. Where they don't fit beside each other, a value stands in place of its title,
    and a title that is still too long is the shorter one."""
    rect = frame.places.panes[pane.key]
    end = rect.right() + RIGHT_PX
    wide = frame.fonts.note_metrics.horizontalAdvance
    titles = [_title(pane, curve.label) for curve in pane.curves]
    values = [frame.fonts.strong_metrics.horizontalAdvance(_widest(curve)) for curve in pane.curves]
    rooms = [wide(title) + TITLE_GAP_PX + value for title, value in zip(titles, values, strict=True)]
    apart = sum(rooms) + len(rooms) * (SAMPLE_PX + HEAD_GAP_PX) - HEAD_GAP_PX <= end - rect.left()
    made, x = [], rect.left()
    for curve, title, value, room in zip(pane.curves, titles, values, rooms, strict=True):
        start = x + SAMPLE_PX
        if not apart and curve.short and start + wide(title) > end:
            title = _title(pane, curve.short)
        right = start + (room if apart else max(wide(title), value))
        made.append(Head(curve, title, x, start + wide(title) + TITLE_GAP_PX if apart else start, right))
        x = right + HEAD_GAP_PX
    return made


def _title(pane: Pane, label: str) -> str:
    title = QCoreApplication.translate("Pane", label)
    return QCoreApplication.translate("Pane", "pH, {0}").format(title) if pane.key == "ph" else title


def _widest(curve: Curve) -> str:
    return "0.00  0.00\u20130.00" if curve.unit == "" else "00.0 kg  00.0\u201300.0"


def value_text(frame: Frame, curve: Curve, minute: float) -> str:
    """The value of a curve at a minute with its band, or a dash where it says nothing."""
    trace = frame.forecast.trace
    nearest = int(np.clip(np.searchsorted(trace.time_min, minute), 0, len(trace.time_min) - 1))
    if not bool(_drawn(frame, frame.forecast, curve)[nearest]):
        return "\u2013"
    decimals = 2 if curve.column.startswith("ph") or curve.column == "salt_pct" else 1
    text = number(trace.at(curve.column, minute), f".{decimals}f")
    if curve.unit:
        text += f" {curve.unit}"
    bands = frame.forecast.bands
    if bands is not None and curve.column in bands.low:
        low = float(np.interp(minute, trace.time_min, bands.low[curve.column]))
        high = float(np.interp(minute, trace.time_min, bands.high[curve.column]))
        if high - low > 10.0**-decimals:
            text += f"  {number(low, f'.{decimals}f')}–{number(high, f'.{decimals}f')}"
    return text
