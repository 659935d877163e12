"""How long a frame of the make curve takes: from the event to forecast, verdict and picture, by gesture."""

from __future__ import annotations

import statistics
import time
from collections.abc import Callable, Iterator

from PySide6.QtCore import QEvent, QPoint, QPointF, Qt
from PySide6.QtGui import QMouseEvent, QWheelEvent
from PySide6.QtWidgets import QApplication, QWidget

from tests.speed.clock import Timing
from widgets.make_curve.canvas import MakeCurve
from widgets.outcomes.lever_list import LeverList

FRAME_MS = 16.7
NONE = Qt.KeyboardModifier.NoModifier


def send(widget: QWidget, kind: QEvent.Type, at: QPointF, held: bool) -> None:
    """One event of a mouse."""
    button = Qt.MouseButton.LeftButton
    buttons = button if held else Qt.MouseButton.NoButton
    cause = Qt.MouseButton.NoButton if kind == QEvent.Type.MouseMove else button
    QApplication.sendEvent(widget, QMouseEvent(kind, at, widget.mapToGlobal(at), cause, buttons, NONE))


def turn(widget: QWidget, at: QPointF, eighths: int) -> None:
    """Turn the wheel by eighths of a degree."""
    wheel = QWheelEvent(
        at, widget.mapToGlobal(at), QPoint(), QPoint(0, eighths), Qt.MouseButton.NoButton, NONE,
        Qt.ScrollPhase.NoScrollPhase, False,
    )  # fmt: skip
    QApplication.sendEvent(widget, wheel)


def frames(name: str, act: Callable[[int], object], count: int) -> Timing:
    """`act` of 0..count-1, each an event and then all it leads to, up to the last of the painting."""
    took, cpu = [], []
    for index in range(count):
        began, began_cpu = time.perf_counter(), time.thread_time()
        act(index)
        QApplication.processEvents()
        cpu.append((time.thread_time() - began_cpu) * 1000)
        took.append((time.perf_counter() - began) * 1000)
    own = sorted(cpu)
    note = f"in the window's own thread {statistics.median(own):.1f} ms, p95 {own[int(0.95 * len(own))]:.1f} ms"
    return Timing(name, tuple(took), FRAME_MS, note)


def there_and_back(index: int, count: int) -> float:
    """A share that grows to 1 and falls to 0 again."""
    share = index / count
    return 2 * share if share < 0.5 else 2 * (1 - share)


def drag(canvas: MakeCurve, name: str, start: QPointF, by: QPointF, count: int = 120) -> Timing:
    """Drag from a point there and back; each frame is one move, the forecast, and the repaint."""
    send(canvas, QEvent.Type.MouseButtonPress, start, True)
    found = frames(
        name, lambda index: send(canvas, QEvent.Type.MouseMove, start + by * there_and_back(index, count), True), count
    )
    canvas.cancel()
    send(canvas, QEvent.Type.MouseButtonRelease, start, False)
    QApplication.processEvents()
    return found


def measure(canvas: MakeCurve) -> Iterator[Timing]:
    """The gestures that matter, on a shown canvas of the example recipe."""
    stage = next(block.id for block in canvas.frame.blocks if block.kind == "cook")
    state = next((block.id for block in canvas.frame.blocks if block.state and block.kind != "set"), stage)
    yield drag(canvas, "drag a length", canvas.grip(stage, "end", "edge").at + QPointF(0, 8), QPointF(60, 0))
    yield drag(canvas, "drag a temperature", canvas.grip(stage, "temperature_c", "corner").at, QPointF(0, 30))
    yield drag(canvas, "drag a state end", canvas.grip(state, "end", "edge").at + QPointF(0, 8), QPointF(60, 0))
    middle = QPointF(canvas.rect().center())
    yield frames("zoom by the wheel", lambda index: turn(canvas, middle, 15 if index < 40 else -15), 80)
    canvas.zoom(0.5)
    empty = QPointF(middle.x(), canvas.frame.places.axis.top() - 12)
    yield drag(canvas, "pan", empty, QPointF(-240, 0))
    canvas.fit_day()
    yield frames(
        "reading line", lambda index: send(canvas, QEvent.Type.MouseMove, QPointF(100 + 8 * index, 400), False), 80
    )


def point(levers: LeverList) -> Iterator[Timing]:
    """From pointing at a way of a lever to its effect on curves, outcomes and verdict: the first time, and again."""
    rows, ways = len(levers.shown), (-1, 1)
    every = rows * len(ways)

    def one(index: int) -> None:
        send(levers, QEvent.Type.MouseMove, levers.chip(index // 2 % rows, ways[index % 2]).center(), False)

    yield frames("preview of a lever, first", one, every)
    yield frames("preview of a lever, again", one, 4 * every)
    QApplication.sendEvent(levers, QEvent(QEvent.Type.Leave))
    QApplication.processEvents()
