"""Five thousand frames of dragging: memory, objects and the counts of the commonest references stay where they are."""

from __future__ import annotations

import gc
import sys
from pathlib import Path

import pytest
from PySide6.QtCore import QEvent, QPointF, Qt
from PySide6.QtGui import QMouseEvent
from PySide6.QtWidgets import QApplication

from designer.forecast import forecast
from tests.widgets.conftest import NONE, press, release
from widgets.make_curve.canvas import MakeCurve
from widgets.window import Window

FRAMES, WARM_UP = 5_000, 200
HIGHEST_PX = 30
MOST_MB = 20.0
"""What may be added by all the frames after the warm-up; one forecast of a frame kept would come to a gigabyte."""
MOST = 500
"""One reference or object lost every tenth frame would be as many."""


def resident_mb() -> float:
    """Memory of this process that is in use, as Linux tells it."""
    lines = Path("/proc/self/status").read_text().splitlines()
    return next(int(line.split()[1]) for line in lines if line.startswith("VmRSS")) / 1024.0


def counts() -> dict[str, int]:
    """How often None, True and False are referred to (fixed from Python 3.12 on), and how many objects there are."""
    gc.collect()
    told = {str(each): sys.getrefcount(each) for each in (None, True, False)}
    return {**told, "objects": len(gc.get_objects())}


def moves(curve: MakeCurve, start: QPointF) -> list[QMouseEvent]:
    """A way up and down again with the button held.

    They are sent again and again: every event made in Python takes a reference to None that the binding never returns,
    which the events of a real mouse do not.
    """
    kind, held = QEvent.Type.MouseMove, Qt.MouseButton.LeftButton
    way = [start + QPointF(0, HIGHEST_PX - abs(step - HIGHEST_PX)) for step in range(2 * HIGHEST_PX)]
    return [QMouseEvent(kind, at, curve.mapToGlobal(at), Qt.MouseButton.NoButton, held, NONE) for at in way]


@pytest.mark.slow
def test_five_thousand_frames_leave_memory_and_references_where_they_were(
    window: Window, monkeypatch: pytest.MonkeyPatch
) -> None:
    curve, bands = window.curve, window.session._bands
    monkeypatch.setattr(window.session, "_nominal", forecast)  # every frame works its own out, remembering none
    bands.stop()
    monkeypatch.setattr(bands, "ask", lambda recipe: None)  # its thread holds references while we count
    cook = next(stage.id for stage in window.session.recipe.stages if stage.kind == "cook")
    start = curve.grip(cook, "temperature_c", "corner").at
    way = moves(curve, start)
    press(curve, start)

    def sway(frames: int) -> None:
        for frame in range(frames):
            QApplication.sendEvent(curve, way[frame % len(way)])
            QApplication.processEvents()

    sway(WARM_UP)
    memory, before = resident_mb(), counts()
    sway(FRAMES)
    added = {name: now - before[name] for name, now in counts().items()}
    assert resident_mb() - memory < MOST_MB
    assert all(abs(more) < MOST for more in added.values()), added
    curve.cancel()
    release(curve, start)
