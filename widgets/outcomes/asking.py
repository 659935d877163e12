"""Questions answered beside the window: one batch at a time, the latest asked for, each answer as it comes.

A batch is a list of named questions. Whatever was asked before is forgotten and told to stop.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any, Final

from PySide6.QtCore import QObject, QThreadPool, QTimer, Signal, Slot

from designer.recipe.error import RecipeError
from widgets.aside import step_back

REST_MS: Final = 40
"""How long nothing new must be asked before a batch starts, so that a drag has the machine to itself."""

Stop = Callable[[], bool]
Question = Callable[[Stop], Any]


class StoppedError(Exception):
    """Raised by a question that found it is no longer asked."""


class Asker(QObject):
    """Asks the questions of a batch in a thread of its own and tells each answer by name."""

    answered = Signal(str, object)
    failed = Signal(str, str)
    """name of the question, a sentence"""
    _done = Signal(int, str, object, str)
    _ended = Signal()

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._pool = QThreadPool(self)
        self._pool.setMaxThreadCount(1)
        self._generation = 0
        self._busy = False
        self._next: dict[str, Question] = {}
        self._rest = QTimer(self)
        self._rest.setSingleShot(True)
        self._rest.setInterval(REST_MS)
        self._rest.timeout.connect(self._begin)
        self._done.connect(self._take)
        self._ended.connect(self._end)

    def ask(self, questions: Mapping[str, Question]) -> None:
        """Ask these, in their order; anything asked before is forgotten."""
        self._generation += 1
        self._next = dict(questions)
        self._rest.start()

    @Slot()
    def _begin(self) -> None:
        if self._busy or not self._next:
            return
        batch, self._next, self._busy = self._next, {}, True
        generation, done, ended = self._generation, self._done, self._ended

        def old() -> bool:
            return generation != self._generation

        def job() -> None:
            step_back()
            try:
                for name, question in batch.items():
                    if old():
                        return
                    try:
                        done.emit(generation, name, question(old), "")
                    except RecipeError as error:
                        done.emit(generation, name, None, str(error))
            except StoppedError:
                return
            finally:  # whatever happened, the next batch may start
                ended.emit()

        self._pool.start(job)

    @Slot(int, str, object, str)
    def _take(self, generation: int, name: str, answer: Any, problem: str) -> None:
        if generation != self._generation:
            return
        if problem:
            self.failed.emit(name, problem)
        else:
            self.answered.emit(name, answer)

    @Slot()
    def _end(self) -> None:
        self._busy = False
        if self._next and not self._rest.isActive():
            self._begin()

    @property
    def idle(self) -> bool:
        """True where nothing is asked or being worked out."""
        return not self._busy and not self._next

    def stop(self) -> None:
        """Forget what was asked and wait for what runs to end."""
        self._rest.stop()
        self._generation += 1
        self._next = {}
        self._pool.waitForDone()
