"""A house style being worked on: its file, its own undo stack, and the recipe's check that follows every change.

Every change is written to the file at once, so there is nothing to lose and nothing to save.
"""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QObject, Signal
from PySide6.QtGui import QUndoCommand, QUndoStack

from designer.language import say
from styles import house
from styles.reader import Style, StyleError, style
from widgets.judging import adopt_beside
from widgets.session import Session


class ReplaceStyle(QUndoCommand):
    """Puts one style in place of another."""

    def __init__(self, document: StyleDocument, before: Style, after: Style, text: str) -> None:
        super().__init__(text)
        self._document, self._before, self._after = document, before, after

    def redo(self) -> None:
        """Show what comes after."""
        self._document._put(self._after)

    def undo(self) -> None:
        """Show what was before."""
        self._document._put(self._before)


class StyleDocument(QObject):
    """The house style that is open, one of those beside the recipe; None where none is."""

    changed = Signal()
    problem = Signal(str)
    """the file could not be written: a sentence"""

    def __init__(self, session: Session, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self.style: Style | None = None
        self.stack = QUndoStack(self)

    @property
    def folder(self) -> Path | None:
        """Where house styles lie: beside the recipe; None while that is not saved."""
        path = self._session.path
        return path.parent if path is not None else None

    @property
    def path(self) -> Path | None:
        """The file of the open style."""
        if self.folder is None or self.style is None:
            return None
        return house.path_of(self.folder, self.style)

    def open(self, key: str) -> None:
        """Work on the house style of that key. Raises StyleError where its file can't be read."""
        if self.style is None or self.style.key != key:
            self.style = style(key)
            self.stack.clear()
            self.changed.emit()

    def shut(self) -> None:
        """Work on none."""
        if self.style is not None:
            self.style = None
            self.stack.clear()
            self.changed.emit()

    def begin(self, made: Style) -> None:
        """Write a new house style and work on it. Raises StyleError where it can't be, or one of its name is there."""
        folder = self.folder
        if folder is None:
            raise StyleError(say("Save the recipe first: a house style lies beside it."))
        path = house.path_of(folder, made)
        if path.exists():
            raise StyleError(say("There is a house style of that name already: {file}.", file=path.name))
        house.write(made, path)
        adopt_beside(self._session.path)
        self.style = made
        self.stack.clear()
        self.changed.emit()

    def commit(self, made: Style, text: str) -> None:
        """Keep a changed style as one step of undo."""
        if self.style is not None and made != self.style:
            self.stack.push(ReplaceStyle(self, self.style, made, text))

    def _put(self, made: Style) -> None:
        self.style = made
        path = self.path
        if path is not None:
            try:
                house.write(made, path)
            except StyleError as error:
                self.problem.emit(str(error))
        adopt_beside(self._session.path)
        self.changed.emit()
        if self._session.recipe.style == made.key:
            self._session.judge_again()
