"""Look up: one search over words, figures and constants, each with its source; it stays open beside the work."""

from __future__ import annotations

from html import escape
from typing import Final

from PySide6.QtCore import QT_TRANSLATE_NOOP, QCoreApplication, QEvent, Qt, Signal, Slot
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import (
    QComboBox,
    QDialog,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QListWidget,
    QListWidgetItem,
    QPushButton,
    QSplitter,
    QTextBrowser,
    QVBoxLayout,
    QWidget,
)

from designer.judge.verdict import Row, Verdict
from designer.language import word
from designer.units import System
from widgets.help.entries import (
    CONSTANT,
    FIGURE,
    LAW,
    SETTING,
    WORD,
    Entry,
    constants,
    figure,
    figures,
    laws,
    settings,
    words,
)
from widgets.theme import apply as dress
from widgets.wording import system_of

N = QT_TRANSLATE_NOOP
KIND_WORDS: Final = {
    "": N("LookUp", "Everything"),
    WORD: N("LookUp", "Words"),
    FIGURE: N("LookUp", "Figures of the style"),
    SETTING: N("LookUp", "Settings"),
    LAW: N("LookUp", "Laws of the model"),
    CONSTANT: N("LookUp", "Constants of the model"),
}


class SearchLine(QLineEdit):
    """A search line whose Up and Down move in the list below it."""

    stepped = Signal(int)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Up, Down, Page Up and Page Down go to the list."""
        steps = {Qt.Key.Key_Up: -1, Qt.Key.Key_Down: 1, Qt.Key.Key_PageUp: -8, Qt.Key.Key_PageDown: 8}
        step = steps.get(Qt.Key(event.key()))
        if step is None:
            super().keyPressEvent(event)
        else:
            self.stepped.emit(step)


def step_in(list_: QListWidget, by: int) -> None:
    """Move the selection among the items that are shown."""
    shown = [row for row in range(list_.count()) if not list_.item(row).isHidden()]
    if shown:
        here = shown.index(list_.currentRow()) if list_.currentRow() in shown else -1
        list_.setCurrentRow(shown[min(max(here + by, 0), len(shown) - 1)])


class LookUp(QDialog):
    """Search on the left, what was found on the right."""

    asked = Signal(str)
    """a place to go to, by its key"""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.setWindowTitle(self.tr("Look up"))
        self.setModal(False)
        self.resize(760, 520)
        self.entries: list[Entry] = []
        self.system = "metric"
        self._style = ""
        self.search = SearchLine(self)
        self.search.setPlaceholderText(self.tr("A word, a figure, a source …"))
        self.search.setAccessibleName(self.tr("Look up"))
        self.search.setClearButtonEnabled(True)
        self.search.textChanged.connect(self._filter)
        self.kind = QComboBox(self)
        self.kind.setAccessibleName(self.tr("What to look among"))
        for key, text in KIND_WORDS.items():
            self.kind.addItem(QCoreApplication.translate("LookUp", text), key)
        self.kind.currentIndexChanged.connect(self._filter)
        self.list = QListWidget(self)
        self.list.setAccessibleName(self.tr("Found"))
        self.list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.list.setTextElideMode(Qt.TextElideMode.ElideRight)
        self.list.currentRowChanged.connect(self._show)
        self.search.stepped.connect(lambda by: step_in(self.list, by))
        self.text = QTextBrowser(self)
        self.text.setAccessibleName(self.tr("What it says"))
        self.text.setOpenLinks(False)
        self.count = QLabel(self)
        self.count.setProperty("role", "soft")
        self.there = QPushButton(self.tr("Show where it is"), self)
        self.there.clicked.connect(self._go)
        close = QPushButton(self.tr("Close"), self)
        close.clicked.connect(self.close)
        for button in (self.there, close):
            button.setAutoDefault(False)
        self._lay_out(close)
        self._place = ""

    def _lay_out(self, close: QPushButton) -> None:
        head = QHBoxLayout()
        head.addWidget(self.search, 1)
        head.addWidget(self.kind)
        split = QSplitter(Qt.Orientation.Horizontal)
        split.addWidget(self.list)
        split.addWidget(self.text)
        split.setSizes([270, 460])
        split.setChildrenCollapsible(False)
        split.setHandleWidth(6)
        foot = QHBoxLayout()
        foot.addWidget(self.count, 1)
        foot.addWidget(self.there)
        foot.addWidget(close)
        column = QVBoxLayout(self)
        column.setContentsMargins(16, 16, 16, 14)
        column.setSpacing(10)
        column.addLayout(head)
        column.addWidget(split, 1)
        column.addLayout(foot)

    @property
    def _told(self) -> System:
        return system_of(self.system)

    def put(self, verdict: Verdict | None) -> None:
        """Take up the words, the constants and the figures of the verdict of now."""
        self._style = verdict.name if verdict is not None else ""
        self.entries = [*words(), *figures(verdict, self._told), *settings(self.system), *laws(), *constants()]
        self.list.clear()
        for entry in self.entries:
            item = QListWidgetItem(entry.title if not entry.second else f"{entry.title}  \u00b7  {entry.second}")
            item.setToolTip(item.text())
            self.list.addItem(item)
        self._filter()

    def look(self, text: str, kind: str = "") -> None:
        """Search for a text."""
        self.kind.setCurrentIndex(self.kind.findData(kind))
        self.search.setText(text)

    def open_at(self, key: str, kind: str = "") -> bool:
        """Show the entry that speaks of a quantity, a field or a kind; False where there is none."""
        found = next((i for i, one in enumerate(self.entries) if key in one.keys and kind in ("", one.kind)), None)
        if not key or found is None:
            return False
        self._choose(found)
        return True

    def open_row(self, row: Row) -> None:
        """Show the figure of this very row of the verdict, with its source; of its quantity, if the row is no more."""
        wanted = figure(row, self._style, self._told)
        if wanted in self.entries:
            self._choose(self.entries.index(wanted))
        elif not self.open_at(row.quantity, FIGURE):
            self.look(row.quantity.replace("_", " "))

    def _choose(self, at: int) -> None:
        self.look("")
        self.list.setCurrentRow(at)
        self.list.scrollToItem(self.list.item(at))

    @Slot()
    def _filter(self) -> None:
        """Show what holds every word typed: those that begin so by their title come to hand first."""
        wanted, kind = self.search.text().lower().split(), self.kind.currentData()
        shown = []
        for row, entry in enumerate(self.entries):
            hide = kind not in ("", entry.kind) or not all(word in entry.searched for word in wanted)
            self.list.item(row).setHidden(hide)
            if not hide:
                shown.append(row)
        said = self.tr("{0} found").format(len(shown))
        self.count.setText(said if shown else self.tr("Nothing found; a shorter word may do."))
        starts = [row for row in shown if wanted and self.entries[row].title.lower().startswith(" ".join(wanted))]
        if shown and (wanted or self.list.currentRow() not in shown):
            self.list.setCurrentRow((starts or shown)[0])
        if not shown:
            self.list.setCurrentRow(-1)

    @Slot(int)
    def _show(self, row: int) -> None:
        entry = self.entries[row] if 0 <= row < len(self.entries) else None
        self._place = entry.place if entry is not None else ""
        self.there.setEnabled(bool(self._place))
        self.text.setHtml("" if entry is None else self._html(entry))

    def changeEvent(self, event: QEvent) -> None:
        """Another palette while it is open."""
        super().changeEvent(event)
        if event.type() == QEvent.Type.PaletteChange and self.isVisible():
            self._show(self.list.currentRow())

    def _html(self, entry: Entry) -> str:
        c = dress.colours()
        soft = f'style="color:{c.soft}"'
        parts = [f"<h3>{escape(entry.title)}</h3>"]
        if entry.second:
            parts.append(f"<p {soft}>{escape(entry.second)}</p>")
        parts.append(f"<p>{escape(entry.says)}</p>")
        parts += [f"<p>{escape(text)}</p>" for text in entry.more]
        if entry.source:
            where = self.tr("Source: {0}").format(entry.source.rstrip("."))
            have = self.tr("How we have it: {0}").format(word(entry.have, "have")) if entry.have else ""
            parts.append(f"<p {soft}>{escape(where)}<br>{escape(have)}</p>")
        return "".join(parts)

    @Slot()
    def _go(self) -> None:
        if self._place:
            self.asked.emit(self._place)
