"""The page of the house style: made from another style or a forecast, changed in a table, kept beside the recipe."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

from PySide6.QtCore import Slot
from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QHBoxLayout,
    QLineEdit,
    QMenu,
    QVBoxLayout,
    QWidget,
)

from designer.judge.own_style import figures_of
from designer.judge.style_rows import Addable, Part, StyleRow, addable, rows, with_added, with_row
from designer.recipe.edit import edit_recipe
from designer.recipe.ingredients import SPECIES
from styles.house import Figures
from styles.reader import Style, StyleError
from widgets.batch.desk import LedgerDesk
from widgets.files import FileWork
from widgets.flow import flowing, labelled
from widgets.form.editors import words
from widgets.judging import house_names
from widgets.room import LEAST_PX, Stack, Turning
from widgets.session import Session
from widgets.variants.page import BESIDE_PX, Page, button, note
from widgets.variants.style_document import StyleDocument
from widgets.variants.style_keeping import Keeping, ask
from widgets.variants.style_maker import StyleMaker
from widgets.variants.style_table import StyleTable


class StylePage(Page):
    """Work on a house style; its steps of undo are its own."""

    def __init__(self, session: Session, files: FileWork, ledger: LedgerDesk, parent: QWidget | None = None) -> None:
        super().__init__(session, "", "", parent)
        self.title.setText(self.tr("House style"))
        self.back.setText(self.tr("‹ Check"))
        self._files = files
        self._figures: tuple[object, Figures] | None = None
        self.document = StyleDocument(session, Keeping(files.recovery / "styles"), self)
        self.document.changed.connect(self._show)
        self.document.problem.connect(self.said)
        self.document.left.connect(lambda left: ask(self, left, self.document.take_up))
        self.stack = self.document.stack
        """the undo stack of what is worked on here"""
        self.choice = QComboBox()
        self.choice.setAccessibleName(self.tr("House style to work on"))
        self.choice.setMinimumWidth(200)
        self.choice.activated.connect(self._choose)
        self.new = button(self.tr("New…"), self._begin)
        self.head.addWidget(self.choice)
        self.head.addWidget(self.new)
        self.maker = StyleMaker(session, ledger)
        self.maker.made.connect(self._made)
        self.maker.given_up.connect(self._show)
        self.table = StyleTable()
        self.table.setMinimumHeight(LEAST_PX)
        self.table.typed.connect(self._typed)
        self.table.dropped.connect(self._dropped)
        self.table.pointed.connect(self._hint)
        self.pages = Stack()
        for made in (self._unsaved(), self._making(), self._editing()):
            self.pages.addWidget(made)
        self.body.addWidget(self.pages, 1)
        self.hint = note()
        self.use = button(self.tr("Check this recipe against it"), self._use, strong=True)
        self.foot.addWidget(self.hint, 1)
        self.foot.addWidget(self.use)
        session.pathChanged.connect(self._another_folder)
        session.forecastChanged.connect(self._maybe)

    # ---- building

    def _unsaved(self) -> QWidget:
        whole = QWidget()
        column = QVBoxLayout(whole)
        column.setContentsMargins(0, 6, 0, 0)
        column.setSpacing(12)
        column.addWidget(
            note(self.tr("A house style lies as a file beside the recipe, and this recipe is not saved yet."))
        )
        self.save = button(self.tr("Save the recipe…"), self._files.save, strong=True)
        row = QHBoxLayout()
        row.addWidget(self.save)
        row.addStretch(1)
        column.addLayout(row)
        column.addStretch(1)
        return whole

    def _making(self) -> QWidget:
        whole = QWidget()
        column = QVBoxLayout(whole)
        column.setContentsMargins(0, 6, 0, 0)
        column.addWidget(self.maker)
        column.addStretch(1)
        return whole

    def _editing(self) -> QWidget:
        whole = QWidget()
        column = QVBoxLayout(whole)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(8)
        column.addWidget(self._about())
        column.addWidget(self.table, 1)
        buttons = []
        self.adding: dict[Part, QMenu] = {}
        for part, text in (
            ("limit", self.tr("Add a limit")),
            ("window", self.tr("Add a usual range")),
            ("gate", self.tr("Add a gate")),
        ):
            one = button(text)
            menu = QMenu(one)
            menu.aboutToShow.connect(lambda part=part: self._fill(part))
            one.setMenu(menu)
            self.adding[part] = menu  # type: ignore[index]
            buttons.append(one)
        self.drop = button(self.tr("Take the row out"), self._drop_current)
        column.addWidget(flowing(*buttons, self.drop, spacing=8))
        return whole

    def _about(self) -> QWidget:
        self.name = QLineEdit()
        self.name.setMaxLength(60)
        self.name.setMaximumWidth(260)
        self.name.setAccessibleName(self.tr("Name of the house style"))
        self.name.editingFinished.connect(self._rename)
        self.milk: dict[str, QCheckBox] = {}
        for species in SPECIES:
            box = QCheckBox(words(species))
            box.clicked.connect(self._remilk)
            self.milk[species] = box
        self.notes = QLineEdit()
        self.notes.setMaxLength(400)
        self.notes.setAccessibleName(self.tr("Remarks"))
        self.notes.setPlaceholderText(self.tr("remarks"))
        self.notes.editingFinished.connect(self._renote)
        milk = labelled(self.tr("Milk of"), *self.milk.values(), spacing=8)
        return Turning(
            [(flowing(labelled(self.tr("Name"), self.name), milk, spacing=18), 0), (self.notes, 1)], BESIDE_PX
        )

    # ---- showing

    def opened(self) -> None:
        """The page is shown: the recipe's own house style is opened, else the first there is, else one is begun."""
        self._another_folder()

    @Slot()
    def _another_folder(self) -> None:
        keys = [key for key, _ in house_names()]
        here = self.document.style.key if self.document.style is not None else ""
        wanted = here if here in keys else self.session.recipe.style if self.session.recipe.style in keys else ""
        wanted = wanted or (keys[0] if keys else "")
        if not wanted or self.document.folder is None:
            self.document.shut()
        else:
            self._open(wanted)
        self._show()

    def _open(self, key: str) -> None:
        try:
            self.document.open(key)
        except StyleError as error:
            self.document.shut()
            self.said.emit(str(error))

    @Slot(int)
    def _choose(self, index: int) -> None:
        self._open(str(self.choice.itemData(index)))
        self._show()

    @Slot()
    def _begin(self) -> None:
        self.pages.setCurrentIndex(1)
        self.use.hide()
        self.hint.setText("")
        self.maker.ask(can_leave=self.document.style is not None)

    def begin_from_liked(self) -> None:
        """Begin one from the batches that were liked, where the recipe has a place for it."""
        if self.document.folder is not None:
            self._begin()
            self.maker.choose_liked()

    @Slot(object)
    def _made(self, made: Style) -> None:
        try:
            self.document.begin(made)
        except StyleError as error:
            self.maker.fail(str(error))
            return
        self._show()
        self.table.setFocus()

    @Slot()
    def _maybe(self) -> None:
        if self.isVisible() and not self.session.previewing and self.pages.currentIndex() == 2:
            self._show()

    def refresh(self) -> None:
        """Show the style as it is, in the units of the window."""
        self._show()

    @Slot()
    def _show(self) -> None:
        one, folder = self.document.style, self.document.folder
        names = house_names()
        self.choice.clear()
        for key, name in names:
            self.choice.addItem(name, key)
        self.choice.setVisible(len(names) > 1)
        self.new.setVisible(one is not None)
        if folder is None:
            self.sentence.setText("")
            self.pages.setCurrentIndex(0)
        elif one is None:
            self.sentence.setText(
                self.tr(
                    "Your own cheese: its own limits, usual ranges and gates, against which recipes are then checked."
                )
            )
            self._begin()
        else:
            self._show_style(one)
        self.use.setVisible(one is not None and folder is not None and self.session.recipe.style != one.key)

    def _show_style(self, one: Style) -> None:
        path = self.document.path
        self.choice.setCurrentIndex(self.choice.findData(one.key))
        self.sentence.setText(
            self.tr("{0}: every change is kept at once in {1}, beside the recipe.").format(
                one.name, path.name if path is not None else ""
            )
        )
        for line, text in ((self.name, one.name), (self.notes, one.notes)):
            if line.text() != text:
                line.setText(text)
                line.setCursorPosition(0)
        for species, box in self.milk.items():
            box.setChecked(species in one.milk)
        self.table.system = self.system
        self.table.put(rows(one), self._made_here())
        self.pages.setCurrentIndex(2)
        self._hint(self.table.current_row())

    def _made_here(self) -> Figures:
        """The figures of the recipe as it is kept; worked out once a forecast."""
        made = self.session.forecast
        if self._figures is None or self._figures[0] is not made:
            self._figures = made, figures_of(made)
        return self._figures[1]

    @Slot(object)
    def _hint(self, row: StyleRow | None) -> None:
        self.drop.setEnabled(row is not None and row.editable)
        if row is None:
            self.hint.setText("")
        elif not row.editable:
            self.hint.setText(self.tr("A limit of law or of a standard stays as it is; add a limit of your own."))
        else:
            self.hint.setText(
                row.note or self.tr("Type an end with its unit, empty for open. Delete takes the row out.")
            )

    def stop(self) -> None:
        """The window is closed."""
        self.document.stop()

    # ---- changing

    @Slot(object, object, object)
    def _typed(self, row: StyleRow, low: float | None, high: float | None) -> None:
        self._change(lambda one: with_row(one, row, low, high), self.tr("House style: {0}").format(row.label))
        if row.twin:
            self.hint.setText(self.tr("Your own range stands in place of all others of {0}.").format(row.label))

    @Slot(object)
    def _dropped(self, row: StyleRow) -> None:
        if row.editable:
            self._change(
                lambda one: with_row(one, row, None, None), self.tr("House style without {0}").format(row.label)
            )

    def _drop_current(self) -> None:
        row = self.table.current_row()
        if row is not None:
            self._dropped(row)
            self.table.setFocus()

    def _change(self, change: Callable[[Style], Style], text: str) -> None:
        self.document.look()
        one = self.document.style
        if one is None:
            return
        try:
            made = change(one)
        except StyleError as error:
            self.said.emit(str(error))
            return
        self.document.commit(made, text)
        if made == one:
            self._show()

    def _fill(self, part: Part) -> None:
        menu, one = self.adding[part], self.document.style
        menu.clear()
        found = addable(one, part, self._made_here()) if one is not None else ()
        for row in found:
            menu.addAction(row.label).triggered.connect(lambda _=False, row=row: self._add(row))
        if not found:
            menu.addAction(self.tr("All that this recipe has a figure for is there")).setEnabled(False)

    def _add(self, row: Addable) -> None:
        self._change(lambda one: with_added(one, row), self.tr("House style: {0}").format(row.label))
        self.table.go_to((row.part, row.key, row.at))

    @Slot()
    def _rename(self) -> None:
        text = self.name.text().strip()
        if text and self.document.style is not None:
            self._change(lambda one: replace(one, name=text), self.tr("House style: name"))
        else:
            self._show()

    @Slot()
    def _renote(self) -> None:
        text = self.notes.text().strip()
        if self.document.style is not None:
            self._change(lambda one: replace(one, notes=text), self.tr("House style: remarks"))

    @Slot()
    def _remilk(self) -> None:
        chosen = tuple(species for species, box in self.milk.items() if box.isChecked())
        self._change(lambda one: replace(one, milk=chosen), self.tr("House style: milk"))

    def _use(self) -> None:
        one = self.document.style
        if one is not None:
            recipe = edit_recipe(self.session.recipe, style=one.key)
            self.session.commit(recipe, self.tr("Check against {0}").format(one.name))
            self._show()
