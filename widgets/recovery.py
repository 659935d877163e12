"""Work that was not saved when a window ended: offered when the next one opens."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication
from PySide6.QtWidgets import QMessageBox

from designer.recipe import file as files
from designer.recipe.error import RecipeError
from widgets.files import read
from widgets.journal import Leftover
from widgets.judging import adopt_beside

if TYPE_CHECKING:
    from widgets.window import Window


def offer(window: Window, left: list[Leftover]) -> None:
    """Ask whether the newest of what is left is to be taken up; nothing where nothing is left."""
    if not left:
        return
    newest = left[0]
    tr = QCoreApplication.translate
    box = QMessageBox(window)
    box.setIcon(QMessageBox.Icon.Question)
    box.setText(tr("Recovery", "“{0}” has work from last time that was not saved.").format(newest.name))
    box.setInformativeText(tr("Recovery", "Take it up again, or forget it?"))
    take = box.addButton(tr("Recovery", "Take it up"), QMessageBox.ButtonRole.AcceptRole)
    forget = box.addButton(tr("Recovery", "Forget it"), QMessageBox.ButtonRole.DestructiveRole)
    box.addButton(tr("Recovery", "Ask again later"), QMessageBox.ButtonRole.RejectRole)

    def answered() -> None:
        if box.clickedButton() is take:
            take_up(window, newest)
        elif box.clickedButton() is forget:
            newest.drop()

    box.finished.connect(answered)
    box.open()


def take_up(window: Window, left: Leftover) -> None:
    """Go on with recovered work; it counts as unsaved."""
    try:
        recipe = files.reads(left.text)
        path = left.recipe_path if left.recipe_path is not None and left.recipe_path.is_file() else None
        base, text = read(path) if path is not None else (recipe, left.text)
    except RecipeError as error:
        window.files.tell(str(error))
        return
    if path is not None:
        adopt_beside(path)
    window.session.load(base, path, text)
    window.session.commit(recipe, QCoreApplication.translate("Recovery", "Recovered work"))
    if path is None:
        window.session.stack.resetClean()
    left.drop()
