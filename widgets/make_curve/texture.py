"""How curd looks: grains as large as it was cut, slabs when stacked, chips when milled. Tiles drawn once."""

from __future__ import annotations

import random
from functools import lru_cache

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QBrush, QColor, QPainter, QPen, QPixmap

from widgets.theme.colour import mix

TILE = 96


@lru_cache(maxsize=64)
def grains(ground: str, ink: str, size_px: int, ratio: float) -> QBrush:
    """Loose grains of about `size_px`, a little unlike each other, over `ground`."""
    made, painter = _tile(ground, ratio)
    dice = random.Random(size_px)
    painter.setPen(QPen(QColor(mix(ground, ink, 0.22)), 1.0))
    light = QColor(mix(ground, "#FFFFFF", 0.10))
    count = max(TILE // size_px, 1)
    pitch = TILE / count
    for row in range(count):
        for column in range(count):
            side = pitch * dice.uniform(0.66, 0.86)
            x = column * pitch + dice.uniform(0.0, pitch - side) + (pitch / 2 if row % 2 else 0.0)
            y = row * pitch + dice.uniform(0.0, pitch - side)
            painter.setBrush(light if dice.random() < 0.5 else Qt.BrushStyle.NoBrush)
            for shift in (0.0, -float(TILE)):
                painter.drawRoundedRect(QRectF(x + shift, y, side, side * dice.uniform(0.82, 1.0)), side / 3, side / 3)
    painter.end()
    return QBrush(made)


@lru_cache(maxsize=32)
def slabs(ground: str, ink: str, ratio: float) -> QBrush:
    """Stacked slabs: long courses, joints set off."""
    made, painter = _tile(ground, ratio)
    painter.setPen(QPen(QColor(mix(ground, ink, 0.20)), 1.0))
    for row in range(6):
        y = row * 16 + 0.5
        painter.drawLine(0, int(y), TILE, int(y))
        x = 24 if row % 2 else 72
        painter.drawLine(x, int(y), x, int(y) + 16)
    painter.end()
    return QBrush(made)


@lru_cache(maxsize=32)
def chips(ground: str, ink: str, ratio: float) -> QBrush:
    """Milled curd: fingers lying every way."""
    made, painter = _tile(ground, ratio)
    dice = random.Random(7)
    painter.setPen(QPen(QColor(mix(ground, ink, 0.22)), 1.0))
    painter.setBrush(QColor(mix(ground, "#FFFFFF", 0.08)))
    for row in range(6):
        for column in range(4):
            painter.save()
            painter.translate(column * 24 + 12 + (6 if row % 2 else 0), row * 16 + 8)
            painter.rotate(dice.choice((-35, -12, 14, 38)))
            painter.drawRoundedRect(QRectF(-8, -4, 16, 7.5), 2.5, 2.5)
            painter.restore()
    painter.end()
    return QBrush(made)


def _tile(ground: str, ratio: float) -> tuple[QPixmap, QPainter]:
    made = QPixmap(round(TILE * ratio), round(TILE * ratio))
    made.setDevicePixelRatio(ratio)
    made.fill(QColor(ground))
    painter = QPainter(made)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    return made, painter
