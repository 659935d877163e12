"""The tastings of a batch, one under the other, each with what corrects it or takes it back."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QCoreApplication, Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from designer.batch.record import Batch, Tasting
from designer.language import number
from widgets.theme import apply as dress
from widgets.together import Wrapped
from widgets.variants.page import button, note


def verdict_words(one: Tasting) -> str:
    """ "8.5, again"; "" where neither was said."""
    kept = {
        True: QCoreApplication.translate("Tastings", "again"),
        False: QCoreApplication.translate("Tastings", "not again"),
    }
    said = [number(one.mark, "g")] if one.mark is not None else []
    return ", ".join([*said, *([kept[one.keep]] if one.keep is not None else [])])


def head_words(batch: Batch, one: Tasting) -> str:
    """ "2024-09-10, 189 days old, Ottilie Farrant: 7.5, again"."""
    age = QCoreApplication.translate("Tastings", "{0} days old").format(batch.age_days(one))
    head = ", ".join(filter(None, (one.tasted.isoformat(), age, one.taster)))
    verdict = verdict_words(one)
    return f"{head}: {verdict}" if verdict else head


class TastingList(QWidget):
    """Shows what was tasted."""

    correct = Signal(int)
    """the number of the tasting to correct"""
    strike = Signal(int)
    """the number of the tasting to take back"""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.setSpacing(8)
        self.lines: list[QWidget] = []

    def put(self, batch: Batch) -> None:
        """Show the tastings of a batch."""
        for line in self.lines:
            self._column.removeWidget(line)
            line.hide()
            line.deleteLater()
        self.lines = []
        if not batch.tastings:
            self._add(note(self.tr("Not tasted yet.")))
        for at, one in batch.tastings.items():
            self._add(self._line(batch, at, one))

    def _add(self, line: QWidget) -> None:
        self._column.addWidget(line)
        self.lines.append(line)

    def _line(self, batch: Batch, at: int, one: Tasting) -> QWidget:
        whole = QWidget(self)
        row = QHBoxLayout(whole)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(8)
        texts = QVBoxLayout()
        texts.setSpacing(1)
        head = Wrapped(head_words(batch, one), whole)
        head.setFont(dress.font("body", bold=True))
        texts.addWidget(head)
        for text in (", ".join(one.words), one.remark):
            if text:
                said = Wrapped(text, whole)
                said.setTextFormat(Qt.TextFormat.PlainText)
                texts.addWidget(said)
        row.addLayout(texts, 1)
        day = one.tasted.isoformat()
        for text, name, signal in (
            (self.tr("Correct…"), self.tr("Correct the tasting of {0}").format(day), self.correct.emit),
            (self.tr("Take back"), self.tr("Take back the tasting of {0}").format(day), self.strike.emit),
        ):
            row.addWidget(self._button(text, name, signal, at), 0, Qt.AlignmentFlag.AlignTop)
        return whole

    def _button(self, text: str, name: str, signal: Callable[[int], object], at: int) -> QWidget:
        made = button(text, lambda: signal(at))
        made.setAccessibleName(name)
        return made
