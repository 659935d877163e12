"""How long a frame of the make curve takes: event to painted while something is dragged, p50 and p95; printed only.

Run as `QT_QPA_PLATFORM=offscreen python -m tests.speed.window_frames`.
"""

from __future__ import annotations

import statistics
import time
from dataclasses import dataclass

from PySide6.QtCore import QEvent, QPointF, Qt
from PySide6.QtGui import QMouseEvent
from PySide6.QtWidgets import QApplication

from widgets.make_curve.canvas import MakeCurve

SIZE = (980, 640)
"""The canvas in a window of 1366 by 768."""


@dataclass(frozen=True, slots=True)
class Frames:
    """Milliseconds of each frame of a gesture."""

    name: str
    ms: tuple[float, ...]
    cpu_ms: tuple[float, ...] = ()
    """time of the window's own thread, without what the machine does beside it"""

    @property
    def p50(self) -> float:
        """Median."""
        return statistics.median(self.ms)

    @property
    def p95(self) -> float:
        """95th percentile."""
        return sorted(self.ms)[int(0.95 * (len(self.ms) - 1))]

    def line(self) -> str:
        """One line for the report."""
        cpu = f"cpu p50 {statistics.median(self.cpu_ms):6.2f} ms" if self.cpu_ms else ""
        return f"{self.name:22} p50 {self.p50:6.2f} ms  p95 {self.p95:6.2f} ms  {cpu}  ({len(self.ms)} frames)"


def _send(canvas: MakeCurve, kind: QEvent.Type, at: QPointF, held: bool) -> None:
    button = Qt.MouseButton.LeftButton
    buttons = button if held else Qt.MouseButton.NoButton
    cause = Qt.MouseButton.NoButton if kind == QEvent.Type.MouseMove else button
    event = QMouseEvent(kind, at, canvas.mapToGlobal(at), cause, buttons, Qt.KeyboardModifier.NoModifier)
    QApplication.sendEvent(canvas, event)


def drag(canvas: MakeCurve, name: str, start: QPointF, by: QPointF, frames: int = 120) -> Frames:
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
    return Frames(name, tuple(took), tuple(cpu))


def measure(canvas: MakeCurve) -> list[Frames]:
    """The gestures that matter, on a shown canvas of the example recipe."""
    stage = next(block.id for block in canvas.frame.blocks if block.kind == "cook")
    state = next((block.id for block in canvas.frame.blocks if block.state and block.kind != "set"), stage)
    out = [
        drag(canvas, "drag a length", canvas.grip(stage, "end", "edge").at + QPointF(0, 8), QPointF(60, 0)),
        drag(canvas, "drag a temperature", canvas.grip(stage, "temperature_c", "corner").at, QPointF(0, 30)),
        drag(canvas, "drag a state end", canvas.grip(state, "end", "edge").at + QPointF(0, 8), QPointF(60, 0)),
    ]
    took = []
    for index in range(80):
        began = time.perf_counter()
        canvas.zoom(0.97 if index < 40 else 1 / 0.97)
        canvas.repaint()
        took.append((time.perf_counter() - began) * 1000)
    out.append(Frames("zoom", tuple(took)))
    took = []
    for index in range(80):
        began = time.perf_counter()
        _send(canvas, QEvent.Type.MouseMove, QPointF(100 + 8 * index, 400), False)
        canvas.repaint()
        took.append((time.perf_counter() - began) * 1000)
    out.append(Frames("reading line", tuple(took)))
    return out
