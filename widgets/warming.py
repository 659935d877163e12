"""Makes ready, beside the window and once it stands, what the first opening of an outcome would otherwise wait for."""

from __future__ import annotations

from PySide6.QtCore import QObject, Qt, QThreadPool, Slot

from designer.make import many
from widgets.session import Session


class Warming(QObject):
    """Compiles or loads the loop over many makes after the first bands have come; nobody waits for it."""

    def __init__(self, session: Session, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._pool = QThreadPool(self)
        self._pool.setMaxThreadCount(1)
        session.bandsChanged.connect(self._begin, Qt.ConnectionType.SingleShotConnection)

    @Slot()
    def _begin(self) -> None:
        self._pool.start(many.warm_up)

    def stop(self) -> None:
        """Wait for what runs to end."""
        self._pool.waitForDone()
