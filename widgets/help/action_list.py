"""Every action of the window in one list to search: what the menus hold, the places, and each one's key."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from PySide6.QtCore import QEvent, Slot
from PySide6.QtGui import QAction, QBrush, QKeySequence
from PySide6.QtWidgets import (
    QDialog,
    QHeaderView,
    QLabel,
    QMenu,
    QMenuBar,
    QTreeWidget,
    QTreeWidgetItem,
    QVBoxLayout,
    QWidget,
)

from widgets.help.look_up import SearchLine
from widgets.theme import apply as dress

SEPARATOR = " \u203a "


@dataclass(frozen=True, slots=True)
class Found:
    """One action with where it stands ("Stage › Insert after the selected") and its key in words."""

    action: QAction
    where: str

    @property
    def words(self) -> str:
        """What it is called, without the mark of its letter."""
        return plain(self.action.text())

    @property
    def keys(self) -> str:
        """Its key as the system writes it, "" where it has none."""
        return self.action.shortcut().toString(QKeySequence.SequenceFormat.NativeText)


def plain(text: str) -> str:
    """A menu's words without the mark of its letter."""
    return text.replace("&&", "\0").replace("&", "").replace("\0", "&").rstrip("…").strip()


def in_menus(bar: QMenuBar) -> Iterator[Found]:
    """Every action of every menu, also of menus that are filled when they open."""
    for top in bar.actions():
        menu = top.menu()
        if isinstance(menu, QMenu):
            yield from _in(menu, plain(top.text()))


def _in(menu: QMenu, where: str) -> Iterator[Found]:
    menu.aboutToShow.emit()
    for action in menu.actions():
        inner = action.menu()
        if isinstance(inner, QMenu):
            yield from _in(inner, where + SEPARATOR + plain(action.text()))
        elif not action.isSeparator() and action.text():
            yield Found(action, where)


class ActionList(QDialog):
    """Type a few letters of what you want, Enter does it."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.setWindowTitle(self.tr("All actions"))
        self.resize(660, 480)
        self.found: list[Found] = []
        self.search = SearchLine(self)
        self.search.setPlaceholderText(self.tr("What do you want to do?"))
        self.search.setAccessibleName(self.tr("Find an action"))
        self.search.textChanged.connect(self._filter)
        self.search.returnPressed.connect(self._do)
        self.search.stepped.connect(self._step)
        self.list = QTreeWidget(self)
        self.list.setAccessibleName(self.tr("Actions"))
        self.list.setHeaderLabels([self.tr("Action"), self.tr("Where"), self.tr("Key")])
        self.list.setRootIsDecorated(False)
        self.list.setUniformRowHeights(True)
        self.list.setAlternatingRowColors(True)
        self.list.ensurePolished()  # else the first row is measured without the theme
        head = self.list.header()
        head.setStretchLastSection(False)
        head.setSectionResizeMode(0, QHeaderView.ResizeMode.Stretch)
        for column in (1, 2):
            head.setSectionResizeMode(column, QHeaderView.ResizeMode.ResizeToContents)
        self.list.itemActivated.connect(self._do)
        self.list.itemClicked.connect(self._do)
        self.none = QLabel(self.tr("No action is called so; a shorter word may do."), self)
        self.none.setProperty("role", "soft")
        column_ = QVBoxLayout(self)
        column_.setContentsMargins(16, 16, 16, 16)
        column_.addWidget(self.search)
        column_.addWidget(self.none)
        column_.addWidget(self.list, 1)

    def put(self, found: list[Found]) -> None:
        """List these, those that can be done first."""
        self.found = sorted(found, key=lambda one: not one.action.isEnabled())
        self.list.clear()
        for one in self.found:
            tick = "\u2713 " if one.action.isChecked() else ""
            item = QTreeWidgetItem([tick + one.words, one.where, one.keys])
            item.setToolTip(0, one.action.statusTip() or one.words)
            item.setFont(2, dress.font("body", bold=True))
            item.setDisabled(not one.action.isEnabled())
            self.list.addTopLevelItem(item)
        self._colour()
        self.search.clear()
        self._filter("")

    def _colour(self) -> None:
        soft = QBrush(dress.ink(dress.colours().soft))
        for row in range(self.list.topLevelItemCount()):
            self.list.topLevelItem(row).setForeground(1, soft)

    def changeEvent(self, event: QEvent) -> None:
        """Another palette while it is open."""
        super().changeEvent(event)
        if event.type() == QEvent.Type.PaletteChange and self.isVisible():
            self._colour()

    def shown(self) -> list[int]:
        """Rows of `found` that match what was typed."""
        return [row for row in range(len(self.found)) if not self.list.topLevelItem(row).isHidden()]

    def row(self) -> int:
        """The row chosen, -1 where none is."""
        item = self.list.currentItem()
        return self.list.indexOfTopLevelItem(item) if item is not None and not item.isHidden() else -1

    @Slot(int)
    def _step(self, by: int) -> None:
        shown = self.shown()
        if shown:
            here = shown.index(self.row()) if self.row() in shown else -1
            self.list.setCurrentItem(self.list.topLevelItem(shown[min(max(here + by, 0), len(shown) - 1)]))

    @Slot(str)
    def _filter(self, text: str) -> None:
        wanted = text.lower().split()
        for row, one in enumerate(self.found):
            held = f"{one.words} {one.where} {one.keys}".lower()
            self.list.topLevelItem(row).setHidden(not all(word in held for word in wanted))
        shown = self.shown()
        self.none.setVisible(not shown)
        starts = [row for row in shown if wanted and self.found[row].words.lower().startswith(" ".join(wanted))]
        if shown:
            self.list.setCurrentItem(self.list.topLevelItem((starts or shown)[0]))

    @Slot()
    def _do(self) -> None:
        row = self.row()
        if row >= 0 and self.found[row].action.isEnabled():
            self.accept()
            self.found[row].action.trigger()
