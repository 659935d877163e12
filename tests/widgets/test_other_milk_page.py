"""Another milk in the window, with real events: asked, worked out beside the window, kept, undone."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from widgets.variants.milk_page import MilkPage, ShiftCard
from widgets.window import Window

LONG_MS = 60_000


@pytest.fixture
def page(qtbot: QtBot, window: Window) -> MilkPage:
    """The page, opened by its action, on goat milk."""
    window.actions_["other_milk"].trigger()
    made = window.opened["other_milk"]
    assert isinstance(made, MilkPage)
    qtbot.waitUntil(lambda: made.moved is not None, timeout=LONG_MS)
    return made


def test_what_shifts_says_why_and_where_from(page: MilkPage) -> None:
    assert page.species.currentText() == "goat"
    assert page.moved is not None
    cards = page.findChildren(ShiftCard)
    assert len(cards) == len(page.moved.shifts) > 0
    assert "rennet" in cards[0].head.text()
    assert "Its curd is softer" in page.notes.text()
    told = len(page.moved.notes) + len(page.moved.milk[:2])
    assert page.notes.text().count("<td>•") == told, "each behind a dot of its own column"
    assert page.notes.textFormat() == Qt.TextFormat.RichText
    assert page.outcomes.columnCount() == 4


def test_it_is_kept_as_one_step_of_undo(qtbot: QtBot, page: MilkPage, window: Window) -> None:
    before = window.session.recipe
    assert page.moved is not None
    wanted = page.moved.recipe
    qtbot.mouseClick(page.apply, Qt.MouseButton.LeftButton)
    assert window.session.recipe == wanted
    assert {milk.species for milk in window.session.recipe.milks} == {"goat"}
    assert window.session.stack.count() == 1
    window.actions_["undo"].trigger()
    assert window.session.recipe == before
    qtbot.waitUntil(lambda: page.idle and page.moved is not None, timeout=LONG_MS)


def test_a_blend(qtbot: QtBot, page: MilkPage) -> None:
    page.share.setFocus()
    page.share.selectAll()
    qtbot.keyClicks(page.share, "30")
    qtbot.keyClick(page.share, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: page.moved is not None, timeout=LONG_MS)
    assert page.moved is not None
    assert {milk.species for milk in page.moved.recipe.milks} == {"cow", "goat"}


def test_a_share_that_cannot_be_is_said_beside_the_field(qtbot: QtBot, page: MilkPage) -> None:
    page.share.setFocus()
    page.share.selectAll()
    qtbot.keyClicks(page.share, "banana")
    qtbot.keyClick(page.share, Qt.Key.Key_Return)
    assert page.wrong.isVisible()
    assert not page.apply.isEnabled()
    page.share.selectAll()
    qtbot.keyClicks(page.share, "140 %")
    qtbot.keyClick(page.share, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: "between 0 and 100" in page.wrong.text(), timeout=LONG_MS)


def test_breeds_belong_to_their_species(page: MilkPage) -> None:
    goats = {page.breed.itemText(at) for at in range(page.breed.count())}
    page.species.setCurrentIndex(page.species.findData("cow"))
    page.species.activated.emit(page.species.currentIndex())
    cows = {page.breed.itemText(at) for at in range(page.breed.count())}
    assert goats & cows == {"average of the species"}
    assert len(cows) > 1
