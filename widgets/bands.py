"""The 80 % bands, worked out beside the window: one job at a time, the latest asked for, old ones told to stop.

While something is dragged without a pause no job is started, so that the picture has the machine to itself; the
bands of before go along, pale, until the pointer rests for a moment.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Any, Final

from PySide6.QtCore import QObject, QThreadPool, QTimer, Signal, Slot

from designer.forecast import Forecast, forecast
from designer.make import kernel
from designer.recipe.document import Recipe
from designer.recipe.error import RecipeError
from widgets.aside import step_back

MEMBERS: Final = 128
REST_MS: Final = 25
"""How long nothing new must be asked before a job starts."""

Work = Callable[[Any, Callable[[], bool]], Forecast]


def banded(recipe: Recipe, stop: Callable[[], bool]) -> Forecast:
    """A forecast with bands; the first one waits for the march to be compiled."""
    kernel.warm_up()
    return forecast(recipe, members=MEMBERS, stop=stop)


class BandWorker(QObject):
    """Asks `work(recipe, stop)` in a thread of its own and answers with `ready(recipe, forecast)`, or `failed`."""

    ready = Signal(object, object)
    failed = Signal(str)
    _done = Signal(int, object, object, str)

    def __init__(self, work: Work, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._work = work
        self._pool = QThreadPool(self)
        self._pool.setMaxThreadCount(1)
        self._generation = 0
        self._busy = False
        self._next: Any = None
        self._held = False
        self._rest = QTimer(self)
        self._rest.setSingleShot(True)
        self._rest.setInterval(REST_MS)
        self._rest.timeout.connect(self._begin)
        self._done.connect(self._take)

    def ask(self, recipe: Any) -> None:
        """Ask for the bands of a recipe; anything asked before is forgotten."""
        self._generation += 1
        self._next = recipe
        if not self._held:
            self._rest.start()

    def hold(self) -> None:
        """Start nothing until `release`."""
        self._held = True
        self._rest.stop()

    def release(self) -> None:
        """Begin with what was asked last."""
        self._held = False
        self._begin()

    @Slot()
    def _begin(self) -> None:
        if self._busy or self._next is None:
            return
        recipe, self._next, self._busy = self._next, None, True
        generation, work, done = self._generation, self._work, self._done

        def job() -> None:
            step_back()
            made, problem = None, ""
            try:
                made = work(recipe, lambda: generation != self._generation)
            except RecipeError as error:
                problem = str(error)
            finally:  # whatever happened, the next one may start
                done.emit(generation, recipe, made, problem)

        self._pool.start(job)

    @Slot(int, object, object, str)
    def _take(self, generation: int, recipe: Any, forecast: Forecast | None, problem: str) -> None:
        self._busy = False
        if self._next is not None and not self._rest.isActive():
            self._begin()
        if generation != self._generation:
            return
        if forecast is not None and forecast.bands is not None:
            self.ready.emit(recipe, forecast)
        elif problem:
            self.failed.emit(problem)

    def wait(self) -> None:
        """Start what waits and let it end; its answer comes with the next events."""
        self._rest.stop()
        self._begin()
        self._pool.waitForDone()

    def stop(self) -> None:
        """Forget what was asked and wait for the running job to end."""
        self._rest.stop()
        self._generation += 1
        self._next = None
        self._pool.waitForDone()
