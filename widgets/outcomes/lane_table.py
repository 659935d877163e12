"""The lanes of a make beside each other: the figures that tell the cheeses apart; a row chooses its lane."""

from __future__ import annotations

from typing import Final

from PySide6.QtCore import QCoreApplication, QSignalBlocker, Qt, Slot
from PySide6.QtWidgets import QAbstractItemView, QHeaderView, QTableWidget, QTableWidgetItem, QWidget

from designer.forecast import Forecast
from designer.language import number
from designer.quantities import quantity
from designer.recipe.document import Branch, Recipe
from widgets import wording
from widgets.make_curve.lanes import name_of, share_text
from widgets.outcomes.figures import label_of, value_words
from widgets.session import Session
from widgets.theme import apply as dress

COMPARED: Final = (
    "moisture_pct", "ph_24h", "fdm_pct", "salt_in_moisture_pct", "yield_kg_per_100kg", "cheese_kg",
)  # fmt: skip
ROW_PX: Final = 24


def heads(system: str) -> list[str]:
    """Short heads of the columns."""
    tr = QCoreApplication.translate
    return [
        tr("Lanes", "moist."), tr("Lanes", "pH"), tr("Lanes", "FDM"), tr("Lanes", "S/M"), tr("Lanes", "yield"),
        tr("Lanes", "lb") if wording.measured(system, "mass") != "metric" else tr("Lanes", "kg"),
    ]  # fmt: skip


def figure(key: str, value: float, system: str) -> str:
    """A value without its unit, as short as the narrow columns ask."""
    return number(value, ".1f") if key == "yield_kg_per_100kg" else value_words(key, value, system).split()[0]


class LaneTable(QTableWidget):
    """Shown where the make has branches."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(0, len(COMPARED), parent)
        self.session = session
        self.system = "metric"
        self.setAccessibleName(self.tr("Outcomes of the main make and its branches"))
        self.setFont(dress.font("note"))
        self.setObjectName("lanes")
        self.setFrameShape(QTableWidget.Shape.NoFrame)
        self.setShowGrid(False)
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setTabKeyNavigation(False)
        self.setHorizontalHeaderLabels(heads(self.system))
        for column, key in enumerate(COMPARED):
            what = quantity(key)
            head = self.horizontalHeaderItem(column)
            assert head is not None
            head.setToolTip(f"{label_of(key)} [{what.unit}]" if what.unit else label_of(key))
        across, down = self.horizontalHeader(), self.verticalHeader()
        across.setSectionResizeMode(QHeaderView.ResizeMode.Stretch)
        across.setMinimumSectionSize(24)
        across.setHighlightSections(False)
        down.setDefaultSectionSize(ROW_PX)
        down.setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
        down.setHighlightSections(False)
        for header in (across, down):
            header.setFont(dress.font("note"))
        self.itemSelectionChanged.connect(self._choose)
        session.forecastChanged.connect(self.refresh)
        session.bandsChanged.connect(self.refresh)
        session.laneChanged.connect(self.refresh)
        self.refresh()

    def set_system(self, system: str) -> None:
        """Metric or US units."""
        self.system = system
        for column, text in enumerate(heads(system)):
            head = self.horizontalHeaderItem(column)
            assert head is not None
            head.setText(text)
        self.refresh()

    @Slot()
    def refresh(self) -> None:
        """Show the figures of every lane."""
        recipe, lanes = self.session.forecast.recipe, self.session.forecast.lanes
        self.setVisible(len(lanes) > 1)
        if len(lanes) < 2:
            return
        with QSignalBlocker(self):
            if self.rowCount() != len(lanes):
                self.setRowCount(len(lanes))
                self.setFixedHeight(self.horizontalHeader().sizeHint().height() + ROW_PX * len(lanes) + 4)
            for row, (written, lane) in enumerate(zip(recipe.lanes(), lanes, strict=True)):
                self._fill(row, recipe, written, lane)
            row = next((at for at, lane in enumerate(lanes) if lane.branch_id == self.session.lane), 0)
            if not self.selectedItems() or self.currentRow() != row:
                self.setCurrentCell(row, 0)

    def _fill(self, row: int, recipe: Recipe, written: Recipe | Branch, lane: Forecast) -> None:
        head = self.verticalHeaderItem(row)
        name = dress.fitted(name_of(written), "note", 72)
        if head is None:
            head = QTableWidgetItem()
            self.setVerticalHeaderItem(row, head)
        if head.text() != name:
            head.setText(name)
        tip = name_of(written)
        if isinstance(written, Branch):
            tip += "\n" + share_text(recipe, written)
        head.setToolTip(tip)
        for column, key in enumerate(COMPARED):
            outcome = lane.outcomes.get(key)
            text = "\u2013" if outcome is None else figure(key, outcome.value, self.system)
            item = self.item(row, column)
            if item is None:
                item = QTableWidgetItem()
                item.setTextAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
                self.setItem(row, column, item)
            if item.text() != text:
                item.setText(text)
                item.setToolTip(f"{name_of(written)}, {label_of(key)}: {text}")

    @Slot()
    def _choose(self) -> None:
        row, lanes = self.currentRow(), self.session.recipe.lanes()
        if 0 <= row < len(lanes):
            lane = lanes[row]
            self.session.choose_lane(lane.id if isinstance(lane, Branch) else None)
