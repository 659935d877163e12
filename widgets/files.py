"""Opening and saving of recipes in the window, with the dialogs that go with it; every failure is a sentence."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QCoreApplication, QObject, Signal
from PySide6.QtWidgets import QFileDialog, QMessageBox, QWidget

from designer.recipe import file as files
from designer.recipe import versions
from designer.recipe.document import Recipe
from designer.recipe.error import RecipeError
from widgets.journal import Journal
from widgets.judging import adopt_beside
from widgets.preferences import Preferences
from widgets.session import Session

FILTER = "*.toml"


def examples() -> list[Path]:
    """The example recipes, by name."""
    import example_recipes

    return sorted(Path(example_recipes.__path__[0]).glob("*.toml"))


def is_example(path: Path) -> bool:
    """True for a recipe that belongs to the program: it is opened as a copy without a file."""
    return any(path.resolve() == one.resolve() for one in examples())


def read(path: Path) -> tuple[Recipe, str]:
    """A recipe and the text of its file. RecipeError names file and place."""
    text = files.read_text(path)
    try:
        return files.reads(text), text
    except RecipeError as error:
        raise RecipeError(error.sentence, f"{path.name}, {error.where}" if error.where else path.name) from None


class FileWork(QObject):
    """What the File menu does, for one window."""

    kept = Signal(object)
    """the recipe was saved: the version kept, None where nothing had changed"""

    def __init__(self, session: Session, preferences: Preferences, journal: Journal, window: QWidget) -> None:
        super().__init__(window)
        self._session, self._preferences, self._journal, self._window = session, preferences, journal, window
        session.committed.connect(self._journal_edit)

    # ---- opening

    def open(self, path: Path) -> bool:
        """Open a recipe in place of the one here; asks about unsaved work first."""
        if not self.may_leave():
            return False
        try:
            recipe, text = read(path)
            self._session.march(recipe)
        except RecipeError as error:
            self.tell(str(error))
            return False
        own = None if is_example(path) else path.resolve()
        adopt_beside(path)
        self._session.load(recipe, own, text)
        self._journal.clear()
        if own is not None:
            self._preferences.remember(own)
        return True

    def open_copy(self, recipe: Recipe, text: str) -> bool:
        """Open a recipe as one that has no file yet; asks about unsaved work first."""
        if not self.may_leave():
            return False
        self._session.load(recipe, None, text)
        self._journal.clear()
        return True

    def begin(self, recipe: Recipe) -> bool:
        """Begin with a recipe that has no file yet: it counts as unsaved. Asks about unsaved work first."""
        if not self.may_leave():
            return False
        try:
            self._session.march(recipe)
        except RecipeError as error:
            self.tell(str(error))
            return False
        adopt_beside(None)
        self._session.load(recipe, None, None)
        self._session.stack.resetClean()
        self._journal_edit(recipe)
        return True

    def ask_and_open(self) -> bool:
        """Ask which recipe to open; True where one was opened."""
        start = str(self._session.path.parent) if self._session.path is not None else ""
        name, _ = QFileDialog.getOpenFileName(self._window, self.tr("Open recipe"), start, self._filter())
        return bool(name) and self.open(Path(name))

    # ---- saving

    def save(self) -> bool:
        """Save where it came from, or ask where."""
        path = self._session.path
        return self.save_to(path) if path is not None else self.ask_and_save()

    def ask_and_save(self) -> bool:
        """Ask where to save."""
        start = self._session.path or Path.home() / f"{_file_name(self._session.recipe.name)}.toml"
        name, _ = QFileDialog.getSaveFileName(self._window, self.tr("Save recipe as"), str(start), self._filter())
        if not name:
            return False
        path = Path(name)
        return self.save_to(path if path.suffix else path.with_suffix(".toml"))

    def save_to(self, path: Path) -> bool:
        """Save to a file; False, with the reason told, where that failed."""
        try:
            saved = versions.save(self._session.recipe, path, self._session.text)
        except RecipeError as error:
            self.tell(str(error))
            return False
        if saved.problem:
            self.tell(saved.problem)
        adopt_beside(path)
        self._session.saved(path.resolve(), saved.text)
        self._preferences.remember(path)
        self._journal.clear()
        self.kept.emit(saved.version)
        return True

    # ---- unsaved work

    def may_leave(self) -> bool:
        """True where nothing is lost by leaving the recipe here, asking if need be."""
        if not self._session.modified:
            return True
        box = QMessageBox(self._window)
        box.setIcon(QMessageBox.Icon.Question)
        box.setText(self.tr("“{0}” has changes that are not saved.").format(self._session.recipe.name))
        button = QMessageBox.StandardButton
        box.setStandardButtons(button.Save | button.Discard | button.Cancel)
        box.setDefaultButton(button.Save)
        answer = box.exec()
        if answer == button.Save:
            return self.save()
        if answer == button.Discard:
            self._journal.clear()
            return True
        return False

    def _journal_edit(self, recipe: Recipe) -> None:
        problem = self._journal.write(files.writes(recipe, self._session.text), recipe.name, self._session.path)
        if problem:
            self._session.problem.emit(problem)

    def tell(self, sentence: str) -> None:
        """Say in a dialog what went wrong."""
        box = QMessageBox(QMessageBox.Icon.Warning, self.tr("Curdwright"), sentence, parent=self._window)
        box.open()

    def _filter(self) -> str:
        return QCoreApplication.translate("Files", "Recipes ({0})").format(FILTER)


def _file_name(name: str) -> str:
    plain = "".join(letter if letter.isalnum() else "-" for letter in name.lower())
    return "-".join(part for part in plain.split("-") if part) or "recipe"
