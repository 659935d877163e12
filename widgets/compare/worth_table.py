"""The table of differences: stages by what they do, equal ones folded, each difference with its part in the outcomes.

The figures shown add up as shown: the rest line holds what rounding leaves, and what no difference can say.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from itertools import groupby
from typing import Any, Final

from PySide6.QtCore import QT_TRANSLATE_NOOP, QCoreApplication, Qt, Signal
from PySide6.QtGui import QBrush, QColor, QResizeEvent
from PySide6.QtWidgets import QHeaderView, QTreeWidget, QTreeWidgetItem, QWidget

from designer.judge.between import Step
from designer.judge.compare import Comparison, Difference, Line, decimals, part_words
from designer.judge.given import of_100kg
from designer.units import System
from widgets.outcomes import figures
from widgets.theme import apply as dress

N = QT_TRANSLATE_NOOP
COLUMNS: Final[tuple[tuple[str, Any], ...]] = (
    ("moisture_pct", N("Compare", "Moisture\npoints")),
    ("ph_24h", N("Compare", "pH\nat 24 h")),
    ("fdm_pct", N("Compare", "FDM\npoints")),
    ("salt_in_moisture_pct", N("Compare", "S/M\npoints")),
    ("calcium_mg_per_g_protein", N("Compare", "Calcium\nmg per g")),
    ("yield_kg_per_100kg", N("Compare", "Yield\nkg")),
    ("finish_min", N("Compare", "Finish\nh:min")),
)
SAID_IN_FULL: Final = 3
WORDS_PX: Final = 220
"""The least room for what differs; where there is less the table scrolls sideways."""
DIFFERENCE: Final = Qt.ItemDataRole.UserRole


def words_of(one: Difference) -> str:
    """A difference in words; a count where it is many that only go together."""
    if len(one.steps) <= SAID_IN_FULL:
        return one.sentence
    return QCoreApplication.translate("Compare", "{0} changes that make sense only together").format(len(one.steps))


def capital(text: str) -> str:
    """A sentence begins large."""
    return text[:1].upper() + text[1:]


class WorthTable(QTreeWidget):
    """Differences of a `Comparison`; `taken(Difference)` when one is to be taken across (Enter or double click)."""

    taken = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setColumnCount(1 + len(COLUMNS))
        self.setAccessibleName(self.tr("Differences and what each is worth"))
        self.setIndentation(14)
        self.setFrameShape(QTreeWidget.Shape.NoFrame)
        self.setUniformRowHeights(True)
        self.setTextElideMode(Qt.TextElideMode.ElideMiddle)
        self.setHeaderLabels(
            [self.tr("What differs"), *(QCoreApplication.translate("Compare", label) for _, label in COLUMNS)]
        )
        head = self.header()
        head.setStretchLastSection(False)
        head.setSectionResizeMode(0, QHeaderView.ResizeMode.Stretch)
        for column, (key, _) in enumerate(COLUMNS, 1):
            head.setSectionResizeMode(column, QHeaderView.ResizeMode.ResizeToContents)
            self.headerItem().setTextAlignment(column, Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
            self.headerItem().setToolTip(column, figures.label_of(key))
        self._said_once = ""  # what the sentence over the table says of every line
        self._apart: tuple[str, str] | None = None
        self.itemActivated.connect(self._activated)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """What differs takes the room the figures leave, and never less than it needs."""
        super().resizeEvent(event)
        head = self.header()
        left = self.viewport().width() - sum(head.sectionSize(at) for at in range(1, self.columnCount()))
        wide = left >= WORDS_PX
        head.setSectionResizeMode(0, QHeaderView.ResizeMode.Stretch if wide else QHeaderView.ResizeMode.Interactive)
        if not wide:
            head.resizeSection(0, WORDS_PX)

    def _activated(self, item: QTreeWidgetItem) -> None:
        found = item.data(0, DIFFERENCE)
        if found is not None:
            self.taken.emit(found)

    def chosen(self) -> Difference | None:
        """The difference that is selected, if one is."""
        item = self.currentItem()
        found = item.data(0, DIFFERENCE) if item is not None else None
        return found if isinstance(found, Difference) else None

    def items(self) -> Iterator[QTreeWidgetItem]:
        """The items that hold a difference, from top to bottom."""
        tops = (self.topLevelItem(index) for index in range(self.topLevelItemCount()))
        inner = (top.child(at) for top in tops if top is not None for at in range(top.childCount()))
        yield from (item for item in inner if item is not None and item.data(0, DIFFERENCE) is not None)

    def fill(self, comparison: Comparison, apart: tuple[str, str] | None = None) -> None:
        """Show a comparison; the selection stays at its place among the differences, and begins at the greatest.

        `apart` names the two where neither is the open make.
        """
        self._apart = apart
        current = self.currentItem()
        place = next((at for at, item in enumerate(self.items()) if item is current), None)
        self.clear()
        self._said_once = of_100kg() if comparison.per_100kg else ""
        whole = {
            key: comparison.right_values[key] - comparison.left_values[key]
            for key, _ in COLUMNS
            if key in comparison.left_values and key in comparison.right_values
        }
        self._figures(self._top(self.tr("In all"), bold=True), whole, bold=True)
        largest = {
            key: max((abs(one.worth.get(key, 0.0)) for one in comparison.differences), default=0.0)
            for key, _ in COLUMNS
        }
        single = [one for one in comparison.differences if len(one.steps) == 1]
        grouped = [one for one in comparison.differences if len(one.steps) > 1]
        if grouped:
            top = self._top(self.tr("What goes only together"), bold=True)
            for one in grouped:
                self._difference(top, one, words_of(one), largest)
        before = [one for one in single if one.row < 0]
        loose = [step for one in grouped for step in one.steps]
        if before or any(step.row < 0 for step in loose):
            top = self._top(self.tr("Before the first stage"), bold=True)
            for one in before:
                self._difference(top, one, one.sentence, largest)
            self._loose(top, [step for step in loose if step.row < 0])
        for alike, run in groupby(enumerate(comparison.lines), key=lambda numbered: numbered[1].folded):
            lines = list(run)
            if alike:
                self._alike([line for _, line in lines], comparison.between.system)
                continue
            for row, line in lines:
                top = self._line(line, [one for one in single if one.row == row], largest)
                self._loose(top, [step for step in loose if step.row == row])
        if comparison.differences:
            self._rest(comparison, whole)
        found = list(self.items())
        if found and place is not None:
            self.setCurrentItem(found[min(place, len(found) - 1)])
        elif found:
            greatest = comparison.ranked()[0]
            self.setCurrentItem(next(item for item in found if item.data(0, DIFFERENCE) is greatest))

    def _top(self, text: str, *, bold: bool = False) -> QTreeWidgetItem:
        item = QTreeWidgetItem([text])
        if bold:
            item.setFont(0, dress.font("body", bold=True))
        self.addTopLevelItem(item)
        return item

    def _figures(self, item: QTreeWidgetItem, worth: Mapping[str, float], *, bold: bool = False) -> None:
        for column, (key, _) in enumerate(COLUMNS, 1):
            item.setText(column, part_words(key, worth.get(key, 0.0)))
            item.setTextAlignment(column, Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
            if bold:
                item.setFont(column, dress.font("body", bold=True))

    def _difference(self, top: QTreeWidgetItem, one: Difference, text: str, largest: Mapping[str, float]) -> None:
        item = QTreeWidgetItem(top, [capital(text.replace(self._said_once, "") if self._said_once else text)])
        item.setData(0, DIFFERENCE, one)
        item.setToolTip(0, f"{capital(words_of(one))}\n{one.consequences}")
        self._figures(item, one.worth)
        for column, (key, _) in enumerate(COLUMNS, 1):
            if item.text(column) and abs(one.worth.get(key, 0.0)) == largest[key]:
                item.setFont(column, dress.font("body", bold=True))
        top.setExpanded(True)

    def _loose(self, top: QTreeWidgetItem, steps: list[Step]) -> None:
        """Steps that are weighed with others: said where they stand, without figures of their own."""
        for step in steps:
            item = QTreeWidgetItem(top, [capital(step.sentence)])
            item.setForeground(0, QBrush(QColor(dress.colours().soft)))
            item.setToolTip(0, self.tr("{0}\nWeighed together with others, above.").format(step.sentence))
        top.setExpanded(True)

    def _line(self, line: Line, own: list[Difference], largest: Mapping[str, float]) -> QTreeWidgetItem:
        pair = line.pair
        titles = [capital(one.title) for one in (pair.left, pair.right) if one is not None]
        if self._apart is not None and None in (pair.left, pair.right):
            text = self.tr("{0} (only in {1})").format(titles[0], self._apart[pair.left is None])
        elif pair.right is None:
            text = self.tr("{0} (only in the open make)").format(titles[0])
        elif pair.left is None:
            text = self.tr("{0} (only in the other make)").format(titles[0])
        elif titles[0] != titles[1]:
            text = self.tr("{0} against {1}").format(*titles)
        else:
            text = titles[0]
        top = self._top(text, bold=True)
        for one in own:
            stage = pair.left or pair.right
            inside = len(one.steps) == 1 and stage is not None and one.steps[0].of == stage.title
            words = one.steps[0].change if inside else one.sentence
            self._difference(top, one, words, largest)
        return top

    def _alike(self, lines: list[Line], system: System) -> None:
        text = self.tr("1 stage alike") if len(lines) == 1 else self.tr("{0} stages alike").format(len(lines))
        top = self._top(text)
        top.setForeground(0, QBrush(QColor(dress.colours().soft)))
        for line in lines:
            stage = line.pair.left or line.pair.right
            if stage is not None:
                item = QTreeWidgetItem(top, [f"{capital(stage.title)}, {stage.end_line(system)}"])
                item.setForeground(0, QBrush(QColor(dress.colours().soft)))
        names = [capital(stage.title) for line in lines if (stage := line.pair.left or line.pair.right) is not None]
        top.setToolTip(0, ", ".join(names))

    def _rest(self, comparison: Comparison, whole: Mapping[str, float]) -> None:
        """What the figures above leave of the whole, as shown."""
        item = self._top(self.tr("Rest and rounding"))
        left = {
            key: round(value, decimals(key))
            - sum(round(one.worth.get(key, 0.0), decimals(key)) for one in comparison.differences)
            for key, value in whole.items()
        }
        self._figures(item, left)
        item.setToolTip(0, self.tr("What rounding leaves, and what no single difference can say."))
        for column in range(1 + len(COLUMNS)):
            item.setForeground(column, QBrush(QColor(dress.colours().soft)))
