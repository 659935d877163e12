"""Timings of the window, off screen: from pointer to picture, from edit to bands, from start to first picture."""

from __future__ import annotations

import gc
import os
import subprocess
import sys
import tempfile
from collections.abc import Callable, Iterator
from pathlib import Path
from time import perf_counter

from PySide6.QtCore import QEventLoop
from PySide6.QtWidgets import QApplication

from designer.bootstrap import ROOT
from designer.recipe.edit import edit
from designer.recipe.examples import example
from designer.recipe.file import read
from tests.speed.clock import Timing
from tests.speed.window_frames import measure, point
from widgets.outcomes.opened import OpenedOutcome
from widgets.theme import apply as dress
from widgets.window import Window

STARTS = 5
SIZE = (1366, 768)
FIRST_PAINT = """
import gc
gc.disable()
import os
from designer.recipe.examples import example
from PySide6.QtCore import QTimer
from widgets.launch import open_window
from widgets.make_curve.canvas import MakeCurve

paint = MakeCurve.paintEvent

def painted(curve, event):
    paint(curve, event)
    QTimer.singleShot(0, lambda: os._exit(0))

MakeCurve.paintEvent = painted
open_window(example())
"""
"""As the command does it. A filter over all events would cost a twentieth of what it measures."""


def timings() -> Iterator[Timing]:
    """All of them; the window is open only meanwhile."""
    app = QApplication.instance() or QApplication(sys.argv[:1])
    assert isinstance(app, QApplication)
    dress.apply(app, "light")
    with tempfile.TemporaryDirectory() as folder:
        window = Window(read(example()), config=Path(folder), data=Path(folder))
        window.resize(*SIZE)
        window.show()
        until(lambda: not window.session.bands_stale)
        gc.freeze()  # as the program does once its window stands
        window.curve.set_panes(("ph", "moisture", "firmness"))
        QApplication.processEvents()
        yield from measure(window.curve)
        yield from preview(window)
        yield bands(window)
        window.session.stack.setClean()
        window.close()
        gc.unfreeze()
    yield start()


def preview(window: Window) -> Iterator[Timing]:
    """Pointing at what moves the moisture."""
    opening = window.outcomes.opening
    opening.open("moisture_pct")
    until(lambda: isinstance(opening.page, OpenedOutcome) and bool(opening.page.levers.shown) and opening.idle)
    assert isinstance(opening.page, OpenedOutcome)
    yield from point(opening.page.levers)
    opening.shut()


def until(done: Callable[[], bool]) -> None:
    """Run the event loop, waiting for events, until something has come about."""
    while not done():
        QApplication.processEvents(QEventLoop.ProcessEventsFlag.WaitForMoreEvents)


def bands(window: Window) -> Timing:
    """From an edit to its bands on the screen."""
    session = window.session
    cook = next(stage.id for stage in session.recipe.stages if stage.kind == "cook")
    took = []
    for step in range(20):  # none twice: a recipe seen before is remembered
        changed = edit(session.recipe, cook, temperature_c=38.0 + 0.1 * step)
        begun = perf_counter()
        session.commit(changed, "warmer")
        until(lambda: not session.bands_stale)
        took.append((perf_counter() - begun) * 1000)
    return Timing("edit to bands", tuple(took), 50.0, "in a worker; the picture does not wait for it")


def start() -> Timing:
    """From the command to the first picture, in processes of their own; the first brings the caches up to date.

    The processor's time stands beside it, for machines that do other things meanwhile.
    """
    took, cpu = [], []
    for _ in range(STARTS + 1):
        begun = perf_counter()
        with tempfile.TemporaryDirectory() as folder:
            own = dict.fromkeys(("XDG_CONFIG_HOME", "XDG_DATA_HOME"), folder)
            settings = {**os.environ, **own, "QT_QPA_PLATFORM": "offscreen"}
            settings.pop("PYTHONDONTWRITEBYTECODE", None)
            before = os.times()
            subprocess.run([sys.executable, "-c", FIRST_PAINT], cwd=ROOT, env=settings, check=True)
            after = os.times()
        took.append((perf_counter() - begun) * 1000)
        spent = after.children_user + after.children_system - before.children_user - before.children_system
        cpu.append(spent * 1000)
    note = f"a new process, warm caches; at best {min(cpu[1:]):.0f} ms of the processor"
    return Timing("start to first picture", tuple(took[1:]), 1000.0, note)
