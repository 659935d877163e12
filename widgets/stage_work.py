"""What can be done to whole stages: insert, move, duplicate, split, remove; each one step of undo."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QObject

from designer.recipe import edit as edits
from designer.recipe.document import Recipe
from designer.recipe.error import RecipeError
from widgets import wording
from widgets.session import Session


class StageWork(QObject):
    """Works on the selected stage; what is not allowed is told in a sentence.

    A recipe in the middle of a change may be one that can't be made yet (a set without its coagulant): that is kept,
    and the window says what is missing.
    """

    def __init__(self, session: Session, tell: Callable[[str], None], parent: QObject) -> None:
        super().__init__(parent)
        self._session, self._tell = session, tell

    def _ids(self) -> list[str]:
        """Stages of the lane that is looked at."""
        return [stage.id for stage in self._session.recipe.lane(self._session.chosen).stages]

    def step(self, by: int) -> None:
        """Select another stage of the lane."""
        ids = self._ids()
        self._session.choose(ids[min(max(ids.index(self._session.chosen) + by, 0), len(ids) - 1)])

    def insert(self, kind: str) -> None:
        """A new stage of a kind after the selected one; it becomes the selected one."""
        chosen = self._session.chosen

        def change(recipe: Recipe) -> Recipe:
            return edits.insert(recipe, edits.new_stage(recipe, kind), after_id=chosen)

        if self._keep(change, self.tr("Insert {0}").format(wording.kind_name(kind))):
            ids = self._ids()
            self._session.choose(ids[ids.index(chosen) + 1])

    def move(self, by: int) -> None:
        """Earlier or later among its neighbours."""
        self._keep(lambda recipe: edits.move(recipe, self._session.chosen, by), self.tr("Move stage"))

    def duplicate(self) -> None:
        """Twice in a row."""
        self._keep(lambda recipe: edits.duplicate(recipe, self._session.chosen), self.tr("Duplicate stage"))

    def split(self) -> None:
        """In two in its middle."""
        now = next((one for one in self._session.seen.stages if one.id == self._session.chosen), None)
        half = float(round((now.end_min - now.start_min) / 2)) if now is not None else 1.0
        self._keep(lambda recipe: edits.split(recipe, self._session.chosen, half), self.tr("Split stage"))

    def remove(self) -> None:
        """Out of the make; its neighbour becomes the selected one."""
        ids = self._ids()
        index = ids.index(self._session.chosen)
        neighbour = ids[index - 1] if index else ids[min(1, len(ids) - 1)]
        gone = self._session.chosen
        if self._keep(lambda recipe: edits.remove(recipe, gone), self.tr("Remove stage")):
            self._session.choose(neighbour)

    def _keep(self, change: Callable[[Recipe], Recipe], text: str) -> bool:
        try:
            made = change(self._session.recipe)
        except RecipeError as error:
            self._tell(str(error))
            return False
        self._session.commit(made, text)
        return True
