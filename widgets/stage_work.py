"""What can be done to whole stages: insert, move, duplicate, split, copy, cut, paste, remove; each one step of undo."""

from __future__ import annotations

from collections.abc import Callable
from typing import Final

from PySide6.QtCore import QT_TRANSLATE_NOOP, QMimeData, QObject
from PySide6.QtGui import QGuiApplication, QKeySequence

from designer.recipe import edit as edits
from designer.recipe.document import Recipe
from designer.recipe.error import RecipeError
from designer.recipe.pasting import copied, pasted
from widgets import wording
from widgets.actions import Spec
from widgets.session import Session

N = QT_TRANSLATE_NOOP
STAGES: Final = "application/x-curdwright-stages"
"""What stages are called on the clipboard; their text is TOML."""


class StageWork(QObject):
    """Works on the selected stage; what is not allowed is told in a sentence.

    A recipe in the middle of a change may be one that can't be made yet (a set without its coagulant): that is kept,
    and the window says what is missing.
    """

    def __init__(self, session: Session, tell: Callable[[str], None], parent: QObject) -> None:
        super().__init__(parent)
        self._session, self._tell = session, tell

    def specs(self, reading: Callable[[], float | None]) -> list[Spec]:
        """The actions on stages; `reading` gives the minute at the reading line."""
        key = QKeySequence.StandardKey
        return [
            Spec("previous", N("Actions", "Select the &previous stage"), lambda: self.step(-1), "", "Ctrl+Left"),
            Spec("next", N("Actions", "Select the &next stage"), lambda: self.step(1), "", "Ctrl+Right"),
            Spec("earlier", N("Actions", "Move stage &earlier"), lambda: self.move(-1), "", "Ctrl+Shift+Left"),
            Spec("move_later", N("Actions", "Move stage &later"), lambda: self.move(1), "", "Ctrl+Shift+Right"),
            Spec("duplicate", N("Actions", "&Duplicate stage"), self.duplicate, "", "Ctrl+D"),
            Spec(
                "split", N("Actions", "&Split stage at the reading line"), lambda: self.split(reading()), "",
                "Ctrl+Shift+D", tip=N("Actions", "Split stage at the reading line, else in the middle"),
            ),
            Spec("copy", N("Actions", "&Copy stage"), self.copy, "", key.Copy),
            Spec("cut", N("Actions", "C&ut stage"), self.cut, "", key.Cut),
            Spec("paste", N("Actions", "Paste &after the selected stage"), self.paste, "", key.Paste),
            Spec("remove", N("Actions", "&Remove stage"), self.remove, "", "Ctrl+Del"),
        ]  # fmt: skip

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
        if by:
            self._keep(lambda recipe: edits.move(recipe, self._session.chosen, by), self.tr("Move stage"))

    def duplicate(self) -> None:
        """Twice in a row."""
        self._keep(lambda recipe: edits.duplicate(recipe, self._session.chosen), self.tr("Duplicate stage"))

    def split(self, minute: float | None = None) -> None:
        """In two at a minute of the make; in its middle where none is given or it lies outside."""
        now = next((one for one in self._session.seen.stages if one.id == self._session.chosen), None)
        if now is None:
            at = 1.0
        elif minute is not None and now.start_min + 0.5 <= minute <= now.end_min - 0.5:
            at = float(round(minute - now.start_min)) or 0.5
        else:
            at = float(round((now.end_min - now.start_min) / 2))
        self._keep(lambda recipe: edits.split(recipe, self._session.chosen, at), self.tr("Split stage"))

    def copy(self) -> None:
        """The selected stage with what goes in at it to the clipboard, as text and as our own kind."""
        text = copied(self._session.recipe, [self._session.chosen])
        held = QMimeData()
        held.setText(text)
        held.setData(STAGES, text.encode())
        QGuiApplication.clipboard().setMimeData(held)

    def cut(self) -> None:
        """To the clipboard and out of the make, with what goes in at it."""
        gone = self._session.chosen
        self.copy()

        def change(recipe: Recipe) -> Recipe:
            lane = recipe.lane(gone)
            for one in (*lane.starters, *lane.additions):
                if one.at == gone:
                    recipe = edits.take_out(recipe, one.id)
            return edits.remove(recipe, gone)

        self._out(change, self.tr("Cut stage"))

    def paste(self) -> None:
        """What was copied, here or in another window, after the selected stage."""
        held = QGuiApplication.clipboard().mimeData()
        own = held.hasFormat(STAGES)
        text = bytes(held.data(STAGES).data()).decode(errors="replace") if own else held.text()
        last = ""

        def change(recipe: Recipe) -> Recipe:
            nonlocal last
            made, last = pasted(recipe, text, self._session.chosen)
            return made

        if self._keep(change, self.tr("Paste stage")):
            self._session.choose(last)

    def remove(self) -> None:
        """Out of the make; its neighbour becomes the selected one."""
        gone = self._session.chosen
        self._out(lambda recipe: edits.remove(recipe, gone), self.tr("Remove stage"))

    def _out(self, change: Callable[[Recipe], Recipe], text: str) -> None:
        ids = self._ids()
        index = ids.index(self._session.chosen)
        neighbour = ids[index - 1] if index else ids[min(1, len(ids) - 1)]
        if self._keep(change, text):
            self._session.choose(neighbour)

    def _keep(self, change: Callable[[Recipe], Recipe], text: str) -> bool:
        try:
            made = change(self._session.recipe)
        except RecipeError as error:
            self._tell(str(error))
            return False
        self._session.commit(made, text)
        return True
