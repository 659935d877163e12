"""The pages of a variant, their actions, their menu: what the window is given in one piece."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from typing import Final

from PySide6.QtCore import QT_TRANSLATE_NOOP, QObject
from PySide6.QtWidgets import QMenu, QWidget

from widgets.actions import Actions, Spec
from widgets.files import FileWork
from widgets.rail import Place
from widgets.session import Session
from widgets.variants.page import Page
from widgets.variants.style_page import StylePage

N = QT_TRANSLATE_NOOP
PAGES: Final = (("house", "check", N("Actions", "&House style…"), "F9"),)
"""key of the page, the place it opens from, words of its action, its key"""


class Variants(QObject):
    """Makes the pages when they are first opened."""

    def __init__(self, session: Session, files: FileWork, go: Callable[[str], None], parent: QObject) -> None:
        super().__init__(parent)
        self._session, self._files, self._go = session, files, go
        self.system = "metric"
        self.pages: dict[str, Page] = {}

    def places(self) -> list[Place]:
        """The pages, each under its place."""
        return [Place(key, "", "", lambda key=key: self._page(key), lambda key=key: self._opened(key), under)
                for key, under, *_ in PAGES]  # fmt: skip

    def specs(self) -> list[Spec]:
        """An action for every page."""
        return [Spec(key, text, lambda key=key: self._go(key), "", keys) for key, _, text, keys in PAGES]

    def fill(self, menu: QMenu, actions: Actions) -> None:
        """Put the actions into a menu."""
        menu.addActions([actions[key] for key, *_ in PAGES])

    def _page(self, key: str) -> QWidget:
        under = next(under for page, under, *_ in PAGES if page == key)
        made = self._made(key)
        made.set_system(self.system)
        made.left.connect(lambda: self._go(under))
        made.said.connect(self._files.tell)
        self.pages[key] = made
        return made

    def _made(self, key: str) -> Page:
        return StylePage(self._session, self._files)

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

    def __iter__(self) -> Iterator[Page]:
        return iter(self.pages.values())
