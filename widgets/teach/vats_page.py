"""Small vats side by side on the screen: each changes one thing; outcomes in columns, curves over each other."""

from __future__ import annotations

from typing import Final

from PySide6.QtCore import Qt, Slot
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import (
    QFrame,
    QHeaderView,
    QLineEdit,
    QSplitter,
    QTreeWidget,
    QTreeWidgetItem,
    QVBoxLayout,
    QWidget,
)

from designer.forecast import Forecast
from designer.judge.compare import KEYS, part_words
from designer.judge.movable import movables, moved
from designer.judge.vats import MOST, Vat, changed, low_usual_high, small
from designer.language import spoken
from designer.plan.make_plan import Print
from designer.plan.sheet import Paper, Sheet
from designer.plan.vats_sheet import vats_sheet
from designer.recipe.document import Recipe
from designer.recipe.error import RecipeError
from designer.units import UnitError, gallon_of, parse, show
from styles.reader import StyleError, style
from widgets import wording
from widgets.compare.curves import Curves
from widgets.figure_table import RIGHT
from widgets.flow import flowing, labelled
from widgets.outcomes import figures
from widgets.paper.preview import PlanPreview
from widgets.room import Stack, Turning
from widgets.session import Session
from widgets.teach.setting_choice import SettingChoice
from widgets.theme import apply as dress
from widgets.variants.page import Page, button

LETTERS: Final = "ABCDE"
FIRST_L: Final = 10.0
TOP_PX: Final = 900
"""The least room for all that is asked in one line."""
Change = tuple[tuple[str, str], float]


class VatsPage(Page):
    """The vats as columns of a table; the first is the recipe as it is, on a small scale."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(session, "", "", parent)
        self.title.setText(self.tr("Small vats side by side"))
        self.back.setText(self.tr("‹ Design"))
        self.sentence.setText(self.tr("The same make in each vat, and in each one thing changed: what comes of it?"))
        self.litres = FIRST_L
        self.changes: list[Change] = []
        self.vats: list[Vat] = []
        self.made: list[Forecast] = []
        self._of: Recipe | None = None
        self.choice = SettingChoice()
        self.choice.wrong.connect(self.said)
        self.add = button(self.tr("&Add a vat"), self._add)
        self.three = button(self.tr("&Low, usual, high"), self._three)
        self.milk = QLineEdit()
        self.milk.setFixedWidth(90)
        self.milk.setAccessibleName(self.tr("Milk in each vat"))
        self.milk.editingFinished.connect(self._milk_typed)
        self.table = self._table()
        self.curves = Curves()
        self.curves.setMinimumHeight(150)
        self.stack = Stack()
        self.stack.addWidget(self._side_by_side())
        self.stack.addWidget(self._printed())
        self.body.addWidget(self.stack, 1)
        self.away = button(self.tr("&Take the vat away"), self._away)
        self.keep = button(self.tr("Take its change into the &recipe"), self._keep)
        self.print = button(self.tr("&Print…"), self.show_print, strong=True)
        self.foot.addStretch(1)
        self.foot.addWidget(flowing(self.away, self.keep, self.print, spacing=10))
        session.documentChanged.connect(self._another)

    # ---- building

    def _side_by_side(self) -> QWidget:
        rest = flowing(self.add, self.three, labelled(self.tr("Milk in each"), self.milk), spacing=8)
        top = Turning([(self.choice, 1), (rest, 0)], TOP_PX, spacing=8)
        split = QSplitter(Qt.Orientation.Vertical)
        split.setChildrenCollapsible(False)
        split.setHandleWidth(1)
        split.addWidget(self.table)
        split.addWidget(self.curves)
        split.setSizes([205, 385])
        whole = QWidget()
        column = QVBoxLayout(whole)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(10)
        column.addWidget(top)
        column.addWidget(split, 1)
        return whole

    def _table(self) -> QTreeWidget:
        made = QTreeWidget()
        made.setAccessibleName(self.tr("Outcomes of the vats"))
        made.setRootIsDecorated(False)
        made.setUniformRowHeights(True)
        made.setAlternatingRowColors(True)
        made.setFrameShape(QFrame.Shape.NoFrame)
        made.setSelectionBehavior(QTreeWidget.SelectionBehavior.SelectItems)
        made.currentItemChanged.connect(self._offer)
        made.itemSelectionChanged.connect(self._offer)
        gone = QShortcut(QKeySequence(Qt.Key.Key_Delete), made)
        gone.setContext(Qt.ShortcutContext.WidgetShortcut)
        gone.activated.connect(self._away)
        return made

    def _printed(self) -> QWidget:
        self.preview = PlanPreview(self._sheet, name=self.tr("The vats, as printed"), file="vats.pdf")
        self.preview.row.insertWidget(0, button(self.tr("Back to the vats"), self._back))
        return self.preview

    # ---- the vats

    def opened(self) -> None:
        """The page is shown: the list of settings has the keyboard."""
        self.refresh()
        self.choice.list.setFocus()

    def refresh(self) -> None:
        """Work the vats out anew; a change that the recipe can't take any more is dropped."""
        recipe, path = self.session.recipe, None
        if self._of is None:
            path = next(((one.id, "cut_mm") for one in recipe.stages if hasattr(one, "cut_mm")), None)
        if self._of is not recipe or self.choice.system != self.system:
            self.choice.put(recipe, self.system, path)
        self._of = recipe
        self._work()

    def _work(self) -> None:
        try:
            base = small(self.session.recipe, self.litres)
            vats, kept = [base], []
            for path, value in self.changes:
                try:
                    vats.append(changed(base, path, value))
                    kept.append((path, value))
                except RecipeError as error:
                    self.said.emit(str(error))
            made = [self.session.march(one.recipe) for one in vats]
        except RecipeError as error:
            self.said.emit(str(error))
            return
        self.vats, self.changes, self.made = vats, kept, made
        self._show()

    def _show(self) -> None:
        names = [f"{letter}  {one.name(self.system)}" for letter, one in zip(LETTERS, self.vats, strict=False)]
        self.milk.setText(show(self.litres, "volume", system=self.system))
        self.table.clear()
        self.table.setColumnCount(1 + len(names))
        self.table.setHeaderLabels([self.tr("Outcome"), *names])
        head = self.table.header()
        head.setStretchLastSection(False)
        for column in range(1 + len(names)):
            head.setSectionResizeMode(column, QHeaderView.ResizeMode.Stretch)
            if column:
                self.table.headerItem().setTextAlignment(column, RIGHT)
                self.table.headerItem().setToolTip(column, names[column - 1])
        for key in KEYS:
            if all(key in one.outcomes for one in self.made):
                self._row(key, [one.outcomes[key].value for one in self.made])
        self._fit()
        self.curves.show_makes(self.made, names)
        full = len(self.vats) >= MOST
        self.add.setEnabled(not full)
        self.three.setEnabled(not full)
        self._offer()

    def _fit(self) -> None:
        """Room for every row, and in every column for its words: with many vats the table scrolls sideways."""
        head, rows = self.table.header(), self.table.topLevelItemCount()
        columns = range(self.table.columnCount())
        head.setMinimumSectionSize(
            max(max(self.table.sizeHintForColumn(at), head.sectionSizeHint(at)) for at in columns) + 8
        )
        bar = self.table.horizontalScrollBar().sizeHint().height()
        self.table.setFixedHeight(head.sizeHint().height() + rows * self.table.sizeHintForRow(0) + bar)

    def _row(self, key: str, values: list[float]) -> None:
        item = QTreeWidgetItem([figures.label_of(key)])
        for column, value in enumerate(values, start=1):
            by = part_words(key, value - values[0])
            said = figures.value_words(key, value, self.system)
            item.setText(column, f"{said}   {by}" if by else said)
            item.setTextAlignment(column, RIGHT)
            if by and abs(value - values[0]) == max(abs(one - values[0]) for one in values):
                item.setFont(column, dress.font("body", bold=True))
        self.table.addTopLevelItem(item)

    def _put(self, more: list[Change]) -> None:
        known = set(self.changes)
        fresh = [one for one in more if one not in known]
        self.changes = (self.changes + fresh)[: MOST - 1]
        self._work()

    def _add(self) -> None:
        """A vat with the setting at the value that stands above."""
        one = self.choice.setting
        if one is None:
            return
        if abs(self.choice.value - one.value) < 1e-9:
            self.said.emit(self.tr("Give the setting another value first: vat A has it as it is."))
            return
        self._put([(one.path, self.choice.value)])

    def _three(self) -> None:
        """Vats at the low, the usual and the high of the style, or some steps to either side."""
        one = self.choice.setting
        if one is None:
            return
        try:
            known = style(self.session.recipe.style) if self.session.recipe.style else None
        except StyleError:
            known = None
        self._put([(one.path, value) for value in low_usual_high(self.vats[0], one.path, known)])

    @property
    def chosen(self) -> int | None:
        """Which change is chosen: the vat of the column the keyboard is in; None in that of vat A."""
        column = self.table.currentColumn()
        return column - 2 if 2 <= column <= len(self.changes) + 1 else None

    @Slot()
    def _offer(self) -> None:
        on = self.chosen is not None
        self.away.setEnabled(on)
        self.keep.setEnabled(on)

    def _away(self) -> None:
        """The chosen vat goes."""
        at = self.chosen
        if at is not None:
            del self.changes[at]
            self._work()

    def _keep(self) -> None:
        """What the chosen vat changes goes into the recipe, as one step of undo."""
        at = self.chosen
        if at is None:
            return
        path, value = self.changes[at]
        setting = next((one for one in movables(self.session.recipe) if one.path == path), None)
        if setting is None:
            return
        try:
            taken = moved(self.session.recipe, setting, value)
            self.session.march(taken)
        except RecipeError as error:
            self.said.emit(str(error))
            return
        name = self.vats[at + 1].name(self.system)
        del self.changes[at]
        self.session.commit(taken, self.tr("Taken from a vat: {0}").format(name))

    @Slot()
    def _milk_typed(self) -> None:
        if self.milk.text() == show(self.litres, "volume", system=self.system):
            return
        try:
            gallon = gallon_of(wording.system_of(self.system))
            litres = parse(self.milk.text(), "volume", gallon=gallon, comma=spoken().comma).value
            small(self.session.recipe, litres)
        except (UnitError, RecipeError) as error:
            self.said.emit(str(error))
            return
        self.litres = litres
        self._work()

    # ---- on paper

    def show_print(self) -> None:
        """Show the vats as they will be printed."""
        self.stack.setCurrentIndex(1)
        self.print.setEnabled(False)
        self.preview.refresh()

    def _sheet(self, paper: Paper) -> Sheet:
        return vats_sheet(self.vats, self.made, Print(paper=paper, system=self.system))

    def _back(self) -> None:
        self.stack.setCurrentIndex(0)
        self.print.setEnabled(True)
        self.table.setFocus()
