"""The comparison, worked out beside the window: one job at a time, the latest asked for, old ones given up.

Every question has a number; an answer to an older question is thrown away, so what is shown always belongs to what
was asked last.
"""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QObject, QThreadPool, Signal, Slot

from designer.forecast import Forecast, forecast
from designer.judge import attribution
from designer.judge.between import Between
from designer.judge.compare import Comparison, Difference, Figures, compare
from designer.make import kernel
from designer.recipe.document import Recipe
from designer.recipe.error import RecipeError
from designer.units import System
from widgets.aside import step_back


@dataclass(frozen=True, slots=True)
class Question:
    """Two makes to compare: the open one, the one beside it, and the units of the words."""

    left: Recipe
    right: Recipe
    system: System


@dataclass(frozen=True, slots=True)
class Answer:
    """A comparison with the forecasts of both makes, for their curves."""

    question: Question
    comparison: Comparison
    left: Forecast
    right: Forecast

    def spans(self, chosen: Difference | None) -> list[tuple[float, float] | None]:
        """Minutes of the stages that a difference is about, in each make."""
        if chosen is None or chosen.row < 0:
            return []
        pair = self.comparison.between.rows[chosen.row]
        out: list[tuple[float, float] | None] = []
        for side, made in ((pair.left, self.left), (pair.right, self.right)):
            found = next((one for one in made.stages if side is not None and one.id == side.id), None)
            out.append((found.start_min, found.end_min) if found is not None else None)
        return out


TOLD_EVERY = 8
"""Forecasts between two words of progress."""


class GivenUp(Exception):
    """Raised inside a job whose answer nobody waits for any more."""


class CompareWorker(QObject):
    """Answers the latest question with `ready(Answer)` or `failed(sentence)`; `progress(done, of)` on the way."""

    ready = Signal(object)
    failed = Signal(str)
    progress = Signal(int, int)
    _told = Signal(int, int, int)
    _done = Signal(int, object, str)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._pool = QThreadPool(self)
        self._pool.setMaxThreadCount(1)
        self._number = 0
        self._done.connect(self._take)
        self._told.connect(self._tell)

    def ask(self, question: Question) -> None:
        """Ask for a comparison; whatever was asked before is given up."""
        self._number += 1
        number, done = self._number, self._done

        def job() -> None:
            step_back()
            made, problem = None, ""
            try:
                made = self._work(question, number)
            except RecipeError as error:
                problem = str(error)
            except GivenUp:
                return
            done.emit(number, made, problem)

        self._pool.start(job)

    def _work(self, question: Question, number: int) -> Answer:
        told = self._told
        of = 2 + attribution.most(len(Between(question.left, question.right).steps))
        done = 0

        def made(recipe: Recipe) -> Forecast:
            nonlocal done
            if number != self._number:
                raise GivenUp
            done += 1
            if done % TOLD_EVERY == 0:
                told.emit(number, min(done, of), of)
            return forecast(recipe)

        def measure(recipe: Recipe) -> Figures:
            return {key: one.value for key, one in made(recipe).outcomes.items()}

        kernel.warm_up()
        left, right = made(question.left), made(question.right)
        found = compare(question.left, question.right, measure=measure, system=question.system, made=(left, right))
        return Answer(question, found, left, right)

    @Slot(int, object, str)
    def _take(self, number: int, answer: Answer | None, problem: str) -> None:
        if number != self._number:
            return
        if answer is not None:
            self.ready.emit(answer)
        else:
            self.failed.emit(problem)

    @Slot(int, int, int)
    def _tell(self, number: int, done: int, of: int) -> None:
        if number == self._number:
            self.progress.emit(done, of)

    def forget(self) -> None:
        """Nobody waits for an answer any more."""
        self._number += 1
        self._pool.clear()

    def stop(self) -> None:
        """Forget what was asked and wait for the running job to end."""
        self.forget()
        self._pool.waitForDone()
