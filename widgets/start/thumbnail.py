"""A make as a small picture: the vat's content through its day under the temperature line, without words."""

from __future__ import annotations

import numpy as np
from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QPainter

from designer.forecast import Forecast
from widgets.make_curve.frame import Block, blocks, make_day_end
from widgets.make_curve.path import between, stroke
from widgets.make_curve.vat import content, enlargement, fullest_kg, temperature_scale
from widgets.theme import apply as dress
from widgets.theme.palette import Colours


def paint_make(painter: QPainter, rect: QRectF, forecast: Forecast) -> None:
    """Draw the make day of a forecast into a rectangle, to the same scale as the make curve draws it."""
    c = dress.colours()
    trace = forecast.trace
    shown = blocks(forecast, "metric")
    end_min = max(make_day_end(shown), 1.0)
    pick = np.flatnonzero(trace.time_min <= end_min)
    x = rect.left() + trace.time_min[pick] * (rect.width() / end_min)
    warm = trace["temperature_c"][pick]
    top = temperature_scale(rect, float(np.min(warm)), float(np.max(warm))).ys(warm)
    held = content(forecast, enlargement(forecast), fullest_kg(forecast))
    floor = rect.bottom()
    curd = floor - (floor - top) * held.curd[pick]
    whey = floor - (floor - top) * held.whey[pick]
    painter.save()
    painter.setClipRect(rect, Qt.ClipOperation.IntersectClip)
    painter.setPen(Qt.PenStyle.NoPen)
    for level, colour in ((top, c.gone), (whey, c.whey)):
        painter.setBrush(dress.ink(colour))
        painter.drawPolygon(between(x, level, np.full_like(x, floor)))
    stage = trace.stage[pick]
    for block in shown:
        own = np.flatnonzero(stage == block.index)
        if len(own) > 1:
            painter.setBrush(dress.ink(_fill(c, block)))
            painter.drawPolygon(between(x[own], curd[own], np.full(len(own), floor)))
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setBrush(dress.ink(c.temperature))
    painter.drawPolygon(stroke(x, top, 1.8))
    painter.restore()


def _fill(c: Colours, block: Block) -> str:
    return {"milk": c.milk, "gel": c.gel, "whey": c.curd, "bare": c.curd_dry}.get(block.phase, c.cheese)
