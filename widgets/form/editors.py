"""One editor a field: text with units for quantities, a list for choices, a tick for yes or no, plain text for words.

What is typed is read by `designer.units` and said back in the maker's units; what can't be read stays as typed, with
the reason under it.
"""

from __future__ import annotations

import re
from abc import abstractmethod
from collections.abc import Callable
from typing import Any, Final

from PySide6.QtCore import QCoreApplication, QEvent, QSignalBlocker, Qt, Signal, Slot
from PySide6.QtGui import QFocusEvent, QKeyEvent
from PySide6.QtWidgets import QCheckBox, QComboBox, QLineEdit, QVBoxLayout, QWidget

from designer.judge.other_reading import Typed
from designer.language import number, spoken
from designer.recipe.field import FieldMeta, choice
from designer.recipe.sure import asked
from designer.units import KINDS, UnitError, convert, gallon_of, parse, show
from widgets import wording
from widgets.form.asked import Ways, ways_of
from widgets.theme import apply as dress
from widgets.together import Wrapped


def words(text: str) -> str:
    """A choice of the document in the maker's language."""
    return choice(text)


def title(meta: FieldMeta) -> str:
    """What a field is called: its label, or the key it has in the file where it has no label of its own."""
    text = meta.label
    return text if text.startswith("pH") else text[:1].upper() + text[1:]


def shown(meta: FieldMeta, value: Any, system: str) -> str:
    """A value as the editor shows it."""
    if value is None:
        return ""
    if meta.kind and isinstance(value, float | int) and not isinstance(value, bool):
        return show(float(value), meta.kind, system=wording.system_of(system))
    return str(value)


def range_words(meta: FieldMeta, system: str) -> str:
    """The range of a quantity in words, "" where it has none."""
    if meta.low is None or meta.high is None or not meta.kind:
        return ""
    text = QCoreApplication.translate("Form", "{0} to {1}")
    return text.format(shown(meta, meta.low, system), shown(meta, meta.high, system))


class Editor(QWidget):
    """The editor of one field. `changed` carries (field name, value, nudged); `focused` the field's metadata."""

    changed = Signal(str, object, bool)
    focused = Signal(object)

    def __init__(self, meta: FieldMeta, system: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.meta, self.system = meta, system
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.setSpacing(1)
        self.wrong = Wrapped(self)
        self.wrong.setProperty("role", "wrong")
        self.wrong.hide()
        self.doubt = Wrapped(self)
        self.doubt.hide()
        self.told = Wrapped(self)
        self.told.setProperty("role", "soft")
        self.told.setFont(dress.font("note"))
        self.told.hide()

    def _settle(self, field: QWidget) -> None:
        field.setAccessibleName(title(self.meta))
        field.setAccessibleDescription(self.meta.help)
        field.setToolTip(self.meta.help)
        field.installEventFilter(self)
        self.setFocusProxy(field)
        self._column.addWidget(field)
        self._column.addWidget(self.wrong)
        self._column.addWidget(self.doubt)
        self._column.addWidget(self.told)

    def eventFilter(self, watched: QWidget, event: QEvent) -> bool:
        """Tell the form which field is being looked at."""
        if isinstance(event, QFocusEvent) and event.gotFocus():
            self.focused.emit(self.meta)
        return super().eventFilter(watched, event)

    def looked_up(self) -> str:
        """What F1 looks up here."""
        return self.meta.name

    @abstractmethod
    def put(self, value: Any) -> None:
        """Show a value."""

    def ask(self, sentence: str) -> None:
        """Ask about a value far outside practice; "" where there is nothing to ask. It stands all the same."""
        if self.doubt.text() != sentence:
            self.doubt.setText(sentence)
            self.doubt.setVisible(bool(sentence))

    def tell(self, sentence: str) -> None:
        """Say the value in the other ways it is said, under the field; "" for nothing."""
        if self.told.text() != sentence:
            self.told.setText(sentence)
            self.told.setVisible(bool(sentence))

    def complain(self, sentence: str) -> None:
        """Say what is wrong under the field; "" when it is mended."""
        self.wrong.setText(sentence)
        self.wrong.setVisible(bool(sentence))
        field = self.focusProxy()
        if field is not None and bool(field.property("wrong")) != bool(sentence):
            field.setProperty("wrong", bool(sentence))
            field.style().unpolish(field)
            field.style().polish(field)


_BARE: Final = re.compile(r"[+\-\u2212]?[\d.,/ \u00bc-\u00be\u2153-\u215e]+")
"""A figure without a unit, as it is typed."""
Also = Callable[[str], Typed | None]
"""Reads what is typed in another way than the field's own unit."""


class TextEditor(Editor):
    """Quantities, numbers and words. Up and Down move a quantity by its natural step.

    `also` reads the other ways a figure is written; one that can be read two ways is asked about with a button each.
    """

    def __init__(self, meta: FieldMeta, system: str, parent: QWidget | None = None, also: Also | None = None) -> None:
        super().__init__(meta, system, parent)
        self._also = also
        self.note = ""
        """what there is to know of how the value was read"""
        self.line = QLineEdit(self)
        self._value: Any = None
        self._shown = ""
        if meta.optional:
            self.line.setPlaceholderText(QCoreApplication.translate("Form", "left open"))
        self.line.editingFinished.connect(self._finished)
        self._settle(self.line)
        self.ways = Ways(self, upright=True)
        self.ways.chosen.connect(self._choose_reading)
        self._column.insertWidget(1, self.ways)

    def put(self, value: Any) -> None:
        """Show a value, unless what stands there is being mended."""
        self._value = value
        if self.meta.usual is not None:
            self.ask("" if value is None else asked(self.meta, float(value), wording.system_of(self.system)))
        text = shown(self.meta, value, self.system)
        if self.line.text() != text and not (self.line.hasFocus() and self.wrong.isVisible()):
            self.line.setText(text)
            if not self.line.hasFocus():
                self.line.setCursorPosition(0)
        self._shown = text

    def eventFilter(self, watched: QWidget, event: QEvent) -> bool:
        """Up and Down nudge; Esc puts back what was there."""
        if isinstance(event, QKeyEvent) and event.type() == QEvent.Type.KeyPress:
            steps = {Qt.Key.Key_Up: 1, Qt.Key.Key_Down: -1}.get(Qt.Key(event.key()), 0)
            if steps and self.meta.kind and self._value is not None:
                self._nudge(steps)
                return True
            if event.key() == Qt.Key.Key_Escape:
                self.line.setText(self._shown)
                self.complain("")
                self.ways.put(())
                return True
        return super().eventFilter(watched, event)

    def _nudge(self, steps: int) -> None:
        step = self.meta.step or 1.0
        value = round(float(self._value) / step + steps) * step
        if self.meta.low is not None:
            value = max(value, self.meta.low)
        if self.meta.high is not None:
            value = min(value, self.meta.high)
        self.complain("")
        self.changed.emit(self.meta.name, value, True)

    def _finished(self) -> None:
        text = self.line.text().strip()
        self.ways.put(())
        if text == self._shown:
            self.complain("")
            return
        try:
            value = self.read(text)
        except UnitError as error:
            self.complain(str(error))
            self.ways.put(ways_of(text, self.meta.kind) if self.meta.kind else ())
            return
        self.complain("")
        self._shown = text
        self.changed.emit(self.meta.name, value, False)
        if not self.wrong.text() and self.line.text() == text:  # nothing was changed: say it in the field's own unit
            self.put(value)

    @Slot(str)
    def _choose_reading(self, text: str) -> None:
        self.line.setText(text)
        self.line.setFocus()
        self._finished()

    def tell(self, sentence: str) -> None:
        """Say the value in other ways, after what there is to know of how it was read."""
        super().tell("\n".join(part for part in (self.note, sentence) if part))

    def read(self, text: str) -> Any:
        """What a text means for this field; UnitError, a sentence, where it means nothing."""
        self.note = ""
        if not text and self.meta.optional:
            return None
        if self.meta.kind:
            return self._quantity(text)
        if self.meta.shape == "number":
            if not text.isdecimal():
                raise UnitError(QCoreApplication.translate("Form", "This is a whole number."))
            return int(text)
        return text

    def _quantity(self, text: str) -> float:
        try:
            gallon = gallon_of(wording.system_of(self.system))
            return parse(text, self.meta.kind, gallon=gallon, comma=spoken().comma).value
        except UnitError:
            other = self._also(text) if self._also is not None else None
            unit = self._own_unit() if other is None and _BARE.fullmatch(text) else ""
            if unit:
                return parse(f"{text} {unit}", self.meta.kind, comma=spoken().comma).value
            if other is None:
                raise
        self.note = other.note
        return other.value

    def _own_unit(self) -> str:
        """The unit a bare figure is taken in: the one that stands in the field; "" where it could mean two things."""
        kind = KINDS[self.meta.kind]
        system = wording.system_of(self.system)
        unit = self._shown.lstrip("+-\u2212.,0123456789 ") if self._shown else kind.display(system)[0]
        if any(letter.isdigit() for letter in unit) or (kind.key == "duration" and unit != "min"):
            return ""  # 90 where "1 h 30 min" stands may be minutes or hours
        return unit


class ChoiceEditor(Editor):
    """One of a list of (value, words)."""

    def __init__(
        self, meta: FieldMeta, system: str, choices: list[tuple[Any, str]], parent: QWidget | None = None
    ) -> None:
        super().__init__(meta, system, parent)
        self.box = QComboBox(self)
        self.box.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        self.box.setMinimumContentsLength(10)
        for value, label in choices:
            self.box.addItem(label, value)
        self.box.activated.connect(self._chosen)
        self._settle(self.box)

    def eventFilter(self, watched: QWidget, event: QEvent) -> bool:
        """A wheel over a list that is not being edited scrolls the form, not the list."""
        if event.type() == QEvent.Type.Wheel and not self.box.hasFocus():
            event.ignore()
            return True
        return super().eventFilter(watched, event)

    def put(self, value: Any) -> None:
        """Show a value."""
        with QSignalBlocker(self.box):
            self.box.setCurrentIndex(self.box.findData(value))

    def _chosen(self, index: int) -> None:
        self.complain("")
        self.changed.emit(self.meta.name, self.box.itemData(index), False)


class YesEditor(Editor):
    """A tick."""

    def __init__(self, meta: FieldMeta, system: str, parent: QWidget | None = None) -> None:
        super().__init__(meta, system, parent)
        self.box = QCheckBox(self)
        self.box.clicked.connect(lambda on: self.changed.emit(self.meta.name, bool(on), False))
        self._settle(self.box)

    def put(self, value: Any) -> None:
        """Show a value."""
        with QSignalBlocker(self.box):
            self.box.setChecked(bool(value))


def display_step(meta: FieldMeta, system: str) -> str:
    """The natural step in words."""
    if not meta.kind or not meta.step:
        return ""
    if meta.kind == "temperature" and wording.measured(system, "temperature") == "us":
        return f"{number(convert(meta.step, 'temperature_difference', '°F'), '.1f')} °F"
    kind = "temperature_difference" if meta.kind == "temperature" else meta.kind
    return show(meta.step, kind, system=wording.system_of(system))


def explained(meta: FieldMeta, system: str) -> str:
    """What is known of a field in one line: help, range, step, source."""
    span, step = range_words(meta, system), display_step(meta, system)
    if span and step:
        span = QCoreApplication.translate("Form", "{0}, step {1}").format(span, step)
    return "   ".join(text for text in (meta.help, f"({span})" if span else "", meta.source) if text)
