"""Outcomes of two or three forecasts in columns: as it is, and as it would be."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QHeaderView, QTreeWidget, QTreeWidgetItem, QWidget

from designer.forecast import Forecast
from widgets.compare.outcome_pair import difference_words
from widgets.figure_table import RIGHT
from widgets.outcomes import figures
from widgets.theme import apply as dress

KEYS: Final = (
    "moisture_pct", "mnfs_pct", "fdm_pct", "salt_in_moisture_pct", "ph_24h", "calcium_mg_per_g_protein",
    "yield_kg_per_100kg", "cheese_kg", "floc_min", "finish_min",
)  # fmt: skip


class OutcomeTable(QTreeWidget):
    """One line an outcome; with two forecasts also what lies between them."""

    def __init__(self, name: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAccessibleName(name)
        self.setRootIsDecorated(False)
        self.setFrameShape(QTreeWidget.Shape.NoFrame)
        self.setUniformRowHeights(True)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)

    def put(self, heads: Sequence[str], made: Sequence[Forecast], system: str) -> None:
        """Show these forecasts under these heads."""
        self.clear()
        both = len(made) == 2
        labels = [self.tr("Outcome"), *heads, *([self.tr("Difference")] if both else [])]
        self.setColumnCount(len(labels))
        self.setHeaderLabels(labels)
        head = self.header()
        head.setStretchLastSection(False)
        for column in range(len(labels)):
            mode = QHeaderView.ResizeMode.ResizeToContents if column else QHeaderView.ResizeMode.Stretch
            head.setSectionResizeMode(column, mode)
            if column:
                self.headerItem().setTextAlignment(column, RIGHT)
        for key in KEYS:
            if all(key in one.outcomes for one in made):
                self._line(key, [one.outcomes[key].value for one in made], system, both)
        rows = self.topLevelItemCount()
        self.setFixedHeight(head.sizeHint().height() + rows * max(self.sizeHintForRow(0), 20) + 4 if rows else 40)

    def _line(self, key: str, values: list[float], system: str, both: bool) -> None:
        said = [figures.value_words(key, value, system) for value in values]
        between = [difference_words(key, values[1] - values[0])] if both else []
        item = QTreeWidgetItem([figures.label_of(key), *said, *between])
        for column in range(1, item.columnCount()):
            item.setTextAlignment(column, RIGHT)
        item.setFont(item.columnCount() - 1, dress.font("body", bold=True))
        self.addTopLevelItem(item)
