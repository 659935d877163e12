"""What was open lately: each file with its folder, what is gone marked, and a way to leave it out of the list."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QLabel, QPushButton, QSizePolicy, QToolButton, QVBoxLayout, QWidget

from widgets.theme import apply as dress
from widgets.together import Wrapped


def spoken(path: Path) -> str:
    """A file's name as words."""
    name = path.stem.replace("-", " ").replace("_", " ")
    return name[:1].upper() + name[1:]


class RecentList(QWidget):
    """One row a file, newest first."""

    chosen = Signal(Path)
    forgotten = Signal(Path)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.rows: dict[Path, tuple[QPushButton, QToolButton]] = {}
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.setSpacing(2)
        self._column.setAlignment(Qt.AlignmentFlag.AlignTop)

    def put(self, paths: Sequence[Path]) -> None:
        """Show these files."""
        while (item := self._column.takeAt(0)) is not None:
            widget = item.widget()
            if widget is not None:
                widget.hide()
                widget.deleteLater()
        self.rows = {}
        for path in paths:
            self._column.addWidget(self._row(path))
        if not paths:
            words = Wrapped(
                self.tr(
                    "Recipes you open or save will stand here. A recipe is a plain text file of your own: keep it "
                    "wherever you keep your papers."
                ),
                self,
            )
            words.setProperty("role", "soft")
            self._column.addWidget(words)

    def _row(self, path: Path) -> QWidget:
        there = path.is_file()
        row = QWidget(self)
        line = QHBoxLayout(row)
        line.setContentsMargins(0, 0, 0, 0)
        line.setSpacing(4)
        button = QPushButton(row)
        button.setObjectName("row")
        button.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)
        button.setEnabled(there)
        button.clicked.connect(lambda: self.chosen.emit(path))
        inside = QHBoxLayout(button)
        inside.setContentsMargins(8, 2, 8, 2)
        name, where = QLabel(spoken(path), button), QLabel(button)
        where.setText(path.parent.name if there else "\u25b2 " + self.tr("not there any more"))
        where.setProperty("role", "soft" if there else "near")
        name.setFont(dress.font("body", bold=there))
        for label in (name, where):
            label.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        inside.addWidget(name, 1)
        inside.addWidget(where)
        button.setMinimumHeight(30)
        button.setToolTip(str(path))
        button.setAccessibleName(f"{spoken(path)}, {where.text()}")
        away = QToolButton(row)
        away.setText("\u00d7")
        away.setMinimumSize(28, 28)
        away.setToolTip(self.tr("Leave {0} out of this list; the file stays where it is").format(spoken(path)))
        away.setAccessibleName(away.toolTip())
        away.clicked.connect(lambda: self.forgotten.emit(path))
        line.addWidget(button, 1)
        line.addWidget(away)
        self.rows[path] = (button, away)
        return row
