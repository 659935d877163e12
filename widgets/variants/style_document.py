"""A house style being worked on: its file, its own undo stack, and the recipe's check that follows every change.

Every change is written to the file at once, and before that to a journal (`style_keeping`): undo leads back through the
house styles of a folder, also past a window that was ended, and a change its file did not take is kept.
"""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QObject, Signal, Slot
from PySide6.QtGui import QUndoCommand, QUndoStack

from designer.language import say
from styles import house
from styles.reader import Style, StyleError, read, style
from widgets.judging import adopt_beside
from widgets.outside import Watch, standing
from widgets.session import Session
from widgets.variants.style_keeping import Keeping, Unsaved


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
    left = Signal(object)
    """work from last time that its file has not, and has been changed since: an `Unsaved` to be asked about"""

    def __init__(self, session: Session, keeping: Keeping, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._session, self._keeping = session, keeping
        self.style: Style | None = None
        self._folder: Path | None = None
        """where the styles of the stack lie"""
        self.stack = QUndoStack(self)
        self._watch = Watch(self)
        self._watch.changed.connect(self._changed_outside)

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
        if self.style is None or self.style.key != key or self.folder != self._folder:
            self._show(style(key))
            self._take_up_left()

    def shut(self) -> None:
        """Work on none."""
        if self.style is not None:
            self.style, self._folder = None, None
            self.stack.clear()
            self._watch.follow(None, None)
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
        self._show(made)

    def commit(self, made: Style, text: str) -> None:
        """Keep a changed style as one step of undo."""
        if self.style is not None and made != self.style:
            self.stack.push(ReplaceStyle(self, self.style, made, text))

    def look(self) -> None:
        """Take up now what others did to the file: before it is changed here."""
        self._watch.look()

    def stop(self) -> None:
        """The window is closed: what its file has not stays in the journal."""
        self._watch.follow(None, None)
        self._keeping.close()

    def _show(self, made: Style) -> None:
        """Work on this one, as its file holds it."""
        if self.folder != self._folder:
            self.stack.clear()
            self._folder = self.folder
        self.style = made
        self._follow()
        self.changed.emit()

    def _follow(self) -> None:
        path = self.path
        self._watch.follow(path, standing(path) if path is not None else None)

    def _put(self, made: Style) -> None:
        self.style = made
        path = self.path
        if path is not None:
            try:
                self._keeping.write(made, path)
            except StyleError as error:
                self.problem.emit(str(error))
        self._follow()
        adopt_beside(self._session.path)
        self.changed.emit()
        if self._session.recipe.style == made.key:
            self._session.judge_again()

    # ---- what others did, and what was left

    @Slot(str)
    def _changed_outside(self, _: str) -> None:
        """Another window or program wrote the file: it is shown as it stands, and undo leads back."""
        path = self.path
        if path is None or self.style is None:
            return
        try:
            self.commit(read(path), self.tr("What was changed outside"))
        except StyleError as error:
            self.problem.emit(str(error))

    def _take_up_left(self) -> None:
        path, now = self.path, self.style
        if path is None or now is None:
            return
        left = self._keeping.left(path)
        if left is None:
            return
        if left.overtaken:
            self.left.emit(left)
        else:
            self.take_up(left)

    def take_up(self, left: Unsaved) -> None:
        """Go on with what an ended window left; undo leads back to what its work began from."""
        if self.style is not None:
            begun = self.style if left.overtaken else self._keeping.go_on(left) or self.style
            if begun != left.style:
                self.stack.push(ReplaceStyle(self, begun, left.style, self.tr("Work from last time")))
            left.drop()
