"""The milk standardised to a protein to fat ratio: cream off, skim on or cream on, with what the cheese becomes."""

from __future__ import annotations

from functools import partial
from typing import Final, Literal

from PySide6.QtCore import QSignalBlocker, Qt, Slot
from PySide6.QtWidgets import (
    QButtonGroup,
    QComboBox,
    QFrame,
    QLineEdit,
    QRadioButton,
    QVBoxLayout,
    QWidget,
)

from designer.language import number, spoken, word
from designer.recipe.document import Recipe
from designer.recipe.error import RecipeError
from designer.recipe.milk import blend
from designer.recipe.standardise import (
    Liquid,
    Offer,
    Target,
    offers,
    standardise,
    usual_source,
    usual_target,
    wanted_fat_pct,
)
from designer.units import UnitError, parse, show
from widgets.flow import flowing, labelled
from widgets.judging import known_style
from widgets.room import Parts
from widgets.session import Session
from widgets.together import Wrapped
from widgets.variants.outcome_table import OutcomeTable
from widgets.variants.page import BESIDE_PX, Page, button, note, scrolled

STEP: Final = 0.05
"""How much richer or leaner is tried at a press, in the ratio."""
OF: Final[tuple[Literal["protein", "casein"], ...]] = ("protein", "casein")


class StandardPage(Page):
    """Asks for the ratio, and what cream and skim hold; offers the ways; keeps one as one step of undo."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(session, "", "", parent)
        self.title.setText(self.tr("Standardise the milk"))
        self.back.setText(self.tr("‹ Milk"))
        self.offers: tuple[Offer, ...] = ()
        self._of: Recipe | None = None
        self.body.addWidget(self._questions())
        self.body.addWidget(self._liquids())
        self.choice = QButtonGroup(self)
        self.choice.idClicked.connect(lambda _: self._show_outcomes())
        self.outcomes = OutcomeTable(self.tr("Outcomes as it is and so changed"))
        split = Parts([scrolled(self._left()), scrolled(self._right())], [660, 540], BESIDE_PX)
        self.body.addWidget(split, 1)
        self.hint = note()
        self.apply = button(self.tr("Standardise"), self._apply, strong=True)
        self.foot.addWidget(self.hint, 1)
        self.foot.addWidget(self.apply)
        session.documentChanged.connect(self._another)

    # ---- building

    def _questions(self) -> QWidget:
        self.ratio = self._line(self.tr("Ratio wanted"), 76)
        self.of = QComboBox()
        self.of.setAccessibleName(self.tr("Ratio of"))
        for key, text in zip(OF, (self.tr("protein to fat"), self.tr("casein to fat")), strict=True):
            self.of.addItem(text, key)
        self.of.activated.connect(self._chose_of)
        self.wrong = note(role="wrong")
        self.wrong.hide()
        return flowing(labelled(self.tr("Wanted"), self.ratio, self.of), self.wrong, spacing=14)

    def _liquids(self) -> QWidget:
        rows = []
        self.liquids: dict[str, tuple[QLineEdit, QLineEdit]] = {}
        for key, text in (("cream", self.tr("Cream holds")), ("skim", self.tr("Skim holds"))):
            fat = self._line(self.tr("{0}: fat").format(text), 96)
            protein = self._line(self.tr("{0}: protein").format(text), 96)
            fat.setPlaceholderText(self.tr("fat %"))
            protein.setPlaceholderText(self.tr("protein %"))
            self.liquids[key] = fat, protein
            rows.append(labelled(text, fat, protein))
        return flowing(*rows, spacing=22)

    def _line(self, name: str, width: int) -> QLineEdit:
        made = QLineEdit()
        made.setMaxLength(20)
        made.setFixedWidth(width)
        made.setAccessibleName(name)
        made.editingFinished.connect(self._typed)
        return made

    def _left(self) -> QWidget:
        whole = QWidget()
        column = QVBoxLayout(whole)
        column.setContentsMargins(0, 0, 16, 0)
        column.setSpacing(12)
        self._ways = QVBoxLayout()
        self._ways.setSpacing(12)
        self.holds, self.usual = Wrapped(), note()
        self.tries = [button(text, partial(self._try, by)) for text, by in (
            (self.tr("A little richer"), -STEP), (self.tr("A little leaner"), STEP))]  # fmt: skip
        column.addLayout(self._ways)
        column.addWidget(self.holds)
        column.addWidget(self.usual)
        column.addWidget(flowing(*self.tries, spacing=10))
        column.addStretch(1)
        return whole

    def _right(self) -> QWidget:
        whole = QWidget()
        column = QVBoxLayout(whole)
        column.setContentsMargins(16, 0, 0, 0)
        column.addWidget(self.outcomes)
        column.addStretch(1)
        return whole

    # ---- asking

    def opened(self) -> None:
        """The page is shown: the ratio has the keyboard."""
        self.refresh()
        self.setFocusProxy(self.ratio)

    def refresh(self) -> None:
        """Begin with the ratio usual for the style, else the one there is."""
        if self._of is None:
            usual = usual_target(self.session.recipe.style) if self.session.recipe.style else None
            with QSignalBlocker(self.of):
                self.of.setCurrentIndex(OF.index(usual.of) if usual is not None else 0)
            self.ratio.setText(number(usual.ratio) if usual is not None else number(self._now(), ".2f"))
        self._of = self.session.recipe
        self._typed()

    def _now(self) -> float:
        milk = blend(self.session.recipe)
        protein = milk.casein + (milk.whey_protein if self.of.currentData() == "protein" else 0.0)
        return protein / milk.fat if milk.fat else 0.0

    @Slot()
    def _chose_of(self) -> None:
        self.ratio.setText(number(self._now(), ".2f"))
        self._typed()

    @Slot()
    def _typed(self) -> None:
        """Work out the ways; what can't be is said beside the field."""
        try:
            target = self._target()
            self.offers = offers(self.session.recipe, target, cream=self._liquid("cream"), skim=self._liquid("skim"))
            fat = wanted_fat_pct(self.session.recipe, target)
            if number(target.ratio, ".2f") == number(self._now(), ".2f"):
                self.offers = ()  # as near as it is told: not worth a ladle of cream
        except (UnitError, RecipeError, ZeroDivisionError) as error:
            self.offers = ()
            said = error.sentence if isinstance(error, RecipeError) else str(error)
            self._complain(
                self.tr("Such cream or skim can't bring it there.") if isinstance(error, ZeroDivisionError) else said
            )
            self.sentence.setText("")
        else:
            self._complain("")
            self._say(fat)
        self._show_ways()

    def _try(self, by: float) -> None:
        """Ask for a ratio beside the one there is."""
        self.ratio.setText(number(round(self._now() + by, 2), ".2f"))
        self._typed()

    def _target(self) -> Target:
        return Target(parse(self.ratio.text(), "ratio", comma=spoken().comma).value, self.of.currentData())

    def _liquid(self, key: str) -> Liquid | None:
        texts = [line.text().strip() for line in self.liquids[key]]
        if not any(texts):
            return None
        if not all(texts):
            raise UnitError(self.tr("Say both the fat and the protein, or neither."))
        fat, protein = (
            parse(text if text.endswith("%") else f"{text} %", "percent", comma=spoken().comma).value for text in texts
        )
        return Liquid(fat, protein)

    def _complain(self, sentence: str) -> None:
        self.wrong.setText(sentence)
        self.wrong.setVisible(bool(sentence))

    # ---- showing

    def _say(self, fat_pct: float) -> None:
        milk = blend(self.session.recipe)
        text = self.tr("Now {0} to 1, with {1} % fat. What is wanted lies at {2} % fat.")
        self.sentence.setText(
            text.format(number(self._now(), ".2f"), number(milk.fat / 10.0, ".2f"), number(fat_pct, ".2f"))
        )
        if not self.offers:
            self.sentence.setText(
                self.tr("The milk stands there already: {0} to 1. Type another ratio to see the ways to it.").format(
                    number(self._now(), ".2f")
                )
            )

    def _show_ways(self) -> None:
        for old in self.choice.buttons():
            self.choice.removeButton(old)
        while (item := self._ways.takeAt(0)) is not None:
            widget = item.widget()
            if widget is not None:
                widget.hide()
                widget.deleteLater()
        for place, offer in enumerate(self.offers):
            self._ways.addWidget(self._card(place, offer))
        self._tell_milk()
        self._show_outcomes()

    def _tell_milk(self) -> None:
        """What the milk holds and what is usual, with a step to either side where no other ratio is asked for."""
        recipe = self.session.recipe
        milk = blend(recipe)
        protein = milk.casein + milk.whey_protein
        words = self.tr(
            "In the vat now: fat {0} %, protein {1} %, casein {2} %; protein to fat {3}, casein to fat {4}."
        )
        to_fat = milk.fat or float("inf")
        told = (milk.fat / 10.0, protein / 10.0, milk.casein / 10.0, protein / to_fat, milk.casein / to_fat)
        self.holds.setText(words.format(*(number(one, ".2f") for one in told)))
        usual, known = usual_target(recipe.style) if recipe.style else None, known_style(recipe.style)
        lines = [self.tr("A higher ratio leaves less fat in the dry matter of the cheese, a lower one more.")]
        if usual is not None and known is not None:
            source, have, note = usual_source()
            line = self.tr("Usual for {0}: {1} of protein to 1 of fat. {2} ({3}, {4})")
            lines.append(line.format(known.title, number(usual.ratio), word(note, "note"), source, word(have, "have")))
        self.usual.setText("\n".join(lines))
        for one in self.tries:
            one.setVisible(not self.offers)

    def _card(self, number: int, offer: Offer) -> QFrame:
        card = QFrame()
        card.setObjectName("card")
        card.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        words = {
            "cream off": self.tr("Take {0} of cream off"),
            "cream on": self.tr("Put {0} of cream in"),
            "skim": self.tr("Put {0} of skim in"),
        }[offer.way]
        one = QRadioButton(words.format(show(offer.kg, "mass", system=self.system, decimals=2)))
        one.setChecked(number == 0)
        self.choice.addButton(one, number)
        column = QVBoxLayout(card)
        column.setContentsMargins(14, 10, 14, 10)
        column.setSpacing(4)
        column.addWidget(one)
        column.addWidget(note(offer.sentence))
        return card

    def chosen(self) -> Recipe | None:
        """The recipe with the chosen way carried out; None where there is none."""
        number = self.choice.checkedId()
        if not 0 <= number < len(self.offers):
            return None
        try:
            recipe = standardise(self.session.recipe, self.offers[number])
            self.session.march(recipe)
        except RecipeError as error:
            self._complain(error.sentence)
            return None
        return recipe

    @Slot()
    def _show_outcomes(self) -> None:
        recipe = self.chosen()
        self.apply.setEnabled(recipe is not None)
        made = [self.session.march(one) for one in (self.session.recipe, recipe) if one is not None]
        self.outcomes.put([self.tr("As it is"), self.tr("So changed")][: len(made)], made, self.system)

    # ---- doing

    @Slot()
    def _apply(self) -> None:
        recipe = self.chosen()
        if recipe is not None:
            self.session.commit(recipe, self.tr("Standardise to {0}").format(self.ratio.text().strip()))
