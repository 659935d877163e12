"""The form of the branch whose stage is selected: what goes its way, its form, its rind or coat, what is checked."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QPushButton, QVBoxLayout, QWidget

from designer.recipe import edit as edits
from designer.recipe.document import Addition, Branch, Coat, Form, Recipe, Starter
from designer.recipe.error import RecipeError
from designer.recipe.field import FieldMeta, Model
from styles.reader import styles
from widgets.form.editors import explained, words
from widgets.form.part_form import PartForm, plain_choices
from widgets.session import Session
from widgets.theme import apply as dress
from widgets.together import Wrapped

BEGUN: Mapping[str, Model] = {"form": Form(diameter_mm=100.0, height_mm=80.0), "coat": Coat()}
"""What is shown where a branch has no form or coat of its own yet."""


class BranchForm(QWidget):
    """Shown under the form of the stage while the selected stage is in a branch."""

    said = Signal(str)
    hinted = Signal(str)

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.session = session
        self.system = "metric"
        self._title = Wrapped(self)
        self._title.setFont(dress.font("head", bold=True))
        self.remove = QPushButton(self.tr("Remove branch"), self)
        self.remove.setFlat(True)
        self.remove.clicked.connect(self._take_out)
        self.forms = {name: PartForm(self._choices, self, fold=True) for name in ("branch", "form", "coat")}
        self.heads: dict[str, QLabel] = {}
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 6, 0, 0)
        column.setSpacing(6)
        line = QFrame(self)
        line.setObjectName("hairline")
        column.addWidget(line)
        row = QHBoxLayout()
        row.addWidget(self._title, 1)
        row.addWidget(self.remove)
        column.addLayout(row)
        for name, form in self.forms.items():
            if name != "branch":
                head = QLabel(self.tr("Form") if name == "form" else self.tr("Rind or coat"), self)
                head.setFont(dress.font("body", bold=True))
                column.addWidget(head)
                self.heads[name] = head
            form.changed.connect(lambda field, value, nudged, name=name: self._changed(name, field, value, nudged))
            form.focused.connect(self._explain)
            column.addWidget(form)
        row = QHBoxLayout()
        self.more: dict[str, QPushButton] = {}
        for what, text in (("starter", self.tr("Add starter here")), ("addition", self.tr("Add addition here"))):
            button = self.more[what] = QPushButton(text, self)
            button.clicked.connect(lambda _=False, what=what: self._add(what))
            row.addWidget(button)
        row.addStretch(1)
        column.addLayout(row)

    @property
    def branch(self) -> Branch | None:
        """The branch that holds the selected stage."""
        lane = self.session.lane
        return None if lane is None else self.session.recipe.branch(lane)

    @Slot()
    def refresh(self) -> None:
        """Show the branch as it is kept, or nothing where the stage is in the main make."""
        branch = self.branch
        if branch is None:
            self.hide()
            return
        self._title.setText(self.tr("Branch: {0}").format(branch.name or branch.id))
        self.remove.setAccessibleName(self.tr("Remove the branch {0}").format(branch.name or branch.id))
        for name, form in self.forms.items():
            form.put(self._part(branch, name), self.system)
        self.show()
        self.updateGeometry()

    @staticmethod
    def _part(branch: Branch, name: str) -> Model:
        own: Model | None = branch if name == "branch" else getattr(branch, name)
        return own if own is not None else BEGUN[name]

    def focus_name(self) -> None:
        """Put the keyboard into the branch's name."""
        if self.branch is not None:
            self.forms["branch"].editors["name"].setFocus(Qt.FocusReason.ShortcutFocusReason)

    def _choices(self, part: Model, meta: FieldMeta) -> list[tuple[Any, str]]:
        if meta.name == "style":
            none = self.tr("that of the recipe") if getattr(part, "of", "") == "curd" else self.tr("none")
            return [("", none)] + [(style.key, style.title) for style in styles()]
        if meta.name == "after":
            return [(stage.id, stage.title) for stage in self.session.recipe.stages]
        return plain_choices(part, meta)

    @Slot(object)
    def _explain(self, meta: FieldMeta) -> None:
        self.hinted.emit(explained(meta, self.system))

    # ---- editing

    def _changed(self, name: str, field: str, value: object, nudged: bool) -> None:
        branch = self.branch
        if branch is None:
            return
        value = "" if value is None and field in ("name", "note", "style") else value
        try:
            made = self._edited(branch, name, {field: value})
            self.session.march(made)
        except RecipeError as error:
            self.forms[name].complain(field, error.sentence)
            return
        self.forms[name].complain(field, "")
        key = (branch.id, name, field) if nudged else None
        self.session.commit(made, words(field.replace("_", " ")), key=key)

    def _edited(self, branch: Branch, name: str, changes: dict[str, Any]) -> Recipe:
        recipe = self.session.recipe
        if name == "branch":
            return edits.edit_branch(recipe, branch.id, **changes)
        changes = (dict(BEGUN[name]) if getattr(branch, name) is None else {}) | changes
        editing = edits.edit_form if name == "form" else edits.edit_coat
        return editing(recipe, branch.id, **changes)

    @Slot()
    def _take_out(self) -> None:
        branch = self.branch
        if branch is not None:
            made = edits.take_out(self.session.recipe, branch.id)
            self.session.commit(made, self.tr("Remove branch {0}").format(branch.name or branch.id))

    def _add(self, what: str) -> None:
        """Something new that goes in at the selected stage."""
        branch, recipe, stage = self.branch, self.session.recipe, self.session.chosen
        if branch is None:
            return
        if what == "starter":
            starter = Starter(id=edits.free_id(recipe, f"{branch.id}-starter"), at=stage, bulk_pct=1.0)
            changes: dict[str, Any] = {"starters": (*branch.starters, starter)}
        else:
            addition = Addition(id=edits.free_id(recipe, f"{branch.id}-salt"), what="salt", at=stage, mass_pct=0.2)
            changes = {"additions": (*branch.additions, addition)}
        try:
            made = edits.edit_branch(recipe, branch.id, **changes)
            self.session.march(made)
        except RecipeError as error:
            self.said.emit(str(error))
            return
        self.session.commit(made, self.tr("Add starter") if what == "starter" else self.tr("Add addition"))
