"""The pages of a variant, their actions, their menu: what the window is given in one piece."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING, Final, cast

from PySide6.QtCore import QT_TRANSLATE_NOOP, QObject, Signal
from PySide6.QtWidgets import QMenu, QWidget

from widgets import wording
from widgets.actions import Actions, Spec
from widgets.files import FileWork
from widgets.rail import Place, View
from widgets.session import Session
from widgets.tour import views
from widgets.variants.note_bar import NoteBar
from widgets.variants.page import Page

if TYPE_CHECKING:
    from widgets.batch.desk import LedgerDesk
    from widgets.variants.style_page import StylePage

N = QT_TRANSLATE_NOOP
PAGES: Final = (
    ("scale", "milk", N("Actions", "Another &amount of milk…"), "F5"),
    ("other_milk", "milk", N("Actions", "Another &milk…"), "F6"),
    ("standardise", "milk", N("Actions", "&Standardise the milk…"), "F4"),
    ("versions", "design", N("Actions", "&Versions…"), "F7"),
    ("nearest", "check", N("Actions", "What would have to &change for it to be a …?"), "F8"),
    ("house", "check", N("Actions", "&House style…"), "F9"),
    ("batches", "design", N("Actions", "Made &batches and their tasting…"), "F3"),
)
"""key of the page, the place it opens from, words of its action, its key"""
NOTE: Final = N("Actions", "&Note to the last save")


class Variants(QObject):
    """Makes the pages when they are first opened."""

    beside = Signal(object, str)
    """a recipe to put beside the open one, and what it is called"""

    def __init__(
        self, session: Session, files: FileWork, go: Callable[[str], None], data: Path, parent: QWidget
    ) -> None:
        super().__init__(parent)
        self._session, self._files, self._go = session, files, go
        self._data = data
        self._ledger: LedgerDesk | None = None
        self.system = "metric"
        self.pages: dict[str, Page] = {}
        self.note = NoteBar(session, parent)
        """for the status bar"""
        self.note.said.connect(files.tell)
        files.kept.connect(self.note.offer)

    @property
    def ledger(self) -> LedgerDesk:
        """The ledger of batches, opened when a page first asks for it."""
        if self._ledger is None:
            from designer.batch.ledger import FILE
            from widgets.batch.desk import LedgerDesk

            self._ledger = LedgerDesk(self._data / FILE, self._session, self)
            self._ledger.problem.connect(self._files.tell)
        return self._ledger

    def places(self) -> list[Place]:
        """The pages, each under its place."""
        return [self._place(key, under) for key, under, *_ in PAGES]

    def _place(self, key: str, under: str) -> Place:
        shown = {"batches": views.batches, "versions": views.versions}.get(key)
        faces = shown(self.pages) if shown is not None else (View(),)
        return Place(key, "", "", lambda: self._page(key), lambda: self._opened(key), under, views=faces)

    def specs(self) -> list[Spec]:
        """An action for every page, and one for the note."""
        pages = [Spec(key, text, lambda key=key: self._go(key), "", keys) for key, _, text, keys in PAGES]
        return [*pages, Spec("note", NOTE, self.note.take_keyboard, "", "Ctrl+Shift+M")]

    def fill(self, menu: QMenu, actions: Actions) -> None:
        """Put the actions into a menu."""
        menu.addActions([actions[key] for key, *_ in PAGES[:3]])
        menu.addSeparator()
        menu.addActions([actions["versions"], actions["note"]])
        menu.addSeparator()
        menu.addActions([actions[key] for key, *_ in PAGES[4:]])

    def _page(self, key: str) -> QWidget:
        under = next(under for page, under, *_ in PAGES if page == key)
        made = self._made(key)
        made.system = wording.system_of(self.system)
        made.left.connect(lambda: self._go(under))
        made.said.connect(self._files.tell)
        self.pages[key] = made
        return made

    def _made(self, key: str) -> Page:
        """The page; what it works with is loaded now, so that the window opens sooner."""
        match key:
            case "scale":
                from widgets.variants.scale_page import ScalePage

                return ScalePage(self._session)
            case "other_milk":
                from widgets.variants.milk_page import MilkPage

                return MilkPage(self._session)
            case "standardise":
                from widgets.variants.standard_page import StandardPage

                return StandardPage(self._session)
            case "nearest":
                from widgets.variants.nearest_page import NearestPage

                return NearestPage(self._session)
            case "versions":
                from widgets.variants.versions_page import VersionsPage

                versions = VersionsPage(self._session, self._files)
                versions.beside.connect(self.beside)
                return versions
            case "batches":
                from widgets.batch.page import BatchesPage

                batches = BatchesPage(self._session, self.ledger)
                batches.style_asked.connect(self._house_of_liked)
                return batches
        from widgets.variants.style_page import StylePage

        return StylePage(self._session, self._files, self.ledger)

    def _house_of_liked(self) -> None:
        self._go("house")
        cast("StylePage", self.pages["house"]).begin_from_liked()

    def _opened(self, key: str) -> None:
        page = self.pages[key]
        page.opened()
        page.setFocus()

    def set_system(self, system: str) -> None:
        """Metric or US units."""
        self.system = system
        for page in self.pages.values():
            page.set_system(system)

    def stop(self) -> None:
        """End what runs beside the window."""
        for page in self.pages.values():
            page.stop()
        if self._ledger is not None:
            self._ledger.close()
