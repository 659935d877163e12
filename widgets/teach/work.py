"""The pages of teaching, their actions, their menu, and the view for the projector, in one piece for the window."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING, Final, cast

from PySide6.QtCore import QT_TRANSLATE_NOOP, QObject, Slot
from PySide6.QtWidgets import QMainWindow, QMenu, QWidget

from widgets import wording
from widgets.actions import Actions, Spec
from widgets.files import FileWork
from widgets.rail import Place, View
from widgets.session import Session
from widgets.teach.projector import Projecting
from widgets.tour import views
from widgets.variants.page import Page

if TYPE_CHECKING:
    from widgets.teach.depths_page import DepthsPage

N = QT_TRANSLATE_NOOP
UNDER: Final = "design"
PAGES: Final = (
    ("guess", N("Actions", "&Guess first, then show…"), "Ctrl+G"),
    ("vats", N("Actions", "Small &vats side by side…"), "Ctrl+Shift+V"),
    ("depths", N("Actions", "What is &behind it, at three depths…"), "Shift+F1"),
    ("lesson", N("Actions", "&Sheet for learners…"), "Ctrl+Shift+L"),
)
"""key of the page, words of its action, its key"""
PROJECT: Final = N("Actions", "View for the &projector")


class Teaching(QObject):
    """Makes the pages when they are first opened; `projecting` is the view for the projector."""

    def __init__(
        self, session: Session, files: FileWork, go: Callable[[str], None], curve: QWidget, scheme: Callable[[], str],
        window: QMainWindow,
    ) -> None:  # fmt: skip
        super().__init__(window)
        self._session, self._files, self._go = session, files, go
        self.projecting = Projecting(window, session, curve, scheme)
        self.system = "metric"
        self.pages: dict[str, Page] = {}

    def places(self) -> list[Place]:
        """The pages, each under the place Design."""
        return [self._place(key) for key, _, _ in PAGES]

    def _place(self, key: str) -> Place:
        shown = {"guess": views.guess, "vats": views.vats}.get(key)
        faces = shown(self.pages) if shown is not None else (View(),)
        return Place(key, "", "", lambda: self._page(key), lambda: self._opened(key), UNDER, views=faces)

    def specs(self) -> list[Spec]:
        """An action for every page, and one for the projector."""
        pages = [Spec(key, text, lambda key=key: self._go(key), "", keys) for key, text, keys in PAGES]
        return [*pages, Spec("projector", PROJECT, self.projecting.toggle, "", "F11")]

    def fill(self, menu: QMenu, actions: Actions) -> None:
        """Put the actions into a menu."""
        menu.addActions([actions[key] for key, *_ in PAGES])
        menu.addSeparator()
        menu.addAction(actions["projector"])

    def _page(self, key: str) -> QWidget:
        made = self._made(key)
        made.system = wording.system_of(self.system)
        made.left.connect(lambda: self._go(UNDER))
        made.said.connect(self._files.tell)
        self.pages[key] = made
        return made

    def _made(self, key: str) -> Page:
        """The page; what it works with is loaded now, so that the window opens sooner."""
        match key:
            case "guess":
                from widgets.teach.guess_page import GuessPage

                guess = GuessPage(self._session)
                guess.deeper.connect(self.explain)
                return guess
            case "vats":
                from widgets.teach.vats_page import VatsPage

                return VatsPage(self._session)
            case "depths":
                from widgets.teach.depths_page import DepthsPage

                return DepthsPage(self._session)
        from widgets.teach.lesson_page import LessonPage

        return LessonPage(self._session)

    @Slot(str)
    def explain(self, key: str) -> None:
        """Open the explanation of a topic."""
        self._go("depths")
        cast("DepthsPage", self.pages["depths"]).choose(key)

    def _opened(self, key: str) -> None:
        self.pages[key].opened()

    def stop(self) -> None:
        """The desk as it was, before the window goes."""
        self.projecting.leave()

    def set_system(self, system: str) -> None:
        """Metric or US units."""
        self.system = system
        self.projecting.set_system(system)
        for page in self.pages.values():
            page.set_system(system)
