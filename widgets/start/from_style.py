"""New from a style: a milk, a style, and a first recipe for them, worked out beside the window."""

from __future__ import annotations

from typing import Any, Final

from PySide6.QtCore import QT_TRANSLATE_NOOP, QCoreApplication, QModelIndex, Qt, Signal, Slot
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import (
    QHBoxLayout,
    QLineEdit,
    QListWidget,
    QListWidgetItem,
    QProgressBar,
    QPushButton,
    QStackedLayout,
    QVBoxLayout,
    QWidget,
)

from designer.judge.first_recipe import STEPS, first_recipe
from designer.judge.meet import Met
from designer.language import word
from designer.make import kernel
from designer.recipe.document import MilkSource
from designer.recipe.field import FieldMeta, Model
from designer.recipe.presets import breeds
from styles.reader import styles
from widgets.asking import Asker, Stop, StoppedError
from widgets.form.part_form import PartForm, plain_choices
from widgets.judging import house_names
from widgets.room import Turning
from widgets.together import Wrapped

N = QT_TRANSLATE_NOOP
BESIDE_PX: Final = 460
"""The least room for the list of styles beside the milk."""
ASKED: Final = ("species", "breed", "volume_l", "fat_pct", "protein_pct", "heat")
SAID: Final = {
    "example": N("Start", "Looking for the nearest example …"),
    "middle": N("Start", "Setting it to the middle of the usual ranges …"),
    "aim": N("Start", "Bringing it inside limits and ranges …"),
    "limits": N("Start", "Bringing it inside the limits alone …"),
}


class StyleSearch(QLineEdit):
    """Finds a style; Up and Down move in the list, so that a hand need not leave the keys."""

    stepped = Signal(int)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Up and Down go to the list."""
        step = {Qt.Key.Key_Up: -1, Qt.Key.Key_Down: 1}.get(Qt.Key(event.key()))
        if step is None:
            super().keyPressEvent(event)
        else:
            self.stepped.emit(step)


class FromStyle(QWidget):
    """Milk on the left, styles on the right; `made` carries what came of it."""

    made = Signal(object)
    _began = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.milk = MilkSource(id="milk", name=self.tr("milk"), volume_l=100.0)
        self.system = "metric"
        self._listed: list[tuple[str, str, str]] = []
        self.asker = Asker(self)
        self.asker.answered.connect(lambda _, met: self._end("", met))
        self.asker.failed.connect(lambda _, sentence: self._end(sentence, None))
        self._began.connect(self._tell)
        self.form = PartForm(self._choices, self)
        self.form.changed.connect(self._changed)
        self.search = StyleSearch(self)
        self.search.setPlaceholderText(self.tr("Find a style: Cheddar, blue, goat …"))
        self.search.setAccessibleName(self.tr("Find a style"))
        self.search.textChanged.connect(self._filter)
        self.search.stepped.connect(self._step)
        self.search.returnPressed.connect(self.ask)
        self.list = QListWidget(self)
        self.list.setObjectName("styles")
        self.list.setAccessibleName(self.tr("Styles"))
        self.list.setUniformItemSizes(True)
        self.list.activated.connect(self._activated)
        self.list.currentRowChanged.connect(self._ready)
        self.go = QPushButton(self.tr("Make a first recipe"), self)
        self.go.setProperty("strong", True)
        self.go.clicked.connect(self.ask)
        self.said = Wrapped(self)
        self.said.setProperty("role", "soft")
        self.bar = QProgressBar(self)
        self.bar.setRange(0, len(STEPS))
        self.bar.setTextVisible(False)
        self.bar.setFixedHeight(8)
        self.stop_ = QPushButton(self.tr("Stop"), self)
        self.stop_.clicked.connect(self.give_up)
        self._lay_out()
        self.fill()
        self.form.put(self.milk, self.system, only=ASKED)
        self._working(False)

    def _lay_out(self) -> None:
        left, right = QWidget(), QWidget()
        column = QVBoxLayout(left)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self.form)
        column.addStretch(1)
        column = QVBoxLayout(right)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(6)
        column.addWidget(self.search)
        column.addWidget(self.list, 1)
        self.list.setMinimumWidth(160)
        both = Turning([(left, 1), (right, 1)], BESIDE_PX, spacing=18)
        words = QVBoxLayout()
        words.setSpacing(3)
        words.addWidget(self.said)
        words.addWidget(self.bar)
        foot = QHBoxLayout()
        foot.setSpacing(10)
        foot.addLayout(words, 1)
        self._buttons = QStackedLayout()
        self._buttons.addWidget(self.go)
        self._buttons.addWidget(self.stop_)
        foot.addLayout(self._buttons)
        whole = QVBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.setSpacing(8)
        whole.addWidget(both, 1)
        whole.addLayout(foot)

    def fill(self) -> None:
        """List the styles: the maker's own beside the open recipe first, then those that come with the program."""
        own = [(key, name, self.tr("your own style")) for key, name in house_names()]
        shipped = sorted(styles(), key=lambda one: one.title.lower())
        wanted = own + [(one.key, one.title, word(one.family, "style")) for one in shipped]
        if wanted == self._listed:
            return
        chosen, self._listed = self.style_key(), wanted
        self.list.clear()
        for key, name, second in wanted:
            item = QListWidgetItem(f"{name}  \u00b7  {second}")
            item.setData(Qt.ItemDataRole.UserRole, key)
            item.setToolTip(item.text())
            self.list.addItem(item)
            if key == chosen:
                self.list.setCurrentItem(item)
        self._filter(self.search.text())

    def _choices(self, part: Model, meta: FieldMeta) -> list[tuple[Any, str]]:
        if meta.name == "breed":
            return [("", self.tr("average of the species")), *breeds(self.milk.species).items()]
        return plain_choices(part, meta)

    def set_system(self, system: str) -> None:
        """Metric or US units."""
        self.system = system
        self.form.put(self.milk, system, only=ASKED)

    @Slot(str, object, bool)
    def _changed(self, name: str, value: object, nudged: bool) -> None:
        changes = {name: value} | ({"breed": ""} if name == "species" else {})
        try:
            self.milk = MilkSource.model_validate(self.milk.model_dump() | changes)
        except ValueError as error:
            self.form.complain(name, str(error))
            return
        self.form.put(self.milk, self.system, only=ASKED)
        self._filter(self.search.text())

    # ---- choosing a style

    @Slot(str)
    def _filter(self, text: str) -> None:
        """Show the styles that hold every word typed."""
        wanted = text.lower().split()
        shown = []
        for row in range(self.list.count()):
            item = self.list.item(row)
            hide = not all(word in item.text().lower() for word in wanted)
            item.setHidden(hide)
            if not hide:
                shown.append(row)
        if wanted and shown and (self.list.currentRow() not in shown):
            self.list.setCurrentRow(shown[0])
        self._ready()

    @Slot(int)
    def _step(self, by: int) -> None:
        shown = [row for row in range(self.list.count()) if not self.list.item(row).isHidden()]
        if shown:
            here = shown.index(self.list.currentRow()) if self.list.currentRow() in shown else -1
            self.list.setCurrentRow(shown[min(max(here + by, 0), len(shown) - 1)])

    @Slot(QModelIndex)
    def _activated(self, _: QModelIndex) -> None:
        self.ask()

    def style_key(self) -> str:
        """The style chosen, "" where none is."""
        item = self.list.currentItem()
        return str(item.data(Qt.ItemDataRole.UserRole)) if item is not None and not item.isHidden() else ""

    @Slot()
    def _ready(self) -> None:
        self.go.setEnabled(bool(self.style_key()))

    # ---- working it out

    @Slot()
    def ask(self) -> None:
        """Work out a first recipe for the milk in the style chosen."""
        key, milk = self.style_key(), self.milk
        if not key or not self.asker.idle:
            return
        began = self._began

        def question(stop: Stop) -> Met:
            def begins(step: str) -> None:
                if stop():
                    raise StoppedError
                began.emit(step)

            kernel.warm_up()
            return first_recipe([milk], key, begins=begins)

        self._working(True)
        self.asker.ask({"first": question})

    @Slot(str)
    def _tell(self, step: str) -> None:
        if self.stop_.isVisibleTo(self):
            self.said.setText(QCoreApplication.translate("Start", SAID[step]))
            self.bar.setValue(STEPS.index(step) + 1)

    @Slot()
    def give_up(self) -> None:
        """Nobody waits for the recipe any more."""
        self.asker.forget()
        self._end(self.tr("Stopped; nothing was changed."), None)

    def _end(self, sentence: str, met: Met | None) -> None:
        self._working(False)
        self.said.setText(sentence)
        if met is not None:
            self.made.emit(met)

    def _working(self, on: bool) -> None:
        self._buttons.setCurrentWidget(self.stop_ if on else self.go)
        self.bar.setVisible(on)
        self.bar.setValue(0)
        self.said.setText(
            self.tr("Getting ready …")
            if on
            else self.tr("Drawn from the nearest example, scaled to your milk, then brought inside the style's limits.")
        )
        self._ready()

    def stop(self) -> None:
        """End what runs beside the window."""
        self.asker.stop()
