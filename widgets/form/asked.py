"""A figure that can be read two ways is asked about: a button for each reading, with what it comes to."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QBoxLayout, QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from designer.units import readings, show


def ways_of(text: str, kind: str) -> tuple[tuple[str, str], ...]:
    """(text to take, words for its button) of every way a text can be read; none where it is clear or means nothing."""
    return tuple((one, f"{one} = {show(value, kind)}") for one, value in readings(text, kind))


class Ways(QWidget):
    """The buttons; nothing is shown where nothing is asked."""

    chosen = Signal(str)

    def __init__(self, parent: QWidget | None = None, *, upright: bool = False) -> None:
        super().__init__(parent)
        self._row: QBoxLayout = QVBoxLayout(self) if upright else QHBoxLayout(self)
        self._row.setContentsMargins(0, 0, 0, 0)
        self._row.setSpacing(4)
        self.buttons: list[QPushButton] = []
        self.hide()

    def put(self, ways: Sequence[tuple[str, str]]) -> None:
        """Ask which of these was meant."""
        for old in self.buttons:
            self._row.removeWidget(old)
            old.hide()
            old.deleteLater()
        self.buttons = []
        for text, words in ways:
            one = QPushButton(words, self)
            one.setMinimumHeight(26)
            one.clicked.connect(lambda _=False, text=text: self.chosen.emit(text))
            self._row.addWidget(one)
            self.buttons.append(one)
        self.setVisible(bool(ways))
