"""Work that was not saved when a window ended: offered when the next one opens, beside what its file holds."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from designer.recipe import file as files
from designer.recipe.document import Recipe
from designer.recipe.error import RecipeError
from widgets.files import FileWork
from widgets.journal import Leftover
from widgets.outside import difference, standing
from widgets.unsaved import Answer, ask

if TYPE_CHECKING:
    from widgets.window import Window


def offer(window: Window, left: list[Leftover]) -> None:
    """Ask about each that is left, the newest first; one that stands in its file already is forgotten."""
    for number, one in enumerate(left):
        saved = saved_recipe(one)
        if saved is not None and saved == _recipe(one.text):
            one.drop()
        else:
            _ask(window, one, saved, left[number + 1 :])
            return


def saved_recipe(left: Leftover) -> Recipe | None:
    """What the file of the recipe holds now, None where it has none that can be read."""
    text = standing(left.recipe_path) if left.recipe_path is not None else None
    return None if text is None else _recipe(text)


def _recipe(text: str) -> Recipe | None:
    try:
        return files.reads(text)
    except RecipeError:
        return None


def _ask(window: Window, left: Leftover, saved: Recipe | None, rest: list[Leftover]) -> None:
    def answered(answer: Answer) -> None:
        if answer in (Answer.TAKE_UP, Answer.COMPARE):
            if take_up(window.files, left) and answer is Answer.COMPARE:
                window.variants.beside.emit(saved, QCoreApplication.translate("Recovery", "as it was saved"))
            return  # only one can be open here: the rest is asked about next time
        if answer is Answer.FORGET:
            left.drop()
        offer(window, rest)

    comparable = saved is not None and _recipe(left.text) is not None
    ask(window, left.name, _beside(left, saved), answered, comparable=comparable)


def _beside(left: Leftover, saved: Recipe | None) -> str:
    """What the recovered work has that the saved file has not."""
    tr = QCoreApplication.translate
    work = _recipe(left.text)
    if work is None:
        return tr("Recovery", "It can't be read as a recipe by this version of the program.")
    if left.recipe_path is None:
        return tr("Recovery", "It was never saved.")
    if saved is None:
        return tr("Recovery", "Its file “{0}” is gone or can't be read.").format(left.recipe_path.name)
    told = tr("Recovery", "Against “{0}” as it is saved: {1}").format(left.recipe_path.name, difference(saved, work))
    if left.base and left.base != standing(left.recipe_path):
        told += "\n\n" + tr("Recovery", "The file was changed since that work began.")
    return told


def take_up(work: FileWork, left: Leftover) -> bool:
    """Go on with recovered work; it counts as unsaved. Undo leads back to the file it was begun from."""
    try:
        recipe = files.reads(left.text)
    except RecipeError as error:
        work.tell(str(error))
        return False
    path = left.recipe_path if left.recipe_path is not None and left.recipe_path.is_file() else None
    text = (left.base or standing(path)) if path is not None else left.base
    base = _recipe(text) if text else None
    if not work.resume(base or recipe, recipe, path, text or left.text):
        return False
    left.drop()
    return True
