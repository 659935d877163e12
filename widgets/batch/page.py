"""The made batches: noted from the open recipe, measured, tasted, and what a house style can be drawn from."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, datetime
from typing import Final

from PySide6.QtCore import QSignalBlocker, Qt, Signal, Slot
from PySide6.QtWidgets import (
    QCheckBox,
    QHBoxLayout,
    QHeaderView,
    QLabel,
    QLineEdit,
    QTreeWidget,
    QTreeWidgetItem,
    QVBoxLayout,
    QWidget,
)

from designer.batch.record import Batch, Reading, Tasting, asked, label
from widgets.batch.desk import LedgerDesk
from widgets.batch.readings import Readings
from widgets.batch.tasting_form import TastingForm, read_day
from widgets.batch.tasting_list import TastingList, verdict_words
from widgets.flow import flowing, labelled
from widgets.judging import known_style
from widgets.room import Parts, Turning
from widgets.session import Session
from widgets.theme import apply as dress
from widgets.together import Wrapped
from widgets.variants.page import BESIDE_PX, Page, button, listed, note, scrolled

MADE, RECIPE, MEASURED, TASTED = range(4)
TOLD_PX: Final = 560
"""The least room for day, maker and remark in one row."""
NUMBER: Final = Qt.ItemDataRole.UserRole


class BatchesPage(Page):
    """The list of batches on the left, the chosen one on the right; its steps of undo are its own."""

    style_asked = Signal()
    """a house style of the batches that were liked is asked for"""

    def __init__(self, session: Session, desk: LedgerDesk, parent: QWidget | None = None) -> None:
        super().__init__(session, "", "", parent)
        self.title.setText(self.tr("Made batches"))
        self.back.setText(self.tr("‹ Design"))
        self.desk = desk
        self.stack = desk.stack
        """the undo stack of the ledger"""
        self._correcting: int | None = None
        self.made_up = QCheckBox(self.tr("Invented batches of the example dairy"))
        self.made_up.toggled.connect(self._show_made_up)
        self.all = QCheckBox(self.tr("Of all recipes"))
        self.all.toggled.connect(self.refresh)
        self.list = self._list()
        self.side = scrolled(self._chosen_side())
        split = Parts([self.list, self.side], [390, 790], BESIDE_PX)
        self.split = split
        self.empty = self._nothing()
        self.body.addWidget(flowing(self.all, self.made_up, spacing=18))
        self.body.addWidget(split, 1)
        self.body.addWidget(self.empty, 1)
        self.hint = note()
        self.strike = button(self.tr("Take the batch back"), self._strike)
        self.house = button(self.tr("House style from what was liked…"), self.style_asked.emit)
        self.note = button(self.tr("Note this recipe as made"), self._note, strong=True)
        buttons = flowing(self.strike, self.house, self.note, spacing=10)
        self.foot.addWidget(Turning([(self.hint, 1), (buttons, 0)], BESIDE_PX), 1)
        desk.changed.connect(self._another)
        session.documentChanged.connect(self._another)

    # ---- building

    def _list(self) -> QTreeWidget:
        made = listed(
            self.tr("Made batches, the last first"),
            [self.tr("Made"), self.tr("Recipe"), self.tr("Measured"), self.tr("Last tasting")],
        )
        head = made.header()
        head.setStretchLastSection(False)
        for column in (MADE, MEASURED, TASTED):
            head.setSectionResizeMode(column, QHeaderView.ResizeMode.ResizeToContents)
        head.setSectionResizeMode(RECIPE, QHeaderView.ResizeMode.Stretch)
        made.currentItemChanged.connect(self._show_chosen)
        return made

    def _chosen_side(self) -> QWidget:
        inside = QWidget()
        column = QVBoxLayout(inside)
        column.setContentsMargins(16, 0, 4, 0)
        column.setSpacing(8)
        self.name = Wrapped()
        self.name.setFont(dress.font("head", bold=True))
        self.readings = Readings()
        self.readings.typed.connect(self._read)
        self.readings.wrong.connect(self._wrong)
        self.tastings = TastingList()
        self.tastings.correct.connect(self._correct)
        self.tastings.strike.connect(self._strike_tasting)
        self.form = TastingForm()
        self.form.hide()
        self.form.made.connect(self._tasted)
        self.form.left.connect(self._left)
        self.taste = button(self.tr("Taste it…"), self._taste)
        head = QLabel(self.tr("Tasted"))
        head.setFont(dress.font("head", bold=True))
        row = QHBoxLayout()
        row.addWidget(head)
        row.addStretch(1)
        row.addWidget(self.taste)
        column.addWidget(self.name)
        column.addWidget(self._told())
        column.addLayout(row)
        column.addWidget(self.tastings)
        column.addWidget(self.form)
        column.addSpacing(4)
        column.addWidget(self.readings)
        column.addStretch(1)
        return inside

    def _told(self) -> QWidget:
        self.day, self.maker, self.remark = QLineEdit(), QLineEdit(), QLineEdit()
        for line, most, width in ((self.day, 10, 100), (self.maker, 60, 170), (self.remark, 200, 0)):
            line.setMaxLength(most)
            line.editingFinished.connect(self._tell)
            if width:
                line.setFixedWidth(width)
        self.day.setAccessibleName(self.tr("Day of the make"))
        self.maker.setAccessibleName(self.tr("Who made it"))
        self.remark.setAccessibleName(self.tr("Remark on the batch"))
        self.remark.setPlaceholderText(self.tr("remark"))
        made = flowing(labelled(self.tr("Made"), self.day), labelled(self.tr("by"), self.maker), spacing=12)
        return Turning([(made, 0), (self.remark, 1)], TOLD_PX, spacing=8)

    def _nothing(self) -> QWidget:
        whole = QWidget()
        column = QVBoxLayout(whole)
        column.setContentsMargins(0, 6, 0, 0)
        column.setSpacing(12)
        self.none = note()
        self.look = button(self.tr("Look at the invented batches of the example dairy"), self.made_up.toggle)
        row = QHBoxLayout()
        row.addWidget(self.look)
        row.addStretch(1)
        column.addWidget(self.none)
        column.addLayout(row)
        column.addStretch(1)
        return whole

    # ---- showing

    def opened(self) -> None:
        """The page is shown: the list has the keyboard."""
        self.refresh()
        self.setFocusProxy(self.list)

    @Slot()
    def refresh(self) -> None:
        """Read the ledger again; the list stays on its batch."""
        here, every = self._number(), self.desk.batches()
        own = [one for one in every if one.as_made.recipe == self.session.recipe.name]
        found = list(every) if self.all.isChecked() else own
        self.batches = {one.number: one for one in found}
        with QSignalBlocker(self.list):
            self.list.clear()
            for one in found:
                self.list.addTopLevelItem(self._line(one))
        self.list.setColumnHidden(RECIPE, not self.all.isChecked())  # else every line is of the open one
        self.list.header().setStretchLastSection(not self.all.isChecked())
        self.split.setVisible(bool(found))
        self.empty.setVisible(not found)
        self.all.setEnabled(len(every) > len(own) or self.all.isChecked())
        with QSignalBlocker(self.made_up):
            self.made_up.setChecked(self.desk.made_up)
        self._say(bool(every))
        at = next((line for line, one in enumerate(found) if one.number == here), 0)
        if found:
            self.list.setCurrentItem(self.list.topLevelItem(at))
        self._show_chosen()
        count = len(self.desk.liked())
        self.house.setVisible(count > 0)
        self.house.setToolTip(self.tr("Batches of {0} that were liked: {1}").format(self.session.recipe.name, count))

    def _say(self, any_: bool) -> None:
        self.sentence.setText(
            self.tr("Everything here is made up, and nothing you change in it is kept.")
            if self.desk.made_up
            else self.tr("What was made, measured and tasted. A correction holds from then on; nothing is erased.")
        )
        name = self.session.recipe.name
        self.none.setText(
            self.tr("No batch of {0} is noted yet.").format(name)
            if any_
            else self.tr(
                "When you have made a cheese, note it here: the recipe and its forecast are kept as they were. "
                "Then write in what you measured, and taste it. From the batches you liked comes a house style."
            )
        )
        self.look.setVisible(not self.desk.made_up)

    def _line(self, one: Batch) -> QTreeWidgetItem:
        last = one.last
        tasted = self.tr("not yet") if last is None else verdict_words(last) or last.tasted.isoformat()
        count = self.tr("{0} of {1}").format(len(one.readings), len(asked(one.as_made.forecast)))
        item = QTreeWidgetItem([one.told.made.isoformat(), one.as_made.recipe, count, tasted])
        item.setData(0, NUMBER, one.number)
        item.setToolTip(RECIPE, one.told.remark)
        return item

    def _number(self) -> int | None:
        item = self.list.currentItem()
        return item.data(0, NUMBER) if item is not None else None

    def chosen(self) -> Batch | None:
        """The batch the list stands on."""
        number = self._number()
        return self.batches.get(number) if number is not None else None

    @Slot()
    def _show_chosen(self) -> None:
        one = self.chosen()
        self.strike.setVisible(one is not None)
        self._left()
        self._wrong("")
        if one is None:
            return
        self.name.setText(self.tr("{0}, made {1}").format(one.as_made.recipe, one.told.made.isoformat()))
        for line, text in (
            (self.day, one.told.made.isoformat()), (self.maker, one.told.maker), (self.remark, one.told.remark)
        ):  # fmt: skip
            line.setText(text)
            line.setCursorPosition(0)
        self.readings.system = self.system
        self.readings.put(one, {key: self.desk.past(one, key) for key in asked(one.as_made.forecast)})
        self.tastings.put(one)
        self.hint.setText(
            self.tr("The forecast of an invented batch is of today.")
            if self.desk.made_up
            else self.tr("Noted {0}; the forecast is of model {1}.").format(
                f"{one.noted.astimezone():%Y-%m-%d %H:%M}", one.as_made.model
            )
        )

    @Slot(str)
    def _wrong(self, sentence: str) -> None:
        self.hint.setText(sentence)
        self.hint.setProperty("role", "wrong" if sentence else "soft")
        self.hint.style().polish(self.hint)

    # ---- doing

    @Slot(bool)
    def _show_made_up(self, made_up: bool) -> None:
        self.desk.show_made_up(made_up)
        self.refresh()

    def _note(self) -> None:
        from designer.command import model_version

        self.desk.show_made_up(False)
        number = self.desk.note(date.today(), model_version())
        for at in range(self.list.topLevelItemCount()):
            if self.list.topLevelItem(at).data(0, NUMBER) == number:
                self.list.setCurrentItem(self.list.topLevelItem(at))
        self.day.setFocus()
        self.day.selectAll()

    def _strike(self) -> None:
        one = self.chosen()
        if one is not None:
            self.desk.tell(one, replace(one.told, struck=True))
            self.list.setFocus()

    @Slot()
    def _tell(self) -> None:
        one = self.chosen()
        if one is None:
            return
        try:
            made = read_day(self.day.text())
        except ValueError as error:
            self._wrong(str(error))
            return
        told = replace(one.told, made=made, maker=self.maker.text().strip(), remark=self.remark.text().strip())
        self.desk.tell(one, told)

    @Slot(object, object)
    def _read(self, key: tuple[str, str], reading: Reading | None) -> None:
        one = self.chosen()
        if one is None:
            return
        if reading is not None and key not in one.readings:  # a new one: as the last, and of now on the day itself
            today = one.told.made == date.today()
            now = datetime.now().replace(second=0, microsecond=0) if today else None
            reading = replace(reading, taken=now, instrument=self.desk.instrument(key))
        self.desk.read(one, key, reading, label(key))

    def _taste(self, number: int | None = None) -> None:
        one = self.chosen()
        if one is not None:
            self._correcting = number
            self.taste.hide()
            old = one.tastings[number] if number is not None else None
            self.form.ask(one, known_style(one.as_made.style), old)
            self.side.ensureWidgetVisible(self.form)

    @Slot(int)
    def _correct(self, number: int) -> None:
        self._taste(number)

    @Slot(int)
    def _strike_tasting(self, number: int) -> None:
        one = self.chosen()
        if one is not None:
            self.desk.taste(one, replace(one.tastings[number], struck=True), number)

    @Slot(object)
    def _tasted(self, tasting: Tasting) -> None:
        one = self.chosen()
        if one is not None:
            self.desk.taste(one, tasting, self._correcting)
        self._left()

    @Slot()
    def _left(self) -> None:
        self.form.hide()
        self.taste.show()
