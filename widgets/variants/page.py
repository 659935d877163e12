"""A page that opens from a place: a way back, a title, one sentence, what it shows, and a foot with what it can do."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from html import escape

from PySide6.QtCore import QCoreApplication, Qt, Signal, Slot
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QHBoxLayout, QLabel, QPushButton, QScrollArea, QTreeWidget, QVBoxLayout, QWidget

from designer.units import System
from widgets import wording
from widgets.room import scrolling
from widgets.session import Session
from widgets.theme import apply as dress
from widgets.together import Wrapped

BESIDE_PX = 800
"""The least room for the two halves of a page beside each other."""


def button(text: str, pressed: Callable[[], object] | None = None, *, strong: bool = False) -> QPushButton:
    """A push button of a page."""
    made = QPushButton(text)
    made.setProperty("strong", strong)
    made.setMinimumHeight(28)
    if pressed is not None:
        made.clicked.connect(lambda: pressed())
    return made


def note(text: str = "", role: str = "soft") -> QLabel:
    """A quieter line that wraps."""
    made = Wrapped(text)
    made.setProperty("role", role)
    return made


class Dotted(Wrapped):
    """Text that wraps, as it is; or lines under each other, each behind a dot its further lines do not run under."""

    def __init__(self, role: str = "") -> None:
        super().__init__()
        self.setTextFormat(Qt.TextFormat.PlainText)
        self.setProperty("role", role)

    def setText(self, text: str) -> None:
        """Text as it is: it may be the maker's, so nothing in it is a mark."""
        self.setTextFormat(Qt.TextFormat.PlainText)
        super().setText(text)

    def put(self, lines: Iterable[str]) -> None:
        """Lines, each behind its dot."""
        rows = (f"<tr><td>•&nbsp;&nbsp;</td><td>{escape(line)}</td></tr>" for line in lines)
        self.setTextFormat(Qt.TextFormat.RichText)
        super().setText(f'<table cellspacing="0" cellpadding="2">{"".join(rows)}</table>')


def scrolled(inside: QWidget) -> QScrollArea:
    """A part of a page that scrolls where there is too little room, by the keyboard too."""
    area = scrolling(inside, across=False)
    area.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
    area.setAccessibleName(QCoreApplication.translate("Page", "Part of the page; arrows scroll it"))
    return area


def listed(name: str, heads: list[str]) -> QTreeWidget:
    """A plain list of a page, a line a row."""
    made = QTreeWidget()
    made.setAccessibleName(name)
    made.setColumnCount(len(heads))
    made.setHeaderLabels(heads)
    made.setRootIsDecorated(False)
    made.setAlternatingRowColors(True)
    made.setUniformRowHeights(True)
    made.setFrameShape(QTreeWidget.Shape.NoFrame)
    return made


class Page(QWidget):
    """Base of the pages. Esc, and the button in the corner, lead back to the place it opened from."""

    left = Signal()
    said = Signal(str)
    """a sentence: what could not be done"""

    def __init__(self, session: Session, title: str, back: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.session = session
        self.system: System = "metric"
        self.title = Wrapped(title, self)
        self.title.setFont(dress.font("title", bold=True))
        self.back = button(back, self.left.emit)
        self.back.setToolTip(self.tr("Back (Esc)"))
        self.head = QHBoxLayout()
        self.head.setSpacing(10)
        self.head.addWidget(self.back)
        self.head.addSpacing(6)
        self.head.addWidget(self.title, 1)
        self.sentence = Wrapped(self)
        self.sentence.setTextFormat(Qt.TextFormat.PlainText)
        self.body = QVBoxLayout()
        self.body.setSpacing(10)
        self.foot = QHBoxLayout()
        self.foot.setSpacing(10)
        column = QVBoxLayout(self)
        column.setContentsMargins(24, 16, 24, 14)
        column.setSpacing(10)
        column.addLayout(self.head)
        column.addWidget(self.sentence)
        column.addLayout(self.body, 1)
        column.addLayout(self.foot)

    def set_system(self, system: str) -> None:
        """Metric or US units."""
        self.system = wording.system_of(system)
        self.refresh()

    def opened(self) -> None:
        """The page is shown."""
        self.refresh()

    def refresh(self) -> None:
        """Bring what is shown up to date."""

    @Slot()
    def _another(self) -> None:
        """The recipe is another: the pages that follow it connect this."""
        if self.isVisible():
            self.refresh()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Esc leads back."""
        if event.key() == Qt.Key.Key_Escape:
            self.left.emit()
        else:
            super().keyPressEvent(event)

    def stop(self) -> None:
        """End what runs beside the window."""
