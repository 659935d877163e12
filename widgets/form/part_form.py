"""The form of one part of the recipe: a label and an editor for every field the document says it has."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from typing import Any

from PySide6.QtCore import QCoreApplication, Qt, Signal
from PySide6.QtWidgets import QGridLayout, QSizePolicy, QToolButton, QWidget

from designer.judge.other_reading import Typed, typed
from designer.judge.other_units import doubted, told
from designer.judge.turns import turned
from designer.recipe.document import Recipe
from designer.recipe.field import FieldMeta, Model, field_metas
from designer.recipe.stages.stage import Stage
from designer.units import System
from widgets import wording
from widgets.form.editors import ChoiceEditor, Editor, TextEditor, YesEditor, title, words
from widgets.together import Wrapped

Choices = Callable[[Model, FieldMeta], list[tuple[Any, str]]]
LABEL_PX = 104
HIDDEN = frozenset({"id", "format", "what"})
ALWAYS = frozenset({"species", "kind", "style", "start_clock_min", "shape", "at"})
"""Never folded away."""
SHOWN_SHAPES = frozenset({"quantity", "text", "choice", "yes", "number"})


def plain_choices(part: Model, meta: FieldMeta) -> list[tuple[Any, str]]:
    """The choices a field names itself."""
    made: list[tuple[Any, str]] = [(None, "\u2013")] if meta.optional else []
    return made + [(one, words(one)) for one in meta.choices]


def _is_choice(meta: FieldMeta) -> bool:
    """A list: choices of its own, or the stages something goes in at or parts after."""
    return meta.shape == "choice" or meta.name in ("at", "after")


class PartForm(QWidget):
    """Shows one part and emits `changed(field, value, nudged)`; the owner edits, then calls `put` or `complain`."""

    changed = Signal(str, object, bool)
    focused = Signal(object)

    def __init__(
        self,
        choices: Choices = plain_choices,
        parent: QWidget | None = None,
        *,
        fold: bool = False,
        recipe: Callable[[], Recipe] | None = None,
    ) -> None:
        super().__init__(parent)
        self._choices = choices
        self._recipe = recipe
        """the recipe the part stands in, by which figures are told and typed in other ways than their unit"""
        self._fold = fold
        self.of: tuple[str, str] | None = None
        """the part it is of, where not that of the form around it: its id, and what its fields are called after"""
        self._part: tuple[object, ...] = ()
        self._open: set[str] = set()
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setHorizontalSpacing(10)
        self._grid.setVerticalSpacing(5)
        self._grid.setColumnStretch(1, 1)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Minimum)
        self.editors: dict[str, Editor] = {}
        self._built_for: tuple[object, ...] = ()

    def put(
        self, part: Model, system: str, *, only: Iterable[str] | None = None, hide: frozenset[str] = frozenset()
    ) -> None:
        """Show a part; rows are made anew only where it has other fields (or the units changed)."""
        self._shown = (part, system, only, hide)
        self._system: System = wording.system_of(system)
        identity = (type(part), getattr(part, "id", ""))
        if identity != self._part:
            self._part, self._open = identity, set()
        metas = [
            meta
            for meta in field_metas(type(part))
            if meta.shape in SHOWN_SHAPES and meta.name not in HIDDEN | hide and (only is None or meta.name in only)
        ]
        if self._fold:
            said = {meta.name for meta in metas if getattr(part, meta.name) != meta.default or meta.required}
            self._open |= said | ALWAYS
            shut = [meta for meta in metas if meta.name not in self._open and "*" not in self._open]
            metas = [meta for meta in metas if meta not in shut]
        else:
            shut = []
        lists = {meta.name: self._choices(part, meta) for meta in metas if _is_choice(meta)}
        key = (type(part), system, tuple(meta.name for meta in metas), str(lists), len(shut))
        if key != self._built_for:
            self._build(metas, lists, system)
            if shut:
                self._add_more(shut)
            self._built_for = key
        self.follow(part)

    def _add_more(self, shut: list[FieldMeta]) -> None:
        """The rows left as they come, behind one button that names them."""
        button = QToolButton(self)
        names = ", ".join(title(meta).lower() if not title(meta).startswith("pH") else "pH" for meta in shut)
        button.setText(QCoreApplication.translate("Form", "More settings ({0})").format(len(shut)))
        button.setToolTip(names)
        button.setProperty("role", "more")
        button.clicked.connect(self._unfold)
        self._grid.addWidget(button, self._grid.rowCount(), 1, Qt.AlignmentFlag.AlignLeft)

    def _unfold(self) -> None:
        self._open.add("*")
        part, system, only, hide = self._shown
        self.put(part, system, only=only, hide=hide)

    def follow(self, part: Model) -> None:
        """Show the values of a part of the same build, quickly: called in every frame of a drag."""
        self._followed = part
        recipe = self._recipe() if self._recipe is not None else None
        for name, editor in self.editors.items():
            editor.put(getattr(part, name))
            if recipe is not None and isinstance(editor, TextEditor) and editor.meta.kind:
                said = [told(recipe, part, name, self._system)]
                if isinstance(part, Stage):
                    said += [one.text for one in turned(recipe, part, name)]
                editor.tell("\n".join(filter(None, said)))
                doubt = doubted(recipe, part, name, self._system)
                if doubt or editor.meta.usual is None:
                    editor.ask(doubt)

    def complain(self, name: str, sentence: str) -> None:
        """Say what is wrong beside a field."""
        if name in self.editors:
            self.editors[name].complain(sentence)

    def _build(self, metas: list[FieldMeta], lists: dict[str, list[tuple[Any, str]]], system: str) -> None:
        while self._grid.count():
            item = self._grid.takeAt(0)
            widget = item.widget() if item is not None else None
            if widget is not None:
                widget.hide()
                widget.deleteLater()
        self.editors = {}
        for row, meta in enumerate(metas):
            editor = self._editor(meta, lists.get(meta.name, []), system)
            editor.changed.connect(self.changed)
            editor.focused.connect(self.focused)
            label = Wrapped(title(meta), self)
            label.setProperty("role", "soft")
            label.setBuddy(editor)
            label.setToolTip(meta.help)
            label.setFixedWidth(LABEL_PX)
            self._grid.addWidget(label, row, 0, Qt.AlignmentFlag.AlignTop)
            label.setContentsMargins(0, 5, 0, 0)
            self._grid.addWidget(editor, row, 1)
            self.editors[meta.name] = editor

    def _editor(self, meta: FieldMeta, choices: list[tuple[Any, str]], system: str) -> Editor:
        if _is_choice(meta):
            return ChoiceEditor(meta, system, choices, self)
        if meta.shape == "yes":
            return YesEditor(meta, system, self)
        return TextEditor(
            meta, system, self, None if self._recipe is None else lambda text: self._also(meta.name, text)
        )

    def _also(self, name: str, text: str) -> Typed | None:
        """What is typed in another way than the field's unit."""
        assert self._recipe is not None
        return typed(self._recipe(), self._followed, name, text)
