"""What is asked beside the window of the make that is looked at, and the answers that still hold for it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any, Final, Generic, TypeVar

from PySide6.QtCore import QObject, Signal, Slot

from designer.forecast import Forecast
from designer.judge.aim import Aimed, AimError, aim, at
from designer.judge.explain import Explanation, explain, outcomes_of
from designer.judge.freedom import style_of
from designer.judge.levers import Levers, Spread, levers, spreads
from designer.recipe.document import Recipe
from widgets.asking import Asker, Question, Stop, StoppedError
from widgets.outcomes import cheese_words
from widgets.outcomes.cheese_words import Cheese
from widgets.session import Session

BANDED: Final = 5
"""How many of the strongest effects are given a band."""
T = TypeVar("T")
Locks = frozenset[tuple[str, str]]
"""Paths of the settings that aim leaves as they are."""


@dataclass(frozen=True, slots=True)
class Seen:
    """What a question was asked of: the very recipe, and the lane looked at."""

    recipe: Recipe
    lane: str | None

    def __eq__(self, other: object) -> bool:
        return isinstance(other, Seen) and self.recipe is other.recipe and self.lane == other.lane


@dataclass(frozen=True, slots=True)
class Answer(Generic[T]):
    """What was answered, and of what; `key` is the outcome, "" where it was asked of all of them."""

    seen: Seen
    key: str
    said: T


class Answers(QObject):
    """Asks what is not known yet, and keeps the last answer to each question."""

    came = Signal()
    """one more is known of the outcome asked about"""
    aimed = Signal(object)
    """an Aimed, or the sentence why none was found"""
    judged = Signal()
    """`cheese` is that of the make looked at"""
    failed = Signal(str)
    """a sentence: what could not be worked out"""

    def __init__(self, session: Session, parent: QObject) -> None:
        super().__init__(parent)
        self._session = session
        self.cheese: Cheese | None = None
        self._judged: Forecast | None = None
        self._known: dict[str, Answer[Any]] = {}
        self._wanted: tuple[float, Locks] | None = None
        self._asker = Asker(self)
        self._asker.answered.connect(self._take)
        self._asker.failed.connect(self._fail)

    # ---- what is known

    @property
    def seen(self) -> Seen:
        """What is looked at now, as it is kept."""
        return Seen(self._session.recipe, self._session.lane)

    @property
    def pale(self) -> bool:
        """True while `cheese` is that of a make before."""
        return self._judged is not self._session.seen

    def _of(self, name: str, key: str) -> Answer[Any] | None:
        known = self._known.get(name)
        return known if known is not None and (known.seen, known.key) == (self.seen, key) else None

    def levers(self) -> Levers | None:
        """The effects of every setting."""
        known: Answer[Levers] | None = self._of("levers", "")
        return None if known is None else known.said

    def spreads(self, key: str) -> tuple[Spread, ...] | None:
        """Bands of the effects that move an outcome most."""
        known: Answer[tuple[Spread, ...]] | None = self._of("spreads", key)
        return None if known is None else known.said

    def why(self, key: str) -> Answer[Explanation | None] | None:
        """The answer to why an outcome is as it is: None in it where there is no middle to hold it against."""
        return self._of("why", key)

    # ---- asking

    def ask(self, key: str) -> None:
        """Ask what is not known of the cheese, and of an outcome where `key` names one; what was asked before and is
        not answered yet is forgotten."""
        made, seen = self._session.seen, self.seen
        asked: dict[str, Question] = {}
        if key:
            worked_out = [known] if (known := self.levers()) is not None else []
            if not worked_out:
                asked["levers"] = lambda _: Answer(seen, "", noted(worked_out, levers(seen.recipe, branch=seen.lane)))
            if self._of("why", key) is None:
                asked["why"] = lambda stop: Answer(seen, key, why(made, key, stop))
            if self._wanted is not None:
                value, locks = self._wanted
                asked["aim"] = lambda _: aimed(seen, key, value, locks)
        if self.pale:
            asked["cheese"] = lambda _: (made, cheese_words.cheese(made, style_of(seen.recipe, seen.lane)))
        if key and self._of("spreads", key) is None:  # last, since it takes longest
            asked["spreads"] = lambda _: Answer(seen, key, strongest(seen, key, worked_out))
        self._asker.ask(asked)

    def aim_at(self, key: str, value: float, locks: Locks) -> None:
        """Ask also what would bring an outcome to a value."""
        self._wanted = value, locks
        self.ask(key)

    def forget_aim(self) -> None:
        """No value is wanted any more."""
        self._wanted = None

    @Slot(str, object)
    def _take(self, name: str, answer: Any) -> None:
        if name == "cheese":
            self._judged, self.cheese = answer
            self.judged.emit()
        elif name == "aim":
            self._wanted = None
            self.aimed.emit(answer)
        else:
            self._known[name] = answer
            self.came.emit()

    @Slot(str, str)
    def _fail(self, name: str, sentence: str) -> None:
        if name == "aim":
            self._wanted = None
            self.aimed.emit(sentence)
        else:
            self.failed.emit(sentence)

    # ---- end

    @property
    def idle(self) -> bool:
        """True where every answer is there."""
        return self._asker.idle

    def stop(self) -> None:
        """Stop what runs beside the window."""
        self._asker.stop()


# ---- the questions, as they are answered in the thread beside the window


def why(made: Forecast, key: str, stop: Stop) -> Explanation | None:
    """The explanation of an outcome; gives up when it is no longer asked."""
    style = style_of(made.recipe, made.branch_id)
    if style is None:
        return None

    def measure(recipe: Recipe) -> Mapping[str, float]:
        if stop():
            raise StoppedError
        return outcomes_of(recipe, made.branch_id)

    return explain(made, key, style, measure=measure)


def aimed(seen: Seen, key: str, value: float, locks: Locks) -> Aimed | str:
    """What aim finds, or the sentence why it can't be looked for."""
    try:
        return aim(seen.recipe, [at(key, value)], branch=seen.lane, locks=locks, style=style_of(seen.recipe, seen.lane))
    except AimError as error:
        return str(error)


def noted(worked_out: list[Levers], found: Levers) -> Levers:
    """Effects just worked out, kept for the question after."""
    worked_out.append(found)
    return found


def strongest(seen: Seen, key: str, worked_out: list[Levers]) -> tuple[Spread, ...]:
    """Bands of the effects that move an outcome most; none where the effects could not be worked out."""
    if not worked_out or key not in worked_out[0].keys:
        return ()
    return spreads(seen.recipe, key, worked_out[0].ranked(key)[:BANDED], branch=seen.lane)
