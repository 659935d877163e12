"""Every chart as a table: the figures of the curves in view, to be read, walked by keyboard and copied.

It stands beside the work in a window of its own, follows edits, and works out only the cells it shows; while it is
closed it costs nothing.
"""

from __future__ import annotations

from PySide6.QtCore import QAbstractTableModel, QEvent, QModelIndex, QObject, QPersistentModelIndex, Qt, QTimer, Slot
from PySide6.QtGui import QGuiApplication, QHideEvent, QKeySequence, QShortcut, QShowEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QDialog,
    QHBoxLayout,
    QHeaderView,
    QLabel,
    QPushButton,
    QTableView,
    QVBoxLayout,
    QWidget,
)

from widgets.chart_figures import Grid, of_make, of_makes
from widgets.compare.curves import Curves
from widgets.preferences import Preferences
from widgets.room import Stack
from widgets.session import Session
from widgets.theme import apply as dress

Index = QModelIndex | QPersistentModelIndex
NOWHERE = QModelIndex()


class GridModel(QAbstractTableModel):
    """A grid of texts for a view."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.grid = Grid("", (), 0, lambda row, column: "")

    def show_grid(self, grid: Grid) -> None:
        """Show another grid; one of the same shape keeps selection and scroll."""
        if (grid.rows, grid.heads) != (self.grid.rows, self.grid.heads):
            self.beginResetModel()
            self.grid = grid
            self.endResetModel()
            return
        self.grid = grid
        if grid.rows and grid.heads:
            self.dataChanged.emit(self.index(0, 0), self.index(grid.rows - 1, len(grid.heads) - 1))

    def rowCount(self, parent: Index = NOWHERE) -> int:
        """Moments."""
        return 0 if parent.isValid() else self.grid.rows

    def columnCount(self, parent: Index = NOWHERE) -> int:
        """Curves and bands."""
        return 0 if parent.isValid() else len(self.grid.heads)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> object:
        """The text of a cell."""
        if role == Qt.ItemDataRole.DisplayRole:
            return self.grid.cell(index.row(), index.column())
        if role == Qt.ItemDataRole.TextAlignmentRole and self.grid.heads[index.column()] and index.column():
            return Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
        return None

    def headerData(self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole) -> object:
        """Heads of the columns; rows are counted."""
        across = orientation == Qt.Orientation.Horizontal
        if role != Qt.ItemDataRole.DisplayRole or section >= (len(self.grid.heads) if across else self.grid.rows):
            return None
        return self.grid.heads[section] if across else section + 1


class ChartTable(QDialog):
    """The table in its window. `places` holds the place whose chart is told; the make curve where it has no other."""

    def __init__(self, session: Session, places: Stack, preferences: Preferences, parent: QWidget) -> None:
        super().__init__(parent)
        self._session, self._places, self._preferences = session, places, preferences
        self.setWindowTitle(self.tr("Figures of the curves"))
        self.resize(980, 520)
        self.heading = QLabel(self)
        self.heading.setFont(dress.font("head", bold=True))
        self.model = GridModel(self)
        self.view = QTableView(self)
        self.view.setModel(self.model)
        self.view.setAccessibleName(self.tr("Figures of the curves; Ctrl+C copies what is selected"))
        self.view.setSelectionMode(QAbstractItemView.SelectionMode.ExtendedSelection)
        self.view.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.view.setTabKeyNavigation(False)
        self.view.setWordWrap(True)
        self.view.setCornerButtonEnabled(False)
        self.view.verticalHeader().setDefaultSectionSize(26)
        across = self.view.horizontalHeader()
        across.setDefaultSectionSize(108)
        across.setDefaultAlignment(Qt.AlignmentFlag.AlignCenter | Qt.TextFlag.TextWordWrap)
        across.setSectionResizeMode(QHeaderView.ResizeMode.Interactive)
        across.setFixedHeight(64)
        self.copy_button = QPushButton(self.tr("&Copy"), self)
        self.copy_button.setToolTip(self.tr("What is selected, or the whole table, for a spreadsheet"))
        self.copy_button.clicked.connect(self.copy)
        close = QPushButton(self.tr("Close"), self)
        close.clicked.connect(self.close)
        for button in (self.copy_button, close):
            button.setAutoDefault(False)
        QShortcut(QKeySequence.StandardKey.Copy, self, self.copy)
        buttons = QHBoxLayout()
        buttons.addStretch(1)
        buttons.addWidget(self.copy_button)
        buttons.addWidget(close)
        column = QVBoxLayout(self)
        column.addWidget(self.heading)
        column.addWidget(self.view, 1)
        column.addLayout(buttons)
        self._soon = QTimer(self)
        self._soon.setSingleShot(True)
        self._soon.setInterval(0)
        self._soon.timeout.connect(self.refresh)
        for signal in (session.forecastChanged, session.bandsChanged, session.laneChanged, places.currentChanged):
            signal.connect(self._later)

    @Slot()
    def _later(self) -> None:
        """Several changes of one frame are one; a closed table waits until it is opened."""
        if self.isVisible():
            self._soon.start()

    def tell(self) -> None:
        """Open, or come to the front."""
        self.refresh()
        self.show()
        self.activateWindow()
        self.view.setFocus(Qt.FocusReason.ShortcutFocusReason)

    def showEvent(self, event: QShowEvent) -> None:
        """Begin at the first cell, so that arrows walk at once."""
        super().showEvent(event)
        if not self.view.currentIndex().isValid() and self.model.rowCount():
            self.view.setCurrentIndex(self.model.index(0, 0))

    def hideEvent(self, event: QHideEvent) -> None:
        """Nothing is worked out any more."""
        super().hideEvent(event)
        self._soon.stop()

    def changeEvent(self, event: QEvent) -> None:
        """Units may have changed while another window was worked in."""
        super().changeEvent(event)
        if event.type() == QEvent.Type.ActivationChange:
            self._later()

    def _chart(self) -> Curves | None:
        """The chart of the open place that draws something; each chart there is listened to from now on."""
        place = self._places.currentWidget()
        found = place.findChildren(Curves) if place is not None else []
        for one in found:
            one.changed.connect(self._later, Qt.ConnectionType.UniqueConnection)
        return next((one for one in found if one.makes and one.isVisibleTo(place)), None)

    @Slot()
    def refresh(self) -> None:
        """Tell the figures of what is drawn now."""
        self._soon.stop()
        chart, system = self._chart(), self._preferences.system
        if chart is None:
            grid = of_make(self._session.seen, system)
        else:
            grid = of_makes(chart.makes, chart.names, chart.end_min, system)
        self.heading.setText(grid.title)
        self.model.show_grid(grid)

    @Slot()
    def copy(self) -> None:
        """Put what is selected on the clipboard under its heads; where one cell or none is selected, all of it."""
        chosen = self.view.selectionModel().selectedIndexes()
        rows = sorted({one.row() for one in chosen})
        columns = sorted({one.column() for one in chosen})
        if len(chosen) < 2:
            rows, columns = list(range(self.model.rowCount())), list(range(self.model.columnCount()))
        QGuiApplication.clipboard().setText(self.model.grid.tsv(rows, columns))
