"""The window for those who see it badly or not at all, and for those without a mouse."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QAccessible
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractItemView,
    QAbstractSlider,
    QAbstractSpinBox,
    QApplication,
    QComboBox,
    QFileDialog,
    QLineEdit,
    QScrollBar,
    QTextEdit,
    QWidget,
)
from pytestqt.qtbot import QtBot

from designer.recipe import edit as edits
from designer.recipe.file import read
from widgets import aloud
from widgets.make_curve import controls
from widgets.make_curve.controls import GripControl
from widgets.outcomes import announce
from widgets.outcomes.opened import OpenedOutcome
from widgets.outcomes.spoken import SpokenLine
from widgets.start.example_grid import ExampleCard
from widgets.window import Window

INTERACTIVE = (
    QAbstractButton, QAbstractItemView, QAbstractSlider, QAbstractSpinBox, QComboBox, QLineEdit, QTextEdit,
)  # fmt: skip
LEAST_PX = 24
LONG_MS = 120_000


def of_ours(widget: QWidget) -> bool:
    """Not a part that Qt makes inside another control, such as the line in a spin box or the corner of a table."""
    parent = widget.parent()
    inner = isinstance(parent, QAbstractSpinBox | QComboBox | QAbstractItemView | QLineEdit)
    return not inner and not isinstance(widget, QScrollBar) and not widget.objectName().startswith("qt_")


def controls_in(place: QWidget) -> list[QWidget]:
    """What can be worked in a place; lines told to a screen reader are walked by the arrows of their list."""
    return [
        one
        for one in place.findChildren(QWidget)
        if isinstance(one, INTERACTIVE) and not isinstance(one, SpokenLine)
        and one.isVisibleTo(place) and one.isEnabledTo(place) and of_ours(one)
    ]  # fmt: skip


def name_of(widget: QWidget) -> str:
    """What a screen reader calls it."""
    told = QAccessible.queryAccessibleInterface(widget)
    return "" if told is None else told.text(QAccessible.Text.Name)


def described(widget: QWidget) -> str:
    return f"{type(widget).__name__} “{name_of(widget)}” {widget.width()}x{widget.height()}"


@pytest.fixture(params=["start", "milk", "design", "check", "compare", "plan"])
def place(request: pytest.FixtureRequest, window: Window) -> QWidget:
    """A place of the window, opened."""
    window.go(request.param)
    QApplication.processEvents()
    return window.opened[request.param]


def test_every_control_has_a_name(place: QWidget) -> None:
    assert [described(one) for one in controls_in(place) if not name_of(one)] == []


def test_every_control_is_reached_by_tab_and_large_enough(place: QWidget) -> None:
    found = controls_in(place)
    groups = [one for one in found if not one.focusPolicy() & Qt.FocusPolicy.TabFocus]
    assert [described(one) for one in groups] == []
    small = [one for one in found if min(one.width(), one.height()) < LEAST_PX and not isinstance(one, QScrollBar)]
    assert [described(one) for one in small] == []


def test_stage_edges_are_sliders_with_values_and_limits(window: Window) -> None:
    found = window.curve.findChildren(GripControl)
    assert {one.grip.place for one in found} == {"edge", "corner", "inside"}
    for one in found:
        told = QAccessible.queryAccessibleInterface(one)
        assert told is not None
        assert told.role() == QAccessible.Role.Slider
        assert told.text(QAccessible.Text.Name) == one.grip.label
        assert told.text(QAccessible.Text.Description)
        value = told.valueInterface()
        assert value is not None
        assert value.minimumValue() <= value.currentValue() <= value.maximumValue()
        assert one.minimum() > -1_000_000


def test_a_value_set_by_a_screen_reader_is_an_edit(window: Window) -> None:
    control = window.curve.control("ripen", "end", "edge")
    value = QAccessible.queryAccessibleInterface(control).valueInterface()
    value.setCurrentValue(75)
    assert window.session.recipe.stages[0].end.length_min == pytest.approx(75.0)
    assert window.session.modified


def test_a_nudge_and_a_changed_verdict_are_said_aloud(
    qtbot: QtBot, window: Window, monkeypatch: pytest.MonkeyPatch
) -> None:
    heard: list[str] = []
    for module in (controls, announce):
        monkeypatch.setattr(module, "say", lambda speaker, sentence: heard.append(sentence))
    control = window.curve.control("warm", "temperature_c", "corner")
    with qtbot.waitActive(window):
        window.activateWindow()
    control.setFocus()
    qtbot.keyClick(control, Qt.Key.Key_Up)
    assert any("°C" in one for one in heard)
    heard.clear()
    before = window.session.verdict
    window.session.commit(edits.edit(window.session.recipe, "salt", salt_pct=0.2), "salt")
    assert window.session.verdict.rows != before.rows
    assert heard
    assert window.session.verdict.name
    heard.clear()
    window.session.preview(edits.edit(window.session.recipe, "salt", salt_pct=3.0))
    window.session.settle()
    assert heard == []
    window.session.drop_preview()


def test_an_announcement_is_taken_by_qt(window: Window) -> None:
    aloud.say(window, "pH 5.4 reached")


def tab_to(qtbot: QtBot, wanted: Callable[[QWidget], bool], most: int = 300) -> QWidget:
    """Press Tab until the keyboard is where it is wanted."""
    for _ in range(most):
        focus = QApplication.focusWidget()
        assert focus is not None
        if wanted(focus):
            return focus
        qtbot.keyClick(focus, Qt.Key.Key_Tab)
    raise AssertionError("Tab does not come there")


def shortcut(qtbot: QtBot, window: Window, key: str) -> None:
    """Press the keys of an action."""
    keys = window.actions_[key].shortcut()[0]
    focus = QApplication.focusWidget()
    assert focus is not None
    qtbot.keyClick(focus, keys.key(), keys.keyboardModifiers())


def test_a_whole_job_without_the_mouse(
    qtbot: QtBot, window: Window, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """From an example: a warmer cook, undone and done again, moisture aimed at, saved, the plan looked at."""
    path = tmp_path / "by-keys.toml"
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: (str(path), ""))
    with qtbot.waitActive(window):
        window.activateWindow()
    window.curve.setFocus()
    qtbot.keyClick(window.curve, Qt.Key.Key_Home, Qt.KeyboardModifier.AltModifier)
    qtbot.waitUntil(lambda: window.stack.currentWidget() is window.opened.get("start"))
    name = window.session.recipe.name
    qtbot.keyClick(tab_to(qtbot, lambda one: isinstance(one, ExampleCard)), Qt.Key.Key_Right)
    card = QApplication.focusWidget()
    assert isinstance(card, ExampleCard)
    qtbot.keyClick(card, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: window.session.recipe.name != name)

    corner = tab_to(
        qtbot, lambda one: isinstance(one, GripControl) and one.grip.place == "corner" and one.grip.field != "end"
    )
    was = window.session.recipe
    qtbot.keyClick(corner, Qt.Key.Key_Up)
    warmer = window.session.recipe
    assert warmer != was
    shortcut(qtbot, window, "undo")
    qtbot.waitUntil(lambda: window.session.recipe == was)
    shortcut(qtbot, window, "redo")
    qtbot.waitUntil(lambda: window.session.recipe == warmer)

    lines = tab_to(qtbot, lambda one: one is window.outcomes.list)
    qtbot.keyClick(lines, Qt.Key.Key_Home)
    for _ in window.outcomes.list.every:
        if window.outcomes.list.current != "moisture_pct":
            qtbot.keyClick(lines, Qt.Key.Key_Down)
    qtbot.keyClick(lines, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: window.outcomes.opening.page is not None)
    page = window.outcomes.opening.page
    assert isinstance(page, OpenedOutcome)
    aim = page.aim
    qtbot.keyClicks(
        tab_to(qtbot, lambda one: one is aim.field),
        f"{window.session.forecast.outcomes['moisture_pct'].value - 0.4:.1f}",
    )
    qtbot.keyClick(aim.field, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: aim.found is not None, timeout=LONG_MS)
    qtbot.keyClick(tab_to(qtbot, lambda one: one is aim.apply), Qt.Key.Key_Space)
    qtbot.waitUntil(lambda: window.session.recipe != warmer)

    shortcut(qtbot, window, "save")
    qtbot.waitUntil(path.exists)
    assert read(path) == window.session.recipe
    assert not window.session.modified
    shortcut(qtbot, window, "print")
    qtbot.waitUntil(lambda: window.stack.currentWidget() is window.opened.get("plan"))
