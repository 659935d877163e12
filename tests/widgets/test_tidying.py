"""Garbage in rings goes in the window's own thread, never in one that works beside it."""

from __future__ import annotations

import gc
import threading
import weakref

from PySide6.QtCore import QObject
from pytestqt.qtbot import QtBot

from widgets.tidying import Tidying


def ring(went: list[threading.Thread]) -> None:
    """A Qt object that holds itself, dropped at once; `went` is told the thread it goes in."""
    one = QObject()
    one.itself = one  # type: ignore[attr-defined]
    weakref.finalize(one, lambda: went.append(threading.current_thread()))


def test_what_works_beside_the_window_takes_nothing_of_it_away(qtbot: QtBot) -> None:
    gc.collect()
    went: list[threading.Thread] = []
    owner = QObject()
    tidying = Tidying(owner)
    ring(went)
    beside = threading.Thread(target=lambda: [[] for _ in range(100_000)])  # enough for many rounds of Python's own
    beside.start()
    beside.join()
    assert went == []
    tidying._look()
    qtbot.waitUntil(lambda: bool(went) or bool(gc.collect()))
    assert went == [threading.main_thread()]
    tidying.stop()
    assert not tidying._timer.isActive()


def test_python_looks_after_itself_again_once_the_window_has_gone(qtbot: QtBot) -> None:
    owner = QObject()
    tidying = Tidying(owner)
    assert not gc.isenabled()
    tidying.stop()
    assert gc.isenabled()
    gc.disable()
