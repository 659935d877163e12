"""Says aloud, to whoever listens by a screen reader, what an edit did to the verdict; never during a drag."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication, QObject, Signal, Slot
from PySide6.QtWidgets import QWidget

from designer.judge.verdict import MET, NEAR, NOT_MET, Verdict
from widgets.aloud import say
from widgets.session import Session

MOST = 3
"""How many changed judgements are told one by one; the rest is counted."""


class Announcer(QObject):
    """Compares each verdict that is kept with the one before and announces what changed."""

    announced = Signal(str)

    def __init__(self, session: Session, speaker: QWidget) -> None:
        super().__init__(speaker)
        self._session, self._speaker = session, speaker
        self._last = _states(session)
        session.forecastChanged.connect(self._listen)
        session.bandsChanged.connect(self._listen)
        session.laneChanged.connect(self._listen)
        session.problem.connect(self._mishap)

    @Slot()
    def _listen(self) -> None:
        if self._session.previewing:
            return
        before, now = self._last, _states(self._session)
        self._last = now
        verdict = self._session.verdict
        if now != before and isinstance(verdict, Verdict):
            self._say(told(before, verdict))

    @Slot(str)
    def _mishap(self, sentence: str) -> None:
        if sentence:
            self._say(sentence)

    def _say(self, sentence: str) -> None:
        if not sentence:
            return
        say(self._speaker, sentence)
        self.announced.emit(sentence)


def _states(session: Session) -> dict[str, str]:
    """State of the verdict ("") and of each of its rows."""
    verdict = session.verdict
    if not isinstance(verdict, Verdict):
        return {}
    return {"": f"{verdict.name}: {verdict.state}"} | {
        f"{row.section} {row.rules} {row.quantity} {row.rule}": row.state for row in verdict.rows
    }


def told(before: dict[str, str], verdict: Verdict) -> str:
    """The verdict and what changed in it, as one text."""
    tr = QCoreApplication.translate
    state = {MET: tr("Verdict", "met"), NEAR: tr("Verdict", "near a limit"), NOT_MET: tr("Verdict", "not met")}
    lines = []
    if before.get("") != f"{verdict.name}: {verdict.state}":
        lines.append(verdict.sentence)
    changed = [
        row
        for row in verdict.rows
        if before.get(f"{row.section} {row.rules} {row.quantity} {row.rule}", row.state) != row.state
    ]
    lines += [tr("Verdict", "{0}: {1}").format(row.label, state[row.state]) for row in changed[:MOST]]
    if len(changed) > MOST:
        lines.append(tr("Verdict", "and {0} more").format(len(changed) - MOST))
    return ". ".join(line.rstrip(".") for line in lines)
