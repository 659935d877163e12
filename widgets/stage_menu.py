"""The menus of stages: which kind to insert, and beside a stage in the make curve what can be done with it."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication, QPoint
from PySide6.QtWidgets import QMenu, QWidget

from designer.recipe.stages.kinds import KINDS
from widgets import wording
from widgets.actions import Actions
from widgets.stage_work import StageWork

DONE = ("copy", "cut", "paste", "duplicate", "split", "earlier", "move_later")
"""Keys of the actions on the selected stage, in the order of the menus."""


def insert_menu(menu: QMenu, stages: StageWork) -> QMenu:
    """A submenu with every kind of stage, in the order of a make."""
    insert = menu.addMenu(QCoreApplication.translate("Stages", "&Insert after the selected"))
    for kind in KINDS:
        name = wording.kind_name(kind)
        action = insert.addAction(name[:1].upper() + name[1:])
        action.triggered.connect(lambda _=False, kind=kind: stages.insert(kind))
    return insert


def popup(window: QWidget, insert: QMenu, actions: Actions, at: QPoint) -> QMenu:
    """The menu beside the selected stage; it goes when it is shut."""
    menu = QMenu(window)
    menu.addMenu(insert)
    menu.addActions([actions[key] for key in DONE])
    menu.addSeparator()
    menu.addActions([actions["split_off"], actions["to_stage"]])
    menu.addSeparator()
    menu.addAction(actions["remove"])
    menu.aboutToHide.connect(menu.deleteLater)
    menu.popup(at)
    return menu
