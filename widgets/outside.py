"""What others do to the recipe's file: noticed while it is open, asked about before it is written over."""

from __future__ import annotations

from enum import Enum
from pathlib import Path
from typing import Final

from PySide6.QtCore import QCoreApplication, QFileSystemWatcher, QObject, QTimer, Signal, Slot
from PySide6.QtWidgets import QMessageBox, QWidget

from designer.recipe import file as files
from designer.recipe.changes import changes, in_words
from designer.recipe.document import Recipe
from designer.recipe.error import RecipeError

SETTLED_MS: Final = 200
"""How long a folder must be quiet before the file is read: others write in several steps."""


class Answer(Enum):
    """What the maker wants where a file would be written over."""

    OVER = "over"
    ELSEWHERE = "elsewhere"
    NOT = "not"


class Watch(QObject):
    """Follows one file; speaks when it holds another text than the one known, or is gone."""

    changed = Signal(str)
    """the text that stands there now"""
    gone = Signal()

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._path: Path | None = None
        self._text: str | None = None
        self._watcher = QFileSystemWatcher(self)
        self._rest = QTimer(self)
        self._rest.setSingleShot(True)
        self._rest.setInterval(SETTLED_MS)
        self._rest.timeout.connect(self.look)
        self._watcher.fileChanged.connect(self._stirred)
        self._watcher.directoryChanged.connect(self._stirred)

    def follow(self, path: Path | None, text: str | None) -> None:
        """Follow this file, known to hold this text; None: follow nothing."""
        self._path, self._text = path, text
        self._rest.stop()
        watched = self._watcher.files() + self._watcher.directories()
        wanted = [] if path is None else [str(path), str(path.parent)]
        if old := [one for one in watched if one not in wanted]:
            self._watcher.removePaths(old)
        self._attend()

    def _attend(self) -> None:
        """A file that another was put in place of has to be watched again."""
        if self._path is None:
            return
        watched = self._watcher.files() + self._watcher.directories()
        for one in (self._path, self._path.parent):
            if one.exists() and str(one) not in watched:
                self._watcher.addPath(str(one))

    @Slot()
    def _stirred(self) -> None:
        if self._path is not None:
            self._rest.start()

    @Slot()
    def look(self) -> None:
        """Read the file now."""
        if self._path is None or self._text is None:
            return
        self._attend()
        there = standing(self._path)
        if there is None:
            self._text = ""
            self.gone.emit()
        elif there != self._text:
            self._text = there
            self.changed.emit(there)


def standing(path: Path) -> str | None:
    """The text of a file as it stands, None where there is none that could be read."""
    try:
        return files.read_text(path)
    except RecipeError:
        return None


def difference(old: Recipe, new: Recipe) -> str:
    """What differs between two recipes, in words."""
    found = changes(old, new)
    if not found:
        return QCoreApplication.translate("Outside", "only wording or order differ.")
    return in_words(found, 6)


def ask_over(window: QWidget, head: str, body: str) -> Answer:
    """Ask before a file is written over; nothing is done unless it is said."""
    box = QMessageBox(
        QMessageBox.Icon.Warning, QCoreApplication.translate("Outside", "Curdwright"), head, parent=window
    )
    box.setInformativeText(body)
    over = box.addButton(QCoreApplication.translate("Outside", "Write over it"), QMessageBox.ButtonRole.DestructiveRole)
    elsewhere = box.addButton(
        QCoreApplication.translate("Outside", "Save under another name…"), QMessageBox.ButtonRole.AcceptRole
    )
    box.setDefaultButton(elsewhere)
    box.setEscapeButton(box.addButton(QMessageBox.StandardButton.Cancel))
    box.exec()
    pressed = box.clickedButton()
    box.deleteLater()
    return Answer.OVER if pressed is over else Answer.ELSEWHERE if pressed is elsewhere else Answer.NOT
