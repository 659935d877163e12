"""The 80 % bands, worked out beside the window: one job at a time, the latest asked for next, old answers dropped."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from PySide6.QtCore import QObject, QThreadPool, Signal, Slot

from designer.forecast import Forecast
from designer.recipe.error import RecipeError

MEMBERS = 128


class BandWorker(QObject):
    """Asks `work(recipe)` in a thread of its own and answers with `ready(recipe, forecast)`; `failed` for the log."""

    ready = Signal(object, object)
    failed = Signal(str)
    _done = Signal(int, object, object, str)

    def __init__(self, work: Callable[[Any], Forecast], parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._work = work
        self._pool = QThreadPool(self)
        self._pool.setMaxThreadCount(1)
        self._generation = 0
        self._busy = False
        self._next: Any = None
        self._done.connect(self._take)

    def ask(self, recipe: Any) -> None:
        """Ask for the bands of a recipe; anything asked before is forgotten."""
        self._generation += 1
        if self._busy:
            self._next = recipe
        else:
            self._start(recipe)

    def _start(self, recipe: Any) -> None:
        self._busy, self._next = True, None
        generation, work, done = self._generation, self._work, self._done

        def job() -> None:
            made, problem = None, ""
            try:
                made = work(recipe)
            except RecipeError as error:
                problem = str(error)
            finally:  # whatever happened, the next one may start
                done.emit(generation, recipe, made, problem)

        self._pool.start(job)

    @Slot(int, object, object, str)
    def _take(self, generation: int, recipe: Any, forecast: Forecast | None, problem: str) -> None:
        self._busy = False
        if self._next is not None:
            self._start(self._next)
        if generation == self._generation and forecast is not None:
            self.ready.emit(recipe, forecast)
        elif problem and generation == self._generation:
            self.failed.emit(problem)

    def stop(self) -> None:
        """Forget what was asked and wait for the running job to end."""
        self._generation += 1
        self._next = None
        self._pool.waitForDone()
