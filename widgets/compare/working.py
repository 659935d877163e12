"""The comparison, worked out beside the window, with word of how far it is."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QObject, Signal, Slot

from designer.forecast import Forecast, forecast
from designer.judge import attribution
from designer.judge.between import Between
from designer.judge.compare import Comparison, Difference, Figures, compare
from designer.make import kernel
from designer.recipe.document import Recipe
from designer.units import System
from widgets.asking import Asker, Stop, StoppedError


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


class CompareWorker(QObject):
    """Answers the latest question with `ready(Answer)` or `failed(sentence)`; `progress(done, of)` on the way."""

    ready = Signal(object)
    failed = Signal(str)
    progress = Signal(int, int)
    _told = Signal(object, int, int)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._asker = Asker(self, rest_ms=0)
        self._asker.answered.connect(lambda _, answer: self.ready.emit(answer))
        self._asker.failed.connect(lambda _, sentence: self.failed.emit(sentence))
        self._told.connect(self._tell)

    def ask(self, question: Question) -> None:
        """Ask for a comparison; whatever was asked before is given up."""
        self._asker.ask({"": lambda stop: self._work(question, stop)})

    def _work(self, question: Question, stop: Stop) -> Answer:
        told = self._told
        of = 2 + attribution.most(len(Between(question.left, question.right).steps))
        done = 0

        def made(recipe: Recipe) -> Forecast:
            nonlocal done
            if stop():
                raise StoppedError
            done += 1
            if done % TOLD_EVERY == 0:
                told.emit(stop, min(done, of), of)
            return forecast(recipe)

        def measure(recipe: Recipe) -> Figures:
            return {key: one.value for key, one in made(recipe).outcomes.items()}

        kernel.warm_up()
        left, right = made(question.left), made(question.right)
        found = compare(question.left, question.right, measure=measure, system=question.system, made=(left, right))
        return Answer(question, found, left, right)

    @Slot(object, int, int)
    def _tell(self, stop: Stop, done: int, of: int) -> None:
        if not stop():
            self.progress.emit(done, of)

    def forget(self) -> None:
        """Nobody waits for an answer any more."""
        self._asker.forget()

    def stop(self) -> None:
        """Forget what was asked and wait for the running job to end."""
        self._asker.stop()
