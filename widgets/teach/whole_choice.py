"""A change of a whole stage or of the milk to choose: what is done, to which stage, with what."""

from __future__ import annotations

from collections.abc import Callable
from typing import Final

from PySide6.QtCore import QT_TRANSLATE_NOOP, QCoreApplication, QSignalBlocker, Signal
from PySide6.QtWidgets import QComboBox, QVBoxLayout, QWidget

from designer.judge.rebuilt import Rebuilt, of_milk, places, put_in, shifted, without
from designer.recipe.document import Recipe
from designer.recipe.ingredients import SPECIES
from designer.recipe.stages.kinds import KINDS
from widgets import wording
from widgets.flow import flowing
from widgets.form.editors import words

N = QT_TRANSLATE_NOOP
OUT, EARLIER, LATER, IN, MILK = "out", "earlier", "later", "in", "milk"
WAYS: Final = {
    OUT: N("Guess", "Leave a stage out"),
    EARLIER: N("Guess", "A stage earlier"),
    LATER: N("Guess", "A stage later"),
    IN: N("Guess", "Put a stage in"),
    MILK: N("Guess", "Another milk"),
}


class WholeChoice(QWidget):
    """Which stage, and which kind or milk; `way` says what is done, and which of the lists are of use."""

    changed = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.way = OUT
        self.stage, self.kind, self.milk = QComboBox(), QComboBox(), QComboBox()
        for one, name in (
            (self.stage, self.tr("Which stage")),
            (self.kind, self.tr("Which kind of stage")),
            (self.milk, self.tr("Milk of")),
        ):
            one.setAccessibleName(name)
            one.setMinimumContentsLength(18)
            one.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
            one.currentIndexChanged.connect(self.changed)
        for kind in KINDS:
            self.kind.addItem(wording.kind_name(kind), kind)
        for species in SPECIES:
            self.milk.addItem(words(species), species)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(flowing(self.kind, self.stage, self.milk))

    def put(self, recipe: Recipe) -> None:
        """List the stages of a recipe; the one chosen stays chosen where it is still there."""
        before = self.stage.currentData()
        with QSignalBlocker(self.stage), QSignalBlocker(self.milk):
            self.stage.clear()
            for stage_id, title in places(recipe):
                after = QCoreApplication.translate("Guess", "after {0}").format(title) if self.way == IN else title
                self.stage.addItem(after, stage_id)
            self.stage.setCurrentIndex(max(self.stage.findData(before), 0))
            own = {milk.species for milk in recipe.milks}
            if self.milk.currentData() in own:
                self.milk.setCurrentIndex(next(at for at, one in enumerate(SPECIES) if one not in own))
        self.stage.setVisible(self.way != MILK)
        self.kind.setVisible(self.way == IN)
        self.milk.setVisible(self.way == MILK)

    def change(self, recipe: Recipe) -> Rebuilt:
        """The recipe so changed. Raises RecipeError where that can't be."""
        stage = str(self.stage.currentData())
        ways: dict[str, Callable[[], Rebuilt]] = {
            OUT: lambda: without(recipe, stage),
            EARLIER: lambda: shifted(recipe, stage, -1),
            LATER: lambda: shifted(recipe, stage, 1),
            IN: lambda: put_in(recipe, str(self.kind.currentData()), stage),
            MILK: lambda: of_milk(recipe, SPECIES[self.milk.currentIndex()]),
        }
        return ways[self.way]()
