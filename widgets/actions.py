"""Everything the window can be told to do, as actions with words, icon and shortcut; the menus are made from them."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from PySide6.QtCore import QCoreApplication
from PySide6.QtGui import QAction, QActionGroup, QKeySequence
from PySide6.QtWidgets import QWidget

from widgets.theme import apply as dress
from widgets.theme.icons import icon


@dataclass(frozen=True, slots=True)
class Spec:
    """One action: key, words, what it does, icon, shortcut, whether it stays on, whether it opens a dialog of ours."""

    key: str
    text: str
    does: Callable[..., object]
    icon: str = ""
    keys: str | QKeySequence.StandardKey = ""
    stays: bool = False
    group: str = ""
    tip: str = ""
    dialog: bool = False


class Actions:
    """The actions of a window by key."""

    def __init__(self, owner: QWidget, specs: list[Spec]) -> None:
        self._owner = owner
        self.specs = {spec.key: spec for spec in specs}
        self._groups: dict[str, QActionGroup] = {}
        self.by_key: dict[str, QAction] = {}
        for spec in specs:
            self.by_key[spec.key] = self._made(spec)
        self.recolour()

    def __getitem__(self, key: str) -> QAction:
        return self.by_key[key]

    def _made(self, spec: Spec) -> QAction:
        text = QCoreApplication.translate("Actions", spec.text)
        action = QAction(text, self._owner)
        if spec.keys:
            action.setShortcut(QKeySequence(spec.keys))
        if spec.stays:
            action.setCheckable(True)
            action.triggered.connect(spec.does)
        else:
            action.triggered.connect(lambda *_: spec.does())
        if spec.group:
            group = self._groups.get(spec.group)
            if group is None:
                group = self._groups[spec.group] = QActionGroup(self._owner)
            group.addAction(action)
        plain = text.replace("&", "").rstrip("…")
        shortcut = action.shortcut().toString(QKeySequence.SequenceFormat.NativeText)
        tip = QCoreApplication.translate("Actions", spec.tip) if spec.tip else plain
        action.setToolTip(f"{tip}  ({shortcut})" if shortcut else tip)
        action.setStatusTip(tip)
        self._owner.addAction(action)
        return action

    def recolour(self) -> None:
        """Draw the icons in the ink of the palette."""
        c = dress.colours()
        for key, spec in self.specs.items():
            if spec.icon:
                self.by_key[key].setIcon(icon(spec.icon, c.ink, c.chosen, c.of("off")))
