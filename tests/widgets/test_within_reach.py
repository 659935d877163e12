"""Every control of every place: large enough to hit, named, reachable, and nothing cut off at 200 %."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractScrollArea,
    QApplication,
    QComboBox,
    QLineEdit,
    QPushButton,
    QScrollBar,
    QWidget,
)

from widgets.window import Window

TARGET_PX = 24
"""WCAG 2.2, 2.5.8: the least size of a target."""
AT_200_PERCENT = (683, 384)
"""what a screen of 1366 by 768 leaves at 200 %"""


def controls(place: QWidget) -> list[QWidget]:
    """What can be pressed, typed in or chosen from, as far as it is shown."""
    found = [*place.findChildren(QAbstractButton), *place.findChildren(QComboBox), *place.findChildren(QLineEdit)]
    inside = [one for one in found if isinstance(one.parentWidget(), QComboBox | QScrollBar | QAbstractScrollArea)]
    return [one for one in found if one.isVisible() and one not in inside]


def told(one: QWidget) -> str:
    """Which control it is, for a person."""
    text = one.text() if isinstance(one, QAbstractButton) else ""
    return f"{type(one).__name__} “{text or one.accessibleName() or one.objectName()}” {one.width()}x{one.height()}"


def opened(window: Window, key: str) -> QWidget:
    """A place, shown."""
    window.go(key)
    QApplication.processEvents()
    return window


@pytest.fixture
def keys(window: Window) -> list[str]:
    """The places."""
    return list(window.places)


def test_targets_are_large_enough(window: Window, keys: list[str]) -> None:
    small = [
        f"{key}: {told(one)}"
        for key in keys
        for one in controls(opened(window, key))
        if min(one.width(), one.height()) < TARGET_PX
    ]
    assert not small, "\n".join(small)


def test_controls_are_named_and_reached_by_keys(window: Window, keys: list[str]) -> None:
    for key in keys:
        for one in controls(opened(window, key)):
            named = one.accessibleName() or one.toolTip() or (isinstance(one, QAbstractButton) and one.text())
            assert named, f"{key}: {told(one)} has no name"
            if isinstance(one, QPushButton | QComboBox | QLineEdit):
                assert one.focusPolicy() & Qt.FocusPolicy.TabFocus, f"{key}: {told(one)} can't be reached"


def test_no_word_of_a_button_is_cut_off(window: Window, keys: list[str]) -> None:
    for size in ((1366, 768), AT_200_PERCENT):
        window.resize(*size)
        QApplication.processEvents()
        cut = [
            f"{key} at {size}: {told(one)} wants {one.sizeHint().width()}"
            for key in keys
            for one in controls(opened(window, key))
            if isinstance(one, QPushButton) and one.text() and one.width() < one.sizeHint().width()
        ]
        assert not cut, "\n".join(cut)


def test_places_fit_a_screen_at_200_percent(window: Window, keys: list[str]) -> None:
    for key in keys:
        opened(window, key)
        window.resize(*AT_200_PERCENT)
        QApplication.processEvents()
        assert (window.width(), window.height()) == AT_200_PERCENT, (
            f"{key} asks for {window.minimumSizeHint().toTuple()}"
        )
