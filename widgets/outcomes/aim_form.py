"""Aim: one field for the value wanted, and what would bring it there, with what that makes worse."""

from __future__ import annotations

from typing import Any

from PySide6.QtCore import QEvent, QObject, Qt, Signal, Slot
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QApplication, QHBoxLayout, QLabel, QLineEdit, QPushButton, QVBoxLayout, QWidget

from designer.judge.aim import Aimed, outcome_changes
from designer.judge.movable import Movable
from designer.language import joined, spoken
from designer.quantities import quantity
from designer.recipe.document import Recipe
from designer.units import System, UnitError, parse
from widgets.outcomes.figures import label_of, value_words
from widgets.theme import apply as dress
from widgets.together import Wrapped


def wanted_value(key: str, text: str) -> float:
    """What was typed for an outcome, with or without its unit. Raises UnitError, a sentence."""
    kind = quantity(key).kind
    plain = text.strip().replace("\u2212", "-").replace(",", ".", 1)
    try:
        return float(plain)
    except ValueError:
        return parse(text, kind, comma=spoken().comma).value


class AimForm(QWidget):
    """Asks for a wanted value; shows the smallest natural change that reaches it."""

    wanted = Signal(float, object)
    """the value wanted, and the settings that must stay (a set of paths)"""
    shown = Signal(object)
    """a recipe to preview, or None"""
    lockedAnew = Signal(object)
    """all settings that must stay (a set of paths), whenever they change"""
    taken = Signal(object)
    """what was found, to be kept"""

    def __init__(self, key: str, system: System, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.key, self.system = key, system
        self.found: Aimed | None = None
        self.locks: dict[tuple[str, str], Movable] = {}
        self._value: float | None = None
        label = QLabel(self.tr("Wanted"), self)
        label.setFont(dress.font("note"))
        self.field = QLineEdit(self)
        self.field.setMaxLength(40)
        self.field.setAccessibleName(self.tr("{0} wanted").format(label_of(key)))
        self.field.returnPressed.connect(self._ask)
        self.ask = QPushButton(self.tr("Find"), self)
        self.ask.clicked.connect(self._ask)
        row = QHBoxLayout()
        row.setSpacing(8)
        for widget, stretch in ((label, 0), (self.field, 1), (self.ask, 0)):
            row.addWidget(widget, stretch)
        self.sentence = Wrapped(self)
        self.sentence.setFont(dress.font("note"))
        self.sentence.setTextFormat(Qt.TextFormat.PlainText)
        self.sentence.hide()
        self._changes = QVBoxLayout()
        self._changes.setSpacing(2)
        self.apply = QPushButton(self.tr("Apply"), self)
        self.apply.setProperty("strong", True)
        self.apply.clicked.connect(self._take)
        self.apply.installEventFilter(self)
        self.apply.hide()
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(5)
        column.addLayout(row)
        column.addWidget(self.sentence)
        column.addLayout(self._changes)
        column.addWidget(self.apply, 0, Qt.AlignmentFlag.AlignLeft)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Enter in the field looks for the change and goes no further."""
        if event.key() not in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            super().keyPressEvent(event)

    def suggest(self, value: float) -> None:
        """Show what it is now as an example of what can be typed."""
        self.field.setPlaceholderText(value_words(self.key, value, self.system))

    def begin(self, typed: str) -> None:
        """Go on typing the value wanted."""
        self.field.setText(typed)
        self.field.setFocus(Qt.FocusReason.ShortcutFocusReason)
        self.field.deselect()
        self.field.end(False)

    @Slot()
    def _ask(self) -> None:
        if not self.field.text().strip():
            return
        try:
            value = wanted_value(self.key, self.field.text())
        except UnitError as error:
            self._wrong(True)
            self._say(str(error))
            return
        self._wrong(False)
        self._value = value
        self._search()

    def _search(self) -> None:
        if self._value is not None:
            self._clear()
            self._say(self.tr("Looking for the smallest change…"))
            self.wanted.emit(self._value, frozenset(self.locks))

    def _wrong(self, wrong: bool) -> None:
        self.field.setProperty("wrong", wrong)
        self.field.style().polish(self.field)

    def _say(self, text: str) -> None:
        self.sentence.setText(text)
        self.sentence.setVisible(bool(text))

    def _clear(self) -> None:
        self.found = None
        if self.isAncestorOf(QApplication.focusWidget() or self) and not self.field.hasFocus():
            self.field.setFocus()  # what is taken away would hand the keyboard to the settings below, which preview
        self.apply.hide()
        while (item := self._changes.takeAt(0)) is not None:
            old = item.widget()
            if old is not None:
                old.hide()
                old.deleteLater()

    def forget(self) -> None:
        """The recipe is another: what was found no longer holds."""
        self._clear()
        self._say("")

    def fail(self, sentence: str) -> None:
        """It could not be looked for."""
        self._clear()
        self._say(sentence)

    def put(self, found: Aimed) -> None:
        """Show what was found: what to change, what comes of it, what it makes worse."""
        self._clear()
        self.found = found
        before, after = outcome_changes(found)[self.key]
        there = value_words(self.key, after, self.system)
        now = value_words(self.key, before, self.system)
        if found.reached and not found.changes:
            said = [self.tr("It is so already: {0}.").format(now)]
        elif found.reached:
            said = [self.tr("{0} → {1} by:").format(now, there)]
        else:
            said = [self.tr("Not reached; the nearest is {0}.").format(there)]
            said += [one.sentence for one in found.in_the_way]
        self._say("\n".join(said))
        for change in found.changes:
            self._row(change.setting, change.sentence(self.system))
        for path, setting in self.locks.items():
            if path not in {change.setting.path for change in found.changes}:
                self._row(setting, f"{setting.title} {setting.shown(system=self.system)}")
        if found.worse:
            worse = Wrapped(self.tr("Worse: {0}").format(joined(found.worse)), self)
            worse.setFont(dress.font("note"))
            worse.setTextFormat(Qt.TextFormat.PlainText)
            self._changes.addWidget(worse)
        self.apply.setVisible(bool(found.changes))

    def _row(self, setting: Movable, text: str) -> None:
        row = QWidget(self)
        inside = QHBoxLayout(row)
        inside.setContentsMargins(0, 0, 0, 0)
        words = Wrapped(text, row)
        words.setFont(dress.font("note"))
        lock = QPushButton(self.tr("Locked") if setting.path in self.locks else self.tr("Lock"), row)
        lock.setCheckable(True)
        lock.setChecked(setting.path in self.locks)
        lock.setFont(dress.font("note"))
        lock.setToolTip(self.tr("Leave this as it is, and look for another change"))
        lock.setAccessibleName(self.tr("Lock {0}").format(setting.title))
        lock.toggled.connect(lambda on, setting=setting: self._lock(setting, on))
        inside.addWidget(words, 1)
        inside.addWidget(lock)
        self._changes.addWidget(row)

    def _lock(self, setting: Movable, on: bool) -> None:
        self.field.setFocus()
        self._set_lock(setting, on)

    def _set_lock(self, setting: Movable, on: bool) -> None:
        if on:
            self.locks[setting.path] = setting
        else:
            self.locks.pop(setting.path, None)
        self.lockedAnew.emit(frozenset(self.locks))
        self._search()

    @Slot(object)
    def turn_lock(self, setting: Movable) -> None:
        """Lock a setting, or free it; looked for anew where something was."""
        self._set_lock(setting, setting.path not in self.locks)

    @Slot()
    def _take(self) -> None:
        if self.found is not None:
            found, self.found = self.found, None
            self.taken.emit(found)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Pointing at “Apply” shows on the curves what would come of it."""
        show: Any = {QEvent.Type.Enter: True, QEvent.Type.FocusIn: True, QEvent.Type.Leave: False,
                     QEvent.Type.FocusOut: False}.get(event.type())  # fmt: skip
        if watched is self.apply and show is not None and self.found is not None:
            recipe: Recipe | None = self.found.recipe if show else None
            self.shown.emit(recipe)
        return False
