"""Questions answered beside the window: one batch at a time, the latest asked for, each answer as it comes.

A batch is a list of named questions. Whatever was asked before is forgotten and told to stop. While something is
dragged without a pause none is begun, so that the picture has the machine to itself.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any, Final

from PySide6.QtCore import QObject, QThreadPool, QTimer, Signal, Slot

from designer.recipe.error import RecipeError
from widgets.aside import step_back

REST_MS: Final = 40
"""How long nothing new must be asked before a batch begins, where nothing else is said."""

Stop = Callable[[], bool]
Question = Callable[[Stop], Any]


class StoppedError(Exception):
    """Raised by a question that found it is no longer asked."""


class Asker(QObject):
    """Asks the questions of a batch in a thread of its own and tells each answer by name; a batch begins when nothing
    new was asked for `rest_ms`."""

    answered = Signal(str, object)
    failed = Signal(str, str)
    """name of the question, a sentence"""
    _done = Signal(int, str, object, str)
    _ended = Signal()

    def __init__(self, parent: QObject | None = None, *, rest_ms: int = REST_MS) -> None:
        super().__init__(parent)
        self._pool = QThreadPool(self)
        self._pool.setMaxThreadCount(1)
        self._generation = 0
        self._busy = self._held = False
        self._next: dict[str, Question] = {}
        self._rest = QTimer(self)
        self._rest.setSingleShot(True)
        self._rest.setInterval(rest_ms)
        self._rest.timeout.connect(self._begin)
        self._done.connect(self._take)
        self._ended.connect(self._end)

    def ask(self, questions: Mapping[str, Question]) -> None:
        """Ask these, in their order; anything asked before is forgotten."""
        self._generation += 1
        self._next = dict(questions)
        if not self._held:
            self._rest.start()

    def forget(self) -> None:
        """Nobody waits for an answer any more."""
        self._rest.stop()
        self._generation += 1
        self._next = {}

    def hold(self) -> None:
        """Begin nothing until `release`."""
        self._held = True
        self._rest.stop()

    def release(self) -> None:
        """Begin with what was asked last."""
        self._held = False
        self._begin()

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
        if self._next and not self._held and not self._rest.isActive():
            self._begin()

    @property
    def idle(self) -> bool:
        """True where nothing is asked or being worked out."""
        return not self._busy and not self._next

    def wait(self) -> None:
        """Begin what waits and let it end; the answers come with the next events."""
        self._rest.stop()
        self._begin()
        self._pool.waitForDone()

    def stop(self) -> None:
        """Forget what was asked and wait for what runs to end."""
        self.forget()
        self._pool.waitForDone()
