"""The start page: go on, open, begin. It shows when no recipe is named, and whenever it is asked for."""

from __future__ import annotations

from importlib.resources import files
from pathlib import Path

from PySide6.QtCore import QCoreApplication, Qt, Signal, Slot
from PySide6.QtWidgets import QFrame, QLabel, QPushButton, QScrollArea, QVBoxLayout, QWidget

from designer.forecast import forecast
from designer.judge.meet import Met
from designer.make import kernel
from designer.recipe import file as recipes
from designer.recipe.document import Recipe
from designer.recipe.error import RecipeError
from designer.recipe.examples import examples, title
from styles.reader import house_keys
from widgets.asking import Asker, Stop
from widgets.files import FileWork, read
from widgets.flow import flowing
from widgets.judging import known_style
from widgets.preferences import Preferences
from widgets.room import Turning, scrolling
from widgets.session import Session
from widgets.start.example_grid import Example, ExampleGrid
from widgets.start.from_style import FromStyle
from widgets.start.recent_list import RecentList
from widgets.theme import apply as dress
from widgets.together import Wrapped

BESIDE_PX = 800
"""The least room for the recent recipes beside what is new."""


def blank() -> Recipe:
    """The shortest make there is, to be built upon."""
    return recipes.reads(files("designer.recipe").joinpath("blank.toml").read_text(encoding="utf-8"))


def _pictured(path: Path) -> Example:
    """An example with its make; one that can't be read says so in its place."""
    try:
        recipe, _ = read(path)
        kernel.warm_up()
        made = forecast(recipe)
    except RecipeError as error:
        return Example(path, title(path), str(error))
    style = known_style(recipe.style)
    return Example(
        path, recipe.name, style.title if style is not None else QCoreApplication.translate("Start", "no style"), made
    )


class StartPlace(QWidget):
    """Recent recipes, a first recipe from a style, the examples."""

    opened = Signal()
    """a recipe was opened, or the one that is open is gone on with"""

    def __init__(
        self, session: Session, work: FileWork, preferences: Preferences, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._session, self._work, self._preferences = session, work, preferences
        self._listed: list[tuple[Path, bool]] | None = None
        """the files shown, and whether each was there"""
        self.pictures = Asker(self)
        self.pictures.answered.connect(lambda _, found: self.grid.put(found))
        self.title = QLabel(self.tr("What will you make?"), self)
        self.title.setFont(dress.font("title", bold=True))
        self.go_on = QPushButton(self)
        self.go_on.clicked.connect(self.opened)
        self.open = QPushButton(self.tr("Open a file…"), self)
        self.open.clicked.connect(self._ask_and_open)
        self.blank = QPushButton(self.tr("Blank recipe"), self)
        self.blank.setToolTip(self.tr("The shortest make there is, from ripening to press, to build upon"))
        self.blank.clicked.connect(lambda: self._begin(blank()))
        self.recent = RecentList(self)
        self.recent.chosen.connect(self._open)
        self.recent.forgotten.connect(self._forget)
        self.from_style = FromStyle(self)
        self.from_style.made.connect(self._take)
        self.grid = ExampleGrid(self)
        self.grid.chosen.connect(self._open)
        self._lay_out()
        session.documentChanged.connect(self._named)
        preferences.changed.connect(self._recent)
        self.refresh()

    def _lay_out(self) -> None:
        buttons = flowing(self.go_on, self.open, self.blank, spacing=10)
        head = Turning([(self.title, 1), (buttons, 0)], BESIDE_PX)
        recent = self._card(self.tr("Recent recipes"), self.recent, scrolls=True)
        both = Turning(
            [(recent, 2), (self._card(self.tr("New from a style"), self.from_style), 3)], BESIDE_PX, spacing=14
        )
        inside = QWidget()
        column = QVBoxLayout(inside)
        column.setContentsMargins(24, 14, 24, 10)
        column.setSpacing(12)
        column.addWidget(head)
        column.addWidget(both)
        words = Wrapped(self.tr("Examples of a dairy we made up; each opens as a copy of your own"))
        words.setFont(dress.font("head", bold=True))
        column.addWidget(words)
        column.addWidget(self.grid)
        column.addStretch(1)
        self._area = scrolling(inside, across=False)
        whole = QVBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.addWidget(self._area)

    def _card(self, title: str, content: QWidget, *, scrolls: bool = False) -> QFrame:
        card = QFrame(self)
        card.setObjectName("card")
        card.setMinimumHeight(150 if scrolls else 296)
        card.setMaximumHeight(380)
        column = QVBoxLayout(card)
        column.setContentsMargins(16, 12, 16, 14)
        column.setSpacing(8)
        words = QLabel(title, card)
        words.setFont(dress.font("head", bold=True))
        column.addWidget(words)
        if not scrolls:
            column.addWidget(content, 1)
            return card
        area = QScrollArea(card)
        area.setWidget(content)
        area.setWidgetResizable(True)
        area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        column.addWidget(area, 1)
        return card

    # ---- showing

    @Slot()
    def refresh(self) -> None:
        """Bring what is shown up to date."""
        self._named()
        self._recent()
        self.from_style.fill()
        self.go_on.setFocus(Qt.FocusReason.OtherFocusReason)
        paths = examples()
        if not self.grid.cards:
            self.grid.put([Example(path, title(path), "") for path in paths])

            def question(stop: Stop) -> list[Example]:
                return [_pictured(path) for path in paths if not stop()]

            self.pictures.ask({"examples": question})

    @Slot()
    def _named(self) -> None:
        self.go_on.setText(self.tr("Go on with {0}").format(self._session.recipe.name))

    @Slot()
    def _recent(self) -> None:
        remembered = [(path, path.is_file()) for path in self._preferences.remembered]
        if self._listed != remembered:
            self._listed = remembered
            self.recent.put([path for path, _ in remembered])

    def start_new(self) -> None:
        """Put the keyboard where a new recipe begins."""
        self.from_style.search.setFocus(Qt.FocusReason.ShortcutFocusReason)
        self.from_style.search.selectAll()

    def set_system(self, system: str) -> None:
        """Metric or US units."""
        self.from_style.set_system(system)

    # ---- doing

    @Slot(Path)
    def _open(self, path: Path) -> None:
        if self._work.open(path):
            self.opened.emit()

    @Slot()
    def _ask_and_open(self) -> None:
        if self._work.ask_and_open():
            self.opened.emit()

    @Slot(Path)
    def _forget(self, path: Path) -> None:
        self._preferences.forget(path)
        self.open.setFocus()

    def _begin(self, recipe: Recipe) -> None:
        """A recipe of a house style goes where that lies, or its style would not be found."""
        own = recipe.style in house_keys() and self._session.path is not None
        folder = self._session.path.parent if own and self._session.path is not None else None
        if self._work.begin(recipe, folder):
            self.opened.emit()

    @Slot(object)
    def _take(self, met: Met) -> None:
        notes = " ".join((*met.notes, *(() if met.reached and not met.missed else (met.sentence,))))
        self._begin(met.recipe.model_copy(update={"notes": notes}))

    def stop(self) -> None:
        """End what runs beside the window."""
        self.pictures.stop()
        self.from_style.stop()
