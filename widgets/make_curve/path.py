"""Series of the forecast as Qt polygons, thinned to what the screen can show, written straight into Qt's memory."""

from __future__ import annotations

import numpy as np
import shiboken6
from numpy.typing import NDArray
from PySide6.QtGui import QPolygonF

Array = NDArray[np.float64]


def polygon(x: Array, y: Array) -> QPolygonF:
    """The points (x, y), each of shape (n,), as a polygon."""
    made = QPolygonF()
    count = len(x)
    if count == 0:
        return made
    made.resize(count)
    seen = np.frombuffer(shiboken6.VoidPtr(made.data(), count * 16, True), dtype=np.float64).reshape(count, 2)
    seen[:, 0] = x
    seen[:, 1] = y
    return made


def between(x: Array, low: Array, high: Array) -> QPolygonF:
    """The area between two series of y over one series of x."""
    return polygon(np.concatenate((x, x[::-1])), np.concatenate((low, high[::-1])))


def stroke(x: Array, y: Array, width: float) -> QPolygonF:
    """A line of some width as an area of its own: filled, it costs a third of what Qt's wide pens cost."""
    if len(x) < 2:
        return QPolygonF()
    dx, dy = np.diff(x), np.diff(y)
    along = np.maximum(np.hypot(dx, dy), 1e-6)
    nx, ny = -dy / along, dx / along
    ox, oy = np.empty_like(x), np.empty_like(y)
    ox[0], oy[0], ox[-1], oy[-1] = nx[0], ny[0], nx[-1], ny[-1]
    ox[1:-1], oy[1:-1] = nx[:-1] + nx[1:], ny[:-1] + ny[1:]
    size = np.maximum(np.hypot(ox, oy), 0.5)
    half = width / 2.0
    ox, oy = ox / size * half, oy / size * half
    return polygon(np.concatenate((x + ox, (x - ox)[::-1])), np.concatenate((y + oy, (y - oy)[::-1])))


def thinned(x: Array, edges: NDArray[np.bool_], left: float, right: float, apart_px: float = 2.0) -> NDArray[np.intp]:
    """Indices worth drawing between two pixels: about one in `apart_px`, every stage edge, one beyond each side."""
    first = max(int(np.searchsorted(x, left, side="left")) - 1, 0)
    last = min(int(np.searchsorted(x, right, side="right")) + 1, len(x))
    cell = np.floor(x[first:last] / apart_px)
    keep = edges[first:last].copy()
    keep[1:] |= cell[1:] != cell[:-1]
    if len(keep):
        keep[0] = keep[-1] = True
    return np.flatnonzero(keep) + first


def stage_edges(stage: NDArray[np.int32]) -> NDArray[np.bool_]:
    """True at the first and last point of every stage."""
    change = stage[1:] != stage[:-1]
    out = np.zeros(len(stage), dtype=bool)
    out[1:] |= change
    out[:-1] |= change
    return out
