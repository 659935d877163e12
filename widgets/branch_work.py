"""What can be done to branches: split one off, go from lane to lane, take one out; each change one step of undo."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QT_TRANSLATE_NOOP, QObject
from PySide6.QtWidgets import QMenu, QWidget

from designer.recipe import edit as edits
from designer.recipe.document import Branch
from designer.recipe.error import RecipeError
from designer.recipe.split_off import Of, split_off
from widgets import wording
from widgets.actions import Actions, Spec
from widgets.form.split_form import SplitForm
from widgets.session import Session

N = QT_TRANSLATE_NOOP


class BranchWork(QObject):
    """Works on the branches of the session's recipe; what is not allowed is told in a sentence."""

    def __init__(
        self, session: Session, tell: Callable[[str], None], rename: Callable[[], None], parent: QWidget
    ) -> None:
        super().__init__(parent)
        self._session, self._tell, self._rename, self._window = session, tell, rename, parent
        self.form: SplitForm | None = None

    def specs(self) -> list[Spec]:
        """The actions on branches."""
        return [
            Spec("split_off", N("Actions", "Split &off part of the vat here…"), self.ask, "", "Ctrl+B", dialog=True),
            Spec("name_branch", N("Actions", "Rename &the branch"), self._rename, "", "F2"),
            Spec("remove_branch", N("Actions", "Remove t&he branch"), self.remove, "", "Ctrl+Shift+Del"),
            Spec("next_lane", N("Actions", "Look at the next &branch"), lambda: self.step(1), "", "Ctrl+Down"),
            Spec("previous_lane", N("Actions", "Look at the branch before"), lambda: self.step(-1), "", "Ctrl+Up"),
        ]

    def fill(self, menu: QMenu, actions: Actions) -> None:
        """Put the actions into a menu."""
        menu.addActions([actions[spec.key] for spec in self.specs()])

    def ask(self) -> None:
        """Ask what goes its own way after the selected stage; nothing blocks."""
        session = self._session
        if session.lane is not None:
            self._tell(self.tr("A branch parts from the main make; select a stage of it first."))
            return
        stage = session.recipe.stage(session.chosen)
        form = SplitForm(wording.stage_name(stage.name, stage.kind), self._window)
        form.wanted.connect(self._split_off)
        form.finished.connect(form.deleteLater)
        self.form = form
        form.open()

    def _split_off(self, of: str, share_pct: float, name: str) -> None:
        session, form = self._session, self.form
        assert form is not None
        try:
            known: Of = {"curd": "curd", "whey": "whey", "cream": "cream"}[of]  # type: ignore[assignment]
            made = split_off(session.recipe, session.chosen, known, share_pct, name)
            session.march(made)
        except RecipeError as error:
            form.complain(error.sentence)
            return
        branch = made.branches[-1]
        session.commit(made, self.tr("Split off {0}").format(branch.name or branch.id))
        session.choose_lane(branch.id)
        form.accept()
        if branch.of == "curd" and made.form is not None and branch.form is not None and branch.form.count:
            self._tell(
                self.tr("{0} forms stay with the main make, {1} go with “{2}”; doses are shared out.").format(
                    made.form.count, branch.form.count, branch.name or branch.id
                )
            )

    def step(self, by: int) -> None:
        """Look at the lane before or after, round and round."""
        lanes = [lane.id if isinstance(lane, Branch) else None for lane in self._session.recipe.lanes()]
        at = lanes.index(self._session.lane)
        self._session.choose_lane(lanes[(at + by) % len(lanes)])

    def remove(self) -> None:
        """Take the branch that is looked at out."""
        lane = self._session.lane
        if lane is None:
            self._tell(self.tr("The main make can't be removed; select a stage of a branch first."))
            return
        branch = self._session.recipe.branch(lane)
        made = edits.take_out(self._session.recipe, lane)
        self._session.commit(made, self.tr("Remove branch {0}").format(branch.name or branch.id))
