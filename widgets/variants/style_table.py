"""The table of a house style: limits, usual ranges and gates, each end typed in its cell, each row with its source.

What can't be read stays as typed, with the reason beside it in its row, until it is mended or Esc puts it back.
"""

from __future__ import annotations

from typing import Any, Final

from PySide6.QtCore import QT_TRANSLATE_NOOP, QCoreApplication, QModelIndex, Qt, Signal, Slot
from PySide6.QtGui import QBrush, QColor, QKeyEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QHeaderView,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QTableWidgetItem,
    QWidget,
)

from designer.judge.style_rows import StyleRow, figure_of
from designer.language import word as told
from designer.units import UnitError
from styles.house import Figures
from widgets.figure_table import RIGHT, FigureTable
from widgets.theme import apply as dress

N = QT_TRANSLATE_NOOP
WHAT, LOW, HIGH, HERE, SOURCE = range(5)
INSET_PX: Final = 14
SECTIONS: Final = (
    ("limit", N("HouseStyle", "Limits of your own")),
    ("window", N("HouseStyle", "Usual ranges")),
    ("gate", N("HouseStyle", "Gates on the curves")),
    ("law", N("HouseStyle", "Limits of law and standards, as they are")),
)


class _Inset(QStyledItemDelegate):
    """A column of words behind one of figures, which end where it begins."""

    def initStyleOption(self, option: QStyleOptionViewItem, index: Any) -> None:
        """The words stand further in."""
        super().initStyleOption(option, index)
        option.rect.adjust(INSET_PX, 0, 0, 0)


class StyleTable(FigureTable):
    """Shows rows of a style; tells what was typed, and what is to go."""

    typed = Signal(object, object, object)
    """(row, low, high) as one wants it now"""
    dropped = Signal(object)
    """a row that is to go"""
    pointed = Signal(object)
    """the row the keyboard is on, None on a heading"""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(28, parent)
        heads = [self.tr("What"), self.tr("From"), self.tr("To"), self.tr("This recipe"), self.tr("Source")]
        self.begin(self.tr("Limits, usual ranges and gates of the house style"), heads)
        self.setItemDelegateForColumn(SOURCE, _Inset(self))
        self.entered.connect(self.type)
        self.by_line: dict[int, StyleRow] = {}
        self._wrong: dict[tuple[tuple[str, str, str], int], tuple[str, str]] = {}
        self._figures = Figures()
        self._rows: tuple[StyleRow, ...] = ()
        head = self.horizontalHeader()
        head.setStretchLastSection(True)
        for column in (LOW, HIGH, HERE):
            self.horizontalHeaderItem(column).setTextAlignment(RIGHT)
        for column, width in ((WHAT, 300), (LOW, 104), (HIGH, 104), (HERE, 104)):
            head.setSectionResizeMode(column, QHeaderView.ResizeMode.Interactive)
            self.setColumnWidth(column, width)
        self.currentCellChanged.connect(self._moved)

    # ---- showing

    def put(self, rows: tuple[StyleRow, ...], figures: Figures) -> None:
        """Show rows, with the figures of the recipe beside them; the keyboard stays on its row."""
        self._rows, self._figures = rows, figures
        here = self.current_row()
        column = max(self.currentColumn(), 0)
        self.clearSpans()
        self.clearContents()
        self.by_line = {}
        lines: list[tuple[str, StyleRow | None]] = []
        for part, title in SECTIONS:
            own = [row for row in rows if row.part == part]
            if own:
                lines.append((QCoreApplication.translate("HouseStyle", title), None))
                lines += [("", row) for row in own]
        self.setRowCount(len(lines))
        for line, (heading, row) in enumerate(lines):
            if row is None:
                self._heading(line, heading)
            else:
                self.by_line[line] = row
                self._row(line, row)
        line = self._line_of(here) if here is not None else None
        if line is None and lines:
            line = min(max(self.currentRow(), 1), len(lines) - 1)
        if line is not None:
            self.setCurrentCell(line, column)

    def _line_of(self, row: StyleRow) -> int | None:
        """Where a row stands now, or the one that took its place."""
        for same in (
            lambda one: one.path == row.path,
            lambda one: (one.part, one.key, one.at) == (row.part, row.key, row.at),
        ):
            line = next((line for line, one in self.by_line.items() if same(one)), None)
            if line is not None:
                return line
        return None

    def _heading(self, line: int, text: str) -> None:
        item = QTableWidgetItem(text)
        item.setFont(dress.font("body", bold=True))
        item.setFlags(Qt.ItemFlag.ItemIsEnabled)
        self.setItem(line, 0, item)
        self.setSpan(line, 0, 1, 5)

    def _row(self, line: int, row: StyleRow) -> None:
        value = figure_of(row, self._figures)
        ends = {LOW: row.shown(row.low, self.system), HIGH: row.shown(row.high, self.system)}
        source = row.source if row.source == row.have else f"{row.source} ({told(row.have, 'have')})"
        texts = [row.label, ends[LOW], ends[HIGH], row.read_off(value, self.system), source]
        c = dress.colours()
        complaint = ""
        for column, text in enumerate(texts):
            wrong = self._wrong.get((row.path, column))
            item = QTableWidgetItem(wrong[0] if wrong else text)
            complaint = wrong[1] if wrong else complaint
            item.setFlags(Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsSelectable)
            if column in (LOW, HIGH):
                item.setTextAlignment(RIGHT)
                if row.editable:
                    item.setFlags(item.flags() | Qt.ItemFlag.ItemIsEditable)
            elif column == HERE:
                item.setTextAlignment(RIGHT)
            if column in (HERE, SOURCE) or not row.editable:
                item.setForeground(QBrush(QColor(c.soft)))
            if wrong:
                item.setForeground(QBrush(QColor(c.miss)))
            item.setToolTip("\n".join(part for part in (text, row.note) if part))
            self.setItem(line, column, item)
        if complaint:
            beside = self.item(line, SOURCE)
            beside.setText(f"\u25b2 {complaint}")
            beside.setToolTip(complaint)
            beside.setForeground(QBrush(QColor(c.miss)))

    def current_row(self) -> StyleRow | None:
        """The row the keyboard is on."""
        return self.by_line.get(self.currentRow())

    def go_to(self, path: tuple[str, str, str]) -> None:
        """Put the keyboard on a row's first end."""
        line = next((line for line, row in self.by_line.items() if row.path == path), None)
        if line is not None:
            self.setCurrentCell(line, LOW)
            self.setFocus()

    def complaint_of(self, path: tuple[str, str, str]) -> str:
        """What is wrong in a row, "" for nothing."""
        return next((said for (of, _), (_, said) in self._wrong.items() if of == path), "")

    # ---- typing

    def type(self, index: QModelIndex, text: str) -> None:
        """Read what was typed into an end, together with what still stands wrong in the other."""
        row = self.by_line[index.row()]
        typed = {column: self._wrong.get((row.path, column), ("", ""))[0] for column in (LOW, HIGH)}
        typed[index.column()] = text
        ends = {LOW: row.low, HIGH: row.high}
        wrong = {}
        for column in (LOW, HIGH):
            if column == index.column() or (row.path, column) in self._wrong:
                try:
                    ends[column] = row.read(typed[column], self.system)
                except UnitError as error:
                    wrong[column] = str(error)
        low, high = ends[LOW], ends[HIGH]
        if not wrong and low is not None and high is not None and low > high:
            wrong[index.column()] = self.tr("It runs backwards: from {0} to {1}.").format(
                row.shown(low, self.system), row.shown(high, self.system)
            )
        self._forget(row.path)
        for column, said in wrong.items():
            self._wrong[row.path, column] = typed[column], said
        if wrong:
            self.put(self._rows, self._figures)
        else:
            self.typed.emit(row, low, high)

    def _forget(self, path: tuple[str, str, str]) -> None:
        for key in [key for key in self._wrong if key[0] == path]:
            del self._wrong[key]

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Enter edits, Delete takes a row out, Esc puts back what stands wrong."""
        if self.state() == QAbstractItemView.State.EditingState:
            return  # Enter that ended the typing
        row, key = self.current_row(), event.key()
        if row is not None and key in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            if self.currentColumn() not in (LOW, HIGH):
                self.setCurrentCell(self.currentRow(), LOW)
            if row.editable:
                self.edit(self.currentIndex())
        elif row is not None and key in (Qt.Key.Key_Delete, Qt.Key.Key_Backspace):
            self._forget(row.path)
            self.dropped.emit(row)
        elif row is not None and key == Qt.Key.Key_Escape and self.complaint_of(row.path):
            self._forget(row.path)
            self.put(self._rows, self._figures)
        else:
            super().keyPressEvent(event)

    @Slot()
    def _moved(self) -> None:
        self.pointed.emit(self.current_row())
