"""Painted lists as a screen reader meets them: each line a button that is named, walked, pressed and gone to."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QAccessible, QAccessibleInterface
from PySide6.QtWidgets import QApplication, QWidget
from pytestqt.qtbot import QtBot

from tests.widgets.test_opened import opened, settle
from widgets.outcomes import spoken
from widgets.outcomes.lever_list import LESS, MORE
from widgets.outcomes.marks import state_words
from widgets.outcomes.spoken import SpokenLine
from widgets.window import Window


def told(widget: QWidget) -> QAccessibleInterface:
    """What a screen reader has of a widget."""
    found = QAccessible.queryAccessibleInterface(widget)
    assert found is not None
    return found


def do(line: SpokenLine, action: str) -> None:
    """A screen reader does something to a line."""
    told(line).actionInterface().doAction(action)
    QApplication.processEvents()


@pytest.fixture
def gone_to(monkeypatch: pytest.MonkeyPatch) -> list[str]:
    """The names of the lines a screen reader was told the keyboard is on."""
    names: list[str] = []
    monkeypatch.setattr(spoken, "go_to", lambda part: names.append(part.accessibleName()))
    return names


def test_every_outcome_is_a_button_with_its_figure_and_how_it_stands(window: Window) -> None:
    lines = window.outcomes.list
    reader = told(lines)
    names = [reader.child(k).text(QAccessible.Text.Name) for k in range(reader.childCount())]
    assert len(names) == len(lines.every) > 12
    for line in lines.every:
        made = lines.spoken.lines[line.key]
        assert isinstance(made, SpokenLine)
        assert told(made).role() == QAccessible.Role.Button
        assert made.geometry() == lines.box_of(line.key).toAlignedRect()
        assert made.accessibleName() in names
        assert made.accessibleName().startswith(f"{line.label}, {line.value}")
        if line.row is not None:
            assert f", {state_words(line.row.state)}" in made.accessibleName()
            assert line.row.sentence in made.accessibleName()


def test_an_outcome_is_pressed_and_gone_to_by_a_screen_reader(qtbot: QtBot, window: Window, gone_to: list[str]) -> None:
    lines = window.outcomes.list
    line = lines.spoken.lines["mnfs_pct"]
    do(line, "Press")
    qtbot.waitUntil(lambda: window.outcomes.opening.page is not None)
    page = window.outcomes.opening.page
    assert page is not None
    assert page.key == "mnfs_pct"
    assert line.accessibleDescription().startswith("Open below")
    after = lines.every[2].key
    assert lines.spoken.lines[after].y() >= page.geometry().bottom(), "lines below move down with what is open"
    settle(qtbot, window)
    do(line, "Press")
    qtbot.waitUntil(lambda: window.outcomes.opening.page is None)
    assert line.accessibleDescription().startswith("8 in 10")
    with qtbot.waitActive(window):
        window.activateWindow()
    window.curve.setFocus()
    do(lines.spoken.lines[after], "SetFocus")
    assert QApplication.focusWidget() is lines
    assert lines.current == after
    assert gone_to[-1] == lines.spoken.lines[after].accessibleName()
    qtbot.keyClick(lines, Qt.Key.Key_Up)
    assert lines.current == "mnfs_pct"
    assert gone_to[-1] == line.accessibleName()


def test_figures_that_change_are_told_anew(qtbot: QtBot, window: Window) -> None:
    line = window.outcomes.list.spoken.lines["moisture_pct"]
    before = line.accessibleName()
    window.actions_["us"].trigger()
    corner = window.curve.control("cut", "cut_mm", "inside")
    corner.setFocus()
    qtbot.keyClick(corner, Qt.Key.Key_PageUp)
    settle(qtbot, window)
    assert window.outcomes.list.spoken.lines["moisture_pct"] is line
    assert line.accessibleName() != before


def test_ways_of_a_setting_are_buttons(qtbot: QtBot, window: Window, gone_to: list[str]) -> None:
    levers = opened(qtbot, window).levers
    assert len(levers.spoken.lines) == 2 * len(levers.shown)
    lever = levers.shown[0]
    for sign in (LESS, MORE):
        line = levers.spoken.lines[lever.setting.path, sign]
        done, effect = levers.words(lever, sign)
        assert line.accessibleName().startswith(lever.setting.title)
        assert line.accessibleName().endswith(f"{done} {effect}")
        assert line.accessibleDescription() == levers.band_words(lever.setting.path, sign)
        assert line.geometry() == levers.chip(0, sign).toAlignedRect()
    with qtbot.waitActive(window):
        window.activateWindow()
    do(levers.spoken.lines[lever.setting.path, LESS], "SetFocus")
    assert QApplication.focusWidget() is levers
    assert window.session.previewing
    qtbot.keyClick(levers, Qt.Key.Key_Right)
    assert gone_to[-1] == levers.spoken.lines[lever.setting.path, MORE].accessibleName()
    do(levers.spoken.lines[lever.setting.path, MORE], "Press")
    qtbot.waitUntil(lambda: window.session.stack.count() == 1)
    assert not window.session.previewing
    assert lever.setting.title in window.actions_["undo"].text()
    qtbot.mouseClick(window.outcomes.opening.page.more, Qt.MouseButton.LeftButton)  # type: ignore[union-attr]
    assert len(levers.spoken.lines) == 2 * len(levers.levers)
    settle(qtbot, window)
