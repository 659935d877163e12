"""The start page by mouse and keys: recent files, the examples, a first recipe from a style, and the ways out of it."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QAction
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from designer.recipe import file as recipes
from designer.recipe.examples import examples
from widgets.compare.partners import Partners
from widgets.start.place import StartPlace, blank
from widgets.window import Window


@pytest.fixture
def start(qtbot: QtBot, window: Window) -> StartPlace:
    """The start page, with its pictures drawn."""
    window.rail.buttons["start"].click()
    place = window.opened["start"]
    assert isinstance(place, StartPlace)
    qtbot.waitUntil(lambda: all(card.example.made for card in place.grid.cards), timeout=60_000)
    return place


def test_examples_open_by_keys_as_copies(window: Window, start: StartPlace) -> None:
    first, second = start.grid.cards[:2]
    assert len(start.grid.cards) == len(examples())
    first.setFocus()
    QTest.keyClick(first, Qt.Key.Key_Right)
    assert second.hasFocus()
    QTest.keyClick(second, Qt.Key.Key_Return)
    assert window.session.recipe.name == second.example.name
    assert window.session.path is None
    assert window.stack.currentWidget() is window.opened["design"]


def test_menus_call_an_example_as_its_card_does(window: Window, start: StartPlace) -> None:
    called = [found.action.text() for found in window.help.found() if found.action.toolTip() in map(str, examples())]
    assert called == [card.example.name for card in start.grid.cards]
    beside = Partners(window.session, window)
    beside.examples.aboutToShow.emit()
    assert [action.text() for action in beside.examples.actions()] == called


def test_recent_files_open_and_can_be_left_out(window: Window, start: StartPlace, tmp_path: Path) -> None:
    there, gone = tmp_path / "first-tomme.toml", tmp_path / "lost.toml"
    for path in (there, gone):
        recipes.write(blank(), path)
        window.preferences.remember(path)
    gone.unlink()
    start.refresh()
    button, away = start.recent.rows[gone]
    assert not button.isEnabled()
    assert "not there" in button.accessibleName()
    QTest.mouseClick(away, Qt.MouseButton.LeftButton)
    assert list(start.recent.rows) == [there.resolve()]
    QTest.mouseClick(start.recent.rows[there.resolve()][0], Qt.MouseButton.LeftButton)
    assert window.session.path == there.resolve()


def test_a_blank_recipe_can_be_made_and_is_unsaved(window: Window, start: StartPlace) -> None:
    QTest.mouseClick(start.blank, Qt.MouseButton.LeftButton)
    assert window.session.recipe == blank()
    assert window.session.modified
    assert window.session.forecast.outcomes["moisture_pct"].value > 30.0


def test_going_on_leads_back_to_the_make(window: Window, start: StartPlace) -> None:
    before = window.session.recipe
    assert start.go_on.hasFocus()
    QTest.keyClick(start.go_on, Qt.Key.Key_Space)
    assert window.stack.currentWidget() is window.opened["design"]
    assert window.session.recipe is before


def test_new_from_a_style_by_keys(qtbot: QtBot, window: Window, start: StartPlace) -> None:
    action = window.actions_["new"]
    assert isinstance(action, QAction)
    action.trigger()
    ask = start.from_style
    assert ask.search.hasFocus()
    assert not ask.go.isEnabled()
    QTest.keyClicks(ask.search, "chedd")
    assert ask.style_key() == "cheddar"
    with qtbot.waitSignal(ask.made, timeout=120_000):
        QTest.keyClick(ask.search, Qt.Key.Key_Return)
        qtbot.waitUntil(lambda: ask.bar.value() > 0, timeout=60_000)
    recipe = window.session.recipe
    assert recipe.style == "cheddar"
    assert recipe.milks == (ask.milk,)
    assert "Drawn from the example" in recipe.notes
    assert window.session.modified
    assert window.stack.currentWidget() is window.opened["design"]


def test_working_it_out_can_be_stopped(qtbot: QtBot, window: Window, start: StartPlace) -> None:
    before, ask = window.session.recipe, start.from_style
    QTest.keyClicks(ask.search, "gouda")
    QTest.keyClick(ask.search, Qt.Key.Key_Down)
    QTest.mouseClick(ask.go, Qt.MouseButton.LeftButton)
    QTest.mouseClick(ask.stop_, Qt.MouseButton.LeftButton)
    assert "Stopped" in ask.said.text()
    qtbot.waitUntil(lambda: ask.asker.idle, timeout=60_000)
    QApplication.processEvents()
    assert window.session.recipe is before


def test_a_milk_that_cannot_be_is_said_beside_its_field(window: Window, start: StartPlace) -> None:
    editor = start.from_style.form.editors["volume_l"]
    line = editor.line  # type: ignore[attr-defined]
    line.selectAll()
    QTest.keyClicks(line, "lots")
    QTest.keyClick(line, Qt.Key.Key_Return)
    assert editor.wrong.isVisible()
    line.selectAll()
    QTest.keyClicks(line, "60 L")
    QTest.keyClick(line, Qt.Key.Key_Return)
    assert start.from_style.milk.volume_l == pytest.approx(60.0)
