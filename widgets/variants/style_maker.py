"""How a house style begins: from another style, or from what this recipe is forecast to be."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtWidgets import QComboBox, QFrame, QGridLayout, QHBoxLayout, QLabel, QLineEdit, QWidget

from designer.judge.own_style import own_style
from styles import house
from styles.reader import Style, StyleError, style, styles
from widgets.judging import house_names, known_style
from widgets.session import Session
from widgets.variants.page import button, note

FORECAST = "forecast"


class StyleMaker(QFrame):
    """Asks for a name and what to begin from."""

    made = Signal(object)
    """a new style, not yet written"""
    given_up = Signal()

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
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
        grid.addWidget(self.wrong, 2, 1)
        row_ = QHBoxLayout()
        row_.addWidget(self.make)
        row_.addWidget(self.leave)
        row_.addStretch(1)
        grid.addLayout(row_, 3, 1)

    def ask(self, *, can_leave: bool) -> None:
        """Begin anew; the recipe's own style stands first among the styles."""
        box = self.begin_from
        box.clear()
        box.addItem(self.tr("what this recipe is forecast to be"), FORECAST)
        own = known_style(self._session.recipe.style)
        every = [*house_names(), *((one.key, one.title) for one in styles())]
        first = [] if own is None else [(own.key, own.name)]
        for key, name in [*first, *(pair for pair in every if pair not in first)]:
            box.addItem(name, key)
        box.setCurrentIndex(1 if first else 0)
        self.name.clear()
        self.name.setPlaceholderText(self.tr("as you would call the cheese"))
        self._complain("")
        self.leave.setVisible(can_leave)
        self.name.setFocus()

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
            return own_style(self._session.forecast, name, like=like)
        return house.from_style(style(key), name)

    def fail(self, sentence: str) -> None:
        """It could not be kept under that name."""
        self._complain(sentence)
