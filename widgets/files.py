"""Opening and saving of recipes in the window, with the dialogs that go with it; every failure is a sentence."""

from __future__ import annotations

import hashlib
from pathlib import Path

from PySide6.QtCore import QCoreApplication, QObject, Signal, Slot
from PySide6.QtWidgets import QFileDialog, QMessageBox, QWidget

from designer.recipe import file as files
from designer.recipe import versions
from designer.recipe.document import Recipe
from designer.recipe.error import RecipeError
from designer.recipe.examples import is_example
from widgets import outside
from widgets.hold import Hold
from widgets.journal import Journal
from widgets.judging import adopt_beside
from widgets.preferences import Preferences
from widgets.session import Session

FILTER = "*.toml"


def read(path: Path) -> tuple[Recipe, str]:
    """A recipe and the text of its file. RecipeError names file and place."""
    text = files.read_text(path)
    files.clear_halves(path.resolve())
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
        self._hold: Hold | None = None
        self._folder: Path | None = None
        """where what has no file yet is to be saved, None: anywhere"""
        self._unwritten = False
        self._asked: QMessageBox | None = None
        self._watch = outside.Watch(self)
        self._watch.changed.connect(self._changed_outside)
        self._watch.gone.connect(self._part)
        session.committed.connect(self._journal_edit)
        session.stack.cleanChanged.connect(self._journal_clean)
        session.pathChanged.connect(self._follow)

    # ---- opening

    def open(self, path: Path) -> bool:
        """Open a recipe in place of the one here; asks about unsaved work first."""
        try:
            recipe, text = read(path)
            self._session.march(recipe)
        except RecipeError as error:
            self.tell(str(error))
            return False
        if not self.may_leave():
            return False
        own = None if is_example(path) else path.resolve()
        adopt_beside(path)
        self._folder = None
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

    def begin(self, recipe: Recipe, folder: Path | None = None) -> bool:
        """Begin with a recipe that has no file yet: it counts as unsaved. Asks about unsaved work first.

        `folder` is where it is to be saved: the house styles that lie there are known from now on.
        """
        try:
            self._session.march(recipe)
        except RecipeError as error:
            self.tell(str(error))
            return False
        if not self.may_leave():
            return False
        adopt_beside(folder / "recipe.toml" if folder is not None else None)
        self._folder = folder
        self._session.load(recipe, None, None)
        self._session.stack.resetClean()
        self._journal_edit(recipe)
        return True

    def resume(self, base: Recipe, recipe: Recipe, path: Path | None, text: str) -> bool:
        """Go on with recovered work: `text` is what its file held when `base` was read from it."""
        try:
            self._session.march(recipe)
        except RecipeError as error:
            self.tell(str(error))
            return False
        if path is not None:
            adopt_beside(path)
        self._session.load(base, path, text)
        self._session.commit(recipe, self.tr("Recovered work"))
        if path is None or not self._session.modified:
            self._part()  # with no file, not even what the work began from is kept anywhere
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
        folder = self._folder or Path.home()
        start = self._session.path or folder / f"{_file_name(self._session.recipe.name)}.toml"
        name, _ = QFileDialog.getSaveFileName(self._window, self.tr("Save recipe as"), str(start), self._filter())
        if not name:
            return False
        path = Path(name)
        return self.save_to(path if path.suffix else path.with_suffix(".toml"))

    def save_to(self, path: Path) -> bool:
        """Save to a file; False where that failed, with the reason told, or where the maker would not write over it."""
        path = path.resolve()
        answer = self._may_write(path)
        if answer is not outside.Answer.OVER:
            return answer is outside.Answer.ELSEWHERE and self.ask_and_save()
        try:
            saved = versions.save(self._session.recipe, path, self._session.text)
        except RecipeError as error:
            self._not_saved(error)
            return False
        if saved.problem:
            self.tell(saved.problem)
        adopt_beside(path)
        self._session.saved(path, saved.text)
        self._preferences.remember(path)
        self._journal.clear()
        self.kept.emit(saved.version)
        return True

    def _may_write(self, path: Path) -> outside.Answer:
        """Ask where the file is not as we know it, or another window has it."""
        there = outside.standing(path)
        if there is None:
            return outside.Answer.OVER
        if path != self._session.path:
            other = self._hold_of(path)
            free = self._taken(other)
            other.drop()
            head = self.tr("“{0}” is open in another window.")
        else:
            free = there == self._session.text
            head = self.tr("“{0}” was changed by another window or program since it was opened here.")
        if free:
            return outside.Answer.OVER
        try:
            told = outside.difference(files.reads(there), self._session.recipe)
        except RecipeError as error:
            told = str(error)
        body = self.tr("Writing over it would bring: {0}\n\nWhat stands there now would be kept as a version.")
        return outside.ask_over(self._window, head.format(path.name), body.format(told))

    def _not_saved(self, error: RecipeError) -> None:
        """Say why, and offer another place."""
        box = QMessageBox(QMessageBox.Icon.Warning, self.tr("Curdwright"), str(error), parent=self._window)
        box.setInformativeText(self.tr("Nothing is lost: the work is still here. It is not saved yet."))
        elsewhere = box.addButton(self.tr("Save under another name…"), QMessageBox.ButtonRole.AcceptRole)
        box.addButton(QMessageBox.StandardButton.Close)
        elsewhere.clicked.connect(self.ask_and_save)
        box.open()

    # ---- the file and other windows

    def _hold_of(self, path: Path) -> Hold:
        """The lock of a recipe's file. It is kept beside the journals, not beside the recipe."""
        return Hold(self._journal.folder / f"{hashlib.sha256(str(path).encode()).hexdigest()[:32]}.open")

    def _taken(self, hold: Hold) -> bool:
        """True unless another window has it; where no lock can be made nobody can have one."""
        try:
            return hold.take()
        except OSError:
            return True

    @Slot()
    def _follow(self) -> None:
        """Hold and watch the file that is open; another window that has it is told of."""
        path = self._session.path
        self._watch.follow(path, self._session.text)
        wanted = None if path is None else self._hold_of(path)
        if self._hold is not None and wanted is not None and wanted.file == self._hold.file:
            self._taken(self._hold)
            return
        if self._hold is not None:
            self._hold.drop()
        self._hold = wanted
        if path is not None and wanted is not None and not self._taken(wanted):
            told = self.tr(
                "“{0}” is open in another window too. What is saved there is seen here, and before one writes over the "
                "other’s changes it asks."
            )
            self.tell(told.format(path.name))

    @Slot()
    def _part(self) -> None:
        """The file is not what it was: what is here counts as unsaved."""
        self._session.stack.resetClean()
        self._journal_edit(self._session.recipe)

    @Slot(str)
    def _changed_outside(self, text: str) -> None:
        path = self._session.path
        if path is None:
            return
        self._part()
        if self._asked is not None:
            self._asked.close()
        head = self.tr("“{0}” was changed by another window or program.").format(path.name)
        box = self._asked = QMessageBox(QMessageBox.Icon.Question, self.tr("Curdwright"), head, parent=self._window)
        try:
            recipe = files.reads(text)
            self._session.march(recipe)
        except RecipeError as error:
            box.setInformativeText(str(error))
        else:
            told = outside.difference(self._session.recipe, recipe)
            box.setInformativeText(self.tr("What is different there: {0}").format(told))
            again = box.addButton(self.tr("Take what stands there"), QMessageBox.ButtonRole.AcceptRole)
            again.clicked.connect(lambda: self._take(recipe, text))
        box.setDefaultButton(box.addButton(self.tr("Keep what is here"), QMessageBox.ButtonRole.RejectRole))
        box.open()

    def _take(self, recipe: Recipe, text: str) -> None:
        """Go on with what stands in the file; undo leads back to what was here."""
        path = self._session.path
        if path is not None:
            self._session.commit(recipe, self.tr("What was changed outside"))
            self._session.saved(path, text)

    def close(self) -> None:
        """The window is closed: nothing is unsaved, and others may have the file."""
        self._journal.clear()
        self._watch.follow(None, None)
        if self._hold is not None:
            self._hold.drop()

    # ---- unsaved work

    @property
    def recovery(self) -> Path:
        """The folder of the journals."""
        return self._journal.folder

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
        return bool(answer == button.Discard)

    @Slot(object)
    def _journal_edit(self, recipe: Recipe) -> None:
        text, base = files.writes(recipe, self._session.text), self._session.text or ""
        problem = self._journal.write(text, recipe.name, self._session.path, base)
        if problem or self._unwritten:
            self._session.problem.emit(problem or self._session.trouble)
        self._unwritten = bool(problem)

    @Slot(bool)
    def _journal_clean(self, clean: bool) -> None:
        """Undone back to what is saved: there is nothing to recover."""
        if clean:
            self._journal.clear()

    def tell(self, sentence: str) -> None:
        """Say in a dialog what went wrong."""
        box = QMessageBox(QMessageBox.Icon.Warning, self.tr("Curdwright"), sentence, parent=self._window)
        box.open()

    def _filter(self) -> str:
        return QCoreApplication.translate("Files", "Recipes ({0})").format(FILTER)


def _file_name(name: str) -> str:
    plain = "".join(letter if letter.isalnum() else "-" for letter in name.lower())
    return "-".join(part for part in plain.split("-") if part) or "recipe"
