"""Asks what leaves the vat after a stage: of what, how much of it, and what it is to be called."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QComboBox, QDialog, QDialogButtonBox, QFormLayout, QLineEdit, QVBoxLayout, QWidget

from designer.units import UnitError, parse
from widgets.together import Wrapped


class SplitForm(QDialog):
    """Shut by `accept` once the branch stands; what is refused is said in the form."""

    wanted = Signal(str, float, str)
    """of what, share [%], name"""

    def __init__(self, after: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(self.tr("Split off after “{0}”").format(after))
        self.of = QComboBox(self)
        for key, text in (
            ("curd", self.tr("curd (before the cut: milk)")),
            ("whey", self.tr("whey")),
            ("cream", self.tr("cream")),
        ):
            self.of.addItem(text, key)
        self.share = QLineEdit("50 %", self)
        self.name = QLineEdit(self)
        self.name.setPlaceholderText(self.tr("what you call this cheese"))
        self._says = Wrapped(self)
        self._says.setProperty("role", "soft")
        self.error = Wrapped(self)
        self.error.setProperty("role", "wrong")
        self.error.hide()
        rows = QFormLayout()
        rows.addRow(self.tr("Split off"), self.of)
        rows.addRow(self.tr("How much of it"), self.share)
        rows.addRow(self.tr("Name"), self.name)
        self.buttons = QDialogButtonBox(self)
        self.do = self.buttons.addButton(self.tr("Split off"), QDialogButtonBox.ButtonRole.AcceptRole)
        self.buttons.addButton(QDialogButtonBox.StandardButton.Cancel)
        self.buttons.accepted.connect(self._ask)
        self.buttons.rejected.connect(self.reject)
        column = QVBoxLayout(self)
        column.setContentsMargins(20, 16, 20, 14)
        column.setSpacing(12)
        column.addLayout(rows)
        column.addWidget(self._says)
        column.addWidget(self.error)
        column.addWidget(self.buttons)
        self.setMinimumWidth(420)
        self.of.currentIndexChanged.connect(self._explain)
        self._explain()

    def _explain(self) -> None:
        self._says.setText(
            {
                "curd": self.tr("It begins as a twin of the stages that follow; change there what is to differ."),
                "whey": self.tr("It begins as a whey cheese: heated, curdled with acid, hung in cloth."),
                "cream": self.tr("It begins as cream left to ripen. Cream is taken off before the milk sets."),
            }[self.of.currentData()]
        )

    def _ask(self) -> None:
        try:
            share = parse(self.share.text(), "percent").value
        except UnitError as error:
            self.complain(str(error))
            return
        self.wanted.emit(self.of.currentData(), share, self.name.text().strip())

    def complain(self, sentence: str) -> None:
        """Say what is wrong, under the fields."""
        self.error.setText(sentence)
        self.error.setVisible(bool(sentence))
