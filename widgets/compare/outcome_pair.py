"""Outcomes of two makes side by side, with what lies between them."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication, Qt
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QHeaderView, QTreeWidget, QTreeWidgetItem, QWidget

from designer.judge.compare import KEYS, Comparison
from widgets import wording
from widgets.figure_table import RIGHT
from widgets.outcomes import figures
from widgets.theme import apply as dress


def difference_words(key: str, change: float) -> str:
    """The difference of an outcome with its sign; "alike" where it rounds to nothing."""
    if key == "finish_min":
        words = f"{'+' if change > 0.0 else wording.MINUS}{wording.length(abs(change))}"
    else:
        words = figures.difference_words(key, change, "metric")
    seen = any(letter in "123456789" for letter in words)
    return words if seen else QCoreApplication.translate("Compare", "alike")


class OutcomePair(QTreeWidget):
    """One line an outcome: the open make, the other, the difference."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setColumnCount(4)
        self.setAccessibleName(self.tr("Outcomes of both makes"))
        self.setRootIsDecorated(False)
        self.setFrameShape(QTreeWidget.Shape.NoFrame)
        self.setUniformRowHeights(True)
        self.setSelectionMode(QTreeWidget.SelectionMode.SingleSelection)
        self.setHeaderLabels([self.tr("Outcome"), self.tr("Open make"), self.tr("The other"), self.tr("Difference")])
        head = self.header()
        head.setStretchLastSection(False)
        head.setSectionResizeMode(0, QHeaderView.ResizeMode.Stretch)
        for column in (1, 2, 3):
            head.setSectionResizeMode(column, QHeaderView.ResizeMode.ResizeToContents)
            self.headerItem().setTextAlignment(column, RIGHT)

    def fill(self, comparison: Comparison, system: str, apart: tuple[str, str] | None = None) -> None:
        """Show both makes' outcomes; `apart` names the two where neither is the open make."""
        self.clear()
        names = apart or (self.tr("Open make"), self.tr("The other"))
        for column, name in enumerate(names, 1):
            self.headerItem().setText(column, name)
        self.headerItem().setToolTip(1, comparison.left.name)
        self.headerItem().setToolTip(2, comparison.right.name)
        for key in KEYS:
            if key not in comparison.left_values or key not in comparison.right_values:
                continue
            values = comparison.left_values[key], comparison.right_values[key]
            said = [figures.value_words(key, value, system) for value in values]
            item = QTreeWidgetItem([figures.label_of(key), *said, difference_words(key, values[1] - values[0])])
            item.setData(0, Qt.ItemDataRole.UserRole, key)
            item.setToolTip(0, figures.label_of(key))
            item.setData(0, Qt.ItemDataRole.AccessibleTextRole, figures.label_of(key))
            for column in (1, 2, 3):
                item.setTextAlignment(column, RIGHT)
            item.setFont(3, dress.font("body", bold=True))
            self.addTopLevelItem(item)
        self._name_rows()
        rows = self.topLevelItemCount()
        self.setFixedHeight(self.header().sizeHint().height() + rows * self.sizeHintForRow(0) + 4 if rows else 60)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Another room for the names."""
        super().resizeEvent(event)
        self._name_rows()

    def _name_rows(self) -> None:
        """Call each outcome by its name, or by its shorter one where the column is too narrow for that."""
        room = self.header().sectionSize(0) - 14
        for at in range(self.topLevelItemCount()):
            item = self.topLevelItem(at)
            key = str(item.data(0, Qt.ItemDataRole.UserRole))
            name = figures.label_of(key)
            item.setText(0, name if dress.width(name, "body") <= room else figures.shorter_of(key))
