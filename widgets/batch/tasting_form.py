"""A tasting put down: the day, who tasted, words that fit, a mark, and whether to make it so again."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date

from PySide6.QtCore import QT_TRANSLATE_NOOP, QCoreApplication, Qt, Signal, Slot
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import (
    QFrame,
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QToolButton,
    QWidget,
)

from designer.batch.record import BEST_MARK, PARTS, Batch, Tasting, neutral_words, split_words
from designer.language import number
from styles.reader import Style
from widgets.flow import Flow
from widgets.variants.page import button, note

N = QT_TRANSLATE_NOOP
NAMES = {
    "appearance": N("TastingForm", "Look"),
    "body": N("TastingForm", "Body"),
    "flavour": N("TastingForm", "Flavour"),
}


def read_day(text: str) -> date:
    """A day as "2024-05-07". ValueError, a sentence."""
    try:
        return date.fromisoformat(text.strip())
    except ValueError:
        said = QCoreApplication.translate("TastingForm", "“{0}” is no day; write it as 2024-05-07.")
        raise ValueError(said.format(text.strip())) from None


def read_mark(text: str) -> float | None:
    """A mark of 0 to 10, None for none. ValueError, a sentence."""
    plain = text.strip().replace(",", ".")
    try:
        mark = float(plain) if plain else None
    except ValueError:
        mark = -1.0
    if mark is not None and not 0.0 <= mark <= BEST_MARK:
        raise ValueError(QCoreApplication.translate("TastingForm", "A mark is a number from 0 to 10."))
    return mark


def _chip(text: str) -> QToolButton:
    made = QToolButton()
    made.setText(text)
    made.setProperty("role", "chip")
    made.setCheckable(True)
    made.setMinimumHeight(26)
    made.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
    return made


class Words(QWidget):
    """Words of one part of a tasting: the style's own to press, and a line for others."""

    def __init__(self, name: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._flow = Flow(self)
        self._flow.setContentsMargins(0, 0, 0, 0)
        self.chips: list[QToolButton] = []
        self.others = QLineEdit(self)
        self.others.setAccessibleName(self.tr("{0}, in other words").format(name))
        self.others.setPlaceholderText(self.tr("other words, by commas"))
        self.others.setMaxLength(200)
        self.others.setMinimumWidth(230)

    def put(self, offered: tuple[str, ...], chosen: tuple[str, ...]) -> None:
        """Offer these words, with those chosen pressed."""
        self._flow.removeWidget(self.others)
        for chip in self.chips:
            self._flow.removeWidget(chip)
            chip.deleteLater()
        self.chips = []
        for word in offered:
            chip = _chip(word)
            chip.setChecked(word in chosen)
            self.chips.append(chip)
            self._flow.addWidget(chip)
        self.others.setText(", ".join(word for word in chosen if word not in offered))
        self._flow.addWidget(self.others)

    def chosen(self) -> tuple[str, ...]:
        """The words that fit."""
        pressed = [chip.text() for chip in self.chips if chip.isChecked()]
        return tuple(dict.fromkeys([*pressed, *split_words(self.others.text())]))


class TastingForm(QFrame):
    """Asks for one tasting of a batch."""

    made = Signal(object)
    """the tasting"""
    left = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("card")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self._batch: Batch | None = None
        self.day = self._line(self.tr("Day of the tasting"), 10, 110)
        self.day.textChanged.connect(self._age)
        self.age = note()
        self.age.setWordWrap(False)
        self.taster = self._line(self.tr("Who tasted"), 60, 200)
        self.words = {part: Words(self._named(part), self) for part in PARTS}
        self.mark = self._line(self.tr("Mark, 0 to 10"), 5, 110)
        self.mark.setPlaceholderText(self.tr("0 to 10"))
        self.again = _chip(self.tr("Make it so again"))
        self.never = _chip(self.tr("Not again"))
        self.again.clicked.connect(lambda: self.never.setChecked(False))
        self.never.clicked.connect(lambda: self.again.setChecked(False))
        self.remark = self._line(self.tr("Remark"), 200, 240)
        self.wrong = note(role="wrong")
        self.wrong.hide()
        self.keep = button(self.tr("Keep the tasting"), self._give, strong=True)
        self.leave = button(self.tr("Not now"), self.left.emit)
        self._lay_out()

    def _named(self, part: str) -> str:
        return QCoreApplication.translate("TastingForm", NAMES[part])

    def _line(self, name: str, most: int, width: int) -> QLineEdit:
        line = QLineEdit(self)
        line.setAccessibleName(name)
        line.setMaxLength(most)
        line.setMinimumWidth(min(width, 110))
        if width <= 110:
            line.setMaximumWidth(width)
        line.returnPressed.connect(self._give)
        return line

    def _lay_out(self) -> None:
        grid = QGridLayout(self)
        grid.setContentsMargins(14, 12, 14, 12)
        grid.setHorizontalSpacing(12)
        grid.setVerticalSpacing(8)
        grid.setColumnStretch(1, 1)
        when, marks, foot = QHBoxLayout(), QHBoxLayout(), QHBoxLayout()
        for row_ in (when, marks, foot):
            row_.setSpacing(8)
        for widget, stretch in ((self.day, 0), (self.age, 0), (QLabel(self.tr("by"), self), 0), (self.taster, 2)):
            when.addWidget(widget, stretch)
        for widget in (self.mark, self.again, self.never):
            marks.addWidget(widget)
        marks.addStretch(1)
        rows: list[tuple[str, QWidget | QHBoxLayout]] = [
            (self.tr("Tasted"), when),
            *((self._named(part), self.words[part]) for part in PARTS),
            (self.tr("Mark"), marks),
            (self.tr("Remark"), self.remark),
        ]
        for row, (text, field) in enumerate(rows):
            name = QLabel(text, self)
            name.setProperty("role", "soft")
            grid.addWidget(name, row, 0, Qt.AlignmentFlag.AlignTop)
            if isinstance(field, QWidget):
                grid.addWidget(field, row, 1)
            else:
                grid.addLayout(field, row, 1)
        grid.addWidget(self.wrong, len(rows), 1)
        foot.addWidget(self.keep)
        foot.addWidget(self.leave)
        foot.addStretch(1)
        grid.addLayout(foot, len(rows) + 1, 1)

    def ask(self, batch: Batch, style: Style | None, old: Tasting | None = None) -> None:
        """Ask for a tasting of a batch, or for the correction of an old one."""
        self._batch = batch
        one = old or Tasting(date.today(), batch.last.taster if batch.last is not None else "")
        self.day.setText(one.tasted.isoformat())
        self.taster.setText(one.taster)
        offered = neutral_words(style)
        chosen: Mapping[str, tuple[str, ...]] = {part: getattr(one, part) for part in PARTS}
        for part in PARTS:
            self.words[part].put(offered[part], chosen[part])
        self.mark.setText("" if one.mark is None else number(one.mark))
        self.again.setChecked(one.keep is True)
        self.never.setChecked(one.keep is False)
        self.remark.setText(one.remark)
        self._complain("")
        self.show()
        self.day.setFocus()
        self.day.selectAll()

    @Slot()
    def _age(self) -> None:
        """How old the cheese was that day."""
        try:
            days = (read_day(self.day.text()) - self._batch.told.made).days if self._batch is not None else 0
        except ValueError:
            self.age.setText("")
            return
        self.age.setText(self.tr("{0} days old").format(days) if days >= 0 else self.tr("before it was made"))

    def _complain(self, sentence: str) -> None:
        self.wrong.setText(sentence)
        self.wrong.setVisible(bool(sentence))

    @Slot()
    def _give(self) -> None:
        try:
            day = read_day(self.day.text())
            if self._batch is not None and day < self._batch.told.made:
                raise ValueError(self.tr("It can't be tasted before it was made, {0}.").format(self._batch.told.made))
            mark = read_mark(self.mark.text())
        except ValueError as error:
            self._complain(str(error))
            return
        keep = True if self.again.isChecked() else False if self.never.isChecked() else None
        words = {part: self.words[part].chosen() for part in PARTS}
        tasting = Tasting(
            day, self.taster.text().strip(), words["appearance"], words["body"], words["flavour"], mark, keep,
            self.remark.text().strip(),
        )  # fmt: skip
        self.hide()
        self.made.emit(tasting)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Esc leaves it."""
        if event.key() == Qt.Key.Key_Escape:
            self.hide()
            self.left.emit()
        else:
            super().keyPressEvent(event)
