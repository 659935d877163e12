"""A table of figures that are typed in their cells: how it looks, and the line that is typed in."""

from __future__ import annotations

from typing import Any, Final

from PySide6.QtCore import QAbstractItemModel, QModelIndex, Qt, Signal
from PySide6.QtWidgets import (
    QAbstractItemView,
    QLineEdit,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QTableWidget,
    QWidget,
)

from designer.units import System

RIGHT: Final = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter


class FigureTable(QTableWidget):
    """Base of such a table: a subclass reads what was entered, and says what a cell is called."""

    entered = Signal(object, str)
    """(index, text): what was typed into a cell, as it was typed"""

    def __init__(self, row_px: int, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.system: System = "metric"
        self.setItemDelegate(_Line(self))
        self.setShowGrid(False)
        self.setFrameShape(QTableWidget.Shape.NoFrame)
        self.setAlternatingRowColors(True)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setEditTriggers(
            QAbstractItemView.EditTrigger.AnyKeyPressed
            | QAbstractItemView.EditTrigger.EditKeyPressed
            | QAbstractItemView.EditTrigger.DoubleClicked
            | QAbstractItemView.EditTrigger.SelectedClicked
        )
        self.setTabKeyNavigation(False)
        self.verticalHeader().hide()
        self.verticalHeader().setDefaultSectionSize(row_px)
        head = self.horizontalHeader()
        head.setHighlightSections(False)
        head.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)

    def begin(self, name: str, heads: list[str]) -> None:
        """Its name, and its columns."""
        self.setAccessibleName(name)
        self.setColumnCount(len(heads))
        self.setHorizontalHeaderLabels(heads)

    def name_of(self, index: QModelIndex) -> str:
        """What the line typed in a cell is called; its column, where a subclass does not say otherwise."""
        return str(index.model().headerData(index.column(), Qt.Orientation.Horizontal))


class _Line(QStyledItemDelegate):
    """A plain line to type a figure in; Up and Down in it leave for the neighbours as everywhere in the table."""

    def createEditor(self, parent: QWidget, option: QStyleOptionViewItem, index: Any) -> QWidget:
        """The line."""
        line = QLineEdit(parent)
        line.setMaxLength(40)
        line.setFrame(False)
        line.setAlignment(Qt.AlignmentFlag.AlignRight)
        line.setAccessibleName(self._table().name_of(index))
        return line

    def setEditorData(self, editor: QWidget, index: Any) -> None:
        """What stands in the cell."""
        assert isinstance(editor, QLineEdit)
        editor.setText(str(index.data() or ""))

    def setModelData(self, editor: QWidget, model: QAbstractItemModel, index: Any) -> None:
        """What was typed, as it was typed: the table reads it."""
        assert isinstance(editor, QLineEdit)
        if editor.text() != str(index.data() or ""):
            self._table().entered.emit(index, editor.text())

    def _table(self) -> FigureTable:
        table = self.parent()
        assert isinstance(table, FigureTable)
        return table
