"""What would have to change ...? with real events: ranked, worked out beside the window, stopped, kept, undone."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from designer.judge.nearest import Way
from widgets.variants.nearest_page import FIRST, NearestPage
from widgets.window import Window

LONG_MS = 240_000


@pytest.fixture
def page(qtbot: QtBot, window: Window) -> NearestPage:
    """The page, opened by its action, its list ranked."""
    window.actions_["nearest"].trigger()
    made = window.opened["nearest"]
    assert isinstance(made, NearestPage)
    qtbot.waitUntil(lambda: bool(made.ranked), timeout=LONG_MS)
    return made


def choose(page: NearestPage, key: str) -> None:
    """Put the keyboard on a style."""
    at = next(at for at, near in enumerate(page.ranked) if near.style.key == key)
    page.list.setCurrentItem(page.list.topLevelItem(at))


def test_every_style_is_ranked_and_the_first_are_worked_out(qtbot: QtBot, page: NearestPage, window: Window) -> None:
    distances = [near.distance for near in page.ranked]
    assert distances == sorted(distances)
    assert page.ranked[0].style.key == window.session.recipe.style == "cheddar"
    qtbot.waitUntil(lambda: page.idle, timeout=LONG_MS)
    assert len(page.ways) >= FIRST
    assert not page.progress.isVisible()
    assert "change" in page.list.topLevelItem(1).text(1)  # type: ignore[union-attr]


def test_the_way_is_shown_and_kept_as_one_step(qtbot: QtBot, page: NearestPage, window: Window) -> None:
    before = window.session.recipe
    choose(page, "cantal")
    qtbot.waitUntil(lambda: isinstance(page.ways.get("cantal"), Way), timeout=LONG_MS)
    way = page.ways["cantal"]
    assert isinstance(way, Way)
    assert way.met is not None
    assert page.changes.text().count("•") == len(way.stages) + len(way.changes) > 0
    assert page.outcomes.isVisible()
    qtbot.mouseClick(page.apply, Qt.MouseButton.LeftButton)
    assert window.session.recipe.style == "cantal"
    assert window.session.stack.count() == 1
    assert "Towards Cantal" in window.actions_["undo"].text()
    window.actions_["undo"].trigger()
    assert window.session.recipe == before


def test_another_way_of_setting_is_another_recipe(qtbot: QtBot, page: NearestPage) -> None:
    choose(page, "quark")
    qtbot.waitUntil(lambda: "quark" in page.ways, timeout=LONG_MS)
    assert "another recipe" in page.changes.text()
    assert not page.apply.isEnabled()


def test_it_can_be_stopped_and_asked_again(qtbot: QtBot, page: NearestPage) -> None:
    assert page.halt.isVisible()
    qtbot.mouseClick(page.halt, Qt.MouseButton.LeftButton)
    assert not page.halt.isVisible()
    assert not page._waiting
    far = page.ranked[-1].style.key
    choose(page, far)
    qtbot.waitUntil(lambda: far in page.ways, timeout=LONG_MS)
