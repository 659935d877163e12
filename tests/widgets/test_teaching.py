"""Teaching with real events: guess and show, vats side by side, three depths, the learners' sheet, the projector."""

from __future__ import annotations

from itertools import pairwise
from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from designer.judge.vats import MOST
from designer.recipe.edit import edit
from widgets.compare.curves import KEY, SAMPLE, inks
from widgets.compare.curves import LEFT as LEFT_PX
from widgets.make_curve.curves import PANES, SAMPLE_PX, heads, value_text
from widgets.teach.depths_page import DepthsPage
from widgets.teach.guess_page import GuessPage
from widgets.teach.lesson_page import LessonPage
from widgets.teach.projector import FRAME_PX
from widgets.teach.vats_page import VatsPage
from widgets.theme import apply as dress
from widgets.theme.colour import difference
from widgets.window import Window

LEFT = Qt.MouseButton.LeftButton


@pytest.fixture
def guess(window: Window) -> GuessPage:
    """The page, opened by its action."""
    window.actions_["guess"].trigger()
    page = window.opened["guess"]
    assert isinstance(page, GuessPage)
    return page


@pytest.fixture
def vats(window: Window) -> VatsPage:
    """The page, opened by its action."""
    window.actions_["vats"].trigger()
    page = window.opened["vats"]
    assert isinstance(page, VatsPage)
    return page


def test_nothing_is_shown_before_it_is_guessed(qtbot: QtBot, guess: GuessPage) -> None:
    assert guess.choice.setting is not None
    assert guess.choice.setting.path == ("cut", "cut_mm")
    assert not guess.show_it.isEnabled()
    for _ in range(4):
        qtbot.mouseClick(guess.choice.less, LEFT)
    assert not guess.show_it.isEnabled(), "no guess yet"
    qtbot.mouseClick(guess.rows["moisture_pct"].ways.button(2), LEFT)
    assert guess.show_it.isEnabled()
    assert not guess.curves.makes
    assert "covered" in guess.why_head.text()


def test_a_guess_is_shown_and_kept_and_undone(qtbot: QtBot, guess: GuessPage, window: Window) -> None:
    before = window.session.recipe
    guess.choice.field.setFocus()
    guess.choice.field.selectAll()
    qtbot.keyClicks(guess.choice.field, "4 mm")
    qtbot.keyClick(guess.choice.field, Qt.Key.Key_Return)
    qtbot.mouseClick(guess.rows["moisture_pct"].ways.button(0), LEFT)
    qtbot.keyClicks(guess.rows["moisture_pct"].by, "50")
    qtbot.mouseClick(guess.rows["ph_24h"].ways.button(0), LEFT)
    qtbot.mouseClick(guess.show_it, LEFT)
    assert window.session.recipe == before, "showing keeps nothing"
    assert guess.rows["moisture_pct"].told.text().startswith("\u2713  Right way")
    assert guess.rows["ph_24h"].told.text().startswith("\u2717")
    assert "1 of 2" in guess.score.text()
    assert "drier" in guess.why_head.text() + guess.why.text()
    assert len(guess.curves.makes) == 2
    qtbot.mouseClick(guess.behind, LEFT)
    depths = window.opened["depths"]
    assert isinstance(depths, DepthsPage)
    assert depths.topic is not None
    assert depths.topic.key == "cut"
    window.actions_["guess"].trigger()
    assert guess.shown, "the answer is still on the table"
    qtbot.mouseClick(guess.keep, LEFT)
    assert window.session.recipe == edit(before, "cut", cut_mm=4.0)
    assert not guess.shown, "a new round begins with the new recipe"
    window.session.stack.undo()
    assert window.session.recipe == before
    qtbot.keyClick(guess, Qt.Key.Key_Escape)
    assert window.stack.currentWidget() is window.opened["design"]


def test_a_stage_left_out_is_guessed_shown_and_kept(qtbot: QtBot, guess: GuessPage, window: Window) -> None:
    before = window.session.recipe
    guess.way.setFocus()
    qtbot.keyClick(guess.way, Qt.Key.Key_Down)
    guess.whole.stage.setCurrentIndex(guess.whole.stage.findData("stack"))
    assert guess.whole.stage.isVisible()
    assert not guess.whole.milk.isVisible()
    qtbot.mouseClick(guess.rows["moisture_pct"].ways.button(2), LEFT)
    qtbot.mouseClick(guess.show_it, LEFT)
    assert "left out" in guess.why.text()
    assert guess.rows["moisture_pct"].told.text().startswith("\u2713")
    qtbot.mouseClick(guess.keep, LEFT)
    assert "stack" not in [stage.id for stage in window.session.recipe.stages]
    assert "without" in window.session.stack.undoText()
    window.session.stack.undo()
    assert window.session.recipe == before
    qtbot.keyClick(guess.way, Qt.Key.Key_End)
    qtbot.mouseClick(guess.rows["yield_kg_per_100kg"].ways.button(0), LEFT)
    qtbot.mouseClick(guess.show_it, LEFT)
    assert guess.shown


def test_what_is_no_value_is_said(qtbot: QtBot, guess: GuessPage) -> None:
    said: list[str] = []
    guess.said.connect(said.append)
    guess.choice.field.selectAll()
    qtbot.keyClicks(guess.choice.field, "soft")
    qtbot.keyClick(guess.choice.field, Qt.Key.Key_Return)
    assert said
    assert guess.choice.value == guess.choice.setting.value  # type: ignore[union-attr]


def test_every_vat_has_a_colour_of_its_own(qtbot: QtBot, vats: VatsPage) -> None:
    qtbot.mouseClick(vats.three, LEFT)
    curves, count = vats.curves, len(vats.vats)
    assert count > 2
    worn = inks("ph", count)
    assert worn == inks("temperature", count), "the same in every pane"
    image = curves.grab().toImage()
    room = (curves.width() - LEFT_PX) / count
    y = round(curves.height() - KEY / 2.0)
    for at in range(count):
        start = round(LEFT_PX + at * room)
        seen = [image.pixelColor(x, y + up).name() for x in range(start, start + round(SAMPLE)) for up in (-1, 0, 1)]
        drawn = max(seen, key=lambda one: difference(one, dress.colours().window))
        assert min(worn, key=lambda one: difference(one, drawn)) == worn[at]


def test_vats_are_added_printed_taken_into_the_recipe_and_undone(
    qtbot: QtBot, vats: VatsPage, window: Window, tmp_path: Path
) -> None:
    before = window.session.recipe
    assert len(vats.vats) == 1
    qtbot.mouseClick(vats.three, LEFT)
    assert 2 <= len(vats.vats) <= 4
    count = len(vats.vats)
    qtbot.mouseClick(vats.choice.more, LEFT)
    qtbot.mouseClick(vats.add, LEFT)
    assert len(vats.vats) in (count, count + 1)
    assert vats.table.columnCount() == 1 + len(vats.vats)
    assert len(vats.curves.makes) == len(vats.vats)
    qtbot.mouseClick(vats.print, LEFT)
    path = tmp_path / "vats.pdf"
    vats.preview.save_to(path)
    assert path.read_bytes().startswith(b"%PDF")
    vats._back()
    vats.table.setCurrentItem(vats.table.topLevelItem(0), 2)
    assert vats.keep.isEnabled()
    value = vats.changes[0][1]
    qtbot.mouseClick(vats.keep, LEFT)
    assert window.session.recipe == edit(before, "cut", cut_mm=value)
    window.session.stack.undo()
    assert window.session.recipe == before


def test_a_vat_goes_by_key_and_there_are_no_more_than_can_be_told_apart(qtbot: QtBot, vats: VatsPage) -> None:
    for _ in range(MOST):
        qtbot.mouseClick(vats.choice.more, LEFT)
        qtbot.mouseClick(vats.add, LEFT)
    assert len(vats.vats) == MOST
    assert not vats.add.isEnabled()
    vats.table.setFocus()
    vats.table.setCurrentItem(vats.table.topLevelItem(0), 3)
    gone = vats.changes[1]
    qtbot.keyClick(vats.table, Qt.Key.Key_Delete)
    assert gone not in vats.changes
    assert vats.add.isEnabled()
    vats.milk.selectAll()
    qtbot.keyClicks(vats.milk, "25 L")
    qtbot.keyClick(vats.milk, Qt.Key.Key_Return)
    assert vats.litres == 25.0


def test_three_depths_by_key_and_search(qtbot: QtBot, window: Window) -> None:
    window.actions_["depths"].trigger()
    page = window.opened["depths"]
    assert isinstance(page, DepthsPage)
    qtbot.keyClicks(page.search, "size of cut")
    page.list.setCurrentRow(page.list.count() - 1)
    assert page.topic is not None
    said = []
    for key in (Qt.Key.Key_1, Qt.Key.Key_2, Qt.Key.Key_3):
        qtbot.keyClick(page, key)
        said.append(page.text.text())
    assert len(set(said)) == 3
    assert "[" in said[2]
    page.search.clear()
    page.choose("law_salt")
    assert "Salt wandering in" in page.name.text()


def test_the_learners_sheet_with_and_without_targets(qtbot: QtBot, window: Window) -> None:
    window.actions_["lesson"].trigger()
    page = window.opened["lesson"]
    assert isinstance(page, LessonPage)
    assert any("with targets" in words for words in page.preview.sheet().words())
    page.targets.setFocus()
    qtbot.keyClick(page.targets, Qt.Key.Key_Space)
    assert any("without targets" in words for words in page.preview.sheet().words())


@pytest.mark.parametrize("wide", [800, 1366])
def test_the_projector_cuts_nothing_over_the_curves(window: Window, wide: int) -> None:
    window.actions_["projector"].trigger()
    window.showNormal()
    window.resize(wide, 800)
    QApplication.processEvents()
    curve, fonts = window.curve, window.curve.frame.fonts
    for key in window.curve.frame.places.panes:
        made = heads(curve.frame, PANES[key])
        for head in made:
            told = value_text(curve.frame, head.curve, 200.0)
            titled = head.left + SAMPLE_PX + fonts.note_metrics.horizontalAdvance(head.title)
            assert titled <= head.right + 1.0
            assert head.value + fonts.strong_metrics.horizontalAdvance(told) <= head.right + 1.0
            assert head.value in (head.left + SAMPLE_PX, pytest.approx(titled + 6.0)), "instead of it, or after it"
        assert all(one.right < after.left for one, after in pairwise(made))
        assert made[-1].right <= curve.width()
    QTest.mouseMove(curve, QPoint(300, 300))
    QApplication.processEvents()
    assert not curve.grab().isNull()
    window.actions_["projector"].trigger()


def test_the_projector_takes_the_curve_and_gives_it_back(qtbot: QtBot, window: Window) -> None:
    home, desk = window.curve.parentWidget(), window.centralWidget()
    small = dress.font("body").pointSizeF()
    window.actions_["projector"].trigger()
    QApplication.processEvents()
    view = window.teaching.projecting.view
    assert view is not None
    assert window.isFullScreen()
    assert view.isAncestorOf(window.curve)
    assert dress.font("body").pointSizeF() > 1.5 * small
    assert not window.menuBar().isVisible()
    for wide in (700, 1366):
        view.resize(wide, 760)
        for label in view.values.values():
            assert label.sizeHint().width() <= (wide - FRAME_PX) / len(view.values)
    window.session.commit(edit(window.session.recipe, "cut", cut_mm=4.0), "cut")
    assert view.moves["moisture_pct"].text().strip()
    window.actions_["undo"].trigger()
    qtbot.keyClick(view, Qt.Key.Key_Escape)
    QApplication.processEvents()
    assert window.teaching.projecting.view is None
    assert window.curve.parentWidget() is home
    assert window.centralWidget() is desk
    assert window.menuBar().isVisible()
    assert not window.isFullScreen()
    assert dress.font("body").pointSizeF() == small
