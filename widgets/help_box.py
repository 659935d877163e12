"""Help in the window: keys and gestures, and what the program is."""

from __future__ import annotations

from collections.abc import Iterable

from PySide6.QtCore import QCoreApplication
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QMessageBox, QWidget

from widgets.theme.icons import program_icon


def show_keys(window: QWidget, actions: Iterable[QAction]) -> None:
    """Gestures in sentences, shortcuts in a list."""
    tr = QCoreApplication.translate
    lines = [
        tr("Help", "Drag a stage's edge to change its length; a diamond ends by a state: drag to ask another."),
        tr("Help", "Drag a corner of the line to change a temperature, a rounded figure to change that setting."),
        tr("Help", "Shift lets go of round values. Ctrl turns “move along” and “keep the end” round. Esc cancels."),
        tr("Help", "Tab goes from handle to handle; arrows change it, Page Up and Down more, Shift less, Enter types."),
        tr("Help", "Drag a stage by its name to put it elsewhere; a right click, or the menu key, says what else."),
        tr("Help", "Wheel zooms, with Shift it pans; drag the curves to pan; double-click a stage to see it alone."),
    ]
    native = QKeySequence.SequenceFormat.NativeText
    rows = [
        f"{action.shortcut().toString(native)}:  {action.text().replace('&', '')}"
        for action in actions
        if not action.shortcut().isEmpty()
    ]
    box = QMessageBox(window)
    box.setWindowTitle(tr("Help", "Keys and gestures"))
    box.setText("\n\n".join(lines))
    box.setInformativeText("\n".join(rows))
    box.open()


def about(window: QWidget) -> None:
    """What the program is."""
    text = QCoreApplication.translate(
        "Help",
        "Curdwright designs the make of a cheese: what a recipe will do, how it stands against a style, "
        "and the plan to make it by. A forecast is never a certificate.",
    )
    box = QMessageBox(window)
    box.setWindowTitle(QCoreApplication.translate("Help", "About Curdwright"))
    box.setIconPixmap(program_icon().pixmap(64, 64))
    box.setText(text)
    box.open()
