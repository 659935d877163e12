"""Garbage in rings is looked for in the window's own thread, and while nothing is dragged.

Python looks for it in whichever thread happens to allocate. A Qt object taken away in another thread holds a lock of Qt
while it waits for Python, and the window, which has Python, waits for that lock: both stand still for ever. So Python's
own rounds are off while a window is open, and are made here.
"""

from __future__ import annotations

import gc
from typing import Final

from PySide6.QtCore import QObject, Qt, QTimer, Slot
from PySide6.QtGui import QGuiApplication

EVERY_MS: Final = 500
TOO_MUCH: Final = 400_000
"""New objects after which a drag is not waited for."""


class Tidying(QObject):
    """Looks for garbage as often as Python would, from the thread it lives in; until `stop`."""

    def __init__(self, parent: QObject) -> None:
        super().__init__(parent)
        gc.disable()
        self._timer = QTimer(self)
        self._timer.setInterval(EVERY_MS)
        self._timer.timeout.connect(self._look)
        self._timer.start()

    @Slot()
    def _look(self) -> None:
        held = QGuiApplication.mouseButtons() != Qt.MouseButton.NoButton
        if not held or gc.get_count()[0] > TOO_MUCH:
            tidy()

    def stop(self) -> None:
        """The window goes; Python looks after itself again."""
        self._timer.stop()
        gc.enable()


def tidy() -> None:
    """One round, of the oldest generation that is due by Python's own limits."""
    for generation, (count, limit) in reversed(list(enumerate(zip(gc.get_count(), gc.get_threshold(), strict=True)))):
        if count > limit:
            gc.collect(generation)
            return
