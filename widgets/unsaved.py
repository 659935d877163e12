"""The question about work that was not saved when a window ended, asked in one way of recipes and of house styles."""

from __future__ import annotations

from collections.abc import Callable
from enum import Enum, auto

from PySide6.QtCore import QCoreApplication
from PySide6.QtWidgets import QMessageBox, QWidget


class Answer(Enum):
    """What is to be done with the work."""

    TAKE_UP = auto()
    COMPARE = auto()
    """take it up, beside what the file holds"""
    FORGET = auto()
    LATER = auto()


def ask(parent: QWidget, name: str, told: str, answered: Callable[[Answer], None], *, comparable: bool = False) -> None:
    """Ask what becomes of the work called `name`; `told` says what it is beside its file. Closing answers LATER."""
    tr = QCoreApplication.translate
    box = QMessageBox(parent)
    box.setIcon(QMessageBox.Icon.Question)
    box.setText(tr("Recovery", "“{0}” has work from last time that was not saved.").format(name))
    box.setInformativeText(told)
    role = QMessageBox.ButtonRole
    take = box.addButton(tr("Recovery", "Take it up"), role.AcceptRole)
    answers = {take: Answer.TAKE_UP}
    if comparable:
        answers[box.addButton(tr("Recovery", "Take it up and compare"), role.AcceptRole)] = Answer.COMPARE
    answers[box.addButton(tr("Recovery", "Forget it"), role.DestructiveRole)] = Answer.FORGET
    later = box.addButton(tr("Recovery", "Ask again later"), role.RejectRole)
    box.setDefaultButton(take)
    box.setEscapeButton(later)
    box.finished.connect(lambda: answered(answers.get(box.clickedButton(), Answer.LATER)))
    box.open()
