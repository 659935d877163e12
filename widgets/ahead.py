"""What waits until the first picture stands, and what is made ready after it, before anybody asks.

Until then nothing runs beside the window and no garbage is looked for. Then, in this order: the bands, the
modules of all places (beside the window), and the places along the edge, one at a time, while the maker rests: each
opens in a frame when it is first gone to.
"""

from __future__ import annotations

import gc
from importlib import import_module
from typing import Final

from PySide6.QtCore import QEvent, QObject, Qt, QThreadPool, QTimer, Signal, Slot
from PySide6.QtGui import QCursor, QGuiApplication

from widgets.aside import step_back
from widgets.tidying import Tidying
from widgets.window import Window

REST_MS: Final = 400
"""How long the pointer must stand still before a place is built."""
PLACES: Final = ("start", "check", "milk", "compare", "plan")
"""Those along the edge, the likeliest first. The pages of the menus are built when they are opened: some make files."""
MODULES: Final = (
    "widgets.start.place",
    "widgets.outcomes.check_place",
    "widgets.form.milk_place",
    "widgets.compare.place",
    "designer.plan.make_plan",
    "widgets.paper.preview",
    "widgets.variants.scale_page",
    "widgets.variants.milk_page",
    "widgets.variants.standard_page",
    "widgets.variants.versions_page",
    "widgets.variants.nearest_page",
    "widgets.variants.style_page",
    "widgets.batch.page",
    "widgets.teach.guess_page",
    "widgets.teach.vats_page",
    "widgets.teach.depths_page",
    "widgets.teach.lesson_page",
)


class Ahead(QObject):
    """Holds back what would delay the first picture of a window, and then works ahead."""

    _loaded = Signal()

    def __init__(self, window: Window) -> None:
        super().__init__(window)
        self._window = window
        self._left = list(PLACES)
        self._pointer = QCursor.pos()
        self._tidying: Tidying | None = None
        self._pool = QThreadPool(self)
        self._pool.setMaxThreadCount(1)
        self._rest = QTimer(self)
        self._rest.setInterval(REST_MS)
        self._rest.timeout.connect(self._build)
        self._loaded.connect(self._rest.start)
        self._stopped = False
        window.session.bandsChanged.connect(self._load, Qt.ConnectionType.SingleShotConnection)
        window.session.hold_bands()
        window.installEventFilter(self)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """The window is painted for the first time: when that is done, go on."""
        if event.type() == QEvent.Type.Paint:
            watched.removeEventFilter(self)
            QTimer.singleShot(0, self, self._begin)
        return False

    @Slot()
    def _begin(self) -> None:
        """What the program is made of is here to stay: looking through it for garbage took as long as ten frames."""
        gc.freeze()
        self._tidying = Tidying(self)
        self._window.session.release_bands()

    @Slot()
    def _load(self) -> None:
        if not self._stopped:
            self._pool.start(self._import)

    def _import(self) -> None:
        step_back()
        for name in MODULES:
            if self._stopped:
                return
            import_module(name)
        self._loaded.emit()

    @property
    def _resting(self) -> bool:
        """True where the maker does nothing that a longer frame would disturb."""
        before, self._pointer = self._pointer, QCursor.pos()
        held = QGuiApplication.mouseButtons() != Qt.MouseButton.NoButton
        return before == self._pointer and not held and not self._window.session.previewing

    @Slot()
    def _build(self) -> None:
        if not self._resting:
            return
        if self._left:
            self._window.prepare(self._left.pop(0))
        else:
            self._rest.stop()
            gc.freeze()

    def stop(self) -> None:
        """The window goes: wait for what runs."""
        self._stopped = True
        self._rest.stop()
        if self._tidying is not None:
            self._tidying.stop()
        self._pool.waitForDone()
