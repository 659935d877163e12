"""The recipe for another amount of milk: every line with the rule it goes by, before anything is changed."""

from __future__ import annotations

from typing import Final

from PySide6.QtCore import QT_TRANSLATE_NOOP, QCoreApplication, Qt, Slot
from PySide6.QtGui import QBrush, QColor, QResizeEvent
from PySide6.QtWidgets import (
    QButtonGroup,
    QGridLayout,
    QHBoxLayout,
    QHeaderView,
    QLabel,
    QLineEdit,
    QRadioButton,
    QTreeWidget,
    QTreeWidgetItem,
    QVBoxLayout,
    QWidget,
)

from designer.language import headed
from designer.recipe.document import Form, Recipe, Vat
from designer.recipe.error import RecipeError
from designer.recipe.milk import blend
from designer.recipe.scale import scale
from designer.recipe.scaling import Forms, Line, Rule, Scaled
from designer.units import UnitError, gallon_of, parse, show
from widgets import wording
from widgets.flow import flowing, labelled
from widgets.form.asked import Ways, ways_of
from widgets.room import Parts
from widgets.session import Session
from widgets.theme import apply as dress
from widgets.variants.outcome_table import OutcomeTable
from widgets.variants.page import BESIDE_PX, Page, button, note, scrolled

N = QT_TRANSLATE_NOOP
RULES: Final[tuple[tuple[Rule, str, str], ...]] = (
    ("by milk", N("Scale", "By the milk"), N("Scale", "as many times as there is more milk")),
    ("by area", N("Scale", "By the area"), N("Scale", "so that the pressure stays")),
    ("by thickness squared", N("Scale", "By the thickness squared"), N("Scale", "the way salt goes in")),
    ("by the vat's power", N("Scale", "By the vat's power"), N("Scale", "what it can warm")),
    ("to be checked", N("Scale", "To be checked"), N("Scale", "no rule tells: left as it is")),
    ("unchanged", N("Scale", "Unchanged"), N("Scale", "what does not go by the amount")),
)
MANY, LARGE, OWN = range(3)
LINE: Final = Qt.ItemDataRole.UserRole


class ScalePage(Page):
    """Asks for an amount, the forms and the vat; previews; keeps it as one step of undo."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(session, "", "", parent)
        self.title.setText(self.tr("Another amount of milk"))
        self.back.setText(self.tr("‹ Milk"))
        self.scaled: Scaled | None = None
        self._of: Recipe | None = None
        self.body.addLayout(self._questions())
        self.table = self._table()
        self.outcomes = OutcomeTable(self.tr("Outcomes before and after"))
        right = QWidget()
        column = QVBoxLayout(right)
        column.setContentsMargins(16, 0, 0, 0)
        column.addWidget(self.outcomes)
        column.addStretch(1)
        split = Parts([self.table, scrolled(right)], [790, 430], BESIDE_PX)
        self.body.addWidget(split, 1)
        self.hint = note()
        self.apply = button(self.tr("Scale the recipe"), self._apply, strong=True)
        self.foot.addWidget(self.hint, 1)
        self.foot.addWidget(self.apply)
        session.documentChanged.connect(self._another)

    # ---- building

    def _questions(self) -> QGridLayout:
        self.amount = QLineEdit()
        self.amount.setMaxLength(40)
        self.amount.setFixedWidth(130)
        self.amount.setAccessibleName(self.tr("Milk in all"))
        self.amount.editingFinished.connect(self._typed)
        self.wrong = note(role="wrong")
        self.wrong.hide()
        self.asked = Ways(self)
        self.asked.chosen.connect(self._choose_reading)
        self.forms = QButtonGroup(self)
        forms = []
        for number, text in (
            (MANY, self.tr("more of the same form")),
            (LARGE, self.tr("as many, but larger")),
            (OWN, self.tr("forms of")),
        ):
            one = QRadioButton(text)
            self.forms.addButton(one, number)
            if number != OWN:
                forms.append(one)
        self.forms.button(MANY).setChecked(True)
        self.forms.idClicked.connect(lambda _: self._typed())
        self.across, self.count = QLineEdit(), QLineEdit()
        for line, name, example, width in (
            (self.across, self.tr("Diameter of the form"), self.tr("300 mm"), 84),
            (self.count, self.tr("How many forms"), self.tr("2"), 48),
        ):
            line.setAccessibleName(name)
            line.setPlaceholderText(example)
            line.setMaxLength(20)
            line.setFixedWidth(width)
            line.editingFinished.connect(self._own_form)
        own = QHBoxLayout()
        own.setSpacing(10)
        for widget in (self.forms.button(OWN), self.across, QLabel(self.tr("across, in number")), self.count):
            own.addWidget(widget)
        own.addStretch(1)
        self.power = QLineEdit()
        self.power.setMaxLength(20)
        self.power.setFixedWidth(100)
        self.power.setAccessibleName(self.tr("Heating power of the vat"))
        self.power.setPlaceholderText(self.tr("12 kW"))
        self.power.editingFinished.connect(self._typed)
        power = labelled(self.tr("Vat heats with"), self.power)
        first = flowing(self.amount, self.asked, power, self.wrong, spacing=14)
        grid = QGridLayout()
        grid.setHorizontalSpacing(12)
        grid.setVerticalSpacing(8)
        grid.setColumnStretch(1, 1)
        grid.addWidget(_soft(self.tr("Milk in all"), self.amount), 0, 0)
        grid.addWidget(first, 0, 1)
        grid.addWidget(_soft(self.tr("Cheeses"), None), 1, 0)
        grid.addWidget(flowing(*forms, spacing=12), 1, 1)
        grid.addLayout(own, 2, 1)
        return grid

    def _table(self) -> QTreeWidget:
        made = QTreeWidget()
        made.setAccessibleName(self.tr("What becomes of every line, and by which rule"))
        made.setColumnCount(4)
        made.setHeaderLabels([self.tr("What"), self.tr("Now"), self.tr("Then"), self.tr("Why")])
        made.setAlternatingRowColors(True)
        made.setUniformRowHeights(True)
        made.setIndentation(12)
        made.setFrameShape(QTreeWidget.Shape.NoFrame)
        head = made.header()
        head.setStretchLastSection(True)
        for column, width in ((0, 256), (1, 104), (2, 104)):
            head.setSectionResizeMode(column, QHeaderView.ResizeMode.Interactive)
            made.setColumnWidth(column, width)
        made.currentItemChanged.connect(self._explain)
        return made

    # ---- asking

    def opened(self) -> None:
        """The page is shown: the amount has the keyboard."""
        self.refresh()
        self.setFocusProxy(self.amount)

    def refresh(self) -> None:
        """Begin with the amount there is; what was asked is worked out anew where the recipe is another."""
        recipe = self.session.recipe
        if self._of is not recipe:
            self._of = recipe
            milk = blend(recipe)
            self.amount.setText(show(milk.mass_kg / milk.density_kg_l, "volume", system=self.system))
            known = recipe.vat.power_kw if recipe.vat is not None else None
            self.power.setText("" if known is None else show(known, "power"))
        self._typed()

    @Slot()
    def _own_form(self) -> None:
        if self.across.text().strip():
            self.forms.button(OWN).setChecked(True)
        self._typed()

    @Slot(str)
    def _choose_reading(self, text: str) -> None:
        self.amount.setText(text)
        self._typed()

    @Slot()
    def _typed(self) -> None:
        """Work out what was asked; what can't be is said beside the field."""
        self.asked.put(())
        try:
            self.scaled = self._scaled()
        except (UnitError, RecipeError) as error:
            self.scaled = None
            self.wrong.setText(error.sentence if isinstance(error, RecipeError) else str(error))
            if isinstance(error, UnitError):
                self.asked.put(ways_of(self.amount.text(), "volume"))
        self.wrong.setVisible(self.scaled is None)
        self._show()

    def _scaled(self) -> Scaled:
        recipe = self.session.recipe
        gallon = gallon_of(wording.system_of(self.system))
        litres = parse(self.amount.text(), "volume", gallon=gallon).value  # type: ignore[arg-type]
        vat = None
        if self.power.text().strip():
            power = parse(self.power.text(), "power").value
            vat = recipe.vat.but(power_kw=power) if recipe.vat is not None else Vat(power_kw=power)
        return scale(recipe, litres, forms=self._forms(recipe), vat=vat, system=self.system)

    def _forms(self, recipe: Recipe) -> Forms | Form:
        chosen = self.forms.checkedId()
        if chosen != OWN:
            return "large" if chosen == LARGE else "many"
        across = parse(self.across.text() or "0", "length").value
        number = self.count.text().strip() or "1"
        if not number.isdecimal() or not int(number):
            raise UnitError(self.tr("The number of forms is a whole number."))
        base = recipe.form or Form(diameter_mm=across, height_mm=100.0)
        try:
            return base.but(
                shape="cylinder", diameter_mm=across, length_mm=None, width_mm=None, follower_diameter_mm=None,
                count=int(number),
            )  # fmt: skip
        except ValueError:
            raise UnitError(self.tr("A form is between 20 mm and 1.5 m across.")) from None

    # ---- showing

    @Slot()
    def _show(self) -> None:
        scaled = self.scaled
        self.table.clear()
        self.outcomes.setVisible(scaled is not None)
        self.apply.setEnabled(scaled is not None and scaled.recipe != self.session.recipe)
        self.hint.setText("")
        if scaled is None:
            self.sentence.setText(self.tr("Nothing is changed yet."))
            return
        changed = sum(line.changed for line in scaled.lines)
        check = len(scaled.by("to be checked"))
        self.sentence.setText(
            self.tr("{0} times the milk: {1} figures change, {2} are to be checked, the rest stays.").format(
                f"{scaled.factor:.3g}", changed, check
            )
            if changed
            else self.tr("As much milk as now. Type another amount, and every line says which rule it goes by.")
        )
        for rule, title, why in RULES:
            lines = scaled.by(rule)
            if lines:
                self._group(title, why, lines, folded=rule == "unchanged")
        self.table.setCurrentItem(self.table.topLevelItem(0))
        self._share()
        try:
            made = [self.session.march(self.session.recipe), self.session.march(scaled.recipe)]
        except RecipeError as error:
            self.outcomes.hide()
            self.hint.setText(error.sentence)
            return
        self.outcomes.put([self.tr("Now"), self.tr("Then")], made, self.system)

    def _group(self, title: str, why: str, lines: tuple[Line, ...], *, folded: bool) -> None:
        tr = QCoreApplication.translate
        top = QTreeWidgetItem([f"{tr('Scale', title)}  ({len(lines)}): {tr('Scale', why)}"])
        top.setFont(0, dress.font("body", bold=True))
        self.table.addTopLevelItem(top)
        top.setFirstColumnSpanned(True)
        c = dress.colours()
        for line in lines:
            item = QTreeWidgetItem([headed(line.of, line.what), line.before, line.after, line.why])
            item.setData(0, LINE, line)
            item.setFont(2, dress.font("body", bold=line.changed))
            item.setForeground(3, QBrush(QColor(c.near if line.rule == "to be checked" else c.soft)))
            item.setToolTip(0, item.text(0))
            item.setToolTip(3, line.why)
            top.addChild(item)
        top.setExpanded(not folded)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Another width: the names of the lines have as much of it as they ask for, while the reasons keep most."""
        super().resizeEvent(event)
        self._share()

    def _share(self) -> None:
        asked, room = self.table.sizeHintForColumn(0), self.table.viewport().width()
        self.table.setColumnWidth(0, max(200, min(asked, round(0.38 * room))))

    @Slot()
    def _explain(self) -> None:
        item = self.table.currentItem()
        line = item.data(0, LINE) if item is not None else None
        self.hint.setText(headed(line.of, line.why) if line is not None else "")

    # ---- doing

    @Slot()
    def _apply(self) -> None:
        if self.scaled is None:
            return
        try:
            self.session.march(self.scaled.recipe)
        except RecipeError as error:
            self.said.emit(str(error))
            return
        text = self.tr("Scale to {0}").format(self.amount.text().strip())
        self.session.commit(self.scaled.recipe, text)


def _soft(text: str, buddy: QWidget | None) -> QLabel:
    made = QLabel(text)
    made.setProperty("role", "soft")
    if buddy is not None:
        made.setBuddy(buddy)
    return made
