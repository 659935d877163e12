"""How a house style begins: from another style, from what this recipe is forecast to be, or from tasted batches."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtWidgets import QCheckBox, QComboBox, QFrame, QGridLayout, QHBoxLayout, QLabel, QLineEdit, QWidget

from designer.batch.liked import style_of
from designer.judge.own_style import own_style
from styles import house
from styles.reader import Style, StyleError, style, styles
from styles.tasted import FEW
from widgets.batch.desk import LedgerDesk
from widgets.judging import house_names, known_style
from widgets.session import Session
from widgets.variants.page import button, note

FORECAST, LIKED = "forecast", "liked"


class StyleMaker(QFrame):
    """Asks for a name and what to begin from."""

    made = Signal(object)
    """a new style, not yet written"""
    given_up = Signal()

    def __init__(self, session: Session, ledger: LedgerDesk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session, self._ledger = session, ledger
        self.setObjectName("card")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setMaximumWidth(640)
        self.begin_from = QComboBox(self)
        self.begin_from.setAccessibleName(self.tr("Begin from"))
        self.name = QLineEdit(self)
        self.name.setMaxLength(60)
        self.name.setAccessibleName(self.tr("Name of the house style"))
        self.name.returnPressed.connect(self._make)
        self.begin_from.currentIndexChanged.connect(self._chosen)
        self.limits = QCheckBox(self)
        self.says = note()
        self.wrong = note(role="wrong")
        self.wrong.hide()
        self.make = button(self.tr("Make it"), self._make, strong=True)
        self.leave = button(self.tr("Not now"), self.given_up.emit)
        grid = QGridLayout(self)
        grid.setContentsMargins(18, 16, 18, 16)
        grid.setHorizontalSpacing(12)
        grid.setVerticalSpacing(8)
        grid.setColumnStretch(1, 1)
        for row, (text, field) in enumerate(((self.tr("Begin from"), self.begin_from), (self.tr("Name"), self.name))):
            label = QLabel(text, self)
            label.setProperty("role", "soft")
            label.setBuddy(field)
            grid.addWidget(label, row, 0)
            grid.addWidget(field, row, 1)
        grid.addWidget(self.says, 2, 1)
        grid.addWidget(self.limits, 3, 1)
        grid.addWidget(self.wrong, 4, 1)
        row_ = QHBoxLayout()
        row_.addWidget(self.make)
        row_.addWidget(self.leave)
        row_.addStretch(1)
        grid.addLayout(row_, 5, 1)

    def ask(self, *, can_leave: bool) -> None:
        """Begin anew; the recipe's own style stands first among the styles."""
        box = self.begin_from
        box.clear()
        box.addItem(self.tr("what this recipe is forecast to be"), FORECAST)
        liked = len(self._ledger.liked())
        if liked:
            box.addItem(self.tr("what was liked: batches of {0}").format(self._session.recipe.name), LIKED)
        own = known_style(self._session.recipe.style)
        every = [*house_names(), *((one.key, one.title) for one in styles())]
        first = [] if own is None else [(own.key, own.name)]
        for key, name in [*first, *(pair for pair in every if pair not in first)]:
            box.addItem(name, key)
        box.setCurrentIndex(box.findData(own.key) if own is not None else 0)
        self.name.clear()
        self.name.setPlaceholderText(self.tr("as you would call the cheese"))
        self._complain("")
        self.leave.setVisible(can_leave)
        self.name.setFocus()

    def choose_liked(self) -> None:
        """Begin from the batches that were liked, where there are any."""
        self.begin_from.setCurrentIndex(max(self.begin_from.findData(LIKED), 0))
        self.name.setFocus()

    @Slot()
    def _chosen(self) -> None:
        """Say what comes of the choice; ask for the limits of the recipe's style where it could lend them."""
        key, own = self.begin_from.currentData(), known_style(self._session.recipe.style)
        lends = own is not None and any(one.kind not in ("class", "protected name") for one in own.rules)
        self.limits.setVisible(lends and key in (FORECAST, LIKED))
        if own is not None:
            self.limits.setText(self.tr("with the limits of law and standards of {0}").format(own.title))
        self.says.setText("")
        if key == LIKED:
            count = len(self._ledger.liked())
            said = self.tr(
                "Batches that were liked: {0}. Their measured ranges; where nothing was measured, the forecast."
            )
            few = self.tr("So few say little of how far they spread.") if count < FEW else ""
            self.says.setText(f"{said.format(count)} {few}".strip())
        self.says.setVisible(bool(self.says.text()))

    def _complain(self, sentence: str) -> None:
        self.wrong.setText(sentence)
        self.wrong.setVisible(bool(sentence))
        self.name.setProperty("wrong", bool(sentence))
        self.name.style().polish(self.name)

    @Slot()
    def _make(self) -> None:
        try:
            made = self._begun(self.name.text().strip())
        except StyleError as error:
            self._complain(str(error))
            return
        self._complain("")
        self.made.emit(made)

    def _begun(self, name: str) -> Style:
        if not name:
            raise StyleError(self.tr("A house style needs a name."))
        key = self.begin_from.currentData()
        if key == FORECAST:
            like = known_style(self._session.recipe.style)
            return own_style(self._session.forecast, name, like=like, limits=self.limits.isChecked())
        if key == LIKED:
            like = known_style(self._session.recipe.style)
            milk = sorted({source.species for source in self._session.recipe.milks})
            return style_of(name, self._ledger.liked(), like, milk=milk, limits=self.limits.isChecked())
        return house.from_style(style(key), name)

    def fail(self, sentence: str) -> None:
        """It could not be kept under that name."""
        self._complain(sentence)
