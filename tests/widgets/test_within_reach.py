"""Every control of every place: large enough to hit, named, reachable, and nothing cut off at 200 %."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractScrollArea,
    QApplication,
    QComboBox,
    QLabel,
    QLineEdit,
    QPushButton,
    QScrollArea,
    QScrollBar,
    QSizePolicy,
    QWidget,
)

from widgets.window import Window

TARGET_PX = 24
"""WCAG 2.2, 2.5.8: the least size of a target."""
AT_200_PERCENT = (683, 384)
"""what a screen of 1366 by 768 leaves at 200 %"""

TAB = Qt.FocusPolicy.TabFocus


def controls(place: QWidget) -> list[QWidget]:
    """What can be pressed, typed in or chosen from, as far as it is shown."""
    found = [*place.findChildren(QAbstractButton), *place.findChildren(QComboBox), *place.findChildren(QLineEdit)]
    inside = [one for one in found if isinstance(one.parentWidget(), QComboBox | QScrollBar | QAbstractScrollArea)]
    return [one for one in found if one.isVisible() and one not in inside]


def told(one: QWidget) -> str:
    """Which control it is, for a person."""
    text = one.text() if isinstance(one, QAbstractButton) else ""
    return f"{type(one).__name__} “{text or one.accessibleName() or one.objectName()}” {one.width()}x{one.height()}"


def cut_off(place: QWidget) -> list[str]:
    """What is shown in less room than its words need."""
    found = []
    for one in place.findChildren(QWidget):
        if not one.isVisible() or not isinstance(one, QPushButton | QLabel) or not one.text():
            continue
        if isinstance(one, QLabel) and one.wordWrap():
            if one.height() < one.heightForWidth(one.width()):
                found.append(f"“{one.text()[:40]}” is {one.height()} high, wants {one.heightForWidth(one.width())}")
        elif one.width() < one.sizeHint().width() and one.sizePolicy().horizontalPolicy() != QSizePolicy.Policy.Ignored:
            found.append(f"“{one.text()[:40]}” is {one.width()} wide, wants {one.sizeHint().width()}")
    return found


def sideways(window: Window) -> list[str]:
    """What has to be scrolled sideways, tables and papers apart."""
    areas = [area for area in window.findChildren(QScrollArea) if area.isVisible()]
    told = [(area.widget(), area.viewport().width()) for area in areas]
    return [
        f"{type(inside).__name__} of {inside.width()} px scrolls in {room}"
        for inside, room in told
        if inside is not None and inside.width() > room
    ]


@pytest.mark.parametrize("size", [(1366, 768), AT_200_PERCENT])
def test_every_place_can_be_worked_in(window: Window, size: tuple[int, int]) -> None:
    """At 200 % too: targets, names, keys; nothing cut off, nothing to be scrolled sideways."""
    window.resize(*size)
    wrong: list[str] = []
    for key in window.places:
        window.go(key)
        QApplication.processEvents()
        assert window.size().toTuple() == size, f"{key} asks for {window.minimumSizeHint().toTuple()}"
        found = cut_off(window) + sideways(window)
        for one in controls(window):
            named = one.accessibleName() or one.toolTip() or (isinstance(one, QAbstractButton) and one.text())
            if not named:
                found.append(f"{told(one)} has no name")
            if min(one.width(), one.height()) < TARGET_PX:
                found.append(f"{told(one)} is too small")
            if isinstance(one, QPushButton | QComboBox | QLineEdit) and not one.focusPolicy() & TAB:
                found.append(f"{told(one)} can't be reached")
        wrong += [f"{key}: {one}" for one in found]
    assert not wrong, "\n".join(wrong)
