"""The menu of what may stand beside the open make: a file, an example, a kept version, a style's middle, a lane."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QCoreApplication, QObject, Signal, Slot
from PySide6.QtWidgets import QFileDialog, QMenu, QWidget

from designer.judge.beside import Another, Beside, Lanes, Middle, curd_lanes, lane_name
from designer.recipe import versions
from designer.recipe.document import Recipe
from designer.recipe.error import RecipeError
from designer.recipe.examples import examples, title
from styles.reader import Style, StyleError, house_keys, style, styles
from widgets.files import FILTER, read
from widgets.session import Session

NOTE_LETTERS = 60


class Partners(QObject):
    """Fills one menu a kind; `chosen(Beside)` when one is picked, `failed(sentence)` where it can't be had."""

    chosen = Signal(object)
    failed = Signal(str)

    def __init__(self, session: Session, parent: QWidget) -> None:
        super().__init__(parent)
        self.session = session
        self._window = parent
        self.examples, self.versions = QMenu(self.tr("An &example"), parent), QMenu(self.tr("A saved &version"), parent)
        self.middles = QMenu(self.tr("The middle of a &style"), parent)
        self.lanes = QMenu(self.tr("&Lanes of this vat"), parent)
        for menu, fill in (
            (self.examples, self._fill_examples),
            (self.versions, self._fill_versions),
            (self.middles, self._fill_middles),
            (self.lanes, self._fill_lanes),
        ):
            menu.aboutToShow.connect(fill)
        self.all = QMenu(parent)
        self.all.addAction(self.tr("A &recipe file…")).triggered.connect(self.ask_and_open)
        for menu in (self.examples, self.versions, self.middles, self.lanes):
            self.all.addMenu(menu)

    @Slot()
    def ask_and_open(self) -> None:
        """Ask which recipe to put beside the open one."""
        start = str(self.session.path.parent) if self.session.path is not None else ""
        kinds = QCoreApplication.translate("Files", "Recipes ({0})").format(FILTER)
        name, _ = QFileDialog.getOpenFileName(self._window, self.tr("Open a recipe to compare with"), start, kinds)
        if name:
            self.open_file(Path(name))

    def open_file(self, path: Path) -> None:
        """Put the recipe of a file beside the open one."""
        self._put(lambda: self._named(read(path)[0]))

    def _named(self, other: Recipe) -> Beside:
        return Another(other, "" if other.name != self.session.recipe.name else self.tr("the other"))

    def _put(self, made: Callable[[], Beside]) -> None:
        try:
            self.chosen.emit(made())
        except (RecipeError, StyleError) as error:
            self.failed.emit(str(error))

    # ---- filling

    @Slot()
    def _fill_examples(self) -> None:
        self.examples.clear()
        for path in examples():
            action = self.examples.addAction(title(path))
            action.triggered.connect(lambda _=False, path=path: self.open_file(path))

    @Slot()
    def _fill_versions(self) -> None:
        menu, path = self.versions, self.session.path
        menu.clear()
        try:
            kept = versions.versions(path) if path is not None else ()
        except RecipeError as error:
            self._nothing(menu, str(error))
            return
        for one in reversed(kept):
            said = " ".join(f"{one.note or one.changed}".split())
            said = said if len(said) <= NOTE_LETTERS else said[: NOTE_LETTERS - 1] + "…"
            action = menu.addAction(f"{one.number}  {one.saved.astimezone():%Y-%m-%d %H:%M}  {said}".rstrip())
            called = self.tr("version {0}").format(one.number)
            action.triggered.connect(
                lambda _=False, one=one, called=called: self._put(lambda: Another(versions.recipe_of(one), called))
            )
        if not kept:
            self._nothing(menu, self.tr("None yet: every save keeps a version"))

    @Slot()
    def _fill_middles(self) -> None:
        menu, own = self.middles, self.session.recipe.style
        menu.clear()
        houses = []
        for key in house_keys():
            try:
                houses.append(style(key))
            except StyleError as error:
                self._nothing(menu, str(error))
        every = sorted((*houses, *styles()), key=lambda one: one.title)
        first = [one for one in every if one.key == own]
        for one in first:
            self._middle(menu, one)
        if first:
            menu.addSeparator()
        for one in every:
            if one.key != own:
                self._middle(menu, one)

    def _middle(self, menu: QMenu, one: Style) -> None:
        action = menu.addAction(one.title.replace("&", "&&"))
        action.triggered.connect(lambda _=False, key=one.key: self._put(lambda: Middle(style(key))))

    @Slot()
    def _fill_lanes(self) -> None:
        menu, recipe = self.lanes, self.session.recipe
        menu.clear()
        lanes = curd_lanes(recipe)
        for at, left in enumerate(lanes):
            for right in lanes[at + 1 :]:
                names = [lane_name(recipe, one) for one in (left, right)]
                action = menu.addAction(self.tr("{0} against {1}").format(*names))
                action.triggered.connect(lambda _=False, left=left, right=right: self._put(lambda: Lanes(left, right)))
        if len(lanes) < 2:
            self._nothing(menu, self.tr("This vat is not split: no branch of its curd"))

    def _nothing(self, menu: QMenu, words: str) -> None:
        menu.addAction(words).setEnabled(False)
