"""A note to what was just saved: a line in the status bar that waits and is gone with the next edit."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QHBoxLayout, QLabel, QLineEdit, QWidget

from designer.recipe import versions
from designer.recipe.error import RecipeError
from designer.recipe.versions import Version
from widgets.session import Session


class NoteBar(QWidget):
    """Shown after a save; never takes the keyboard by itself."""

    said = Signal(str)
    """a sentence: what could not be done"""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._version: Version | None = None
        self._label = QLabel(self)
        self.line = QLineEdit(self)
        self.line.setPlaceholderText(self.tr("a note, if you like"))
        self.line.setAccessibleName(self.tr("Note to the saved version"))
        self.line.setMaxLength(200)
        self.line.setFixedWidth(300)
        self.line.returnPressed.connect(self._keep)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 8, 0)
        row.setSpacing(8)
        row.addWidget(self._label)
        row.addWidget(self.line)
        self.hide()
        session.committed.connect(self._gone)
        session.pathChanged.connect(self._gone)

    @Slot(object)
    def offer(self, version: Version | None) -> None:
        """Something was saved as this version; None: nothing new."""
        self._version = version
        if version is not None:
            self._label.setText(self.tr("Saved as version {0}").format(version.number))
            self.line.setText(version.note)
            self.show()

    def take_keyboard(self) -> None:
        """Write the note now, where one can be written."""
        if self.isVisible():
            self.line.setFocus(Qt.FocusReason.ShortcutFocusReason)

    @Slot()
    def _gone(self) -> None:
        self._version = None
        self.hide()

    @Slot()
    def _keep(self) -> None:
        if self._version is not None and self._session.path is not None:
            try:
                versions.annotate(self._session.path, self._version.number, self.line.text())
            except RecipeError as error:
                self.said.emit(str(error))
                return
        self._gone()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Esc leaves it without a note."""
        if event.key() == Qt.Key.Key_Escape:
            self._gone()
        else:
            super().keyPressEvent(event)
