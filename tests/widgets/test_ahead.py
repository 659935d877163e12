"""What waits for the first picture waits, and places are made ready while nobody does anything."""

from __future__ import annotations

import gc
import threading
from collections.abc import Iterator
from importlib.util import find_spec
from pathlib import Path

import pytest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from designer.recipe import edit as edits
from designer.recipe.document import Recipe
from tests.widgets.conftest import banded, gone, left_running
from widgets import ahead
from widgets import window as window_module
from widgets.ahead import MODULES, PLACES, Ahead
from widgets.window import Window


@pytest.fixture
def unshown(qtbot: QtBot, recipe: Recipe, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Window]:
    """A window that was not shown yet; what of it is kept from being thrown away is so no longer than the test."""
    monkeypatch.setattr(window_module, "banded", banded)
    monkeypatch.setattr(ahead, "REST_MS", 1)
    before = set(threading.enumerate())
    made = Window(recipe, config=tmp_path / "config", data=tmp_path / "data")
    yield made
    made.close()
    assert left_running(made, before) == []
    made.deleteLater()
    gone()
    gc.enable()
    gc.unfreeze()


def test_what_is_loaded_ahead_is_there() -> None:
    assert [name for name in MODULES if find_spec(name) is None] == []


def test_first_the_picture_then_the_bands_then_the_places(qtbot: QtBot, unshown: Window) -> None:
    work = Ahead(unshown)
    session = unshown.session
    assert set(PLACES) <= set(unshown.places)
    for _ in range(3):
        QApplication.processEvents()
    assert session.bands_stale
    assert not session._bands._rest.isActive()
    assert list(unshown.opened) == ["design"]
    with qtbot.waitSignal(session.bandsChanged, timeout=20_000):
        unshown.show()
    qtbot.waitUntil(lambda: set(PLACES) <= set(unshown.opened), timeout=20_000)
    assert unshown.stack.currentWidget() is unshown.opened["design"]
    qtbot.waitUntil(lambda: not work._rest.isActive(), timeout=20_000)
    work.stop()


def test_nothing_is_built_while_something_is_tried(unshown: Window) -> None:
    work = Ahead(unshown)
    work._pointer = ahead.QCursor.pos()
    unshown.session.preview(edits.edit_end(unshown.session.recipe, "ripen", length_min=70.0))
    work._build()
    assert list(unshown.opened) == ["design"]
    unshown.session.drop_preview()
    work._build()
    assert list(unshown.opened) == ["design", PLACES[0]]
    work.stop()
