"""The Milk place: what goes into the vat and what it is for: recipe, milk, starters, additions, form, rind or coat."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QPushButton, QVBoxLayout, QWidget

from designer.language import number, word
from designer.recipe import edit as edits
from designer.recipe.document import Addition, Coat, Form, MilkSource, Recipe, Starter, Vat
from designer.recipe.error import RecipeError
from designer.recipe.field import FieldMeta, Model
from designer.recipe.milk import blend
from designer.recipe.presets import breeds
from widgets.flow import flowing
from widgets.form.editors import explained, words
from widgets.form.part_form import PartForm, plain_choices
from widgets.judging import style_names
from widgets.room import Turning, scrolling
from widgets.session import Session
from widgets.theme import apply as dress
from widgets.together import Wrapped

COLUMN_PX, HEAD_PX = 330, 800
"""The least room for a column of cards, and for the buttons beside what is in the vat."""
# Each part: what is edited by which function. The recipe itself has no id.
Change = Callable[[Recipe, str, dict[str, Any]], Recipe]
CHANGES: dict[type[Model], Change] = {
    Recipe: lambda recipe, _, changes: edits.edit_recipe(recipe, **changes),
    MilkSource: lambda recipe, one, changes: edits.edit_milk(recipe, one, **changes),
    Starter: lambda recipe, one, changes: edits.edit_starter(recipe, one, **changes),
    Addition: lambda recipe, one, changes: edits.edit_addition(recipe, one, **changes),
    Form: lambda recipe, _, changes: edits.edit_form(recipe, **changes),
    Coat: lambda recipe, _, changes: edits.edit_coat(recipe, **changes),
    Vat: lambda recipe, _, changes: edits.edit_vat(recipe, **changes),
}


class Card(QFrame):
    """One part of the recipe with its title and form."""

    changed = Signal(object, str, object, bool)
    """(part, field, value, nudged)"""
    taken_out = Signal(str)

    def __init__(
        self, title: str, removable: str, choices: Any, recipe: Callable[[], Recipe], parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self.part: Model | None = None
        self.setObjectName("card")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.setFrameShape(QFrame.Shape.NoFrame)
        column = QVBoxLayout(self)
        column.setContentsMargins(16, 12, 16, 14)
        column.setSpacing(8)
        row = QHBoxLayout()
        self._title = QLabel(title, self)
        self._title.setFont(dress.font("head", bold=True))
        row.addWidget(self._title, 1)
        if removable:
            button = QPushButton(self.tr("Take out"), self)
            button.setAccessibleName(self.tr("Take out {0}").format(title))
            button.setFlat(True)
            button.clicked.connect(lambda: self.taken_out.emit(removable))
            row.addWidget(button)
        column.addLayout(row)
        self.form = PartForm(choices, self, fold=True, recipe=recipe)
        self.form.changed.connect(self._changed)
        column.addWidget(self.form)

    def _changed(self, name: str, value: object, nudged: bool) -> None:
        self.changed.emit(self.part, name, value, nudged)

    def put(self, part: Model, title: str, system: str) -> None:
        """Show a part."""
        self.part = part
        self._title.setText(title)
        self.form.put(part, system)


class MilkPlace(QWidget):
    """Everything of the recipe that is not a stage, in cards."""

    said = Signal(str)
    hinted = Signal(str)
    """what is known of the field that has the keyboard"""
    asked = Signal(str)
    """a page that opens from here, by its key"""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.session = session
        self.system = "metric"
        self._cards: dict[str, Card] = {}
        self._columns: list[QVBoxLayout] = []
        self._blend = Wrapped(self)
        self._blend.setProperty("role", "soft")
        stands = [QWidget() for _ in range(3)]
        for stand in stands:
            column = QVBoxLayout(stand)
            column.setContentsMargins(0, 0, 0, 0)
            column.setSpacing(12)
            column.setAlignment(Qt.AlignmentFlag.AlignTop)
            self._columns.append(column)
        inside = Turning([(stand, 1) for stand in stands], 3 * COLUMN_PX, spacing=14)
        inside.setContentsMargins(20, 12, 20, 16)
        self._area = scrolling(inside, across=False)
        whole = QVBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.setSpacing(0)
        whole.addWidget(self._head())
        whole.addWidget(self._area, 1)
        self._buttons(inside)
        session.documentChanged.connect(self.refresh)
        self.refresh()

    def _head(self) -> QWidget:
        """What is in the vat, and what can be done to all of it."""
        buttons = []
        for key, text in (
            ("standardise", self.tr("Standardise…")),
            ("scale", self.tr("Another amount…")),
            ("other_milk", self.tr("Another milk…")),
        ):
            button = QPushButton(text, self)
            button.setMinimumHeight(28)
            button.clicked.connect(lambda _=False, key=key: self.asked.emit(key))
            buttons.append(button)
        head = Turning([(self._blend, 1), (flowing(*buttons, spacing=8), 0)], HEAD_PX, spacing=8)
        head.setContentsMargins(20, 12, 30, 0)
        return head

    def _buttons(self, inside: QWidget) -> None:
        self._add: list[tuple[int, QPushButton]] = []
        for column, text, make in (
            (0, self.tr("Add milk"), self._more_milk),
            (1, self.tr("Add starter"), self._more_starter),
            (2, self.tr("Add addition"), self._more_addition),
        ):
            button = QPushButton(text, inside)
            button.clicked.connect(make)
            self._add.append((column, button))

    def set_system(self, system: str) -> None:
        """Metric or US units."""
        self.system = system
        self.refresh()

    # ---- showing

    def _wanted(self, recipe: Recipe) -> list[tuple[int, str, Model, str, str]]:
        """(column, key, part, title, id if it can be taken out)."""
        made: list[tuple[int, str, Model, str, str]] = [(0, "recipe", recipe, self.tr("Recipe"), "")]
        for one in recipe.milks:
            made.append((0, one.id, one, one.name or words(one.species), one.id if len(recipe.milks) > 1 else ""))
        for starter in recipe.starters:
            made.append((1, starter.id, starter, starter.name or words(starter.kind), starter.id))
        made.append((0, "vat", recipe.vat or Vat(), self.tr("Vat"), ""))
        made.append((1, "form", recipe.form or Form(diameter_mm=100.0, height_mm=80.0), self.tr("Form"), ""))
        made.append((1, "coat", recipe.coat or Coat(), self.tr("Rind or coat"), ""))
        for addition in recipe.additions:
            title = addition.name or words(addition.what)
            made.append((2, addition.id, addition, title, addition.id))
        return made

    @Slot()
    def refresh(self) -> None:
        """Show the recipe as it is kept."""
        recipe = self.session.recipe
        wanted = self._wanted(recipe)
        keys = [key for _, key, *_ in wanted]
        if list(self._cards) != keys:
            self._rebuild(wanted)
        for _, key, part, title, _ in wanted:
            self._cards[key].put(part, title[:1].upper() + title[1:], self.system)
        try:
            milk = blend(recipe)
        except RecipeError as error:
            self._blend.setText(str(error))
            return
        text = self.tr("In the vat: {0} kg, fat {1} %, casein {2} %, lactose {3} %, pH {4}")
        self._blend.setText(
            text.format(
                number(milk.mass_kg, '.1f'), number(milk.fat / 10, '.2f'), number(milk.casein / 10, '.2f'),
                number(milk.lactose / 10, '.2f'),
                number(milk.ph, '.2f'),
            )
        )  # fmt: skip

    def _rebuild(self, wanted: list[tuple[int, str, Model, str, str]]) -> None:
        for card in self._cards.values():
            card.hide()
            card.deleteLater()
        self._cards = {}
        for column in self._columns:
            while column.count():
                column.takeAt(0)
        for index, key, _, title, removable in wanted:
            card = Card(title, removable, self._choices, lambda: self.session.recipe, self._area.widget())
            card.changed.connect(self._changed)
            card.taken_out.connect(self._take_out)
            card.form.focused.connect(self._explain)
            self._columns[index].addWidget(card)
            self._cards[key] = card
        for index, button in self._add:
            self._columns[index].addWidget(button, 0, Qt.AlignmentFlag.AlignLeft)

    def _choices(self, part: Model, meta: FieldMeta) -> list[tuple[Any, str]]:
        if meta.name == "style":
            return [("", self.tr("none")), *style_names()]
        if meta.name == "breed" and isinstance(part, MilkSource):
            return [("", self.tr("average of the species")), *breeds(part.species).items()]
        if meta.name == "at":
            stages = [(stage.id, stage.title) for stage in self.session.recipe.stages]
            return ([("", self.tr("the first that ripens"))] if isinstance(part, Starter) else []) + stages
        return plain_choices(part, meta)

    @Slot(object)
    def _explain(self, meta: FieldMeta) -> None:
        self.hinted.emit(explained(meta, self.system))

    # ---- editing

    @Slot(object, str, object, bool)
    def _changed(self, part: Model, name: str, value: object, nudged: bool) -> None:
        key = "recipe" if isinstance(part, Recipe) else getattr(part, "id", type(part).__name__.lower())
        card = next(card for card in self._cards.values() if card.part is part)
        changes: dict[str, Any] = {name: value}
        if name == "species":
            changes["breed"] = ""
        if isinstance(part, Form | Coat) and getattr(self.session.recipe, key) is None:
            changes = {**part.model_dump(), **changes}
        try:
            recipe = CHANGES[type(part)](self.session.recipe, key, changes)
            self.session.march(recipe)
        except RecipeError as error:
            card.form.complain(name, error.sentence)
            return
        card.form.complain(name, "")
        self.session.commit(recipe, word(name.replace("_", " "), "field"), key=(key, name) if nudged else None)

    def _kept(self, make: Callable[[Recipe], Recipe], text: str) -> None:
        try:
            recipe = make(self.session.recipe)
        except RecipeError as error:
            self.said.emit(str(error))
            return
        self.session.commit(recipe, text)

    @Slot(str)
    def _take_out(self, part_id: str) -> None:
        self._kept(lambda recipe: edits.take_out(recipe, part_id), self.tr("Take out"))

    @Slot()
    def _more_milk(self) -> None:
        def make(recipe: Recipe) -> Recipe:
            return edits.add(recipe, MilkSource(id=edits.free_id(recipe, "milk"), volume_l=10.0))

        self._kept(make, self.tr("Add milk"))

    @Slot()
    def _more_starter(self) -> None:
        def make(recipe: Recipe) -> Recipe:
            return edits.add(recipe, Starter(id=edits.free_id(recipe, "starter"), bulk_pct=1.0))

        self._kept(make, self.tr("Add starter"))

    @Slot()
    def _more_addition(self) -> None:
        def make(recipe: Recipe) -> Recipe:
            one = Addition(
                id=edits.free_id(recipe, "calcium"), what="calcium_chloride", at=recipe.stages[0].id, mass_pct=0.015
            )
            return edits.add(recipe, one)

        self._kept(make, self.tr("Add addition"))
