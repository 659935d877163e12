"""The saved versions of a recipe: who, when, a note, what changed; put beside, opened as a copy, put back."""

from __future__ import annotations

from typing import Final

from PySide6.QtCore import QCoreApplication, QSignalBlocker, Qt, Signal, Slot
from PySide6.QtWidgets import QAbstractItemView, QHeaderView, QTreeWidget, QTreeWidgetItem, QWidget

from designer.judge.beside import Pair
from designer.recipe import versions
from designer.recipe.changes import changes, in_words
from designer.recipe.document import Recipe
from designer.recipe.error import RecipeError
from designer.recipe.versions import Version
from widgets.files import FileWork
from widgets.session import Session
from widgets.variants.page import Page, button, listed, note

NUMBER, SAVED, BY, NOTE, CHANGED = range(5)
VERSION: Final = Qt.ItemDataRole.UserRole


class VersionsPage(Page):
    """One line a version, the newest first."""

    beside = Signal(object, str)
    """a recipe to put beside the open one and what it is called, or a pair of versions to put beside each other"""

    def __init__(self, session: Session, files: FileWork, parent: QWidget | None = None) -> None:
        super().__init__(session, "", "", parent)
        self.title.setText(self.tr("Versions"))
        self.back.setText(self.tr("‹ Design"))
        self._files = files
        self.list = self._list()
        self.body.addWidget(self.list, 1)
        self.empty = note()
        self.empty.setAlignment(Qt.AlignmentFlag.AlignTop | Qt.AlignmentFlag.AlignLeft)
        self.body.addWidget(self.empty, 1)
        self.save = button(self.tr("Save the recipe"), files.save, strong=True)
        self.hint = note()
        self.compare = button(self.tr("Put beside in Compare"), self._beside)
        self.open = button(self.tr("Open as a copy"), self._open)
        self.restore = button(self.tr("Put back"), self._restore, strong=True)
        self.foot.addWidget(self.hint, 1)
        for one in (self.save, self.compare, self.open, self.restore):
            self.foot.addWidget(one)
        session.pathChanged.connect(self._maybe)
        session.documentChanged.connect(self._offer)

    def _list(self) -> QTreeWidget:
        made = listed(
            self.tr("Saved versions, the newest first"),
            [self.tr("No."), self.tr("Saved"), self.tr("By"), self.tr("Note"), self.tr("What changed")],
        )
        made.setSelectionMode(QAbstractItemView.SelectionMode.ExtendedSelection)
        made.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        head = made.header()
        head.setStretchLastSection(True)
        for column in (NUMBER, SAVED, BY):
            head.setSectionResizeMode(column, QHeaderView.ResizeMode.ResizeToContents)
        head.setSectionResizeMode(NOTE, QHeaderView.ResizeMode.Interactive)
        made.setColumnWidth(NOTE, 240)
        made.currentItemChanged.connect(self._offer)
        made.itemSelectionChanged.connect(self._offer)
        made.itemActivated.connect(lambda item, _column: self._edit(item))
        made.itemChanged.connect(self._noted)
        return made

    # ---- showing

    @Slot()
    def _maybe(self) -> None:
        if self.isVisible():
            self.refresh()

    def opened(self) -> None:
        """The page is shown: the list has the keyboard."""
        self.refresh()
        self.setFocusProxy(self.list)

    def refresh(self) -> None:
        """Read the versions again."""
        path, problem = self.session.path, ""
        try:
            kept = versions.versions(path) if path is not None else ()
        except RecipeError as error:
            kept, problem = (), str(error)
        with QSignalBlocker(self.list):
            self.list.clear()
            for one in reversed(kept):
                self._line(one)
        self.list.setVisible(bool(kept))
        self.empty.setVisible(not kept)
        self.save.setVisible(not kept)
        self.empty.setText(
            problem
            or self.tr("Every save keeps what was there before, as plain files beside the recipe. None is kept yet.")
        )
        where = versions.folder(path).name if path is not None else ""
        self.sentence.setText(
            self.tr(
                "Enter or a double click writes a note; two lines chosen with Ctrl are compared with each other. "
                "The files lie in {0}."
            ).format(where)
            if kept
            else ""
        )
        if kept:
            self.list.setCurrentItem(self.list.topLevelItem(0))
        self._offer()

    def _line(self, one: Version) -> None:
        saved = f"{one.saved.astimezone():%Y-%m-%d %H:%M}"
        item = QTreeWidgetItem([str(one.number), saved, one.by, one.note, one.changed])
        item.setData(0, VERSION, one)
        item.setFlags(item.flags() | Qt.ItemFlag.ItemIsEditable)
        item.setToolTip(CHANGED, one.changed.replace("; ", "\n"))
        self.list.addTopLevelItem(item)

    def chosen(self) -> Version | None:
        """The version the list stands on."""
        item = self.list.currentItem()
        return item.data(0, VERSION) if item is not None else None

    def two(self) -> tuple[Version, Version] | None:
        """The two versions that are selected, the older first; None where there are not two."""
        found = sorted((item.data(0, VERSION) for item in self.list.selectedItems()), key=lambda one: one.number)
        return (found[0], found[1]) if len(found) == 2 else None

    @Slot()
    def _offer(self) -> None:
        one, two = self.chosen(), self.two()
        self.compare.setText(self.tr("Compare the two") if two else self.tr("Put beside in Compare"))
        for part in (self.compare, self.open, self.restore):
            part.setVisible(one is not None)
        if one is None or not self.isVisible():
            self.hint.setText("")
            return
        try:
            recipe = versions.recipe_of(one)
        except RecipeError as error:
            self.hint.setText(str(error))
            self.restore.setEnabled(False)
            return
        if two is not None:
            self._offer_two(*two)
            return
        found = changes(recipe, self.session.recipe, self.system)
        self.restore.setEnabled(bool(found))
        said = in_words(found, most=4)
        self.hint.setText(
            self.tr("From version {0} to what is open: {1}").format(one.number, said)
            if found
            else self.tr("Version {0} is what is open.").format(one.number)
        )

    def _offer_two(self, old: Version, new: Version) -> None:
        """What lies between two versions; only one can be opened or put back."""
        self.open.setVisible(False)
        self.restore.setVisible(False)
        try:
            said = in_words(changes(versions.recipe_of(old), versions.recipe_of(new), self.system), most=4)
        except RecipeError as error:
            self.hint.setText(str(error))
            return
        self.hint.setText(self.tr("From version {0} to version {1}: {2}").format(
            old.number, new.number, said or self.tr("nothing but words and order")
        ))  # fmt: skip

    # ---- notes

    def _edit(self, item: QTreeWidgetItem) -> None:
        self.list.editItem(item, NOTE)

    @Slot(QTreeWidgetItem, int)
    def _noted(self, item: QTreeWidgetItem, column: int) -> None:
        one, path = item.data(0, VERSION), self.session.path
        if column != NOTE or path is None or item.text(NOTE).strip() == one.note:
            return
        try:
            item.setData(0, VERSION, versions.annotate(path, one.number, item.text(NOTE)))
        except RecipeError as error:
            self.said.emit(str(error))

    # ---- doing

    def _read(self) -> tuple[Version, Recipe] | None:
        one = self.chosen()
        if one is None:
            return None
        try:
            return one, versions.recipe_of(one)
        except RecipeError as error:
            self.said.emit(str(error))
            return None

    def _beside(self) -> None:
        two = self.two()
        try:
            if two is not None:
                left, right = (versions.recipe_of(one) for one in two)
                self.beside.emit(Pair(left, right, (self._called(two[0]), self._called(two[1]))), "")
            elif (one := self.chosen()) is not None:
                self.beside.emit(versions.recipe_of(one), self._called(one))
        except RecipeError as error:
            self.said.emit(str(error))

    @staticmethod
    def _called(one: Version) -> str:
        return QCoreApplication.translate("ComparePlace", "version {0}").format(one.number)

    def _open(self) -> None:
        found = self._read()
        if found is not None:
            self._files.open_copy(found[1], versions.text_of(found[0]))

    def _restore(self) -> None:
        found = self._read()
        if found is not None:
            self.session.commit(found[1], self.tr("Version {0} put back").format(found[0].number))
            self.sentence.setText(self.tr("Version {0} is put back; undo takes it away again, saving keeps it.").format(
                found[0].number
            ))  # fmt: skip
