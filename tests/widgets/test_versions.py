"""Versions in the window with real events: kept at each save, noted, put beside, opened as a copy, put back, undone."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QLineEdit
from pytestqt.qtbot import QtBot

from designer.recipe import versions
from designer.recipe.document import Recipe
from designer.recipe.edit import edit
from widgets.compare.place import ComparePlace
from widgets.variants.versions_page import CHANGED, NOTE, VersionsPage
from widgets.window import Window


@pytest.fixture
def path(window: Window, tmp_path: Path) -> Path:
    """The recipe saved twice, the second time with a finer cut."""
    made = tmp_path / "round.toml"
    assert window.files.save_to(made)
    window.session.commit(edit(window.session.recipe, "cut", cut_mm=8.0), "finer")
    assert window.files.save()
    return made


@pytest.fixture
def page(window: Window, path: Path) -> VersionsPage:
    """The page, opened by its action."""
    window.actions_["versions"].trigger()
    made = window.opened["versions"]
    assert isinstance(made, VersionsPage)
    return made


def first_line(page: VersionsPage, number: int) -> None:
    """Put the keyboard on a version."""
    at = next(
        at
        for at in range(page.list.topLevelItemCount())
        if page.list.topLevelItem(at).text(0) == str(number)  # type: ignore[union-attr]
    )
    page.list.setCurrentItem(page.list.topLevelItem(at))


def cut_of(recipe: Recipe) -> float:
    return float(recipe.stage("cut").cut_mm)  # type: ignore[union-attr]


def test_before_the_first_save_the_page_teaches(window: Window) -> None:
    window.actions_["versions"].trigger()
    page = window.opened["versions"]
    assert isinstance(page, VersionsPage)
    assert "None is kept yet" in page.empty.text()
    assert page.save.isVisible()
    assert not page.restore.isVisible()


def test_every_save_is_a_line_that_says_what_changed(page: VersionsPage) -> None:
    newest = page.list.topLevelItem(0)
    assert newest is not None
    assert newest.text(0) == "2"
    assert "8 mm" in newest.text(CHANGED)


def test_a_note_is_offered_after_a_save_and_goes_with_the_next_edit(qtbot: QtBot, window: Window, path: Path) -> None:
    bar = window.variants.note
    assert bar.isVisible()
    assert not bar.line.hasFocus(), "it never takes the keyboard by itself"
    qtbot.keyClicks(bar.line, "drier, for the summer")
    qtbot.keyClick(bar.line, Qt.Key.Key_Return)
    assert not bar.isVisible()
    assert versions.versions(path)[-1].note == "drier, for the summer"
    window.session.commit(edit(window.session.recipe, "cut", cut_mm=9.0), "coarser")
    window.files.save()
    assert bar.isVisible()
    window.session.commit(edit(window.session.recipe, "cut", cut_mm=9.5), "coarser")
    assert not bar.isVisible()


def test_a_note_is_written_in_the_list(qtbot: QtBot, page: VersionsPage, path: Path) -> None:
    first_line(page, 1)
    page.list.itemActivated.emit(page.list.currentItem(), 0)
    line = QApplication.focusWidget()
    assert isinstance(line, QLineEdit)
    qtbot.keyClicks(line, "the first try")
    qtbot.keyClick(line, Qt.Key.Key_Return)
    QApplication.processEvents()
    kept = versions.versions(path)
    assert "the first try" in [one.note for one in kept]
    assert cut_of(versions.recipe_of(kept[0])) != 8.0
    item = page.list.currentItem()
    assert item is not None
    assert item.text(NOTE) == "the first try"


def test_put_back_is_one_step_of_undo_and_saving_makes_it_the_newest(
    qtbot: QtBot, page: VersionsPage, window: Window, path: Path
) -> None:
    first_line(page, 1)
    assert "size of cut" in page.hint.text()
    qtbot.mouseClick(page.restore, Qt.MouseButton.LeftButton)
    assert cut_of(window.session.recipe) == cut_of(versions.recipe_of(versions.version(path, 1)))
    assert "Version 1 put back" in window.actions_["undo"].text()
    assert not page.restore.isEnabled()
    window.actions_["undo"].trigger()
    assert cut_of(window.session.recipe) == 8.0
    window.actions_["redo"].trigger()
    window.files.save()
    assert [one.number for one in versions.versions(path)] == [1, 2, 3]


def test_put_beside_in_compare(qtbot: QtBot, page: VersionsPage, window: Window) -> None:
    first_line(page, 1)
    qtbot.mouseClick(page.compare, Qt.MouseButton.LeftButton)
    place = window.opened["compare"]
    assert isinstance(place, ComparePlace)
    assert place.called == "version 1"
    qtbot.waitUntil(lambda: place.fresh, timeout=60_000)
    assert place.answer is not None
    assert len(place.answer.comparison.differences) == 1


def test_two_old_versions_are_compared_with_each_other(qtbot: QtBot, page: VersionsPage, window: Window) -> None:
    window.session.commit(edit(window.session.recipe, "cut", cut_mm=9.5), "coarser")
    assert window.files.save()
    page.refresh()
    first_line(page, 1)
    qtbot.keyClick(page.list, Qt.Key.Key_Up, Qt.KeyboardModifier.ShiftModifier)
    assert "From version 1 to version 2" in page.hint.text()
    assert not page.restore.isVisible()
    assert page.compare.text() == "Compare the two"
    qtbot.mouseClick(page.compare, Qt.MouseButton.LeftButton)
    place = window.opened["compare"]
    assert isinstance(place, ComparePlace)
    qtbot.waitUntil(lambda: place.fresh, timeout=60_000)
    assert place.answer is not None
    left, right = place.answer.question.left, place.answer.question.right
    assert (cut_of(right), cut_of(window.session.recipe)) == (8.0, 9.5)
    assert cut_of(left) not in (8.0, 9.5)
    assert place.outcomes.headerItem().text(1) == "version 1"
    assert place._title.text() == f"{window.session.recipe.name}: version 1 against version 2"
    assert not place.take.isVisible(), "neither is open, so nothing is taken across"
    qtbot.mouseClick(place.swap, Qt.MouseButton.LeftButton)
    assert place.called == "version 1"


def test_opened_as_a_copy_it_has_no_file(qtbot: QtBot, page: VersionsPage, window: Window, path: Path) -> None:
    first_line(page, 1)
    before = path.read_text()
    qtbot.mouseClick(page.open, Qt.MouseButton.LeftButton)
    assert window.session.path is None
    assert cut_of(window.session.recipe) != 8.0
    assert path.read_text() == before
