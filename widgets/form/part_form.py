"""The form of one part of the recipe: a label and an editor for every field the document says it has."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from typing import Any

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QGridLayout, QLabel, QSizePolicy, QWidget

from designer.recipe.field import FieldMeta, Model, field_metas
from widgets.form.editors import ChoiceEditor, Editor, TextEditor, YesEditor, words

Choices = Callable[[Model, FieldMeta], list[tuple[Any, str]]]
HIDDEN = frozenset({"id", "kind", "at", "format", "what"})
SHOWN_SHAPES = frozenset({"quantity", "text", "choice", "yes", "number"})


def plain_choices(part: Model, meta: FieldMeta) -> list[tuple[Any, str]]:
    """The choices a field names itself."""
    made: list[tuple[Any, str]] = [(None, "\u2013")] if meta.optional else []
    return made + [(one, words(one.replace("_", " "))) for one in meta.choices]


class PartForm(QWidget):
    """Shows one part and emits `changed(field, value, nudged)`; the owner edits, then calls `put` or `complain`."""

    changed = Signal(str, object, bool)
    focused = Signal(object)

    def __init__(self, choices: Choices = plain_choices, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._choices = choices
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setHorizontalSpacing(10)
        self._grid.setVerticalSpacing(5)
        self._grid.setColumnStretch(1, 1)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Maximum)
        self.editors: dict[str, Editor] = {}
        self._built_for: tuple[object, ...] = ()

    def put(self, part: Model, system: str, *, only: Iterable[str] | None = None, hide: Iterable[str] = ()) -> None:
        """Show a part; rows are made anew only where it has other fields (or the units changed)."""
        hidden = HIDDEN | set(hide)
        metas = [
            meta
            for meta in field_metas(type(part))
            if meta.shape in SHOWN_SHAPES and meta.name not in hidden and (only is None or meta.name in only)
        ]
        lists = {meta.name: self._choices(part, meta) for meta in metas if meta.shape == "choice"}
        key = (type(part), system, tuple(meta.name for meta in metas), str(lists))
        if key != self._built_for:
            self._build(metas, lists, system)
            self._built_for = key
        for name, editor in self.editors.items():
            editor.put(getattr(part, name))

    def follow(self, part: Model) -> None:
        """Show the values of a part of the same build, quickly: called in every frame of a drag."""
        for name, editor in self.editors.items():
            editor.put(getattr(part, name))

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
            label = QLabel(words(meta.label).capitalize() if meta.label != "pH" else meta.label, self)
            label.setProperty("role", "soft")
            label.setBuddy(editor)
            label.setToolTip(words(meta.help))
            label.setWordWrap(True)
            label.setMinimumWidth(96)
            self._grid.addWidget(label, row, 0, Qt.AlignmentFlag.AlignTop)
            label.setContentsMargins(0, 5, 0, 0)
            self._grid.addWidget(editor, row, 1)
            self.editors[meta.name] = editor

    def _editor(self, meta: FieldMeta, choices: list[tuple[Any, str]], system: str) -> Editor:
        if meta.shape == "choice":
            return ChoiceEditor(meta, system, choices, self)
        if meta.shape == "yes":
            return YesEditor(meta, system, self)
        return TextEditor(meta, system, self)
