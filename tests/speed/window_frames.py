"""How long a frame of the make curve takes: from the pointer's move to forecast, verdict and picture, by gesture."""

from __future__ import annotations

import statistics
import time
from collections.abc import Iterator

from PySide6.QtCore import QEvent, QPointF, Qt
from PySide6.QtGui import QMouseEvent
from PySide6.QtWidgets import QApplication

from tests.speed.clock import Timing
from widgets.make_curve.canvas import MakeCurve

FRAME_MS = 16.7


def _send(canvas: MakeCurve, kind: QEvent.Type, at: QPointF, held: bool) -> None:
    button = Qt.MouseButton.LeftButton
    buttons = button if held else Qt.MouseButton.NoButton
    cause = Qt.MouseButton.NoButton if kind == QEvent.Type.MouseMove else button
    event = QMouseEvent(kind, at, canvas.mapToGlobal(at), cause, buttons, Qt.KeyboardModifier.NoModifier)
    QApplication.sendEvent(canvas, event)


def drag(canvas: MakeCurve, name: str, start: QPointF, by: QPointF, frames: int = 120) -> Timing:
    """Drag from a point there and back; each frame is one move, the forecast, and the repaint."""
    took, cpu = [], []
    _send(canvas, QEvent.Type.MouseButtonPress, start, True)
    for index in range(frames):
        share = index / frames
        away = 2 * share if share < 0.5 else 2 * (1 - share)
        began, began_cpu = time.perf_counter(), time.thread_time()
        _send(canvas, QEvent.Type.MouseMove, start + by * away, True)
        QApplication.processEvents()
        cpu.append((time.thread_time() - began_cpu) * 1000)
        took.append((time.perf_counter() - began) * 1000)
    canvas.cancel()
    _send(canvas, QEvent.Type.MouseButtonRelease, start, False)
    QApplication.processEvents()
    note = f"of these {statistics.median(cpu):.1f} ms in the window's own thread"
    return Timing(name, tuple(took), FRAME_MS, note)


def measure(canvas: MakeCurve) -> Iterator[Timing]:
    """The gestures that matter, on a shown canvas of the example recipe."""
    stage = next(block.id for block in canvas.frame.blocks if block.kind == "cook")
    state = next((block.id for block in canvas.frame.blocks if block.state and block.kind != "set"), stage)
    yield drag(canvas, "drag a length", canvas.grip(stage, "end", "edge").at + QPointF(0, 8), QPointF(60, 0))
    yield drag(canvas, "drag a temperature", canvas.grip(stage, "temperature_c", "corner").at, QPointF(0, 30))
    yield drag(canvas, "drag a state end", canvas.grip(state, "end", "edge").at + QPointF(0, 8), QPointF(60, 0))
    took = []
    for index in range(80):
        began = time.perf_counter()
        canvas.zoom(0.97 if index < 40 else 1 / 0.97)
        canvas.repaint()
        took.append((time.perf_counter() - began) * 1000)
    yield Timing("zoom", tuple(took), FRAME_MS)
    took = []
    for index in range(80):
        began = time.perf_counter()
        _send(canvas, QEvent.Type.MouseMove, QPointF(100 + 8 * index, 400), False)
        canvas.repaint()
        took.append((time.perf_counter() - began) * 1000)
    yield Timing("reading line", tuple(took), FRAME_MS)
