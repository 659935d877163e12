"""The whole check in one table: every limit, quality window, make window and gate, with its source."""

from __future__ import annotations

from typing import Any, Final

from PySide6.QtCore import (
    QT_TRANSLATE_NOOP,
    QCoreApplication,
    QEvent,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    QPointF,
    QRectF,
    QSize,
    Qt,
    Signal,
    Slot,
)
from PySide6.QtGui import QBrush, QColor, QIcon, QMouseEvent, QPainter, QPixmap
from PySide6.QtWidgets import (
    QLabel,
    QPushButton,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QTreeWidget,
    QTreeWidgetItem,
    QVBoxLayout,
    QWidget,
)

from designer.judge.row_units import told
from designer.judge.verdict import AGE, CLASS, CURVE, LIMIT, MAKE, MILK, QUALITY, Row
from designer.language import headed, number, word
from designer.units import System
from widgets import wording
from widgets.flow import flowing
from widgets.judging import Judging, why_not
from widgets.outcomes.figures import figure_text
from widgets.outcomes.marks import COLOUR, paint_state, state_words
from widgets.outcomes.rule_sets import RuleSets
from widgets.room import LEAST_PX, Turning
from widgets.session import Session
from widgets.theme import apply as dress
from widgets.together import Wrapped

N = QT_TRANSLATE_NOOP
WHAT, STANDS, SOURCE = 0, 3, 4
ROW_PX: Final = 24
SOURCE_PX: Final = 170
"""The room a source has at least, where the sentences leave it that."""
ICON_PX, PADDING_PX = 22, 14
HEAD_PX: Final = 700
"""The least room for the buttons beside the name of the style."""
SECTIONS: Final = (
    ((LIMIT, MILK, AGE), N("Check", "Limits of law and standard")),
    ((CLASS,), N("Check", "Class of cheese")),
    ((QUALITY,), N("Check", "Quality windows")),
    ((MAKE,), N("Check", "Usual settings of the make")),
    ((CURVE,), N("Check", "On the curves")),
)


def state_icon(state: str) -> QIcon:
    """The shape of a state as an icon."""
    made = QPixmap(32, 32)
    made.setDevicePixelRatio(2.0)
    made.fill(Qt.GlobalColor.transparent)
    painter = QPainter(made)
    try:
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        paint_state(painter, QPointF(8, 8), state)
    finally:
        painter.end()
    return QIcon(made)


def range_text(row: Row) -> str:
    """The window of a row in figures."""
    unit = f" {row.unit}" if row.unit else ""
    if row.low is not None and row.high is not None:
        return f"{number(row.low)}{unit}" if row.low == row.high else f"{number(row.low)}–{number(row.high)}{unit}"
    if row.low is not None:
        return f"≥ {number(row.low)}{unit}"
    return f"≤ {number(row.high)}{unit}" if row.high is not None else ""


class _Lines(QStyledItemDelegate):
    """A cell as high as its words are in the width of their column; a source stays on one line, the tooltip has it."""

    def __init__(self, tree: QTreeWidget) -> None:
        super().__init__(tree)
        self.pointed = QPersistentModelIndex()
        """the source under the pointer"""

    def initStyleOption(self, option: QStyleOptionViewItem, index: Any) -> None:
        """The source under the pointer is underlined: a click opens it."""
        super().initStyleOption(option, index)
        if self.pointed == index:
            option.font.setUnderline(True)  # type: ignore[attr-defined]

    def sizeHint(self, option: QStyleOptionViewItem, index: Any) -> QSize:
        """Its height with the words on as many lines as they take."""
        asked = super().sizeHint(option, index)
        tree = self.parent()
        if not isinstance(tree, QTreeWidget) or index.column() not in (WHAT, STANDS) or not index.parent().isValid():
            return QSize(asked.width(), ROW_PX)
        room = tree.columnWidth(index.column()) - (ICON_PX if index.column() == STANDS else 0) - PADDING_PX
        text = str(index.data() or "")
        flags = Qt.TextFlag.TextWordWrap
        tall = dress.metrics("body").boundingRect(QRectF(0, 0, room, 2000), flags, text).height()
        lines = round(tall / dress.metrics("body").height())
        return QSize(asked.width(), ROW_PX if lines < 2 else round(tall) + PADDING_PX)


class CheckPlace(QWidget):
    """What the forecast means for the style, all of it."""

    asked = Signal(str)
    """a page that opens from here, by its key"""
    source_asked = Signal(object)
    """the Row whose source is asked for"""

    def __init__(self, session: Session, judging: Judging, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.session = session
        self.system: System = "metric"
        self._rows: list[Row] = []
        """the rows in the order of their lines"""
        self.rule_sets = RuleSets(session, judging, self)
        self._title = QLabel(self)
        self._title.setFont(dress.font("title", bold=True))
        self._sentence = Wrapped(self)
        self._conditions = Wrapped(self)
        self._conditions.setProperty("role", "soft")
        self.tree = QTreeWidget(self)
        self.tree.setColumnCount(5)
        self.tree.setHeaderLabels(
            [self.tr("What"), self.tr("Forecast"), self.tr("Window"), self.tr("How it stands"), self.tr("Source")]
        )
        self.tree.setAccessibleName(self.tr("Check against the style"))
        self.tree.setAlternatingRowColors(True)
        self.tree.setRootIsDecorated(False)
        self.tree.setIndentation(10)
        self.tree.setFrameShape(QTreeWidget.Shape.NoFrame)
        self.tree.setWordWrap(True)
        self._lines = _Lines(self.tree)
        self.tree.setItemDelegate(self._lines)
        self.tree.setMouseTracking(True)
        self.tree.itemActivated.connect(self._ask_source)
        self.tree.itemClicked.connect(self._click)
        head = self.tree.header()
        head.setStretchLastSection(True)
        head.setMinimumSectionSize(48)
        self.tree.viewport().installEventFilter(self)
        column_ = QVBoxLayout(self)
        column_.setContentsMargins(24, 18, 24, 12)
        column_.setSpacing(8)
        buttons = []
        for key, text in (("nearest", self.tr("What would make it a …?")), ("house", self.tr("House style…"))):
            one = QPushButton(text, self)
            one.setMinimumHeight(28)
            one.clicked.connect(lambda _=False, key=key: self.asked.emit(key))
            buttons.append(one)
        head_row = Turning([(self._title, 1), (flowing(*buttons, spacing=10), 0)], HEAD_PX)
        self.tree.setMinimumHeight(LEAST_PX)
        column_.addWidget(head_row)
        for widget in (self._sentence, self.rule_sets, self._conditions):
            column_.addWidget(widget)
        column_.addWidget(self.tree, 1)
        session.forecastChanged.connect(self._maybe)
        session.bandsChanged.connect(self._maybe)
        session.laneChanged.connect(self._maybe)
        self.refresh()

    def set_system(self, system: str) -> None:
        """Metric or US units."""
        self.system = wording.system_of(system)
        self.refresh()

    @Slot()
    def _maybe(self) -> None:
        if self.isVisible() and not self.session.previewing:
            self.refresh()

    @Slot()
    def refresh(self) -> None:
        """Fill the table anew."""
        self.tree.clear()
        self._rows.clear()
        self.rule_sets.refresh()
        verdict = self.session.verdict
        if verdict is None:
            self._title.setText(self.tr("Check"))
            self._sentence.setText(
                why_not(self.session.recipe.style)
                or self.tr("Choose a style at the Milk place, and the forecast is checked against it.")
            )
            self._conditions.setText("")
            return
        self._title.setText(verdict.name)
        self._sentence.setText(verdict.sentence)
        self._conditions.setText("\n".join(verdict.conditions))
        for sections, title in SECTIONS:
            rows = verdict.section(*sections)
            if rows:
                self._section(QCoreApplication.translate("Check", title), rows)
        self.tree.expandAll()
        self._share()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """The table has another width, or the pointer is on a source."""
        if watched is self.tree.viewport():
            if event.type() == QEvent.Type.Resize:
                self._share()
            elif event.type() == QEvent.Type.MouseMove and isinstance(event, QMouseEvent):
                self._point(self.tree.indexAt(event.position().toPoint()))
            elif event.type() == QEvent.Type.Leave:
                self._point(QModelIndex())
        return False

    def _point(self, index: QModelIndex) -> None:
        """Show that what is pointed at opens, if it is a source."""
        if index.column() != SOURCE or not index.parent().isValid():
            index = QModelIndex()
        if self._lines.pointed != index:
            self._lines.pointed = QPersistentModelIndex(index)
            shape = Qt.CursorShape.PointingHandCursor if index.isValid() else Qt.CursorShape.ArrowCursor
            self.tree.viewport().setCursor(shape)
            self.tree.viewport().update()

    @Slot(QTreeWidgetItem, int)
    def _click(self, item: QTreeWidgetItem, column: int) -> None:
        if column == SOURCE:
            self._ask_source(item)

    @Slot(QTreeWidgetItem)
    def _ask_source(self, item: QTreeWidgetItem) -> None:
        row = self._row(item)
        if row is not None:
            self.source_asked.emit(row)

    def _row(self, item: QTreeWidgetItem | None) -> Row | None:
        """The row a line of the table shows; None for a heading."""
        at = item.data(0, Qt.ItemDataRole.UserRole) if item is not None else None
        return None if at is None else self._rows[at]

    def _share(self) -> None:
        """Give the columns their room: figures all they ask for, words what is left, on several lines."""
        asked = [max(self.tree.sizeHintForColumn(at), self.tree.header().sectionSizeHint(at)) for at in range(4)]
        left = self.tree.viewport().width() - asked[1] - asked[2]
        asked[WHAT] = min(asked[WHAT], round(0.3 * left))
        asked[STANDS] = min(asked[STANDS], max(left - asked[WHAT] - SOURCE_PX, round(0.4 * left)))
        for at, wide in enumerate(asked):
            self.tree.setColumnWidth(at, wide)
        self.tree.scheduleDelayedItemsLayout()

    def looked_up(self) -> str:
        """What F1 looks up here: the quantity of the chosen row."""
        row = self._row(self.tree.currentItem())
        return row.quantity if row is not None else ""

    def _section(self, title: str, rows: tuple[Row, ...]) -> None:
        top = QTreeWidgetItem([title])
        top.setFont(0, dress.font("body", bold=True))
        top.setFlags(Qt.ItemFlag.ItemIsEnabled)
        self.tree.addTopLevelItem(top)
        top.setFirstColumnSpanned(True)
        for row in rows:
            here, decimals = told(row, self.system)
            label = row.label if row.label.startswith("pH") else row.label[:1].upper() + row.label[1:]
            how = headed(state_words(row.state), here.sentence)
            source = f"{row.source} ({word(row.have, 'have')})"
            source = f"{row.rule}; {source}" if row.rule else source
            item = QTreeWidgetItem([label, figure_text(here, decimals), range_text(here), how, source])
            item.setIcon(STANDS, state_icon(row.state))
            item.setForeground(3, QBrush(QColor(getattr(dress.colours(), COLOUR[row.state]))))
            item.setForeground(SOURCE, QBrush(QColor(dress.colours().accent)))
            for column in range(5):
                item.setToolTip(column, "\n".join(text for text in (item.text(column), row.note) if text))
            item.setData(0, Qt.ItemDataRole.UserRole, len(self._rows))
            self._rows.append(row)
            top.addChild(item)
