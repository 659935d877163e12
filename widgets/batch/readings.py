"""The readings of a batch: what was forecast then, what was measured and what lies between, when and with what.

Measured figure, moment and instrument are typed in their cells.
"""

from __future__ import annotations

from dataclasses import replace
from typing import Final

from PySide6.QtCore import QModelIndex, Qt, Signal
from PySide6.QtGui import QBrush, QColor, QKeyEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QHeaderView,
    QTableWidgetItem,
    QWidget,
)

from designer.batch.record import Batch, BatchError, Key, Reading, asked, label, possible, read_when, when_text
from designer.judge.style_rows import StyleRow, kind_of
from designer.language import number
from designer.units import UnitError
from widgets.figure_table import RIGHT, FigureTable
from widgets.theme import apply as dress
from widgets.wording import MINUS

WHAT, THEN, MEASURED, BETWEEN, WHEN, WITH = range(6)
ROW_PX: Final = 26


def row_of(key: Key) -> StyleRow:
    """How a reading is told and typed."""
    quantity, at = key
    return StyleRow("gate" if at else "window", quantity, at, label(key), kind_of(quantity), None, None, "", "")


class Readings(FigureTable):
    """One line a figure that can be read of this make."""

    typed = Signal(object, object)
    """(key, `Reading` or None): what was read, or that it is taken back"""
    wrong = Signal(str)
    """what could not be read, a sentence; "" once it is mended"""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(ROW_PX, parent)
        heads = [
            self.tr("What"), self.tr("Forecast then"), self.tr("Measured"), self.tr("Difference"), self.tr("Taken"),
            self.tr("With"),
        ]  # fmt: skip
        self.begin(self.tr("What was forecast and what was measured"), heads)
        self.entered.connect(self.type)
        self.keys: tuple[Key, ...] = ()
        self._batch: Batch | None = None
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        head = self.horizontalHeader()
        head.setSectionResizeMode(WHAT, QHeaderView.ResizeMode.Stretch)
        for column in (THEN, MEASURED, BETWEEN, WHEN, WITH):
            head.setSectionResizeMode(column, QHeaderView.ResizeMode.ResizeToContents)
        for column in (THEN, MEASURED, BETWEEN):
            self.horizontalHeaderItem(column).setTextAlignment(RIGHT)

    def put(self, batch: Batch, before: dict[Key, tuple[float | None, ...]]) -> None:
        """Show the readings of a batch; `before` is what corrected ones were."""
        here = self.currentRow(), max(self.currentColumn(), MEASURED)
        self._batch = batch
        self.keys = asked(batch.as_made.forecast)
        self.setRowCount(len(self.keys))
        for line, key in enumerate(self.keys):
            self._line(line, batch, key, before.get(key, ()))
        self.setFixedHeight(self.horizontalHeader().sizeHint().height() + ROW_PX * len(self.keys) + 2)
        if here[0] >= 0:
            self.setCurrentCell(min(here[0], len(self.keys) - 1), here[1])

    def _line(self, line: int, batch: Batch, key: Key, before: tuple[float | None, ...]) -> None:
        row, read, then = row_of(key), batch.readings.get(key), batch.as_made.forecast.of(key)
        texts = [row.label, "" if then is None else self._told(row, then[0]), "", "", "", ""]
        if read is not None:
            texts[MEASURED:] = [self._told(row, read.value), "", when_text(read.taken), read.instrument]
            if then is not None:
                texts[BETWEEN] = self._difference(row, read.value - then[0])
        for column, text in enumerate(texts):
            item = QTableWidgetItem(text)
            item.setFlags(Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsSelectable)
            if column in (THEN, MEASURED, BETWEEN):
                item.setTextAlignment(RIGHT)
            if column == MEASURED or (column in (WHEN, WITH) and read is not None):
                item.setFlags(item.flags() | Qt.ItemFlag.ItemIsEditable)
            if column == MEASURED and before:
                said = ", ".join(row.shown(one, self.system) or self.tr("taken back") for one in before)
                item.setToolTip(self.tr("Corrected; it was {0}").format(said))
            if column == WHAT:
                item.setToolTip(row.label)
            if column == THEN:
                item.setForeground(QBrush(QColor(dress.colours().soft)))
            self.setItem(line, column, item)

    def _told(self, row: StyleRow, value: float) -> str:
        """A figure no sharper than it is read."""
        return number(value, ".2f") if row.kind == "ratio" else row.read_off(value, self.system)

    def _difference(self, row: StyleRow, difference: float) -> str:
        decimals = 2 if row.kind in ("ph", "ratio") or row.key.startswith("salt") else 1
        if round(abs(difference), decimals) == 0.0:
            return "="
        return f"{'+' if difference > 0 else MINUS}{number(abs(difference), f'.{decimals}f')}"

    def name_of(self, index: QModelIndex) -> str:
        """A reading is called as its row."""
        return str(index.siblingAtColumn(WHAT).data())

    def type(self, index: QModelIndex, text: str) -> None:
        """Read what was typed into a cell."""
        assert self._batch is not None
        key = self.keys[index.row()]
        before = self._batch.readings.get(key)
        try:
            if index.column() == MEASURED or before is None:
                reading = self._measured(key, text, before)
            elif index.column() == WHEN:
                reading = replace(before, taken=read_when(text, self._batch.told.made))
            else:
                reading = replace(before, instrument=" ".join(text.split()))
        except (UnitError, BatchError) as error:
            self.wrong.emit(str(error))
            return
        self.wrong.emit("")
        self.typed.emit(key, reading)

    def _measured(self, key: Key, text: str, before: Reading | None) -> Reading | None:
        value = row_of(key).read(text, self.system)
        if value is None:
            return None
        possible(key, value)
        return Reading(value) if before is None else replace(before, value=value)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Enter types, Delete takes a reading back."""
        if self.state() == QAbstractItemView.State.EditingState:
            return
        line, key = self.currentRow(), event.key()
        if line >= 0 and key in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            if not self.currentItem().flags() & Qt.ItemFlag.ItemIsEditable:
                self.setCurrentCell(line, MEASURED)
            self.edit(self.currentIndex())
        elif line >= 0 and key in (Qt.Key.Key_Delete, Qt.Key.Key_Backspace):
            self.typed.emit(self.keys[line], None)
        else:
            super().keyPressEvent(event)
