"""The recipe moved to another milk: what shifts and why, forecast before and after, kept as one step of undo."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from PySide6.QtCore import Qt, Slot
from PySide6.QtWidgets import (
    QComboBox,
    QFrame,
    QLineEdit,
    QVBoxLayout,
    QWidget,
)

from designer.judge.another_milk import Moved, Shift, move_to
from designer.judge.words import lowered
from designer.language import word as told
from designer.recipe.document import Recipe, Species
from designer.recipe.ingredients import SPECIES
from designer.recipe.presets import breeds
from designer.units import System, UnitError, parse
from widgets.asking import Asker
from widgets.compare.curves import Curves
from widgets.flow import flowing, labelled
from widgets.form.editors import words
from widgets.room import Parts
from widgets.session import Session
from widgets.theme import apply as dress
from widgets.together import Wrapped
from widgets.variants.outcome_table import OutcomeTable
from widgets.variants.page import BESIDE_PX, Dotted, Page, button, note, scrolled


@dataclass(frozen=True, slots=True)
class Wish:
    """What was asked: of which recipe, to which milk, how much of it, in which units it is told."""

    recipe: Recipe
    species: Species
    breed: str
    share_pct: float
    system: System


class ShiftCard(QFrame):
    """One thing that shifts: what, from, to, and under it why and where that is from."""

    def __init__(self, shift: Shift, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("card")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.head = Wrapped(self.tr("{0}:  {1} → {2}").format(shift.what, shift.before, shift.after))
        self.head.setFont(dress.font("body", bold=True))
        why = f"{shift.why[:1].upper()}{shift.why[1:]}. {shift.source} ({told(shift.have, 'have')})."
        column = QVBoxLayout(self)
        column.setContentsMargins(14, 10, 14, 10)
        column.setSpacing(3)
        column.addWidget(self.head)
        column.addWidget(note(why))


class MilkPage(Page):
    """Asks for the milk; shows its shifts with their reasons, and three columns of outcomes."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(session, "", "", parent)
        self.title.setText(self.tr("Another milk"))
        self.back.setText(self.tr("‹ Milk"))
        self.moved: Moved | None = None
        self._wish: Wish | None = None
        self._asker = Asker(self)
        self._asker.answered.connect(self._take)
        self._asker.failed.connect(self._fail)
        self.body.addWidget(self._questions())
        split = Parts([self._left(), self._right()], [680, 520], BESIDE_PX)
        self.body.addWidget(split, 1)
        self.hint = note()
        self.apply = button(self.tr("Move the recipe"), self._apply, strong=True)
        self.foot.addWidget(self.hint, 1)
        self.foot.addWidget(self.apply)
        session.documentChanged.connect(self._another)

    # ---- building

    def _questions(self) -> QWidget:
        self.species = QComboBox()
        self.species.setAccessibleName(self.tr("Milk of"))
        for one in SPECIES:
            self.species.addItem(words(one), one)
        self.species.activated.connect(self._chose_species)
        self.breed = QComboBox()
        self.breed.setAccessibleName(self.tr("Breed"))
        self.breed.setMinimumWidth(180)
        self.breed.activated.connect(self._ask)
        self.share = QLineEdit("100 %")
        self.share.setMaxLength(12)
        self.share.setFixedWidth(76)
        self.share.setAccessibleName(self.tr("Share of the milk"))
        self.share.editingFinished.connect(self._ask)
        self.wrong = note(role="wrong")
        self.wrong.hide()
        return flowing(
            labelled(self.tr("Milk of"), self.species),
            labelled(self.tr("Breed"), self.breed),
            labelled(self.tr("Share of the milk"), self.share),
            self.wrong,
            spacing=18,
        )

    def _left(self) -> QWidget:
        inside = QWidget()
        column = QVBoxLayout(inside)
        column.setContentsMargins(0, 0, 16, 0)
        column.setSpacing(14)
        self.shifts = QVBoxLayout()
        self.shifts.setSpacing(12)
        self.notes = Dotted("soft")
        column.addLayout(self.shifts)
        column.addWidget(self.notes)
        column.addStretch(1)
        return scrolled(inside)

    def _right(self) -> QWidget:
        inside = QWidget()
        column = QVBoxLayout(inside)
        column.setContentsMargins(16, 0, 4, 0)
        column.setSpacing(8)
        self.outcomes = OutcomeTable(self.tr("Outcomes as it is, with the milk alone, and with what shifts"))
        self.curves = Curves()
        self.curves.setMinimumHeight(240)
        column.addWidget(self.outcomes)
        column.addWidget(self.curves, 1)
        return scrolled(inside)

    # ---- asking

    def opened(self) -> None:
        """The page is shown: another animal than the recipe's is chosen, and has the keyboard."""
        if self._wish is None:
            own = {milk.species for milk in self.session.recipe.milks}
            other = next((one for one in ("goat", "cow", "sheep") if one not in own), "goat")
            self.species.setCurrentIndex(self.species.findData(other))
            self._fill_breeds()
        self.refresh()
        self.setFocusProxy(self.species)

    def refresh(self) -> None:
        """Work it out anew where the recipe, the milk or the units are others."""
        self._ask()

    @Slot()
    def _chose_species(self) -> None:
        self._fill_breeds()
        self._ask()

    def _fill_breeds(self) -> None:
        self.breed.clear()
        self.breed.addItem(self.tr("average of the species"), "")
        for key, label in breeds(str(self.species.currentData())).items():
            self.breed.addItem(label, key)

    @Slot()
    def _ask(self) -> None:
        try:
            text = self.share.text().strip()
            share = parse(text if text.endswith("%") else f"{text} %", "percent").value
        except UnitError as error:
            self._complain(str(error))
            return
        self._complain("")
        species: Species = self.species.currentData()
        wish = Wish(self.session.recipe, species, str(self.breed.currentData() or ""), share, self.system)
        if wish == self._wish:
            return
        self._wish, self.moved = wish, None
        self.sentence.setText(self.tr("Working out what shifts…"))
        self.apply.setEnabled(False)
        self._asker.ask(
            {
                "moved": lambda _: (
                    wish,
                    move_to(wish.recipe, wish.species, breed=wish.breed, share_pct=wish.share_pct, system=wish.system),
                )
            }
        )

    def _complain(self, sentence: str) -> None:
        self.wrong.setText(sentence)
        self.wrong.setVisible(bool(sentence))
        if sentence:
            self._wish = self.moved = None
            self.apply.setEnabled(False)

    @Slot(str, object)
    def _take(self, _name: str, answer: Any) -> None:
        wish, moved = answer
        if wish == self._wish:
            self.moved = moved
            self._show(moved)

    @Slot(str, str)
    def _fail(self, _name: str, sentence: str) -> None:
        self._complain(sentence)
        self.sentence.setText("")

    @property
    def idle(self) -> bool:
        """True where nothing is being worked out."""
        return self._asker.idle

    # ---- showing

    def _show(self, moved: Moved) -> None:
        while (old := self.shifts.takeAt(0)) is not None:
            widget = old.widget()
            if widget is not None:
                widget.hide()
                widget.deleteLater()
        for shift in moved.shifts:
            self.shifts.addWidget(ShiftCard(shift))
        lines = [f"{one.text} [{told(one.have, 'have')}]" for one in moved.notes]
        lines += [self.tr("You could also: {0}").format(lowered(one.sentence)) for one in moved.milk[:2]]
        self.notes.put(lines)
        self.sentence.setText(self._said(moved))
        heads = [self.tr("As it is"), self.tr("Milk alone"), self.tr("So changed")]
        self.outcomes.put(heads, [moved.before, moved.with_milk, moved.after], self.system)
        self.curves.show_makes((moved.before, moved.after), (self.tr("as it is"), self.tr("so changed")))
        self.apply.setEnabled(moved.recipe != self.session.recipe)
        self.hint.setText(self.tr("One step of undo. Doses and settings that no rule speaks of stay as they are."))

    def _said(self, moved: Moved) -> str:
        count = len(moved.shifts)
        if not count:
            return self.tr("Nothing but the milk needs to change.")
        said = (
            self.tr("Beside the milk one thing shifts.") if count == 1 else self.tr("Beside the milk {0} things shift.")
        )
        said = said.format(count)
        return said if moved.reached else said + " " + self.tr("The moisture could not be brought all the way back.")

    # ---- doing

    @Slot()
    def _apply(self) -> None:
        if self.moved is not None:
            text = self.tr("Move to {0} milk").format(self.species.currentText())
            self.session.commit(self.moved.recipe, text)

    def stop(self) -> None:
        """End what runs beside the window."""
        self._asker.stop()
