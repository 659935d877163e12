"""The menus and the bar of tools: where each action of the window stands, and beside the tools what is open.

Its parts put their own actions in; the recipes last open and the examples are looked up when their menu opens.
"""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QCoreApplication, QObject, QSize, Qt, Slot
from PySide6.QtWidgets import QLabel, QMainWindow, QMenu, QSizePolicy, QToolBar, QWidget

from designer.recipe.examples import examples, title
from widgets import stage_menu
from widgets.actions import Actions
from widgets.branch_work import BranchWork
from widgets.choices import Choices
from widgets.files import FileWork
from widgets.help.desk import Desk
from widgets.preferences import Preferences
from widgets.stage_work import StageWork
from widgets.start.recent_list import spoken
from widgets.teach.work import Teaching
from widgets.theme import apply as dress
from widgets.variants.work import Variants


def _told(text: str) -> str:
    return QCoreApplication.translate("Window", text)


class Menus(QObject):
    """The menu bar of a window."""

    def __init__(
        self,
        window: QMainWindow,
        actions: Actions,
        files: FileWork,
        preferences: Preferences,
        *,
        stages: StageWork,
        branches: BranchWork,
        variants: Variants,
        teaching: Teaching,
        choices: Choices,
        help_: Desk,
    ) -> None:
        super().__init__(window)
        self._files, self._preferences = files, preferences
        a, bar = actions, window.menuBar()
        file = bar.addMenu(_told("&File"))
        file.addActions([a["new"], a["open"]])
        self._recent = file.addMenu(_told("Open &recent"))
        self._recent.aboutToShow.connect(self._fill_recent)
        self._examples = file.addMenu(_told("&Examples"))
        self._examples.aboutToShow.connect(self._fill_examples)
        file.addSeparator()
        file.addActions([a["save"], a["save_as"]])
        file.addSeparator()
        file.addAction(a["print"])
        file.addSeparator()
        file.addAction(a["quit"])
        edit = bar.addMenu(_told("&Edit"))
        edit.addActions([a["undo"], a["redo"]])
        edit.addSeparator()
        edit.addActions([a["later"], a["keep"], a["lock"]])
        variants.fill(bar.addMenu(_told("&Recipe")), a)
        teach = QMenu(_told("&Teach"), window)
        teaching.fill(teach, a)
        stage = bar.addMenu(_told("&Stage"))
        self.insert: QMenu = stage_menu.insert_menu(stage, stages)
        stage.addActions([a[key] for key in (*stage_menu.DONE, "remove")])
        stage.addSeparator()
        stage.addActions([a["previous"], a["next"]])
        stage.addSeparator()
        branches.fill(stage, a)
        view = bar.addMenu(_told("&View"))
        view.addActions(
            [a[key] for key in ("day", "whole", "life", "one_scale", "to_stage", "zoom_in", "zoom_out", "hours")]
        )
        view.addSeparator()
        view.addActions([a["firmness"], a["figures"]])
        view.addSeparator()
        choices.fill(view, a)
        theme = view.addMenu(_told("&Theme"))
        theme.addActions([a["system"], a["light"], a["dark"], a["contrast"]])
        bar.addMenu(teach)
        help_.fill(bar.addMenu(_told("&Help")), a)

    def _fill(self, menu: QMenu, paths: list[Path], empty: str, called: Callable[[Path], str]) -> None:
        menu.clear()
        for path in paths:
            action = menu.addAction(called(path).replace("&", "&&"))
            action.setToolTip(str(path))
            action.triggered.connect(lambda _=False, path=path: self._files.open(path))
        if not paths:
            menu.addAction(empty).setEnabled(False)

    @Slot()
    def _fill_recent(self) -> None:
        self._fill(self._recent, self._preferences.recent, _told("nothing yet"), spoken)

    @Slot()
    def _fill_examples(self) -> None:
        self._fill(self._examples, examples(), _told("none"), title)


class Tools(QToolBar):
    """The bar of tools, with the name of the recipe and, where there is trouble, its sentence."""

    def __init__(self, actions: Actions, parent: QWidget) -> None:
        super().__init__(_told("Tools"), parent)
        self.setMovable(False)
        self.setIconSize(QSize(20, 20))
        self.setContextMenuPolicy(Qt.ContextMenuPolicy.PreventContextMenu)
        for keys in (("open", "save"), ("undo", "redo"), ("later", "keep"), ("day", "whole", "zoom_in", "zoom_out")):
            for key in keys:
                self.addAction(actions[key])
            self.addSeparator()
        self._heading = QLabel(self)
        self._heading.setFont(dress.font("head", bold=True))
        self._heading.setContentsMargins(6, 0, 0, 0)
        self.addWidget(self._heading)
        self.trouble = QLabel(self)
        self.trouble.setProperty("role", "wrong")
        self.trouble.setContentsMargins(14, 0, 0, 0)
        self.trouble.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        self.addWidget(self.trouble)

    def show_name(self, name: str) -> None:
        """The recipe that is open."""
        self._heading.setText(name)

    @Slot(str)
    def show_problem(self, sentence: str) -> None:
        """What is wrong with the recipe or its keeping; "" when nothing is."""
        self.trouble.setText(f"\u25b2 {sentence}" if sentence else "")
        self.trouble.setToolTip(sentence)
