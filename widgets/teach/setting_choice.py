"""One setting of the recipe and a value for it: a list, a field in the maker's units, a step down and a step up."""

from __future__ import annotations

from PySide6.QtCore import QSignalBlocker, Signal, Slot
from PySide6.QtWidgets import QComboBox, QHBoxLayout, QLineEdit, QWidget

from designer.judge.movable import Movable, movables
from designer.language import spoken
from designer.recipe.document import Recipe
from designer.units import System, UnitError, parse
from widgets.variants.page import button
from widgets.wording import MINUS


class SettingChoice(QWidget):
    """`changed` when another setting or value stands there; `wrong(sentence)` where the text is no value of it."""

    changed = Signal()
    wrong = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.system: System = "metric"
        self.settings: tuple[Movable, ...] = ()
        self.value = 0.0
        self.list = QComboBox()
        self.list.setAccessibleName(self.tr("Setting"))
        self.list.setMaxVisibleItems(24)
        self.list.setMinimumContentsLength(20)
        self.list.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        self.field = QLineEdit()
        self.field.setAccessibleName(self.tr("Value of the setting"))
        self.field.setFixedWidth(130)
        self.less = button(MINUS, lambda: self.step(-1))
        self.less.setAccessibleName(self.tr("A step less"))
        self.more = button("+", lambda: self.step(1))
        self.more.setAccessibleName(self.tr("A step more"))
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(6)
        row.addWidget(self.list, 1)
        for one in (self.less, self.field, self.more):
            row.addWidget(one)
        self.list.currentIndexChanged.connect(self._other)
        self.field.editingFinished.connect(self._typed)

    def put(self, recipe: Recipe, system: System, path: tuple[str, str] | None = None) -> None:
        """List the settings of a recipe; the one at `path`, or the one chosen before, stays chosen."""
        self.system = system
        wanted = path or (self.setting.path if self.setting is not None else None)
        self.settings = movables(recipe)
        with QSignalBlocker(self.list):
            self.list.clear()
            for one in self.settings:
                self.list.addItem(f"{one.title[:1].upper()}{one.title[1:]}   {one.shown(system=system)}")
            places = [at for at, one in enumerate(self.settings) if one.path == wanted]
            self.list.setCurrentIndex(places[0] if places else 0)
        self._other()

    @property
    def setting(self) -> Movable | None:
        """The setting chosen."""
        at = self.list.currentIndex()
        return self.settings[at] if 0 <= at < len(self.settings) else None

    def choose(self, path: tuple[str, str]) -> None:
        """Choose a setting."""
        self.list.setCurrentIndex([one.path for one in self.settings].index(path))

    def step(self, steps: int) -> None:
        """A natural step or more, inside what the setting allows."""
        one = self.setting
        if one is not None:
            self._set(min(max(self.value + steps * one.step, one.low), one.high))

    @Slot()
    def _other(self) -> None:
        if self.setting is not None:
            self._set(self.setting.value)

    def _set(self, value: float) -> None:
        assert self.setting is not None
        self.value = value
        self.field.setText(self.setting.shown(value, self.system))
        self.changed.emit()

    @Slot()
    def _typed(self) -> None:
        one = self.setting
        if one is None or self.field.text() == one.shown(self.value, self.system):
            return
        try:
            value = parse(self.field.text(), one.kind, comma=spoken().comma).value
        except UnitError as error:
            self.wrong.emit(str(error))
            return
        self._set(min(max(value, one.low), one.high))
