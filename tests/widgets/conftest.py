"""A window on the example recipe for each test, closed at its end with nothing left running."""

from __future__ import annotations

import gc
import threading
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QEvent, QPointF, Qt, QThread, QThreadPool, QTimer
from PySide6.QtGui import QMouseEvent
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot
from shiboken6 import isValid

from designer.forecast import Forecast, forecast
from designer.recipe.document import Recipe
from designer.recipe.file import read
from widgets import window as window_module
from widgets.judging import judged
from widgets.make_curve.canvas import MakeCurve
from widgets.session import Session
from widgets.theme import apply as dress
from widgets.tidying import tidy
from widgets.window import Window

CHEDDAR = Path(__file__).with_name("cheddar.toml")
"""A make of the tests' own, so that the example may be tuned."""
NONE, SHIFT, CTRL = (
    Qt.KeyboardModifier.NoModifier,
    Qt.KeyboardModifier.ShiftModifier,
    Qt.KeyboardModifier.ControlModifier,
)


@pytest.fixture(autouse=True)
def garbage(qapp: QApplication) -> Iterator[None]:
    """Looked for between the tests and in this thread, never beside it; and each test has the application."""
    gc.disable()
    yield
    tidy()
    gc.enable()


@pytest.fixture
def recipe() -> Recipe:
    """The tests' Cheddar."""
    return read(CHEDDAR)


def banded(recipe: Recipe, stop: Callable[[], bool]) -> Forecast:
    """Bands from a few draws."""
    return forecast(recipe, members=8, stop=stop)


@pytest.fixture
def window(qtbot: QtBot, recipe: Recipe, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Window]:
    """The window, 1366 by 768, in light and metric, on the tests' Cheddar; its bands come from a few draws."""
    app = QApplication.instance()
    assert isinstance(app, QApplication)
    if not dress.wears("light"):
        dress.apply(app, "light")
    monkeypatch.setattr(window_module, "banded", banded)
    before = set(threading.enumerate())
    made = Window(recipe, config=tmp_path / "config", data=tmp_path / "data")
    made._set_system("metric")
    made.resize(1366, 768)
    with qtbot.waitExposed(made):
        made.show()
    QApplication.processEvents()
    yield made
    made.session.stack.setClean()
    made.close()
    assert left_running(made, before) == []
    made.deleteLater()
    gone()
    assert not isValid(made)
    assert [widget for widget in QApplication.topLevelWidgets() if widget.isVisible()] == []


def gone() -> None:
    """Delete what was to be deleted later, now: outside an event loop Qt keeps it, and dresses it again and again."""
    QApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
    QApplication.processEvents()


def left_running(window: Window, before: set[threading.Thread]) -> list[str]:
    """What still runs in a window that was closed: timers, pools at work, threads that are not the march's."""
    found = [f"timer of {timer.parent()}" for timer in window.findChildren(QTimer) if timer.isActive()]
    found += [f"pool of {pool.parent()}" for pool in window.findChildren(QThreadPool) if pool.activeThreadCount()]
    found += [f"thread of {thread.parent()}" for thread in window.findChildren(QThread) if thread.isRunning()]
    new = (thread.name for thread in set(threading.enumerate()) - before)
    return found + [name for name in new if not name.startswith(("march", "many", "Dummy"))]


@pytest.fixture
def curve(window: Window) -> MakeCurve:
    """The window's make curve."""
    return window.curve


@pytest.fixture
def session(qtbot: QtBot, recipe: Recipe) -> Iterator[Session]:
    """A session without a window."""
    made = Session(recipe, nominal=forecast, banded=banded, check=judged)
    yield made
    made.close()


def send(curve: MakeCurve, kind: QEvent.Type, at: QPointF, held: bool, keys: Qt.KeyboardModifier = NONE) -> None:
    """One real mouse event to the curve."""
    button = Qt.MouseButton.NoButton if kind == QEvent.Type.MouseMove else Qt.MouseButton.LeftButton
    buttons = Qt.MouseButton.LeftButton if held else Qt.MouseButton.NoButton
    QApplication.sendEvent(curve, QMouseEvent(kind, at, curve.mapToGlobal(at), button, buttons, keys))


def press(curve: MakeCurve, at: QPointF) -> None:
    """Press the left button."""
    send(curve, QEvent.Type.MouseButtonPress, at, True)


def move(curve: MakeCurve, at: QPointF, keys: Qt.KeyboardModifier = NONE) -> None:
    """Move with the button held, and let the frame come."""
    send(curve, QEvent.Type.MouseMove, at, True, keys)
    QApplication.processEvents()


def release(curve: MakeCurve, at: QPointF) -> None:
    """Let go."""
    send(curve, QEvent.Type.MouseButtonRelease, at, False)
    QApplication.processEvents()


def drag(curve: MakeCurve, start: QPointF, by: QPointF, keys: Qt.KeyboardModifier = NONE) -> None:
    """Press, move in four steps, let go."""
    press(curve, start)
    for step in range(1, 5):
        move(curve, start + by * (step / 4), keys)
    release(curve, start + by)
